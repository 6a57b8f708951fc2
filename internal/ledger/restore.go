package ledger

import (
	"context"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"bedweek/internal/cal"
)

// What a restore leaves in the data folder while it is under way and after.
const (
	restoringName = "restoring"        // the new record, being made and proven
	restoreMark   = "restore.underway" // names the folder the old record goes to
	epochName     = "ledger.epoch"     // highest epoch ever begun in this folder
	asideName     = "aside"            // old records, under dated names
)

// Loss is what the record holds and a backup does not.
type Loss struct {
	Backup   Proof
	Known    bool    // the record could be read; else only Count may be known
	Count    int64   // entries that would be gone, -1 = not known
	Newer    []Event // those entries, in order of writing, when Known
	NotKnown string  // why the record could not be read
}

// WouldLose tells what of the record in dir a backup does not hold. Nothing is
// changed.
func WouldLose(dir, backup string) (Loss, error) {
	p, err := VerifyBackup(backup)
	if err != nil {
		return Loss{}, err
	}
	in, err := eventsOf(backup)
	if err != nil {
		return Loss{}, fmt.Errorf("reading the backup: %w", err)
	}
	loss := Loss{Backup: p, Count: -1}
	live, err := liveEvents(dir)
	if err != nil {
		loss.NotKnown = err.Error()
		if h, ok, _ := readHead(dir); ok && h.seq >= p.Entries {
			loss.Count = h.seq - p.Entries
		}
		return loss, nil
	}
	has := make(map[string]bool, len(in))
	for _, e := range in {
		has[e.ID] = true
	}
	loss.Known = true
	for _, e := range live {
		if !has[e.ID] {
			loss.Newer = append(loss.Newer, e)
		}
	}
	loss.Count = int64(len(loss.Newer))
	return loss, nil
}

// eventsOf reads all entries of a copy, checked.
func eventsOf(path string) ([]Event, error) {
	db, err := openReaders(path, "mode=ro", "immutable=1")
	if err != nil {
		return nil, damage(err)
	}
	defer db.Close()
	events, _, err := readEvents(context.Background(), db, mark{0, firstChain()})
	if err != nil {
		return nil, damage(err)
	}
	return events, nil
}

// liveEvents reads all entries of the record in dir, checked, and compares
// them with the mark of the last one kept.
func liveEvents(dir string) ([]Event, error) {
	steps, err := migrations(shipped)
	if err != nil {
		return nil, err
	}
	present, err := found(dir, steps)
	if err != nil {
		return nil, err
	}
	if !present {
		return nil, nil
	}
	x := inspect(dir, steps)
	if err := x.through(context.Background(), true); err != nil {
		return nil, err
	}
	return x.events, nil
}

// Back is a restore that was done.
type Back struct {
	Proof  Proof  // of the record as it stands now
	Epoch  int    // its number, 1 for the first restore
	Aside  string // folder with the old record; "" = there was none
	Before Proof  // backup of the old record made first; empty when it could not be read
}

// Restore puts the record in dir back to a backup. The backup is proven first.
// A record that still opens is backed up before. The new record is made
// beside the old one, begins a new epoch, and is proven; then the old one goes
// aside, under a dated name, and the new one takes its place; then it is
// proven where it stands. A restore cut off at any moment is finished by the
// next start, or never began. No program may have the record open.
func Restore(dir, backup string, o Options) (Back, error) {
	if o.Now == nil {
		panic("ledger: Options.Now is nil")
	}
	if o.Program == "" {
		o.Program = "bedweek"
	}
	b, err := restore(context.Background(), dir, backup, o)
	if err != nil {
		return Back{}, fmt.Errorf("restoring %s: %w", filepath.Base(backup), err)
	}
	return b, nil
}

