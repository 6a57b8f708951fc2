package ledger

import (
	"slices"

	"bedweek/internal/cal"
)

// Named is what somebody says a planting is, or is not.
const Named Kind = "named"

// Naming is the body of Named, layout 1. It runs through the whole line of
// descent: up to where the name was lost and down to everything that came from
// there and bears the same name; unless only is set.
type Naming struct {
	Planting string   `json:"planting"`
	Count    int      `json:"count,omitempty"` // some of them: they become a planting of their own; 0 = all
	Is       string   `json:"is,omitempty"`    // the variety
	From     string   `json:"from,omitempty"`  // the planting it came from, when it was one of several
	Crop     string   `json:"crop,omitempty"`  // when the crop was wrong too
	Lot      string   `json:"lot,omitempty"`
	Not      []string `json:"not,omitempty"`  // varieties it is not
	Only     bool     `json:"only,omitempty"` // these plants only, not their line
	By       string   `json:"by,omitempty"`   // what told it: "leaf edge"
	Note     string   `json:"note,omitempty"`
}

// Called is one naming as it touched a planting. All empty = could not tell.
type Called struct {
	Event string
	On    cal.Day
	Was   string   `json:",omitempty"` // the name before
	Is    string   `json:",omitempty"`
	Not   []string `json:",omitempty"`
	By    string   `json:",omitempty"`
	Asked string   `json:",omitempty"` // the planting that was looked at, when another of the line
}

// Described is how a variety looks, from its packet or from seeing it: what
// parts look-alikes.
const Described Kind = "described"

// Trait is the body of Described, layout 1.
type Trait struct {
	Crop    string `json:"crop"`
	Variety string `json:"variety"`
	Feature string `json:"feature"` // "leaf edge"
	Value   string `json:"value"`   // "curled"
	By      string `json:"by"`      // "packet", "own eyes", "hearsay"
	Note    string `json:"note,omitempty"`
}

// TraitNote is a trait with its entry and day.
type TraitNote struct {
	Event string
	On    cal.Day
	Trait
}

// name lets a naming have its effect on all it reaches.
func (r *replayer) name(s step, b Naming) {
	p := r.planting(s, b.Planting)
	if p == nil {
		return
	}
	if p.Known && b.Count > 0 && b.Count < p.Count {
		p = r.part(s, p, b.Count)
		r.thread(p.ID).Mixed = false
		b.Only = true
	}
	line := []string{p.ID}
	t := r.thread(p.ID)
	if !b.Only && !t.Mixed {
		line = r.line(p)
	}
	r.giveBack(p, t, b.From)
	for _, id := range line {
		r.call(s, r.plantings[id], b, p.ID)
	}
}

// call gives one planting its name.
func (r *replayer) call(s step, p *Planting, b Naming, asked string) {
	c := Called{Event: s.ID, On: s.Happened, Was: p.called(), Is: b.Is, Not: b.Not, By: b.By}
	if p.ID != asked {
		c.Asked = asked
	}
	t := r.thread(p.ID)
	t.Named = append(t.Named, c)
	r.touched[p.ID] = true
	if b.Is != "" {
		if p.Variety != "" && p.Variety != b.Is {
			p.Lot = "" // the packet said otherwise: no longer known from which
		}
		p.Variety, p.OneOf, t.Mixed = b.Is, nil, false
	} else if len(b.Not) > 0 {
		p.OneOf = slices.DeleteFunc(append([]string(nil), p.OneOf...), func(v string) bool { return slices.Contains(b.Not, v) })
		if slices.Contains(b.Not, p.Variety) {
			p.Variety, p.Lot = "", ""
		}
		if len(p.OneOf) == 1 {
			p.Variety = p.OneOf[0]
		}
		if len(p.OneOf) < 2 {
			p.OneOf = nil
		}
	}
	if b.Crop != "" {
		p.Crop = b.Crop
	}
	if b.Lot != "" {
		p.Lot = b.Lot
	}
}

// called is a planting's name as it stands: the variety, or the list.
func (p *Planting) called() string {
	if p.Variety != "" || len(p.OneOf) == 0 {
		return p.Variety
	}
	out := "one of "
	for i, v := range p.OneOf {
		if i > 0 {
			out += ", "
		}
		out += v
	}
	return out
}

// line lists the plantings of one descent that bear the same name as p: up to
// where it began, and everything down from there. Ids in order.
func (r *replayer) line(p *Planting) []string {
	same := func(q *Planting) bool {
		return q != nil && q.Crop == p.Crop && q.Variety == p.Variety && slices.Equal(q.OneOf, p.OneOf) && (r.threads[q.ID] == nil || !r.threads[q.ID].Mixed)
	}
	root := p.ID
	for up := r.plantings[root].From; up != "" && same(r.plantings[up]); up = r.plantings[up].From {
		root = up
	}
	children := map[string][]string{}
	for id, q := range r.plantings {
		if q.From != "" {
			children[q.From] = append(children[q.From], id)
		}
	}
	var out []string
	for todo := []string{root}; len(todo) > 0; todo = todo[1:] {
		if !same(r.plantings[todo[0]]) {
			continue
		}
		out = append(out, todo[0])
		todo = append(todo, children[todo[0]]...)
	}
	slices.Sort(out)
	return out
}

// giveBack puts plants taken by shares back, once it is known which of several
// plantings they came from. A planting that has not enough keeps what it has,
// and the rest stays as shared. One counted since keeps its count: the eye
// that counted it saw what had been taken.
func (r *replayer) giveBack(p *Planting, t *Thread, from string) {
	source := r.plantings[from]
	if from == "" || source == nil || len(t.Takes) == 0 {
		return
	}
	counted := func(id string) bool {
		for _, k := range t.Takes {
			if k.From == id {
				return r.counts[id] != k.counts
			}
		}
		return false
	}
	for i, k := range t.Takes {
		other := r.plantings[k.From]
		if k.From == from || other == nil || other.Ended != 0 || source.Ended != 0 {
			continue
		}
		n := k.Count
		if !counted(from) {
			n = min(n, source.Count)
			source.Count -= n
			source.Removed += n
		}
		if !counted(k.From) {
			other.Count += n
			other.Removed -= n
		}
		t.Takes[i].Count -= n
		r.touched[k.From], r.touched[from] = true, true
		for j := range t.Takes {
			if t.Takes[j].From == from {
				t.Takes[j].Count += n
			}
		}
	}
	p.Lot = source.Lot
}

func (f *Faults) naming(b Naming) {
	f.name("planting", b.Planting, true)
	f.name("from", b.From, false)
	f.name("crop", b.Crop, false)
	f.name("lot", b.Lot, false)
	f.text("is", b.Is, nameLimit)
	f.text("by", b.By, wordsLimit)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	if len(b.Not) > 20 {
		f.add("%q names %d; the most is 20", "not", len(b.Not))
	}
	for _, v := range b.Not {
		f.text("not", v, nameLimit)
	}
	if b.Is != "" && len(b.Not) > 0 {
		f.add("%q and %q are both given; say one", "is", "not")
	}
}

func (f *Faults) trait(b Trait) {
	f.name("crop", b.Crop, true)
	f.name("variety", b.Variety, true)
	f.name("feature", b.Feature, true)
	f.name("value", b.Value, true)
	f.text("note", b.Note, noteLimit)
	switch b.By {
	case "packet", "own eyes", "hearsay":
	default:
		f.add("%q is %q; it may be packet, own eyes or hearsay", "by", clip(b.By))
	}
}
