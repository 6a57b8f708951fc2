package web

import (
	"fmt"
	"math"
	"net/http"
	"strconv"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/unit"
)

// PlanDrawing is the garden from above, to scale, north up. Lengths are CSS
// pixels of a picture 360 wide.
type PlanDrawing struct {
	Wide, Tall float64
	Scale      float64 // pixels to a metre
	Shapes     []PlanShape
	Grip       *PlanShape // where the marked space is taken hold of; nil = none is marked
	Walk       string     // the way from space to space
	BarX, BarY float64
	BarW       float64
	BarWords   string
	Says       string
}

// PlanShape is one thing on the plan.
type PlanShape struct {
	ID      string
	No      int // in walking order, 0 = an obstacle
	Name    string
	Round   bool
	X, Y    float64 // centre
	W, H, R float64
	Turn    float64
	Class   string
	Path    string  // of an odd shape, about X and Y
	LX, LY  float64 // middle of its number
	Lead    string  // from the number to the space when it stands off
}

const planWide = 360.0

// gripPx is the least half width of what a thumb takes hold of.
const gripPx = 24.0

// drawPlan draws what has a place; marked is the space shown heavy.
func drawPlan(g *garden.Garden, marked string) *PlanDrawing {
	lowX, lowY, highX, highY := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	span := func(x, y, half float64) {
		lowX, highX = math.Min(lowX, x-half), math.Max(highX, x+half)
		lowY, highY = math.Min(lowY, y-half), math.Max(highY, y+half)
	}
	on := func(sp garden.Space) bool { return sp.AreaM2() > 0 && (sp.Grows() || sp.X != 0 || sp.Y != 0) }
	for _, sp := range g.Spaces {
		if on(sp) {
			span(sp.X, sp.Y, halfM(sp.Length, sp.Width, sp.Round))
		}
	}
	if math.IsInf(lowX, 1) {
		return nil
	}
	edge := math.Max(1, 0.12*math.Max(highX-lowX, highY-lowY))
	lowX, lowY, highX, highY = lowX-edge, lowY-edge, highX+edge, highY+edge
	scale := planWide / math.Max(highX-lowX, (highY-lowY)*0.75)
	p := &PlanDrawing{Scale: math.Round(scale*1000) / 1000, Wide: planWide, Tall: math.Round((highY - lowY) * scale)}
	shift := (planWide - (highX-lowX)*scale) / 2
	at := func(x, y float64) (float64, float64) {
		return math.Round((shift+(x-lowX)*scale)*10) / 10, math.Round((highY-y)*scale*10) / 10
	}
	shape := func(id, name, class string, no int, x, y, turn float64, long, wide, across unit.Length) *PlanShape {
		s := PlanShape{ID: id, Name: name, Class: class, No: no, Turn: turn}
		s.X, s.Y = at(x, y)
		if across.Known() {
			s.Round, s.R = true, math.Max(4, across.M*scale/2)
		} else {
			s.W, s.H = math.Max(6, long.M*scale), math.Max(6, wide.M*scale)
		}
		p.Shapes = append(p.Shapes, s)
		return &p.Shapes[len(p.Shapes)-1]
	}
	for _, o := range g.Obstacles {
		shape(o.ID, o.Name, "stands", 0, o.X, o.Y, o.TurnDeg, o.Length, o.Width, o.Round)
	}
	var walk []string
	for i, sp := range g.Spaces {
		if !on(sp) {
			continue
		}
		class := "grows"
		if string(sp.ID) == marked {
			class = "grows marked"
		}
		one := shape(string(sp.ID), sp.Name, class, i+1, sp.X, sp.Y, sp.TurnDeg, sp.Length, sp.Width, sp.Round)
		if sp.Figure != nil {
			one.Path = figurePath(sp.Figure, scale, one.X, one.Y)
		}
		x, y := at(sp.X, sp.Y)
		if string(sp.ID) == marked {
			p.Grip = &PlanShape{ID: marked, X: x, Y: y, R: math.Max(gripPx, halfM(sp.Length, sp.Width, sp.Round)*scale)}
		}
		walk = append(walk, fmt.Sprintf("%g %g", x, y))
	}
	var taken [][4]float64
	for i := range p.Shapes {
		if one := &p.Shapes[i]; one.No > 0 {
			one.LX, one.LY = free(&taken, one.X, one.Y, 4+8*float64(len(strconv.Itoa(one.No))), p.Wide, p.Tall)
			if math.Hypot(one.LX-one.X, one.LY-one.Y) > 10 {
				one.Lead = fmt.Sprintf("M%g %gL%s %s", one.X, one.Y, px(one.LX), px(one.LY))
			}
		}
	}
	if len(walk) > 1 {
		p.Walk = "M" + strings.Join(walk, "L")
	}
	bar := 1.0
	for _, b := range []float64{2, 5, 10, 20, 50} {
		if b*scale < planWide/3 {
			bar = b
		}
	}
	p.BarX, p.BarY, p.BarW, p.BarWords = 8, p.Tall-10, math.Round(bar*scale), fmt.Sprintf("%g m", bar)
	p.Says = fmt.Sprintf("Plan from above, north up: %s numbered in walking order, %s.", plural(len(g.Spaces), "space", "spaces"), plural(len(g.Obstacles), "thing that shades", "things that shade"))
	return p
}

