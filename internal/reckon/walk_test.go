package reckon

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// aDay is a small garden's day by hand: two beds, a shelf, two people.
func aDay() *Day {
	d := &Day{Date: cal.Of(2015, 7, 1), Minutes: 210,
		People: []PersonDay{{ID: "ann", Name: "Ann", Seated: true, LiftKg: 4, Minutes: 140}, {ID: "ben", Name: "Ben"}}}
	high := []Reach{{Person: "Ann", Seated: true, OK: true}, {Person: "Ben", OK: true}}
	low := []Reach{{Person: "Ann", Seated: true, Words: "its rim is 20 cm up"}, {Person: "Ben", OK: true}}
	d.Spaces = []SpaceDay{{ID: "high", Name: "High bed", Near: []string{"high"}, Side: "left"}, {ID: "low", Name: "Low bed", Near: []string{"low"}}}
	d.Today = []Task{
		{ID: "a", Space: "low", Verb: "pick", Object: "beans", Minutes: 10, Pressing: true, Until: d.Date + 2, DayCost: 1, Reach: low, Who: []string{"Ben"}},
		{ID: "b", Space: "high", Verb: "water", Object: "High bed", Minutes: 10, Pressing: true, Until: d.Date, DayCost: -1, LiftKg: 5, Reach: high, Who: []string{"Ann", "Ben"}},
		{ID: "c", Space: "high", Verb: "sow", Object: "kale", Minutes: 10, Until: d.Date + 20, DayCost: 0.4, Reach: high},
		{ID: "d", Space: "low", Verb: "tie", Object: "beans", Minutes: 5, Until: d.Date + 5, DayCost: -1, Reach: low},
		{ID: "e", Space: "low", Verb: "look", Object: "peas", Minutes: 5, Until: d.Date + 3, DayCost: -1, Hollow: true, Reach: low},
	}
	return d
}

func ids(stops []Stop) string {
	s := ""
	for _, x := range stops {
		s += x.ID
	}
	return s
}

// TestWalkIsCutByWorth keeps, as the minutes shrink, what ends today, then what
// presses, then what a day's wait costs for its minutes; stops stay in walking
// order and nothing is lost without a word.
func TestWalkIsCutByWorth(t *testing.T) {
	for _, tt := range []struct {
		minutes int
		want    string
	}{{AllMinutes, "bcade"}, {30, "bca"}, {0, "bca"}, {25, "bae"}, {20, "ba"}, {10, "b"}, {5, "e"}} {
		w := aDay().Walk(WalkAsk{Minutes: tt.minutes})
		if got := ids(w.Stops); got != tt.want {
			t.Errorf("%d minutes: stops %q, want %q", tt.minutes, got, tt.want)
		}
		if len(w.Stops)+len(w.Left) != 5 {
			t.Errorf("%d minutes: %d stops and %d left, want 5 in all", tt.minutes, len(w.Stops), len(w.Left))
		}
		for _, l := range w.Left {
			if l.Why == "" {
				t.Errorf("%s is left out without a word", l.ID)
			}
		}
	}
	done := aDay()
	done.Today, done.Spent = done.Today[1:], 10
	if got := ids(done.Walk(WalkAsk{}).Stops); got != "bc" {
		t.Errorf("after 10 of 30 minutes: stops %q, want bc: the list does not fill up again", got)
	}
	w := aDay().Walk(WalkAsk{})
	if w.Stops[0].Where != "Stop 1 of 3, left side" || w.Flags[0].Minutes != 20 || w.Flags[1].Hollow || !strings.Contains(w.Share, "share of the garden's 3 h 30 min a week") {
		t.Errorf("the walk says %q, %+v, %q", w.Stops[0].Where, w.Flags, w.Share)
	}
}

// TestClosingWindowBeatsShortPickings: five pickings of three minutes fill a
// quarter of an hour while a sowing can wait, and give way when its last days
// come; what a day's wait costs is the same all the while.
func TestClosingWindowBeatsShortPickings(t *testing.T) {
	for _, tt := range []struct {
		days int
		want string
	}{{20, "pqrst"}, {6, "pqrst"}, {2, "px"}, {0, "px"}} {
		d := &Day{Date: cal.Of(2015, 4, 8), Spaces: []SpaceDay{{ID: "bed"}}}
		for _, id := range []string{"p", "q", "r", "s", "t"} {
			d.Today = append(d.Today, Task{ID: id, Space: "bed", Verb: "pick", Minutes: 3, Until: d.Date + 4, DayCost: 0.06})
		}
		d.Today = append(d.Today, Task{ID: "x", Space: "bed", Verb: "sow", Minutes: 10, Until: d.Date + cal.Day(tt.days), DayCost: 0.14})
		if got := ids(d.Walk(WalkAsk{Minutes: 15}).Stops); got != tt.want {
			t.Errorf("the window closes in %d days: stops %q, want %q", tt.days, got, tt.want)
		}
	}
}

