package ledger

import "fmt"

// folderKind says what sort of disk a folder lies on.
type folderKind struct {
	name   string // as the system calls it
	remote bool   // another machine's, or shared with one
	memory bool   // gone when the machine stops
	known  bool   // the system could be asked
}

// judge refuses a folder on a shared drive, and returns what is worth saying
// about one that is accepted.
func (k folderKind) judge(dir string) (note string, err error) {
	switch {
	case k.remote:
		return "", fmt.Errorf("opening %s (%s): %w", dir, k.name, ErrNetwork)
	case k.memory:
		return "The folder is kept in memory only. Everything in it goes when the machine stops.", nil
	case !k.known:
		return "This system cannot say whether the folder lies on a shared drive. Make sure that it does not.", nil
	}
	return "", nil
}
