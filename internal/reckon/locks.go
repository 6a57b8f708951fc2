package reckon

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/season"
)

// How far a line of an earlier plan may lie from what is offered now: every
// week is offered near, fewer far ahead, so a week or two is the same start.
const (
	slipNear = 1
	slipFar  = 2
)

// lateWeeks is how long after its week a locked line is still waited for.
const lateWeeks = 2

// Heard is what became of one wish in the plan.
type Heard struct {
	Event string
	Wish  ledger.Wish
	Words string // the wish in words
	State string // "met", "done", "not met", "past"
	Why   string // of a wish not met
	IDs   []string
}

// Likeness is what lasts of the plan from one week to the next.
func (r *Result) Likeness() ledger.KeptPlan {
	m := r.model
	k := ledger.KeptPlan{On: r.in.Date, Worth: r.worth(), Lines: []ledger.PlanLine{}}
	for _, pl := range r.Plan.Plantings {
		k.Lines = append(k.Lines, m.likeness(pl))
	}
	for i, s := range m.stays {
		k.Pulls = append(k.Pulls, ledger.PlanPull{Planting: s.id, On: m.p.Start + cal.Day(7*r.Plan.Pull[i]+6)})
	}
	sort.SliceStable(k.Lines, func(a, b int) bool {
		x, y := k.Lines[a], k.Lines[b]
		if x.Space != y.Space {
			return m.index[garden.SpaceID(x.Space)] < m.index[garden.SpaceID(y.Space)]
		}
		return x.Since < y.Since
	})
	return k
}

// likeness is one planting by what lasts of it.
func (m *model) likeness(pl season.Planting) ledger.PlanLine {
	o := m.p.Options[pl.Option]
	return ledger.PlanLine{Space: m.p.Spaces[o.Space].ID, Crop: o.Crop, Way: wayWord(m.entries[m.entry[pl.Option]].Way),
		Since: m.p.Start + cal.Day(7*o.Week), Until: m.p.Start + cal.Day(7*o.End+6), Plants: pl.Plants}
}

// finder finds the options that are like lines of an earlier plan, one line
// after the other: pots at hand go to the first that ask for them.
type finder struct {
	m    *model
	at   map[string][]int
	pots map[string]int // of each tray, not yet given to a line
}

func (m *model) finder() *finder {
	f := &finder{m: m, at: map[string][]int{}, pots: maps.Clone(m.p.Totals)}
	for i := range m.p.Options {
		o := &m.p.Options[i]
		key := lineKey(m.p.Spaces[o.Space].ID, o.Crop, wayWord(m.entries[m.entry[i]].Way))
		f.at[key] = append(f.at[key], i)
	}
	return f
}

func lineKey(space, crop, way string) string { return space + " " + crop + " " + way }

// find returns the option most like a line, -1 when none is near. A line whose
// week has passed lately is looked for this week. A line does not say whether
// its plants are pots at hand: they are while there are enough, and where no
// others can be raised in time.
func (f *finder) find(l ledger.PlanLine) int {
	start := f.m.p.Start
	week := weeksFrom(start, l.Since)
	end := weeksFrom(start, l.Until)
	if week < -lateWeeks {
		return -1
	}
	week = max(week, 0)
	slip := slipNear
	if week >= nearWeeks-1 {
		slip = slipFar
	}
	best, far := -1, 1<<30
	for _, i := range f.at[lineKey(l.Space, l.Crop, l.Way)] {
		o := &f.m.p.Options[i]
		off := abs(o.Week - week)
		if off > slip {
			continue
		}
		d := 1000*off + abs(o.End-end)
		if isTray(*o) && f.pots[o.MaxTotal] < l.Plants {
			d += 1 << 20
		}
		if d < far {
			best, far = i, d
		}
	}
	if best >= 0 {
		if o := &f.m.p.Options[best]; isTray(*o) {
			f.pots[o.MaxTotal] -= l.Plants
		}
	}
	return best
}

// bySoonest is lines in the order of their weeks: what is to go out first is
// likeliest to be what was raised.
func bySoonest(lines []ledger.PlanLine) []ledger.PlanLine {
	return slices.SortedStableFunc(slices.Values(lines), func(a, b ledger.PlanLine) int { return cmp.Compare(a.Since, b.Since) })
}

// weeksFrom counts whole weeks from a Monday.
func weeksFrom(monday, d cal.Day) int {
	n := int(d - monday)
	if n < 0 {
		return -((6 - n) / 7)
	}
	return n / 7
}

func abs(n int) int { return max(n, -n) }

// prior is an earlier plan in this problem's options; nil when none is given.
func (m *model) prior(k *ledger.KeptPlan) *season.Plan {
	if k == nil {
		return nil
	}
	f, plan := m.finder(), &season.Plan{}
	seen := map[int]bool{}
	for _, l := range bySoonest(k.Lines) {
		if m.done(l) {
			continue
		}
		i := f.find(l)
		if i < 0 || seen[i] {
			continue
		}
		seen[i] = true
		o := &m.p.Options[i]
		plan.Plantings = append(plan.Plantings, season.Planting{Option: i, Plants: min(max(l.Plants, o.Min), o.Max)})
	}
	pulls := map[string]cal.Day{}
	for _, p := range k.Pulls {
		pulls[p.Planting] = p.On
	}
	for i := range m.p.Stays {
		st := &m.p.Stays[i]
		at := min(st.End, m.p.Weeks-1)
		on, ok := pulls[st.ID]
		if !ok && i < len(m.stays) {
			on, ok = m.untilOf(i, k.Lines)
		}
		if ok {
			at = max(min(weeksFrom(m.p.Start, on), at), min(st.MustKeepTo, at), -1)
		}
		plan.Pull = append(plan.Pull, at)
	}
	return plan
}

