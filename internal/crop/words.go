package crop

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
)

// wordKey is a line of a crop that is not a figure. set returns what is wrong
// with the text, "" when it was taken; get gives the text back, "" to leave
// the line out.
type wordKey struct {
	name string
	set  func(c *Crop, s string) string
	get  func(c *Crop) string
}

// wordKeys lists the plain lines in the order a file gives them. The figures
// stand before "batch", except "ref" and "meal-kg", which stand among them.
func wordKeys() []wordKey {
	return []wordKey{
		text("name", func(c *Crop) *string { return &c.Name }),
		text("name-uk", func(c *Crop) *string { return &c.NameUK }),
		list("also", func(c *Crop) *[]string { return &c.Also }, nil),
		text("latin", func(c *Crop) *string { return &c.Latin }),
		text("family", func(c *Crop) *string { return &c.Family }),
		list("foods", func(c *Crop) *[]string { return &c.Foods }, foodNames()),
		oneOf("class", func(c *Crop) *string { return &c.Class }, classes()),
		{"season", func(c *Crop, s string) string {
			if s != "warm" && s != "cool" {
				return "not a season: warm or cool"
			}
			c.Warm = s == "warm"
			return ""
		}, func(c *Crop) string {
			if c.Warm {
				return "warm"
			}
			return "cool"
		}},
		oneOf("hardiness", func(c *Crop) *string { return &c.Hardiness }, hardinesses()),
		yes("perennial", func(c *Crop) *bool { return &c.Perennial }),
		{"ways", setWays, func(c *Crop) string {
			var out []string
			for _, w := range c.Ways {
				out = append(out, string(w))
			}
			return strings.Join(out, ", ")
		}},
		{"harvest", func(c *Crop, s string) string {
			if !slices.Contains([]Harvest{Once, CutAgain, Fruiting, Flush, Bloom}, Harvest(s)) {
				return "not a way of picking: once, cut again, fruiting, flush or bloom"
			}
			c.Harvest = Harvest(s)
			return ""
		}, func(c *Crop) string { return string(c.Harvest) }},
		text("poison", func(c *Crop) *string { return &c.Poison }),
		oneOf("habit", func(c *Crop) *string { return &c.Habit }, habits()),
		oneOf("support", func(c *Crop) *string { return &c.Support }, []string{"helpful", "needed"}),
		// "emergence" and "emergence-like" are set by the reader, which holds the tables.
		{"emergence", nil, func(c *Crop) string {
			if c.GermOwn {
				return c.GermTable
			}
			return ""
		}},
		{"emergence-like", nil, func(c *Crop) string {
			if c.GermOwn {
				return ""
			}
			return c.GermTable
		}},
		number("ref", func(c *Crop) *float64 { return &c.RefC }, 1, 40),
		number("meal-kg", func(c *Crop) *float64 { return &c.MealKg }, 0.0005, 2),
		yes("bee-set", func(c *Crop) *bool { return &c.BeeSet }),
		{"block", func(c *Crop, s string) string {
			n, err := strconv.Atoi(s)
			if err != nil || n < 2 || n > 1000 {
				return "not a number of plants from 2 to 1000"
			}
			c.Block = n
			return ""
		}, func(c *Crop) string {
			if c.Block == 0 {
				return ""
			}
			return strconv.Itoa(c.Block)
		}},
		{"batch", setBatch, func(c *Crop) string {
			if c.BatchMax == 0 {
				return ""
			}
			return fmt.Sprintf("%d %d", c.BatchMin, c.BatchMax)
		}},
		{"minutes", setMinutes, func(c *Crop) string {
			return strings.Join([]string{show(c.MinutesStart), show(c.MinutesWeek), show(c.MinutesPick)}, " ")
		}},
		yes("winter", func(c *Crop) *bool { return &c.Winter }),
		yes("autumn-plant", func(c *Crop) *bool { return &c.AutumnPlant }),
		yes("dormant", func(c *Crop) *bool { return &c.Dormant }),
		yes("crown", func(c *Crop) *bool { return &c.Crown }),
		yes("asked", func(c *Crop) *bool { return &c.Asked }),
		text("note", func(c *Crop) *string { return &c.Note }),
	}
}

