package garden

import "strings"

// nearest returns the name closest to typed, if it is close enough to be a
// slip of the pen: at most a third of its letters wrong. Ties go to the first.
func nearest(typed string, names []string) (string, bool) {
	typed = strings.ToLower(strings.TrimSpace(typed))
	if len(typed) > maxName {
		return "", false
	}
	best, least := "", 1<<30
	for _, name := range names {
		if d := slips(typed, name); d < least {
			best, least = name, d
		}
	}
	return best, best != "" && 3*least <= max(len(typed), 3)
}

// slips counts letters added, dropped, changed or swapped with their
// neighbour (optimal string alignment distance).
func slips(a, b string) int {
	x, y := []rune(a), []rune(b)
	before, last, row := make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range last {
		last[j] = j
	}
	for i := range x {
		row[0] = i + 1
		for j := range y {
			change := 1
			if x[i] == y[j] {
				change = 0
			}
			row[j+1] = min(last[j]+change, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && x[i] == y[j-1] && x[i-1] == y[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(y)]
}

// slug brings a name to the form of an id: lower case letters, digits, dashes.
func slug(name string) string {
	var b strings.Builder
	dash := false
	for _, r := range strings.ToLower(name) {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			if dash && b.Len() > 0 {
				b.WriteByte('-')
			}
			dash = false
			b.WriteRune(r)
		default:
			dash = true
		}
		if b.Len() >= maxID {
			break
		}
	}
	return b.String()
}
