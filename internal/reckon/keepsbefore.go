package reckon

// keepsBefore are earlier answers about pull or keep that still have a
// planting to speak of. The full plan asks anew.
func (r *Result) keepsBefore(before []Keep) []Keep {
	stands := map[string]bool{}
	for _, s := range r.model.stays {
		stands[s.id] = true
	}
	var out []Keep
	for _, k := range before {
		if stands[k.Planting] {
			out = append(out, k)
		}
	}
	return out
}
