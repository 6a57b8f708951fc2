// Package sun says where the sun stands and when it rises and sets.
//
// Method: the low-accuracy sun of [Meeus] chapter 25 (mean longitude, equation
// of the centre, aberration), with nutation after chapter 22, sidereal time
// after chapter 12, and the five planetary and lunar terms of the same
// author's earlier book, which take the error from 0.01° to a few thousandths.
// Delta-T by the polynomials of [EspenakMeeus]. Refraction by Sæmundsson's
// formula, [Meeus] 16.4, scaled for pressure and temperature. Parallax by the
// sine rule on a round Earth.
//
// Conventions: latitude north +, longitude east +, azimuth clockwise from
// north, elevation up from the horizon. A true elevation is the topocentric
// centre of the disc with no air. UT1 is taken as UTC (up to 0.9 s, 0.004°).
//
// Range and accuracy: see docs/sun.md. Any latitude, the poles included;
// 1900 to 2100.
//
// Left out: the flattening of the Earth in the parallax (0.00001°), polar
// motion, the deflection of the vertical, and refraction below the horizon.
package sun

import (
	"math"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
)

const rad = math.Pi / 180

// Place is where the sun is seen from. Height plays no part in the position;
// it is carried for the sky's clearness.
type Place struct {
	LatDeg, LonDeg float64 // north +, east +
	ElevM          float64 // above the sea
}

// Air bends the light. The zero Air is no air.
type Air struct {
	PressureHPa float64
	TempC       float64
}

// StandardAir is the air almanacs assume.
func StandardAir() Air { return Air{PressureHPa: 1010, TempC: 10} }

// Position is where the sun stands.
type Position struct {
	AzimuthDeg      float64 // 0 to 360
	TrueElevDeg     float64 // no air
	ApparentElevDeg float64 // with refraction; equal to TrueElevDeg without air or below the horizon
	DeclinationDeg  float64 // geocentric, apparent
	HourAngleDeg    float64 // west +, -180 to 180
	DistanceAU      float64
}

// At returns the sun's position at an instant, with Delta-T by [DeltaT].
func At(t time.Time, p Place, air Air) Position {
	return AtDeltaT(t, p, air, DeltaT(t))
}

// AtDeltaT is [At] with a known difference of Terrestrial Time from UTC, in
// seconds.
func AtDeltaT(t time.Time, p Place, air Air, deltaT float64) Position {
	d := float64(t.Unix()-j2000Unix)/86400 + float64(t.Nanosecond())/86400e9
	s := seen(d, p, deltaT)
	e := s.dir.ElevationDeg()
	return Position{
		AzimuthDeg:      s.dir.BearingDeg(),
		TrueElevDeg:     e,
		ApparentElevDeg: e + RefractionDeg(e, air),
		DeclinationDeg:  s.dec,
		HourAngleDeg:    s.hour,
		DistanceAU:      s.distAU,
	}
}

// Direction returns the unit direction to the sun (x east, y north, z up, no
// air) on a day at an hour of UTC, which may lie outside 0 to 24.
func Direction(day cal.Day, hourUTC float64, p Place) geom.Vec {
	d := daysOf(day, hourUTC)
	return seen(d, p, deltaTOf(d)).dir
}

// MeanNoon returns the hour of UTC of mean solar noon at a longitude: 12 h
// less an hour for each 15° east. Not wrapped, so that the solar day of a date
// is MeanNoon-12 to MeanNoon+12.
func MeanNoon(lonDeg float64) float64 { return 12 - lonDeg/15 }

// ToSun returns the unit direction to a sun of given declination and hour
// angle (west +), in degrees, from a latitude.
func ToSun(latDeg, declinationDeg, hourAngleDeg float64) geom.Vec {
	sf, cf := math.Sincos(latDeg * rad)
	sd, cd := math.Sincos(declinationDeg * rad)
	sh, ch := math.Sincos(hourAngleDeg * rad)
	return geom.Vec{X: -cd * sh, Y: sd*cf - cd*ch*sf, Z: sd*sf + cd*ch*cf}
}

// j2000Unix is 2000-01-01 12:00 UTC in Unix seconds.
const j2000Unix = 946728000

// daysOf returns days from J2000 (UTC) of an hour of a day.
func daysOf(day cal.Day, hourUTC float64) float64 {
	return float64(day) - float64(j2000Unix)/86400 + hourUTC/24
}

// sight is the sun as seen from a place at a moment.
type sight struct {
	dir       geom.Vec
	dec, hour float64 // degrees
	distAU    float64
}

// seen computes the sight d days after J2000 (UTC).
func seen(d float64, p Place, deltaT float64) sight {
	g := geocentric((d + deltaT/86400) / 36525)
	hour := math.Remainder(siderealDeg(d)+g.equinoxDeg+p.LonDeg-g.ra, 360)
	dir := lower(ToSun(p.LatDeg, g.dec, hour), g.distAU)
	return sight{dir: dir, dec: g.dec, hour: hour, distAU: g.distAU}
}

