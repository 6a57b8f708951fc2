package web

import (
	"bytes"
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"image"
	"image/jpeg"
	"io"
	"mime/multipart"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// keptGarden is the rich fixture over a real ledger, with all of Keeping.
type keptGarden struct {
	led *ledger.Ledger
	now func() time.Time

	mu       sync.Mutex
	waiting  map[string]int
	restored string
}

func fixedNow() time.Time { return time.Date(2015, 10, 8, 9, 0, 0, 0, time.UTC) }

func (k *keptGarden) options(day *reckon.Day) Options {
	o := (&fakeGarden{day: day}).options()
	o.Now = k.now
	o.Record = func(ctx context.Context, kind ledger.Kind, on cal.Day, parent string, body any) (string, error) {
		e, err := ledger.NewEvent(DeviceOf(ctx, "home"), on, kind, body)
		if err != nil {
			return "", err
		}
		e.ID, e.Parent = FormID(ctx), parent
		_, err = k.led.Append(ctx, e)
		return e.ID, err
	}
	o.Void = func(ctx context.Context, event string) error {
		_, err := o.Record(ctx, ledger.Voided, day.Date, event, ledger.Void{Event: event})
		return err
	}
	o.Keeping = &Keeping{
		Safety: func(ctx context.Context) (Safety, error) {
			events, err := k.led.Events(ctx)
			s := Safety{Backups: ledger.Backups(k.led.Dir()), Entries: int64(len(events)), Newer: int64(len(events)), Free: 5 << 30, FreeOf: true}
			if st, serr := k.led.State(ctx); serr == nil {
				s.Knots = KnotsOf(st.Disputes, events)
			}
			k.mu.Lock()
			defer k.mu.Unlock()
			s.Devices = []Strand{{Name: "home", Entries: len(events), Last: k.now(), Homes: []time.Time{k.now().Add(-240 * time.Hour), k.now()}, Waiting: 0, Heard: k.now()},
				{Name: "<i>Ann's</i> phone", Waiting: 3, Heard: k.now().Add(-50 * time.Hour)}, {Name: "old phone", Waiting: -1, Revoked: true}}
			return s, err
		},
		Check: func(context.Context) error { return nil },
		WouldLose: func(_ context.Context, file string) (ledger.Loss, error) {
			for _, p := range ledger.Backups(k.led.Dir()) {
				if p.File == file {
					return ledger.WouldLose(k.led.Dir(), p.Path)
				}
			}
			return ledger.Loss{}, ErrNotThere
		},
		Restore:   func(_ context.Context, file string) error { k.restored = file; return nil },
		KeepPhoto: k.led.KeepPhoto,
		Photo:     func(d string, small bool) ([]byte, error) { return ledger.OpenPhoto(k.led.Dir(), d, small) },
		Pictures: func(ctx context.Context, space string) ([]ledger.PictureNote, error) {
			s, err := k.led.State(ctx)
			var out []ledger.PictureNote
			for _, p := range s.Pictures {
				if p.Space == space {
					out = append(out, p)
				}
			}
			return out, err
		},
		KeepSound: k.led.KeepSound,
		Sound:     func(d, format string) ([]byte, error) { return ledger.OpenSound(k.led.Dir(), d, format) },
		Sounds: func(ctx context.Context, space string) ([]ledger.SoundNote, error) {
			s, err := k.led.State(ctx)
			var out []ledger.SoundNote
			for _, x := range s.Sounds {
				if x.Space == space {
					out = append(out, x)
				}
			}
			return out, err
		},
		Calendar: func(context.Context) ([]byte, error) { return []byte("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n"), nil },
		Import:   func(ctx context.Context, r io.Reader) (int, error) { return k.led.Import(ctx, r) },
		Epoch: func(ctx context.Context) (string, error) {
			s, err := k.led.State(ctx)
			if s.Epoch == "" {
				s.Epoch = "0"
			}
			return s.Epoch, err
		},
		Waiting: func(_ context.Context, device string, n int, _ time.Time) {
			k.mu.Lock()
			defer k.mu.Unlock()
			k.waiting[device] = n
		},
		LastWaiting: func(device string) int {
			k.mu.Lock()
			defer k.mu.Unlock()
			if n, ok := k.waiting[device]; ok {
				return n
			}
			return -1
		},
		Same: func(ctx context.Context, id string, kind ledger.Kind, body any) bool {
			events, err := k.led.Events(ctx)
			if err != nil {
				return false
			}
			want, err := ledger.NewEvent("x", 0, kind, body)
			for _, e := range events {
				if e.ID == id {
					return err == nil && e.Kind == kind && bytes.Equal(e.Body, want.Body)
				}
			}
			return false
		},
	}
	return o
}

func kept(t testing.TB, dir string, now func() time.Time) (*keptGarden, http.Handler) {
	t.Helper()
	led, err := ledger.Open(dir, ledger.Options{Now: now})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { led.Close() })
	k := &keptGarden{led: led, now: now, waiting: map[string]int{}}
	h, err := New(k.options(richDay()))
	if err != nil {
		t.Fatal(err)
	}
	return k, h
}

