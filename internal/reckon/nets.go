package reckon

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
)

//go:embed care/nets.csv
var netsCSV string

// Exposure is the weeks in which a culprit harms crops, and what keeps it off.
type Exposure struct {
	Culprit     string
	Crops       map[string]bool
	Starts      string // "any", "sown"
	When        string // days count from the "start" or the "first pick"
	From, To    int    // days
	First, Last int    // months of the north, 0 = all year
	Net         string // "insect net", "bird net", "wire"
	Low, High   float64
	How         string
	Basis       string
	Source      string
}

var readNets = sync.OnceValues(func() ([]Exposure, error) { return parseNets(netsCSV) })

func parseNets(text string) ([]Exposure, error) {
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return nil, fmt.Errorf("reckon: nets: %w", err)
	}
	var out []Exposure
	for i, f := range rows[1:] {
		e := Exposure{Culprit: f[0], Crops: map[string]bool{}, Starts: f[2], When: f[3], Net: f[7], How: f[10], Basis: f[11], Source: f[12]}
		for _, id := range strings.Fields(f[1]) {
			e.Crops[id] = true
		}
		var faults [4]error
		e.From, faults[0] = strconv.Atoi(f[4])
		e.To, faults[1] = strconv.Atoi(f[5])
		e.High, faults[2] = strconv.ParseFloat(f[9], 64)
		if f[8] != "" {
			e.Low, faults[3] = strconv.ParseFloat(f[8], 64)
		}
		if f[6] != "" && err == nil {
			_, err = fmt.Sscanf(f[6], "%d-%d", &e.First, &e.Last)
		}
		for _, x := range append(faults[:], err) {
			if x != nil {
				return nil, fmt.Errorf("reckon: nets, line %d: %w", i+2, x)
			}
		}
		out = append(out, e)
	}
	return out, nil
}

// span is the days a planting is open to the culprit.
func (e Exposure) span(s standing) (from, to cal.Day, ok bool) {
	if !e.Crops[string(s.crop.ID)] || e.Starts == "sown" && s.setOut {
		return 0, 0, false
	}
	if e.When == "first pick" {
		if s.growth.FirstPick.None() {
			return 0, 0, false
		}
		return s.growth.FirstPick.Likely + cal.Day(e.From), s.growth.LastPick.Likely, true
	}
	return s.since.Likely + cal.Day(e.From), s.since.Likely + cal.Day(e.To), true
}

// netAsk is for how many days after a planting became open to a culprit its net
// is asked for. Ours.
const netAsk = 28

// covered reports whether such a net lies on a space by the file, on a day.
func covered(sp garden.Space, net string, on cal.Day) bool {
	for _, c := range sp.Covers {
		if c.Kind == net && (c.Always || c.From != 0 && c.From <= on && on <= c.To) {
			return true
		}
	}
	return false
}

// atHand reports whether the file names such a net for a space.
func atHand(sp garden.Space, net string) bool {
	for _, c := range sp.Covers {
		if c.Kind == net {
			return true
		}
	}
	return false
}

// netTasks ask for one net on a space: the finest mesh that what stands there
// wants now.
func (r *Result) netTasks() []Task {
	all, err := readNets()
	if err != nil {
		panic("reckon: the nets do not read: " + err.Error()) // a test reads them
	}
	south := r.in.Garden.Place.LatDeg < 0
	var out []Task
	for i, sp := range r.in.Garden.Spaces {
		if on := r.lastDone(string(sp.ID), "net"); on != 0 && on > r.lastDone(string(sp.ID), "uncover") {
			continue // it is on
		}
		var best *Exposure
		var who, crops []string
		until := cal.Day(0)
		for k := range all {
			e := &all[k]
			for n, s := range r.model.stays {
				if s.space != i || s.count == 0 || r.Plan.Pull[n] <= 0 || covered(sp, e.Net, r.in.Date) || !monthIn(r.in.Date, e.First, e.Last, south) {
					continue
				}
				from, to, ok := e.span(s)
				ago := r.in.Date - netAsk // open for longer: it was meant otherwise, or needs none
				if !ok || r.in.Date < from || r.in.Date >= to || ago >= from && monthIn(ago, e.First, e.Last, south) {
					continue
				}
				who, crops, until = append(who, e.Culprit), append(crops, named(s.crop, s.variety, s.oneOf)), max(until, to)
				if best == nil || e.High < best.High {
					best = e
				}
			}
		}
		if best != nil {
			out = append(out, r.netTask(i, *best, distinct(who), distinct(crops), until))
		}
	}
	return out
}

