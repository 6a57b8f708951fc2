package shade

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
	"bedweek/internal/sun"
)

var seattle = Place{LatDeg: 47.61, LonDeg: -122.33, ElevM: 60}

// meanMJ is an invented but plausible year of mean global radiation for 47° N.
var meanMJ = [12]float64{3.4, 6, 10.5, 15, 19, 21, 22.5, 19, 13.5, 7.5, 4, 2.8}

func ExampleScene_Patch() {
	s := Scene{Bodies: []Body{Wall("fence", 0, -1, 0, 20, 0, 1.8)}}
	bed := Patch{Name: "bed", Z: 0.3, Length: 2, Width: 1}
	l := s.Patch(bed, seattle, meanMJ)
	fmt.Printf("June %.0f h, December %.0f h of sun\n", l.SunH[5], l.SunH[11])
	// Output: June 16 h, December 0 h of sun
}

func TestEmptySceneIsOpenField(t *testing.T) {
	for _, lat := range []float64{-90, -66, -34, 0, 47.6, 68, 90} {
		l := (&Scene{}).Patch(Patch{Length: 1, Width: 1}, Place{LatDeg: lat}, meanMJ)
		if math.Abs(l.SkyView-1) > 1e-9 {
			t.Errorf("latitude %v: sky view %v in the open, want 1", lat, l.SkyView)
		}
		for m := range 12 {
			if math.Abs(l.Share[m]-1) > 1e-9 {
				t.Errorf("latitude %v month %d: share %v in the open, want 1", lat, m+1, l.Share[m])
			}
			day := sun.Of(cal.Of(refYear, 1, 1)+cal.Day(30.4*float64(m)+20), Place{LatDeg: lat}, sun.Centre)
			if math.Abs(l.SunH[m]-day.LengthH) > 0.25 {
				t.Errorf("latitude %v month %d: %.2f h of sun, day is %.2f h", lat, m+1, l.SunH[m], day.LengthH)
			}
			if want := meanMJ[m] * MolPerMJ; math.Abs(l.DLI[m]-want) > 1e-9 {
				t.Errorf("latitude %v month %d: %.3f mol, want %.3f", lat, m+1, l.DLI[m], want)
			}
		}
	}
}

func TestPolarDayAndNight(t *testing.T) {
	north := Place{LatDeg: 75}
	wall := Scene{Bodies: []Body{Wall("wall", 0, -2, 0, EndlessM, 0, 3)}}
	l := wall.Patch(Patch{Length: 1, Width: 1}, north, [12]float64{0, 0.5, 5, 12, 18, 20, 17, 11, 5, 1, 0, 0})
	if l.SunH[11] != 0 || l.DLI[11] != 0 || l.DLIClear[11] != 0 {
		t.Errorf("polar night: %v h, %v mol, %v mol clear; want none", l.SunH[11], l.DLI[11], l.DLIClear[11])
	}
	if math.Abs(l.Share[11]-l.SkyView) > 1e-9 {
		t.Errorf("polar night: share %v, want the sky view %v", l.Share[11], l.SkyView)
	}
	open := (&Scene{}).Patch(Patch{Length: 1, Width: 1}, north, meanMJ)
	if math.Abs(open.SunH[5]-24) > 1e-6 || l.SunH[5] >= 24 || l.SunH[5] < 12 {
		t.Errorf("polar day: %v h in the open, %v h behind a wall", open.SunH[5], l.SunH[5])
	}
}

// The same garden turned upside down gets at midwinter there what it gets at
// midwinter here; other months do not mirror to the day.
func TestHemispheresMirror(t *testing.T) {
	flat := [12]float64{15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15, 15}
	north := Scene{Bodies: []Body{Box("house", 0.5, -5, 20, 6, 4, 0, 4)}}
	south := Scene{Bodies: []Body{Box("house", 0.5, 5, -20, 6, 4, 0, 4)}}
	n := north.Patch(Patch{Length: 2, Width: 1}, Place{LatDeg: 40}, flat)
	s := south.Patch(Patch{Length: 2, Width: 1}, Place{LatDeg: -40}, flat)
	for _, m := range []int{5, 11} {
		k := (m + 6) % 12
		if math.Abs(n.SunH[m]-s.SunH[k]) > 0.1 || math.Abs(n.Share[m]-s.Share[k]) > 0.01 {
			t.Errorf("month %d north %.2f h %.3f, month %d south %.2f h %.3f", m+1, n.SunH[m], n.Share[m], k+1, s.SunH[k], s.Share[k])
		}
	}
	if n.SunH[11] >= n.SunH[5] || s.SunH[5] >= s.SunH[11] {
		t.Errorf("summer is not the sunnier: north %v, south %v", n.SunH, s.SunH)
	}
	if math.Abs(n.SkyView-s.SkyView) > 1e-9 {
		t.Errorf("sky view %v north, %v south", n.SkyView, s.SkyView)
	}
}

