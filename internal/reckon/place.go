package reckon

import (
	"errors"
	"fmt"
	"math"
	"runtime"
	"sync"

	"bedweek/internal/garden"
	"bedweek/internal/geom"
	"bedweek/internal/shade"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// Place is the garden under its sky: light on each space and the air, warmth
// and ground plants meet there. It does not change with the ledger.
type Place struct {
	Set    weather.Set
	Lights []shade.Light // by space, in garden order
	Envs   []*stand.Env  // by space; spaces that grow nothing too
	Airs   []*stand.Air  // by space: its env's days, shared by all crops; nil where nothing grows
	Toll   [][12]float64 // by space and month: what tall plants take from the others; see tallground.go
	Class  []int         // by space: index of the first space with the same env in all that matters
}

// trellisLight is the share of light a bare trellis or net on its frame lets
// pass: common practice, no source; leaves on it are counted as tall crops.
const trellisLight = 0.7

// scene returns everything that takes light: the obstacles and the sides of
// the spaces that stand above the ground.
func scene(g *garden.Garden) *shade.Scene {
	s := &shade.Scene{}
	for _, o := range g.Obstacles {
		s.Bodies = append(s.Bodies, body(o))
	}
	for _, sp := range g.Spaces {
		for i, su := range sp.Supports {
			if su.Height.M <= 0 || su.Length.M <= 0 {
				continue
			}
			x, y, turn := supportAt(sp, su.Side, g.Place.LatDeg)
			s.Bodies = append(s.Bodies, shade.Sheet(fmt.Sprintf("%s support %d", sp.ID, i+1),
				x, y, turn, su.Length.M, sp.Rim.M, sp.Rim.M+su.Height.M, trellisLight))
		}
	}
	return s
}

func body(o garden.Obstacle) shade.Body {
	base, top := o.Base.M, o.Height.M // both above the ground
	switch o.Kind {
	case "post":
		return shade.Post(o.Name, o.X, o.Y, o.Round.M, base, top)
	case "tree":
		return shade.Tree(o.Name, o.X, o.Y, o.Round.M, top, base, o.LeafOn, o.LeafOff, o.LeafFrom, o.LeafTo)
	case "roof":
		if !o.Base.Known() {
			return shade.Roof(o.Name, o.X, o.Y, o.TurnDeg, o.Length.M, o.Width.M, top)
		}
	case "wall":
		if !(o.Width.M > 0) {
			return shade.Wall(o.Name, o.X, o.Y, o.TurnDeg, o.Length.M, base, top)
		}
	}
	return shade.Box(o.Name, o.X, o.Y, o.TurnDeg, o.Length.M, o.Width.M, base, top)
}

// supportAt places a support's sheet along the edge of the space that looks
// most to the side named, and turns it along that edge; a support in the middle
// runs along the space.
func supportAt(sp garden.Space, side string, lat float64) (x, y, turnDeg float64) {
	pole, equator := 0.0, 180.0
	if lat < 0 {
		pole, equator = equator, pole
	}
	bearing, ok := map[string]float64{"pole": pole, "equator": equator, "east": 90, "west": 270}[side]
	if !ok {
		return sp.X, sp.Y, sp.TurnDeg
	}
	to := geom.Direction(bearing, 0)
	if sp.Round.Known() {
		at := to.Scale(sp.Round.M / 2)
		return sp.X + at.X, sp.Y + at.Y, bearing
	}
	if sp.Figure != nil {
		at, looks := sp.Figure.At(geom.Vec{X: sp.X, Y: sp.Y}, sp.TurnDeg).EdgeTowards(bearing)
		return at.X, at.Y, looks
	}
	at, most := geom.Vec{}, math.Inf(-1)
	for k, half := range [4]float64{sp.Width.M / 2, sp.Length.M / 2, sp.Width.M / 2, sp.Length.M / 2} {
		turn := sp.TurnDeg + 90*float64(k)
		edge := geom.Direction(turn, 0)
		if d := edge.Dot(to); d > most+1e-9 {
			at, most, turnDeg = edge.Scale(half), d, turn
		}
	}
	return sp.X + at.X, sp.Y + at.Y, turnDeg
}

// patch is the planting surface, just above the rim so that a space's own
// frame does not count as its shade.
func patch(sp garden.Space) shade.Patch {
	p := shade.Patch{Name: string(sp.ID), X: sp.X, Y: sp.Y, Z: sp.Rim.M + 0.05, TurnDeg: sp.TurnDeg,
		Length: sp.Length.M, Width: sp.Width.M, Figure: sp.Figure}
	if sp.Round.Known() {
		p.Length, p.Width, p.Round = sp.Round.M, sp.Round.M, true
	}
	return p
}

// NewPlace draws the futures and works out the light of every space.
func NewPlace(in *Inputs) (*Place, error) {
	site := in.site()
	start := in.Date.Monday()
	n := in.Futures
	p := &Place{Set: weather.Make(ownRecord(in), in.Normals, site, start, weather.Ask{
		Past: pastDays, Days: (in.Weeks + afterWeeks + growWeeks) * 7, N: n, Seed: in.Seed, Forecast: in.ownForecast(),
	})}
	if len(p.Set.Futures) == 0 {
		return nil, errors.New(p.Set.Words)
	}
	mean, ok := weather.MeanRad(in.Record, in.Normals, site)
	if !ok {
		return nil, errors.New("the weather does not cover every month of the year: give a longer record, or monthly normals")
	}
	p.Lights = make([]shade.Light, len(in.Garden.Spaces))
	things := bodies(gardenOn(in.Garden, in.Date))
	gr := groundsOf(in.Garden, things, in.edges())
	for k, l := range shade.Lights(gr.surfaces, things,
		shade.Place{LatDeg: site.LatDeg, LonDeg: site.LonDeg, ElevM: site.ElevM}, mean, gr.skip, in.Workers) {
		p.Lights[gr.space[k]] = l
	}
	for i, sp := range in.Garden.Spaces {
		p.Envs = append(p.Envs, env(in, sp, p.Lights[i], p.Set.Futures))
	}
	p.Class = classes(in.Garden.Spaces, p.Envs)
	p.Airs = make([]*stand.Air, len(p.Envs))
	each(len(p.Envs), in.Workers, func(i int) {
		if in.Garden.Spaces[i].Grows() {
			p.Airs[i] = stand.NewAir(p.Envs[i])
		}
	})
	var err error
	if p.Toll, err = tallToll(in, mean, p.Airs); err != nil {
		return nil, err
	}
	return p, nil
}

// env says what plants meet in a space: warmth of the medium from its size and
// colour (warm.go), cold from the gardener's own readings (readings.go). The
// thirst figures are common practice, no source.
func env(in *Inputs, sp garden.Space, l shade.Light, fs []weather.Future) *stand.Env {
	e := &stand.Env{
		Site: in.site(), Start: in.Date.Monday(), Weeks: in.Weeks + afterWeeks, Futures: fs,
		Light: l.Share, SunH: l.SunH, HotShade: l.HotShade,
		DepthM: sp.Depth.M, VolumeL: sp.VolumeL(), AreaM2: sp.AreaM2(), Net: 1,
	}
	e.WarmC, e.NightC = mediumWarmC(sp), nightC(in, sp)
	switch sp.Water {
	case "rain":
		e.Thirst = 0.6
	case "can":
		e.Thirst = 0.2
	case "drip":
		e.Thirst = 0.1
	}
	for _, c := range sp.Covers {
		switch c.Kind {
		case "fleece":
			e.Cover = math.Max(e.Cover, 1.5)
		case "cloche":
			e.Cover = math.Max(e.Cover, 2)
		}
		if c.Always && c.Light > 0 {
			e.Net = math.Min(e.Net, c.Light)
			if c.Kind == "shade cloth" {
				for m := range e.HotShade {
					e.HotShade[m] = 1 - (1-e.HotShade[m])*c.Light
				}
			}
		}
	}
	if sp.Kind == garden.LampShelf {
		e.Indoor, e.LampDLI, e.LampC = true, in.Garden.Shelf.LightDLI, in.Garden.Shelf.WarmthC
	}
	return e
}

// classes groups spaces whose envs differ by less than growth can tell apart,
// so that each class is grown once: light within a twentieth in every month and
// half a degree of the shade's coolness, depth within 2 cm, volume for one plant ample or within a tenth.
func classes(spaces []garden.Space, envs []*stand.Env) []int {
	out := make([]int, len(envs))
	for i := range envs {
		out[i] = i
		if !spaces[i].Grows() {
			continue
		}
		for j := range i {
			if spaces[j].Grows() && out[j] == j && alike(envs[i], envs[j]) {
				out[i] = j
				break
			}
		}
	}
	return out
}

func alike(a, b *stand.Env) bool {
	if a.WarmC != b.WarmC || a.NightC != b.NightC || a.Thirst != b.Thirst || a.Cover != b.Cover || a.Net != b.Net || a.Indoor != b.Indoor {
		return false
	}
	if math.Abs(a.DepthM-b.DepthM) > 0.02 {
		return false
	}
	if lo, hi := min(a.VolumeL, b.VolumeL), max(a.VolumeL, b.VolumeL); lo < 150 && hi > lo*1.1 {
		return false
	}
	for m := range a.Light {
		if math.Abs(a.Light[m]-b.Light[m]) > 0.05 || math.Abs(a.SunH[m]-b.SunH[m]) > 0.75 || math.Abs(a.HotShade[m]-b.HotShade[m]) > 0.1 {
			return false
		}
	}
	return true
}

// each runs f for 0..n-1 on some workers; f writes only to its own index, so
// the result does not depend on their number.
func each(n, workers int, f func(i int)) {
	if workers < 1 {
		workers = runtime.GOMAXPROCS(0)
	}
	var wg sync.WaitGroup
	next := make(chan int)
	for range min(workers, max(n, 1)) {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for i := range next {
				f(i)
			}
		}()
	}
	for i := range n {
		next <- i
	}
	close(next)
	wg.Wait()
}
