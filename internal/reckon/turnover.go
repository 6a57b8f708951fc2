package reckon

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

// Turnover is the sheet for one space: what comes out, what goes in, and the
// work between, in order.
type Turnover struct {
	Space, Name string
	Size        string
	Out, In     []Line // what comes out, what goes in
	Beside      []Line // what stays
	From, To    cal.Day
	Words       string
	Tools       []string
	Steps       []Step
	Minutes     int
	Who         []string
}

// Step is one thing to do, with its reason and at most one line of care.
type Step struct {
	Do, Why, Care string
}

// Medium to add. Compost on beds: a quarter to one inch a year once the soil is
// rich (various extension services, from memory; the high end is what a soil
// laboratory holds fit for salts). Mix in containers settles by 5 to 10 % a
// year: common practice.
const (
	compostLowM, compostHighM = 0.006, 0.025
	settleLow, settleHigh     = 0.05, 0.10
	// Moist compost and mix, kg a litre (various extension services, from memory).
	moistLow, moistHigh = 0.4, 0.6
	// Wet mix in a container, kg a litre (published by makers and guides).
	wetLow, wetHigh = 0.64, 0.96
)

// turnovers makes the sheet of every growing space, in walking order.
func (r *Result) turnovers(spaces []SpaceDay) []Turnover {
	var out []Turnover
	for i, sp := range r.in.Garden.Spaces {
		if sp.Grows() {
			out = append(out, r.turnover(sp, spaces[i]))
		}
	}
	return out
}

func (r *Result) turnover(sp garden.Space, day SpaceDay) Turnover {
	t := Turnover{Space: string(sp.ID), Name: spaceName(sp), Size: size(sp), Who: r.who(sp)}
	t.sort(day.Lines, r.in.Date)
	switch {
	case len(t.In) == 0 && len(t.Out) == 0:
		t.Words = "Nothing is planned to come out or go in here."
		return t
	case len(t.In) == 0:
		t.Words = "Nothing new is planned here yet. This is for when what stands is over."
	case len(t.Out) == 0:
		t.Words = fmt.Sprintf("Nothing has to come out. %s %s in about %s.", capital(lineNames(t.In)), goes(t.In), t.In[0].In.Likely.Short())
	default:
		t.Words = fmt.Sprintf("%s %s out by about %s; %s %s in about %s.", capital(lineNames(t.Out)), comes(t.Out), t.To.Short(), lineNames(t.In), goes(t.In), t.In[0].In.Likely.Short())
	}
	r.work(&t, sp)
	return t
}

// goesIn adds a line, to the same crop's when it goes in on the same day.
func (t *Turnover) goesIn(l Line) {
	for i := range t.In {
		if x := &t.In[i]; x.CropID == l.CropID && x.In == l.In && (x.OnShelf != 0) == (l.OnShelf != 0) {
			x.Plants += l.Plants
			return
		}
	}
	t.In = append(t.In, l)
}

func goes(ls []Line) string {
	if len(ls) == 1 {
		return "goes"
	}
	return "go"
}

func comes(ls []Line) string {
	if len(ls) == 1 {
		return "comes"
	}
	return "come"
}

func lineNames(ls []Line) string {
	var out []string
	for _, l := range ls {
		out = append(out, l.Crop)
	}
	return list(out)
}

// sort finds the next change: what goes in together with the first new thing,
// and what must be gone by then.
func (t *Turnover) sort(lines []Line, date cal.Day) {
	var old []Line
	for _, l := range lines {
		if l.In.None() {
			continue // pots: they stand on it, not in it
		}
		switch {
		case l.Standing:
			old = append(old, l)
		case len(t.In) == 0 || l.In.Likely <= t.In[0].In.Likely+10:
			t.goesIn(l)
		}
	}
	by := cal.Day(math.MaxInt32)
	if len(t.In) > 0 {
		by = t.In[0].In.Likely
	}
	for _, l := range old {
		if l.Out.None() || l.Out.Early > by+14 {
			t.Beside = append(t.Beside, l)
			continue
		}
		t.Out = append(t.Out, l)
	}
	sort.SliceStable(t.Out, func(a, b int) bool { return t.Out[a].Out.Likely < t.Out[b].Out.Likely })
	if n := len(t.Out); n > 0 {
		t.From, t.To = max(t.Out[0].Out.Early, date), max(t.Out[n-1].Out.Likely, date)
	}
	if len(t.In) > 0 && len(t.Out) == 0 {
		t.From, t.To = t.In[0].In.Likely, t.In[0].In.Likely
	}
}

