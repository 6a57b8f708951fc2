package crop

// Food is one thing people eat that crops of the book can stand in for.
type Food struct {
	Name  string
	Crops []ID // that serve it: those naming it first come first, then by ID
}

// foodNames are the foods a crop may name, in the order a page lists them.
func foodNames() []string {
	return []string{
		"salad", "cooking greens", "roots", "beans and peas", "tomatoes",
		"peppers", "cucumbers", "summer squash", "winter squash", "alliums",
		"brassica heads", "potatoes", "sweet corn", "herbs", "berries",
		"eggplant", "melons", "okra and gourds", "stalks and buds",
		"starchy roots", "spices", "grain and nuts", "fruit",
	}
}

// Foods lists the foods of the book in a fixed order, each with its crops.
// Flowers serve none.
func (b *Book) Foods() []Food {
	var out []Food
	for _, name := range foodNames() {
		f := Food{Name: name}
		var later []ID
		for _, c := range b.Crops {
			for i, n := range c.Foods {
				switch {
				case n != name:
				case i == 0:
					f.Crops = append(f.Crops, c.ID)
				default:
					later = append(later, c.ID)
				}
			}
		}
		f.Crops = append(f.Crops, later...)
		out = append(out, f)
	}
	return out
}
