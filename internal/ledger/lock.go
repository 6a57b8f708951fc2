package ledger

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
)

// lockName is the file that the one writer holds locked. The lock belongs to
// the open file, so it goes when the program goes, however it ends.
const lockName = "ledger.lock"

var errLocked = errors.New("locked by another program")

// takeLock makes this program the folder's one writer, or says who is.
func takeLock(dir, program string) (*os.File, error) {
	path := filepath.Join(dir, lockName)
	f, err := openLocked(path)
	if errors.Is(err, errLocked) {
		return nil, fmt.Errorf("opening %s: %w: %s", dir, ErrInUse, holder(path))
	}
	if err != nil {
		return nil, fmt.Errorf("locking %s: %w", dir, err)
	}
	who := fmt.Sprintf("%s, process %d\n", program, os.Getpid())
	if err := f.Truncate(0); err == nil {
		_, err = f.WriteAt([]byte(who), 0)
	}
	if err != nil {
		f.Close()
		return nil, fmt.Errorf("writing %s: %w", path, err)
	}
	return f, nil
}

// holder returns what the lock file says of the one who holds it.
func holder(path string) string {
	f, err := os.Open(path)
	if err != nil {
		return "it did not say which"
	}
	defer f.Close()
	b, _ := io.ReadAll(io.LimitReader(f, 200))
	if who := strings.TrimSpace(string(b)); who != "" {
		return who
	}
	return "it did not say which"
}
