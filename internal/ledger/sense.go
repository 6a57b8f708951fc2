package ledger

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"bedweek/internal/cal"
)

// Limits on what an entry may say. They catch slips of the finger, not odd
// gardens: a household bed does not hold 100,000 plants nor give 500 kg at once.
const (
	nameLimit  = 80     // characters of an id, crop, space, lot or variety
	wordsLimit = 200    // characters of a look, a cause or a task
	noteLimit  = 2000   // characters of a note
	countLimit = 100000 // plants
	kgLimit    = 500    // kg picked at once
)

// The days an entry may be about: a diary from a grandparent may be typed in.
var firstDay, lastDay = cal.Of(1900, 1, 1), cal.Of(2199, 12, 31)

// sense lists what is wrong with a decoded body.
func sense(k Kind, body any, fields map[string]json.RawMessage) Faults {
	var f Faults
	switch b := body.(type) {
	case Garden:
		f.garden(b)
	case Started:
		f.started(k, b)
	case Amount:
		f.name("planting", b.Planting, true)
		f.text("note", b.Note, noteLimit)
		if b.Kg < 0 || b.Kg > kgLimit {
			f.add("%q is %g; it must lie between 0 and %d kg", "kg", b.Kg, kgLimit)
		}
		switch b.Measure {
		case "", "handful", "bowl", "bucket":
		default:
			f.add("%q is %q; it may be handful, bowl or bucket", "measure", clip(b.Measure))
		}
	case Ended:
		f.name("planting", b.Planting, true)
		f.count(b.Count)
		f.text("cause", b.Cause, wordsLimit)
		f.text("note", b.Note, noteLimit)
		if k == Lost && strings.TrimSpace(b.Cause) == "" {
			f.add("%q is missing; say %q if you do not know", "cause", "unknown")
		}
	case Count:
		f.name("planting", b.Planting, true)
		f.count(b.Count)
		f.text("note", b.Note, noteLimit)
		if _, given := fields["count"]; !given {
			f.add("%q is missing; say 0 if none are left", "count")
		}
	case Look:
		f.name("planting", b.Planting, false)
		f.name("space", b.Space, false)
		f.text("looks", b.Looks, wordsLimit)
		f.text("note", b.Note, noteLimit)
		if b.Planting == "" && b.Space == "" {
			f.add("%q or %q is missing; say what was looked at", "planting", "space")
		}
		if strings.TrimSpace(b.Looks) == "" {
			f.add("%q is missing; say how it looked", "looks")
		}
	case LookAt:
		f = append(f, sense(k, b.Look(), fields)...)
		f.hour(b.Hour)
	case Watering:
		f.watering(b)
	case Reading:
		f.reading(b, fields)
	case Photo:
		f.photo(b)
	case Sound:
		f.sound(b)
	case Caption:
		f.caption(b)
	case Agreement:
		f.agreement(b)
	case Restoration:
		f.restoration(b)
	case Void:
		f.text("why", b.Why, noteLimit)
		if !IsID(b.Event) {
			f.add("%q is %q; it must be the id of an entry", "event", clip(b.Event))
		}
	case Edge:
		f.edge(b)
	case Forecast:
		f.forecast(b)
	case OwnFigure:
		f.figure(b, func(field string) bool { _, ok := fields[field]; return ok })
	case Assumption:
		f.assumption(b)
	case Lot:
		f.lot(b)
	case Germination:
		f.germination(b)
	case SeedUse:
		f.seedUse(b)
	case SeedCount:
		f.seedCount(b)
	case Handover:
		f.handover(b)
	case Moved:
		f.moved(b)
	case Naming:
		f.naming(b)
	case Trait:
		f.trait(b)
	case Wish:
		f.wish(b)
	case KeptPlan:
		f.kept(b)
	case Dismissal:
		f.text("task", b.Task, wordsLimit)
		f.text("why", b.Why, noteLimit)
		if strings.TrimSpace(b.Task) == "" {
			f.add("%q is missing; say which advice", "task")
		}
	}
	return f
}

