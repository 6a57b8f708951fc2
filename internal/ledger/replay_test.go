package ledger

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"bedweek/internal/cal"
)

// numbered gives events places in the order given, as a record would.
func numbered(events ...Event) []Event {
	for i := range events {
		events[i].Seq = int64(i + 1)
	}
	return events
}

func by(device string, e Event) Event { e.Device = device; return e }

func after(parent Event, e Event) Event { e.Parent = parent.ID; return e }

func one(t *testing.T, s State) Planting {
	t.Helper()
	if len(s.Plantings) != 1 {
		t.Fatalf("%d plantings, want 1: %+v", len(s.Plantings), s.Plantings)
	}
	return s.Plantings[0]
}

func TestCountByEyeIsBelieved(t *testing.T) {
	s := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	for _, tt := range []struct {
		name        string
		events      []Event
		count       int
		stands      bool
		differences []string
	}{
		{"as the entries say", []Event{s, event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 30})}, 30, true, nil},
		{"fewer", []Event{s, event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 22})}, 22, true,
			[]string{"pea in arch: 22 by eye on 1 May 2015, 30 by the entries. The count by eye is used."}},
		{"none left", []Event{s, event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 0})}, 0, false, []string{"0 by eye"}},
		{"stands again", []Event{s, event(t, Pulled, "2015-05-01", Ended{Planting: s.ID}), event(t, Counted, "2015-05-02", Count{Planting: s.ID, Count: 4})}, 4, true, []string{"4 by eye"}},
		{"an earlier day written later is still the last word", []Event{s,
			event(t, Counted, "2015-05-20", Count{Planting: s.ID, Count: 20}),
			event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 25})}, 25, true, []string{"20 by eye", "25 by eye"}},
		{"more pulled than stood", []Event{s, event(t, Pulled, "2015-05-01", Ended{Planting: s.ID, Count: 31})}, 0, false, []string{"31 pulled"}},
	} {
		st := Replay(numbered(tt.events...))
		p := one(t, st)
		if p.Count != tt.count || (p.Ended == 0) != tt.stands || len(st.Differences) != len(tt.differences) {
			t.Errorf("%s: %+v, %q; want %d, stands %v, %q (style.md, the ledger)", tt.name, p, st.Differences, tt.count, tt.stands, tt.differences)
			continue
		}
		for i, d := range tt.differences {
			if !strings.Contains(st.Differences[i], d) {
				t.Errorf("%s: difference %q, want %q", tt.name, st.Differences[i], d)
			}
		}
	}
}

func TestSettingOut(t *testing.T) {
	s := event(t, Sown, "2015-04-12", Started{Crop: "kale", Variety: "black", Space: "shelf", Count: 12})
	all := event(t, PutOut, "2015-05-10", Started{Planting: s.ID, Space: "long-bed", Count: 12})
	if p := one(t, Replay(numbered(s, all))); p.ID != s.ID || p.Space != "long-bed" || p.SetOut != all.Happened || p.Sown != s.Happened || p.Variety != "black" {
		t.Errorf("all set out: %+v", p)
	}
	part := event(t, PutOut, "2015-05-10", Started{Planting: s.ID, Space: "long-bed", Count: 8})
	st := Replay(numbered(s, part))
	if len(st.Plantings) != 2 {
		t.Fatalf("a part set out: %+v", st.Plantings)
	}
	for _, p := range st.Plantings {
		switch {
		case p.ID == s.ID && p.Count == 4 && p.Space == "shelf" && p.SetOut == 0:
		case p.ID == part.ID && p.Count == 8 && p.Space == "long-bed" && p.From == s.ID && p.Sown == s.Happened:
		default:
			t.Errorf("a part set out: %+v", p)
		}
	}
	// What stands in the garden file is known to ReplayOver only.
	file := event(t, PutOut, "2015-05-10", Started{Planting: "shelf-1", Space: "long-bed", Count: 8})
	over := ReplayOver([]Planting{{ID: "shelf-1", Crop: "kale", Space: "shelf", Count: 12}}, numbered(file))
	if len(over.Plantings) != 2 || over.Plantings[1].ID != "shelf-1" || over.Plantings[1].Count != 4 {
		t.Errorf("over the file: %+v", over.Plantings)
	}
	if p := one(t, Replay(numbered(file))); p.ID != "shelf-1" || !p.FromFile || p.Count != 8 {
		t.Errorf("without the file: %+v", p)
	}
}