// work lists steps, tools and minutes. The order is common practice.
func (r *Result) work(t *Turnover, sp garden.Space) {
	tools := map[string]bool{"a bucket": true, "a can of water": true, "a label and a pencil": true}
	step := func(do, why, care string) { t.Steps = append(t.Steps, Step{do, why, care}) }
	box := boxed(sp)
	for _, l := range t.Out {
		c, ok := r.in.Book.Crop(crop.ID(l.CropID))
		if !ok {
			continue
		}
		step(fmt.Sprintf("Pick the last of the %s.", l.Crop), "What is ready is eaten, not buried.", "")
		switch {
		case c.Class == "root" || c.Class == "tuber" || c.Class == "bulb":
			tools["a hand fork"] = true
			step(fmt.Sprintf("Lift all the %s, small ones too.", l.Crop), "What is left sprouts among the next crop.", "")
		case c.Family == "Fabaceae":
			tools["a sharp knife or shears"] = true
			step(fmt.Sprintf("Cut the %s at the soil; leave the roots.", l.Crop), "Their roots rot where they are and open the soil.", "Cut away from your hand.")
		default:
			tools["a hand fork"] = true
			step(fmt.Sprintf("Pull the %s and shake the roots.", l.Crop), "Thick roots tie up the top of the medium while they rot.", "Sick leaves go out with the waste, not on the heap.")
		}
		t.Minutes += 10
	}
	if len(t.In) == 0 {
		t.Tools = toolList(tools)
		return
	}
	step("Pick out weeds, slugs and thick roots.", "They are easier to see now than for months.", "A nest, droppings or a burrow: stop, leave it, and ask your wildlife office.")
	step("Loosen the top with the fork, a hand deep. Do not turn it over.", "Life in the soil has its place; new roots follow old ways down.", "")
	tools["a hand fork"] = true
	t.addMedium(sp, box, step, tools)
	step("Water until it runs through, and leave it overnight if you can.", "Dry mix lets water run past; damp mix takes it up.", "")
	for _, l := range t.In {
		c, ok := r.in.Book.Crop(crop.ID(l.CropID))
		if !ok {
			continue
		}
		if c.Support == "needed" {
			tools["stakes, net or strings, and ties"] = true
			step(fmt.Sprintf("Put up the support for the %s first.", l.Crop), "Stakes driven in later go through roots.", "Cap the tops of canes: they stand at eye height.")
		}
		tools[fmt.Sprintf("a stick marked at %.0f cm", 100*c.SpacingM.Value)] = true
		if l.OnShelf != 0 {
			tools["a trowel"] = true
			step(fmt.Sprintf("Set out %s of %s, %.0f cm apart. Water the pots first.", plants(l.Plants), l.Crop, 100*c.SpacingM.Value),
				fmt.Sprintf("Makes it in %d of 20. Wide enough for full size.", l.OfTwenty), "")
		} else if c.Ways[0] == crop.Plant || !hasWay(c, crop.Sow) {
			tools["a trowel"] = true
			step(fmt.Sprintf("Plant %d of %s, %.0f cm apart.", l.Plants, l.Crop, 100*c.SpacingM.Value), fmt.Sprintf("Makes it in %d of 20.", l.OfTwenty), "")
		} else {
			step(fmt.Sprintf("Sow %s for %s, to stand %.0f cm apart%s.", l.Crop, plants(l.Plants), 100*c.SpacingM.Value, sowDepth(c)),
				fmt.Sprintf("Makes it in %d of 20. How many seeds: see the seed order.", l.OfTwenty), "")
		}
		t.Minutes += int(c.MinutesStart + 0.5)
		if c.FrostSeedling.Known() && c.Hardiness != "hardy" {
			tools["fleece or a cloth"] = true
			step(fmt.Sprintf("Have a cover ready for the %s.", l.Crop), fmt.Sprintf("Young plants die at about %.0f °C.", c.FrostSeedling.Value), "")
		}
	}
	for _, cv := range sp.Covers {
		if strings.Contains(cv.Kind, "net") {
			tools["the "+cv.Kind] = true
			step("Put on the "+cv.Kind+", taut and shut to the ground.", "Seedlings are dug and eaten in their first weeks.", "Look at it daily: slack net traps birds.")
		}
	}
	step("Water in, gently.", "It closes the soil about root and seed.", "")
	step("Write the label: crop, variety, today.", "Names are lost at this hand-over more than at any other.", "")
	t.Tools = toolList(tools)
}

