package verify

func frostProbability(c Case) (map[string]any, bool) { return nil, false }
