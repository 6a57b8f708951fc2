package season

import (
	"context"
	"testing"
)

// The two sizes of season.md's trials: a small garden of 6 spaces and about
// 900 options, and one of 20 spaces and about 9,500, both on 20 futures.
func small900() *Problem   { return plausible(9, 6, 7, 52, 20) }
func medium9500() *Problem { return plausible(2, 20, 18, 60, 20) }

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
