package reckon

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"bedweek/internal/cal"
)

// WalkAsk says whose walk it is.
type WalkAsk struct {
	Person  string // id; "" = whoever comes
	Seat    string // space id beside which a seat stands: only what is reached from there; "" = no seat
	Minutes int    // that there are today; 0 = a day's share of the week's; AllMinutes = as many as it takes
}

// AllMinutes asks for everything, however long it takes.
const AllMinutes = -1

// Walk is today's work in walking order, cut to one person and the time there is.
type Walk struct {
	Sum     string // the first sentence
	Who     string // name; "" = whoever comes
	Seat    string // name of the space the seat stands at
	Stops   []Stop
	Flags   []Flag // every space in walking order
	Minutes int    // of the stops
	Had     int    // minutes there are; AllMinutes = no end
	Share   string // where Had comes from, in words
	Begun   bool   // some of it was done today
	Left    []Left // what does not fit or may wait, by worth
	Ask     []Left // what another person is asked for
	Hot     *HotDay
}

// Stop is one task on the way.
type Stop struct {
	Task
	No    int
	Side  string // "left", "right", "" = not known
	Where string // "Stop 3 of 7, left side"
	When  string // on a hot day: "early, before 10"; "" = any time
	Wait  string // "can wait until Sat 10 Oct", "for today"
	Carry string // why somebody else must carry; "" = nobody
}

// Flag is a space on the ribbon.
type Flag struct {
	Space, Name, Side string
	Stops             []int // numbers of the stops there
	Verbs             string
	Minutes           int
	Hollow            bool // everything there begins with a look
}

// Left is a task that is not a stop, and why.
type Left struct {
	Task
	Why string
}

// HotDay is what the weather makes of the list.
type HotDay struct {
	OfTwenty int // futures of a day of 30 °C or more
	HighC    Window
	Early    string // "before about 10"
	Late     string // "after about 18"
	Words    string
	Caution  string
}

// hotFrom is how likely a hot day must be to shorten the list, of twenty.
const hotFrom = 10

// HotToday says how hot the day of a plan may be; nil when it is not likely to be.
func (r *Result) hotToday() *HotDay {
	var highs []float64
	n := 0
	for _, f := range r.Place.Set.Futures {
		if d, ok := at(f, r.in.Date); ok {
			highs = append(highs, d.TmaxC)
			if d.TmaxC >= hotDayC {
				n++
			}
		}
	}
	k := ofTwenty(n, len(highs))
	if k < hotFrom {
		return nil
	}
	h := &HotDay{OfTwenty: k, HighC: windowOf(highs), Early: "early, before about 10", Late: "late, after about 18"}
	h.Words = fmt.Sprintf("A hot day, about %.0f °C (%.0f to %.0f): %s that it reaches 30. The list is short: early and late, and only what cannot wait.",
		h.HighC.Likely, h.HighC.Early, h.HighC.Late, chance(k))
	h.Caution = "Drink each hour, work in shade. Dizzy, sick or no longer sweating: stop and cool. Confused: call an ambulance."
	return h
}

// Walk makes a walk of the day's tasks.
func (d *Day) Walk(ask WalkAsk) *Walk {
	w := &Walk{Hot: d.Hot}
	who, known := d.person(ask.Person)
	if known {
		w.Who = who.Name
	}
	var near map[string]bool
	if i := d.spaceAt(ask.Seat); i >= 0 {
		near, w.Seat = map[string]bool{}, d.Spaces[i].Name
		for _, id := range d.Spaces[i].Near {
			near[id] = true
		}
	}
	var mine []Task
	for _, t := range d.Today {
		if why := d.notTheirs(t, who, known, near, w.Seat); why != "" {
			w.Ask = append(w.Ask, Left{t, why})
			continue
		}
		if w.Hot != nil && !hotWork(t, d.Date) {
			w.Left = append(w.Left, Left{t, "It waits for a cooler day."})
			continue
		}
		mine = append(mine, t)
	}
	w.Had, w.Share = d.minutesFor(ask, who, known)
	w.Begun = d.Spent > 0
	if d.Spent > 0 && w.Had != AllMinutes {
		w.Share = strings.TrimSpace(fmt.Sprintf("%s %s of it done.", w.Share, minutesSaid(min(d.Spent, w.Had))))
		w.Had = max(0, w.Had-d.Spent)
	}
	chosen, over := fits(mine, w.Had, d.Date)
	for _, t := range over {
		w.Left = append(w.Left, Left{t, leftWhy(t, d.Date)})
	}
	d.place(w, chosen, who, known)
	w.Sum = w.sum()
	return w
}