var serveKept = flag.String("servekept", "", "serve the rich day over a real ledger: ADDRESS,FOLDER, until stopped, for the browser tests")

// TestServeKept serves until its input is closed. Browser tests start it.
func TestServeKept(t *testing.T) {
	if *serveKept == "" {
		t.Skip("no -servekept")
	}
	addr, dir, _ := strings.Cut(*serveKept, ",")
	k, _ := kept(t, dir, time.Now)
	if n, _ := k.led.Head(); n == 0 {
		k.tie(t)
	}
	o := k.options(richDay())
	o.Hosts = []string{"127.0.0.1", "garden.test"}
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	l, err := net.Listen("tcp", addr)
	if err != nil {
		t.Fatal(err)
	}
	fmt.Fprintf(os.Stdout, "serving kept http://%s\n", l.Addr())
	go http.Serve(l, h)
	io.Copy(io.Discard, os.Stdin)
}

// soundOf drops the outbox's script, which checkPage knows nothing of, after
// looking that it is a module from here and nothing else.
func soundOf(t *testing.T, page string) *node {
	t.Helper()
	before, rest, ok := strings.Cut(page, `<script type="module" src="/assets/outbox.`)
	if !ok {
		t.Fatal("the page carries no outbox")
	}
	_, after, _ := strings.Cut(rest, "</script>")
	return parse(t, before+after)
}

func TestKeepingPagesAreSound(t *testing.T) {
	k, h := kept(t, t.TempDir(), fixedNow)
	p, err := k.led.Backup(context.Background(), "")
	if err != nil {
		t.Fatal(err)
	}
	sync1(t, h, heldEntry{Form: ledger.NewID(), Path: "/space/gate-bed/note/sown", Fields: map[string]string{"crop": "kale", "count": "3", "day": "2015-10-07"}})
	for _, path := range []string{"/safe", "/restore?backup=" + p.File, "/recovery", "/unsent", "/space/gate-bed/photos"} {
		w := ask(h, "GET", path, nil)
		if w.Code != 200 {
			t.Errorf("%s: %d %s", path, w.Code, w.Body)
			continue
		}
		checkPage(t, path, soundOf(t, w.Body.String()))
	}
	safe := ask(h, "GET", "/safe", nil).Body.String()
	for _, want := range []string{"1 entry newer than the last proven backup", "3 unsent", "3 entries have not come home", "&lt;i&gt;Ann", "5 GB are free", "shut out"} {
		if !strings.Contains(safe, want) {
			t.Errorf("/safe does not say %q", want)
		}
	}
	if !strings.Contains(ask(h, "GET", "/restore?backup="+p.File, nil).Body.String(), "1 entry is newer than this backup") {
		t.Error("the restore page does not say what would be gone")
	}
	v := formOf(t, soundOf(t, ask(h, "GET", "/restore?backup="+p.File, nil).Body.String()), "/restore", 0)
	if w := ask(h, "POST", "/restore", v); w.Code != http.StatusSeeOther || k.restored != p.File {
		t.Errorf("restoring: %d, %q", w.Code, k.restored)
	}
}

func sync1(t testing.TB, h http.Handler, entries ...heldEntry) home {
	t.Helper()
	return syncAt(t, h, fixedNow(), entries...)
}

func syncAt(t testing.TB, h http.Handler, clock time.Time, entries ...heldEntry) home {
	t.Helper()
	b, err := json.Marshal(brought{Epoch: "0", Waiting: len(entries), Oldest: clock.UnixMilli(), Clock: clock.UnixMilli(), Entries: entries})
	if err != nil {
		t.Fatal(err)
	}
	w := send(h, "/sync", "application/json", b)
	var a home
	if err := json.Unmarshal(w.Body.Bytes(), &a); w.Code != 200 || err != nil {
		t.Fatalf("%d %s", w.Code, w.Body)
	}
	return a
}

func send(h http.Handler, path, kind string, body []byte) *httptest.ResponseRecorder {
	r := httptest.NewRequest("POST", "http://localhost"+path, bytes.NewReader(body))
	r.Header.Set("Content-Type", kind)
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w
}

