package cal

import (
	"encoding/json"
	"testing"
	"time"
)

func TestWindowThatHoldsNoDayIsNull(t *testing.T) {
	b, err := json.Marshal([]Window{{}, {Early: Of(2015, time.May, 1), Likely: Of(2015, time.May, 3), Late: Of(2015, time.May, 9)}})
	if err != nil {
		t.Fatal(err)
	}
	want := `[null,{"early":"2015-05-01","likely":"2015-05-03","late":"2015-05-09"}]`
	if string(b) != want {
		t.Fatalf("got %s, want %s", b, want)
	}
	var back []Window
	if err := json.Unmarshal(b, &back); err != nil {
		t.Fatal(err)
	}
	if !back[0].None() || back[1].Late != Of(2015, time.May, 9) {
		t.Errorf("read back as %v", back)
	}
}

func TestWeeksBeginOnMonday(t *testing.T) {
	for d := Of(2014, time.December, 20); d < Of(2016, time.January, 10); d++ {
		m := d.Monday()
		if m.Time().Weekday() != time.Monday || m > d || d-m > 6 {
			t.Fatalf("the Monday of %s is given as %s", d, m)
		}
		if back, err := Parse(d.String()); err != nil || back != d {
			t.Fatalf("%s is read back as %s (%v)", d, back, err)
		}
	}
	for _, bad := range []string{"", "2015-02-29", "2015-13-01", "0000-01-01", "15-1-1", "tomorrow"} {
		if d, err := Parse(bad); err == nil {
			t.Errorf("%q is taken for %s", bad, d)
		}
	}
}