func (d *Day) person(id string) (PersonDay, bool) {
	for _, p := range d.People {
		if p.ID == id {
			return p, true
		}
	}
	return PersonDay{}, false
}

func (d *Day) spaceAt(id string) int {
	for i, sp := range d.Spaces {
		if sp.ID == id && id != "" {
			return i
		}
	}
	return -1
}

// notTheirs says why a task is somebody else's; "" = it is theirs.
func (d *Day) notTheirs(t Task, who PersonDay, known bool, near map[string]bool, seat string) string {
	if near != nil && !near[t.Space] {
		return "Not within reach of the seat at " + seat + "." + others(t, who.Name)
	}
	if !known {
		return ""
	}
	for _, r := range t.Reach {
		if r.Person == who.Name && !r.OK {
			return "Out of reach: " + r.Words + "." + others(t, who.Name)
		}
	}
	return ""
}

// others names who could do it instead.
func others(t Task, not string) string {
	var names []string
	for _, n := range t.Who {
		if n != not {
			names = append(names, n)
		}
	}
	if len(names) == 0 {
		return ""
	}
	if len(names) > 3 {
		names = append(names[:3:3], "others")
	}
	return " Ask " + strings.ReplaceAll(list(names), " and ", " or ") + "."
}

// hotWork reports whether a task is done on a hot day: what keeps plants
// alive, what is ripe, and what ends today.
func hotWork(t Task, today cal.Day) bool {
	switch t.Verb {
	case "water", "refill", "uncover":
		return true
	case "pick":
		return t.Pressing
	}
	return t.Pressing && t.Until != 0 && t.Until <= today
}

// minutesFor is the time there is, and where that comes from.
func (d *Day) minutesFor(ask WalkAsk, who PersonDay, known bool) (int, string) {
	switch {
	case ask.Minutes != 0:
		return ask.Minutes, ""
	case known && who.Minutes > 0:
		return max(15, int(who.Minutes/7+0.5)), fmt.Sprintf("A day's share of the %s a week that %s gives.", minutesSaid(int(who.Minutes+0.5)), who.Name)
	case known || d.Minutes == 0:
		return AllMinutes, ""
	}
	return max(15, int(d.Minutes/7+0.5)), fmt.Sprintf("A day's share of the garden's %s a week.", minutesSaid(int(d.Minutes+0.5)))
}

// fits takes tasks until the time is used: what ends today, then what presses
// and cannot be counted in meals; then those that together lose the most by
// waiting; then the rest, the soonest end first. A task that is too long is
// passed over for shorter ones.
func fits(tasks []Task, minutes int, today cal.Day) (chosen, over []Task) {
	order := make([]int, len(tasks))
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool {
		x, y := tasks[order[a]], tasks[order[b]]
		if p, q := urgency(x, today), urgency(y, today); p != q {
			return p > q
		}
		if p, q := lastDay(x), lastDay(y); p != q {
			return p < q
		}
		return x.ID < y.ID
	})
	in := make([]bool, len(tasks))
	left := minutes
	take := func(i int) {
		if minutes == AllMinutes || tasks[i].Minutes <= left {
			in[i] = true
			left -= tasks[i].Minutes
		}
	}
	first, _ := slices.BinarySearchFunc(order, weighed, func(i, of int) int { return of - urgency(tasks[i], today) })
	for _, i := range order[:first] {
		take(i)
	}
	if minutes != AllMinutes {
		for _, i := range dearest(tasks, order[first:], left, today) {
			take(i)
		}
	}
	for _, i := range order[first:] {
		if !in[i] {
			take(i)
		}
	}
	for i, t := range tasks {
		if in[i] {
			chosen = append(chosen, t)
		}
	}
	for _, i := range order {
		if !in[i] {
			over = append(over, tasks[i])
		}
	}
	sort.SliceStable(over, func(a, b int) bool {
		if p, q := urgency(over[a], today), urgency(over[b], today); p != q {
			return p > q
		}
		return waitLoses(over[a], today) > waitLoses(over[b], today)
	})
	return chosen, over
}

