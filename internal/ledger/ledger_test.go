package ledger

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"testing"
	"time"

	"bedweek/internal/cal"
)

// clock returns a clock that starts on an invented day and moves a second at
// each look.
func clock() func() time.Time {
	var mu sync.Mutex
	t := time.Date(2015, 4, 12, 9, 0, 0, 0, time.UTC)
	return func() time.Time {
		mu.Lock()
		defer mu.Unlock()
		t = t.Add(time.Second)
		return t
	}
}

func open(t testing.TB, dir string) *Ledger {
	t.Helper()
	l, err := Open(dir, Options{Now: clock(), Program: "bedweek test"})
	if err != nil {
		t.Fatalf("Open: %v", err)
	}
	t.Cleanup(func() { l.Close() })
	return l
}

func event(t testing.TB, kind Kind, day string, body any) Event {
	t.Helper()
	d, err := cal.Parse(day)
	if err != nil {
		t.Fatal(err)
	}
	e, err := NewEvent("kitchen tablet", d, kind, body)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func add(t testing.TB, l *Ledger, events ...Event) []Event {
	t.Helper()
	out, err := l.Append(context.Background(), events...)
	if err != nil {
		t.Fatalf("Append: %v", err)
	}
	return out
}

func auditClean(t testing.TB, dir string) {
	t.Helper()
	if r := Audit(dir); !r.OK {
		t.Errorf("audit:\n%s", r.Words())
	}
}

func TestAppendIsKept(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "a garden? 50% #1") // signs that a file name may hold
	l := open(t, dir)
	sown := event(t, Sown, "2015-04-12", Started{Crop: "carrot", Space: "long-bed", Count: 120})
	kept := add(t, l, sown, event(t, Picked, "2015-07-01", Amount{Planting: sown.ID, Kg: 0.4}))
	if kept[0].Seq != 1 || kept[1].Seq != 2 || len(kept[1].Chain) != 32 {
		t.Fatalf("kept as %+v", kept)
	}
	st, err := l.State(context.Background())
	if err != nil || len(st.Plantings) != 1 || st.Plantings[0].Count != 120 || st.Plantings[0].PickedKg != 0.4 {
		t.Fatalf("state %+v, %v", st, err)
	}
	auditClean(t, dir) // while it is open
	if err := l.Close(); err != nil {
		t.Fatal(err)
	}
	before, _ := os.ReadFile(filepath.Join(dir, dataName))
	auditClean(t, dir)
	after, _ := os.ReadFile(filepath.Join(dir, dataName))
	if !bytes.Equal(before, after) {
		t.Error("the audit changed the file")
	}
	l = open(t, dir)
	again, err := l.Events(context.Background())
	if err != nil || !reflect.DeepEqual(again, kept) {
		t.Errorf("read back %+v, %v; kept %+v", again, err, kept)
	}
	if seq, chain := l.Head(); seq != 2 || !bytes.Equal(chain, kept[1].Chain) {
		t.Errorf("Head = %d %x", seq, chain)
	}
	if since, err := l.Since(context.Background(), 1); err != nil || len(since) != 1 || since[0].ID != kept[1].ID {
		t.Errorf("Since(1) = %v, %v", since, err)
	}
	if since, err := l.Since(context.Background(), 9); err != nil || len(since) != 0 {
		t.Errorf("Since(9) = %v, %v; want none", since, err)
	}
}

func TestAppendTwiceIsOnce(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	e := event(t, Looked, "2015-05-01", Look{Space: "long-bed", Looks: "well"})
	first := add(t, l, e)
	e.Body = json.RawMessage(`{ "looks" : "well", "space" : "long-bed" }`) // same words, other spacing and order
	if again := add(t, l, e); !reflect.DeepEqual(first, again) {
		t.Errorf("sent again: %+v, want %+v", again, first)
	}
	other := e
	other.Body = json.RawMessage(`{"space":"long-bed","looks":"poor"}`)
	if _, err := l.Append(context.Background(), other); !errors.Is(err, ErrOtherBody) {
		t.Errorf("same id, other body: %v, want ErrOtherBody", err)
	}
	other = e
	other.Happened++
	if _, err := l.Append(context.Background(), other); !errors.Is(err, ErrOtherBody) {
		t.Errorf("same id, other day: %v, want ErrOtherBody", err)
	}
	// All or none: a good one beside a bad one is not kept.
	good := event(t, Looked, "2015-05-02", Look{Space: "long-bed", Looks: "well"})
	if _, err := l.Append(context.Background(), good, other); !errors.Is(err, ErrOtherBody) {
		t.Errorf("pair: %v, want ErrOtherBody", err)
	}
	// The same event twice in one call is one entry.
	if twice := add(t, l, good, good); twice[0].Seq != 2 || twice[1].Seq != 2 {
		t.Errorf("twice in one call: places %d and %d, want 2 and 2", twice[0].Seq, twice[1].Seq)
	}
	if seq, _ := l.Head(); seq != 2 {
		t.Errorf("%d entries, want 2", seq)
	}
	auditClean(t, dir)
}

