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
	return c.Warm && c.ChillC.Known() && !p.t.air.env.Indoor &&
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

// fruitYears gives an established perennial's yearly crop: it flowers and
// ripens a fixed number of reference days after midwinter.
func (p *plant) fruitYears(i int) {
	south := p.t.air.env.Site.LatDeg < 0
	var spring, used float32
	p.cause = Fine
	for ; i < len(p.day); i++ {
		if d := p.step(i); d != lives {
			p.cause = p.deathCause(d, i)
			break
		}
		if p.midwinter(i, south) {
			spring, used = 0, 0
		}
		spring += p.day[i].dev
		if p.v < p.co.goal && !p.standing || spring < yearDays || used >= p.co.pick || p.day[i].dev < bearLeast {
			continue
		}
		used += p.day[i].dev
		p.add(i, p.scale*p.day[i].dev/p.co.pick)
		if p.first < 0 {
			p.first = i
		}
		p.last = i
	}
	p.end = min(i, len(p.day)-1)
	if p.first < 0 && p.cause == Fine {
		p.cause = TooSlow
	}
}

const (
	yearDays  = 64.0 // reference days from midwinter to the first berries (assumption: June-bearing plants begin about 1 June in a mean maritime year)
	bearLeast = 0.3  // reference days a day below which no berry ripens
)

func (p *plant) midwinter(i int, south bool) bool {
	d := p.date(i).YearDay()
	if south {
		return d == 182
	}
	return d == 1
}
