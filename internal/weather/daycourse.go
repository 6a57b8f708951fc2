package weather

import "math"

// Three published ways to make a day's hours from its two extremes. They
// disagree by degrees: near sunset most of all. Hours are local solar time.

// CampbellNormanC returns the temperature at an hour by the fixed curve of two
// harmonics, [CN98] G. S. Campbell and J. M. Norman, An Introduction to
// Environmental Biophysics (1998), eq. 2.2-2.3. Between midnight and 5 o'clock
// the day before's maximum belongs in tmaxC, after 14 o'clock the next day's
// minimum in tminC. The curve does not quite touch the extremes.
func CampbellNormanC(tmaxC, tminC, hour float64) float64 {
	w := math.Pi / 12
	up := 0.44 - 0.46*math.Sin(w*hour+0.9) + 0.11*math.Sin(2*w*hour+0.9)
	return tmaxC*up + tminC*(1-up)
}

// SineDecay holds the three figures of the sine-by-day, decay-by-night curve.
type SineDecay struct {
	LagH   float64 // how much later than the day's half the top would come
	StartH float64 // hours after sunrise at which the minimum falls
	Rate   float64 // how steeply the night cools
}

// C returns the temperature at an hour of 0 to 24 by the curve of W. J. Parton
// and J. A. Logan, A model for diurnal variation in soil and air temperature,
// Agricultural Meteorology 23 (1981), in the form computed by the agriclimr
// package: a quarter wave by day, then an exponential fall towards the next
// minimum. Before the morning's minimum the night before is taken to have
// started as this day ends.
func (s SineDecay) C(tmaxC, tminC, nextMinC, latDeg float64, doy int, hour float64) float64 {
	day := DaylightH(latDeg, doy)
	rise, set := 12-day/2, 12+day/2
	byDay := func(h float64) float64 {
		return tminC + (tmaxC-tminC)*math.Sin(math.Pi*(h-rise-s.StartH)/(2*(day+s.LagH-s.StartH)))
	}
	fall := func(sinceSet, to float64) float64 {
		return to + (byDay(set)-to)*math.Exp(-s.Rate*sinceSet/(24-day+s.StartH))
	}
	switch {
	case hour < rise+s.StartH:
		return fall(hour+24-set, tminC)
	case hour > set:
		return fall(hour-set, nextMinC)
	}
	return byDay(hour)
}

// Extremes are a day's lowest and highest temperature.
type Extremes struct{ MinC, MaxC float64 }

// LinvillC returns the temperature at an hour after [LINVILL90] D. E. Linvill,
// Calculating chilling hours and chill units from daily maximum and minimum
// temperature observations, HortScience 25 (1990): a sine by day whose top
// comes two hours after noon, and a logarithmic fall by night to the next
// minimum at sunrise. before and after are the neighbouring days; their
// daylight is taken as this day's. Where the sun does not rise or set the day
// is taken as its mean.
func LinvillC(before, today, after Extremes, latDeg float64, doy int, hour float64) float64 {
	rise, set := SunUpSolarH(latDeg, doy)
	day := set - rise
	if day <= 0 || day >= 24 {
		return (today.MinC + today.MaxC) / 2
	}
	byDay := func(e Extremes, h float64) float64 {
		return e.MinC + (e.MaxC-e.MinC)*math.Sin(math.Pi*(h-rise)/(day+4))
	}
	night := func(from Extremes, to, sinceSet float64) float64 {
		at := byDay(from, set)
		return at - (at-to)/math.Log(24-day+1)*math.Log(sinceSet+1)
	}
	switch {
	case hour < rise:
		return night(before, today.MinC, hour+24-set)
	case hour > set:
		return night(today, after.MinC, hour-set)
	}
	return byDay(today, hour)
}

// SunUpSolarH returns when the sun's upper edge rises and sets, in solar hours:
// both 12 when it stays down, 0 and 24 when it stays up. The declination is
// the series of J. W. Spencer, Search 2 (1971); refraction and the sun's size
// lift it by 0.8333°.
func SunUpSolarH(latDeg float64, doy int) (rise, set float64) {
	g := 2 * math.Pi / 365 * float64(doy-1)
	dec := 0.006918 - 0.399912*math.Cos(g) + 0.070257*math.Sin(g) - 0.006758*math.Cos(2*g) +
		0.000907*math.Sin(2*g) - 0.002697*math.Cos(3*g) + 0.00148*math.Sin(3*g)
	phi := latDeg * math.Pi / 180
	level := math.Cos(phi) * math.Cos(dec)
	up := math.Sin(-0.8333*math.Pi/180) - math.Sin(phi)*math.Sin(dec)
	half := 12 / math.Pi * math.Acos(max(-1, min(1, up/max(level, 1e-12))))
	return 12 - half, 12 + half
}
