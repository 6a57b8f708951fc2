package reckon

import (
	"bedweek/internal/cal"
	"bedweek/internal/season"
)

// PlanJSON is the plan as contracts promise it; absent figures are null.
type PlanJSON struct {
	Status    string             `json:"status"`
	From      cal.Day            `json:"from"`
	Value     float64            `json:"value"`
	Nothing   float64            `json:"nothing"`
	Bound     *float64           `json:"bound"` // null: none is proved
	Gap       *float64           `json:"gap"`   // null: none is proved
	Futures   FuturesJSON        `json:"futures"`
	Seed      uint64             `json:"seed"`
	Work      int                `json:"work"`
	Seconds   map[string]float64 `json:"seconds"`
	Options   int                `json:"options"`
	Weather   string             `json:"weather"`
	Conflict  []string           `json:"conflict"`
	Plantings []PlantingJSON     `json:"plantings"`
	Stays     []StayJSON         `json:"stays"`
	Table     []TableJSON        `json:"table"`
	Prices    []PriceJSON        `json:"prices"` // empty: none is proved
	Water     []WaterJSON        `json:"water"`  // empty: water is not limited
	Later     *LaterJSON         `json:"later"`  // null: not worked out
}

// LaterJSON is what decisions that can wait could be worth, in meals: at the
// least the plan as it is, at the most near what is fitted to each future by one
// who knew it.
type LaterJSON struct {
	Until      cal.Day   `json:"until"` // what is due before is held as planned
	Fixed      float64   `json:"fixed"`
	Fitted     float64   `json:"fitted"`
	FixedAll   []float64 `json:"fixed_all"` // by future
	FittedAll  []float64 `json:"fitted_all"`
	ChangeCost float64   `json:"change_cost"` // a start or pull week counts as given up only for so much
}

// PriceJSON is what the ground of a space is worth over some weeks, in meals.
type PriceJSON struct {
	Space string  `json:"space"`
	From  cal.Day `json:"from"`
	Weeks int     `json:"weeks"`
	Meals float64 `json:"meals"`
	PerM2 float64 `json:"meals_per_m2"`
}

// WaterJSON is what the plan drinks in one week, if that is a dry one.
type WaterJSON struct {
	Week   cal.Day `json:"week"`
	Litres float64 `json:"litres_a_day"`
	Wished float64 `json:"wished"`
}

// FuturesJSON is the worth over the twenty futures, in meals.
type FuturesJSON struct {
	N       int       `json:"n"`
	Mean    float64   `json:"mean"`
	Low     float64   `json:"low"`
	High    float64   `json:"high"`
	Worst   float64   `json:"worst"`       // mean of the worst quarter
	Share   float64   `json:"worst_share"` // that mean's part in what the plan was chosen by, 0 to 1
	Nothing float64   `json:"nothing"`     // mean worth of doing nothing
	Bound   *float64  `json:"bound"`       // certifies the mean; null: none is proved
	Gap     *float64  `json:"gap"`         // null: none is proved with the futures told apart
	All     []float64 `json:"all"`
}

// PlantingJSON is one chosen planting.
type PlantingJSON struct {
	ID        string     `json:"id"`
	Space     string     `json:"space"`
	Crop      string     `json:"crop"`
	Variety   string     `json:"variety"`
	Way       string     `json:"way"`
	Plants    int        `json:"plants"`
	AreaM2    float64    `json:"area_m2"`
	Tall      bool       `json:"tall"`
	Start     cal.Window `json:"start"`
	SetOut    cal.Window `json:"set_out"`
	FirstPick cal.Window `json:"first_pick"`
	LastPick  cal.Window `json:"last_pick"`
	Ends      cal.Window `json:"ends"`
	OfTwenty  int        `json:"success_of_20"`
	Still     *int       `json:"still_of_20"` // futures in which it is still wanted when more is known; null: not worked out
	Else      *string    `json:"else"`        // crop that most often takes its place in the others; null: none, or not worked out
	ElseOf    *int       `json:"else_of_20"`  // futures in which it does
	Reasons   []string   `json:"reasons"`
}

// StayJSON is one planting already in the ground.
type StayJSON struct {
	ID     string       `json:"id"`
	Space  string       `json:"space"`
	Crop   string       `json:"crop"`
	Plants int          `json:"plants"`
	Pull   cal.Day      `json:"pull"`
	End    cal.Day      `json:"natural_end"`
	Still  *int         `json:"still_of_20"` // futures in which it is still pulled about then; null: not asked
	Curve  []ChoiceJSON `json:"choices"`
}

