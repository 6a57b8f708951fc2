package chance

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// Compared is the outcome of a t test of b against a.
type Compared struct {
	Difference float64 // mean of b less mean of a
	T, DF, P   float64 // P two-sided
	Low, High  float64 // of the difference, at the confidence asked for
}

// Pooled compares two samples of equal true scatter (Student). ok is false
// with fewer than two in either, or with no scatter at all.
func Pooled(a, b []float64, confidence float64) (c Compared, ok bool) {
	if len(a) < 2 || len(b) < 2 {
		return Compared{}, false
	}
	na, nb := float64(len(a)), float64(len(b))
	df := na + nb - 2
	v := ((na-1)*stat.Variance(a, nil) + (nb-1)*stat.Variance(b, nil)) / df
	return compared(stat.Mean(b, nil)-stat.Mean(a, nil), math.Sqrt(v*(1/na+1/nb)), df, confidence)
}

// Welch compares two samples whose scatter may differ.
func Welch(a, b []float64, confidence float64) (c Compared, ok bool) {
	if len(a) < 2 || len(b) < 2 {
		return Compared{}, false
	}
	va, vb := stat.Variance(a, nil)/float64(len(a)), stat.Variance(b, nil)/float64(len(b))
	if va+vb == 0 {
		return Compared{}, false
	}
	df := (va + vb) * (va + vb) / (va*va/float64(len(a)-1) + vb*vb/float64(len(b)-1))
	return compared(stat.Mean(b, nil)-stat.Mean(a, nil), math.Sqrt(va+vb), df, confidence)
}

// Paired compares pairs by their position in the lists, which must be of one
// length.
func Paired(a, b []float64, confidence float64) (c Compared, ok bool) {
	if len(a) != len(b) || len(a) < 2 {
		return Compared{}, false
	}
	d := make([]float64, len(a))
	for i := range a {
		d[i] = b[i] - a[i]
	}
	n := float64(len(d))
	return compared(stat.Mean(d, nil), math.Sqrt(stat.Variance(d, nil)/n), n-1, confidence)
}

func compared(diff, se, df, confidence float64) (Compared, bool) {
	if se == 0 {
		return Compared{}, false
	}
	t := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: df}
	half := t.Quantile(1-(1-confidence)/2) * se
	return Compared{
		Difference: diff, T: diff / se, DF: df,
		P:   2 * t.Survival(math.Abs(diff/se)),
		Low: diff - half, High: diff + half,
	}, true
}
