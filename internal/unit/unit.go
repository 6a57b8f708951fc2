// Package unit holds the quantities that arrive in more than one unit, and
// keeps what a person typed beside the canonical value.
package unit

import "math"

// Celsius is a temperature in degrees Celsius.
type Celsius float64

// Angle is a plane angle, kept in radians.
type Angle float64

// Degree is one degree of arc.
const Degree Angle = math.Pi / 180

// Deg reports a in degrees.
func (a Angle) Deg() float64 { return float64(a / Degree) }

// Length is a length as typed and in metres. A range ("18-24 in") keeps both
// ends; a single figure has LowM == M == HighM. The zero Length is "not said".
type Length struct {
	M           float64
	LowM, HighM float64
	Typed       string
}

// Known reports whether a length was given.
func (l Length) Known() bool { return l.Typed != "" || l.M != 0 }

// Volume is a volume as typed and in litres; see Length for ranges.
type Volume struct {
	L           float64
	LowL, HighL float64
	Typed       string
}

// Known reports whether a volume was given.
func (v Volume) Known() bool { return v.Typed != "" || v.L != 0 }

// Mass is a mass as typed and in kilograms.
type Mass struct {
	Kg    float64
	Typed string
}
