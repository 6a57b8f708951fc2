package ledger

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"bedweek/internal/cal"
)

// Drilled is what a restore drill found. The last one is kept in the folder.
type Drilled struct {
	At      time.Time `json:"at"`
	OK      bool      `json:"ok"`
	Backups int       `json:"backups"` // restored into a new folder, checked, counted
	Words   string    `json:"words"`
}

const drillName = "drill.json"

// Drill restores every proven backup of a data folder into a new folder under
// scratch ("" = the system's own place for such), goes through the result,
// compares the counts, and keeps an entry in it, as after a real restore. The
// folders are removed again. The record itself is not touched.
func Drill(ctx context.Context, dir, scratch string, o Options) (Drilled, error) {
	if o.Now == nil {
		panic("ledger: Options.Now is nil")
	}
	d := Drilled{At: o.Now().UTC()}
	all := Backups(dir)
	err := func() error {
		if len(all) == 0 {
			return errors.New("there is no backup to try")
		}
		for _, p := range all {
			if err := ctx.Err(); err != nil {
				return err
			}
			if err := drillOne(ctx, p, scratch, o); err != nil {
				return fmt.Errorf("%s: %w", p.File, err)
			}
			d.Backups++
		}
		return nil
	}()
	d.OK = err == nil
	d.Words = fmt.Sprintf("%d of %d backups were restored into a new folder, checked and counted.", d.Backups, len(all))
	if err != nil {
		d.Words += " " + err.Error() + "."
	}
	b, jerr := json.MarshalIndent(d, "", "\t")
	if jerr == nil {
		jerr = writeSynced(dir, drillName, append(b, '\n'))
	}
	if err == nil {
		err = jerr
	}
	if err != nil {
		err = fmt.Errorf("restore drill: %w", err)
	}
	return d, err
}

func drillOne(ctx context.Context, p Proof, scratch string, o Options) (err error) {
	at, err := os.MkdirTemp(scratch, "bedweek-drill-")
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(at)) }()
	to := filepath.Join(at, "data")
	back, err := Restore(to, p.Path, o)
	if err != nil {
		return err
	}
	if back.Proof.Entries != p.Entries+1 || back.Proof.Plantings != p.Plantings || back.Proof.Photos != p.Photos {
		return fmt.Errorf("%w: %d entries, %d plantings and %d pictures came back of %d, %d and %d", ErrDamaged,
			back.Proof.Entries-1, back.Proof.Plantings, back.Proof.Photos, p.Entries, p.Plantings, p.Photos)
	}
	l, err := Open(to, o)
	if err != nil {
		return err
	}
	e, err := NewEvent("home", cal.FromTime(o.Now()), Looked, Look{Space: "drill", Looks: "well"})
	if err == nil {
		_, err = l.Append(ctx, e)
	}
	if err = errors.Join(err, l.Close()); err != nil {
		return err
	}
	if r := Audit(to); !r.OK {
		return fmt.Errorf("%w: %s", ErrDamaged, r.Words())
	}
	return nil
}

// LastDrill returns the last restore drill of a data folder; false = none.
func LastDrill(dir string) (Drilled, bool) {
	var d Drilled
	b, err := os.ReadFile(filepath.Join(dir, drillName))
	if err != nil || json.Unmarshal(b, &d) != nil || d.At.IsZero() {
		return Drilled{}, false
	}
	return d, true
}

// Free returns the room left on the data folder's disk in bytes; false where
// the system cannot be asked.
func Free(dir string) (uint64, bool) { return freeBytes(dir) }
