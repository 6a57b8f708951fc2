package web

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// The fixtures are invented days: a rich one, an empty one and a hostile one.
// Figures are drawn from a seeded generator and mean nothing; only their shape
// matters here. Nothing in them is advice.

var fixtureCrops = []reckon.Choice{
	{ID: "kale", Name: "kale"}, {ID: "snap-pea", Name: "snap peas"}, {ID: "carrot", Name: "carrots"},
	{ID: "lettuce-leaf", Name: "leaf lettuce"}, {ID: "tomato", Name: "tomatoes"}, {ID: "garlic", Name: "garlic"},
	{ID: "spinach", Name: "spinach"}, {ID: "broad-bean", Name: "broad beans"}, {ID: "beetroot", Name: "beetroot"},
	{ID: "pepper", Name: "peppers"}, {ID: "radish", Name: "radishes"}, {ID: "courgette", Name: "courgettes"},
}

var fixtureSpaces = []struct{ id, name, kind, size string }{
	{"gate-bed", "Gate bed", "raised bed", "2.4 m x 1.2 m, 30 cm deep"}, {"long-bed", "Long bed", "raised bed", "4.8 m x 0.9 m, 35 cm deep"},
	{"bed-3", "Third bed", "raised bed", "2.4 m x 1.2 m, 30 cm deep"}, {"bed-4", "Bed by the tap", "raised bed", "2 m x 1 m, 25 cm deep"},
	{"leg-bed", "Bed on legs", "elevated bed", "1.2 m x 0.6 m, 20 cm deep"}, {"bag-1", "First bag", "bag", "40 L"}, {"bag-2", "Second bag", "bag", "40 L"},
	{"bag-3", "Third bag", "bag", "75 L"}, {"bag-4", "Fourth bag", "bag", "75 L"}, {"pockets", "Pocket bag", "pocket bag", "8 pockets, 30 L"},
	{"res-1", "Black reservoir box", "reservoir planter", "0.8 m x 0.4 m"}, {"res-2", "White reservoir box", "reservoir planter", "0.8 m x 0.4 m"},
	{"tier-top", "Top tier", "tier", "6 places"}, {"tier-mid", "Middle tier", "tier", "6 places"}, {"tier-low", "Bottom tier", "tier", "6 places"},
	{"rail-a", "Rail box by the door", "railing planter", "60 cm x 20 cm"}, {"rail-b", "Rail box by the steps", "railing planter", "60 cm x 20 cm"},
	{"basket", "Hanging basket", "hanging planter", "30 cm round"}, {"strip", "Fence strip", "open ground", "6 m x 0.5 m"}, {"corner", "Back corner", "open ground", "1.5 m x 1.5 m"},
}

var fixtureFoods = []string{"Salad", "Peas", "Roots", "Greens to cook", "Beans", "Tomatoes", "Peppers", "Onions", "Garlic", "Courgettes", "Cucumbers", "Broccoli", "Cabbage", "Potatoes", "Herbs", "Strawberries", "Sweetcorn"}

var today = cal.Of(2015, 10, 8)

