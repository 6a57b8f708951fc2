package reckon

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
)

//go:embed care/care.csv
var careCSV string

// Care is a rule of routine work on what stands: tie, prune, feed, earth up.
// Days count from the sowing or setting out.
type Care struct {
	Verb        string
	Crops       map[string]bool
	Starts      string // "any", "sown", "set out"
	From, To    int    // days since the start; To 0 = as long as it stands
	Every, Wait int    // days between two times, 0 = once; days it may wait
	First, Last int    // months of the north, 0 = all year
	Kinds       string // "any", "contained", "ground"
	Minutes     int
	Rule, Cause string
	Look        string
	Caution     string
	Basis       string // "common practice", "published", with what growers disagree on
	Source      string
	line        int
}

var readCare = sync.OnceValues(func() ([]Care, error) { return parseCare(careCSV) })

// parseCare reads the rules; it lists the first fault with its line.
func parseCare(text string) ([]Care, error) {
	rd := csv.NewReader(strings.NewReader(text))
	rows, err := rd.ReadAll()
	if err != nil {
		return nil, fmt.Errorf("reckon: care rules: %w", err)
	}
	var out []Care
	for i, f := range rows[1:] {
		c := Care{Verb: f[0], Crops: map[string]bool{}, Starts: f[2], Kinds: f[8], Rule: f[10], Cause: f[11], Look: f[12], Caution: f[13], Basis: f[14], Source: f[15], line: i + 2}
		for _, id := range strings.Fields(f[1]) {
			c.Crops[id] = true
		}
		for _, n := range []struct {
			to   *int
			text string
		}{{&c.From, f[3]}, {&c.To, f[4]}, {&c.Every, f[5]}, {&c.Wait, f[6]}, {&c.Minutes, f[9]}} {
			if *n.to, err = strconv.Atoi(n.text); err != nil {
				return nil, fmt.Errorf("reckon: care rules, line %d: %q is not a whole number", c.line, n.text)
			}
		}
		if f[7] != "" {
			if _, err := fmt.Sscanf(f[7], "%d-%d", &c.First, &c.Last); err != nil {
				return nil, fmt.Errorf("reckon: care rules, line %d: months %q", c.line, f[7])
			}
		}
		out = append(out, c)
	}
	return out, nil
}

// inMonths reports whether a day lies in the rule's months, shifted by half a
// year in the south.
func (c Care) inMonths(d cal.Day, south bool) bool { return monthIn(d, c.First, c.Last, south) }

// monthIn reports whether a day lies from one month of the north to another,
// round the new year when the second is smaller; first 0 = always.
func monthIn(d cal.Day, first, last int, south bool) bool {
	if first == 0 {
		return true
	}
	m := int(d.Month())
	if south {
		m = (m+5)%12 + 1
	}
	if first <= last {
		return m >= first && m <= last
	}
	return m >= first || m <= last
}

// contained reports whether a space holds its medium apart from the ground, in
// a volume that feeds and salts work differently in.
func contained(k garden.Kind) bool {
	switch k {
	case garden.Bag, garden.PocketBag, garden.Reservoir, garden.Tier, garden.Railing, garden.Hanging, garden.ElevatedBed:
		return true
	}
	return false
}

func (c Care) fits(sp garden.Space) bool {
	switch c.Kinds {
	case "contained":
		return contained(sp.Kind)
	case "ground":
		return !contained(sp.Kind)
	}
	return true
}

// lastDone is the last day a piece of work was noted; 0 = never.
func (r *Result) lastDone(about, verb string) cal.Day {
	if r.in.State == nil {
		return 0
	}
	return r.in.State.LastDone(about, verb)
}

// due says when a rule next asks for a planting, and whether it does by today.
func (c Care) due(start, last, today cal.Day) (cal.Day, bool) {
	on := start + cal.Day(c.From)
	if last >= start && last != 0 {
		if c.Every == 0 {
			return 0, false
		}
		on = last + cal.Day(c.Every)
	}
	if c.To > 0 && today > start+cal.Day(c.To) {
		return 0, false
	}
	return on, today >= on
}

// careTasks lists the routine work that is due on what stands.
func (r *Result) careTasks() []Task {
	rules, err := readCare()
	if err != nil {
		panic("reckon: the care rules do not read: " + err.Error()) // a test reads them
	}
	south := r.in.Garden.Place.LatDeg < 0
	var out []Task
	for i, s := range r.model.stays {
		if s.count == 0 || r.Plan.Pull[i] <= 0 || !r.growing(s) {
			continue
		}
		sp := r.in.Garden.Spaces[s.space]
		for _, c := range rules {
			if !c.Crops[string(s.crop.ID)] || !c.fits(sp) || !c.inMonths(r.in.Date, south) || c.Starts == "set out" && !s.setOut {
				continue
			}
			if _, now := c.due(s.since.Likely, r.lastDone(s.id, c.Verb), r.in.Date); !now {
				continue
			}
			out = append(out, r.careTask(c, s))
			if c.Verb == "feed" {
				break // one rule of feeding is enough
			}
		}
	}
	return out
}

func (r *Result) careTask(c Care, s standing) Task {
	t := r.task(s.space, c.Verb, named(s.crop, s.variety, s.oneOf), s.id)
	t.Crop, t.Event, t.Minutes, t.Until = string(s.crop.ID), EventDone, c.Minutes, r.in.Date+cal.Day(c.Wait)
	t.Rule, t.Basis = sentence(c.Rule), c.basis()
	t.Answer = Answer{
		Verdict: sentence(fmt.Sprintf("%s %s in %s", c.Verb, t.Object, t.SpaceName)), Reason: c.Cause,
		Sure: "a rule of the trade, not a count", OfTwenty: -1, Look: c.Look,
		Change:  fmt.Sprintf("It can wait until %s. If it needs none, say so and it is not asked again.", t.Until.Short()),
		Caution: c.Caution,
	}
	if c.Verb == "feed" && r.in.Garden.Spaces[s.space].Kind == garden.Reservoir {
		t.Answer.Look = "Is there a white crust on top? Then give plain water. " + c.Look
		t.Rule += " A reservoir does not wash salts out and needs less feed."
	}
	return t
}

// basis says where a rule comes from.
func (c Care) basis() string {
	if c.Source != "" {
		return c.Source
	}
	return c.Basis
}

// growing reports whether the coming week is warm enough for a planting to
// grow to speak of: its mean lies three degrees above where growth begins.
func (r *Result) growing(s standing) bool {
	e := r.Place.Envs[s.space]
	if e == nil || len(e.Futures) == 0 {
		return true
	}
	sum, n := 0.0, 0
	for _, f := range e.Futures {
		for k := range cal.Day(7) {
			if d, ok := at(f, r.in.Date+k); ok {
				sum, n = sum+(d.TmaxC+d.TminC)/2, n+1
			}
		}
	}
	return n == 0 || sum/float64(n) >= s.crop.BaseC.Value+3
}

// EventDone is what "did it" writes for work that leaves no entry of another
// kind: a look with the ledger's mark of work done.
const EventDone = "done"