// Asking for the year is asking for each month.
func TestYearIsItsMonths(t *testing.T) {
	s, at := demoScene(), Level(0.3, -0.2, 0.5)
	for m, v := range s.SkyViewYear(CoarseSky(), at) {
		if one := s.SkyView(CoarseSky(), at, m+1); math.Abs(v-one) > 1e-12 {
			t.Errorf("month %d: %v in the year, %v alone", m+1, v, one)
		}
	}
}

func TestRimFaceAndGrazing(t *testing.T) {
	// A bed in a box: its soil at the very rim is not shaded by its own box.
	s := Scene{Bodies: []Body{Box("bed", 0, 0, 0, 2, 1, 0, 0.4)}}
	for _, at := range []Receptor{Level(0, 0, 0.4), Level(1, 0.5, 0.4), Level(-1, 0, 0.4)} {
		if v := s.SkyView(CoarseSky(), at, AnyMonth); math.Abs(v-1) > 1e-12 {
			t.Errorf("on the rim at %v: sky view %v, want 1", at.At, v)
		}
	}
	if v := s.SkyView(CoarseSky(), Level(0, 0, 0.2), AnyMonth); v != 0 {
		t.Errorf("inside the box: sky view %v, want 0", v)
	}
	// At the foot of an endless wall, half the sky is left; on the wall itself,
	// a quarter of what level open ground gets... twice: facing out, half.
	w := Scene{Bodies: []Body{Box("wall", 0, -0.1, 0, EndlessM, 0.2, 0, 1000)}}
	if v := w.SkyView(FineSky(), Level(0, 0, 0), AnyMonth); math.Abs(v-0.5) > 0.003 {
		t.Errorf("at the foot of a tall wall: sky view %v, want 0.5 (half the sky)", v)
	}
	out := Receptor{At: geom.Vec{Z: 0.5}, Normal: geom.Direction(0, 0)}
	if v := w.SkyView(FineSky(), out, AnyMonth); math.Abs(v-0.5) > 0.003 {
		t.Errorf("on the wall's face: sky view %v, want 0.5 ((1 + cos 90°) / 2)", v)
	}
	// Two bodies face to face leave no bright gap, and count no less light for
	// being two.
	one := Scene{Bodies: []Body{Box("b", 0, -2, 0, 4, 1, 0, 2)}}
	two := Scene{Bodies: []Body{Box("a", -1, -2, 0, 2, 1, 0, 2), Box("b", 1, -2, 0, 2, 1, 0, 2)}}
	a, b := one.SkyView(FineSky(), Level(0.1, 0, 0), 1), two.SkyView(FineSky(), Level(0.1, 0, 0), 1)
	if math.Abs(a-b) > 1e-9 {
		t.Errorf("a box %v, the same box in two halves %v", a, b)
	}
	// Sun along the wall's own plane is not stopped by it.
	f := Scene{Bodies: []Body{Wall("fence", 0, 0, 0, 10, 0, 2)}}
	if v := f.Passes(geom.Vec{X: -8}, geom.Direction(90, 5), 1); v != 1 {
		t.Errorf("sun along the fence: %v passes, want all", v)
	}
}

