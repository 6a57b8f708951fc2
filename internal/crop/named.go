package crop

import "slices"

// Named finds the crop of exactly this name: a slug, a US or UK name or
// another common one, whatever the case, hyphens and plurals. Nothing is
// guessed; see Nearest.
func (b *Book) Named(name string) (ID, bool) {
	want := plain(name)
	if want == "" {
		return "", false
	}
	for _, c := range b.Crops { // a slug or a book name before other names
		if plain(string(c.ID)) == want || plain(c.Name) == want {
			return c.ID, true
		}
	}
	for _, c := range b.called() {
		if slices.Contains(c.names, want) {
			return c.id, true
		}
	}
	return "", false
}
