// Package verify recomputes published cases with the very functions the plan
// uses, so that anyone can see the numbers agree on their own machine.
package verify

// Case is one published or independently computed case.
type Case struct {
	ID        string             `json:"id"`
	Inputs    map[string]any     `json:"inputs"`
	Expect    map[string]any     `json:"expect"`
	Tolerance map[string]float64 `json:"tolerance"`
	Source    string             `json:"source"`
	Basis     string             `json:"basis"`
	Note      string             `json:"note"`
}

// An adaptor recomputes one case: it unpacks the inputs, calls an engine and
// names the results as the case expects them. It holds no formula and no
// number of its own. A key left out of got is a key not covered; a nil value
// says "no such value". covered is false when the case's kind is not computed
// yet at all.
type adaptor func(c Case) (got map[string]any, covered bool)

// adaptors is fixed at compile time: topic name to adaptor.
func adaptors() map[string]adaptor {
	return map[string]adaptor{
		"sun_position":        sunPosition,
		"day_length":          dayLength,
		"shade_geometry":      shadeGeometry,
		"germination_thermal": germinationThermal,
		"frost_probability":   frostProbability,
		"weather_files":       weatherFiles,
		"seeds_trials":        seedsTrials,
		"water":               waterCases,
		"radiation_et":        radiationET,
		"heat_chill":          heatChill,
		"compost":             compost,
	}
}
