// Package label prints sheets of labels in millimetres as PDF: a name, a
// spoken tag, a day, and a code to scan.
//
// Method: go-pdf/fpdf draws, rsc.io/qr codes at level Q (about a quarter may be
// spoilt), the Go fonts write Latin, Greek and Cyrillic. A name in another
// script is not printed wrong: its label says so and leaves a line to write on.
//
// Conventions: millimetres from the sheet's top left corner. The same input
// gives the same bytes.
//
// Left out: scripts that run right to left or join their letters, and other
// printers than those for sheets.
package label

import "fmt"

// Sheet is a sheet of equal labels.
type Sheet struct {
	Name          string
	Wide, Tall    float64 // of the paper
	LabelW        float64
	LabelH        float64
	Columns, Rows int
	Left, Top     float64 // of the first label
	GapX, GapY    float64
}

// Sheets are sizes that are common in shops, by their millimetres. From memory:
// measure one of yours, and print a trial on plain paper.
func Sheets() []Sheet {
	return []Sheet{
		{"21 a sheet, 63.5 × 38.1 mm, A4", 210, 297, 63.5, 38.1, 3, 7, 7.25, 15.15, 2.5, 0},
		{"24 a sheet, 70 × 37 mm, A4", 210, 297, 70, 37, 3, 8, 0, 0.5, 0, 0},
		{"14 a sheet, 99.1 × 38.1 mm, A4", 210, 297, 99.1, 38.1, 2, 7, 4.65, 15.15, 2.5, 0},
		{"65 a sheet, 38.1 × 21.2 mm, A4: no room for a code", 210, 297, 38.1, 21.2, 5, 13, 4.75, 10.7, 2.5, 0},
		{"10 a sheet, 101.6 × 50.8 mm, US Letter", 215.9, 279.4, 101.6, 50.8, 2, 5, 3.96, 12.7, 4.78, 0},
		{"30 a sheet, 66.7 × 25.4 mm, US Letter: no room for a code", 215.9, 279.4, 66.7, 25.4, 3, 10, 4.78, 12.7, 3.18, 0},
		{"Strips for sticks, 125 × 20 mm, A4: to cut", 210, 297, 125, 20, 1, 13, 42.5, 18.5, 0, 0},
	}
}

// PerSheet is the number of labels on one sheet.
func (s Sheet) PerSheet() int { return s.Columns * s.Rows }

// Faults lists what is wrong with a size of one's own, in words.
func (s Sheet) Faults() []string {
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	if !(s.Wide >= 50 && s.Wide <= 450 && s.Tall >= 50 && s.Tall <= 450) {
		add("Paper is 50 to 450 mm wide and tall.")
	}
	if !(s.LabelW >= 15 && s.LabelH >= 8) {
		add("A label is at least 15 mm wide and 8 mm tall.")
	}
	if s.Columns < 1 || s.Rows < 1 || s.Columns > 20 || s.Rows > 40 {
		add("There are 1 to 20 columns and 1 to 40 rows.")
	}
	if !(s.Left >= 0 && s.Top >= 0 && s.GapX >= 0 && s.GapY >= 0) {
		add("Margins and gaps are 0 mm or more.")
	}
	if len(out) > 0 {
		return out
	}
	const slack = 0.1 // mm, of rounding in shop sizes
	if w := s.Left + float64(s.Columns)*s.LabelW + float64(s.Columns-1)*s.GapX; w > s.Wide+slack {
		add("The columns take %.1f mm, but the paper is %.1f mm wide.", w, s.Wide)
	}
	if h := s.Top + float64(s.Rows)*s.LabelH + float64(s.Rows-1)*s.GapY; h > s.Tall+slack {
		add("The rows take %.1f mm, but the paper is %.1f mm tall.", h, s.Tall)
	}
	return out
}

// place is the top left corner of label n of a sheet, from 0.
func (s Sheet) place(n int) (x, y float64) {
	return s.Left + float64(n%s.Columns)*(s.LabelW+s.GapX), s.Top + float64(n/s.Columns)*(s.LabelH+s.GapY)
}
