package weather

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"bedweek/demo"
	"bedweek/internal/cal"
)

// Every message the owner of a file can see has a file that causes it.
func TestReadFaults(t *testing.T) {
	const head = "date,rain_mm,tmax_c,tmin_c,wind_ms\n"
	good := head + "2012-05-01,0,15,6,2\n2012-05-02,1,14,7,2\n"
	var fahrenheit strings.Builder
	for d := 1; d <= 20; d++ {
		fmt.Fprintf(&fahrenheit, "2012-07-%02d,0,%d,58,2\n", d, 75+d%5)
	}
	for _, tt := range []struct {
		name, text, what string
		line             int
		rec              bool // something can be read all the same
	}{
		{"empty", "", "the file is empty", 0, false},
		{"blank", " \n\n", "the file is empty", 0, false},
		{"binary", "PK\x03\x04\x00\x00rain", "this is not a text file", 0, false},
		{"other", "name,colour\nleek,green\n", "we do not know this kind of file", 1, false},
		{"heading only", head, "a heading but no days", 0, false},
		{"no rain column", "date,tmax_c,tmin_c\n2012-05-01,15,6\n", "no column rain_mm", 1, false},
		{"inches", "date,rain_in,tmax_f,tmin_f\n2012-05-01,0,60,50\n", "this column is not in °C, mm or m/s", 1, false},
		{"fahrenheit", head + fahrenheit.String(), "the temperatures look like °F", 0, false},
		{"impossible date", good + "2012-02-30,1,12,5,3\n", "impossible date", 4, true},
		{"year far off", good + "9999-02-01,1,12,5,3\n", "impossible date", 4, true},
		{"other order", good + "30/02/2012,1,12,5,3\n", "date not understood", 4, true},
		{"crossed", good + "2012-05-04,0,9.4,14.1,3.1\n", "minimum above maximum", 4, true},
		{"negative rain", good + "2012-05-05,-1,15,6,3\n", "negative rain", 4, true},
		{"too much rain", good + "2012-05-05,9999,15,6,3\n", "impossible rain", 4, true},
		{"too cold", good + "2012-05-05,0,15,-120,3\n", "impossible temperature", 4, true},
		{"too hot", good + "2012-05-05,0,99,6,3\n", "impossible temperature", 0, true},
		{"gale", good + "2012-05-05,0,15,6,300\n", "impossible wind", 4, true},
		{"not a number", good + "2012-05-05,0,warm,6,3\n", "not a number", 4, true},
		{"NaN", good + "2012-05-05,0,1e999,6,3\n", "not a number", 4, true},
		{"twice", good + "2012-05-02,0,15,6,3\n", "the same day twice", 4, true},
		{"out of order", good + "2012-04-30,0,15,6,3\n", "the days are out of order from here", 4, true},
		{"slip of the year", good + "2102-05-03,0,15,6,3\n", "days more than five years away from the rest: 1", 0, true},
		{"cut off", good + "2012-05-03,0,1", "3 values where the heading has 5", 4, true},
		{"two stations", "location,date,rain_mm,tmax_c,tmin_c\nA,2012-05-01,0,15,6\nB,2012-05-01,0,25,16\n", "more than one station in one file", 0, false},
		{"no temperatures", head + "2012-05-01,0,,,2\n", "no day has both a maximum and a minimum temperature", 0, false},
		{"never rain", head + "2012-05-01,,15,6,2\n", "no rain was recorded", 0, false},
		{"monthly", "month,tmax_c,tmin_c,rain_mm\n1,8,2,140\n", "these are monthly normals, not a daily record", 1, false},
		{"hourly", "date,temperature\n2010-01-01T01:00:00,4\n", "these are hourly means, not a daily record", 1, false},
		{"short dly", "USC00099902201911PRCP    0  7    0T 7  254  7   13B 7", "the line is cut off", 1, false},
	} {
		rec, faults := Read(tt.name, strings.NewReader(tt.text), seattle)
		if (rec != nil) != tt.rec {
			t.Errorf("%s: record %v, want one: %v", tt.name, rec != nil, tt.rec)
		}
		found := false
		for _, f := range faults {
			if f.What == tt.what && f.Line == tt.line {
				found = true
				if f.Remedy == "" {
					t.Errorf("%s: no remedy for %q", tt.name, f.What)
				}
			}
		}
		if !found {
			t.Errorf("%s: faults %v, want %q on line %d", tt.name, faults, tt.what, tt.line)
		}
	}
}

func TestFaultsAreCapped(t *testing.T) {
	var b strings.Builder
	b.WriteString("date,rain_mm,tmax_c,tmin_c\n")
	for i := range 200 {
		fmt.Fprintf(&b, "%s,-1,15,6\n", cal.Of(2012, 1, 1)+cal.Day(i))
	}
	_, faults := ReadSheet("x", "", strings.NewReader(b.String()))
	if len(faults) != maxFaults+1 {
		t.Fatalf("%d faults listed, want %d and a count", len(faults), maxFaults)
	}
	if got := faults[maxFaults].What; got != "150 more faults are not listed" {
		t.Errorf("last fault says %q", got)
	}
}

