package main

import (
	"bytes"
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"hash/fnv"
	"math/rand/v2"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"runtime"
	"sort"
	"strings"
	"testing"
	"time"

	"bedweek/demo"
	"bedweek/internal/ledger"
)

var odd = flag.Int("odd", 20, "malformed requests for each address, and bytes for each importer; 500 for a change, 10000 in the full tier")

// heldMost is how much more memory may be held after all that, in bytes.
const heldMost = 64 << 20

// byHand are requests to addresses whose form no page shows.
func (x *wholeHouse) byHand(t *testing.T) map[string]filled {
	t.Helper()
	space := string(x.desk.in.Garden.Spaces[0].ID)
	note := map[string]any{"form": ledger.NewID(), "path": "/space/" + space + "/note/looked", "fields": map[string]string{"looks": "well", "day": x.dayOf(), "planting": ""}, "stamped": true}
	sync, err := json.Marshal(map[string]any{"epoch": "0", "waiting": 1, "oldest": 1, "clock": x.desk.now().UnixMilli(), "entries": []any{note}})
	if err != nil {
		t.Fatal(err)
	}
	return map[string]filled{
		"/sync":            {path: "/sync", json: sync},
		"/photo":           {path: "/photo", fields: [][2]string{{"form", ledger.NewID()}, {"space", space}, {"planting", ""}, {"day", x.dayOf()}, {"note", "leaf"}}, files: map[string][]byte{"photo": aPhoto(t)}},
		"/undo":            {path: "/undo", fields: [][2]string{{"form", ledger.NewID()}, {"event", ledger.NewID()}, {"back", "/"}}},
		"/enough":          {path: "/enough", fields: [][2]string{{"form", ledger.NewID()}}},
		"/restore":         {path: "/restore", fields: [][2]string{{"form", ledger.NewID()}, {"backup", ledger.Backups(x.dir)[0].File}}},
		"/entry/accept":    {path: "/entry/accept", fields: [][2]string{{"form", ledger.NewID()}, {"text", string(demo.SouthYAML)}}},
		"/entry/list/save": {path: "/entry/list/save", fields: [][2]string{{"form", ledger.NewID()}, {"text", listOf(space)}, {"c-date", "1"}, {"c-crop", "2"}, {"c-place", "4"}, {"c-event", "5"}}},
	}
}

func listOf(space string) string {
	return "date,crop,variety,place,event\n2014-10-01,kale,,\"" + space + "\",sown\n2014-11-02,garlic,Red,nowhere,picked\n"
}

// fileFor is a good file for each field that takes one.
func (x *wholeHouse) fileFor(t *testing.T, path, field string, events []byte) []byte {
	switch {
	case field == "photo":
		return aPhoto(t)
	case field == "events":
		return events
	case field == "notes":
		return x.byHand(t)["/sync"].json
	case strings.HasPrefix(path, "/entry/weather"):
		return demo.SouthNormalsCSV
	case strings.HasPrefix(path, "/entry/list"):
		return []byte(listOf(string(x.desk.in.Garden.Spaces[0].ID)))
	}
	return demo.SouthYAML
}

// targets gives every address that writes at least one good request. An
// address without one is an error: give it a form on a page, or one by hand.
func (x *wholeHouse) targets(t *testing.T, forms map[string][]filled) map[string][]filled {
	t.Helper()
	var events bytes.Buffer
	out := filepath.Join(t.TempDir(), "out")
	if err := x.led.Export(context.Background(), out); err != nil {
		t.Fatal(err)
	}
	b, err := os.ReadFile(filepath.Join(out, "events.json"))
	if err != nil {
		t.Fatal(err)
	}
	events.Write(b)
	hand := x.byHand(t)
	for _, a := range x.all {
		if !a.Writes {
			continue
		}
		if f, ok := hand[a.Path]; ok {
			forms[a.Path] = append(forms[a.Path], f)
		}
		if len(forms[a.Path]) == 0 {
			t.Errorf("POST %s: no page shows a form for it. Link the page that does, or add one to byHand", a.Path)
		}
		for i := range forms[a.Path] {
			f := &forms[a.Path][i]
			for name, data := range f.files {
				if data == nil {
					f.files[name] = x.fileFor(t, a.Path, name, events.Bytes())
				}
			}
		}
	}
	return forms
}

