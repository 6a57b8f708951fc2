package web

import (
	"fmt"
	"math"

	"bedweek/internal/compass"
	"bedweek/internal/garden"
)

// offerCompass lets a phone be pointed at the pole side, with the declination
// of the place. By a magnetic pole it is not offered: the noon shadow stays.
func (s *site) offerCompass(p *FormPage, at garden.Place) {
	now := s.o.Now()
	east, ok := compass.DeclinationDeg(at.LatDeg, at.LonDeg, float64(now.Year())+float64(now.YearDay()-1)/365)
	if !ok {
		return
	}
	if p.Point = "0"; at.LatDeg < 0 {
		p.Point = "180"
	}
	p.PointOff = fmt.Sprintf("%.1f", east)
	side, off := "east", math.Round(math.Abs(east))
	if east < 0 {
		side = "west"
	}
	if off == 0 {
		p.PointSay = "It points to magnetic north, which here is true north (World Magnetic Model 2025)."
		return
	}
	p.PointSay = fmt.Sprintf("It points to magnetic north, here %g degrees %s of true north (World Magnetic Model 2025); that is counted in.", off, side)
}
