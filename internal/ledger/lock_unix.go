//go:build !windows

package ledger

import (
	"errors"
	"os"
	"syscall"
)

func openLocked(path string) (*os.File, error) {
	f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return nil, err
	}
	err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	if errors.Is(err, syscall.EWOULDBLOCK) {
		err = errLocked
	}
	if err != nil {
		f.Close()
		return nil, err
	}
	return f, nil
}

// syncFolder asks the disk to keep the names in dir.
func syncFolder(dir string) error {
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	defer f.Close()
	return f.Sync()
}

// fullDisk reports whether the system had no room, or a limit was reached.
func fullDisk(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) || errors.Is(err, syscall.EFBIG)
}
