package reckon

import (
	"errors"
	"fmt"
	"math"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/water"
	"bedweek/internal/weather"
)

// DryAsk says what is asked of Dry.
type DryAsk struct {
	FromHour int         // now, 0 to 23
	NextH    float64     // hours until somebody can water again
	AwayDays int         // days nobody comes, 0 = not asked
	AllowedL float64     // litres that may be given in all, 0 = no limit
	Looks    []SpaceSeen // what was found at spaces before now, in any order; see WaterSeen
}

// SpaceSeen is what somebody found at a space.
type SpaceSeen struct {
	Space  string
	On     cal.Day
	Hour   float64
	What   water.Look
	Litres float64 // of a watering; 0 = until it ran through
}

// MostAway is the longest absence reckoned, days.
const MostAway = 60

// dryDays is how far ahead spaces are looked at.
const dryDays = 21

// Dryness says who runs dry first, on one date.
type Dryness struct {
	Garden   string
	Date     cal.Day
	FromHour int
	Days     int      // looked at
	Rows     []DryRow // soonest dry first; spaces where nothing stands last
	Weather  string
	Taken    []string // in words, what was taken for granted
	Away     int
	NextH    float64    // hours until somebody can water again
	Next     string     // the same as a moment: "tomorrow morning"
	Nights   []Stretch  // dark hours of the days drawn, by the sun
	Rains    []RainDay  // days with a fair chance of rain that helps
	Ration   *Ration    // nil = no limit asked
	Going    *Going     // nil = no absence asked
	Flushes  []FlushRow // containers that were fed: when salt wants washing out
	Loads    []Load     // surfaces of which somebody said what they bear, or that nobody knows
}

// DryRow is one space.
type DryRow struct {
	Space, Name string
	Kind        garden.Kind
	Way         water.Way
	Empty       bool // nothing stands here: not reckoned further
	Crops       []string
	LeafM2      float64 // spread of all leaves today
	Answer      water.Answer
	When        string // "Dry by about Thursday afternoon (…)."
	Give        string
	Out         string // the absence, "" when not asked
	Look        string // the one look worth taking
	Learned     string // what looks have taught, "" = none yet
	Caution     string
	ByNextOf20  int
	Checked     string  // "last checked by hand 6 days ago", "" = never
	DrawnFrom   int     // looks and waterings it rests on
	LitresADay  string  // what it drinks, in words
	Hours       string  // hours until dry, "27 (20 to 41)"
	FullDays    float64 // days a full one lasts at today's thirst, to half spent
	Repels      string  // how mix that dried out is wetted, "" = not likely here
	Ground      *GroundRow
	rank        int
	shaded      int // of twenty: survives the absence in half shade; -1 = cannot be moved
	wetKg       float64
}

// Dry reckons the water of every space on the date of the inputs. The place
// must have been made from the same inputs.
func Dry(in *Inputs, p *Place, ask DryAsk) (*Dryness, error) {
	stays := whatStands(in)
	growStanding(in, p, stays)
	return dry(in, p, ask, stays, nil)
}

// Dry reckons the water of every space on the day of a result, with what
// stands as it was grown for the plan: the quick way to ask again after a look.
func (r *Result) Dry(ask DryAsk) (*Dryness, error) {
	return dry(r.in, r.Place, ask, r.model.stays, &r.water)
}

func dry(in *Inputs, p *Place, ask DryAsk, stays []standing, memo *dryMemo) (*Dryness, error) {
	if ask.FromHour < 0 || ask.FromHour > 23 || ask.AwayDays < 0 || ask.AwayDays > MostAway || !(ask.NextH >= 0) || !(ask.AllowedL >= 0) || math.IsInf(ask.AllowedL, 0) {
		return nil, errors.New("reckon: water: the hour, the next visit, the litres or the days away are out of range")
	}
	book, err := water.LoadBook()
	if err != nil {
		return nil, err
	}
	days := max(dryDays, ask.AwayDays+2)
	d := &Dryness{Garden: in.Garden.Name, Date: in.Date, FromHour: ask.FromHour, Days: days, Weather: p.Set.Words, Away: ask.AwayDays}
	key := skyKey(in, days, ask.FromHour)
	skies, err := memo.sky(key, func() (*skies, error) { return newSkies(in, p, days, ask.FromHour) })
	if err != nil {
		return nil, err
	}
	looks := looksBySpace(in, ask.Looks)
	rows := make([]*DryRow, len(in.Garden.Spaces))
	fresh := func(i int) *DryRow {
		sp := in.Garden.Spaces[i]
		s, crops := wateredSpace(in, p, book, i, stays, days, skies.of(in, sp).ahead)
		row := &DryRow{Space: string(sp.ID), Name: spaceName(sp), Kind: sp.Kind, Way: s.Way, Crops: append(crops, thirstless(sp, in.Date)...), Empty: len(crops) == 0}
		if len(s.LeafM2) > 0 {
			row.LeafM2 = s.LeafM2[0]
		}
		sky := skies.of(in, sp)
		belief := water.Learn(s, water.Unseen(s.Way), sky.past, looks.at(sp.ID, sky.past.Start))
		row.Answer = water.Dry(s, belief, sky.ahead, water.Ask{FromHour: ask.FromHour, NextH: ask.NextH, AwayDays: ask.AwayDays, Seed: in.Seed})
		row.say(in, s, ask, len(p.Set.Futures))
		row.more(in, s, looks[string(sp.ID)], len(p.Set.Futures))
		row.rank = rankOf(in, stays, i)
		row.Ground = groundRow(sp, s)
		if !row.Empty {
			row.Repels = repels(s, looks[string(sp.ID)], row.Answer)
		}
		row.shaded, row.wetKg = -1, 0
		if ask.AwayDays > 0 && !row.Empty {
			row.inShade(sp, s, belief, sky.ahead, ask, in.Seed)
		}
		return row
	}
	each(len(rows), in.Workers, func(i int) {
		if sp := in.Garden.Spaces[i]; sp.Grows() {
			rows[i] = memo.row(rowKey(i, key, ask, looks[string(sp.ID)]), func() *DryRow { return fresh(i) })
		}
	})
	for _, r := range rows {
		if r != nil {
			d.Rows = append(d.Rows, *r)
		}
	}
	sort.SliceStable(d.Rows, func(a, b int) bool {
		x, y := d.Rows[a], d.Rows[b]
		if x.Empty != y.Empty {
			return y.Empty
		}
		if x.Answer.Dry.Likely != y.Answer.Dry.Likely {
			return x.Answer.Dry.Likely < y.Answer.Dry.Likely
		}
		return x.Space < y.Space
	})
	if d.Loads, err = Loads(in.Garden); err != nil {
		return nil, err
	}
	d.Flushes = flushRows(in, stays)
	d.Taken = takenForGranted(in, d.Rows)
	tierGive(in, d.Rows)
	d.picture(in, p, ask)
	d.Ration = ration(d.Rows, ask.AllowedL)
	if ask.AwayDays > 0 {
		d.Going = going(in, d.Rows, ask.AwayDays, len(p.Set.Futures))
	}
	return d, nil
}

