package ledger

import (
	"cmp"
	"container/heap"
	"runtime"
	"slices"
	"sync"
)

// step is an event with its body understood; body is nil when it is not.
type step struct {
	Event
	body any
}

// causes returns the ids of the events that must come before s: the one it
// answers, the one it takes back, the one that started its planting.
func (s step) causes() []string {
	var ids []string
	add := func(all ...string) {
		for _, id := range all {
			if IsID(id) && id != s.ID {
				ids = append(ids, id)
			}
		}
	}
	add(s.Parent)
	switch b := s.body.(type) {
	case Void:
		add(b.Event)
	case Started:
		add(b.Planting)
		add(b.Lot)
	case Lot:
		add(b.From)
	case Germination:
		add(b.Lot)
	case SeedUse:
		add(b.Lot)
	case SeedCount:
		add(b.Lot)
	case Handover:
		add(b.Planting)
		add(b.OneOf...)
	case Moved:
		add(b.OneOf...)
	case Naming:
		add(b.Planting)
		add(b.From)
		add(b.Lot)
	case Amount:
		add(b.Planting)
	case Ended:
		add(b.Planting)
	case Count:
		add(b.Planting)
	case Look:
		add(b.Planting)
	case LookAt:
		add(b.Planting)
	case Photo:
		add(b.Planting)
	case Sound:
		add(b.Planting)
	case Caption:
		add(b.Picture)
	case Agreement:
		add(b.Answers...)
	case Wish:
		add(b.Plan)
	}
	return ids
}

// order is the one place that says in which order entries are replayed: each
// after its causes, and otherwise by Seq. The gardener's date plays no part.
// Of two events with one id the first by Seq is taken. A cause not here yet is
// not waited for. Events that cause each other in a ring, which Append
// refuses, are opened at the lowest Seq.
func order(events []Event) []step { return orderSteps(understood(events)) }

// understood decodes the bodies. What replay does not need is let go: a record
// of ten years is kept in memory in this form.
func understood(events []Event) []step {
	steps := make([]step, len(events))
	names := map[string]string{}
	one := func(s string) string { // one copy of a text that comes often
		if have, ok := names[s]; ok {
			return have
		}
		names[s] = s
		return s
	}
	bodies := bodiesFor(events)
	for i, e := range events {
		body := bodies[i]
		e.Kind, e.Device = Kind(one(string(e.Kind))), one(e.Device)
		steps[i] = light(step{e, body})
	}
	return steps
}

// bodiesFor decodes the bodies, nil for one that cannot be understood. A long
// record is shared out among the processors.
func bodiesFor(events []Event) []any {
	out := make([]any, len(events))
	share := max(2000, len(events)/runtime.GOMAXPROCS(0)+1)
	var hands sync.WaitGroup
	for from := 0; from < len(events); from += share {
		to := min(from+share, len(events))
		hands.Go(func() {
			for i := from; i < to; i++ {
				if body, err := Decode(events[i]); err == nil {
					out[i] = body
				}
			}
		})
	}
	hands.Wait()
	return out
}

// light drops the body's text, the digest, the chain value and the note.
func light(s step) step {
	s.Body, s.Digest, s.Chain, s.Event.body = nil, nil, nil, nil
	switch b := s.body.(type) {
	case Started:
		b.Note = ""
		s.body = b
	case Amount:
		b.Note = ""
		s.body = b
	case Ended:
		b.Note = ""
		s.body = b
	case Count:
		b.Note = ""
		s.body = b
	case Look:
		b.Note = ""
		s.body = b
	case LookAt:
		b.Note = ""
		s.body = b
	case Watering:
		b.Note = ""
		s.body = b
	case Edge:
		b.Note = ""
		s.body = b
	case Assumption:
		b.Note = ""
		s.body = b
	case KeptPlan:
		b.Note = ""
		s.body = b
	case Reading:
		b.Note = ""
		s.body = b
	case Lot:
		b.Note = ""
		s.body = b
	case Germination:
		b.Note = ""
		s.body = b
	case SeedUse:
		b.Note = ""
		s.body = b
	case SeedCount:
		b.Note = ""
		s.body = b
	case Handover:
		b.Note = ""
		s.body = b
	case Moved:
		b.Note = ""
		s.body = b
	case Naming:
		b.Note = ""
		s.body = b
	case Trait:
		b.Note = ""
		s.body = b
	}
	return s
}

