package crop

// KeyWords names a figure as a gardener would, "" when there is no such key.
// It stands after "the" and before a number.
func KeyWords(key string) string {
	for _, w := range keyWords() {
		if w[0] == key {
			return w[1]
		}
	}
	return ""
}

func keyWords() [][2]string {
	return [][2]string{
		{"soil-min", "least soil warmth to come up"},
		{"soil-opt", "best soil warmth to come up"},
		{"soil-max", "greatest soil warmth to come up"},
		{"emerge-days", "days to come up"},
		{"sow-depth-mm", "depth of sowing"},
		{"base", "warmth below which it stands still"},
		{"opt", "warmth at which it is quickest"},
		{"ceil", "warmth above which it stands still"},
		{"days-from-sow", "days from sowing to the first pick"},
		{"days-from-set", "days from setting out or planting to the first pick"},
		{"nursery-weeks", "weeks on the shelf before setting out"},
		{"hold-days", "days a ready plant stands fit"},
		{"harvest-days", "days of picking"},
		{"first-years", "years from planting to the first crop"},
		{"bear-days", "days from midwinter to the first pick"},
		{"rest-h", "winter hours of cold it needs to bear"},
		{"spent-days", "days of bloom when spent flowers stay on"},
		{"spacing-m", "distance between plants"},
		{"spread-m", "width"},
		{"height-m", "height"},
		{"host-m", "height from which it carries a climber"},
		{"min-depth-m", "least depth of medium"},
		{"volume-l", "medium a plant needs"},
		{"yield-kg", "yield of a plant"},
		{"shelf-days", "days it keeps after picking"},
		{"sun-min-h", "least hours of sun"},
		{"sun-best-h", "hours of sun for a full yield"},
		{"dli-min", "least daily light"},
		{"dli-best", "daily light for a full yield"},
		{"frost-seedling", "night that kills young soft plants"},
		{"frost-kill", "night that kills full-grown hardened plants"},
		{"chill", "night that checks its growth"},
		{"set-night-min", "least night for setting out"},
		{"set-soil-min", "least soil warmth for setting out"},
		{"fruit-max-day", "warmest day at which fruit sets"},
		{"fruit-max-night", "warmest night at which fruit sets"},
		{"fruit-min-night", "coldest night at which fruit sets"},
		{"heat", "day that spoils it or makes it bolt"},
		{"vern-max", "cold that counts towards bolting"},
		{"vern-days", "days of cold until it bolts"},
		{"vern-leaves", "leaves from which cold counts"},
		{"bolt-day-h", "day length above which it bolts"},
		{"cold-days", "days of cold without which there is no crop"},
		{"cold-max", "cold that counts towards a crop"},
		{"form-day-h", "day length at which it forms a bulb"},
		{"short-day-h", "day length above which it makes no flower or tuber"},
		{"interval-years", "years before its family returns to the medium"},
	}
}
