package web

import (
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

// spaceStanding writes what stands. A line not touched stays as it is; ids
// of plantings behind one taken out are written down, so that their past
// stays with them.
func (s *site) spaceStanding(p *FormPage, d *described, f, before spaceFields, was garden.Value, at func(string) []string, guesses *[]string) {
	typed, had := lines(f.standing), lines(before.standing)
	if f.isNew {
		had = nil
	}
	if slices.Equal(typed, had) {
		return
	}
	guessed := false
	var fresh []garden.Value
	for _, l := range typed {
		v, blank, bad := garden.SayStanding(l, d.book, d.g.Place.LatDeg < 0)
		if len(bad) > 0 {
			if k, _ := kindOf(f.kind); v.Get("crop") == "" && k.depth != "" {
				bad = append(bad, garden.Said{Words: "If it is none of ours, write it under “Something else that stands here”, below."})
				p.open("others")
			}
			p.said("standing", bad)
			continue
		}
		if words := s.beforeItsSoil(d, f, v); words != "" && !slices.Contains(had, l) {
			p.said("standing", []garden.Said{{Words: words}})
			continue
		}
		if blank.Count {
			v = v.With("count", garden.Text(fmt.Sprint(s.usualCount(v.Get("crop"), f))))
			guessed = true
		}
		if blank.Since {
			v = v.With("since", garden.Text(s.usualSince(v.Get("crop"), d.today)))
			guessed = true
		}
		fresh = append(fresh, v)
	}
	if p.Faults["standing"] != "" {
		return
	}
	if guessed && !isGuessed(*guesses, "standing") {
		*guesses = append(*guesses, "standing")
	} else if !guessed {
		*guesses = slices.DeleteFunc(*guesses, func(g string) bool { return g == "standing" })
	}
	old := was.At("standing").List()
	sp, _ := d.g.Space(garden.SpaceID(f.id))
	path := at("standing")
	switch {
	case len(old) == 0:
		p.list(fresh, path...)
	case len(typed) >= len(had): // lines changed in place, then lines added
		for i, v := range fresh {
			step := append(slices.Clone(path), fmt.Sprint(i))
			if i >= len(old) {
				p.set(v, append(slices.Clone(path), garden.New)...)
				continue
			}
			if typed[i] == had[i] {
				continue
			}
			for _, key := range []string{"crop", "variety", "one of", "since", "set out", "count", "looks", "keep"} {
				if a, b := old[i].At(key), v.At(key); !sameValue(a, b) {
					if !v.Has(key) {
						p.put("", append(slices.Clone(step), key)...)
						continue
					}
					p.set(b, append(slices.Clone(step), key)...)
				}
			}
		}
	default: // lines taken out: keep the others' ids
		var items []garden.Value
		for _, v := range fresh {
			for j, l := range had {
				if garden.StandingLine(v) == l && j < len(sp.Standing) {
					v = old[j]
					if !v.Has("id") {
						v.Pairs = append([]garden.KeyValue{{Key: "id", Value: garden.Text(sp.Standing[j].ID)}}, v.Pairs...)
					}
					break
				}
			}
			items = append(items, v)
		}
		p.list(items, path...)
	}
	if d.g.From != 0 && d.g.From < d.today { // what stands now is told of today
		p.put(d.today.Long(), "from")
	}
}

// beforeItsSoil says that a planting is older than the soil it is said to stand
// in; "" when it is not, or when that is not known. What lives for years is
// often given new soil, so it may be older.
func (s *site) beforeItsSoil(d *described, f spaceFields, v garden.Value) string {
	if c, ok := s.o.Entry.Book.Crop(crop.ID(v.Get("crop"))); ok && c.Perennial {
		return ""
	}
	b, ok := d.g.Batch(garden.BatchID(f.medium))
	when, known := garden.When(or(v.Get("set out"), v.Get("since")), d.g.Place.LatDeg < 0)
	if !ok || !known || b.Since == 0 || when.Late.Year() >= b.Since {
		return ""
	}
	return fmt.Sprintf("The %s began in %d, and its soil was filled in %d. Correct one of the two; for a plant moved in with its roots give the day it was set out here.",
		v.Get("crop"), when.Late.Year(), b.Since)
}

func sameValue(a, b garden.Value) bool {
	if a.Text != b.Text || len(a.Items) != len(b.Items) {
		return false
	}
	for i := range a.Items {
		if !sameValue(a.Items[i], b.Items[i]) {
			return false
		}
	}
	return true
}

// usualCount is half of what the space would hold of a crop, at least one.
func (s *site) usualCount(id string, f spaceFields) int {
	c, ok := s.o.Entry.Book.Crop(crop.ID(id))
	v, bad := garden.SaySize(f.size)
	if !ok || len(bad) > 0 || !c.SpacingM.Known() || c.SpacingM.Value <= 0 {
		return 1
	}
	_, _, area, ok := garden.Box(v)
	if !ok {
		return 1
	}
	return max(1, min(200, int(area/(c.SpacingM.Value*c.SpacingM.Value)/2)))
}

// usualSince is the last half year, or two years for what stands for years.
func (s *site) usualSince(id string, today cal.Day) string {
	back := cal.Day(180)
	if c, ok := s.o.Entry.Book.Crop(crop.ID(id)); ok && c.Perennial {
		back = 730
	}
	return (today - back).Long() + " to " + today.Long()
}
