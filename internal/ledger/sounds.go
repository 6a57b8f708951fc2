package ledger

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"bedweek/internal/cal"
)

// Kinds of what is said: in sound, or in words to a picture taken before.
const (
	Voiced    Kind = "voice"   // body: Sound
	Captioned Kind = "caption" // body: Caption
)

type (
	// Sound is a voice note about a space or a planting. The sound itself lies
	// in the photo store under its digest, as it came. Layout 1.
	Sound struct {
		Planting string `json:"planting,omitempty"`
		Space    string `json:"space,omitempty"`
		SHA256   string `json:"sha256"`
		Bytes    int    `json:"bytes"`
		Format   string `json:"format"` // as SoundFormat tells it
		Note     string `json:"note,omitempty"`
	}
	// Caption says what a picture shows, later than it was taken. Layout 1.
	Caption struct {
		Picture string `json:"picture"` // the entry of the picture or sound
		Note    string `json:"note"`
	}
)

// SoundNote is a voice note with its entry.
type SoundNote struct {
	Event string
	On    cal.Day
	Sound
}

// soundLimit is the most bytes a voice note may have: some minutes of any
// phone's recording.
const soundLimit = 10 << 20

// ErrSound is why a file is not kept as a voice note.
var ErrSound = errors.New("this is not a sound that is kept")

// soundFormats are the formats phones record in, by how their files begin.
var soundFormats = []struct {
	format, kind string
	at           int
	mark         string
}{
	{"webm", "audio/webm", 0, "\x1aE\xdf\xa3"}, {"ogg", "audio/ogg", 0, "OggS"}, {"m4a", "audio/mp4", 4, "ftyp"},
	{"wav", "audio/wav", 8, "WAVE"}, {"mp3", "audio/mpeg", 0, "ID3"}, {"mp3", "audio/mpeg", 0, "\xff\xfb"}, {"mp3", "audio/mpeg", 0, "\xff\xf3"},
	{"aac", "audio/aac", 0, "\xff\xf1"}, {"aac", "audio/aac", 0, "\xff\xf9"}, {"amr", "audio/amr", 0, "#!AMR"}, {"flac", "audio/flac", 0, "fLaC"},
}

// SoundFormat tells a sound by how it begins; false when it is none that is kept.
func SoundFormat(b []byte) (string, bool) {
	for _, f := range soundFormats {
		if len(b) > f.at+len(f.mark) && bytes.HasPrefix(b[f.at:], []byte(f.mark)) {
			return f.format, true
		}
	}
	return "", false
}

// SoundType is the media type of a format; "" when it is none.
func SoundType(format string) string {
	for _, f := range soundFormats {
		if f.format == format {
			return f.kind
		}
	}
	return ""
}

// KeepSound puts a voice note into the store and returns its digest and format.
func (l *Ledger) KeepSound(sound []byte) (digest, format string, err error) {
	if stopped := l.Stopped(); stopped != nil {
		return "", "", stopped
	}
	format, ok := SoundFormat(sound)
	if !ok || len(sound) > soundLimit {
		return "", "", ErrSound
	}
	sum := sha256.Sum256(sound)
	digest = hex.EncodeToString(sum[:])
	folder := PhotoFolder(l.dir)
	if err := keepFile(folder, photoPath(folder, digest+"."+format), sound); err != nil {
		return "", "", fmt.Errorf("keeping the sound: %w", err)
	}
	return digest, format, nil
}

// OpenSound reads a voice note; a spoilt one is an error, never played.
func OpenSound(dir, digest, format string) ([]byte, error) {
	if !isDigest(digest) || SoundType(format) == "" {
		return nil, fmt.Errorf("reading a sound: %w", os.ErrNotExist)
	}
	path := photoPath(PhotoFolder(dir), digest+"."+format)
	b, err := os.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("reading a sound: %w", err)
	}
	if sum := sha256.Sum256(b); hex.EncodeToString(sum[:]) != digest {
		return nil, fmt.Errorf("reading a sound: %w: %s is not as it was kept", ErrDamaged, filepath.Base(path))
	}
	return b, nil
}

// sound lists what is wrong with the body.
func (f *Faults) sound(b Sound) {
	f.name("planting", b.Planting, false)
	f.name("space", b.Space, false)
	f.text("note", b.Note, noteLimit)
	if b.Planting == "" && b.Space == "" {
		f.add("%q or %q is missing; say what it is about", "planting", "space")
	}
	if !isDigest(b.SHA256) {
		f.add("%q is not a digest of 64 hexadecimal digits", "sha256")
	}
	if b.Bytes < 1 || b.Bytes > soundLimit {
		f.add("%q is %d; it must lie between 1 and %d", "bytes", b.Bytes, soundLimit)
	}
	if SoundType(b.Format) == "" {
		f.add("%q is %q; it is no format that is kept", "format", clip(b.Format))
	}
}

func (f *Faults) caption(b Caption) {
	if !IsID(b.Picture) {
		f.add("%q is %q; it must be the id of an entry", "picture", clip(b.Picture))
	}
	f.text("note", b.Note, noteLimit)
	if b.Note == "" {
		f.add("%q is missing; say what it shows", "note")
	}
}

// caption puts words to a picture or sound.
func (r *replayer) caption(b Caption) {
	for i := range r.pictures {
		if r.pictures[i].Event == b.Picture {
			r.pictures[i].Note = b.Note
		}
	}
	for i := range r.sounds {
		if r.sounds[i].Event == b.Picture {
			r.sounds[i].Note = b.Note
		}
	}
}
