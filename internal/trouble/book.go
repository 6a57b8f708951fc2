package trouble

import (
	"embed"
	"encoding/csv"
	"fmt"
	"strings"
	"sync"
)

//go:embed book/*.csv
var pages embed.FS

// Sign is the look of a trouble.
type Sign struct {
	ID, Words string
	Loss      string // the ledger's word when nothing more is known
	Causes    []Cause
}

// Cause is one thing that fits a sign.
type Cause struct {
	Words string
	Loss  string // the ledger's word
	Tells string // what would tell it from the others
	First string // what to do first
	From  string // where it comes from, in words
}

// Culprit is an animal by its sign and hour.
type Culprit struct {
	Name    string
	Hour    string // "day", "night", "both"
	Signs   []string
	Look    string
	Barrier string
	Caution string // law and droppings, "" = none
	From    string
}

// Caution is one line for the moment of action.
type Caution struct{ Topic, Words, From string }

// Book is the whole key.
type Book struct {
	Signs    []Sign
	Culprits []Culprit
	Cautions []Caution
}

// Load reads the key; it lists the first fault.
func Load() (*Book, error) { return load() }

var load = sync.OnceValues(func() (*Book, error) {
	sources := map[string]string{}
	for _, f := range rows("sources") {
		sources[f[0]] = f[1] + ": " + f[2]
	}
	from := func(basis, key string) (string, error) {
		if key == "" {
			return basis, nil
		}
		s, ok := sources[key]
		if !ok {
			return "", fmt.Errorf("trouble: no source %q", key)
		}
		if basis == "memory" {
			s += " (from memory)"
		}
		return s, nil
	}
	b := &Book{}
	at := map[string]int{}
	for _, f := range rows("signs") {
		at[f[0]] = len(b.Signs)
		b.Signs = append(b.Signs, Sign{ID: f[0], Words: f[1], Loss: f[2]})
	}
	for _, f := range rows("causes") {
		i, ok := at[f[0]]
		if !ok {
			return nil, fmt.Errorf("trouble: a cause of %q, which is no sign", f[0])
		}
		s, err := from(f[5], f[6])
		if err != nil {
			return nil, err
		}
		b.Signs[i].Causes = append(b.Signs[i].Causes, Cause{Words: f[1], Loss: f[2], Tells: f[3], First: f[4], From: s})
	}
	for _, f := range rows("culprits") {
		s, err := from(f[6], f[7])
		if err != nil {
			return nil, err
		}
		b.Culprits = append(b.Culprits, Culprit{Name: f[0], Hour: f[1], Signs: strings.Split(f[2], "; "), Look: f[3], Barrier: f[4], Caution: f[5], From: s})
	}
	for _, f := range rows("cautions") {
		s, err := from(f[2], f[3])
		if err != nil {
			return nil, err
		}
		b.Cautions = append(b.Cautions, Caution{Topic: f[0], Words: f[1], From: s})
	}
	return b, nil
})

// rows reads one sheet without its head. The sheets are part of the program.
func rows(name string) [][]string {
	text, err := pages.ReadFile("book/" + name + ".csv")
	if err != nil {
		panic("trouble: no sheet " + name)
	}
	all, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
	if err != nil {
		panic("trouble: sheet " + name + ": " + err.Error())
	}
	return all[1:]
}

// Sign finds a sign by its id.
func (b *Book) Sign(id string) (Sign, bool) {
	for _, s := range b.Signs {
		if s.ID == id {
			return s, true
		}
	}
	return Sign{}, false
}

// By lists the culprits of an hour: "day" or "night" with those of both; ""
// lists all.
func (b *Book) By(hour string) []Culprit {
	var out []Culprit
	for _, c := range b.Culprits {
		if hour == "" || c.Hour == hour || c.Hour == "both" {
			out = append(out, c)
		}
	}
	return out
}

// Caution is the line of a topic; "" when there is none.
func (b *Book) Caution(topic string) string {
	for _, c := range b.Cautions {
		if c.Topic == topic {
			return c.Words
		}
	}
	return ""
}
