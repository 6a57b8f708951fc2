package verify

func dayLength(c Case) (map[string]any, bool) { return nil, false }
