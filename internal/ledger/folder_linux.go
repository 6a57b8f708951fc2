package ledger

import (
	"bufio"
	"os"
	"path/filepath"
	"strings"
	"syscall"
)

// File system numbers of linux/magic.h and of the file systems' own sources.
const (
	magicFUSE  = 0x65735546
	magicTMPFS = 0x01021994
	magicRAMFS = 0x858458f6
)

// remoteMagic are the file systems whose files another machine holds or may
// change: write-ahead logging needs memory shared by all who open the file.
func remoteMagic(t uint32) string {
	switch t {
	case 0x6969:
		return "NFS"
	case 0x517B:
		return "SMB"
	case 0xFF534D42:
		return "CIFS"
	case 0xFE534D42:
		return "SMB2"
	case 0x01021997:
		return "9p"
	case 0x5346414F, 0x6B414653:
		return "AFS"
	case 0x73757245:
		return "Coda"
	case 0x564C:
		return "NCP"
	case 0x00C36400:
		return "Ceph"
	case 0x01161970:
		return "GFS2"
	case 0x0BD00BD0:
		return "Lustre"
	case 0x7461636F:
		return "OCFS2"
	case 0x786F4256:
		return "a virtual machine's shared folder"
	}
	return ""
}

// localFUSE are the drivers in user space that serve a disk of this machine.
func localFUSE(name string) bool {
	switch name {
	case "fuseblk", "fuse.ntfs-3g", "fuse.exfat", "fuse.lazyfs":
		return true
	}
	return false
}

func kindOfFolder(dir string) folderKind {
	var s syscall.Statfs_t
	if err := syscall.Statfs(dir, &s); err != nil {
		return folderKind{}
	}
	t := uint32(s.Type)
	if name := remoteMagic(t); name != "" {
		return folderKind{name: name, remote: true, known: true}
	}
	switch t {
	case magicTMPFS, magicRAMFS:
		return folderKind{name: "memory", memory: true, known: true}
	case magicFUSE:
		name := mountType(dir)
		return folderKind{name: name, remote: !localFUSE(name), known: true}
	}
	return folderKind{name: "disk", known: true}
}

// mountType returns the type of the mount that holds dir, as the system lists
// it: the last field group of /proc/self/mountinfo, longest mount point first.
func mountType(dir string) string {
	f, err := os.Open("/proc/self/mountinfo")
	if err != nil {
		return "fuse"
	}
	defer f.Close()
	if real, err := filepath.EvalSymlinks(dir); err == nil {
		dir = real
	}
	return mountTypeFrom(bufio.NewScanner(f), dir)
}

func mountTypeFrom(sc *bufio.Scanner, dir string) string {
	best, kind := "", "fuse"
	for sc.Scan() {
		left, right, ok := strings.Cut(sc.Text(), " - ")
		l, r := strings.Fields(left), strings.Fields(right)
		if !ok || len(l) < 5 || len(r) < 1 {
			continue
		}
		point := strings.NewReplacer(`\040`, " ", `\011`, "\t", `\012`, "\n", `\134`, `\`).Replace(l[4])
		inside := dir == point || point == "/" || strings.HasPrefix(dir, point+"/")
		if inside && len(point) >= len(best) { // a later mount on the same point hides the earlier
			best, kind = point, r[0]
		}
	}
	return kind
}

// freeBytes returns the room left for this user on dir's disk.
func freeBytes(dir string) (uint64, bool) {
	var s syscall.Statfs_t
	if err := syscall.Statfs(dir, &s); err != nil {
		return 0, false
	}
	return s.Bavail * uint64(s.Bsize), true
}
