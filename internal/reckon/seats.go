package reckon

import (
	"slices"
	"sort"
)

// Seat is a place to sit from which something of the day's work is reached.
type Seat struct {
	Space string // beside which the seat stands
	Name  string
	Tasks int // of the day, within its reach
}

// Seats lists from where a person, or anybody for "", reaches something to do
// today without moving, the most first. Of seats that reach the same work only
// the first in walking order is told.
func (d *Day) Seats(person string) []Seat {
	who, known := d.person(person)
	told := map[string]bool{}
	var out []Seat
	for _, sp := range d.Spaces {
		seat, reached := Seat{Space: sp.ID, Name: sp.Name}, ""
		for _, t := range d.Today {
			if slices.Contains(sp.Near, t.Space) && !outOfReach(t, who, known) {
				seat.Tasks++
				reached += t.ID + " "
			}
		}
		if seat.Tasks > 0 && !told[reached] {
			told[reached] = true
			out = append(out, seat)
		}
	}
	sort.SliceStable(out, func(a, b int) bool { return out[a].Tasks > out[b].Tasks })
	return out
}

func outOfReach(t Task, who PersonDay, known bool) bool {
	return known && slices.ContainsFunc(t.Reach, func(r Reach) bool { return r.Person == who.Name && !r.OK })
}
