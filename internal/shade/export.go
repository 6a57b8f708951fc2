package shade

import (
	"bufio"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"bedweek/internal/geom"
)

// exportSides is how many flat pieces a round body is written with.
const exportSides = 64

// farM is how far off a skyline is drawn.
const farM = 50e3

// Export writes a field's scene, receptors, suns and answers in plain files,
// so that any ray tracer can be set the same task. Weeks are told as groups.
//
// A ray is to be followed from a receptor towards the sun, and multiplied once
// by the value of each object it meets, however often it meets it. Directions
// of light.csv's sky view are even over the sky, cosine-weighted.
type Export struct {
	Field  *Field
	Bodies []Body
	Weeks  []int              // which weeks, counted from 0
	Group  func(w int) string // a week's name
	Skip   func(s, i, j int) bool
}

// object is one part with its name.
type object struct {
	name string
	part Part
}

// objects names each part that stands in some of the weeks: letters, digits,
// dashes and underlines only, no two alike.
func (e *Export) objects() []object {
	var out []object
	used := map[string]bool{}
	for _, b := range e.Bodies {
		for i, p := range b.Parts {
			if !e.stands(p) {
				continue
			}
			name := b.Name
			if len(b.Parts) > 1 {
				if p.Name != "" {
					name += " " + p.Name
				} else {
					name += " " + strconv.Itoa(i+1)
				}
			}
			name = plainName(name)
			for n, base := 2, name; used[name]; n++ {
				name = base + "_" + strconv.Itoa(n)
			}
			used[name] = true
			out = append(out, object{name, p})
		}
	}
	return out
}

func (e *Export) stands(p Part) bool {
	for _, w := range e.Weeks {
		if p.PassesOn(e.Field.Day(w)) < 1 {
			return true
		}
	}
	return false
}

func plainName(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '-':
			return r
		}
		return '_'
	}, s)
	if s == "" {
		return "body"
	}
	return s
}

// SceneOBJ writes scene.obj: triangles, one object for each part, in metres, x
// east, y north, z up.
func (e *Export) SceneOBJ(w io.Writer) error {
	b := bufio.NewWriter(w)
	fmt.Fprintln(b, "# metres; X east, Y north, Z up")
	base := 1
	for _, o := range e.objects() {
		at, faces := geom.Faces(o.part.Solid, exportSides)
		if k, ok := o.part.Solid.(geom.Skyline); ok {
			at, faces = ringOf(k)
		}
		fmt.Fprintf(b, "o %s\n", o.name)
		for _, v := range at {
			fmt.Fprintf(b, "v %.6f %.6f %.6f\n", v.X, v.Y, v.Z)
		}
		for _, f := range faces {
			for i := 1; i+1 < len(f); i++ {
				fmt.Fprintf(b, "f %d %d %d\n", base+f[0], base+f[i], base+f[i+1])
			}
		}
		base += len(at)
	}
	return b.Flush()
}

// ringOf draws a skyline as a wall far off, a piece to each degree.
func ringOf(k geom.Skyline) (at []geom.Vec, faces [][]int) {
	const pieces = 360
	for i := range pieces {
		f := float64(i) / pieces * float64(len(k))
		j := int(f)
		a, b := k[j%len(k)], k[(j+1)%len(k)]
		deg := a + (b-a)*(f-float64(j))
		d := geom.Direction(float64(i), 0).Scale(farM)
		top := d
		top.Z = farM * math.Tan(deg*math.Pi/180)
		d.Z = -farM / 10
		at = append(at, d, top)
		n := (i + 1) % pieces
		faces = append(faces, []int{2 * i, 2*i + 1, 2*n + 1, 2 * n})
	}
	return at, faces
}

