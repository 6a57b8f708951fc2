package reckon

// Which spaces suit fruit, root and leaf crops, by the hours of sun that
// different sources ask for. The sources do not agree, and all are shown.

// Threshold is what one source asks for a kind of crop, hours of direct sun.
type Threshold struct {
	Crops  string  // "fruit", "roots", "leaves"
	LeastH float64 // below this it is not advised
	GoodH  float64 // from here on it is called good; 0 = the source gives one figure
	Source string
}

// Thresholds lists them, strictest first for each kind. Keys as in
// docs/sources.md where they are listed there.
func Thresholds() []Threshold {
	return []Threshold{
		{"fruit", 6, 8, "University of Maryland Extension, container gardening (umd-hgic-cont)"},
		{"fruit", 6, 0, "University of Florida IFAS, SP103: any vegetable (ufl-sp103)"},
		{"fruit", 5, 8, "University of Arizona, Master Gardener Manual 10 (arizona-mg10)"},
		{"roots", 6, 0, "University of Florida IFAS, SP103: any vegetable (ufl-sp103)"},
		{"roots", 4, 6, "common practice, beet and radish (shade-consensus)"},
		{"leaves", 6, 0, "University of Florida IFAS, SP103: any vegetable (ufl-sp103)"},
		{"leaves", 3, 5, "University of Maryland Extension, container gardening (umd-hgic-cont)"},
	}
}

// Suit is how one space stands to each threshold.
type Suit struct {
	Space, Name string
	Hours       float64   // mean of the half-year
	Least, Most float64   // its darkest and its sunniest hand-breadth
	Says        []string  // by threshold: "yes", "in part", "little", "no"
	Share       []float64 // of its ground, by threshold, with the least hours or more
}

// HalfYear names the months counted and returns how each space suits. The half
// is the one that holds the date: April to September, or October to March.
func (d *LightDesk) HalfYear() (name string, rows []Suit) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.half != nil {
		return d.half.name, d.half.rows
	}
	name = "April to September"
	months := []int{4, 5, 6, 7, 8, 9}
	if m := int(d.date.Month()); m < 4 || m > 9 {
		name, months = "October to March", []int{10, 11, 12, 1, 2, 3}
	}
	var weeks []int
	for _, m := range months {
		weeks = append(weeks, d.light.Weeks(m)...)
	}
	for s := range d.light.Field.Surfaces() {
		o := d.light.Over(s, weeks)
		if o.Cells == 0 {
			continue
		}
		sp := d.light.Space(s)
		r := Suit{Space: string(sp.ID), Name: spaceName(sp), Hours: o.Hours.Mean, Least: o.Hours.Min, Most: o.Hours.Max}
		cells := d.cells(s, weeks)
		for _, t := range Thresholds() {
			n := 0
			for _, c := range cells {
				if c >= t.LeastH {
					n++
				}
			}
			share := float64(n) / float64(len(cells))
			r.Share = append(r.Share, share)
			r.Says = append(r.Says, suitWord(share))
		}
		rows = append(rows, r)
	}
	d.half = &halfYear{name, rows}
	return name, rows
}

// halfYear is HalfYear's answer, worked out once.
type halfYear struct {
	name string
	rows []Suit
}

// suitWord tells the share of a space that has enough.
func suitWord(share float64) string {
	switch {
	case share >= 0.95:
		return "yes"
	case share >= 0.5:
		return "most of it"
	case share >= 0.05:
		return "part of it"
	}
	return "no"
}