// richDay has 20 spaces and a lamp shelf, 40 lines, 6 keeps and 17 foods over 60 weeks.
func richDay() *reckon.Day {
	r := rand.New(rand.NewPCG(7, 11))
	d := &reckon.Day{Garden: "Invented yard", Date: today, Demo: true, Place: "47.6 N 122.3 W, 60 m", Crops: fixtureCrops,
		Weather: "Ten years of one station, 2004 to 2013. Twenty futures were drawn from them by the week.",
		Notes:   []string{"The count of kale in the gate bed is a guess. It matters.", "Three days of rain are missing and were filled from normals."}}
	for w := range 60 {
		d.WeekOf = append(d.WeekOf, today.Monday()+cal.Day(7*w))
	}
	for i, fs := range fixtureSpaces {
		d.Spaces = append(d.Spaces, fixtureSpace(r, i, fs.id, fs.name, fs.kind, fs.size))
	}
	lamp := reckon.SpaceDay{ID: "lamp", Name: "Lamp shelf in the shed", Kind: "lamp shelf", Size: "1.2 m x 0.5 m"}
	for k, c := range fixtureCrops[:2] { // pots with no day known to move
		lamp.Lines = append(lamp.Lines, reckon.Line{ID: fmt.Sprintf("pots-%d", k+1), Space: "lamp", Crop: c.Name, CropID: c.ID, Plants: 3 + k, Standing: true, OnShelf: today - 9, OfTwenty: -1})
	}
	d.Spaces = append(d.Spaces, lamp)
	for _, sp := range d.Spaces {
		for _, l := range sp.Lines {
			if l.OnShelf != 0 {
				d.Shelf = append(d.Shelf, l)
			}
		}
	}
	d.Today = fixtureTasks()
	fixtureWalk(d)
	for i := range 6 {
		d.Keeps = append(d.Keeps, fixtureKeep(r, i, d.Spaces[i]))
	}
	for i, f := range fixtureFoods {
		d.Table = append(d.Table, fixtureFood(r, i, f))
	}
	d.Dry, d.Sky = fixtureDry(d), fixtureSky(d)
	d.Papers = fixturePapers(d)
	d.Water = &reckon.WaterSays{Words: "What stands and is planned asks for up to 45 L a day.", Weeks: []reckon.WaterWeek{
		{Week: today.Monday(), Drinks: 45.04, Wants: 40}, {Week: today.Monday() + 7, Drinks: 12, Wants: 40}, {Week: today.Monday() + 14, Wants: 40}}}
	d.Today[1].Reward = "Only 9 of 20 futures reward it. In the others one who knew what comes would have mostly kale."
	d.Later = &reckon.Later{Until: today + 28, Words: "31 starts of the plan can wait. 12 of 31 would still be wanted."}
	d.Plan = reckon.PlanSays{Status: "feasible", Value: 412, Nothing: 96, Mean: 405, Low: 322, High: 471, Seed: 20151008, Work: 185000, Options: 7421,
		Seconds: map[string]float64{"growth": 4.12, "options": 1.3, "search": 7.75}, Words: "The search tried many ways and kept the best it met."}
	return d
}

// fixtureWalk gives the day people, sides of the path and reach.
func fixtureWalk(d *reckon.Day) {
	d.Minutes = 420
	d.People = []reckon.PersonDay{{ID: "ann", Name: "Ann", Seated: true, LiftKg: 4, ReachM: 0.45, Minutes: 140}, {ID: "ben", Name: "Ben", LiftKg: 20}}
	for i := range d.Spaces {
		sp := &d.Spaces[i]
		sp.Side, sp.Near, sp.Who = []string{"left", "right", ""}[i%3], []string{sp.ID}, []string{"Ben"}
		sp.Reach = []reckon.Reach{{Person: "Ann", Seated: true, OK: i == 0, Words: "its rim is 30 cm up; a seat wants about 60 to 86"}, {Person: "Ben", OK: true}}
		if i == 0 {
			sp.Reach[0].Words, sp.Near, sp.Who = "reaches 45 cm in; the middle lies 60 cm in", append(sp.Near, "long-bed"), []string{"Ann", "Ben"}
		}
	}
	for i := range d.Today {
		t := &d.Today[i]
		t.DayCost, t.Delay = -1, "What a day's wait costs is not counted in meals."
		if i == 0 {
			t.DayCost, t.Delay = 0.5, "Each day's wait costs about half a meal."
		}
		t.Hollow = t.Verb == "look"
		t.Rule, t.Basis = "When it is ready.", "common practice"
		for _, sp := range d.Spaces {
			if sp.ID == t.Space {
				t.Reach = sp.Reach
			}
		}
	}
}

// win is a window around a day.
func win(d cal.Day, before, after int) cal.Window {
	return cal.Window{Early: d - cal.Day(before), Likely: d, Late: d + cal.Day(after)}
}

