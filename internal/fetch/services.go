package fetch

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"sort"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Names of the services, as their terms want them shown.
const (
	meteoName = "weather data by Open-Meteo.com, CC BY 4.0"
	metName   = "weather data from MET Norway, CC BY 4.0"
)

// windTo2 brings wind at 10 m to 2 m. [FAO56] eq. 47.
var windTo2 = 4.87 / math.Log(67.8*10-5.42)

// oldest is the age at which a forecast is no longer used.
const oldest = 3 * 24 * time.Hour

// Forecast asks for the coming days: the first service, and the second when it
// fails. zone is the garden's clock; nil = UTC. The error says what both said.
func (c *Client) Forecast(ctx context.Context, site weather.Site, zone *time.Location) (*weather.Forecast, error) {
	if zone == nil {
		zone = time.UTC
	}
	fc, first := c.meteo(ctx, site, zone)
	if first == nil {
		return fc, nil
	}
	fc, second := c.met(ctx, site, zone)
	if second == nil {
		return fc, nil
	}
	return nil, fmt.Errorf("no forecast: %w; %w", first, second)
}

// place writes a coordinate to two decimals: enough for any forecast, and no
// more of the household than needed.
func place(x float64) string { return fmt.Sprintf("%.2f", x) }

// finish puts issue day, age and checks on a forecast.
func (c *Client) finish(fc *weather.Forecast, good time.Time, trouble error, zone *time.Location) (*weather.Forecast, error) {
	now := c.o.Now()
	age := now.Sub(good)
	if age > oldest {
		return nil, fmt.Errorf("the last good forecast is %.0f days old: %w", age.Hours()/24, trouble)
	}
	if trouble != nil {
		fc.Notes = append(fc.Notes, fmt.Sprintf("It is %.0f hours old, as the service could not be asked again.", math.Ceil(age.Hours())))
	}
	fc.Issued = cal.FromTime(good.In(zone))
	today := cal.FromTime(now.In(zone))
	sort.SliceStable(fc.Days, func(a, b int) bool { return fc.Days[a].Day < fc.Days[b].Day })
	usable := 0
	for _, d := range fc.Days {
		if d.Day >= today && d.Day < today+weather.MostFarDays && d.TmaxC != nil && d.TminC != nil {
			usable++
		}
	}
	if usable == 0 {
		return nil, errors.New("its days are not the coming ones; is a clock wrong?")
	}
	return fc, nil
}

// sound drops a value no thermometer or gauge could show.
func sound(x *float64, low, high float64) *float64 {
	if x == nil || !(*x >= low && *x <= high) {
		return nil
	}
	v := *x
	return &v
}

// meteoAnswer is what is read of the first service.
type meteoAnswer struct {
	Latitude, Longitude *float64
	Daily               map[string]json.RawMessage
	DailyUnits          map[string]string `json:"daily_units"`
	Hourly              map[string]json.RawMessage
	HourlyUnits         map[string]string `json:"hourly_units"`
}

const meteoDaily = "temperature_2m_max,temperature_2m_min,precipitation_sum,shortwave_radiation_sum"

func (c *Client) meteo(ctx context.Context, site weather.Site, zone *time.Location) (*weather.Forecast, error) {
	address := fmt.Sprintf("%s/v1/forecast?latitude=%s&longitude=%s&daily=%s,precipitation_probability_max&hourly=wind_speed_10m&wind_speed_unit=ms&timezone=%s&forecast_days=%d",
		c.o.Meteo, place(site.LatDeg), place(site.LonDeg), meteoDaily, strings.ReplaceAll(zoneName(zone), "/", "%2F"), weather.MostFarDays+1)
	body, good, trouble, err := c.get(ctx, address)
	if err != nil {
		return nil, err
	}
	days, err := readMeteo(body, site)
	if err != nil {
		c.forget(address, "its answer made no sense")
		return nil, fmt.Errorf("reading the first service: %w", err)
	}
	return c.finish(&weather.Forecast{Source: meteoName, Days: days}, good, trouble, zone)
}

// zoneName is the zone as the service knows it.
func zoneName(zone *time.Location) string {
	if n := zone.String(); n != "UTC" && n != "Local" && n != "" {
		return n
	}
	return "UTC"
}

