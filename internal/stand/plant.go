package stand

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// plant is the state of one start in one future. Each day its rates are read
// from the table first and then added up (rates before states).
type plant struct {
	t        *Table
	co       *course
	f        int
	day      []rate // this future's days
	start    int    // index of the start
	plan     int    // index of the plan's first day
	standing bool

	u      float32 // good days since it took hold
	v      float32 // reference days since it took hold
	vern   float32 // cold days
	bolt   float32 // inducing days
	drawn  float32 // inducing days without cold, where long days alone are enough
	spring float32 // reference days since the equinox after a winter stood
	held   float32 // reference days since ready
	scale  float32 // kg of a full yield here and in this world
	inv    float32 // 1/goal
	soft   float32 // warmest night that can harm it at all
	bolts  bool
	shy    bool // flowers lost in heat are not made up

	up, first, last, end int // day indices, -1 = never
	ok                   bool
	cause                Cause
	total, later         float32 // kg in all, and after the plan
	kg                   []float32
	sum                  *tally
	stemAt               int // day from which it makes a seed stem after a winter
	mark                 int // next day to note its size
	coming               int // first pick in the plan, -1 = none
}

const (
	paceLag      = 0.1   // share of the way the running mean of growth goes in a day
	slowing      = 0.25  // good days a day: autumn growth so slow that what is there is picked
	standstill   = 0.15  // below this a plant stands still and is not first picked before growth returns
	waitDays     = 7     // days a start is put off in a cold spell (common practice)
	seedPatience = 60    // days after which seed has rotted (common practice)
	seedLoss     = 0.988 // share of seed left after each day in the ground (assumption)
	warmSeedLoss = 0.98  // the same for seed that wants 10 °C and rots below
	warmSeedC    = 10.0
	seedLeast    = 0.35 // share of the seed usually up that makes a stand: it is sown for its kind's germination
	nightSlackC  = 2.0  // a mean of ten nights this far below the printed least night still passes
	soilSlackC   = 3.0  // the daily mean runs this far below what a gardener reads in a bed by day
)

// run follows one start. kg and sum are added to.
func (t *Table) run(co *course, f, start int, standing bool, sum *tally, kg []float32) plant {
	p := t.seed(co, f, start, standing, sum, kg)
	p.begin()
	return p
}

// seed is a start on its first day, before anything has happened.
func (t *Table) seed(co *course, f, start int, standing bool, sum *tally, kg []float32) plant {
	a := t.air
	p := plant{t: t, co: co, f: f, day: t.rates[f*a.n : (f+1)*a.n], start: start,
		plan: a.at(a.env.Start), standing: standing, up: -1, first: -1, last: -1, end: -1, coming: -1,
		kg: kg, sum: sum, mark: start, inv: 1 / co.goal}
	p.scale = float32(t.Crop.YieldKg.Value*t.world(f).Yield) * t.room
	p.shy = t.shy
	p.soft = max(t.frost[0], t.frost[1])
	p.bolts = !t.Crop.Perennial && !needsCold(t.Crop) && (vernalises(t.Crop) || co.ripe != byForm && t.Crop.BoltDayH.Value > 0)
	return p
}

// begin takes the start through its life.
func (p *plant) begin() {
	n := len(p.day)
	if p.start >= n || p.start < 0 && !p.standing {
		p.fail(TooSlow, max(0, min(p.start, n-1)))
		return
	}
	i := p.start
	if i < 0 {
		p.enterGrown()
		i = 0
	} else if c := p.settle(&i); c != Fine {
		p.fail(c, i)
		return
	}
	p.up = i
	p.stemAt = p.stemFrom()
	p.grow(i)
}

// enterGrown takes over a planting older than the weather at hand as if its
// days so far had been ordinary.
func (p *plant) enterGrown() {
	p.mark = 0
	done := float32(-p.start)
	p.u = min(done, p.co.goal)
	p.v = min(done, p.co.flower)
	p.vern = p.co.vern
}

// fail ends the plant without success on day i.
func (p *plant) fail(c Cause, i int) plant {
	p.ok, p.cause = false, c
	if p.end < 0 {
		p.end = i
	}
	return *p
}

// settle takes a start to the day it is up or has taken hold.
func (p *plant) settle(i *int) Cause {
	if p.co.way == crop.Sow {
		if c := p.wait(i); c != Fine {
			return c
		}
		return p.emerge(i)
	}
	if c := p.wait(i); c != Fine {
		return c
	}
	for n := 0; n < p.co.settle && *i+1 < len(p.day); n++ {
		p.note(*i)
		*i++
	}
	return Fine
}

// wait puts a start off by some days until the soil and the coming nights
// are fit for it, as a careful grower does within the week planned.
func (p *plant) wait(i *int) Cause {
	if p.standing || p.t.air.env.Indoor {
		return Fine
	}
	for n := 0; ; n++ {
		c := p.cold(*i)
		if c == Fine || n >= p.sum.wait || *i+1 >= len(p.day) {
			return c
		}
		*i++
		p.start++
		p.mark++
	}
}

// cold says whether careful growers would still wait with setting out.
func (p *plant) cold(i int) Cause {
	a := p.t.air
	if p.soilCold(i) {
		return ColdSoil
	}
	if p.co.nights && float64(a.night10[p.f*a.n+i])+a.env.Cover < leastNight(p.t.Crop) {
		return Chilled
	}
	return Fine
}

