package ledger

import (
	"errors"
	"os"
	"syscall"
)

// sharingViolation is what Windows answers when another program holds a file.
const sharingViolation = syscall.Errno(32)

// openLocked opens the file so that others may read but not write it.
func openLocked(path string) (*os.File, error) {
	name, err := syscall.UTF16PtrFromString(path)
	if err != nil {
		return nil, err
	}
	h, err := syscall.CreateFile(name, syscall.GENERIC_READ|syscall.GENERIC_WRITE,
		syscall.FILE_SHARE_READ, nil, syscall.OPEN_ALWAYS, syscall.FILE_ATTRIBUTE_NORMAL, 0)
	if errors.Is(err, sharingViolation) {
		return nil, errLocked
	}
	if err != nil {
		return nil, err
	}
	return os.NewFile(uintptr(h), path), nil
}

// syncFolder does nothing: Windows keeps names with the file.
func syncFolder(string) error { return nil }

// fullDisk reports whether the system had no room.
func fullDisk(err error) bool {
	const handleDiskFull, diskFull = syscall.Errno(39), syscall.Errno(112)
	return errors.Is(err, diskFull) || errors.Is(err, handleDiskFull) || errors.Is(err, syscall.ENOSPC)
}
