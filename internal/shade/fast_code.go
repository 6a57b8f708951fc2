package shade

import "math"

// A share of light is kept as a whole number of 1/codeUnit nats of loss, so
// that crossing two things adds two numbers, and taking one away again leaves
// exactly what was there before.
const (
	codeUnit = 1024
	// opaqueCode stands for a share below darkest: nothing passes.
	opaqueCode int32 = -1
	darkest          = 1e-4
	lossUnit         = 1 << 16 // losses are whole 65,536ths of a ray
)

// codeOf returns the code of a share of light; 0 lets everything by.
func codeOf(passes float64) int32 {
	t := share(passes)
	if t < darkest {
		return opaqueCode
	}
	return int32(math.Round(-math.Log(t) * codeUnit))
}

// lossTable holds, by code, the loss of a ray. Beyond its end all is lost.
func lossTable() []int64 {
	out := make([]int64, 12*codeUnit)
	for i := range out {
		out[i] = int64(math.Round(lossUnit * -math.Expm1(-float64(i)/codeUnit)))
	}
	return out
}

// valueUnit is the fixed point of hours, mol/m² and sky shares.
const valueUnit = 1 << 24

// quanta are what one ray is worth to a surface, in valueUnits: hours if
// anything in the way is taken as opaque, hours, light on a clear day, light
// on a mean day. A sky ray has its share of the sky in each.
type quanta [4]int64

func (r *ray) worth(cos float64) quanta {
	if r.hours == 0 {
		q := int64(r.solid*cos/math.Pi*valueUnit*256 + 0.5)
		return quanta{q, q, q, q}
	}
	h := int64(r.hours*valueUnit + 0.5)
	return quanta{h, h, int64(r.mol[0]*cos*valueUnit + 0.5), int64(r.mol[1]*cos*valueUnit + 0.5)}
}

// skyUnit is the fixed point of sky shares.
const skyUnit = valueUnit * 256

// dimmed is what is lost of q behind something of a given loss; hours with all
// taken as opaque are lost whole.
func (q *quanta) dimmed(loss int64) quanta {
	const half = lossUnit / 2
	return quanta{q[0], (q[1]*loss + half) / lossUnit, (q[2]*loss + half) / lossUnit, (q[3]*loss + half) / lossUnit}
}

func (q *quanta) negative() quanta { return quanta{-q[0], -q[1], -q[2], -q[3]} }
