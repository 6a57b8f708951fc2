package shade

import (
	"bytes"
	"encoding/csv"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"bedweek/internal/geom"
)

// mesh is one object read back from scene.obj.
type mesh struct {
	name string
	tri  [][3]geom.Vec
}

// readOBJ reads triangles by the open text format's own rules: corners are
// counted from 1 through the whole file.
func readOBJ(t *testing.T, text string) []mesh {
	var out []mesh
	at := []geom.Vec{{}}
	for _, l := range strings.Split(text, "\n") {
		f := strings.Fields(l)
		switch {
		case len(f) == 2 && f[0] == "o":
			out = append(out, mesh{name: f[1]})
		case len(f) == 4 && f[0] == "v":
			at = append(at, geom.Vec{X: number(t, f[1]), Y: number(t, f[2]), Z: number(t, f[3])})
		case len(f) == 4 && f[0] == "f":
			m := &out[len(out)-1]
			m.tri = append(m.tri, [3]geom.Vec{at[int(number(t, f[1]))], at[int(number(t, f[2]))], at[int(number(t, f[3]))]})
		case len(f) > 0 && f[0] != "#":
			t.Fatalf("scene.obj: %q", l)
		}
	}
	return out
}

func number(t *testing.T, s string) float64 {
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// meets is the ray and triangle test of Möller and Trumbore, 1997.
func meets(o, d geom.Vec, tri [3]geom.Vec) bool {
	e1, e2 := tri[1].Sub(tri[0]), tri[2].Sub(tri[0])
	p := d.Cross(e2)
	det := e1.Dot(p)
	if math.Abs(det) < 1e-14 {
		return false
	}
	s := o.Sub(tri[0])
	u := s.Dot(p) / det
	q := s.Cross(e1)
	v := d.Dot(q) / det
	return u >= 0 && v >= 0 && u+v <= 1 && e2.Dot(q)/det > 1e-7
}

func written(t *testing.T, write func(io.Writer) error) string {
	var b bytes.Buffer
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func table(t *testing.T, text, head string) [][]string {
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil || strings.Join(rows[0], ",") != head {
		t.Fatalf("%v, %v: want %s", err, rows[0], head)
	}
	return rows[1:]
}

// Someone who knows only the five files comes to the same answers.
func TestExportIsEnoughForAnotherTracer(t *testing.T) {
	bodies := []Body{
		Gable("shed, old", 1, -3, 30, 3, 2, 0, 2, 2.9, 0.5), Tree("plum", -3, -3, 3, 5, 1.5, 0.2, 0.7, 4, 10),
		Sheet("net", 0, 1.2, 0, 2, 0.3, 1.5, 0.6), Sheet("net", 0.3, 1.4, 10, 2, 0.3, 1.5, 0.6),
		Conifer("fir", 4, 1, 2, 0.2, 4, 0), Mound("bush", -2.5, 1, 1.5, 0, 1, 0.1), Arch("tunnel", 2.5, 3, 20, 1, 1.5, 0, 1, 0.8),
		Box("gone", 0, 0, 0, 3, 3, 0, 3).Between(1, 2), Parasol("parasol", -1, -1, 2, 1.5, 200, 60, 0.4), Ball("ball", 2, -1, 0.5, 0.5, 0),
	}
	surfaces := []Surface{level(1, 0.6, 0.3), TiltedSurface("pockets", geom.Vec{X: -1, Y: 0.5, Z: 0.8}, 200, 70, 0.5, 0.4)}
	surfaces[0].Name = "long, bed"
	c := NewCourse(seattle, YearStart(2025), 52, Looks{48, 600}, []float64{3, 4})
	e := &Export{Field: NewField(c, surfaces, bodies, false, 1), Bodies: bodies, Weeks: []int{1, 25},
		Group: func(w int) string { return "W" + strconv.Itoa(w+1) },
		Skip:  func(s, i, j int) bool { return s == 0 && i == 0 }}
	scene := readOBJ(t, written(t, e.SceneOBJ))
	passes := map[string]float64{}
	for _, r := range table(t, written(t, e.TransmittanceCSV), "name,value") {
		passes[r[0]] = number(t, r[1])
	}
	type receptor struct{ at, n geom.Vec }
	receptors := map[string]receptor{}
	for _, r := range table(t, written(t, e.ReceptorsCSV), "id,x,y,z,nx,ny,nz,surface") {
		v := [6]float64{}
		for i := range v {
			v[i] = number(t, r[i+1])
		}
		receptors[r[0]] = receptor{geom.Vec{X: v[0], Y: v[1], Z: v[2]}, geom.Vec{X: v[3], Y: v[4], Z: v[5]}}
	}
	if len(receptors) != 9*6+5*4 {
		t.Errorf("%d receptors, want 74", len(receptors))
	}
	steps := map[string][][]string{}
	for _, r := range table(t, written(t, e.SunCSV), "group,step,azimuth_deg,elevation_deg,hours,direct_mol_m2_h,diffuse_mol_m2_h") {
		steps[r[0]] = append(steps[r[0]], r)
	}
	answers := table(t, written(t, e.LightCSV), "id,group,hours_opaque,hours,sky_view,mol_m2_day")
	if len(answers) != 2*len(receptors) || len(steps) != 2 {
		t.Fatalf("%d answers for %d receptors and %d groups", len(answers), len(receptors), len(steps))
	}
	opaqueOff, hoursOff, molOff, least := 0.0, 0.0, 0.0, math.Inf(1)
	for _, a := range answers {
		r := receptors[a[0]]
		opaque, hours, mol := 0.0, 0.0, 0.0
		for _, s := range steps[a[1]] {
			d := geom.Direction(number(t, s[2]), number(t, s[3]))
			cos := d.Dot(r.n)
			long := number(t, s[4])
			mol += number(t, s[6]) * long * number(t, a[4])
			if cos <= 0 {
				continue
			}
			share, free := 1.0, 1.0
			for _, m := range scene {
				for _, tri := range m.tri {
					if !meets(r.at, d, tri) {
						continue
					}
					v, ok := passes[m.name+"@"+a[1]]
					if !ok {
						v, ok = passes[m.name]
					}
					if !ok {
						t.Fatalf("no value for %s", m.name)
					}
					share *= v
					free = 0
					break
				}
			}
			opaque += free * long
			hours += share * long
			mol += number(t, s[5]) * long * cos * share
		}
		opaqueOff += math.Abs(opaque-number(t, a[2])) / float64(len(answers))
		hoursOff += math.Abs(hours-number(t, a[3])) / float64(len(answers))
		molOff += math.Abs(mol-number(t, a[5])) / float64(len(answers))
		least = min(least, number(t, a[2])-number(t, a[3]))
	}
	t.Logf("off by %.4f h opaque, %.4f h, %.4f mol in the mean", opaqueOff, hoursOff, molOff)
	if opaqueOff > 0.02 || hoursOff > 0.02 || molOff > 0.1 {
		t.Errorf("off by %.4f h opaque, %.4f h, %.4f mol in the mean", opaqueOff, hoursOff, molOff)
	}
	if least >= 0 {
		t.Error("half-clear bodies make no difference between hours and hours_opaque")
	}
}
