package ledger

import (
	"context"
	"math/rand/v2"
	"reflect"
	"testing"
)

// TestRecallIsReplay: random seasons written in small pieces, with entries
// taken back. What is remembered is what a replay of the whole gives, over
// nothing and over plantings of a file, and what was taken back is the same
// whether all entries are looked at or only the voids.
func TestRecallIsReplay(t *testing.T) {
	ctx := context.Background()
	standing := []Planting{{ID: "file-kale-1", Crop: "kale", Space: "bed", Count: 9}}
	for seed := range uint64(12) {
		w := &walk{t: t, seed: seed + 500, r: rand.New(rand.NewPCG(seed, 12))}
		l := open(t, t.TempDir())
		c := l.Recall()
		written := 0
		for range 40 {
			w.step()
			if n := len(w.events); n > 3 && w.r.IntN(6) == 0 {
				w.write(Voided, Void{Event: w.events[w.r.IntN(n)].ID})
			}
			if w.r.IntN(3) > 0 {
				continue
			}
			add(t, l, w.events[written:]...)
			written = len(w.events)
			all, err := l.Events(ctx)
			if err != nil {
				t.Fatal(err)
			}
			for _, over := range [][]Planting{nil, standing}[w.r.IntN(2):] {
				events, got, err := c.Over(ctx, over)
				if err != nil {
					t.Fatal(err)
				}
				if want := ReplayOver(over, all); !reflect.DeepEqual(got.clone(), want.clone()) {
					t.Fatalf("seed %d, %d entries, over %d plantings: remembered\n%+v\nreplayed\n%+v", seed, len(all), len(over), got, want)
				}
				if len(events) != len(all) {
					t.Fatalf("%d of %d entries are remembered", len(events), len(all))
				}
			}
			if got, want := TakenBack(all), takenBack(order(all)); !reflect.DeepEqual(got, want) {
				t.Fatalf("seed %d: taken back %v, want %v", seed, got, want)
			}
		}
		if e, ok, err := c.Entry(ctx, w.events[2].ID); err != nil || !ok || e.Kind != w.events[2].Kind {
			t.Errorf("the third entry: %+v, %v, %v", e, ok, err)
		}
		if _, ok, _ := c.Entry(ctx, NewID()); ok {
			t.Error("an entry that nobody wrote")
		}
	}
}
