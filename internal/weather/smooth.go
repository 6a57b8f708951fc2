package weather

import "math"

// yearDays is the length of a table by day of the year: index doy-1.
const yearDays = 366

// table is a quantity by day of the year.
type table [yearDays]float64

// phase returns the angle of a day of the year, radians.
func phase(doy int) float64 { return 2 * math.Pi * (float64(doy) - 0.5) / 365.25 }

// harmonics is a mean and up to three waves a year.
type harmonics [7]float64

// basis fills the mean and k waves at an angle.
func basis(angle float64, k int) (b harmonics) {
	b[0] = 1
	for j := 1; j <= k; j++ {
		b[2*j-1], b[2*j] = math.Cos(float64(j)*angle), math.Sin(float64(j)*angle)
	}
	return b
}

func (h harmonics) at(angle float64) float64 {
	b := basis(angle, 3)
	v := 0.0
	for i := range h {
		v += h[i] * b[i]
	}
	return v
}

// table lists the wave by day of the year.
func (h harmonics) table() (t table) {
	for i := range t {
		t[i] = h.at(phase(i + 1))
	}
	return t
}

// normalSums gathers least-squares sums for harmonics.
type normalSums struct {
	a [7][7]float64
	b [7]float64
	k int // waves
}

func (s *normalSums) add(x harmonics, y float64) {
	n := 1 + 2*s.k
	for i := 0; i < n; i++ {
		s.b[i] += x[i] * y
		for j := 0; j < n; j++ {
			s.a[i][j] += x[i] * x[j]
		}
	}
}

// solve finds the waves by elimination with row exchange. A singular system
// (too few different days) gives ok false.
func (s *normalSums) solve() (h harmonics, ok bool) {
	n := 1 + 2*s.k
	a, b := s.a, s.b
	for i := 0; i < n; i++ {
		p := i
		for r := i + 1; r < n; r++ {
			if math.Abs(a[r][i]) > math.Abs(a[p][i]) {
				p = r
			}
		}
		if math.Abs(a[p][i]) < 1e-9 {
			return h, false
		}
		a[i], a[p] = a[p], a[i]
		b[i], b[p] = b[p], b[i]
		for r := i + 1; r < n; r++ {
			f := a[r][i] / a[i][i]
			for c := i; c < n; c++ {
				a[r][c] -= f * a[i][c]
			}
			b[r] -= f * b[i]
		}
	}
	for i := n - 1; i >= 0; i-- {
		v := b[i]
		for c := i + 1; c < n; c++ {
			v -= a[i][c] * h[c]
		}
		h[i] = v / a[i][i]
	}
	return h, true
}

// bins sums values by day of the year, to be smoothed over neighbouring days.
type bins struct{ sum, n table }

func (b *bins) add(doy int, v float64) {
	b.sum[doy-1] += v
	b.n[doy-1]++
}

// smooth returns the weighted mean within half days on either side, with
// Epanechnikov weights, round the year's end; and how many days stand behind
// each. Where nothing is known the value is otherwise.
func (b *bins) smooth(half int, otherwise float64) (mean, count table) {
	w := make([]float64, half+1)
	for k := range w {
		u := float64(k) / float64(half+1)
		w[k] = 1 - u*u
	}
	for i := range mean {
		sum, weight := 0.0, 0.0
		for k := -half; k <= half; k++ {
			j := (i + k + yearDays) % yearDays
			wk := w[max(k, -k)]
			sum += wk * b.sum[j]
			weight += wk * b.n[j]
			count[i] += b.n[j]
		}
		mean[i] = otherwise
		if weight > 0 {
			mean[i] = sum / weight
		}
	}
	return mean, count
}
