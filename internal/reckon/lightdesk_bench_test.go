package reckon

import (
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
)

// What a redraw under the finger costs, and a first look, on the demo's twenty
// spaces.
func BenchmarkLightDesk(b *testing.B) {
	in := demoInputs(b, demoCases()[0])
	in.Garden = demoGarden(b, demo.GardenYAML)
	d := NewLightDesk(in, nil)
	b.Run("overhead", func(b *testing.B) {
		for i := range b.N {
			d.Overhead(1+i%52, float64(6+i%12))
		}
	})
	b.Run("half year", func(b *testing.B) {
		for range b.N {
			d.half = nil
			d.HalfYear()
		}
	})
	b.Run("skyline", func(b *testing.B) {
		for i := range b.N {
			clear(d.views)
			d.Skyline(string(d.light.Space(i % len(d.light.Field.Surfaces())).ID))
		}
	})
	b.Run("what if", func(b *testing.B) {
		for i := range b.N {
			d.Try(WhatIf{Thing: i % len(d.light.Bodies), Do: "east", By: 0.3})
		}
	})
	b.Run("costs", func(b *testing.B) {
		for range b.N {
			d.costs = nil
			if _, err := d.Costs(); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("new", func(b *testing.B) {
		for range b.N {
			in.Date = cal.Of(2015, 6, 9)
			NewLightDesk(in, nil)
		}
	})
}
