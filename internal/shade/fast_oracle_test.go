package shade

import (
	"flag"
	"math"
	"math/rand/v2"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

var (
	oracleSeed   = flag.Uint64("seed", 1, "first seed of the random scenes")
	oracleScenes = flag.Int("scenes", 8, "how many random scenes")
)

// everyMinute is the sun through a day, each minute.
func everyMinute(site Place, day cal.Day) (out []geom.Vec) {
	for i := range 1440 {
		if d := sunAt(site, day, (float64(i)+0.5)/60); d.Z > 0 {
			out = append(out, d)
		}
	}
	return out
}

// castHours asks the plain caster each minute. (Scene.Spells looks each ten
// minutes and can miss a gap shorter than that.)
func castHours(s *Scene, r Receptor, day []geom.Vec) (sum float64) {
	for _, d := range day {
		if r.BeamFactor(d) > 0 {
			sum += s.Passes(r.At, d, AnyMonth) / 60
		}
	}
	return sum
}

// A field and the plain caster, on random scenes at random places: hours with
// a look each minute, sky view with 16,200 rays.
func TestFieldAgreesWithCaster(t *testing.T) {
	// The promise of docs/shade.md, for the mean of all cells; a single scene may
	// be off by twice and a single cell's sky by three times as much.
	const tolHours, tolSky = 0.05, 0.01
	for _, looks := range []Looks{FineLooks(), QuickLooks()} {
		hours, sky, worstSky, signed, n, m := 0.0, 0.0, 0.0, 0.0, 0, 0
		for seed := *oracleSeed; seed < *oracleSeed+uint64(*oracleScenes); seed++ {
			r := rand.New(rand.NewPCG(seed, 365))
			site := Place{LatDeg: 150*r.Float64() - 75, LonDeg: 360*r.Float64() - 180}
			c := NewCourse(site, cal.Of(2025, 1, 1)+cal.Day(r.IntN(365)), 1, looks, nil)
			var s Scene
			for range 2 + r.IntN(10) {
				s.Bodies = append(s.Bodies, anyBody(r))
			}
			surfaces := []Surface{anySurface(r), anySurface(r)}
			f := NewField(c, surfaces, s.Bodies, false, 1)
			scene := s.On(c.Day(0))
			fine := everyMinute(site, c.Day(0))
			sceneHours, sceneSky, cells := 0.0, 0.0, 0
			for k, surf := range surfaces {
				nu, nv := surf.Grid()
				for range 12 {
					i, j := r.IntN(nu), r.IntN(nv)
					got := f.Week(0).Cell(k, i, j)
					at := Receptor{At: surf.Cell(i, j), Normal: surf.Normal()}
					want := castHours(scene, at, fine)
					hours += math.Abs(got.Hours - want)
					signed += got.Hours - want
					sceneHours += math.Abs(got.Hours - want)
					cells++
					n++
					if cells%6 == 0 {
						v := scene.SkyView(NewSky(90, 180), at, AnyMonth)
						e := math.Abs(got.SkyView - v)
						sky += e
						sceneSky = max(sceneSky, e)
						worstSky = max(worstSky, e)
						m++
					}
				}
			}
			if e := sceneHours / float64(cells); looks == FineLooks() && e > 2*tolHours || sceneSky > 3*tolSky {
				t.Errorf("seed %d: %.3f h/day and %.4f of the sky from the caster", seed, e, sceneSky)
			}
		}
		t.Logf("seeds from %d, %+v: hours off by %.4f in the mean (signed %+.4f) in %d cells", *oracleSeed, looks, hours/float64(n), signed/float64(n), n)
		if m > 0 {
			t.Logf("sky view off by %.4f in the mean, %.4f at worst, in %d cells", sky/float64(m), worstSky, m)
		}
		if e := hours / float64(n); e > tolHours {
			t.Errorf("seeds from %d: hours off by %.4f, promised %v", *oracleSeed, e, tolHours)
		}
		if m > 0 && sky/float64(m) > tolSky {
			t.Errorf("seeds from %d: sky view off by %.4f, promised %v", *oracleSeed, sky/float64(m), tolSky)
		}
	}
}

// More bodies never give more light, to the last bit.
func TestFieldMoreBodiesNeverMoreLight(t *testing.T) {
	for seed := range uint64(8) {
		r := rand.New(rand.NewPCG(seed, 8))
		c := NewCourse(Place{LatDeg: 120*r.Float64() - 60}, cal.Of(2025, 1, 6)+cal.Day(7*r.IntN(50)), 2, Looks{48, 600}, []float64{8, 12})
		surfaces := []Surface{anySurface(r), anySurface(r)}
		f := NewField(c, surfaces, nil, true, 1)
		last := lastBits(f)
		for k := range 8 {
			if _, err := f.Add(anyBody(r)); err != nil {
				t.Fatal(err)
			}
			next := lastBits(f)
			for i := range next {
				if next[i] < last[i] {
					t.Fatalf("seed %d, body %d: number %d loses %d after %d", seed, k, i, next[i], last[i])
				}
			}
			last = next
		}
		for w := range 2 {
			for s, surf := range surfaces {
				nu, nv := surf.Grid()
				for k := range nu * nv {
					v := f.Week(w).Cell(s, k%nu, k/nu)
					for _, x := range []float64{v.Hours, v.HoursOpaque, v.SkyView, v.MolClear, v.MolMean} {
						if math.IsNaN(x) || x < 0 || v.HoursOpaque > v.Hours {
							t.Fatalf("seed %d: %+v", seed, v)
						}
					}
				}
			}
		}
	}
}

func level(length, width, z float64) Surface {
	return LevelSurface(Patch{Z: z, Length: length, Width: width})
}

func TestFieldAtTheEdges(t *testing.T) {
	north := Place{LatDeg: 47.6}
	june := NewCourse(north, cal.Of(2025, 6, 16), 1, Looks{144, 600}, nil)
	day := june.DayHours(0)
	wall := TiltedSurface("wall", geom.Vec{Z: 1}, 180, 90, 1, 1)
	for _, tt := range []struct {
		name       string
		s          Surface
		b          []Body
		hours, sky float64
		from       string
	}{
		{"empty scene", level(2, 1, 0), nil, day, 1, "open ground"},
		{"on its own box", level(2, 1, 0.4), []Body{Box("bed", 0, 0, 0, 2, 1, 0, 0.4)}, day, 1, "touching is not crossing"},
		{"on a round rim", LevelSurface(Patch{Z: 0.4, Length: 1, Width: 1, Round: true}), []Body{Post("bag", 0, 0, 1, 0, 0.4)}, day, 1, "touching is not crossing"},
		{"in a box", level(1, 0.5, 0.2), []Body{Box("bed", 0, 0, 0, 2, 1, 0, 0.4)}, 0, 0, "inside is dark"},
		{"under a roof", level(1, 1, 0), []Body{Roof("roof", 0, 0, 0, 1e5, 1e5, 2)}, 0, 0, "all covered"},
		{"roof in its own plane", level(1, 1, 2), []Body{Roof("roof", 0, 0, 0, 1e5, 1e5, 2)}, day, 1, "coplanar"},
		{"over everything", level(1, 1, 9), []Body{Box("b", 0, 0, 20, 2, 3, 0, 5), Tree("t", 0, 0, 3, 9, 2, 0, 0, 0, 0), Conifer("c", 1, 1, 2, 0, 8, 0)}, day, 1, "all below"},
		{"upright, open", wall, nil, -1, 0.5, "(1 + cos 90°) / 2"},
		{"upright on a wall's face", wall, []Body{Box("wall", 0, 0.5, 0, 50, 1, 0, 50)}, -1, 0.5, "its own back"},
		{"facing down", Surface{Name: "ceiling", Middle: geom.Vec{Z: 2}, Along: geom.Vec{Y: 1}, Across: geom.Vec{X: 1}, Length: 1, Width: 1}, nil, 0, 0, "faces no sky"},
		{"at the foot of an endless wall", level(1, 0.001, 0), []Body{Box("wall", 0, 0.6, 0, EndlessM, 1.2-0.0002, 0, 1e4)}, -1, 0.5, "half the sky"},
		{"no thickness", level(1, 1, 0), []Body{Box("b", 0, 0, 0, 3, 3, 1, 1), Wall("w", 0, 0, 0, 0, 0, 2), Post("p", 0, 0, 0, 0, 3), Ball("o", 0, 0, 1, 0, 0), {}}, day, 1, "takes no light"},
		{"a tree on the bed", level(2, 1, 0.4), []Body{Box("bed", 0, 0, 0, 2, 1, 0, 0.4), Tree("t", 0, 0, 3, 4, 1, 0.2, 0.7, 4, 10)}, -1, -1, "no fault; its trunk stands in the middle, which is dark"},
		{"sun along a fence", level(0.05, 0.05, 0), []Body{Wall("fence", -4, 0, 0, 6, 0, 2)}, -1, -1, "no fault"},
		{"a tower of 300 m", level(1, 1, 0), []Body{Box("tower", 0, -30, 0, 1e4, 20, 0, 300)}, -1, -1, "no fault"},
		{"hills all round", level(1, 1, 0), []Body{Horizon("hills", 91)}, 0, 0, "below the skyline"},
	} {
		f := NewField(june, []Surface{tt.s}, tt.b, false, 1)
		got := f.Week(0).Surface(0, []float64{4, 6}, nil)
		scene := Scene{Bodies: tt.b}
		nu, nv := tt.s.Grid()
		at := Receptor{At: tt.s.Cell(nu/2, nv/2), Normal: tt.s.Normal()}
		mid := f.Week(0).Cell(0, nu/2, nv/2)
		if want := DayHours(scene.spells(at, newCourse(north, june.Day(0)))); math.Abs(mid.Hours-want) > 0.17 {
			t.Errorf("%s: %.3f h in the middle, caster %.3f", tt.name, mid.Hours, want)
		}
		if tt.hours >= 0 && (math.Abs(got.Hours.Min-tt.hours) > 1e-5 || math.Abs(got.Hours.Max-tt.hours) > 1e-5) {
			t.Errorf("%s: %.4f to %.4f h, want %.4f (%s)", tt.name, got.Hours.Min, got.Hours.Max, tt.hours, tt.from)
		}
		if tt.sky >= 0 && math.Abs(got.SkyView.Mean-tt.sky) > 0.004 {
			t.Errorf("%s: sky view %.4f, want %.3f (%s)", tt.name, got.SkyView.Mean, tt.sky, tt.from)
		}
	}
}

// Wide ground is cut in several tiles of coarser cells; no ground has none.
func TestFieldOfWideGround(t *testing.T) {
	c := NewCourse(seattle, cal.Of(2025, 4, 14), 1, Looks{24, 100}, nil)
	wide := level(60, 25, 0)
	bodies := []Body{Wall("w", 3, -14, 4, 70, 0, 3), Tree("t", 10, 0, 8, 9, 2, 0.2, 0.6, 4, 10)}
	f := NewField(c, []Surface{wide, level(0, 1, 0)}, bodies, false, 1)
	nu, nv := wide.Grid()
	if nu*nv > 11000 || nu*nv < 9000 || len(f.tiles) != (nu+63)/64 {
		t.Fatalf("%d by %d cells in %d tiles", nu, nv, len(f.tiles))
	}
	scene := Scene{Bodies: bodies}
	for i := 0; i < nu; i += 13 {
		for j := 0; j < nv; j += 11 {
			want := 0.0
			for k := c.first[0]; k < c.first[1]; k++ {
				want += c.rays[k].hours * scene.Passes(wide.Cell(i, j), c.rays[k].d, 4)
			}
			if got := f.Week(0).Cell(0, i, j).Hours; math.Abs(got-want) > 0.005 {
				t.Errorf("cell %d,%d: %.3f h, caster %.3f", i, j, got, want)
			}
		}
	}
	if s := f.Week(0).Surface(1, nil, nil); s.Cells != 0 || s.Hours.Mean != 0 {
		t.Errorf("a surface without width: %+v", s)
	}
}

// A thousand posts, and bodies inside one another.
func TestFieldOfManyBodies(t *testing.T) {
	var bodies []Body
	for i := range 1000 {
		bodies = append(bodies, Post("post", -5+0.1*float64(i%100), -3+0.2*float64(i/100), 0.03, 0, 1.5))
	}
	bodies = append(bodies, Box("outer", 0, -6, 0, 3, 2, 0, 2), Box("inner", 0, -6, 0, 1, 1, 0, 1))
	c := NewCourse(seattle, cal.Of(2025, 3, 17), 1, Looks{48, 600}, nil)
	f := NewField(c, []Surface{level(1, 0.5, 0)}, bodies, false, 1)
	scene := Scene{Bodies: bodies}
	got, want := 0.0, 0.0
	for j := range 5 {
		for i := range 10 {
			got += f.Week(0).Cell(0, i, j).Hours
			for k := c.first[0]; k < c.first[1]; k++ {
				want += c.rays[k].hours * scene.Passes(level(1, 0.5, 0).Cell(i, j), c.rays[k].d, 3)
			}
		}
	}
	if math.Abs(got-want) > 0.01 || want == 0 {
		t.Errorf("among a thousand posts %.3f h, caster %.3f", got/50, want/50)
	}
}

// The light's mean and clear skies are those of the plain caster's own rules.
func TestFieldLightIsPatchLight(t *testing.T) {
	s := Scene{Bodies: []Body{Wall("fence", 0, -1.2, 10, 20, 0, 1.8), Tree("plum", 2, -4, 4, 6, 2, 0.2, 0.7, 4, 10)}}
	spot := Patch{Length: 0.09, Width: 0.09}
	want := s.Patch(spot, seattle, meanMJ)
	for _, m := range []int{1, 4, 6, 10} {
		day := cal.Of(refYear, 1, 15)
		for int(day.Month()) != m {
			day += 28
		}
		day = day - cal.Day(day.Time().Day()-15) // the 15th, as Patch uses
		c := courseOf(seattle, []cal.Day{day}, FineLooks(), meanMJ[m-1:m], 0, 0)
		got := NewField(c, []Surface{LevelSurface(spot)}, s.Bodies, false, 1).Week(0).Cell(0, 0, 0)
		if math.Abs(got.MolMean/want.DLI[m-1]-1) > 0.05 || math.Abs(got.MolClear/want.DLIClear[m-1]-1) > 0.06 {
			t.Errorf("month %d: %.2f and %.2f mol, patch %.2f and %.2f", m, got.MolMean, got.MolClear, want.DLI[m-1], want.DLIClear[m-1])
		}
	}
	c := NewCourse(seattle, YearStart(2025), 52, Looks{144, 600}, nil)
	open := NewField(c, []Surface{level(1, 1, 0)}, nil, false, 1)
	for w := range 52 {
		clear, mean := c.OpenMol(w)
		got := open.Week(w).Cell(0, 3, 3)
		if math.Abs(got.MolClear-clear) > 1e-4 || math.Abs(got.MolMean-mean) > 1e-4 || clear != mean {
			t.Fatalf("week %d in the open: %.5f and %.5f mol, want %.5f", w, got.MolClear, got.MolMean, clear)
		}
	}
}

func TestFieldPolarDayAndNight(t *testing.T) {
	c := NewCourse(Place{LatDeg: 78}, YearStart(2025), 52, Looks{144, 600}, nil)
	f := NewField(c, []Surface{level(1, 1, 0)}, []Body{Wall("w", 0, -2, 0, 40, 0, 3)}, false, 1)
	june, december := f.Week(24).Cell(0, 5, 5), f.Week(50).Cell(0, 5, 5)
	if math.Abs(c.DayHours(24)-24) > 1e-9 || june.Hours >= 24 || june.Hours < 12 {
		t.Errorf("polar day: %v h up, %v h behind a wall", c.DayHours(24), june.Hours)
	}
	if c.DayHours(50) != 0 || december.Hours != 0 || december.MolClear != 0 || december.SkyView <= 0.5 {
		t.Errorf("polar night: %+v", december)
	}
	south := NewCourse(Place{LatDeg: -78}, YearStart(2025), 52, Looks{144, 600}, nil)
	if south.DayHours(24) != 0 || math.Abs(south.DayHours(50)-24) > 1e-9 {
		t.Errorf("in the south: %v h in June, %v h in December", south.DayHours(24), south.DayHours(50))
	}
}

// The steps of a day add up to the day that package sun finds by its own
// search, from the sun's rise to its set.
func TestCourseIsTheWholeDay(t *testing.T) {
	for _, lat := range []float64{-66, -34, 0, 47.6, 65} {
		c := NewCourse(Place{LatDeg: lat, LonDeg: 100}, YearStart(2025), 52, Looks{144, 600}, nil)
		for w := range 52 {
			// Parallax lowers the sun by 9 seconds of arc: some seconds at most.
			if want := sun.Of(c.Day(w), c.Site, sun.Centre).LengthH; math.Abs(c.DayHours(w)-want) > 0.006 {
				t.Errorf("latitude %v, week %d: %.4f h, want %.4f", lat, w+1, c.DayHours(w), want)
			}
		}
	}
}

// Leaves come and go on their days, and a crop grows by the week.
func TestFieldByDate(t *testing.T) {
	c := NewCourse(seattle, YearStart(2025), 52, Looks{24, 600}, nil)
	tree := Body{Name: "ash", Parts: []Part{{Solid: geom.Ellipsoid{At: geom.Vec{Z: 6}, Radius: 40, HalfHeight: 3}, InLeaf: 0.25, Bare: 0.5, LeafOut: 120, LeafFall: 300}}}
	bean := Box("bean", 0, 0, 0, 1e5, 1e5, 1, 1.5).Between(cal.Of(2025, 7, 1), cal.Of(2025, 7, 31))
	f := NewField(c, []Surface{level(0.1, 0.1, 0)}, []Body{tree, bean}, false, 1)
	for w := range 52 {
		day, got := c.Day(w), f.Week(w).Cell(0, 0, 0)
		want := 0.5
		if day.YearDay() >= 120 && day.YearDay() <= 300 {
			want = 0.25
		}
		if int(day.Month()) == 7 {
			want = 0
		}
		if math.Abs(got.SkyView-want) > 0.12*want+1e-9 {
			t.Errorf("%v: sky view %.3f, want about %.2f", day, got.SkyView, want)
		}
	}
}

// The mean of a patch's cells is nearer to many points of the plain caster
// than its six points are.
func TestLightsAreNearerThanSixPoints(t *testing.T) {
	sixOff, off, worst, hoursOff, n := 0.0, 0.0, 0.0, 0.0, 0.0
	for seed := range uint64(6) {
		r := rand.New(rand.NewPCG(seed, 7))
		var s Scene
		for range 8 {
			s.Bodies = append(s.Bodies, randomBody(r))
		}
		site := Place{LatDeg: 110*r.Float64() - 55}
		p := Patch{X: r.Float64(), Y: r.Float64(), Z: 0.3, TurnDeg: 90 * r.Float64(), Length: 1.8, Width: 0.9}
		six := s.Patch(p, site, meanMJ)
		got := Lights([]Surface{LevelSurface(p)}, s.Bodies, site, meanMJ, nil, 1)[0]
		var many []Light // 54 points: nine pieces of six
		along, across := geom.Direction(90+p.TurnDeg, 0), geom.Direction(p.TurnDeg, 0)
		for a := -1.0; a <= 1; a++ {
			for b := -1.0; b <= 1; b++ {
				at := geom.Vec{X: p.X, Y: p.Y}.Add(along.Scale(a * p.Length / 3)).Add(across.Scale(b * p.Width / 3))
				many = append(many, s.Patch(Patch{X: at.X, Y: at.Y, Z: p.Z, TurnDeg: p.TurnDeg, Length: p.Length / 3, Width: p.Width / 3}, site, meanMJ))
			}
		}
		want := meanLight(many)
		for m := range 12 {
			sixOff += math.Abs(six.Share[m] - want.Share[m])
			off += math.Abs(got.Share[m] - want.Share[m])
			worst = max(worst, math.Abs(got.Share[m]-want.Share[m]))
			hoursOff += math.Abs(got.SunH[m] - want.SunH[m])
			n++
		}
	}
	t.Logf("share: cells off by %.4f in the mean, %.4f at worst; six points by %.4f; cells' hours by %.3f", off/n, worst, sixOff/n, hoursOff/n)
	if off > sixOff || off/n > 0.005 || hoursOff/n > 0.05 {
		t.Errorf("share: cells off by %.4f, six points by %.4f; cells' hours by %.3f", off/n, sixOff/n, hoursOff/n)
	}
}

// Light under another week's sky is near that of a course made for it.
func TestMolUnderAnotherSky(t *testing.T) {
	bodies := []Body{Wall("fence", 0, -1.2, 10, 20, 0, 1.8), Tree("plum", 2, -4, 4, 6, 2, 0.2, 0.7, 4, 10)}
	surfaces := []Surface{level(1, 0.5, 0.3), TiltedSurface("pockets", geom.Vec{X: -1, Y: 0.5, Z: 0.8}, 150, 80, 0.5, 0.4)}
	mean := []float64{4, 5, 6, 7} // a dull February
	start := cal.Of(2025, 2, 3)
	worst := 0.0
	for _, factor := range []float64{0.4, 0.7, 1, 1.3} {
		var other []float64
		for _, v := range mean {
			other = append(other, v*factor)
		}
		f := NewField(NewCourse(seattle, start, 4, Looks{144, 600}, mean), surfaces, bodies, false, 1)
		g := NewField(NewCourse(seattle, start, 4, Looks{144, 600}, other), surfaces, bodies, false, 1)
		for w := range 4 {
			for s := range surfaces {
				l := f.Week(w).Cell(s, 2, 1)
				got, want := f.Course().MolUnder(w, l, other[w]), g.Week(w).Cell(s, 2, 1).MolMean
				worst = max(worst, math.Abs(got/want-1))
			}
		}
	}
	t.Logf("off by %.4f at worst", worst)
	if worst > 0.01 || worst == 0 {
		t.Errorf("off by %.4f, promised 0.01", worst)
	}
	c := NewCourse(Place{LatDeg: 80}, cal.Of(2025, 12, 15), 1, Looks{144, 600}, nil)
	if got := c.MolUnder(0, CellLight{SkyView: 0.5}, 0); got != 0 {
		t.Errorf("polar night without light: %v mol", got)
	}
}
