package main

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"html"
	"image"
	"image/jpeg"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"net/url"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/fetch"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
	"bedweek/internal/weather"
	"bedweek/internal/web"
)

// wholeHouse is the whole program behind one handler, every part wired as
// serve wires it: the southern demo, planned once, on a real record that holds
// some entries, a picture and a backup. The plan is not made anew behind, so
// that tests do not wait for it.
type wholeHouse struct {
	dir   string
	led   *ledger.Ledger
	desk  *desk
	pages http.Handler
	all   []web.Address
	know  *http.ServeMux // finds the pattern an address belongs to
	first *reckon.Day    // as planned
}

func wholeHouseIn(t testing.TB, dir string) *wholeHouse {
	t.Helper()
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	g, faults := garden.Read("south", demo.SouthYAML, garden.FromBook(book))
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	n, wf := weather.ReadNormals("south", bytes.NewReader(demo.SouthNormalsCSV), siteOf(g))
	if len(wf) > 0 {
		t.Fatal(wf)
	}
	led, err := ledger.Open(dir, ledger.Options{Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	sum := sha256.Sum256(demo.SouthYAML)
	space := string(g.Spaces[0].ID)
	photo := aPhoto(t)
	digest, err := led.KeepPhoto(photo, photo)
	if err != nil {
		t.Fatal(err)
	}
	for _, b := range []struct {
		k    ledger.Kind
		body any
	}{
		{ledger.GardenSet, ledger.Garden{Text: string(demo.SouthYAML), SHA256: hex.EncodeToString(sum[:])}},
		{ledger.Sown, ledger.Started{Crop: "kale", Space: space, Count: 6}},
		{ledger.Looked, ledger.Look{Space: space, Looks: "dry"}},
		{ledger.Pictured, ledger.Photo{Space: space, SHA256: digest, Bytes: len(photo), Width: 40, Height: 30}},
	} {
		e, err := ledger.NewEvent("home", g.From, b.k, b.body)
		if err == nil {
			_, err = led.Append(context.Background(), e)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	events, err := led.Events(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for n, device := range []string{"home", "phone"} { // two answers to one question
		e, err := ledger.NewEvent(device, g.From, ledger.Counted, ledger.Count{Planting: events[1].ID, Count: 4 + n})
		if err == nil {
			_, err = led.Append(context.Background(), e)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if _, err := led.Backup(context.Background(), ""); err != nil {
		t.Fatal(err)
	}
	w := &world{now: func() time.Time { return g.From.Time().Add(9 * time.Hour) }, err: new(bytes.Buffer), out: new(bytes.Buffer)}
	in := inputs(w, g, book, climate{normals: n}, g.From)
	in.Work = 100_000
	ctx, stop := context.WithCancel(context.Background())
	d, err := newDesk(ctx, led, *in, w.now)
	stop()
	if err != nil {
		t.Fatal(err)
	}
	d.idle.Wait()
	d.climate = func(*garden.Garden) (climate, error) { return climate{normals: n}, nil }
	asked := 0 // a few years are fetched, from this machine; then the archive is away
	d.services = fetch.New(fetch.Options{Now: w.now, AllowPrivate: true, Archive: yearsOn(t, func() bool { asked++; return asked > 3 })})
	h := &house{w: w, dir: dir, waiting: map[string]int{}, again: make(chan string, 1)}
	k := newKeeper(h, d)
	o := d.options(append([]string(nil), loopbackHosts...), false)
	o.Keeping, o.Export = k.keeping(), k.export
	// A restore is asked for and proven, but not carried out: each test has a
	// record to go on with.
	o.Keeping.Restore = func(_ context.Context, file string) error { _, err := h.backup(file); return err }
	few := 0
	backup, check := o.Backup, o.Keeping.Check
	o.Backup = func(ctx context.Context) (string, error) { // a few are real, to spare the disk
		if few++; few > 5 {
			return "as before", nil
		}
		return backup(ctx)
	}
	o.Keeping.Check = func(ctx context.Context) error {
		if few++; few > 10 {
			return nil
		}
		return check(ctx)
	}
	x := &wholeHouse{dir: dir, led: led, desk: d, know: http.NewServeMux()}
	if x.pages, err = web.New(o); err != nil {
		t.Fatal(err)
	}
	if x.all, err = web.Addresses(o); err != nil {
		t.Fatal(err)
	}
	x.first = d.day
	for _, a := range x.all {
		x.know.Handle(a.Path, http.NotFoundHandler())
	}
	t.Cleanup(func() { led.Close() })
	return x
}

// asFirst puts the garden and its day back as they were planned.
func (x *wholeHouse) asFirst(t testing.TB) {
	t.Helper()
	ctx := context.Background()
	if x.desk.text != string(demo.SouthYAML) {
		if _, err := x.desk.entry().Keep(ctx, string(demo.SouthYAML)); err != nil {
			t.Fatal(err)
		}
	}
	x.desk.mu.Lock()
	x.desk.day = x.first
	x.desk.mu.Unlock()
}

func aPhoto(t testing.TB) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, image.NewGray(image.Rect(0, 0, 40, 30)), nil); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// ask sends one request as our own page would.
func (x *wholeHouse) ask(method, target, kind string, body []byte) *httptest.ResponseRecorder {
	r := httptest.NewRequest(method, "http://localhost/", bytes.NewReader(body))
	r.RequestURI = target
	u, err := url.ParseRequestURI(target)
	if err != nil {
		u = &url.URL{Path: target}
	}
	r.URL.Path, r.URL.RawPath, r.URL.RawQuery = u.Path, u.RawPath, u.RawQuery
	if kind != "" {
		r.Header.Set("Content-Type", kind)
	}
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	x.pages.ServeHTTP(w, r)
	return w
}

// pattern is the address's pattern, "" when none answers it.
func (x *wholeHouse) pattern(path string) string {
	r := httptest.NewRequest("GET", "http://localhost/", nil)
	u, err := url.Parse(path)
	if err != nil {
		return ""
	}
	r.URL.Path = u.Path
	_, p := x.know.Handler(r)
	return p
}

// filled is a form as a browser would send it.
type filled struct {
	path   string
	fields [][2]string
	files  map[string][]byte // by field name; nil = not a form with files
	json   []byte            // sent instead, when not nil
}

var (
	formTag  = regexp.MustCompile(`(?s)<form[^>]*method="post"[^>]*>.*?</form>`)
	attrTag  = regexp.MustCompile(`([a-z-]+)="([^"]*)"`)
	fieldTag = regexp.MustCompile(`(?s)<select([^>]*)>(.*?)</select>|<textarea([^>]*)>(.*?)</textarea>|<button([^>]*)>|<input([^>]*?)/?>`)
	optTag   = regexp.MustCompile(`<option[^>]*value="([^"]*)"`)
	linkTag  = regexp.MustCompile(`href="(/[^"#]*)`)
)

func attrs(tag string) map[string]string {
	out := map[string]string{}
	for _, m := range attrTag.FindAllStringSubmatch(tag, -1) {
		out[m[1]] = html.UnescapeString(m[2])
	}
	return out
}

// typical is what people type where a page leaves a field empty.
var typical = map[string]string{"count": "3", "kg": "0.4", "litres": "10", "value": "8.5", "words": "dry at the rim", "name": "North bed", "size": "1 m x 1 m", "looks": "well", "hour": "7", "why": "our notes",
	"height": "2 m", "where": "1 m east, 2 m north"}

func has(fields [][2]string, name string) bool {
	for _, f := range fields {
		if f[0] == name {
			return true
		}
	}
	return false
}

// formsOf reads the forms of a page.
func formsOf(page, at string) []filled {
	var out []filled
	for _, f := range formTag.FindAllString(page, -1) {
		a := attrs(f[:strings.Index(f, ">")])
		if a["action"] == "" {
			a["action"] = at
		}
		x := filled{path: a["action"]}
		for _, m := range fieldTag.FindAllStringSubmatch(f, -1) {
			tag := m[1] + m[3] + m[5] + m[6] // one of them
			b := attrs(tag)
			marked := strings.Contains(tag, "checked")
			v := b["value"]
			switch {
			case b["name"] == "":
				continue
			case b["type"] == "file":
				if x.files == nil {
					x.files = map[string][]byte{}
				}
				x.files[b["name"]] = nil
				continue
			case b["type"] == "checkbox" && !marked:
				continue
			case b["type"] == "radio" && has(x.fields, b["name"]) && !marked:
				continue
			case m[5] != "" && has(x.fields, b["name"]):
				continue
			case m[3] != "":
				v = strings.TrimPrefix(html.UnescapeString(m[4]), "\n")
			case m[1] != "":
				if o := optTag.FindAllStringSubmatch(m[2], -1); len(o) > 0 {
					v = html.UnescapeString(o[len(o)-1][1])
				}
			}
			if v == "" {
				v = typical[b["name"]]
			}
			x.fields = append(x.fields, [2]string{b["name"], v})
		}
		out = append(out, x)
	}
	return out
}

// crawl follows every link from every address and gathers the forms by
// pattern, and one live address for each pattern that reads.
func (x *wholeHouse) crawl(t testing.TB) (forms map[string][]filled, live map[string]string) {
	t.Helper()
	forms, live = map[string][]filled{}, map[string]string{}
	var queue []string
	seen := map[string]bool{}
	visits := map[string]int{}
	push := func(p string) {
		if pat := x.pattern(p); pat != "" && !seen[p] && visits[pat] < 8 {
			seen[p] = true
			visits[pat]++
			queue = append(queue, p)
		}
	}
	for _, a := range x.all {
		if p := strings.ReplaceAll(a.Path, "{$}", ""); a.Reads && !strings.Contains(p, "{") {
			push(p)
		}
	}
	if day, _ := x.desk.Day(context.Background()); day != nil {
		for _, task := range day.Today { // reached by an answer, not by a link
			push("/look?task=" + url.QueryEscape(task.ID))
		}
	}
	for len(queue) > 0 {
		p := queue[0]
		queue = queue[1:]
		w := x.ask("GET", p, "", nil)
		if w.Code >= 500 {
			t.Errorf("GET %s: %d", p, w.Code)
		}
		if w.Code != 200 {
			continue
		}
		if live[x.pattern(p)] == "" {
			live[x.pattern(p)] = p
		}
		if !strings.Contains(w.Header().Get("Content-Type"), "html") {
			continue
		}
		page := w.Body.String()
		for _, f := range formsOf(page, p) {
			if pat := x.pattern(f.path); len(forms[pat]) < 12 {
				forms[pat] = append(forms[pat], f)
			}
		}
		for _, m := range linkTag.FindAllStringSubmatch(page, -1) {
			push(html.UnescapeString(m[1]))
		}
	}
	return forms, live
}

// encode writes a form as a browser does.
func (f filled) encode() (kind string, body []byte) {
	if f.json != nil {
		return "application/json", f.json
	}
	if f.files == nil {
		v := url.Values{}
		for _, x := range f.fields {
			v.Add(x[0], x[1])
		}
		return "application/x-www-form-urlencoded", []byte(v.Encode())
	}
	var b bytes.Buffer
	m := multipart.NewWriter(&b)
	for _, x := range f.fields {
		m.WriteField(x[0], x[1])
	}
	for _, name := range named(f.files) {
		p, err := m.CreateFormFile(name, "a.csv")
		if err == nil {
			p.Write(f.files[name])
		}
	}
	m.Close()
	return m.FormDataContentType(), b.Bytes()
}

// dayOf is the house's day as a form writes it.
func (x *wholeHouse) dayOf() string { return cal.FromTime(x.desk.now()).String() }

// strays lists files of the data folder that an unfinished write left.
func (x *wholeHouse) strays() []string {
	var out []string
	for _, pat := range []string{"*.part", "*.new", "*/.making-*", "*/*/.making-*", "*/.new-*", "restoring", "restore.underway"} {
		found, _ := filepath.Glob(filepath.Join(x.dir, pat))
		out = append(out, found...)
	}
	return out
}
