package reckon

import (
	"fmt"
	"math"
	"slices"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/shade"
	"bedweek/internal/stand"
)

// What tall plants of a space take from the spaces around it, and what they
// give, as a price on each start that grows tall: so tall goes to the pole side,
// or wherever its shadow falls on little that grows, because it costs least
// there; and where heat spoils what is wanted, to the side of the afternoon sun.
//
// Method: a stand standHeightM tall is put on all of a space, in the scene as
// it is, on the middle day of each month. Each growing neighbour loses a share
// of its daily light, and with it that share of mealsM2Week from each m2. The
// light it loses from noon to five cools it (stand.ShadeCoolsC), and then more
// of the crops that serve the month's wants bear the heat, by the rules growth
// follows: that share of mealsM2Week is given back. The price of a start is the
// sum over its tall weeks, by the share of the space its plants take; it is
// below nothing where the shade gives more than it takes.
//
// Left out: what the neighbour really carries in that week, fruit set in the
// shade, the water it saves, one stand in another's shade, and the shade within
// a stand's own space.

const (
	standHeightM = 1.8 // a row of beans, maize or tomatoes: common practice
	// mealsM2Week is what a m2 of ground gives in a week: some 25 meals in a
	// year. Our own choice.
	mealsM2Week = 0.5
)

// tallToll is what tall plants over all of each space, in garden order, take
// from the others less what their shade gives, in meals a week by month. mean
// is the mean radiation by month; airs are those of the spaces.
func tallToll(in *Inputs, mean [12]float64, airs []*stand.Air) ([][12]float64, error) {
	g := in.Garden
	out := make([][12]float64, len(g.Spaces))
	l := &GardenLight{Garden: g, Bodies: bodies(g), Mean: true}
	gr := groundsOf(g, l.Bodies, in.edges())
	l.space, l.buried = gr.space, gr.buried
	course := shade.NewMonths(shade.Place{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}, shade.QuickLooks(), mean)
	l.Field = shade.NewField(course, gr.surfaces, l.Bodies, true, in.Workers)
	heat := newRelief(in, airs)
	for m := range 12 {
		now, hot := l.molByPlace(l.Field.Week(m)), l.molByPlace(l.Field.Week(12+m))
		_, open := course.OpenMol(12 + m)
		for i, sp := range g.Spaces {
			if !sp.Grows() || !sp.TallOK {
				continue
			}
			body := tallBody(g, sp, sp.AreaM2(), standHeightM)
			with, err := l.Field.Peek(m, len(l.Bodies), body)
			if err != nil {
				return nil, fmt.Errorf("trying a tall stand: %w", err)
			}
			hotWith, err := l.Field.Peek(12+m, len(l.Bodies), body)
			if err != nil {
				return nil, fmt.Errorf("trying a tall stand: %w", err)
			}
			hotLeft := l.molByPlace(hotWith)
			for s, mol := range l.molByPlace(with) {
				if o := l.Space(s); o.ID != sp.ID && o.Grows() && now[s] > 0 {
					lost := 1 - mol/now[s]
					if open > 0 {
						lost -= heat.gain(l.space[s], m, stand.ShadeCoolsC*(hot[s]-hotLeft[s])/open)
					}
					out[i][m] += lost * o.AreaM2() * mealsM2Week
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

// relief says how much more of what is wanted bears the heat in a cooler space.
type relief struct {
	airs  []*stand.Air
	wants [12][]wantedCrop
	open  map[reliefKey]float64
}

// wantedCrop is a crop and its share of a month's wanted meals: a food's meals
// go evenly to the crops that serve it.
type wantedCrop struct {
	crop  *crop.Crop
	share float64
}

type reliefKey struct {
	space, month int
	crop         crop.ID
}

func newRelief(in *Inputs, airs []*stand.Air) *relief {
	h := &relief{airs: airs, open: map[reliefKey]float64{}}
	g := in.Garden
	foods := wantedFoods(g)
	by := make([][]*crop.Crop, len(foods))
	for _, c := range in.Book.Crops {
		for _, f := range foodsOf(g, c) {
			by[f] = append(by[f], c)
		}
	}
	for m := range 12 {
		meals, all := make([]float64, len(foods)), 0.0
		for _, w := range g.Wants {
			if inMonths(w.From, w.To, m+1) {
				meals[slices.Index(foods, w.Food)] += w.Meals
				all += w.Meals
			}
		}
		for f, cs := range by {
			for _, c := range cs {
				if share := meals[f] / math.Max(all, 1e-9) / float64(len(cs)); share > 0 && c.HeatC.Known() {
					h.wants[m] = append(h.wants[m], wantedCrop{c, share})
				}
			}
		}
	}
	return h
}

// gain is the share of wanted meals that bears the heat of a month, 0 =
// January, in a space made cooler by some °C, and not as it is.
func (h *relief) gain(space, month int, coolerC float64) (sum float64) {
	air := h.airs[space]
	if air == nil || coolerC < leastCoolC {
		return 0
	}
	for _, w := range h.wants[month] {
		key := reliefKey{space, month, w.crop.ID}
		was, ok := h.open[key]
		if !ok {
			was = air.Bearable(w.crop, time.Month(month+1), 0)
			h.open[key] = was
		}
		if was < 1 {
			sum += w.share * (air.Bearable(w.crop, time.Month(month+1), coolerC) - was)
		}
	}
	return sum
}

// leastCoolC is the least coolness looked at, °C; less moves no count.
const leastCoolC = 0.05

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