// weighed is the urgency of what is taken by what its wait loses.
const weighed = 1

func urgency(t Task, today cal.Day) int {
	switch {
	case t.Pressing && t.Until != 0 && t.Until <= today:
		return 3
	case t.Pressing && t.DayCost < 0:
		return 2
	case t.DayCost > 0:
		return weighed
	}
	return 0
}

// waitLoses is what is lost, in meals, if a task is not done today. A start
// whose window closes has a week's loss to spread over fewer and fewer days: a
// day that is let go is one of the last.
func waitLoses(t Task, today cal.Day) float64 {
	switch t.Verb {
	case "sow", "set out", "plant":
		if t.Until != 0 {
			return t.DayCost * max(1, 7/float64(max(1, t.Until-today+1)))
		}
	}
	return t.DayCost
}

// dearest picks those of the weighed tasks that fit the minutes and together
// lose the most by waiting: every minute in turn asks which set is best with
// it. Ties go to the earlier in order.
func dearest(tasks []Task, order []int, minutes int, today cal.Day) []int {
	if minutes <= 0 {
		return nil
	}
	lost := make([]float64, minutes+1) // by the minutes used
	taken := make([][]bool, len(order))
	for k, i := range order {
		taken[k] = make([]bool, minutes+1)
		t := tasks[i]
		if urgency(t, today) != weighed || t.Minutes > minutes {
			continue
		}
		for m := minutes; m >= max(0, t.Minutes); m-- {
			if with := lost[m-t.Minutes] + waitLoses(t, today); with > lost[m]+1e-9 {
				lost[m], taken[k][m] = with, true
			}
		}
	}
	var out []int
	for k, m := len(order)-1, minutes; k >= 0; k-- {
		if taken[k][m] {
			out = append(out, order[k])
			m -= tasks[order[k]].Minutes
		}
	}
	return out
}

// lastDay is until when a task may wait; far off when no end is known.
func lastDay(t Task) cal.Day {
	if t.Until == 0 {
		return 1 << 20
	}
	return t.Until
}

func leftWhy(t Task, today cal.Day) string {
	s := "It does not fit today."
	switch {
	case t.Until > today:
		s += " It can wait until " + t.Until.Short() + "."
	case t.Pressing:
		s += " It would be best done today: ask for help, or take more time."
	}
	if t.DayCost >= 0.05 {
		s += " " + t.Delay
	}
	return s
}

// place puts the chosen tasks on the way.
func (d *Day) place(w *Walk, chosen []Task, who PersonDay, known bool) {
	bySpace := map[string][]Task{}
	for _, t := range chosen {
		bySpace[t.Space] = append(bySpace[t.Space], t)
	}
	add := func(f *Flag, ts []Task) {
		f.Hollow = len(ts) > 0
		var verbs []string
		for _, t := range ts {
			s := Stop{Task: t, No: len(w.Stops) + 1, Side: f.Side, Wait: waitWords(t, d.Date)}
			if w.Hot != nil {
				s.When = w.Hot.Early
				switch t.Verb {
				case "set out", "plant", "prick out", "pot on", "cover":
					s.When = w.Hot.Late
				}
			}
			if known && t.LiftKg > 0 && who.LiftKg > 0 && who.LiftKg < t.LiftKg {
				s.Carry = fmt.Sprintf("About %.0f kg to carry; %s lifts %.0f. Somebody else carries.", t.LiftKg, who.Name, who.LiftKg)
			}
			w.Stops = append(w.Stops, s)
			f.Stops, f.Minutes = append(f.Stops, s.No), f.Minutes+t.Minutes
			f.Hollow = f.Hollow && t.Hollow
			verbs = append(verbs, t.Verb)
			w.Minutes += t.Minutes
		}
		f.Verbs = strings.Join(distinct(verbs), ", ")
		w.Flags = append(w.Flags, *f)
	}
	placed := map[string]bool{}
	for _, sp := range d.Spaces {
		add(&Flag{Space: sp.ID, Name: sp.Name, Side: sp.Side}, bySpace[sp.ID])
		placed[sp.ID] = true
	}
	var loose []Task
	for _, t := range chosen {
		if !placed[t.Space] {
			loose = append(loose, t)
		}
	}
	if len(loose) > 0 {
		add(&Flag{Name: "Seed shelf"}, loose)
	}
	for i := range w.Stops {
		s := &w.Stops[i]
		s.Where = fmt.Sprintf("Stop %d of %d", s.No, len(w.Stops))
		if s.Side != "" {
			s.Where += ", " + s.Side + " side"
		}
	}
}