func fixtureSpace(r *rand.Rand, i int, id, name, kind, size string) reckon.SpaceDay {
	sp := reckon.SpaceDay{ID: id, Name: name, Kind: kind, Size: size, Medium: "compost blend, filled 2013", Water: "watered by can"}
	for m := range 12 {
		sp.SunH[m] = 5 - 4*math.Cos(float64(m+1)*math.Pi/6) - float64(i%3)*0.3
		sp.SunH[m] = math.Max(sp.SunH[m], 0)
		sp.DLI[m] = 20 - 15*math.Cos(float64(m+1)*math.Pi/6)
	}
	a, b := fixtureCrops[i%12], fixtureCrops[(i+5)%12]
	out := today + cal.Day(20+r.IntN(120))
	first := reckon.Line{ID: id + "-now", Space: id, Crop: a.Name, CropID: a.ID, Variety: "old sort", Plants: 4 + i, Standing: true,
		In: win(today-cal.Day(40+r.IntN(50)), 0, 0), First: win(today-10, 5, 5), Last: win(out-7, 9, 12), Out: win(out, 9, 16), OfTwenty: -1,
		Reasons: []string{"It stands well.", "It keeps giving in short days."}}
	in := out + cal.Day(-4+r.IntN(40))
	second := reckon.Line{ID: id + "-next", Space: id, Crop: b.Name, CropID: b.ID, Plants: 12 + i, In: win(in, 6, 9), First: win(in+70, 8, 12),
		Last: win(in+105, 9, 12), Out: win(in+112, 10, 18), OfTwenty: 11 + i%9, Reasons: []string{"It makes the most meals here.", "The family has not grown here for three years."}}
	if i%2 == 0 {
		second.OnShelf = in - 32
	}
	second.Later = &reckon.LineLater{Still: 9 + i%12, Near: i%5 == 4, Else: a.Name, ElseID: a.ID, ElseOf: 3, Decide: in - 32, By: (in - 32).Short(), Others: "mostly " + a.Name,
		Words: fmt.Sprintf("In %d of 20 futures it would still be sown outdoors; in the others mostly %s. Decide by %s.", 9+i%12, a.Name, (in - 32).Short())}
	if in-6 < out+16 {
		first.ClashOf, first.ClashWith = 3+i%9, second.ID
	}
	sp.Lines = []reckon.Line{first, second}
	if i == 19 { // one space stays empty
		sp.Lines = nil
		sp.IdleWeeks = 40
	}
	if i == 0 { // and one is crowded
		third := second
		third.ID, third.Crop, third.CropID, third.In, third.Out = id+"-third", "radishes", "radish", win(in+3, 4, 4), win(in+40, 5, 6)
		third.First, third.Last, third.OnShelf = win(in+30, 3, 4), win(in+36, 3, 4), 0
		fourth := third
		fourth.ID, fourth.In, fourth.Out, fourth.First, fourth.Last = id+"-fourth", win(in+130, 9, 9), win(in+190, 9, 9), win(in+160, 5, 5), win(in+185, 5, 5)
		sp.Lines = append(sp.Lines, third, fourth)
	}
	sp.Now = fmt.Sprintf("%s, %d plants, until about %s.", name1(a.Name), first.Plants, first.Out.Likely.Short())
	sp.Next = fmt.Sprintf("%s from about %s (%d of 20).", name1(b.Name), second.In.Likely.Short(), second.OfTwenty)
	sp.Answer = reckon.Answer{Verdict: fmt.Sprintf("Keep the %s until %s.", a.Name, first.Out.Likely.Short()), Reason: "It still gives about a meal a week.",
		Sure: fmt.Sprintf("likely (%d of 20)", 12+i%8), OfTwenty: 12 + i%8, Look: "Are new leaves still coming?", Change: "A hard frost before the month is out."}
	sp.History = []reckon.Note{{ID: "0000000000000000000000000" + string(rune('A'+i)), Happened: today - 60, Kind: "sown", Words: "Sowed " + a.Name + "."},
		{ID: "1000000000000000000000000" + string(rune('A'+i)), Happened: today - 20, Kind: "counted", Words: "Counted 9.", Voided: i%2 == 1}}
	sp.Learned = []string{"Warms a week later than the rest."}
	return sp
}

