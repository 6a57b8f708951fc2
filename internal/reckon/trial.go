package reckon

import (
	"context"
	"errors"
	"fmt"
	"slices"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/shade"
	"bedweek/internal/stand"
)

// Trial is a what-if about the garden. Nothing of it is kept.
type Trial struct {
	Space   string  // with Do
	Do      string  // "deeper", "netted", "watered", "gone", "another"
	By      float64 // of deeper, cm
	Minutes float64 // more a week; below 0 = fewer
	Skip    string  // crop not grown anywhere
	Away    cal.Window
}

// netLight is the share of light that passes an insect net: common practice,
// no source.
const netLight = 0.85

// ErrTrial is a question that cannot be asked of this garden; its words say
// why.
var ErrTrial = errors.New("this cannot be tried")

// trialWays are what can be done with a space.
var trialWays = []Choice{
	{"deeper", "deeper"}, {"netted", "under an insect net"}, {"watered", "on a drip line"},
	{"gone", "taken away"}, {"another", "and one more like it"},
}

// TrialWays lists what can be tried with a space.
func TrialWays() []Choice { return slices.Clone(trialWays) }

// Words says the question.
func (t Trial) Words(in *Inputs) string {
	where := spaceNameOf(in, t.Space)
	switch {
	case t.Do == "deeper":
		return fmt.Sprintf("What if %s were %.0f cm deeper?", where, t.By)
	case t.Do == "netted":
		return fmt.Sprintf("What if %s stood under an insect net all the time?", where)
	case t.Do == "watered":
		return fmt.Sprintf("What if %s were watered by a drip line?", where)
	case t.Do == "gone":
		return fmt.Sprintf("What if %s were gone, with all that stands in it?", where)
	case t.Do == "another":
		return fmt.Sprintf("What if there were one more like %s, with fresh medium?", where)
	case t.Minutes > 0:
		return fmt.Sprintf("What if there were %.0f minutes more a week?", t.Minutes)
	case t.Minutes < 0:
		return fmt.Sprintf("What if there were %.0f minutes fewer a week?", -t.Minutes)
	case t.Skip != "":
		name := t.Skip
		if c, ok := in.Book.Crop(crop.ID(t.Skip)); ok {
			name = c.Name
		}
		return fmt.Sprintf("What if you grew no %s?", name)
	case t.Away.Early != 0:
		return fmt.Sprintf("What if nobody were here from %s to %s?", t.Away.Early.Long(), t.Away.Late.Long())
	}
	return ""
}

// Limits says what the answer leaves out.
func (t Trial) Limits() string {
	switch {
	case t.Do == "netted":
		return "Harm by pests is not reckoned, so the net's gain is not in it: only its shade, and what bees can no longer reach."
	case t.Do == "watered":
		return "Counted: fewer dry spells for the plants. Not counted: your time with the can."
	case t.Do == "another":
		return "It is taken to have the same light as the first."
	case t.Away.Early != 0:
		return "Nobody sows, picks or eats then. Who waters is not reckoned: see the page Water, Away."
	case t.Do == "deeper":
		return "The medium is taken to be as good all the way down. Ask about the load before you fill it."
	}
	return ""
}

// ground changes the garden and its ground as the trial asks.
func (t Trial) apply(in *Inputs, g *Ground) (*Inputs, *Ground, error) {
	out := *in
	gg := *in.Garden
	gg.Spaces = slices.Clone(gg.Spaces)
	gg.Nevers = slices.Clone(gg.Nevers)
	out.Garden = &gg
	if t.Minutes != 0 {
		was := minutesWished(&gg)
		if was == 0 {
			return nil, nil, fmt.Errorf("%w: the garden sets no limit to the work", ErrTrial)
		}
		if gg.Minutes = was + t.Minutes; gg.Minutes < 1 {
			return nil, nil, fmt.Errorf("%w: there are only %.0f minutes a week", ErrTrial, was)
		}
	}
	if t.Skip != "" {
		crops := cropsSkipped(in, t.Skip)
		if len(crops) == 0 {
			return nil, nil, fmt.Errorf("%w: choose one of the crops", ErrTrial)
		}
		for _, c := range crops {
			gg.Nevers = append(gg.Nevers, garden.Never{Crop: garden.CropID(c)})
		}
		gg.Musts = slices.DeleteFunc(slices.Clone(gg.Musts), func(m garden.Must) bool { return slices.Contains(crops, string(m.Crop)) })
	}
	out.away = t.Away
	if t.Do == "" {
		return &out, g, nil
	}
	i := slices.IndexFunc(gg.Spaces, func(s garden.Space) bool { return string(s.ID) == t.Space })
	if i < 0 || !gg.Spaces[i].Grows() {
		return nil, nil, fmt.Errorf("%w: choose one of the spaces", ErrTrial)
	}
	sp := &gg.Spaces[i]
	switch t.Do {
	case "deeper":
		if !(t.By >= 1 && t.By <= 100) {
			return nil, nil, fmt.Errorf("%w: give 1 to 100 cm", ErrTrial)
		}
		sp.Depth.M += t.By / 100
	case "netted":
		sp.Covers = append(slices.Clone(sp.Covers), garden.Cover{Kind: "insect net", Light: netLight, Always: true})
	case "watered":
		if sp.Water == "drip" || sp.Water == "reservoir" {
			return nil, nil, fmt.Errorf("%w: it is watered by itself already", ErrTrial)
		}
		sp.Water = "drip"
	case "gone":
		gg.Spaces = slices.Delete(gg.Spaces, i, i+1)
		return &out, g.apart(i).lacking(i), nil
	case "another":
		more := *sp
		more.ID, more.Standing, more.Medium = more.ID+"-more", nil, ""
		more.Name = spaceName(*sp) + ", the second"
		gg.Spaces = append(gg.Spaces, more)
		return &out, g.another(i), nil
	default:
		return nil, nil, fmt.Errorf("%w: choose what to do with the space", ErrTrial)
	}
	h := g.apart(i)
	p := *h.Place
	p.Envs, p.Airs = slices.Clone(p.Envs), slices.Clone(p.Airs)
	p.Envs[i] = env(&out, *sp, p.Lights[i], p.Set.Futures)
	p.Airs[i] = stand.NewAir(p.Envs[i])
	h.Place = &p
	menu, _ := menuOf(&out, &p, offered(&out), []int{i}, nil)
	h.Menu = append(h.Menu, menu...)
	return &out, h, nil
}

