package reckon

import (
	"fmt"
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/water"
)

// DryJSON is Dryness as the command promises it; absent figures are null.
type DryJSON struct {
	Garden   string         `json:"garden"`
	Date     cal.Day        `json:"date"`
	FromHour int            `json:"from_hour"`
	Days     int            `json:"days_looked_at"`
	AwayDays int            `json:"away_days"`
	Weather  string         `json:"weather"`
	Taken    []string       `json:"taken_for_granted"`
	Spaces   []DrySpaceJSON `json:"spaces"`
}

// DrySpaceJSON is one space; soonest dry first.
type DrySpaceJSON struct {
	Space        string      `json:"space"`
	Name         string      `json:"name"`
	Water        string      `json:"water"`
	Empty        bool        `json:"empty"`
	Crops        []string    `json:"crops"`
	LeafM2       float64     `json:"leaf_m2"`
	LitresADay   *BandJSON   `json:"litres_a_day"`
	HoldsL       float64     `json:"holds_litres"`
	LacksL       *BandJSON   `json:"litres_to_fill"`
	GiveL        float64     `json:"litres_to_give"`
	Minutes      *float64    `json:"line_minutes"` // null: no line
	DryHours     *BandJSON   `json:"dry_hours"`
	Dry          *MomentJSON `json:"dry"`
	TankHours    *BandJSON   `json:"reservoir_empty_hours"` // null: no reservoir
	Hours        []float64   `json:"hours"`                 // one a future; the end of the days looked at when not dry within them
	ByNextOf20   int         `json:"dry_by_next_visit_of_20"`
	RainOf20     int         `json:"rain_first_of_20"`
	SurvivesDays *BandJSON   `json:"survives_days"` // null: not asked
	SurvivesOf20 *int        `json:"survives_of_20"`
	Rate         float64     `json:"rate_learned"`
	Looks        int         `json:"looks"`
	Words        []string    `json:"words"`
}

// BandJSON is a band from a tenth to nine tenths of the futures.
type BandJSON struct {
	Early  float64 `json:"early"`
	Likely float64 `json:"likely"`
	Late   float64 `json:"late"`
}

// MomentJSON is a band of local times, to the hour; null = later than the days
// looked at.
type MomentJSON struct {
	Early  *string `json:"early"`
	Likely *string `json:"likely"`
	Late   *string `json:"late"`
}

// JSON returns the water of the garden as the command promises it.
func (d *Dryness) JSON() *DryJSON {
	out := &DryJSON{Garden: d.Garden, Date: d.Date, FromHour: d.FromHour, Days: d.Days, AwayDays: d.Away, Weather: d.Weather,
		Taken: d.Taken, Spaces: []DrySpaceJSON{}}
	for _, r := range d.Rows {
		out.Spaces = append(out.Spaces, r.json(d))
	}
	return out
}

func (r *DryRow) json(d *Dryness) DrySpaceJSON {
	a := r.Answer
	j := DrySpaceJSON{Space: r.Space, Name: r.Name, Water: string(r.Way), Empty: r.Empty, Crops: append([]string{}, r.Crops...),
		LeafM2: round(r.LeafM2, 1000), HoldsL: round(a.HoldsL, 10), Hours: []float64{}, Rate: round(a.Rate, 100), Looks: a.Looks, Words: []string{}}
	for _, w := range []string{r.When, r.Give, r.Out, r.Learned, r.Look, r.Caution} {
		if w != "" {
			j.Words = append(j.Words, w)
		}
	}
	if r.Empty {
		return j
	}
	n := len(a.Hours)
	j.LitresADay, j.LacksL, j.DryHours = band(a.DrinksL, 100), band(a.LackL, 100), band(a.Dry, 10)
	j.GiveL = round(a.GiveL, 100)
	for _, h := range a.Hours {
		j.Hours = append(j.Hours, round(h, 10))
	}
	j.ByNextOf20, j.RainOf20 = ofTwenty(a.ByNext, n), ofTwenty(a.RainHelp, n)
	if a.HasLine {
		m := round(a.Minutes, 10)
		j.Minutes = &m
	}
	if a.Tank != (water.Window{}) {
		j.TankHours = band(a.Tank, 10)
	}
	if d.Away > 0 {
		alive := ofTwenty(a.Survives.Never, n)
		j.SurvivesDays, j.SurvivesOf20 = band(a.Survives, 10), &alive
	}
	at := func(h float64) *string {
		if h >= a.Horizon {
			return nil
		}
		t := float64(d.FromHour) + h
		s := fmt.Sprintf("%sT%02d:00", d.Date+cal.Day(t/24), int(t)%24)
		return &s
	}
	j.Dry = &MomentJSON{at(a.Dry.Early), at(a.Dry.Likely), at(a.Dry.Late)}
	return j
}

func band(w water.Window, per float64) *BandJSON {
	return &BandJSON{round(w.Early, per), round(w.Likely, per), round(w.Late, per)}
}

// round keeps a figure to 1/per, so that the text is the same everywhere.
func round(x, per float64) float64 { return math.Round(x*per) / per }