// TestOddRequests: trust plan (v). Every address of the whole program,
// whatever it is sent: no panic, no 5xx, memory and goroutines as before, and
// after a 4xx the record is as it was. Addresses come from the routes, good
// forms from the pages themselves.
func TestOddRequests(t *testing.T) {
	x := wholeHouseIn(t, t.TempDir())
	forms, live := x.crawl(t)
	forms = x.targets(t, forms)
	if t.Failed() {
		return
	}
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	base, held := runtime.NumGoroutine(), m.HeapAlloc
	all := oddTally{by: map[string]int{}}
	ran := 0
	for _, a := range x.all {
		h := fnv.New64a()
		h.Write([]byte(a.Path))
		r := rand.New(rand.NewPCG(9, h.Sum64())) // by address: one of them alone is sent the same
		if a.Reads && !t.Run("GET "+a.Path, func(t *testing.T) { ran++; x.oddReads(t, r, a.Path, live[a.Path], &all) }) {
			return
		}
		if a.Writes && !t.Run("POST "+a.Path, func(t *testing.T) { ran++; x.oddWrites(t, r, forms[a.Path], &all) }) {
			return
		}
	}
	whole := ran >= len(x.all)
	x.asFirst(t)
	time.Sleep(50 * time.Millisecond)
	runtime.GC()
	runtime.ReadMemStats(&m)
	if n := runtime.NumGoroutine(); n > base+3 {
		t.Errorf("%d goroutines, %d at the start", n, base)
	}
	if m.HeapAlloc > held+heldMost {
		t.Errorf("%d MB are held, %d MB at the start", m.HeapAlloc>>20, held>>20)
	}
	if s := x.strays(); len(s) > 0 {
		t.Errorf("half-written files are left: %q", s)
	}
	if rep := ledger.Audit(x.dir); !rep.OK {
		t.Errorf("after all that: %s", rep.Words())
	}
	for _, p := range live {
		if w := x.ask("GET", p, "", nil); w.Code >= 500 {
			t.Errorf("after all that, GET %s: %d", p, w.Code)
		}
	}
	var never []string
	for _, a := range x.all {
		if a.Writes && all.by[a.Path] == 0 {
			never = append(never, a.Path)
		}
	}
	t.Logf("addresses that kept nothing of it: %s", strings.Join(never, " "))
	if whole && (all.kept == 0 || all.refused < all.sent/10) {
		t.Errorf("%d kept, %d refused of %d: the requests miss the edge", all.kept, all.refused, all.sent)
	}
	t.Logf("%d addresses, %v; heap %d MB before, %d MB at most, %d MB after", len(x.all), all, held>>20, all.peak>>20, m.HeapAlloc>>20)
}

// oddTally counts what came of odd requests.
type oddTally struct {
	sent, kept, refused int
	slowest             time.Duration
	slow                string
	peak                uint64
	by                  map[string]int // kept, by pattern
}

func (o oddTally) String() string {
	return fmt.Sprintf("%d odd requests: %d refused, %d kept something; slowest %v (%s)", o.sent, o.refused, o.kept, o.slowest.Round(time.Millisecond), o.slow)
}

// oddReads asks for one address in many odd ways.
func (x *wholeHouse) oddReads(t *testing.T, r *rand.Rand, pattern, live string, all *oddTally) {
	if live == "" {
		live = strings.NewReplacer("{$}", "", "{", "", "}", "").Replace(pattern)
	}
	for range max(5, *odd/10) {
		x.oddly(t, "GET", oddTarget(r, live), "", nil, all)
	}
}

