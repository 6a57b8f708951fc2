package ledger

import (
	"sort"

	"bedweek/internal/cal"
)

// Kinds of hand-over: the moments at which a name gets lost.
const (
	PrickedOut Kind = "pricked out" // body: Handover; seedlings into pots or cells of their own
	PottedOn   Kind = "potted on"   // body: Handover; into a larger pot
	Hardening  Kind = "hardening"   // body: Handover; to the outdoors by degrees
)

type (
	// Handover moves all or some of a planting, or of one of several when
	// nobody knows which. Layout 1.
	Handover struct {
		Planting string   `json:"planting,omitempty"`
		OneOf    []string `json:"one_of,omitempty"` // plantings it may have come from, instead of planting
		Space    string   `json:"space,omitempty"`  // "" = stays where it is
		Count    int      `json:"count,omitempty"`  // 0 = all of it
		Rest     string   `json:"rest,omitempty"`   // "" = the others stay; "gone" = these are all there are
		Pot      string   `json:"pot,omitempty"`    // as said: "7 cm"
		Note     string   `json:"note,omitempty"`
	}
	// Moved is a setting out from one of several trays, nobody knows which.
	// Layout 2 of "set out"; layout 1 stays as it was.
	Moved struct {
		OneOf []string `json:"one_of"`
		Space string   `json:"space"`
		Count int      `json:"count,omitempty"`
		Note  string   `json:"note,omitempty"`
	}
)

// Thread is what the entries say of one planting's identity, beside what
// stands in Planting: where it came from, what was done, what it is not.
type Thread struct {
	ID    string
	From  []string `json:",omitempty"` // plantings it came from; several = one of them, or a mix
	Takes []Take   `json:",omitempty"` // what was taken from each when nobody knew from which
	Mixed bool     `json:",omitempty"` // its plants may differ: a name given to one is not all's
	About bool     `json:",omitempty"` // its count is a share, not known
	Steps []Handed `json:",omitempty"`
	Named []Called `json:",omitempty"` // what was said of its name, in replay order
}

// Take is a number of plants taken from a planting.
type Take struct {
	From  string
	Count int

	counts int // how often From had been counted by then
}

// Handed is one hand-over.
type Handed struct {
	Event string
	Kind  Kind
	On    cal.Day
	Count int
	Pot   string `json:",omitempty"`
	Space string `json:",omitempty"`
}

// thread returns the identity of a planting, made when first asked for.
func (r *replayer) thread(id string) *Thread {
	t, ok := r.threads[id]
	if !ok {
		t = &Thread{ID: id}
		r.threads[id] = t
	}
	return t
}

// part splits n plants off p as a planting of their own, named by the entry.
func (r *replayer) part(s step, p *Planting, n int) *Planting {
	part := *p
	part.OneOf = append([]string(nil), p.OneOf...)
	part.ID, part.From, part.FromFile = s.ID, p.ID, false
	part.Count, part.Began, part.Removed = n, n, 0
	part.PickedKg, part.Picks, part.LastPick = 0, 0, 0
	p.Count -= n
	p.Removed += n
	r.plantings[part.ID] = &part
	r.touched[part.ID] = true
	t := r.thread(part.ID)
	t.From = []string{p.ID}
	if from, ok := r.threads[p.ID]; ok {
		t.Mixed = from.Mixed
		if n := len(from.Steps); n > 0 {
			t.Steps = append(t.Steps, from.Steps...)
		}
	}
	return &part
}

// handOver moves all or some of a planting.
func (r *replayer) handOver(s step, b Handover) {
	var p *Planting
	if len(b.OneOf) > 0 {
		p = r.fromOneOf(s, b.OneOf, b.Count)
	} else if p = r.planting(s, b.Planting); p != nil {
		if p.Ended != 0 && b.Count > 0 { // it stands, whatever was said
			p.Ended, p.Cause = 0, ""
		}
		switch {
		case p.Known && b.Count > 0 && b.Count < p.Count && b.Rest != "gone":
			p = r.part(s, p, b.Count)
		case p.Known && b.Count > p.Count:
			r.differ("%s: %d %s on %s, but %d stood by the entries.", p.words(), b.Count, s.Kind, s.Happened.Long(), p.Count)
			r.counted(p, b.Count)
		case p.Known && b.Count > 0:
			p.Removed += p.Count - b.Count
			p.Count = b.Count
		case b.Count > 0:
			p.Began, p.Count, p.Known = b.Count, b.Count, true
		}
	}
	if p == nil {
		return
	}
	if b.Space != "" {
		p.Space = b.Space
	}
	t := r.thread(p.ID)
	t.Steps = append(t.Steps, Handed{Event: s.ID, Kind: s.Kind, On: s.Happened, Count: p.Count, Pot: b.Pot, Space: p.Space})
}

// moved sets out plants of one of several trays.
func (r *replayer) moved(s step, b Moved) {
	p := r.fromOneOf(s, b.OneOf, b.Count)
	if p == nil {
		return
	}
	p.Space, p.SetOut = b.Space, s.Happened
	t := r.thread(p.ID)
	t.Steps = append(t.Steps, Handed{Event: s.ID, Kind: s.Kind, On: s.Happened, Count: p.Count, Space: p.Space})
}

