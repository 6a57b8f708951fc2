// Package geom holds points, directions, plane outlines and the few solids
// that stand in a garden, with the question "does this ray pass through?".
//
// Method: plane and solid geometry, each formula named where it stands.
//
// Conventions: x east, y north, z up, metres. Azimuth and bearing are degrees
// clockwise from north, elevation is degrees up from the horizon. A body's
// turn is degrees clockwise from east-west, seen from above.
//
// Touching is not crossing: a ray that only runs along a face, or starts on a
// face and leaves, does not meet the solid. See [TouchM].
//
// Range: sizes from a millimetre to tens of kilometres; finite input is
// assumed. Left out: curved sheets, meshes and hollow solids, because no garden file
// can name one.
package geom

import "math"

// TouchM is how deep a ray must run inside a solid to count as crossing it, in
// metres. A nanometre is far below any garden and far above rounding.
const TouchM = 1e-9

const rad = math.Pi / 180

// Vec is a point or a direction: x east, y north, z up.
type Vec struct{ X, Y, Z float64 }

// Up returns the direction of the zenith.
func Up() Vec { return Vec{0, 0, 1} }

// Add returns a+b.
func (a Vec) Add(b Vec) Vec { return Vec{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }

// Sub returns a-b.
func (a Vec) Sub(b Vec) Vec { return Vec{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }

// Scale returns a made k times as long.
func (a Vec) Scale(k float64) Vec { return Vec{a.X * k, a.Y * k, a.Z * k} }

// Dot returns the scalar product; of two unit directions, the cosine of the
// angle between them.
func (a Vec) Dot(b Vec) float64 {
	return float64(a.X*b.X) + float64(a.Y*b.Y) + float64(a.Z*b.Z)
}

// Cross returns a×b.
func (a Vec) Cross(b Vec) Vec {
	return Vec{
		float64(a.Y*b.Z) - float64(a.Z*b.Y),
		float64(a.Z*b.X) - float64(a.X*b.Z),
		float64(a.X*b.Y) - float64(a.Y*b.X),
	}
}

// Len returns the length of a.
func (a Vec) Len() float64 { return math.Sqrt(a.Dot(a)) }

// Unit returns a with length 1; the zero vector stays zero.
func (a Vec) Unit() Vec {
	n := a.Len()
	if n == 0 {
		return a
	}
	return a.Scale(1 / n)
}

// LevelLen returns the length of a's level part.
func (a Vec) LevelLen() float64 { return math.Hypot(a.X, a.Y) }

// BearingDeg returns where the level part of a points, 0 <= bearing < 360;
// 0 for a vertical or zero vector.
func (a Vec) BearingDeg() float64 {
	if a.X == 0 && a.Y == 0 {
		return 0
	}
	return Turn360(math.Atan2(a.X, a.Y) / rad)
}

// ElevationDeg returns how far a points above the horizon, -90 to 90.
func (a Vec) ElevationDeg() float64 {
	return math.Atan2(a.Z, a.LevelLen()) / rad
}

// Direction returns the unit direction at an azimuth and elevation in degrees.
func Direction(azimuthDeg, elevationDeg float64) Vec {
	sa, ca := math.Sincos(azimuthDeg * rad)
	se, ce := math.Sincos(elevationDeg * rad)
	return Vec{sa * ce, ca * ce, se}
}

// Normal returns the outward normal of a surface tilted up from level by
// tiltDeg and facing azimuthDeg.
func Normal(tiltDeg, azimuthDeg float64) Vec {
	return Direction(azimuthDeg, 90-tiltDeg)
}

// AngleDeg returns the angle between two directions, 0 to 180.
func AngleDeg(a, b Vec) float64 {
	return math.Atan2(a.Cross(b).Len(), a.Dot(b)) / rad
}

// Turn360 brings an angle in degrees to 0 <= angle < 360. An angle within a
// billionth of a degree below 360 becomes 0, so that rounding cannot turn a
// bearing of north into 359.99….
func Turn360(deg float64) float64 {
	const snapDeg = 1e-9
	d := math.Mod(deg, 360)
	if d < 0 {
		d += 360
	}
	if d >= 360-snapDeg {
		return 0
	}
	return d
}

// Compass names a bearing by the nearest of eight winds.
func Compass(bearingDeg float64) string {
	winds := [8]string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}
	return winds[int(math.Round(Turn360(bearingDeg)/45))%8]
}
