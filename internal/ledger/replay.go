package ledger

import (
	"fmt"
	"sort"

	"bedweek/internal/cal"
)

// replayRules numbers the rules below. A change in them raises it, and the
// planting table of older files is then made again at the next start.
const replayRules = 3

// Replay returns what the events amount to. It is pure: the same events give
// the same state in any order of the slice. Plantings of the garden file
// appear when an event speaks of them, with FromFile set and only what the
// events say; ReplayOver knows more.
func Replay(events []Event) State { return ReplayOver(nil, events) }

// ReplayOver is Replay begun with the plantings standing in the garden file,
// so that their crop, space and count are known from the start. A standing
// Count above 0 is taken as known.
func ReplayOver(standing []Planting, events []Event) State {
	return replayed(standing, events).state()
}

// replayed is the replay, kept open for more.
func replayed(standing []Planting, events []Event) *replayer {
	return replayedSteps(standing, understood(events))
}

// replayedSteps is the same of steps that are the caller's to give away.
func replayedSteps(standing []Planting, given []step) *replayer {
	r := newReplayer(standing)
	steps := orderSteps(given)
	r.steps = steps[:0] // given is not used again: its place is
	back := takenBack(steps)
	for _, s := range steps {
		r.arrive(s)
		if !back[s.ID] {
			r.apply(s)
		}
	}
	r.touched = map[string]bool{}
	return r
}

// replayer is a state on its way.
type replayer struct {
	garden      string
	plantings   map[string]*Planting
	spaces      map[string]SpaceLook
	dismissed   map[string]string
	last        cal.Day
	differences []string
	questions   questions
	wet         []WetLook
	readings    []ReadingNote
	assumed     []AssumedNote
	edges       []EdgeNote
	forecasts   map[string]ForecastNote // by planting, the first said
	figures     []FigureNote
	wishes      []WishNote
	kept        []KeptNote
	pictures    []PictureNote
	lots        map[string]*LotState
	threads     map[string]*Thread
	counts      map[string]int // by planting: how often it was counted
	traits      []TraitNote
	works       []DoneNote
	sounds      []SoundNote
	epoch       int    // highest told of; taking the entry back changes nothing
	epochBy     string // the entry that told it

	steps   []step          // all that have come, to replay from when something reaches back
	here    map[string]bool // ids that have come
	awaited map[string]bool // ids named as causes that have not
	touched map[string]bool // plantings changed since the last look
}

func newReplayer(standing []Planting) *replayer {
	r := &replayer{
		plantings: map[string]*Planting{}, spaces: map[string]SpaceLook{}, dismissed: map[string]string{},
		questions: newQuestions(), lots: map[string]*LotState{}, threads: map[string]*Thread{}, counts: map[string]int{},
		forecasts: map[string]ForecastNote{},
		here:      map[string]bool{}, awaited: map[string]bool{}, touched: map[string]bool{},
	}
	for _, p := range standing {
		p.FromFile = true
		if p.Count > 0 {
			p.Known, p.Began = true, p.Count
		}
		r.plantings[p.ID] = &p
	}
	return r
}

// arrive notes that s is here and what it waits for.
func (r *replayer) arrive(s step) {
	r.steps = append(r.steps, s)
	r.here[s.ID] = true
	delete(r.awaited, s.ID)
	if b, ok := s.body.(Restoration); ok && b.Epoch > r.epoch {
		r.epoch, r.epochBy = b.Epoch, s.ID
	}
	for _, id := range s.causes() {
		if !r.here[id] {
			r.awaited[id] = true
		}
	}
	r.questions.parent(s.ID, s.Parent)
}

// follows reports whether s, coming last, can be applied on top: it takes
// nothing back, and nothing that came before waits for it.
func (r *replayer) follows(s step) bool {
	_, takesBack := s.body.(Void)
	return !takesBack && !r.awaited[s.ID]
}

