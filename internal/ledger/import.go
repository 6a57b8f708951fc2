package ledger

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
)

// importMost is the most bytes of an events.json that is read.
const importMost = 512 << 20

// Import takes over the entries of an export's events.json that are not here
// yet, all or none, and returns how many. Every digest and the whole chain of
// the file are checked first. A record that holds something is backed up
// before. Taken into an empty record, entries keep their places and chain.
func (l *Ledger) Import(ctx context.Context, r io.Reader) (int, error) {
	events, err := ReadEvents(io.LimitReader(r, importMost))
	if err != nil {
		return 0, fmt.Errorf("%w: %w", ErrNotLedger, err)
	}
	before, _ := l.Head()
	if before > 0 {
		if _, err := l.Backup(ctx, ""); err != nil {
			return 0, fmt.Errorf("backing up before an import: %w", err)
		}
	}
	for i := range events {
		events[i].Seq = 0
	}
	if _, err := l.Append(ctx, events...); err != nil {
		return 0, fmt.Errorf("bringing in %d entries: %w", len(events), err)
	}
	after, _ := l.Head()
	return int(after - before), nil
}

// ImportFolder takes over a whole export: its pictures first, then its entries.
func (l *Ledger) ImportFolder(ctx context.Context, folder string) (int, error) {
	f, err := os.Open(filepath.Join(folder, "events.json"))
	if err != nil {
		return 0, fmt.Errorf("opening the export: %w", err)
	}
	defer f.Close()
	events, err := ReadEvents(io.LimitReader(f, importMost))
	if err != nil {
		return 0, fmt.Errorf("%w: %w", ErrNotLedger, err)
	}
	for _, d := range photosNamed(events) {
		b, err := os.ReadFile(filepath.Join(folder, "photos", fileOf(d)))
		if errors.Is(err, os.ErrNotExist) {
			return 0, fmt.Errorf("bringing in pictures: %s is not in the export", fileOf(d))
		}
		if err != nil {
			return 0, fmt.Errorf("bringing in pictures: %w", err)
		}
		if len(d) > 64 {
			if got, format, err := l.KeepSound(b); err != nil || got+"."+format != d {
				return 0, fmt.Errorf("bringing in sounds: %s is not as it was kept (%v)", d[:12], err)
			}
			continue
		}
		small := b // an export has no thumbnails: the picture stands in for its own
		if t, err := os.ReadFile(filepath.Join(folder, "photos", d+".small.jpg")); err == nil {
			small = t
		}
		if got, err := l.KeepPhoto(b, small); err != nil || got != d {
			return 0, fmt.Errorf("bringing in pictures: %s.jpg is not as it was kept (%v)", d[:12], err)
		}
	}
	if err := importBesides(folder, l.dir, events); err != nil {
		return 0, err
	}
	if _, err := f.Seek(0, io.SeekStart); err != nil {
		return 0, err
	}
	return l.Import(ctx, f)
}
