package verify

import (
	_ "embed"
	"encoding/csv"
	"sort"
	"strconv"
	"strings"
)

//go:embed data/barley.csv
var barleyText string

// barleyName is how the cases name the data set that ships with the program.
const barleyName = "vega-datasets 3.2.1 barley.json"

// barley returns the yields of a year by variety and site, each in order of
// name; ok is false when the year is not there or a yield is missing.
func barley(year int) (yields [][]float64, ok bool) {
	r := csv.NewReader(strings.NewReader(barleyText))
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil || len(lines) == 0 {
		return nil, false
	}
	cell := map[[2]string]float64{}
	varieties, sites := map[string]bool{}, map[string]bool{}
	for _, l := range lines[1:] {
		y, err := strconv.ParseFloat(l[3], 64)
		if err != nil {
			return nil, false
		}
		if l[0] == strconv.Itoa(year) {
			cell[[2]string{l[1], l[2]}] = y
			varieties[l[1]], sites[l[2]] = true, true
		}
	}
	for _, v := range inOrder(varieties) {
		var row []float64
		for _, s := range inOrder(sites) {
			y, there := cell[[2]string{v, s}]
			if !there {
				return nil, false
			}
			row = append(row, y)
		}
		yields = append(yields, row)
	}
	return yields, len(yields) > 0
}

func inOrder(names map[string]bool) []string {
	out := make([]string, 0, len(names))
	for n := range names {
		out = append(out, n)
	}
	sort.Strings(out)
	return out
}
