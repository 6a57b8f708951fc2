package stand

import (
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// A handful of crops built by hand, with figures from memory of common
// practice, so that the kernel can be tested apart from the book.

func fig(v ...float64) crop.Figure {
	f := crop.Figure{Value: v[0], Low: v[0], High: v[0], Source: "test", Basis: "memory"}
	if len(v) == 3 {
		f.Low, f.High = v[1], v[2]
	}
	return f
}

func germ(v ...float64) []crop.GermPoint {
	var g []crop.GermPoint
	for i := 0; i < len(v); i += 3 {
		g = append(g, crop.GermPoint{SoilC: v[i], Days: v[i+1], Pct: v[i+2], HasDays: true, HasPct: true})
	}
	return g
}

func handCrops() []*crop.Crop {
	return []*crop.Crop{
		{ID: "tomato", Family: "Solanaceae", Class: "fruit", Warm: true, Ways: []crop.Way{crop.SetOut}, Harvest: crop.Fruiting,
			BaseC: fig(8), OptC: fig(27), CeilC: fig(35), RefC: 20, DaysFromSet: fig(72, 60, 90), NurseryWeeks: fig(7), HarvestDays: fig(50),
			SpacingM: fig(0.6), HeightM: fig(1.6), YieldKg: fig(4, 2, 6), DLIBest: fig(30), DLIMin: fig(14), SunMinH: fig(6),
			FrostSeedling: fig(-0.5), FrostKill: fig(-1), ChillC: fig(8), SetNightMin: fig(10, 7, 10), SetSoilMin: fig(14),
			FruitMaxDay: fig(34), FruitMaxNight: fig(24), FruitMinNight: fig(10), SoilMin: fig(10), SoilMax: fig(35)},
		{ID: "lettuce-leaf", Family: "Asteraceae", Class: "leaf", Ways: []crop.Way{crop.Sow, crop.SetOut}, Harvest: crop.CutAgain,
			BaseC: fig(4), OptC: fig(20), CeilC: fig(30), RefC: 16, DaysFromSow: fig(50, 40, 70), DaysFromSet: fig(35, 28, 45), NurseryWeeks: fig(4), HarvestDays: fig(28),
			Germ:    germ(5, 15, 98, 10, 7, 98, 15, 4, 99, 20, 3, 99, 25, 2, 99, 29, 3, 30),
			SoilMin: fig(2), SoilMax: fig(29.5), SpacingM: fig(0.22), HeightM: fig(0.25), YieldKg: fig(0.3), DLIBest: fig(17), DLIMin: fig(8), SunMinH: fig(3),
			FrostSeedling: fig(-2), FrostKill: fig(-5), SetNightMin: fig(-1), HeatC: fig(28), BoltDayH: fig(14)},
		{ID: "carrot", Family: "Apiaceae", Class: "root", Ways: []crop.Way{crop.Sow}, Harvest: crop.Once, Winter: true,
			BaseC: fig(3.3), OptC: fig(20), CeilC: fig(32), RefC: 16, DaysFromSow: fig(72, 60, 90), HoldDays: fig(30),
			Germ:    germ(5, 51, 48, 10, 17, 93, 15, 10, 95, 20, 7, 96, 25, 6, 96, 30, 6, 95, 35, 9, 74),
			SoilMin: fig(4), SoilMax: fig(36), SpacingM: fig(0.07), HeightM: fig(0.35), YieldKg: fig(0.08), DLIBest: fig(20), DLIMin: fig(8), SunMinH: fig(4),
			FrostSeedling: fig(-4), FrostKill: fig(-8), VernMaxC: fig(10), VernDays: fig(60), VernLeaves: fig(9)},
		{ID: "kale", Family: "Brassicaceae", Class: "leaf", Ways: []crop.Way{crop.Sow, crop.SetOut}, Harvest: crop.CutAgain, Winter: true,
			BaseC: fig(3), OptC: fig(20), CeilC: fig(32), RefC: 16, DaysFromSow: fig(60, 50, 75), DaysFromSet: fig(40, 35, 50), NurseryWeeks: fig(5), HarvestDays: fig(90),
			Germ:    germ(5, 17, 30, 10, 12, 80, 15, 8, 90, 20, 5, 95, 25, 4, 95, 30, 4, 90),
			SoilMin: fig(4), SoilMax: fig(37), SpacingM: fig(0.45), HeightM: fig(0.7), YieldKg: fig(1), DLIBest: fig(20), DLIMin: fig(8), SunMinH: fig(4),
			FrostSeedling: fig(-4), FrostKill: fig(-12), VernMaxC: fig(9), VernDays: fig(55), VernLeaves: fig(9)},
		{ID: "garlic", Family: "Amaryllidaceae", Class: "bulb", Ways: []crop.Way{crop.Plant}, Harvest: crop.Once, AutumnPlant: true,
			BaseC: fig(1), OptC: fig(22), CeilC: fig(33), RefC: 16, DaysFromSet: fig(240, 180, 270), HoldDays: fig(10),
			SoilMin: fig(0), SoilMax: fig(35), SpacingM: fig(0.13), HeightM: fig(0.5), YieldKg: fig(0.06), DLIBest: fig(25), DLIMin: fig(10), SunMinH: fig(6),
			FrostSeedling: fig(-10), FrostKill: fig(-18), VernMaxC: fig(10), VernDays: fig(40), FormDayH: fig(13)},
		{ID: "snap-bean-bush", Family: "Fabaceae", Class: "legume", Warm: true, Ways: []crop.Way{crop.Sow}, Harvest: crop.Fruiting,
			BaseC: fig(9), OptC: fig(27), CeilC: fig(35), RefC: 20, DaysFromSow: fig(55, 50, 65), HarvestDays: fig(18),
			Germ:    germ(15, 16, 97, 20, 11, 90, 25, 8, 97, 30, 6, 47),
			SoilMin: fig(11), SoilMax: fig(35), SpacingM: fig(0.2), HeightM: fig(0.45), YieldKg: fig(0.2), DLIBest: fig(25), DLIMin: fig(12), SunMinH: fig(6),
			FrostSeedling: fig(-1), FrostKill: fig(-1.5), ChillC: fig(8), FruitMaxDay: fig(33), FruitMaxNight: fig(25), FruitMinNight: fig(8)},
		{ID: "leek", Family: "Amaryllidaceae", Class: "leaf", Ways: []crop.Way{crop.SetOut}, Harvest: crop.Once, Winter: true,
			BaseC: fig(3), OptC: fig(21), CeilC: fig(32), RefC: 16, DaysFromSet: fig(110, 80, 130), NurseryWeeks: fig(10), HoldDays: fig(60),
			SoilMin: fig(2), SoilMax: fig(33), SpacingM: fig(0.18), HeightM: fig(0.6), YieldKg: fig(0.25), DLIBest: fig(20), DLIMin: fig(8), SunMinH: fig(5),
			FrostSeedling: fig(-5), FrostKill: fig(-11), SetNightMin: fig(-3), VernMaxC: fig(10), VernDays: fig(50), VernLeaves: fig(7)},
		{ID: "spinach", Family: "Amaranthaceae", Class: "leaf", Ways: []crop.Way{crop.Sow}, Harvest: crop.CutAgain, Winter: true,
			BaseC: fig(2), OptC: fig(18), CeilC: fig(28), RefC: 16, DaysFromSow: fig(45, 38, 55), HarvestDays: fig(28),
			Germ:    germ(5, 23, 96, 10, 12, 91, 15, 7, 82, 20, 6, 52, 25, 5, 28, 30, 6, 32),
			SoilMin: fig(1), SoilMax: fig(30), SpacingM: fig(0.12), HeightM: fig(0.25), YieldKg: fig(0.12), DLIBest: fig(17), DLIMin: fig(7), SunMinH: fig(3),
			FrostSeedling: fig(-5), FrostKill: fig(-10), HeatC: fig(26), BoltDayH: fig(13.5)},
		{ID: "pea-shelling", Family: "Fabaceae", Class: "legume", Ways: []crop.Way{crop.Sow}, Harvest: crop.Fruiting,
			BaseC: fig(4.4), OptC: fig(20), CeilC: fig(30), RefC: 16, DaysFromSow: fig(62, 55, 75), HarvestDays: fig(15),
			Germ:    germ(5, 36, 89, 10, 14, 94, 15, 9, 93, 20, 8, 93, 25, 6, 94, 30, 6, 86),
			SoilMin: fig(3), SoilMax: fig(32), SpacingM: fig(0.08), HeightM: fig(1), YieldKg: fig(0.05), DLIBest: fig(22), DLIMin: fig(12), SunMinH: fig(5),
			FrostSeedling: fig(-5), FrostKill: fig(-3), FruitMaxDay: fig(27), FruitMaxNight: fig(18)},
	}
}

func hand(id crop.ID) *crop.Crop {
	for _, c := range handCrops() {
		if c.ID == id {
			return c
		}
	}
	panic("no such hand-built crop")
}

type (
	timeMonth = time.Month
	cropID    = crop.ID
	day       = cal.Day
)
