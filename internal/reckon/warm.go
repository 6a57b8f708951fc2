package reckon

import (
	"math"

	"bedweek/internal/garden"
	"bedweek/internal/weather"
)

// What a space does to the warmth of its medium and to the air over it.
//
// Method: how much wall a space has for its volume says how far it follows the
// air; heat going in from the nearest face is the wave of weather/soilwave.go.
// The size of the effects is common practice, no single source: containers and
// raised beds warm earlier than open ground, dark ones earlier still, mulched
// ones later. Left out: which wall the sun strikes, evaporation through fabric,
// and heat from a house wall.

// Sizes of the effects, °C in spring. Our own choices, held to the trade's
// "a week or two earlier".
const (
	warmMostC  = 2.0 // a small container over open ground
	warmWall   = 4.0 // 1/m of wall for volume at which two thirds of it are reached
	darkC      = 1.0 // more for dark sides, at full wall
	mulchC     = 1.0 // less under 5 cm of mulch
	mulchFullM = 0.05
	coverOnC   = 1.0 // more under fleece or a lid that is always on
	stepC      = 0.5 // growth cannot tell less apart; equal steps keep classes few
)

// wallRatio is the area of a space's free sides over its volume, 1/m: 0 in open
// ground. A round one has 4 over its diameter.
func wallRatio(sp garden.Space) float64 {
	if sp.Kind == garden.Ground || !sp.Grows() {
		return 0
	}
	r := 0.0
	switch {
	case sp.Round.M > 0:
		r = 4 / sp.Round.M
	case sp.Figure != nil:
		r = sp.Figure.PerimeterM() / sp.AreaM2()
	case sp.Length.M > 0 && sp.Width.M > 0:
		r = 2/sp.Length.M + 2/sp.Width.M
	}
	free := 1.0 // share of the depth that stands out of the ground
	if sp.Depth.M > 0 && sp.RimUp.M > 0 {
		free = math.Min(1, sp.RimUp.M/sp.Depth.M)
	}
	r *= free
	switch sp.Kind {
	case garden.ElevatedBed, garden.Railing, garden.Hanging, garden.Tier: // air under it too
		if sp.Depth.M > 0 {
			r += 0.5 / sp.Depth.M
		}
	}
	return r
}

// mediumWarmC is how much warmer than open ground a space's medium runs in
// spring by day, in steps of half a degree.
func mediumWarmC(sp garden.Space) float64 {
	if !sp.Grows() {
		return 0
	}
	wall := 1 - math.Exp(-wallRatio(sp)/warmWall)
	c := warmMostC * wall
	if sp.Dark {
		c += darkC * wall
	}
	c -= mulchC * mulched(sp)
	for _, cv := range sp.Covers {
		if cv.Always && (cv.Kind == "fleece" || cv.Kind == "cloche") {
			c += coverOnC
			break
		}
	}
	return stepC * math.Round(c/stepC)
}

// mulched is 0 without mulch and 1 from 5 cm on.
func mulched(sp garden.Space) float64 {
	return math.Min(1, math.Max(0, sp.Watering.Mulch.M/mulchFullM))
}

// mixDiffusivity is that of moist mix, m2/s, between the dry mix and moist loam
// of weather/soilwave.go.
const mixDiffusivity = 3e-7

// Swing is how the middle of a space's medium follows the day.
type Swing struct {
	Share float64 // of the air's swing between night and day, 0 to 1
	LagH  float64 // hours after the air
}

// mediumSwing returns how far the day's swing reaches the middle of a space
// from its nearest face: small and shallow spaces follow the air, deep ground
// hardly stirs. Mulch takes half of what comes from above at 5 cm.
func mediumSwing(sp garden.Space) Swing {
	damping := weather.DampingDepthM(mixDiffusivity, 86400)
	above := sp.Depth.M / 2
	if above <= 0 {
		above = 0.15
	}
	top := weather.SwingLeft(above, damping) * (1 - 0.5*mulched(sp))
	way, share := above, top
	if wallRatio(sp) > 0 {
		half := deepest(sp)
		if side := weather.SwingLeft(half, damping); half > 0 && side > top {
			way, share = half, side
		}
	}
	return Swing{Share: share, LagH: weather.SwingLag(way, damping, 24)}
}

// Warmth of a sun-struck wall over the air on a still clear day, °C: black
// nursery pots are found 10 to 20 °C above the air at that wall, pale ones
// about half (from memory of nursery trials; no figure read).
const (
	darkWallC = 14.0
	paleWallC = 6.0
)

// hotSideC is the warmth roots meet at a container's sunny side on a day with a
// highest of tmaxC, in a place with a share of the open sky's light. Open
// ground and cool shade stay at the air's.
func hotSideC(sp garden.Space, tmaxC, light float64) float64 {
	wall := 1 - math.Exp(-wallRatio(sp)/warmWall)
	more := paleWallC
	if sp.Dark {
		more = darkWallC
	}
	return tmaxC + more*wall*math.Min(1, math.Max(0, light))
}

// windAt is the share of the wind at 2 m that blows at a height above the
// ground. [FAO56] eq. 47, turned round; it holds over open short grass, so on a
// roof it is a lower guess and between houses a higher one. Below 0.5 m it is
// taken at 0.5 m.
func windAt(heightM float64) float64 {
	return math.Log(67.8*math.Max(0.5, heightM)-5.42) / 4.87
}

// nightC is how much warmer (+) than the record the air at a space is on still
// nights: what own thermometers taught, else common practice, in half degrees.
func nightC(in *Inputs, sp garden.Space) float64 {
	return stepC * math.Round(coldOf(in, sp).C/stepC)
}
