package reckon

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/weather"
)

// Own thermometer and gauge. What the gardener read wins over the station for
// its day; on still nights it also teaches how much colder a space runs.

// ColdOffset is how much warmer (+) or colder (-) than the station the air is
// on still nights.
type ColdOffset struct {
	C      float64
	SpanC  float64 // spread of that belief, one standard deviation
	Nights int     // own readings it rests on
}

// Beliefs before any reading and the trust in one reading, °C. Our own
// choices: yards differ from their station by a degree or two, thermometers by
// about one.
const (
	coldPriorSD = 1.5
	coldReadSD  = 1.2
	hungC       = -1.0 // railings and baskets: all round in the open air, common practice
	walledC     = 0.5  // walls give back warmth at night, common practice
)

// Wind at which a night counts as still, and from which all places are as cold
// as the station, m/s. As in stand/air.go.
const (
	stillWind = 2.0
	windyWind = 5.0
)

// usual is the offset taken for a space before any reading.
func usual(in *Inputs, sp garden.Space) float64 {
	c := 0.0
	if sp.Kind == garden.Railing || sp.Kind == garden.Hanging {
		c = hungC
	}
	if in.Garden.Place.Sheltered {
		c += walledC
	}
	return c
}

// coldOf is the offset of a space: its own readings, over those of the garden,
// over what is usual. Each is weighed against the one before by Bayes' rule for
// a normal law; a night counts by how still it was.
func coldOf(in *Inputs, sp garden.Space) ColdOffset {
	at := ColdOffset{C: usual(in, sp), SpanC: coldPriorSD}
	garden := learnCold(in, "", ColdOffset{C: usualGarden(in), SpanC: coldPriorSD})
	if garden.Nights > 0 {
		at.C += garden.C - usualGarden(in)
		at.SpanC = math.Hypot(garden.SpanC, 0.7) // spaces of one yard still differ
		at.Nights = garden.Nights
	}
	own := learnCold(in, string(sp.ID), at)
	own.Nights += at.Nights
	return own
}

func usualGarden(in *Inputs) float64 {
	if in.Garden.Place.Sheltered {
		return walledC
	}
	return 0
}

// gardenCold is the offset of the garden's own thermometer.
func gardenCold(in *Inputs) ColdOffset {
	return learnCold(in, "", ColdOffset{C: usualGarden(in), SpanC: coldPriorSD})
}

func learnCold(in *Inputs, space string, prior ColdOffset) ColdOffset {
	if in.State == nil || in.Record == nil {
		return prior
	}
	weight := 1 / (prior.SpanC * prior.SpanC)
	sum, n := prior.C*weight, 0
	for _, r := range in.State.Readings {
		if r.What != ledger.ReadLow || r.Space != space {
			continue
		}
		station, ok := in.Record.At(r.On)
		if !ok {
			continue
		}
		still := math.Max(0, math.Min(1, (windyWind-station.WindMS)/(windyWind-stillWind)))
		if still == 0 {
			continue
		}
		w := 1 / (coldReadSD * coldReadSD)
		sum += still * w * (r.Value - station.TminC)
		weight += still * still * w
		n++
	}
	return ColdOffset{C: sum / weight, SpanC: 1 / math.Sqrt(weight), Nights: n}
}

// ownRecord is the record with the gardener's own readings in place of the
// station's. A day outside the record cannot be put in.
func ownRecord(in *Inputs) *weather.Record {
	if in.Record == nil || in.State == nil || len(in.State.Readings) == 0 {
		return in.Record
	}
	r := *in.Record
	r.Days = append([]weather.Day(nil), in.Record.Days...)
	for i := range r.Days {
		r.Days[i] = ownDay(in, r.Start+cal.Day(i), r.Days[i])
	}
	return &r
}

// ownDay is a day with what was read of the garden's own instruments put in. A
// gauge read before noon holds the rain of the day before.
func ownDay(in *Inputs, d cal.Day, day weather.Day) weather.Day {
	if in.State == nil {
		return day
	}
	for _, r := range in.State.Readings {
		on := r.On
		if r.What == ledger.ReadRain && r.Hour < 12 {
			on--
		}
		if r.Space != "" || on != d {
			continue
		}
		switch r.What {
		case ledger.ReadLow:
			day.TminC = r.Value
			day.TmaxC = math.Max(day.TmaxC, day.TminC+leastRangeC)
		case ledger.ReadHigh:
			day.TmaxC = r.Value
			day.TminC = math.Min(day.TminC, day.TmaxC-leastRangeC)
		case ledger.ReadRain:
			day.RainMM = r.Value
		}
	}
	return day
}

// leastRangeC keeps a mended day's warmest above its coldest, as the futures do.
const leastRangeC = 0.6
