package web

import (
	"net/http"
	"strconv"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// AwayPage is an absence: what is lost first, what to move, and a round.
type AwayPage struct {
	Frame
	Going   *reckon.Going
	First   []reckon.GoingRow // what wants more than a soaking
	Easy    []string          // the others
	EasyOf  int               // of twenty, the least of them
	Days    string
	AskForm string
	Says    string
	Problem string
}

// away draws the page.
func (s *site) away(r *http.Request, day *reckon.Day) (page, error) {
	asked := r.URL.Query().Get("days")
	if asked == "" {
		asked = "7"
	}
	p := &AwayPage{Frame: s.framed(r, day, "Going away", "away"), Days: clip(asked, 6), AskForm: ledger.NewID()}
	n, err := strconv.Atoi(asked)
	if err != nil || n < 1 || n > reckon.MostAway {
		p.Problem = "Write how many days, from 1 to " + strconv.Itoa(reckon.MostAway) + "."
		return p, nil
	}
	d, err := s.dryFor(r, day, reckon.DryAsk{NextH: usualNext, AwayDays: n})
	if err != nil {
		return nil, err
	}
	if d == nil || d.Going == nil {
		p.Says = "Not reckoned yet."
		return p, nil
	}
	p.Going, p.Says = d.Going, d.Going.Words
	p.Until = d.Going.Back.Long()
	p.part()
	return p, nil
}

// part sets the spaces that only want a soaking apart from those to see to.
func (p *AwayPage) part() {
	p.EasyOf = 20
	for _, row := range p.Going.First {
		if row.Easy {
			p.Easy, p.EasyOf = append(p.Easy, row.Name), min(p.EasyOf, row.OfTwenty)
			continue
		}
		p.First = append(p.First, row)
	}
}

// decimal reads a number; a comma is taken as a decimal point.
func decimal(v string) (float64, bool) {
	x, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(strings.ReplaceAll(v, "−", "-")), ",", ".", 1), 64)
	return x, err == nil && x == x && x < 1e9 && x > -1e9
}
