package ledger

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	lib "modernc.org/sqlite/lib"
)

// inspection looks through one folder, reading only. Open stops at the first
// thing that is wrong; Audit goes through all.
type inspection struct {
	dir     string
	db      *sql.DB
	on      sqlRunner // what is asked; db when nothing else is said
	steps   []migration
	version int // 0 until the layout was found in order
	rules   int
	events  []Event
	head    mark
	scanned error // what reading the entries found
	readAll bool  // every entry was read and found in order
	work    *replayer
	kept    keptMark
}

// keptMark is the mark of the last kept entry as it was read.
type keptMark struct {
	mark
	there bool
	err   error
}

// inspect begins to look at a folder. The mark of the last kept entry is read
// before the entries are: while another program writes, more may come between,
// and that many are not missing.
func inspect(dir string, steps []migration) inspection {
	x := inspection{dir: dir, steps: steps, head: mark{0, firstChain()}, work: newReplayer(nil)}
	x.kept.mark, x.kept.there, x.kept.err = readHead(dir)
	return x
}

func (x *inspection) runner() sqlRunner {
	if x.on != nil {
		return x.on
	}
	return x.db
}

// look is one thing to look at. It answers in words, or says what is wrong.
type look struct {
	name string
	run  func(context.Context) (string, error)
}

func (x *inspection) looks() []look {
	return []look{
		{"layout", x.lookLayout},
		{"integrity", x.lookPages},
		{"references", x.lookReferences},
		{"digests", x.lookDigests},
		{"chain", x.lookChain},
		{"last entry", x.lookHead},
		{"plantings", x.lookPlantings},
	}
}

var errNotLooked = errors.New("not looked at, because of what was found before")

func (x *inspection) lookLayout(ctx context.Context) (string, error) {
	v, err := checkSchema(ctx, x.runner(), x.steps)
	if err != nil {
		return "", damage(err)
	}
	if v == 0 {
		var tables int
		if err := x.runner().QueryRowContext(ctx, "SELECT count(*) FROM sqlite_schema").Scan(&tables); err != nil {
			return "", damage(err)
		}
		if tables > 0 {
			return "", ErrNotLedger
		}
		return "The file holds no tables yet.", nil
	}
	x.version = v
	return fmt.Sprintf("The tables are those of layout %d.", v), nil
}

func (x *inspection) lookPages(ctx context.Context) (string, error) {
	rows, err := x.runner().QueryContext(ctx, "PRAGMA integrity_check(10)")
	if err != nil {
		return "", damage(err)
	}
	defer rows.Close()
	first, n := "", 0
	for rows.Next() {
		var s string
		if err := rows.Scan(&s); err != nil {
			return "", damage(err)
		}
		if n == 0 {
			first = s
		}
		n++
	}
	if err := rows.Err(); err != nil {
		return "", damage(err)
	}
	if n != 1 || first != "ok" {
		return "", fmt.Errorf("%w: the file does not hold together: %s", ErrDamaged, clip(first))
	}
	return "The file holds together.", nil
}

func (x *inspection) lookReferences(ctx context.Context) (string, error) {
	rows, err := x.runner().QueryContext(ctx, "PRAGMA foreign_key_check")
	if err != nil {
		return "", damage(err)
	}
	defer rows.Close()
	n := 0
	for rows.Next() {
		n++
	}
	if err := rows.Err(); err != nil {
		return "", damage(err)
	}
	if n > 0 {
		return "", fmt.Errorf("%w: %d plantings name an entry that is not there", ErrDamaged, n)
	}
	return "Every planting's first entry is there.", nil
}

// lookDigests reads every entry once; what it finds of the chain is told by
// lookChain.
func (x *inspection) lookDigests(ctx context.Context) (string, error) {
	x.head = mark{0, firstChain()}
	if x.version == 0 {
		x.readAll, x.work = true, newReplayer(nil)
		return "There are no entries yet.", nil
	}
	x.events, x.head, x.scanned = readEvents(ctx, x.runner(), x.head)
	if x.scanned == nil {
		x.readAll, x.work = true, replayed(nil, x.events)
	}
	if x.scanned != nil && !errors.Is(x.scanned, errChain) {
		return "", damage(x.scanned)
	}
	return fmt.Sprintf("%d entries have the words that were written.", len(x.events)), nil
}