// TestNotesComeHomeOnce: sent twice, after the form itself, with a planting
// that stands no more, from a wrong clock.
func TestNotesComeHomeOnce(t *testing.T) {
	k, h := kept(t, t.TempDir(), fixedNow)
	ctx := context.Background()
	picked := heldEntry{Form: ledger.NewID(), Path: "/space/gate-bed/note/picked", Fields: map[string]string{"planting": "long-gone", "measure": "", "kg": "0,4", "day": "2015-10-06", "note": "  two rows "}}
	a := sync1(t, h, picked)
	if !a.Results[0].Kept {
		t.Fatalf("a planting that stands no more: %+v", a.Results)
	}
	if a = sync1(t, h, picked, picked); !a.Results[0].Kept || !a.Results[1].Kept {
		t.Errorf("sent again: %+v", a.Results)
	}
	// the form itself, answered but the answer lost, then brought home again
	v := formOf(t, soundOf(t, ask(h, "GET", "/space/gate-bed/note/sown", nil).Body.String()), "/space/gate-bed/note/sown", 0)
	v = with(v, "crop", "kale", "count", "6", "variety", " red ", "note", "a\r\nb")
	if w := ask(h, "POST", "/space/gate-bed/note/sown", v); w.Code != http.StatusSeeOther {
		t.Fatalf("the form: %d", w.Code)
	}
	fields := map[string]string{}
	for name := range v {
		fields[name] = v.Get(name)
	}
	if a = sync1(t, h, heldEntry{Form: v.Get("form"), Path: "/space/gate-bed/note/sown", Fields: fields}); !a.Results[0].Kept {
		t.Errorf("brought home after the form was saved: %+v", a.Results)
	}
	// a clock 26 hours and one 25 years wrong: the day is moved, and said once
	for _, off := range []time.Duration{26 * time.Hour, -26 * time.Hour, 25 * 365 * 24 * time.Hour} {
		at := fixedNow().Add(off)
		e := heldEntry{Form: ledger.NewID(), Path: "/space/gate-bed/note/sown", Stamped: true, Fields: map[string]string{"crop": "kale", "count": "1", "day": at.Format("2006-01-02")}}
		a := syncAt(t, h, at, e)
		if !a.Results[0].Kept || !strings.Contains(a.Words, "clock") {
			t.Errorf("clock off by %v: %+v", off, a)
		}
		events, _ := k.led.Events(ctx)
		if got := events[len(events)-1].Happened; got != today && got != today-1 && got != today+1 {
			t.Errorf("clock off by %v: kept for %s", off, got)
		}
		// sent again when the clock is right: the same note
		if a := sync1(t, h, e); !a.Results[0].Kept && off < 0 {
			t.Errorf("again with the right clock: %+v", a)
		}
	}
	events, err := k.led.Events(ctx)
	if err != nil || len(events) != 5 {
		t.Errorf("%d entries, %v; want 5: each note once", len(events), err)
	}
	// what cannot be kept is said, and left with the phone
	for _, e := range []heldEntry{
		{Form: "x", Path: "/space/gate-bed/note/sown"},
		{Form: ledger.NewID(), Path: "/undo"},
		{Form: ledger.NewID(), Path: "/space/nowhere/note/sown", Fields: map[string]string{"day": "2015-10-06"}},
		{Form: ledger.NewID(), Path: "/space/gate-bed/note/counted", Fields: map[string]string{"planting": "x", "count": "many", "day": "2015-10-06"}},
		{Form: ledger.NewID(), Path: "/space/gate-bed/note/sown", Fields: map[string]string{"crop": "kale", "count": "1", "day": "2031-01-01"}},
	} {
		if a := sync1(t, h, e); a.Results[0].Kept || a.Results[0].Again || a.Results[0].Words == "" {
			t.Errorf("%+v: %+v", e, a.Results)
		}
	}
	if k.waiting["home"] != 1 {
		t.Errorf("the program last heard of %d waiting, want 1", k.waiting["home"])
	}
}

func photoForm(t testing.TB, form, space string, file []byte, name string) (kind string, body []byte) {
	t.Helper()
	var b bytes.Buffer
	m := multipart.NewWriter(&b)
	for _, f := range [][2]string{{"form", form}, {"space", space}, {"planting", ""}, {"day", "2015-10-06"}, {"note", "first leaves"}} {
		if err := m.WriteField(f[0], f[1]); err != nil {
			t.Fatal(err)
		}
	}
	p, err := m.CreateFormFile("photo", name)
	if err == nil {
		_, err = p.Write(file)
	}
	if err == nil {
		err = m.Close()
	}
	if err != nil {
		t.Fatal(err)
	}
	return m.FormDataContentType(), b.Bytes()
}

