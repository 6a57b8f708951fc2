package ledger

import (
	"path/filepath"
	"strings"
	"syscall"
	"unsafe"
)

// driveRemote is GetDriveTypeW's answer for a network drive.
const driveRemote = 4

func kindOfFolder(dir string) folderKind {
	full, err := filepath.Abs(dir)
	if err != nil {
		return folderKind{}
	}
	volume := filepath.VolumeName(full)
	if strings.HasPrefix(volume, `\\`) {
		return folderKind{name: "a network share", remote: true, known: true}
	}
	root, err := syscall.UTF16PtrFromString(volume + `\`)
	if err != nil {
		return folderKind{}
	}
	kind, _, _ := syscall.NewLazyDLL("kernel32.dll").NewProc("GetDriveTypeW").Call(uintptr(unsafe.Pointer(root)))
	if kind == driveRemote {
		return folderKind{name: "a network drive", remote: true, known: true}
	}
	return folderKind{name: "disk", known: true}
}

// freeBytes returns the room left for this user on dir's disk.
func freeBytes(dir string) (uint64, bool) {
	name, err := syscall.UTF16PtrFromString(dir)
	if err != nil {
		return 0, false
	}
	var free uint64
	ok, _, _ := syscall.NewLazyDLL("kernel32.dll").NewProc("GetDiskFreeSpaceExW").
		Call(uintptr(unsafe.Pointer(name)), uintptr(unsafe.Pointer(&free)), 0, 0)
	return free, ok != 0
}
