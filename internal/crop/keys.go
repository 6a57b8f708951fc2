package crop

// figKey is one figure of a crop: its key in a file, where it goes, and the
// least and greatest value that can be true of any plant.
type figKey struct {
	name     string
	at       func(*Crop) *Figure
	min, max float64
	unit     string
}

// figKeys lists the figures in the order a file gives them. The list is
// shared: it must not be changed.
func figKeys() []figKey { return figures[:] }

var figures = [...]figKey{
	{"soil-min", func(c *Crop) *Figure { return &c.SoilMin }, -2, 30, "°C"},
	{"soil-opt", func(c *Crop) *Figure { return &c.SoilOpt }, 0, 45, "°C"},
	{"soil-max", func(c *Crop) *Figure { return &c.SoilMax }, 10, 50, "°C"},
	{"emerge-days", func(c *Crop) *Figure { return &c.EmergeDays }, 1, 60, "days"},
	{"sow-depth-mm", func(c *Crop) *Figure { return &c.SowDepthMM }, 0, 300, "mm"},
	{"base", func(c *Crop) *Figure { return &c.BaseC }, -5, 20, "°C"},
	{"opt", func(c *Crop) *Figure { return &c.OptC }, 5, 40, "°C"},
	{"ceil", func(c *Crop) *Figure { return &c.CeilC }, 15, 50, "°C"},
	{"days-from-sow", func(c *Crop) *Figure { return &c.DaysFromSow }, 5, 500, "days"},
	{"days-from-set", func(c *Crop) *Figure { return &c.DaysFromSet }, 5, 1500, "days"},
	{"nursery-weeks", func(c *Crop) *Figure { return &c.NurseryWeeks }, 1, 30, "weeks"},
	{"hold-days", func(c *Crop) *Figure { return &c.HoldDays }, 1, 250, "days"},
	{"harvest-days", func(c *Crop) *Figure { return &c.HarvestDays }, 1, 400, "days"},
	{"first-years", func(c *Crop) *Figure { return &c.FirstYears }, 0, 12, "years"},
	{"bear-days", func(c *Crop) *Figure { return &c.BearDays }, 2, 400, "days"},
	{"rest-h", func(c *Crop) *Figure { return &c.RestH }, 0, 3000, "hours"},
	{"spent-days", func(c *Crop) *Figure { return &c.SpentDays }, 1, 400, "days"},
	{"spacing-m", func(c *Crop) *Figure { return &c.SpacingM }, 0.01, 5, "m"},
	{"spread-m", func(c *Crop) *Figure { return &c.SpreadM }, 0.02, 10, "m"},
	{"height-m", func(c *Crop) *Figure { return &c.HeightM }, 0.02, 6, "m"},
	{"host-m", func(c *Crop) *Figure { return &c.HostM }, 0.05, 2, "m"},
	{"min-depth-m", func(c *Crop) *Figure { return &c.MinDepthM }, 0.03, 1, "m"},
	{"volume-l", func(c *Crop) *Figure { return &c.VolumeL }, 0.05, 300, "L"},
	{"yield-kg", func(c *Crop) *Figure { return &c.YieldKg }, 0.001, 50, "kg"},
	{"shelf-days", func(c *Crop) *Figure { return &c.ShelfDays }, 0.5, 800, "days"},
	{"sun-min-h", func(c *Crop) *Figure { return &c.SunMinH }, 0, 16, "hours"},
	{"sun-best-h", func(c *Crop) *Figure { return &c.SunBestH }, 0, 16, "hours"},
	{"dli-min", func(c *Crop) *Figure { return &c.DLIMin }, 0, 70, "mol/m² a day"},
	{"dli-best", func(c *Crop) *Figure { return &c.DLIBest }, 0, 70, "mol/m² a day"},
	{"frost-seedling", func(c *Crop) *Figure { return &c.FrostSeedling }, -40, 5, "°C"},
	{"frost-kill", func(c *Crop) *Figure { return &c.FrostKill }, -60, 5, "°C"},
	{"chill", func(c *Crop) *Figure { return &c.ChillC }, -5, 20, "°C"},
	{"set-night-min", func(c *Crop) *Figure { return &c.SetNightMin }, -20, 25, "°C"},
	{"set-soil-min", func(c *Crop) *Figure { return &c.SetSoilMin }, 0, 30, "°C"},
	{"fruit-max-day", func(c *Crop) *Figure { return &c.FruitMaxDay }, 15, 50, "°C"},
	{"fruit-max-night", func(c *Crop) *Figure { return &c.FruitMaxNight }, 10, 40, "°C"},
	{"fruit-min-night", func(c *Crop) *Figure { return &c.FruitMinNight }, -5, 25, "°C"},
	{"heat", func(c *Crop) *Figure { return &c.HeatC }, 15, 50, "°C"},
	{"vern-max", func(c *Crop) *Figure { return &c.VernMaxC }, -5, 20, "°C"},
	{"vern-days", func(c *Crop) *Figure { return &c.VernDays }, 1, 200, "days"},
	{"vern-leaves", func(c *Crop) *Figure { return &c.VernLeaves }, 0, 30, "leaves"},
	{"bolt-day-h", func(c *Crop) *Figure { return &c.BoltDayH }, 8, 24, "hours"},
	{"cold-days", func(c *Crop) *Figure { return &c.ColdDays }, 1, 200, "days"},
	{"cold-max", func(c *Crop) *Figure { return &c.ColdMaxC }, -5, 20, "°C"},
	{"form-day-h", func(c *Crop) *Figure { return &c.FormDayH }, 8, 24, "hours"},
	{"short-day-h", func(c *Crop) *Figure { return &c.ShortDayH }, 8, 24, "hours"},
	{"interval-years", func(c *Crop) *Figure { return &c.IntervalY }, 0, 10, "years"},
}

// bases are the kinds of evidence a figure may name.
func bases() []string {
	return []string{"published", "memory", "common-practice", "computed", MineBasis}
}

func classes() []string {
	return []string{"leaf", "head", "root", "bulb", "tuber", "fruit", "legume", "grain", "herb", "flower"}
}

func habits() []string {
	return []string{"upright", "rosette", "bush", "vine", "climbing", "columnar"}
}

func hardinesses() []string { return []string{"hardy", "half-hardy", "tender", "very-tender"} }
