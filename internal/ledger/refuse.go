package ledger

import (
	"errors"
	"strings"

	sqlite "modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// What can go wrong, to be asked with errors.Is. The text is for the gardener;
// what was being done, and the particulars, are wrapped around it.
var (
	ErrOtherBody   = errors.New("another entry already has this id")
	ErrUnknownKind = errors.New("this program does not know this kind of entry")
	ErrStopped     = errors.New("writing has stopped. Nothing more is kept until the program is started again")
	ErrNoSpace     = errors.New("the disk is full")
	ErrDamaged     = errors.New("the record is damaged. Nothing was changed")
	ErrNewer       = errors.New("the record was written by a newer version. Nothing was read or changed")
	ErrInUse       = errors.New("another program is writing in this folder")
	ErrNetwork     = errors.New("the folder lies on another machine or a shared drive. A record can be lost there. Choose a folder on this machine's own disk")
	ErrOldSQLite   = errors.New("the SQLite in this program is too old")
	ErrNotLedger   = errors.New("the file is not a garden record")
	ErrClosed      = errors.New("the record is closed")
)

// Faults are all the reasons why an entry cannot be kept.
type Faults []string

// Error lists the faults in one line.
func (f Faults) Error() string {
	return "this entry cannot be kept: " + strings.Join(f, "; ")
}

// resultCode returns SQLite's own code, 0 when err does not come from it.
func resultCode(err error) int {
	var e *sqlite.Error
	if errors.As(err, &e) {
		return e.Code()
	}
	return 0
}

// full reports whether the disk had no room. SQLite then undoes the whole
// transaction and stays in order, so writing may go on once there is room.
func full(err error) bool { return resultCode(err)&0xff == lib.SQLITE_FULL }

// passing reports whether err says nothing about the disk: another program
// held the file for a moment.
func passing(err error) bool {
	switch resultCode(err) & 0xff {
	case lib.SQLITE_BUSY, lib.SQLITE_LOCKED:
		return true
	}
	return false
}
