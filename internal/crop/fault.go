package crop

import "fmt"

// Fault is one thing wrong in a book file, said so that it can be mended.
type Fault struct {
	File string
	Line int    // from 1; the last line for what is missing
	Text string // the line as written, cut when long
	What string // what is wrong
	Try  string // what to try, "" = nothing to suggest
}

// String gives the fault with its place and line, over two to four lines.
func (f Fault) String() string {
	s := fmt.Sprintf("%s:%d: %s", f.File, f.Line, f.What)
	if f.Text != "" {
		s += fmt.Sprintf("\n    %d | %s", f.Line, f.Text)
	}
	if f.Try != "" {
		s += "\n  " + f.Try
	}
	return s
}

// excerpt cuts a line for showing.
func excerpt(line string) string {
	const most = 100 // characters, one line of a page
	r := []rune(line)
	if len(r) > most {
		return string(r[:most]) + "…"
	}
	return line
}
