package garden

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"bedweek/internal/unit"
)

func itoa(n int) string { return strconv.Itoa(n) }

// Said is a line that was not understood: which part, and what to write.
type Said struct{ Part, Words string }

// crossed splits "3 m x 1.2 m": a cross or "by" between two sizes.
var crossed = regexp.MustCompile(`(?i)\s*(?:\bx\b|×|\*|\bby\b)\s*`)

// SaySize reads the measures of a tape: "3 m x 1.2 m", "3 m x 1.2 m x 40 cm"
// (the third is the depth of medium), "60 cm across", "18 in across, 14 in
// deep", or an odd shape of FormLines. Keys are length, width, across, shape
// and depth; each size comes back as typed.
func SaySize(typed string) (Value, []Said) {
	var v Value
	v.Pairs = []KeyValue{}
	set := func(key, size string) { v = v.With(key, Text(strings.TrimSpace(size))) }
	if _, _, odd := formOf(typed); odd {
		if i := strings.LastIndex(typed, ","); i > 0 && strings.HasSuffix(strings.ToLower(strings.TrimSpace(typed)), " deep") {
			depth := strings.TrimSpace(typed[i+1:])
			set("depth", depth[:len(depth)-5])
			typed = typed[:i]
		}
		if _, _, wrong := figureOf(typed); wrong != "" {
			return v, []Said{{typed, wrong}}
		}
		bad := checkSizes(v)
		set("shape", typed)
		return v, bad
	}
	for i, part := range strings.Split(strings.TrimSpace(typed), ",") {
		part = strings.TrimSpace(part)
		plain := strings.ToLower(part)
		switch {
		case part == "":
		case strings.HasSuffix(plain, " deep") && !crossed.MatchString(part):
			set("depth", part[:len(part)-5])
		case strings.HasSuffix(plain, " across"):
			set("across", part[:len(part)-7])
		case strings.HasSuffix(plain, " round"):
			set("across", part[:len(part)-6])
		case i > 0 && digitsOnly(part) && v.Has("length"): // "0,75 m": a comma within a number
			return v, []Said{{typed, "Write sizes with a point, as 0.75 m x 1.2 m."}}
		default:
			sizes := crossed.Split(part, -1)
			if len(sizes) == 1 {
				if !v.Has("across") && !v.Has("length") {
					return v, []Said{{part, "One measure is not enough. Write length x width, as 3 m x 1.2 m, or 60 cm across for a round one."}}
				}
				return v, []Said{{part, "Say what this measure is, as 40 cm deep."}}
			}
			set("length", sizes[0])
			set("width", sizes[1])
			if len(sizes) > 2 {
				set("depth", strings.TrimSuffix(sizes[2], " deep"))
			}
			if len(sizes) > 3 {
				return v, []Said{{part, "Three measures are enough: length x width x depth."}}
			}
		}
	}
	return v, checkSizes(v)
}

func digitsOnly(s string) bool {
	return s != "" && strings.IndexFunc(s, func(r rune) bool { return !unicode.IsDigit(r) }) < 0
}

// checkSizes says of each size without a unit or with another fault what to write.
func checkSizes(v Value) (bad []Said) {
	for _, p := range v.Pairs {
		if _, err := unit.ParseLength(p.Value.Text); err != nil {
			bad = append(bad, Said{p.Value.Text, "The " + p.Key + ", " + quoteWord(p.Value.Text) + ": " + err.Error()})
		}
	}
	return bad
}

func quoteWord(s string) string { return "“" + clip(s) + "”" }