func (r *Result) netTask(i int, e Exposure, who, crops []string, until cal.Day) Task {
	sp := r.in.Garden.Spaces[i]
	t := r.task(i, "net", list(crops), "")
	t.Event, t.Minutes, t.Until = EventDone, 10, r.in.Date+3
	t.Rule = fmt.Sprintf("Mesh of %s mm or finer; %s.", meshWords(e), e.How)
	t.Basis = e.Source + " (" + e.Basis + ")"
	t.Answer = Answer{
		Verdict: sentence(fmt.Sprintf("net %s in %s against %s", t.Object, t.SpaceName, list(who))),
		Reason:  fmt.Sprintf("These are its open weeks, until about %s.", until.Short()),
		Sure:    "not known whether they come this year", OfTwenty: -1,
		Look:    "Signs already? Then look under the leaves first: a net shuts in what is there.",
		Change:  "No harm here in other years: say so, and it is not asked again.",
		Caution: "Taut on a frame, so that a finger does not pass; look each day for birds and snakes. Local law may set the mesh.",
	}
	if e.Net == "insect net" {
		t.Answer.Caution = "Weigh the edges down all round, so that nothing is caught in folds."
	}
	if !atHand(sp, e.Net) {
		t.Answer.Change = fmt.Sprintf("No %s is noted at hand for this space. ", e.Net) + t.Answer.Change
	}
	return t
}

func meshWords(e Exposure) string {
	if e.Low > 0 {
		return fmt.Sprintf("%g to %g", e.Low, e.High)
	}
	return fmt.Sprintf("%g", e.High)
}

// fruitAfterFlower is how long before the first pick of a fruit that bees must
// set its flowers open: common practice, one to three weeks for squash.
const fruitAfterFlower = 21

// ventC is the warmth under a cover at which it is opened: 27 to 30 °C, common
// practice; cool crops at 21 to 24.
const ventC = 27.0

// uncoverTasks ask to take covers off: a frost cover in the morning, an insect
// net when bees must come, any cover on a hot day.
func (r *Result) uncoverTasks() []Task {
	var out []Task
	for n, s := range r.model.stays {
		sp := r.in.Garden.Spaces[s.space]
		on := r.lastDone(s.id, "cover")
		netted := covered(sp, "insect net", r.in.Date) || r.lastDone(string(sp.ID), "net") > r.lastDone(string(sp.ID), "uncover")
		flowers := s.growth.FirstPick.Early - fruitAfterFlower
		var why, basis string
		switch {
		case on != 0 && on < r.in.Date && on > r.lastDone(s.id, "uncover"):
			why, basis = "The cover went on "+on.Short()+". Left on by day it cooks and shades.", "common practice: off by mid-morning, open from 27 to 30 °C"
		case s.crop.BeeSet && netted && !s.growth.FirstPick.None() && r.in.Date >= flowers && r.in.Date <= s.growth.LastPick.Likely && r.Plan.Pull[n] > 0:
			why, basis = "Female flowers open about now. Without bees no fruit sets.", "University of Georgia on pollination"
		default:
			continue
		}
		t := r.task(s.space, "uncover", named(s.crop, s.variety, s.oneOf), s.id)
		t.Crop, t.Event, t.Minutes, t.Pressing, t.Until = string(s.crop.ID), EventDone, 3, true, r.in.Date
		t.Rule, t.Basis = "Off when its reason is over.", basis
		t.Answer = Answer{Verdict: sentence(fmt.Sprintf("uncover %s in %s", t.Object, t.SpaceName)), Reason: why, Sure: "a rule of the trade, not a count", OfTwenty: -1,
			Look: "Is anything caught in the net?", Change: "Another cold night ahead: off by day, on again by dusk."}
		if t.Planting != "" && on == 0 {
			t.Planting = "" // the net lies on the whole space
		}
		out = append(out, t)
	}
	return out
}
