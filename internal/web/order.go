package web

import (
	"fmt"
	"net/http"
	"sort"

	"bedweek/internal/cal"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// OrderPage is the seed order.
type OrderPage struct {
	Frame
	Says  string
	Notes []string
	Buy   []OrderLine
	Have  []OrderLine
}

// OrderLine is one crop of the order with what the tin has of it.
type OrderLine struct {
	reckon.OrderRow
	names.Supply
	Lacks          bool
	BuyWords, When string
	Tin            []TinLine
	Times          []string
}

// TinLine is one lot of the tin.
type TinLine struct{ ID, Words string }

// orderNotes say how the numbers are made.
var orderNotes = []string{
	"Seed of the tin: by its test, counting that a small test leaves the true share unsure. Without a test by what lists say of its age.",
	"Old seed, seed of no known year and packets nobody counted are not counted on. Test or count them, and this list shrinks.",
	"Sown outdoors, four in ten of those that come up are lost to slugs, crust and weather: common practice, not measured.",
	"Seed to buy: fewer if nearly all of it comes up, more if only as much as the label may promise. Each number gives enough plants in nine sowings of ten.",
	"Prices, shops and sizes of packets are not known here.",
}

// order draws the page.
func (s *site) order(r *http.Request, day *reckon.Day) (page, error) {
	p := &OrderPage{Frame: s.framed(r, day, "Seed order", "order"), Says: noPapers}
	if day.Papers == nil || day.Papers.Order == nil {
		return p, nil
	}
	var desk *names.Desk
	if p.Seeded {
		d, err := s.namesDesk(r.Context())
		if err != nil {
			return nil, err
		}
		desk = d
	}
	p.Notes = orderNotes
	p.Until = (day.Date + 28).Long()
	for _, row := range day.Papers.Order.Rows {
		if l := orderLine(row, desk, day.Date); l.Lacks {
			p.Buy = append(p.Buy, l)
		} else {
			p.Have = append(p.Have, l)
		}
	}
	sort.SliceStable(p.Buy, func(a, b int) bool { return p.Buy[a].Supply.By < p.Buy[b].Supply.By })
	switch n := len(p.Buy) + len(p.Have); {
	case n == 0:
		p.Says = "The plan sows and plants nothing new. Nothing is to be bought."
	case len(p.Buy) == 0:
		p.Says = "All that the plan sows is in the tin."
	default:
		p.Says = fmt.Sprintf("To buy for %d of %s, the first by %s.", len(p.Buy), plural(n, "crop", "crops"), p.Buy[0].When)
	}
	return p, nil
}

// orderLine joins one crop with the tin; where no tin is read, all is lacking.
func orderLine(row reckon.OrderRow, desk *names.Desk, today cal.Day) OrderLine {
	l := OrderLine{OrderRow: row, Supply: names.Supply{By: row.By, Short: row.Plants}}
	if desk != nil {
		var starts []names.Wanted
		for _, st := range row.Starts {
			starts = append(starts, names.Wanted{On: st.On, Plants: st.Plants, Outdoors: st.Outdoors})
		}
		l.Supply = desk.Supply(row.CropID, starts)
	}
	for _, t := range l.Takes {
		l.Tin = append(l.Tin, TinLine{t.ID, t.Words()})
	}
	if l.Lacks = l.Supply.By != 0; l.Lacks {
		l.When = dayFrom(l.Supply.By, today)
		l.BuyWords = row.Sort
		if l.Most > 0 {
			l.BuyWords = seedSpan(l.Least, l.Most) + " " + row.Sort
		}
	}
	for _, st := range row.Starts {
		l.Times = append(l.Times, fmt.Sprintf("%s %s for %s, %s", name(st.Verb), dayFrom(st.On, today), st.Space, plural(st.Plants, "plant", "plants")))
	}
	return l
}

func seedSpan(least, most int) string {
	if least == most {
		return fmt.Sprint(least)
	}
	return fmt.Sprintf("%d to %d", least, most)
}
