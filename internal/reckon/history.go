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

// Told is a sentence about a space's past.
type Told struct {
	Space string
	Note  Note
}

// TellEvents turns ledger entries into sentences, oldest first.
func TellEvents(events []ledger.Event, book *crop.Book, g *garden.Garden) []Told {
	back := ledger.TakenBack(events)
	where := map[string]string{} // planting to space
	what := map[string]string{}  // planting to words
	at := map[string]string{}    // entry to space
	for _, p := range FromFile(g) {
		where[p.ID], what[p.ID] = p.Space, cropWords(book, p.Crop, p.Variety)
	}
	var out []Told
	for _, e := range events {
		body, err := ledger.Decode(e)
		if err != nil {
			continue
		}
		t := Told{Note: Note{ID: e.ID, Happened: e.Happened, Written: e.Written.UTC().Format("2 January 2006 15:04 UTC"),
			Kind: string(e.Kind), Voided: back[e.ID]}}
		switch b := body.(type) {
		case ledger.Started:
			id := e.ID
			if b.Planting != "" && e.Kind == ledger.PutOut {
				id = b.Planting
			}
			words := cropWords(book, b.Crop, b.Variety)
			where[id], what[id], t.Space = b.Space, words, b.Space
			where[e.ID], what[e.ID] = b.Space, words // when only a part was set out
			t.Note.Words = sentence(fmt.Sprintf("%s %s, %s", verbOf(e.Kind), words, plants(b.Count))) + withNote(b.Note)
		case ledger.Handover:
			id := b.Planting
			if len(b.OneOf) > 0 {
				id = b.OneOf[0]
			}
			where[e.ID], what[e.ID] = orElse(b.Space, where[id]), what[id] // when only a part was
			t.Space = where[e.ID]
			t.Note.Words = sentence(joinWords(verbOf(e.Kind)+" "+orHere(what[id]), counted(b.Count), b.Pot)) + withNote(b.Note)
		case ledger.Moved:
			where[e.ID], what[e.ID], t.Space = b.Space, what[b.OneOf[0]], b.Space
			t.Note.Words = sentence(joinWords("set out "+orHere(what[b.OneOf[0]]), counted(b.Count), "from one of several trays")) + withNote(b.Note)
		case ledger.Naming:
			t.Space = where[b.Planting]
			where[e.ID], what[e.ID] = t.Space, what[b.Planting]
			said := "could not tell"
			if b.Is != "" {
				said = "it is " + b.Is
			} else if len(b.Not) > 0 {
				said = "it is not " + list(b.Not)
			}
			t.Note.Words = sentence(fmt.Sprintf("which %s is this: %s", orHere(what[b.Planting]), said)) + withNote(b.Note)
		case ledger.Amount:
			t.Space = where[b.Planting]
			amount := b.Measure
			if b.Kg > 0 {
				amount = fmt.Sprintf("%.2f kg", b.Kg)
			}
			t.Note.Words = sentence("picked "+joinWords(what[b.Planting], amount)) + withNote(b.Note)
		case ledger.Ended:
			t.Space = where[b.Planting]
			s := verbOf(e.Kind) + " " + what[b.Planting]
			if b.Count > 0 {
				s += ", " + plants(b.Count)
			}
			if b.Cause != "" {
				s += ": " + b.Cause
			}
			t.Note.Words = sentence(s) + withNote(b.Note)
		case ledger.Count:
			t.Space = where[b.Planting]
			t.Note.Words = sentence(fmt.Sprintf("counted %s: %d", what[b.Planting], b.Count)) + withNote(b.Note)
		case ledger.LookAt:
			t.Space = b.Space
			if b.Planting != "" {
				t.Space = where[b.Planting]
			}
			t.Note.Words = sentence(fmt.Sprintf("looked at %s at %d o'clock: %s", orHere(what[b.Planting]), b.Hour, b.Looks)) + withNote(b.Note)
		case ledger.Watering:
			t.Space = b.Space
			amount := "until it ran through"
			if b.Litres > 0 {
				amount = fmt.Sprintf("%g L", b.Litres)
			}
			t.Note.Words = sentence(fmt.Sprintf("watered at %d o'clock, %s", b.Hour, amount)) + withNote(b.Note)
		case ledger.Reading:
			t.Space = b.Space // the garden's own instruments are listed with the weather
			t.Note.Words = sentence(readingWords(b, "this space")) + withNote(b.Note)
		case ledger.Edge:
			t.Space = b.Space
			t.Note.Words = EdgeWords(b) + withNote(b.Note)
		case ledger.Wish:
			t.Space = b.Space
			t.Note.Words = "Wished: " + WishWords(b, &Inputs{Garden: g, Book: book, State: &ledger.State{}})
		case ledger.Assumption:
			t.Space = b.Space
			t.Note.Words = sentence("assumed on a round, nobody wrote it down: " + b.What)
		case ledger.Agreement:
			t.Space = at[b.Answers[0]]
			t.Note.Words = "Differing answers were looked at; all of them stand." + withNote(b.Note)
		case ledger.Look:
			t.Space = b.Space
			if b.Planting != "" {
				t.Space = where[b.Planting]
			}
			t.Note.Words = sentence(fmt.Sprintf("looked at %s: %s", orHere(what[b.Planting]), b.Looks)) + withNote(b.Note)
		default:
			continue
		}
		at[e.ID] = t.Space
		if t.Space != "" {
			out = append(out, t)
		}
	}
	return out
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
		name += " (" + variety + ")"
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

// Tell puts the ledger's sentences on their spaces, newest first.
func (d *Day) Tell(told []Told) {
	for i := range d.Spaces {
		d.Spaces[i].History = nil
	}
	for k := len(told) - 1; k >= 0; k-- {
		for i := range d.Spaces {
			if d.Spaces[i].ID == told[k].Space {
				d.Spaces[i].History = append(d.Spaces[i].History, told[k].Note)
			}
		}
	}
}
