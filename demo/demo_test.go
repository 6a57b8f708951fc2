package demo

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"strconv"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

// rows reads a CSV file with notes in "#" lines, as maps from its header.
func rows(t *testing.T, text []byte) []map[string]string {
	t.Helper()
	r := csv.NewReader(bytes.NewReader(text))
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []map[string]string
	for _, line := range all[1:] {
		m := map[string]string{}
		for i, name := range all[0] {
			m[name] = line[i]
		}
		out = append(out, m)
	}
	return out
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// TestSouthNormals works the southern normals out again from the record.
func TestSouthNormals(t *testing.T) {
	var sum [13]struct{ max, min, rain, n float64 }
	for _, r := range rows(t, SeattleCSV) {
		day, err := cal.Parse(r["date"])
		if err != nil {
			t.Fatal(err)
		}
		s := &sum[day.Month()]
		s.max += number(t, r["temp_max"])
		s.min += number(t, r["temp_min"])
		s.rain += number(t, r["precipitation"])
		s.n++
	}
	got := rows(t, SouthNormalsCSV)
	if len(got) != 12 {
		t.Fatalf("%d months", len(got))
	}
	for i, r := range got {
		s := sum[(i+6)%12+1]
		for name, want := range map[string]float64{"month": float64(i + 1), "tmax_c": s.max / s.n, "tmin_c": s.min / s.n, "rain_mm": s.rain / 4} {
			if x := number(t, r[name]); math.Abs(x-want) > 0.0501 { // printed to one decimal
				t.Errorf("month %d %s: %v, want %.2f (monthly means of seattle-weather.csv, turned by six months)", i+1, name, x, want)
			}
		}
	}
}

// standing is a planting of the story.
type standing struct {
	space, crop, variety string
	count                int
}

// story replays the events over the garden file and reports what cannot be.
type story struct {
	t      *testing.T
	garden *garden.Garden
	book   *crop.Book
	all    []*standing
}

// find returns the one planting an event speaks of.
func (s *story) find(space, crop, variety string) *standing {
	var found *standing
	for _, p := range s.all {
		if p.space == space && p.crop == crop && (p.variety == variety || variety == "") && p.count > 0 {
			if found != nil {
				s.t.Errorf("%s in %s: two plantings answer", crop, space)
			}
			found = p
		}
	}
	return found
}

// take moves n plants from the lamp shelf or the bench.
func (s *story) take(crop, variety string, n int) {
	for _, from := range []string{"store", "bench"} {
		if p := s.find(from, crop, variety); p != nil {
			if p.count < n {
				s.t.Errorf("%d %s set out, %d stood in the %s", n, crop, p.count, from)
			}
			p.count -= n
			return
		}
	}
	s.t.Errorf("%s %s set out, none stood in the store or on the bench", crop, variety)
}

// crowd wants what stands in a space to fit at the book's spacing, four times
// over at most: carrots before thinning and radishes stand close.
func (s *story) crowd(date, id string) {
	sp, ok := s.garden.Space(garden.SpaceID(id))
	if !ok || !sp.Grows() {
		return
	}
	need := 0.0
	for _, p := range s.all {
		if p.space != id {
			continue
		}
		if c, ok := s.book.Crop(crop.ID(p.crop)); ok {
			need += float64(p.count) * c.SpacingM.Value * c.SpacingM.Value
		}
	}
	if room := sp.AreaM2() + 0.05*float64(sp.Pockets); need > 4*room {
		s.t.Errorf("%s: plants in %s want %.2f m², it has %.2f m²", date, id, need, room)
	}
}

// carry moves a tray within the shelf and the bench.
func (s *story) carry(where, space, crop, variety string) {
	for _, from := range []string{"store", "bench"} {
		if p := s.find(from, crop, variety); p != nil {
			p.space = space
			return
		}
	}
	s.t.Errorf("%s: no tray of it stands there", where)
}

func (s *story) tell(r map[string]string) {
	t := s.t
	n, where := 0, fmt.Sprintf("%s %s %s in %s", r["date"], r["kind"], r["crop"], r["space"])
	if r["count"] != "" {
		n = int(number(t, r["count"]))
	}
	switch r["kind"] {
	case "seed tested", "described":
		if r["space"] != "" {
			t.Errorf("%s: a packet stands in no space", where)
		}
		if _, ok := s.book.Crop(crop.ID(r["crop"])); !ok {
			t.Errorf("%s: no such crop", where)
		}
		return
	case "hardening", "pricked out", "potted on":
		s.carry(where, r["space"], r["crop"], r["variety"])
		return
	}
	if _, ok := s.garden.Space(garden.SpaceID(r["space"])); !ok {
		t.Errorf("%s: no such space", where)
	}
	if _, ok := s.book.Crop(crop.ID(r["crop"])); !ok {
		t.Errorf("%s: no such crop", where)
	}
	switch r["kind"] {
	case "sown", "set out":
		if n < 1 {
			t.Errorf("%s: no count", where)
		}
		if r["kind"] == "set out" {
			s.take(r["crop"], r["variety"], n)
		}
		s.all = append(s.all, &standing{r["space"], r["crop"], r["variety"], n})
		s.crowd(r["date"], r["space"])
		return
	}
	p := s.find(r["space"], r["crop"], r["variety"])
	if p == nil {
		t.Errorf("%s: nothing of it stands there", where)
		return
	}
	switch r["kind"] {
	case "pulled", "lost":
		if n > p.count {
			t.Errorf("%s: %d of %d", where, n, p.count)
		}
		if n == 0 {
			n = p.count
		}
		p.count -= n
	case "counted":
		p.count = n
	case "looked":
		if r["note"] == "" {
			t.Errorf("%s: no look", where)
		}
	case "picked":
		if kg := number(t, r["kg"]); kg <= 0 || kg > 5 {
			t.Errorf("%s: %v kg", where, kg)
		}
	default:
		t.Errorf("%s: no such kind", where)
	}
}

// TestStory replays the season: every event speaks of something that stands
// there, in order, and fits the space.
func TestStory(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("garden.yaml", GardenYAML, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	s := &story{t: t, garden: g, book: book}
	for _, sp := range g.Spaces {
		for _, p := range sp.Standing {
			s.all = append(s.all, &standing{string(sp.ID), string(p.Crop), p.Variety, p.Count})
		}
		s.crowd("at first", string(sp.ID))
	}
	last := g.From
	for _, r := range rows(t, EventsCSV) {
		day, err := cal.Parse(r["date"])
		if err != nil || day < last || day >= cal.Of(2015, 8, 24) {
			t.Errorf("%s: out of order, or not before 24 August 2015 (%v)", r["date"], err)
		}
		last = day
		s.tell(r)
	}
	left := 0
	for _, p := range s.all {
		if p.count > 0 {
			left++
		}
	}
	if left < 15 {
		t.Errorf("%d plantings stand on 24 August, want a full garden", left)
	}
}

// TestStorySuitsTheWeather wants tender plants set out into a week without
// cold nights, and nothing sown in frost: limits of common practice.
func TestStorySuitsTheWeather(t *testing.T) {
	lows := map[string]float64{}
	for _, r := range rows(t, SeattleCSV) {
		lows[r["date"]] = number(t, r["temp_min"])
	}
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	looked := 0
	for _, r := range rows(t, EventsCSV) {
		c, ok := book.Crop(crop.ID(r["crop"]))
		if !ok || r["space"] == "store" || r["kind"] != "sown" && r["kind"] != "set out" {
			continue
		}
		day, err := time.Parse("2006-01-02", r["date"])
		if err != nil {
			t.Fatal(err)
		}
		least := 0.5
		if c.Warm {
			least = 7 // common practice for setting out tender plants
		}
		if c.ID == "potato" {
			least = 2 // lies in the ground for three weeks
		}
		for i := range 7 {
			date := day.AddDate(0, 0, i).Format("2006-01-02")
			low, ok := lows[date]
			if !ok {
				t.Fatalf("no weather for %s", date)
			}
			if low < least {
				t.Errorf("%s %s %s: the night of %s fell to %v °C, want %v", r["date"], r["kind"], r["crop"], date, low, least)
			}
			looked++
		}
	}
	if looked < 100 {
		t.Errorf("only %d nights looked at", looked)
	}
}
