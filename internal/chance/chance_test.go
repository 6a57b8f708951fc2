package chance

import (
	"bufio"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"
)

func ExampleSeedsNeeded() {
	n, _ := SeedsNeeded(0.9, 12, 0.9)
	naive, _ := NaiveSeeds(0.9, 12)
	fmt.Printf("sow %d, not %d: %.0f %% against %.0f %%\n", n, naive, 100*AtLeast(n, 12, 0.9), 100*AtLeast(naive, 12, 0.9))
	// Output: sow 15, not 14: 94 % against 84 %
}

func TestSeedsEdges(t *testing.T) {
	for _, tt := range []struct {
		p          float64
		wanted     int
		confidence float64
		want       int
		ok         bool
	}{
		{0, 1, 0.9, 0, false},    // dead seed: no number is enough
		{1, 7, 0.99, 7, true},    // sure seed
		{0.5, 0, 0.9, 0, true},   // nothing wanted
		{0.5, 1, 1, 0, false},    // certainty cannot be had
		{1e-9, 1, 0.9, 0, false}, // more than a million
		{math.NaN(), 1, 0.9, 0, false},
	} {
		if n, ok := SeedsNeeded(tt.p, tt.wanted, tt.confidence); n != tt.want || ok != tt.ok {
			t.Errorf("SeedsNeeded(%v, %d, %v) = %d, %v; want %d, %v", tt.p, tt.wanted, tt.confidence, n, ok, tt.want, tt.ok)
		}
	}
}

// The number is the least: one fewer falls short. Checked by the plain sum of
// binomial terms, which shares no code with AtLeast.
func TestSeedsNeededIsTheLeast(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		p, k, c := 0.05+0.94*r.Float64(), 1+r.IntN(30), 0.5+0.49*r.Float64()
		n, ok := SeedsNeeded(p, k, c)
		if !ok || plainAtLeast(n, k, p) < c-1e-9 || plainAtLeast(n-1, k, p) >= c+1e-9 {
			t.Fatalf("p %.3f, wanted %d, confidence %.3f: %d seeds give %.6f and one fewer %.6f", p, k, c, n, plainAtLeast(n, k, p), plainAtLeast(n-1, k, p))
		}
	}
}

func plainAtLeast(n, k int, p float64) float64 {
	sum := 0.0
	for i := k; i <= n; i++ {
		lc, _ := math.Lgamma(float64(n + 1))
		a, _ := math.Lgamma(float64(i + 1))
		b, _ := math.Lgamma(float64(n - i + 1))
		sum += math.Exp(lc - a - b + float64(i)*math.Log(p) + float64(n-i)*math.Log(1-p))
	}
	return sum
}

// Clopper-Pearson by its own meaning: at the lower limit, k or more successes
// have exactly the tail's chance; at the upper, k or fewer. It holds Wilson's
// estimate and is the wider of the two for middling k.
func TestIntervalsMeanWhatTheySay(t *testing.T) {
	for _, n := range []int{1, 5, 10, 60} {
		for k := 0; k <= n; k++ {
			low, high := ClopperPearson(k, n, 0.95)
			if k > 0 && math.Abs(AtLeast(n, k, low)-0.025) > 1e-6 {
				t.Errorf("%d of %d: chance of as many at the low end is %.6f, want 0.025 (Clopper and Pearson 1934)", k, n, AtLeast(n, k, low))
			}
			if k < n && math.Abs(1-AtLeast(n, k+1, high)-0.025) > 1e-6 {
				t.Errorf("%d of %d: chance of as few at the high end is %.6f, want 0.025 (Clopper and Pearson 1934)", k, n, 1-AtLeast(n, k+1, high))
			}
			wl, wh := Wilson(k, n, 0.95)
			if wl < 0 || wh > 1 || wl > wh || Estimate(k, n) < low || Estimate(k, n) > high {
				t.Errorf("%d of %d: Wilson %.3f-%.3f, Clopper-Pearson %.3f-%.3f", k, n, wl, wh, low, high)
			}
			if k > 0 && k < n && wh-wl >= high-low {
				t.Errorf("%d of %d: Wilson %.3f is not narrower than Clopper-Pearson %.3f", k, n, wh-wl, high-low)
			}
		}
	}
}

func TestPowerAgainstTrials(t *testing.T) {
	// The meaning of power, by drawing trials: an independent check of the
	// noncentral t. 4000 trials give a standard error of 0.008.
	r := rand.New(rand.NewPCG(5, 6))
	test := Test{Alpha: 0.05, Sides: 2}
	for _, tt := range []struct {
		n int
		d float64
	}{{3, 2}, {6, 1.5}, {12, 0}} {
		shown := 0
		const trials = 4000
		for range trials {
			a, b := make([]float64, tt.n), make([]float64, tt.n)
			for i := range a {
				a[i], b[i] = r.NormFloat64(), r.NormFloat64()+tt.d
			}
			if c, ok := Pooled(a, b, 0.95); ok && c.P < 0.05 {
				shown++
			}
		}
		if got, drawn := test.Power(float64(tt.n), tt.d), float64(shown)/trials; math.Abs(got-drawn) > 0.03 {
			t.Errorf("power of %d a side for %v: %.3f, drawn %.3f", tt.n, tt.d, got, drawn)
		}
	}
	if got := test.Power(10, 0); math.Abs(got-0.05) > 1e-9 {
		t.Errorf("power without a difference = %v, want the risk 0.05", got)
	}
}

