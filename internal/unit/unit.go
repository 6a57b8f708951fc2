// Package unit holds the quantities that arrive in more than one unit, and
// keeps what a person typed beside the canonical value.
//
// Method: a typed number is held as an exact fraction, multiplied by the exact
// definition of its unit, and rounded once, to the nearest float64. Units are
// defined exactly: 1 in = 25.4 mm and 1 lb = 0.45359237 kg (the 1959
// international yard and pound), 1 US gallon = 231 cubic inches, 1 imperial
// gallon = 4.54609 L (UK Units of Measurement Regulations 1995).
//
// Conventions: metres, litres, kilograms, degrees Celsius. A bare "gal" is a
// US gallon and is printed back as one. A value without a unit is a Fault with
// a remedy, never a guess; so is "1,200 mm", which two countries read apart.
//
// Left out: pints, cups and stones (they differ by country or are not used for
// gardens), areas, and ranges of mass or temperature.
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

// Known reports whether a mass was given.
func (m Mass) Known() bool { return m.Typed != "" || m.Kg != 0 }

// Temperature is a temperature as typed and in degrees Celsius. Known tells
// 0 °C from "not said".
type Temperature struct {
	C     Celsius
	Typed string
}

// Known reports whether a temperature was given.
func (t Temperature) Known() bool { return t.Typed != "" || t.C != 0 }

// System is the family of units a person thinks in.
type System int

// Systems of units.
const (
	Metric   System = iota
	Imperial        // feet and inches, gallons, pounds, degrees Fahrenheit
)

// Fault says what is wrong with a typed quantity and what to type instead.
// At and Len point at the place, in runes from the start of the text.
type Fault struct {
	At, Len      int
	What, Remedy string
}

// Error joins what is wrong and what to try.
func (f *Fault) Error() string { return f.What + ". " + f.Remedy }
