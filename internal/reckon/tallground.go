package reckon

import (
	"fmt"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/shade"
)

// What tall plants of a space take from the spaces around it, as a price on
// each start that grows tall: so tall goes to the pole side, or wherever its
// shadow falls on little that grows, because it costs least there.
//
// Method: a stand standHeightM tall is put on all of a space, in the scene as
// it is, in the middle week of each month. Each growing neighbour loses a share
// of its daily light, and with it that share of mealsM2Week from each m2. The
// price of a start is the sum over its tall weeks, by the share of the space
// its plants take.
//
// Left out: what the neighbour really carries in that week, shade that would
// be welcome, one stand in another's shade, and the shade within a stand's own
// space.

const (
	standHeightM = 1.8 // a row of beans, maize or tomatoes: common practice
	// mealsM2Week is what a m2 of ground gives in a week: some 25 meals in a
	// year. Our own choice.
	mealsM2Week = 0.5
)

// tallToll is what tall plants over all of each space, in garden order, take
// from the others, in meals a week by month.
func tallToll(in *Inputs) ([][12]float64, error) {
	g := in.Garden
	out := make([][12]float64, len(g.Spaces))
	start := shade.YearStart(min(max(in.Date.Year(), 1900), 2100))
	l := newGardenLight(g, in.edges(), in.Record, in.Normals, start, 52, shade.QuickLooks(), true, in.Workers)
	for m := range 12 {
		w := int(cal.Of(start.Year()+1, time.Month(m+1), 15)-l.Field.Day(0)+3) / 7 % 52
		now := l.molByPlace(l.Field.Week(w))
		for i, sp := range g.Spaces {
			if !sp.Grows() || !sp.TallOK {
				continue
			}
			with, err := l.Field.Peek(w, len(l.Bodies), tallBody(g, sp, sp.AreaM2(), standHeightM))
			if err != nil {
				return nil, fmt.Errorf("trying a tall stand: %w", err)
			}
			for s, mol := range l.molByPlace(with) {
				if o := l.Space(s); o.ID != sp.ID && o.Grows() && now[s] > 0 {
					out[i][m] += (1 - mol/now[s]) * o.AreaM2() * mealsM2Week
				}
			}
		}
	}
	return out, nil
}

// molByPlace is the mean daily light of each surface.
func (l *GardenLight) molByPlace(w *shade.WeekLight) []float64 {
	out := make([]float64, len(l.Field.Surfaces()))
	for s := range out {
		out[s] = w.Surface(s, nil, func(i, j int) bool { return l.Buried(s, i, j) }).MolMean.Mean
	}
	return out
}

// tallPrice is what one plant of a start takes from the neighbours of its
// space, meals: by week from tallFrom to the last that it stands.
func tallPrice(sp garden.Space, toll [12]float64, start cal.Day, week, tallFrom int, footprint []float64) (meals float64) {
	area := sp.AreaM2()
	if tallFrom < 0 || area <= 0 {
		return 0
	}
	for k, foot := range footprint {
		if w := week + k; w >= tallFrom {
			meals += foot / area * toll[(start+cal.Day(7*w+3)).Month()-1]
		}
	}
	return meals
}