// SayWhere reads a place on the plan: "2.2 m east, 5 m north", with "turned 90
// degrees" and "6 m up" when it stands turned or on a floor. Without words the
// first is east and the second north. Keys are east, north, turn, floor.
func SayWhere(typed string) (Value, []Said) {
	v := Value{Pairs: []KeyValue{}}
	set := func(key, size string) { v = v.With(key, Text(strings.TrimSpace(size))) }
	plainKeys := []string{"east", "north"}
	for _, part := range strings.Split(typed, ",") {
		part = strings.TrimSpace(part)
		low := strings.ToLower(part)
		size := part
		cut := func(word string) bool {
			if !strings.HasSuffix(low, " "+word) {
				return false
			}
			size = strings.TrimSpace(part[:len(part)-len(word)-1])
			return true
		}
		switch {
		case part == "":
			continue
		case strings.HasPrefix(low, "turned "):
			set("turn", part[7:])
			if _, err := unit.ParseTurn(part[7:]); err != nil {
				return v, []Said{{part, "Write the turn in degrees, as turned 90 degrees."}}
			}
			continue
		case cut("up"):
			set("floor", size)
		case cut("east"):
			set("east", size)
		case cut("west"):
			set("east", minus(size))
		case cut("north"):
			set("north", size)
		case cut("south"):
			set("north", minus(size))
		default:
			key := ""
			for _, k := range plainKeys {
				if key == "" && !v.Has(k) {
					key = k
				}
			}
			if key == "" {
				return v, []Said{{part, "Write it as 2.2 m east, 5 m north, turned 90 degrees, 6 m up."}}
			}
			set(key, size)
		}
		if _, err := unit.ParseLength(size); err != nil {
			return v, []Said{{part, quoteWord(part) + ": " + err.Error()}}
		}
	}
	if len(v.Pairs) > 0 && (!v.Has("east") || !v.Has("north")) {
		return v, []Said{{typed, "Say both, as 2.2 m east, 5 m north."}}
	}
	return v, nil
}

// minus turns a size about, for west and south.
func minus(size string) string {
	if s, ok := strings.CutPrefix(size, "-"); ok {
		return s
	}
	return "-" + size
}

// SaySupport reads "trellis 3 m long, 1.8 m high, west side".
func SaySupport(typed string) (Value, []Said) {
	v := Value{Line: true, Pairs: []KeyValue{}}
	words := strings.Fields(strings.ToLower(typed))
	if len(words) == 0 {
		return v, nil
	}
	kinds := supportShape().keys[0].words
	kind := words[0]
	if !has(kinds, kind) {
		if near, ok := nearest(kind, kinds); ok {
			kind = near
		} else {
			return v, []Said{{words[0], "Begin with " + orList(kinds) + ", as trellis 3 m long, 1.8 m high."}}
		}
	}
	v = v.With("kind", Text(kind))
	rest := strings.TrimSpace(strings.TrimSpace(typed)[len(words[0]):])
	for _, part := range strings.Split(crossed.ReplaceAllString(rest, ", "), ",") {
		part = strings.TrimSpace(part)
		low := strings.TrimSuffix(strings.ToLower(part), " side")
		size, key := part, ""
		for _, w := range []struct{ word, key string }{{" long", "length"}, {" high", "height"}} {
			if strings.HasSuffix(low, w.word) {
				size, key = strings.TrimSpace(part[:len(part)-len(w.word)]), w.key
			}
		}
		switch {
		case part == "":
			continue
		case has(supportShape().keys[3].words, low):
			v = v.With("side", Text(low))
			continue
		case key == "" && !v.Has("length"):
			key = "length"
		case key == "" && !v.Has("height"):
			key = "height"
		case key == "":
			return v, []Said{{part, "Write it as trellis 3 m long, 1.8 m high, pole side."}}
		}
		if _, err := unit.ParseLength(size); err != nil {
			return v, []Said{{part, quoteWord(part) + ": " + err.Error()}}
		}
		v = v.With(key, Text(size))
	}
	if !v.Has("length") || !v.Has("height") {
		return v, []Said{{typed, "Say how long and how high, as trellis 3 m long, 1.8 m high."}}
	}
	return v, nil
}

// SupportLine writes a support as SaySupport reads it.
func SupportLine(v Value) string {
	s := v.Get("kind") + " " + v.Get("length") + " long, " + v.Get("height") + " high"
	if side := v.Get("side"); side != "" {
		s += ", " + side + " side"
	}
	return s
}

// Blanks are what a planting's line left out, to be guessed by the caller.
type Blanks struct{ Count, Since bool }

