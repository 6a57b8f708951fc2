package stand

import (
	"math"

	"bedweek/internal/crop"
)

// ripe says what makes a crop ready.
type ripe int

const (
	bySize   ripe = iota // leaves, heads, roots: grown large enough
	byTime               // flowers: developed far enough
	byFruit              // fruit and pods: flowered, set and filled
	byForm               // bulbs: days long enough, then time
	byWinter             // sprouting heads that must pass a winter first
	byYear               // established perennials that bear once a year
)

// course is the way from a start to the first pick, in the book's numbers.
type course struct {
	way      crop.Way
	ripe     ripe
	goal     float32 // reference or good days from taking hold to ready
	flower   float32 // reference days from taking hold to first flower
	lag      float32 // reference days from flower to pick
	pick     float32 // reference days the picking lasts
	hold     float32 // reference days a ready plant stands
	form     float32 // reference days of long days to form a bulb
	formH    float32
	shortH   float32 // day length above which a short-day plant forms nothing; 0 = none
	lasting  bool    // planted once for years, or waits for short days: starting sooner is never idle
	first    int     // days from the start to the first year's crop
	bear     float32 // reference days from midwinter to the first pick of the year
	restH    float32 // hours of winter cold asked
	bolt     float32 // reference days of inducing days to bolt
	long     float32 // reference days of long days that bolt it without the cold it otherwise asks; 0 = never
	vern     float32 // days of cold asked
	vernAt   float32 // development at which cold begins to count
	born     float32 // maturity at the start, for frost
	settle   int     // days to take hold
	nights   bool    // waits for the book's least nights
	upDays   int     // days to come up at the reference temperature
	size     *sizeCurve
	cover    *sizeCurve // ground covered at an age, 0..1
	height   *sizeCurve
	small    float32 // age share at which a stalled plant is worth pulling
	limit    int     // days from start to first pick that still count as success
	floorKg  float32 // least yield that counts as success
	winterKg float32 // the same for what is started in shortening days and stands the winter
	heatKg   float32 // the same for a picking that heat cuts short
	quick    int     // the place's quickest, days; 0 = never
	bestKg   float32
}

const (
	takeHoldDays  = 7    // planted pieces make roots first (common practice)
	dueFactor     = 1.4  // late beyond the book's or the place's days (growth.md: 1.2-1.4)
	winterDays    = 120  // a winter's standstill granted to crops that stand through it (assumption)
	floorShare    = 0.42 // of the smaller of the book's and the place's best yield
	smallestShare = 0.55 // size at which a plant that has stopped growing is pulled
	slowDays      = 100  // crops of so many days or more are not worth pulling at half their size
	slowSmallest  = 0.7  // but from here on (common practice: leeks thinner than a thumb stay)
	leafDays      = 4.5  // reference days per leaf (assumption; lettuce and cabbage 3-6)
	bulbShare     = 0.6  // of the printed days lie between bulbing day length and harvest (assumption)
	springShare   = 0.8  // the same for bulbs planted in spring
	darkShare     = 0.9  // of an autumn planting's days are good days, the winter being dark (assumption)
	autumnLimit   = 300  // days for bulbs planted in autumn
	sproutShare   = 0.16 // of the printed days lie between the end of chill and the first shoots (assumption)
	vernBolt      = 22.0 // reference days from the end of chill to a useless stem (assumption)
	shortestHold  = 7.0
	springSlack   = 100 // planted by spring, a crop "in the second year" may come this many days short of a whole one
)

func newCourse(c *crop.Crop, way crop.Way, germ *emergence) *course {
	co := &course{way: way, ripe: ripeBy(c), limit: math.MaxInt32}
	days := c.DaysFromSet
	steep, touch := startSteep, startTouch
	switch way {
	case crop.Sow:
		days = c.DaysFromSow
		steep, touch = seedSteep, seedTouch
		co.upDays = int(germ.refDays(c.RefC))
		co.goal = float32(days.Value) - float32(co.upDays)
	case crop.SetOut:
		co.goal, co.born = float32(days.Value), 0.3
	default:
		co.settle = takeHoldDays
		if days.Value == 0 {
			days = c.DaysFromSow
		}
		co.goal, co.born = float32(days.Value-takeHoldDays), 0.3
	}
	co.goal = max(co.goal, 10)
	co.size = newSizeCurve(steep, touch)
	co.small = co.size.age(smallestShare)
	if days.Value >= slowDays && co.ripe != byWinter {
		co.small = co.size.age(slowSmallest)
	}
	co.cover, co.height = co.size.power(coverPower, leastShare), co.size.power(heightPower, 0)
	co.lag = co.goal * float32(lagShare(c))
	co.flower = co.goal - co.lag
	co.pick = float32(max(c.HarvestDays.Value, shortestHold))
	co.hold = float32(max(c.HoldDays.Value, shortestHold))
	co.shortH = float32(c.ShortDayH.Value)
	co.nights = waitsForNights(c, way)
	co.yearly(c)
	co.bolting(c)
	if co.ripe == byForm {
		share := float32(bulbShare)
		if !c.AutumnPlant {
			share = springShare
		}
		co.form, co.formH = share*float32(days.Value), float32(c.FormDayH.Value)
		if way == crop.Sow {
			co.form = share * float32(c.DaysFromSet.Value)
		}
		if c.AutumnPlant {
			co.goal *= darkShare
		}
	}
	return co
}

