package water

import "math"

// Stages are the four stages of a crop's single coefficient. [FAO56] ch. 6.
type Stages struct {
	Days          [4]float64 // initial, development, middle, late
	Ini, Mid, End float64
}

// Kc returns the coefficient on a day counted from 1, flat, rising, flat and
// falling in straight lines. [FAO56] eq. 66. After the last day it stays at
// End.
func (s Stages) Kc(day float64) float64 {
	a := s.Days[0]
	b := a + s.Days[1]
	c := b + s.Days[2]
	switch {
	case day <= a:
		return s.Ini
	case day < b:
		return s.Ini + (day-a)/s.Days[1]*(s.Mid-s.Ini)
	case day <= c:
		return s.Mid
	case day < c+s.Days[3]:
		return s.Mid + (day-c)/s.Days[3]*(s.End-s.Mid)
	}
	return s.End
}

// AdjustKc carries a middle or end coefficient of 0.45 or more from the
// paper's climate (2 m/s, 45 % least humidity) to another. [FAO56] eq. 62, 65,
// 70. Lesser coefficients are left alone, as the paper says.
func AdjustKc(kc, windMS, rhMinPct, heightM float64) float64 {
	if kc < 0.45 {
		return kc
	}
	return kc + climateTerm(windMS, rhMinPct)*heightTerm(heightM)
}

// climateTerm is the weather half of eq. 62 and 72; wind and humidity are held
// to the range for which the paper gives it.
func climateTerm(windMS, rhMinPct float64) float64 {
	u := max(1, min(6, windMS))
	rh := max(20, min(80, rhMinPct))
	return 0.04*(u-2) - 0.004*(rh-45)
}

func heightTerm(heightM float64) float64 { return math.Pow(max(0, heightM)/3, 0.3) }

// KcMax is the most a surface can give up, wet and in leaf. [FAO56] eq. 72.
func KcMax(windMS, rhMinPct, heightM, kcb float64) float64 {
	return max(1.2+climateTerm(windMS, rhMinPct)*heightTerm(heightM), kcb+0.05)
}

// GroundCover returns the share of the ground under leaves that goes with a
// basal coefficient. [FAO56] eq. 76. It lies in 0 to 0.99.
func GroundCover(kcb, kcMin, kcMax, heightM float64) float64 {
	if kcMax <= kcMin || kcb <= kcMin {
		return 0
	}
	return min(0.99, math.Pow((kcb-kcMin)/(kcMax-kcMin), 1+0.5*heightM))
}
