package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// canL is a full watering can.
const canL = 10

// say puts an answer into the gardener's words.
func (r *DryRow) say(in *Inputs, s *water.Space, ask DryAsk, futures int) {
	a := r.Answer
	if r.Empty {
		r.When = "Nothing stands here."
		return
	}
	r.When = when(in.Date, ask.FromHour, a)
	r.Give = give(a, s, futures)
	if ask.AwayDays > 0 {
		r.Out = out(a, s, ask.AwayDays, futures)
	}
	r.Look = lookFirst(r.Kind)
	r.Learned = learned(a)
	switch {
	case s.TankL > 0:
		r.Caution = "Standing water breeds mosquitoes: screen the overflow too, or use it up within about 7 days. Local rules come first."
	case r.Kind == garden.Railing || r.Kind == garden.Hanging:
		r.Caution = "Full it is at its heaviest: check its fixings. Lease or association rules come first."
	}
}

func when(date cal.Day, fromHour int, a water.Answer) string {
	if a.Dry.Likely <= 0 {
		return "Dry by now, as far as can be reckoned."
	}
	if a.Dry.Likely >= a.Horizon {
		return fmt.Sprintf("Not dry within %.0f days, as far as can be reckoned.", math.Floor(a.Horizon/24))
	}
	s := "Dry by about " + moment(date, fromHour, a.Dry.Likely)
	early, late := moment(date, fromHour, a.Dry.Early), moment(date, fromHour, a.Dry.Late)
	switch {
	case a.Dry.Late >= a.Horizon:
		s += fmt.Sprintf(", not before %s; perhaps not for %.0f days", early, math.Floor(a.Horizon/24))
	case early != late:
		s += fmt.Sprintf(" (%s to %s)", early, late)
	}
	return s + "."
}

// moment names a time some hours from now: "this afternoon", "Thursday
// morning", "before dawn tomorrow", "14 July".
func moment(date cal.Day, fromHour int, hours float64) string {
	if hours <= 0 {
		return "now"
	}
	at := float64(fromHour) + hours
	day := int(at / 24)
	d := date + cal.Day(day)
	h := at - 24*float64(day)
	part := "night"
	switch {
	case h >= 18:
		part = "evening"
	case h >= 12:
		part = "afternoon"
	case h >= 5:
		part = "morning"
	}
	switch {
	case day == 0 && part == "night":
		return "before dawn"
	case day == 0:
		return "this " + part
	case part == "night" && day == 1:
		return "before dawn tomorrow"
	case part == "night" && day < 7:
		return "before dawn on " + d.Weekday().String()
	case day == 1:
		return "tomorrow " + part
	case day < 7:
		return d.Weekday().String() + " " + part
	}
	return d.Short()
}

// litres says an amount without false decimals.
func litres(l float64) string {
	switch {
	case l < 0.75:
		return "about half a litre"
	case l < 10:
		return fmt.Sprintf("about %.0f L", l)
	}
	return fmt.Sprintf("about %.0f L", 5*math.Round(l/5))
}

func give(a water.Answer, s *water.Space, futures int) string {
	if a.GiveL <= 0 {
		return fmt.Sprintf("It can wait for the next visit. It would take %s to fill.", litres(a.LackL.Likely))
	}
	how := "give " + litres(a.GiveL)
	switch {
	case a.HasLine:
		how = fmt.Sprintf("run its line for about %s: %s", minutesWords(a.Minutes), litres(a.GiveL))
	case a.GiveL > canL*1.5:
		how += fmt.Sprintf(", %.0f full cans", math.Round(a.GiveL/canL))
	}
	of20 := ofTwenty(a.ByNext, futures)
	if of20 < WaterFrom {
		how = "to be sure, " + how
	}
	return sentence(fmt.Sprintf("%s. Dry before the next visit: %s", how, chance(of20)))
}

func minutesWords(m float64) string {
	if m >= 90 {
		return fmt.Sprintf("%.1f hours", m/60)
	}
	return fmt.Sprintf("%.0f minutes", math.Max(5, 5*math.Round(m/5)))
}

func out(a water.Answer, s *water.Space, days, futures int) string {
	alive := ofTwenty(a.Survives.Never, futures)
	w := fmt.Sprintf("Soaked on leaving, it lasts the %d days: %s.", days, chance(alive))
	if alive < 16 {
		w += fmt.Sprintf(" Plants may be lost after %.0f days (%.0f to %.0f).", a.Survives.Likely, math.Floor(a.Survives.Early), math.Ceil(a.Survives.Late))
	}
	if s.Way == water.Drip {
		w += " That is with its line shut; try the timer before leaving."
	}
	return w
}

func lookFirst(k garden.Kind) string {
	switch k {
	case garden.Bag, garden.PocketBag, garden.Hanging:
		return "Lift one side: if it is heavy, it can wait."
	case garden.Reservoir:
		return "Look into the fill tube, or put a stick down it."
	case garden.Ground:
		return "Push a long screwdriver in: it stops at dry soil."
	}
	return "Put a finger in to the second knuckle, in the middle and at the rim."
}

// learned says what looks have taught about a space.
func learned(a water.Answer) string {
	if a.Looks == 0 {
		return ""
	}
	if a.Rate > 0.9 && a.Rate < 1.1 {
		return "It dries about as reckoned."
	}
	word := "slower"
	if a.Rate > 1 {
		word = "faster"
	}
	s := fmt.Sprintf("It dries %s than reckoned, by what you found: about %.1f times as fast.", word, a.Rate)
	if is, was := a.Dry.Likely/24, a.Dry.Likely*a.Rate/24; a.Dry.Likely < a.Horizon && math.Round(is) != math.Round(was) {
		s += fmt.Sprintf(" Dry in %s, not %s.", daysWords(is), daysWords(was))
	}
	return s
}

func daysWords(d float64) string {
	switch r := math.Round(d); {
	case r < 1:
		return "less than a day"
	case r == 1:
		return "1 day"
	default:
		return fmt.Sprintf("%.0f days", r)
	}
}

// takenForGranted lists what a garden file does not say, once.
func takenForGranted(in *Inputs, rows []DryRow) []string {
	ways := map[water.Way]bool{}
	unseen := false
	for _, r := range rows {
		if sp, ok := in.Garden.Space(garden.SpaceID(r.Space)); ok && (sp.Watering.EmitterLH.LH > 0 || sp.Watering.Tank.L > 0) {
			unseen = unseen || !r.Empty && r.Answer.Looks == 0
			continue // measured
		}
		ways[r.Way] = ways[r.Way] || !r.Empty
		unseen = unseen || !r.Empty && r.Answer.Looks == 0
	}
	out := []string{"A space counts as dry when half its water is spent.",
		"Leaf spread is that of what stands; roots reach as deep as plants of that size do."}
	if unseen {
		out = append(out, "Where no look was noted, it may be anywhere between just watered and due.")
	}
	if ways[water.Drip] {
		out = append(out, fmt.Sprintf("Lines are taken to give %.0f L an hour every %.0f cm. Time one emitter into a cup and correct it.", dripLH, 100*dripEveryM))
	}
	if ways[water.Reservoir] {
		out = append(out, fmt.Sprintf("Reservoirs are taken to be up to %.0f cm high under the overflow. Measure how much yours takes.", 100*tankMostM))
	}
	if in.Garden.Place.Sheltered {
		out = append(out, fmt.Sprintf("Behind the walls the wind is taken to be %.0f %% of the record's.", 100*wallWind))
	}
	return out
}