// untilOf is how long the plan before meant to give the ground to what stands
// now and was one of its lines.
func (m *model) untilOf(stay int, lines []ledger.PlanLine) (cal.Day, bool) {
	best, until := 1<<30, cal.Day(0)
	for _, l := range lines {
		if off := abs(int(m.stays[stay].since.Likely - l.Since)); m.began(stay, l) && off < best {
			best, until = off, l.Until
		}
	}
	return until, best < 1<<30
}

// began reports whether a planting that stands may be a line begun.
func (m *model) began(stay int, l ledger.PlanLine) bool {
	s := m.stays[stay]
	return m.p.Spaces[m.p.Stays[stay].Space].ID == l.Space && string(s.crop.ID) == l.Crop &&
		s.since.Likely >= l.Since-7*lateWeeks && s.since.Likely <= l.Until
}

// done reports whether a line has been started since: the same crop stands in
// its space from about that week.
func (m *model) done(l ledger.PlanLine) bool {
	for i := range m.stays {
		if m.began(i, l) {
			return true
		}
	}
	return false
}

// spared are options kept from thinning: lines wished for, and those of the
// plan before.
func (m *model) spared(in *Inputs) map[string]bool {
	out := map[string]bool{}
	var lines []ledger.PlanLine
	if in.Prior != nil {
		lines = append(lines, in.Prior.Lines...)
	}
	for _, w := range in.wishes() {
		lines = append(lines, in.linesOf(w.Wish)...)
	}
	if len(lines) == 0 {
		return out
	}
	f := m.finder()
	for _, l := range bySoonest(lines) {
		if i := f.find(l); i >= 0 {
			out[m.p.Options[i].ID] = true
		}
	}
	return out
}

// linesOf are the lines a wish would lock.
func (in *Inputs) linesOf(w ledger.Wish) []ledger.PlanLine {
	switch w.What {
	case ledger.WishLock:
		return []ledger.PlanLine{{Space: w.Space, Crop: w.Crop, Way: w.Way, Since: w.Since, Until: w.Until, Plants: w.Plants}}
	case ledger.WishReturn:
		for _, k := range in.State.Kept {
			if k.Event == w.Plan {
				return k.Lines
			}
		}
	}
	return nil
}

// refuse drops the options a wish refuses: the crop in that space while the
// line would have stood.
func (m *model) refuse(in *Inputs) {
	var no []ledger.WishNote
	for _, w := range in.wishes() {
		if w.What == ledger.WishRefuse {
			no = append(no, w)
		}
	}
	if len(no) == 0 {
		return
	}
	n := 0
	for i := range m.p.Options {
		o := m.p.Options[i]
		from, to := m.p.Start+cal.Day(7*o.Week), m.p.Start+cal.Day(7*o.End+6)
		refused := false
		for _, w := range no {
			refused = refused || w.Space == m.p.Spaces[o.Space].ID && w.Crop == o.Crop && from <= w.Until && to >= w.Since
		}
		if !refused {
			m.p.Options[n], m.entry[n] = o, m.entry[i]
			n++
		}
	}
	m.p.Options, m.entry = m.p.Options[:n], m.entry[:n]
}

// lock takes the wished lines into the problem and notes what became of each
// wish.
func (m *model) lock(in *Inputs) {
	f := m.finder()
	taken := map[int]bool{}
	for _, w := range in.wishes() {
		h := Heard{Event: w.Event, Wish: w.Wish, Words: WishWords(w.Wish, in), State: "met"}
		lines := bySoonest(in.linesOf(w.Wish))
		past, done, none := 0, 0, 0
		for _, l := range lines {
			switch {
			case m.done(l):
				done++
				continue
			case l.Since < m.p.Start-7*lateWeeks:
				past++
				continue
			}
			switch i := f.find(l); {
			case i < 0:
				none++
				h.Why = fmt.Sprintf("%s can no longer be started in %s in that week.", m.cropName(in, l.Crop), spaceNameOf(in, l.Space))
			case !taken[i]:
				taken[i] = true
				o := &m.p.Options[i]
				m.p.Locks = append(m.p.Locks, season.Planting{Option: i, Plants: min(max(l.Plants, o.Min), o.Max)})
				h.IDs = append(h.IDs, o.ID)
			}
		}
		switch n := len(lines); {
		case n == 0:
			if w.What == ledger.WishAway && w.Until < in.Date {
				h.State = "past"
			}
		case done == n:
			h.State = "done"
		case done+past == n:
			h.State = "past"
		case none == n:
			h.State = "not met"
		case none > 0:
			h.Why = fmt.Sprintf("%d of its %d lines can no longer be started as they were.", none, n)
		}
		m.heard = append(m.heard, h)
	}
}

func (m *model) cropName(in *Inputs, id string) string {
	if c, ok := in.Book.Crop(crop.ID(id)); ok {
		return c.Name
	}
	return id
}

func spaceNameOf(in *Inputs, id string) string {
	for _, sp := range in.Garden.Spaces {
		if string(sp.ID) == id {
			return spaceName(sp)
		}
	}
	return id
}
