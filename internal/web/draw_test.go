package web

import (
	"encoding/xml"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"

	"bedweek/internal/reckon"
)

// node is one element of a drawn page.
type node struct {
	name  string
	attr  map[string]string
	kids  []*node
	text  string // its own text
	outer *node
}

// all walks the page in reading order.
func (n *node) all(visit func(*node)) {
	visit(n)
	for _, k := range n.kids {
		k.all(visit)
	}
}

// find lists the elements of a name.
func (n *node) find(name string) []*node {
	var out []*node
	n.all(func(k *node) {
		if k.name == name {
			out = append(out, k)
		}
	})
	return out
}

// words is all text under n.
func (n *node) words() string {
	var b strings.Builder
	n.all(func(k *node) { b.WriteString(k.text + " ") })
	return b.String()
}

func (n *node) class(c string) bool {
	for _, have := range strings.Fields(n.attr["class"]) {
		if have == c {
			return true
		}
	}
	return false
}

// parse reads a page strictly: pages are written as well-formed XML too, so a
// text that breaks out of its place breaks the parse.
func parse(t *testing.T, page string) *node {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict = true
	root := &node{attr: map[string]string{}}
	at := root
	for {
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatalf("page is not well formed: %v\n%.600s", err, page)
		}
		switch v := tok.(type) {
		case xml.StartElement:
			n := &node{name: v.Name.Local, attr: map[string]string{}, outer: at}
			for _, a := range v.Attr {
				if _, twice := n.attr[a.Name.Local]; twice {
					t.Errorf("<%s> has %s twice", n.name, a.Name.Local)
				}
				n.attr[a.Name.Local] = a.Value
			}
			at.kids = append(at.kids, n)
			at = n
		case xml.EndElement:
			at = at.outer
		case xml.CharData:
			at.text += string(v)
		case xml.Comment:
			t.Error("a page holds a comment")
		}
	}
	return root
}

// ask sends one request as a browser on our own page would.
func ask(h http.Handler, method, path string, form url.Values) *httptest.ResponseRecorder {
	var body io.Reader
	if form != nil {
		body = strings.NewReader(form.Encode())
	}
	r := httptest.NewRequest(method, "http://127.0.0.1"+path, body)
	if form != nil {
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	}
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w
}