// waitsForNights reports ways that ask for the book's least nights: warm crops
// sown or set out, and cool ones set out. Where cold sends a cool crop to seed
// the printed night is a warning of that, and its days of cold are counted themselves.
func waitsForNights(c *crop.Crop, way crop.Way) bool {
	if !c.SetNightMin.Known() || way == crop.Plant {
		return false
	}
	return c.Warm || way == crop.SetOut && !vernalises(c)
}

// yearly sets when a plant that bears once a year begins, and from when in the
// year.
func (co *course) yearly(c *crop.Crop) {
	co.bear, co.restH = yearDays, float32(c.RestH.Value)
	if c.BearDays.Known() {
		co.bear = float32(c.BearDays.Value)
	}
	co.lasting = c.Dormant || c.FirstYears.Value > 0 || c.Class == "tuber" && co.shortH > 0
	if c.FirstYears.Value > 0 {
		co.first = int(365*c.FirstYears.Value) - springSlack
	}
}

// bolting sets how much cold and how many long days send the crop to seed.
func (co *course) bolting(c *crop.Crop) {
	if needsCold(c) {
		co.vern, co.bolt = float32(c.ColdDays.Value), vernBolt
		return
	}
	if vernalises(c) {
		co.vern = float32(vernDays(c))
		co.bolt = vernBolt
		leaves := c.VernLeaves.Value
		if !c.VernDays.Known() {
			leaves = 8
		}
		if co.way == crop.SetOut {
			leaves -= c.NurseryWeeks.Value
		}
		co.vernAt = float32(max(0, leaves) * leafDays * leafPace(c))
		if c.BoltDayH.Value > 0 {
			co.long = float32(longDayBolt(c)) * co.goal
		}
		return
	}
	co.bolt = float32(longDayBolt(c)) * co.goal
	co.vernAt = 8
}

// leafPace stretches a leaf's reference days where the book's reference is a
// winter's: leaves keep to their degree days.
func leafPace(c *crop.Crop) float64 {
	const leafRefC = 16
	if c.RefC >= leafRefC || c.RefC <= c.BaseC.Value {
		return 1
	}
	return (leafRefC - c.BaseC.Value) / (c.RefC - c.BaseC.Value)
}

// longDayBolt is how much of the way to ready a crop gets in inducing days
// before it bolts: lettuce, cilantro and their kin a little past ready,
// spinach and the mustards just before it (assumption; fits the printed sowing seasons).
func longDayBolt(c *crop.Crop) float64 {
	switch c.Family {
	case "Asteraceae":
		return 1.1
	case "Apiaceae":
		return 1.3
	case "Amaranthaceae":
		return 0.84
	}
	return 0.95
}

// needsCold reports a crop without a harvest unless it had its winter: garlic,
// overwintered sprouting broccoli.
func needsCold(c *crop.Crop) bool { return c.ColdDays.Known() && c.ColdDays.Value > 0 }

func ripeBy(c *crop.Crop) ripe {
	switch {
	case c.Perennial && (c.Harvest == crop.Fruiting || c.BearDays.Known()):
		return byYear
	case c.FormDayH.Value > 0 && c.Class == "bulb":
		return byForm
	case c.Class == "fruit", c.Class == "grain", c.Class == "legume":
		return byFruit
	case c.Harvest == crop.Bloom:
		return byTime
	case needsCold(c):
		return byWinter
	}
	return bySize
}

// lagShare is the part of the printed days that lies between flower and pick
// (common practice: beans two weeks of eight, tomatoes six to seven of ten,
// summer squash one of seven, melons and pumpkins half).
func lagShare(c *crop.Crop) float64 {
	switch {
	case c.Family == "Solanaceae":
		return 0.55
	case c.Family == "Cucurbitaceae" && c.DaysFromSet.Value > 70:
		return 0.5
	case c.Family == "Cucurbitaceae":
		return 0.2
	case c.Class == "legume":
		return 0.28
	}
	return 0.35
}

func (t *Table) course(way crop.Way) *course {
	for _, co := range t.courses {
		if co.way == way {
			return co
		}
	}
	return nil
}

// firstCut is the share of the yield that stands at the first pick. What is
// picked no longer than it took to grow (spinach, arugula, loose lettuce) is
// cut whole and grows again by its own size curve: its printed yield is that of
// one cutting or of the whole plant. Leaves plucked for months stand for some days' picking.
func (co *course) firstCut() float32 {
	if r := co.pick / co.goal; r <= 1 {
		return 1 / (1 + cutRegrow*r)
	}
	return min(firstMost, firstDays/co.pick)
}
