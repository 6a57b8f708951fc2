package stand

import (
	"math"

	"bedweek/internal/crop"
)

// grow raises the plant from the day it is up to its first pick, picks it,
// and judges the whole.
func (p *plant) grow(i int) {
	switch p.co.ripe {
	case byFruit:
		p.fruit(i)
	case byForm:
		p.bulb(i)
	case byWinter:
		p.sprout(i)
	case byYear:
		p.bear(i)
	default:
		p.leaf(i)
	}
	p.judge()
}

// deathCause turns a fate into a cause.
func (p *plant) deathCause(d fate, i int) Cause {
	if d == bolted {
		return Bolted
	}
	if p.t.air.tooHotMonth(p.t.Crop, p.f*p.t.air.n+i) {
		return TooHot
	}
	if p.t.air.hard[p.f*p.t.air.n+i] < 0.5 && p.t.frost[0]-p.t.frost[1] > 3 {
		return Unhardened
	}
	return Frosted
}

// overdue is the last index at which a first pick still counts.
func (p *plant) overdue() int {
	if p.standing || p.t.Crop.Perennial {
		return len(p.day)
	}
	from := p.start
	if p.co.way == "sow outdoors" { // slow seed is not held against it
		from = max(from, p.up-p.co.upDays)
	}
	return min(len(p.day), from+min(p.co.limit, len(p.day)))
}

// hot reports whether the last fortnight's days spoil leaves and heads.
func (p *plant) hot(i int) bool {
	return p.t.heat && p.t.air.warm14[p.f*p.t.air.n+i] > p.t.heatC
}

// heats reports days that near the limit which spoils leaves, while they do
// not yet pass it.
func (p *plant) heats(i int) bool {
	w := p.t.air.warm14[p.f*p.t.air.n+i]
	return w > p.t.heatC-heatNearC && w <= p.t.heatC && p.t.air.dayH[i] > equinoxH
}

const heatNearC = 2.0 // growers cut half-grown leaves and heads when days come so near the limit (common practice)

// leaf raises leaves, heads, roots and flowers. What has stopped growing for
// the winter is ready when it is worth pulling.
func (p *plant) leaf(i int) {
	goal, byAge := p.co.goal, p.co.ripe == byTime
	small := p.co.small * goal
	tender := p.t.Crop.Class == "tuber" && p.t.Crop.Warm && !p.t.Crop.Winter
	least := p.co.size.age(smallestShare) * goal       // small tubers are eaten too
	diesBack := p.t.Crop.Perennial && !p.t.Crop.Winter // nothing to cut once growth has stopped
	hot := 0
	for end := p.overdue(); i < end; i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
		ready := (p.u >= goal || p.day[i].pace < slowing && p.u >= small) && p.day[i].pace >= standstill
		if diesBack {
			ready = p.u >= goal && p.day[i].pace >= slowing
		}
		if tender && !ready && p.tooChill(i) { // lifted as it is, or not worth lifting
			if p.u < least {
				p.fail(Chilled, i)
				return
			}
			ready = true
		}
		if p.t.heat && !ready && p.u >= small && p.heats(i) { // cut young, before the heat
			ready = true
		}
		if byAge {
			ready = p.v >= goal && p.u >= 0.5*goal
		}
		if !ready || p.co.shortH > 0 && p.t.air.dayH[i] > p.co.shortH {
			continue
		}
		if p.hot(i) {
			if hot++; hot > hotPatience {
				p.fail(TooHot, i)
				return
			}
			continue
		}
		p.pick(i)
		return
	}
	p.late(i)
}

const hotPatience = 14 // days a ready plant waits for cooler weather

// late ends a plant that was not ready in time: for want of light where that
// is what held it back, else for want of time.
func (p *plant) late(i int) {
	c := TooSlow
	if p.v > 1.15*p.co.goal && p.u < p.co.goal {
		c = TooSmall
	}
	p.fail(c, min(i, len(p.day)-1))
}