func halfM(long, wide, across unit.Length) float64 {
	if across.Known() {
		return across.M / 2
	}
	return math.Max(long.M, wide.M) / 2
}

// MovePage moves, turns and copies one space, and its place in the walk.
type MovePage struct {
	Frame
	ID, Name string
	Where    string
	Plan     *PlanDrawing
	Forms    []MoveForm
	Spaces   []Option
	Step     string
	Steps    []Option
	No, Of   int
	DragForm string // id of the form a drag sends
}

// MoveForm is one button.
type MoveForm struct{ Form, Do, Words string }

// moveSteps are how far one tap goes, by the units of the garden.
func moveSteps(imperial bool) []Option {
	if imperial {
		return []Option{{Value: "1 in", Words: "1 in"}, {Value: "6 in", Words: "6 in"}, {Value: "3 ft", Words: "3 ft"}}
	}
	return []Option{{Value: "5 cm", Words: "5 cm"}, {Value: "20 cm", Words: "20 cm"}, {Value: "1 m", Words: "1 m"}}
}

var moves = []MoveForm{{Do: "north", Words: "North"}, {Do: "west", Words: "West"}, {Do: "east", Words: "East"}, {Do: "south", Words: "South"},
	{Do: "left", Words: "Turn left"}, {Do: "right", Words: "Turn right"}, {Do: "up", Words: "Earlier in the walk"}, {Do: "down", Words: "Later in the walk"}}

// planPage shows the plan with one space marked and buttons to move it.
func (s *site) planPage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err == nil && (d.g == nil || len(d.g.Spaces) == 0) {
		http.Redirect(w, r, "/entry", http.StatusSeeOther)
		return
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	id := r.URL.Query().Get("space")
	if id == "" {
		id = string(d.g.Spaces[0].ID)
	}
	sp, ok := d.g.Space(garden.SpaceID(id))
	if !ok {
		s.fail(w, r, ErrNotThere)
		return
	}
	p := &MovePage{Frame: s.entryFrame(r, d, "Move "+sp.Name, "entryplan"), ID: id, Name: sp.Name, Plan: drawPlan(d.g, id), DragForm: ledger.NewID(), Of: len(d.g.Spaces)}
	p.Script = s.assets.href["entryplan.js"]
	was, _ := garden.Look(d.text, "spaces", id)
	p.Where = whereLine(was)
	steps := moveSteps(feet(was))
	p.Step = r.URL.Query().Get("step")
	if p.Step == "" {
		p.Step = steps[1].Value
	}
	p.Steps = choose(steps, p.Step)
	for i, one := range d.g.Spaces {
		if one.ID == sp.ID {
			p.No = i + 1
		}
		p.Spaces = append(p.Spaces, Option{Value: string(one.ID), Words: one.Name, Chosen: one.ID == sp.ID})
	}
	for _, m := range moves {
		m.Form = ledger.NewID()
		p.Forms = append(p.Forms, m)
	}
	s.draw(w, r, http.StatusOK, p)
}

// feet reports whether a space was measured in feet and inches.
func feet(v garden.Value) bool {
	for _, k := range []string{"length", "across", "east"} {
		if l, err := unit.ParseLength(v.Get(k)); err == nil {
			return l.System() == unit.Imperial
		}
	}
	return false
}

// turnDeg is one tap of turning.
const turnDeg = 15.0

