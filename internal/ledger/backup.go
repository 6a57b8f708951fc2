package ledger

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"sort"
	"strings"
	"time"
)

// Proof is the manifest of a backup: what was found when the finished file
// was opened again, checked and counted. It lies beside the file as JSON.
type Proof struct {
	File      string    `json:"file"` // name of the copy, in the same folder
	Made      time.Time `json:"made"`
	Bytes     int64     `json:"bytes"`
	SHA256    string    `json:"sha256"`
	Entries   int64     `json:"entries"`
	Plantings int       `json:"plantings"`
	Chain     string    `json:"chain"` // of the last entry
	Layout    int       `json:"layout"`
	Program   string    `json:"program"`

	Photos     int   `json:"photos,omitempty"` // pictures the entries name, each beside the copy in photos/
	PhotoBytes int64 `json:"photo_bytes,omitempty"`
	Epoch      int   `json:"epoch,omitempty"` // restores the record has been through

	Weather []Beside `json:"weather,omitempty"` // files the garden names, each in weather/ beside the copy

	Path string `json:"-"` // of the copy
}

// Words says in one sentence what the backup holds.
func (p Proof) Words() string {
	return fmt.Sprintf("%s at %s UTC, %d entries (%s)", p.Made.UTC().Format("2 January 2006"), p.Made.UTC().Format("15:04"), p.Entries, p.File)
}

// roomFactor is how much room a backup asks for, in sizes of the database:
// the copy, a temporary file while it is made, and a fifth to spare.
const roomFactor = 2.2

// making begins the name of a copy that is not proven yet.
const making = ".making-"

// BackupFolder is where the backups of a data folder lie.
func BackupFolder(dir string) string { return filepath.Join(dir, "backups") }

// Backup makes a copy in folder ("" = the data folder's own backups), opens it
// again, checks every page, digest and chain value, counts, and only then
// gives it its name and its manifest. Entries written meanwhile may be in it.
func (l *Ledger) Backup(ctx context.Context, folder string) (Proof, error) {
	if folder == "" {
		folder = BackupFolder(l.dir)
	}
	l.backing.Lock()
	defer l.backing.Unlock()
	seq, chain := l.Head()
	steps, err := migrations(shipped)
	if err != nil {
		return Proof{}, err
	}
	p, err := l.backup(ctx, l.readers, folder, steps, mark{seq, chain})
	if err != nil {
		return Proof{}, fmt.Errorf("backing up to %s: %w", folder, err)
	}
	return p, nil
}

// backupBefore copies the record as it stands before its layout is changed.
func (l *Ledger) backupBefore(ctx context.Context, steps []migration) error {
	_, err := l.backup(ctx, l.writer, BackupFolder(l.dir), steps, mark{})
	return err
}

func (l *Ledger) backup(ctx context.Context, db sqlRunner, folder string, steps []migration, least mark) (p Proof, err error) {
	if err := l.room(folder); err != nil {
		return Proof{}, err
	}
	temp := filepath.Join(folder, making+NewID())
	defer func() {
		if err != nil {
			os.Remove(temp)
			os.Remove(temp + ".json")
		}
	}()
	if _, err := db.ExecContext(ctx, "VACUUM INTO ?", temp); err != nil {
		if full(err) {
			return Proof{}, fmt.Errorf("%w (%v)", ErrNoSpace, err)
		}
		return Proof{}, fmt.Errorf("copying: %w", err)
	}
	if err := syncFile(temp); err != nil {
		return Proof{}, err
	}
	weather, err := l.takeFiles(ctx, temp, folder)
	if err != nil {
		return Proof{}, err
	}
	p, err = prove(ctx, temp, steps, least, PhotoFolder(folder))
	if err != nil {
		return Proof{}, fmt.Errorf("checking the copy: %w", err)
	}
	p.Weather = weather
	p.Made, p.Program = l.now().UTC(), l.program
	p.File = fmt.Sprintf("%s-%09d.db", p.Made.Format("20060102T150405.000Z"), p.Entries)
	p.Path = filepath.Join(folder, p.File)
	return p, finish(temp, folder, p)
}