func text(name string, at func(*Crop) *string) wordKey {
	return wordKey{name,
		func(c *Crop, s string) string { *at(c) = s; return "" },
		func(c *Crop) string { return *at(c) }}
}

func oneOf(name string, at func(*Crop) *string, allowed []string) wordKey {
	return wordKey{name,
		func(c *Crop, s string) string {
			if !slices.Contains(allowed, s) {
				return "not one of: " + strings.Join(allowed, ", ")
			}
			*at(c) = s
			return ""
		},
		func(c *Crop) string { return *at(c) }}
}

// list takes words parted by commas; allowed nil takes any.
func list(name string, at func(*Crop) *[]string, allowed []string) wordKey {
	return wordKey{name,
		func(c *Crop, s string) string {
			var out []string
			for _, w := range strings.Split(s, ",") {
				w = strings.TrimSpace(w)
				switch {
				case w == "":
					return "an empty word between commas"
				case allowed != nil && !slices.Contains(allowed, w):
					return fmt.Sprintf("%q is not one of: %s", w, strings.Join(allowed, ", "))
				case slices.Contains(out, w):
					return fmt.Sprintf("%q is given twice", w)
				}
				out = append(out, w)
			}
			*at(c) = out
			return ""
		},
		func(c *Crop) string { return strings.Join(*at(c), ", ") }}
}

func yes(name string, at func(*Crop) *bool) wordKey {
	return wordKey{name,
		func(c *Crop, s string) string {
			if s != "yes" && s != "no" {
				return "write yes or no"
			}
			*at(c) = s == "yes"
			return ""
		},
		func(c *Crop) string {
			if *at(c) {
				return "yes"
			}
			return ""
		}}
}

func number(name string, at func(*Crop) *float64, min, max float64) wordKey {
	return wordKey{name,
		func(c *Crop, s string) string {
			v, ok := parseNumber(s)
			if !ok {
				return "not a number"
			}
			if v < min || v > max {
				return fmt.Sprintf("impossible: %s is not between %s and %s", show(v), show(min), show(max))
			}
			*at(c) = v
			return ""
		},
		func(c *Crop) string {
			if *at(c) == 0 {
				return ""
			}
			return show(*at(c))
		}}
}

func setWays(c *Crop, s string) string {
	var out []Way
	for _, w := range strings.Split(s, ",") {
		way := Way(strings.TrimSpace(w))
		if way != Sow && way != SetOut && way != Plant {
			return fmt.Sprintf("%q is not a way of starting: sow outdoors, set out or plant", string(way))
		}
		if slices.Contains(out, way) {
			return fmt.Sprintf("%q is given twice", string(way))
		}
		out = append(out, way)
	}
	c.Ways = out
	return ""
}

func setBatch(c *Crop, s string) string {
	f := strings.Fields(s)
	if len(f) != 2 {
		return "write the smallest and the largest number of plants"
	}
	lo, err1 := strconv.Atoi(f[0])
	hi, err2 := strconv.Atoi(f[1])
	if err1 != nil || err2 != nil || lo < 1 || hi > 10000 {
		return "not two numbers of plants from 1 to 10000"
	}
	if lo > hi {
		return "upside down: the smallest batch is larger than the largest"
	}
	c.BatchMin, c.BatchMax = lo, hi
	return ""
}

func setMinutes(c *Crop, s string) string {
	f := strings.Fields(s)
	if len(f) != 3 {
		return "write three numbers: to start a batch, a plant and week, a round of picking"
	}
	var v [3]float64
	for i := range f {
		x, ok := parseNumber(f[i])
		if !ok || x < 0 || x > 600 {
			return "not minutes from 0 to 600"
		}
		v[i] = x
	}
	c.MinutesStart, c.MinutesWeek, c.MinutesPick = v[0], v[1], v[2]
	return ""
}

// parseNumber takes a plain decimal number; no infinities and no hexadecimal.
func parseNumber(s string) (float64, bool) {
	if s == "" || strings.Trim(s, "+-.0123456789eE") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsInf(v, 0) || math.IsNaN(v) {
		return 0, false
	}
	return v, true
}

// show writes a number so that reading it gives the same number.
func show(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }
