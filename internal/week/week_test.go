package week

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

var (
	seeds = flag.Int("seeds", 40, "weeks played; 1000 for a change, 10000 in the full tier")
	first = flag.Uint64("seed", 1, "the first seed")
	long  = flag.Int("long", 2, "weeks of 40 notes a day and phone")
)

// fault is one planted in a phone, to see that the week catches it.
type fault int

const (
	none        fault = iota
	sinceLast         // sends only what was written since it last sent
	forgetsSent       // keeps nothing once sent, so a new epoch finds nothing
	dropsRefuse       // takes any answer for an acknowledgement, also none
)

// phone follows the rules of internal/web/ui/base/outbox.js.
type phone struct {
	name   string
	off    time.Duration // how wrong its clock is
	notes  []*note
	epoch  string
	lastAt time.Time
	fault  fault
}

type note struct {
	e    ledger.Event
	at   time.Time // by the phone's clock
	sent bool
}

// world is the week under way.
type world struct {
	t      *testing.T
	r      *rand.Rand
	dir    string
	led    *ledger.Ledger
	now    time.Time
	phones []*phone
	told   map[string]ledger.Event // all that was ever written, by id
	gone   map[string]bool         // thrown away by a browser before it was sent
	aside  []string                // backups made before a restore
	late   []ledger.Event          // posts still under way, to be played again
	kept   int                     // acknowledged
	lost   int                     // of those, put back by a restore
}

func (w *world) clock() time.Time { w.now = w.now.Add(time.Millisecond); return w.now }

func (w *world) open() {
	var err error
	if w.led, err = ledger.Open(w.dir, ledger.Options{Now: w.clock, Program: "week"}); err != nil {
		w.t.Fatal(err)
	}
}

// write makes a note on a phone, about plants that both know.
func (w *world) write(p *phone, plants []string) {
	at := w.now.Add(p.off)
	kinds := []struct {
		k ledger.Kind
		b any
	}{
		{ledger.Picked, ledger.Amount{Planting: plants[w.r.IntN(len(plants))], Measure: "bowl"}},
		{ledger.Counted, ledger.Count{Planting: plants[w.r.IntN(len(plants))], Count: w.r.IntN(30)}},
		{ledger.Looked, ledger.Look{Planting: plants[w.r.IntN(len(plants))], Looks: "poor", Note: p.name}},
		{ledger.Sown, ledger.Started{Crop: "kale", Space: "bed", Count: 1 + w.r.IntN(9)}},
		{ledger.Lost, ledger.Ended{Planting: plants[w.r.IntN(len(plants))], Count: 1, Cause: "eaten"}},
	}
	k := kinds[w.r.IntN(len(kinds))]
	e, err := ledger.NewEvent(p.name, cal.FromTime(at), k.k, k.b)
	if err != nil {
		w.t.Fatal(err)
	}
	w.told[e.ID] = e
	p.notes = append(p.notes, &note{e: e, at: at})
}

// epoch is what the record tells a phone.
func (w *world) epoch() string {
	s, err := w.led.State(context.Background())
	if err != nil {
		w.t.Fatal(err)
	}
	return s.Epoch
}

// come brings a phone home, with whatever the network does.
func (w *world) come(p *phone, calm bool) {
	if e := w.epoch(); e != p.epoch {
		for _, n := range p.notes {
			n.sent = false
		}
		p.epoch = e
	}
	var out []*note
	for _, n := range p.notes {
		if !n.sent && !(p.fault == sinceLast && !n.at.After(p.lastAt)) {
			out = append(out, n)
		}
	}
	if !calm && w.r.IntN(3) == 0 { // reordered
		w.r.Shuffle(len(out), func(i, j int) { out[i], out[j] = out[j], out[i] })
	}
	for _, n := range out {
		chance := w.r.Float64()
		if calm {
			chance = 1
		}
		if chance < 0.08 { // cut before it arrived, and all after it
			if p.fault == dropsRefuse {
				n.sent = true
			}
			break
		}
		w.post(n.e)
		if chance < 0.38 { // doubled, now or much later
			if w.r.IntN(2) == 0 {
				w.post(n.e)
			} else {
				w.late = append(w.late, n.e)
			}
		}
		if chance < 0.48 { // the answer is lost after the commit
			break
		}
		n.sent = true
		w.kept++
	}
	p.lastAt = w.now.Add(p.off)
	if p.fault == forgetsSent {
		var left []*note
		for _, n := range p.notes {
			if !n.sent {
				left = append(left, n)
			}
		}
		p.notes = left
	}
}

func (w *world) post(e ledger.Event) {
	if _, err := w.led.Append(context.Background(), e); err != nil {
		w.t.Fatalf("%s: %v", e.ID, err)
	}
}

// evict throws a phone's storage away, as a browser may.
func (w *world) evict(p *phone) {
	for _, n := range p.notes {
		if !w.has(n.e.ID) {
			w.gone[n.e.ID] = true
		}
	}
	p.notes = nil
}