func orderSteps(given []step) []step {
	sorted := given
	bySeq := func(a, b step) int { return cmp.Or(cmp.Compare(a.Seq, b.Seq), cmp.Compare(a.ID, b.ID)) }
	if !slices.IsSortedFunc(sorted, bySeq) {
		sorted = slices.Clone(given)
		slices.SortStableFunc(sorted, bySeq)
	}
	at := make(map[string]int, len(sorted))
	for i, s := range sorted {
		if _, twice := at[s.ID]; !twice {
			at[s.ID] = i
		}
	}
	if len(at) < len(sorted) { // some twice: their places move up
		steps := make([]step, 0, len(at))
		for i, s := range sorted {
			if at[s.ID] == i {
				at[s.ID] = len(steps)
				steps = append(steps, s)
			}
		}
		sorted = steps
	}
	for i, s := range sorted {
		for _, id := range s.causes() {
			if at[id] > i {
				return untangle(sorted, at)
			}
		}
	}
	return sorted
}

// untangle places each step after its causes, lowest first. at says by id
// where each is now.
func untangle(steps []step, at map[string]int) []step {
	waits := make([]int, len(steps)) // causes still to come
	frees := map[int][]int{}
	for i, s := range steps {
		for _, id := range s.causes() {
			if j, here := at[id]; here {
				waits[i]++
				frees[j] = append(frees[j], i)
			}
		}
	}
	var ready lowest
	for i, n := range waits {
		if n == 0 {
			ready = append(ready, i)
		}
	}
	heap.Init(&ready)
	out := make([]step, 0, len(steps))
	placed := make([]bool, len(steps))
	ring := 0 // no step below this one is unplaced
	for len(out) < len(steps) {
		var i int
		if len(ready) > 0 {
			i = heap.Pop(&ready).(int)
		} else {
			for placed[ring] {
				ring++
			}
			i = ring
		}
		if placed[i] {
			continue
		}
		placed[i] = true
		out = append(out, steps[i])
		for _, j := range frees[i] {
			if waits[j]--; waits[j] == 0 && !placed[j] {
				heap.Push(&ready, j)
			}
		}
	}
	return out
}

// lowest is a heap of places, the lowest first.
type lowest []int

func (h lowest) Len() int           { return len(h) }
func (h lowest) Less(i, j int) bool { return h[i] < h[j] }
func (h lowest) Swap(i, j int)      { h[i], h[j] = h[j], h[i] }
func (h *lowest) Push(x any)        { *h = append(*h, x.(int)) }
func (h *lowest) Pop() any {
	old := *h
	x := old[len(old)-1]
	*h = old[:len(old)-1]
	return x
}

// TakenBack returns the ids of the events that count no more: those voided by
// an event that itself counts. A void of a void brings the first one back.
func TakenBack(events []Event) map[string]bool {
	var voids []Event // only these decide, and only their order among themselves
	for _, e := range events {
		if e.Kind == Voided {
			voids = append(voids, e)
		}
	}
	return takenBack(order(voids))
}

func takenBack(steps []step) map[string]bool {
	place := make(map[string]int, 8)
	for i, s := range steps {
		if _, ok := s.body.(Void); ok {
			place[s.ID] = i
		}
	}
	back := map[string]bool{}
	for i := len(steps) - 1; i >= 0; i-- { // later voids first: only they can take back earlier ones
		v, ok := steps[i].body.(Void)
		if !ok || back[steps[i].ID] {
			continue
		}
		if j, isVoid := place[v.Event]; isVoid && j >= i {
			continue // a ring of voids: the earlier one cannot reach forward
		}
		back[v.Event] = true
	}
	return back
}