// oddWrites sends one address many odd forms, and tells what came of them.
func (x *wholeHouse) oddWrites(t *testing.T, r *rand.Rand, forms []filled, all *oddTally) {
	x.asFirst(t)
	was := *all
	fresh := 0 // forms that may be kept: not too many, the record grows
	for range *odd {
		f := forms[r.IntN(len(forms))].clone()
		if fresh < 100 && r.IntN(2) == 0 {
			fresh++
			f.renew()
		}
		kind, body := oddForm(r, f)
		target := f.path
		if r.IntN(12) == 0 {
			target = oddTarget(r, f.path)
		}
		if x.oddly(t, "POST", target, kind, body, all); t.Failed() {
			return
		}
	}
	t.Logf("%d sent, %d refused, %d kept something", all.sent-was.sent, all.refused-was.refused, all.kept-was.kept)
}

// oddly sends one request: no panic, no 5xx, and nothing kept that was refused.
func (x *wholeHouse) oddly(t *testing.T, method, target, kind string, body []byte, all *oddTally) {
	_, before := x.led.Head()
	began := time.Now()
	w, broke := x.carefully(method, target, kind, body)
	if d := time.Since(began); d > all.slowest {
		all.slowest, all.slow = d, method+" "+target
	}
	all.sent++
	_, after := x.led.Head()
	switch {
	case broke != nil:
		t.Errorf("%s %.200s: panic %v\nfor %.300q (%s)", method, target, broke, body, kind)
	case w >= 500:
		t.Errorf("%s %.200s: %d for %.300q (%s)", method, target, w, body, kind)
	case w >= 400:
		all.refused++
	}
	if !bytes.Equal(before, after) {
		all.kept++
		all.by[x.pattern(target)]++
		if w >= 400 || method != http.MethodPost {
			t.Errorf("%s %.200s: answered %d and kept something of %.300q", method, target, w, body)
		}
	}
	if all.sent%200 == 0 {
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		all.peak = max(all.peak, m.HeapAlloc)
	}
}

// carefully sends a request and catches a panic.
func (x *wholeHouse) carefully(method, target, kind string, body []byte) (code int, broke any) {
	defer func() { broke = recover() }()
	return x.ask(method, target, kind, body).Code, nil
}

func (f filled) clone() filled {
	g := f
	g.fields = append([][2]string(nil), f.fields...)
	if f.files != nil {
		g.files = map[string][]byte{}
		for k, v := range f.files {
			g.files[k] = v
		}
	}
	return g
}

// renew gives the form an id of its own, as a page drawn again would.
func (f *filled) renew() {
	for i := range f.fields {
		if f.fields[i][0] == "form" {
			f.fields[i][1] = ledger.NewID()
		}
	}
	if f.json != nil {
		at := bytes.Index(f.json, []byte(`"form":"`))
		if at >= 0 {
			f.json = bytes.Clone(f.json)
			copy(f.json[at+8:], ledger.NewID())
		}
	}
}

// oddValues are what a field may be given by somebody who means no good.
var oddValues = []string{
	"", " ", "\x00", "\xff\xfe", "-1", "0", "1e309", "NaN", "Inf", "-0", "99999999999999999999", "3.5", "0x10", "１２", "null", "true", "[]", "{}",
	"0000-00-00", "2015-02-30", "9999-12-31", "-5000-01-01", "2015-04-06T00:00:00Z", "tomorrow",
	"../../etc/passwd", "..\\..\\x", "/etc/passwd", "C:\\CON", "a/b", "%2e%2e%2f", "\u2024\u2024/", ".", "..", "con.db", "http://evil.example/", "//evil.example", "javascript:alert(1)", "file:///etc/passwd",
	"<script>alert(1)</script>", "\"><img src=x>", "{{.}}", "${x}", "=1+1", "@x", "'; drop table events; --", "\u202eabc", "a\r\nSet-Cookie: x=1", "e\u0301", "👩‍🌾", "Ａ",
	"&a &b *a", "!!python/object x", "a: b: c", "- - - -", "#", "|", "? :", "1 m x", "x 1 m", "-3 m", "1e400 m", "0 cm x 0 cm", "999999 km x 1 mm", "triangle 1 m, 1 m, 99 m", "12' 99\"",
	"6 kale, since 99999, well", "kale, kale, kale", ", , , ,", "2014 to 2013", "N 91, E 999",
}