func (w *world) has(id string) bool {
	events, err := w.led.Events(context.Background())
	if err != nil {
		w.t.Fatal(err)
	}
	for _, e := range events {
		if e.ID == id {
			return true
		}
	}
	return false
}

// restore puts the record back to an earlier backup.
func (w *world) restore() {
	all := ledger.Backups(w.dir)
	if len(all) == 0 {
		return
	}
	if err := w.led.Close(); err != nil {
		w.t.Fatal(err)
	}
	b, err := ledger.Restore(w.dir, all[w.r.IntN(len(all))].Path, ledger.Options{Now: w.clock, Program: "week"})
	if err != nil {
		w.t.Fatal(err)
	}
	if b.Before.File != "" {
		w.aside = append(w.aside, filepath.Join(ledger.BackupFolder(w.dir), b.Before.File))
	}
	w.open()
}

// play runs a week and returns what is wrong at its end.
func play(t *testing.T, seed uint64, notes int, planted fault) (wrong []string, w *world) {
	dir, err := os.MkdirTemp("", "week-")
	if err != nil {
		t.Fatal(err)
	}
	defer os.RemoveAll(dir)
	w = &world{t: t, r: rand.New(rand.NewPCG(seed, 77)), dir: filepath.Join(dir, "data"), now: time.Date(2015, 3, 26, 6, 0, 0, 0, time.UTC),
		told: map[string]ledger.Event{}, gone: map[string]bool{}}
	w.open()
	defer func() { w.led.Close() }()
	clocks := []time.Duration{0, 10 * time.Minute, -10 * time.Minute, 26 * time.Hour, -26 * time.Hour,
		time.Date(1970, 1, 2, 0, 0, 0, 0, time.UTC).Sub(w.now), time.Date(2040, 6, 1, 0, 0, 0, 0, time.UTC).Sub(w.now)}
	w.phones = []*phone{{name: "ann", off: clocks[w.r.IntN(len(clocks))], fault: planted}, {name: "bo", off: clocks[w.r.IntN(len(clocks))], fault: planted}}
	plants := []string{"bed-1", "bed-2", "bed-3"}
	for day := range 7 {
		for range notes {
			w.now = w.now.Add(time.Duration(w.r.IntN(40)+1) * time.Minute)
			p := w.phones[w.r.IntN(2)]
			w.write(p, plants)
			switch w.r.IntN(40) {
			case 0, 1, 2, 3, 4, 5, 6, 7:
				w.come(p, false)
			case 8:
				p.off = clocks[w.r.IntN(len(clocks))] // its clock jumps
			case 9:
				w.led.Close() // the program stops in the midst of it
				w.open()
			case 10:
				if w.r.IntN(6) == 0 {
					w.evict(p)
				}
			case 11, 12:
				if len(w.late) > 0 {
					i := w.r.IntN(len(w.late))
					w.post(w.late[i])
				}
			}
		}
		if day == 1 || day == 3 {
			if _, err := w.led.Backup(context.Background(), ""); err != nil {
				t.Fatal(err)
			}
		}
		if day == 4 && w.r.IntN(2) == 0 {
			w.restore()
		}
		w.now = w.now.Add(24 * time.Hour).Truncate(24 * time.Hour)
	}
	for _, p := range w.phones {
		w.come(p, true)
	}
	for _, e := range w.late { // a month later, the last of them
		w.post(e)
	}
	return w.judge(), w
}

// judge compares what is kept with what was written.
func (w *world) judge() (wrong []string) {
	events, err := w.led.Events(context.Background())
	if err != nil {
		return []string{err.Error()}
	}
	have := map[string]int{}
	for i, e := range events {
		have[e.ID]++
		if i > 0 && e.Seq != events[i-1].Seq+1 {
			wrong = append(wrong, "the order of writing has a gap")
		}
	}
	held := map[string]bool{}
	for _, p := range w.phones {
		for _, n := range p.notes {
			held[n.e.ID] = true
		}
	}
	for id, e := range w.told {
		switch {
		case have[id] > 1:
			wrong = append(wrong, fmt.Sprintf("%s (%s) is there %d times", id, e.Kind, have[id]))
		case have[id] == 1 || w.gone[id]:
		case !held[id] && w.phones[0].fault == none && w.inBackup(id):
			w.lost++ // put back, and its phone's storage was thrown away: only the backup made before holds it
		default:
			wrong = append(wrong, fmt.Sprintf("%s (%s of %s) is lost", id, e.Kind, e.Device))
		}
	}
	before := len(events)
	for _, e := range events { // the whole log a second time
		e.Seq = 0
		if _, err := w.led.Append(context.Background(), e); err != nil {
			wrong = append(wrong, err.Error())
		}
	}
	if n, _ := w.led.Head(); int(n) != before {
		wrong = append(wrong, fmt.Sprintf("played twice, %d entries became %d", before, n))
	}
	state, err := w.led.State(context.Background())
	if err != nil {
		return append(wrong, err.Error())
	}
	again := ledger.Replay(events)
	if fmt.Sprint(state.Plantings, state.Disputes) != fmt.Sprint(again.Plantings, again.Disputes) {
		wrong = append(wrong, "the running state is not a fresh replay's")
	}
	if err := w.led.Close(); err != nil && !errors.Is(err, ledger.ErrClosed) {
		wrong = append(wrong, err.Error())
	}
	if r := ledger.Audit(w.dir); !r.OK {
		wrong = append(wrong, r.Words())
	}
	return wrong
}

