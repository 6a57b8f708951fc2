package ledger

// Agreed says that differing answers to one question all stand: somebody has
// seen them side by side. A later answer opens the question again.
const Agreed Kind = "agreed"

// Agreement is the body of Agreed, layout 1.
type Agreement struct {
	Answers []string `json:"answers"` // their ids, two or more
	Note    string   `json:"note,omitempty"`
}

// mostAnswers is how many answers one agreement may hold.
const mostAnswers = 50

// agreement lists what is wrong with the body.
func (f *Faults) agreement(b Agreement) {
	f.text("note", b.Note, noteLimit)
	if n := len(b.Answers); n < 2 || n > mostAnswers {
		f.add("%q has %d ids; want 2 to %d", "answers", n, mostAnswers)
	}
	for _, id := range b.Answers {
		if !IsID(id) {
			f.add("%q holds %q; each must be the id of an entry", "answers", clip(id))
		}
	}
}

// agreedOn reports whether one agreement holds all these answers.
func (q *questions) agreedOn(answers []string) bool {
	for _, set := range q.agreed {
		all := true
		for _, id := range answers {
			all = all && set[id]
		}
		if all {
			return true
		}
	}
	return false
}

// agree takes down an agreement.
func (q *questions) agree(b Agreement) {
	set := map[string]bool{}
	for _, id := range b.Answers {
		set[id] = true
	}
	q.agreed = append(q.agreed, set)
}
