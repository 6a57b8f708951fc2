package web

import (
	"bytes"
	"fmt"
	"html/template"
	"net/http"

	"bedweek/internal/reckon"
)

// paperRoutes are the sheets that are printed and kept.
func (s *site) paperRoutes() []route {
	return []route{
		{"/papers", s.view(s.papers), nil},
		{"/order", s.view(s.order), nil},
		{"/kitchen", s.view(s.kitchen), nil},
		{"/turnover", s.view(s.turnoverList), nil},
		{"/turnover/{id}", s.view(s.turnover), nil},
		{"/year", s.view(s.yearList), nil},
		{"/year/{id}", s.view(s.year), nil},
		{"/teach", s.view(s.teach), nil},
		{"/teach/bedweek-lesson.html", s.teachFile, nil},
	}
}

// Sheet is one way to a printed page.
type Sheet struct{ Href, Word, Says string }

// PapersPage lists the sheets.
type PapersPage struct {
	Frame
	Ways []Sheet
}

// papers draws the list.
func (s *site) papers(r *http.Request, day *reckon.Day) (page, error) {
	return &PapersPage{Frame: s.framed(r, day, "Papers", "papers"), Ways: []Sheet{
		{"/kitchen", "For the kitchen wall", "The coming four weeks by food; what to use up; how long it keeps."},
		{"/turnover", "Turnover sheet", "For one space: what comes out, what goes in, tools and steps in order."},
		{"/order", "Seed order", "What the plan needs, what is in the tin, what must be bought by when."},
		{"/away", "A helper’s round", "What to water and how much, while you are away, on one sheet."},
		{"/year", "Year pages", "What was forecast and what came: the whole garden on one sheet, and a page for each space."},
		{"/teach", "Teaching page", "The plan’s reasons and sources, to give away without anything private."},
	}}, nil
}

// noPapers is said where there is a day without sheets.
const noPapers = "Not made yet. The sheets come with the first plan."

// KitchenPage is the sheet for the kitchen wall.
type KitchenPage struct {
	Frame
	Says  string
	Heads []string
	None  []string // wanted, and nothing to be had in these weeks
	Rows  []KitchenLine
	UseUp []string
}

// KitchenLine is one food of the wall sheet.
type KitchenLine struct {
	Food, Keeps string
	From        []string
	Weeks       []KitchenCell
}

// KitchenCell is one week of one food.
type KitchenCell struct {
	Words, Sure    string
	Enough, Wanted int // of twenty; Wanted 0 = not wanted
	Head           string
}

// kitchen draws the page.
func (s *site) kitchen(r *http.Request, day *reckon.Day) (page, error) {
	p := &KitchenPage{Frame: s.framed(r, day, "For the kitchen wall", "kitchen"), Says: noPapers}
	if day.Papers == nil || day.Papers.Kitchen == nil {
		return p, nil
	}
	k := day.Papers.Kitchen
	p.Says, p.UseUp = k.Words, k.UseUp
	p.Until = (day.Date + 7).Long()
	for _, w := range k.WeekOf {
		p.Heads = append(p.Heads, w.Time().Format("2 Jan"))
	}
	for _, row := range k.Rows {
		most := 0.0
		for _, x := range row.Weeks {
			most = max(most, x.High)
		}
		if most < 0.25 { // said as "none" in every week
			p.None = append(p.None, row.Food)
			continue
		}
		l := KitchenLine{Food: name(row.Food), Keeps: row.Keeps, From: row.From}
		for w, x := range row.Weeks {
			c := KitchenCell{Words: mealsSpan(x.Low, x.High), Enough: x.Enough, Head: p.Heads[w]}
			switch {
			case x.Wanted == 0:
				c.Sure = "not asked for"
			case x.Much >= 10:
				c.Sure, c.Wanted = fmt.Sprintf("too much, %d of 20", x.Much), 1
			default:
				c.Sure, c.Wanted = fmt.Sprintf("%d of 20", x.Enough), 1
			}
			l.Weeks = append(l.Weeks, c)
		}
		p.Rows = append(p.Rows, l)
	}
	return p, nil
}

// mealsSpan writes a range of meals shortly, for a cell.
func mealsSpan(low, high float64) string {
	l, h := meals(low), meals(high)
	if l == h {
		if h == "0" {
			return "none"
		}
		return h
	}
	return l + " to " + h
}

// TurnoverListPage names the turnovers ahead.
type TurnoverListPage struct {
	Frame
	Rows []TurnoverLine
}