// inBackup reports whether a backup made before a restore holds an entry.
func (w *world) inBackup(id string) bool {
	for _, path := range w.aside {
		dir := filepath.Join(w.t.TempDir(), "data")
		if _, err := ledger.Restore(dir, path, ledger.Options{Now: w.clock, Program: "week"}); err != nil {
			w.t.Fatal(err)
		}
		l, err := ledger.Open(dir, ledger.Options{Now: w.clock, Program: "week"})
		if err != nil {
			w.t.Fatal(err)
		}
		events, err := l.Events(context.Background())
		l.Close()
		if err != nil {
			w.t.Fatal(err)
		}
		for _, e := range events {
			if e.ID == id {
				return true
			}
		}
	}
	return false
}

func TestWeek(t *testing.T) {
	written, kept, lost, restored := 0, 0, 0, 0
	run := func(seed uint64, notes int) {
		wrong, w := play(t, seed, notes, none)
		for _, x := range wrong {
			t.Errorf("seed %d: %s", seed, x)
		}
		written += len(w.told)
		kept += w.kept
		lost += w.lost
		restored += len(w.aside)
	}
	for s := range uint64(*seeds) {
		run(*first+s, 12)
	}
	for s := range uint64(*long) {
		run(*first+1_000_000+s, 80)
	}
	t.Logf("%d weeks, %d long ones: %d notes, %d acknowledged, %d restores; %d are only in the backup made before a restore, their phone's storage thrown away", *seeds, *long, written, kept, restored, lost)
}

// TestWeekCatchesPlantedFaults: each must show within some weeks.
func TestWeekCatchesPlantedFaults(t *testing.T) {
	for name, f := range map[string]fault{"changed since last sync": sinceLast, "nothing kept for a new epoch": forgetsSent, "no answer taken for yes": dropsRefuse} {
		caught := 0
		for s := range uint64(12) {
			if wrong, _ := play(t, *first+s, 12, f); len(wrong) > 0 {
				caught++
			}
		}
		if caught == 0 {
			t.Errorf("%s: not caught in 12 weeks", name)
		}
		t.Logf("%s: caught in %d of 12 weeks", name, caught)
	}
}

// TestTwoAnswersInAnyOrder: four notes of two phones in all 24 orders of
// arrival. Both counts of one day are kept and shown in every order; the one
// that came last here is used meanwhile.
func TestTwoAnswersInAnyOrder(t *testing.T) {
	sown, _ := ledger.NewEvent("ann", cal.Of(2015, 4, 1), ledger.Sown, ledger.Started{Crop: "kale", Space: "bed", Count: 9})
	a, _ := ledger.NewEvent("ann", cal.Of(2040, 1, 1), ledger.Counted, ledger.Count{Planting: sown.ID, Count: 7})
	b, _ := ledger.NewEvent("bo", cal.Of(2040, 1, 1), ledger.Counted, ledger.Count{Planting: sown.ID, Count: 5})
	pick, _ := ledger.NewEvent("bo", cal.Of(2015, 6, 1), ledger.Picked, ledger.Amount{Planting: sown.ID, Kg: 0.5})
	all := []ledger.Event{sown, a, b, pick}
	n := 0
	permute(4, func(order []int) {
		n++
		l, err := ledger.Open(t.TempDir(), ledger.Options{Now: time.Now})
		if err != nil {
			t.Fatal(err)
		}
		defer l.Close()
		last := 0
		for _, i := range order {
			if _, err := l.Append(context.Background(), all[i]); err != nil {
				t.Fatalf("%v: %v", order, err)
			}
			if i == 1 {
				last = 7
			} else if i == 2 {
				last = 5
			}
		}
		s, err := l.State(context.Background())
		if err != nil || len(s.Plantings) != 1 || s.Plantings[0].Picks != 1 || s.Plantings[0].Count != last {
			t.Errorf("%v: %+v, %v; want the count that came last here, %d", order, s.Plantings, err, last)
		}
		if len(s.Disputes) != 1 || len(s.Disputes[0].Words) != 2 {
			t.Errorf("%v: the two answers are not both shown: %+v", order, s.Disputes)
		}
	})
	if n != 24 {
		t.Fatalf("%d orders", n)
	}
}

func permute(n int, do func([]int)) {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	var rec func(int)
	rec = func(k int) {
		if k == n {
			do(append([]int(nil), order...))
			return
		}
		for i := k; i < n; i++ {
			order[k], order[i] = order[i], order[k]
			rec(k + 1)
			order[k], order[i] = order[i], order[k]
		}
	}
	rec(0)
}
