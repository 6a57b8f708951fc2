package shade

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

// MolPerMJ turns global radiation into photosynthetic light: 2.05 mol/MJ, the
// middle of 2.0 to 2.1 (Thimijan and Heins 1983, from memory; about 0.45 of
// the energy at 4.57 mol/MJ). Overcast skies run a few per cent higher.
const MolPerMJ = 2.05

// solarMJ is the solar constant in MJ per m² and hour: 0.0820 a minute,
// [FAO56] equation 21.
const solarMJ = 0.0820 * 60

// sunDay is the sun's course over one day at a place, at the middles of its
// steps, and the radiation above the air.
type sunDay struct {
	dirs   []geom.Vec // sun above the level horizon only
	hours  []float64  // true hour angle of each, degrees
	spans  []float64  // length of each step, hours
	topMJ  float64    // MJ/m2/day on the level above the air
	setDeg float64    // sunset hour angle
}

func newSunDay(at Place, day cal.Day) sunDay {
	var s sunDay
	const dt = 24.0 / StepsADay // hours
	sum := 0.0
	for i := range StepsADay {
		d := sunAt(at, day, (float64(i)+0.5)*dt)
		if d.Z <= 0 {
			continue
		}
		s.dirs = append(s.dirs, d)
		s.hours = append(s.hours, hourAngle(at.LatDeg, d))
		s.spans = append(s.spans, dt)
		sum += d.Z * dt
	}
	s.setDeg = float64(len(s.dirs)) * dt / 2 * 15
	r := sun.DistanceAU(day)
	s.topMJ = solarMJ * sum / (r * r)
	return s
}

// hourAngle returns the sun's hour angle in degrees from its direction.
func hourAngle(latDeg float64, d geom.Vec) float64 {
	sf, cf := math.Sincos(latDeg * math.Pi / 180)
	return math.Atan2(-d.X, d.Z*cf-d.Y*sf) * 180 / math.Pi
}

// ClearShare is the share of the radiation above the air that reaches the
// ground on a clear day. [FAO56] equation 37.
func ClearShare(elevM float64) float64 { return 0.75 + 2e-5*elevM }

// DiffuseMonthly returns the diffuse share of the monthly mean global
// radiation, by clearness KT and sunset hour angle. [Erbs1982]; given for KT
// 0.3 to 0.8 and held at the ends beyond.
func DiffuseMonthly(clearness, sunsetDeg float64) float64 {
	k := max(0.3, min(clearness, 0.8))
	if sunsetDeg <= 81.4 {
		return 1.391 + k*(-3.560+k*(4.189-2.137*k))
	}
	return 1.311 + k*(-3.022+k*(3.427-1.821*k))
}

// DiffuseDaily returns the diffuse share of one day's global radiation.
// [Erbs1982].
func DiffuseDaily(clearness, sunsetDeg float64) float64 {
	k := max(0, clearness)
	switch {
	case sunsetDeg <= 81.4 && k < 0.715:
		return 1 + k*(-0.2727+k*(2.4495+k*(-11.9514+9.3879*k)))
	case sunsetDeg <= 81.4:
		return 0.143
	case k < 0.722:
		return 1 + k*(0.2832+k*(-2.5557+0.8448*k))
	}
	return 0.175
}

// beams shares a day's beam energy out over the steps: the global course of
// [CollaresRabl1979] less the diffuse course of [LiuJordan1960], never below
// nothing, scaled to the day's beam. With the sun never up there are no steps.
func (s *sunDay) beams(globalMJ, diffuseShare float64) []float64 {
	u := (s.setDeg - 60) * math.Pi / 180
	a, b := 0.409+0.5016*math.Sin(u), 0.6609-0.4767*math.Sin(u)
	out := make([]float64, len(s.dirs))
	global, diffuse := 0.0, 0.0
	for i, d := range s.dirs {
		out[i] = (a + b*math.Cos(s.hours[i]*math.Pi/180)) * d.Z * s.spans[i]
		global += out[i]
		diffuse += d.Z * s.spans[i]
	}
	sum := 0.0
	for i, d := range s.dirs {
		out[i] = max(0, out[i]/global-diffuseShare*d.Z*s.spans[i]/diffuse)
		sum += out[i]
	}
	for i := range out {
		if sum > 0 {
			out[i] *= globalMJ * (1 - diffuseShare) / sum
		}
	}
	return out
}
