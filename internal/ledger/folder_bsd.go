//go:build darwin || freebsd

package ledger

import "syscall"

func kindOfFolder(dir string) folderKind {
	var s syscall.Statfs_t
	if err := syscall.Statfs(dir, &s); err != nil {
		return folderKind{}
	}
	var name []byte
	for _, c := range s.Fstypename {
		if c == 0 {
			break
		}
		name = append(name, byte(c))
	}
	k := folderKind{name: string(name), known: true}
	switch k.name {
	case "nfs", "smbfs", "afpfs", "webdav", "ftp", "cifs", "p9fs", "fusefs", "macfuse", "osxfuse":
		k.remote = true
	case "tmpfs":
		k.memory = true
	}
	return k
}

// freeBytes returns the room left for this user on dir's disk.
func freeBytes(dir string) (uint64, bool) {
	var s syscall.Statfs_t
	if err := syscall.Statfs(dir, &s); err != nil || int64(s.Bavail) < 0 {
		return 0, false
	}
	return uint64(s.Bavail) * uint64(s.Bsize), true
}
