package ledger

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
)

// question is what two devices may answer differently: how many, how it
// looked (on one day), when it ended or where it was set out (once).
type question struct {
	about string
	kind  Kind
	day   cal.Day // 0 = asked once, not each day
}

type answer struct {
	id, device string
	day        cal.Day
	kind       Kind
	count      int
	text       string // the space, or how it looked
}

func (a answer) words() string {
	on := a.day.Long()
	switch {
	case a.kind == Counted:
		return fmt.Sprintf("%d counted on %s", a.count, on)
	case a.kind == Looked:
		return fmt.Sprintf("looked %s on %s", a.text, on)
	case a.kind == PutOut && a.count > 0:
		return fmt.Sprintf("%d set out in %s on %s", a.count, a.text, on)
	case a.kind == PutOut:
		return fmt.Sprintf("all set out in %s on %s", a.text, on)
	}
	return fmt.Sprintf("%s on %s", a.kind, on)
}

// questions gathers answers, to show those that disagree.
type questions struct {
	answers map[question][]answer
	parents map[string]string
	agreed  []map[string]bool // answers that all stand
}

func newQuestions() questions {
	return questions{answers: map[question][]answer{}, parents: map[string]string{}}
}

func (q questions) parent(id, parent string) {
	if parent != "" {
		q.parents[id] = parent
	}
}

func (q questions) answer(s step, about string, daily bool) {
	k := question{about: about, kind: s.Kind}
	if k.kind == Lost {
		k.kind = Pulled // one question: when did it end
	}
	if daily {
		k.day = s.Happened
	}
	a := answer{id: s.ID, device: s.Device, day: s.Happened, kind: s.Kind}
	switch b := s.body.(type) {
	case Count:
		a.count = b.Count
	case Look:
		a.text = b.Looks
	case LookAt:
		a.text = b.Looks
	case Started:
		a.count, a.text = b.Count, b.Space
	}
	q.answers[k] = append(q.answers[k], a)
}

func ofOneDevice(all []answer) bool {
	for _, a := range all {
		if a.device != all[0].device {
			return false
		}
	}
	return true
}

// disputes lists the questions with answers from two devices that differ,
// leaving out an answer that a later one was written in view of, and questions
// whose answers were agreed to stand.
func (q questions) disputes() []Dispute {
	var out []Dispute
	for k, all := range q.answers {
		if ofOneDevice(all) {
			continue
		}
		seen := map[string]bool{} // answers a later one answers
		for _, a := range all {
			for id, n := q.parents[a.id], 0; id != "" && n < 1000; id, n = q.parents[id], n+1 {
				seen[id] = true
			}
		}
		d := Dispute{Planting: k.about, Kind: k.kind}
		devices, words := map[string]bool{}, map[string]bool{}
		for _, a := range all {
			if seen[a.id] {
				continue
			}
			devices[a.device], words[a.words()] = true, true
			d.Events = append(d.Events, a.id)
			d.Words = append(d.Words, a.words())
		}
		if len(devices) > 1 && len(words) > 1 && !q.agreedOn(d.Events) {
			out = append(out, d)
		}
	}
	sort.Slice(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if a.Planting != b.Planting {
			return a.Planting < b.Planting
		}
		if a.Kind != b.Kind {
			return a.Kind < b.Kind
		}
		return a.Events[0] < b.Events[0]
	})
	return out
}
