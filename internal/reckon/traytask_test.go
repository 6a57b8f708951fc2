package reckon

import (
	"strings"
	"testing"
)

// TestSettingOutKeepsItsTray: a task that sets out a tray names the tray, so
// that what is noted moves its plants and does not begin new ones; a start that
// begins with the note names nothing.
func TestSettingOutKeepsItsTray(t *testing.T) {
	seen := 0
	for _, c := range demoCases() {
		r := demoPlan(t, c)
		from := map[string]string{} // task to tray
		for _, pl := range r.Plan.Plantings {
			if o := r.Problem.Options[pl.Option]; o.Week == 0 {
				from[o.ID], _ = strings.CutPrefix(o.MaxTotal, "tray.")
				if !strings.HasPrefix(o.MaxTotal, "tray.") {
					from[o.ID] = ""
				}
			}
		}
		for _, task := range r.startTasks() {
			for id, tray := range from {
				if strings.HasSuffix(task.ID, "."+id) {
					if task.Planting != tray {
						t.Errorf("%s: %s goes on with %q, want the tray %q", c.name, task.ID, task.Planting, tray)
					}
					seen++
				}
			}
		}
	}
	if seen == 0 {
		t.Fatal("no start this week in any case: the test sees nothing")
	}
}