// soilCold says whether the soil is too cold for what is put into it. Seed of
// cool crops would lie still and rot in a week under the least at which it
// stirs and the bed can be worked (common practice).
func (p *plant) soilCold(i int) bool {
	c, week := p.t.Crop, float64(p.t.air.soil7[p.f*p.t.air.n+i])
	if p.co.way == crop.Sow && !c.Warm {
		return week < math.Max(c.SoilMin.Value, c.SetSoilMin.Value)
	}
	least := c.SetSoilMin.Value - soilSlackC
	if p.co.way == crop.Sow {
		least = math.Min(c.SetSoilMin.Value-soilSlackC, c.SetSoilMin.Low)
	}
	return c.SetSoilMin.Known() && !p.t.air.env.Indoor && week < least
}

// leastNight is the mean of ten nights from which a crop is set out: a little
// below the printed least night, and no higher than the lower end of its range,
// which northern growers go by.
func leastNight(c *crop.Crop) float64 {
	f := c.SetNightMin
	return math.Min(f.Value-nightSlackC, f.Low)
}

// emerge adds up the days' share of the way to emergence.
func (p *plant) emerge(i *int) Cause {
	soil := p.t.air.soil[p.f*p.t.air.n:]
	keep := seedLoss
	if p.t.Crop.SoilMin.Value >= warmSeedC {
		keep = warmSeedLoss
	}
	var done, warm float32
	for n := 1; ; n++ {
		if *i+1 >= len(p.day) || n > seedPatience {
			if p.standing {
				return Fine
			}
			return NotUp
		}
		p.note(*i)
		done += p.day[*i].emerge
		warm += soil[*i]
		*i++
		if done >= 1 {
			share := p.t.germ.bestShare(float64(warm/float32(n)), soilSwingC)
			alive := share * p.t.world(p.f).Emerge * math.Pow(keep, float64(n))
			if alive < seedLeast*p.t.germ.usual && !p.standing {
				return NotUp
			}
			return Fine
		}
	}
}

// note adds the plant's size to the mean picture once a week.
func (p *plant) note(i int) {
	if i != p.mark {
		return
	}
	p.mark = i + 7
	if i < p.plan {
		p.mark = min(i+7, p.plan)
		return
	}
	w := (i - p.plan) / 7
	p.mark = p.plan + 7*(w+1)
	if w >= len(p.sum.cover) {
		return
	}
	p.sum.cover[w] += p.co.cover.at(p.u * p.inv)
	p.sum.height[w] += p.co.height.at(p.u * p.inv)
}

// fate is what a day did to a plant.
type fate uint8

const (
	lives fate = iota
	frozen
	bolted
)

// step adds one day's rates to the plant and says what became of it.
func (p *plant) step(i int) fate {
	r := &p.day[i]
	if i == p.mark {
		p.note(i)
	}
	p.u += r.grow
	p.v += r.dev
	if r.night <= p.soft && r.night <= p.limit(r) && (!p.standing || i >= p.plan) && (r.night > scorched/2 || i >= p.up+spellDays) {
		return frozen
	}
	if p.stems(i) {
		return bolted
	}
	if p.bolts && p.induced(i) {
		return bolted
	}
	return lives
}

// induced adds a day of cold or of long days and reports that they have sent
// the plant to seed.
func (p *plant) induced(i int) bool {
	r, co := &p.day[i], p.co
	if p.v < co.vernAt {
		return false
	}
	if co.long > 0 {
		if p.drawn += r.bolt; p.drawn > co.long {
			return true
		}
	}
	if p.vern < co.vern {
		p.vern = max(0, p.vern+r.vern)
		return false
	}
	day := r.bolt
	if co.long > 0 {
		day = r.dev * afterCold(p.t.air.dayH[i])
	}
	p.bolt += day
	return p.bolt > co.bolt
}

// limit is the night that kills the plant as old and as hardened as it is:
// from the soft seedling's limit to the hardened grown plant's.
func (p *plant) limit(r *rate) float32 {
	m := min(1, p.u*p.inv+p.co.born)
	deep := 0.3*m + 0.3*r.hard + 0.4*m*r.hard
	if p.t.Crop.AutumnPlant { // bred to stand the winter young: hardening does it
		deep = min(1, 0.2*m+0.8*r.hard)
	}
	return p.t.frost[0] + (p.t.frost[1]-p.t.frost[0])*deep
}

// add books kg picked on day i to its plan week.
func (p *plant) add(i int, kg float32) {
	p.total += kg
	if i < p.plan {
		return
	}
	if p.coming < 0 && kg > 0 {
		p.coming = i
	}
	if w := (i - p.plan) / 7; w < len(p.kg) {
		p.kg[w] += kg
	} else {
		p.later += kg
	}
}

// date is the calendar day of index i.
func (p *plant) date(i int) cal.Day { return p.t.air.start + cal.Day(i) }

// light is the mean daily light, mol/m2, and the mean clear-day sun hours of
// the last lightDays before day i in which the plant grew.
func (p *plant) light(i int) (dli, sunH float64) {
	const lightDays = 75
	a := p.t.air
	from := max(p.up, i-lightDays, 0)
	if i <= from {
		return math.Inf(1), 24
	}
	n := float64(i - from)
	s := a.dliSum[p.f*(a.n+1):]
	return float64(s[i]-s[from]) / n, float64(a.sunSum[i]-a.sunSum[from]) / n
}
