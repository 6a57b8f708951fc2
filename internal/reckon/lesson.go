package reckon

import (
	"fmt"
	"sort"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// Lesson is the plan's reasons and sources for a learner. It is made to be
// given away, so it holds nothing of the household: no names of places,
// spaces, people or varieties, no notes, no photos, no coordinates. Spaces are
// named by their kind and number; crops by the book's own names; figures and
// sources are the built-in book's.
type Lesson struct {
	From    cal.Day
	Weeks   int
	South   bool
	Spaces  []LessonSpace
	Crops   []LessonCrop
	Sources []crop.Source
	Plants  int
}

// LessonSpace is one space without its name.
type LessonSpace struct {
	Name  string // "Raised bed 2"
	About string // kind, area, depth, sun
	Lines []LessonLine
}

// LessonLine is one planting with its reasons.
type LessonLine struct {
	Crop         string
	Plants       int
	Standing     bool
	Way          string
	In           cal.Window
	First, Until cal.Window
	OfTwenty     int
	Reasons      []string
}

// LessonCrop is what the book says of a crop that was used.
type LessonCrop struct {
	Name    string
	Figures []LessonFigure
}

// LessonFigure is one figure with its range and where it comes from.
type LessonFigure struct {
	What, Value, Source, Basis string
}

// lesson makes it from the plan, the garden's measures and the built-in book.
// book is the book without the gardener's own figures.
func (r *Result) lesson(spaces []SpaceDay, book *crop.Book) *Lesson {
	l := &Lesson{From: r.in.Date, Weeks: r.in.Weeks, South: r.in.Garden.Place.LatDeg < 0}
	number := map[string]int{}
	used := map[string]bool{}
	foods := r.bookFoods()
	for i, sp := range r.in.Garden.Spaces {
		if !sp.Grows() {
			continue
		}
		kind := string(sp.Kind)
		number[kind]++
		ls := LessonSpace{Name: fmt.Sprintf("%s %d", capital(kind), number[kind])}
		ls.About = fmt.Sprintf("%.1f m², medium %.0f cm deep; sun on a clear day %.0f hours in March, %.0f in June, %.0f in September.",
			sp.AreaM2(), 100*sp.Depth.M, spaces[i].SunH[2], spaces[i].SunH[5], spaces[i].SunH[8])
		for _, x := range spaces[i].Lines {
			if x.In.None() {
				continue
			}
			c, ok := book.Crop(crop.ID(x.CropID))
			if !ok {
				continue
			}
			line := LessonLine{Crop: c.Name, Plants: x.Plants, Standing: x.Standing, Way: x.begun(), In: x.In, First: x.First, Until: x.Out, OfTwenty: x.OfTwenty}
			if x.OnShelf != 0 {
				line.Way = "raised on the shelf, then set out"
			}
			line.Reasons = lessonReasons(x, c, foods, used[x.CropID])
			used[x.CropID] = true
			ls.Lines = append(ls.Lines, line)
			l.Plants++
		}
		l.Spaces = append(l.Spaces, ls)
	}
	l.figures(used, book)
	return l
}

// bookFoods are the foods the book knows by name; no other word for a food
// leaves the house.
func (r *Result) bookFoods() map[string]bool {
	out := map[string]bool{beesFood: true}
	for _, c := range r.in.Book.Crops {
		for _, f := range c.Foods {
			out[f] = true
		}
	}
	return out
}

// lessonReasons says anew why a planting is where it is, from figures alone:
// the day's own sentences may hold the household's words.
// What is true of the crop anywhere is said once.
func lessonReasons(x Line, c *crop.Crop, foods map[string]bool, said bool) []string {
	var out []string
	failing := ""
	if n := 20 - x.OfTwenty; !x.Standing && n > 0 && n <= 20 {
		failing = fmt.Sprintf("In %d of 20 runs of the weather it fails; that was counted against it.", n)
	}
	if said {
		if failing != "" {
			out = append(out, failing)
		}
		return out
	}
	for _, f := range c.Foods {
		if foods[f] {
			out = append(out, "It gives "+f+".")
			break
		}
	}
	switch {
	case x.Standing && x.Out.None():
		out = append(out, "It lives for years and stays.")
	case x.Standing:
		out = append(out, "It stands already. The plan weighs what it still gives against what could follow.")
	case c.Warm:
		out = append(out, fmt.Sprintf("It waits for warmth: nights of about %.0f °C and soil of %.0f °C or more to grow on.", c.SetNightMin.Value, max(c.SetSoilMin.Value, c.SoilMin.Value)))
	default:
		out = append(out, "It grows in the cool and would rather not meet the heat of summer young.")
	}
	if c.Harvest == crop.Bloom {
		out = append(out, "Its flowers feed bees, which set the fruit of others.")
	}
	if c.AutumnPlant {
		out = append(out, "It goes in before winter and is ready the year after.")
	}
	if x.OnShelf != 0 {
		out = append(out, fmt.Sprintf("Raised on a shelf for about %.0f weeks, it holds the ground for that much less.", c.NurseryWeeks.Value))
	}
	if failing != "" {
		out = append(out, failing)
	}
	return out
}

// figures lists the book's figures of the crops used, and their sources.
func (l *Lesson) figures(used map[string]bool, book *crop.Book) {
	keys := map[string]bool{}
	for _, c := range book.Crops {
		if !used[string(c.ID)] {
			continue
		}
		lc := LessonCrop{Name: c.Name}
		add := func(what, unit string, scale float64, f crop.Figure) {
			if !f.Known() {
				return
			}
			v := fmt.Sprintf("%s %s", number(f.Value*scale), unit)
			if f.Low != f.High {
				v += fmt.Sprintf(" (%s to %s)", number(f.Low*scale), number(f.High*scale))
			}
			lc.Figures = append(lc.Figures, LessonFigure{what, v, f.Source, lessonBasis(f.Basis)})
			for _, k := range strings.Split(f.Source, " + ") {
				keys[k] = true
			}
		}
		add("Soil for the seed, at least", "°C", 1, c.SoilMin)
		add("First pick after sowing", "days", 1, c.DaysFromSow)
		add("First pick after setting out", "days", 1, c.DaysFromSet)
		add("Space between plants", "cm", 100, c.SpacingM)
		add("Depth wanted", "cm", 100, c.MinDepthM)
		add("Sun wanted, at least", "hours", 1, c.SunMinH)
		add("Yield of a plant", "kg", 1, c.YieldKg)
		add("Killed by a night of", "°C", 1, c.FrostKill)
		add("Years before its family comes back", "years", 1, c.IntervalY)
		l.Crops = append(l.Crops, lc)
	}
	sort.SliceStable(l.Crops, func(a, b int) bool { return l.Crops[a].Name < l.Crops[b].Name })
	all, err := crop.Sources()
	if err != nil {
		return
	}
	for _, s := range all {
		if keys[s.Key] {
			l.Sources = append(l.Sources, s)
		}
	}
}

func lessonBasis(b string) string {
	switch b {
	case "memory":
		return "from memory"
	case "common-practice":
		return "common practice"
	case "own":
		return "own record"
	}
	return b
}

// number writes a figure without false decimals.
func number(x float64) string {
	switch {
	case x == float64(int(x)):
		return fmt.Sprintf("%d", int(x))
	case x < 10 && x > -10:
		return fmt.Sprintf("%.1f", x)
	}
	return fmt.Sprintf("%.0f", x)
}
