package crop

import (
	"strings"
	"unicode/utf8"
)

// Nearest finds the crop a name most likely means, for "did you mean". US and
// UK names, other common names and slugs are known; case, hyphens, plurals and
// small slips are forgiven. The answer is false when nothing is close.
func (b *Book) Nearest(name string) (ID, bool) {
	want := plain(name)
	if want == "" {
		return "", false
	}
	most := slips(want)
	best, id := most+1, ID("")
	for _, c := range b.called() { // by ID, so the first of equals is always the same
		for _, n := range c.names {
			if d := within(want, n, best); d < best {
				best, id = d, c.id
			}
		}
	}
	if best <= most {
		return id, true
	}
	// A word of a name on its own: "bean", "squash", or one with one slip.
	near := 1
	if len(want) < 5 {
		near = 0
	}
	best = near + 1
	for _, c := range b.called() {
		for _, n := range c.names {
			for _, w := range strings.Fields(n) {
				if d := within(want, w, best); d < best {
					best, id = d, c.id
				}
			}
		}
	}
	if best <= near {
		return id, true
	}
	return "", false
}

// called is a crop with everything it is called, in plain form.
type called struct {
	id    ID
	names []string
}

// called lists the crops by ID with their names. They are made plain once: a
// list of thousands of lines is looked up word by word.
func (b *Book) called() []called {
	b.plainly.Do(func() {
		for _, c := range b.Crops {
			b.names = append(b.names, called{c.ID, names(c)})
		}
	})
	return b.names
}

// names are the plain forms of everything a crop is called. A name with a
// bracket is known with and without it.
func names(c *Crop) []string {
	out := []string{plain(string(c.ID))}
	for _, n := range append([]string{c.Name, c.NameUK}, c.Also...) {
		for _, part := range strings.Split(n, ",") {
			if head, rest, ok := strings.Cut(part, "("); ok {
				out = append(out, plain(head), plain(strings.TrimSuffix(strings.TrimSpace(rest), ")")))
				continue
			}
			out = append(out, plain(part))
		}
	}
	return out
}

// plain puts a name in small letters, single spaces and the singular.
func plain(s string) string {
	s = strings.ToLower(strings.ReplaceAll(s, "-", " "))
	w := strings.Fields(s)
	for i := range w {
		switch {
		case strings.HasSuffix(w[i], "oes"):
			w[i] = strings.TrimSuffix(w[i], "es")
		case strings.HasSuffix(w[i], "ies"):
			w[i] = strings.TrimSuffix(w[i], "ies") + "y"
		case len(w[i]) > 3 && strings.HasSuffix(w[i], "s") && !strings.HasSuffix(w[i], "ss"):
			w[i] = strings.TrimSuffix(w[i], "s")
		}
	}
	return strings.Join(w, " ")
}

// slips is how many slips of the pen a name of this length is forgiven.
func slips(s string) int { return min(3, len([]rune(s))/4) }

// nearest is the closest of some words, within the slips forgiven.
func nearest(word string, of []string) (string, bool) {
	most := max(1, slips(word))
	best, found := most+1, ""
	for _, o := range of {
		if d := within(word, o, best); d < best {
			best, found = d, o
		}
	}
	return found, best <= most
}

// within is the distance of a and b when it is below most, else most or more.
// Lengths that far apart are not compared letter by letter.
func within(a, b string, most int) int {
	if apart := utf8.RuneCountInString(a) - utf8.RuneCountInString(b); max(apart, -apart) >= most {
		return most
	}
	return distance(a, b)
}

// distance counts the letters to insert, delete, change or swap with a
// neighbour to turn a into b.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	two, one := make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range one {
		one[j] = j
	}
	for i := 1; i <= len(x); i++ {
		cur := make([]int, len(y)+1)
		cur[0] = i
		for j := 1; j <= len(y); j++ {
			cost := 1
			if x[i-1] == y[j-1] {
				cost = 0
			}
			cur[j] = min(one[j]+1, cur[j-1]+1, one[j-1]+cost)
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				cur[j] = min(cur[j], two[j-2]+1)
			}
		}
		two, one = one, cur
	}
	return one[len(y)]
}
