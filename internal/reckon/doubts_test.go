package reckon

import (
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
)

// A clock a year behind the notes is asked about; a day chosen is not.
func TestClockBehindTheNotes(t *testing.T) {
	in := Inputs{Garden: &garden.Garden{}, Date: cal.Of(2025, time.May, 3), Newest: cal.Of(2026, time.May, 2), ByClock: true}
	got := in.doubts()
	if len(got) != 1 || !strings.Contains(got[0], "written on 2 May 2026, and this machine says it is 3 May 2025") {
		t.Errorf("asks %q", got)
	}
	in.ByClock = false
	if got := in.doubts(); len(got) != 0 {
		t.Errorf("a chosen day is asked about: %q", got)
	}
	in.ByClock, in.Newest = true, in.Date+1 // written past midnight in the east
	if got := in.doubts(); len(got) != 0 {
		t.Errorf("a note of tomorrow's date line is asked about: %q", got)
	}
}
