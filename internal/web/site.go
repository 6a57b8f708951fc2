package web

import (
	"bytes"
	"fmt"
	"html/template"
	"net/http"
	"slices"
	"strings"
	"sync"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// site holds what all pages share.
type site struct {
	o      Options
	hosts  map[string]bool
	pages  map[string]*template.Template
	assets assets
	sent   *sentForms

	mu     sync.Mutex
	backed string // words of the last backup made through the page, "" = none
}

// New returns the handler for every page. It fails when a needed function is
// missing or a page cannot be read.
func New(o Options) (http.Handler, error) {
	s, err := newSite(o)
	if err != nil {
		return nil, fmt.Errorf("making the pages: %w", err)
	}
	return s.guard(s.mux()), nil
}

func newSite(o Options) (*site, error) {
	if o.Day == nil || o.Record == nil || o.Void == nil || o.Backup == nil || o.Audit == nil || o.Export == nil {
		return nil, fmt.Errorf("a needed function is missing from the options")
	}
	if o.Now == nil {
		o.Now = time.Now
	}
	a, err := loadAssets(uiFiles)
	if err != nil {
		return nil, err
	}
	p, err := loadPages(uiFiles)
	if err != nil {
		return nil, err
	}
	return &site{o: o, hosts: hostSet(o.Hosts), pages: p, assets: a, sent: newSentForms(sentKept)}, nil
}

// route is one address with what it answers to.
type route struct {
	path string
	get  http.HandlerFunc
	post http.HandlerFunc
}

// routes lists every address.
func (s *site) routes() []route {
	return append(append(s.keepingRoutes(), []route{
		{"/{$}", s.view(s.today), nil},
		{"/lines", s.view(s.lines), nil},
		{"/keep", s.view(s.keep), nil},
		{"/space/{id}", s.view(s.space), nil},
		{"/space/{id}/note/{kind}", s.view(s.note), s.saveNote},
		{"/look", s.view(s.look), s.saveLook},
		{"/task", nil, s.saveTask},
		{"/walk", s.view(s.walk), nil},
		{"/walk/strip", s.view(s.strip), nil},
		{"/walk/who", nil, s.saveWalkAsk},
		{"/modes", s.view(s.modes), s.saveModes},
		{"/quick", s.view(s.quick), nil},
		{"/trouble-key", s.view(s.troubleKey), nil},
		{"/undo", nil, s.undo},
		{"/table", s.view(s.table), nil},
		{"/plan", s.view(s.plan), nil},
		{"/more", s.view(s.more), nil},
		{"/dry", s.view(s.dry), s.saveDry},
		{"/dry/ask", nil, s.askDry},
		{"/away", s.view(s.away), nil},
		{"/weather", s.view(s.weather), s.saveReading},
		{"/safe", s.unplanned(s.safe), nil},
		{"/backup", nil, s.backup},
		{"/export", s.export, nil},
		{"/assets/{name}", s.serveAsset, nil},
		{"/enough", nil, s.enough},
	}...), append(append(s.entryRoutes(), s.lightRoutes()...), append(append(append(s.cropRoutes(), s.namesRoutes()...), s.wishRoutes()...), s.paperRoutes()...)...)...)
}

// mux answers every route, and in words to anything else.
func (s *site) mux() http.Handler {
	m := http.NewServeMux()
	for _, rt := range s.routes() {
		m.HandleFunc(rt.path, func(w http.ResponseWriter, r *http.Request) {
			h := rt.get
			switch r.Method {
			case http.MethodGet, http.MethodHead:
			case http.MethodPost:
				h = rt.post
			default:
				h = nil
			}
			if h == nil {
				w.Header().Set("Allow", rt.allow())
				s.fail(w, r, errMethod)
				return
			}
			h(w, r)
		})
	}
	m.HandleFunc("/", func(w http.ResponseWriter, r *http.Request) { s.fail(w, r, ErrNotThere) })
	return m
}

// allow lists the methods an address takes.
func (rt route) allow() string {
	switch {
	case rt.get == nil:
		return "POST"
	case rt.post == nil:
		return "GET, HEAD"
	}
	return "GET, HEAD, POST"
}

// page is anything a template draws.
type page interface{ frame() *Frame }

// viewer fills the page for one request.
type viewer func(r *http.Request, day *reckon.Day) (page, error)

// view draws a page that only reads.
func (s *site) view(v viewer) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		day, err := s.o.Day(r.Context())
		if err != nil {
			s.fail(w, r, err)
			return
		}
		if day == nil {
			http.Redirect(w, r, "/entry", http.StatusSeeOther)
			return
		}
		s.show(w, r, day, v)
	}
}

// unplanned draws a page that needs no plan: what is written down must be
// found and brought back also while there is none.
func (s *site) unplanned(v viewer) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		day, err := s.o.Day(r.Context())
		if err != nil {
			s.fail(w, r, err)
			return
		}
		if day == nil {
			day = &reckon.Day{Date: cal.FromTime(s.o.Now())}
		}
		s.show(w, r, day, v)
	}
}

func (s *site) show(w http.ResponseWriter, r *http.Request, day *reckon.Day, v viewer) {
	p, err := v(r, day)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	s.draw(w, r, http.StatusOK, p)
}

