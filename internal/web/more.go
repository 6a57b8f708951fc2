package web

import (
	"net/http"
	"slices"

	"bedweek/internal/reckon"
)

// door is a page behind More: the question it answers, and the word for it.
type door struct {
	Href, Word, Says string
	Here             []string // templates that belong to it
	open             func(f *Frame) bool
}

// doors lists every page that is not in the menu, most needed first.
func doors() []door {
	always := func(*Frame) bool { return true }
	lit := func(f *Frame) bool { return f.Lit }
	crops := func(f *Frame) bool { return f.Crops }
	asks := func(f *Frame) bool { return f.Asks }
	return []door{
		{"/crops", "Crops", "When may it be sown, what will it give, and which figures stand behind it.", []string{"crops", "crop"}, crops},
		{"/weather", "Weather", "Who freezes tonight, who cooks this week, and what twenty years were like.", []string{"weather"}, always},
		{"/light", "Sun and shade", "Where the sun falls at any hour and week, and what would change it.", []string{"light", "sky"}, lit},
		{"/trouble-key", "Trouble", "From the look of a trouble to its causes, and who did it by sign and hour.", []string{"troublekey"}, always},
		{"/modes", "Sizes and dark", "Larger and heavier at the bed, the largest buttons, or dark for the shed.", []string{"modes"}, always},
		{"/wishes", "Wishes", "What you want of the plan, and what each wish costs in meals. Plans kept.", []string{"wishes", "why"}, asks},
		{"/whatif", "What if", "A bed deeper, more time, a month away: the plan worked out beside the present one.", []string{"whatif"}, asks},
		{"/papers", "Papers", "Sheets to print: the kitchen wall, a turnover, the seed order, a helper’s round, the year, a lesson.", []string{"papers", "order", "kitchen", "turnover", "turnovers", "year", "years", "teach"}, always},
		{"/plan", "Plan", "How the plan was worked out, how sure it is, every planting with its reasons.", []string{"plan"}, always},
		{"/safe", "Backup", "Is what I wrote kept, and can it come back?", []string{"safe", "recovery", "restore", "unsent"}, always},
	}
}

// MorePage lists the pages that are not in the menu.
type MorePage struct {
	Frame
	Doors []door
}

// more draws the list.
func (s *site) more(r *http.Request, day *reckon.Day) (page, error) {
	p := &MorePage{Frame: s.framed(r, day, "More", "more")}
	for _, d := range doors() {
		if d.open(&p.Frame) {
			p.Doors = append(p.Doors, d)
		}
	}
	return p, nil
}

// more tells whether the page lies behind More.
func (f Frame) more() bool {
	return f.Here == "more" || slices.ContainsFunc(doors(), func(d door) bool { return slices.Contains(d.Here, f.Here) })
}
