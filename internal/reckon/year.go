package reckon

import (
	"cmp"
	"fmt"
	"slices"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// YearSheet is one space's year: what was forecast and what came.
type YearSheet struct {
	Space, Name, Size string
	From, To          cal.Day
	Rows              []YearRow // by the day it went in
	Kept              int       // rows with a forecast that was kept
	Held              int       // of those with a first pick inside the forecast's window
	Judged            int       // rows whose first pick can be held against a forecast
	Learned           []string  // at most three
	Change            string    // next year's one change
	Words             string
}

// YearRow is one planting of the year.
type YearRow struct {
	Planting, Crop, Variety string
	Plants                  int
	In, Ended               cal.Day // Ended 0 = stands
	Guess                   bool    // In is from the garden file
	Lost                    bool
	Cause                   string
	First, Last             cal.Day // picks noted, 0 = none
	Picks                   int
	Weighed                 int
	Kg                      float64
	Dots                    []cal.Day // Mondays of weeks with a pick
	Said                    *ledger.ForecastNote
	SaidWords, CameWords    string
	Differ                  string // what came against what was said, "" = cannot be judged
	Off                     int    // days the first pick lies outside the window, - = early
}

// yearSpan is how far back a year sheet looks.
const yearSpan = 365

// TellYears makes the year sheets from what was noted: every planting that
// stood in the year before the day, its pickings, and the forecast kept of it.
func (d *Day) TellYears(t *Teller, state *ledger.State) {
	if d.Papers == nil {
		return
	}
	papers := *d.Papers
	papers.Years = t.yearSheets(d.Date, state)
	d.Papers = &papers
}

func (t *Teller) yearSheets(date cal.Day, state *ledger.State) []YearSheet {
	said := map[string]ledger.ForecastNote{}
	for _, f := range state.Forecasts {
		said[f.Planting] = f
	}
	rough := map[string]bool{}
	for _, sp := range t.garden.Spaces {
		for _, s := range sp.Standing {
			rough[s.ID] = s.Since.Late > s.Since.Early
		}
	}
	bySpace := map[string][]YearRow{}
	for _, p := range state.Plantings {
		if p.Ended != 0 && p.Ended < date-yearSpan {
			continue
		}
		c, ok := t.book.Crop(crop.ID(p.Crop))
		in := p.SetOut
		if in == 0 {
			in = p.Sown
		}
		if !ok || in == 0 || in > date {
			continue
		}
		row := YearRow{Planting: p.ID, Crop: c.Name, Variety: p.Variety, Plants: max(p.Began, p.Count), In: in, Guess: p.FromFile || rough[p.ID], Cause: p.Cause}
		if p.Ended != 0 && p.Ended <= date {
			row.Ended, row.Lost = p.Ended, p.Cause != "" && p.Picks == 0
		}
		row.takePicks(t.picks[p.ID], date)
		if f, ok := said[p.ID]; ok {
			row.Said = &f
		}
		row.judge(date)
		bySpace[p.Space] = append(bySpace[p.Space], row)
	}
	var out []YearSheet
	for _, sp := range t.garden.Spaces {
		if !sp.Grows() {
			continue
		}
		y := YearSheet{Space: string(sp.ID), Name: spaceName(sp), Size: size(sp), From: date - yearSpan, To: date, Rows: bySpace[string(sp.ID)]}
		slices.SortStableFunc(y.Rows, func(a, b YearRow) int {
			return cmp.Or(cmp.Compare(a.In, b.In), cmp.Compare(a.Planting, b.Planting))
		})
		y.sum()
		out = append(out, y)
	}
	return out
}

// pick is one picking.
type pick struct {
	entry  string
	on     cal.Day
	kg     float64
	voided bool
}

func (r *YearRow) takePicks(ps []pick, date cal.Day) {
	weeks := map[cal.Day]bool{}
	for _, p := range ps {
		if p.voided || p.on > date {
			continue
		}
		r.Picks++
		r.Kg += p.kg
		if p.kg > 0 {
			r.Weighed++
		}
		if r.First == 0 || p.on < r.First {
			r.First = p.on
		}
		r.Last = max(r.Last, p.on)
		weeks[p.on.Monday()] = true
	}
	for d := range weeks {
		r.Dots = append(r.Dots, d)
	}
	slices.Sort(r.Dots)
}

// judge says what was said, what came, and how they differ.
func (r *YearRow) judge(date cal.Day) {
	r.SaidWords = "Not kept."
	if f := r.Said; f != nil {
		r.SaidWords = fmt.Sprintf("Said on %s: ", f.On.Short())
		if w := f.First(); r.bearing() {
			r.SaidWords += "bearing then"
		} else if !w.None() {
			r.SaidWords += "first pick " + w.String()
		} else {
			r.SaidWords += "no first pick"
		}
		if f.KgHigh > 0 {
			r.SaidWords += "; " + kgSpan(f.KgLow, f.KgHigh)
		}
		r.SaidWords += fmt.Sprintf("; makes it in %d of 20.", f.OfTwenty)
	}
	switch {
	case r.Lost:
		r.CameWords = sentence("lost on " + r.Ended.Short() + ": " + r.Cause)
	case r.Picks == 0 && r.Ended != 0:
		r.CameWords = "Gone on " + r.Ended.Short() + "; no pick was noted."
	case r.Picks == 0:
		r.CameWords = "No pick noted yet."
	default:
		r.CameWords = r.picksSaid()
	}
	f := r.Said
	if f == nil {
		return
	}
	w := f.First()
	switch {
	case r.Lost:
		r.Differ = fmt.Sprintf("It was lost; %d of 20 futures had said so.", 20-f.OfTwenty)
	case w.None():
	case r.First == 0 && !r.bearing() && date > w.Late && r.Ended == 0:
		r.Off = int(date - w.Late)
		r.Differ = fmt.Sprintf("Nothing picked yet, %s after the window.", daysWord(r.Off))
	case r.First == 0:
	case r.bearing():
		r.Differ = "It was bearing when the forecast was made."
	case r.First < w.Early:
		r.Off = int(r.First - w.Early)
		r.Differ = fmt.Sprintf("First pick %s before the window.", daysWord(-r.Off))
	case r.First > w.Late:
		r.Off = int(r.First - w.Late)
		r.Differ = fmt.Sprintf("First pick %s after the window.", daysWord(r.Off))
	default:
		r.Differ = "First pick inside the window."
	}
	if r.Ended != 0 && !r.Lost && r.Weighed > 0 && r.Weighed == r.Picks && f.KgHigh > 0 {
		switch {
		case r.Kg < f.KgLow:
			r.Differ = spaced(r.Differ) + fmt.Sprintf("Yield below the range, by %s kg.", number(f.KgLow-r.Kg))
		case r.Kg > f.KgHigh:
			r.Differ = spaced(r.Differ) + fmt.Sprintf("Yield above the range, by %s kg.", number(r.Kg-f.KgHigh))
		default:
			r.Differ = spaced(r.Differ) + "Yield inside the range."
		}
	}
}

// picksSaid tells when it was picked and what was weighed.
func (r *YearRow) picksSaid() string {
	s := "Picked once, " + r.First.Short()
	if r.Picks > 1 {
		s = fmt.Sprintf("First pick %s, last %s, %d in all", r.First.Short(), r.Last.Short(), r.Picks)
	}
	switch {
	case r.Weighed == 0:
		return s + "; not weighed."
	case r.Weighed == r.Picks:
		return s + fmt.Sprintf("; %s kg.", number(r.Kg))
	}
	return s + fmt.Sprintf("; %s kg from the %d weighed.", number(r.Kg), r.Weighed)
}

func spaced(s string) string {
	if s == "" {
		return ""
	}
	return s + " "
}

// bearing reports whether it gave already when the forecast was made, so that
// no first pick was foretold.
func (r *YearRow) bearing() bool {
	f := r.Said
	return f != nil && !f.First().None() && (f.FirstEarly <= f.On+7 || r.First != 0 && r.First <= f.On)
}

// Foretold is the window of the first pick, none where none was foretold.
func (r *YearRow) Foretold() cal.Window {
	if r.Said == nil || r.bearing() {
		return cal.Window{}
	}
	return r.Said.First()
}

// judged reports whether the row's first pick was held against a window.
func (r *YearRow) judged() bool {
	f := r.Said
	return f != nil && !r.Lost && !f.First().None() && !r.bearing() && (r.First != 0 || r.Off != 0)
}

// kgSpan says a range of kilos.
func kgSpan(low, high float64) string {
	l, h := number(low), number(high)
	switch {
	case high < 0.05:
		return "less than 0.1 kg"
	case low < 0.05:
		return "up to " + h + " kg"
	case l == h:
		return "about " + h + " kg"
	}
	return l + " to " + h + " kg"
}

func daysWord(n int) string {
	if n == 1 {
		return "a day"
	}
	return fmt.Sprintf("%d days", n)
}

// lessonLearned is something learned, with how much it weighs.
type lessonLearned struct {
	words, change string
	weight        int
}

// sum says the year in a sentence, what was learned, and the one change.
func (y *YearSheet) sum() {
	var ls []lessonLearned
	picked := 0
	for i := range y.Rows {
		r := &y.Rows[i]
		if r.Picks > 0 {
			picked++
		}
		if r.Said != nil {
			y.Kept++
		}
		if r.judged() {
			y.Judged++
			if r.Off == 0 {
				y.Held++
			}
		}
		ls = append(ls, r.learned()...)
	}
	sort.SliceStable(ls, func(a, b int) bool { return ls[a].weight > ls[b].weight })
	for _, l := range ls[:min(3, len(ls))] {
		y.Learned = append(y.Learned, l.words)
	}
	for _, l := range ls {
		if l.change != "" {
			y.Change = l.change
			break
		}
	}
	if y.Change == "" {
		y.Change = "Note the day of each first pick and what came of each planting. Then the next sheet can say more."
	}
	switch {
	case len(y.Rows) == 0:
		y.Words = "Nothing is known to have stood here in this year."
	case y.Kept == 0:
		y.Words = gaveWords(len(y.Rows), picked) + " No forecast was kept to hold against what came."
	case y.Judged == 0:
		y.Words = gaveWords(len(y.Rows), picked) + " No forecast can be held against what came yet."
	default:
		y.Words = gaveWords(len(y.Rows), picked) + fmt.Sprintf(" First picks on the days that were forecast: %d of %d.", y.Held, y.Judged)
	}
}

// gaveWords says how many plantings stood and how many gave something.
func gaveWords(stood, gave int) string {
	if gave == 0 {
		return plantingCount(stood) + ", none picked yet."
	}
	return fmt.Sprintf("%s, %d of them picked.", plantingCount(stood), gave)
}

func plantingCount(n int) string {
	if n == 1 {
		return "1 planting"
	}
	return fmt.Sprintf("%d plantings", n)
}

// learned lists what a planting's outcome teaches. Losses weigh most, then
// misses by their days.
func (r *YearRow) learned() []lessonLearned {
	var out []lessonLearned
	name := r.Crop
	if r.Variety != "" {
		name = Bracketed(name, r.Variety)
	}
	if r.Lost {
		out = append(out, lessonLearned{sentence(fmt.Sprintf("%s, in since %s, was lost: %s", name, r.In.Short(), r.Cause)), changeFor(r.Cause, r.Crop), 200})
	}
	if r.judged() && r.Off != 0 {
		words, change := fmt.Sprintf("%s was %s later than forecast", name, daysWord(r.Off)), fmt.Sprintf("Start the %s a week or two sooner, or count on it later.", r.Crop)
		if r.Off < 0 {
			words, change = fmt.Sprintf("%s was %s earlier than forecast", name, daysWord(-r.Off)), fmt.Sprintf("Count on the %s sooner: what follows can be ready for its ground.", r.Crop)
		}
		if r.First == 0 {
			words = fmt.Sprintf("%s has given nothing %d days after its window, or it was not noted", name, r.Off)
			change = fmt.Sprintf("Look at the %s and say what you see: finished, young or lost.", r.Crop)
		}
		out = append(out, lessonLearned{sentence(words), change, 50 + max(r.Off, -r.Off)})
	} else if r.judged() {
		out = append(out, lessonLearned{sentence(name + " gave its first pick when the forecast said"), "", 10})
	}
	if f := r.Said; f != nil && r.Ended != 0 && !r.Lost && r.Weighed > 0 && r.Weighed == r.Picks && f.KgHigh > 0 {
		if r.Kg < f.KgLow {
			out = append(out, lessonLearned{sentence(fmt.Sprintf("%s gave %s kg; %s was forecast", name, number(r.Kg), kgSpan(f.KgLow, f.KgHigh))),
				fmt.Sprintf("Take your own yield of %s for the plan, on the crop's page.", r.Crop), 60})
		} else if r.Kg > f.KgHigh {
			out = append(out, lessonLearned{sentence(fmt.Sprintf("%s gave %s kg, more than the %s forecast", name, number(r.Kg), number(f.KgHigh))),
				fmt.Sprintf("Fewer %s would do, or take your own yield for the plan.", r.Crop), 55})
		}
	}
	return out
}

// changeFor is the one change after a loss. Common practice.
func changeFor(cause, name string) string {
	switch cause {
	case "damped off":
		return "Sow thinner, in clean pots and fresh mix, water from below, and let air move."
	case "not up":
		return "Test ten seeds of the lot before sowing again, and sow when the soil is warm enough."
	case "eaten", "dug up":
		return fmt.Sprintf("Net the %s from the day it goes in until it is a hand high.", name)
	case "dried":
		return "Water before it dries: see who runs dry first, or give it more medium."
	case "drowned":
		return "Open the drain holes, and water by feel."
	case "scorched":
		return "Harden off by hours of sun over a week, not by nights."
	case "chilled":
		return fmt.Sprintf("Wait for the nights the %s wants, or have a cover at hand.", name)
	case "crowded":
		return fmt.Sprintf("Give the %s its full width from the start.", name)
	case "bolted", "bolting":
		return fmt.Sprintf("Sow the %s in another month, or a slower kind.", name)
	}
	return fmt.Sprintf("Before the next %s, write down what it looked like and when; a cause can then be found.", name)
}
