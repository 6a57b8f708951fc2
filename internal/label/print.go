package label

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"rsc.io/qr"
)

// Label is what one label says.
type Label struct {
	Name string // "kale, Black Frond"
	Tag  string // "Brown Heron 42"
	Day  string // "sown 12 Apr 2015"
	Code string // address to scan; "" = none
}

const (
	moduleMM = 0.8 // least side of a module: a phone reads it at arm's length
	quiet    = 4   // modules of white around a code, as ISO/IEC 18004 asks
	edge     = 2.0 // mm kept free inside a label
	mmPerPt  = 25.4 / 72
)

// Code is the code a label would carry.
type Code struct {
	Modules int     // on a side, without the quiet zone
	SideMM  float64 // with the quiet zone, at the least module
}

// CodeOf says how large an address's code is.
func CodeOf(address string) (Code, error) {
	c, err := qr.Encode(address, qr.Q)
	if err != nil {
		return Code{}, fmt.Errorf("coding %q: %w", address, err)
	}
	return Code{c.Size, float64(c.Size+2*quiet) * moduleMM}, nil
}

// Fits reports whether an address's code has room on a sheet's labels. The
// quiet zone may take the label's own free edge.
func Fits(s Sheet, address string) bool {
	c, err := CodeOf(address)
	return err == nil && c.SideMM <= s.LabelH && c.SideMM+18 <= s.LabelW
}

// Printable reports whether the fonts hold every letter of a text.
func Printable(text string) bool {
	f, err := sfnt.Parse(goregular.TTF)
	if err != nil {
		panic("label: the font cannot be read")
	}
	var b sfnt.Buffer
	for _, r := range text {
		if i, err := f.GlyphIndex(&b, r); err != nil || i == 0 {
			return false
		}
	}
	return true
}

// NotPrintable says on a label why its name is not there.
const NotPrintable = "Name not in our letters: write it here"

// Write prints labels on as many sheets as they need. The first skip places of
// the first sheet are used already. stamp is the day in the file.
func Write(w io.Writer, s Sheet, skip int, labels []Label, stamp time.Time) error {
	if f := s.Faults(); len(f) > 0 {
		return errors.New("label: " + strings.Join(f, " "))
	}
	if skip < 0 || skip >= s.PerSheet() {
		return fmt.Errorf("label: the sheet has places 1 to %d", s.PerSheet())
	}
	pdf := fpdf.NewCustom(&fpdf.InitType{OrientationStr: "P", UnitStr: "mm", Size: fpdf.SizeType{Wd: s.Wide, Ht: s.Tall}})
	pdf.SetCreationDate(stamp)
	pdf.SetModificationDate(stamp)
	pdf.SetCatalogSort(true)
	pdf.SetTitle("Labels", true)
	pdf.SetMargins(0, 0, 0)
	pdf.SetAutoPageBreak(false, 0)
	pdf.AddUTF8FontFromBytes("go", "", goregular.TTF)
	pdf.AddUTF8FontFromBytes("go", "B", gobold.TTF)
	for i, l := range labels {
		n := (skip + i) % s.PerSheet()
		if i == 0 || n == 0 {
			pdf.AddPageFormat("P", fpdf.SizeType{Wd: s.Wide, Ht: s.Tall})
		}
		x, y := s.place(n)
		if err := draw(pdf, s, x, y, l); err != nil {
			return err
		}
	}
	if len(labels) == 0 {
		pdf.AddPage()
	}
	return pdf.Output(w)
}

// draw prints one label with its corner at x, y.
func draw(pdf *fpdf.Fpdf, s Sheet, x, y float64, l Label) error {
	wide := s.LabelW - 2*edge
	if l.Code != "" && Fits(s, l.Code) {
		side, err := drawCode(pdf, x+s.LabelW, y, s.LabelH, l.Code)
		if err != nil {
			return err
		}
		wide = s.LabelW - side - edge
	}
	tall := s.LabelH - 2*edge
	name, blank := l.Name, false
	if !Printable(name) {
		name, blank = NotPrintable, true
	}
	tag := fitted(pdf, "B", l.Tag, wide, min(16, tall/3/mmPerPt), 6)
	pdf.SetXY(x+edge, y+edge)
	lineTall := tag * mmPerPt * 1.25
	pdf.CellFormat(wide, lineTall, l.Tag, "", 0, "L", false, 0, "")
	at := y + edge + lineTall
	size := min(11, tall/4/mmPerPt)
	if blank {
		size = 7
	}
	pdf.SetFont("go", "", size)
	rows := pdf.SplitText(name, wide)
	most := max(1, int((y+s.LabelH-edge-at-size*mmPerPt*1.2)/(size*mmPerPt*1.2)))
	if len(rows) > most {
		rows = rows[:most]
		rows[most-1] = cut(pdf, rows[most-1], wide)
	}
	for _, row := range rows {
		pdf.SetXY(x+edge, at)
		pdf.CellFormat(wide, size*mmPerPt*1.2, row, "", 0, "L", false, 0, "")
		at += size * mmPerPt * 1.2
	}
	if blank {
		pdf.SetLineWidth(0.3)
		pdf.Line(x+edge, y+s.LabelH-edge-size*mmPerPt*1.6, x+edge+wide, y+s.LabelH-edge-size*mmPerPt*1.6)
	}
	day := min(8, size)
	pdf.SetFont("go", "", day)
	if h := day * mmPerPt * 1.2; at+h <= y+s.LabelH-edge/2 {
		pdf.SetXY(x+edge, y+s.LabelH-edge-h)
		pdf.CellFormat(wide, h, cut(pdf, l.Day, wide), "", 0, "L", false, 0, "")
	}
	return pdf.Error()
}

// fitted sets the largest size from most down to least at which a line fits.
func fitted(pdf *fpdf.Fpdf, style, text string, wide, most, least float64) float64 {
	size := most
	for pdf.SetFont("go", style, size); size > least && pdf.GetStringWidth(text) > wide; pdf.SetFont("go", style, size) {
		size -= 0.5
	}
	return size
}

// cut shortens a line to a width, with three dots.
func cut(pdf *fpdf.Fpdf, text string, wide float64) string {
	if pdf.GetStringWidth(text) <= wide {
		return text
	}
	r := []rune(text)
	for len(r) > 0 && pdf.GetStringWidth(string(r)+"…") > wide {
		r = r[:len(r)-1]
	}
	return string(r) + "…"
}

// drawCode draws a code with its right edge at x, in the middle of tall, as
// black squares joined along rows, and returns the width it takes.
func drawCode(pdf *fpdf.Fpdf, x, y, tall float64, address string) (float64, error) {
	c, err := qr.Encode(address, qr.Q)
	if err != nil {
		return 0, err
	}
	module := max(moduleMM, min(1, (tall-edge)/float64(c.Size+2*quiet)))
	side := float64(c.Size+2*quiet) * module
	left, top := x-side+float64(quiet)*module, y+(tall-side)/2+float64(quiet)*module
	pdf.SetFillColor(0, 0, 0)
	for j := range c.Size {
		for i := 0; i < c.Size; i++ {
			n := 0
			for i+n < c.Size && c.Black(i+n, j) {
				n++
			}
			if n > 0 {
				pdf.Rect(left+float64(i)*module, top+float64(j)*module, float64(n)*module, module, "F")
			}
			i += n
		}
	}
	return side, nil
}
