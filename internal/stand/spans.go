package stand

import "sort"

// Runs of days in a year without a beginning.

// tidy closes gaps of at most most samples in the circle and drops runs as
// short beside longer ones. A gap of one sample is always closed.
func tidy(on []bool, most int) {
	most = max(1, most)
	if all(on) {
		return
	}
	n := len(on)
	off := make([]bool, n)
	for i := range on {
		off[i] = !on[i]
	}
	for _, s := range spans(off) {
		if width(s, n) <= most {
			fill(on, s, true)
		}
	}
	if all(on) {
		return
	}
	runs := spans(on)
	long := 0
	for _, s := range runs {
		long = max(long, width(s, n))
	}
	for _, s := range runs {
		if w := width(s, n); w <= most && w < long {
			fill(on, s, false)
		}
	}
}

func width(s [2]int, n int) int { return (s[1]-s[0]+n)%n + 1 }

func fill(on []bool, s [2]int, v bool) {
	for k := range width(s, len(on)) {
		on[(s[0]+k)%len(on)] = v
	}
}

func all(on []bool) bool {
	for _, x := range on {
		if !x {
			return false
		}
	}
	return len(on) > 0
}

// spans lists the runs of on in the circle as first and last sample.
func spans(on []bool) [][2]int {
	n := len(on)
	if n == 0 {
		return nil
	}
	if all(on) {
		return [][2]int{{0, n - 1}}
	}
	var out [][2]int
	for i := range on {
		if on[i] && !on[(i+n-1)%n] {
			j := i
			for on[(j+1)%n] {
				j++
			}
			out = append(out, [2]int{i, j % n})
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i][0] < out[j][0] })
	return out
}
