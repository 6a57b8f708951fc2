package reckon

import (
	"math"
	"slices"
	"sort"
	"strings"

	"bedweek/internal/season"
)

// A household that wants alliums does not want one crop for all of them. Of one
// crop the plan starts no more than serves this share of what is wanted of its
// food until the plan's end; a food of one crop has no such limit. Common
// practice in kind, the shares are ours.
const (
	shareOfMany = 0.5
	shareOfTwo  = 0.75
)

// mixFoods limits how many plants of each crop are started. Pots at hand are outside it; musts and locks are never below it.
func (m *model) mixFoods() {
	for food, crops := range m.byFood() {
		share := shareOfMany
		switch len(crops) {
		case 1:
			continue
		case 2:
			share = shareOfTwo
		}
		wanted := 0.0
		for _, w := range m.p.Foods[food].Want {
			wanted += w
		}
		for crop, options := range crops {
			m.limitCrop(crop, options, share*wanted)
		}
	}
}

// byFood lists the options of each crop under the food it is eaten as, without
// flowers and without those that use pots at hand.
func (m *model) byFood() map[int]map[string][]int {
	out := map[int]map[string][]int{}
	for i, o := range m.p.Options {
		if o.Food < 0 || o.Food == m.bees || isTray(o) {
			continue
		}
		if out[o.Food] == nil {
			out[o.Food] = map[string][]int{}
		}
		out[o.Food][o.Crop] = append(out[o.Food][o.Crop], i)
	}
	return out
}

// limitCrop allows as many plants as give so many meals, counted by a start
// that three in four do not surpass.
func (m *model) limitCrop(crop string, options []int, meals float64) {
	each := make([]float64, len(options))
	for k, i := range options {
		each[k] = mealsOf(&m.p.Options[i])
	}
	sort.Float64s(each)
	typical := each[len(each)*3/4]
	if typical <= 0 {
		return
	}
	most := int(math.Ceil(meals / typical))
	for _, q := range m.p.Musts {
		if q.Crop == crop {
			most = max(most, q.Plants)
		}
	}
	locked := 0
	for _, l := range m.p.Locks {
		if o := m.p.Options[l.Option]; o.Crop == crop && !isTray(o) {
			locked += l.Plants
		}
	}
	group := "crop." + crop
	m.p.Totals[group] = max(most, locked)
	for _, i := range options {
		m.p.Options[i].AlsoTotal = group
	}
}

// mealsOf is what a plant of an option gives, mean over the futures.
func mealsOf(o *season.Option) float64 {
	sum := 0.0
	for _, row := range o.Meals {
		for _, v := range row {
			sum += float64(v)
		}
	}
	return sum / float64(max(len(o.Meals), 1))
}

// raised names the pots at hand that a must is met from: a person who raised
// them does not sow the same again. None where they are too few for it, or no
// week comes to set them out.
func (m *model) raised(q season.Must) []string {
	var groups []string
	pots := 0
	for _, o := range m.p.Options {
		if o.Crop != q.Crop || q.Space >= 0 && o.Space != q.Space || !isTray(o) || slices.Contains(groups, o.MaxTotal) {
			continue
		}
		groups = append(groups, o.MaxTotal)
		pots += m.p.Totals[o.MaxTotal]
	}
	if pots < q.Plants {
		return nil
	}
	return groups
}

// isTray reports whether an option sets out pots at hand.
func isTray(o season.Option) bool { return strings.HasPrefix(o.MaxTotal, "tray.") }
