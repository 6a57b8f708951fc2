package stand

import "bedweek/internal/crop"

// emergence is the crop's table sampled once, so that the days' rates are
// read without searching it: the share of the way to emergence done in a day
// at a seed-zone temperature, and the share of seeds that come up.
type emergence struct {
	rate, share [germSteps]float32
	usual       float64 // share that comes up in the best soil
}

const (
	germStepC = 0.25
	germSteps = 45*4 + 1 // 0 to 45 °C
	mostUp    = 25       // days; slower printed emergence is laid to old seed
	usualUp   = 10       // days where nothing is known
	// Seed-zone swing about its mean, as a share of the air's range, and for
	// the share that comes up a fixed one (assumption: bare soil at 5 cm).
	soilSwing  = 0.35
	soilSwingC = 3.0
)

func newEmergence(c *crop.Crop) *emergence {
	e := new(emergence)
	for i := range e.rate {
		t := float64(i) * germStepC
		e.rate[i] = float32(c.EmergeRate(t))
		e.share[i] = float32(c.EmergeShare(t))
		e.usual = max(e.usual, c.EmergeShare(t))
	}
	return e
}

func (e *emergence) at(soilC float64) (rate, share float64) {
	x := soilC / germStepC
	i := int(x)
	if x < 0 || i >= germSteps-1 {
		return 0, 0
	}
	f := float32(x - float64(i))
	return float64(e.rate[i] + f*(e.rate[i+1]-e.rate[i])), float64(e.share[i] + f*(e.share[i+1]-e.share[i]))
}

// over is the day's share of the way to emergence in soil that swings by half
// about its mean, so that warm afternoons count.
func (e *emergence) over(soilC, half float64) float64 {
	a, _ := e.at(soilC - half)
	b, _ := e.at(soilC)
	c, _ := e.at(soilC + half)
	return (a + b + c) / 3
}

// bestShare is the share that comes up in such soil: seed waits for its hours.
func (e *emergence) bestShare(soilC, half float64) float64 {
	_, a := e.at(soilC - half)
	_, b := e.at(soilC)
	_, c := e.at(soilC + half)
	return max(a, b, c)
}

// refDays is the time from sowing to emergence at the reference temperature.
func (e *emergence) refDays(refC float64) float64 {
	if r, _ := e.at(refC); r > 0 {
		return min(mostUp, fieldSlow/r)
	}
	return usualUp
}
