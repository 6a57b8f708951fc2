package season

import (
	"context"
	"os"
	"testing"
	"time"
)

// TestGaps measures the certified gap on invented gardens of three sizes, at
// about two and sixty seconds of two processors: prices first, then the search
// guided by them. It takes minutes and so runs only when asked:
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
		nothing := Plan{Pull: naturalEnds(p)}
		none, noneMean := Expect(p, &nothing), Evaluate(p, &nothing).Value
		from := time.Now()
		Search(context.Background(), p, Limits{Work: 1, Workers: 2})
		t.Logf("%s: %d options; first plan after %.2f s", g.name, len(p.Options), time.Since(from).Seconds())
		for _, w := range []struct{ search, bound int }{{7_000_000, 3_000_000}, {100_000_000, 30_000_000}} {
			from = time.Now()
			c := Bound(context.Background(), p, BoundLimits{Work: w.bound, Workers: 2})
			took := time.Since(from).Seconds()
			apart := Bound(context.Background(), p, BoundLimits{Work: w.bound / 10, Workers: 2, Warm: c, Futures: true})
			tookApart := time.Since(from).Seconds() - took
			plan := Search(context.Background(), p, Limits{Work: w.search, Workers: 2, Prices: apart})
			search := time.Since(from).Seconds() - took - tookApart
			value := Expect(p, &plan)
			gap, _ := Gap(c.Bound, value, none)
			mean, _ := Gap(apart.Bound, plan.Value, noneMean)
			t.Logf("  search %.1f s, bound %.1f s, with the futures told apart %.1f s: model %.2f of %.2f, gap %.1f %%; mean of futures %.2f of %.2f, gap %.1f %%", search, took, tookApart, value, c.Bound, 100*gap, plan.Value, apart.Bound, 100*mean)
			if c.Bound < value || CheckBound(p, c) != c.Bound {
				t.Errorf("bound %.6f, plan %.6f", c.Bound, value)
			}
			if apart.Bound < plan.Value || CheckBound(p, apart) != apart.Bound {
				t.Errorf("bound with the futures told apart %.6f, plan %.6f", apart.Bound, plan.Value)
			}
		}
	}
}
