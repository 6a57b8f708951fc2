package reckon

import (
	"fmt"
	"sync"
)

// dryMemo keeps what was reckoned of water for one plan: a note about one space
// leaves the others' answers as they were, and a page asks the same again that
// its note has just asked.
type dryMemo struct {
	mu    sync.Mutex
	rows  map[string]*DryRow
	skies map[string]*skies
}

// memoMost is how many rows are kept before all are let go: some twenty
// answers of a full garden.
const memoMost = 500

// rowKey tells answers of one space apart: what was asked and what was seen.
// Everything else stays as it is for one plan, but for the readings in sky.
func rowKey(space int, sky string, ask DryAsk, seen []SpaceSeen) string {
	return fmt.Sprint(space, sky, ask.FromHour, ask.NextH, ask.AwayDays, seen)
}

// skyKey tells skies apart: the hours looked at, and own readings, which take
// the station's place in the days that have been.
func skyKey(in *Inputs, days, fromHour int) string {
	key := fmt.Sprint(in.Date, days, fromHour)
	if in.State != nil {
		for _, r := range in.State.Readings {
			key += " " + r.Event
		}
	}
	return key
}

// sky returns the skies of a key, made by fresh when they are not known. A nil
// memo keeps nothing.
func (m *dryMemo) sky(key string, fresh func() (*skies, error)) (*skies, error) {
	if m == nil {
		return fresh()
	}
	m.mu.Lock()
	s := m.skies[key]
	m.mu.Unlock()
	if s != nil {
		return s, nil
	}
	s, err := fresh()
	if err != nil {
		return nil, err
	}
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.skies == nil || len(m.skies) > 8 {
		m.skies = map[string]*skies{}
	}
	m.skies[key] = s
	return s, nil
}

// row returns a copy of a row, made by fresh when it is not known.
func (m *dryMemo) row(key string, fresh func() *DryRow) *DryRow {
	if m == nil {
		return fresh()
	}
	m.mu.Lock()
	r := m.rows[key]
	m.mu.Unlock()
	if r == nil {
		r = fresh()
		m.mu.Lock()
		if m.rows == nil || len(m.rows) > memoMost {
			m.rows = map[string]*DryRow{}
		}
		m.rows[key] = r
		m.mu.Unlock()
	}
	out := *r
	return &out
}
