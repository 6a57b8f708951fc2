package season

// RentWeeks is the window over which ground is priced. Prices of single weeks
// are spiky and often 0; over four weeks they say something.
const RentWeeks = 4

// Rent is what the ground of a space is worth over a window of weeks, by the
// prices of a certificate.
type Rent struct {
	Space, Week int     // first week of the window
	Weeks       int     // RentWeeks, fewer at the plan's end
	Meals       float64 // of all of the space for the whole window
	PerM2       float64 // of a square metre of it, root room and all
}

// Rents prices the ground of each space window by window: its area and root
// room, at the prices of c. They explain where ground is scarce; what a change
// is worth comes from planning again.
func Rents(p *Problem, c *Certificate) []Rent {
	var out []Rent
	for i := range p.Spaces {
		s := &p.Spaces[i]
		for from := 0; from < p.Weeks; from += RentWeeks {
			r := Rent{Space: i, Week: from, Weeks: min(RentWeeks, p.Weeks-from)}
			for w := from; w < from+r.Weeks; w++ {
				r.Meals += c.Halves[i][w] + float64(2*c.Thirds[i][w]) + float64(s.AreaM2*c.Room[i][area][w]) + float64(s.VolumeL*c.Room[i][volume][w])
			}
			if s.AreaM2 > 0 {
				r.PerM2 = r.Meals / s.AreaM2
			}
			out = append(out, r)
		}
	}
	return out
}
