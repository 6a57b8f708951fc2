package reckon

import (
	"fmt"

	"bedweek/internal/ledger"
)

// heard says what became of each wish in the plan that was found.
func (r *Result) heard() []Heard {
	m := r.model
	in := map[string]bool{}
	for _, pl := range r.Plan.Plantings {
		in[m.p.Options[pl.Option].ID] = true
	}
	out := append([]Heard(nil), m.heard...)
	for k := range out {
		h := &out[k]
		switch h.Wish.What {
		case ledger.WishMust:
			if n := r.standsOf(h.Wish.Crop, h.Wish.Space); n < h.Wish.Plants {
				h.State, h.Why = "not met", fmt.Sprintf("The plan finds room for %d.", n)
				if n == 0 {
					h.Why = "No way was found to grow it beside the other wishes."
				}
			}
		case ledger.WishWater:
			if over := r.mostOver(); over >= leastOver {
				h.Why = fmt.Sprintf("The plan still asks for up to %s a day more in a dry week.", aLitre(over))
			}
		default:
			missing := 0
			for _, id := range h.IDs {
				if !in[id] {
					missing++
				}
			}
			if missing > 0 {
				h.State, h.Why = "not met", "There is no room for it beside what stands and the other wishes."
				if len(h.IDs) > 1 {
					h.Why = fmt.Sprintf("%d of its lines find no room beside what stands and the other wishes.", missing)
				}
			}
		}
	}
	for k, q := range r.in.Garden.Musts {
		if k >= len(r.in.Garden.Musts)-r.wishedMusts() {
			break // said above
		}
		w := ledger.Wish{What: ledger.WishMust, Crop: string(q.Crop), Space: string(q.Space), Plants: q.Plants}
		h := Heard{Wish: w, Words: WishWords(w, r.in), State: "met"}
		if n := r.standsOf(w.Crop, w.Space); n < w.Plants {
			h.State, h.Why = "not met", fmt.Sprintf("The plan finds room for %d.", n)
		}
		out = append(out, h)
	}
	return out
}

func (r *Result) wishedMusts() int {
	n := 0
	for _, w := range r.in.wishes() {
		if w.What == ledger.WishMust {
			n++
		}
	}
	return n
}

// standsOf counts a crop's plants as a must counts them: planned, or standing
// and kept to their end.
func (r *Result) standsOf(crop, space string) int {
	n := 0
	for _, pl := range r.Plan.Plantings {
		if o := r.Problem.Options[pl.Option]; o.Crop == crop && (space == "" || r.Problem.Spaces[o.Space].ID == space) {
			n += pl.Plants
		}
	}
	for i, st := range r.Problem.Stays {
		if st.Crop == crop && (space == "" || r.Problem.Spaces[st.Space].ID == space) && r.Plan.Pull[i] >= min(st.End, r.Problem.Weeks-1) {
			n += st.Plants
		}
	}
	return n
}

// Conflict says which wishes cannot all be met, and the cheapest to give up by
// the prices found.
func Conflict(heard []Heard, prices []WishPrice) string {
	var unmet, able []string
	best, at := 0.0, ""
	for _, h := range heard {
		if h.State == "not met" {
			unmet = append(unmet, "\""+h.Words+"\"")
		}
	}
	if len(unmet) == 0 {
		return ""
	}
	for _, p := range prices {
		if !p.Frees {
			continue
		}
		able = append(able, p.Words)
		if at == "" || p.Meals > best {
			best, at = p.Meals, p.Words
		}
	}
	s := fmt.Sprintf("Not all wishes can be met: %s.", list(unmet))
	switch {
	case at == "":
		return s + " Giving up any one other wish is not enough, as far as the search can tell."
	case len(able) == 1:
		return s + fmt.Sprintf(" Giving up this one makes the rest possible: \"%s\"", at)
	}
	return s + fmt.Sprintf(" Any one of %d wishes could be given up for the rest; cheapest: \"%s\"", len(able), at)
}
