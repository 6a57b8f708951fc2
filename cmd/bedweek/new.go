package main

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/garden"
	"bedweek/internal/unit"
)

const helpNew = `bedweek new FILE

Begin a garden file by answering a few questions in the terminal: where it
lies, one space, what stands in it. Press Enter to leave anything out; what is
guessed is marked in the file. An existing file is never overwritten.

  bedweek new my-garden.yaml

Exit 0: the file is written. 1: it cannot be written, or the answers ended
early. 2: wrong usage.
`

// asker asks in a terminal and says again what is wrong.
type asker struct {
	w    *world
	in   *bufio.Scanner
	over bool
}

// ask repeats a question until check finds nothing wrong with the answer.
func (a *asker) ask(question string, check func(string) string) string {
	for !a.over {
		fmt.Fprintf(a.w.out, "%s\n> ", question)
		if !a.in.Scan() {
			a.over = true
			break
		}
		answer := strings.TrimSpace(a.in.Text())
		wrong := check(answer)
		if wrong == "" {
			return answer
		}
		fmt.Fprintln(a.w.out, wrong)
	}
	return ""
}

func runNew(ctx context.Context, w *world, args []string) int {
	names, code, done := parse(w, flags("new"), helpNew, args)
	if done {
		return code
	}
	if len(names) != 1 {
		return wrong(w, "new", "name one file to write")
	}
	if _, err := os.Stat(names[0]); err == nil {
		fmt.Fprintf(w.err, "bedweek new: %s is there already; choose another name\n", names[0])
		return exitNo
	}
	book, err := crop.Load()
	if err != nil {
		fmt.Fprintf(w.err, "bedweek new: %v\n", err)
		return exitNo
	}
	in := w.in
	if in == nil {
		in = os.Stdin
	}
	text, ok := newGarden(&asker{w: w, in: bufio.NewScanner(in)}, garden.FromBook(book), cal.FromTime(w.now()))
	if !ok {
		fmt.Fprintln(w.err, "bedweek new: the answers ended early. Nothing was written.")
		return exitNo
	}
	if _, faults := garden.Read(names[0], text, garden.FromBook(book)); len(faults) > 0 {
		for _, f := range faults {
			fmt.Fprintln(w.err, f)
		}
		return exitNo
	}
	f, err := os.OpenFile(names[0], os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err == nil {
		if _, err = f.Write(text); err == nil {
			err = f.Close()
		}
	}
	if err != nil {
		fmt.Fprintf(w.err, "bedweek new: writing the garden: %v\n", err)
		return exitNo
	}
	fmt.Fprintf(w.out, "Written. See the pages with: bedweek serve -garden %s my-data\n", names[0])
	return exitDone
}

// newGarden asks the questions and returns the file's text; ok is false when
// the answers end early.
func newGarden(a *asker, book garden.Crops, today cal.Day) (text []byte, ok bool) {
	name := a.ask("What is the garden called? (Enter: My garden)", func(s string) string {
		if len([]rune(s)) > 80 {
			return "At most 80 letters fit."
		}
		return ""
	})
	if name == "" {
		name = "My garden"
	}
	var town garden.Town
	var lat, lon string
	listed := false
	a.ask("Where is it? A city on the list ("+townNames()+"), or latitude and longitude, as 47.6 N, 122.3 W", func(s string) string {
		for _, t := range garden.Towns() {
			if strings.EqualFold(t.Name, s) {
				town, lat, lon, listed = t, t.Latitude, t.Longitude, true
				return ""
			}
		}
		x, y, comma := strings.Cut(s, ",")
		latDeg, errA := unit.ParseLatitude(strings.TrimSpace(x))
		lonDeg, errB := unit.ParseLongitude(strings.TrimSpace(y))
		if !comma || errA != nil || errB != nil {
			return "Not understood. Write a city of the list, or as 47.6 N, 122.3 W."
		}
		lat, lon = strings.TrimSpace(x), strings.TrimSpace(y)
		near, km := garden.NearestTown(latDeg, lonDeg)
		if km > 250 {
			return fmt.Sprintf("The nearest listed place is %s, %.0f km away: too far for its weather. Begin with: bedweek serve, and give twelve months there.", near.Name, km)
		}
		town = near
		return ""
	})
	kinds := []string{"raised bed", "open ground", "bag", "reservoir planter", "elevated bed", "railing planter", "hanging planter", "tier", "pocket bag"}
	kind := a.ask("One space to begin with: what is it? ("+strings.Join(kinds, ", ")+")", func(s string) string {
		for _, k := range kinds {
			if s == k {
				return ""
			}
		}
		return "Write one of them."
	})
	var size garden.Value
	guessed := []string{"east", "north", "medium", "water", "wants"}
	a.ask("How big? As 3 m x 1.2 m, or 18 in across", func(s string) string {
		v, bad := garden.SaySize(s)
		if len(bad) > 0 {
			return bad[0].Words
		}
		if len(v.Pairs) == 0 {
			return "A guess is fine."
		}
		size = v
		return ""
	})
	depth := a.ask("How deep is the soil? As 30 cm (Enter: don't know)", func(s string) string {
		if s == "" {
			return ""
		}
		if _, err := unit.ParseLength(s); err != nil {
			return err.Error()
		}
		return ""
	})
	if depth == "" {
		depth = size.Get("depth")
	}
	if depth == "" {
		depth = "20-40 cm"
		guessed = append(guessed, "depth")
	}
	var standing garden.Value
	a.ask("What stands in it? As 6 kale, since March 2015, well (Enter: nothing)", func(s string) string {
		if s == "" {
			return ""
		}
		v, blank, bad := garden.SayStanding(s, book, strings.HasSuffix(lat, "S"))
		switch {
		case len(bad) > 0:
			return bad[0].Words
		case blank.Count || blank.Since:
			return "Say how many and since when; about May is fine, with its year."
		}
		standing = v
		return ""
	})
	if a.over {
		return nil, false
	}
	id := garden.Slug(kind)
	at := func(keys ...string) garden.Path { return append(garden.Path{"spaces", id}, keys...) }
	put := func(v string, p garden.Path) garden.Patch { return garden.Patch{At: p, Value: garden.Text(v)} }
	patches := []garden.Patch{put(name, garden.Path{"garden"}), put(lat, garden.Path{"place", "latitude"}), put(lon, garden.Path{"place", "longitude"}),
		{At: garden.Path{"place", "months"}, Value: garden.MonthsValue(town.Months)}, put(town.FromMemory(), garden.Path{"place", "months from"}), put(today.Long(), garden.Path{"from"}),
		put("potting mix", garden.Path{"media", "mix", "kind"}), put(kind, at("kind")), put("0 m", at("east")), put("0 m", at("north"))}
	for _, k := range []string{"length", "width", "across", "shape"} {
		if v := size.Get(k); v != "" {
			patches = append(patches, put(v, at(k)))
		}
	}
	patches = append(patches, put(depth, at("depth")), put("mix", at("medium")), put("can", at("water")))
	if len(standing.Pairs) > 0 {
		patches = append(patches, garden.Patch{At: at("standing", garden.New), Value: standing})
	}
	marks := garden.Value{Line: true}
	for _, g := range guessed {
		if g != "wants" {
			marks.Items = append(marks.Items, garden.Text(g))
		}
	}
	patches = append(patches, garden.Patch{At: at("guessed"), Value: marks})
	for _, w := range [][2]string{{"salad", "4"}, {"cooking greens", "3"}, {"roots", "3"}, {"beans and peas", "2"}, {"tomatoes", "3"}, {"alliums", "2"}, {"herbs", "2"}} {
		patches = append(patches, put(w[1], garden.Path{"wants", w[0]}))
	}
	all := garden.Value{Line: true, Items: []garden.Value{garden.Text("wants")}}
	if !listed {
		all.Items = append(all.Items, garden.Text("place"))
	}
	patches = append(patches, garden.Patch{At: garden.Path{"guessed"}, Value: all})
	text, err := garden.Apply([]byte("# Begun on "+today.Long()+". Change it here or on the pages; remarks stay.\n\ngarden: My garden\n"), patches...)
	return text, err == nil
}

func townNames() string {
	var names []string
	for _, t := range garden.Towns() {
		names = append(names, t.Name)
	}
	return strings.Join(names, "; ")
}