// takeFiles brings the pictures and weather files that a fresh copy names
// beside it. Each is copied once for all backups of a folder.
func (l *Ledger) takeFiles(ctx context.Context, copied, folder string) ([]Beside, error) {
	events, err := eventsOf(copied)
	if err != nil {
		return nil, fmt.Errorf("checking the copy: %w", err)
	}
	if _, err := copyPhotos(ctx, PhotoFolder(l.dir), PhotoFolder(folder), photosNamed(events)); err != nil {
		return nil, fmt.Errorf("copying the pictures: %w", err)
	}
	weather, err := takeBesides(ctx, l.dir, folder, events)
	if err != nil {
		return nil, fmt.Errorf("copying the weather: %w", err)
	}
	return weather, nil
}

// finish writes the manifest and gives both files their names. The manifest
// comes last: a copy without one is not a backup.
func finish(temp, folder string, p Proof) error {
	b, err := json.MarshalIndent(p, "", "\t")
	if err != nil {
		return err
	}
	if err := os.WriteFile(temp+".json", append(b, '\n'), 0o600); err != nil {
		return fmt.Errorf("writing the manifest: %w", err)
	}
	if err := syncFile(temp + ".json"); err != nil {
		return err
	}
	if _, err := os.Stat(p.Path); err == nil {
		return fmt.Errorf("%s is there already", p.File)
	}
	if err := os.Rename(temp, p.Path); err != nil {
		return fmt.Errorf("naming the copy: %w", err)
	}
	if err := os.Rename(temp+".json", manifestOf(p.Path)); err != nil {
		return fmt.Errorf("naming the manifest: %w", err)
	}
	if err := syncFolder(folder); err != nil {
		return fmt.Errorf("keeping the names in %s: %w", folder, err)
	}
	return nil
}

// room makes the folder, clears what an interrupted backup left, and refuses
// when the disk has not enough room. Where the system cannot be asked, the
// backup goes on and fails by itself when the disk is full.
func (l *Ledger) room(folder string) error { return l.roomFor("a backup", roomFactor, folder) }

// roomFor is the same for work that needs so many sizes of the database.
func (l *Ledger) roomFor(what string, factor float64, folder string) error {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return fmt.Errorf("making the folder: %w", err)
	}
	if err := syncFolder(filepath.Dir(folder)); err != nil {
		return fmt.Errorf("keeping the folder's name: %w", err)
	}
	left, _ := filepath.Glob(filepath.Join(folder, making+"*"))
	for _, f := range left {
		os.Remove(f)
	}
	var size int64
	for _, name := range []string{dataName, dataName + "-wal"} {
		if st, err := os.Stat(filepath.Join(l.dir, name)); err == nil {
			size += st.Size()
		}
	}
	more := max(0, folderSize(PhotoFolder(l.dir))-folderSize(PhotoFolder(folder)))
	need := uint64(factor*float64(size)) + uint64(more)
	if have, known := l.free(folder); known && have < need {
		return fmt.Errorf("%w: %s needs %d MB and %d MB are free. Nothing was begun", ErrNoSpace, what, need>>20+1, have>>20)
	}
	return nil
}

// prove opens a copy by itself, goes through all of it, and counts.
func prove(ctx context.Context, path string, steps []migration, least mark, photos string) (Proof, error) {
	db, err := openReaders(path, "mode=ro", "immutable=1")
	if err != nil {
		return Proof{}, damage(err)
	}
	defer db.Close()
	x := inspection{db: db, steps: steps}
	for _, k := range x.looks() {
		if k.name == "last entry" {
			continue // that mark belongs to the live record
		}
		if _, err := k.run(ctx); err != nil {
			return Proof{}, err
		}
	}
	if x.version == 0 {
		return Proof{}, fmt.Errorf("%w: the copy has no tables", ErrDamaged)
	}
	if x.head.seq < least.seq || least.seq > 0 && !bytes.Equal(x.events[least.seq-1].Chain, least.chain) {
		return Proof{}, fmt.Errorf("%w: the copy does not hold entry %d as it was kept", ErrDamaged, least.seq)
	}
	named := photosNamed(x.events)
	photoBytes, err := provePhotos(photos, named)
	if err != nil {
		return Proof{}, err
	}
	sum, size, err := fileDigest(path)
	return Proof{
		Photos: len(named), PhotoBytes: photoBytes, Epoch: epochOf(x.events),
		Path: path, File: filepath.Base(path), Bytes: size, SHA256: sum, Entries: x.head.seq,
		Plantings: len(x.work.plantings), Chain: hex.EncodeToString(x.head.chain), Layout: x.version,
	}, err
}

