package garden

import (
	_ "embed"
	"fmt"
	"math"
	"strings"
	"time"

	"bedweek/internal/unit"
)

//go:embed places.txt
var placesText string

// Town is a place to choose from when a garden is begun, with its climate from
// memory: good for a first answer only.
type Town struct {
	Name                string
	Latitude, Longitude string // as typed: 47.6 N
	LatDeg, LonDeg      float64
	Elevation, Zone     string
	Months              [12]string // as ParseMonth reads them
}

// FromMemory says where a town's months come from.
func (t Town) FromMemory() string { return t.Name + ", from memory" }

// Towns lists the built-in places by name. A line that does not read is our
// own mistake and panics; a test reads them all.
func Towns() []Town {
	var all []Town
	for _, line := range strings.Split(placesText, "\n") {
		if line = strings.TrimSpace(line); line == "" || line[0] == '#' {
			continue
		}
		t, err := town(line)
		if err != nil {
			panic("garden: the list of places holds a line that does not read")
		}
		all = append(all, t)
	}
	return all
}

func town(line string) (Town, error) {
	f := strings.Split(line, "|")
	if len(f) != 6 {
		return Town{}, fmt.Errorf("%d parts", len(f))
	}
	for i := range f {
		f[i] = strings.TrimSpace(f[i])
	}
	t := Town{Name: f[0], Latitude: f[1], Longitude: f[2], Elevation: f[3], Zone: f[4]}
	var err error
	if t.LatDeg, err = unit.ParseLatitude(f[1]); err != nil {
		return t, err
	}
	if t.LonDeg, err = unit.ParseLongitude(f[2]); err != nil {
		return t, err
	}
	months := strings.Fields(f[5])
	if len(months) != 12 {
		return t, fmt.Errorf("%d months", len(months))
	}
	for i, m := range months {
		p := strings.Split(m, "/")
		if len(p) != 3 {
			return t, fmt.Errorf("month %d", i+1)
		}
		t.Months[i] = p[0] + " C, " + p[1] + " C, " + p[2] + " mm"
	}
	return t, nil
}

// earthKm is the mean radius of the earth.
const earthKm = 6371

// NearestTown returns the listed place nearest to a point, and how far it is
// in kilometres along the ground.
func NearestTown(latDeg, lonDeg float64) (Town, float64) {
	var best Town
	least := math.Inf(1)
	for _, t := range Towns() {
		a, b := latDeg*math.Pi/180, t.LatDeg*math.Pi/180
		turn := (lonDeg - t.LonDeg) * math.Pi / 180
		h := math.Pow(math.Sin((a-b)/2), 2) + math.Cos(a)*math.Cos(b)*math.Pow(math.Sin(turn/2), 2)
		if km := 2 * earthKm * math.Asin(math.Min(1, math.Sqrt(h))); km < least {
			best, least = t, km
		}
	}
	return best, least
}

// MonthsValue is a value for the file's "months": twelve texts as typed,
// January first.
func MonthsValue(typed [12]string) Value {
	v := Value{}
	for i, t := range typed {
		v.Pairs = append(v.Pairs, KeyValue{strings.ToLower(time.Month(i + 1).String()), Text(t)})
	}
	return v
}
