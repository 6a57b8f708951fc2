package ledger

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"

	"bedweek/internal/garden"
)

// Beside is a weather file that lies beside the record because a garden text
// names it. A backup keeps it, an export holds it, a restore brings it back.
type Beside struct {
	Name   string `json:"name"` // as the garden text has it
	SHA256 string `json:"sha256"`
	Bytes  int64  `json:"bytes"`
}

// besideMost is the largest weather file that is kept, in bytes.
const besideMost = 64 << 20

// weatherNamed lists the weather files that garden texts name, each once, in
// order. A name that is a path, or one of the record's own files, is none.
func weatherNamed(events []Event) []string {
	seen := map[string]bool{}
	for _, e := range events {
		if e.Kind != GardenSet {
			continue
		}
		b, err := Decode(e)
		if err != nil {
			continue
		}
		if v, ok := garden.Look([]byte(b.(Garden).Text), "place", "weather"); ok && besideName(v.Text) {
			seen[v.Text] = true
		}
	}
	out := make([]string, 0, len(seen))
	for name := range seen {
		out = append(out, name)
	}
	sort.Strings(out)
	return out
}

func besideName(name string) bool {
	if name == "" || name != filepath.Base(name) || strings.HasPrefix(name, ".") || strings.ContainsAny(name, `/\`) {
		return false
	}
	switch strings.ToLower(filepath.Ext(name)) {
	case ".csv", ".txt", ".dly":
	default:
		return false
	}
	return name != "events.csv" && name != "plantings.csv" && name != "README.txt" // an export's own
}

// besides reads which of the named files lie in a folder. One that does not
// is left out: a text may name a file that nobody gave.
func besides(dir string, names []string) ([]Beside, error) {
	var out []Beside
	for _, name := range names {
		path := filepath.Join(dir, name)
		st, err := os.Lstat(path)
		if err != nil || !st.Mode().IsRegular() || st.Size() > besideMost {
			continue
		}
		sum, n, err := fileDigest(path)
		if err != nil {
			return nil, fmt.Errorf("reading the weather file %s: %w", name, err)
		}
		out = append(out, Beside{name, sum, n})
	}
	return out, nil
}

// besideFolder is where a folder of backups keeps the weather files, each
// under its digest, once for all backups.
func besideFolder(backups string) string { return filepath.Join(backups, "weather") }

func besideKept(backups string, b Beside) string {
	return filepath.Join(besideFolder(backups), b.SHA256+".csv")
}

// takeBesides brings the weather files that the copied entries name into a
// folder of backups.
func takeBesides(ctx context.Context, dir, backups string, events []Event) ([]Beside, error) {
	all, err := besides(dir, weatherNamed(events))
	if err != nil {
		return nil, err
	}
	for _, b := range all {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		data, err := os.ReadFile(filepath.Join(dir, b.Name))
		if err != nil {
			return nil, err
		}
		if err := keepFile(besideFolder(backups), besideKept(backups, b), data); err != nil {
			return nil, fmt.Errorf("weather file %s: %w", b.Name, err)
		}
	}
	return all, proveBesides(backups, all)
}

// proveBesides reads every weather file of a backup and compares it with its
// digest.
func proveBesides(backups string, all []Beside) error {
	for _, b := range all {
		if !besideName(b.Name) || !isDigest(b.SHA256) {
			return fmt.Errorf("%w: the manifest names a weather file %q", ErrDamaged, clip(b.Name))
		}
		sum, n, err := fileDigest(besideKept(backups, b))
		if errors.Is(err, os.ErrNotExist) {
			return fmt.Errorf("%w: the weather file %s is not there", ErrDamaged, b.Name)
		}
		if err != nil {
			return err
		}
		if sum != b.SHA256 || n != b.Bytes {
			return fmt.Errorf("%w: the weather file %s is not as it was kept", ErrDamaged, b.Name)
		}
	}
	return nil
}

// restoreBesides brings a backup's weather files back. One that lies there
// with other content goes aside first.
func restoreBesides(dir, aside string, p Proof) error {
	for _, b := range p.Weather {
		to := filepath.Join(dir, b.Name)
		if sum, _, err := fileDigest(to); err == nil && sum == b.SHA256 {
			continue
		}
		if exists(to) {
			if err := moveInto(aside, dir, b.Name); err != nil {
				return fmt.Errorf("bringing back the weather file %s: %w", b.Name, err)
			}
		}
		data, err := os.ReadFile(besideKept(filepath.Dir(p.Path), b))
		if err == nil {
			err = keepFile(dir, to, data)
		}
		if err != nil {
			return fmt.Errorf("bringing back the weather file %s: %w", b.Name, err)
		}
	}
	return nil
}

// importBesides takes over the weather files of an export that are not here.
// A name made from its content must fit it.
func importBesides(from, dir string, events []Event) error {
	all, err := besides(from, weatherNamed(events))
	if err != nil {
		return err
	}
	for _, b := range all {
		if mark, ok := strings.CutPrefix(strings.TrimSuffix(b.Name, ".csv"), "weather-"); ok && len(mark) == 8 && !strings.HasPrefix(b.SHA256, mark) {
			return fmt.Errorf("%w: the weather file %s is not as it was kept", ErrDamaged, b.Name)
		}
		to := filepath.Join(dir, b.Name)
		if exists(to) {
			continue
		}
		data, err := os.ReadFile(filepath.Join(from, b.Name))
		if err == nil {
			err = keepFile(dir, to, data)
		}
		if err != nil {
			return fmt.Errorf("bringing in the weather file %s: %w", b.Name, err)
		}
	}
	return nil
}

// BesideName is the name under which the content of a weather file is kept.
func BesideName(data []byte) string {
	sum := sha256.Sum256(data)
	return "weather-" + hex.EncodeToString(sum[:4]) + ".csv"
}
