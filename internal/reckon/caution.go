package reckon

// poisonCaution is the line at a picking of a crop with a part that is listed
// as poisonous; "" when none is.
func poisonCaution(part string) string {
	if part == "" {
		return ""
	}
	return "Listed as poisonous: " + part + ". A poison line answers questions."
}

// CareOnce returns the cautions of one sheet, each in full where it comes
// first. Where the same words come again it says only where they stand: a line
// met at every row is read at none. places[i] names the place of cautions[i],
// as "stop 3"; an empty caution stays empty.
func CareOnce(cautions, places []string) []string {
	out := make([]string, len(cautions))
	first := map[string]string{}
	for i, c := range cautions {
		at, again := first[c]
		switch {
		case c == "":
		case again:
			out[i] = "As at " + at + "."
		default:
			out[i], first[c] = c, places[i]
		}
	}
	return out
}