func restore(ctx context.Context, dir, backup string, o Options) (Back, error) {
	p, err := VerifyBackup(backup)
	if err != nil {
		return Back{}, err
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return Back{}, fmt.Errorf("making the folder: %w", err)
	}
	if _, err := kindOfFolder(dir).judge(dir); err != nil {
		return Back{}, err
	}
	if free, known := freeBytes(dir); known && free < uint64(roomFactor*float64(p.Bytes))+uint64(p.PhotoBytes) {
		return Back{}, fmt.Errorf("%w: a restore needs %d MB. Nothing was begun", ErrNoSpace, uint64(roomFactor*float64(p.Bytes)+float64(p.PhotoBytes))>>20+1)
	}
	var out Back
	live, readable := liveEvents(dir)
	if readable == nil && len(live) > 0 {
		if out.Before, err = backupNow(ctx, dir, o); err != nil {
			return Back{}, fmt.Errorf("backing up the record as it stands: %w", err)
		}
	}
	lock, err := takeLock(dir, o.Program)
	if err != nil {
		return Back{}, err
	}
	defer lock.Close()
	if err := finishRestore(dir, nil); err != nil {
		return Back{}, err
	}
	if out.Epoch, err = stage(ctx, dir, backup, p, live, o); err != nil {
		return Back{}, err
	}
	if err := restorePhotos(dir, backup); err != nil {
		return Back{}, err
	}
	out.Aside = filepath.Join(dir, asideName, "before-restore-"+o.Now().UTC().Format("20060102T150405.000Z"))
	if err := restoreBesides(dir, out.Aside, p); err != nil {
		return Back{}, err
	}
	if err := writeSynced(dir, restoreMark, []byte(filepath.Base(out.Aside)+"\n")); err != nil {
		return Back{}, err
	}
	if err := finishRestore(dir, o.cut); err != nil {
		return Back{}, err
	}
	if _, err := os.Stat(out.Aside); err != nil {
		out.Aside = ""
	}
	steps, err := migrations(shipped)
	if err != nil {
		return Back{}, err
	}
	x := inspect(dir, steps)
	if err := x.through(ctx, false); err != nil {
		return Back{}, fmt.Errorf("proving the restored record: %w", err)
	}
	if x.head.seq != p.Entries+1 || hex.EncodeToString(x.events[p.Entries].Chain) == p.Chain {
		return Back{}, fmt.Errorf("proving the restored record: %w: it holds %d entries, the backup %d", ErrDamaged, x.head.seq, p.Entries)
	}
	out.Proof, err = prove(ctx, filepath.Join(dir, dataName), steps, mark{p.Entries, mustHex(p.Chain)}, PhotoFolder(dir))
	out.Proof.Weather = p.Weather
	return out, err
}

func mustHex(s string) []byte {
	b, err := hex.DecodeString(s)
	if err != nil {
		return nil // a proven manifest holds only what was written from bytes
	}
	return b
}

// backupNow backs up a record that nobody has open.
func backupNow(ctx context.Context, dir string, o Options) (Proof, error) {
	l, err := Open(dir, Options{Now: o.Now, Program: o.Program})
	if err != nil {
		return Proof{}, err
	}
	p, err := l.Backup(ctx, "")
	return p, errors.Join(err, l.Close())
}

// stage makes the new record in a folder of its own: a copy of the backup,
// raised to this program's layout, with the entry that begins the epoch.
func stage(ctx context.Context, dir, backup string, p Proof, live []Event, o Options) (epoch int, err error) {
	at := filepath.Join(dir, restoringName)
	if err := os.RemoveAll(at); err != nil {
		return 0, fmt.Errorf("clearing an unfinished restore: %w", err)
	}
	if err := os.Mkdir(at, 0o700); err != nil {
		return 0, err
	}
	if err := copySynced(backup, filepath.Join(at, dataName)); err != nil {
		return 0, fmt.Errorf("copying the backup: %w", err)
	}
	l, err := Open(at, Options{Now: o.Now, Program: o.Program})
	if err != nil {
		return 0, err
	}
	defer func() { err = errors.Join(err, l.Close()) }()
	was, err := l.Events(ctx)
	if err != nil {
		return 0, err
	}
	epoch = 1 + max(epochOf(was), epochOf(live), readEpoch(dir))
	if err := writeSynced(dir, epochName, []byte(fmt.Sprintf("bedweek epoch 1\n%d\n", epoch))); err != nil {
		return 0, err
	}
	body := Restoration{Epoch: epoch, From: p.File, Entries: int(p.Entries), Chain: p.Chain}
	if p.Entries == 0 {
		body.Chain = hex.EncodeToString(firstChain())
	}
	e, err := NewEvent("home", cal.FromTime(o.Now()), Restored, body)
	if err != nil {
		return 0, err
	}
	_, err = l.Append(ctx, e)
	return epoch, err
}

