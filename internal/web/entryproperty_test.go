package web

import (
	"fmt"
	"math"
	"math/rand/v2"
	"net/http"
	"net/http/httptest"
	"reflect"
	"strings"
	"testing"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

// entered is a space as a person would tell it, with what it must come to.
type entered struct {
	fields  map[string]string
	areaM2  float64
	depthM  float64 // 0 = guessed
	turnDeg float64
	plants  int
	others  []string
}

// anySpace makes up a space that stands clear of all others: number i of a
// grid of 8 m.
func anySpace(r *rand.Rand, i int) entered {
	pick := func(words ...string) string { return words[r.IntN(len(words))] }
	e := entered{fields: map[string]string{"kind": pick("raised bed", "open ground", "bag", "pocket bag", "reservoir planter", "elevated bed", "tier", "railing planter", "hanging planter"),
		"name": pick("Long bed", "<em>bold</em>", "it's", "a: b", "# none", "花", "yes") + fmt.Sprint(" ", i)}}
	size := func(low, high float64) (string, float64) {
		cm := math.Round(low + r.Float64()*(high-low))
		switch r.IntN(3) {
		case 0:
			in := math.Floor(cm / 2.54)
			return fmt.Sprintf("%g in", in), in * 0.0254
		case 1:
			return fmt.Sprintf("%.2f m", cm/100), cm / 100
		}
		return fmt.Sprintf("%g cm", cm), cm / 100
	}
	a, am := size(40, 300)
	b, bm := size(40, 140)
	switch r.IntN(8) {
	case 0:
		e.fields["size"], e.areaM2 = a+" across", math.Pi/4*am*am
	case 1:
		c, cm := size(10, 35)
		e.fields["size"], e.areaM2 = "L "+a+" x "+b+", less "+c+" x "+c, am*bm-cm*cm
	case 2:
		e.fields["size"], e.areaM2 = "oval "+a+" x "+b, math.Pi/4*am*bm
	case 3:
		e.fields["size"], e.areaM2 = "half round "+a, math.Pi/8*am*am
	case 4:
		e.fields["size"], e.areaM2 = "triangle "+a+", "+a+", "+a, math.Sqrt(3)/4*am*am
	default:
		e.fields["size"], e.areaM2 = a+" x "+b, am*bm
	}
	if r.IntN(3) > 0 {
		e.fields["depth"], e.depthM = size(15, 60)
	}
	e.fields["where"] = fmt.Sprintf("%d m east, %d m north", 8*(i%4), 8*(i/4))
	if r.IntN(3) == 0 {
		e.turnDeg = float64(5 * (1 + r.IntN(30)))
		e.fields["where"] += fmt.Sprintf(", turned %g degrees", e.turnDeg)
	}
	if r.IntN(2) == 0 {
		e.plants = 1 + r.IntN(4)
		e.fields["standing"] = fmt.Sprintf("%d kale, %s, %s", e.plants, pick("since March 2015", "set out about May 2014", "since 2013"), pick("well", "poor", "bolting"))
	}
	for range r.IntN(3) {
		e.others = append(e.others, pick("comfrey", "3 a: b", "Großmutters Rose, 20 cm across", "2 # none, 10 cm x 6 in, 80 cm high", "'yes', 15 cm across, since 2012, until October 2016"))
	}
	e.fields["others"] = strings.Join(e.others, "\n")
	e.fields["water"] = pick("can", "drip", "rain", "reservoir")
	e.fields["medium"] = pick("", "new potting mix", "new garden soil")
	return e
}

// TestAnyGardenEnteredIsTheSameGarden enters gardens made up by dice, each form
// sent twice; what they come to is held to what was told. Taken out as a file
// and brought into another program, it is the same garden to the byte.
func TestAnyGardenEnteredIsTheSameGarden(t *testing.T) {
	book, err := crop.Load()
	if err != nil {
		t.Fatal(err)
	}
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(3, seed))
		f, h := fakeEntry(t, "")
		if code, _ := post(t, h, "/entry/place", map[string]string{"town": "Dublin", "name": "Any yard"}); code != http.StatusSeeOther {
			t.Fatalf("the place: status %d", code)
		}
		var told []entered
		for i := range 1 + r.IntN(9) {
			e := anySpace(r, i)
			for range 2 {
				if code, body := sendForm(h, "/entry/space", e.fields); code != http.StatusSeeOther {
					t.Fatalf("seed %d: %v: status %d: %v", seed, e.fields, code, faultWords.FindAllStringSubmatch(body, -1))
				}
			}
			told = append(told, e)
		}
		g, faults := garden.Read("entered", []byte(f.text), garden.FromBook(book))
		if len(faults) > 0 || len(g.Spaces) != len(told) {
			t.Fatalf("seed %d: %d spaces told, %d kept, %v", seed, len(told), len(g.Spaces), faults)
		}
		for i, e := range told {
			sp := g.Spaces[i]
			plants := 0
			for _, p := range sp.Standing {
				plants += p.Count
			}
			if sp.Name != e.fields["name"] || string(sp.Kind) != e.fields["kind"] || math.Abs(sp.AreaM2()-e.areaM2) > 1e-6 || sp.TurnDeg != e.turnDeg ||
				sp.X != float64(8*(i%4)) || sp.Y != float64(8*(i/4)) || plants != e.plants || sp.Water != e.fields["water"] ||
				e.depthM > 0 && math.Abs(sp.Depth.M-e.depthM) > 1e-9 || isGuessed(sp.Guessed, "depth") != (e.depthM == 0) {
				t.Errorf("seed %d: told %v, area %.4f, depth %.3f; kept %+v, area %.4f", seed, e.fields, e.areaM2, e.depthM, sp, sp.AreaM2())
			}
			var others []string
			was, _ := garden.Look([]byte(f.text), "spaces", string(sp.ID))
			for _, v := range was.At(garden.OtherKey).List() {
				others = append(others, garden.OtherLine(v))
			}
			for k, o := range e.others {
				if !strings.Contains(o, ",") {
					o += ", " + othersTake
				}
				if k >= len(others) || others[k] != o {
					t.Errorf("seed %d: told %q, kept %q", seed, e.others, others)
				}
			}
			if len(sp.Others) != len(e.others) {
				t.Errorf("seed %d: told %q, the garden has %d", seed, e.others, len(sp.Others))
			}
			if d, err := unit.ParseLength(e.fields["depth"]); err == nil && sp.Depth.Typed != d.Typed {
				t.Errorf("seed %d: depth typed %q came back as %q", seed, e.fields["depth"], sp.Depth.Typed)
			}
		}
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost/entry/file/garden.yaml", nil))
		out := w.Body.String()
		other, door := fakeEntry(t, begun)
		if code, body := post(t, door, "/entry/file", map[string]string{"paste": out}); code != http.StatusOK || !strings.Contains(body, "What the file changes") || other.text != begun {
			t.Fatalf("seed %d: shown with status %d, taken before it was accepted: %v", seed, code, other.text != begun)
		}
		if code, _ := post(t, door, "/entry/accept", map[string]string{"text": out}); code != http.StatusSeeOther {
			t.Fatalf("seed %d: not accepted", seed)
		}
		again, faults := garden.Read("brought in", []byte(other.text), garden.FromBook(book))
		if other.text != f.text || len(faults) > 0 || !reflect.DeepEqual(again, g) {
			t.Errorf("seed %d: brought in, it differs: %v", seed, faults)
		}
	}
}
