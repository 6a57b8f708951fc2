package ledger

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"testing"
	"time"

	"bedweek/internal/cal"
)

// TestASoundIsKeptAndComesBack keeps a voice note, backs it up, exports and
// brings it in elsewhere, and finds it spoilt when a byte is.
func TestASoundIsKeptAndComesBack(t *testing.T) {
	ctx := context.Background()
	l, err := Open(t.TempDir(), Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	said := append([]byte("OggS"), bytes.Repeat([]byte{7}, 3000)...)
	digest, format, err := l.KeepSound(said)
	if err != nil || format != "ogg" {
		t.Fatalf("kept as %q: %v", format, err)
	}
	e, err := NewEvent("phone", cal.Of(2015, 6, 1), Voiced, Sound{Space: "long-bed", SHA256: digest, Bytes: len(said), Format: format})
	if err != nil {
		t.Fatal(err)
	}
	words, err := NewEvent("phone", cal.Of(2015, 6, 2), Captioned, Caption{Picture: e.ID, Note: "blight on the low leaves"})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := l.Append(ctx, e, words); err != nil {
		t.Fatal(err)
	}
	s, err := l.State(ctx)
	if err != nil || len(s.Sounds) != 1 || s.Sounds[0].Note != "blight on the low leaves" {
		t.Fatalf("replayed as %+v (%v)", s.Sounds, err)
	}
	p, err := l.Backup(ctx, "")
	if err != nil || p.Photos != 1 || p.PhotoBytes != int64(len(said)) {
		t.Fatalf("the backup holds %d files of %d bytes (%v), want the sound", p.Photos, p.PhotoBytes, err)
	}
	out := filepath.Join(t.TempDir(), "out")
	if err := l.Export(ctx, out); err != nil {
		t.Fatal(err)
	}
	other, err := Open(t.TempDir(), Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	defer other.Close()
	if _, err := other.ImportFolder(ctx, out); err != nil {
		t.Fatal(err)
	}
	got, err := OpenSound(other.Dir(), digest, "ogg")
	if err != nil || !bytes.Equal(got, said) {
		t.Fatalf("brought in: %d bytes, %v", len(got), err)
	}
	path := photoPath(PhotoFolder(l.Dir()), digest+".ogg")
	said[100]++
	if err := os.WriteFile(path, said, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := OpenSound(l.Dir(), digest, "ogg"); err == nil {
		t.Error("a spoilt sound is played")
	}
	if Audit(l.Dir()).OK {
		t.Error("the audit does not see the spoilt sound")
	}
	for _, bad := range [][]byte{nil, []byte("<html><script>"), []byte("GIF89a")} {
		if _, _, err := l.KeepSound(bad); err == nil {
			t.Errorf("%q is kept as a sound", bad)
		}
	}
}
