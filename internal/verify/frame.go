package verify

import (
	"bytes"
	"encoding/json"
	"fmt"
	"sort"
)

// Topic is a file of cases.
type Topic struct {
	Topic string `json:"topic"`
	About string `json:"about"`
	Cases []Case `json:"cases"`
}

// Tally counts the cases of one topic.
type Tally struct {
	Topic      string `json:"topic"`
	Cases      int    `json:"cases"`
	Within     int    `json:"within"`
	Outside    int    `json:"outside"`
	NotCovered int    `json:"not_covered"`
}

// Miss is one expected value that did not come out.
type Miss struct {
	Topic     string `json:"topic"`
	ID        string `json:"id"`
	Key       string `json:"key"`
	Got       any    `json:"got"`
	Want      any    `json:"want"`
	Tolerance any    `json:"tolerance"`
	Source    string `json:"source"`
}

// Report is what a verification found. Uncovered lists the cases no engine
// answers yet; they are never counted as passed.
type Report struct {
	Topics    []Tally  `json:"topics"`
	Outside   []Miss   `json:"outside"`
	Uncovered []string `json:"uncovered,omitempty"`
}

// Totals adds up all topics.
func (r Report) Totals() Tally {
	t := Tally{Topic: "all"}
	for _, k := range r.Topics {
		t.Cases += k.Cases
		t.Within += k.Within
		t.Outside += k.Outside
		t.NotCovered += k.NotCovered
	}
	return t
}

// Parse reads one case file. Every fault is a sentence a person can act on.
func Parse(name string, text []byte) (Topic, error) {
	var t Topic
	dec := json.NewDecoder(bytes.NewReader(text))
	if err := dec.Decode(&t); err != nil {
		return t, fmt.Errorf("%s: not a case file: %w. A case file is JSON with topic, about and cases", name, err)
	}
	if t.Topic == "" || len(t.Cases) == 0 {
		return t, fmt.Errorf("%s: no topic or no cases in it. A case file is JSON with topic, about and cases", name)
	}
	seen := map[string]bool{}
	for i, c := range t.Cases {
		switch {
		case c.ID == "":
			return t, fmt.Errorf("%s: case %d has no id", name, i+1)
		case seen[c.ID]:
			return t, fmt.Errorf("%s: case id %q stands twice", name, c.ID)
		case len(c.Expect) == 0:
			return t, fmt.Errorf("%s: case %q expects nothing, so it could not fail", name, c.ID)
		}
		seen[c.ID] = true
	}
	return t, nil
}

// Run recomputes every case of the topics, in their order.
func Run(topics []Topic) Report {
	table := adaptors()
	r := Report{Outside: []Miss{}}
	for _, t := range topics {
		tally := Tally{Topic: t.Topic, Cases: len(t.Cases)}
		for _, c := range t.Cases {
			misses, covered := judge(table[t.Topic], t.Topic, c)
			switch {
			case len(misses) > 0:
				tally.Outside++
				r.Outside = append(r.Outside, misses...)
			case !covered:
				tally.NotCovered++
				r.Uncovered = append(r.Uncovered, t.Topic+"/"+c.ID)
			default:
				tally.Within++
			}
		}
		r.Topics = append(r.Topics, tally)
	}
	return r
}

// judge compares one case. A case is covered only when every expected key was
// answered; a key answered wrongly is a miss even if others are unanswered.
func judge(a adaptor, topic string, c Case) (misses []Miss, covered bool) {
	if a == nil {
		return nil, false
	}
	got, ok := a(c)
	if !ok {
		return nil, false
	}
	covered = true
	keys := make([]string, 0, len(c.Expect))
	for k := range c.Expect {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	for _, k := range keys {
		if isWarning(k) {
			continue
		}
		g, present := got[k]
		if !present {
			covered = false
			continue
		}
		for _, m := range compare([]string{k}, g, c.Expect[k], tolerances(c, k)) {
			m.Topic, m.ID, m.Source = topic, c.ID, c.Source
			misses = append(misses, m)
		}
	}
	return misses, covered
}