// apply lets s have its effect.
func (r *replayer) apply(s step) {
	if s.Happened > r.last {
		r.last = s.Happened
	}
	switch b := s.body.(type) {
	case Garden:
		r.garden = b.Text
	case Started:
		if s.Kind == Sown || b.Planting == "" {
			r.start(s, b)
		} else {
			r.setOut(s, b)
		}
	case Amount:
		if p := r.planting(s, b.Planting); p != nil {
			p.Picks++
			p.PickedKg += b.Kg
			if s.Happened > p.LastPick || p.LastPick == 0 {
				p.LastPick = s.Happened
			}
		}
	case Ended:
		r.end(s, b)
	case Count:
		r.count(s, b)
	case Look:
		r.look(s, b)
		r.wetLook(s, b.Space, b.Planting, b.Looks, 0, 0)
	case LookAt:
		r.lookAt(s, b.Look())
		r.wetLook(s, b.Space, b.Planting, b.Looks, b.Hour, 0)
	case Watering:
		r.wetLook(s, b.Space, "", watered, b.Hour, b.Litres)
	case Reading:
		r.readings = append(r.readings, ReadingNote{Event: s.ID, On: s.Happened, Reading: b})
	case Assumption:
		r.assumed = append(r.assumed, AssumedNote{Event: s.ID, On: s.Happened, Assumption: b})
	case Forecast:
		if _, told := r.forecasts[b.Planting]; !told {
			r.forecasts[b.Planting] = ForecastNote{Event: s.ID, On: s.Happened, Forecast: b}
		}
	case Edge:
		r.edges = append(r.edges, EdgeNote{Event: s.ID, Edge: b})
	case OwnFigure:
		r.figures = append(r.figures, FigureNote{Event: s.ID, On: s.Happened, OwnFigure: b})
	case Wish:
		r.wishes = append(r.wishes, WishNote{Event: s.ID, On: s.Happened, Wish: b})
	case KeptPlan:
		r.kept = append(r.kept, KeptNote{Event: s.ID, KeptPlan: b})
	case Agreement:
		r.questions.agree(b)
	case Dismissal:
		r.dismissed[b.Task] = b.Why
	case Sound:
		r.sounds = append(r.sounds, SoundNote{Event: s.ID, On: s.Happened, Sound: b})
	case Caption:
		r.caption(b)
	case Photo:
		r.pictures = append(r.pictures, PictureNote{Event: s.ID, On: s.Happened, Photo: b})
	case Lot:
		r.gotLot(s, b)
	case Germination:
		r.testLot(s, b)
	case SeedUse:
		r.useLot(s, b.Lot, b.Count, b.Grams)
	case SeedCount:
		r.countLot(s, b)
	case Handover:
		r.handOver(s, b)
	case Moved:
		r.moved(s, b)
	case Naming:
		r.name(s, b)
	case Trait:
		r.traits = append(r.traits, TraitNote{Event: s.ID, On: s.Happened, Trait: b})
	case Restoration:
	case Void:
	default:
		r.differ("An entry of %s is of a kind this program cannot read (%q, layout %d).", s.Happened.Long(), s.Kind, s.Version)
	}
}

func (r *replayer) start(s step, b Started) {
	p := &Planting{
		ID: s.ID, Crop: b.Crop, Variety: b.Variety, OneOf: b.OneOf, Space: b.Space, Lot: b.Lot,
		Count: b.Count, Known: b.Count > 0, Began: b.Count,
	}
	if s.Kind == Sown {
		p.Sown = s.Happened
		r.useLot(s, b.Lot, b.Count, 0)
	} else {
		p.SetOut = s.Happened
	}
	r.plantings[p.ID] = p
	r.touched[p.ID] = true
}

// setOut moves a planting from the shelf. When fewer go out than are known to
// stand, those that go become a planting of their own, named by the event.
func (r *replayer) setOut(s step, b Started) {
	p := r.planting(s, b.Planting)
	if p == nil {
		return
	}
	r.questions.answer(s, p.ID, false)
	if p.Known && b.Count > 0 && b.Count < p.Count {
		part := r.part(s, p, b.Count)
		part.Space, part.SetOut = b.Space, s.Happened
		part.name(b)
		return
	}
	if p.Known && b.Count > p.Count {
		r.differ("%s: %d set out on %s, but %d stood by the entries.", p.words(), b.Count, s.Happened.Long(), p.Count)
	}
	p.Space, p.SetOut = b.Space, s.Happened
	p.name(b)
	if b.Count > 0 && (!p.Known || b.Count != p.Count) {
		if !p.Known {
			p.Began = b.Count
		}
		r.counted(p, b.Count)
	}
}

// name takes over what a setting out says of crop, variety and lot.
func (p *Planting) name(b Started) {
	if b.Crop != "" {
		p.Crop = b.Crop
	}
	if b.Variety != "" || len(b.OneOf) > 0 {
		p.Variety, p.OneOf = b.Variety, b.OneOf
	}
	if b.Lot != "" {
		p.Lot = b.Lot
	}
}

// end takes plants away: all of them when no count is given or none are left.
func (r *replayer) end(s step, b Ended) {
	p := r.planting(s, b.Planting)
	if p == nil {
		return
	}
	if p.Known && b.Count > p.Count {
		r.differ("%s: %d %s on %s, but %d stood by the entries.", p.words(), b.Count, s.Kind, s.Happened.Long(), p.Count)
	}
	if b.Count > 0 && (!p.Known || b.Count < p.Count) {
		p.Removed += b.Count
		if p.Known {
			p.Count -= b.Count
		}
		return
	}
	r.questions.answer(s, p.ID, false)
	p.Removed += p.Count
	p.Count, p.Ended, p.Cause = 0, s.Happened, b.Cause
}

