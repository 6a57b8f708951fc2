package web

import (
	"strings"
	"testing"

	"bedweek/internal/garden"
)

// TestPlanSaysWaterAndBadYears: the page tells what dry weeks ask for against
// the wish, week by week, and what the plan is worth in bad years, where either
// was asked for; else it speaks of neither.
func TestPlanSaysWaterAndBadYears(t *testing.T) {
	day := richDay()
	day.Plan.BadYears, day.Plan.Worst = garden.Somewhat, 311
	said := []string{"Water in a dry week", "up to 45 L a day", ">45.0 L<", ">5.0 L<", "In the worst five of twenty 311 on average"}
	page := ask(handler(t, &fakeGarden{day: day}), "GET", "/plan", nil).Body.String()
	for _, want := range said {
		if !strings.Contains(page, want) {
			t.Errorf("the page does not say %q", want)
		}
	}
	if strings.Contains(page, ">0.0 L<") {
		t.Error("a week that asks for nothing is listed")
	}
	day.Water, day.Plan.BadYears = nil, ""
	page = ask(handler(t, &fakeGarden{day: day}), "GET", "/plan", nil).Body.String()
	for _, unwanted := range said {
		if strings.Contains(page, unwanted) {
			t.Errorf("not asked for, and the page says %q", unwanted)
		}
	}
}
