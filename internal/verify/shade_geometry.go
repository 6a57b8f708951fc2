package verify

func shadeGeometry(c Case) (map[string]any, bool) { return nil, false }
