package verify

func sunPosition(c Case) (map[string]any, bool) { return nil, false }
