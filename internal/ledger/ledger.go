package ledger

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"time"
)

// Options are what Open needs from outside.
type Options struct {
	Now     func() time.Time // the clock; must be given
	Program string           // name and version, kept with the layout and in backups
	Rebuild bool             // make the table of plantings again instead of refusing a wrong one

	files fs.FS                   // migrations; nil = those shipped
	cut   func(step string) error // ends a restore before a step, for tests
}

// Ledger is an open record. Its methods may be called from many goroutines.
type Ledger struct {
	dir     string
	now     func() time.Time
	program string
	notes   []string

	lock    *os.File
	last    headFile
	writers *sql.DB
	writer  *sql.Conn // the one connection that writes
	readers *sql.DB
	free    func(dir string) (uint64, bool)

	requests chan *request
	quit     chan struct{}
	ended    chan struct{}
	closing  sync.Once
	backing  sync.Mutex // one backup at a time
	failed   chan struct{}

	kept atomic.Pointer[kept] // what was last kept, for those who do not wait for the writer

	mu      sync.Mutex // held by the writer for a whole transaction
	head    mark
	work    *replayer // nil = must be made again from the file
	state   State
	fresh   bool // state is that of work
	stopped error
}

// Open opens the record in dir, or begins one in a folder that has none. It
// reads and checks every entry before it changes anything, and refuses in
// words: a shared drive, a second writer, a newer layout, a damaged file.
func Open(dir string, o Options) (*Ledger, error) {
	if o.Now == nil {
		panic("ledger: Options.Now is nil")
	}
	if o.Program == "" {
		o.Program = "bedweek"
	}
	if o.files == nil {
		o.files = shipped
	}
	steps, err := migrations(o.files)
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, fmt.Errorf("making the folder %s: %w", dir, err)
	}
	note, err := kindOfFolder(dir).judge(dir)
	if err != nil {
		return nil, err
	}
	if err := checkSQLite(); err != nil {
		return nil, err
	}
	if err := resumeRestore(dir, o.Program); err != nil {
		return nil, err
	}
	present, err := found(dir, steps)
	if err != nil {
		return nil, withLastBackup(dir, err)
	}
	lock, err := takeLock(dir, o.Program)
	if err != nil {
		return nil, err
	}
	l := &Ledger{
		dir: dir, now: o.Now, program: o.Program, lock: lock, free: freeBytes,
		requests: make(chan *request), quit: make(chan struct{}), ended: make(chan struct{}), failed: make(chan struct{}),
	}
	if note != "" {
		l.notes = append(l.notes, note)
	}
	if err := l.open(steps, present, o.Rebuild); err != nil {
		l.release()
		if (full(err) || fullDisk(err)) && !errors.Is(err, ErrNoSpace) {
			err = fmt.Errorf("%w. What was kept is there. Make room and start again (%w)", ErrNoSpace, err)
		}
		return nil, withLastBackup(dir, err)
	}
	go l.write()
	return l, nil
}

// found reports whether dir holds a record. A folder that once held one, and
// holds it no more, is refused: an empty record must not take its place.
func found(dir string, steps []migration) (bool, error) {
	present, err := peek(filepath.Join(dir, dataName), len(steps))
	if present || err != nil {
		return present, err
	}
	if h, ok, _ := readHead(dir); ok && h.seq > 0 {
		return false, fmt.Errorf("opening %s: %w: %s is not there, though %d entries were kept", dir, ErrDamaged, dataName, h.seq)
	}
	if len(listBackups(BackupFolder(dir))) > 0 {
		return false, fmt.Errorf("opening %s: %w: %s is not there, though backups of it are", dir, ErrDamaged, dataName)
	}
	return false, nil
}

func (l *Ledger) open(steps []migration, present, again bool) error {
	ctx := context.Background()
	x := inspect(l.dir, steps)
	if present {
		if err := x.through(ctx, again); err != nil {
			return fmt.Errorf("opening %s: %w", l.dir, err)
		}
	}
	if err := l.openWriter(ctx); err != nil {
		return fmt.Errorf("opening %s to write: %w", l.dir, err)
	}
	if x.version < len(steps) {
		if err := l.raise(ctx, steps, x); err != nil {
			return err
		}
	}
	l.work, l.head = x.work, x.head
	if again || x.rules != replayRules {
		if err := l.Rebuild(ctx); err != nil {
			return err
		}
	}
	if _, ok, _ := readHead(l.dir); present && x.head.seq > 0 && !ok {
		l.notes = append(l.notes, "The mark of the last kept entry was missing. It was made again from the record.")
	}
	var err error
	if l.last, err = openHead(l.dir); err != nil {
		return err
	}
	l.tellKept()
	if err := l.last.write(l.head); err != nil {
		return err
	}
	if err := syncFolder(l.dir); err != nil {
		return fmt.Errorf("keeping the names in %s: %w", l.dir, err)
	}
	l.readers, err = openReaders(filepath.Join(l.dir, dataName), "mode=ro")
	if err != nil {
		return fmt.Errorf("opening %s to read: %w", l.dir, err)
	}
	return nil
}

// through looks at everything, and stops at the first thing wrong.
func (x *inspection) through(ctx context.Context, again bool) (err error) {
	if x.db, err = openToRead(x.dir); err != nil {
		return err
	}
	defer x.db.Close()
	for _, k := range x.looks() {
		if again && k.name == "plantings" {
			continue
		}
		if _, err := k.run(ctx); err != nil {
			return err
		}
	}
	return nil
}

// syncFull is SQLite's synchronous=FULL: the disk is asked at each commit.
const syncFull = "2"

