package stand

const (
	equinoxH   = 12.0
	seedSpring = 30.0 // reference days from the equinox to a useless stem (assumption; common practice: overwintered leaves are over by early to mid May in a mild maritime place)
)

// stemFrom is the day from which leaves that stood a winter make their seed
// stem: the spring equinox after it. Sown after midwinter they go by long days
// alone, and what the book gives a cold limit goes by its cold.
func (p *plant) stemFrom() int {
	never, c := len(p.day), p.t.Crop
	if !p.bolts || p.co.vern > 0 || !c.Winter || c.Class != "leaf" && c.Class != "herb" {
		return never
	}
	h := p.t.air.dayH
	up := max(p.up, 1)
	turn := up
	for turn < never && h[turn] < h[turn-1] {
		turn++
	}
	if turn == up {
		return never // up in lengthening days
	}
	for turn < never && h[turn] < equinoxH {
		turn++
	}
	return turn
}

// stems adds a day towards the seed stem and reports that it is there.
func (p *plant) stems(i int) bool {
	if i < p.stemAt {
		return false
	}
	p.spring += p.day[i].dev
	return p.spring > seedSpring
}
