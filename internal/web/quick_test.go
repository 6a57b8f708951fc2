package web

import (
	"bytes"
	"context"
	"mime/multipart"
	"net/http"
	"strings"
	"testing"

	"bedweek/internal/ledger"
)

// voiceForm fills the form of a voice note.
func voiceForm(t *testing.T, space string, sound []byte) (kind string, body []byte) {
	t.Helper()
	var b bytes.Buffer
	m := multipart.NewWriter(&b)
	for k, v := range map[string]string{"form": ledger.NewID(), "space": space, "day": "2015-10-08", "note": "", "planting": "", "back": "/quick"} {
		if err := m.WriteField(k, v); err != nil {
			t.Fatal(err)
		}
	}
	w, err := m.CreateFormFile("voice", "../../recording.ogg")
	if err != nil {
		t.Fatal(err)
	}
	w.Write(sound)
	m.Close()
	return m.FormDataContentType(), b.Bytes()
}

// TestVoiceAndLateWords keeps a voice note and plays it back, refuses what is
// no sound, asks of a picture what it shows, and no longer once it was said.
func TestVoiceAndLateWords(t *testing.T) {
	k, h := kept(t, t.TempDir(), fixedNow)
	said := append([]byte("OggS"), bytes.Repeat([]byte{9}, 2000)...)
	kind, body := voiceForm(t, "gate-bed", said)
	if w := send(h, "/voice", kind, body); w.Code != http.StatusSeeOther || !strings.HasPrefix(w.Header().Get("Location"), "/quick?saved=") {
		t.Fatalf("a voice note: %d to %q", w.Code, w.Header().Get("Location"))
	}
	page := ask(h, "GET", "/space/gate-bed/photos", nil).Body.String()
	_, rest, ok := strings.Cut(page, `src="/sound/`)
	if !ok {
		t.Fatal("the space's page plays no sound")
	}
	at, _, _ := strings.Cut(rest, `"`)
	if w := ask(h, "GET", "/sound/"+at, nil); w.Header().Get("Content-Type") != "audio/ogg" || !bytes.Equal(w.Body.Bytes(), said) {
		t.Errorf("played back: %d, %q, %d bytes", w.Code, w.Header().Get("Content-Type"), w.Body.Len())
	}
	kind, body = voiceForm(t, "gate-bed", []byte("<html><script>alert(1)</script>"))
	if w := send(h, "/voice", kind, body); w.Code != http.StatusUnprocessableEntity {
		t.Errorf("a page as a sound: %d, want 422", w.Code)
	}
	for _, name := range []string{"..%2fphotos", at[:64] + ".exe", at[:64], "x.ogg"} {
		if w := ask(h, "GET", "/sound/"+name, nil); w.Code != http.StatusNotFound {
			t.Errorf("/sound/%s: %d, want 404", name, w.Code)
		}
	}
	kind, body = photoForm(t, ledger.NewID(), "gate-bed", aPicture(t), "x.jpg")
	send(h, "/photo", kind, body)
	// The form of photoForm writes a note; a picture without one is asked about.
	e, err := ledger.NewEvent("phone", today, ledger.Pictured, ledger.Photo{Space: "gate-bed", SHA256: at[:64], Bytes: 10, Width: 4, Height: 4})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := k.led.Append(context.Background(), e); err != nil {
		t.Fatal(err)
	}
	var v map[string][]string
	for n := 0; ; n++ {
		f := formOf(t, open1(t, h, "/quick"), "/caption", n)
		if f.Get("picture") == e.ID {
			v = with(f, "note", "blight?")
			break
		}
	}
	if w := ask(h, "POST", "/caption", v); w.Code != http.StatusSeeOther {
		t.Fatalf("late words: %d", w.Code)
	}
	if page := ask(h, "GET", "/quick", nil).Body.String(); strings.Contains(page, e.ID) {
		t.Error("a picture with words is still asked about")
	}
	s, err := k.led.State(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, p := range s.Pictures {
		found = found || p.Event == e.ID && p.Note == "blight?"
	}
	if !found {
		t.Error("the words are not the picture's")
	}
}

// open1 draws a page that holds the outbox' script, which parse refuses elsewhere.
func open1(t *testing.T, h http.Handler, path string) *node {
	t.Helper()
	return parse(t, ask(h, "GET", path, nil).Body.String())
}

// TestQuickNotesAreNotes sends the quick forms as a finger would: one button
// and nothing typed.
func TestQuickNotesAreNotes(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	for _, tt := range []struct {
		page, button, value string
		body                any
	}{
		{"/quick?what=picked", "measure", "bowl", ledger.Amount{Planting: "gate-bed-now", Measure: "bowl"}},
		{"/quick?what=looks", "looks", "poor", ledger.Look{Planting: "gate-bed-now", Space: "gate-bed", Looks: "poor"}},
		{"/quick?what=wet", "words", "damp at a knuckle", nil},
	} {
		root := open(t, h, tt.page)
		action := ""
		for _, f := range root.find("form") {
			if strings.Contains(f.attr["action"], "/note/") {
				action = f.attr["action"]
				break
			}
		}
		v := with(formOf(t, root, action, 0), tt.button, tt.value)
		w := ask(h, "POST", action, v)
		if w.Code != http.StatusSeeOther || !strings.HasPrefix(w.Header().Get("Location"), "/?saved=") {
			t.Errorf("%s: %d to %q, want Today", tt.page, w.Code, w.Header().Get("Location"))
			continue
		}
		got := g.events[len(g.events)-1].body
		if l, ok := got.(ledger.Look); tt.body == nil && (!ok || l.Looks != tt.value || l.Planting != "") {
			t.Errorf("%s: kept %+v, want a look at the whole space", tt.page, got)
		} else if tt.body != nil && got != tt.body {
			t.Errorf("%s: kept %+v, want %+v", tt.page, got, tt.body)
		}
	}
}

// TestAnAnswerComesHomeLate brings an answer to a task that has gone from the
// list since: the note itself says what it was.
func TestAnAnswerComesHomeLate(t *testing.T) {
	k, h := kept(t, t.TempDir(), fixedNow)
	entry := func(fields map[string]string) heldEntry {
		f := map[string]string{"task": "gone.tie.x", "space": "gate-bed", "planting": "gate-bed-now", "verb": "tie", "object": "tomato", "event": "done", "count": "0", "crop": "tomato", "day": "2015-10-07", "answer": "did"}
		for a, b := range fields {
			f[a] = b
		}
		return heldEntry{Form: ledger.NewID(), Path: "/task", Fields: f}
	}
	a := sync1(t, h, entry(nil), entry(map[string]string{"event": "picked", "answer": "did bucket"}), entry(map[string]string{"answer": "not yet", "day": "2031-01-01"}),
		entry(map[string]string{"answer": "shrug"}), entry(map[string]string{"day": "soon"}))
	for i, want := range []bool{true, true, true, false, false} {
		if a.Results[i].Kept != want || a.Results[i].Again || !want && a.Results[i].Words == "" {
			t.Errorf("answer %d: %+v, want kept %v", i, a.Results[i], want)
		}
	}
	events, err := k.led.Events(context.Background())
	if err != nil || len(events) != 3 {
		t.Fatalf("%d entries (%v), want 3", len(events), err)
	}
	for i, want := range []any{ledger.Look{Planting: "gate-bed-now", Space: "gate-bed", Looks: "done: tie"}, ledger.Amount{Planting: "gate-bed-now", Measure: "bucket"},
		ledger.Look{Planting: "gate-bed-now", Space: "gate-bed", Looks: "not yet", Note: "tie tomato"}} {
		if got, err := ledger.Decode(events[i]); err != nil || got != want {
			t.Errorf("entry %d is %+v (%v), want %+v", i, got, err, want)
		}
	}
	if events[2].Happened != today {
		t.Errorf("a day to come was kept as %s", events[2].Happened)
	}
}
