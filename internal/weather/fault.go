package weather

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// Fault is one thing wrong with a file, in words for the person who has it.
type Fault struct {
	Line    int    // counted from 1; 0 = the whole file
	Excerpt string // the text at fault, shortened
	What    string // what is wrong
	Remedy  string // what to try
}

// String writes the fault on one line.
func (f Fault) String() string {
	var b strings.Builder
	if f.Line > 0 {
		fmt.Fprintf(&b, "line %d: ", f.Line)
	}
	b.WriteString(f.What)
	if f.Excerpt != "" {
		fmt.Fprintf(&b, " (%s)", f.Excerpt)
	}
	if f.Remedy != "" {
		b.WriteString(". " + f.Remedy)
	}
	return b.String()
}

// maxFaults is how many faults are listed before the rest are only counted:
// more than a person would read.
const maxFaults = 50

// faultList gathers faults and counts those beyond maxFaults.
type faultList struct {
	list []Fault
	more int
}

func (l *faultList) add(line int, excerpt, what, remedy string) {
	if len(l.list) >= maxFaults {
		l.more++
		return
	}
	l.list = append(l.list, Fault{Line: line, Excerpt: shorten(excerpt), What: what, Remedy: remedy})
}

// all returns the faults, with a last one that counts those not listed.
func (l *faultList) all() []Fault {
	if l.more == 0 {
		return l.list
	}
	return append(l.list, Fault{
		What:   fmt.Sprintf("%d more faults are not listed", l.more),
		Remedy: "Mend those above first, then read the file again.",
	})
}

// shorten cuts an excerpt to 60 characters of printable text.
func shorten(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' || r == utf8.RuneError || r == 0x7f {
			return ' '
		}
		return r
	}, strings.ToValidUTF8(s, " "))
	s = strings.TrimSpace(s)
	const most = 60
	if r := []rune(s); len(r) > most {
		return string(r[:most-3]) + "..."
	}
	return s
}
