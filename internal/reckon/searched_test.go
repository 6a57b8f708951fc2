package reckon

import "testing"

// TestTheSearchSaysHowFar: while it runs the search says what share is done and
// what is proved of its best plan so far; that never grows worse, never promises
// more than is proved of the plan in the end, and ends there.
func TestTheSearchSaysHowFar(t *testing.T) {
	in := smallInputs(t, 47)
	in.Work = 2_000_000
	var said []SoFar
	in.Searched = func(far SoFar) { said = append(said, far) }
	r := planned(t, in)
	last, known := 0.0, 0
	for _, far := range said {
		if far.Share < 0 || far.Share > 1 {
			t.Errorf("share %.3f", far.Share)
		}
		if !far.Known {
			continue
		}
		if known++; known > 1 && far.Gap > last {
			t.Errorf("gap %.4f after %.4f", far.Gap, last)
		}
		last = far.Gap
	}
	if known < 3 || !r.proof.known || last < r.proof.futureGap-1e-9 || last > r.proof.futureGap+0.02 {
		t.Errorf("%d of %d gaps said, the last %.4f; proved in the end %.4f (%v)", known, len(said), last, r.proof.futureGap, r.proof.known)
	}
}
