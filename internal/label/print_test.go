package label

import (
	"bytes"
	"fmt"
	"os"
	"testing"
	"time"
)

var stamp = time.Date(2015, 4, 6, 0, 0, 0, 0, time.UTC)

const address = "HTTP://192.168.100.120:8751/P/STEADY-SPARROW-42"

func TestSheetsFitTheirPaper(t *testing.T) {
	for _, s := range Sheets() {
		if f := s.Faults(); len(f) > 0 {
			t.Errorf("%s: %v", s.Name, f)
		}
		x, y := s.place(s.PerSheet() - 1)
		if x+s.LabelW > s.Wide+0.1 || y+s.LabelH > s.Tall+0.1 {
			t.Errorf("%s: the last label ends at %.1f, %.1f mm", s.Name, x+s.LabelW, y+s.LabelH)
		}
	}
	s := Sheets()[0]
	s.Columns = 4
	if len(s.Faults()) == 0 {
		t.Error("four columns of 63.5 mm on 210 mm have no fault")
	}
}

// TestCodesHaveRoomToScan: a code's module is 0.8 mm or more wherever it is
// printed; where that has no room there is none.
func TestCodesHaveRoomToScan(t *testing.T) {
	c, err := CodeOf(address)
	if err != nil || c.Modules != 33 && c.Modules != 29 {
		t.Fatalf("%d modules, %v; an address in capitals and digits wants 29 or 33 at level Q", c.Modules, err)
	}
	for i, want := range []bool{true, true, true, false, true, false, false} {
		if s := Sheets()[i]; Fits(s, address) != want {
			t.Errorf("%s: fits %v, want %v", s.Name, !want, want)
		}
	}
}

func TestLettersWeHave(t *testing.T) {
	for text, want := range map[string]bool{
		"kale, Black Frond": true, "Möhre – Grünkohl ½": true, "Лук репчатый": true, "Κρεμμύδι": true,
		"白菜": false, "גזר": false, "गाजर": false,
	} {
		if Printable(text) != want {
			t.Errorf("%q: printable %v, want %v", text, !want, want)
		}
	}
}

func TestWriteIsTheSameTwice(t *testing.T) {
	var labels []Label
	for i := range 30 {
		labels = append(labels, Label{Name: fmt.Sprintf("kale, Black Frond %d", i), Tag: "Steady Sparrow 42", Day: "sown 12 April 2015", Code: address})
	}
	labels[1].Name = "白菜, a name that is not in our letters"
	labels[2].Name = "Лук репчатый, очень длинное имя, которое не поместится на этикетке никогда"
	var a, b bytes.Buffer
	for _, out := range []*bytes.Buffer{&a, &b} {
		if err := Write(out, Sheets()[0], 4, labels, stamp); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("the same labels give two files")
	}
	if n := bytes.Count(a.Bytes(), []byte("/Type /Page\n")); n != 2 {
		t.Errorf("%d sheets, want 2: 4 places used and 30 labels on sheets of 21", n)
	}
	if f := os.Getenv("LABELS_OUT"); f != "" {
		if err := os.WriteFile(f, a.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := Write(&a, Sheets()[0], 21, labels, stamp); err == nil {
		t.Error("place 22 of a sheet of 21 is taken")
	}
}
