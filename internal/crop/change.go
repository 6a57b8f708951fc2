package crop

import (
	"fmt"
	"math"
	"slices"
)

// Change is a gardener's own figure for a crop or for one variety of it. It
// holds nothing but plain values, so that an event of the record can carry it;
// to take it back, apply the changes without it.
type Change struct {
	Crop    ID
	Variety string  // "" = every variety in this garden
	Figure  string  // a key of FigureKeys, such as "days-from-set"
	Value   float64 // in the figure's unit
	Low     float64 // ends of the gardener's range; both zero = no range given
	High    float64
	Why     string // the gardener's words, may be ""
}

// Mine marks a figure the gardener gave: its source and its basis.
const (
	MineSource = "MINE"
	MineBasis  = "own"
)

// Mine reports whether a gardener's figure stands in place of the book's. Book
// then holds what the book says, nil when the book has no such figure.
func (f Figure) Mine() bool { return f.Source == MineSource }

// Key is one figure a crop may give.
type Key struct {
	Name     string
	Unit     string
	Min, Max float64 // outside these no plant can be
}

// FigureKeys lists the figures of a crop in the order of the book.
func FigureKeys() []Key {
	var out []Key
	for _, k := range figKeys() {
		out = append(out, Key{k.name, k.unit, k.min, k.max})
	}
	return out
}

// Figure gives a crop's figure by its key; false when there is no such key.
// A figure not known is returned as such.
func (c *Crop) Figure(key string) (Figure, bool) {
	for _, k := range figKeys() {
		if k.name == key {
			return *k.at(c), true
		}
	}
	return Figure{}, false
}

// WithChanges returns a book in which the gardener's figures stand in place of
// the book's, later changes over earlier ones. Each fault names its change by
// number, from 1; a change with a fault is left out and the others still hold.
// b and its crops are not changed.
func (b *Book) WithChanges(changes []Change) (*Book, []Fault) {
	out := &Book{Crops: slices.Clone(b.Crops), Tables: slices.Clone(b.Tables), varieties: slices.Clone(b.varieties)}
	var faults []Fault
	for _, forVariety := range []bool{false, true} { // a variety stands on the garden's figures
		for i, ch := range changes {
			if (ch.Variety != "") != forVariety {
				continue
			}
			if f := out.apply(ch); f != nil {
				f.File, f.Line, f.Text = "change", i+1, ch.text()
				faults = append(faults, *f)
			}
		}
	}
	slices.SortStableFunc(faults, func(x, y Fault) int { return x.Line - y.Line })
	return out, faults
}

// variety is a crop as one variety of it grows in this garden.
type variety struct {
	crop ID
	name string
	c    *Crop
}

// Variety gives a crop with the figures of one of its varieties, or the crop
// itself where nothing was changed for that variety.
func (b *Book) Variety(id ID, name string) (*Crop, bool) {
	for _, v := range b.varieties {
		if v.crop == id && v.name == name {
			return v.c, true
		}
	}
	return b.Crop(id)
}

// apply makes one change in b, or says what is wrong with it.
func (b *Book) apply(ch Change) *Fault {
	at := slices.IndexFunc(b.Crops, func(c *Crop) bool { return c.ID == ch.Crop })
	if at < 0 {
		f := &Fault{What: fmt.Sprintf("no crop is called %q", ch.Crop)}
		if near, ok := b.Nearest(string(ch.Crop)); ok {
			f.Try = fmt.Sprintf("Did you mean %q?", near)
		}
		return f
	}
	key, fault := changeKey(ch.Figure)
	if fault != nil {
		return fault
	}
	fig, fault := ch.figure(key)
	if fault != nil {
		return fault
	}
	was, slot := b.Crops[at], -1
	if ch.Variety != "" {
		slot = slices.IndexFunc(b.varieties, func(v variety) bool { return v.crop == ch.Crop && v.name == ch.Variety })
		if slot >= 0 {
			was = b.varieties[slot].c
		}
	}
	own := *was
	old := *key.at(&own)
	fig.Book = bookOf(old)
	*key.at(&own) = fig
	for _, g := range gaps(&own) {
		if !slices.Contains(gaps(was), g) {
			return &Fault{What: g, Try: "Change the other figure first, or check the number."}
		}
	}
	switch {
	case ch.Variety == "":
		b.Crops[at] = &own
	case slot >= 0:
		b.varieties[slot].c = &own
	default:
		b.varieties = append(b.varieties, variety{ch.Crop, ch.Variety, &own})
	}
	return nil
}

// bookOf is what the book says beneath a figure, however often it was changed.
func bookOf(f Figure) *Figure {
	switch {
	case f.Mine():
		return f.Book
	case !f.Known():
		return nil
	}
	return &f
}

func changeKey(name string) (figKey, *Fault) {
	keys := figKeys()
	for _, k := range keys {
		if k.name == name {
			return k, nil
		}
	}
	var names []string
	for _, k := range keys {
		names = append(names, k.name)
	}
	f := &Fault{What: fmt.Sprintf("no figure is called %q", name)}
	if near, ok := nearest(name, names); ok {
		f.Try = fmt.Sprintf("Did you mean %q?", near)
	}
	return figKey{}, f
}

// figure turns a change into a figure, or says what is wrong with its numbers.
func (ch Change) figure(k figKey) (Figure, *Fault) {
	f := Figure{Value: ch.Value, Low: ch.Low, High: ch.High, Source: MineSource, Basis: MineBasis, Note: ch.Why}
	for _, v := range []float64{ch.Value, ch.Low, ch.High} {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return f, &Fault{What: k.name + ": not a number"}
		}
	}
	if f.Low == 0 && f.High == 0 {
		f.Low, f.High = f.Value, f.Value
	}
	if f.Low > f.Value || f.Value > f.High {
		return f, &Fault{What: fmt.Sprintf("%s: range upside down: low %s, value %s, high %s", k.name, show(f.Low), show(f.Value), show(f.High)),
			Try: "The value lies between low and high."}
	}
	if f.Low < k.min || f.High > k.max {
		return f, &Fault{What: fmt.Sprintf("%s: impossible: outside %s to %s %s", k.name, show(k.min), show(k.max), k.unit), Try: "Check the unit."}
	}
	return f, nil
}

// text is the change in one line, for a fault.
func (ch Change) text() string {
	who := string(ch.Crop)
	if ch.Variety != "" {
		who += " (" + ch.Variety + ")"
	}
	s := fmt.Sprintf("%s, %s: %s", who, ch.Figure, show(ch.Value))
	if ch.Low != 0 || ch.High != 0 {
		s += fmt.Sprintf(" (%s to %s)", show(ch.Low), show(ch.High))
	}
	return excerpt(s)
}
