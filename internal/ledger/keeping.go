package ledger

import (
	"encoding/hex"
	"strconv"

	"bedweek/internal/cal"
)

// Kinds that tell of the keeping itself, and of pictures.
const (
	Pictured Kind = "photo"    // body: Photo
	Restored Kind = "restored" // body: Restoration; begins a new epoch
)

// Bodies, layout 1.
type (
	// Photo is a picture of a space or a planting. The picture itself lies in
	// the photo store under its digest.
	Photo struct {
		Planting string `json:"planting,omitempty"`
		Space    string `json:"space,omitempty"`
		SHA256   string `json:"sha256"`
		Bytes    int    `json:"bytes"`
		Width    int    `json:"width"` // px
		Height   int    `json:"height"`
		Note     string `json:"note,omitempty"`
	}
	// Restoration says that the record was put back to a backup. What follows
	// it is a new epoch: a device that sees a new epoch sends everything again.
	Restoration struct {
		Epoch   int    `json:"epoch"`   // 1 after the first restore
		From    string `json:"from"`    // the backup's file name
		Entries int    `json:"entries"` // the backup held
		Chain   string `json:"chain"`   // of the last of them
	}
)

// PictureNote is a photo with its entry, in replay order.
type PictureNote struct {
	Event string
	On    cal.Day
	Photo
}

// photoLimit is the most bytes a kept picture may have. Ours have under 1 MB.
const photoLimit = 20 << 20

func (f *Faults) photo(b Photo) {
	f.name("planting", b.Planting, false)
	f.name("space", b.Space, false)
	f.text("note", b.Note, noteLimit)
	if b.Planting == "" && b.Space == "" {
		f.add("%q or %q is missing; say what is in the picture", "planting", "space")
	}
	if !isDigest(b.SHA256) {
		f.add("%q is not a digest of 64 hexadecimal digits", "sha256")
	}
	if b.Bytes < 1 || b.Bytes > photoLimit {
		f.add("%q is %d; it must lie between 1 and %d", "bytes", b.Bytes, photoLimit)
	}
	if b.Width < 1 || b.Height < 1 || b.Width > 20000 || b.Height > 20000 {
		f.add("a picture of %d by %d px is not kept", b.Width, b.Height)
	}
}

func (f *Faults) restoration(b Restoration) {
	if b.Epoch < 1 || b.Epoch > 1e6 {
		f.add("%q is %d; it must be 1 or more", "epoch", b.Epoch)
	}
	if b.Entries < 0 {
		f.add("%q is %d; it must be 0 or more", "entries", b.Entries)
	}
	f.text("from", b.From, wordsLimit)
	if !isDigest(b.Chain) {
		f.add("%q is not a chain value of 64 hexadecimal digits", "chain")
	}
}

// isDigest reports whether s is a SHA-256 in lower hexadecimal digits.
func isDigest(s string) bool {
	b, err := hex.DecodeString(s)
	return err == nil && len(b) == 32 && hex.EncodeToString(b) == s
}

// epochMark names an epoch: its number and the entry that began it, so that
// two restores are never taken for one. "0" = never restored.
func epochMark(n int, event string) string {
	if n == 0 {
		return "0"
	}
	return strconv.Itoa(n) + "-" + event
}
