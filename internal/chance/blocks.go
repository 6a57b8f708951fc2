package chance

import (
	"math"
	"math/big"
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"
)

// Layout returns a randomised block layout: for each block, the treatments 0
// to treatments-1 once each in random order. The same random source gives the
// same layout.
func Layout(treatments, blocks int, r *rand.Rand) [][]int {
	out := make([][]int, blocks)
	for i := range out {
		out[i] = r.Perm(treatments)
	}
	return out
}

// Blocks counts what any layout of randomised complete blocks has.
type Blocks struct {
	Plots, Replicates             int
	PerBlock                      int // times each treatment stands in a block
	DFTreatment, DFBlock, DFError int
	Layouts                       *big.Int // how many there are
}

// CountBlocks counts a layout's parts from the layout itself; ok is false when
// some block does not hold each treatment exactly once.
func CountBlocks(layout [][]int, treatments int) (b Blocks, ok bool) {
	each := new(big.Int).MulRange(1, int64(treatments))
	b.Layouts, b.PerBlock = big.NewInt(1), 1
	for _, block := range layout {
		seen := make([]bool, treatments)
		for _, t := range block {
			if t < 0 || t >= treatments || seen[t] {
				return Blocks{}, false
			}
			seen[t] = true
		}
		if len(block) != treatments {
			return Blocks{}, false
		}
		b.Plots += len(block)
		b.Replicates++
		b.Layouts.Mul(b.Layouts, each)
	}
	b.DFTreatment, b.DFBlock = treatments-1, b.Replicates-1
	b.DFError = b.DFTreatment * b.DFBlock
	return b, true
}

// SameLayout reports whether two layouts are alike in every plot.
func SameLayout(a, b [][]int) bool { return slices.EqualFunc(a, b, slices.Equal) }

// Anova is the analysis of variance of randomised complete blocks.
type Anova struct {
	TreatmentF, TreatmentP        float64
	BlockF, BlockP                float64
	ErrorMS                       float64
	DFTreatment, DFBlock, DFError int
	CVPercent                     float64 // error scatter over the grand mean
	SEDifference                  float64 // of two treatment means
	LSD                           float64 // least significant difference at alpha, two-sided
	IgnoredF, IgnoredP            float64 // treatments if blocks had been ignored
}

// Analyse splits the variation of yields[treatment][block] into treatments,
// blocks and error (additive two-way). ok is false for a ragged table, fewer
// than two of either, or no error at all.
func Analyse(yields [][]float64, alpha float64) (a Anova, ok bool) {
	nt := len(yields)
	if nt < 2 || len(yields[0]) < 2 {
		return Anova{}, false
	}
	nb := len(yields[0])
	grand, byBlock := 0.0, make([]float64, nb)
	byTreatment := make([]float64, nt)
	for i, row := range yields {
		if len(row) != nb {
			return Anova{}, false
		}
		for j, y := range row {
			grand += y / float64(nt*nb)
			byTreatment[i] += y / float64(nb)
			byBlock[j] += y / float64(nt)
		}
	}
	total, ssT, ssB := 0.0, 0.0, 0.0
	for i, row := range yields {
		ssT += float64(nb) * square(byTreatment[i]-grand)
		for _, y := range row {
			total += square(y - grand)
		}
	}
	for _, m := range byBlock {
		ssB += float64(nt) * square(m-grand)
	}
	a.DFTreatment, a.DFBlock = nt-1, nb-1
	a.DFError = a.DFTreatment * a.DFBlock
	a.ErrorMS = (total - ssT - ssB) / float64(a.DFError)
	const rounding = 1e-12 // of the whole variation
	if !(a.ErrorMS > rounding*total) {
		return Anova{}, false
	}
	a.TreatmentF, a.TreatmentP = ratio(ssT, a.DFTreatment, a.ErrorMS, a.DFError)
	a.BlockF, a.BlockP = ratio(ssB, a.DFBlock, a.ErrorMS, a.DFError)
	dfAll := a.DFError + a.DFBlock
	a.IgnoredF, a.IgnoredP = ratio(ssT, a.DFTreatment, (total-ssT)/float64(dfAll), dfAll)
	if grand != 0 {
		a.CVPercent = 100 * math.Sqrt(a.ErrorMS) / math.Abs(grand)
	}
	a.SEDifference = math.Sqrt(2 * a.ErrorMS / float64(nb))
	a.LSD = a.SEDifference * distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(a.DFError)}.Quantile(1-alpha/2)
	return a, true
}

func square(x float64) float64 { return x * x }

func ratio(ss float64, df int, errorMS float64, errorDF int) (f, p float64) {
	f = ss / float64(df) / errorMS
	return f, distuv.F{D1: float64(df), D2: float64(errorDF)}.Survival(f)
}