func epochOf(events []Event) int {
	n := 0
	for _, e := range events {
		if e.Kind != Restored {
			continue
		}
		if b, err := Decode(e); err == nil {
			n = max(n, b.(Restoration).Epoch)
		}
	}
	return n
}

func readEpoch(dir string) int {
	var n int
	b, err := os.ReadFile(filepath.Join(dir, epochName))
	if err != nil {
		return 0
	}
	if k, err := fmt.Sscanf(string(b), "bedweek epoch 1\n%d\n", &n); k != 1 || err != nil {
		return 0
	}
	return n
}

// record files in the order in which they move: the database last among the
// old, so that a log never stands beside a database that is not its own.
var recordFiles = [...]string{dataName + "-wal", dataName + "-shm", headName, dataName}

// finishRestore carries a restore through from its mark on. It may be called
// again after a cut at any step. cut, for tests, may end it before a step.
func finishRestore(dir string, cut func(step string) error) error {
	b, err := os.ReadFile(filepath.Join(dir, restoreMark))
	if errors.Is(err, os.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("finishing a restore: %w", err)
	}
	name := strings.TrimSpace(string(b))
	if name == "" || name != filepath.Base(name) || !strings.HasPrefix(name, "before-restore-") {
		return fmt.Errorf("finishing a restore: %w: %s does not say where the old record goes", ErrDamaged, restoreMark)
	}
	aside, staged := filepath.Join(dir, asideName, name), filepath.Join(dir, restoringName)
	step := func(what string, do func() error) {
		if err == nil && cut != nil {
			err = cut(what)
		}
		if err == nil {
			err = do()
		}
	}
	if exists(filepath.Join(staged, dataName)) { // what stands in dir is the old record
		for _, f := range recordFiles {
			if exists(filepath.Join(dir, f)) {
				step("aside "+f, func() error { return moveInto(aside, dir, f) })
			}
		}
		step("new "+dataName, func() error { return os.Rename(filepath.Join(staged, dataName), filepath.Join(dir, dataName)) })
	}
	if exists(filepath.Join(staged, headName)) {
		step("new "+headName, func() error { return os.Rename(filepath.Join(staged, headName), filepath.Join(dir, headName)) })
	}
	step("keep names", func() error { return syncFolder(dir) })
	step("unmark", func() error { return os.Remove(filepath.Join(dir, restoreMark)) })
	step("clear", func() error { return os.RemoveAll(staged) })
	step("keep names again", func() error { return syncFolder(dir) })
	if err != nil {
		return fmt.Errorf("finishing a restore: %w", err)
	}
	return nil
}

// resumeRestore finishes a restore that was cut off after its mark was
// written, and clears away one that was cut off before.
func resumeRestore(dir, program string) error {
	if !exists(filepath.Join(dir, restoreMark)) && !exists(filepath.Join(dir, restoringName)) {
		return nil
	}
	lock, err := takeLock(dir, program)
	if err != nil {
		return err
	}
	defer lock.Close()
	if err := finishRestore(dir, nil); err != nil {
		return err
	}
	return os.RemoveAll(filepath.Join(dir, restoringName))
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}

// moveInto moves a file of dir into a folder, made when it is not there.
func moveInto(folder, dir, name string) error {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return err
	}
	if err := syncFolder(filepath.Dir(folder)); err != nil {
		return err
	}
	if err := os.Rename(filepath.Join(dir, name), filepath.Join(folder, name)); err != nil {
		return err
	}
	return syncFolder(folder)
}

// writeSynced writes a small file whole or not at all.
func writeSynced(dir, name string, data []byte) error {
	temp := filepath.Join(dir, name+".new")
	if err := os.WriteFile(temp, data, 0o600); err != nil {
		return fmt.Errorf("writing %s: %w", name, err)
	}
	if err := syncFile(temp); err != nil {
		return err
	}
	if err := os.Rename(temp, filepath.Join(dir, name)); err != nil {
		return fmt.Errorf("naming %s: %w", name, err)
	}
	if err := syncFolder(dir); err != nil {
		return fmt.Errorf("keeping the name %s: %w", name, err)
	}
	return nil
}
