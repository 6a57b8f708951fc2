package fetch

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// metAnswer is what is read of the second service.
type metAnswer struct {
	Geometry   struct{ Coordinates []float64 }
	Properties struct {
		Meta struct {
			Units map[string]string
		}
		Timeseries []metEntry
	}
}

type metEntry struct {
	Time time.Time
	Data struct {
		Instant struct {
			Details struct {
				Air  *float64 `json:"air_temperature"`
				Wind *float64 `json:"wind_speed"`
			}
		}
		Next1 *metAhead `json:"next_1_hours"`
		Next6 *metAhead `json:"next_6_hours"`
	}
}

type metAhead struct {
	Details struct {
		Rain *float64 `json:"precipitation_amount"`
		Max  *float64 `json:"air_temperature_max"`
		Min  *float64 `json:"air_temperature_min"`
	}
}

func (c *Client) met(ctx context.Context, site weather.Site, zone *time.Location) (*weather.Forecast, error) {
	address := fmt.Sprintf("%s/weatherapi/locationforecast/2.0/complete?lat=%s&lon=%s&altitude=%.0f", c.o.Met, place(site.LatDeg), place(site.LonDeg), math.Max(0, site.ElevM))
	body, good, trouble, err := c.get(ctx, address)
	if err != nil {
		return nil, err
	}
	days, err := readMet(body, site, zone)
	if err != nil {
		c.forget(address, "its answer made no sense")
		return nil, fmt.Errorf("reading the second service: %w", err)
	}
	return c.finish(&weather.Forecast{Source: metName, Days: days, Notes: []string{"It says nothing of the sun; light follows each day's warmth."}}, good, trouble, zone)
}

// readMet gathers the entries into local days. Near ones cover an hour, far
// ones six; an hour's rain is never counted twice.
func readMet(body []byte, site weather.Site, zone *time.Location) ([]weather.FarDay, error) {
	var a metAnswer
	if err := json.Unmarshal(body, &a); err != nil {
		return nil, err
	}
	at := a.Geometry.Coordinates
	if len(at) < 2 || math.Abs(at[1]-site.LatDeg) > 1 || math.Abs(math.Mod(at[0]-site.LonDeg+540, 360)-180) > 2 {
		return nil, errors.New("it does not answer for the garden's place")
	}
	u := a.Properties.Meta.Units
	for name, want := range map[string]string{"air_temperature": "celsius", "wind_speed": "m/s", "precipitation_amount": "mm"} {
		if got, ok := u[name]; ok && got != want {
			return nil, fmt.Errorf("%s comes in %q, not in %s", name, got, want)
		}
	}
	type sum struct {
		max, min, rain, wind float64
		hours, rainH, windN  float64
	}
	days := map[cal.Day]*sum{}
	var order []cal.Day
	day := func(t time.Time) *sum {
		d := cal.FromTime(t.In(zone))
		if days[d] == nil {
			days[d] = &sum{max: math.Inf(-1), min: math.Inf(1)}
			order = append(order, d)
		}
		return days[d]
	}
	series := a.Properties.Timeseries
	var before time.Time
	for i, e := range series {
		if e.Time.IsZero() || !e.Time.After(before) {
			return nil, errors.New("its hours do not rise")
		}
		before = e.Time
		step := 1.0
		if i+1 < len(series) {
			step = math.Min(6, series[i+1].Time.Sub(e.Time).Hours())
		}
		ahead := e.Data.Next1
		if ahead == nil || step > 1 {
			ahead = e.Data.Next6
		}
		if w := sound(e.Data.Instant.Details.Wind, 0, 110); w != nil {
			s := day(e.Time)
			s.wind += *w * windTo2 * step
			s.windN += step
		}
		if t := sound(e.Data.Instant.Details.Air, -90, 60); t != nil {
			s := day(e.Time)
			s.max, s.min = math.Max(s.max, *t), math.Min(s.min, *t)
		}
		covers := step
		if ahead == nil {
			covers = 0
		}
		// The hours ahead are shared out over the local days they fall in.
		for h := 0.0; h < step; h++ {
			s := day(e.Time.Add(time.Duration(h * float64(time.Hour))))
			s.hours++
			if covers == 0 {
				continue
			}
			length := 1.0
			if ahead == e.Data.Next6 {
				length = 6
				if t := sound(ahead.Details.Max, -90, 60); t != nil {
					s.max = math.Max(s.max, *t)
				}
				if t := sound(ahead.Details.Min, -90, 60); t != nil {
					s.min = math.Min(s.min, *t)
				}
			}
			if r := sound(ahead.Details.Rain, 0, 2000); r != nil {
				s.rain += *r / length
				s.rainH++
			}
		}
	}
	var out []weather.FarDay
	for _, d := range order {
		s := days[d]
		f := weather.FarDay{Day: d}
		if s.hours >= leastHours && s.max >= s.min {
			hi, lo := s.max, s.min
			f.TmaxC, f.TminC = &hi, &lo
		}
		if s.rainH >= leastHours {
			r := s.rain
			f.RainMM = &r
		}
		if s.windN >= leastHours {
			w := s.wind / s.windN
			f.WindMS = &w
		}
		out = append(out, f)
	}
	if len(out) == 0 {
		return nil, errors.New("it holds no hours")
	}
	return out, nil
}
