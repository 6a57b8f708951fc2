package weather

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
)

// seattle is where the demonstration record was taken.
var seattle = Site{LatDeg: 47.44, LonDeg: -122.31, ElevM: 130}

func seattleRecord(t testing.TB) *Record {
	t.Helper()
	rec, faults := Read("seattle-weather.csv", bytes.NewReader(demo.SeattleCSV), seattle)
	if rec == nil || len(faults) > 0 {
		t.Fatalf("reading the Seattle record: %v", faults)
	}
	return rec
}

func TestReadSeattle(t *testing.T) {
	rec := seattleRecord(t)
	if rec.Start != cal.Of(2012, 1, 1) || rec.End() != cal.Of(2015, 12, 31) {
		t.Errorf("record runs %s to %s", rec.Start, rec.End())
	}
	day, _ := rec.At(cal.Of(2012, 1, 4))
	if day.TmaxC != 12.2 || day.TminC != 5.6 || day.RainMM != 20.3 {
		t.Errorf("4 January 2012 = %+v, want 12.2, 5.6, 20.3 as the file says", day)
	}
	if want := 4.7 * 0.748; math.Abs(day.WindMS-want) > 0.005 {
		t.Errorf("wind = %.3f, want %.3f: 4.7 m/s brought from 10 m to 2 m by [FAO56] eq. 47", day.WindMS, want)
	}
	if len(rec.Gaps) != 1 || rec.Gaps[0].Quantity != "radiation" {
		t.Errorf("gaps %v, want the radiation only", rec.Gaps)
	}
	if len(rec.Notes) != 1 || !strings.Contains(rec.Notes[0], "10 m") {
		t.Errorf("notes %q, want one on the wind's height", rec.Notes)
	}
}
