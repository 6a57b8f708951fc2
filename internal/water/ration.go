package water

import "sort"

// Need is what a space wants when water is short.
type Need struct {
	ID     string
	Litres float64
	Rank   int     // higher goes first: see the Rank constants
	DryH   float64 // hours until it is dry
}

// Ranks of need. Water short at transplanting, flowering and filling costs
// most: University of California drought slides.
const (
	RankOver   = -1 // finished, or not wanted
	RankGrown  = 0  // leaves and roots well on
	RankYoung  = 1  // seed, seedlings, newly set out
	RankBlooms = 2  // flowering, setting, filling
)

// Share is what a space gets of a ration.
type Share struct {
	ID            string
	WantL, GivenL float64
}

// Ration deals out allowedL, to the highest rank first and within a rank to
// who dries first; ties by ID. Those who get less than they want stand last.
func Ration(allowedL float64, needs []Need) []Share {
	order := append([]Need(nil), needs...)
	sort.SliceStable(order, func(a, b int) bool {
		x, y := order[a], order[b]
		switch {
		case x.Rank != y.Rank:
			return x.Rank > y.Rank
		case x.DryH != y.DryH:
			return x.DryH < y.DryH
		}
		return x.ID < y.ID
	})
	var out []Share
	for _, n := range order {
		give := max(0, min(allowedL, n.Litres))
		allowedL -= give
		out = append(out, Share{n.ID, n.Litres, give})
	}
	return out
}
