package ledger

import (
	"database/sql"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"net/url"
	"os"
	"path/filepath"
	"strings"
)

// dataName is the database's name in the data folder.
const dataName = "ledger.db"

// peek reads the first 100 bytes of the database and nothing else. It refuses
// what is no record of ours and what a newer program wrote, before SQLite has
// touched the file. present is false for a folder without a record.
func peek(path string, mine int) (present bool, err error) {
	f, err := os.Open(path)
	if errors.Is(err, os.ErrNotExist) {
		return false, nil
	}
	if err != nil {
		return false, fmt.Errorf("reading %s: %w", path, err)
	}
	defer f.Close()
	if begunOnly(path) {
		return false, nil
	}
	var h [100]byte
	n, err := io.ReadFull(f, h[:])
	switch {
	case n == 0 && errors.Is(err, io.EOF):
		return true, fmt.Errorf("reading %s: %w: the file is empty", path, ErrDamaged)
	case n < len(h):
		return true, fmt.Errorf("reading %s: %w: it is cut off after %d bytes", path, ErrDamaged, n)
	case string(h[:16]) != "SQLite format 3\x00":
		return true, fmt.Errorf("reading %s: %w", path, ErrNotLedger)
	}
	version := int(binary.BigEndian.Uint32(h[60:]))
	if id := binary.BigEndian.Uint32(h[68:]); id != applicationID && !(id == 0 && version == 0) {
		return true, fmt.Errorf("reading %s: %w", path, ErrNotLedger)
	}
	if version > mine {
		return true, fmt.Errorf("reading %s: %w", path, newer(version, programOf(path, version), mine))
	}
	return true, nil
}

// begunOnly reports whether path is left of a first start that was cut off:
// SQLite had made the file, at most its first page with the journal of making
// it, and no mark of a kept entry is there. Such a file never held an entry.
func begunOnly(path string) bool {
	if _, err := os.Stat(filepath.Join(filepath.Dir(path), headName)); err == nil {
		return false
	}
	st, err := os.Stat(path)
	if err != nil || st.Size() > firstPage {
		return false
	}
	if st.Size() == 0 {
		return true
	}
	journal, err := os.Stat(path + "-journal")
	return err == nil && journal.Size() > 0
}

// firstPage is the size of the first page of a new database, in bytes.
const firstPage = 4096

// programOf asks a file that is too new which program made it. The file is
// opened so that nothing beside it is made either.
func programOf(path string, version int) string {
	db, err := sql.Open("sqlite", dsn(path, "mode=ro", "immutable=1"))
	if err != nil {
		return ""
	}
	defer db.Close()
	var program string
	if db.QueryRow("SELECT program FROM schema_version WHERE version = ?", version).Scan(&program) != nil {
		return ""
	}
	return program
}

// dsn names a database file with options, whatever signs its path holds.
func dsn(path string, options ...string) string {
	if full, err := filepath.Abs(path); err == nil {
		path = full
	}
	p := filepath.ToSlash(path)
	if !strings.HasPrefix(p, "/") {
		p = "/" + p // C:/garden becomes /C:/garden
	}
	return "file://" + strings.ReplaceAll((&url.URL{Path: p}).EscapedPath(), "?", "%3F") + "?" + strings.Join(options, "&")
}
