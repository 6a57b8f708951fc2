package heap

// Method is how a heap is made.
type Method string

// Methods that the rules know; anything else is a plain heap.
const (
	Windrow   Method = "turned_windrow"
	Aerated   Method = "static_aerated_pile" // air is blown through, insulated
	InVessel  Method = "in_vessel"
	PlainHeap Method = "static_heap"
)

// Limits of the rules. °C, days.
const (
	hotC        = 55.0 // [CFR503], 131 °F
	windrowDays = 15
	windrowTurn = 5
	closedDays  = 3      // in a vessel, or a static aerated pile
	organicTopC = 170.0  // [NOP], °F
	cnLow       = 25.0   // [NOP]
	cnHigh      = 40.0   // [NOP]
	warmC       = 40.0   // [CFR503], significantly reduce
	warmHours   = 5 * 24 // [CFR503]
	peakHours   = 4      // [CFR503], strictly above 55 °C
)

// Log is what was measured.
type Log struct {
	Method  Method
	DailyC  []float64 // in order, a day each
	Turned  int       // turnings during the hot period
	StartCN float64   // carbon to nitrogen at the start
}

// Verdict is a log under each rule.
type Verdict struct {
	// Consecutive is [CFR503]: the heat was maintained, day after day.
	Consecutive bool
	// Cumulative is [CFR257]: the heat was attained on so many days in all.
	Cumulative bool
	// Organic is [NOP]: the heat held, never above 170 °F, and carbon to
	// nitrogen between 25 and 40 at the start.
	Organic bool
	// Hygienised takes the stricter reading of the germ rules.
	Hygienised bool
}

// Judge holds a log against the rules.
func Judge(l Log) Verdict {
	need, turned := 0, true
	switch l.Method {
	case Windrow:
		need, turned = windrowDays, l.Turned >= windrowTurn
	case Aerated, InVessel:
		need = closedDays
	default:
		return Verdict{}
	}
	run, longest, all, top := 0, 0, 0, 0.0
	for _, t := range l.DailyC {
		if t < hotC {
			run = 0
			continue
		}
		run++
		all++
		longest = max(longest, run)
		top = max(top, t)
	}
	var v Verdict
	v.Consecutive = longest >= need && turned
	v.Cumulative = all >= need && turned
	v.Hygienised = v.Consecutive
	v.Organic = v.Consecutive && top <= (organicTopC-32)/1.8 && l.StartCN >= cnLow && l.StartCN <= cnHigh
	return v
}

// Spell is a run of hours at one temperature.
type Spell struct{ Hours, TC float64 }

// SignificantlyReduced reports whether a log by the hour meets the lesser rule
// of [CFR503]: 40 °C or more for five days on end, and above 55 °C for four
// hours on end within them.
func SignificantlyReduced(spells []Spell) bool {
	warm, hot, hottest := 0.0, 0.0, 0.0
	for _, s := range spells {
		if s.TC < warmC {
			warm, hot, hottest = 0, 0, 0
			continue
		}
		warm += s.Hours
		if s.TC > hotC {
			hot += s.Hours
		} else {
			hot = 0
		}
		hottest = max(hottest, hot)
		if warm >= warmHours && hottest >= peakHours {
			return true
		}
	}
	return false
}
