package reckon

import "bedweek/internal/shade"

// LightJSON is a garden's light as the command line gives it.
type LightJSON struct {
	Garden  string           `json:"garden"`
	Year    int              `json:"year"`
	Week    int              `json:"week,omitempty"` // 1 to 52; absent = the year by month
	Mean    string           `json:"mean_light"`     // what mol_mean is the mean of
	CellM   float64          `json:"cell_m"`
	Classes []float64        `json:"class_hours"` // thresholds of area_by_class
	Spaces  []SpaceLightJSON `json:"spaces"`
}

// SpaceLightJSON is one space.
type SpaceLightJSON struct {
	Space string          `json:"space"`
	Name  string          `json:"name"`
	Times []LightTimeJSON `json:"times"`
}

// LightTimeJSON is a space in a month or a week, a day of it: hours of sun,
// the cosine-weighted sky view factor, mol/m²/day.
type LightTimeJSON struct {
	Month       int        `json:"month"`
	Day         string     `json:"day,omitempty"` // the week's middle day
	Cells       int        `json:"cells"`
	HoursOpaque shade.Span `json:"hours_opaque"`
	Hours       shade.Span `json:"hours"`
	SkyView     shade.Span `json:"sky_view"`
	MolMean     shade.Span `json:"mol_m2_day"`
	MolClear    shade.Span `json:"mol_m2_clear_day"`
	Areas       []float64  `json:"area_by_class"`
}

// JSON tells the light by month, or in one week of the year, 1 to 52; 0 = by
// month.
func (l *GardenLight) JSON(year, week int) LightJSON {
	out := LightJSON{Garden: l.Garden.Name, Year: year, Week: week, Mean: "the weather's mean week",
		CellM: shade.CellM, Classes: sunClassesH[:], Spaces: []SpaceLightJSON{}}
	if !l.Mean {
		out.Mean = "clear days: no weather is given"
	}
	for s := range l.Field.Surfaces() {
		sp := l.Space(s)
		row := SpaceLightJSON{Space: string(sp.ID), Name: sp.Name}
		if week > 0 {
			t := timeJSON(l.Over(s, []int{week - 1}))
			day := l.Field.Day(week - 1)
			t.Month, t.Day = int(day.Month()), day.String()
			row.Times = append(row.Times, t)
		} else {
			for m := 1; m <= 12; m++ {
				t := timeJSON(l.Over(s, l.Weeks(m)))
				t.Month = m
				row.Times = append(row.Times, t)
			}
		}
		out.Spaces = append(out.Spaces, row)
	}
	return out
}

func timeJSON(s shade.SurfaceLight) LightTimeJSON {
	return LightTimeJSON{Cells: s.Cells, HoursOpaque: s.HoursOpaque, Hours: s.Hours, SkyView: s.SkyView,
		MolMean: s.MolMean, MolClear: s.MolClear, Areas: s.Classes}
}