func TestLeaves(t *testing.T) {
	tree := Tree("plum", 0, -3, 4, 6, 2, 0.2, 0.7, 4, 10)
	southern := Tree("plum", 0, -3, 4, 6, 2, 0.2, 0.7, 10, 4)
	crown, up := geom.Vec{Y: -3.5, Z: 0}, geom.Up()
	for _, tt := range []struct {
		b     Body
		month int
		want  float64
	}{{tree, 1, 0.7}, {tree, 4, 0.2}, {tree, 10, 0.2}, {tree, 11, 0.7}, {southern, 1, 0.2}, {southern, 7, 0.7}, {southern, 10, 0.2}} {
		s := Scene{Bodies: []Body{tt.b}}
		if got := s.Passes(crown, up, tt.month); got != tt.want {
			t.Errorf("month %d: %v passes, want %v", tt.month, got, tt.want)
		}
	}
	s := Scene{Bodies: []Body{tree}}
	if got := s.Passes(geom.Vec{Y: 0, Z: 1}, geom.Direction(180, 0), 1); got != 0 {
		t.Errorf("through the trunk: %v passes, want 0", got)
	}
	evergreen := Scene{Bodies: []Body{Tree("holly", 0, 0, 2, 4, 1, 0.1, 0.9, 0, 0)}}
	if got := evergreen.Passes(geom.Vec{X: 0.5}, up, 1); got != 0.1 {
		t.Errorf("evergreen in January: %v, want 0.1", got)
	}
	two := Scene{Bodies: []Body{Sheet("net", 0, 1, 0, 4, 0, 2, 0.5), Sheet("net", 0, 2, 0, 4, 0, 3, 0.5)}}
	if got := two.Passes(geom.Vec{}, geom.Direction(0, 10), 1); got != 0.25 {
		t.Errorf("through two half nets: %v, want 0.25", got)
	}
	for _, bad := range []float64{-1, math.NaN()} {
		if s := (Scene{Bodies: []Body{Sheet("x", 0, 1, 0, 4, 0, 2, bad)}}); s.Passes(geom.Vec{}, geom.Direction(0, 10), 1) != 0 {
			t.Errorf("transmittance %v lets light through", bad)
		}
	}
}

func randomBody(r *rand.Rand) Body {
	x, y := 12*r.Float64()-6, 12*r.Float64()-6
	turn, a, b, h := 360*r.Float64(), 0.2+3*r.Float64(), 0.2+3*r.Float64(), 0.2+4*r.Float64()
	switch r.IntN(7) {
	case 0:
		return Box("box", x, y, turn, a, b, 0, h)
	case 1:
		return Wall("wall", x, y, turn, a, 0, h)
	case 2:
		return Post("post", x, y, a/4, 0, h)
	case 3:
		return Tree("tree", x, y, a, h+2, h/2, r.Float64(), r.Float64(), 1+r.IntN(12), 1+r.IntN(12))
	case 4:
		return Roof("roof", x, y, turn, a, b, h)
	case 5:
		return Sheet("trellis", x, y, turn, a, 0, h, r.Float64())
	}
	return Awning("awning", x, y, turn, a, b, h, r.Float64())
}

// More bodies never give more light; shares stay within 0 and 1; nothing is
// not a number; the same question gives the same answer.
func TestMoreBodiesNeverMoreLight(t *testing.T) {
	for seed := range uint64(12) {
		r := rand.New(rand.NewPCG(seed, 99))
		site := Place{LatDeg: 180*r.Float64() - 90, LonDeg: 360*r.Float64() - 180}
		p := Patch{X: 1, Y: 1, Z: r.Float64(), TurnDeg: 360 * r.Float64(), Length: 2, Width: 1, Round: r.IntN(2) == 0}
		var s Scene
		last := s.Patch(p, site, meanMJ)
		for range 4 {
			s.Bodies = append(s.Bodies, randomBody(r))
			l := s.Patch(p, site, meanMJ)
			if l != s.Patch(p, site, meanMJ) {
				t.Fatalf("seed %d: two answers to one question", seed)
			}
			for m := range 12 {
				for _, v := range [][2]float64{{l.Share[m], last.Share[m]}, {l.SunH[m], last.SunH[m]}, {l.DLI[m], last.DLI[m]}, {l.DLIClear[m], last.DLIClear[m]}, {l.SkyView, last.SkyView}} {
					// a change found by halving is known to a second
					if math.IsNaN(v[0]) || v[0] < 0 || v[0] > v[1]+0.002 {
						t.Fatalf("seed %d, month %d, %d bodies: %v after %v\n%+v", seed, m+1, len(s.Bodies), v[0], v[1], s.Bodies)
					}
				}
				if l.Share[m] > 1+1e-9 || l.SkyView > 1+1e-9 || l.SunH[m] > 24.0001 {
					t.Fatalf("seed %d month %d: share %v, sky %v, %v h", seed, m+1, l.Share[m], l.SkyView, l.SunH[m])
				}
			}
			last = l
		}
	}
}