// boxed reports whether a space holds a bounded lot of bought medium.
func boxed(sp garden.Space) bool {
	switch sp.Kind {
	case garden.RaisedBed, garden.Ground:
		return false
	}
	return true
}

// addMedium says what to add, in litres and kilos.
func (t *Turnover) addMedium(sp garden.Space, box bool, step func(do, why, care string), tools map[string]bool) {
	low, high := 1000*sp.AreaM2()*compostLowM, 1000*sp.AreaM2()*compostHighM
	what, why := "compost", "6 to 25 mm, once a year, on ground that is rich already (various extension services, from memory). More brings salts and too much phosphorus."
	if box {
		low, high = sp.VolumeL()*settleLow, sp.VolumeL()*settleHigh
		what, why = "fresh mix", "Mix settles by 5 to 10 % in a year (common practice). Replace it all where plants died of a disease of the roots."
	}
	if high < 0.5 {
		return
	}
	care := "Dampen dusty mix, open a door, wash hands: it can carry Legionella."
	switch {
	case sp.Kind == garden.Railing || sp.Kind == garden.Hanging:
		care = fmt.Sprintf("Wet, it holds about %.0f to %.0f kg. The bracket's rating and the building's rules come first.", sp.VolumeL()*wetLow, sp.VolumeL()*wetHigh)
	case box && sp.Floor.M > 2:
		care = fmt.Sprintf("Wet, it holds about %.0f to %.0f kg. Ask the owner or an engineer for the rated load.", sp.VolumeL()*wetLow, sp.VolumeL()*wetHigh)
	case high*moistHigh > 15:
		care = "Carry it in small lots. Dampen dusty mix, wash hands: it can carry Legionella."
		tools["a barrow"] = true
	}
	tools[fmt.Sprintf("%s of %s, %s", litreSpan(low, high), what, weighs(low*moistLow, high*moistHigh))] = true
	step(fmt.Sprintf("Add %s of %s, if it had none this year.", litreSpan(low, high), what), why, care)
}

func litreSpan(low, high float64) string {
	if l, h := math.Round(low), math.Round(high); l < h && l >= 1 {
		return fmt.Sprintf("%.0f to %.0f L", l, h)
	} else if h < 1 {
		return "up to 1 L"
	} else if l < 1 {
		return fmt.Sprintf("up to %.0f L", h)
	}
	return fmt.Sprintf("about %.0f L", math.Round(high))
}

func weighs(low, high float64) string {
	if l, h := math.Round(low), math.Round(high); l < h {
		return fmt.Sprintf("%.0f to %.0f kg", l, h)
	}
	return fmt.Sprintf("about %.0f kg", math.Max(1, math.Round(high)))
}

func toolList(m map[string]bool) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	sort.Strings(out)
	return out
}
