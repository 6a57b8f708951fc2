package reckon

import (
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// A fed bag is given six to ten weeks from its planting, and anew from its last
// flush; what was never fed, and a bed, are given nothing.
func TestFlushWindow(t *testing.T) {
	since := cal.Of(2015, time.May, 1)
	in := &Inputs{Garden: &garden.Garden{Spaces: []garden.Space{{ID: "bag", Kind: garden.Bag}, {ID: "bed", Kind: garden.RaisedBed}}}}
	stays := []standing{{id: "p", space: 0, count: 2, since: cal.Window{Likely: since}}, {id: "q", space: 1, count: 2, since: cal.Window{Likely: since}}}
	rows := func(state ledger.State) []FlushRow { in.State = &state; return flushRows(in, stays) }
	if got := rows(ledger.State{}); len(got) != 0 {
		t.Errorf("nothing was fed, and %+v", got)
	}
	fed := []ledger.DoneNote{{About: "p", Verb: "feed", On: since + 20}, {About: "q", Verb: "feed", On: since + 20}}
	for _, c := range []struct {
		done []ledger.DoneNote
		from cal.Day
	}{{fed, since}, {append(fed, ledger.DoneNote{About: "bag", Verb: "flush", On: since + 60}), since + 60}} {
		got := rows(ledger.State{Done: c.done})
		if len(got) != 1 || got[0].Space != "bag" || got[0].When.Early != c.from+42 || got[0].When.Likely != c.from+56 || got[0].When.Late != c.from+70 {
			t.Errorf("from %s: %+v", c.from, got)
		}
	}
}
