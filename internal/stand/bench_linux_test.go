package stand

import (
	"runtime"
	"sync"
	"syscall"
	"testing"
	"time"

	"bedweek/internal/crop"
)

// cpu is the processor time this process has used.
func cpu() time.Duration {
	var u syscall.Rusage
	if syscall.Getrusage(syscall.RUSAGE_SELF, &u) != nil {
		return 0
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// BenchmarkBook grows the whole book as a plan does: every crop, every way, a
// start a week through a year, twenty futures, on two workers. It counts days
// in the ground by wall clock and by processor second; on a busy machine the
// second times two is what two free cores would do. "all in" has the tables of
// rates built within.
func BenchmarkBook(b *testing.B) {
	env := maritime(20)
	air := NewAir(env)
	crops := book(b)
	type job struct {
		c   *crop.Crop
		tab *Table
	}
	var jobs []job
	for _, c := range crops {
		jobs = append(jobs, job{c, air.Table(c, Worlds(c, 20, 1))})
	}
	run := func(b *testing.B, tables bool) {
		days := 0
		var mu sync.Mutex
		began := cpu()
		for range b.N {
			next := make(chan job)
			var wg sync.WaitGroup
			for range 2 {
				wg.Add(1)
				go func() {
					defer wg.Done()
					n := 0
					for j := range next {
						t := j.tab
						if tables {
							t = air.Table(j.c, Worlds(j.c, 20, 1))
						}
						for _, way := range j.c.Ways {
							for w := range 52 {
								from := env.Start + day(7*w)
								for _, o := range t.Grow(way, from).Outcomes {
									if o.End > from {
										n += int(o.End - from)
									}
								}
							}
						}
					}
					mu.Lock()
					days += n
					mu.Unlock()
				}()
			}
			for _, j := range jobs {
				next <- j
			}
			close(next)
			wg.Wait()
		}
		used := cpu() - began
		b.ReportMetric(float64(days)/b.Elapsed().Seconds()/1e6, "Mcropdays/s")
		b.ReportMetric(float64(days)/used.Seconds()/1e6, "Mcropdays/cpu-s")
		b.ReportMetric(float64(days)/float64(b.N)/1e6, "Mcropdays")
		runtime.KeepAlive(jobs)
	}
	b.Run("starts", func(b *testing.B) { run(b, false) })
	b.Run("all in", func(b *testing.B) { run(b, true) })
}