// fromOneOf takes n plants (0 = all) out of several plantings, nobody knows
// how many from each: by the share each has of what stands, so that no plant
// is lost or doubled. What it makes is named by the entry.
func (r *replayer) fromOneOf(s step, ids []string, n int) *Planting {
	var from []*Planting
	total, seen := 0, map[string]bool{}
	for _, id := range ids {
		if p := r.planting(s, id); p != nil && !seen[id] && p.Ended == 0 {
			seen[id] = true
			from = append(from, p)
			total += p.Count
		}
	}
	if len(from) == 0 {
		return nil
	}
	all := n == 0 || n >= total
	if n == 0 {
		n = total
	}
	if n > total && total > 0 {
		r.differ("%s and others: %d %s on %s, but %d stood by the entries.", from[0].words(), n, s.Kind, s.Happened.Long(), total)
	}
	out := *from[0]
	out.ID, out.From, out.FromFile = s.ID, "", false
	out.Count, out.Began, out.Removed, out.Known = n, n, 0, n > 0
	out.PickedKg, out.Picks, out.LastPick, out.Looks, out.LookedOn = 0, 0, 0, "", 0
	t := r.thread(out.ID)
	takes := shares(from, min(n, total))
	for i, p := range from {
		t.From = append(t.From, p.ID)
		t.Takes = append(t.Takes, Take{p.ID, takes[i], r.counts[p.ID]})
		p.Count -= takes[i]
		p.Removed += takes[i]
		if all {
			p.Ended, p.Cause = s.Happened, "mixed with others"
		} else {
			r.thread(p.ID).About = true
		}
		if p.Lot != out.Lot {
			out.Lot = ""
		}
	}
	out.Variety, out.OneOf = candidates(from)
	t.Mixed = len(from) > 1
	r.plantings[out.ID] = &out
	r.touched[out.ID] = true
	return &out
}

// candidates is the name of plants that come from one of several plantings:
// one name when all have it, else a list.
func candidates(from []*Planting) (variety string, oneOf []string) {
	have := map[string]bool{}
	for _, p := range from {
		names := p.OneOf
		if len(names) == 0 {
			names = []string{p.Variety}
		}
		for _, v := range names {
			if p.Crop != from[0].Crop {
				v = joined(p.Crop, v)
			}
			if v == "" {
				v = "no name"
			}
			if !have[v] {
				have[v] = true
				oneOf = append(oneOf, v)
			}
		}
	}
	if len(oneOf) == 1 {
		if oneOf[0] == "no name" {
			return "", nil
		}
		return oneOf[0], nil
	}
	return "", oneOf
}

func joined(crop, variety string) string {
	if variety == "" {
		return crop
	}
	return crop + " " + variety
}

// shares divides n by the plantings' counts: whole plants, largest remainders
// first, earlier ones first among equals.
func shares(from []*Planting, n int) []int {
	out := make([]int, len(from))
	total := 0
	for _, p := range from {
		total += p.Count
	}
	if total == 0 {
		return out
	}
	type rest struct{ i, part int }
	var rests []rest
	left := n
	for i, p := range from {
		out[i] = n * p.Count / total
		left -= out[i]
		rests = append(rests, rest{i, n * p.Count % total})
	}
	sort.SliceStable(rests, func(a, b int) bool { return rests[a].part > rests[b].part })
	for k := 0; k < left; k++ {
		out[rests[k].i]++
	}
	return out
}

// threadStates lists the threads by id, each a copy.
func (r *replayer) threadStates() []Thread {
	var out []Thread
	for id, t := range r.threads {
		if _, stands := r.plantings[id]; !stands {
			continue
		}
		c := *t
		c.From, c.Takes = append([]string(nil), t.From...), append([]Take(nil), t.Takes...)
		c.Steps, c.Named = append([]Handed(nil), t.Steps...), append([]Called(nil), t.Named...)
		out = append(out, c)
	}
	sort.Slice(out, func(i, j int) bool { return out[i].ID < out[j].ID })
	return out
}

func (f *Faults) handover(b Handover) {
	f.name("planting", b.Planting, len(b.OneOf) == 0)
	f.name("space", b.Space, false)
	f.text("pot", b.Pot, nameLimit)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	if b.Planting != "" && len(b.OneOf) > 0 {
		f.add("%q and %q are both given; say one", "planting", "one_of")
	}
	f.plantings(b.OneOf)
	if b.Rest != "" && b.Rest != "gone" {
		f.add("%q is %q; it may be gone, or left out", "rest", clip(b.Rest))
	}
}

func (f *Faults) moved(b Moved) {
	f.name("space", b.Space, true)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	if len(b.OneOf) < 2 {
		f.add("%q names %d plantings; it needs two or more", "one_of", len(b.OneOf))
	}
	f.plantings(b.OneOf)
}

func (f *Faults) plantings(ids []string) {
	if len(ids) > 20 {
		f.add("%q names %d plantings; the most is 20", "one_of", len(ids))
	}
	for _, id := range ids {
		f.name("one_of", id, true)
	}
}
