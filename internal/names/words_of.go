package names

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// nameOf is a crop with its variety, or with what it may be.
func nameOf(crop, variety string, oneOf []string) string {
	switch {
	case variety != "":
		return crop + ", " + variety
	case len(oneOf) > 0:
		return crop + ", one of " + orList(oneOf)
	}
	return crop
}

func orList(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:len(words)-1], ", ") + " or " + words[len(words)-1]
}

func percent(x float64) string { return fmt.Sprintf("%.0f %%", 100*x) }

func percents(a, b float64) string { return fmt.Sprintf("%.0f to %.0f %%", 100*a, 100*b) }

func years(l Life) string {
	if l.Low == l.High {
		if l.Low == 1 {
			return "1 year"
		}
		return fmt.Sprintf("%.0f years", l.Low)
	}
	return fmt.Sprintf("%.0f to %.0f years", l.Low, l.High)
}

func yearsOld(n int) string {
	switch n {
	case 0:
		return "This year’s seed, less than a year"
	case 1:
		return "1 year"
	}
	return strconv.Itoa(n) + " years"
}

func plantsOf(n int) string {
	if n == 1 {
		return "1 plant"
	}
	return strconv.Itoa(n) + " plants"
}

func thousands(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}

func capital(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// twenty shares twenty dots by weight: whole dots, largest remainders first.
func twenty(weights []float64) []int {
	sum := 0.0
	for _, w := range weights {
		sum += w
	}
	out := make([]int, len(weights))
	left := 20
	rest := make([]float64, len(weights))
	for i, w := range weights {
		share := 20 * w / sum
		out[i] = int(math.Floor(share + 1e-9))
		rest[i] = share - float64(out[i])
		left -= out[i]
	}
	for ; left > 0; left-- {
		best := 0
		for i := range rest {
			if rest[i] > rest[best]+1e-9 {
				best = i
			}
		}
		out[best]++
		rest[best] = -1
	}
	return out
}
