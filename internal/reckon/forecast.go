package reckon

import (
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// Forecasts are what the plan says today of each planting in the ground of
// which nothing was kept yet, to be kept in the ledger.
func (r *Result) Forecasts() []ledger.Forecast {
	told := map[string]bool{}
	if r.in.State != nil {
		for _, f := range r.in.State.Forecasts {
			told[f.Planting] = true
		}
	}
	var out []ledger.Forecast
	for i, s := range r.model.stays {
		if told[s.id] || s.crop.Harvest == crop.Bloom || s.assumed {
			continue
		}
		l := r.stayLine(i)
		f := ledger.Forecast{Planting: s.id, Crop: string(s.crop.ID), Space: l.Space, Plants: s.count, OfTwenty: max(0, min(20, l.OfTwenty)),
			FirstEarly: l.First.Early, FirstLikely: l.First.Likely, FirstLate: l.First.Late,
			OutEarly: l.Out.Early, OutLikely: l.Out.Likely, OutLate: l.Out.Late}
		st := r.model.p.Stays[i]
		var kg []float64
		for _, row := range st.Meals {
			sum := 0.0
			for w, v := range row {
				if w <= r.Plan.Pull[i] {
					sum += float64(v) * s.crop.MealKg
				}
			}
			kg = append(kg, sum)
		}
		if st.Food >= 0 && len(kg) > 0 {
			f.KgLow, f.KgLikely, f.KgHigh = grams(quantile(kg, 0.1)), grams(quantile(kg, 0.5)), grams(quantile(kg, 0.9))
		}
		out = append(out, f)
	}
	return out
}

// grams rounds kilos to whole grams, so that equal words are equal bytes.
func grams(kg float64) float64 { return float64(int(kg*1000+0.5)) / 1000 }