// openWriter opens the one connection that writes and reads its settings back.
func (l *Ledger) openWriter(ctx context.Context) error {
	db, err := sql.Open("sqlite", dsn(filepath.Join(l.dir, dataName), "_pragma=busy_timeout(5000)", "_pragma=journal_mode(WAL)",
		"_pragma=synchronous("+syncMode+")", "_pragma=foreign_keys(1)", "_pragma=recursive_triggers(1)", "_pragma=mmap_size(0)"))
	if err != nil {
		return err
	}
	db.SetMaxOpenConns(1)
	l.writers = db
	if l.writer, err = db.Conn(ctx); err != nil {
		return err
	}
	for _, p := range []struct{ name, want string }{
		{"journal_mode", "wal"}, {"synchronous", syncMode}, {"foreign_keys", "1"}, {"recursive_triggers", "1"},
	} {
		var got string
		if err := l.writer.QueryRowContext(ctx, "PRAGMA "+p.name).Scan(&got); err != nil {
			return err
		}
		if got != p.want {
			return fmt.Errorf("the setting %s is %s, not %s: entries would not be kept surely", p.name, got, p.want)
		}
	}
	return nil
}

// raiseFactor is how much room a newer layout asks for, in sizes of the
// database: the backup before it and the tables written once more in the log
// and in the file. A layout that needs more ends with the disk full, and the
// record is then of the layout before.
const raiseFactor = 3

// raise brings the layout up to date. A record that holds something is backed
// up first. Afterwards the log is emptied into the file, so that the header
// that older programs look at tells the version.
func (l *Ledger) raise(ctx context.Context, steps []migration, x inspection) error {
	if x.version > 0 {
		if err := l.roomFor("a newer layout", raiseFactor, BackupFolder(l.dir)); err != nil {
			return fmt.Errorf("changing the layout: %w", err)
		}
		if err := l.backupBefore(ctx, steps[:x.version]); err != nil {
			return fmt.Errorf("backing up before changing the layout: %w", err)
		}
	}
	if err := migrate(ctx, l.writer, steps, x.version, l.program, l.now()); err != nil {
		return err
	}
	if _, err := l.writer.ExecContext(ctx, "PRAGMA wal_checkpoint(TRUNCATE)"); err != nil {
		return fmt.Errorf("emptying the log: %w", err)
	}
	return nil
}

// Rebuild drops the table of plantings and replays it from the entries.
func (l *Ledger) Rebuild(ctx context.Context) error {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.stopped != nil {
		return l.stopped
	}
	err := func() error {
		if _, err := l.writer.ExecContext(ctx, "BEGIN IMMEDIATE"); err != nil {
			return err
		}
		if err := l.reload(ctx, l.writer); err != nil {
			return err
		}
		if err := rebuild(ctx, l.writer, l.work); err != nil {
			return err
		}
		_, err := l.writer.ExecContext(ctx, "COMMIT")
		return err
	}()
	if err != nil {
		return fmt.Errorf("making the table of plantings again: %w", l.undo(err))
	}
	l.fresh = false
	return nil
}

// Notes returns what is worth knowing about the folder, in words.
func (l *Ledger) Notes() []string { return append([]string(nil), l.notes...) }

// Dir returns the data folder.
func (l *Ledger) Dir() string { return l.dir }

// Failed is closed when writing has stopped for good. The program should then
// say so and end: a disk that failed once may say that all is well the second
// time and still have lost what it was given.
func (l *Ledger) Failed() <-chan struct{} { return l.failed }

// Stopped returns why writing has stopped, nil while it goes on.
func (l *Ledger) Stopped() error {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.stopped
}

// Close waits for the entries under way and closes the record. After a failed
// write the writing connection is left as it is: closing it would move the
// log into the file, which is one more write to a disk that failed.
func (l *Ledger) Close() error {
	l.closing.Do(func() { close(l.quit) })
	<-l.ended
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.release()
}

func (l *Ledger) release() error {
	var errs []error
	if l.readers != nil {
		errs = append(errs, l.readers.Close())
		l.readers = nil
	}
	if l.writers != nil && l.stopped == nil {
		if l.writer != nil {
			errs = append(errs, l.writer.Close())
		}
		errs = append(errs, l.writers.Close())
	}
	l.writer, l.writers = nil, nil
	if l.last.f != nil {
		errs = append(errs, l.last.f.Close())
		l.last.f = nil
	}
	if l.lock != nil {
		errs = append(errs, l.lock.Close())
		l.lock = nil
	}
	return errors.Join(errs...)
}

// oldestSQLite is the first version without the fault in resetting the log
// that could lose committed entries. [SQLite 3.51.3 release notes]
var oldestSQLite = [3]int{3, 51, 3}

func checkSQLite() error {
	db, err := sql.Open("sqlite", ":memory:")
	if err != nil {
		return err
	}
	defer db.Close()
	var v string
	if err := db.QueryRow("SELECT sqlite_version()").Scan(&v); err != nil {
		return fmt.Errorf("asking SQLite for its version: %w", err)
	}
	return judgeSQLite(v)
}

func judgeSQLite(v string) error {
	parts := strings.Split(v, ".")
	for i, least := range oldestSQLite {
		n := 0
		if i < len(parts) {
			n, _ = strconv.Atoi(parts[i])
		}
		if n != least {
			if n > least {
				return nil
			}
			return fmt.Errorf("%w: it is %s, and 3.51.3 is the oldest that keeps entries surely", ErrOldSQLite, v)
		}
	}
	return nil
}
