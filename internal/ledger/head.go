package ledger

import (
	"bytes"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
)

// headName is a small file beside the database with the last entry that was
// acknowledged. A database whose log was lost, or an old copy put in its
// place, is whole in itself; only this file tells that entries are missing.
const headName = "ledger.head"

// mark is a place in the chain.
type mark struct {
	seq   int64
	chain []byte
}

func (m mark) text() []byte {
	return fmt.Appendf(nil, "bedweek head 1\nseq %019d\nchain %s\n", m.seq, hex.EncodeToString(m.chain))
}

// parseMark reads the text back; it takes nothing but that exact text.
func parseMark(b []byte) (mark, bool) {
	var m mark
	var seq, chain string
	if n, err := fmt.Sscanf(string(b), "bedweek head 1\nseq %s\nchain %s\n", &seq, &chain); n != 2 || err != nil {
		return mark{}, false
	}
	if _, err := fmt.Sscanf(seq, "%d", &m.seq); err != nil {
		return mark{}, false
	}
	c, err := hex.DecodeString(chain)
	m.chain = c
	if err != nil || m.seq < 0 || !bytes.Equal(m.text(), b) {
		return mark{}, false
	}
	return m, true
}

// readHead returns the last acknowledged entry. It is not there in a new
// folder, and not readable after a power cut in the midst of its writing.
func readHead(dir string) (m mark, ok bool, err error) {
	b, err := os.ReadFile(filepath.Join(dir, headName))
	if errors.Is(err, os.ErrNotExist) {
		return mark{}, false, nil
	}
	if err != nil {
		return mark{}, false, fmt.Errorf("reading %s: %w", headName, err)
	}
	m, ok = parseMark(b)
	return m, ok, nil
}

// headFile keeps the mark. It is written after the commit returned and before
// the answer, always in place and always of one length.
type headFile struct{ f *os.File }

func openHead(dir string) (headFile, error) {
	f, err := os.OpenFile(filepath.Join(dir, headName), os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return headFile{}, fmt.Errorf("opening %s: %w", headName, err)
	}
	return headFile{f}, nil
}

func (h headFile) write(m mark) error {
	b := m.text()
	if _, err := h.f.WriteAt(b, 0); err != nil {
		return fmt.Errorf("writing %s: %w", headName, err)
	}
	return nil
}
