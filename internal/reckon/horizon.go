package reckon

import (
	"fmt"
	"math"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/ledger"
	"bedweek/internal/shade"
	"bedweek/internal/sun"
)

// What a gardener saw of the sky from a space, as a correction of its light.
//
// Method: a correction moves the edge at one bearing from where it was shown to
// where it was seen. The strip of sky between the two is open (lowered) or shut
// (raised) for that space alone, fistDeg wide when moved by hand and twice as
// wide after a look at the sun. Of several the last counts.
//
// Left out: other spaces, which may see the same thing from elsewhere: mend the
// thing itself in the garden's description for those.

// FistDeg is a fist at arm's length, degrees: common practice among walkers
// and sailors.
const FistDeg = 10

// openMarginDeg is how far above the old edge a lowered strip is opened, so
// that an edge that slants across the strip leaves no sliver.
const openMarginDeg = 3

// mendOf turns a correction into pieces of sky.
func mendOf(e ledger.Edge) shade.Mend {
	m := shade.Mend{BearingDeg: e.BearingDeg, HalfDeg: FistDeg / 2}
	if e.How != "by hand" {
		m.HalfDeg = FistDeg
	}
	if e.EdgeDeg < e.WasDeg {
		m.LowDeg, m.HighDeg, m.Open = e.EdgeDeg, min(e.WasDeg+openMarginDeg, 91), true
		return m
	}
	m.LowDeg, m.HighDeg = e.WasDeg, e.EdgeDeg
	return m
}

// mends are a space's corrections, in the order they were made.
func mends(edges []ledger.EdgeNote, id garden.SpaceID) []shade.Mend {
	var out []shade.Mend
	for _, e := range edges {
		if e.Space == string(id) {
			out = append(out, mendOf(e.Edge))
		}
	}
	return out
}

// edges are the corrections known to the inputs.
func (in *Inputs) edges() []ledger.EdgeNote {
	if in.State == nil {
		return nil
	}
	return in.State.Edges
}

// SunAt returns where the sun stands over a garden by the clock of a day:
// true bearing and height in degrees. zone may be nil, and the clock is then
// mean solar time.
func SunAt(g *garden.Garden, zone *time.Location, day cal.Day, hour float64) (bearingDeg, heightDeg float64) {
	d := sunTowards(g, zone, day, hour)
	return d.BearingDeg(), d.ElevationDeg()
}

func sunTowards(g *garden.Garden, zone *time.Location, day cal.Day, hour float64) geom.Vec {
	site := shade.Place{LatDeg: g.Place.LatDeg, LonDeg: g.Place.LonDeg, ElevM: g.Place.Elev.M}
	return sun.Direction(day, utcHour(g, zone, day, hour), site)
}

// utcHour turns a clock hour of a day into hours of UTC on that day.
func utcHour(g *garden.Garden, zone *time.Location, day cal.Day, hour float64) float64 {
	if zone == nil {
		return hour - 12 + sun.MeanNoon(g.Place.LonDeg)
	}
	y, m, d := day.Time().Date()
	at := time.Date(y, m, d, 0, int(math.Round(hour*60)), 0, 0, zone)
	return at.Sub(time.Date(y, m, d, 0, 0, 0, 0, time.UTC)).Hours()
}

// clockHour is the other way round, of mean solar hours.
func clockHour(g *garden.Garden, zone *time.Location, day cal.Day, solar float64) float64 {
	utc := solar - 12 + sun.MeanNoon(g.Place.LonDeg)
	if zone == nil {
		return solar
	}
	y, m, d := day.Time().Date()
	at := time.Date(y, m, d, 0, 0, 0, 0, time.UTC).Add(time.Duration(utc * float64(time.Hour))).In(zone)
	_, off := at.Zone()
	return utc + float64(off)/3600
}

