package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/water"
)

// Water in a dry week, against a wish: what each planting asks of whoever
// carries it, litres a day, as internal/water counts it.
//
// Left out: pots on the shelf, what a reservoir or a butt still holds, the
// correction of the coefficients for dry wind, and what plants that go thirsty
// lose: what is over the wish is taken to be carried.

const (
	// carriedLitre is what a litre over the wish costs, in meals: half a meal for
	// a can of 10 L brought from elsewhere, day after day. That is five times the
	// work of it (half a minute a litre, common practice): who says how much
	// there is has no more nearby. Our own choice.
	carriedLitre = 0.05
	// overLitre is a litre a day over the wish, for a week of it.
	overLitre = 7 * carriedLitre
	// What grows in a container dries in days; a bed bridges some weeks without
	// rain. Our own choice.
	drySpellPot = 7 // days
	drySpellBed = 21
)

// drought is what a dry week asks by space and week.
type drought struct {
	book   *water.Book
	dryMM  [][]float64 // by garden space: mm a day beyond the rain by plan week; nil = nobody waters it
	factor []float64   // by garden space: what wind and walls do to it
	mulch  []float64   // by garden space: share of the surface's drying that passes, 0 = none lies there
}

// addWater sets the wished litres and makes ready what plantings drink; without
// a wish nothing is counted.
func (m *model) addWater(in *Inputs, p *Place) {
	if !in.Garden.WaterDay.Known() {
		return
	}
	if m.drought = newDrought(in, p, m.p.Start, m.p.Weeks); m.drought == nil {
		return
	}
	m.p.WaterCost = overLitre
	m.p.Water = make([]float64, m.p.Weeks)
	for w := range m.p.Water {
		m.p.Water[w] = in.Garden.WaterDay.L
	}
}

// newDrought is nil when the weather does not reach so far.
func newDrought(in *Inputs, p *Place, start cal.Day, weeks int) *drought {
	book, err := water.LoadBook()
	if err != nil || len(p.Set.Futures) == 0 {
		return nil
	}
	g := in.Garden
	d := &drought{book: book, dryMM: make([][]float64, len(g.Spaces)), factor: make([]float64, len(g.Spaces)), mulch: make([]float64, len(g.Spaces))}
	sky := func(share float64) *water.Sky {
		return water.NewSky(p.Set.Futures, in.site(), start-drySpellBed, drySpellBed+7*weeks, share)
	}
	open, walled := sky(1), sky(wallWind)
	if open == nil || walled == nil {
		return nil
	}
	for i, sp := range g.Spaces {
		if !sp.Grows() || way(sp) == water.Rain {
			continue
		}
		air := open
		if g.Place.Sheltered && sp.Floor.M < terraceM {
			air = walled
		}
		light := p.Lights[i].Share
		if e := p.Envs[i]; e != nil && e.Net > 0 {
			for k := range light {
				light[k] *= e.Net
			}
		}
		days, rain := drySpell(sp), rainShare(g, i)
		d.dryMM[i] = make([]float64, weeks)
		for w := range d.dryMM[i] {
			d.dryMM[i][w] = air.DryTenthMM(light, rain, drySpellBed+7*(w+1), days)
		}
		d.factor[i] = exposure(sp).At(0.5)
		if x := mulched(sp); x > 0 {
			d.mulch[i] = 1 - mulchStops*x
		}
	}
	return d
}

// drySpell is over how many days a space's water is made up.
func drySpell(sp garden.Space) int {
	switch sp.Kind {
	case garden.RaisedBed, garden.ElevatedBed, garden.Ground:
		return drySpellBed
	}
	return drySpellPot
}

// drinks is what a crop asks in garden space i, litres a day in a dry week, by
// week from a plan week on; footprint is its ground by week. Nil where water is
// not counted.
func (d *drought) drinks(c *crop.Crop, sp garden.Space, i, from int, footprint []float64) []float64 {
	if d == nil || d.dryMM[i] == nil {
		return nil
	}
	of, _ := d.book.Crop(string(c.ID))
	staked := len(sp.Supports) > 0 && c.Support != ""
	out := make([]float64, len(footprint))
	for k, area := range footprint {
		if w := from + k; w < len(d.dryMM[i]) {
			out[k] = of.CarriedL(d.dryMM[i][w], area, d.factor[i], d.mulch[i], staked)
		}
	}
	return out
}

// WaterWeek is a week of the plan: what is drunk in a dry one against the wish.
type WaterWeek struct {
	Week          cal.Day
	Drinks, Wants float64 // litres a day: by the plan, and the wish
}

// WaterSays is what the plan asks for in dry weeks.
type WaterSays struct {
	Words string
	Weeks []WaterWeek
}

// leastOver is what is spoken of as over the wish, litres a day: a cup.
const leastOver = 0.25

// waterSays is nil where water is not limited.
func (r *Result) waterSays() *WaterSays {
	if len(r.Problem.Water) == 0 {
		return nil
	}
	s := &WaterSays{}
	for w := 0; w < r.in.Weeks && w < len(r.Problem.Water) && w < len(r.Verdict.Water); w++ {
		s.Weeks = append(s.Weeks, WaterWeek{r.Problem.Start + cal.Day(7*w), r.Verdict.Water[w], r.Problem.Water[w]})
	}
	s.Words = droughtWords(s.Weeks, r.in.Garden.WaterDay.String())
	return s
}

// mostOver is the most that a week of the plan drinks over the wish.
func (r *Result) mostOver() float64 {
	most := 0.0
	for w := 0; w < r.in.Weeks && w < len(r.Problem.Water) && w < len(r.Verdict.Water); w++ {
		most = math.Max(most, r.Verdict.Water[w]-r.Problem.Water[w])
	}
	return most
}

// droughtWords says when a dry week asks for most, and for how much more than is
// wished.
func droughtWords(weeks []WaterWeek, wished string) string {
	most, over, n := WaterWeek{}, 0.0, 0
	var first, last cal.Day
	for _, w := range weeks {
		if w.Drinks > most.Drinks {
			most = w
		}
		if x := w.Drinks - w.Wants; x >= leastOver {
			if n++; first == 0 {
				first = w.Week
			}
			last, over = w.Week+6, math.Max(over, x)
		}
	}
	if most.Drinks < leastOver {
		return fmt.Sprintf("What is planned asks for hardly any water beyond the rain, even in a dry week; %s a day are wished.", wished)
	}
	s := fmt.Sprintf("What stands and is planned asks for up to %s a day in a dry week, most in %s; %s a day are wished.", aLitre(most.Drinks), week(most.Week), wished)
	switch {
	case n == 0:
		return s + " No dry week asks for more."
	case n == 1:
		return s + fmt.Sprintf(" In one week that is %s a day too much: carry it from elsewhere if it turns dry, or what stands goes thirsty.", aLitre(over))
	}
	return s + fmt.Sprintf(" In %d weeks between %s and %s that is too much, by up to %s a day: carry it from elsewhere if they turn dry, or what stands goes thirsty.",
		n, first.Long(), last.Long(), aLitre(over))
}

// aLitre says litres to the whole one, few to the half.
func aLitre(x float64) string {
	if x < 9.75 {
		return fmt.Sprintf("%g L", math.Round(2*x)/2)
	}
	return fmt.Sprintf("%.0f L", x)
}
