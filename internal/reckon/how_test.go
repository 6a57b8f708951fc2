package reckon

import (
	"testing"

	"bedweek/internal/crop"
)

// The figures are the crop's own, each with its unit.
func TestHowStart(t *testing.T) {
	c := &crop.Crop{SpacingM: crop.Figure{Value: 0.08}, SowDepthMM: crop.Figure{Low: 6, High: 13, Source: "EXT-VEG"}}
	for way, want := range map[crop.Way]string{
		crop.Sow:    "For 60 plants, to stand 8 cm apart, seed 6 to 13 mm deep.",
		crop.SetOut: "60 plants, 8 cm apart. Water the pots first, then the ground.",
		crop.Plant:  "60 plants, 8 cm apart.",
	} {
		if got := howStart(way, c, 60); got != want {
			t.Errorf("%s: %q, want %q", way, got, want)
		}
	}
	c.SowDepthMM = crop.Figure{}
	if got, want := howStart(crop.Sow, c, 1), "For 1 plant, to stand 8 cm apart."; got != want {
		t.Errorf("with no depth known: %q, want %q", got, want)
	}
}
