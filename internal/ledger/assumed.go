package ledger

import "bedweek/internal/cal"

// Assumed is an answer of a round after time away: nobody wrote down what was
// done in a space, and this is what is taken for granted. It changes no count;
// it makes what stands there less sure until somebody looks.
const Assumed Kind = "assumed"

// Assumption is the body of Assumed, layout 1.
type Assumption struct {
	Space string `json:"space"`
	What  string `json:"what"` // "as planned", "not done", "gone"
	Note  string `json:"note,omitempty"`
}

// AssumedNote is an assumption with its day and the entry that holds it.
type AssumedNote struct {
	Event string
	On    cal.Day
	Assumption
}

// assumption lists what is wrong with the body.
func (f *Faults) assumption(b Assumption) {
	f.name("space", b.Space, true)
	f.text("note", b.Note, noteLimit)
	switch b.What {
	case "as planned", "not done", "gone":
	default:
		f.add("%q is %q; it may be as planned, not done or gone", "what", clip(b.What))
	}
}

// StillAssumed reports whether a planting is only believed to be as planned:
// its space was assumed to be on some day, and nothing was seen of it since.
func (s *State) StillAssumed(p Planting) bool {
	on := cal.Day(0)
	for _, a := range s.Assumed {
		if a.Space == p.Space && a.What == "as planned" && a.On > on {
			on = a.On
		}
	}
	seen := max(p.LookedOn, p.LastPick, p.SetOut, p.Sown)
	return on != 0 && seen <= on
}
