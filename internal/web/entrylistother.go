package web

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strconv"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// listed is one row of a list of plantings as it would be kept: an entry, or
// something that is no crop of the book, which goes into the garden's text.
type listed struct {
	Happening
	space string
	other *garden.Value
}

// plantWord asks what a word for a plant means that is no crop of the book.
func plantWord(word, chosen string) Field {
	opts := []Option{{Value: "", Words: "A slip: I mend the list"}, {Value: "else", Words: "Something else, not in the book"}}
	return Field{Name: "k-" + word, Label: "“" + clip(word, 40) + "” is", Sort: "list", Options: choose(opts, chosen),
		Hint: "Of something else we know nothing. Its ground is kept for it, " + othersTake + " each until you say more."}
}

// otherOf is a row's plant as something else that stands in a space.
func otherOf(word string, on cal.Day, count int) *garden.Value {
	v := garden.Value{Line: true, Pairs: []garden.KeyValue{}}.With("name", garden.Text(word))
	if count > 1 {
		v = v.With("count", garden.Text(strconv.Itoa(count)))
	}
	v = v.With("takes", garden.Text(othersTake)).With("since", garden.Text(on.String()))
	return &v
}

// together are the entries of all rows, and the garden's text last when there is
// something else in them: they are kept at once or not at all.
func together(d *described, rows []listed) (all []Happening, others int, err error) {
	var patches []garden.Patch
	marked := map[string]bool{}
	for _, r := range rows {
		if r.other == nil {
			all = append(all, r.Happening)
			continue
		}
		others++
		at := garden.Path{"spaces", r.space}
		patches = append(patches, garden.Patch{At: append(at[:2:2], garden.OtherKey, garden.New), Value: *r.other})
		if sp, ok := d.g.Space(garden.SpaceID(r.space)); ok && !marked[r.space] && !isGuessed(sp.Guessed, garden.OtherKey) {
			marked[r.space] = true
			p := FormPage{}
			p.marksExactly(sp.Guessed, append(append([]string{}, sp.Guessed...), garden.OtherKey), append(at[:2:2], "guessed")...)
			patches = append(patches, p.patches...)
		}
	}
	if others == 0 {
		return all, 0, nil
	}
	text, err := garden.Apply(d.text, patches...)
	if err != nil {
		return nil, 0, fmt.Errorf("writing what is no crop: %w", err)
	}
	if _, bad := garden.Read("the garden", text, d.book); len(bad) > 0 {
		return nil, 0, fmt.Errorf("%s. %s", bad[0].What, bad[0].Remedy)
	}
	sum := sha256.Sum256(text)
	return append(all, Happening{ledger.GardenSet, d.today, ledger.Garden{Text: string(text), SHA256: hex.EncodeToString(sum[:])}}), others, nil
}