// ChoiceJSON is the worth of pulling on a day against the best day, meals.
type ChoiceJSON struct {
	Pull  cal.Day `json:"pull"`
	Worth float64 `json:"worth"`
	Meals float64 `json:"meals_until_then"`
}

// TableJSON is one food in one week.
type TableJSON struct {
	Week     cal.Day `json:"week"`
	Food     string  `json:"food"`
	Wanted   float64 `json:"wanted"`
	Expected float64 `json:"expected"`
	Low      float64 `json:"low"`
	High     float64 `json:"high"`
}

// Infeasible reports whether the musts cannot all be met.
func (r *Result) Infeasible() bool { return r.Plan.Status == season.Infeasible }

// JSON returns the plan in the promised form.
func (r *Result) JSON() PlanJSON {
	d := r.Day
	j := PlanJSON{
		Status: d.Plan.Status, From: d.Date, Value: d.Plan.Value, Nothing: d.Plan.Nothing, Seed: d.Plan.Seed,
		Work: d.Plan.Work, Seconds: d.Plan.Seconds, Options: d.Plan.Options, Weather: d.Weather,
		Futures:  FuturesJSON{N: r.in.Futures, Mean: d.Plan.Mean, Worst: d.Plan.Worst, Share: r.Problem.WorstShare, Nothing: d.Plan.Nothing, Low: d.Plan.Low, High: d.Plan.High, All: r.Verdict.PerFuture},
		Conflict: append([]string{}, r.Plan.Conflict...), Plantings: []PlantingJSON{}, Stays: []StayJSON{}, Table: []TableJSON{}, Prices: []PriceJSON{}, Water: []WaterJSON{},
	}
	if d.Water != nil {
		for _, w := range d.Water.Weeks {
			j.Water = append(j.Water, WaterJSON{w.Week, w.Drinks, w.Wants})
		}
	}
	j.Value, j.Nothing = r.proof.value, r.proof.nothing
	if r.proof.ok {
		c := r.proof.certificate
		j.Bound, j.Gap, j.Futures.Bound = &c.Bound, &r.proof.gap, &c.Bound
		if r.proof.known {
			j.Futures.Bound, j.Futures.Gap = &r.proof.byFuture.Bound, &r.proof.futureGap
		}
		for _, x := range season.Rents(r.Problem, c) {
			j.Prices = append(j.Prices, PriceJSON{r.Problem.Spaces[x.Space].ID, r.Problem.Start + cal.Day(7*x.Week), x.Weeks, x.Meals, x.PerM2})
		}
	}
	later := r.known()
	j.Later = later.json()
	for k, pl := range r.Plan.Plantings {
		l := r.plantedLine(k)
		o := r.Problem.Options[pl.Option]
		e := r.model.entries[r.model.entry[pl.Option]]
		p := PlantingJSON{ID: l.ID, Space: l.Space, Crop: l.CropID, Variety: l.Variety, Way: string(e.Way), Plants: l.Plants,
			Start: l.In, FirstPick: l.First, LastPick: l.Last, Ends: l.Out, OfTwenty: l.OfTwenty, Reasons: l.Reasons,
			AreaM2: float64(l.Plants) * fullFootprint(e.Growth), Tall: o.TallFrom >= 0}
		p.Still, p.Else, p.ElseOf = later.figures(o.ID)
		if l.OnShelf != 0 {
			p.SetOut = l.In
			p.Start = cal.Window{Early: l.OnShelf, Likely: l.OnShelf, Late: l.OnShelf}
		}
		j.Plantings = append(j.Plantings, p)
	}
	for i, s := range r.model.stays {
		st := r.Problem.Stays[i]
		q := StayJSON{ID: s.id, Space: r.Problem.Spaces[st.Space].ID, Crop: string(s.crop.ID), Plants: s.count,
			Pull: r.Problem.Start + cal.Day(7*r.Plan.Pull[i]+6), End: r.Problem.Start + cal.Day(7*st.End+6), Curve: []ChoiceJSON{}}
		q.Still, _, _ = later.figures(s.id)
		for _, k := range d.Keeps {
			if k.Planting != s.id {
				continue
			}
			for _, c := range k.Choices {
				q.Curve = append(q.Curve, ChoiceJSON{c.Pull, c.Worth, c.MealsLikely})
			}
		}
		j.Stays = append(j.Stays, q)
	}
	for w, week := range d.WeekOf {
		for _, f := range d.Table {
			x := f.Weeks[w]
			j.Table = append(j.Table, TableJSON{week, f.Food, x.Wanted, x.Expected, x.Low, x.High})
		}
	}
	return j
}