// TransmittanceCSV writes transmittance.csv: name, value. For a part whose
// share changes over the weeks written, the plain name has its least share,
// and name@group that of each week which differs from it.
func (e *Export) TransmittanceCSV(w io.Writer) error {
	rows := [][]string{{"name", "value"}}
	for _, o := range e.objects() {
		least := 1.0
		for _, k := range e.Weeks {
			least = min(least, o.part.PassesOn(e.Field.Day(k)))
		}
		rows = append(rows, []string{o.name, num(least, 4)})
		for _, k := range e.Weeks {
			if t := o.part.PassesOn(e.Field.Day(k)); t != least {
				rows = append(rows, []string{o.name + "@" + e.Group(k), num(t, 4)})
			}
		}
	}
	return writeCSV(w, rows)
}

// ReceptorsCSV writes receptors.csv: id, place, unit normal, surface.
func (e *Export) ReceptorsCSV(w io.Writer) error {
	rows := [][]string{{"id", "x", "y", "z", "nx", "ny", "nz", "surface"}}
	e.cells(func(s, i, j int, id string) {
		f := e.Field.surfaces[s]
		p, n := f.Cell(i, j), f.Normal()
		rows = append(rows, []string{id, num(p.X, 6), num(p.Y, 6), num(p.Z, 6), num(n.X, 6), num(n.Y, 6), num(n.Z, 6), f.Name})
	})
	return writeCSV(w, rows)
}

// SunCSV writes sun.csv: for each step of each week's day the middle of the
// step's course, its length in hours, the direct light on a face turned to
// the sun and the diffuse light on open level ground, mol/m² an hour.
func (e *Export) SunCSV(w io.Writer) error {
	rows := [][]string{{"group", "step", "azimuth_deg", "elevation_deg", "hours", "direct_mol_m2_h", "diffuse_mol_m2_h"}}
	c := e.Field.course
	for _, k := range e.Weeks {
		for i := c.first[k]; i < c.first[k+1]; i++ {
			r := &c.rays[i]
			rows = append(rows, []string{e.Group(k), strconv.Itoa(i - c.first[k] + 1),
				num(r.d.BearingDeg(), 5), num(r.d.ElevationDeg(), 5), num(r.hours, 6),
				num(r.mol[1]/r.hours, 6), num(c.skyPerHour(k, i), 6)})
		}
	}
	return writeCSV(w, rows)
}

// skyPerHour is the mean sky's diffuse light in a step of week k, which goes
// with the sine of the sun's elevation ([LiuJordan1960]).
func (c *Course) skyPerHour(k, ray int) float64 {
	sum := 0.0
	for i := c.first[k]; i < c.first[k+1]; i++ {
		sum += c.rays[i].d.Z * c.rays[i].hours
	}
	return c.weeks[k].sky[1] * c.rays[ray].d.Z / sum
}

// LightCSV writes light.csv: our answers. hours_opaque takes every object as
// opaque; hours multiplies by what each lets through; mol_m2_day is the sum of
// direct light times the cosine to the receptor's normal times what is let
// through, and of diffuse light times sky_view.
func (e *Export) LightCSV(w io.Writer) error {
	rows := [][]string{{"id", "group", "hours_opaque", "hours", "sky_view", "mol_m2_day"}}
	for _, k := range e.Weeks {
		l := e.Field.Week(k)
		e.cells(func(s, i, j int, id string) {
			c := l.Cell(s, i, j)
			rows = append(rows, []string{id, e.Group(k), num(c.HoursOpaque, 4), num(c.Hours, 4), num(c.SkyView, 5), num(c.MolMean, 4)})
		})
	}
	return writeCSV(w, rows)
}

// cells visits every cell that counts, in order.
func (e *Export) cells(visit func(s, i, j int, id string)) {
	for s, f := range e.Field.surfaces {
		nu, nv := f.Grid()
		for j := range nv {
			for i := range nu {
				if f.Counts(i, j) && (e.Skip == nil || !e.Skip(s, i, j)) {
					visit(s, i, j, fmt.Sprintf("%s:%d:%d", plainName(f.Name), i, j))
				}
			}
		}
	}
}

func writeCSV(w io.Writer, rows [][]string) error {
	c := csv.NewWriter(w)
	if err := c.WriteAll(rows); err != nil {
		return fmt.Errorf("writing rows: %w", err)
	}
	return nil
}

// num writes a number with some decimals, without a negative nought.
func num(v float64, decimals int) string {
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}