func (f *Faults) started(k Kind, b Started) {
	f.name("planting", b.Planting, false)
	f.name("crop", b.Crop, b.Planting == "")
	f.name("space", b.Space, true)
	f.text("variety", b.Variety, nameLimit)
	f.text("lot", b.Lot, nameLimit)
	f.text("note", b.Note, noteLimit)
	f.count(b.Count)
	if k == Sown && b.Planting != "" {
		f.add("%q is given; a sowing starts a planting of its own", "planting")
	}
	if len(b.OneOf) > 20 {
		f.add("%q names %d varieties; the most is 20", "one_of", len(b.OneOf))
	}
	for _, v := range b.OneOf {
		f.text("one_of", v, nameLimit)
	}
}

func (f *Faults) garden(b Garden) {
	if strings.TrimSpace(b.Text) == "" {
		f.add("%q is missing; the garden file is empty", "text")
	}
	sum := sha256.Sum256([]byte(b.Text))
	if b.SHA256 != hex.EncodeToString(sum[:]) {
		f.add("%q does not belong to the text", "sha256")
	}
}

func (f *Faults) add(format string, args ...any) { *f = append(*f, fmt.Sprintf(format, args...)) }

// name checks a word that stands for something: no spaces at its ends, no
// controls, not too long.
func (f *Faults) name(field, s string, needed bool) {
	switch {
	case s == "" && needed:
		f.add("%q is missing", field)
	case strings.TrimSpace(s) != s:
		f.add("%q has spaces at its ends", field)
	case strings.ContainsAny(s, "\n\t"):
		f.add("%q has more than one line", field)
	default:
		f.text(field, s, nameLimit)
	}
}

func (f *Faults) text(field, s string, limit int) {
	if n := utf8.RuneCountInString(s); n > limit {
		f.add("%q has %d characters; the most is %d", field, n, limit)
	}
	for _, r := range s {
		if unicode.IsControl(r) && r != '\n' && r != '\t' {
			f.add("%q holds a control character", field)
			return
		}
	}
}

func (f *Faults) count(n int) {
	if n < 0 || n > countLimit {
		f.add("%q is %d; it must lie between 0 and %d", "count", n, countLimit)
	}
}

// frame lists what is wrong around the body.
func frame(e Event) Faults {
	var f Faults
	if !IsID(e.ID) {
		f.add("the id %q is not 26 characters of base 32", clip(e.ID))
	}
	if e.Parent != "" && !IsID(e.Parent) {
		f.add("the parent %q is not the id of an entry", clip(e.Parent))
	}
	if e.Parent != "" && e.Parent == e.ID {
		f.add("the entry answers itself")
	}
	if !utf8.ValidString(e.Device) {
		f.add("the device's name is not UTF-8 text")
	} else {
		f.name("device", e.Device, true)
	}
	switch {
	case e.Happened == 0:
		f.add("the day is missing")
	case e.Happened < firstDay || e.Happened > lastDay:
		f.add("the day %s lies outside %s to %s", e.Happened, firstDay, lastDay)
	}
	if y := e.Written.UTC().Year(); !e.Written.IsZero() && (y < 1 || y > 9999) {
		f.add("the instant of writing is not a date")
	}
	return f
}

// prepared returns e with its body in canonical form, or every fault in it.
func prepared(e Event) (Event, any, error) {
	f := frame(e)
	raw, body, more := canonical(e.Kind, e.Version, e.Body)
	f = append(f, more...)
	if v, ok := body.(Void); ok && v.Event == e.ID {
		f.add("the entry takes itself back")
	}
	if len(f) > 0 {
		return Event{}, nil, f
	}
	e.Body = raw
	return e, body, nil
}

func clip(s string) string {
	r := []rune(strings.ToValidUTF8(s, "?"))
	if len(r) > 40 {
		return string(r[:40]) + "..."
	}
	return string(r)
}
