package shade

import "syscall"

// cpuSeconds is the processor time this process has used: the clock on the
// wall also counts what others do meanwhile.
func cpuSeconds() float64 {
	var u syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &u) != nil {
		return 0
	}
	return float64(u.Utime.Nano()+u.Stime.Nano()) / 1e9
}