// TurnoverLine is one space with its next change.
type TurnoverLine struct{ Space, Name, Says string }

// turnoverList draws the list.
func (s *site) turnoverList(r *http.Request, day *reckon.Day) (page, error) {
	p := &TurnoverListPage{Frame: s.framed(r, day, "Turnover sheets", "turnovers")}
	if day.Papers != nil {
		for _, t := range day.Papers.Turnovers {
			p.Rows = append(p.Rows, TurnoverLine{t.Space, t.Name, t.Words})
		}
	}
	return p, nil
}

// TurnoverPage is the sheet of one space.
type TurnoverPage struct {
	Frame
	reckon.Turnover
	OutRows, InRows []TurnoverRow
	Time            string
}

// TurnoverRow is one planting that comes out or goes in.
type TurnoverRow struct{ Crop, Plants, When, Sure string }

// turnover draws the page.
func (s *site) turnover(r *http.Request, day *reckon.Day) (page, error) {
	if day.Papers == nil {
		return nil, ErrNotThere
	}
	for _, t := range day.Papers.Turnovers {
		if t.Space != r.PathValue("id") {
			continue
		}
		p := &TurnoverPage{Frame: s.framed(r, day, "Turnover: "+t.Name, "turnover"), Turnover: t}
		if t.Minutes > 0 {
			p.Time = "About " + hours(t.Minutes) + "."
		}
		for _, l := range t.Out {
			p.OutRows = append(p.OutRows, TurnoverRow{withVariety(l), plural(l.Plants, "plant", "plants"), window(l.Out, day.Date), ""})
		}
		for _, l := range t.In {
			row := TurnoverRow{withVariety(l), plural(l.Plants, "plant", "plants"), window(l.In, day.Date), fmt.Sprintf("%d of 20", l.OfTwenty)}
			if l.OnShelf != 0 {
				row.When += "; from the shelf"
			}
			p.InRows = append(p.InRows, row)
		}
		p.Until = (day.Date + 14).Long()
		return p, nil
	}
	return nil, ErrNotThere
}

func withVariety(l reckon.Line) string {
	if l.Variety == "" {
		return l.Crop
	}
	return reckon.Bracketed(l.Crop, l.Variety)
}

// TeachPage is the lesson, on the garden's own pages or as a file.
type TeachPage struct {
	Frame
	Lesson *reckon.Lesson
	Says   string
	Style  template.CSS // of the file
}

// teach draws the page.
func (s *site) teach(r *http.Request, day *reckon.Day) (page, error) {
	p := &TeachPage{Frame: s.framed(r, day, "Teaching page", "teach"), Says: noPapers}
	if day.Papers != nil && day.Papers.Lesson != nil {
		p.Lesson = day.Papers.Lesson
		p.Says = lessonSays(p.Lesson)
	}
	return p, nil
}

func lessonSays(l *reckon.Lesson) string {
	return fmt.Sprintf("%s in %s, over %s from %s. Each with its reasons; each figure with its range and where it comes from.",
		plural(l.Plants, "planting", "plantings"), plural(len(l.Spaces), "space", "spaces"), plural(l.Weeks, "week", "weeks"), l.From.Long())
}

// teachFile sends the lesson as one file that needs nothing else.
func (s *site) teachFile(w http.ResponseWriter, r *http.Request) {
	day, err := s.o.Day(r.Context())
	if err != nil || day == nil || day.Papers == nil || day.Papers.Lesson == nil {
		if err == nil {
			err = ErrNotThere
		}
		s.fail(w, r, err)
		return
	}
	// Only the lesson goes in: the frame knows the garden's name.
	p := &TeachPage{Lesson: day.Papers.Lesson, Says: lessonSays(day.Papers.Lesson), Style: template.CSS(s.assets.text("teachfile.css"))}
	var out bytes.Buffer
	if err := s.pages["teachfile"].Execute(&out, p); err != nil {
		s.fail(w, r, fmt.Errorf("drawing the lesson: %w", err))
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Content-Disposition", `attachment; filename="bedweek-lesson.html"`)
	w.Header().Set("Content-Length", fmt.Sprint(out.Len()))
	w.Write(out.Bytes())
}

// text is the plain text of an asset named by its file.
func (a assets) text(file string) string {
	for n, x := range a.byName {
		if a.href[file] == "/assets/"+n {
			return string(x.plain)
		}
	}
	return ""
}
