package ledger

import (
	"bufio"
	"strings"
	"testing"
)

func TestMountType(t *testing.T) {
	const table = `22 1 254:0 / / rw,relatime - ext4 /dev/vda rw
30 22 0:26 / /home/ann/far\040away rw - fuse.sshfs ann@host: rw
31 22 0:27 / /media/stick rw - fuseblk /dev/sdb1 rw
`
	for _, tt := range []struct{ dir, want string }{
		{"/home/ann/far away/garden", "fuse.sshfs"}, {"/media/stick", "fuseblk"}, {"/home/ann", "ext4"}, {"/media/sticky", "ext4"},
	} {
		if got := mountTypeFrom(bufio.NewScanner(strings.NewReader(table)), tt.dir); got != tt.want {
			t.Errorf("%s lies on %s, want %s (proc(5), mountinfo)", tt.dir, got, tt.want)
		}
	}
	if localFUSE("fuse.sshfs") || !localFUSE("fuseblk") || remoteMagic(0x6969) == "" || remoteMagic(0xEF53) != "" {
		t.Error("NFS (0x6969) and sshfs are shared; ext4 (0xEF53) and a local disk by fuseblk are not (linux/magic.h)")
	}
}