func TestVoids(t *testing.T) {
	s := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	v1 := event(t, Voided, "2015-04-13", Void{Event: s.ID})
	v2 := event(t, Voided, "2015-04-13", Void{Event: v1.ID})
	v3 := event(t, Voided, "2015-04-13", Void{Event: v2.ID})
	for n, want := range map[int]int{1: 1, 2: 0, 3: 1, 4: 0} {
		if st := Replay(numbered([]Event{s, v1, v2, v3}[:n]...)); len(st.Plantings) != want {
			t.Errorf("%d entries: %d plantings, want %d", n, len(st.Plantings), want)
		}
	}
	// Voids that came before what they void.
	if st := Replay(numbered(v2, v1, s)); len(st.Plantings) != 1 {
		t.Errorf("upside down: %d plantings, want 1", len(st.Plantings))
	}
	// Two voids of one event: taking one back is not enough.
	w := event(t, Voided, "2015-04-13", Void{Event: s.ID})
	if st := Replay(numbered(s, v1, w, v2)); len(st.Plantings) != 0 {
		t.Errorf("voided twice, one void taken back: %d plantings, want 0", len(st.Plantings))
	}
	// A ring, which Append refuses, still has an answer.
	a, b := event(t, Voided, "2015-04-13", Void{}), event(t, Voided, "2015-04-13", Void{})
	a.Body, _ = marshal(Void{Event: b.ID})
	b.Body, _ = marshal(Void{Event: a.ID})
	if back := TakenBack(numbered(a, b)); !reflect.DeepEqual(back, map[string]bool{a.ID: true}) {
		t.Errorf("ring: %v, want only the first by Seq", back)
	}
}

func TestGardenTakenBackGivesTheOneBefore(t *testing.T) {
	g1, g2 := event(t, GardenSet, "2015-03-01", Garden{Text: "one"}), event(t, GardenSet, "2015-03-02", Garden{Text: "two"})
	if st := Replay(numbered(g1, g2)); st.GardenText != "two" {
		t.Errorf("garden %q, want two", st.GardenText)
	}
	if st := Replay(numbered(g1, g2, event(t, Voided, "2015-03-03", Void{Event: g2.ID}))); st.GardenText != "one" {
		t.Errorf("garden %q, want one", st.GardenText)
	}
}

func TestTwoAnswersAreBothKept(t *testing.T) {
	s := event(t, Sown, "2015-04-12", Started{Crop: "pea", Space: "arch", Count: 30})
	a := by("phone", event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 22}))
	b := by("tablet", event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 25}))
	same := by("tablet", event(t, Counted, "2015-05-01", Count{Planting: s.ID, Count: 22}))
	later := by("tablet", event(t, Counted, "2015-05-08", Count{Planting: s.ID, Count: 20}))
	both := event(t, Agreed, "2015-05-02", Agreement{Answers: []string{a.ID, b.ID}})
	for _, tt := range []struct {
		name   string
		events []Event
		want   int
	}{
		{"two devices, two answers", []Event{s, a, b}, 1},
		{"two devices, one answer", []Event{s, a, same}, 0},
		{"one device changes its mind", []Event{s, a, by("phone", b)}, 0},
		{"another day is another question", []Event{s, a, later}, 0},
		{"the second knew of the first", []Event{s, a, after(a, b)}, 0},
		{"one taken back", []Event{s, a, b, event(t, Voided, "2015-05-02", Void{Event: a.ID})}, 0},
		{"both were agreed to stand", []Event{s, a, b, both}, 0},
		{"the agreement came home first", []Event{s, both, a, b}, 0},
		{"an agreement about others", []Event{s, a, b, event(t, Agreed, "2015-05-02", Agreement{Answers: []string{a.ID, later.ID}})}, 1},
		{"the agreement taken back", []Event{s, a, b, both, event(t, Voided, "2015-05-02", Void{Event: both.ID})}, 1},
		{"two ends", []Event{s, by("phone", event(t, Pulled, "2015-07-01", Ended{Planting: s.ID})),
			by("tablet", event(t, Lost, "2015-07-03", Ended{Planting: s.ID, Cause: "dried"}))}, 1},
	} {
		st := Replay(numbered(tt.events...))
		if len(st.Disputes) != tt.want {
			t.Errorf("%s: %+v, want %d disputes (trust.md O8)", tt.name, st.Disputes, tt.want)
		}
		for _, d := range st.Disputes {
			if d.Planting != s.ID || len(d.Events) != 2 || len(d.Words) != 2 {
				t.Errorf("%s: %+v", tt.name, d)
			}
		}
	}
}