// bulb raises bulbs: leaves until the days are long enough (and the winter
// cold was had, where it is needed), then the bulb.
func (p *plant) bulb(i int) {
	co := p.co
	cold := needsCold(p.t.Crop)
	p.scale *= p.rooting()
	var form float32
	uncold := false
	dayH := p.t.air.dayH
	for end := p.overdue(); i < end; i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
		if cold && p.vern < co.vern {
			p.vern += p.day[i].vern
			if uncold = p.vern < co.vern; uncold {
				continue
			}
		}
		was := form
		form += p.day[i].dev * float32(clamp01(float64(dayH[i]-co.formH+formFromH)/formRampH))
		if cut := leafAt * co.form; was < cut && form >= cut {
			p.scale *= leafShare(p.u * p.inv)
		}
		if form >= co.form {
			p.pick(i)
			return
		}
	}
	switch {
	case uncold:
		p.fail(NoCold, min(i, len(p.day)-1))
		return
	case form == 0:
		p.fail(NoBulb, min(i, len(p.day)-1))
		return
	}
	p.late(i)
}

// Bulbs begin half an hour before the printed day length and are in earnest
// half an hour after it (assumption).
const (
	formFromH = 0.5
	formRampH = 1.0
	leavesAt  = 0.34 // of its age has a bulb plant all the leaves it needs
	leafAt    = 0.2  // of the bulb's time is past when its leaves are counted
)

// rooting is the share of its yield that a bulb planted for the winter keeps
// for the roots it made before the cold: growers plant six weeks ahead of it.
func (p *plant) rooting() float32 {
	if !p.t.Crop.AutumnPlant || p.co.way != crop.Plant || p.start < 0 {
		return 1
	}
	a := p.t.air
	var sum float32
	for i := p.start; i < min(a.n, p.start+rootDays); i++ {
		sum += max(0, a.soil[p.f*a.n+i]-rootBaseC)
	}
	return max(rootLeast, min(1, sum/rootSum))
}

// Roots of cloves and sets (assumptions after common practice: until late
// November by a mild coast, October inland).
const (
	rootDays  = 45
	rootBaseC = 4.0
	rootSum   = 95.0 // degree days of soil above rootBaseC for full roots
	rootLeast = 0.25
)

// leafShare is what is left of a bulb's yield when days grew long while it had
// few leaves: all of it from leavesAt of its age on (assumption).
func leafShare(age float32) float32 {
	return float32(math.Pow(clamp01(float64(age)/leavesAt), 1.1))
}

// sprout raises sprouting heads that need a winter: after it, a month's
// reference days make the shoots.
func (p *plant) sprout(i int) {
	var after float32
	for end := p.overdue(); i < end; i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
		if p.vern < p.co.vern {
			p.vern += p.day[i].vern
			continue
		}
		if after += p.day[i].dev; after < sproutShare*p.co.goal {
			continue
		}
		if p.u < p.co.small*p.co.goal {
			p.fail(TooSmall, i)
			return
		}
		p.pick(i)
		return
	}
	p.late(i)
}

// fruit raises a plant to flower and then to its first set fruit.
func (p *plant) fruit(i int) {
	co := p.co
	end := p.overdue()
	for ; i < end && (p.v < co.flower || co.shortH > 0 && p.t.air.dayH[i] > co.shortH); i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
	}
	if co.shortH > 0 && i >= end {
		p.fail(LongDays, min(i, len(p.day)-1))
		return
	}
	if p.t.Crop.Harvest == "once" {
		p.fruitOnce(i, end)
		return
	}
	p.fruitRun(i)
}

// fruitOnce sets one lot of fruit and ripens it.
func (p *plant) fruitOnce(i, end int) {
	var set, tried float32
	for ; i < end && set < setNeed; i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
		set += p.day[i].dev * p.day[i].set
		if tried += p.day[i].dev; tried > setPatience {
			p.fail(NoSet, i)
			return
		}
	}
	for ripe := p.v + p.co.lag - setNeed; i < end; i++ {
		if d := p.step(i); d != lives {
			p.fail(p.deathCause(d, i), i)
			return
		}
		if p.v >= ripe {
			p.pick(i)
			return
		}
	}
	p.late(i)
}

const (
	setNeed     = 3.0  // reference days of full set for a crop
	setPatience = 25.0 // reference days of flowering without enough of it
)

// bear waits for an established perennial's yearly fruit.
func (p *plant) bear(i int) {
	p.fruitYears(i)
}
