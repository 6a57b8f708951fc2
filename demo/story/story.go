// Package story turns the demo's season, a table of what its invented people
// did, into ledger events.
package story

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// story turns the demo's season (date,kind,space,crop,variety,count,note,kg)
// into ledger events. A line names a planting by space, crop and variety; the
// story knows which one stands there.
type story struct {
	g         *garden.Garden
	plantings []told
	events    []ledger.Event
}

// told is a planting as the story knows it.
type told struct {
	id, space, crop, variety string
	count                    int
	gone                     bool
}

// Events reads the story up to day, that day included.
func Events(text []byte, g *garden.Garden, day cal.Day) ([]ledger.Event, error) {
	s := &story{g: g}
	for _, sp := range g.Spaces {
		for _, st := range sp.Standing {
			s.plantings = append(s.plantings, told{st.ID, string(sp.ID), string(st.Crop), st.Variety, st.Count, false})
		}
	}
	r := csv.NewReader(strings.NewReader(string(text)))
	r.Comment, r.FieldsPerRecord = '#', 8
	if _, err := r.Read(); err != nil {
		return nil, fmt.Errorf("reading the demo's story: %w", err)
	}
	for {
		row, err := r.Read()
		if errors.Is(err, io.EOF) {
			return s.events, nil
		}
		if err != nil {
			return nil, fmt.Errorf("reading the demo's story: %w", err)
		}
		on, err := cal.Parse(row[0])
		if err != nil {
			return nil, fmt.Errorf("the demo's story: %w", err)
		}
		if on > day {
			continue
		}
		if err := s.tell(on, row); err != nil {
			return nil, fmt.Errorf("the demo's story, %s %s %s: %w", row[0], row[1], row[3], err)
		}
	}
}

func (s *story) tell(on cal.Day, row []string) error {
	kind, space, crop, variety, note := ledger.Kind(row[1]), row[2], row[3], row[4], row[6]
	count, err := number(row[5])
	if err != nil {
		return err
	}
	var body any
	moved := ""
	switch kind {
	case ledger.Sown:
		body = ledger.Started{Crop: crop, Variety: variety, Space: space, Count: int(count), Lot: s.lot(crop, variety), Note: note}
	case ledger.SeedTested:
		lot := s.lot(crop, variety)
		of, err := number(strings.TrimPrefix(note, "of "))
		if err != nil || lot == "" {
			return errors.New("a test wants a lot of the tin, and its note as of 20")
		}
		body = ledger.Germination{Lot: lot, Sown: int(of), Up: int(count)}
	case ledger.Described:
		feature, value, ok := strings.Cut(note, ": ")
		if !ok {
			return errors.New("a look wants its note as leaf edge: curled")
		}
		body = ledger.Trait{Crop: crop, Variety: variety, Feature: feature, Value: value, By: "packet"}
	case ledger.PrickedOut, ledger.PottedOn, ledger.Hardening:
		t := s.tray(crop, variety)
		if t == nil {
			return errors.New("no tray of it stands there")
		}
		b := ledger.Handover{Planting: t.id, Pot: note}
		if t.space != space {
			b.Space, t.space = space, space
		}
		if count > 0 && int(count) < t.count {
			b.Count, b.Rest, t.count = int(count), "gone", int(count)
		}
		body = b
	case ledger.PutOut:
		b := ledger.Started{Crop: crop, Variety: variety, Space: space, Count: int(count), Note: note}
		if t := s.tray(crop, variety); t != nil {
			b.Planting = t.id
			if t.count -= b.Count; t.count <= 0 {
				// All of it moves: the planting keeps its name.
				t.gone, moved = true, t.id
			}
		}
		body = b
	default:
		p := s.standing(space, crop, variety)
		if p == nil {
			return errors.New("nothing of it stands there")
		}
		switch kind {
		case ledger.Picked:
			kg, err := number(row[7])
			if err != nil {
				return err
			}
			body = ledger.Amount{Planting: p.id, Kg: kg, Note: note}
		case ledger.Pulled, ledger.Lost:
			b := ledger.Ended{Planting: p.id, Count: int(count)}
			if kind == ledger.Lost {
				b.Cause = note
			} else {
				b.Note = note
			}
			if p.count -= b.Count; count == 0 || p.count <= 0 {
				p.gone = true
			}
			body = b
		case ledger.Counted:
			body = ledger.Count{Planting: p.id, Count: int(count), Note: note}
			p.count = int(count)
		case ledger.Looked:
			body = ledger.Look{Planting: p.id, Looks: note}
		default:
			return fmt.Errorf("the story has no kind %q", kind)
		}
	}
	e, err := ledger.NewEvent("demo", on, kind, body)
	if err != nil {
		return err
	}
	e.ID = ledger.FollowingID("story", fmt.Sprint(len(s.events), row))
	s.events = append(s.events, e)
	if kind == ledger.Sown || kind == ledger.PutOut {
		id := e.ID
		if moved != "" {
			id = moved
		}
		s.plantings = append(s.plantings, told{id, space, crop, variety, int(count), false})
	}
	return nil
}

// lot finds the packet of the garden file's tin, "" = none.
func (s *story) lot(crop, variety string) string {
	for _, l := range s.g.Seeds {
		if string(l.Crop) == crop && l.Variety == variety {
			return l.ID
		}
	}
	return ""
}

// standing finds the youngest planting of a crop in a space.
func (s *story) standing(space, crop, variety string) *told {
	for i := len(s.plantings) - 1; i >= 0; i-- {
		p := &s.plantings[i]
		if !p.gone && p.space == space && p.crop == crop && (variety == "" || p.variety == variety || p.variety == "") {
			return p
		}
	}
	return nil
}

// tray finds a planting of a crop on a lamp shelf or bench.
func (s *story) tray(crop, variety string) *told {
	for i := range s.plantings {
		p := &s.plantings[i]
		sp, ok := s.g.Space(garden.SpaceID(p.space))
		if ok && !sp.Grows() && !p.gone && p.crop == crop && (variety == "" || p.variety == variety) {
			return p
		}
	}
	return nil
}

// number reads a figure; an empty cell is 0.
func number(s string) (float64, error) {
	if s == "" {
		return 0, nil
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return 0, fmt.Errorf("%q is not a number", s)
	}
	return v, nil
}
