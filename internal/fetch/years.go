package fetch

import (
	"bytes"
	"context"
	"errors"
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/weather"
)

// Years are the daily weather of many years at a place.
type Years struct {
	CSV      []byte // as weather.Read takes it; its first line says where it is from
	From, To cal.Day
	Days     int // with both temperatures and rain
	Words    string
}

// What one tap asks for: twenty years, up to the days the archive has not
// worked out yet. Its delay is about five days (its own pages, from memory).
const (
	yearsBack   = 20
	archiveLate = 7
	leastYears  = 2 // fewer cannot stand for a climate
)

// Years asks the archive for twenty years up to a day. A day with a gap keeps
// its place with an empty cell.
func (c *Client) Years(ctx context.Context, site weather.Site, today cal.Day) (*Years, error) {
	to := today - archiveLate
	from := to - cal.Day(yearsBack*365.25) + 1
	days, good, trouble, err := c.archive(ctx, site, from, to)
	if err != nil {
		return nil, err
	}
	y := &Years{From: days[0].Day, To: days[len(days)-1].Day}
	on := cal.FromTime(good)
	y.Words = fmt.Sprintf("%s to %s for %s, %s; %s; fetched %s", y.From.Long(), y.To.Long(), place(site.LatDeg), place(site.LonDeg), meteoName, on.Long())
	if trouble != nil {
		y.Words += ", as the service could not be asked again"
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "# %s\ndate,tmax_c,tmin_c,rain_mm,radiation_mj\n", y.Words)
	last := from - 1
	for _, d := range days {
		if d.Day <= last {
			return nil, errors.New("the archive's days are out of order")
		}
		last = d.Day
		if d.TmaxC != nil && d.TminC != nil && d.RainMM != nil {
			y.Days++
		}
		fmt.Fprintf(&b, "%s,%s,%s,%s,%s\n", d.Day, cell(d.TmaxC), cell(d.TminC), cell(d.RainMM), cell(d.RadMJ))
	}
	if y.Days < leastYears*365 {
		return nil, fmt.Errorf("the archive holds only %d whole days for this place", y.Days)
	}
	y.CSV = b.Bytes()
	return y, nil
}
