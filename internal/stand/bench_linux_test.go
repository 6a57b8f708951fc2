package stand

import (
	"runtime"
	"sync"
	"syscall"
	"testing"
	"time"
)

// cpu is the processor time this process has used.
func cpu() time.Duration {
	var u syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &u) != nil {
		return 0
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// grownDays grows every crop of tabs, every way, a start a week through a year,
// on so many workers. It returns the days in the ground. kernel leaves out what
// a start keeps of its futures.
func grownDays(air *Air, tabs []*Table, workers int, kernel, build bool) int {
	next := make(chan *Table, len(tabs))
	for _, t := range tabs {
		next <- t
	}
	close(next)
	var wg sync.WaitGroup
	days := make([]int, workers)
	for w := range workers {
		wg.Go(func() {
			scratch := tally{flow: make([]float32, air.n), wait: waitDays}
			n := 0
			for t := range next {
				if build {
					t = air.Table(t.Crop, t.worlds)
				}
				for _, co := range t.courses {
					for k := range 52 {
						from := air.env.Start + day(7*k)
						if kernel {
							for f := range air.k {
								p := t.run(co, f, air.at(from), false, &scratch, nil)
								n += max(0, p.end-air.at(from))
							}
							continue
						}
						for _, o := range t.Grow(co.way, from).Outcomes {
							n += max(0, int(o.End-from))
						}
					}
				}
			}
			days[w] = n
		})
	}
	wg.Wait()
	sum := 0
	for _, n := range days {
		sum += n
	}
	return sum
}

// BenchmarkBook grows the whole book as a plan does, in twenty futures, by
// wall clock and by processor second: "kernel" the days alone, "starts" with
// what is kept of them, "all in" with the tables of rates built within. Each
// also runs on one worker; "ratio" is how much two are faster.
func BenchmarkBook(b *testing.B) {
	air := NewAir(maritime(20))
	var tabs []*Table
	for _, c := range book(b) {
		tabs = append(tabs, air.Table(c, Worlds(c, 20, 1)))
	}
	for _, part := range []struct {
		name          string
		kernel, build bool
	}{{"kernel", true, false}, {"starts", false, false}, {"all in", false, true}} {
		b.Run(part.name, func(b *testing.B) {
			b.ReportAllocs()
			days, used, two, one := 0, time.Duration(0), time.Duration(0), time.Duration(0)
			for range b.N {
				c, t := cpu(), time.Now()
				days += grownDays(air, tabs, 2, part.kernel, part.build)
				two, used = two+time.Since(t), used+cpu()-c
				b.StopTimer()
				t = time.Now()
				grownDays(air, tabs, 1, part.kernel, part.build)
				one += time.Since(t)
				b.StartTimer()
			}
			b.ReportMetric(float64(days)/two.Seconds()/1e6, "Mcropdays/s")
			b.ReportMetric(float64(days)/used.Seconds()/1e6, "Mcropdays/cpu-s")
			b.ReportMetric(one.Seconds()/two.Seconds(), "ratio")
			runtime.KeepAlive(tabs)
		})
	}
}
