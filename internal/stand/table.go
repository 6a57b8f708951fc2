package stand

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// rate is one crop's day in one future. All are rates or states of the day's
// weather alone, never of the plant, so that every start shares them.
type rate struct {
	emerge float32 // share of the way to emergence
	dev    float32 // development, reference days
	grow   float32 // growth, good days
	night  float32 // coldest of the night with cover and the future's doubt, °C
	hard   float32 // 0 = soft .. 1 = hardened
	pace   float32 // growth lately in the open, good days a day: how near the winter's standstill is
	vern   float32 // cold that counts towards bolting or bulbing, days
	bolt   float32 // long warm days that count towards bolting, reference days
	set    float32 // share of flowers that set
}

// Table holds a crop's daily rates in one space through all futures. Once made
// it is only read: starts may be grown from many goroutines.
type Table struct {
	Crop    *crop.Crop
	air     *Air
	worlds  []World
	germ    *emergence
	rates   []rate // future-major
	heat    bool   // HeatC spoils the pick
	heatC   float32
	shy     bool    // flowers lost in heat are not made up
	shyC    float32 // a fortnight of days above this loses flowers, °C
	lost    float32 // picking days a day of lost flowers takes
	room    float32 // yield left by the root room, 0..1
	frost   [2]float32
	courses []*course
}

// NewTable works out the rates of c in env. worlds holds one World per
// future; nil means the book's middle values in all.
func NewTable(c *crop.Crop, env *Env, worlds []World) *Table {
	return NewAir(env).Table(c, worlds)
}

// Table works out the rates of c, sharing a's weather with other crops.
func (a *Air) Table(c *crop.Crop, worlds []World) *Table {
	t := &Table{Crop: c, air: a, worlds: worlds, germ: newEmergence(c)}
	t.room = float32(rootRoom(c, a.env))
	t.heat = spoiledByHeat(c)
	t.heatC = float32(c.HeatC.Value)
	t.shy, t.shyC = heatShy(c), float32(c.FruitMaxDay.Value)-3
	t.lost = 1 - ageSpend
	if c.AutumnPlant {
		t.lost = lostInFull
	}
	t.frost = [2]float32{float32(c.FrostSeedling.Value), float32(c.FrostKill.Value)}
	t.fill()
	for _, way := range c.Ways {
		t.courses = append(t.courses, newCourse(c, way, t.germ))
	}
	for _, co := range t.courses {
		t.measure(co)
	}
	return t
}

func (t *Table) world(f int) World {
	if f < len(t.worlds) {
		return t.worlds[f]
	}
	return Middle()
}

func (t *Table) fill() {
	a, c := t.air, t.Crop
	t.rates = make([]rate, a.k*a.n)
	warm, light := newWarmth(c), newLightCurve(c, a.env.Indoor)
	fruit := sets(c)
	for f := range a.k {
		w := t.world(f)
		pace := 1 / math.Max(0.3, w.Days)
		o := f * a.n
		open := 1.0
		for i := range a.n {
			lo, hi := float64(a.tmin[o+i]), float64(a.tmax[o+i])
			dev := warm.over(lo, hi) * pace * chillCheck(c, a.night(lo, hi))
			r := &t.rates[o+i]
			em := t.germ.over(float64(a.soil[o+i]), soilSwing*(hi-lo))
			r.emerge = float32(em / fieldSlow)
			r.dev = float32(dev)
			r.grow = float32(dev * light.at(float64(a.dli[o+i])) * float64(a.wet[o+i]))
			r.night = a.killing(c, o+i, lo) - float32(w.ColdC)
			r.hard = a.hard[o+i]
			open += paceLag * (dev*light.at(float64(a.open[o+i])) - open)
			r.pace = float32(open)
			r.vern = float32(coldDay(c, lo, hi))
			r.bolt = float32(dev * boltShare(c, float64(a.dayH[i]), hi))
			r.set = 1
			if fruit && !a.env.Indoor {
				dark := usualNight(lo, hi, nightShare)
				if t.shy { // buds are hurt in the fortnight before they open ([FABAHEAT])
					hi = max(hi, float64(a.warm14[o+i]))
				}
				r.set = float32(setShare(c, dark, hi))
			}
		}
	}
}

const (
	fieldSlow    = 1.15 // days to come up in a bed over days in the laboratory's table (assumption)
	chillPerC    = 0.08 // growth lost per degree of night below ChillC (assumption)
	chillMost    = 0.6
	boltRampH    = 1.0  // hours above BoltDayH for full effect after a winter
	boltPerH     = 0.62 // effect of an hour above BoltDayH, rising with its power 1.5, on crops that need no winter (assumption)
	boltMost     = 1.8
	boltCool     = 0.05 // of the effect of long days in weather of 15 °C by day; in full from 25 °C (assumption)
	vernLeastC   = 0.0  // colder hours do not count as chill
	vernFadeC    = 4.0  // an hour counts fully this far below the printed limit (assumption)
	longEnoughH  = 11.5
	roomPower    = 0.7 // yield falls with root room to this power (assumption)
	devernAboveC = 20.0
)

