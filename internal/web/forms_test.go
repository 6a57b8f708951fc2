package web

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"net/url"
	"os"
	"reflect"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

type (
	ctxT = context.Context
	dayT = reckon.Day
)

// formOf gathers the fields of a drawn form, as a browser would send them.
func formOf(t *testing.T, root *node, action string, nth int) url.Values {
	t.Helper()
	for _, f := range root.find("form") {
		if f.attr["action"] != action {
			continue
		}
		if nth > 0 {
			nth--
			continue
		}
		v := url.Values{}
		for _, in := range f.find("input") {
			if (in.attr["type"] == "radio" || in.attr["type"] == "checkbox") && in.attr["checked"] == "" {
				continue
			}
			v.Add(in.attr["name"], in.attr["value"])
		}
		for _, a := range f.find("textarea") {
			v.Add(a.attr["name"], a.text)
		}
		for _, s := range f.find("select") {
			for i, o := range s.find("option") {
				if o.attr["selected"] != "" || i == 0 {
					v.Set(s.attr["name"], o.attr["value"])
				}
			}
		}
		return v
	}
	t.Fatalf("no form to %s", action)
	return nil
}

func with(v url.Values, pairs ...string) url.Values {
	out := url.Values{}
	for k, x := range v {
		out[k] = append([]string{}, x...)
	}
	for i := 0; i < len(pairs); i += 2 {
		out.Set(pairs[i], pairs[i+1])
	}
	return out
}

// realGarden records into a real ledger in a folder of the test.
func realGarden(t *testing.T, day *reckon.Day) (http.Handler, *ledger.Ledger) {
	t.Helper()
	l, err := ledger.Open(t.TempDir(), ledger.Options{Program: "pages test", Now: time.Now})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close() })
	o := (&fakeGarden{day: day}).options()
	o.Record = func(ctx context.Context, k ledger.Kind, on cal.Day, parent string, body any) (string, error) {
		e, err := ledger.NewEvent("phone", on, k, body)
		if err != nil {
			return "", err
		}
		e.ID, e.Parent = FormID(ctx), parent
		out, err := l.Append(ctx, e)
		if err != nil {
			return "", err
		}
		return out[0].ID, nil
	}
	o.Void = func(ctx context.Context, event string) error {
		_, err := o.Record(ctx, ledger.Voided, day.Date, "", ledger.Void{Event: event})
		return err
	}
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	return h, l
}

