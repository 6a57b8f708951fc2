package garden

import (
	"fmt"
	"sort"
	"strings"
	"unicode"
)

// Fault is one thing wrong in a garden file, in the gardener's words.
type Fault struct {
	File      string
	Line, Col int    // from 1; Line 0 = the file as a whole
	Excerpt   string // the line and, under it, carets at the place; "" when Line is 0
	What      string // "depth 18 m"
	Remedy    string // one or two sentences, the last saying what to write
}

// String writes f as the file and line, the excerpt and the remedy:
//
//	garden.yaml:14: depth 18 m
//	    14 |   depth: 18 m
//	       |          ^^^^
//	  A depth of 18 m is more than the 2 m we accept. Did you mean 18 cm?
func (f Fault) String() string {
	if f.Line == 0 {
		return fmt.Sprintf("%s: %s\n  %s\n", f.File, f.What, f.Remedy)
	}
	return fmt.Sprintf("%s:%d: %s\n%s\n  %s\n", f.File, f.Line, f.What, f.Excerpt, f.Remedy)
}

// maxFaults bounds a report: nobody mends more in one go.
const maxFaults = 300

// sorted puts faults in the order of the file and cuts an endless list.
func sorted(faults []Fault) []Fault {
	sort.SliceStable(faults, func(i, j int) bool {
		a, b := faults[i], faults[j]
		if a.Line != b.Line {
			return a.Line < b.Line
		}
		if a.Col != b.Col {
			return a.Col < b.Col
		}
		return a.What < b.What
	})
	if more := len(faults) - maxFaults; more > 0 {
		file := faults[0].File
		faults = append(faults[:maxFaults:maxFaults], Fault{File: file,
			What: fmt.Sprintf("%d more faults", more), Remedy: "Mend the first ones, then check again."})
	}
	return faults
}

// excerptWide is how many letters of a line an excerpt shows.
const excerptWide = 96

// excerpt draws a line of the file with carets under n letters from col.
func excerpt(text string, line, col, n int) string {
	runes := []rune(text)
	for i, r := range runes {
		if unicode.IsControl(r) || unicode.Is(unicode.Cf, r) {
			runes[i] = ' ' // tabs and unseen signs would move the carets
		}
	}
	at := min(max(col-1, 0), len(runes))
	n = max(1, min(n, len(runes)-at))
	if len(runes) > excerptWide {
		from := max(0, min(at-excerptWide/3, len(runes)-excerptWide))
		to := from + excerptWide
		at -= from
		n = max(1, min(n, excerptWide-at))
		runes = runes[from:to]
	}
	shown := strings.TrimRight(string(runes), " ")
	return fmt.Sprintf("%6d | %s\n%6s | %s%s", line, shown, "", strings.Repeat(" ", at), strings.Repeat("^", n))
}