func oddValue(r *rand.Rand) string {
	switch r.IntN(24) {
	case 0:
		return strings.Repeat("9", 1+r.IntN(500))
	case 1:
		return strings.Repeat("a", 1+r.IntN(70_000))
	case 2:
		return strings.Repeat("line\n", 1+r.IntN(9000))
	case 3:
		return strings.Repeat([]string{"[", "{a: ", "(", "- ", "é", "\t"}[r.IntN(6)], 1+r.IntN(5000))
	}
	return oddValues[r.IntN(len(oddValues))]
}

// oddTarget changes an address a little, in its path or its question.
func oddTarget(r *rand.Rand, p string) string {
	path, query, _ := strings.Cut(p, "?")
	switch r.IntN(6) {
	case 0:
		parts := strings.Split(path, "/")
		v := oddValue(r)
		parts[r.IntN(len(parts))] = url.PathEscape(v[:min(len(v), 400)])
		path = strings.Join(parts, "/")
		if !strings.HasPrefix(path, "/") {
			path = "/" + path
		}
	case 1:
		query = string(mutated(r, []byte(query+"&a=1")))
	default:
		q, _ := url.ParseQuery(query)
		if q == nil {
			q = url.Values{}
		}
		for _, k := range []string{"id", "like", "kind", "space", "planting", "pull", "backup", "saved", "hour", "day", "date", "days", "until", "week", "crop", "food", "from", "what", "sort", "show", "event", "task", "variety", "figure"} {
			if r.IntN(6) == 0 {
				v := oddValue(r)
				q.Set(k, v[:min(len(v), 2000)])
			}
		}
		query = q.Encode()
	}
	if query == "" {
		return path
	}
	return path + "?" + query
}

// oddForm spoils a good form: a field, the bytes, the sort, the parts.
func oddForm(r *rand.Rand, f filled) (kind string, body []byte) {
	for range r.IntN(4) {
		if len(f.fields) == 0 {
			break
		}
		i := r.IntN(len(f.fields))
		switch r.IntN(8) {
		case 0:
			f.fields = append(f.fields[:i], f.fields[i+1:]...)
		case 1:
			f.fields = append(f.fields, [2]string{f.fields[i][0], oddValue(r)})
		case 2:
			f.fields = append(f.fields, [2]string{oddValue(r), oddValue(r)})
		default:
			if f.fields[i][0] != "form" || r.IntN(5) == 0 {
				f.fields[i][1] = oddValue(r)
			}
		}
	}
	for _, name := range named(f.files) {
		switch r.IntN(6) {
		case 0, 1, 2:
			f.files[name] = mutated(r, f.files[name])
		case 3:
			f.files[name] = []byte(oddValue(r))
		}
	}
	if f.json != nil && r.IntN(3) > 0 {
		f.json = oddJSON(r, f.json)
	}
	kind, body = f.encode()
	switch r.IntN(10) {
	case 0, 1:
		body = mutated(r, body)
	case 2:
		kind = []string{"", "text/plain", "application/json", "multipart/form-data", "multipart/form-data; boundary=x", "multipart/form-data; boundary=" + strings.Repeat("b", 200), "application/x-www-form-urlencoded; charset=\xff", "multipart/mixed; boundary=a"}[r.IntN(8)]
	case 3:
		body = make([]byte, r.IntN(5000))
		for i := range body {
			body[i] = byte(r.Uint32())
		}
	case 4:
		kind, body = oddParts(r, f)
	}
	return kind, body
}

