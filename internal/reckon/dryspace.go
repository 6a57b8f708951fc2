package reckon

import (
	"math"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/water"
	"bedweek/internal/weather"
)

// What a garden file does not say of water, taken for granted and said so.
// Common practice and our own choices, no source.
const (
	dripLH     = 2.0  // an emitter
	dripEveryM = 0.3  // along the line, and between lines
	dripWets   = 0.7  // of the surface
	tankMostM  = 0.10 // height of a reservoir under its overflow
	tankLidM   = 0.03 // wood and partition between medium and reservoir
	tankVoid   = 0.9
	overhangM  = 0.3 // leaves reach this far over a rim at most
	seedRootM  = 0.1 // roots of seed and seedlings
)

// exposure is what wind around a space, and warmth off its walls, do to its
// demand. The ends are our own choice, held under the 1.4 that [FAO56] gives
// as the most for plants standing alone (recalled from chapter 10).
func exposure(sp garden.Space) water.Range {
	r := water.Range{Low: 0.95, High: 1.1, Known: true}
	switch sp.Kind {
	case garden.RaisedBed, garden.ElevatedBed, garden.Reservoir:
		r.Low, r.High = 0.95, 1.2
	case garden.Bag, garden.PocketBag, garden.Tier:
		r.Low, r.High = 1, 1.25
	case garden.Railing, garden.Hanging:
		r.Low, r.High = 1.1, 1.35
	}
	if sp.Dark && sp.Kind != garden.Ground {
		r.Low, r.High = r.Low+0.05, r.High+0.05
	}
	return r
}

// wateredSpace turns a garden's space and what stands in it into what water
// reckons with. crops names what stands, by name and count.
func wateredSpace(in *Inputs, p *Place, book *water.Book, i int, stays []standing, days int, sky *water.Sky) (*water.Space, []string) {
	sp := in.Garden.Spaces[i]
	s := &water.Space{
		ID: string(sp.ID), AreaM2: sp.AreaM2(), DepthM: sp.Depth.M, VolumeL: sp.VolumeL(),
		Medium: medium(in.Garden, book, sp), Way: way(sp), Light: p.Lights[i].Share, RainShare: rainShare(in.Garden, i), Exposure: exposure(sp),
		Kcb: 0.15, P: 0.4, RootM: seedRootM,
	}
	if e := p.Envs[i]; e != nil && e.Net > 0 {
		for m := range s.Light {
			s.Light[m] *= e.Net
		}
	}
	if m := mulched(sp); m > 0 {
		s.Mulch = 1 - mulchStops*m
	}
	switch s.Way {
	case water.Drip:
		lh, along, between := lineOf(sp)
		s.RateLH = water.LineRate(lh, along, between) * s.AreaM2
		s.Wet = lineWets(along, between)
	case water.Reservoir:
		s.TankL = tankL(sp)
	}
	crops := plant(in, s, book, i, stays, days)
	s.P = water.AdjustP(s.P, s.Kcb*sky.MeanET0MM(s.Light, 7))
	return s, crops
}

// mulchStops is the share of the evaporation a mulch of 5 cm stops: [FAO56]
// chapter 10 takes half under a full organic mulch.
const mulchStops = 0.5

// lineOf is a space's drip line: what was measured, else what is usual.
func lineOf(sp garden.Space) (lh, alongM, betweenM float64) {
	lh, alongM, betweenM = dripLH, dripEveryM, dripEveryM
	w := sp.Watering
	if w.EmitterLH.LH > 0 {
		lh = w.EmitterLH.LH
	}
	if w.EmitterEvery.M > 0 {
		alongM, betweenM = w.EmitterEvery.M, w.EmitterEvery.M
	}
	if w.LinesEvery.M > 0 {
		betweenM = w.LinesEvery.M
	}
	return lh, alongM, betweenM
}

// lineWets is the share of the surface a line wets: circles of the size that
// makes the usual line wet seven tenths, our own choice.
func lineWets(alongM, betweenM float64) float64 {
	share := dripWets * dripEveryM * dripEveryM / (alongM * betweenM)
	return math.Min(1, math.Max(0.05, share))
}

func way(sp garden.Space) water.Way {
	switch sp.Water {
	case "drip":
		return water.Drip
	case "reservoir":
		return water.Reservoir
	case "rain":
		return water.Rain
	}
	return water.Can
}

// medium is the book's for the batch a space is filled with; one not said is
// potting mix in containers and garden soil in the ground.
func medium(g *garden.Garden, book *water.Book, sp garden.Space) water.Medium {
	kind := "potting mix"
	if sp.Kind == garden.Ground {
		kind = "garden soil"
	}
	if b, ok := g.Batch(sp.Medium); ok {
		kind = b.Kind
	}
	m, ok := book.Medium(kind)
	if !ok {
		m, _ = book.Medium("compost blend")
	}
	return m
}

// tankL is what a planter's reservoir takes: as said, else as usual.
func tankL(sp garden.Space) float64 {
	if l := sp.Watering.Tank.L; l > 0 {
		return l
	}
	return water.ReservoirL(sp.AreaM2(), tankHeight(sp), tankVoid)
}

// tankHeight is what lies between a planter's floor and its medium.
func tankHeight(sp garden.Space) float64 {
	gap := sp.RimUp.M - sp.Depth.M - tankLidM
	if sp.RimUp.M <= 0 || gap < 0.03 {
		return tankMostM
	}
	return math.Min(gap, tankMostM)
}