func TestManyWritersAtOnce(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	const hands, each = 8, 25
	var wg sync.WaitGroup
	for h := range hands {
		wg.Add(1)
		go func() {
			defer wg.Done()
			s := event(t, Sown, "2015-04-12", Started{Crop: "bean", Space: string(rune('a' + h)), Count: 50})
			if _, err := l.Append(context.Background(), s); err != nil {
				t.Error(err)
			}
			for range each {
				p := event(t, Pulled, "2015-06-01", Ended{Planting: s.ID, Count: 1})
				if _, err := l.Append(context.Background(), p, p); err != nil {
					t.Error(err)
				}
			}
		}()
	}
	wg.Wait()
	st, err := l.State(context.Background())
	if err != nil || st.Events != hands*(each+1) {
		t.Fatalf("%d events, %v; want %d", st.Events, err, hands*(each+1))
	}
	for _, p := range st.Plantings {
		if p.Count != 25 {
			t.Errorf("%s: %d left, want 25", p.Space, p.Count)
		}
	}
	auditClean(t, dir)
}

func TestTakingBackChangesTheTable(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	sown := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	pulled := event(t, Pulled, "2015-07-20", Ended{Planting: sown.ID})
	void := event(t, Voided, "2015-07-21", Void{Event: pulled.ID, Why: "wrong bed"})
	voidVoid := event(t, Voided, "2015-07-22", Void{Event: void.ID})
	want := []int{30, 0, 30, 0}
	for i, e := range []Event{sown, pulled, void, voidVoid} {
		add(t, l, e)
		st, _ := l.State(context.Background())
		if st.Plantings[0].Count != want[i] {
			t.Errorf("after %s: %d stand, want %d", e.Kind, st.Plantings[0].Count, want[i])
		}
		auditClean(t, dir)
	}
	add(t, l, event(t, Voided, "2015-07-23", Void{Event: sown.ID}))
	if st, _ := l.State(context.Background()); len(st.Plantings) != 0 {
		t.Errorf("after taking back the sowing: %+v", st.Plantings)
	}
	auditClean(t, dir)
}

func TestLateCauseChangesTheTable(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	sown := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	counted := event(t, Counted, "2015-05-20", Count{Planting: sown.ID, Count: 22})
	add(t, l, counted) // comes before the sowing it speaks of
	if st, _ := l.State(context.Background()); len(st.Plantings) != 0 || len(st.Differences) != 1 {
		t.Errorf("before the sowing came: %+v", st)
	}
	add(t, l, sown)
	st, _ := l.State(context.Background())
	if len(st.Plantings) != 1 || st.Plantings[0].Count != 22 || len(st.Differences) != 1 {
		t.Errorf("after: %+v", st)
	}
	auditClean(t, dir)
}

func TestRingIsRefused(t *testing.T) {
	l := open(t, t.TempDir())
	a := event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"})
	b := event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "poor"})
	a.Parent, b.Parent = b.ID, a.ID
	add(t, l, a)
	var f Faults
	if _, err := l.Append(context.Background(), b); !errors.As(err, &f) {
		t.Errorf("ring: %v, want Faults", err)
	}
	if _, err := l.Append(context.Background(), a, b); !errors.As(err, &f) {
		t.Errorf("ring in one call: %v, want Faults", err)
	}
}

func TestRebuild(t *testing.T) {
	dir := t.TempDir()
	l := open(t, dir)
	s := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	add(t, l, s)
	if _, err := l.writer.ExecContext(context.Background(), "UPDATE planting SET count = 31"); err != nil {
		t.Fatal(err)
	}
	if r := Audit(dir); r.OK || !strings.Contains(r.Words(), "WRONG  plantings") {
		t.Errorf("a wrong table was not found:\n%s", r.Words())
	}
	l.Close()
	if _, err := Open(dir, Options{Now: clock()}); !errors.Is(err, ErrDamaged) {
		t.Errorf("Open on a wrong table: %v, want ErrDamaged", err)
	}
	l, err := Open(dir, Options{Now: clock(), Rebuild: true})
	if err != nil {
		t.Fatal(err)
	}
	defer l.Close()
	auditClean(t, dir)
	if _, err := l.writer.ExecContext(context.Background(), "DELETE FROM planting"); err != nil {
		t.Fatal(err)
	}
	if err := l.Rebuild(context.Background()); err != nil {
		t.Fatal(err)
	}
	auditClean(t, dir)
}

func TestEntriesCannotBeChanged(t *testing.T) {
	l := open(t, t.TempDir())
	add(t, l, event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}))
	for _, q := range []string{
		"UPDATE event SET device = 'x'",
		"DELETE FROM event",
		"INSERT OR REPLACE INTO event SELECT seq, id, parent, 'x', happened, written, kind, version, body, digest, chain FROM event",
	} {
		if _, err := l.writer.ExecContext(context.Background(), q); err == nil || !strings.Contains(err.Error(), "append-only") {
			t.Errorf("%s: %v, want a refusal", q, err)
		}
	}
}

// TestAuditWhileWriting: entries that come while a record is looked at are not
// missing from it.
func TestAuditWhileWriting(t *testing.T) {
	l := open(t, t.TempDir())
	for range 20 {
		add(t, l, someEvents(t, 100)...)
	}
	stop := make(chan struct{})
	var hand sync.WaitGroup
	hand.Go(func() {
		for {
			select {
			case <-stop:
				return
			default:
				add(t, l, someEvents(t, 1)...)
			}
		}
	})
	for range 5 {
		if r := Audit(l.Dir()); !r.OK {
			t.Errorf("while entries come:\n%s", r.Words())
			break
		}
	}
	close(stop)
	hand.Wait()
}

func someEvents(t *testing.T, n int) (out []Event) {
	for range n {
		out = append(out, event(t, Looked, "2015-05-01", Look{Space: "bed", Looks: "well"}))
	}
	return out
}