// Scene moved and turned about the vertical with its receptor keeps its sky.
func TestSkyDoesNotMindMoving(t *testing.T) {
	a := Scene{Bodies: []Body{Box("b", 2, 3, 30, 2, 1, 0, 3), Post("p", -1, 1, 0.3, 0, 3)}}
	b := Scene{Bodies: []Body{Box("b", 102, 53, 30, 2, 1, 0, 3), Post("p", 99, 51, 0.3, 0, 3)}}
	va := a.SkyView(CoarseSky(), Level(0, 0, 0), 1)
	if vb := b.SkyView(CoarseSky(), Level(100, 50, 0), 1); math.Abs(va-vb) > 1e-6 {
		t.Errorf("sky view %v, and %v after moving everything", va, vb)
	}
	// Quarter turn: (x, y) becomes (y, -x), turn grows by 90°.
	c := Scene{Bodies: []Body{Box("b", 3, -2, 120, 2, 1, 0, 3), Post("p", 1, 1, 0.3, 0, 3)}}
	if vc := c.SkyView(CoarseSky(), Level(0, 0, 0), 1); math.Abs(va-vc) > 1e-6 {
		t.Errorf("sky view %v, and %v after a quarter turn", va, vc)
	}
}

// A skyline of one height leaves the sun hours above that height, which package
// sun finds by its own search.
func TestHoursAboveASkyline(t *testing.T) {
	for _, lat := range []float64{-41, 0, 47.6, 68} {
		site := Place{LatDeg: lat, LonDeg: 12}
		for _, month := range []int{3, 6, 12} {
			day := cal.Of(2025, 1, 21) + cal.Day(30*(month-1))
			s := Scene{Bodies: []Body{Horizon("hills", 15)}}
			got := s.Spells(Level(0, 0, 0), site, day)
			want := sun.Of(day, site, 15).LengthH
			if math.Abs(DayHours(got)-want) > 0.02 {
				t.Errorf("latitude %v on %v: %.3f h above 15°, want %.3f", lat, day, DayHours(got), want)
			}
			if want > 0.5 && want < 23 && len(got) > 0 {
				if first := got[0]; first.Height < math.Sin(14.9*math.Pi/180) {
					t.Errorf("latitude %v on %v: sun through the hills at height %.3f", lat, day, first.Height)
				}
			}
			if a, b := MorningHours(got), AfternoonHours(got); math.Abs(a+b-DayHours(got)) > 1e-9 {
				t.Errorf("latitude %v on %v: morning %v and afternoon %v are not the day %v", lat, day, a, b, DayHours(got))
			}
		}
	}
}

// With a wall on the pole side the winter beam arrives whole and only the sky
// is less: share = 1 - diffuse x (1 - sky view). Under no mean light all is
// sky.
func TestShareJoinsBeamAndSky(t *testing.T) {
	s := Scene{Bodies: []Body{Wall("wall", 0, 1, 0, EndlessM, 0, 3)}}
	spot := Patch{Length: 0.01, Width: 0.01}
	l := s.Patch(spot, seattle, meanMJ)
	d := newSunDay(seattle, cal.Of(refYear, 12, lightDay))
	diffuse := DiffuseMonthly(meanMJ[11]/d.topMJ, d.setDeg)
	want := 1 - diffuse*(1-l.SkyView)
	if math.Abs(l.Share[11]-want) > 1e-6 || want > 0.9 {
		t.Errorf("December share %.5f, want %.5f", l.Share[11], want)
	}
	dull := s.Patch(spot, seattle, [12]float64{})
	for m := range 12 {
		if math.Abs(dull.Share[m]-dull.SkyView) > 1e-9 || dull.DLI[m] != 0 {
			t.Errorf("month %d without light: share %v, sky view %v, %v mol", m+1, dull.Share[m], dull.SkyView, dull.DLI[m])
		}
	}
	// Straight under a wide roof there is neither.
	dark := Scene{Bodies: []Body{Roof("roof", 0, 0, 0, 1e6, 1e6, 2)}}
	if l := dark.Patch(spot, seattle, meanMJ); l.SkyView > 1e-9 || l.Share[5] > 1e-9 || l.SunH[5] > 0.02 {
		t.Errorf("under a roof: %+v", l)
	}
}

func TestDiffuseRules(t *testing.T) {
	// [Erbs1982] as in Duffie and Beckman, equations 2.11.1 and 2.12.1, by hand:
	// 1.311 - 1.6621 + 1.0367 - 0.3030 at KT 0.55; 1 + 0.0566 - 0.1022 + 0.0068
	// at KT 0.2.
	for _, tt := range []struct{ got, want, tol float64 }{
		{DiffuseMonthly(0.55, 110), 0.3826, 0.0002},
		{DiffuseMonthly(0.1, 110), DiffuseMonthly(0.3, 110), 0}, // held at the end
		{DiffuseDaily(0.2, 100), 0.9612, 0.0002},
		{DiffuseDaily(0.75, 100), 0.175, 0},
		{DiffuseDaily(0.75, 70), 0.143, 0},
		{DiffuseDaily(0, 70), 1, 0},
	} {
		if math.Abs(tt.got-tt.want) > tt.tol {
			t.Errorf("diffuse share %.4f, want %.3f ([Erbs1982])", tt.got, tt.want)
		}
	}
	for k := 0.0; k < 1; k += 0.01 {
		for _, ws := range []float64{50, 81.4, 81.5, 120, 180} {
			for _, v := range []float64{DiffuseMonthly(k, ws), DiffuseDaily(k, ws)} {
				if v < 0.1 || v > 1.01 {
					t.Errorf("clearness %.2f, sunset %v: diffuse share %v", k, ws, v)
				}
			}
		}
	}
}