// counted sets a planting's count to what was said to stand. What was taken
// from it before is in that count, whatever is told of it later.
func (r *replayer) counted(p *Planting, n int) {
	p.Count, p.Known, p.Removed = n, true, 0
	r.counts[p.ID]++
}

// count believes the eye, and says by how much the entries were out.
func (r *replayer) count(s step, b Count) {
	p := r.planting(s, b.Planting)
	if p == nil {
		return
	}
	r.questions.answer(s, p.ID, true)
	about := r.threads[p.ID] != nil && r.threads[p.ID].About
	if p.Known && b.Count != p.Count && !about {
		r.differ("%s: %d by eye on %s, %d by the entries. The count by eye is used.", p.words(), b.Count, s.Happened.Long(), p.Count)
	}
	if about {
		r.thread(p.ID).About = false
	}
	if !p.Known && p.Began == 0 {
		p.Began = b.Count
	}
	r.counted(p, b.Count)
	switch {
	case b.Count == 0 && p.Ended == 0:
		p.Ended, p.Cause = s.Happened, "none left by eye"
	case b.Count > 0:
		p.Ended, p.Cause = 0, ""
	}
}

func (r *replayer) look(s step, b Look) {
	if about, ok := r.lookAt(s, b); ok {
		r.questions.answer(s, about, true)
	}
}

// lookAt takes over a look and says what it is about. Looks with an hour are
// not weighed against each other: a bed may be damp at seven and dry at five.
func (r *replayer) lookAt(s step, b Look) (about string, ok bool) {
	if r.workDone(s, b) {
		return "", false
	}
	about = b.Planting
	if about == "" {
		about = b.Space
		r.spaces[b.Space] = SpaceLook{Space: b.Space, Looks: b.Looks, On: s.Happened}
	} else if p := r.planting(s, b.Planting); p != nil {
		p.Looks, p.LookedOn = b.Looks, s.Happened
	} else {
		return "", false
	}
	return about, true
}

// planting returns the planting an event speaks of, nil when it is not here.
// An id that is no event's belongs to the garden file.
func (r *replayer) planting(s step, id string) *Planting {
	p, ok := r.plantings[id]
	if !ok && IsID(id) {
		r.differ("%q on %s is about a planting that was taken back or has not come yet.", string(s.Kind), s.Happened.Long())
		return nil
	}
	if !ok {
		p = &Planting{ID: id, FromFile: true}
		r.plantings[id] = p
	}
	r.touched[id] = true
	return p
}

func (r *replayer) differ(format string, args ...any) {
	r.differences = append(r.differences, fmt.Sprintf(format, args...))
}

// words names a planting for a sentence.
func (p *Planting) words() string {
	if p.Crop == "" {
		return p.ID
	}
	return p.Crop + " in " + p.Space
}

// state returns a copy that later events do not change.
func (r *replayer) state() State {
	s := State{GardenText: r.garden, Dismissed: map[string]string{}, Events: len(r.steps), Last: r.last}
	for _, p := range r.plantings {
		s.Plantings = append(s.Plantings, *p)
	}
	sort.Slice(s.Plantings, func(i, j int) bool { return s.Plantings[i].ID < s.Plantings[j].ID })
	for _, l := range r.spaces {
		s.SpaceLooks = append(s.SpaceLooks, l)
	}
	sort.Slice(s.SpaceLooks, func(i, j int) bool { return s.SpaceLooks[i].Space < s.SpaceLooks[j].Space })
	for task, why := range r.dismissed {
		s.Dismissed[task] = why
	}
	s.Differences = append(s.Differences, r.differences...)
	s.Wet = append(s.Wet, r.wet...)
	s.Readings = append(s.Readings, r.readings...)
	s.Assumed = append(s.Assumed, r.assumed...)
	s.Edges = append(s.Edges, r.edges...)
	for _, f := range r.forecasts {
		s.Forecasts = append(s.Forecasts, f)
	}
	sort.Slice(s.Forecasts, func(i, j int) bool { return s.Forecasts[i].Planting < s.Forecasts[j].Planting })
	s.Figures = append(s.Figures, r.figures...)
	s.Wishes = append(s.Wishes, r.wishes...)
	s.Kept = append(s.Kept, r.kept...)
	s.Pictures = append(s.Pictures, r.pictures...)
	s.Lots, s.Threads = r.lotStates(), r.threadStates()
	s.Traits = append(s.Traits, r.traits...)
	s.Done = append(s.Done, r.works...)
	s.Sounds = append(s.Sounds, r.sounds...)
	if r.epoch > 0 {
		s.Epoch = epochMark(r.epoch, r.epochBy)
	}
	s.Disputes = r.questions.disputes()
	return s
}
