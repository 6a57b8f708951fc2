package fetch

import (
	"bufio"
	"encoding/csv"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// toldName is the file of kept forecasts, a table that anything can read: the
// first forecast of each day as it was fetched, some 300 bytes.
const toldName = "forecasts.csv"

const toldHead = "issued,latitude,longitude,day,tmax_c,tmin_c,rain_mm\n"

// Keep writes a forecast down, so that it can be held against what comes. Of
// each day and place the first is kept. A forecast that is itself an old one,
// as its service could not be asked, was kept when it came. Without a folder
// nothing is kept.
func (c *Client) Keep(fc *weather.Forecast, site weather.Site) error {
	if c.o.Dir == "" || fc == nil {
		return nil
	}
	for _, k := range c.Kept(site) {
		if k.Issued == fc.Issued {
			return nil
		}
	}
	if err := os.MkdirAll(c.o.Dir, 0o700); err != nil {
		return fmt.Errorf("keeping the forecast: %w", err)
	}
	f, err := os.OpenFile(filepath.Join(c.o.Dir, toldName), os.O_CREATE|os.O_APPEND|os.O_WRONLY, 0o600)
	if err != nil {
		return fmt.Errorf("keeping the forecast: %w", err)
	}
	var b strings.Builder
	if at, err := f.Stat(); err == nil && at.Size() == 0 {
		b.WriteString(toldHead)
	} else {
		b.WriteString("\n") // ends a line that a lost write left open; empty lines are passed over
	}
	for _, d := range fc.Days {
		if lead := d.Day - fc.Issued; lead >= 0 && lead < weather.MostFarDays {
			fmt.Fprintf(&b, "%s,%s,%s,%s,%s,%s,%s\n", fc.Issued, place(site.LatDeg), place(site.LonDeg), d.Day, cell(d.TmaxC), cell(d.TminC), cell(d.RainMM))
		}
	}
	_, err = f.WriteString(b.String())
	if err = errors.Join(err, f.Close()); err != nil {
		return fmt.Errorf("keeping the forecast: %w", err)
	}
	return nil
}

// Kept are the forecasts kept for a place, the oldest first. Lines that cannot
// be read are left out.
func (c *Client) Kept(site weather.Site) (out []*weather.Forecast) {
	if c.o.Dir == "" {
		return nil
	}
	f, err := os.Open(filepath.Join(c.o.Dir, toldName))
	if err != nil {
		return nil
	}
	defer f.Close()
	lines := bufio.NewScanner(f)
	for lines.Scan() {
		issued, d, ok := toldLine(lines.Text(), site)
		if !ok {
			continue
		}
		if n := len(out); n == 0 || out[n-1].Issued != issued {
			out = append(out, &weather.Forecast{Issued: issued})
		}
		fc := out[len(out)-1]
		fc.Days = append(fc.Days, d)
	}
	return out
}

// toldLine reads a line of the table for a place.
func toldLine(line string, site weather.Site) (issued cal.Day, d weather.FarDay, ok bool) {
	v, err := csv.NewReader(strings.NewReader(line)).Read()
	if err != nil || len(v) != strings.Count(toldHead, ",")+1 || v[1] != place(site.LatDeg) || v[2] != place(site.LonDeg) {
		return 0, d, false
	}
	var wrong [2]error
	issued, wrong[0] = cal.Parse(v[0])
	d.Day, wrong[1] = cal.Parse(v[3])
	if errors.Join(wrong[:]...) != nil {
		return 0, d, false
	}
	d.TmaxC, d.TminC, d.RainMM = told(v[4], -90, 60), told(v[5], -90, 60), told(v[6], 0, 2000)
	return issued, d, true
}

// told reads a cell; nil is not said.
func told(text string, low, high float64) *float64 {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return nil
	}
	return sound(&x, low, high)
}

// cell writes a value; an empty cell is not said.
func cell(v *float64) string {
	if v == nil {
		return ""
	}
	return strconv.FormatFloat(*v, 'f', -1, 64)
}
