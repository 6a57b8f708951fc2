package season

import (
	"context"
	"fmt"
	"os"
	"testing"
	"time"
)

// TestGaps measures the certified gap on invented gardens of three sizes, after
// 2, 10 and 60 seconds of two processors: prices first, then the search guided
// by them, paced as bedweek plan -seconds paces them. An idle machine is wanted.
// It takes five minutes and so runs only when asked:
//
//	SEASON_GAPS=1 go test ./internal/season -run TestGaps -v -timeout 20m
func TestGaps(t *testing.T) {
	if os.Getenv("SEASON_GAPS") == "" {
		t.Skip("runs when SEASON_GAPS is set")
	}
	for _, g := range []struct {
		name string
		make func() *Problem
	}{
		{"small", small900}, {"medium", medium9500}, {"medium, another", mediumOther},
		{"large", large60000},
	} {
		p := g.make()
		from := time.Now()
		Search(context.Background(), p, Limits{Work: 1, Workers: 2})
		t.Logf("%s: %d options; first plan after %.2f s", g.name, len(p.Options), time.Since(from).Seconds())
		for _, seconds := range []float64{2, 10, 60} {
			logGap(t, p, seconds)
		}
	}
}

// logGap plans for so many seconds and says what is proved.
func logGap(t *testing.T, p *Problem, seconds float64) {
	from := time.Now()
	till := func(end float64) func() float64 {
		begun := time.Since(from).Seconds()
		return func() float64 { return (time.Since(from).Seconds() - begun) / max(end-begun, 1e-3) }
	}
	const endless = 1_000_000_000
	mean, apart := 0.4, (*Certificate)(nil)
	if seconds >= 6 {
		mean = 0.2
	}
	c := Bound(context.Background(), p, BoundLimits{Work: min(endless, 1000*len(p.Options)), Workers: 2, Clock: till(mean * seconds)})
	guide, priced := c, time.Since(from).Seconds()
	if seconds >= 6 {
		apart = Bound(context.Background(), p, BoundLimits{Work: min(endless, 300*len(p.Options)), Workers: 2, Warm: c, Futures: true, Clock: till(0.5 * seconds)})
		guide = apart
	}
	apartAt := time.Since(from).Seconds()
	plan := Search(context.Background(), p, Limits{Work: endless, Workers: 2, Seed: 1, Prices: guide, Clock: till(seconds)})
	took := time.Since(from).Seconds()
	nothing := Plan{Pull: naturalEnds(p)}
	value := Expect(p, &plan)
	gap, _ := Gap(c.Bound, value, Expect(p, &nothing))
	words := fmt.Sprintf("%.0f s (prices %.1f, with the futures %.1f, all %.1f): model %.1f of %.1f, gap %.1f %%; mean of futures %.1f", seconds, priced, apartAt, took, value, c.Bound, 100*gap, plan.Value)
	if apart != nil {
		byFuture, _ := Gap(apart.Bound, plan.Value, Evaluate(p, &nothing).Value)
		words += fmt.Sprintf(" of %.1f, gap %.1f %%", apart.Bound, 100*byFuture)
		if apart.Bound < plan.Value {
			t.Errorf("bound with the futures told apart %.6f, plan %.6f", apart.Bound, plan.Value)
		}
	}
	t.Log(words)
	if c.Bound < value || CheckBound(p, c) != c.Bound {
		t.Errorf("bound %.6f, plan %.6f", c.Bound, value)
	}
}