// TestWalkLosesTheLeast: of all sets that fit the minutes, tried one by one,
// none loses more by waiting than the chosen one.
func TestWalkLosesTheLeast(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 5))
	today := cal.Of(2015, 4, 8)
	for round := range 200 {
		tasks := make([]Task, 1+r.IntN(9))
		for i := range tasks {
			tasks[i] = Task{ID: string(rune('a' + i)), Verb: []string{"pick", "sow", "pull"}[r.IntN(3)], Minutes: r.IntN(25), DayCost: 0.01 + r.Float64(), Until: today + cal.Day(r.IntN(12))}
		}
		minutes := r.IntN(70)
		sum := func(set []Task) (lost float64, used int) {
			for _, x := range set {
				lost, used = lost+waitLoses(x, today), used+x.Minutes
			}
			return lost, used
		}
		best := 0.0
		for mask := range 1 << len(tasks) {
			var set []Task
			for i, x := range tasks {
				if mask>>i&1 == 1 {
					set = append(set, x)
				}
			}
			if lost, used := sum(set); used <= minutes {
				best = max(best, lost)
			}
		}
		chosen, over := fits(tasks, minutes, today)
		if got, used := sum(chosen); math.Abs(got-best) > 1e-6 || used > minutes || len(chosen)+len(over) != len(tasks) {
			t.Fatalf("round %d: %d minutes of %d, %v meals, best %v", round, used, minutes, got, best)
		}
	}
}

// TestPickedLatelyWaits: what was picked yesterday has a seventh of a week on
// it, and the demo's list asks for it again only when a meal's share has come.
func TestPickedLatelyWaits(t *testing.T) {
	for _, tt := range []struct {
		ago  cal.Day
		want float64
	}{{0, 0}, {1, 1.0 / 7}, {7, 1}, {30, 1}} {
		if got := (standing{picked: 100 - tt.ago}).ready(100); math.Abs(got-tt.want) > 1e-9 {
			t.Errorf("picked %d days ago: %v is ready, want %v", tt.ago, got, tt.want)
		}
	}
	if got := (standing{}).ready(100); got != 1 {
		t.Errorf("never picked: %v is ready, want all", got)
	}
	r := demoPlan(t, demoCases()[0])
	before := r.pickTasks()
	if len(before) < 3 {
		t.Fatalf("%d pickings in the demo's April", len(before))
	}
	for i := range r.model.stays {
		s := &r.model.stays[i]
		if s.id != before[0].Planting {
			continue
		}
		was := s.picked
		defer func() { s.picked = was }()
		s.picked = r.in.Date
	}
	after := r.pickTasks()
	if len(after) != len(before)-1 || after[0].ID == before[0].ID {
		t.Errorf("%s was picked today; the list had %d pickings and has %d", before[0].Planting, len(before), len(after))
	}
}

// TestSeatsWithWork: a seat from which nothing of today is reached is not
// offered, seats that reach the same are offered once, the most work first.
func TestSeatsWithWork(t *testing.T) {
	d := aDay()
	d.Spaces = append(d.Spaces, SpaceDay{ID: "bare", Name: "Bare bed", Near: []string{"bare"}}, SpaceDay{ID: "by", Name: "Beside the high bed", Near: []string{"by", "high"}})
	said := func(person string) string {
		s := ""
		for _, x := range d.Seats(person) {
			s += fmt.Sprintf("%s %d;", x.Space, x.Tasks)
		}
		return s
	}
	if got := said(""); got != "low 3;high 2;" {
		t.Errorf("seats for anybody: %q", got)
	}
	if got := said("ann"); got != "high 2;" {
		t.Errorf("seats for Ann, who does not reach the low bed: %q", got)
	}
}

// TestWalkOfAPerson leaves to others what is out of reach or from the seat, by
// name, and lets others carry what is too heavy.
func TestWalkOfAPerson(t *testing.T) {
	w := aDay().Walk(WalkAsk{Person: "ann", Minutes: AllMinutes})
	if ids(w.Stops) != "bc" || len(w.Ask) != 3 || !strings.Contains(w.Ask[0].Why, "20 cm up") || !strings.Contains(w.Ask[0].Why, "Ask Ben.") {
		t.Errorf("Ann: %q, others %+v", ids(w.Stops), w.Ask)
	}
	if w.Stops[0].Carry == "" || w.Stops[1].Carry != "" {
		t.Errorf("Ann lifts 4 kg: carry %q and %q, want words for the can only", w.Stops[0].Carry, w.Stops[1].Carry)
	}
	if w := aDay().Walk(WalkAsk{Seat: "low", Minutes: AllMinutes}); ids(w.Stops) != "ade" {
		t.Errorf("from a seat at the low bed: %q, want ade", ids(w.Stops))
	}
}

