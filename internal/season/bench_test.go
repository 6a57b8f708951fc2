package season

import (
	"context"
	"testing"
)

// The sizes of the goals: a small garden of 6 spaces and about 900 options, two
// of 20 spaces and about 9,500, one of 40 spaces and above 60,000, and twenty
// spaces with forty crops over sixty weeks; all on 20 futures.
func small900() *Problem      { return plausible(9, 6, 7, 52, 20) }
func medium9500() *Problem    { return plausible(2, 20, 18, 60, 20) }
func mediumOther() *Problem   { return plausible(3, 20, 18, 60, 20) }
func large60000() *Problem    { return plausible(4, 40, 46, 70, 20) }
func twentyByForty() *Problem { return plausible(7, 20, 40, 60, 20) }

func benchmark(b *testing.B, p *Problem, lim Limits) {
	lim.Workers = 2
	var plan Plan
	for b.Loop() {
		plan = Search(context.Background(), p, lim)
	}
	b.ReportMetric(float64(len(p.Options)), "options")
	b.ReportMetric(plan.Value, "meals")
	b.ReportMetric(plan.Nothing, "nothing")
	b.ReportMetric(float64(plan.Work), "work")
}

func BenchmarkFirst900(b *testing.B)   { benchmark(b, small900(), Limits{Work: 1}) }
func BenchmarkFirst9500(b *testing.B)  { benchmark(b, medium9500(), Limits{Work: 1}) }
func BenchmarkSearch900(b *testing.B)  { benchmark(b, small900(), Limits{}) }
func BenchmarkSearch9500(b *testing.B) { benchmark(b, medium9500(), Limits{}) }
func BenchmarkLong9500(b *testing.B)   { benchmark(b, medium9500(), Limits{Work: 8 * DefaultWork}) }

func BenchmarkFirst60000(b *testing.B) { benchmark(b, large60000(), Limits{Work: 1}) }
func BenchmarkFirst20x40(b *testing.B) { benchmark(b, twentyByForty(), Limits{Work: 1}) }
func BenchmarkGap9500(b *testing.B)    { benchmarkGap(b, medium9500(), 7_000_000, 900_000) }
func BenchmarkGap60000(b *testing.B)   { benchmarkGap(b, large60000(), 7_000_000, 3_800_000) }

// benchmarkGap finds prices, searches guided by them, and reports the certified
// gap of the model in per cent.
func benchmarkGap(b *testing.B, p *Problem, search, bound int) {
	none := Expect(p, &Plan{Pull: naturalEnds(p)})
	var gap, value float64
	for b.Loop() {
		c := Bound(context.Background(), p, BoundLimits{Work: bound, Workers: 2})
		apart := Bound(context.Background(), p, BoundLimits{Work: bound / 4, Workers: 2, Warm: c, Futures: true})
		plan := Search(context.Background(), p, Limits{Work: search, Workers: 2, Prices: apart})
		value = Expect(p, &plan)
		gap, _ = Gap(c.Bound, value, none)
	}
	b.ReportMetric(float64(len(p.Options)), "options")
	b.ReportMetric(value, "meals")
	b.ReportMetric(100*gap, "gap-%")
}

func BenchmarkEvaluate9500(b *testing.B) {
	p := medium9500()
	plan := Search(context.Background(), p, Limits{Work: 1, Workers: 2})
	for b.Loop() {
		Evaluate(p, &plan)
	}
}

func BenchmarkNewStudy9500(b *testing.B) {
	p := medium9500()
	plan := Search(context.Background(), p, Limits{Work: 1, Workers: 2})
	for b.Loop() {
		NewStudy(p, &plan)
	}
}

func BenchmarkKeepCurveOfEight9500(b *testing.B) {
	p := medium9500()
	y := NewStudy(p, ptr(Search(context.Background(), p, Limits{Workers: 2})))
	for b.Loop() {
		y.KeepCurve(context.Background(), 0, []int{-1, 0, 1, 2, 3, 4, 5, 6}, 0)
	}
}

func BenchmarkWithout9500(b *testing.B) {
	p := medium9500()
	y := NewStudy(p, ptr(Search(context.Background(), p, Limits{Workers: 2})))
	for b.Loop() {
		y.Without(context.Background(), 30, 0)
	}
}

func ptr(plan Plan) *Plan { return &plan }
