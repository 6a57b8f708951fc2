package unit

import (
	"errors"
	"math"
	"math/rand/v2"
	"strconv"
	"testing"
)

const exact = "exact definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (1959 yard and pound agreement)"

func TestParseLength(t *testing.T) {
	for _, tt := range []struct {
		typed          string
		m, lowM, highM float64
		from           string
	}{
		{"60 cm", 0.6, 0.6, 0.6, "SI prefix"},
		{"010 cm", 0.1, 0.1, 0.1, "SI prefix; a leading zero is no octal mark"},
		{"010/08 in", 0.03175, 0.03175, 0.03175, exact},
		{"60cm", 0.6, 0.6, 0.6, "SI prefix"},
		{".75m", 0.75, 0.75, 0.75, "SI"},
		{"0,75 m", 0.75, 0.75, 0.75, "SI, decimal comma"},
		{"0,750 m", 0.75, 0.75, 0.75, "SI, decimal comma; a leading zero is no thousand"},
		{"18 mm", 0.018, 0.018, 0.018, "SI prefix"},
		{"-2 m", -2, -2, -2, "SI; below the sea"},
		{`2'6"`, 0.762, 0.762, 0.762, exact},
		{`2′6″`, 0.762, 0.762, 0.762, exact},
		{`2' 6''`, 0.762, 0.762, 0.762, exact},
		{`2'6½"`, 0.7747, 0.7747, 0.7747, exact},
		{"2 ft 6 in", 0.762, 0.762, 0.762, exact},
		{"2 1/2 ft", 0.762, 0.762, 0.762, exact},
		{"2½ ft", 0.762, 0.762, 0.762, exact},
		{"½ in", 0.0127, 0.0127, 0.0127, exact},
		{"3/4 in", 0.01905, 0.01905, 0.01905, exact},
		{"30in", 0.762, 0.762, 0.762, exact},
		{"30 inches", 0.762, 0.762, 0.762, exact},
		{"5 in.", 0.127, 0.127, 0.127, exact},
		{"1 yd", 0.9144, 0.9144, 0.9144, exact},
		{"1 m 20 cm", 1.2, 1.2, 1.2, "SI"},
		{"18-24 in", 0.5334, 0.4572, 0.6096, exact},
		{"18–24 in", 0.5334, 0.4572, 0.6096, exact},
		{"18 to 24 in", 0.5334, 0.4572, 0.6096, exact},
		{"18in-2ft", 0.5334, 0.4572, 0.6096, exact},
		{"45 - 60 cm", 0.525, 0.45, 0.6, "SI prefix"},
		{"1.2 m to 1.5 m", 1.35, 1.2, 1.5, "SI"},
	} {
		got, err := ParseLength(tt.typed)
		if err != nil {
			t.Errorf("ParseLength(%q): %v", tt.typed, err)
			continue
		}
		if got.M != tt.m || got.LowM != tt.lowM || got.HighM != tt.highM {
			t.Errorf("ParseLength(%q) = %v (%v to %v), want %v (%v to %v) m (%s)", tt.typed, got.M, got.LowM, got.HighM, tt.m, tt.lowM, tt.highM, tt.from)
		}
		if got.Typed != tt.typed || got.String() != tt.typed || got.In(got.System()) != tt.typed {
			t.Errorf("ParseLength(%q) comes back as %q", tt.typed, got.String())
		}
	}
}

func TestParseVolumeMassTemperature(t *testing.T) {
	for _, tt := range []struct {
		typed string
		want  float64
		parse func(string) (float64, error)
		from  string
	}{
		{"75 L", 75, litres, "SI"},
		{"75l", 75, litres, "SI"},
		{"500 ml", 0.5, litres, "SI prefix"},
		{"0.2 m³", 200, litres, "1 m3 = 1000 L"},
		{"1 gal", 3.785411784, litres, "exact definition: US gallon = 231 cubic inches"},
		{"12 gal", 45.424941408, litres, "exact definition: US gallon = 231 cubic inches"},
		{"12 US gallons", 45.424941408, litres, "exact definition: US gallon = 231 cubic inches"},
		{"1 imp gal", 4.54609, litres, "exact definition: imperial gallon, UK Units of Measurement Regulations 1995"},
		{"2 cu ft", 56.633693184, litres, "exact definition: (0.3048 m) cubed"},
		{"2 ft3", 56.633693184, litres, "exact definition: (0.3048 m) cubed"},
		{"4 qt", 3.785411784, litres, "four quarts are a gallon"},
		{"8 kg", 8, kilograms, "SI"},
		{"15 lb", 6.80388555, kilograms, exact},
		{"16 oz", 0.45359237, kilograms, exact},
		{"2 lb 4 oz", 1.0205828325, kilograms, exact},
		{"18 C", 18, celsius, "identity"},
		{"18 °C", 18, celsius, "identity"},
		{"32 F", 0, celsius, "exact definition: 32 F = 0 C"},
		{"212°F", 100, celsius, "exact definition: 212 F = 100 C"},
		{"-40 F", -40, celsius, "exact definition: the scales cross at -40"},
		{"65 degrees F", 165.0 / 9, celsius, "exact definition: 5/9 of 33"},
	} {
		got, err := tt.parse(tt.typed)
		if err != nil || got != tt.want {
			t.Errorf("parse %q = %v, %v; want %v (%s)", tt.typed, got, err, tt.want, tt.from)
		}
	}
}

