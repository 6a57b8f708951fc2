package stand

import "bedweek/internal/crop"

// fruitRun sets fruit day by day from the first flower on and picks each
// day's set once it has had its days. Set follows leaf cover, light and the
// limits of heat and cold; picking ends with frost or when nothing is left.
func (p *plant) fruitRun(i int) {
	n := len(p.day)
	flow := p.flow(n)
	perDay := p.scale / p.co.pick
	next, lastSet := i, i // oldest set not yet picked; newest set
	at := p.v             // development at next's set
	var used, gone, flowering float32
	due := p.overdue()
	p.cause = Spent
	for ; i < n; i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			break
		}
		if p.tooChill(i) {
			if p.first >= 0 {
				p.cause = Chilled
			}
			break
		}
		r := &p.day[i]
		flow[i] = 0
		if used < p.co.pick {
			share := r.grow * r.set * min(1, p.co.size.at(p.u*p.inv))
			flow[i] = perDay * share
			used += spend(p.t.Crop, r.dev, share)
			if p.shy && p.t.air.warm14[p.f*n+i] > p.t.shyC {
				used += r.dev * (1 - r.set) * p.t.lost
			}
			lastSet = i
		}
		for next < i && p.v-at >= p.co.lag {
			kg := flow[next]
			at += p.day[next].dev
			next++
			p.add(i, kg)
			if gone += kg; p.first < 0 && gone >= firstFruit*p.scale {
				p.first = i
			}
			if kg > 0.001*p.scale {
				p.last = i
			}
		}
		flowering += r.dev
		if p.first < 0 && (i >= due || flowering > p.co.lag+2*setPatience && !p.t.Crop.AutumnPlant) {
			break
		}
		if used >= p.co.pick && next > lastSet || p.first >= 0 && i-p.last > 21 {
			break
		}
	}
	p.end = min(i, n-1)
	if p.first >= 0 || p.cause != Spent {
		return
	}
	if flowering > p.co.lag+setPatience {
		p.fail(NoSet, p.end)
		return
	}
	p.late(i)
}

// spend is how much of its picking days a plant uses up in a day: part goes
// with its age, part with the fruit it carries, so that flowers that drop cost
// little. What stands the winter in flower spends by its fruit alone.
func spend(c *crop.Crop, dev, fruit float32) float32 {
	if c.AutumnPlant {
		return fruit
	}
	return ageSpend*dev + (1-ageSpend)*fruit
}

const ageSpend = 0.4 // (assumption)

// tooChill says that nights have grown so cold that a warm crop stops for the
// year: their mean lies endChillC under the night that checks it.
func (p *plant) tooChill(i int) bool {
	c := p.t.Crop
	return c.Warm && !c.Winter && c.ChillC.Known() && !p.t.air.env.Indoor &&
		float64(p.t.air.night10[p.f*p.t.air.n+i])+p.t.air.env.Cover < c.ChillC.Value-endChillC
}

const endChillC = 3.0 // (common practice: tomatoes are cleared when nights stay about 5 °C)

const firstFruit = 0.02 // of the whole yield makes the first pick

// flow is room for a day's set, kept between futures.
func (p *plant) flow(n int) []float32 {
	if p.sum != nil && len(p.sum.flow) >= n {
		return p.sum.flow
	}
	return make([]float32, n)
}

// fruitYears gives a perennial's yearly crop: it flowers and ripens a fixed
// number of reference days after midwinter, from the year the book tells on,
// if it had its winter's rest. Its first crop is half a crop.
func (p *plant) fruitYears(i int) {
	co, c := p.co, p.t.Crop
	south := p.t.air.env.Site.LatDeg < 0
	var spring, used, rest float32
	bare := false // a winter too mild: hardly any crop this year
	d := p.winterDay(i, south)
	if d < 0 {
		d += 365
	}
	old := p.old(i - d) // by the last midwinter
	p.cause = Fine
	for ; i < len(p.day); i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			break
		}
		switch d := p.winterDay(i, south); d {
		case 0:
			spring, used, old = 0, 0, p.old(i)
		case -restHalf:
			rest = 0
		case restHalf:
			bare = co.restH > 0 && rest < restLeast*co.restH && i-p.start > 2*restHalf && i > 2*restHalf
		}
		rest += p.restHours(i)
		spring += p.day[i].dev
		if co.first == 0 {
			old = p.standing || p.v >= co.goal
		}
		if !old || bare || spring < co.bear || used >= co.pick || p.day[i].dev < bearLeast {
			continue
		}
		share := p.day[i].dev / co.pick
		used += p.day[i].dev
		if c.FirstYears.Value > 0 && i-p.start < co.first+365 && co.first > 0 {
			share *= firstCrop
		}
		p.add(i, p.scale*share)
		if p.first < 0 {
			p.first = i
		}
		p.last = i
	}
	p.end = min(i, len(p.day)-1)
	if p.first >= 0 || p.cause != Fine {
		return
	}
	switch {
	case bare:
		p.cause = NoCold
	case co.first > 0 && len(p.day)-p.start < co.first+365:
		p.cause = Young
	default:
		p.cause = TooSlow
	}
}

// old reports whether a perennial will be old enough to bear by midsummer, seen
// from midwinter, day i.
func (p *plant) old(i int) bool { return i+halfYear-p.start >= p.co.first }

// restHours is the part of a day at or below restC, in hours, along a sine day.
func (p *plant) restHours(i int) float32 {
	if p.co.restH == 0 {
		return 0
	}
	o := p.f*p.t.air.n + i
	lo, hi := p.t.air.tmin[o], p.t.air.tmax[o]
	if lo >= restC {
		return 0
	}
	n := 0
	for _, s := range dayShape {
		if (lo+hi)/2+(hi-lo)/2*float32(s) <= restC {
			n++
		}
	}
	return 24 * float32(n) / float32(len(dayShape))
}

const (
	yearDays  = 50.0 // reference days from midwinter to the first berries where the book has no figure (assumption)
	bearLeast = 0.3  // reference days a day below which no berry ripens
	firstCrop = 0.5  // of a full crop in the first year of bearing (common practice)
	halfYear  = 180
	restC     = 7.2 // °C, chill hours are counted at or below it
	restHalf  = 75  // days either side of midwinter in which rest is counted
	restLeast = 0.6 // of the printed hours below which a year's crop is lost (assumption)
)

// winterDay is the days since midwinter, negative before it, within half a
// year: 1 January in the north, 1 July in the south.
func (p *plant) winterDay(i int, south bool) int {
	d := p.date(i).YearDay() - 1
	if south {
		d -= 181
	}
	switch {
	case d > 182:
		d -= 365
	case d < -182:
		d += 365
	}
	return d
}
