package ledger

import (
	"fmt"
	"os"
	"path/filepath"
	"time"
)

// How many backups are kept: the newest of each of the last days, weeks and
// months that have one, and the newest of every year for ever.
const (
	keepDays   = 7
	keepWeeks  = 8
	keepMonths = 24
)

// thin splits proofs, oldest first, into those kept and those no longer needed.
func thin(proofs []Proof) (keep, drop []Proof) {
	kept := map[string]bool{}
	mark := func(limit int, period func(time.Time) string) {
		last, n := "", 0
		for i := len(proofs) - 1; i >= 0; i-- {
			if p := period(proofs[i].Made.UTC()); p != last {
				if n == limit {
					return
				}
				last, n = p, n+1
				kept[proofs[i].File] = true
			}
		}
	}
	mark(keepDays, func(t time.Time) string { return t.Format("2006-01-02") })
	mark(keepWeeks, func(t time.Time) string {
		y, w := t.ISOWeek()
		return fmt.Sprint(y, "-", w)
	})
	mark(keepMonths, func(t time.Time) string { return t.Format("2006-01") })
	mark(-1, func(t time.Time) string { return t.Format("2006") })
	for _, p := range proofs {
		if kept[p.File] {
			keep = append(keep, p)
		} else {
			drop = append(drop, p)
		}
	}
	return keep, drop
}

// ThinBackups removes the data folder's backups that are no longer needed and
// returns their names. It proves the newest one again first, and removes
// nothing when that fails. The manifest goes first, so that a copy half
// removed is no backup.
func (l *Ledger) ThinBackups() ([]string, error) {
	l.backing.Lock()
	defer l.backing.Unlock()
	all := Backups(l.dir)
	_, drop := thin(all)
	if len(drop) == 0 {
		return nil, nil
	}
	if _, err := VerifyBackup(all[len(all)-1].Path); err != nil {
		return nil, fmt.Errorf("thinning the backups: %w", err)
	}
	var gone []string
	for _, p := range drop {
		for _, path := range []string{manifestOf(p.Path), p.Path} {
			if err := os.Remove(path); err != nil && !os.IsNotExist(err) {
				return gone, fmt.Errorf("removing %s: %w", filepath.Base(path), err)
			}
		}
		gone = append(gone, p.File)
	}
	return gone, nil
}
