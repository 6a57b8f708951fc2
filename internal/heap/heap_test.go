package heap

import (
	"math"
	"testing"
)

func days(n int, c float64) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = c
	}
	return out
}

func TestJudgeEdges(t *testing.T) {
	for _, tt := range []struct {
		from string
		log  Log
		want Verdict
	}{
		{"40 CFR 503: 55 °C or higher counts", Log{Windrow, days(15, 55), 5, 30}, Verdict{true, true, true, true}},
		{"40 CFR 503: a cool day breaks the spell", Log{Windrow, append(append(days(14, 60), 50), days(2, 60)...), 5, 30}, Verdict{false, true, false, false}},
		{"7 CFR 205.203: carbon to nitrogen from 25 on", Log{InVessel, days(3, 60), 0, 24.9}, Verdict{true, true, false, true}},
		{"7 CFR 205.203: to 40", Log{InVessel, days(3, 60), 0, 40}, Verdict{true, true, true, true}},
		{"no rule lists a plain heap", Log{PlainHeap, days(40, 65), 9, 30}, Verdict{}},
		{"nor a method not known", Log{"bag", days(40, 65), 9, 30}, Verdict{}},
	} {
		if got := Judge(tt.log); got != tt.want {
			t.Errorf("%s: %+v, want %+v", tt.from, got, tt.want)
		}
	}
}

func TestMixEdges(t *testing.T) {
	if _, _, ok := Mix(nil); ok {
		t.Error("nothing has a ratio")
	}
	leaf := Material{WetKg: 10, MoisturePct: 40, CarbonPct: 50, NitrogenPct: 1}
	grass := Material{MoisturePct: 77, CarbonPct: 45, NitrogenPct: 2.4}
	kg, ok := SecondForCN(leaf, grass, 30)
	if !ok {
		t.Fatal("not possible")
	}
	grass.WetKg = kg
	if cn, _, _ := Mix([]Material{leaf, grass}); math.Abs(cn-30) > 1e-9 {
		t.Errorf("mixing the amount asked for gives %.3f, want 30 (mass balance)", cn)
	}
	if _, ok := SecondForMoisture(leaf, Material{MoisturePct: 20}, 60); ok {
		t.Error("drier stuff said to wet a heap")
	}
}

// The rule's four hot hours are read strictly: on end.
func TestSignificantlyReducedIsStrict(t *testing.T) {
	split := []Spell{{50, 45}, {2, 57}, {20, 45}, {2, 57}, {60, 45}}
	if SignificantlyReduced(split) {
		t.Error("two hours and two hours count as four on end (40 CFR 503 appendix B, the stricter reading)")
	}
	if !SignificantlyReduced([]Spell{{50, 45}, {4, 57}, {66, 45}}) {
		t.Error("four hours on end within five warm days do not count")
	}
	if SignificantlyReduced([]Spell{{80, 45}, {4, 57}, {1, 39}, {80, 45}}) {
		t.Error("a cool hour does not break the five days")
	}
}
