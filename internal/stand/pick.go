package stand

import "bedweek/internal/crop"

// pick takes the harvest from day i, the first on which it is ready.
func (p *plant) pick(i int) {
	p.first, p.last = i, i
	switch p.t.Crop.Harvest {
	case crop.CutAgain, crop.Fruiting: // sprouts and the like; fruit has its own way
		p.cut(i)
	case crop.Flush:
		p.flush(i)
	case crop.Bloom:
		p.bloom(i)
	default:
		p.pull(i)
	}
}

// dim is the share of its size a once-picked crop reaches in the light it
// had: what is slow in shade is also smaller.
func (p *plant) dim(i int) float32 {
	best := p.t.Crop.DLIBest.Value
	dli, _ := p.light(i)
	if best <= 0 || dli >= best {
		return 1
	}
	return float32(dli / best)
}

// stay counts the days a ready plant stands fit, up to its natural end. In
// cool weather a day counts little, so that winter crops stand for months.
func (p *plant) stay(i int, hold float32) (end int) {
	q := *p
	q.mark = -1 // pull notes its size
	for ; i < len(p.day); i++ {
		d := q.step(i)
		if d != lives {
			p.cause = p.deathCause(d, i)
			return i
		}
		age := max(holdLeast, p.day[i].dev)
		if p.t.Crop.Winter {
			age *= winterAge
		}
		q.held += age
		if p.hot(i) {
			q.held++
		}
		if q.held > hold {
			p.cause = Spent
			return i
		}
	}
	return len(p.day) - 1
}

const (
	holdLeast = 0.08 // reference days of ageing on a day without growth
	winterAge = 0.35 // crops that stand the winter age at this share (common practice: leeks set in April are still dug in March)
)

// pull spreads a once-picked crop evenly over the days it stands ready, as a
// row is pulled plant by plant; what still grows is larger later.
func (p *plant) pull(i int) {
	end := p.stay(i, p.co.hold)
	days := float32(end - i + 1)
	y := p.scale * p.dim(i) / days
	most := float32(1.1)
	if p.t.Crop.Class == "root" || p.t.Crop.Class == "leaf" {
		most = 1.3
	}
	for ; i <= end; i++ {
		if i == p.mark {
			p.note(i)
		}
		p.add(i, y*min(most, p.co.size.at(p.u*p.inv)))
		p.u += p.day[i].grow
	}
	p.last, p.end = end, end
}

// cut takes leaves as they grow again: what stood at the first pick, then
// each good day's growth, until the picking days are used up, the plant
// bolts or freezes. What stands when it begins to bolt is cut whole.
func (p *plant) cut(i int) {
	life := p.co.pick * cutStretch
	first := p.co.firstCut()
	perDay := (1 - first) * p.scale / p.co.pick
	stock := first * p.scale * min(1, p.co.size.at(p.u*p.inv))
	take := float32(1.0 / 7)
	if p.t.Crop.Winter {
		take = 1.0 / 21
	}
	var used float32
	heat := 0
	p.cause = Spent
	for ; i < len(p.day); i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			if d == bolted {
				p.add(i, boltedShare*stock)
				p.last = i
			}
			break
		}
		if p.tooChill(i) {
			p.cause = Chilled
			break
		}
		g := p.day[i].grow
		used += g
		if used < life || p.t.Crop.Perennial {
			stock += g * perDay
		} else if p.t.Crop.Winter {
			stock += g * perDay * oldShare
		}
		if p.hot(i) {
			if heat == 0 && !p.t.Crop.Perennial { // what stands is cut whole, as when it bolts
				p.add(i, boltedShare*stock)
				p.last = i
				stock *= 1 - boltedShare
			}
			stock *= 0.95
			if heat++; heat > hotEnd {
				p.cause = TooHot
				break
			}
			continue
		}
		kg := stock * take
		stock -= kg
		p.add(i, kg)
		if kg > 0.004*p.scale*take {
			p.last = i
		}
		if used >= life && stock < 0.01*p.scale && !p.t.Crop.Perennial && !p.t.Crop.Winter {
			break
		}
	}
	p.end = min(i, len(p.day)-1)
}

const (
	cutRegrow   = 0.8  // growth of a cut plant in its picking time, by the time it took to grow: some two fifths of full cover's (assumption)
	firstDays   = 10.0 // good days' picking stand at the first pick (assumption)
	firstMost   = 0.4  // but no more than this of the whole yield
	oldShare    = 0.15 // growth of an old winter leaf crop past its picking days
	boltedShare = 0.75 // of what stands is still leaf when it begins to bolt (assumption)
	cutStretch  = 1.3  // cut-again crops outlast their printed picking time by up to this (common practice)
	hotEnd      = 28   // days of spoiling heat that end a leaf crop
	mainShare   = 0.55 // of a flush crop's yield is its main head (common practice)
	mainDays    = 14
)

// flush takes the main head and then the side shoots.
func (p *plant) flush(i int) {
	main := p.scale * mainShare * p.dim(i) * min(1, p.co.size.at(p.u*p.inv)) / mainDays
	side := p.scale * (1 - mainShare) / p.co.pick
	var used float32
	p.cause = Spent
	for n := 0; i < len(p.day) && (used < p.co.pick || n < mainDays); i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			break
		}
		if n < mainDays {
			p.add(i, main)
		} else if !p.hot(i) {
			p.add(i, side*p.day[i].grow)
			used += p.day[i].grow
		}
		p.last = i
		n++
		if n > 200 {
			break
		}
	}
	p.end = min(i, len(p.day)-1)
}

// bloom keeps flowering for its picking days.
func (p *plant) bloom(i int) {
	var used float32
	p.cause = Spent
	for ; i < len(p.day) && used < p.co.pick; i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			break
		}
		used += p.day[i].dev
		p.add(i, p.scale*p.day[i].dev/p.co.pick)
		p.last = i
	}
	p.end = min(i, len(p.day)-1)
}

// judge says whether the start was a success.
func (p *plant) judge() {
	if p.first < 0 {
		if p.cause == Fine {
			p.cause = TooSlow
		}
		return
	}
	if p.standing {
		p.ok = p.last >= p.plan
		if p.coming >= 0 {
			p.first = p.coming
		}
		return
	}
	c, e := p.t.Crop, p.t.air.env
	dli, sunH := p.light(p.first)
	switch {
	case p.first >= p.overdue() && !c.Perennial:
		p.refuse(TooSlow)
	case c.DLIMin.Known() && dli < c.DLIMin.Value*lightSlack,
		!e.Indoor && c.SunMinH.Known() && sunH < c.SunMinH.Value-sunSlackH:
		p.refuse(TooSmall)
	case p.total < p.least()*min(1, float32(p.t.world(p.f).Yield)):
		p.refuse(p.poor())
	default:
		p.ok = true
	}
}

const (
	lightSlack = 0.85
	sunSlackH  = 1.0
)

// least is the yield that counts as success for a start on its day.
func (p *plant) least() float32 {
	d := p.t.air.dayH
	if p.cause == TooHot {
		return p.co.heatKg
	}
	if i := p.start; i > 0 && i < len(d) && d[i] < d[i-1] {
		return p.co.winterKg
	}
	return p.co.floorKg
}

func (p *plant) refuse(c Cause) { p.ok, p.cause = false, c }

// poor is why a crop that was picked gave too little: what ended it, or else
// its size.
func (p *plant) poor() Cause {
	switch p.cause {
	case Chilled:
		return TooSlow
	case Fine, Spent:
		if p.co.ripe == byFruit {
			return NoSet
		}
		return TooSmall
	}
	return p.cause
}
