package reckon

import (
	"fmt"
	"strings"

	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// FromFile gives the garden file's standing plantings to the ledger's replay.
func FromFile(g *garden.Garden) []ledger.Planting {
	var out []ledger.Planting
	for _, sp := range g.Spaces {
		for _, s := range sp.Standing {
			p := ledger.Planting{ID: s.ID, Crop: string(s.Crop), Variety: s.Variety, OneOf: s.OneOf,
				Space: string(sp.ID), Count: s.Count, Looks: s.Looks, FromFile: true}
			if s.SetOut {
				p.SetOut = s.Since.Likely
			} else {
				p.Sown = s.Since.Likely
			}
			out = append(out, p)
		}
	}
	return out
}

// Teller turns ledger entries into sentences, space by space, and goes on from
// where it was when more come. It is not for several at once.
type Teller struct {
	book   *crop.Book
	garden *garden.Garden
	where  map[string]string // planting to space
	what   map[string]string // planting to words
	at     map[string]string // entry to space
	notes  map[string][]Note // by space, oldest first
	picks  map[string][]pick // by planting, in order of writing
	heard  int
}

// NewTeller tells the past of a garden in the words of a book.
func NewTeller(book *crop.Book, g *garden.Garden) *Teller {
	t := &Teller{book: book, garden: g, where: map[string]string{}, what: map[string]string{}, at: map[string]string{}, notes: map[string][]Note{}, picks: map[string][]pick{}}
	for _, p := range FromFile(g) {
		t.where[p.ID], t.what[p.ID] = p.Space, cropWords(book, p.Crop, p.Variety)
	}
	return t
}

// Hear takes in the entries it has not heard. events are all there are, in
// order of writing, or fewer when others were heard meanwhile.
func (t *Teller) Hear(events []ledger.Event) {
	if len(events) <= t.heard {
		return
	}
	voids := false
	for _, e := range events[t.heard:] {
		voids = voids || e.Kind == ledger.Voided
		if space, n := t.tell(e); space != "" {
			t.notes[space] = append(t.notes[space], n)
		}
	}
	t.heard = len(events)
	if !voids {
		return
	}
	back := ledger.TakenBack(events)
	for _, notes := range t.notes {
		for i := range notes {
			notes[i].Voided = back[notes[i].ID]
		}
	}
	for _, picks := range t.picks {
		for i := range picks {
			picks[i].voided = back[picks[i].entry]
		}
	}
}

// historyMost is how many of a space's entries its page lists. All are in the
// export.
const historyMost = 60

// of is the newest of a space's past, newest first, and how many are older.
func (t *Teller) of(space string) (newest []Note, older int) {
	all := t.notes[space]
	for k := len(all) - 1; k >= 0 && len(newest) < historyMost; k-- {
		newest = append(newest, all[k])
	}
	return newest, len(all) - len(newest)
}

// tell is the sentence of one entry and the space it is about, "" = none.
func (t *Teller) tell(e ledger.Event) (space string, n Note) {
	body, err := ledger.Decode(e)
	if err != nil {
		return "", Note{}
	}
	n = Note{ID: e.ID, Happened: e.Happened, Written: e.Written.UTC().Format("2 January 2006 15:04 UTC"), Kind: string(e.Kind)}
	book, g, where, what, at := t.book, t.garden, t.where, t.what, t.at
	switch b := body.(type) {
	case ledger.Started:
		id := e.ID
		if b.Planting != "" && e.Kind == ledger.PutOut {
			id = b.Planting
		}
		words := cropWords(book, b.Crop, b.Variety)
		where[id], what[id], space = b.Space, words, b.Space
		where[e.ID], what[e.ID] = b.Space, words // when only a part was set out
		n.Words = sentence(fmt.Sprintf("%s %s, %s", verbOf(e.Kind), words, plants(b.Count))) + withNote(b.Note)
	case ledger.Handover:
		id := b.Planting
		if len(b.OneOf) > 0 {
			id = b.OneOf[0]
		}
		where[e.ID], what[e.ID] = orElse(b.Space, where[id]), what[id] // when only a part was
		space = where[e.ID]
		n.Words = sentence(joinWords(verbOf(e.Kind)+" "+orHere(what[id]), counted(b.Count), b.Pot)) + withNote(b.Note)
	case ledger.Moved:
		where[e.ID], what[e.ID], space = b.Space, what[b.OneOf[0]], b.Space
		n.Words = sentence(joinWords("set out "+orHere(what[b.OneOf[0]]), counted(b.Count), "from one of several trays")) + withNote(b.Note)
	case ledger.Naming:
		space = where[b.Planting]
		where[e.ID], what[e.ID] = space, what[b.Planting]
		said := "could not tell"
		if b.Is != "" {
			said = "it is " + b.Is
		} else if len(b.Not) > 0 {
			said = "it is not " + list(b.Not)
		}
		n.Words = sentence(fmt.Sprintf("which %s is this: %s", orHere(what[b.Planting]), said)) + withNote(b.Note)
	case ledger.Amount:
		space = where[b.Planting]
		if e.Kind == ledger.Picked {
			t.picks[b.Planting] = append(t.picks[b.Planting], pick{entry: e.ID, on: e.Happened, kg: b.Kg})
		}
		amount := b.Measure
		if b.Kg > 0 {
			amount = fmt.Sprintf("%.2f kg", b.Kg)
		}
		n.Words = sentence("picked "+joinWords(what[b.Planting], amount)) + withNote(b.Note)
	case ledger.Ended:
		space = where[b.Planting]
		s := verbOf(e.Kind) + " " + what[b.Planting]
		if b.Count > 0 {
			s += ", " + plants(b.Count)
		}
		if b.Cause != "" {
			s += ": " + b.Cause
		}
		n.Words = sentence(s) + withNote(b.Note)
	case ledger.Count:
		space = where[b.Planting]
		n.Words = sentence(fmt.Sprintf("counted %s: %d", what[b.Planting], b.Count)) + withNote(b.Note)
	case ledger.LookAt:
		space = b.Space
		if b.Planting != "" {
			space = where[b.Planting]
		}
		n.Words = sentence(fmt.Sprintf("looked at %s at %d o'clock: %s", orHere(what[b.Planting]), b.Hour, b.Looks)) + withNote(b.Note)
	case ledger.Watering:
		space = b.Space
		amount := "until it ran through"
		if b.Litres > 0 {
			amount = fmt.Sprintf("%g L", b.Litres)
		}
		n.Words = sentence(fmt.Sprintf("watered at %d o'clock, %s", b.Hour, amount)) + withNote(b.Note)
	case ledger.Reading:
		space = b.Space // the garden's own instruments are listed with the weather
		n.Words = sentence(readingWords(b, "this space")) + withNote(b.Note)
	case ledger.Edge:
		space = b.Space
		n.Words = EdgeWords(b) + withNote(b.Note)
	case ledger.Wish:
		space = b.Space
		n.Words = "Wished: " + WishWords(b, &Inputs{Garden: g, Book: book, State: &ledger.State{}})
	case ledger.Assumption:
		space = b.Space
		n.Words = sentence("assumed on a round, nobody wrote it down: " + b.What)
	case ledger.Agreement:
		space = at[b.Answers[0]]
		n.Words = "Differing answers were looked at; all of them stand." + withNote(b.Note)
	case ledger.Look:
		space = b.Space
		if b.Planting != "" {
			space = where[b.Planting]
		}
		n.Words = sentence(fmt.Sprintf("looked at %s: %s", orHere(what[b.Planting]), b.Looks)) + withNote(b.Note)
	default:
		return "", Note{}
	}
	at[e.ID] = space
	return space, n
}

// counted says how many plants, "" when nobody said.
func counted(n int) string {
	if n == 0 {
		return ""
	}
	return plants(n)
}

func orElse(s, other string) string {
	if s == "" {
		return other
	}
	return s
}

func verbOf(k ledger.Kind) string { return string(k) }

func orHere(s string) string {
	if s == "" {
		return "this space"
	}
	return s
}

func joinWords(parts ...string) string {
	var out []string
	for _, p := range parts {
		if p != "" {
			out = append(out, p)
		}
	}
	return strings.Join(out, ", ")
}

func withNote(s string) string {
	if s == "" {
		return ""
	}
	return " " + sentence(s)
}

func cropWords(book *crop.Book, id, variety string) string {
	name := id
	if c, ok := book.Crop(crop.ID(id)); ok {
		name = c.Name
	}
	if variety != "" {
		name = Bracketed(name, variety)
	}
	return name
}

// Anew is said on a day that a note has overtaken.
const Anew = "Your note is kept. The plan is being worked out anew; what stands here is from before it."

// After is the day as it is shown between a note and the new plan: a copy
// without the tasks that the note answers, and a sentence that says so.
func (d *Day) After(kind string, body any) *Day {
	out := *d
	planting, space, crop, task, verb := "", "", "", "", ""
	switch b := body.(type) {
	case ledger.Started:
		planting, space, crop = b.Planting, b.Space, b.Crop
	case ledger.Amount:
		planting = b.Planting
	case ledger.Handover:
		planting = b.Planting
	case ledger.Naming:
		planting = b.Planting
	case ledger.Ended:
		planting = b.Planting
	case ledger.Assumption:
		space = b.Space
	case ledger.Look:
		planting, space = b.Planting, b.Space
		if done, ok := strings.CutPrefix(b.Looks, ledger.DoneMark); ok {
			verb = done
		}
		if b.Looks == ledger.NotYet {
			planting, space = "", "" // it stays on the list
		}
	case ledger.Watering:
		space = b.Space
	case ledger.Dismissal:
		task = b.Task
	}
	out.Today = nil
	for _, t := range d.Today {
		same := t.Event == kind && (planting != "" && t.Planting == planting || crop != "" && t.Space == space && t.Crop == crop)
		switch {
		case verb != "":
			same = t.Event == EventDone && t.Verb == verb && (planting != "" && t.Planting == planting || planting == "" && t.Space == space)
		case kind == string(ledger.Watered):
			same = t.Event == kind && t.Space == space
		}
		if !same && (task == "" || t.ID != task) {
			out.Today = append(out.Today, t)
		} else if same {
			out.Spent += t.Minutes
		}
	}
	if len(d.Notes) == 0 || d.Notes[0] != Anew {
		out.Notes = append([]string{Anew}, d.Notes...)
	}
	out.Spaces = append([]SpaceDay(nil), d.Spaces...)
	return &out
}

// Tell puts the past of each space in place.
func (d *Day) Tell(t *Teller) {
	for i := range d.Spaces {
		d.Spaces[i].History, d.Spaces[i].Older = t.of(d.Spaces[i].ID)
	}
}
