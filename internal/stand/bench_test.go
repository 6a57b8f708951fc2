package stand

import "testing"

// BenchmarkGrow counts days in the ground, table not included.
func BenchmarkGrow(b *testing.B) {
	env := maritime(20)
	for _, id := range []string{"carrot", "tomato", "leek"} {
		c := hand(cropID(id))
		t := NewTable(c, env, nil)
		way := c.Ways[0]
		b.Run(id, func(b *testing.B) {
			days := 0
			for range b.N {
				for w := 8; w < 48; w += 4 {
					g := t.Grow(way, env.Start+7*day(w))
					for _, o := range g.Outcomes {
						days += int(o.End-env.Start) - 7*w
					}
				}
			}
			b.ReportMetric(float64(days)/b.Elapsed().Seconds()/1e6, "Mcropdays/s")
		})
	}
}

// BenchmarkTable is the cost of the rates that all starts share.
func BenchmarkTable(b *testing.B) {
	env := maritime(20)
	a := NewAir(env)
	c := hand("carrot")
	for range b.N {
		a.Table(c, nil)
	}
}

// BenchmarkAir is the cost of a space's own weather, shared by all crops.
func BenchmarkAir(b *testing.B) {
	env := maritime(20)
	for range b.N {
		NewAir(env)
	}
}
