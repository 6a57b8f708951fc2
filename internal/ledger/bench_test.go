package ledger

import (
	"context"
	"sync"
	"testing"
)

// BenchmarkAppend tells how many durable commits a second one hand makes.
func BenchmarkAppend(b *testing.B) {
	l := open(b, b.TempDir())
	for b.Loop() {
		add(b, l, event(b, Looked, "2015-05-01", Look{Space: "arch", Looks: "well", Note: "two rows, seen from the path"}))
	}
	b.ReportMetric(float64(b.N)/b.Elapsed().Seconds(), "commits/s")
}

// BenchmarkAppendEight tells the same for eight hands sharing commits.
func BenchmarkAppendEight(b *testing.B) {
	l := open(b, b.TempDir())
	var wg sync.WaitGroup
	b.ResetTimer()
	for range 8 {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for range b.N / 8 {
				e := event(b, Looked, "2015-05-01", Look{Space: "arch", Looks: "well", Note: "two rows, seen from the path"})
				if _, err := l.Append(context.Background(), e); err != nil {
					b.Error(err)
				}
			}
		}()
	}
	wg.Wait()
	b.ReportMetric(float64(b.N)/b.Elapsed().Seconds(), "entries/s")
}

// BenchmarkOpen tells how long a start takes with 20,000 entries: everything
// is read, checked and replayed.
func BenchmarkOpen(b *testing.B) {
	dir := b.TempDir()
	l := open(b, dir)
	s := event(b, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	add(b, l, s)
	for range 20 {
		var list []Event
		for range 1000 {
			list = append(list, event(b, Picked, "2015-07-01", Amount{Planting: s.ID, Kg: 0.1, Note: "two rows, seen from the path"}))
		}
		add(b, l, list...)
	}
	l.Close()
	for b.Loop() {
		l := open(b, dir)
		l.Close()
	}
}
