package reckon

import "bedweek/internal/crop"

// Papers are the sheets that are printed and kept beside the pages.
type Papers struct {
	Order     *Order
	Turnovers []Turnover // by growing space, in walking order
	Kitchen   *Kitchen
	Lesson    *Lesson
	Years     []YearSheet // by growing space; nil until the ledger is told
}

// papers makes what needs no ledger; see Day.TellYears for the rest.
func (r *Result) papers(d *Day) *Papers {
	p := &Papers{Order: r.orderOf(), Turnovers: r.turnovers(d.Spaces), Kitchen: r.kitchenOf(d.Table, d.WeekOf)}
	// The lesson's figures are the built-in book's: own ones stay at home.
	if book, err := crop.Load(); err == nil {
		p.Lesson = r.lesson(d.Spaces, book)
	}
	return p
}
