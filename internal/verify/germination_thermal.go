package verify

func germinationThermal(c Case) (map[string]any, bool) { return nil, false }
