package web

import (
	"bytes"
	"fmt"
	"html/template"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"bedweek/internal/gate"
	"bedweek/internal/label"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// LabelsPage chooses which labels to print, on what.
type LabelsPage struct {
	Frame
	Items   []LabelItem
	Papers  []Option
	Own     map[string]string
	IsOwn   bool
	From    string
	Copies  string
	Faults  faults
	Problem string
	Ready   string // address of the file, "" = not yet
	Says    string
	Loop    bool // the code opens on this machine only
	Strange []string
	Base    string
	Count   int
	Pages   int
	NoCode  bool
}

// LabelItem is one label that may be printed.
type LabelItem struct {
	ID     string
	Words  string
	Stick  string
	Chosen bool
	label  label.Label
}

// ownFields are the millimetres of a size of one's own.
var ownFields = []struct{ Key, Words, Start string }{
	{"pw", "Paper wide", "210"}, {"ph", "Paper tall", "297"}, {"lw", "Label wide", "70"}, {"lh", "Label tall", "37"},
	{"cols", "Columns", "3"}, {"rows", "Rows", "8"}, {"left", "Left margin", "0"}, {"top", "Top margin", "0.5"}, {"gx", "Gap across", "0"}, {"gy", "Gap down", "0"},
}

// ownKeys are the keys of those fields.
func ownKeys() []string {
	var out []string
	for _, f := range ownFields {
		out = append(out, f.Key)
	}
	return out
}

// Fields lists the millimetres for the page.
func (p *LabelsPage) Fields() []Option {
	var out []Option
	for _, f := range ownFields {
		out = append(out, Option{Value: f.Key, Words: f.Words})
	}
	return out
}

// base is the address a code begins with, in capitals: they take less room.
func base(r *http.Request) string {
	scheme := "http"
	if r.TLS != nil {
		scheme = "https"
	}
	return strings.ToUpper(scheme + "://" + r.Host)
}

// pageCode is the code printed at the foot of a page. The address of this
// machine alone leads a phone nowhere: no code then.
func pageCode(r *http.Request) template.HTML {
	if loopback(r.Host) {
		return ""
	}
	at := base(r) + r.URL.RequestURI()
	if len(at) > 150 {
		at = base(r) + r.URL.Path
	}
	return gate.ScanCode(at)
}

func (s *site) labels(r *http.Request, day *reckon.Day) (page, error) {
	d, err := s.namesDesk(r.Context())
	if err != nil {
		return nil, err
	}
	p, _, _ := s.labelsPage(r, day, d)
	return p, nil
}

// labelsPage reads the choice; sheet and labels are right when there is no
// fault.
func (s *site) labelsPage(r *http.Request, day *reckon.Day, d *names.Desk) (*LabelsPage, label.Sheet, []label.Label) {
	v := r.URL.Query()
	p := &LabelsPage{Frame: s.framed(r, day, "Labels", "labels"), From: v.Get("from"), Copies: v.Get("copies"), Own: map[string]string{}, Faults: faults{}, Base: base(r)}
	p.Loop = loopback(r.Host)
	chosen := v["id"]
	add := func(id, words, stick string, l label.Label) {
		l.Code = p.Base + "/P/" + names.Tag(l.Tag).Short()
		p.Items = append(p.Items, LabelItem{ID: id, Words: words, Stick: stick, Chosen: slices.Contains(chosen, id), label: l})
	}
	for _, g := range d.Groups() {
		when := ""
		switch {
		case g.SetOut != 0:
			when = "set out " + g.SetOut.Long()
		case g.Sown != 0:
			when = "sown " + g.Sown.Long()
		}
		add(g.ID, fmt.Sprintf("%s: %s, %s", g.Tag, g.Name(), g.SpaceName), g.Stick(), label.Label{Name: g.Name(), Tag: string(g.Tag), Day: when})
	}
	for _, l := range d.Lots() {
		if l.Gone != 0 {
			continue
		}
		when := "year not known"
		if l.Year > 0 {
			when = strconv.Itoa(l.Year)
		}
		add("lot "+l.ID, fmt.Sprintf("%s: packet, %s", l.Tag, l.Name()), string(l.Tag)+", "+clip(l.Name(), 30), label.Label{Name: l.Name(), Tag: string(l.Tag), Day: "seed, " + when})
	}
	sheet := p.sheet(v)
	from, copies := p.figure(v, "from", 1, sheet.PerSheet()), p.figure(v, "copies", 1, 50)
	var out []label.Label
	for _, it := range p.Items {
		if !it.Chosen {
			continue
		}
		for range copies {
			out = append(out, it.label)
		}
		if !label.Printable(it.label.Name) {
			p.Strange = append(p.Strange, it.Words)
		}
		p.NoCode = p.NoCode || !label.Fits(sheet, it.label.Code)
	}
	if len(out) > 1000 {
		p.Faults["copies"] = "That is more than 1,000 labels. Print them in parts."
	}
	p.Count = len(out)
	if len(out) > 0 && len(p.Faults) == 0 {
		p.Pages = (from - 1 + len(out) + sheet.PerSheet() - 1) / sheet.PerSheet()
		p.Ready = "/labels.pdf?" + v.Encode()
		p.Says = fmt.Sprintf("%s on %s, from place %d.", plural(len(out), "label", "labels"), plural(p.Pages, "sheet", "sheets"), from)
	}
	return p, sheet, out
}

// figure reads a whole number of the address, least when it is not given.
func (p *LabelsPage) figure(v url.Values, key string, least, most int) int {
	if v.Get(key) == "" {
		return least
	}
	n, err := strconv.Atoi(v.Get(key))
	if err != nil || n < least || n > most {
		p.Faults[key] = fmt.Sprintf("Write a whole number from %d to %d.", least, most)
		return least
	}
	return n
}

// sheet reads which sheet is meant.
func (p *LabelsPage) sheet(v url.Values) label.Sheet {
	all := label.Sheets()
	p.IsOwn = v.Get("sheet") == "own"
	at := 0
	for i, s := range all {
		at = map[bool]int{true: i, false: at}[v.Get("sheet") == strconv.Itoa(i)]
		p.Papers = append(p.Papers, Option{Value: strconv.Itoa(i), Words: s.Name})
	}
	p.Papers = append(p.Papers, Option{Value: "own", Words: "A size of my own, below", Chosen: p.IsOwn})
	for _, f := range ownFields {
		p.Own[f.Key] = f.Start
		if v.Get(f.Key) != "" {
			p.Own[f.Key] = clip(v.Get(f.Key), 12)
		}
	}
	if !p.IsOwn {
		p.Papers[at].Chosen = true
		return all[at]
	}
	mm := func(key string) float64 {
		x, err := strconv.ParseFloat(strings.Replace(p.Own[key], ",", ".", 1), 64)
		if err != nil {
			p.Faults["own"] = "Write millimetres as numbers, such as 63.5."
			return 0
		}
		return x
	}
	s := label.Sheet{Name: "own", Wide: mm("pw"), Tall: mm("ph"), LabelW: mm("lw"), LabelH: mm("lh"), Columns: int(mm("cols")), Rows: int(mm("rows")),
		Left: mm("left"), Top: mm("top"), GapX: mm("gx"), GapY: mm("gy")}
	if p.Faults["own"] == "" {
		if f := s.Faults(); len(f) > 0 {
			p.Faults["own"] = strings.Join(f, " ")
		}
	}
	if p.Faults["own"] != "" {
		return all[0]
	}
	return s
}

// labelsPDF sends the sheets.
func (s *site) labelsPDF(w http.ResponseWriter, r *http.Request) {
	day, err := s.present(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	d, err := s.namesDesk(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	p, sheet, labels := s.labelsPage(r, day, d)
	if p.Ready == "" {
		http.Redirect(w, r, "/labels?"+r.URL.RawQuery, http.StatusSeeOther)
		return
	}
	var out bytes.Buffer
	if err := label.Write(&out, sheet, p.figure(r.URL.Query(), "from", 1, sheet.PerSheet())-1, labels, s.o.Now()); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "application/pdf")
	w.Header().Set("Content-Disposition", `inline; filename="labels.pdf"`)
	w.Header().Set("Cache-Control", "no-store")
	w.Header().Set("Content-Length", strconv.Itoa(out.Len()))
	w.Write(out.Bytes())
}