// lower moves a direction from the Earth's centre to its surface: the sun
// sinks by the horizontal parallax times the cosine of its elevation.
func lower(v geom.Vec, distAU float64) geom.Vec {
	const parallax = 8.794 / 3600 * rad // of the sun at 1 AU
	v.Z -= parallax / distAU
	return v.Unit()
}

// earthCentred is the apparent sun from the Earth's centre, degrees.
type earthCentred struct {
	ra, dec    float64
	distAU     float64
	equinoxDeg float64 // equation of the equinoxes
}

// geocentric computes the apparent sun T Julian centuries of Terrestrial Time
// after J2000. Symbols as in [Meeus] chapter 25.
func geocentric(T float64) earthCentred {
	L0 := 280.46646 + T*(36000.76983+T*0.0003032)
	M := (357.52911 + T*(35999.05029-T*0.0001537)) * rad
	e := 0.016708634 - T*(0.000042037+T*0.0000001267)
	C := (1.914602-T*(0.004817+T*0.000014))*math.Sin(M) +
		(0.019993-T*0.000101)*math.Sin(2*M) + 0.000289*math.Sin(3*M)
	trueLon := L0 + C + perturbedDeg(T)
	v := M + C*rad
	R := 1.000001018 * (1 - e*e) / (1 + e*math.Cos(v))

	Ω := (125.04452 - T*1934.136261) * rad
	dψ, dε := nutation(T, Ω)
	λ := (trueLon + dψ - 20.4898/3600/R) * rad
	ε0 := 23.4392911 - T*(46.8150+T*(0.00059-T*0.001813))/3600
	ε := (ε0 + dε) * rad

	sλ, cλ := math.Sincos(λ)
	sε, cε := math.Sincos(ε)
	return earthCentred{
		ra:         math.Atan2(cε*sλ, cλ) / rad,
		dec:        math.Asin(math.Max(-1, math.Min(1, sε*sλ))) / rad,
		distAU:     R,
		equinoxDeg: dψ * cε,
	}
}

// nutation returns the nutation in longitude and obliquity, degrees, by the
// four largest terms of [Meeus] chapter 22 (0.5″ and 0.1″).
func nutation(T, Ω float64) (dψ, dε float64) {
	L := (280.4665 + 36000.7698*T) * rad   // sun
	Lm := (218.3165 + 481267.8813*T) * rad // moon
	dψ = -17.20*math.Sin(Ω) - 1.32*math.Sin(2*L) - 0.23*math.Sin(2*Lm) + 0.21*math.Sin(2*Ω)
	dε = 9.20*math.Cos(Ω) + 0.57*math.Cos(2*L) + 0.10*math.Cos(2*Lm) - 0.09*math.Cos(2*Ω)
	return dψ / 3600, dε / 3600
}

// perturbedDeg returns what Venus, Jupiter and the Moon add to the sun's
// longitude: Meeus, Astronomical Formulae for Calculators, chapter 18, whose
// time runs from 1900 January 0.5, exactly one Julian century before J2000.
func perturbedDeg(T float64) float64 {
	t := T + 1
	A := 153.23 + 22518.7541*t
	B := 216.57 + 45037.5082*t
	C := 312.69 + 32964.3577*t
	D := 350.74 + 445267.1142*t - 0.00144*t*t
	E := 231.19 + 20.20*t
	return 0.00134*math.Cos(A*rad) + 0.00154*math.Cos(B*rad) +
		0.00200*math.Cos(C*rad) + 0.00179*math.Sin(D*rad) + 0.00178*math.Sin(E*rad)
}

// siderealDeg returns the mean sidereal time at Greenwich d days (UT) after
// J2000, degrees. [Meeus] 12.4.
func siderealDeg(d float64) float64 {
	T := d / 36525
	return math.Mod(280.46061837+360.98564736629*d+T*T*(0.000387933-T/38710000), 360)
}

// RefractionDeg returns how far air lifts the sun at a true elevation:
// Sæmundsson's formula. It is 0 once the whole disc is below the horizon with
// the usual refraction (as in [SPA]), and never negative.
func RefractionDeg(trueElevDeg float64, air Air) float64 {
	const discGone = -(0.26667 + 0.5667)
	if air.PressureHPa <= 0 || trueElevDeg < discGone {
		return 0
	}
	arcmin := 1.02 / math.Tan((trueElevDeg+10.3/(trueElevDeg+5.11))*rad)
	return math.Max(0, arcmin/60*air.PressureHPa/1010*283/(273+air.TempC))
}

// ApparentZenithDeg is the angle from the zenith with refraction.
func (p Position) ApparentZenithDeg() float64 { return 90 - p.ApparentElevDeg }

// DistanceAU returns the sun's distance at noon UTC of a day.
func DistanceAU(day cal.Day) float64 {
	return geocentric(daysOf(day, 12) / 36525).distAU
}