func (x *inspection) lookChain(context.Context) (string, error) {
	switch {
	case errors.Is(x.scanned, errChain):
		return "", x.scanned
	case !x.readAll:
		return "", errNotLooked
	}
	return fmt.Sprintf("%d entries follow one another as they were written.", len(x.events)), nil
}

func (x *inspection) lookHead(context.Context) (string, error) {
	if !x.readAll {
		return "", errNotLooked
	}
	h := x.kept
	switch {
	case h.err != nil:
		return "", h.err
	case !h.there:
		return "No mark of the last kept entry is there to compare with.", nil
	case h.seq > x.head.seq:
		return "", fmt.Errorf("%w: entry %d was kept, but the file ends at %d. The newest %d entries are missing", ErrDamaged, h.seq, x.head.seq, h.seq-x.head.seq)
	}
	chain := firstChain()
	if h.seq > 0 && int(h.seq) <= len(x.events) {
		chain = x.events[h.seq-1].Chain
	}
	if !bytes.Equal(chain, h.chain) {
		return "", fmt.Errorf("%w: entry %d is not the one that was kept in this folder", ErrDamaged, h.seq)
	}
	return fmt.Sprintf("The last kept entry is %d, and it is there.", h.seq), nil
}

func (x *inspection) lookPlantings(ctx context.Context) (string, error) {
	if x.version == 0 {
		return "There are no plantings yet.", nil
	}
	if !x.readAll {
		return "", errNotLooked
	}
	rules, err := rulesOf(ctx, x.runner())
	if err != nil {
		return "", damage(err)
	}
	x.rules = rules
	if rules != replayRules {
		return "The table of plantings was made by other rules. It is made again at the next start.", nil
	}
	table, err := projected(ctx, x.runner())
	if err != nil {
		return "", damage(err)
	}
	if err := compareProjection(table, x.work); err != nil {
		return "", err
	}
	return fmt.Sprintf("%d plantings are as a fresh replay of the entries says.", len(table)), nil
}

// damage turns what SQLite says while reading into ErrDamaged, save for what
// passes or lies outside the file.
func damage(err error) error {
	for _, plain := range []error{ErrDamaged, ErrNewer, ErrNotLedger, context.Canceled, context.DeadlineExceeded} {
		if errors.Is(err, plain) {
			return err
		}
	}
	switch resultCode(err) & 0xff {
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED, lib.SQLITE_CANTOPEN, lib.SQLITE_NOMEM, lib.SQLITE_INTERRUPT, lib.SQLITE_PERM:
		return err
	}
	return fmt.Errorf("%w: %v", ErrDamaged, err)
}

// openToRead opens the database without the right to change it. A folder that
// cannot be written to at all is read as it lies, when no log waits.
func openToRead(dir string) (*sql.DB, error) {
	path := filepath.Join(dir, dataName)
	db, err := openReaders(path, "mode=ro")
	if err == nil {
		return db, nil
	}
	if st, e := os.Stat(path + "-wal"); e == nil && st.Size() > 0 || resultCode(err)&0xff != lib.SQLITE_CANTOPEN {
		return nil, damage(err)
	}
	db, err = openReaders(path, "mode=ro", "immutable=1")
	if err != nil {
		return nil, damage(err)
	}
	return db, nil
}

func openReaders(path string, options ...string) (*sql.DB, error) {
	db, err := sql.Open("sqlite", dsn(path, append(options, "_pragma=busy_timeout(5000)")...))
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(4)
	var n int
	if err := db.QueryRow("SELECT count(*) FROM sqlite_schema").Scan(&n); err != nil {
		db.Close()
		return nil, err
	}
	return db, nil
}