func TestChooseStation(t *testing.T) {
	const text = "location,date,rain_mm,tmax_c,tmin_c\nA,2012-05-01,0,15,6\nB,2012-05-01,3,25,16\n"
	rec, faults := ReadStation("two.csv", "B", strings.NewReader(text), seattle)
	if rec == nil || len(faults) > 0 || len(rec.Days) != 1 || rec.Days[0].TmaxC != 25 {
		t.Fatalf("station B: %+v, faults %v", rec, faults)
	}
	if rec, faults := ReadStation("two.csv", "C", strings.NewReader(text), seattle); rec != nil || len(faults) == 0 {
		t.Errorf("station C was found: %+v", rec)
	}
}

// Gaps are filled in the way the list says, and only there.
func TestGapsAreFilledOpenly(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(string(demo.SeattleCSV)), "\n")
	at := func(d cal.Day) int { return 1 + int(d-cal.Of(2012, 1, 1)) }
	one, from := cal.Of(2013, 3, 10), cal.Of(2014, 7, 1)
	blank := func(d cal.Day) {
		f := strings.Split(lines[at(d)], ",")
		f[2] = ""
		lines[at(d)] = strings.Join(f, ",")
	}
	blank(one)
	for d := from; d < from+10; d++ {
		blank(d)
	}
	whole := seattleRecord(t)
	rec, faults := Read("holes.csv", strings.NewReader(strings.Join(lines, "\n")), seattle)
	if rec == nil || len(faults) > 0 {
		t.Fatalf("faults %v", faults)
	}
	var filled []Gap
	for _, g := range rec.Gaps {
		if g.Quantity == "tmax" {
			filled = append(filled, g)
		}
	}
	if len(filled) != 2 || filled[0].From != one || filled[0].To != one || filled[1].From != from || filled[1].To != from+9 {
		t.Fatalf("gaps %+v", filled)
	}
	before, _ := whole.At(one - 1)
	after, _ := whole.At(one + 1)
	got, _ := rec.At(one)
	within(t, "one day's gap", got.TmaxC, (before.TmaxC+after.TmaxC)/2, 1e-9, "a straight line")
	sum, n := 0.0, 0.0
	for _, y := range []int{2012, 2013, 2014, 2015} {
		for d := cal.Of(y, 1, 1); d <= cal.Of(y, 12, 31); d++ {
			near := d.YearDay() - from.YearDay()
			if v, _ := whole.At(d); near >= -7 && near <= 7 && (d < from || d >= from+10) {
				sum, n = sum+v.TmaxC, n+1
			}
		}
	}
	got, _ = rec.At(from)
	within(t, "ten days' gap", got.TmaxC, sum/n, 1e-9, "mean of the days within a week, the gap left out")
	for i := range rec.Days {
		d := rec.Start + cal.Day(i)
		if d != one && (d < from || d >= from+10) && rec.Days[i] != whole.Days[i] {
			t.Fatalf("%s changed: %+v, was %+v", d, rec.Days[i], whole.Days[i])
		}
	}
}

func TestMultiDayTotalsAreSpread(t *testing.T) {
	text := strings.Join([]string{
		"USC00099902,20190501,TMAX,200,,,7,", "USC00099902,20190501,TMIN,100,,,7,", "USC00099902,20190501,PRCP,10,,,7,",
		"USC00099902,20190504,TMAX,200,,,7,", "USC00099902,20190504,TMIN,100,,,7,",
		"USC00099902,20190504,MDPR,300,,,7,", "USC00099902,20190504,DAPR,3,,,7,",
	}, "\n")
	rec, faults := Read("x.csv", strings.NewReader(text), seattle)
	if rec == nil || len(faults) > 0 || len(rec.Days) != 4 {
		t.Fatalf("record %+v, faults %v", rec, faults)
	}
	for i, want := range []float64{1, 10, 10, 10} {
		within(t, "rain", rec.Days[i].RainMM, want, 1e-9, "30.0 mm over 3 days")
	}
	if !strings.Contains(strings.Join(rec.Notes, " "), "cover several days") {
		t.Errorf("notes %q do not speak of the total", rec.Notes)
	}
}

