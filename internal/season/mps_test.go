package season

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the model files of the outside solver's test anew")

// mpsGardens are tiny gardens whose best plan by the expected-yield model is
// known from trying every plan. An outside solver must find the same from the
// files (browser/highs.test.mjs).
func mpsGardens(see func(name string, p *Problem, best Plan, value, bound float64)) {
	done := 0
	for seed := uint64(2000); done < 24; seed++ {
		p := tiny(seed)
		if plans(p, 1500) > 1500 {
			continue
		}
		if seed%2 == 0 {
			for i := range p.Spaces {
				p.Spaces[i].Batch = 0
			}
		}
		if seed%3 == 0 { // all leave in one week, and that costs
			p.RestCost, p.ClearMax = 0.5, 1
			for i := range p.Options {
				o := &p.Options[i]
				o.Space, o.End = i%len(p.Spaces), max(o.Week, 3)
			}
		}
		best, value, found := Plan{}, 0.0, false
		everyPlan(p, func(plan *Plan, v *Verdict) {
			if x := v.Value + v.Parts.Lean - v.Parts.Food + meanEaten(p, v); !found || x > value {
				found, value = true, x
				best = Plan{Plantings: append([]Planting(nil), plan.Plantings...), Pull: append([]int(nil), plan.Pull...)}
			}
		})
		if !found {
			continue
		}
		done++
		see(fmt.Sprintf("tiny%02d", done), p, best, value, Bound(context.Background(), p, BoundLimits{Work: 1}).Bound)
	}
}

// sansBound leaves the bound's line out: any valid bound will do, and its last
// digits depend on the machine's rounding.
func sansBound(file []byte) []byte {
	at := bytes.Index(file, []byte("# bound "))
	if at < 0 {
		return file
	}
	end := bytes.IndexByte(file[at:], '\n')
	return append(append([]byte(nil), file[:at]...), file[at+end:]...)
}

// TestModelFilesAreCurrent: the files in testdata are what the program writes
// now, so that the outside solver judges this program and no older one.
func TestModelFilesAreCurrent(t *testing.T) {
	dir := filepath.Join("testdata", "mps")
	n := 0
	mpsGardens(func(name string, p *Problem, best Plan, value, bound float64) {
		n++
		var model, sol bytes.Buffer
		if err := WriteMPS(&model, p); err != nil {
			t.Fatal(err)
		}
		if err := WriteSol(&sol, p, &best, bound); err != nil {
			t.Fatal(err)
		}
		for ext, b := range map[string][]byte{".mps": model.Bytes(), ".sol": sol.Bytes()} {
			path := filepath.Join(dir, name+ext)
			if *update {
				if err := os.WriteFile(path, b, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if old, err := os.ReadFile(path); err != nil || !bytes.Equal(sansBound(old), sansBound(b)) {
				t.Errorf("%s is not what is written now (%v); go test ./internal/season -run ModelFiles -update, then the browser tests", path, err)
			}
		}
		if bound < value {
			t.Errorf("%s: bound %.9f below the best %.9f", name, bound, value)
		}
	})
	if n != 24 {
		t.Errorf("%d gardens", n)
	}
}
