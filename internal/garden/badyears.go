package garden

// How much of the plan is made for bad years: the worst five of twenty.
const (
	NotAtAll = "not at all"
	Somewhat = "somewhat"
	Much     = "much"
)

// BadYearSteps are the words of a garden file and of a wish for it.
func BadYearSteps() []string { return []string{NotAtAll, Somewhat, Much} }
