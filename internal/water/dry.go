package water

import (
	"math"
	"sort"
)

// Ask says what is asked of Dry.
type Ask struct {
	FromHour int     // of the sky's first day, 0 to 23: now
	NextH    float64 // hours until somebody can water again
	AwayDays int     // days without anyone from now, after a good soak; 0 = not asked
	Seed     uint64
}

// Window is a band: one future in ten lies below Early, one in ten above Late.
// Never says how many of the futures did not come to it in the days looked at;
// those count as the horizon.
type Window struct {
	Early, Likely, Late float64
	Never               int
}

// Answer is what one space comes to.
type Answer struct {
	ID       string
	Hours    []float64 // by future: from now until dry; the horizon when not
	Horizon  float64   // hours looked at
	Dry      Window    // of Hours
	Tank     Window    // hours until its reservoir is empty; all 0 without one
	ByNext   int       // futures dry before NextH
	RainHelp int       // futures in which 3 mm fall on it before it is dry
	DrinksL  Window    // litres over the next 24 hours: what the leaves ask, and what dries off the surface as it is
	LackL    Window    // litres to fill it now
	GiveL    float64   // to give now: 0 when it can wait until the next visit
	Minutes  float64   // of its line, for GiveL
	HasLine  bool
	HoldsL   float64   // what it holds for plants when full, middle of its range
	Survives Window    // days of the absence asked; Never = alive at its end
	DaysOut  []float64 // by future
	OutDry   Window    // hours from that soak until dry; all 0 when no absence was asked
	Rate     float64   // learned, 1 = as reckoned
	Looks    int
}

// helpMM is the rain that counts as help.
const helpMM = 3

// lineShare is what of a line's or can's water stays. Drip in gardens keeps
// 0.85-0.95: common practice.
const lineShare = 0.9

// Dry runs a space through all futures of a sky, hour by hour, without
// watering, and says when it is dry and what to give.
func Dry(s *Space, b Belief, sky *Sky, ask Ask) Answer {
	n := len(sky.days)
	a := Answer{ID: s.ID, Horizon: float64(24*sky.Days - ask.FromHour), Rate: b.Rate(), Looks: b.Looks, HasLine: s.RateLH > 0}
	if !s.finite() || n == 0 || len(b.cells) == 0 {
		panic("water: a space that cannot be")
	}
	drinks, lacks, tanks := make([]float64, n), make([]float64, n), make([]float64, n)
	a.Hours = make([]float64, n)
	for k, d := range s.draws(b, n, ask.Seed) {
		w := s.newStore(d)
		lacks[k] = w.lackL()
		r := s.run(w, d, sky, k, ask.FromHour)
		a.Hours[k], tanks[k], drinks[k] = r.dry, r.tank, r.firstL
		if r.dry < ask.NextH {
			a.ByNext++
		}
		if r.rained {
			a.RainHelp++
		}
	}
	a.Dry, a.DrinksL, a.LackL = window(a.Hours, a.Horizon), window(drinks, math.Inf(1)), window(lacks, math.Inf(1))
	middle := s.newStore(draw{holds: s.Medium.Holds.At(0.5)})
	a.HoldsL = middle.capacity()
	if s.TankL > 0 {
		a.Tank = window(tanks, a.Horizon)
	}
	if a.ByNext > n/10 {
		a.GiveL = a.LackL.Likely / lineShare
	}
	if a.HasLine {
		a.Minutes, _ = Minutes(a.GiveL, s.RateLH)
	}
	if ask.AwayDays > 0 {
		s.away(&a, b, sky, ask)
	}
	return a
}

// away runs the absence: soaked on leaving, nobody after.
func (s *Space) away(a *Answer, b Belief, sky *Sky, ask Ask) {
	top := float64(min(ask.AwayDays, sky.Days-1))
	var dry []float64
	for k, d := range s.draws(b.Full(), len(sky.days), ask.Seed) {
		r := s.run(s.newStore(d), d, sky, k, ask.FromHour)
		a.DaysOut = append(a.DaysOut, min(top, r.lost/24))
		dry = append(dry, r.dry)
	}
	a.OutDry = window(dry, a.Horizon)
	a.Survives = window(a.DaysOut, top)
}

// outcome is when things happened in one run, hours from now.
type outcome struct {
	dry, tank, lost float64
	rained          bool
	firstL          float64 // asked by leaves and dried off in the first 24 hours
}

// run dries a store in one future until plants are lost or the days end.
func (s *Space) run(w store, d draw, sky *Sky, future, fromHour int) outcome {
	t := s.thirst(d)
	horizon := float64(24*sky.Days - fromHour)
	o := outcome{dry: horizon, tank: horizon, lost: horizon}
	isDry, isEmpty, isLost := false, w.tankCap == 0, false
	dryAt, lostAt := w.dryL(), w.lostL()
	rain := 0.0
	now := 0.0
	if w.held() <= dryAt {
		o.dry, isDry = 0, true
	}
	if w.held() <= lostAt {
		o.lost, isLost = 0, true
	}
	for day := range sky.Days {
		sd := sky.days[future][day]
		air, leaf := t.demand(sd, sky.month[day], day)
		wets := CaughtL(sd.rainMM, s.AreaM2, s.RainShare) / 24
		first := 0
		if day == 0 {
			first = fromHour
		}
		for h := first; h < 24; h++ {
			share := sky.course[day][h]
			was := w.held()
			f := w.step(wets, air*share, leaf*share)
			if now < 24 {
				o.firstL += leaf*share + f.evaporated
			}
			now++
			if !isDry {
				rain += sd.rainMM * s.RainShare / 24
			}
			if !isEmpty && w.tank <= 0 {
				isEmpty, o.tank = true, now
			}
			if held := w.held(); !isDry && held <= dryAt {
				isDry, o.dry = true, now-1+part(was, held, dryAt)
				o.rained = rain >= helpMM
			}
			if held := w.held(); !isLost && held <= lostAt {
				isLost, o.lost = true, now-1+part(was, held, lostAt)
			}
			if isLost && isDry && now >= 24 {
				return o
			}
		}
	}
	if !isDry {
		o.rained = rain >= helpMM
	}
	return o
}

// part says how far into an hour a level was passed.
func part(was, is, level float64) float64 {
	if was <= is || was <= level {
		return 1
	}
	return max(0, min(1, (was-level)/(was-is)))
}

// window sorts a copy and takes its tenth, middle and nine-tenths.
func window(v []float64, never float64) Window {
	s := append([]float64(nil), v...)
	sort.Float64s(s)
	at := func(q float64) float64 {
		x := q * float64(len(s)-1)
		i := int(x)
		if i+1 >= len(s) {
			return s[len(s)-1]
		}
		return s[i] + (x-float64(i))*(s[i+1]-s[i])
	}
	w := Window{Early: at(0.1), Likely: at(0.5), Late: at(0.9)}
	for _, x := range s {
		if x >= never {
			w.Never++
		}
	}
	return w
}
