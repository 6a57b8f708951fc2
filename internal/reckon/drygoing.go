package reckon

import (
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// Going is an absence: what is lost first, what to move, and a round for
// whoever looks in.
type Going struct {
	Days       int
	From, Back cal.Day
	Words      string
	First      []GoingRow // soonest lost first
	Move       []string
	Visits     []cal.Day // days on which a helper waters; empty = none needed
	Rest       int       // days after the last visit printed that still want one
	Round      []RoundRow
}

// GoingRow is one space in an absence, soaked on leaving.
type GoingRow struct {
	Space, Name string
	OfTwenty    int // lasts the absence
	Lost        string
	Do          string
	Easy        bool // a soaking on leaving is all it wants
}

// RoundRow is one space on the helper's sheet.
type RoundRow struct {
	Space, Name string
	Litres      float64
	Give        string // "2 cans (20 L)"
	How         string
	Due         []bool // by visit
}

// Counts of twenty: below the first a space needs a helper, and moving it is
// worth saying when half shade brings it this much further.
const (
	needsHelp  = 18
	shadeHelps = 2
)

// roundMost is the most visits on one sheet.
const roundMost = 12

// inShade runs the absence again with half the light and a little less wind.
func (r *DryRow) inShade(sp garden.Space, s *water.Space, b water.Belief, sky *water.Sky, ask DryAsk, seed uint64) {
	if !canBeMoved(sp) {
		return
	}
	moved := *s
	for m := range moved.Light {
		moved.Light[m] *= 0.5
	}
	moved.Exposure.Low, moved.Exposure.High = 0.9*moved.Exposure.Low, 0.9*moved.Exposure.High
	a := water.Dry(&moved, b, sky, water.Ask{FromHour: ask.FromHour, NextH: ask.NextH, AwayDays: ask.AwayDays, Seed: seed})
	r.shaded = ofTwenty(a.Survives.Never, len(a.DaysOut))
	if l, _ := water.SaturatedLoad(s.VolumeL, s.Medium.DryKgM3.At(0.5), s.Medium.Full.At(0.5), s.TankL, 1, s.AreaM2); s.Medium.Full.Known {
		r.wetKg = l.Kg
	} else {
		r.wetKg = 0.8 * s.VolumeL // common practice: wet mix weighs 0.64 to 0.96 kg a litre
	}
}

func going(in *Inputs, rows []DryRow, days, futures int) *Going {
	g := &Going{Days: days, From: in.Date, Back: in.Date + cal.Day(days)}
	order := append([]DryRow(nil), rows...)
	sort.SliceStable(order, func(a, b int) bool {
		x, y := order[a].Answer.Survives, order[b].Answer.Survives
		if x.Likely != y.Likely {
			return x.Likely < y.Likely
		}
		if x.Never != y.Never {
			return x.Never < y.Never
		}
		return order[a].Space < order[b].Space
	})
	every := days
	type due struct {
		row   DryRow
		every int
	}
	var helped []due
	mortal := 0 // spaces that may be lost, not only set back
	for _, r := range order {
		if r.Empty {
			continue
		}
		alive := ofTwenty(r.Answer.Survives.Never, futures)
		g.First = append(g.First, GoingRow{Space: r.Space, Name: r.Name, OfTwenty: alive, Lost: lostWords(r.Answer, alive), Do: goingDo(r, alive, days), Easy: goingEasy(r, alive, days)})
		if r.shaded >= 0 && alive < needsHelp && r.shaded >= alive+shadeHelps {
			g.Move = append(g.Move, fmt.Sprintf("%s: into half shade, out of the wind, close to the others. It then lasts in %d of 20, not %d. Wet it weighs about %.0f kg; two people, or wheels.",
				sentenceName(r.Name), r.shaded, alive, r.wetKg))
		}
		lost, thirsty := alive < needsHelp, r.Answer.OutDry.Likely < 24*float64(days)
		if lost {
			mortal++
		}
		if lost || thirsty {
			e := max(1, int(r.Answer.OutDry.Early/24))
			helped = append(helped, due{r, e})
			every = min(every, e)
		}
	}
	if len(helped) == 0 {
		g.Words = fmt.Sprintf("Soak everything on leaving. All of it then lasts the %s, as far as can be reckoned.", daysWords(float64(days)))
		return g
	}
	for d := every; d < days; d += every {
		if len(g.Visits) == roundMost {
			g.Rest = days - d
			break
		}
		g.Visits = append(g.Visits, in.Date+cal.Day(d))
	}
	switch set := len(helped) - mortal; {
	case mortal == 0:
		g.Words = fmt.Sprintf("All of it lives, soaked on leaving. %s would be dry before you are back, and set back. Better if somebody comes %s.", spacesSentence(set), everyWords(every))
	case set == 0:
		g.Words = fmt.Sprintf("%s may be lost. Somebody must come %s.", spacesSentence(mortal), everyWords(every))
	default:
		g.Words = fmt.Sprintf("%s may be lost, and %d more would be set back. Somebody must come %s.", spacesSentence(mortal), set, everyWords(every))
	}
	for _, h := range helped {
		g.Round = append(g.Round, roundRow(h.row, h.every, every, g.Visits, in.Date))
	}
	walk := map[string]int{}
	for i, sp := range in.Garden.Spaces {
		walk[string(sp.ID)] = i
	}
	sort.SliceStable(g.Round, func(a, b int) bool { return walk[g.Round[a].Space] < walk[g.Round[b].Space] })
	return g
}

func spacesSentence(n int) string {
	if n == 1 {
		return "One space"
	}
	return fmt.Sprintf("%d spaces", n)
}

func everyWords(d int) string {
	switch d {
	case 1:
		return "every day"
	case 2:
		return "every second day"
	}
	return fmt.Sprintf("every %d days", d)
}

// roundRow marks the visits on which a space is watered: as late as its dry
// tenth allows.
func roundRow(r DryRow, own, every int, visits []cal.Day, from cal.Day) RoundRow {
	row := RoundRow{Space: r.Space, Name: r.Name, How: roundHow(r), Due: make([]bool, len(visits))}
	last := from
	gap := max(1, own/every) * every
	for i, v := range visits {
		if int(v-last)+every > own {
			row.Due[i], last = true, v
		}
	}
	row.Litres = math.Min(r.Answer.DrinksL.Likely*float64(gap)/helperStays, r.Answer.HoldsL)
	switch n := row.Litres / canL; {
	case r.Answer.HasLine:
		row.Give = fmt.Sprintf("its line, %s", minutesWords(60*row.Litres/math.Max(1e-9, r.Answer.GiveL)*r.Answer.Minutes/60))
		if r.Answer.GiveL <= 0 {
			row.Give = litresPlain(row.Litres)
		}
	case n < 0.4:
		row.Give = litresPlain(row.Litres)
	case n < 0.75:
		row.Give = "half a can (5 L)"
	case n < 1.25:
		row.Give = "1 can (10 L)"
	default:
		half := math.Round(2*n) / 2
		row.Give = fmt.Sprintf("%g cans (%.0f L)", half, half*canL)
	}
	return row
}

// helperStays is the share of a can's water that stays in the space.
const helperStays = 0.9

func litresPlain(l float64) string {
	if l < 0.75 {
		return "half a litre"
	}
	return fmt.Sprintf("%.0f L", math.Round(l))
}

func roundHow(r DryRow) string {
	if r.Kind == garden.Reservoir {
		return "Fill by the tube until it runs over."
	}
	switch r.Kind {
	case garden.Bag, garden.PocketBag, garden.Hanging, garden.Railing, garden.Tier:
		return "Slowly, until a little runs out below."
	}
	return "At the foot, not over the leaves."
}

func lostWords(a water.Answer, alive int) string {
	if alive >= needsHelp {
		return "lasts"
	}
	return fmt.Sprintf("lost after about %s (%.0f to %.0f)", daysWords(a.Survives.Likely), math.Floor(a.Survives.Early), math.Ceil(a.Survives.Late))
}

// goingEasy reports whether a space lasts the absence and is not set back.
func goingEasy(r DryRow, alive, days int) bool {
	return alive >= needsHelp && r.Answer.OutDry.Likely >= 24*float64(days)
}

func goingDo(r DryRow, alive, days int) string {
	switch {
	case goingEasy(r, alive, days):
		return "Soak it on leaving."
	case alive >= needsHelp:
		return fmt.Sprintf("Soak it on leaving. Dry, and set back, after about %s.", daysWords(r.Answer.OutDry.Likely/24))
	case r.Answer.HasLine:
		return "Leave its line on the timer. Try the timer for two days before."
	case r.Answer.OutDry.Early < 24:
		return "It wants water more than once a day. Move it, or ask for two visits."
	}
	return "Ask a helper, or move it."
}