// readMeteo reads a forecast or an archive answer.
func readMeteo(body []byte, site weather.Site) ([]weather.FarDay, error) {
	var a meteoAnswer
	if err := json.Unmarshal(body, &a); err != nil {
		return nil, err
	}
	if a.Latitude == nil || a.Longitude == nil {
		return nil, errors.New("it does not say for which place it answers")
	}
	if math.Abs(*a.Latitude-site.LatDeg) > 1 || math.Abs(math.Mod(*a.Longitude-site.LonDeg+540, 360)-180) > 2 {
		return nil, fmt.Errorf("it answers for %.1f, %.1f, not for the garden", *a.Latitude, *a.Longitude)
	}
	for name, want := range map[string]string{"temperature_2m_max": "°C", "temperature_2m_min": "°C", "precipitation_sum": "mm"} {
		if got, ok := a.DailyUnits[name]; ok && got != want {
			return nil, fmt.Errorf("%s comes in %q, not in %s", name, got, want)
		}
	}
	var dates []string
	if json.Unmarshal(a.Daily["time"], &dates) != nil || len(dates) == 0 {
		return nil, errors.New("it holds no days")
	}
	column := func(name string, low, high float64) ([]*float64, error) {
		raw, ok := a.Daily[name]
		if !ok {
			return make([]*float64, len(dates)), nil
		}
		var v []*float64
		if err := json.Unmarshal(raw, &v); err != nil || len(v) != len(dates) {
			return nil, fmt.Errorf("%s does not fit its days", name)
		}
		for i := range v {
			v[i] = sound(v[i], low, high)
		}
		return v, nil
	}
	cols := map[string][]*float64{}
	for _, q := range []struct {
		name      string
		low, high float64
	}{{"temperature_2m_max", -90, 60}, {"temperature_2m_min", -90, 60}, {"precipitation_sum", 0, 2000},
		{"shortwave_radiation_sum", 0, 50}, {"precipitation_probability_max", 0, 100}} {
		v, err := column(q.name, q.low, q.high)
		if err != nil {
			return nil, err
		}
		cols[q.name] = v
	}
	wind, err := meteoWind(a)
	if err != nil {
		return nil, err
	}
	var out []weather.FarDay
	for i, t := range dates {
		d, err := cal.Parse(t)
		if err != nil {
			return nil, fmt.Errorf("%q is no day", t)
		}
		day := weather.FarDay{Day: d, TmaxC: cols["temperature_2m_max"][i], TminC: cols["temperature_2m_min"][i],
			RainMM: cols["precipitation_sum"][i], RadMJ: cols["shortwave_radiation_sum"][i], WindMS: wind[t]}
		if p := cols["precipitation_probability_max"][i]; p != nil {
			share := *p / 100
			day.RainChance = &share
		}
		if day.TmaxC != nil && day.TminC != nil && *day.TmaxC < *day.TminC {
			day.TmaxC, day.TminC = nil, nil
		}
		out = append(out, day)
	}
	return out, nil
}

// meteoWind is the mean wind of each local date, at 2 m. A day on which clocks
// change has 23 or 25 hours, of which each counts.
func meteoWind(a meteoAnswer) (map[string]*float64, error) {
	out := map[string]*float64{}
	if a.Hourly["time"] == nil {
		return out, nil
	}
	var hours []string
	var v []*float64
	if json.Unmarshal(a.Hourly["time"], &hours) != nil || json.Unmarshal(a.Hourly["wind_speed_10m"], &v) != nil || len(v) != len(hours) {
		return nil, errors.New("its wind does not fit its hours")
	}
	if u, ok := a.HourlyUnits["wind_speed_10m"]; ok && u != "m/s" {
		return nil, fmt.Errorf("wind comes in %q, not in m/s", u)
	}
	sum, n := map[string]float64{}, map[string]int{}
	for i, h := range hours {
		date, _, ok := strings.Cut(h, "T")
		if w := sound(v[i], 0, 110); ok && w != nil {
			sum[date] += *w * windTo2
			n[date]++
		}
	}
	for date, k := range n {
		if k >= leastHours {
			mean := sum[date] / float64(k)
			out[date] = &mean
		}
	}
	return out, nil
}

// leastHours is how much of a day must be known for a mean or an extreme.
const leastHours = 20

// Archive asks for days that have been, both ends included; at most 1100 days.
func (c *Client) Archive(ctx context.Context, site weather.Site, from, to cal.Day) ([]weather.FarDay, string, error) {
	if to < from || to-from > 1100 {
		return nil, "", errors.New("archive: want 1 to 1100 days")
	}
	days, _, _, err := c.archive(ctx, site, from, to)
	return days, meteoName, err
}

// archive asks for days that have been, and when they were last known good.
func (c *Client) archive(ctx context.Context, site weather.Site, from, to cal.Day) (days []weather.FarDay, good time.Time, trouble, err error) {
	address := fmt.Sprintf("%s/v1/archive?latitude=%s&longitude=%s&start_date=%s&end_date=%s&daily=%s&timezone=auto",
		c.o.Archive, place(site.LatDeg), place(site.LonDeg), from, to, meteoDaily)
	body, good, trouble, err := c.get(ctx, address)
	if err != nil {
		return nil, good, trouble, err
	}
	days, err = readMeteo(body, site)
	if err == nil && (days[0].Day < from || days[len(days)-1].Day > to) {
		err = errors.New("its days are not those asked for")
	}
	if err != nil {
		c.forget(address, "its answer made no sense")
		return nil, good, trouble, fmt.Errorf("reading the archive: %w", err)
	}
	return days, good, trouble, nil
}