// saveMove moves, turns or reorders one space.
func (s *site) saveMove(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	err := s.once(w, r, func() (done, error) {
		d, err := s.described(r.Context())
		if err != nil {
			return done{}, err
		}
		v := r.PostForm
		id, do := v.Get("space"), v.Get("do")
		if d.g == nil {
			return done{}, errGone
		}
		sp, ok := d.g.Space(garden.SpaceID(id))
		if !ok {
			return done{}, errGone
		}
		was, _ := garden.Look(d.text, "spaces", id)
		step, err := unit.ParseLength(or(v.Get("step"), "20 cm"))
		if err != nil || step.M <= 0 || step.M > 10 {
			return done{}, errBroken
		}
		p := &FormPage{Faults: faults{}, where: map[string]string{}, next: "/entry/plan", words: "Moved " + sp.Name + "."}
		switch do {
		case "north", "south", "east", "west":
			key, by, from := "north", step.M, sp.Y
			if do == "east" || do == "west" {
				key, from = "east", sp.X
			}
			if do == "south" || do == "west" {
				by = -by
			}
			p.put(onPlan(from+by, feet(was)), "spaces", id, key)
			p.marksExactly(sp.Guessed, without(sp.Guessed, "east", "north"), "spaces", id, "guessed")
			if farWords, far := farFromAll(d.g, id, was.With(key, garden.Text(onPlan(from+by, false)))); far {
				return done{words: "Not moved. " + farWords, back: "/entry/plan"}, nil
			}
		case "left", "right":
			turn := sp.TurnDeg + turnDeg
			if do == "left" {
				turn = sp.TurnDeg - turnDeg
			}
			turn = math.Mod(math.Mod(turn, 360)+360, 360)
			words := ""
			if turn != 0 {
				words = fmt.Sprintf("%g degrees", turn)
			}
			p.put(words, "spaces", id, "turn")
			p.words = "Turned " + sp.Name + "."
		case "to": // dragged by so many metres
			east, errE := strconv.ParseFloat(v.Get("east"), 64)
			north, errN := strconv.ParseFloat(v.Get("north"), 64)
			if errE != nil || errN != nil || math.IsNaN(east+north) || math.IsInf(east+north, 0) {
				return done{}, errBroken
			}
			x, y := onPlan(snap(sp.X+east, feet(was)), feet(was)), onPlan(snap(sp.Y+north, feet(was)), feet(was))
			if farWords, far := farFromAll(d.g, id, was.With("east", garden.Text(x)).With("north", garden.Text(y))); far {
				return done{words: "Not moved. " + farWords, back: "/entry/plan?space=" + queryEscape(id)}, nil
			}
			p.put(x, "spaces", id, "east")
			p.put(y, "spaces", id, "north")
			p.marksExactly(sp.Guessed, without(sp.Guessed, "east", "north"), "spaces", id, "guessed")
			p.words = "Moved " + sp.Name + " to " + x + " east, " + y + " north."
		case "up", "down":
			if patch, ok := walkPatch(d.g, id, do == "up"); ok {
				p.patches = append(p.patches, patch)
			}
		default:
			return done{}, errBroken
		}
		out, err := s.keepText(r, d, p)
		if err == errForm {
			return done{words: "Not moved. " + p.Problem, back: "/entry/plan?space=" + queryEscape(id)}, nil
		}
		out.back = "/entry/plan?space=" + queryEscape(id) + "&step=" + queryEscape(step.Typed)
		return out, err
	})
	if err != nil {
		s.fail(w, r, err)
	}
}

// snap puts a dragged place on a step no finger can better: 5 cm or 1 inch.
func snap(m float64, imperial bool) float64 {
	step := 0.05
	if imperial {
		step = 0.0254
	}
	return step * math.Round(m/step)
}

// onPlan writes a place on the plan in the gardener's units.
func onPlan(m float64, imperial bool) string {
	if !imperial {
		return metres(m)
	}
	return fmt.Sprintf("%g in", math.Round(m/0.0254*4)/4)
}

func without(keys []string, drop ...string) []string {
	var out []string
	for _, k := range keys {
		if !isGuessed(drop, k) {
			out = append(out, k)
		}
	}
	return out
}

// walkPatch moves a space one place in the walking order.
func walkPatch(g *garden.Garden, id string, up bool) (garden.Patch, bool) {
	for i, sp := range g.Spaces {
		switch {
		case string(sp.ID) != id:
		case up && i > 0:
			return garden.Patch{Op: garden.Move, At: garden.Path{"spaces", id}, To: string(g.Spaces[i-1].ID)}, true
		case !up && i+1 < len(g.Spaces):
			return garden.Patch{Op: garden.Move, At: garden.Path{"spaces", string(g.Spaces[i+1].ID)}, To: id}, true
		}
	}
	return garden.Patch{}, false
}

// HalfW and HalfH are half the sides, for drawing from a corner.
func (s PlanShape) HalfW() float64 { return s.W / 2 }

// HalfH is half the short side.
func (s PlanShape) HalfH() float64 { return s.H / 2 }