// TestFormsReachTheLedger fills every form of the pages as a browser would,
// sends it to a real ledger, and reads the event back.
func TestFormsReachTheLedger(t *testing.T) {
	d := richDay()
	h, l := realGarden(t, d)
	n := "/space/gate-bed/note/"
	for _, tt := range []struct {
		page, action string
		nth          int
		fill         []string
		kind         ledger.Kind
		on           cal.Day
		body         any
	}{
		{"/", "/task", 0, []string{"answer", "did", "measure", "bowl"}, ledger.Picked, today, ledger.Amount{Planting: "gate-bed-now", Measure: "bowl"}},
		{"/", "/task", 1, []string{"answer", "did"}, ledger.Sown, today, ledger.Started{Crop: "garlic", Space: "strip", Count: 40}},
		{"/", "/task", 2, []string{"answer", "did"}, ledger.Pulled, today, ledger.Ended{Planting: "bag-3-now"}},
		{"/", "/task", 3, []string{"answer", "not yet"}, ledger.Looked, today, ledger.Look{Space: "lamp", Looks: "not yet", Note: "sow leaf lettuce under the lamp"}},
		{"/", "/task", 4, []string{"answer", "did"}, ledger.Looked, today, ledger.Look{Planting: "res-1-now", Space: "res-1", Looks: "well"}},
		{"/look?task=bag-3.pull.bag-3-now", "/look", 0, []string{"looks", "young", "note", "new\r\nflowers"}, ledger.Looked, today, ledger.Look{Planting: "bag-3-now", Space: "bag-3", Looks: "young", Note: "new\nflowers"}},
		{"/look?task=strip.plant.garlic", "/look", 1, []string{"count", "31", "day", "2015-10-06"}, ledger.Sown, today - 2, ledger.Started{Crop: "garlic", Space: "strip", Count: 31}},
		{"/look?task=strip.plant.garlic", "/look", 2, []string{"why", "no cloves left"}, ledger.Dismissed, today, ledger.Dismissal{Task: "strip.plant.garlic", Why: "no cloves left"}},
		{n + "sown", n + "sown", 0, []string{"crop", "kale", "count", "9", "variety", "curly"}, ledger.Sown, today, ledger.Started{Crop: "kale", Variety: "curly", Space: "gate-bed", Count: 9}},
		{n + "set-out", n + "set-out", 0, []string{"planting", "pots-1", "count", "3"}, ledger.PutOut, today, ledger.Started{Planting: "pots-1", Crop: "kale", Space: "gate-bed", Count: 3}},
		{n + "set-out", n + "set-out", 0, []string{"planting", "", "crop", "tomato", "count", "2"}, ledger.PutOut, today, ledger.Started{Crop: "tomato", Space: "gate-bed", Count: 2}},
		{n + "picked", n + "picked", 0, []string{"kg", "0,4", "measure", "handful"}, ledger.Picked, today, ledger.Amount{Planting: "gate-bed-now", Kg: 0.4, Measure: "handful"}},
		{n + "pulled", n + "pulled", 0, []string{"day", "2015-10-01"}, ledger.Pulled, today - 7, ledger.Ended{Planting: "gate-bed-now"}},
		{n + "lost", n + "lost", 0, []string{"cause", "eaten", "count", "2"}, ledger.Lost, today, ledger.Ended{Planting: "gate-bed-now", Count: 2, Cause: "eaten"}},
		{n + "counted", n + "counted", 0, []string{"count", "0"}, ledger.Counted, today, ledger.Count{Planting: "gate-bed-now"}},
		{n + "looked", n + "looked", 0, []string{"planting", "", "looks", "other", "words", "damp and slug-eaten"}, ledger.Looked, today, ledger.Look{Space: "gate-bed", Looks: "damp and slug-eaten"}},
	} {
		where := fmt.Sprintf("%s form %d %v", tt.page, tt.nth, tt.fill)
		v := with(formOf(t, open(t, h, tt.page), tt.action, tt.nth), tt.fill...)
		w := ask(h, "POST", tt.action, v)
		if w.Code != http.StatusSeeOther {
			t.Errorf("%s: %d, want 303\n%s", where, w.Code, parse(t, w.Body.String()).find("main")[0].words())
			continue
		}
		events, err := l.Events(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		e := events[len(events)-1]
		if e.ID != v.Get("form") || e.Kind != tt.kind || e.Happened != tt.on {
			t.Errorf("%s: event %s %s %s, want %s %s %s", where, e.ID, e.Kind, e.Happened, v.Get("form"), tt.kind, tt.on)
		}
		got, err := ledger.Decode(e)
		if err != nil || !reflect.DeepEqual(got, tt.body) {
			t.Errorf("%s: body %+v (%v), want %+v", where, got, err, tt.body)
		}
		// The same form once more: the same page, no second event.
		again := ask(h, "POST", tt.action, v)
		more, _ := l.Events(context.Background())
		if again.Code != http.StatusSeeOther || again.Header().Get("Location") != w.Header().Get("Location") || len(more) != len(events) {
			t.Errorf("%s: sent twice: %d to %q and %d events, want 303 to %q and %d", where, again.Code, again.Header().Get("Location"), len(more), w.Header().Get("Location"), len(events))
		}
		// What was saved is said, and can be taken back.
		saved := open(t, h, w.Header().Get("Location"))
		undo := formOf(t, saved, "/undo", 0)
		if undo.Get("event") != e.ID || !strings.Contains(saved.words(), "Saved") && !strings.Contains(saved.words(), "Noted") {
			t.Errorf("%s: the page after does not say what was saved", where)
		}
		if u := ask(h, "POST", "/undo", undo); u.Code != http.StatusSeeOther {
			t.Errorf("%s: undo %d", where, u.Code)
		}
		if all, _ := l.Events(context.Background()); !ledger.TakenBack(all)[e.ID] {
			t.Errorf("%s: the event still counts after undo", where)
		}
	}
}

// TestAFormSentWithOtherWords keeps the first and says so.
func TestAFormSentWithOtherWords(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	v := with(formOf(t, open(t, h, "/space/gate-bed/note/counted"), "/space/gate-bed/note/counted", 0), "count", "5")
	if w := ask(h, "POST", "/space/gate-bed/note/counted", v); w.Code != http.StatusSeeOther {
		t.Fatalf("first: %d", w.Code)
	}
	if w := ask(h, "POST", "/space/gate-bed/note/counted", with(v, "count", "6")); w.Code != http.StatusConflict || len(g.events) != 1 {
		t.Errorf("same form with other words: %d and %d events, want 409 and 1", w.Code, len(g.events))
	}
}

// TestFaultsAtTheField keeps what was typed and says at the field what is
// wrong.
func TestFaultsAtTheField(t *testing.T) {
	n := "/space/gate-bed/note/"
	long := strings.Repeat("a", 1001)
	for _, tt := range []struct {
		kind  string
		fill  []string
		words string
	}{
		{"sown", []string{"count", "9"}, "Choose which crop."},
		{"sown", []string{"crop", "kale", "count", "nine"}, "Write a whole number"},
		{"sown", []string{"crop", "kale", "count", "0"}, "At least 1."},
		{"sown", []string{"crop", "kale", "count", "-3"}, "At least 1."},
		{"sown", []string{"crop", "kale", "count", "10001"}, "more than we take"},
		{"sown", []string{"crop", "no-such", "count", "3"}, "Choose a crop of the list."},
		{"sown", []string{"crop", "kale", "count", "3", "note", long}, "1001 letters long"},
		{"sown", []string{"crop", "kale", "count", "3", "day", "2015-10-09"}, "has not come yet"},
		{"sown", []string{"crop", "kale", "count", "3", "day", "8/10/2015"}, "year-month-day"},
		{"sown", []string{"crop", "kale", "count", "3", "day", "1999-01-01"}, "ten years"},
		{"sown", []string{"crop", "kale", "count", "3", "variety", "\x07bell"}, "cannot be kept"},
		{"picked", []string{"kg", "much"}, "Write kilograms"},
		{"picked", []string{"kg", "NaN"}, "Write kilograms"},
		{"picked", []string{"kg", "501"}, "more than we take"},
		{"picked", []string{"planting", "someone-elses"}, "Choose which one."},
		{"lost", []string{"cause", ""}, "Choose a cause."},
		{"counted", []string{"count", ""}, "Say how many"},
		{"looked", []string{"looks", ""}, "Choose how it looks."},
		{"looked", []string{"looks", "other", "words", ""}, "Say in a few words"},
	} {
		g := &fakeGarden{day: richDay()}
		h := handler(t, g)
		v := with(formOf(t, open(t, h, n+tt.kind), n+tt.kind, 0), tt.fill...)
		w := ask(h, "POST", n+tt.kind, v)
		if w.Code != http.StatusUnprocessableEntity {
			t.Errorf("%s %v: %d, want 422", tt.kind, tt.fill, w.Code)
			continue
		}
		root := parse(t, strings.ReplaceAll(w.Body.String(), "\x07", ""))
		checkPage(t, tt.kind, root)
		said := ""
		for _, p := range root.find("p") {
			if p.class("fault") {
				said += p.words()
			}
		}
		if !strings.Contains(said, tt.words) {
			t.Errorf("%s %v: says %q, want %q", tt.kind, tt.fill, said, tt.words)
		}
		kept := formOf(t, root, n+tt.kind, 0)
		for i := 0; i < len(tt.fill); i += 2 {
			f, x := tt.fill[i], tt.fill[i+1]
			if f == "planting" || f == "crop" && x == "no-such" || f == "variety" {
				continue // a choice that is not on the list cannot be shown chosen
			}
			if kept.Get(f) != x {
				t.Errorf("%s %v: field %s came back as %.40q", tt.kind, tt.fill, f, kept.Get(f))
			}
		}
		if kept.Get("form") != v.Get("form") {
			t.Errorf("%s %v: the form's id changed", tt.kind, tt.fill)
		}
		if len(g.events) != 0 {
			t.Errorf("%s %v: was recorded", tt.kind, tt.fill)
		}
	}
}

// TestWhenItCannotBeSaved loses nothing typed and says why.
func TestWhenItCannotBeSaved(t *testing.T) {
	n := "/space/gate-bed/note/counted"
	for _, tt := range []struct {
		err   error
		want  int
		words string
	}{
		{fmt.Errorf("appending: %w", ledger.ErrNoSpace), 507, "no room left"},
		{ledger.ErrStopped, 503, "stopped saving"},
		{ledger.ErrOtherBody, 409, "saved before"},
		{ledger.Faults{"odd"}, 422, "Not saved yet"},
		{errors.New("secret inner text"), 500, "fault is ours"},
	} {
		g := &fakeGarden{day: richDay()}
		h := handler(t, g)
		v := with(formOf(t, open(t, h, n), n, 0), "count", "5", "note", "by the fence")
		g.err = tt.err
		w := ask(h, "POST", n, v)
		root := parse(t, w.Body.String())
		if w.Code != tt.want || !strings.Contains(root.words(), tt.words) || strings.Contains(root.words(), "secret inner text") {
			t.Errorf("%v: %d %q, want %d %q", tt.err, w.Code, root.find("main")[0].words(), tt.want, tt.words)
		}
		if kept := formOf(t, root, n, 0); kept.Get("note") != "by the fence" || kept.Get("form") != v.Get("form") {
			t.Errorf("%v: the form came back as %v", tt.err, kept)
		}
		// Mended, the very same form is saved.
		g.err = nil
		if w := ask(h, "POST", n, v); w.Code != http.StatusSeeOther || len(g.events) != 1 {
			t.Errorf("%v: after mending %d, %d events", tt.err, w.Code, len(g.events))
		}
	}
}

// TestOddForms refuses what no page of ours sends.
func TestOddForms(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	good := goodForm("strip.plant.garlic")
	for _, tt := range []struct {
		path string
		form url.Values
		want int
	}{
		{"/task", with(good, "form", "short"), 400},
		{"/task", with(good, "form", "../../../../etc/passwd0000"), 400},
		{"/task", with(good, "task", "no.such.task"), 410},
		{"/task", with(good, "answer", "eat"), 400},
		{"/look", with(good, "what", "?"), 400},
		{"/look", with(good, "task", "?"), 410},
		{"/undo", with(good, "event", "x"), 400},
		{"/task", with(good, "task", "a\x00b"), 400},
		{"/task", with(good, "task", "\xff"), 400},
		{"/space/nowhere/note/sown", good, 404},
		{"/space/gate-bed/note/nothing", good, 404},
		{"/task", with(good, "note", strings.Repeat("x", 70_000)), 413},
	} {
		if w := ask(h, "POST", tt.path, tt.form); w.Code != tt.want {
			t.Errorf("POST %s %.80v: %d, want %d", tt.path, tt.form, w.Code, tt.want)
		}
	}
	if g.changes() != 0 {
		t.Errorf("%d changes were made", g.changes())
	}
	// The way back after an undo is one of ours, whatever the form says.
	for back, want := range map[string]string{"https://evil.example/": "/", "//evil.example": "/", "/\\evil.example": "/", "javascript:alert(1)": "/", "/space/gate-bed": "/space/gate-bed", "": "/"} {
		v := with(good, "form", ledger.NewID(), "back", back)
		got, _, _ := strings.Cut(ask(h, "POST", "/undo", v).Header().Get("Location"), "?")
		if got != want {
			t.Errorf("back %q leads to %q, want %q", back, got, want)
		}
	}
}

// TestBackupAndExport makes a backup once per form and sends the zip as a file.
func TestBackupAndExport(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	v := formOf(t, open(t, h, "/safe"), "/backup", 0)
	for range 2 {
		if w := ask(h, "POST", "/backup", v); w.Code != http.StatusSeeOther {
			t.Fatalf("backup: %d", w.Code)
		}
	}
	if g.backups != 1 || !strings.Contains(open(t, h, "/safe").words(), "backup 1, opened again") {
		t.Errorf("%d backups, want 1 and its words on the page", g.backups)
	}
	w := ask(h, "GET", "/export", nil)
	if w.Code != 200 || w.Header().Get("Content-Type") != "application/zip" || !strings.Contains(w.Header().Get("Content-Disposition"), "attachment") || w.Body.String() != "PK\x05\x06" {
		t.Errorf("export: %d %v %q", w.Code, w.Header(), w.Body.String())
	}
	g.err = os.ErrPermission
	if w := ask(h, "POST", "/backup", with(v, "form", ledger.NewID())); w.Code != 500 {
		t.Errorf("a backup that fails: %d, want 500", w.Code)
	}
}

// FuzzForms sends anything to every writing route: no fault of ours, no event
// that a ledger would refuse.
func FuzzForms(f *testing.F) {
	f.Add("/task", "form=0123456789ABCDEFGHJKMNPQRS&task=strip.plant.garlic&answer=did")
	f.Add("/look", "form=0123456789ABCDEFGHJKMNPQRS&task=strip.plant.garlic&what=did&count=3&day=2015-10-01")
	f.Add("/undo", "form=0123456789ABCDEFGHJKMNPQRS&event=0123456789ABCDEFGHJKMNPQRS&back=/")
	f.Add("/backup", "form=0123456789ABCDEFGHJKMNPQRS")
	for _, k := range noteKinds {
		f.Add("/space/gate-bed/note/"+k.Value, "form=0123456789ABCDEFGHJKMNPQRS&planting=gate-bed-now&crop=kale&count=3&day=2015-10-01&looks=well&cause=eaten&measure=bowl&kg=1&words=x&note=%0d%0a&variety=y")
	}
	f.Add("/space/gate-bed/note/sown", "%")
	day := richDay()
	kindOf := map[string]bool{"/task": true, "/look": true, "/undo": true, "/backup": true}
	for _, k := range noteKinds {
		kindOf["/space/gate-bed/note/"+k.Value] = true
	}
	f.Fuzz(func(t *testing.T, path, form string) {
		if !kindOf[path] {
			path = "/task"
		}
		v, err := url.ParseQuery(form)
		if err != nil {
			return
		}
		g := &fakeGarden{day: day}
		w := ask(handler(t, g), "POST", path, v)
		if w.Code >= 500 {
			t.Fatalf("POST %s %q: %d", path, form, w.Code)
		}
		for _, e := range g.events {
			b, err := json.Marshal(e.body)
			if err != nil {
				t.Fatal(err)
			}
			ev, err := ledger.NewEvent("phone", e.on, e.kind, e.body)
			if err != nil {
				t.Fatalf("POST %s %q recorded %s %s: %v", path, form, e.kind, b, err)
			}
			if _, err := ledger.Decode(ev); err != nil {
				t.Fatalf("POST %s %q recorded %s %s: %v", path, form, e.kind, b, err)
			}
		}
	})
}
