package verify

import (
	"math/rand/v2"

	"bedweek/internal/chance"
)

// seedsTrials answers with package chance. A case that names a data set which
// does not ship with the program is not covered.
func seedsTrials(c Case) (map[string]any, bool) {
	in := unpack(c)
	var got map[string]any
	switch {
	case in.has("dataset"):
		got = fieldTrial(in)
	case in.has("survive_pricking_out"):
		got = seedChain(in)
	case in.has("plants_wanted"):
		got = seedsToSow(in, in.num("germination"))
	case in.has("seeds_per_cell"):
		got = seedTray(in)
	case in.has("germinated"):
		got = intervals(in, "germinated", "sown")
	case in.has("defective"):
		got = intervals(in, "defective", "n")
	case in.has("plants_per_side"):
		got = detectable(in)
	case in.has("n_per_group"):
		got = map[string]any{"power": trialTest(in).Power(in.num("n_per_group"), in.num("difference_in_sd"))}
	case in.has("power"):
		got = plantsNeeded(in)
	case in.has("treatments"):
		got = blockLayout(in)
	case in.has("control"):
		got = trialResult(in)
	}
	return got, got != nil && !in.lack
}

func seedsToSow(in *given, p float64) map[string]any {
	wanted := int(in.num("plants_wanted"))
	n, ok := chance.SeedsNeeded(p, wanted, in.num("confidence"))
	if !ok {
		return map[string]any{"seeds": nil, "p_enough_at_n": nil, "p_enough_at_n_minus_1": nil, "naive_ceiling_wanted_over_p": nil}
	}
	naive, _ := chance.NaiveSeeds(p, wanted)
	return map[string]any{
		"seeds":                       n,
		"p_enough_at_n":               chance.AtLeast(n, wanted, p),
		"p_enough_at_n_minus_1":       chance.AtLeast(n-1, wanted, p),
		"naive_ceiling_wanted_over_p": naive,
	}
}

func seedChain(in *given) map[string]any {
	p := chance.Through(in.num("germination"), in.num("survive_pricking_out"), in.num("survive_hardening"))
	got := seedsToSow(in, p)
	got["p_through"] = p
	return got
}

func seedTray(in *given) map[string]any {
	t := chance.Tray(in.num("germination"), int(in.num("seeds_per_cell")), int(in.num("cells")))
	return map[string]any{
		"p_cell_filled":          t.Filled,
		"expected_filled":        t.Expected,
		"p_no_empty_cell":        t.NoneEmpty,
		"expected_to_thin":       t.ToThin,
		"filled_10th_percentile": t.LowestTenth,
	}
}

func intervals(in *given, successes, tries string) map[string]any {
	k, n, conf := int(in.num(successes)), int(in.num(tries)), in.num("confidence")
	cl, ch := chance.ClopperPearson(k, n, conf)
	wl, wh := chance.Wilson(k, n, conf)
	return map[string]any{
		"estimate":        chance.Estimate(k, n),
		"clopper_pearson": []float64{cl, ch},
		"wilson":          []float64{wl, wh},
	}
}

func trialTest(in *given) chance.Test {
	return chance.Test{Alpha: in.num("alpha"), Sides: int(in.num("sides"))}
}

func detectable(in *given) map[string]any {
	n, cv, power := int(in.num("plants_per_side")), in.num("coefficient_of_variation_pct"), in.num("power")
	d, ok := trialTest(in).Detectable(n, power)
	if !ok {
		return map[string]any{"detectable_difference_in_sd": nil, "detectable_difference_pct_of_mean": nil, "normal_approximation_pct": nil}
	}
	return map[string]any{
		"detectable_difference_in_sd":       d,
		"detectable_difference_pct_of_mean": chance.InShareOfMean(d, cv),
		"normal_approximation_pct":          chance.InShareOfMean(trialTest(in).NormalShortcut(n, power), cv),
	}
}

func plantsNeeded(in *given) map[string]any {
	d := in.numOr("difference_in_sd", 0)
	if in.has("difference_pct_of_mean") {
		d = chance.InDeviations(in.num("difference_pct_of_mean"), in.num("coefficient_of_variation_pct"))
	}
	exact, whole, ok := trialTest(in).Needed(d, in.num("power"))
	if !ok {
		return map[string]any{"n_per_group_exact": nil, "n_per_group": nil, "plants_per_side": nil}
	}
	return map[string]any{"n_per_group_exact": exact, "n_per_group": whole, "plants_per_side": whole}
}

// blockLayout draws a layout, checks it, and counts what it has; a layout that
// breaks the rules, or changes with the same seed, answers nothing.
func blockLayout(in *given) map[string]any {
	treatments, blocks := int(in.num("treatments")), int(in.num("blocks"))
	draw := func() [][]int { return chance.Layout(treatments, blocks, rand.New(rand.NewPCG(1, 1))) }
	b, ok := chance.CountBlocks(draw(), treatments)
	if !ok || !chance.SameLayout(draw(), draw()) {
		return map[string]any{}
	}
	return map[string]any{
		"plots":                    b.Plots,
		"each_treatment_per_block": b.PerBlock,
		"replicates":               b.Replicates,
		"df_treatment":             b.DFTreatment,
		"df_block":                 b.DFBlock,
		"df_error":                 b.DFError,
		"possible_layouts":         b.Layouts.String(),
	}
}

// fieldTrial analyses a data set that ships with the program. The published
// case prints its least significant difference rounded and allows it nothing,
// so that key is left unanswered and the case counts as not covered; package
// chance tests the figure to 0.005.
func fieldTrial(in *given) map[string]any {
	if in.text("dataset") != barleyName {
		return nil
	}
	yields, ok := barley(int(in.num("year")))
	if !ok {
		return nil
	}
	const alpha = 0.05 // named by the key lsd_5pct
	a, ok := chance.Analyse(yields, alpha)
	if !ok {
		return nil
	}
	return map[string]any{
		"treatment_F":                   a.TreatmentF,
		"lsd_5pct":                      a.LSD,
		"treatment_p":                   a.TreatmentP,
		"block_F":                       a.BlockF,
		"error_mean_square":             a.ErrorMS,
		"error_df":                      a.DFError,
		"cv_pct":                        a.CVPercent,
		"se_of_difference":              a.SEDifference,
		"treatment_F_if_blocks_ignored": a.IgnoredF,
		"treatment_p_if_blocks_ignored": a.IgnoredP,
	}
}

func trialResult(in *given) map[string]any {
	a, b := in.nums("control"), in.nums("treated")
	const confidence = 0.95 // named by the key ci95
	got := map[string]any{}
	if p, ok := chance.Pooled(a, b, confidence); ok {
		got["difference"], got["t_pooled"], got["p_pooled"] = p.Difference, p.T, p.P
		got["ci95_pooled"] = []float64{p.Low, p.High}
	}
	if w, ok := chance.Welch(a, b, confidence); ok {
		got["t_welch"], got["p_welch"] = w.T, w.P
	}
	if p, ok := chance.Paired(a, b, confidence); ok {
		got["t_paired"], got["p_paired"] = p.T, p.P
	}
	return got
}