// TestHotDayIsShort keeps what will not wait, and says early or late.
func TestHotDayIsShort(t *testing.T) {
	d := aDay()
	d.Hot = &HotDay{OfTwenty: 15, Early: "early", Late: "late"}
	w := d.Walk(WalkAsk{Minutes: AllMinutes})
	if ids(w.Stops) != "ba" || w.Stops[0].When != "early" || len(w.Left) != 3 {
		t.Errorf("a hot day: %q at %q, %d left, want ba early and 3", ids(w.Stops), w.Stops[0].When, len(w.Left))
	}
}

// TestCareRulesRead reads the rules and nets: every crop is in the crop book,
// every rule says when, why, what to look at and where it comes from.
func TestCareRulesRead(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	rules, err := readCare()
	if err != nil || len(rules) < 10 {
		t.Fatalf("%d rules: %v", len(rules), err)
	}
	for _, c := range rules {
		if c.Rule == "" || c.Cause == "" || c.Look == "" || c.basis() == "" || c.Wait < 1 || c.Minutes < 1 || len(c.Crops) == 0 {
			t.Errorf("line %d is not whole: %+v", c.line, c)
		}
		for id := range c.Crops {
			if _, ok := book.Crop(crop.ID(id)); !ok {
				t.Errorf("line %d: no crop %q in the book", c.line, id)
			}
		}
	}
	nets, err := readNets()
	if err != nil || len(nets) < 8 {
		t.Fatalf("%d nets: %v", len(nets), err)
	}
	for _, e := range nets {
		if e.How == "" || e.Basis == "" || e.Source == "" || e.High <= 0 || e.Low > e.High {
			t.Errorf("%s is not whole: %+v", e.Culprit, e)
		}
		for id := range e.Crops {
			if _, ok := book.Crop(crop.ID(id)); !ok {
				t.Errorf("%s: no crop %q in the book", e.Culprit, id)
			}
		}
	}
	if _, err := parseCare("head\ntie,tomato,any,soon,0,10,5,,any,5,r,c,l,,b,\n"); err == nil {
		t.Error("a rule with a word for a number is read")
	}
}

// TestCareIsDue asks from its day on, again after its interval, not when done
// once for all, and not past its end.
func TestCareIsDue(t *testing.T) {
	start := cal.Of(2015, 5, 1)
	for _, tt := range []struct {
		c         Care
		last, now cal.Day
		want      bool
	}{
		{Care{From: 21, Every: 10}, 0, start + 20, false}, {Care{From: 21, Every: 10}, 0, start + 21, true},
		{Care{From: 21, Every: 10}, start + 21, start + 30, false}, {Care{From: 21, Every: 10}, start + 21, start + 31, true},
		{Care{From: 21}, start + 22, start + 60, false}, {Care{From: 21, To: 40}, 0, start + 41, false},
		{Care{From: 21, Every: 10}, start - 100, start + 21, true},
	} {
		if _, got := tt.c.due(start, tt.last, tt.now); got != tt.want {
			t.Errorf("%+v, last %d, day %d: %v, want %v", tt.c, tt.last-start, tt.now-start, got, tt.want)
		}
	}
	if !monthIn(cal.Of(2015, 1, 5), 11, 3, false) || monthIn(cal.Of(2015, 7, 5), 11, 3, false) || !monthIn(cal.Of(2015, 7, 5), 11, 3, true) {
		t.Error("months round the new year, or of the south, are wrong")
	}
}

// TestReachAndSides: heights from the access pages, sides by the right hand.
func TestReachAndSides(t *testing.T) {
	m := func(x float64) unit.Length { return unit.Length{M: x, Typed: "x"} }
	g := &garden.Garden{People: []garden.Person{{ID: "ann", Name: "Ann", Seated: true, Reach: m(0.45)}, {ID: "ben", Name: "Ben"}}}
	for _, tt := range []struct {
		rim, width float64
		ok         bool
		words      bool
	}{{0.45, 0.6, false, true}, {0.60, 0.6, true, false}, {0.75, 1.2, true, true}, {0.86, 0.9, true, false}, {0.95, 0.6, false, true}} {
		r := reaches(g, garden.Space{RimUp: m(tt.rim), Length: m(2), Width: m(tt.width)})
		if r[0].OK != tt.ok || (r[0].Words != "") != tt.words || !r[1].OK {
			t.Errorf("a rim of %v m, %v m wide: %+v, want %v", tt.rim, tt.width, r, tt.ok)
		}
	}
	// Walking north: a bed to the west is on the left.
	for i, x := range []float64{-1, 1, -1, 1} {
		g.Spaces = append(g.Spaces, garden.Space{ID: garden.SpaceID(string(rune(int(97) + i))), X: 10 + x, Y: 1 + 1.5*float64(i), Length: m(1), Width: m(1)})
	}
	if got := strings.Join(sides(g), " "); got != "left right left right" {
		t.Errorf("sides %q, want left right left right", got)
	}
	if n := nearBy(g, 0); len(n) != 2 || n[1] != "b" {
		t.Errorf("near the first bed: %v, want itself and b, 1.1 m off", n)
	}
}