// apart is a ground on which space i is a class of its own, with nothing grown
// in it yet.
func (g *Ground) apart(i int) *Ground {
	out := *g
	p := *g.Place
	p.Class = slices.Clone(p.Class)
	heir := -1
	if p.Class[i] == i {
		for j := range p.Class {
			if j != i && p.Class[j] == i {
				if heir < 0 {
					heir = j
				}
				p.Class[j] = heir
			}
		}
	}
	out.Menu = nil
	for _, e := range g.Menu {
		if e.Class == i {
			if heir < 0 {
				continue
			}
			e.Class = heir
		}
		out.Menu = append(out.Menu, e)
	}
	p.Class[i] = i
	out.Place = &p
	return &out
}

// lacking is a ground without space i, which is a class of its own.
func (g *Ground) lacking(i int) *Ground {
	out := *g
	p := *g.Place
	less := func(k int) int {
		if k > i {
			return k - 1
		}
		return k
	}
	p.Lights = slices.Delete(slices.Clone(p.Lights), i, i+1)
	p.Envs = slices.Delete(slices.Clone(p.Envs), i, i+1)
	p.Airs = slices.Delete(slices.Clone(p.Airs), i, i+1)
	p.Class = slices.Delete(slices.Clone(p.Class), i, i+1)
	for k := range p.Class {
		p.Class[k] = less(p.Class[k])
	}
	out.Menu = slices.Clone(g.Menu)
	for k := range out.Menu {
		out.Menu[k].Class = less(out.Menu[k].Class)
	}
	out.Place = &p
	return &out
}

// another is a ground with one more space like i at its end.
func (g *Ground) another(i int) *Ground {
	out := *g
	p := *g.Place
	p.Lights = append(slices.Clone(p.Lights), shade.Light(p.Lights[i]))
	p.Envs = append(slices.Clone(p.Envs), p.Envs[i])
	p.Airs = append(slices.Clone(p.Airs), p.Airs[i])
	p.Class = append(slices.Clone(p.Class), p.Class[i])
	out.Place = &p
	return &out
}

// Try plans the garden as the trial has it and sets it beside the present
// plan. Both sides start from the same plan and have the same work.
func (r *Result) Try(ctx context.Context, t Trial) (*Compared, error) {
	plain, g, err := t.apply(r.plainInputs(), r.ground)
	if err != nil {
		return nil, err
	}
	from := r.polished(ctx)
	scope := r.scopeOfTrial(ctx, t)
	base := r.beside(ctx, scope)
	like := r.likenessOf(&tried{m: r.model, plan: *from})
	plain.Prior = &like
	in := plain.wished()
	m, err := modelOf(in, g.wider(in))
	if err != nil {
		return nil, err
	}
	var but []string
	if t.Do != "" {
		but = []string{t.Space}
		if scope != nil && t.Do == "another" {
			but, scope = nil, append(scope, t.Space+"-more")
		}
	}
	other := try(ctx, in, m, carried(from, r.model, m, but...), scope)
	if ctx.Err() != nil {
		return nil, ctx.Err()
	}
	c := compare(base, other)
	c.Question, c.Limits = t.Words(r.in), t.Limits()
	if scope != nil {
		c.Where = "Planned again in the spaces it concerns and those nearest to them in medium and foods; the rest is held."
	}
	return c, nil
}

// scopeOfTrial are the spaces a trial is searched in; nil = everywhere.
func (r *Result) scopeOfTrial(ctx context.Context, t Trial) []string {
	switch {
	case t.Do != "" && t.Minutes == 0 && t.Skip == "" && t.Away.Early == 0:
		return r.around(ctx, []string{t.Space})
	case t.Skip != "" && t.Do == "" && t.Minutes == 0 && t.Away.Early == 0:
		if in := r.spacesWith(ctx, cropsSkipped(r.in, t.Skip)); len(in) > 0 {
			return r.around(ctx, in)
		}
	}
	return nil
}

// cropsSkipped are the crops of a skip: one crop, or all that serve a food.
func cropsSkipped(in *Inputs, skip string) []string {
	if _, ok := in.Book.Crop(crop.ID(skip)); ok {
		return []string{skip}
	}
	var out []string
	for _, c := range in.Book.Crops {
		if slices.Contains(c.Foods, skip) {
			out = append(out, string(c.ID))
		}
	}
	return out
}