// VerifyBackup goes through a backup again and compares it with its manifest.
func VerifyBackup(path string) (Proof, error) {
	said, err := readManifest(manifestOf(path))
	if err != nil {
		return Proof{}, fmt.Errorf("checking the backup %s: %w", filepath.Base(path), err)
	}
	steps, err := migrations(shipped)
	if err != nil {
		return Proof{}, err
	}
	if _, err := peek(path, len(steps)); err != nil {
		return Proof{}, fmt.Errorf("checking the backup: %w", err)
	}
	got, err := prove(context.Background(), path, steps, mark{}, PhotoFolder(filepath.Dir(path)))
	if err != nil {
		return Proof{}, fmt.Errorf("checking the backup %s: %w", filepath.Base(path), err)
	}
	if err := proveBesides(filepath.Dir(path), said.Weather); err != nil {
		return Proof{}, fmt.Errorf("checking the backup %s: %w", filepath.Base(path), err)
	}
	got.Made, got.Program, got.Weather = said.Made, said.Program, said.Weather
	if !reflect.DeepEqual(got, said) {
		return Proof{}, fmt.Errorf("checking the backup %s: %w: it is not the file its manifest tells of", filepath.Base(path), ErrDamaged)
	}
	return got, nil
}

// Backups lists the manifests of a data folder's own backups, oldest first.
// They were proven when made; VerifyBackup proves one again.
func Backups(dir string) []Proof { return listBackups(BackupFolder(dir)) }

func listBackups(folder string) []Proof {
	names, _ := filepath.Glob(filepath.Join(folder, "*.json"))
	var out []Proof
	for _, name := range names {
		if strings.HasPrefix(filepath.Base(name), making) {
			continue
		}
		if p, err := readManifest(name); err == nil {
			out = append(out, p)
		}
	}
	sort.Slice(out, func(i, j int) bool {
		if !out[i].Made.Equal(out[j].Made) {
			return out[i].Made.Before(out[j].Made)
		}
		return out[i].File < out[j].File
	})
	return out
}

func manifestOf(path string) string { return strings.TrimSuffix(path, ".db") + ".json" }

func readManifest(name string) (Proof, error) {
	b, err := os.ReadFile(name)
	if err != nil {
		return Proof{}, fmt.Errorf("reading the manifest: %w", err)
	}
	var p Proof
	if err := json.Unmarshal(b, &p); err != nil {
		return Proof{}, fmt.Errorf("reading the manifest: %w: %v", ErrDamaged, err)
	}
	p.Path = strings.TrimSuffix(name, ".json") + ".db"
	if p.File != filepath.Base(p.Path) {
		return Proof{}, fmt.Errorf("reading the manifest: %w: it tells of %q", ErrDamaged, clip(p.File))
	}
	return p, nil
}

// withLastBackup adds to a refusal what there is to go back to.
func withLastBackup(dir string, err error) error {
	if !errors.Is(err, ErrDamaged) && !errors.Is(err, ErrNotLedger) {
		return err
	}
	all := Backups(dir)
	if len(all) == 0 {
		return fmt.Errorf("%w. There is no proven backup in %s", err, BackupFolder(dir))
	}
	last := all[len(all)-1]
	newer := ""
	if h, ok, _ := readHead(dir); ok && h.seq > last.Entries {
		newer = fmt.Sprintf(" %d newer entries are not in it.", h.seq-last.Entries)
	}
	return fmt.Errorf("%w. Last proven backup: %s.%s", err, last.Words(), newer)
}

func syncFile(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	if err := f.Sync(); err != nil {
		f.Close()
		return fmt.Errorf("keeping %s: %w", filepath.Base(path), err)
	}
	return f.Close()
}

func fileDigest(path string) (sum string, size int64, err error) {
	f, err := os.Open(path)
	if err != nil {
		return "", 0, err
	}
	defer f.Close()
	h := sha256.New()
	size, err = io.Copy(h, f)
	return hex.EncodeToString(h.Sum(nil)), size, err
}
