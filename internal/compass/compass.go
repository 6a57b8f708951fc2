// Package compass says how far a compass points off true north.
//
// Source: the World Magnetic Model 2025 [WMM2025], degree and order 12, by its
// coefficients; the sum and its derivatives are worked out here from the
// field's potential. Declination is positive to the east. On the level of the
// sea.
//
// Range: the model is given for 2025 to the end of 2029. Other years are taken
// as its nearest end, since the declination drifts by about a tenth of a degree
// a year in most gardens (from memory).
//
// Left out: what iron, rock and wires nearby do, and what a phone's own compass
// is wrong by; both are larger than the model's own error of about half a
// degree (from memory).
package compass

import (
	_ "embed"
	"math"
	"strconv"
	"strings"
)

//go:embed wmm2025.txt
var text string

const (
	degree   = 12
	epoch    = 2025.0
	lastYear = 2030.0

	referenceKM = 6371.2            // of the model [WMM2025]
	equatorKM   = 6378.137          // [WGS84]
	flattening  = 1 / 298.257223563 // [WGS84]

	// LeastHorizontalNT is the level field under which a compass is of no use:
	// the model's own blackout zone [WMM2025].
	LeastHorizontalNT = 2000
	nearPoleDeg       = 89.9 // nearer to a pole all directions run together
)

// term is one line of the model: what multiplies the cosine and the sine of m
// times the longitude, nT, and their change in nT a year.
type term struct {
	n, m               int
	g, h, gYear, hYear float64
}

// terms reads the coefficients.
func terms() []term {
	var out []term
	for _, line := range strings.Split(text, "\n") {
		f := strings.Fields(line)
		if len(f) != 6 || f[0] == "#" {
			continue
		}
		var x [6]float64
		for i, s := range f {
			v, err := strconv.ParseFloat(s, 64)
			if err != nil {
				panic("compass: a coefficient is no number")
			}
			x[i] = v
		}
		out = append(out, term{int(x[0]), int(x[1]), x[2], x[3], x[4], x[5]})
	}
	return out
}

// DeclinationDeg returns how far east of true north a compass points, at a
// latitude and longitude in degrees (north and east positive) and a year with
// its fraction. ok is false where the level field is too weak for a compass.
func DeclinationDeg(latDeg, lonDeg, year float64) (deg float64, ok bool) {
	north, east := field(math.Max(-nearPoleDeg, math.Min(nearPoleDeg, latDeg)), lonDeg, 0, year)
	if math.Hypot(north, east) < LeastHorizontalNT {
		return 0, false
	}
	return math.Atan2(east, north) * 180 / math.Pi, true
}

// field returns the level parts of the field in nT, at a height over the
// ellipsoid in km.
func field(latDeg, lonDeg, heightKM, year float64) (north, east float64) {
	lat, lon := latDeg*math.Pi/180, lonDeg*math.Pi/180
	sin, cos := math.Sincos(lat)
	e2 := flattening * (2 - flattening)
	n := equatorKM / math.Sqrt(1-e2*sin*sin)
	axis, up := (n+heightKM)*cos, (n*(1-e2)+heightKM)*sin
	r := math.Hypot(axis, up)
	round := math.Atan2(up, axis) // latitude as seen from the earth's centre
	p, slope := legendre(round)
	t := math.Max(epoch, math.Min(lastYear, year)) - epoch
	var x, y, z float64
	for _, c := range terms() {
		sinM, cosM := math.Sincos(float64(c.m) * lon)
		g, h := c.g+t*c.gYear, c.h+t*c.hYear
		k := math.Pow(referenceKM/r, float64(c.n+2))
		x -= k * (g*cosM + h*sinM) * slope[c.n][c.m]
		y += k * float64(c.m) * (g*sinM - h*cosM) * p[c.n][c.m] / math.Cos(round)
		z -= k * float64(c.n+1) * (g*cosM + h*sinM) * p[c.n][c.m]
	}
	turn := round - lat // from the centre's level to the ground's
	return x*math.Cos(turn) - z*math.Sin(turn), y
}

// legendre returns the Schmidt half-normalised associated Legendre functions
// of the sine of a latitude, and their slopes by the latitude.
func legendre(lat float64) (p, slope [degree + 1][degree + 1]float64) {
	s, c := math.Sincos(lat)
	p[0][0] = 1
	for n := 1; n <= degree; n++ {
		k := 1.0
		if n > 1 {
			k = math.Sqrt(float64(2*n-1) / float64(2*n))
		}
		p[n][n] = k * c * p[n-1][n-1]
		slope[n][n] = k * (c*slope[n-1][n-1] - s*p[n-1][n-1])
		for m := 0; m < n; m++ {
			var before, slopeBefore float64
			if n > 1 {
				w := math.Sqrt(float64((n-1)*(n-1) - m*m))
				before, slopeBefore = w*p[n-2][m], w*slope[n-2][m]
			}
			a, w := float64(2*n-1), math.Sqrt(float64(n*n-m*m))
			p[n][m] = (a*s*p[n-1][m] - before) / w
			slope[n][m] = (a*(c*p[n-1][m]+s*slope[n-1][m]) - slopeBefore) / w
		}
	}
	return p, slope
}
