package reckon

import (
	"fmt"

	"bedweek/internal/ledger"
)

// KeptBeside is a plan kept under a name beside the present one.
type KeptBeside struct {
	ledger.KeptNote
	Says   string
	Same   int
	Of     int
	Past   int // lines whose week has passed or that were started
	Spaces []SpaceBeside
}

// BesideKept compares a kept plan with this one, line by line.
func (r *Result) BesideKept(k ledger.KeptNote) KeptBeside {
	m := r.model
	out := KeptBeside{KeptNote: k}
	var open []ledger.PlanLine
	for _, l := range k.Lines {
		if m.done(l) || weeksFrom(m.p.Start, l.Since) < -lateWeeks {
			out.Past++
			continue
		}
		open = append(open, l)
	}
	d := diffLines(open, r.Likeness().Lines, m.p.Start)
	out.Same, out.Of = len(d.same), len(open)
	less, more := map[string][]string{}, map[string][]string{}
	for _, p := range d.moved {
		d.gone, d.fresh = append(d.gone, p[0]), append(d.fresh, p[1])
	}
	for _, l := range d.gone {
		less[l.Space] = append(less[l.Space], r.besideWords(l))
	}
	for _, l := range d.fresh {
		more[l.Space] = append(more[l.Space], r.besideWords(l))
	}
	for _, sp := range r.in.Garden.Spaces {
		if id := string(sp.ID); len(less[id])+len(more[id]) > 0 {
			out.Spaces = append(out.Spaces, SpaceBeside{Space: id, Name: spaceName(sp), Less: less[id], More: more[id]})
		}
	}
	out.Says = fmt.Sprintf("Kept from %s. Of its %d lines still open, %d are in the plan of today as they were.", k.On.Long(), out.Of, out.Same)
	if out.Past > 0 {
		out.Says += fmt.Sprintf(" %d are past or begun.", out.Past)
	}
	return out
}
