package garden

import "bedweek/internal/crop"

// FromBook lets the crop book answer the reader's questions.
func FromBook(b *crop.Book) Crops { return fromBook{b} }

type fromBook struct{ book *crop.Book }

func (f fromBook) Known(id string) bool {
	_, ok := f.book.Crop(crop.ID(id))
	return ok
}

func (f fromBook) Nearest(name string) (string, bool) {
	id, ok := f.book.Nearest(name)
	return string(id), ok
}

func (f fromBook) Food(name string) bool { return has(f.FoodNames(), name) }

// FoodNames lists the book's foods, for "did you mean".
func (f fromBook) FoodNames() []string {
	var names []string
	for _, food := range f.book.Foods() {
		names = append(names, food.Name)
	}
	return names
}

// SpacingM returns the distance between plants, equal on all sides.
func (f fromBook) SpacingM(id string) (float64, bool) {
	c, ok := f.book.Crop(crop.ID(id))
	if !ok || !c.SpacingM.Known() {
		return 0, false
	}
	return c.SpacingM.Value, true
}

// Named finds a crop by exactly its name.
func (f fromBook) Named(name string) (string, bool) {
	id, ok := f.book.Named(name)
	return string(id), ok
}
