package weather

import (
	"fmt"
	"math"
	"sort"
)

// Quantile returns the quantile p of vs, by type 5 (Hazen), 6 (Weibull,
// i/(n+1)) or 7 (linear, the spreadsheet's) of R. J. Hyndman and Y. Fan,
// Sample quantiles in statistical packages, The American Statistician 50
// (1996). Below the least and above the greatest it stays there. ok is false
// for no values, another type, or p outside 0 to 1.
func Quantile(vs []float64, p float64, kind int) (q float64, ok bool) {
	n := float64(len(vs))
	if n == 0 || !(p >= 0 && p <= 1) {
		return 0, false
	}
	var at float64 // place among the sorted values, from 1
	switch kind {
	case 5:
		at = n*p + 0.5
	case 6:
		at = (n + 1) * p
	case 7:
		at = (n-1)*p + 1
	default:
		return 0, false
	}
	s := append([]float64(nil), vs...)
	sort.Float64s(s)
	at = min(n, max(1, at))
	lo := int(math.Floor(at))
	if lo >= len(s) {
		return s[len(s)-1], true
	}
	w := at - float64(lo)
	return s[lo-1]*(1-w) + s[lo]*w, true
}

// Events is a record of one date a year: days of the year, and how many years
// were looked at. Years without the event are Years - len(Days).
type Events struct {
	Days  []float64
	Years int
}

// Add adds a year: its day, or none when the event did not come.
func (e *Events) Add(dayOfYear int, came bool) {
	e.Years++
	if came {
		e.Days = append(e.Days, float64(dayOfYear))
	}
}

// ShareWithout is the share of years without the event; 0 for no years.
func (e Events) ShareWithout() float64 {
	if e.Years == 0 {
		return 0
	}
	return float64(e.Years-len(e.Days)) / float64(e.Years)
}

// Quantile is among the years with the event.
func (e Events) Quantile(p float64, kind int) (float64, bool) { return Quantile(e.Days, p, kind) }

// RiskFrom is the share of all years with the event on or after a day of the
// year. weibull divides by one year more, which never promises 0 or 1.
func (e Events) RiskFrom(day float64, weibull bool) (float64, bool) {
	n := e.Years
	if weibull {
		n++
	}
	if n == 0 {
		return 0, false
	}
	count := 0
	for _, d := range e.Days {
		if d >= day {
			count++
		}
	}
	return float64(count) / float64(n), true
}

// DayWithRisk returns the day after which the event still comes with a given
// risk, over all years: years without it count as none. ok is false when fewer
// years than that have the event at all.
func (e Events) DayWithRisk(risk float64, kind int) (float64, bool) {
	with := 1 - e.ShareWithout()
	if e.Years == 0 || risk > with || risk < 0 || with == 0 {
		return 0, false
	}
	return e.Quantile(1-risk/with, kind)
}

// Binomial returns the chance of exactly k, of at least k, and of no events in
// n years with a yearly risk p. k is bounded by 0 and n.
func Binomial(p float64, n, k int) (exactly, atLeast, none float64) {
	p, k = min(1, max(0, p)), min(n, max(0, k))
	for i := k; i <= n; i++ {
		q := binomialTerm(p, n, i)
		if i == k {
			exactly = q
		}
		atLeast += q
	}
	return exactly, min(1, atLeast), binomialTerm(p, n, 0)
}

func binomialTerm(p float64, n, k int) float64 {
	if p == 0 || p == 1 {
		if p == 0 && k == 0 || p == 1 && k == n {
			return 1
		}
		return 0
	}
	a, _ := math.Lgamma(float64(n + 1))
	b, _ := math.Lgamma(float64(k + 1))
	c, _ := math.Lgamma(float64(n - k + 1))
	return math.Exp(a - b - c + float64(k)*math.Log(p) + float64(n-k)*math.Log1p(-p))
}

// Season is the half of the cold season a freeze probability speaks of.
type Season string

// Seasons.
const (
	Spring Season = "spring"
	Autumn Season = "autumn"
)

// FreezeLevel returns the quantile of recorded dates that a published freeze
// probability level stands for. NOAA, Climatography of the US No. 20: in
// spring a level is the chance of a freeze later than the date, in autumn of
// one earlier. So 0.9 in spring is an early date, in autumn a late one.
func FreezeLevel(level float64, s Season) (quantile float64, ok bool) {
	if !(level >= 0 && level <= 1) {
		return 0, false
	}
	switch s {
	case Spring:
		return 1 - level, true
	case Autumn:
		return level, true
	}
	return 0, false
}

// FreezeLevelMeans puts a spring level in tenths into words, as the definition
// has it. ok is false for autumn and for levels that are neither early nor
// late.
func FreezeLevelMeans(level float64, s Season) (words string, ok bool) {
	n := int(math.Round(level * 10))
	switch {
	case s != Spring || math.Abs(level*10-float64(n)) > 1e-9:
		return "", false
	case n > 5 && n < 10:
		return fmt.Sprintf("the last such day falls later than the date in %d springs of 10: an EARLY date", n), true
	case n == 1:
		return "later than the date in 1 spring of 10: the late, safe date", true
	}
	return "", false
}