// SayStanding reads what stands, one planting: "40 garlic Purple Skerry, since
// 18 October 2014, well, stays"; "kale, one of Black Frond / Curled Ebb, set
// out early August 2014". Dates and varieties come back as typed. What is not
// said is blank. south turns seasons about.
func SayStanding(typed string, book Crops, south bool) (Value, Blanks, []Said) {
	v := Value{Line: true, Pairs: []KeyValue{}}
	blank := Blanks{Count: true, Since: true}
	var bad []Said
	var variety, count, looks, keep, id string
	var oneOf []Value
	var when1 KeyValue
	for i, part := range strings.Split(typed, ",") {
		part = strings.TrimSpace(part)
		low := strings.ToLower(part)
		switch {
		case part == "":
		case i == 0:
			words := strings.Fields(part)
			if n, err := strconv.Atoi(words[0]); err == nil {
				if words = words[1:]; n < 1 || n > 20000 {
					bad = append(bad, Said{part, "A count from 1 to 20,000, please."})
				}
				count, blank.Count = itoa(n), false
			}
			crop, rest, said := cropAhead(words, book)
			bad = append(bad, said...)
			v = v.With("crop", Text(crop))
			variety = rest
		case cutAny(&part, low, "one of "):
			for _, name := range regexp.MustCompile(`\s*/\s*|\s+or\s+`).Split(part, -1) {
				oneOf = append(oneOf, Text(name))
			}
		case cutAny(&part, low, "variety "):
			variety = part
		case cutAny(&part, low, "since ", "sown ", "planted "):
			when1, blank.Since = KeyValue{"since", Text(part)}, false
		case cutAny(&part, low, "set out "):
			when1, blank.Since = KeyValue{"set out", Text(part)}, false
		case cutAny(&part, low, "id "):
			id = part
		case has(standingShape().keys[7].words, low):
			looks = low
		case low == "stays" || low == "keep" || low == "keep it":
			keep = "yes"
		default:
			bad = append(bad, Said{part, quoteWord(part) + " is not understood. Write it as 6 kale, since March 2015, well, stays."})
		}
	}
	if when1.Key != "" {
		if _, wrong := when(when1.Value.Text, south); wrong != nil {
			bad = append(bad, Said{when1.Value.Text, quoteWord(when1.Value.Text) + " " + wrong.what + ". " + wrong.remedy})
		}
	}
	v = v.With("variety", Text(variety))
	if len(oneOf) > 0 {
		v = v.With("one of", Value{Line: true, Items: oneOf})
		if variety != "" {
			bad = append(bad, Said{variety, "Name the variety, or say one of several, not both."})
		}
	}
	if when1.Key != "" {
		v = v.With(when1.Key, when1.Value)
	}
	v = v.With("count", Text(count)).With("looks", Text(looks)).With("keep", Text(keep))
	if id != "" {
		v.Pairs = append([]KeyValue{{"id", Text(id)}}, v.Pairs...)
	}
	return v, blank, bad
}

// cutAny takes the first of some beginnings off a part.
func cutAny(part *string, low string, heads ...string) bool {
	for _, h := range heads {
		if strings.HasPrefix(low, h) {
			*part = strings.TrimSpace((*part)[len(h):])
			return true
		}
	}
	return false
}

// cropAhead finds the crop at the head of some words, the longest name that
// fits, and what follows it.
func cropAhead(words []string, book Crops) (crop, rest string, bad []Said) {
	if len(words) == 0 {
		return "", "", []Said{{"", "Say which crop, as 6 kale."}}
	}
	named, exact := book.(interface{ Named(string) (string, bool) })
	for n := len(words); n > 0; n-- {
		name := strings.Join(words[:n], " ")
		rest := strings.Trim(strings.Join(words[n:], " "), "()")
		if exact {
			if id, ok := named.Named(name); ok {
				return id, rest, nil
			}
		} else if book == nil || book.Known(slug(name)) {
			return slug(name), rest, nil
		}
	}
	what := strings.Join(words, " ")
	words1 := "“" + clip(what) + "” is no crop of the book."
	for n := min(len(words), 3); n > 0; n-- {
		if id, ok := book.Nearest(strings.Join(words[:n], " ")); ok {
			return "", "", []Said{{what, words1 + " Did you mean " + id + "?"}}
		}
	}
	return "", "", []Said{{what, words1 + " Write another name, or look through the list of crops."}}
}

// StandingLine writes a planting of the file as SayStanding reads it.
func StandingLine(v Value) string {
	head := strings.TrimSpace(v.Get("count") + " " + v.Get("crop") + " " + v.Get("variety"))
	parts := []string{head}
	if names := v.At("one of").List(); len(names) > 0 {
		var all []string
		for _, n := range names {
			all = append(all, n.Text)
		}
		parts = append(parts, "one of "+strings.Join(all, " / "))
	}
	for _, k := range []string{"since", "set out"} {
		if w := v.Get(k); w != "" {
			parts = append(parts, k+" "+w)
		}
	}
	if l := v.Get("looks"); l != "" {
		parts = append(parts, l)
	}
	if k := strings.ToLower(v.Get("keep")); k == "yes" || k == "true" {
		parts = append(parts, "stays")
	}
	return strings.Join(parts, ", ")
}

// Slug makes an id of a name: lower case letters, digits and dashes. It is ""
// when the name has none of them.
func Slug(name string) string { return strings.Trim(slug(name), "-") }