// handler makes the pages over a fixture.
func handler(t testing.TB, g *fakeGarden) http.Handler {
	t.Helper()
	h, err := New(g.options())
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// open draws a page and parses it.
func open(t *testing.T, h http.Handler, path string) *node {
	t.Helper()
	w := ask(h, "GET", path, nil)
	if w.Code != http.StatusOK {
		t.Fatalf("GET %s: %d, want 200", path, w.Code)
	}
	return parse(t, w.Body.String())
}

// pagesOf lists the pages a day has.
func pagesOf(d *reckon.Day) []string {
	paths := []string{"/", "/lines", "/lines?weeks=13", "/lines?from=2015-12-07&weeks=26", "/keep", "/table", "/plan", "/safe",
		"/dry", "/dry?next=72&litres=20", "/dry?litres=lots", "/away", "/away?days=21", "/away?days=x", "/weather",
		"/walk", "/walk?stop=2", "/walk?stop=99", "/walk?stop=x", "/walk/strip", "/modes", "/quick", "/quick?what=picked", "/quick?what=wet", "/quick?what=looks", "/quick?what=lost", "/quick?what=photo",
		"/trouble-key", "/trouble-key?who=yes&hour=night", "/trouble-key?sign=x&space=gate-bed"}
	for _, sign := range []string{"not-up", "gone", "fruit-end"} {
		paths = append(paths, "/trouble-key?sign="+sign, "/trouble-key?sign="+sign+"&space=gate-bed&planting=gate-bed-now")
	}
	paths = append(paths, "/papers", "/order", "/kitchen", "/turnover", "/year", "/teach")
	if d.Papers != nil {
		for _, t := range d.Papers.Turnovers[:6] {
			paths = append(paths, "/turnover/"+t.Space, "/year/"+t.Space)
		}
	}
	for i, sp := range d.Spaces {
		paths = append(paths, "/space/"+sp.ID)
		if i < 2 || len(sp.Lines) == 0 {
			for _, k := range noteKinds {
				paths = append(paths, "/space/"+sp.ID+"/note/"+k.Value)
			}
		}
	}
	for _, t := range d.Today {
		paths = append(paths, "/look?task="+url.QueryEscape(t.ID))
	}
	for _, k := range d.Keeps {
		for _, c := range k.Choices {
			paths = append(paths, "/keep?planting="+url.QueryEscape(k.Planting)+"&pull="+c.Pull.String())
		}
	}
	return paths
}

func days() map[string]*reckon.Day {
	return map[string]*reckon.Day{"rich": richDay(), "empty": emptyDay(), "hostile": hostileDay()}
}

// TestPagesAreSound draws every page with every fixture and checks its
// structure. Rules: WCAG 2.2 SC 1.1.1, 1.3.1, 2.4.1, 2.4.6, 3.1.1, 4.1.2, and
// our own ban on inline script and style.
func TestPagesAreSound(t *testing.T) {
	for name, d := range days() {
		h := handler(t, &fakeGarden{day: d})
		for _, p := range pagesOf(d) {
			checkPage(t, name+" "+p, open(t, h, p))
		}
		checkPage(t, name+" trouble", parse(t, ask(h, "GET", "/nowhere", nil).Body.String()))
	}
}

func checkPage(t *testing.T, where string, root *node) {
	t.Helper()
	ids, refs := map[string]int{}, []string{}
	labels := map[string]bool{}
	h1, last := 0, 0
	root.all(func(n *node) {
		for a, v := range n.attr {
			switch {
			case a == "style" || strings.HasPrefix(a, "on"):
				t.Errorf("%s: <%s> has an inline %s", where, n.name, a)
			case a == "id":
				ids[v]++
			case a == "aria-labelledby" || a == "aria-describedby":
				refs = append(refs, strings.Fields(v)...)
			case a == "href" && strings.HasPrefix(v, "#"):
				refs = append(refs, v[1:])
			case (a == "href" || a == "src" || a == "action") && !strings.HasPrefix(v, "/"):
				t.Errorf("%s: <%s> leads out of the program: %q", where, n.name, v)
			}
		}
		switch n.name {
		case "script", "style", "em", "iframe", "object", "embed":
			t.Errorf("%s: has <%s>", where, n.name)
		case "label":
			labels[n.attr["for"]] = true
		case "h1", "h2", "h3", "h4":
			level := int(n.name[1] - '0')
			if level == 1 {
				h1++
			}
			if level > last+1 {
				t.Errorf("%s: heading %q jumps from %d to %d", where, n.words(), last, level)
			}
			last = level
			if strings.TrimSpace(n.words()) == "" {
				t.Errorf("%s: an empty %s", where, n.name)
			}
		case "a", "button", "summary", "th":
			if strings.TrimSpace(n.words()) == "" && n.attr["aria-label"] == "" {
				t.Errorf("%s: <%s> without words", where, n.name)
			}
		case "table":
			if len(n.find("caption")) != 1 || len(n.find("thead")) != 1 {
				t.Errorf("%s: a table without caption or head", where)
			}
		case "svg":
			if n.attr["aria-hidden"] == "" && n.attr["aria-label"] == "" && n.attr["aria-labelledby"] == "" {
				t.Errorf("%s: a picture without words", where)
			}
		case "form":
			if n.attr["method"] != "post" {
				t.Errorf("%s: a form by %q", where, n.attr["method"])
			}
			one := 0
			for _, in := range n.find("input") {
				if in.attr["name"] == "form" && len(in.attr["value"]) == 26 {
					one++
				}
			}
			if one != 1 {
				t.Errorf("%s: form %s holds %d form ids, want 1", where, n.attr["action"], one)
			}
		}
	})
	if h1 != 1 {
		t.Errorf("%s: %d first headings, want 1", where, h1)
	}
	for _, f := range []string{"input", "select", "textarea"} {
		for _, n := range root.find(f) {
			if n.attr["type"] != "hidden" && !labels[n.attr["id"]] {
				t.Errorf("%s: field %s has no label", where, n.attr["name"])
			}
		}
	}
	for id, n := range ids {
		if n > 1 {
			t.Errorf("%s: id %q is there %d times", where, id, n)
		}
	}
	for _, r := range refs {
		if ids[r] == 0 {
			t.Errorf("%s: points to %q, which is not there", where, r)
		}
	}
	if len(root.find("main")) != 1 || len(root.find("header")) != 1 || root.find("html")[0].attr["lang"] == "" {
		t.Errorf("%s: landmarks or language missing", where)
	}
}

// TestHostileTextIsText finds the typed markup again as text on every page
// that shows the garden's words.
func TestHostileTextIsText(t *testing.T) {
	h := handler(t, &fakeGarden{day: hostileDay()})
	for _, p := range []string{"/", "/lines", "/keep", "/table", "/plan", "/space/gate-bed", "/space/gate-bed/note/sown"} {
		n := strings.Count(open(t, h, p).words(), "<em>x</em><script>alert(1)</script>\"'>&{{.}}")
		if n < 3 {
			t.Errorf("%s: the typed markup is there %d times as text, want 3 or more", p, n)
		}
	}
}

// TestNewNeedsItsFunctions refuses half-filled options.
func TestNewNeedsItsFunctions(t *testing.T) {
	if _, err := New(Options{}); err == nil {
		t.Error("New with empty options gave no error")
	}
}

// TestFirstPageIsSmall measures the first page with all it loads, packed.
// Budget: 150 KB.
func TestFirstPageIsSmall(t *testing.T) {
	h := handler(t, &fakeGarden{day: richDay()})
	root := open(t, h, "/")
	total := 0
	get := func(p string) {
		r := httptest.NewRequest("GET", "http://127.0.0.1"+p, nil)
		r.Header.Set("Accept-Encoding", "gzip")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != 200 || w.Header().Get("Content-Encoding") != "gzip" {
			t.Errorf("GET %s: %d, encoding %q", p, w.Code, w.Header().Get("Content-Encoding"))
		}
		if strings.HasPrefix(p, "/assets/") && !strings.Contains(w.Header().Get("Cache-Control"), "immutable") {
			t.Errorf("GET %s is not kept for good: %q", p, w.Header().Get("Cache-Control"))
		}
		total += w.Body.Len()
	}
	get("/")
	links := root.find("link")
	if len(links) < 3 {
		t.Fatalf("%d links in the head, want the sheets and the icon", len(links))
	}
	for _, l := range links {
		get(l.attr["href"])
	}
	t.Logf("first page with sheets and icon: %d bytes packed", total)
	if total > 150_000 {
		t.Errorf("first page takes %d bytes, budget 150,000", total)
	}
}

// TestLaterPagesAreSmall holds the other pages to 30 KB packed.
func TestLaterPagesAreSmall(t *testing.T) {
	h := handler(t, &fakeGarden{day: richDay()})
	for _, p := range []string{"/lines", "/keep", "/table", "/plan", "/safe", "/space/gate-bed"} {
		r := httptest.NewRequest("GET", "http://127.0.0.1"+p, nil)
		r.Header.Set("Accept-Encoding", "gzip")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		t.Logf("%s: %d bytes packed", p, w.Body.Len())
		if w.Body.Len() > 30_000 {
			t.Errorf("%s takes %d bytes, budget 30,000", p, w.Body.Len())
		}
	}
}