func TestRadiationAboveTheAir(t *testing.T) {
	// [FAO56] example 8: 3 September at 20° S, 32.2 MJ/m2/day. Its declination
	// is a fit, 0.6° off on that day, which is 1 % of the sum.
	d := newSunDay(Place{LatDeg: -20}, cal.Of(refYear, 9, 3))
	if math.Abs(d.topMJ-32.2) > 0.4 {
		t.Errorf("above the air %.2f MJ, want 32.2 ([FAO56] example 8)", d.topMJ)
	}
}

// The day's beam is shared out without loss, symmetric about noon.
func TestBeamsAddUp(t *testing.T) {
	for _, lat := range []float64{-60, 0, 35, 66, 75, 90} {
		for _, month := range []int{3, 6, 12} {
			d := newSunDay(Place{LatDeg: lat}, cal.Of(refYear, 1, 15)+cal.Day(30*(month-1)))
			sum := 0.0
			for _, w := range d.beams(10, 0.3) {
				if w < 0 || math.IsNaN(w) {
					t.Fatalf("latitude %v month %d: beam %v", lat, month, w)
				}
				sum += w
			}
			if len(d.dirs) > 0 && math.Abs(sum-7) > 1e-9 {
				t.Errorf("latitude %v month %d: beams add to %v, want 7", lat, month, sum)
			}
		}
	}
}

func TestCourseOfTheDay(t *testing.T) {
	// Melbourne in January, 8 to 9 solar time. [CollaresRabl1979] by hand: sunset
	// hour angle 107.3°, a 0.7776, b 0.3105, cosines 0.6088 and -0.2974, so
	// (pi/24) x 0.9666 x 0.9062 / 1.5117 = 0.0759 of the day.
	d := newSunDay(Place{LatDeg: -38}, cal.Of(refYear, 1, 17))
	all := d.beams(1, 0)
	sum, height := 0.0, 0.0
	for i, w := range all {
		if d.hours[i] > -60 && d.hours[i] <= -45 {
			sum += w
		}
		height += d.dirs[i].Z
	}
	if math.Abs(sum-0.0759) > 0.001 {
		t.Errorf("8 to 9 h holds %.4f of the day, want 0.0759 ([CollaresRabl1979])", sum)
	}
	// The diffuse part follows the sine of the elevation ([LiuJordan1960]).
	for i, w := range d.beams(1, 0.3) {
		if want := all[i] - 0.3*d.dirs[i].Z/height; math.Abs(w-want) > 1e-9 {
			t.Fatalf("step %d: beam %.6f, want %.6f", i, w, want)
		}
	}
}

// What the coarse grid, sky and steps cost against a fine reckoning.
func TestCoarseIsCloseToFine(t *testing.T) {
	worstSky := 0.0
	for seed := range uint64(6) {
		r := rand.New(rand.NewPCG(seed, 5))
		var s Scene
		for range 8 {
			s.Bodies = append(s.Bodies, randomBody(r))
		}
		at := Level(r.Float64(), r.Float64(), 0.3)
		a, b := s.SkyView(CoarseSky(), at, 6), s.SkyView(FineSky(), at, 6)
		worstSky = max(worstSky, math.Abs(a-b))
	}
	if worstSky > 0.02 {
		t.Errorf("coarse sky is off by %.4f, promised 0.02", worstSky)
	}
	t.Logf("coarse sky off by at most %.4f", worstSky)
}

func demoScene() *Scene {
	r := rand.New(rand.NewPCG(1, 1))
	s := &Scene{}
	for range 20 {
		s.Bodies = append(s.Bodies, randomBody(r))
	}
	return s
}

func BenchmarkPatches22(b *testing.B) {
	s := demoScene()
	for range b.N {
		for i := range 22 {
			s.Patch(Patch{X: float64(i%5) - 2, Y: float64(i/5) - 2, Z: 0.5, Length: 1.2, Width: 0.6}, seattle, meanMJ)
		}
	}
}