// SeenSun turns "the sun reached (or left) this spot at a clock hour" into a
// correction, or says in words why it cannot be one.
func (d *LightDesk) SeenSun(space string, day cal.Day, hour float64, left bool) (ledger.Edge, string, error) {
	g := d.light.Garden
	bearing, height := SunAt(g, d.zone, day, hour)
	_, before := SunAt(g, d.zone, day, hour-1.0/6)
	_, after := SunAt(g, d.zone, day, hour+1.0/6)
	clock := clockWords(hour)
	e := ledger.Edge{Space: space, BearingDeg: round(bearing, 10), EdgeDeg: round(height, 10), How: "sun reached", Clock: clock}
	if e.BearingDeg >= 360 {
		e.BearingDeg = 0
	}
	verb := "reached"
	if left {
		e.How, verb = "sun left", "left"
	}
	switch {
	case height <= 0:
		return e, "", fmt.Errorf("at %s on %s the sun is below the level, so it cannot have %s this spot: look at the time again", clock, day.Long(), verb)
	case !left && after <= before:
		return e, "", fmt.Errorf("at %s the sun is sinking: it came out beside something, not over it. Note when it leaves, or move the edge by fists", clock)
	case left && after >= before:
		return e, "", fmt.Errorf("at %s the sun is still climbing: it went behind the side of something. Note when it came, or move the edge by fists", clock)
	}
	was, ok := d.EdgeAt(space, e.BearingDeg)
	if !ok {
		return e, "", fmt.Errorf("this space has no open ground")
	}
	e.WasDeg = round(was, 10)
	return e, movedWords(e), nil
}

// ByHand turns a move of the edge by fists, up (+) or down (-), into a
// correction.
func (d *LightDesk) ByHand(space string, bearingDeg, fists float64) (ledger.Edge, string, error) {
	was, ok := d.EdgeAt(space, bearingDeg)
	if !ok {
		return ledger.Edge{}, "", fmt.Errorf("this space has no open ground")
	}
	e := ledger.Edge{Space: space, BearingDeg: round(geom.Turn360(bearingDeg), 10), WasDeg: round(was, 10), How: "by hand"}
	e.EdgeDeg = round(min(max(was+fists*FistDeg, 0), 90), 10)
	if e.EdgeDeg == e.WasDeg {
		return e, "", fmt.Errorf("the edge cannot go lower than the level, nor higher than overhead")
	}
	return e, movedWords(e), nil
}

// movedWords says by how much an edge moved.
func movedWords(e ledger.Edge) string {
	by := e.EdgeDeg - e.WasDeg
	if by == 0 {
		return fmt.Sprintf("The edge to the %s stays at %.0f°: what is drawn agrees with what you saw.", compass(e.BearingDeg), e.EdgeDeg)
	}
	way := "up"
	if by < 0 {
		way = "down"
	}
	return fmt.Sprintf("The edge to the %s moves %s by %.0f°, about %s, from %.0f° to %.0f°.",
		compass(e.BearingDeg), way, math.Abs(by), fistWords(math.Abs(by)), e.WasDeg, e.EdgeDeg)
}

// fistWords tells a height in fists, to the half.
func fistWords(deg float64) string {
	switch n := math.Round(deg/FistDeg*2) / 2; n {
	case 0:
		return "less than half a fist"
	case 0.5:
		return "half a fist"
	case 1:
		return "one fist"
	default:
		return fmt.Sprintf("%g fists", n)
	}
}

// Compass names a bearing by the nearest of sixteen winds, with its degrees.
func Compass(deg float64) string { return compass(deg) }

// EdgeWords tells a correction in words.
func EdgeWords(e ledger.Edge) string {
	s := movedWords(e)
	switch e.How {
	case "sun reached":
		s = "The sun reached here at " + e.Clock + ". " + s
	case "sun left":
		s = "The sun left here at " + e.Clock + ". " + s
	}
	return s
}

// compass names a bearing by the nearest of sixteen winds, with its degrees.
func compass(deg float64) string {
	names := [16]string{"north", "north-north-east", "north-east", "east-north-east", "east", "east-south-east", "south-east", "south-south-east",
		"south", "south-south-west", "south-west", "west-south-west", "west", "west-north-west", "north-west", "north-north-west"}
	return fmt.Sprintf("%s (%.0f°)", names[int(math.Round(geom.Turn360(deg)/22.5))%16], geom.Turn360(deg))
}

// clockWords tells an hour of the day, to the minute.
func clockWords(hour float64) string {
	m := int(math.Round(hour * 60))
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}
