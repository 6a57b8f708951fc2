package weather

import (
	"fmt"
	"io"
	"strings"
	"time"
)

// Hourly is a table of hourly normals: temperature, and wind and pressure
// where given. A year has 8759 or 8760 lines; the first hour may be missing.
type Hourly struct {
	Columns                    []string
	First, Last                string // as written
	Month                      []int  // 1..12, by line
	Hour                       []int  // 0..23
	TempC, WindMS, PressureHPa []float64
}

// ReadHourly reads hourly normals. They hold no rain, so they cannot drive
// futures by themselves; they give the monthly temperatures (see Monthly).
// The result is nil when a fault makes it useless.
func ReadHourly(name string, r io.Reader) (*Hourly, []Fault) {
	fl := &faultList{}
	lines := readLines(r, fl)
	if lines == nil {
		return nil, fl.all()
	}
	var h heading
	out := &Hourly{}
	for i, line := range lines {
		if t := strings.TrimSpace(line); t == "" || strings.HasPrefix(t, "#") {
			continue
		}
		if out.Columns == nil {
			h = newHeading(line)
			out.Columns = h.names
			if h.find("date") < 0 || h.find("temperature") < 0 {
				fl.add(i+1, line, "no columns date and temperature", "Write the heading date,temperature.")
				return nil, fl.all()
			}
			continue
		}
		out.line(h, i+1, line, fl)
	}
	if len(out.TempC) == 0 {
		fl.add(0, "", "no hours could be read", "Check the heading and the lines below it.")
		return nil, fl.all()
	}
	if s := Summarise(out.TempC); s.Mean > 35 {
		fl.add(0, fmt.Sprintf("mean %.1f", s.Mean), "the temperatures look like °F", "Convert them: °C = (°F - 32) / 1.8.")
		return nil, fl.all()
	}
	return out, fl.all()
}

func (o *Hourly) line(h heading, line int, text string, fl *faultList) {
	f := splitCSV(text, h.sep)
	if len(f) != len(h.names) {
		fl.add(line, text, fmt.Sprintf("%d values where the heading has %d", len(f), len(h.names)), "Give each line as many values as the heading has.")
		return
	}
	stamp := strings.TrimSpace(f[h.find("date")])
	t, err := time.Parse("2006-01-02T15:04:05", stamp[:min(len(stamp), 19)])
	if err != nil {
		fl.add(line, stamp, "date not understood", "Write hours as 2010-01-31T15:00:00.")
		return
	}
	temp, blank, ok := number(f[h.find("temperature")], h.sep)
	if blank || !ok {
		fl.add(line, f[h.find("temperature")], "not a number", "Every hour needs a temperature.")
		return
	}
	if o.First == "" {
		o.First = stamp
	}
	o.Last = stamp
	o.Month, o.Hour = append(o.Month, int(t.Month())), append(o.Hour, t.Hour())
	o.TempC = append(o.TempC, temp)
	for _, c := range []struct {
		q    string
		into *[]float64
	}{{"wind", &o.WindMS}, {"pressure", &o.PressureHPa}} {
		if at := h.find(c.q); at >= 0 {
			if v, blank, ok := number(f[at], h.sep); ok && !blank {
				*c.into = append(*c.into, v)
			}
		}
	}
}

// Monthly returns the mean warmest and coldest hour of each month's mean day.
// The range is a little smaller than that of daily extremes, which do not fall
// at one hour. ok is false when a month is missing.
func (o *Hourly) Monthly() (tmaxC, tminC [12]float64, ok bool) {
	var sum, n [12][24]float64
	for i, t := range o.TempC {
		sum[o.Month[i]-1][o.Hour[i]] += t
		n[o.Month[i]-1][o.Hour[i]]++
	}
	for m := range sum {
		seen := false
		for h := range sum[m] {
			if n[m][h] == 0 {
				continue
			}
			v := sum[m][h] / n[m][h]
			if !seen || v > tmaxC[m] {
				tmaxC[m] = v
			}
			if !seen || v < tminC[m] {
				tminC[m] = v
			}
			seen = true
		}
		if !seen {
			return tmaxC, tminC, false
		}
	}
	return tmaxC, tminC, true
}
