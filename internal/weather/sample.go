package weather

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sort"

	"bedweek/internal/cal"
)

// run is a stretch of the record that may serve as a future.
type run struct {
	start cal.Day
	year  int
	meanC float64
}

// filledMost is the share of filled days above which a run is not used.
const filledMost = 0.10

// wholeYears lists the runs of the record that begin on from's day of another
// year, last days days, do not touch the planned span, and hold few filled
// days: the latest sampleMost of them, by year.
func wholeYears(rec *Record, from cal.Day, days int) []run {
	filled := filledDays(rec)
	_, month, day := from.Date()
	var runs []run
	for y := rec.Start.Year(); y <= rec.End().Year(); y++ {
		s := cal.Of(y, month, day)
		if s < rec.Start || days == 0 || s+cal.Day(days)-1 > rec.End() {
			continue
		}
		if s < from+cal.Day(days) && s+cal.Day(days) > from {
			continue
		}
		sum, bad := 0.0, 0
		at := int(s - rec.Start)
		for i := at; i < at+days; i++ {
			sum += (rec.Days[i].TmaxC + rec.Days[i].TminC) / 2
			bad += index(filled[i])
		}
		if float64(bad) <= filledMost*float64(days) {
			runs = append(runs, run{start: s, year: y, meanC: sum / float64(days)})
		}
	}
	if len(runs) > sampleMost {
		runs = runs[len(runs)-sampleMost:]
	}
	return runs
}

// filledDays marks the days on which temperature or rain was filled.
func filledDays(rec *Record) []bool {
	filled := make([]bool, len(rec.Days))
	for _, g := range rec.Gaps {
		if g.Quantity == "wind" || g.Quantity == "radiation" {
			continue
		}
		for d := max(g.From, rec.Start); d <= min(g.To, rec.End()); d++ {
			filled[d-rec.Start] = true
		}
	}
	return filled
}

// sampled takes whole runs of the record as futures.
func sampled(set Set, rec *Record, site Site, runs []run, from cal.Day, ask Ask) Set {
	use, _ := keptOut(rec, from, ask.Days)
	c, ok := fitRecord(rec, site, use)
	if !ok { // twenty whole runs cover the year many times over, unless they are very short
		for i := range use {
			use[i] = true
		}
		if c, ok = fitRecord(rec, site, use); !ok {
			set.Words = fmt.Sprintf("The record %s does not cover a whole year. Give a longer one, or monthly normals.", rec.Name)
			return set
		}
	}
	past, known := pastDays(rec, c, from, ask.Past)
	order := visit(runs, ask.Seed)
	for k := range ask.N {
		r := order[k%len(order)]
		at := int(r.start - rec.Start)
		days := make([]Day, 0, len(past)+ask.Days)
		days = append(append(days, past...), rec.Days[at:at+ask.Days]...)
		set.Futures = append(set.Futures, Future{
			Start: from - cal.Day(ask.Past), Days: days,
			From: fmt.Sprintf("the days from %s on, as recorded", r.start.Long()),
		})
	}
	first, last := runs[0].year, runs[len(runs)-1].year
	set.Words = fmt.Sprintf("Futures are %d real years of the record %s, beginning between %d and %d. ", min(ask.N, len(runs)), rec.Name, first, last)
	if ask.N > len(runs) {
		set.Words += fmt.Sprintf("More were asked than the %d there are, so years repeat. ", len(runs))
	}
	set.Words += "Weather worse than any of these years can come." + pastWords(ask.Past, known)
	return set
}

// visit orders the runs so that any first few of them hold warm and cold years
// evenly. The order depends on the seed only.
func visit(runs []run, seed uint64) []run {
	byWarmth := append([]run(nil), runs...)
	sort.SliceStable(byWarmth, func(i, j int) bool { return byWarmth[i].meanC < byWarmth[j].meanC })
	u := rand.New(rand.NewPCG(seed, 1<<62)).Float64()
	taken := make([]bool, len(runs))
	out := make([]run, 0, len(runs))
	for range runs {
		at := int(u * float64(len(runs)))
		for step := 0; taken[at]; step++ { // nearest free neighbour, by turns below and above
			at += (step + 1) * (1 - 2*(step%2))
			at = (at%len(runs) + len(runs)) % len(runs)
		}
		taken[at] = true
		out = append(out, byWarmth[at])
		u += irrational(0)
		u -= math.Floor(u)
	}
	return out
}
