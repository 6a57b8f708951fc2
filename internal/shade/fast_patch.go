package shade

// Lights works out what [Scene.Patch] does, for many surfaces at once and for
// every cell: sun hours of the 21st of each month, the light of its middle
// day. mean is the mean global radiation by month, MJ/m²/day. skip, when not
// nil, leaves cells of a surface out; a surface with none left is dark. The
// result does not depend on workers.
func Lights(surfaces []Surface, bodies []Body, site Place, mean [12]float64, skip func(s, i, j int) bool, workers int) []Light {
	mj := make([]float64, 24)
	for m := range mj {
		mj[m] = max(0, mean[m%12])
	}
	days := append(monthDays(sunHoursDay), monthDays(lightDay)...)
	f := NewField(courseOf(site, days, Looks{288, 600}, mj, 12, 24), surfaces, bodies, false, workers)
	out := make([]Light, len(surfaces))
	for s := range surfaces {
		left := func(i, j int) bool { return skip != nil && skip(s, i, j) }
		for m := range 12 {
			hours := f.Week(m).Surface(s, nil, left)
			light := f.Week(12+m).Surface(s, nil, left)
			_, open := f.course.OpenMol(12 + m)
			out[s].SunH[m] = hours.Hours.Mean
			out[s].SkyView += light.SkyView.Mean / 12
			out[s].DLI[m], out[s].DLIClear[m] = light.MolMean.Mean, light.MolClear.Mean
			if out[s].Share[m] = light.SkyView.Mean; open > 0 {
				out[s].Share[m] = light.MolMean.Mean / open
			}
			if _, open := f.course.OpenMol(24 + m); open > 0 {
				out[s].HotShade[m] = max(0, 1-f.Week(24+m).Surface(s, nil, left).MolMean.Mean/open)
			}
		}
	}
	return out
}