func litres(s string) (float64, error)    { v, err := ParseVolume(s); return v.L, err }
func kilograms(s string) (float64, error) { m, err := ParseMass(s); return m.Kg, err }
func celsius(s string) (float64, error)   { c, err := ParseTemperature(s); return float64(c.C), err }

func TestFaultsHavePlaceAndRemedy(t *testing.T) {
	for _, tt := range []struct {
		typed string
		at    int
		what  string
	}{
		{"60", 0, "a length without a unit"},
		{"2'6", 2, "a length without a unit"},
		{"1 m 20", 4, "a length without a unit"},
		{"18-24", 0, "a length without a unit"},
		{"1,200 mm", 0, "1,200 can be read two ways"},
		{"1.200.000 mm", 0, "a number with two points or commas"},
		{"60 kg", 3, `"kg" is no unit of length`},
		{"60 cm deep", 6, `"deep" after the length`},
		{"24-18 in", 0, "a range that falls"},
		{"2-1/2 ft", 0, "a range that falls"},
		{"don't know", 0, "no number here"},
		{"", 0, "no length here"},
		{"1/0 in", 0, "a fraction over zero"},
		{"2'14\"", 2, "a second part as large as the first unit"},
		{"123456789012345678901 m", 0, "a number of 21 digits"},
		{"NaN m", 0, "no number here"},
		{"1e9 m", 1, `"e" is no unit of length`},
	} {
		_, err := ParseLength(tt.typed)
		var f *Fault
		if !errors.As(err, &f) {
			t.Errorf("ParseLength(%q): no fault", tt.typed)
			continue
		}
		if f.What != tt.what || f.At != tt.at || f.Remedy == "" || f.Len < 1 {
			t.Errorf("ParseLength(%q): at %d %q (%q), want at %d %q", tt.typed, f.At, f.What, f.Remedy, tt.at, tt.what)
		}
	}
	if _, err := ParseMass("8-10 kg"); err == nil {
		t.Error("ParseMass took a range")
	}
	if _, err := ParseVolume("2 pints"); err == nil {
		t.Error("ParseVolume took pints, which differ by country")
	}
}

func TestCompass(t *testing.T) {
	for _, tt := range []struct {
		typed string
		want  float64
		ok    bool
	}{
		{"47.6", 47.6, true}, {"47.6 N", 47.6, true}, {"47.6S", -47.6, true}, {"-47.6", -47.6, true},
		{"47° 36′ N", 47.6, true}, {"47° 30' 36\" S", -47.51, true}, {"90", 90, true}, {"0", 0, true},
		{"95", 0, false}, {"-47.6 S", 0, false}, {"47.6 W", 0, false}, {"47 36", 0, false}, {"north", 0, false}, {"", 0, false}, {"47° 61′ N", 0, false},
	} {
		got, err := ParseLatitude(tt.typed)
		if (err == nil) != tt.ok || got != tt.want {
			t.Errorf("ParseLatitude(%q) = %v, %v; want %v, ok %v (degrees, minutes and seconds by sixties)", tt.typed, got, err, tt.want, tt.ok)
		}
	}
	if got, err := ParseLongitude("122.3 W"); err != nil || got != -122.3 {
		t.Errorf("ParseLongitude(122.3 W) = %v, %v; want -122.3", got, err)
	}
	if got, err := ParseTurn("30 degrees"); err != nil || got != 30 {
		t.Errorf("ParseTurn = %v, %v; want 30", got, err)
	}
}

