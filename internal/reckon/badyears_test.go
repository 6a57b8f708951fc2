package reckon

import (
	"context"
	"slices"
	"strings"
	"testing"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// TestPlanForBadYearsOfASmallGarden: by the measure that bad years have a share
// in, the plan made for them is worth no less than the plan made for the mean,
// and by the mean no more; a wish does what the garden file does, and its price
// says both.
func TestPlanForBadYearsOfASmallGarden(t *testing.T) {
	planOf := func(step string, wishes ...ledger.WishNote) *Result {
		in := smallInputs(t, 47)
		in.Garden.BadYears, in.State.Wishes = step, wishes
		in.Quick, in.Work = true, 400_000
		return planned(t, in)
	}
	plain, much := planOf(""), planOf(garden.Much)
	if much.Problem.WorstShare != 0.6 || plain.Problem.WorstShare != 0 || planOf(garden.NotAtAll).Plan.Value != plain.Plan.Value {
		t.Fatalf("shares %v and %v", plain.Problem.WorstShare, much.Problem.WorstShare)
	}
	on := func(p *season.Problem, plan season.Plan) float64 { return season.Evaluate(p, &plan).Value }
	a, b := on(much.Problem, much.Plan), on(much.Problem, plain.Plan)
	mean, worst := mean(much.Verdict.PerFuture)-mean(plain.Verdict.PerFuture), season.WorstMean(much.Verdict.PerFuture)-season.WorstMean(plain.Verdict.PerFuture)
	t.Logf("for bad years %.2f meals by their measure, %.2f for the mean; mean %+.2f, worst five %+.2f", a, b, mean, worst)
	if a < b-noise || mean > noise || worst < -noise {
		t.Errorf("for bad years %.3f, for the mean %.3f; mean %+.3f, worst five %+.3f", a, b, mean, worst)
	}
	if value, nothing, low := much.worths(); value <= nothing || low >= value || !strings.Contains(much.Day.Plan.Words, "in the worst five of twenty futures it is worth") {
		t.Errorf("worth %.2f, nothing %.2f, worst %.2f: %q", value, nothing, low, much.Day.Plan.Words)
	}
	wished := planOf("", ledger.WishNote{Event: "x", Wish: ledger.Wish{What: ledger.WishBad, Level: garden.Much}})
	if !slices.Equal(wished.Plan.Plantings, much.Plan.Plantings) {
		t.Error("wished on the pages the plan is another than with the garden file's word")
	}
	price, ok := wished.priceOf(context.Background(), wished.Day.Heard[0])
	t.Logf("%s %s", price.Words, price.Says)
	if !ok || !strings.Contains(price.Says, "in the worst five of twenty years") || price.BadYears < -noise {
		t.Errorf("price %+v", price)
	}
}

func TestBadWords(t *testing.T) {
	for _, tt := range []struct {
		average, worst float64
		want           string
	}{
		{-20, 35, "On average the plan gives about 20 meals less; in the worst five of twenty years the plan gives about 35 meals more, give or take 2 meals."},
		{-1, 12, "On average no difference is seen; in the worst five of twenty years the plan gives about 12 meals more, give or take 2 meals."},
	} {
		if got := badWords(tt.average, tt.worst, 1.5); got != tt.want {
			t.Errorf("%v, %v: %q, want %q", tt.average, tt.worst, got, tt.want)
		}
	}
}