// oddParts is a form of parts as no browser sends it.
func oddParts(r *rand.Rand, f filled) (string, []byte) {
	var b bytes.Buffer
	n := []int{0, 1, 3, 30, 1200}[r.IntN(5)]
	for i := range n {
		name := "form"
		if len(f.fields) > 0 {
			name = f.fields[i%len(f.fields)][0]
		}
		fmt.Fprintf(&b, "--b\r\nContent-Disposition: form-data; name=\"%s\"%s\r\n%s\r\n%s\r\n", name,
			[]string{"", "; filename=\"../../x\"", "; filename=\"\"", "; filename*=UTF-8''%00", "; name=\"other\""}[r.IntN(5)],
			[]string{"", "Content-Type: application/x-gzip\r\n", "Content-Transfer-Encoding: base64\r\n", "Content-Type: multipart/mixed; boundary=c\r\n", strings.Repeat("X-A: b\r\n", r.IntN(300))}[r.IntN(5)], oddValue(r))
	}
	b.WriteString([]string{"--b--\r\n", "--b", "", "--b\r\n\r\n"}[r.IntN(4)])
	return "multipart/form-data; boundary=b", b.Bytes()
}

// oddJSON spoils JSON: the bytes, a value, the depth.
func oddJSON(r *rand.Rand, b []byte) []byte {
	switch r.IntN(6) {
	case 0:
		return []byte(strings.Repeat([]string{"[", `{"a":`, `{"entries":[`}[r.IntN(3)], 1+r.IntN(20_000)))
	case 1, 2:
		v, _ := json.Marshal(oddValue(r))
		parts := bytes.Split(b, []byte(","))
		i := r.IntN(len(parts))
		if at := bytes.IndexByte(parts[i], ':'); at >= 0 {
			parts[i] = append(bytes.Clone(parts[i][:at+1]), [][]byte{v, []byte("null"), []byte("1e999"), []byte("-7"), []byte("{}"), []byte("[1]")}[r.IntN(6)]...)
		}
		return bytes.Join(parts, []byte(","))
	case 3:
		return bytes.Repeat(b, 1+r.IntN(60))
	}
	return mutated(r, b)
}

// mutated changes bytes a little, or much.
func mutated(r *rand.Rand, b []byte) []byte {
	b = bytes.Clone(b)
	for range 1 + r.IntN(4) {
		if len(b) == 0 {
			return b
		}
		i := r.IntN(len(b))
		j := min(len(b), i+1+r.IntN(40))
		switch r.IntN(9) {
		case 0:
			b[i] ^= 1 << r.IntN(8)
		case 1:
			b = b[:i]
		case 2:
			b = append(b[:i:i], append([]byte{0, 0xff, '%', '"', '{', '\\'}, b[i:]...)...)
		case 3:
			b = append(b[:i:i], b[j:]...)
		case 4:
			b = append(b[:j:j], append(bytes.Repeat(b[i:j], 1+r.IntN(50)), b[j:]...)...)
		case 5, 6:
			b = append(b[:i:i], append([]byte(oddValue(r)), b[j:]...)...)
		case 7:
			b = bytes.ReplaceAll(b, []byte("201"), []byte([]string{"000", "99999999999", "-1", "204", "１９９９"}[r.IntN(5)]))
		case 8:
			b = bytes.ReplaceAll(b, []byte("3"), []byte([]string{"1e309", "-5", "NaN", strings.Repeat("9", 400), "3.5", "null"}[r.IntN(6)]))
		}
		if len(b) > 4<<20 {
			b = b[:4<<20]
		}
	}
	return b
}

// named sorts the keys of a map, for an order that a seed repeats.
func named[V any](m map[string]V) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	sort.Strings(out)
	return out
}