// DryNow is Dry with the ledger as it stands now, for the moment between a
// note and the next plan.
func (r *Result) DryNow(state *ledger.State, ask DryAsk) (*Dryness, error) {
	in := *r.in
	in.State = state
	return dry(&in, r.Place, ask, r.model.stays, &r.water)
}

// airs is the air of one kind of place: behind walls or in the open.
type airs struct{ ahead, past *water.Sky }

type skies struct{ open, walled airs }

// wallWind is the share of the wind that reaches spaces behind walls. Common
// practice, no source: yards differ from a third to nearly all.
const wallWind = 0.6

// terraceM is the floor height from which a space stands above the walls.
const terraceM = 2

func (s *skies) of(in *Inputs, sp garden.Space) airs {
	if in.Garden.Place.Sheltered && sp.Floor.M < terraceM {
		return s.walled
	}
	return s.open
}

// lookBack is how far looks and past rain reach, days.
const lookBack = 45

func newSkies(in *Inputs, p *Place, days, fromHour int) (*skies, error) {
	past, ok := pastWeather(in, p, lookBack)
	back := lookBack
	if ok && fromHour > 0 { // the hours of today that have been
		past[0].Days = append(past[0].Days, meanDay(p.Set.Futures, in.Date))
		back++
	}
	s := &skies{}
	for _, k := range []struct {
		to    *airs
		share float64
	}{{&s.open, 1}, {&s.walled, wallWind}} {
		k.to.ahead = water.NewSky(p.Set.Futures, in.site(), in.Date, days, k.share)
		if !ok || k.to.ahead == nil {
			return nil, fmt.Errorf("reckon: water: the futures do not cover %d days from %s", days, in.Date.Long())
		}
		k.to.past = water.NewSky(past, in.site(), in.Date-lookBack, back, k.share)
		if k.to.past != nil && back > lookBack {
			k.to.past.UntilH = fromHour
		}
	}
	return s, nil
}

// meanDay is the middle of a day over the futures: what today is taken to be
// like until it is over.
func meanDay(fs []weather.Future, d cal.Day) weather.Day {
	var m weather.Day
	n := 0.0
	for _, f := range fs {
		i := int(d - f.Start)
		if i < 0 || i >= len(f.Days) {
			continue
		}
		x := f.Days[i]
		m.TmaxC, m.TminC, m.RainMM = m.TmaxC+x.TmaxC, m.TminC+x.TminC, m.RainMM+x.RainMM
		m.WindMS, m.RadMJ = m.WindMS+x.WindMS, m.RadMJ+x.RadMJ
		n++
	}
	n = math.Max(n, 1)
	return weather.Day{TmaxC: m.TmaxC / n, TminC: m.TminC / n, RainMM: m.RainMM / n, WindMS: m.WindMS / n, RadMJ: m.RadMJ / n}
}

// looks holds what was seen, by space.
type looks map[string][]SpaceSeen

// looksBySpace puts the looks asked about in order; without any, those the
// ledger keeps of whole spaces.
func looksBySpace(in *Inputs, asked []SpaceSeen) looks {
	all := append([]SpaceSeen(nil), asked...)
	if in.State != nil && len(asked) == 0 {
		for _, l := range in.State.Wet {
			all = append(all, seen(l))
		}
	}
	out := looks{}
	for _, l := range all {
		switch l.What {
		case water.Watered, water.Damp, water.DryLook, water.Wilting:
		default:
			continue
		}
		if l.On <= in.Date && l.On >= in.Date-lookBack {
			out[l.Space] = append(out[l.Space], l)
		}
	}
	for k := range out {
		v := out[k]
		sort.SliceStable(v, func(a, b int) bool {
			if v[a].On != v[b].On {
				return v[a].On < v[b].On
			}
			return v[a].Hour < v[b].Hour
		})
	}
	return out
}

// at returns a space's looks by the hour since a day; the same look twice at
// one hour counts once.
func (l looks) at(id garden.SpaceID, start cal.Day) []water.Seen {
	var out []water.Seen
	for _, s := range l[string(id)] {
		seen := water.Seen{Hour: 24*float64(s.On-start) + s.Hour, What: s.What, Litres: math.Max(0, s.Litres)}
		if n := len(out); n > 0 && out[n-1] == seen {
			continue
		}
		out = append(out, seen)
	}
	return out
}