func name1(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

func fixtureTasks() []reckon.Task {
	ans := func(v, why, sure string, n int, look, change, care string) reckon.Answer {
		return reckon.Answer{Verdict: v, Reason: why, Sure: sure, OfTwenty: n, Look: look, Change: change, Caution: care}
	}
	return []reckon.Task{
		{ID: "gate-bed.pick.gate-bed-now", Space: "gate-bed", SpaceName: "Gate bed", Verb: "pick", Object: "the kale", Planting: "gate-bed-now", Crop: "kale", Event: "picked", Minutes: 10, Pressing: true, Until: today + 3, Who: []string{"Ann", "Ben"},
			Answer: ans("Pick the kale in the gate bed.", "The lower leaves toughen within days.", "likely (15 of 20)", 15, "Leaves longer than your hand come first.", "A frost sweetens them: then wait.", "")},
		{ID: "strip.plant.garlic", Space: "strip", SpaceName: "Fence strip", Verb: "sow", Object: "garlic", Crop: "garlic", Count: 40, Event: "sown", How: "40 plants, 15 cm apart.", Minutes: 25, Pressing: true, Until: today + 18, Who: []string{"Ben"},
			Answer: ans("Set 40 garlic cloves in the fence strip.", "Roots need a month before the ground is cold.", "very likely (18 of 20)", 18, "Is the soil crumbly, not sticky?", "Standing water after rain: then use the third bed.", "Before you drive a post, have buried lines marked. Local rules come first.")},
		{ID: "bag-3.pull.bag-3-now", Space: "bag-3", SpaceName: "Third bag", Verb: "pull", Object: "the broad beans", Planting: "bag-3-now", Crop: "broad-bean", Event: "pulled", Minutes: 15, Pressing: true,
			Answer: ans("Pull the broad beans in the third bag.", "They give nothing more, and spinach waits.", "about even (11 of 20)", 11, "Are there flowers? Then keep them a week.", "Three mild weeks ahead.", "A wet bag of this size is heavy. Split the load or ask for help.")},
		{ID: "shelf.sow.lettuce", SpaceName: "", Verb: "sow", Object: "leaf lettuce under the lamp", Crop: "lettuce-leaf", Count: 12, Event: "sown", Minutes: 10,
			Answer: ans("Sow 12 leaf lettuce under the lamp.", "They fill the gap of late November.", "likely (14 of 20)", 14, "Is there room for one more tray?", "If the white box is not free by then.", "")},
		{ID: "res-1.look.res-1-now", Space: "res-1", SpaceName: "Black reservoir box", Verb: "look", Object: "at the courgettes", Planting: "res-1-now", Event: "looked", Minutes: 5, Until: today + 6,
			Answer: ans("Look at the courgettes in the black box.", "We do not know if they still set fruit.", "not known", -1, "New fruit the length of a finger.", "What you see.", "")},
	}
}

func fixtureKeep(r *rand.Rand, i int, sp reckon.SpaceDay) reckon.Keep {
	k := reckon.Keep{Planting: sp.Lines[0].ID, Space: sp.ID, SpaceName: sp.Name, Crop: sp.Lines[0].Crop, Next: sp.Lines[1].Crop, Best: 1, Either: i == 2, Answer: sp.Answer}
	need := make([]int, 20)
	for f := range need {
		need[f] = r.IntN(9) - 1
	}
	rate := make([]float64, 20)
	for f := range rate {
		rate[f] = 0.6 + r.Float64()
	}
	for c := range 7 {
		ch := reckon.KeepChoice{Pull: today + cal.Day(2+7*c), DotMeals: make([]float64, 20), DotNext: make([]bool, 20), Worth: -0.4 * math.Abs(float64(c-k.Best))}
		sum := 0.0
		ch.MealsLow = 99
		for f := range 20 {
			ch.DotMeals[f] = rate[f] * math.Sqrt(float64(c)) * 3
			sum += ch.DotMeals[f]
			ch.MealsLow, ch.MealsHigh = math.Min(ch.MealsLow, ch.DotMeals[f]), math.Max(ch.MealsHigh, ch.DotMeals[f])
			ch.DotNext[f] = need[f] >= c
			if ch.DotNext[f] {
				ch.NextMakes++
			}
		}
		ch.MealsLikely = sum / 20
		k.Choices = append(k.Choices, ch)
	}
	if i == 1 { // a future that makes it late but not early: odd, but allowed
		for c, makes := range []bool{false, true, false, true, false, false, false} {
			if k.Choices[c].DotNext[0] && !makes {
				k.Choices[c].NextMakes--
			} else if !k.Choices[c].DotNext[0] && makes {
				k.Choices[c].NextMakes++
			}
			k.Choices[c].DotNext[0] = makes
		}
	}
	if i == 5 {
		k.Next = ""
		for c := range k.Choices {
			k.Choices[c].NextMakes, k.Choices[c].DotNext = -1, nil
		}
	}
	return k
}

func fixtureFood(r *rand.Rand, i int, food string) reckon.FoodRow {
	f := reckon.FoodRow{Food: strings.ToLower(strings.ReplaceAll(food, " ", "-")), Name: food,
		Answer: reckon.Answer{Verdict: food + ": enough until mid-winter, then a gap.", Sure: fmt.Sprintf("likely (%d of 20)", 12+i%7), OfTwenty: 12 + i%7, Change: "One more sowing before the month is out."}}
	start, gap := make([]int, 20), make([]int, 20)
	for k := range 20 {
		start[k], gap[k] = 8+r.IntN(6)+i, 4+r.IntN(9)-i/4
	}
	for w := range 60 {
		fw := reckon.FoodWeek{Wanted: 3, Threads: make([]bool, 20)}
		if i%3 == 1 && w%52 > 30 {
			fw.Wanted = 0
		}
		n := 0
		for k := range 20 {
			fw.Threads[k] = w < start[k] || w >= start[k]+gap[k]
			if fw.Threads[k] {
				n++
			}
		}
		fw.Much = make([]bool, 20)
		for k := range fw.Much { // a glut before each gap
			fw.Much[k] = fw.Threads[k] && fw.Wanted > 0 && w < start[k] && start[k]-w <= 3+k%4
		}
		fw.Expected = 3 * float64(n) / 20
		fw.Low, fw.High = fw.Expected*0.5, fw.Expected*1.4
		f.Weeks = append(f.Weeks, fw)
	}
	f.Holes = fixtureHoles(i, f)
	return f
}

// fixtureHoles finds the holes of a fixture's food and mends the first.
func fixtureHoles(i int, f reckon.FoodRow) []reckon.Hole {
	var out []reckon.Hole
	for w, fw := range f.Weeks {
		if n := enough(fw); fw.Wanted > 0 && n < 10 {
			if k := len(out) - 1; k >= 0 && out[k].To == w-1 {
				out[k].To, out[k].Least = w, min(out[k].Least, n)
				continue
			}
			out = append(out, reckon.Hole{From: w, To: w, Least: n, Asked: true, Tried: 3, Words: "Of 3 starts tried in the plan, none makes a week of it likely.", Ends: "Kale in Gate bed ends it: first pick about 3 March."})
		}
	}
	if len(out) > 0 && i%2 == 0 {
		h := &out[0]
		h.Words = ""
		for k := range 1 + i%3 {
			sp, c := fixtureSpaces[(i+k)%20], fixtureCrops[(i+k)%12]
			m := reckon.Mend{Option: fmt.Sprintf("%s.%s.%d.%d", sp.id, c.ID, i, k), Crop: c.Name, CropID: c.ID, Space: sp.id, SpaceName: sp.name, Plants: 6 + k, Verb: "sow", Way: "sow", Since: (today + cal.Day(7*k)).Monday(), Until: today.Monday() + 97, From: today + cal.Day(7*k), By: today + 20,
				Closes: h.To - h.From + 1, First: h.From, Last: h.To, OfTwenty: 12 + k, Gain: 4.4, Worth: -1.5 * float64(k)}
			if k == 1 {
				m.Verb, m.SetOut, m.Costs = "sow on the shelf", today+40, []reckon.FoodCost{{Food: "Roots", Meals: 3.2}, {Food: "Herbs", Meals: 1}}
			}
			h.Mends = append(h.Mends, m)
		}
	}
	return out
}

// emptyDay is a garden of which nothing is known yet.
func emptyDay() *reckon.Day {
	return &reckon.Day{Garden: "", Date: today, Plan: reckon.PlanSays{}}
}

// hostileText is typed into every field.
const hostileText = `<em>x</em><script>alert(1)</script>"'>&{{.}} ` + "\u202eמימין לשמאל\u202c "

// hostileDay is the rich day with markup, very long and right-to-left names
// in every text.
func hostileDay() *reckon.Day {
	d := richDay()
	n := 0
	h := func(s *string) {
		n++
		*s = hostileText + *s
		if n%3 == 0 {
			*s += strings.Repeat("Wachsamkeit", 28) // 308 letters without a break
		}
	}
	answer := func(a *reckon.Answer) {
		for _, s := range []*string{&a.Verdict, &a.Reason, &a.Sure, &a.Look, &a.Change, &a.Caution} {
			h(s)
		}
	}
	line := func(l *reckon.Line) {
		h(&l.Crop)
		h(&l.Variety)
		if l.Later != nil {
			x := *l.Later
			h(&x.Words)
			h(&x.Others)
			h(&x.By)
			l.Later = &x
		}
		for i := range l.Reasons {
			h(&l.Reasons[i])
		}
	}
	for _, s := range []*string{&d.Garden, &d.Place, &d.Weather, &d.Plan.Words, &d.Plan.Status, &d.Later.Words} {
		h(s)
	}
	for i := range d.Notes {
		h(&d.Notes[i])
	}
	for i := range d.Crops {
		c := d.Crops[i]
		h(&c.Name)
		d.Crops = append(append(append([]reckon.Choice{}, d.Crops[:i]...), c), d.Crops[i+1:]...)
	}
	for i := range d.Today {
		t := &d.Today[i]
		for _, s := range []*string{&t.ID, &t.SpaceName, &t.Verb, &t.Object} {
			h(s)
		}
		t.Who = append(t.Who, hostileText)
		h(&t.Rule)
		h(&t.Reward)
		h(&t.Basis)
		answer(&t.Answer)
	}
	for i := range d.Spaces {
		sp := &d.Spaces[i]
		for _, s := range []*string{&sp.Name, &sp.Kind, &sp.Size, &sp.Medium, &sp.Water, &sp.Now, &sp.Next} {
			h(s)
		}
		answer(&sp.Answer)
		for k := range sp.Lines {
			line(&sp.Lines[k])
			sp.Lines[k].ID += hostileText
			if sp.Lines[k].ClashWith != "" {
				sp.Lines[k].ClashWith += hostileText
			}
		}
		for k := range sp.History {
			h(&sp.History[k].Words)
		}
		sp.Learned = append(sp.Learned, hostileText)
	}
	for i := range d.Shelf {
		line(&d.Shelf[i])
		d.Shelf[i].ID += hostileText
	}
	for i := range d.Keeps {
		k := &d.Keeps[i]
		for _, s := range []*string{&k.Planting, &k.SpaceName, &k.Crop, &k.Next} {
			h(s)
		}
		answer(&k.Answer)
	}
	for i := range d.Table {
		h(&d.Table[i].Name)
		answer(&d.Table[i].Answer)
		for k := range d.Table[i].Holes {
			hole := &d.Table[i].Holes[k]
			h(&hole.Words)
			h(&hole.Ends)
			for j := range hole.Mends {
				h(&hole.Mends[j].Crop)
				h(&hole.Mends[j].SpaceName)
				if len(hole.Mends[j].Costs) > 0 {
					h(&hole.Mends[j].Costs[0].Food)
				}
			}
		}
	}
	for i := range d.People {
		h(&d.People[i].Name)
	}
	hostileOutdoors(d, h)
	hostilePapers(d.Papers, h)
	d.Plan.Seconds[hostileText] = 1
	return d
}
