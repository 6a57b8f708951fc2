package stand

import (
	"fmt"
	"hash/fnv"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// on is a day of the env's first year, or of the next for months already past.
func on(e *Env, m time.Month, d int) cal.Day {
	x := cal.Of(e.Start.Year(), m, d)
	if x < e.Start {
		x = cal.Of(e.Start.Year()+1, m, d)
	}
	return x
}

// firsts is the median first pick over all futures that came to one, and how
// many did.
func firsts(g Growth) (cal.Day, int) {
	var d []cal.Day
	for _, o := range g.Outcomes {
		if o.First != 0 {
			d = append(d, o.First)
		}
	}
	if len(d) == 0 {
		return 0, 0
	}
	slices.Sort(d)
	return d[len(d)/2], len(d)
}

func kgBetween(e *Env, g Growth, from, to cal.Day) (kg float64) {
	for _, o := range g.Outcomes {
		for w, x := range o.Kg.All() {
			if d := e.Start + cal.Day(7*w); d >= from && d <= to {
				kg += float64(x) / float64(len(g.Outcomes))
			}
		}
	}
	return kg
}

// TestStarts holds the kernel to what any gardener of a maritime north knows
// (common practice; season.md, "Plain truths").
func TestStarts(t *testing.T) {
	e := seattle(t, 20)
	for _, tt := range []struct {
		crop     crop.ID
		way      crop.Way
		m        time.Month
		d        int
		least    int // successes of 20
		most     int
		from, to time.Month // of the likely first pick, when it works
		causes   []Cause    // of failure, when it does not
	}{
		{"tomato-cherry", crop.SetOut, 3, 1, 0, 0, 0, 0, []Cause{Chilled, ColdSoil, Frosted}},
		{"tomato-cherry", crop.SetOut, 5, 18, 15, 20, 7, 9, nil},
		{"tomato-cherry", crop.SetOut, 8, 15, 0, 1, 0, 0, []Cause{TooSlow, Frosted, NoSet}},
		{"garlic", crop.Plant, 10, 15, 18, 20, 6, 8, nil},
		{"garlic", crop.Plant, 5, 1, 0, 1, 0, 0, []Cause{NoCold, NoBulb, TooSlow}},
		{"kale", crop.Sow, 6, 10, 17, 20, 7, 9, nil},
		{"spinach", crop.Sow, 6, 1, 0, 5, 0, 0, []Cause{Bolted, TooHot}},
		{"spinach", crop.Sow, 8, 20, 15, 20, 9, 11, nil},
		{"pea-shelling", crop.Sow, 3, 12, 15, 20, 5, 6, nil},
		{"leek", crop.SetOut, 6, 10, 17, 20, 8, 11, nil},
		{"snap-bean-bush", crop.Sow, 3, 1, 0, 1, 0, 0, []Cause{ColdSoil, NotUp}},
		{"snap-bean-bush", crop.Sow, 6, 1, 17, 20, 7, 8, nil},
		{"snap-bean-bush", crop.Sow, 9, 1, 0, 0, 0, 0, []Cause{TooSlow, Frosted}},
		{"winter-squash", crop.SetOut, 6, 1, 14, 20, 8, 10, nil},
		{"sprouting-broccoli", crop.SetOut, 7, 20, 15, 20, 2, 5, nil},
		{"basil", crop.SetOut, 4, 10, 0, 2, 0, 0, []Cause{Chilled, ColdSoil}},
		{"fava-bean", crop.Sow, 2, 10, 14, 20, 5, 7, nil},
		{"fava-bean", crop.Sow, 5, 20, 0, 12, 0, 0, []Cause{NoSet}},
		{"pea-shelling", crop.Sow, 5, 25, 0, 16, 0, 0, []Cause{NoSet}},
		{"spinach", crop.Sow, 4, 1, 14, 20, 5, 6, nil},
		{"leek", crop.SetOut, 8, 30, 0, 8, 0, 0, []Cause{TooSlow, Bolted, TooSmall}},
		{"kale", crop.Sow, 8, 5, 14, 20, 9, 11, nil},
		{"kale", crop.Sow, 9, 6, 0, 10, 0, 0, []Cause{Bolted, TooSmall}},
	} {
		c := fromBook(t, tt.crop)
		g := NewTable(c, e, Worlds(c, 20, 1)).Grow(tt.way, on(e, tt.m, tt.d))
		if g.Success < tt.least || g.Success > tt.most {
			t.Errorf("%s, %s on %d %v: %d of 20 (%s), want %d to %d (common practice)", tt.crop, tt.way, tt.d, tt.m, g.Success, g.Cause, tt.least, tt.most)
		}
		if m := g.FirstPick.Likely.Month(); tt.from != 0 && (m < tt.from || m > tt.to) {
			t.Errorf("%s, %s on %d %v: first pick %v, want %v to %v (common practice)", tt.crop, tt.way, tt.d, tt.m, g.FirstPick, tt.from, tt.to)
		}
		if len(tt.causes) > 0 && !slices.Contains(tt.causes, g.Cause) {
			t.Errorf("%s, %s on %d %v: fails for %q, want one of %q", tt.crop, tt.way, tt.d, tt.m, g.Cause, tt.causes)
		}
	}
}

// TestBeansWaitForWarmth: in a dark planter in shelter, a degree or two warmer
// than the station, beans of the second half of April still meet cold soil or
// cold nights (common practice: mid-May).
func TestBeansWaitForWarmth(t *testing.T) {
	e := seattle(t, 20)
	e.NightC, e.WarmC = 0.5, 2.5
	for _, id := range []crop.ID{"snap-bean-bush", "snap-bean-pole", "runner-bean"} {
		c := fromBook(t, id)
		tab := NewTable(c, e, Worlds(c, 20, 1))
		for _, way := range c.Ways {
			early, right := tab.Grow(way, on(e, 4, 18)), tab.Grow(way, on(e, 5, 25))
			if early.Success > 12 || right.Success < 15 {
				t.Errorf("%s, %s: %d of 20 on 18 April (%s), %d on 25 May (%s), want 12 at most and 15 at least", id, way, early.Success, early.Cause, right.Success, right.Cause)
			}
		}
	}
}

// TestLateGarlic: cloves put in at the year's end have few roots and give
// clearly less than those of October (common practice).
func TestLateGarlic(t *testing.T) {
	e := seattle(t, 20)
	tab := NewTable(fromBook(t, "garlic"), e, nil)
	kg := func(d cal.Day) (sum float64) {
		for _, o := range tab.Grow(crop.Plant, d).Outcomes {
			sum += float64(o.Total)
		}
		return sum
	}
	if a, b := kg(on(e, 10, 20)), kg(on(e, 12, 28)); b > 0.8*a || b == 0 {
		t.Errorf("garlic of late December gives %.2f of October's, want under 0.8", b/a)
	}
	if a, b := kg(on(e, 10, 20)), kg(on(e, 11, 12)); b < 0.9*a {
		t.Errorf("garlic of mid-November gives %.2f of October's, want nearly all", b/a)
	}
}

// TestColdAtASize: cold sends to seed only what has grown large enough, and
// heads of small plants button (common practice; sizes from the book).
func TestColdAtASize(t *testing.T) {
	e := seattle(t, 20)
	for _, tt := range []struct {
		crop  crop.ID
		way   crop.Way
		m, d  int
		least int // failed by bolting, of 20
		most  int
		from  string
	}{
		{"broccoli", crop.SetOut, 2, 25, 10, 20, "small heads on plants set into the cold"},
		{"broccoli", crop.SetOut, 5, 1, 0, 3, "no cold left to count"},
		{"cabbage-spring", crop.SetOut, 9, 3, 2, 12, "some plants grow too large by winter and bolt"},
		{"cabbage-spring", crop.SetOut, 10, 20, 0, 1, "small plants pass the winter"},
		{"celery", crop.SetOut, 6, 1, 0, 3, "no cold left to count"},
		{"onion-bulb", crop.Plant, 4, 1, 0, 2, "sets of spring are too small while it is cold"},
		{"carrot", crop.Sow, 5, 1, 0, 2, "a summer's carrot sees no cold"},
	} {
		c := fromBook(t, tt.crop)
		n := 0
		for _, o := range NewTable(c, e, nil).Grow(tt.way, on(e, timeMonth(tt.m), tt.d)).Outcomes {
			if o.Cause == Bolted && !o.OK {
				n++
			}
		}
		if n < tt.least || n > tt.most {
			t.Errorf("%s, %s on %d/%d: %d of 20 bolt, want %d to %d (%s)", tt.crop, tt.way, tt.d, tt.m, n, tt.least, tt.most, tt.from)
		}
	}
}

func TestWinterPicks(t *testing.T) {
	e := seattle(t, 20)
	for _, tt := range []struct {
		crop crop.ID
		way  crop.Way
		m    time.Month
		d    int
		from string
	}{
		{"kale", crop.Sow, 6, 10, "common practice: sown in June for winter greens"},
		{"leek", crop.SetOut, 6, 10, "common practice: planted by midsummer, dug November to March"},
		{"carrot", crop.Sow, 7, 10, "common practice: July sowings stand in the ground"},
	} {
		c := fromBook(t, tt.crop)
		g := NewTable(c, e, nil).Grow(tt.way, on(e, tt.m, tt.d))
		all := kgBetween(e, g, e.Start, e.Start+cal.Day(7*e.Weeks))
		winter := kgBetween(e, g, on(e, 11, 1), on(e, 11, 1)+110)
		if winter < 0.15*all || all == 0 {
			t.Errorf("%s from %d %v: %.3f of %.3f kg between November and mid-February, want a sixth at least (%s)", tt.crop, tt.d, tt.m, winter, all, tt.from)
		}
	}
}

// TestWinterStandstill: nothing in the kernel knows of winter, and yet ten
// days' delay at the turn of summer costs weeks (growth.md, lesson 1).
func TestWinterStandstill(t *testing.T) {
	for _, place := range []struct {
		name string
		env  *Env
	}{{"sine year at 47 N", maritime(20)}, {"Seattle", seattle(t, 20)}} {
		e := place.env
		c := fromBook(t, "carrot")
		tab := NewTable(c, e, nil)
		worst := 0
		for d := on(e, 7, 20); d < on(e, 9, 10); d += 5 {
			a, n := firsts(tab.Grow(crop.Sow, d))
			b, m := firsts(tab.Grow(crop.Sow, d+10))
			if n >= 10 && m >= 10 {
				worst = max(worst, int(b-a)-10)
			}
		}
		if worst < 28 {
			t.Errorf("%s: ten days' delay of a carrot sowing lengthens its time by %d days at most, want four weeks or more at some turn", place.name, worst)
		}
		c = fromBook(t, "lettuce-head")
		tab = NewTable(c, e, nil)
		early := tab.Grow(crop.Sow, on(e, 9, 1))
		late := tab.Grow(crop.Sow, on(e, 9, 15))
		a, n := firsts(early)
		b, m := firsts(late)
		if n > 0 && m > 0 && m >= n && b-a < 35 {
			t.Errorf("%s: lettuce sown 15 September is picked %d days after that of 1 September (%d and %d futures), want far more than 14", place.name, b-a, n, m)
		}
	}
}

// TestWinterNeedsDark plants the fault: with June's light and warmth all year
// the standstill must vanish.
func TestWinterNeedsDark(t *testing.T) {
	e := maritime(4)
	for f := range e.Futures {
		for i := range e.Futures[f].Days {
			e.Futures[f].Days[i].TmaxC, e.Futures[f].Days[i].TminC, e.Futures[f].Days[i].RadMJ = 19, 9, 19
		}
	}
	tab := NewTable(fromBook(t, "carrot"), e, nil)
	a, _ := firsts(tab.Grow(crop.Sow, on(e, 5, 1)))
	b, _ := firsts(tab.Grow(crop.Sow, on(e, 9, 1)))
	if x, y := a-on(e, 5, 1), b-on(e, 9, 1); x != y || x == 0 {
		t.Errorf("in an unchanging year carrots take %d days from May and %d from September", x, y)
	}
}

func TestHotSoil(t *testing.T) {
	e := maritime(5)
	for f := range e.Futures {
		for i := range e.Futures[f].Days {
			e.Futures[f].Days[i].TmaxC, e.Futures[f].Days[i].TminC = 40, 28
		}
	}
	g := NewTable(fromBook(t, "lettuce-leaf"), e, nil).Grow(crop.Sow, on(e, 6, 1))
	if g.Success != 0 || g.Cause != NotUp {
		t.Errorf("lettuce in soil over 30 °C: %d come up (%s), want none ([HM1954] table: none at 35)", g.Success, g.Cause)
	}
}

// TestMirror: half a year and the equator turned, the same weather gives the
// same answer but for the few minutes of day length by which summers differ.
func TestMirror(t *testing.T) {
	north := maritime(10)
	south := openBed(-47)
	south.Start = north.Start + 183
	south.Futures = sineFutures(10, testDays, south.Start, -47, 12, 7, 1)
	for _, id := range []crop.ID{"tomato-cherry", "spinach", "carrot", "kale", "garlic", "leek"} {
		c := fromBook(t, id)
		way := c.Ways[0]
		a, b := NewTable(c, north, nil), NewTable(c, south, nil)
		for w := 6; w < 48; w += 3 {
			x, y := a.Grow(way, north.Start+cal.Day(7*w)), b.Grow(way, south.Start+cal.Day(7*w))
			if d := x.Success - y.Success; d < -3 || d > 3 {
				t.Errorf("%s, week %d: %d of 10 in the north, %d in the south", id, w, x.Success, y.Success)
			}
			if x.Success > 7 && y.Success > 7 {
				dx, dy := int(x.FirstPick.Likely-north.Start), int(y.FirstPick.Likely-south.Start)
				if d := dx - dy; d < -8 || d > 8 {
					t.Errorf("%s, week %d: picked after %d days in the north, %d in the south", id, w, dx, dy)
				}
			}
		}
	}
}

// TestMoreLight: more light is never a later first pick of the same plant,
// unless it was ready so much sooner that heat spoilt it.
func TestMoreLight(t *testing.T) {
	const seed = 11
	rng := rand.New(rand.NewPCG(seed, 0))
	crops := book(t)
	shares := []float64{0.5, 0.7, 1}
	var airs []*Air
	for _, share := range shares {
		e := maritime(4)
		for m := range e.Light {
			e.Light[m] = share
		}
		airs = append(airs, NewAir(e))
	}
	checked := 0
	for range 60 {
		c := crops[rng.IntN(len(crops))]
		way := c.Ways[rng.IntN(len(c.Ways))]
		day := cal.Day(rng.IntN(300))
		var last []Outcome
		for i, share := range shares {
			g := airs[i].Table(c, nil).Grow(way, airs[i].start+day)
			for f, o := range last {
				if n := g.Outcomes[f]; o.First != 0 && n.Cause != TooHot && (n.First == 0 || n.First > o.First) {
					t.Errorf("seed %d: %s, %s, day %d, future %d: first pick %v at light %.1f, earlier with less (%v)", seed, c.ID, way, day, f, n.First, share, o.First)
				}
				checked++
			}
			last = g.Outcomes
		}
	}
	if checked < 100 {
		t.Fatalf("only %d pairs compared", checked)
	}
}

// TestWarmer: a warmer year, or a cover, never kills by frost sooner. Plants
// that harden are compared under a cover only: a mild autumn softens them,
// and then an earlier night may indeed be the one that kills.
func TestWarmer(t *testing.T) {
	cold, warm, covered := maritime(4), maritime(4), maritime(4)
	covered.Cover = 2
	for f := range warm.Futures {
		for i := range warm.Futures[f].Days {
			warm.Futures[f].Days[i].TmaxC++
			warm.Futures[f].Days[i].TminC++
		}
	}
	airs := []*Air{NewAir(cold), NewAir(warm), NewAir(covered)}
	killed := 0
	for _, c := range book(t) {
		milder := airs[2]
		if c.FrostSeedling.Value-c.FrostKill.Value < 1 && c.FrostSeedling.Value > -3 {
			milder = airs[1]
		}
		a, b := airs[0].Table(c, nil), milder.Table(c, nil)
		for _, way := range c.Ways {
			for _, day := range []cal.Day{100, 130, 160, 190, 220, 250} {
				x, y := a.Grow(way, cold.Start+day), b.Grow(way, cold.Start+day)
				for f, w := range y.Outcomes {
					o := x.Outcomes[f]
					if w.Cause != Frosted && w.Cause != Unhardened || o.Cause == Chilled || o.Cause == ColdSoil {
						continue
					}
					killed++
					if w.End < o.End {
						t.Errorf("%s, %s, day %d, future %d: killed %v, a colder year ends %v (%s)", c.ID, way, day, f, w.End, o.End, o.Cause)
					}
				}
			}
		}
	}
	if killed < 50 {
		t.Fatalf("only %d frost kills compared", killed)
	}
}

// TestSameBits also logs two digests of the book, to be compared between kinds
// of processor: of what comes to pass and when, and of every kilogram.
func TestSameBits(t *testing.T) {
	e := maritime(6)
	when, much := fnv.New64a(), fnv.New64a()
	for _, c := range book(t) {
		w := Worlds(c, 6, 3)
		way := c.Ways[0]
		a := NewTable(c, e, w).Grow(way, e.Start+140)
		b := Grow(e, Start{Crop: c, Way: way, Day: e.Start + 140, World: w})
		if !reflect.DeepEqual(a, b) {
			t.Errorf("%s: the same start grows differently", c.ID)
		}
		for _, o := range a.Outcomes {
			fmt.Fprintln(when, c.ID, o.OK, o.Cause, o.Up, o.First, o.Last, o.End)
			for w, kg := range o.Kg.All() {
				fmt.Fprintln(much, w, math.Float32bits(kg))
			}
		}
	}
	t.Logf("digest of dates %x, of kilograms %x", when.Sum64(), much.Sum64())
}

// TestAccounts: every failure says why, every success has its dates in order,
// and the kilograms by week, before and after add up.
func TestAccounts(t *testing.T) {
	e := seattle(t, 8)
	fails, wins := 0, 0
	for _, c := range book(t) {
		tab := NewTable(c, e, Worlds(c, 8, 2))
		for _, way := range c.Ways {
			for w := 0; w < e.Weeks; w += 3 {
				day := e.Start + cal.Day(7*w)
				g := tab.Grow(way, day)
				for f, o := range g.Outcomes {
					if !o.OK {
						fails++
						if o.Cause == Fine || o.Cause == Spent {
							t.Errorf("%s, %s, week %d, future %d: fails for %q", c.ID, way, w, f, o.Cause)
						}
						continue
					}
					wins++
					if o.Up < day || o.First < o.Up || o.Last < o.First || o.End < o.Last {
						t.Errorf("%s, %s, week %d, future %d: up %v first %v last %v end %v", c.ID, way, w, f, o.Up, o.First, o.Last, o.End)
					}
					sum := float32(0)
					for _, kg := range o.Kg.All() {
						if kg < 0 {
							t.Errorf("%s: negative harvest", c.ID)
						}
						sum += kg
					}
					if d := sum + o.Later - o.Total; d > 1e-3*o.Total || d < -1e-3*o.Total {
						t.Errorf("%s, %s, week %d: weeks %.4f and later %.4f are not %.4f kg", c.ID, way, w, sum, o.Later, o.Total)
					}
				}
				side := float32(c.SpacingM.Value)
				for k, m2 := range g.FootprintM2 {
					if m2 < 0 || m2 > side*side*1.001 || k < w && m2 > 0 {
						t.Errorf("%s, %s, week %d: footprint %.3f m2 in week %d", c.ID, way, w, m2, k)
					}
				}
			}
		}
	}
	if fails < 500 || wins < 500 {
		t.Fatalf("%d failures and %d successes are too few to judge", fails, wins)
	}
}

func TestRootRoom(t *testing.T) {
	c := fromBook(t, "tomato")
	deep, shallow := maritime(1), maritime(1)
	shallow.DepthM, shallow.VolumeL = 0.1, 100
	if a, b := rootRoom(c, deep), rootRoom(c, shallow); a <= b || b <= 0 || a > 1 {
		t.Errorf("root room %v in 30 cm, %v in 10 cm", a, b)
	}
	c = fromBook(t, "kale")
	a := NewTable(c, deep, nil).Grow(crop.Sow, deep.Start+150).Outcomes[0].Total
	b := NewTable(c, shallow, nil).Grow(crop.Sow, deep.Start+150).Outcomes[0].Total
	if b >= a {
		t.Errorf("kale gives %v kg in 30 cm and %v in 10 cm", a, b)
	}
}

// TestStanding: what stands already is not killed by the past, and gives
// only in the weeks of the plan.
func TestStanding(t *testing.T) {
	e := seattle(t, 10)
	e.Start += 240 // late August; the futures begin in January
	e.Weeks = 40
	for _, tt := range []struct {
		crop crop.ID
		way  crop.Way
		ago  cal.Day
	}{{"tomato-cherry", crop.SetOut, 100}, {"kale", crop.Sow, 80}, {"leek", crop.SetOut, 90}, {"carrot", crop.Sow, 50}, {"chives", crop.Plant, 900}} {
		c := fromBook(t, tt.crop)
		g := Grow(e, Start{Crop: c, Way: tt.way, Day: e.Start - tt.ago, Standing: true})
		if g.Success < 8 {
			t.Errorf("%s standing since %d days: %d of 10 still give (%s)", tt.crop, tt.ago, g.Success, g.Cause)
		}
		if g.FootprintM2[0] <= 0 {
			t.Errorf("%s stands and covers no ground in the first week", tt.crop)
		}
	}
}

// TestShade: a sun crop in a dark yard fails for want of light, not in silence.
func TestShade(t *testing.T) {
	e := maritime(5)
	for m := range e.Light {
		e.Light[m], e.SunH[m] = 0.25, 1.5
	}
	c := fromBook(t, "tomato-cherry")
	if g := NewTable(c, e, nil).Grow(crop.SetOut, on(e, 5, 25)); g.Success > 0 {
		t.Errorf("tomato with 1.5 h of sun: %d of 5", g.Success)
	}
	c = fromBook(t, "lettuce-leaf")
	e = maritime(5)
	for m := range e.Light {
		e.Light[m], e.SunH[m] = 0.5, 4
	}
	if g := NewTable(c, e, nil).Grow(crop.SetOut, on(e, 5, 1)); g.Success < 4 {
		t.Errorf("lettuce in half shade: %d of 5 (%s)", g.Success, g.Cause)
	}
}