func TestPowerGrows(t *testing.T) {
	test := Test{Alpha: 0.05, Sides: 2}
	last := 0.0
	for n := 2; n < 300; n++ {
		p := test.Power(float64(n), 0.7)
		if p < last-1e-9 || math.IsNaN(p) {
			t.Fatalf("%d a side: power %.6f after %.6f", n, p, last)
		}
		last = p
	}
	for _, n := range []int{2, 3, 10, 400} {
		d, ok := test.Detectable(n, 0.8)
		if !ok || math.Abs(test.Power(float64(n), d)-0.8) > 1e-6 {
			t.Errorf("%d a side: detectable %v has power %v, want 0.8", n, d, test.Power(float64(n), d))
		}
	}
	if _, ok := test.Detectable(1, 0.8); ok {
		t.Error("one plant a side detects something")
	}
	if _, _, ok := test.Needed(0, 0.8); ok {
		t.Error("no difference was given a number of plants")
	}
	if _, n, ok := test.Needed(50, 0.8); !ok || n != 2 {
		t.Errorf("a huge difference needs %d a side, want 2", n)
	}
}

func TestCompareEdges(t *testing.T) {
	same := []float64{2, 2, 2}
	if _, ok := Pooled(same, same, 0.95); ok {
		t.Error("no scatter at all gave a t")
	}
	if _, ok := Paired([]float64{1, 2}, []float64{1, 2, 3}, 0.95); ok {
		t.Error("lists of two lengths were paired")
	}
	if _, ok := Welch([]float64{1}, []float64{1, 2}, 0.95); ok {
		t.Error("one plant gave a scatter")
	}
}

func TestLayout(t *testing.T) {
	draw := func(seed uint64) [][]int { return Layout(4, 5, rand.New(rand.NewPCG(seed, 9))) }
	if !SameLayout(draw(1), draw(1)) {
		t.Error("the same seed gave two layouts")
	}
	if SameLayout(draw(1), draw(2)) {
		t.Error("two seeds gave one layout")
	}
	if _, ok := CountBlocks([][]int{{0, 1}, {0, 0}}, 2); ok {
		t.Error("a block with a treatment twice was passed")
	}
	// Every order turns up about as often: 6 orders of 3, 6000 blocks.
	count := map[string]int{}
	for _, b := range Layout(3, 6000, rand.New(rand.NewPCG(7, 8))) {
		count[fmt.Sprint(b)]++
	}
	if len(count) != 6 {
		t.Fatalf("%d orders of 3 treatments, want 6", len(count))
	}
	for order, n := range count {
		if n < 850 || n > 1150 {
			t.Errorf("order %s came %d times of 6000, want about 1000", order, n)
		}
	}
}

// The barley trials of 1931: blocks turn p = 0.79 into 0.0016.
func TestAnalyseBarley1931(t *testing.T) {
	a, ok := Analyse(barley(t), 0.05)
	if !ok {
		t.Fatal("no analysis")
	}
	for _, tt := range []struct {
		name           string
		got, want, tol float64
	}{
		{"treatment F", a.TreatmentF, 3.67995, 0.005},
		{"treatment p", a.TreatmentP, 0.0016121, 0.0005},
		{"block F", a.BlockF, 52.7061, 0.005},
		{"error mean square", a.ErrorMS, 19.513, 0.02},
		{"error df", float64(a.DFError), 45, 0},
		{"CV %", a.CVPercent, 11.9137, 0.05},
		{"SE of a difference", a.SEDifference, 2.55036, 0.005},
		{"LSD 5 %", a.LSD, 5.13669, 0.005},
		{"F, blocks ignored", a.IgnoredF, 0.59637, 0.005},
		{"p, blocks ignored", a.IgnoredP, 0.79382, 0.0005},
	} {
		if math.Abs(tt.got-tt.want) > tt.tol {
			t.Errorf("%s = %.5f, want %.5f (R 4.2.2 aov)", tt.name, tt.got, tt.want)
		}
	}
	if _, ok := Analyse([][]float64{{1, 2}, {1}}, 0.05); ok {
		t.Error("a ragged table was analysed")
	}
	if _, ok := Analyse([][]float64{{1, 2}, {2, 3}}, 0.05); ok {
		t.Error("a table without error was analysed")
	}
}

func barley(t *testing.T) [][]float64 {
	t.Helper()
	f, err := os.Open("../verify/data/barley.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out [][]float64
	variety := ""
	for s := bufio.NewScanner(f); s.Scan(); {
		c := strings.Split(s.Text(), ",") // in order of year, variety, site
		if c[0] != "1931" {
			continue
		}
		if c[1] != variety {
			variety, out = c[1], append(out, nil)
		}
		v, err := strconv.ParseFloat(c[3], 64)
		if err != nil {
			t.Fatal(err)
		}
		out[len(out)-1] = append(out[len(out)-1], v)
	}
	return out
}
