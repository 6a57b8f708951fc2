package web

import (
	"fmt"
	"slices"

	"bedweek/internal/garden"
)

// othersTake is the ground taken for one of something nobody told the size of:
// ours, a middling shrub in a bed.
const othersTake = "40 cm across"

// spaceOthers writes what stands and is no crop of the book. A line not
// touched stays as it is.
func (p *FormPage) spaceOthers(d *described, f, before spaceFields, was garden.Value, at func(string) []string, guesses *[]string) {
	typed, had := lines(f.others), lines(before.others)
	if f.isNew {
		had = nil
	}
	if slices.Equal(typed, had) {
		return
	}
	*guesses = slices.DeleteFunc(*guesses, func(g string) bool { return g == garden.OtherKey })
	var fresh []garden.Value
	for _, l := range typed {
		v, ground, bad := garden.SayOther(l, d.book, d.g.Place.LatDeg < 0)
		p.said("others", bad)
		if !ground {
			v = v.With("takes", garden.Text(othersTake))
			if !isGuessed(*guesses, garden.OtherKey) {
				*guesses = append(*guesses, garden.OtherKey)
			}
		}
		fresh = append(fresh, v)
	}
	path, old := at(garden.OtherKey), was.At(garden.OtherKey).List()
	if len(fresh) < len(old) || len(old) == 0 || len(had) != len(old) {
		p.list(fresh, path...)
		return
	}
	for i, v := range fresh {
		switch {
		case i >= len(old):
			p.set(v, append(slices.Clone(path), garden.New)...)
		case typed[i] != had[i]:
			p.set(v, append(slices.Clone(path), fmt.Sprint(i))...)
		}
	}
}

// othersField asks for them.
func othersField(f spaceFields, guess bool) Field {
	return Field{Name: "others", Label: "Something else that stands here, one to a line", Sort: "area", Rows: 3, Value: f.others, Guess: guess,
		Hint: "What is not in our book, by your own name: comfrey, 60 cm across, 80 cm high, since 2012, until October 2016. We know nothing of its needs; its ground is kept for it. Without a size we take " + othersTake + "; without an end it stays."}
}

// open unfolds the group of a field.
func (p *FormPage) open(field string) {
	for i := range p.Groups {
		p.Groups[i].Open = p.Groups[i].Open || slices.ContainsFunc(p.Groups[i].Fields, func(f Field) bool { return f.Name == field })
	}
}