func TestPrinters(t *testing.T) {
	const rule = "interface rule: half an inch, a quarter under six inches, whole centimetres"
	for _, tt := range []struct{ got, want, from string }{
		{FormatLength(0.762, Imperial), `2'6"`, rule},
		{FormatLength(0.6096, Imperial), `2'`, rule},
		{FormatLength(0.1, Imperial), `4"`, rule}, // 3.937 in
		{FormatLength(0.12, Imperial), `4¾"`, rule},
		{FormatLength(0.2, Imperial), `8"`, rule},    // 7.874 in
		{FormatLength(0.4, Imperial), `1'3½"`, rule}, // 15.748 in lies nearer 15½
		{FormatLength(0.3047, Imperial), `1'`, rule}, // carries into a foot
		{FormatLength(0.0063, Imperial), `¼"`, rule},
		{FormatLength(0, Imperial), `0"`, rule},
		{FormatLength(0.604, Metric), "60 cm", rule},
		{FormatLength(12.346, Metric), "12.35 m", rule},
		{mustLength("18-24 in").In(Metric), "45-60 cm", "interface rule: a range converts with its width"},
		{mustLength("45-60 cm").In(Imperial), "18-24 in", "interface rule: a range converts with its width"},
		{mustLength("1-2 in").In(Metric), "3-5 cm", "interface rule: narrow ranges to 1 cm"},
		{Metres(0.6).String(), "60 cm", rule},
		{volumeIn("75 L", Imperial), "20 US gal", "75 / 3.785 = 19.8"},
		{volumeIn("12 gal", Metric), "45 L", "12 x 3.785 = 45.4"},
		{volumeIn("12 gal", Imperial), "12 gal", "as typed"},
		{volumeIn("10-12 gal", Metric), "38-45 L", "37.9 to 45.4"},
	} {
		if tt.got != tt.want {
			t.Errorf("printed %q, want %q (%s)", tt.got, tt.want, tt.from)
		}
	}
}

func mustLength(s string) Length {
	l, err := ParseLength(s)
	if err != nil {
		panic("unit: test length does not parse")
	}
	return l
}

func volumeIn(s string, in System) string {
	v, err := ParseVolume(s)
	if err != nil {
		return err.Error()
	}
	return v.In(in)
}

// TestTypedComesBack is the interface's acceptance 7: 10,000 random entries
// come back exactly as typed, and what a printer writes can be read again
// within half of the printer's step.
func TestTypedComesBack(t *testing.T) {
	const seed = 7
	r := rand.New(rand.NewPCG(seed, 1))
	units := []string{" cm", "cm", " m", " in", `"`, " ft", "'", " mm", " yd"}
	for i := range 10000 {
		n := strconv.FormatFloat(math.Round(r.Float64()*100000)/1000, 'f', -1, 64)
		typed := n + units[r.IntN(len(units))]
		l, err := ParseLength(typed)
		if err != nil || l.String() != typed || l.In(l.System()) != typed {
			t.Fatalf("seed %d entry %d: %q came back as %q, %v", seed, i, typed, l, err)
		}
		for _, s := range []System{Metric, Imperial} {
			again, err := ParseLength(FormatLength(l.M, s))
			step := 0.005
			if s == Imperial {
				step = 0.0254 / 4
			}
			if err != nil || math.Abs(again.M-l.M) > step*1.0001 {
				t.Fatalf("seed %d entry %d: %q printed as %q reads as %v m, want %v m", seed, i, typed, FormatLength(l.M, s), again.M, l.M)
			}
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"60 cm", `2'6"`, "2 1/2 ft", "18-24 in", "0,75 m", "½ in", "-1 m", "12 imp gal", "47° 36′ N", "1/0", "\xff", "0/08", "2'6½\" to 3 yd"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		l, err := ParseLength(s)
		if err == nil && (math.IsNaN(l.M) || math.IsInf(l.M, 0) || l.LowM > l.HighM || l.M < l.LowM || l.M > l.HighM) {
			t.Errorf("ParseLength(%q) = %+v", s, l)
		}
		v, err := ParseVolume(s)
		if err == nil && (math.IsInf(v.L, 0) || v.LowL > v.HighL) {
			t.Errorf("ParseVolume(%q) = %+v", s, v)
		}
		if _, err := ParseMass(s); err != nil && err.Error() == "" {
			t.Errorf("ParseMass(%q): a fault without words", s)
		}
		if d, err := ParseLatitude(s); err == nil && math.Abs(d) > 90 {
			t.Errorf("ParseLatitude(%q) = %v", s, d)
		}
		if c, err := ParseTemperature(s); err == nil && math.IsNaN(float64(c.C)) {
			t.Errorf("ParseTemperature(%q) is not a number", s)
		}
	})
}