// draw sends a page whole or not at all.
func (s *site) draw(w http.ResponseWriter, r *http.Request, status int, p page) {
	f := p.frame()
	f.Mode = modeOf(r)
	var out bytes.Buffer
	if err := s.pages[f.Here].Execute(&out, p); err != nil {
		if f.Here == "trouble" {
			http.Error(w, "Something went wrong. The fault is ours, not yours.", http.StatusInternalServerError)
			return
		}
		s.fail(w, r, fmt.Errorf("drawing %s: %w", f.Here, err))
		return
	}
	h := w.Header()
	h.Set("Content-Type", "text/html; charset=utf-8")
	h.Set("Vary", "Accept-Encoding")
	body := out.Bytes()
	if takesGzip(r) {
		if packed, err := pack(body); err == nil {
			body = packed
			h.Set("Content-Encoding", "gzip")
		}
	}
	h.Set("Content-Length", fmt.Sprint(len(body)))
	w.WriteHeader(status)
	w.Write(body)
}

// fail says an error in words.
func (s *site) fail(w http.ResponseWriter, r *http.Request, err error) {
	t := troubleOf(err)
	p := &TroublePage{Status: t.status, Words: t.words, Next: t.next}
	p.Frame = s.bare(t.title, "trouble")
	p.Bare = t.err == errHost || t.err == errForeign
	s.draw(w, r, t.status, p)
}

// Frame is what stands around every page.
type Frame struct {
	Title   string
	Garden  string
	Here    string // template and menu entry
	Demo    bool
	Date    cal.Day
	Saved   *Saved
	Printed string
	Until   string        // the print is good until then
	Scan    template.HTML // code that leads from the print back to the page
	Sheets  []string
	Paper   string
	Icon    string
	Outbox  string // script that keeps notes without a signal, "" = none
	Script  string // "" = the page has none
	Entry   bool   // the garden can be described through pages
	Lit     bool   // there are pages about sun and shade
	Seeded  bool   // there are pages about seed, trays and identity
	Crops   bool   // there are pages about crops
	Mode    string // bed, big or dark; "" = plain
	Asks    bool   // there are pages about wishes, what-ifs and reasons
	Bare    bool   // no menu, nothing about the garden

	Meanwhile *Meanwhile // nil = nothing goes on behind the page
}

func (f *Frame) frame() *Frame { return f }

// bare makes a frame that knows nothing of the garden.
func (s *site) bare(title, here string) Frame {
	f := Frame{Title: title, Here: here, Demo: s.o.Demo, Entry: s.o.Entry != nil, Lit: s.o.Light != nil, Seeded: s.o.Names != nil, Crops: s.o.Crops != nil,
		Asks:  s.o.Wishes != nil,
		Paper: s.assets.href["paper.css"], Icon: s.assets.href["icon.svg"], Outbox: s.outbox()}
	f.Sheets = []string{s.assets.href["base.css"]}
	if own, ok := s.assets.href[here+".css"]; ok {
		f.Sheets = append(f.Sheets, own)
	}
	f.Printed = weekday(cal.FromTime(s.o.Now()))
	return f
}

// framed makes the frame of a page about a day.
func (s *site) framed(r *http.Request, day *reckon.Day, title, here string) Frame {
	f := s.bare(title, here)
	f.Garden, f.Date, f.Demo = day.Garden, day.Date, day.Demo || s.o.Demo
	if f.Demo {
		f.Printed = weekday(day.Date) // the demo's own clock
	}
	f.Until = goodUntil(day).Long()
	f.Meanwhile = s.meanwhile(r, day)
	f.Scan = pageCode(r)
	if d, ok := s.sent.get(r.URL.Query().Get("saved")); ok {
		f.Saved = &Saved{Words: d.words, Event: d.event, Undo: d.undo, Form: ledger.NewID(), Back: r.URL.Path}
	}
	return f
}

// goodUntil is the last day a print of this page can be trusted: a week on, or
// sooner when a task that presses cannot wait so long.
func goodUntil(day *reckon.Day) cal.Day {
	until := day.Date + 7
	for _, t := range day.Today {
		if t.Pressing && t.Until > day.Date && t.Until < until {
			until = t.Until
		}
	}
	return until
}

// Menu is the list of the pages needed every day, in plain words; the others
// lie behind More.
func (f Frame) Menu() []MenuEntry {
	m := []MenuEntry{
		{"/", "Today", f.Here == "today" || f.Here == "look" || f.Here == "walk" || f.Here == "strip" || f.Here == "quick"},
		{"/lines", "Lines", f.Here == "lines"},
		{"/keep", "Pull?", f.Here == "keep"},
		{"/table", "Table", f.Here == "table"},
		{"/dry", "Water", f.Here == "dry" || f.Here == "away"},
	}
	if f.Seeded {
		m = append(m, MenuEntry{"/seeds", "Seeds", slices.Contains([]string{"seeds", "lotform", "lot", "plant", "move", "seed", "which", "labels"}, f.Here)})
	}
	if f.Entry {
		m = append(m, MenuEntry{"/entry", "Garden", strings.HasPrefix(f.Here, "entry")})
	}
	return append(m, MenuEntry{"/more", "More", f.more()})
}

// MenuEntry is one page of the menu.
type MenuEntry struct {
	Href, Word string
	Here       bool
}

// Saved is said once after a form was saved.
type Saved struct {
	Words string
	Event string
	Undo  bool
	Form  string
	Back  string
}
