package reckon

import (
	"context"
	"testing"
)

// BenchmarkGround is light, futures and the growth of every start: the slow
// half of a plan.
func BenchmarkGround(b *testing.B) {
	t := &testing.T{}
	in := demoInputs(t, demoCases()[0])
	for b.Loop() {
		g, err := NewGround(in)
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(len(g.Menu)), "starts")
		n := 0
		for i, c := range g.Place.Class {
			if c == i && in.Garden.Spaces[i].Grows() {
				n++
			}
		}
		b.ReportMetric(float64(n), "classes")
	}
}

// BenchmarkReckon is what an event at the bed costs: what stands grown anew,
// the search, pull or keep, and the words.
func BenchmarkReckon(b *testing.B) {
	t := &testing.T{}
	in := demoInputs(t, demoCases()[0])
	g, err := NewGround(in)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		r, err := Reckon(context.Background(), in, g)
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(float64(len(r.Problem.Options)), "options")
	}
}
