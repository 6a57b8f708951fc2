package garden

import (
	"testing"

	"bedweek/internal/cal"
)

func TestWhen(t *testing.T) {
	const calendar = "the calendar"
	const ours = "widths defined in docs/formats.md"
	day := func(s string) cal.Day {
		d, err := cal.Parse(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, tt := range []struct {
		text        string
		south       bool
		early, late string
		from        string
	}{
		{"2015-03-04", false, "2015-03-04", "2015-03-04", calendar},
		{"4 March 2015", false, "2015-03-04", "2015-03-04", calendar},
		{"4th of March, 2015", false, "2015-03-04", "2015-03-04", calendar},
		{"March 4, 2015", false, "2015-03-04", "2015-03-04", calendar},
		{"29 Feb 2012", false, "2012-02-29", "2012-02-29", calendar},
		{"May 2015", false, "2015-05-01", "2015-05-31", calendar},
		{"2015-02", false, "2015-02-01", "2015-02-28", calendar},
		{"2014", false, "2014-01-01", "2014-12-31", calendar},
		{"early March 2015", false, "2015-03-01", "2015-03-10", ours},
		{"mid Sept 2014", false, "2014-09-11", "2014-09-20", ours},
		{"late February 2015", false, "2015-02-21", "2015-02-28", ours},
		{"about 10 April 2015", false, "2015-04-03", "2015-04-17", ours},
		{"about May 2015", false, "2015-04-21", "2015-06-10", ours},
		{"about 2013", false, "2012-07-03", "2014-07-01", ours},
		{"week of 8 June 2015", false, "2015-06-08", "2015-06-14", "8 June 2015 was a Monday"},
		{"spring 2013", false, "2013-03-01", "2013-05-31", ours},
		{"spring 2013", true, "2013-09-01", "2013-11-30", ours},
		{"fall 2013", false, "2013-09-01", "2013-11-30", ours},
		{"winter 2013", true, "2013-06-01", "2013-08-31", ours},
		{"3 to 20 March 2015", false, "2015-03-03", "2015-03-20", calendar},
		{"March to May 2015", false, "2015-03-01", "2015-05-31", calendar},
		{"between 28 February and 3 March 2012", false, "2012-02-28", "2012-03-03", calendar},
		{"2014-11-02 to 2015-01-03", false, "2014-11-02", "2015-01-03", calendar},
	} {
		w, bad := when(tt.text, tt.south)
		if bad != nil {
			t.Errorf("when(%q): %v", tt.text, bad)
			continue
		}
		if w.Early != day(tt.early) || w.Late != day(tt.late) || w.Likely < w.Early || w.Likely > w.Late {
			t.Errorf("when(%q, south %v) = %v to %v, likely %v; want %s to %s (%s)", tt.text, tt.south, w.Early, w.Late, w.Likely, tt.early, tt.late, tt.from)
		}
	}
	for _, text := range []string{"", "soon", "29 February 2015", "2015-13-01", "03/04/2015", "4.3.2015", "winter 2014", "May", "2015-3-4-5",
		"1899", "2201", "20 March to 3 March 2015", "early 2015", "about", "week of May 2015", "99999-01-01", "32 May 2015", "15-03-04", "to", "from to"} {
		if w, bad := when(text, false); bad == nil {
			t.Errorf("when(%q) = %v, want a fault", text, w)
		} else if bad.what == "" || bad.remedy == "" {
			t.Errorf("when(%q): a fault without words", text)
		}
	}
	if _, bad := when("summer 2014", true); bad == nil {
		t.Error("a southern summer lies in two years, and was taken")
	}
}

func TestMonths(t *testing.T) {
	for text, want := range map[string][2]int{"June": {6, 6}, "June to October": {6, 10}, "nov-feb": {11, 2}, "all year": {0, 0}} {
		if a, b, ok := months(text); !ok || a != want[0] || b != want[1] {
			t.Errorf("months(%q) = %d, %d, %v; want %v", text, a, b, ok, want)
		}
	}
	for _, text := range []string{"", "ju", "summer", "June to", "June to July to August"} {
		if a, b, ok := months(text); ok {
			t.Errorf("months(%q) = %d, %d", text, a, b)
		}
	}
}

func TestNearest(t *testing.T) {
	for _, tt := range []struct {
		typed string
		want  string
		ok    bool
	}{{"depht", "depth", true}, {"Depth", "depth", true}, {"widht", "width", true}, {"colour", "", false}, {"", "", false}} {
		got, ok := nearest(tt.typed, []string{"depth", "width", "water"})
		if ok != tt.ok || ok && got != tt.want {
			t.Errorf("nearest(%q) = %q, %v; want %q, %v", tt.typed, got, ok, tt.want, tt.ok)
		}
	}
}
