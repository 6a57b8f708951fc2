package reckon

import (
	"context"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

// TestDemoTellsWhatCanWait reads the answer of both dates: figures that agree
// with the plan, a count for every planting, words that say that count, and a
// day that is left as it was.
func TestDemoTellsWhatCanWait(t *testing.T) {
	for _, c := range demoCases()[:2] {
		r := demoPlan(t, c)
		if r.known() == nil && r.JSON().Later != nil {
			t.Errorf("%s: told before it is worked out", c.name)
		}
		gone, stop := context.WithCancel(context.Background())
		stop()
		if r.known() == nil && r.Later(gone) != nil {
			t.Errorf("%s: an answer after the end", c.name)
		}
		l := r.Later(context.Background())
		if l == nil || r.Later(gone) != l {
			t.Fatalf("%s: %v, and asked again another", c.name, l)
		}
		day := r.Day.WithLater(l)
		if r.Day.Later != nil || day.Later != l {
			t.Errorf("%s: the day was changed, or nothing is told on it", c.name)
		}
		j := r.JSON()
		if j.Later == nil || !slices.Equal(j.Later.FixedAll, l.Fixed) || len(j.Later.FittedAll) != 20 {
			t.Fatalf("%s: the JSON has %+v", c.name, j.Later)
		}
		for f, x := range j.Later.FixedAll {
			if math.Abs(x-j.Futures.All[f]) > 1e-6 || j.Later.FittedAll[f] < x-1e-9 {
				t.Errorf("%s: future %d: as planned %.6f, the plan says %.6f, fitted %.6f", c.name, f, x, j.Futures.All[f], j.Later.FittedAll[f])
			}
		}
		gain := j.Later.Fitted - j.Later.Fixed
		for _, want := range []string{fmt.Sprintf("worth %.0f meals", j.Later.Fixed), fmt.Sprintf("about %.0f. ", j.Later.Fitted), fmt.Sprintf("about %.0f meals", gain), "after " + (l.Until - 1).Long()} {
			if !strings.Contains(l.Words, want) {
				t.Errorf("%s: %q lacks %q", c.name, l.Words, want)
			}
		}
		if gain < noise {
			t.Errorf("%s: who knew what comes would gain %.2f meals: too little to try the words", c.name, gain)
		}
		readsLines(t, c, r, j)
		t.Logf("%s: %s", c.name, l.Words)
	}
}

// ofPots is the ID of a planting of pots at hand, which are sown already.
var ofPots = regexp.MustCompile(`\.pot\d\.w`)

// readsLines holds each planting's count in the JSON against its line's words.
func readsLines(t *testing.T, c demoCase, r *Result, j PlanJSON) {
	t.Helper()
	l := r.known()
	far, sure := 0, 0
	for _, p := range j.Plantings {
		x := l.lines[p.ID]
		if x == nil || p.Still == nil || *p.Still != x.Still || x.Still < 0 || x.Still > 20 {
			t.Fatalf("%s: %s has %v, its line %+v", c.name, p.ID, p.Still, x)
		}
		begins := p.Start.Likely
		if ofPots.MatchString(p.ID) {
			begins = p.SetOut.Likely
		}
		if x.Near != (begins < l.Until) || !x.Near && x.Decide != begins && !ofPots.MatchString(p.ID) {
			t.Errorf("%s: %s begins %s, told near %v, decide by %s", c.name, p.ID, begins, x.Near, x.Decide)
		}
		if (p.Else == nil) != (x.ElseID == "") || p.Else != nil && (*p.ElseOf < 1 || *p.ElseOf > 20-*p.Still) {
			t.Errorf("%s: %s: else %v of %v, still %d", c.name, p.ID, p.Else, p.ElseOf, *p.Still)
		}
		if !x.Near {
			far++
		}
		if !x.Near && x.Still >= planOn {
			sure++
		}
		if says := fmt.Sprintf("%d of 20 futures", x.Still); x.Words != "" && !strings.Contains(x.Words, says) || !x.Near && x.Words == "" {
			t.Errorf("%s: %s: %q, want %q", c.name, p.ID, x.Words, says)
		}
		if !x.Near && (x.Still < planOn) != strings.Contains(x.Words, "Decide by "+x.Decide.Short()) {
			t.Errorf("%s: %s: %q, still wanted in %d, decide by %s", c.name, p.ID, x.Words, x.Still, x.Decide)
		}
	}
	if says := fmt.Sprintf("%d of %d would still be wanted in 16 or more", starts(r, false), starts(r, true)); far == 0 || sure == 0 || !strings.Contains(l.Words, says) {
		t.Errorf("%s: %d plantings can wait, %d of them sure; %q lacks %q", c.name, far, sure, l.Words, says)
	}
}

// starts counts what is started together, all that can wait or what is to be
// planned on.
func starts(r *Result, all bool) int {
	seen := map[*LineLater]bool{}
	for _, x := range r.known().lines {
		if !x.Near && x.Words != "" && (all || x.Still >= planOn) {
			seen[x] = true
		}
	}
	for i := range r.model.stays {
		delete(seen, r.known().lines[r.model.stays[i].id])
	}
	return len(seen)
}

// TestFewRewardIt: a low count of a start that is due now is told on its task,
// and a middling one is not.
func TestFewRewardIt(t *testing.T) {
	on := cal.Of(2015, 4, 6)
	low, fair := &LineLater{Still: 9, Near: true, Others: "mostly Swiss chard"}, &LineLater{Still: 13, Near: true}
	for _, x := range []*LineLater{low, fair} {
		x.Words = x.startWords("sown outdoors")
	}
	d := &Day{Date: on, Today: []Task{{ID: "a", line: "low"}, {ID: "b", line: "fair"}, {ID: "c"}, {ID: "d", line: "far"}},
		Spaces: []SpaceDay{{Name: "Tub", Lines: []Line{{ID: "low", Crop: "tomato"}, {ID: "far", Crop: "spinach"}, {ID: "sure", Crop: "leek"}}}}}
	far, sure := &LineLater{Still: 12, Decide: on + 50, Others: "mostly the bean that stands there, longer", By: "26 May"}, &LineLater{Still: 16, Decide: on + 40}
	far.Words, sure.Words = far.startWords("sown outdoors"), sure.startWords("set out")
	l := &Later{on: on, lines: map[string]*LineLater{"low": low, "fair": fair, "far": far, "sure": sure}}
	got := d.WithLater(l)
	want := "Only 9 of 20 futures reward it. In the others one who knew what comes would have mostly Swiss chard."
	if got.Today[0].Reward != want || got.Today[1].Reward != "" || got.Today[2].Reward != "" || got.Today[3].Reward != "" {
		t.Errorf("told %q, %q, %q, %q; want %q and nothing else", got.Today[0].Reward, got.Today[1].Reward, got.Today[2].Reward, got.Today[3].Reward, want)
	}
	if d.Today[0].Reward != "" || d.Spaces[0].Lines[0].Later != nil {
		t.Error("the day asked about was changed")
	}
	w := got.Waiting()
	if says := "Spinach in Tub. In 12 of 20 futures it would still be sown outdoors; in the others mostly the bean that stands there, longer. Decide by 26 May."; len(w) != 1 || w[0].Says() != says {
		t.Errorf("what can wait: %+v, want %q", w, says)
	}
	if says := "In 16 of 20 futures it would still be set out: plan on it."; sure.Words != says {
		t.Errorf("%q, want %q", sure.Words, says)
	}
	if l.on = on - 1; d.WithLater(l) != d {
		t.Error("an answer of another date is told")
	}
}
