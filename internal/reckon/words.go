package reckon

import (
	"fmt"
	"math"
	"strings"
	"unicode"
	"unicode/utf8"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
)

// chance says a count of twenty in words and numbers together.
func chance(n int) string {
	word := "very unlikely"
	switch {
	case n >= 19:
		word = "almost sure"
	case n >= 16:
		word = "very likely"
	case n >= 12:
		word = "likely"
	case n >= 9:
		word = "about even"
	case n >= 5:
		word = "unlikely"
	}
	return fmt.Sprintf("%s (%d of 20)", word, n)
}

// ofTwenty scales a count of futures to twenty.
func ofTwenty(n, futures int) int {
	if futures == 0 {
		return 0
	}
	return int(math.Round(float64(n) * 20 / float64(futures)))
}

// meals says an amount of meals without false decimals.
func meals(x float64) string {
	switch {
	case x < 0.5:
		return "less than one meal"
	case x < 1.5:
		return "about one meal"
	}
	return fmt.Sprintf("about %.0f meals", x)
}

// span says a range of meals.
func span(low, high float64) string {
	l, h := math.Round(low), math.Round(high)
	switch {
	case h < 1:
		return "less than one meal"
	case h == 1 && l < 1:
		return "up to one meal"
	case h == 1:
		return "about one meal"
	case l < 1:
		return fmt.Sprintf("up to %.0f meals", h)
	case l == h:
		return fmt.Sprintf("about %.0f meals", l)
	}
	return fmt.Sprintf("%.0f to %.0f meals", l, h)
}

// week says "the week of 6 April".
func week(d cal.Day) string { return "the week of " + d.Monday().Short() }

// list joins words: "a", "a and b", "a, b and c".
func list(words []string) string {
	switch len(words) {
	case 0:
		return ""
	case 1:
		return words[0]
	}
	return strings.Join(words[:len(words)-1], ", ") + " and " + words[len(words)-1]
}

// sentence makes the first letter a capital and ends with a full stop.
func sentence(s string) string {
	if s == "" {
		return ""
	}
	r, n := utf8.DecodeRuneInString(s)
	s = string(unicode.ToUpper(r)) + s[n:]
	if !strings.ContainsAny(s[len(s)-1:], ".!?") {
		s += "."
	}
	return s
}

// plants says "6 plants" or "1 plant".
func plants(n int) string {
	if n == 1 {
		return "1 plant"
	}
	return fmt.Sprintf("%d plants", n)
}

// named is the crop's name with its variety when one is known.
func named(c *crop.Crop, variety string, oneOf []string) string {
	switch {
	case variety != "":
		return Bracketed(c.Name, variety)
	case len(oneOf) > 0:
		return Bracketed(c.Name, "one of "+list(oneOf))
	}
	return c.Name
}

// Bracketed adds to a name in brackets, in those it has where it ends in some.
func Bracketed(name, more string) string {
	if bare, ok := strings.CutSuffix(name, ")"); ok {
		return bare + "; " + more + ")"
	}
	return name + " (" + more + ")"
}

// spaceName is the gardener's own name for a space.
func spaceName(sp garden.Space) string {
	if sp.Name != "" {
		return sp.Name
	}
	return string(sp.ID)
}

// size says a space as it was typed.
func size(sp garden.Space) string {
	var parts []string
	switch {
	case sp.Round.Known():
		parts = append(parts, sp.Round.Typed+" across")
	case sp.Shape != "":
		parts = append(parts, sp.Shape)
	case sp.Length.Known():
		parts = append(parts, sp.Length.Typed+" by "+sp.Width.Typed)
	}
	if sp.Depth.Known() {
		parts = append(parts, sp.Depth.Typed+" deep")
	}
	if sp.Volume.Known() {
		parts = append(parts, sp.Volume.Typed+" of medium")
	} else if v := sp.VolumeL(); v > 0 {
		parts = append(parts, fmt.Sprintf("about %.0f L of medium", v))
	}
	if sp.Pockets > 0 {
		parts = append(parts, fmt.Sprintf("%d pockets", sp.Pockets))
	}
	return strings.Join(parts, ", ")
}

// SayPlace says where a garden lies.
func SayPlace(p garden.Place) string {
	ns, ew := "N", "E"
	lat, lon := p.LatDeg, p.LonDeg
	if lat < 0 {
		ns, lat = "S", -lat
	}
	if lon < 0 {
		ew, lon = "W", -lon
	}
	s := fmt.Sprintf("%.2f° %s, %.2f° %s", lat, ns, lon, ew)
	if p.Elev.Typed != "" {
		s += ", " + p.Elev.Typed
	}
	return s
}
