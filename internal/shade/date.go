package shade

import "bedweek/internal/cal"

// PassesOn returns the share of light that crosses the part on a day: 1 before
// it stands and after it is gone; leaves by day of the year where the part has
// them, else by month.
func (p Part) PassesOn(day cal.Day) float64 {
	if p.Begin != 0 && day < p.Begin || p.End != 0 && day > p.End {
		return 1
	}
	if p.LeafOut == 0 || p.LeafFall == 0 {
		return p.Passes(int(day.Month()))
	}
	if inLeaf(p.LeafOut, p.LeafFall, day.YearDay()) {
		return p.InLeaf
	}
	return p.Bare
}

// On returns the scene as it stands on a day: every part lets the same share
// through in all months.
func (s *Scene) On(day cal.Day) *Scene {
	out := &Scene{}
	for _, b := range s.Bodies {
		nb := Body{Name: b.Name}
		for _, p := range b.Parts {
			t := p.PassesOn(day)
			if t < 1 {
				nb.Parts = append(nb.Parts, Part{Name: p.Name, Solid: p.Solid, InLeaf: t, Bare: t})
			}
		}
		out.Bodies = append(out.Bodies, nb)
	}
	return out
}

// Between returns the body standing only from begin to end, both included; a
// zero day leaves that end open. A crop that grows week by week is one such
// body for each week.
func (b Body) Between(begin, end cal.Day) Body {
	out := Body{Name: b.Name, Parts: append([]Part(nil), b.Parts...)}
	for i := range out.Parts {
		out.Parts[i].Begin, out.Parts[i].End = begin, end
	}
	return out
}
