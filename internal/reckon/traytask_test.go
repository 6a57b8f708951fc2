package reckon

import (
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
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

// TestALostNameIsAskedAgain four weeks after nobody could tell, and not before.
func TestALostNameIsAskedAgain(t *testing.T) {
	r := demoPlan(t, demoCases()[0])
	asked := r.nameTasks()
	if len(asked) == 0 || !asked[0].Which || asked[0].Event != string(ledger.Named) {
		t.Fatalf("%+v: the demo has labels lost", asked)
	}
	was := r.in.State
	defer func() { r.in.State = was }()
	for _, tt := range []struct{ ago, want cal.Day }{{3, 0}, {27, 0}, {28, 1}, {60, 1}} {
		r.in.State = &ledger.State{Threads: []ledger.Thread{{ID: asked[0].Planting, Named: []ledger.Called{{On: r.in.Date - tt.ago}}}}}
		if n := len(r.nameTasks()) - len(asked) + 1; n != int(tt.want) {
			t.Errorf("%d days after nobody could tell it is asked %d times, want %d", tt.ago, n, tt.want)
		}
	}
}