// rainShare is how much of the rain falls on a space: none under a roof, and on
// a tier what the storeys above leave free. Walls keep rain off as well, by how
// much depends on the wind: left out.
func rainShare(g *garden.Garden, i int) float64 {
	sp := g.Spaces[i]
	for _, o := range g.Obstacles {
		if o.Kind == "roof" && o.Height.M > sp.Rim.M && under(o, sp.X, sp.Y) {
			return 0
		}
	}
	share := 1.0
	if sp.Kind == garden.Tier && sp.AreaM2() > 0 {
		for k, t := range g.Spaces {
			if k != i && t.Kind == garden.Tier && (sp.Figure == nil || len(sp.Figure.Rings) == 1) && // a ring leaves it out already
				t.Rim.M > sp.Rim.M && math.Hypot(t.X-sp.X, t.Y-sp.Y) < 0.05 {
				share = math.Min(share, math.Max(0, 1-t.AreaM2()/sp.AreaM2()))
			}
		}
	}
	return share
}

func under(o garden.Obstacle, x, y float64) bool {
	t := o.TurnDeg * math.Pi / 180
	dx, dy := x-o.X, y-o.Y
	along := dx*math.Cos(t) - dy*math.Sin(t)
	across := dx*math.Sin(t) + dy*math.Cos(t)
	return math.Abs(along) <= o.Length.M/2 && math.Abs(across) <= o.Width.M/2
}

// pastWeather is the weather of the days before the date as it was: the
// record's where it has them, else what the futures share.
func pastWeather(in *Inputs, p *Place, days int) ([]weather.Future, bool) {
	from := in.Date - cal.Day(days)
	f := p.Set.Futures[0]
	out := make([]weather.Day, days)
	for i := range out {
		d := from + cal.Day(i)
		if in.Record != nil {
			if day, ok := in.Record.At(d); ok {
				out[i] = ownDay(in, d, day)
				continue
			}
		}
		k := int(d - f.Start)
		if k < 0 || k >= len(f.Days) {
			return nil, false
		}
		out[i] = ownDay(in, d, f.Days[k])
	}
	return []weather.Future{{Start: from, Days: out, From: "as it was"}}, true
}

// leafPlace is the share of its place a grown planting's leaves are taken to
// cover when its growth should be over but it still stands.
const leafPlace = 0.5

// leafOf is a planting's leaf spread on a day from the date, m2, all plants.
func leafOf(in *Inputs, st standing, day int) float64 {
	g := st.growth
	at := func(w int) float64 {
		if w < 0 || w >= len(g.FootprintM2) {
			return 0
		}
		return float64(g.FootprintM2[w])
	}
	x := float64(int(in.Date-in.Date.Monday())+day) / 7
	w := int(x)
	f := at(w) + (x-float64(w))*(at(w+1)-at(w))
	place := st.crop.SpacingM.Value * st.crop.SpacingM.Value
	switch st.looks {
	case "well", "poor", "bolting", "finished":
		if at(0) == 0 {
			f = leafPlace * place
		}
	}
	return math.Max(f, at(0)) * float64(st.count)
}

// plant adds what stands to a space: leaves by day, and the coefficients,
// heights and roots of the plantings weighed by their leaves.
func plant(in *Inputs, s *water.Space, book *water.Book, i int, stays []standing, days int) (crops []string) {
	sp := in.Garden.Spaces[i]
	s.LeafM2 = make([]float64, days)
	most := leafMost(sp)
	sum, kcb, p, root, tall := 0.0, 0.0, 0.0, 0.0, 0.0
	for _, st := range stays {
		if st.space != i || st.tray || st.count <= 0 {
			continue
		}
		crops = append(crops, named(st.crop, st.variety, st.oneOf))
		c, _ := book.Crop(string(st.crop.ID))
		for d := range s.LeafM2 {
			s.LeafM2[d] += leafOf(in, st, d)
		}
		leaf := math.Max(leafOf(in, st, 0), 1e-4*float64(st.count)) // seed not yet up counts a little
		grown := math.Min(1, leaf/float64(st.count)/math.Max(1e-4, leafPlace*st.crop.SpacingM.Value*st.crop.SpacingM.Value))
		k := c.KcbMid
		switch {
		case st.looks == "finished":
			k = c.KcbEnd
		case len(sp.Supports) > 0 && st.crop.Support != "" && c.KcStaked > 0:
			k = math.Max(k, c.KcStaked-0.05)
		}
		sum += leaf
		kcb += leaf * k
		p += leaf * c.P
		root += leaf * (seedRootM + grown*math.Max(0, c.RootM.At(0.5)-seedRootM))
		if len(st.growth.HeightM) > 0 {
			tall += leaf * float64(st.growth.HeightM[0])
		}
	}
	if sum > 0 {
		s.Kcb, s.P, s.RootM, s.HeightM = kcb/sum, p/sum, root/sum, tall/sum
	}
	for d := range s.LeafM2 {
		s.LeafM2[d] = math.Min(s.LeafM2[d], most)
	}
	return crops
}

// leafMost is the most ground leaves of a space can stand over: its own area
// and an overhang.
func leafMost(sp garden.Space) float64 {
	if sp.Round.Known() {
		r := sp.Round.M/2 + overhangM
		return math.Pi * r * r
	}
	if sp.Figure != nil { // Steiner's formula, a little too much at a dent
		return sp.AreaM2() + sp.Figure.PerimeterM()*overhangM + math.Pi*overhangM*overhangM
	}
	return (sp.Length.M + 2*overhangM) * (sp.Width.M + 2*overhangM)
}