// chillCheck is the share of growth left after a cold night.
func chillCheck(c *crop.Crop, nightC float64) float64 {
	if !c.ChillC.Known() || nightC >= c.ChillC.Value {
		return 1
	}
	return 1 - math.Min(chillMost, chillPerC*(c.ChillC.Value-nightC))
}

// coldDay is the part of a day cold enough to count, less what warmth undoes.
func coldDay(c *crop.Crop, lo, hi float64) float64 {
	limit := vernMaxC(c)
	switch {
	case needsCold(c):
		limit = c.ColdMaxC.Value
	case !vernalises(c):
		return 0
	}
	if lo >= limit && hi <= devernAboveC {
		return 0
	}
	n := 0.0
	for _, s := range dayShape {
		if x := (lo+hi)/2 + (hi-lo)/2*s; x >= vernLeastC && x < limit {
			n += min(1, (limit-x)/vernFadeC)
		} else if x > devernAboveC {
			n -= 0.5
		}
	}
	return n / float64(len(dayShape))
}

// afterCold weighs a day's development by its length once the cold was had.
func afterCold(dayH float32) float32 {
	return max(0, min(1, (dayH-longEnoughH)/boltRampH))
}

// boltShare weighs a day's development by its length, and by its warmth for
// crops that bolt in long days alone.
func boltShare(c *crop.Crop, dayH, hi float64) float64 {
	from := c.BoltDayH.Value
	switch {
	case from == 0 && vernalises(c):
		return float64(afterCold(float32(dayH)))
	case from > 0:
		return clamp(boltPerH*math.Pow(max(0, dayH-from), 1.5), 0, boltMost) * (boltCool + (1-boltCool)*clamp01((hi-15)/10))
	}
	return 0
}

func vernalises(c *crop.Crop) bool { return vernDays(c) > 0 }

// vernDays is the cold a crop must have before it bolts, and vernMaxC what
// counts as cold. A cabbage kin that stands the winter and has no figure of
// its own is taken to be biennial as kale is (common practice).
func vernDays(c *crop.Crop) float64 {
	if !c.VernDays.Known() && biennialKin(c) {
		return 63
	}
	return c.VernDays.Value
}

func vernMaxC(c *crop.Crop) float64 {
	if !c.VernMaxC.Known() && biennialKin(c) {
		return 10
	}
	return c.VernMaxC.Value
}

func biennialKin(c *crop.Crop) bool {
	return c.Family == "Brassicaceae" && c.Winter && !c.BoltDayH.Known() && !needsCold(c)
}

// sets reports whether fruit must set before there is anything to pick.
func sets(c *crop.Crop) bool {
	switch c.Class {
	case "fruit", "legume", "grain":
		return true
	}
	return c.Harvest == crop.Fruiting
}

func spoiledByHeat(c *crop.Crop) bool {
	return c.HeatC.Known() && c.HeatC.Value > 0 && (c.Class == "leaf" || c.Class == "head" || c.Class == "herb" && c.BoltDayH.Known() || c.Harvest == crop.Flush)
}

// rootRoom is the share of its yield a plant makes in the depth and the
// volume that its own ground share gives it.
func rootRoom(c *crop.Crop, e *Env) float64 {
	room := 1.0
	if d := c.MinDepthM.Value; d > 0 && e.DepthM > 0 && e.DepthM < d {
		room *= e.DepthM / d
	}
	need, side := c.VolumeL.Value, c.SpacingM.Value
	if need > 0 && e.VolumeL > 0 && e.AreaM2 > 0 && side > 0 {
		have := e.VolumeL / e.AreaM2 * math.Min(side*side, e.AreaM2)
		if have < need {
			room *= math.Pow(have/need, roomPower)
		}
	}
	return room
}

// Grow follows one start through all futures. way must be one of the crop's;
// day must not lie before the futures unless the planting already stands
// (Stand). The result's slices are its own.
func (t *Table) Grow(way crop.Way, day cal.Day) Growth { return t.growth(way, day, false) }

// Stand follows what already stands, started on day, from the past on.
// Deaths before the plan's start are left out: it is there.
func (t *Table) Stand(way crop.Way, day cal.Day) Growth { return t.growth(way, day, true) }

// Grow follows one start through all futures of env. To try many days, make
// a Table once instead.
func Grow(env *Env, st Start) Growth {
	return NewTable(st.Crop, env, st.World).growth(st.Way, st.Day, st.Standing)
}
