package reckon

import (
	"fmt"
	"runtime"
	"testing"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

// bigInputs are 25 spaces that differ in depth, room and shade, and 100 crops
// of the book, for a plan of the usual length.
func bigInputs(t testing.TB) *Inputs {
	in := smallInputs(t, 47)
	in.Weeks = DefaultWeeks
	in.Garden.Spaces = nil
	for i := range 25 {
		sp := garden.Space{ID: garden.SpaceID(fmt.Sprintf("bed-%d", i+1)), Kind: garden.RaisedBed, TallOK: true, Y: 3 * float64(i)}
		sp.Length.M, sp.Width.M, sp.Depth.M = 2+0.1*float64(i), 1, 0.25+0.03*float64(i)
		in.Garden.Spaces = append(in.Garden.Spaces, sp)
	}
	in.Garden.Wants, in.Garden.Musts = nil, nil
	n := 0
	for _, c := range in.Book.Crops {
		if n < 100 && !c.Asked && c.Harvest != crop.Bloom {
			in.Garden.Musts = append(in.Garden.Musts, garden.Must{Crop: garden.CropID(c.ID), Plants: 1})
			n++
		}
	}
	for _, c := range in.Book.Crops { // the others are kept out
		if !isMust(in.Garden, garden.CropID(c.ID)) && n < 100 {
			in.Garden.Musts = append(in.Garden.Musts, garden.Must{Crop: garden.CropID(c.ID), Plants: 1})
			n++
		}
	}
	for _, c := range in.Book.Crops {
		if !isMust(in.Garden, garden.CropID(c.ID)) {
			in.Garden.Nevers = append(in.Garden.Nevers, garden.Never{Crop: garden.CropID(c.ID)})
		}
	}
	return in
}

// mostTableMB is the room a table of a large garden may take.
const mostTableMB = 300

// BenchmarkBigTable is the memory of a table of 25 unlike spaces, 100 crops
// and 20 futures: what is held when it is made, and the most held meanwhile.
func BenchmarkBigTable(b *testing.B) {
	in := bigInputs(b)
	for range b.N {
		var before, after runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&before)
		g, err := NewGround(in)
		if err != nil {
			b.Fatal(err)
		}
		runtime.ReadMemStats(&after)
		most := after.HeapSys - after.HeapReleased
		runtime.GC()
		runtime.ReadMemStats(&after)
		classes := map[int]bool{}
		for _, c := range g.Place.Class {
			classes[c] = true
		}
		crops := map[crop.ID]bool{}
		for _, e := range g.Menu {
			crops[e.Crop.ID] = true
		}
		held := float64(after.HeapAlloc-before.HeapAlloc) / 1e6
		if held > mostTableMB || len(g.Place.Airs) != 25 {
			b.Errorf("the table holds %.0f MB, want at most %d", held, mostTableMB)
		}
		b.ReportMetric(held, "MB")
		b.ReportMetric(float64(most)/1e6, "MB-at-most")
		b.ReportMetric(float64(len(g.Menu)), "starts")
		b.ReportMetric(float64(len(classes)), "classes")
		b.ReportMetric(float64(len(offered(in))), "crops")
		runtime.KeepAlive(g)
	}
}
