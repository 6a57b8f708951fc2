package reckon

import (
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/stand"
	"bedweek/internal/weather"
)

// The side that is asked for is the one on which the week's soil may be wrong.
// The limits are the book's: spinach comes up from 2 °C to about 30, [KNOTT-GERM].
func TestSeedbedLook(t *testing.T) {
	c := &crop.Crop{}
	c.SoilMin, c.SoilMax = crop.Figure{Value: 2, Source: "KNOTT-GERM"}, crop.Figure{Value: 30, Source: "KNOTT-GERM"}
	for _, tt := range []struct {
		soilC float64
		known bool
		want  string
	}{
		{4, true, "at breakfast: 2 °C"},
		{15, true, "damp a knuckle deep"},
		{27, true, "in mid-afternoon: above about 30 °C"},
		{27, false, "at breakfast: 2 °C"},
	} {
		if got := seedbedLook(c, tt.soilC, tt.known); !strings.Contains(got, tt.want) {
			t.Errorf("soil of %v °C (known: %v): %q, want %q", tt.soilC, tt.known, got, tt.want)
		}
	}
	c.SoilMax = crop.Figure{}
	if got := seedbedLook(c, 40, true); strings.Contains(got, "thermometer") {
		t.Errorf("with no upper limit known: %q", got)
	}
}

// Weather that never changes, at its mean of 12 °C and too dull to warm the
// ground above the air, gives soil of 12 °C, and a bed 1.5 °C warmer 13.5.
func TestSoilWeek(t *testing.T) {
	day := weather.Day{TminC: 12, TmaxC: 12, RadMJ: 1}
	f := weather.Future{Start: cal.Of(2015, 4, 1), Days: make([]weather.Day, 40)}
	for i := range f.Days {
		f.Days[i] = day
	}
	e := &stand.Env{Site: weather.Site{}, Futures: []weather.Future{f}, WarmC: 1.5}
	if got, ok := soilWeekC(e, f.Start+20); !ok || got < 13.49 || got > 13.51 {
		t.Errorf("soil is %v °C (%v), want 13.5", got, ok)
	}
	if _, ok := soilWeekC(e, f.Start-30); ok {
		t.Error("soil is known before the weather begins")
	}
}
