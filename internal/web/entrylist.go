package web

import (
	"encoding/csv"
	"fmt"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// maxRows and maxColumns bound a list of plantings brought in.
const (
	maxRows    = 5000
	maxColumns = 100
)

// listParts are what a list of plantings can say, by column.
var listParts = []struct {
	name, label string
	needed      bool
	like        []string // headings that mean it
}{
	{"date", "The day", true, []string{"date", "day", "when", "sown on", "planted on"}},
	{"crop", "The crop", true, []string{"crop", "plant", "vegetable", "what"}},
	{"variety", "The variety", false, []string{"variety", "cultivar", "sort"}},
	{"place", "The space", true, []string{"place", "space", "bed", "where", "location"}},
	{"event", "What happened", false, []string{"event", "what happened", "action", "kind"}},
	{"count", "How many", false, []string{"count", "number", "plants", "how many", "qty"}},
}

// ListPage maps the columns of a list of plantings and its words.
type ListPage struct {
	Frame
	Form    string
	Text    string
	Columns []Field
	Words   []Field // spaces and events of the list that are not known here
	Rows    [][]string
	Heads   []string
	Count   int
	Faults  faults
	Bad     []string // rows with faults, in words
	Problem string
	Ready   bool
}

// listForm asks for the list.
func (s *site) listForm(r *http.Request, d *described, v url.Values) (*FormPage, error) {
	if d.g == nil {
		return nil, ErrNotThere
	}
	p := s.newForm(r, d, v, "Bring in a list of plantings", "/entry/list")
	p.Lead = "A table as CSV: day, crop, variety, place, what happened. Next you say which column is which."
	p.Files, p.Submit = true, "Look at it"
	p.Groups = []Group{{Fields: []Field{{Name: "file", Label: "The file", Sort: "file"}, {Name: "paste", Label: "Or paste it here", Sort: "area", Rows: 5, Value: typedIn(v, "paste", "")}}}}
	return p, nil
}

// listMap shows a list with its columns to be named.
func (s *site) listMap(w http.ResponseWriter, r *http.Request) {
	_, data, err := readUpload(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	p, _, wrong := s.readList(r, d, string(data), nil)
	if wrong != "" {
		f, err := s.listForm(r, d, url.Values{"paste": {strings.ToValidUTF8(string(data[:min(len(data), maxBody)]), "?")}})
		if err != nil {
			s.fail(w, r, err)
			return
		}
		f.Faults["file"], f.Problem = wrong, "Not read yet. Nothing was written."
		s.draw(w, r, http.StatusUnprocessableEntity, f)
		return
	}
	s.draw(w, r, http.StatusOK, p)
}

// listSave writes every row as entries, or none when any has a fault.
func (s *site) listSave(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	var p *ListPage
	err := s.once(w, r, func() (done, error) {
		d, err := s.described(r.Context())
		if err != nil {
			return done{}, err
		}
		q, all, wrong := s.readList(r, d, r.PostForm.Get("text"), r.PostForm)
		if wrong != "" {
			return done{}, errBroken
		}
		p = q
		if len(q.Bad) > 0 || len(q.Faults) > 0 {
			q.Problem = "Nothing was written: " + plural(len(q.Bad), "row has", "rows have") + " faults."
			return done{}, errForm
		}
		if r.PostForm.Get("go") != "write" {
			q.Ready = true
			return done{}, errForm
		}
		events, others, err := together(d, all)
		if err != nil {
			q.Problem = "Nothing was written: " + plainErr(err)
			return done{}, errForm
		}
		if err := s.o.Entry.Append(withForm(r, r.PostForm.Get("form")), events); err != nil {
			return done{}, err
		}
		words := plural(len(all), "row", "rows") + " written from the list."
		if others > 0 {
			words += " " + plural(others, "is", "are") + " something else: say how much ground it takes, and until when, on the page of its space."
		}
		return done{words: words, back: "/entry"}, nil
	})
	switch {
	case err == nil:
	case p == nil:
		s.fail(w, r, err)
	case p.Ready:
		s.draw(w, r, http.StatusOK, p)
	default:
		s.draw(w, r, troubleOf(err).status, p)
	}
}

// readList reads a list under a mapping. v is nil when columns are only guessed.
func (s *site) readList(r *http.Request, d *described, text string, v url.Values) (*ListPage, []listed, string) {
	text = strings.TrimPrefix(strings.ReplaceAll(text, "\r\n", "\n"), "\ufeff")
	if strings.TrimSpace(text) == "" {
		return nil, nil, "Choose a file, or paste its lines below."
	}
	if d.g == nil {
		return nil, nil, "Describe a space first."
	}
	c := csv.NewReader(strings.NewReader(text))
	if head, _, _ := strings.Cut(text, "\n"); strings.Count(head, ";") > strings.Count(head, ",") {
		c.Comma = ';'
	} else if strings.Count(head, "\t") > strings.Count(head, ",") {
		c.Comma = '\t'
	}
	c.FieldsPerRecord = -1
	rows, err := c.ReadAll()
	if err != nil {
		return nil, nil, "This is no CSV: " + plainErr(err)
	}
	if len(rows) < 2 {
		return nil, nil, "The list needs a heading and at least one row."
	}
	if len(rows)-1 > maxRows {
		return nil, nil, fmt.Sprintf("%d rows are more than the %d we take at once. Split the list by year.", len(rows)-1, maxRows)
	}
	if len(rows[0]) > maxColumns {
		return nil, nil, fmt.Sprintf("%d columns are more than the %d we take. Keep those that are needed.", len(rows[0]), maxColumns)
	}
	p := &ListPage{Frame: s.entryFrame(r, d, "Which column is which?", "entrylist"), Form: ledger.NewID(), Text: text, Heads: rows[0], Rows: rows[1:min(len(rows), 6)], Count: len(rows) - 1, Faults: faults{}}
	columns := map[string]int{}
	for _, part := range listParts {
		opts := []Option{{Value: "", Words: "Not in the list"}}
		chosen := ""
		for i, h := range rows[0] {
			opts = append(opts, Option{Value: strconv.Itoa(i + 1), Words: clip(or(h, "column "+strconv.Itoa(i+1)), 40)})
			for _, l := range part.like {
				if chosen == "" && strings.EqualFold(strings.TrimSpace(h), l) {
					chosen = strconv.Itoa(i + 1)
				}
			}
		}
		chosen = typedIn(v, "c-"+part.name, chosen)
		if n, err := strconv.Atoi(chosen); err == nil && n >= 1 && n <= len(rows[0]) {
			columns[part.name] = n - 1
		} else if part.needed && v != nil {
			p.Faults["c-"+part.name] = "Choose the column."
		}
		p.Columns = append(p.Columns, Field{Name: "c-" + part.name, Label: part.label, Sort: "list", Options: choose(opts, chosen)})
	}
	cell := func(row []string, part string) string {
		if i, ok := columns[part]; ok && i < len(row) {
			return strings.TrimSpace(row[i])
		}
		return ""
	}
	words := p.wordsOf(d, rows[1:], cell, v)
	if v == nil {
		return p, nil, ""
	}
	var all []listed
	for i, row := range rows[1:] {
		h, wrong := s.listRow(d, row, cell, words)
		if wrong != "" {
			if len(p.Bad) < 50 {
				p.Bad = append(p.Bad, fmt.Sprintf("Row %d: %s", i+2, wrong))
			}
			continue
		}
		all = append(all, h)
	}
	return p, all, ""
}

// wordsOf asks what unknown words for spaces and events mean.
func (p *ListPage) wordsOf(d *described, rows [][]string, cell func([]string, string) string, v url.Values) listWords {
	places, events, plants := map[string]string{}, map[string]string{}, map[string]string{}
	var spaces []Option
	for _, sp := range append(append([]garden.Space{}, d.g.Spaces...), d.g.Ended...) {
		spaces = append(spaces, Option{Value: string(sp.ID), Words: sp.Name})
	}
	kinds := []Option{{Value: "sown", Words: "Sown"}, {Value: "set out", Words: "Set out"}, {Value: "", Words: "Leave these rows out with a fault"}}
	for _, row := range rows {
		pl, ev, pt := cell(row, "place"), cell(row, "event"), cell(row, "crop")
		if _, seen := plants[pt]; !seen && pt != "" {
			plants[pt] = ""
			if _, _, bad := garden.SayStanding(pt, d.book, false); len(bad) > 0 && len(p.Words) < 60 {
				f := plantWord(pt, typedIn(v, "k-"+pt, ""))
				plants[pt] = typedIn(v, f.Name, "")
				p.Words = append(p.Words, f)
			}
		}
		if _, seen := places[pl]; !seen && pl != "" {
			places[pl] = ""
			for _, o := range spaces {
				if strings.EqualFold(o.Value, pl) || strings.EqualFold(o.Words, pl) {
					places[pl] = o.Value
				}
			}
			if places[pl] == "" && len(p.Words) < 60 {
				key := "p-" + pl
				places[pl] = typedIn(v, key, "")
				p.Words = append(p.Words, Field{Name: key, Label: "“" + clip(pl, 40) + "” is", Sort: "list", Options: choose(append([]Option{{Value: "", Words: "Choose a space"}}, spaces...), places[pl])})
			}
		}
		if _, seen := events[ev]; !seen {
			switch strings.ToLower(ev) {
			case "", "sown", "sow", "seeded", "planted":
				events[ev] = "sown"
			case "set out", "transplanted", "planted out":
				events[ev] = "set out"
			default:
				key := "e-" + ev
				events[ev] = typedIn(v, key, "")
				if len(p.Words) < 60 {
					p.Words = append(p.Words, Field{Name: key, Label: "“" + clip(ev, 40) + "” means", Sort: "list", Options: choose(kinds, events[ev])})
				}
			}
		}
	}
	return listWords{places, events, plants}
}

// listWords are what words of a list mean: places as spaces' ids, events as the
// ledger's kinds, plants that are no crops as "else".
type listWords struct{ places, events, plants map[string]string }

// listRow reads one row as one entry.
func (s *site) listRow(d *described, row []string, cell func([]string, string) string, words listWords) (listed, string) {
	on, err := cal.Parse(cell(row, "date"))
	switch {
	case err != nil:
		return listed{}, "the day “" + clip(cell(row, "date"), 40) + "” is not understood. Write year-month-day, as 2015-03-04."
	case on > d.today:
		return listed{}, "the day " + on.Long() + " has not come yet."
	case on < cal.Of(1900, 1, 1):
		return listed{}, "the day " + on.Long() + " is too long ago."
	}
	said, _, bad := garden.SayStanding(cell(row, "crop"), d.book, false)
	other := words.plants[cell(row, "crop")] == "else"
	if len(bad) > 0 && !other {
		return listed{}, bad[0].Words
	}
	id := words.places[cell(row, "place")]
	var sp *garden.Space
	for _, one := range append(append([]garden.Space{}, d.g.Spaces...), d.g.Ended...) {
		if string(one.ID) == id {
			sp = &one
			break
		}
	}
	switch {
	case sp == nil:
		return listed{}, "no space is chosen for “" + clip(cell(row, "place"), 40) + "”."
	case sp.Until != 0 && on > sp.Until:
		return listed{}, sp.Name + " was gone by then, since " + sp.Until.Long() + "."
	}
	if b, ok := d.g.Batch(sp.Medium); ok && b.Since != 0 && on.Year() < b.Since {
		return listed{}, fmt.Sprintf("%s was filled in %d, after %s.", sp.Name, b.Since, on.Long())
	}
	kind := ledger.Kind(words.events[cell(row, "event")])
	if kind != ledger.Sown && kind != ledger.PutOut {
		return listed{}, "what happened, “" + clip(cell(row, "event"), 40) + "”, is not chosen."
	}
	count := 0
	if t := cell(row, "count"); t != "" {
		if count, err = strconv.Atoi(t); err != nil || count < 0 || count > maxCount {
			return listed{}, "the count “" + clip(t, 40) + "” is no whole number up to 10,000."
		}
	}
	variety := or(cell(row, "variety"), said.Get("variety"))
	if len([]rune(variety)) > maxVariety {
		return listed{}, "the variety is longer than 80 letters."
	}
	if other {
		return listed{space: id, other: otherOf(cell(row, "crop"), on, count)}, ""
	}
	return listed{Happening: Happening{kind, on, ledger.Started{Crop: said.Get("crop"), Variety: variety, Space: id, Count: count, Note: "From a list."}}}, ""
}

// With puts a field and the form's faults together.
func (p *ListPage) With(f Field) FieldOf { return FieldOf{f, p.Faults} }