// forToday is said of what ends today.
const forToday = "for today"

func waitWords(t Task, today cal.Day) string {
	switch {
	case t.Until == 0:
		return ""
	case t.Until <= today:
		return forToday
	case t.Pressing:
		return "by " + t.Until.Time().Format("Mon 2 Jan")
	}
	return "can wait until " + t.Until.Time().Format("Mon 2 Jan")
}

// sum is the sentence before the ribbon.
func (w *Walk) sum() string {
	now, soon := 0, 0
	for _, st := range w.Stops {
		switch {
		case st.Wait == forToday:
			now++
		case st.Pressing:
			soon++
		}
	}
	var s string
	switch {
	case len(w.Stops) == 0 && len(w.Left) > 0 && w.Hot == nil && w.Had > 0:
		s = fmt.Sprintf("%s %s left, too few for what there is.", minutesSaid(w.Had), isAre(w.Had))
	case len(w.Stops) == 0 && len(w.Left) > 0 && w.Hot == nil:
		s = "Today's time is used."
	case len(w.Stops) == 0:
		s = "Nothing asks for work here today. A walk round to look is never lost."
	case len(w.Stops) == 1:
		s = fmt.Sprintf("One stop, about %s.", minutesSaid(w.Minutes))
	default:
		s = fmt.Sprintf("%d stops, about %s.", len(w.Stops), minutesSaid(roughly(w.Minutes)))
	}
	switch {
	case now == 0 && soon == 0 && len(w.Stops) > 0:
		s += " All of it can wait."
	case now > 0 && soon > 0:
		s += fmt.Sprintf(" For today: %d. Best done this week: %d.", now, soon)
	case now > 0:
		s += fmt.Sprintf(" For today: %d.%s", now, restWaits(now, len(w.Stops)))
	case soon > 0:
		s += fmt.Sprintf(" Best done this week: %d.%s", soon, restWaits(soon, len(w.Stops)))
	}
	if n := len(w.Left); n > 0 {
		s += fmt.Sprintf(" %d more %s left for another day.", n, isAre(n))
	}
	if n := len(w.Ask); n > 0 {
		s += fmt.Sprintf(" %d %s for somebody else.", n, isAre(n))
	}
	return s
}

func restWaits(n, of int) string {
	if n < of {
		return " The rest can wait."
	}
	return ""
}

func isAre(n int) string {
	if n == 1 {
		return "is"
	}
	return "are"
}

func minutesSaid(m int) string {
	switch {
	case m == 1:
		return "1 minute"
	case m < 60:
		return fmt.Sprintf("%d minutes", m)
	case m%60 == 0 && m == 60:
		return "an hour"
	case m%60 == 0:
		return fmt.Sprintf("%d hours", m/60)
	}
	return fmt.Sprintf("%d h %02d min", m/60, m%60)
}

// roughly rounds an hour and more to five minutes: nobody knows it closer.
func roughly(m int) int {
	if m < 60 {
		return m
	}
	return (m + 2) / 5 * 5
}

// inOrder sorts tasks in walking order; within a space what presses first.
func inOrder(tasks []Task, spaces []string) []Task {
	at := map[string]int{}
	for i, id := range spaces {
		at[id] = i
	}
	sort.SliceStable(tasks, func(a, b int) bool {
		if tasks[a].Pressing != tasks[b].Pressing {
			return tasks[a].Pressing
		}
		if at[tasks[a].Space] != at[tasks[b].Space] {
			return at[tasks[a].Space] < at[tasks[b].Space]
		}
		return tasks[a].ID < tasks[b].ID
	})
	return tasks
}