// Snow is in whole millimetres while rain is in tenths.
func TestUnitsOfDLY(t *testing.T) {
	for _, tt := range []struct {
		element string
		want    float64
	}{{"SNOW", 254}, {"PRCP", 25.4}, {"TMAX", 25.4}, {"AWND", 25.4}} {
		m, faults := ParseDLY("USC00099902201912" + tt.element + "  254  7" + strings.Repeat("-9999   ", 30))
		if len(faults) > 0 || m.Values[0] == nil || *m.Values[0] != tt.want {
			t.Errorf("%s 254 reads %v, want %v (GHCN-Daily readme, section III)", tt.element, m.Values[0], tt.want)
		}
	}
}

func TestReadNormals(t *testing.T) {
	const text = "# made up\nmonth,tmax_c,tmin_c,rain_mm\n1,8,2,140\n2,10,2,100\n3,12,4,90\n4,15,5,70\n5,19,8,50\n6,22,11,40\n7,25,13,15\n8,25,13,25\n9,22,11,40\n10,16,8,85\n11,11,5,150\n12,8,2,145\n"
	n, faults := ReadNormals("n.csv", strings.NewReader(text), seattle)
	if n == nil || len(faults) > 0 || n.TmaxC[6] != 25 || n.RainMM[11] != 145 {
		t.Fatalf("normals %+v, faults %v", n, faults)
	}
	if got := Sniff([]byte(text)); got != KindMonthly {
		t.Errorf("Sniff = %q", got)
	}
	for _, tt := range []struct{ change, to, what string }{
		{"7,25,13,15\n", "", "months are missing"},
		{"7,25,13,15", "6,25,13,15", "the same month twice"},
		{"7,25,13,15", "7,77,56,15", "the temperatures look like °F"},
		{"7,25,13,15", "7,25,33,15", "minimum above maximum"},
		{"7,25,13,15", "7,25,13,-5", "negative rain"},
		{"7,25,13,15", "7,25,,15", "not a number"},
		{"7,25,13,15", "13,25,13,15", "month not understood"},
		{"7,25,13,15", "7,25,13", "3 values where the heading has 4"},
		{"rain_mm", "rain_in", "this column is not in °C or mm"},
	} {
		n, faults := ReadNormals("n.csv", strings.NewReader(strings.Replace(text, tt.change, tt.to, 1)), seattle)
		found := false
		for _, f := range faults {
			found = found || f.What == tt.what
		}
		if n != nil || !found {
			t.Errorf("%q for %q: faults %v, want %q", tt.to, tt.change, faults, tt.what)
		}
	}
}

// No bytes whatever may panic a reader, and what is read obeys the promises.
func FuzzRead(f *testing.F) {
	f.Add(demo.SeattleCSV[:2000])
	f.Add([]byte("USC00099902201911PRCP    0  7    0T 7  254  7   13B 7    0P 7-9999   -9999"))
	f.Add([]byte("USW00099901,20210604,TMAX,289,,,W,2400\nUSW00099901,20210604,TMIN,89,,,W,2400\n"))
	f.Add([]byte("\"STATION\",\"DATE\",\"TMAX\",\"TMIN\",\"PRCP\",\"PRCP_ATTRIBUTES\"\n\"A\",\"2020-02-29\",\"211\",\"-12\",\"5\",\",,7\"\n"))
	f.Add([]byte("month;tmax_c;tmin_c;rain_mm\n1;8,5;2;140\n"))
	f.Add([]byte("date\ttmax_c\ttmin_c\train_mm\n2012-01-01\t3\t\"1\t2\n"))
	f.Add([]byte("date,temperature\n2010-01-01T01:00:00,4\n"))
	f.Fuzz(func(t *testing.T, b []byte) {
		rec, faults := Read("fuzz", bytes.NewReader(b), seattle)
		if rec == nil && len(faults) == 0 {
			t.Fatal("no record and no fault")
		}
		if len(faults) > maxFaults+2 {
			t.Fatalf("%d faults", len(faults))
		}
		if rec != nil {
			for i, d := range rec.Days {
				if why := insane(d); why != "" {
					t.Fatalf("day %d: %s: %+v", i, why, d)
				}
			}
		}
		if n, faults := ReadNormals("fuzz", bytes.NewReader(b), seattle); n == nil && len(faults) == 0 {
			t.Fatal("no normals and no fault")
		}
		if h, faults := ReadHourly("fuzz", bytes.NewReader(b)); h == nil && len(faults) == 0 {
			t.Fatal("no hours and no fault")
		}
	})
}

// insane says what no day may be, "" if d is sound.
func insane(d Day) string {
	for _, v := range []float64{d.TmaxC, d.TminC, d.RainMM, d.WindMS, d.RadMJ} {
		if v != v || v > 1e6 || v < -1e6 {
			return "not a finite number"
		}
	}
	switch {
	case d.TminC > d.TmaxC:
		return "minimum above maximum"
	case d.RainMM < 0 || d.WindMS < 0 || d.RadMJ < 0:
		return "negative"
	case d.TmaxC > 65 || d.TminC < -100:
		return "impossible temperature"
	}
	return ""
}
