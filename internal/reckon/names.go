package reckon

import "bedweek/internal/crop"

// Names lets the garden reader ask the crop book about names.
func Names(b *crop.Book) BookNames { return BookNames{b} }

// BookNames answers what a garden file may say of crops and foods.
type BookNames struct{ book *crop.Book }

// Known reports whether the book has a crop under this slug.
func (n BookNames) Known(id string) bool { _, ok := n.book.Crop(crop.ID(id)); return ok }

// Nearest returns the slug most like a name.
func (n BookNames) Nearest(name string) (string, bool) {
	id, ok := n.book.Nearest(name)
	return string(id), ok
}

// Food reports whether the book has a crop serving this food.
func (n BookNames) Food(name string) bool {
	for _, f := range n.book.Foods() {
		if f.Name == name {
			return true
		}
	}
	return false
}

// SpacingM is the distance between plants of a crop, in metres.
func (n BookNames) SpacingM(id string) (float64, bool) {
	c, ok := n.book.Crop(crop.ID(id))
	if !ok || !c.SpacingM.Known() {
		return 0, false
	}
	return c.SpacingM.Value, true
}
