package ledger

import (
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
	id, device, words string
}

// questions gathers answers, to show those that disagree.
type questions struct {
	answers map[question][]answer
	parents map[string]string
}

func newQuestions() questions {
	return questions{answers: map[question][]answer{}, parents: map[string]string{}}
}

func (q questions) parent(id, parent string) {
	if parent != "" {
		q.parents[id] = parent
	}
}

func (q questions) answer(s step, about string, daily bool, words string) {
	k := question{about: about, kind: s.Kind}
	if k.kind == Lost {
		k.kind = Pulled // one question: when did it end
	}
	if daily {
		k.day = s.Happened
	}
	q.answers[k] = append(q.answers[k], answer{s.ID, s.Device, words})
}

// disputes lists the questions with answers from two devices that differ,
// leaving out an answer that a later one was written in view of.
func (q questions) disputes() []Dispute {
	var out []Dispute
	for k, all := range q.answers {
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
			devices[a.device], words[a.words] = true, true
			d.Events = append(d.Events, a.id)
			d.Words = append(d.Words, a.words)
		}
		if len(devices) > 1 && len(words) > 1 {
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
