package garden

import (
	"regexp"
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"bedweek/internal/cal"
	"bedweek/internal/unit"
)

// OtherKey is the file's key for what stands in a space and is no crop of the
// book.
const OtherKey = "something else"

// Other is a plant, or a thing, that stands in a space and is no crop of the
// book. Nothing is known of it but what was said: it takes its ground, and its
// light when its height was told.
type Other struct {
	Name   string // as typed
	Count  int
	Takes  string      // ground of one, as typed: "60 cm across"
	OneM2  float64     // the same in square metres
	Height unit.Length // of its top above the soil; not said = it takes no light
	Since  cal.Window  // none = not said
	Until  cal.Window  // its ground is free after it; none = not said
}

// AreaM2 is the ground all of them take together.
func (o Other) AreaM2() float64 { return float64(o.Count) * o.OneM2 }

// Here reports whether it takes its ground on a day: from the first day it may
// have come to the last it may stay; what was not said does not end it.
func (o Other) Here(on cal.Day) bool {
	return (o.Since.None() || o.Since.Early <= on) && (o.Until.None() || on <= o.Until.Late)
}

func otherShape() shape {
	return shape{"other", "something else", []key{
		{name: "name", needed: true}, {name: "count"}, {name: "takes", needed: true}, {name: "height"}, {name: "since"}, {name: "until"},
	}}
}

// ground reads how much ground one of something takes.
func ground(typed string) (m2 float64, wrong string) {
	v, bad := SaySize(typed)
	if len(bad) > 0 {
		return 0, bad[0].Words
	}
	_, _, m2, ok := Box(v)
	if !ok || v.Has("depth") {
		return 0, "Write the ground one of them takes, as 60 cm across or 1 m x 40 cm."
	}
	return m2, ""
}

func (r *reader) other(n ast.Node, at *token.Token) (Other, bool) {
	f, ok := r.fields(n, otherShape(), at)
	if !ok {
		return Other{}, false
	}
	o := Other{Name: f.name("name"), Count: 1, Height: f.length("height", bound{0, 30, true})}
	if f.has("count") {
		o.Count = f.whole("count", bound{1, 20000, false})
	}
	if id, ok := inBook(r.book, o.Name); ok {
		r.at(f.where("name"), o.Name+" is in the book", "Write it under standing, as crop: "+id+".")
	}
	if text, tk, ok := f.text("takes"); ok {
		m2, wrong := ground(text)
		if wrong != "" {
			r.at(tk, "takes "+clip(text), wrong)
		}
		o.Takes, o.OneM2 = text, m2
	}
	if w, tk, text, ok := f.window("since"); ok {
		o.Since = w
		f.past(w, tk, text, "since")
	}
	if w, tk, text, ok := f.window("until"); ok {
		if o.Until = w; !o.Since.None() && w.Late < o.Since.Early {
			r.at(tk, "until "+clip(text)+" lies before its since", "Look at the years of both.")
		}
	}
	return o, true
}

// inBook returns the crop that a name means.
func inBook(book Crops, name string) (string, bool) {
	if named, ok := book.(interface{ Named(string) (string, bool) }); ok {
		return named.Named(name)
	}
	return "", false
}

// each says that a size is of one of several.
var each = regexp.MustCompile(`(?i)\s+each$`)

// SayOther reads what stands and is no crop of the book, one thing: "comfrey,
// 60 cm across, 80 cm high, since 2012, until October 2016"; "3 hydrangea, 40 cm
// across each". Keys are those of the file. ground is false when the ground it
// takes was not said.
func SayOther(typed string, book Crops, south bool) (v Value, said bool, bad []Said) {
	parts := strings.Split(typed, ",")
	words := strings.Fields(parts[0])
	v = Value{Line: true, Pairs: []KeyValue{}}
	count := ""
	if len(words) > 1 {
		if n, err := strconv.Atoi(words[0]); err == nil {
			if words, count = words[1:], itoa(n); n < 1 || n > 20000 {
				bad = append(bad, Said{parts[0], "A count from 1 to 20,000, please."})
			}
		}
	}
	name := strings.Join(words, " ")
	switch id, known := inBook(book, name); {
	case name == "":
		bad = append(bad, Said{typed, "Begin with its name, as comfrey, 60 cm across."})
	case known:
		bad = append(bad, Said{name, quoteWord(name) + " is in the book, as " + id + ". Write it with what stands."})
	case len([]rune(name)) > maxName:
		bad = append(bad, Said{name, "A name of at most " + itoa(maxName) + " letters, please."})
	}
	v = v.With("name", Text(name)).With("count", Text(count))
	for _, part := range parts[1:] {
		part = strings.TrimSpace(part)
		low := strings.ToLower(part)
		switch {
		case part == "":
		case cutAny(&part, low, "since "):
			v, bad = v.With("since", Text(part)), append(bad, sayWhenWrong(part, south)...)
		case cutAny(&part, low, "until "):
			v, bad = v.With("until", Text(part)), append(bad, sayWhenWrong(part, south)...)
		case strings.HasSuffix(low, " high"):
			part = strings.TrimSpace(part[:len(part)-5])
			if _, err := unit.ParseLength(part); err != nil {
				bad = append(bad, Said{part, quoteWord(part) + ": " + err.Error()})
			}
			v = v.With("height", Text(part))
		case v.Has("takes"):
			bad = append(bad, Said{part, quoteWord(part) + " is not understood. Write it as comfrey, 60 cm across, 80 cm high, since 2012, until October 2016."})
		default:
			part = each.ReplaceAllString(part, "")
			if _, wrong := ground(part); wrong != "" {
				bad = append(bad, Said{part, quoteWord(part) + ": " + wrong})
			}
			v = v.With("takes", Text(part))
		}
	}
	return v, v.Has("takes"), bad
}

// sayWhenWrong says what is wrong with a date, if anything.
func sayWhenWrong(typed string, south bool) []Said {
	if _, wrong := when(typed, south); wrong != nil {
		return []Said{{typed, quoteWord(typed) + " " + wrong.what + ". " + wrong.remedy}}
	}
	return nil
}

// OtherLine writes one of the file as SayOther reads it.
func OtherLine(v Value) string {
	s := strings.TrimSpace(v.Get("count") + " " + v.Get("name"))
	for _, p := range []struct{ head, key, tail string }{{"", "takes", ""}, {"", "height", " high"}, {"since ", "since", ""}, {"until ", "until", ""}} {
		if said := v.Get(p.key); said != "" {
			s += ", " + p.head + said + p.tail
		}
	}
	return s
}
