package stand

import (
	"fmt"
	"os"
	"testing"

	"bedweek/internal/cal"
)

// TestLook prints the year of each crop when LOOK is set, for judging by eye.
func TestLook(t *testing.T) {
	if os.Getenv("LOOK") == "" {
		t.Skip("set LOOK=1 to print the tables")
	}
	env := seattle(t, 60)
	if os.Getenv("LOOK") == "sine" {
		env = maritime(60)
	}
	if os.Getenv("PLACE") == "inland" {
		env = continental(60)
	}
	for _, c := range book(t) {
		if only := os.Getenv("CROP"); only != "" && only != string(c.ID) {
			continue
		}
		tab := NewTable(c, env, nil)
		for _, way := range c.Ways {
			co := tab.course(way)
			fmt.Printf("\n%s, %s: quick %d, limit %d, best %.2f of %.2f kg\n", c.ID, way, co.quick, co.limit, co.bestKg, c.YieldKg.Value)
			w := tab.Window(way, 5)
			for _, r := range w.Works {
				fmt.Printf("works %s (%s, %d) to %s (%s, %d)\n", short(r.From), r.LimitFrom, r.SuccessFrom, short(r.To), r.LimitTo, r.SuccessTo)
			}
			for _, r := range w.Best {
				fmt.Printf("best  %s (%s) to %s (%s)\n", short(r.From), r.LimitFrom, short(r.To), r.LimitTo)
			}
			if os.Getenv("LOOK") == "short" {
				for _, p := range w.Picks {
					fmt.Printf("  start %s pick %s\n", short(p.Start), p.First)
				}
				continue
			}
			for d := env.Start; d < env.Start+370; d += 14 {
				g := tab.Grow(way, d)
				kg := float32(0)
				for _, o := range g.Outcomes {
					kg += o.Total / float32(len(g.Outcomes))
				}
				days := 0
				if !g.FirstPick.None() {
					days = int(g.FirstPick.Likely - d)
				}
				fmt.Printf("%s  %2d  %3d d  pick %-6s..%-6s end %-6s %.2f kg  %s\n", d.Short(), g.Success, days,
					short(g.FirstPick.Likely), short(g.LastPick.Likely), short(g.EndOfUse.Likely), kg, g.Cause)
			}
		}
	}
}

func short(d cal.Day) string {
	if d == 0 {
		return "-"
	}
	return d.Time().Format("2 Jan")
}