func TestUnknownKindIsSaid(t *testing.T) {
	e := event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"})
	e.Kind, e.Version = "pruned", 7
	st := Replay(numbered(e))
	if st.Events != 1 || len(st.Differences) != 1 || !strings.Contains(st.Differences[0], "pruned") {
		t.Errorf("%+v", st)
	}
	if _, err := Decode(e); err == nil {
		t.Error("Decode of an unknown kind: no error")
	}
}

// TestOneByOneIsReplay appends random histories one by one, in random order of
// arrival, and compares the running state with a replay after each.
func TestOneByOneIsReplay(t *testing.T) {
	for seed := range uint64(60) {
		chance := rand.New(rand.NewPCG(seed, 7))
		events := history(t, chance, 40)
		chance.Shuffle(len(events), func(i, j int) { events[i], events[j] = events[j], events[i] })
		numbered(events...)
		r := newReplayer(nil)
		full := 0
		for i, e := range events {
			body, err := Decode(e)
			if err != nil {
				t.Fatal(err)
			}
			if s := (step{e, body}); r.follows(s) {
				r.arrive(s)
				r.apply(s)
			} else {
				r = replayed(nil, events[:i+1])
				full++
			}
			if got, want := r.state(), Replay(events[:i+1]); !reflect.DeepEqual(got, want) {
				t.Fatalf("seed %d, after %d entries:\n%+v\nwant\n%+v", seed, i+1, got, want)
			}
		}
		if full == len(events) {
			t.Fatalf("seed %d: every entry made a full replay: the test saw nothing", seed)
		}
		// Causes always come first.
		place := map[string]int{}
		for i, s := range order(events) {
			place[s.ID] = i
		}
		for _, s := range order(events) {
			for _, c := range s.causes() {
				if place[c] > place[s.ID] {
					t.Fatalf("seed %d: %s before its cause", seed, s.Kind)
				}
			}
		}
		twice := append(append([]Event(nil), events...), events...)
		if got, want := Replay(twice), Replay(events); !reflect.DeepEqual(got, want) {
			t.Fatalf("seed %d: the history twice over is not the history", seed)
		}
	}
}

func history(t *testing.T, chance *rand.Rand, n int) []Event {
	var all []Event
	started := []string{"old-bed-1"}
	day := func() string { return cal.Of(2015, 5, 1+chance.IntN(60)).String() }
	for range n {
		p := started[chance.IntN(len(started))]
		var e Event
		switch chance.IntN(9) {
		case 0, 1:
			e = event(t, Sown, day(), Started{Crop: "pea", Space: "arch", Count: 10 * chance.IntN(4)})
			started = append(started, e.ID)
		case 2:
			e = event(t, PutOut, day(), Started{Planting: p, Space: "long-bed", Count: chance.IntN(12)})
			started = append(started, e.ID)
		case 3:
			e = event(t, Pulled, day(), Ended{Planting: p, Count: chance.IntN(4)})
		case 4:
			e = event(t, Counted, day(), Count{Planting: p, Count: chance.IntN(30)})
		case 5:
			e = event(t, Picked, day(), Amount{Planting: p, Kg: float64(chance.IntN(9)) / 10})
		case 6:
			e = event(t, Looked, day(), Look{Planting: p, Looks: []string{"well", "poor"}[chance.IntN(2)]})
		default:
			if len(all) == 0 {
				continue
			}
			e = event(t, Voided, day(), Void{Event: all[chance.IntN(len(all))].ID})
		}
		if len(all) > 0 && chance.IntN(3) == 0 {
			e.Parent = all[chance.IntN(len(all))].ID
		}
		e.Device = fmt.Sprint("phone ", chance.IntN(2))
		all = append(all, e)
	}
	return all
}
