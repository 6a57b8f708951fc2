package weather

import "math"

// Winter cold and spring warmth counted by the hour. The counts disagree by
// design: name the one used.

// ChillingHours counts hours from 0 to 7.2 °C, both ends counted (32-45 °F).
func ChillingHours(hourlyC []float64) int {
	n := 0
	for _, t := range hourlyC {
		if t >= 0 && t <= chillTopC {
			n++
		}
	}
	return n
}

// ChillingHoursBelow counts hours at or below 7.2 °C, frost as well: the other
// definition in use.
func ChillingHoursBelow(hourlyC []float64) int {
	n := 0
	for _, t := range hourlyC {
		if t <= chillTopC {
			n++
		}
	}
	return n
}

const chillTopC = 7.2

// step is a value up to and with an upper edge.
type step struct{ upTo, units float64 }

func stepped(steps []step, beyond, t float64) float64 {
	for _, s := range steps {
		if t <= s.upTo {
			return s.units
		}
	}
	return beyond
}

// UtahUnitF returns the Utah chill units of an hour at a temperature in °F, as
// first published: [UTAH74] E. A. Richardson, S. D. Seeley and D. R. Walker,
// HortScience 9 (1974). An upper edge belongs to the lower step.
func UtahUnitF(tF float64) float64 {
	return stepped([]step{{34, 0}, {36, 0.5}, {48, 1}, {54, 0.5}, {60, 0}, {65, -0.5}}, -1, tF)
}

// UtahUnitC is the same table with its edges rounded in °C, as software has
// it. Between 34 °F and 1.4 °C, and at other such slivers, it differs.
func UtahUnitC(tC float64) float64 {
	return stepped([]step{{1.4, 0}, {2.4, 0.5}, {9.1, 1}, {12.4, 0.5}, {15.9, 0}, {18, -0.5}}, -1, tC)
}

// UtahUnits sums UtahUnitC over hours.
func UtahUnits(hourlyC []float64) float64 {
	sum := 0.0
	for _, t := range hourlyC {
		sum += UtahUnitC(t)
	}
	return sum
}

// Constants of the dynamic model. [EREZ90] A. Erez, S. Fishman and others,
// The dynamic model for rest completion in peach buds, Acta Horticulturae 276
// (1990), after S. Fishman, A. Erez and G. A. Couvillon, Journal of
// Theoretical Biology 124 (1987).
const (
	chillE0, chillE1 = 4153.5, 12888.8 // K
	chillA0, chillA1 = 139500.0, 2.567e18
	chillSlope       = 1.6
	chillTf          = 277.0 // K
)

// ChillPortions counts portions by the dynamic model: cold makes an unstable
// precursor, warmth undoes it, and each full portion is kept for good. The
// hours must be in order.
func ChillPortions(hourlyC []float64) float64 {
	portions, precursor := 0.0, 0.0
	for _, t := range hourlyC {
		k := t + 273
		fix := math.Exp(chillSlope * chillTf * (k - chillTf) / k)
		share := fix / (1 + fix)
		settle := chillA0 / chillA1 * math.Exp((chillE1-chillE0)/k)
		rate := chillA1 * math.Exp(-chillE1/k)
		precursor = settle - (settle-precursor)*math.Exp(-rate)
		if precursor >= 1 {
			portions += precursor * share
			precursor -= precursor * share
		}
	}
	return portions
}

// Cardinals are the base, best and top temperature of a heat sum, °C.
type Cardinals struct{ BaseC, BestC, TopC float64 }

// FruitTree are the cardinals of growing degree hours in [ANDERSON86] J. L.
// Anderson, E. A. Richardson and C. D. Kesner, Acta Horticulturae 184 (1986).
func FruitTree() Cardinals { return Cardinals{4, 25, 36} }

// GrowingDegreeHours sums warmth by the hour along two cosine flanks: none at
// the base, most at the best, none again at the top.
func (c Cardinals) GrowingDegreeHours(hourlyC []float64) float64 {
	sum := 0.0
	span := c.BestC - c.BaseC
	for _, t := range hourlyC {
		switch {
		case t <= c.BaseC || t >= c.TopC:
		case t <= c.BestC:
			sum += span / 2 * (1 + math.Cos(math.Pi+math.Pi*(t-c.BaseC)/span))
		default:
			sum += span * (1 + math.Cos(math.Pi/2+math.Pi/2*(t-c.BestC)/(c.TopC-c.BestC)))
		}
	}
	return sum
}
