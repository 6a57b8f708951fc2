package verify

func weatherFiles(c Case) (map[string]any, bool) { return nil, false }