func aPicture(t testing.TB) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, image.NewGray(image.Rect(0, 0, 400, 300)), nil); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// TestPhotoIsKept, and whatever its file was called, it lies under its digest.
func TestPhotoIsKept(t *testing.T) {
	dir := t.TempDir()
	k, h := kept(t, filepath.Join(dir, "data"), fixedNow)
	kind, body := photoForm(t, ledger.NewID(), "gate-bed", aPicture(t), "../../../evil.jpg")
	for range 2 {
		if w := send(h, "/photo", kind, body); w.Code != http.StatusSeeOther {
			t.Fatalf("%d %s", w.Code, w.Body)
		}
	}
	s, err := k.led.State(context.Background())
	if err != nil || len(s.Pictures) != 1 || s.Pictures[0].Width != 400 {
		t.Fatalf("%+v, %v", s.Pictures, err)
	}
	page := ask(h, "GET", "/space/gate-bed/photos", nil).Body.String()
	for _, name := range []string{s.Pictures[0].SHA256 + ".jpg", s.Pictures[0].SHA256 + ".small.jpg"} {
		if w := ask(h, "GET", "/photo/"+name, nil); w.Code != 200 || w.Header().Get("Content-Type") != "image/jpeg" || !strings.Contains(page, name) {
			t.Errorf("%s: %d", name, w.Code)
		}
	}
	names := []string{"../x", "..\\x", "/etc/passwd", "C:\\x", "CON", "nul.jpg", strings.Repeat("a", 300), "a\x00b", "\u2024\u2024/x", ".", "..", "....//", "%2e%2e%2f", "x.svg", "x.jpg/..", "~root", "aux.png", "\u202egpj.exe"}
	for i, name := range names {
		kind, body := photoForm(t, ledger.NewID(), "gate-bed", aPicture(t), name)
		if w := send(h, "/photo", kind, body); w.Code != http.StatusSeeOther && w.Code != http.StatusBadRequest && w.Code != http.StatusUnprocessableEntity {
			t.Errorf("name %d %q: %d", i, name, w.Code)
		}
		if w := ask(h, "GET", "/photo/"+strings.NewReplacer("/", "%2f", "\\", "%5c", "\x00", "%00", " ", "%20").Replace(name), nil); w.Code < 300 {
			t.Errorf("read %q: %d", name, w.Code)
		}
	}
	files, _ := filepath.Glob(filepath.Join(dir, "*"))
	inside, _ := filepath.Glob(filepath.Join(dir, "data", "photos", "*", "*"))
	if len(files) != 1 || len(inside) != 2 {
		t.Errorf("outside the folder: %q; in the store: %q", files, inside)
	}
	before, _ := k.led.Head()
	for _, bad := range [][]byte{nil, []byte("<svg/>"), []byte("GIF89a\xff\xff\xff\xff"), aPicture(t)[:300]} {
		kind, body := photoForm(t, ledger.NewID(), "gate-bed", bad, "x.jpg")
		if w := send(h, "/photo", kind, body); w.Code != http.StatusUnprocessableEntity {
			t.Errorf("%.10q: %d", bad, w.Code)
		}
	}
	if after, _ := k.led.Head(); after != before {
		t.Error("a bad picture left an entry")
	}
}

// TestKeepingNeedsNoPlan: while there is no plan, what is kept can be seen and
// a backup asked for; other pages lead to the garden's description.
func TestKeepingNeedsNoPlan(t *testing.T) {
	k, _ := kept(t, t.TempDir(), fixedNow)
	p, err := k.led.Backup(context.Background(), "")
	if err != nil {
		t.Fatal(err)
	}
	h, err := New(k.options(nil))
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range []string{"/safe", "/restore?backup=" + p.File, "/recovery"} {
		w := ask(h, "GET", path, nil)
		if w.Code != http.StatusOK {
			t.Errorf("%s without a plan: %d %s", path, w.Code, w.Header().Get("Location"))
			continue
		}
		checkPage(t, path, soundOf(t, w.Body.String()))
	}
	if w := ask(h, "GET", "/lines", nil); w.Code != http.StatusSeeOther || w.Header().Get("Location") != "/entry" {
		t.Errorf("/lines without a plan: %d %q", w.Code, w.Header().Get("Location"))
	}
	v := formOf(t, soundOf(t, ask(h, "GET", "/restore?backup="+p.File, nil).Body.String()), "/restore", 0)
	if w := ask(h, "POST", "/restore", v); w.Code != http.StatusSeeOther || k.restored != p.File {
		t.Errorf("restoring without a plan: %d, %q", w.Code, k.restored)
	}
}
