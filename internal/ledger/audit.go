package ledger

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// Report is what an audit found.
type Report struct {
	OK     bool    `json:"ok"`
	Checks []Check `json:"checks"`
}

// Check is one thing that was looked at, and what was found in words.
type Check struct {
	Name  string `json:"name"`
	OK    bool   `json:"ok"`
	Words string `json:"words"`
}

// Words writes the report for a person, one line a check.
func (r Report) Words() string {
	var b strings.Builder
	for _, c := range r.Checks {
		sign := "ok   "
		if !c.OK {
			sign = "WRONG"
		}
		fmt.Fprintf(&b, "%s  %-10s  %s\n", sign, c.Name, c.Words)
	}
	if r.OK {
		b.WriteString("The record is as it was written.\n")
	} else {
		b.WriteString("The record is not in order. Nothing was changed.\n")
	}
	return b.String()
}

func (r *Report) add(name, words string, err error) {
	if err != nil {
		words = err.Error()
		r.OK = false
	}
	r.Checks = append(r.Checks, Check{name, err == nil, words})
}

// Audit goes through a data folder and its backups, reading only. It may run
// while another program writes there.
func Audit(dir string) Report {
	ctx := context.Background()
	r := Report{OK: true}
	steps, err := migrations(shipped)
	if err != nil {
		r.add("program", "", err)
		return r
	}
	note, err := kindOfFolder(dir).judge(dir)
	if note == "" {
		note = "The folder lies on this machine's own disk."
	}
	r.add("folder", note, err)
	auditRecord(ctx, &r, dir, steps)
	auditBackups(&r, dir)
	return r
}

func auditRecord(ctx context.Context, r *Report, dir string, steps []migration) {
	present, err := found(dir, steps)
	if path := filepath.Join(dir, dataName); err == nil && begunOnly(path) {
		r.add("file", "A first start was cut off before anything was kept. The next start begins the record.", nil)
		return
	}
	if err == nil && !present {
		err = fmt.Errorf("%w: there is no %s in %s", ErrNotLedger, dataName, dir)
	}
	x := inspect(dir, steps)
	if err == nil {
		x.db, err = openToRead(dir)
	}
	r.add("file", "The file opens.", withLastBackup(dir, err))
	if err != nil {
		return
	}
	defer x.db.Close()
	// One reading transaction, so that all checks see the same entries.
	conn, err := x.db.Conn(ctx)
	if err == nil {
		defer conn.Close()
		_, err = conn.ExecContext(ctx, "BEGIN")
	}
	if err != nil {
		r.add("reading", "", damage(err))
		return
	}
	x.on = conn
	for _, k := range x.looks() {
		words, err := k.run(ctx)
		r.add(k.name, words, err)
	}
	if named := photosNamed(x.events); len(named) > 0 {
		_, err := provePhotos(PhotoFolder(dir), named)
		r.add("pictures", fmt.Sprintf("%d pictures and sounds are as they were kept.", len(named)), err)
	}
}

func auditBackups(r *Report, dir string) {
	copies, _ := filepath.Glob(filepath.Join(BackupFolder(dir), "*.db"))
	manifests, _ := filepath.Glob(filepath.Join(BackupFolder(dir), "*.json"))
	has := map[string]bool{}
	var bad []string
	last, whole, unfinished := "", 0, ""
	for _, c := range copies {
		has[manifestOf(c)] = true
		if _, err := os.Stat(manifestOf(c)); os.IsNotExist(err) {
			unfinished = " " + filepath.Base(c) + " has no manifest and does not count as a backup."
			continue
		}
		whole++
		p, err := VerifyBackup(c)
		if err != nil {
			bad = append(bad, err.Error())
			continue
		}
		last = p.Words()
	}
	for _, m := range manifests {
		if !has[m] && !strings.HasPrefix(filepath.Base(m), making) {
			bad = append(bad, filepath.Base(m)+" tells of a copy that is not there")
		}
	}
	switch {
	case len(bad) > 0:
		r.add("backups", "", fmt.Errorf("%d backups are not in order: %s", len(bad), strings.Join(bad, "; ")))
	case whole == 0:
		r.add("backups", "There is no backup yet."+unfinished, nil)
	default:
		r.add("backups", fmt.Sprintf("%d backups were opened and checked. The last one: %s.%s", whole, last, unfinished), nil)
	}
}
