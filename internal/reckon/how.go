package reckon

import (
	"fmt"

	"bedweek/internal/crop"
)

// howStart says how many, how far apart and how deep, by the crop book, for
// whoever starts this crop for the first time.
func howStart(way crop.Way, c *crop.Crop, n int) string {
	apart := fmt.Sprintf("%.0f cm apart", 100*c.SpacingM.Value)
	switch way {
	case crop.SetOut:
		return sentence(fmt.Sprintf("%s, %s. Water the pots first, then the ground", plants(n), apart))
	case crop.Plant:
		return sentence(fmt.Sprintf("%s, %s", plants(n), apart))
	}
	return sentence(fmt.Sprintf("for %s, to stand %s%s", plants(n), apart, sowDepth(c)))
}

// howShelf says the same of a sowing under the lamps.
func howShelf(c *crop.Crop, n int) string {
	return sentence("pots for " + plants(n) + sowDepth(c))
}

// sowDepth is how deep seed goes, as ", seed 6 to 13 mm deep"; "" when not known.
func sowDepth(c *crop.Crop) string {
	d := c.SowDepthMM
	switch {
	case !d.Known():
		return ""
	case d.Low == d.High:
		return fmt.Sprintf(", seed %.0f mm deep", d.Low)
	}
	return fmt.Sprintf(", seed %.0f to %.0f mm deep", d.Low, d.High)
}

// howPick says how a crop is taken so that it goes on; common practice.
func howPick(c *crop.Crop) string {
	switch c.Harvest {
	case crop.Fruiting:
		return "Hold the stem; take the fruit with its stalk."
	case crop.Flush:
		return "Cut or snap the shoot low; leave the young ones."
	case crop.CutAgain:
		return "The largest leaves or tips; leave enough to grow on."
	}
	return ""
}
