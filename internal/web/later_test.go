package web

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// TestWhatCanWaitIsTold: the counts of starts that can wait stand where the plan
// is read, the list has the first to decide at its head and none to plan on, and
// of what is due now only what few futures reward is told.
func TestWhatCanWaitIsTold(t *testing.T) {
	day := richDay()
	site, err := New((&fakeGarden{day: day}).withWishes("Some words."))
	if err != nil {
		t.Fatal(err)
	}
	page := func(at string) string { return ask(site, "GET", at, nil).Body.String() }
	plan, lines := page("/plan"), page("/lines")
	list := plan[strings.Index(plan, `id="later"`):]
	list = list[:strings.Index(list, "</section>")]
	if !strings.Contains(list, day.Later.Words) {
		t.Errorf("the plan does not say %q", day.Later.Words)
	}
	far, told := 0, 0
	for _, sp := range day.Spaces {
		for _, l := range sp.Lines {
			x := l.Later
			if x == nil {
				continue
			}
			wanted := fmt.Sprintf("still wanted in %d", x.Still)
			in := strings.Contains(list, `data-id="`+l.ID+`"`)
			row := regexp.MustCompile(`(?s)data-id="` + regexp.QuoteMeta(l.ID) + `".*?</tr>`).FindString(lines)
			if x.Near {
				if in || strings.Contains(row, "still wanted") {
					t.Errorf("%s is due now, and told as if it could wait: %s", l.ID, row)
				}
				continue
			}
			far++
			if in != (x.Still < 16) {
				t.Errorf("%s, still wanted in %d: in the list %v", l.ID, x.Still, in)
			}
			if in {
				told++
				if cells := fmt.Sprintf(">%s</th>", x.By); !strings.Contains(list, cells) || !strings.Contains(list, fmt.Sprintf(">%d of 20</td>", x.Still)) || !strings.Contains(list, x.Others) {
					t.Errorf("%s: the list lacks %q, %d of 20, or %q", l.ID, x.By, x.Still, x.Others)
				}
			}
			if !strings.Contains(row, "; "+wanted+"<") || !strings.Contains(lines, "; "+wanted+".</li>") {
				t.Errorf("%s: neither table nor sentence says %q: %s", l.ID, wanted, row)
			}
		}
	}
	if far < 10 || told < 5 || told == far {
		t.Errorf("too easy: %d starts can wait, %d are listed", far, told)
	}
	last := cal.Day(0)
	for _, m := range regexp.MustCompile(`data-id="([^"]*)"`).FindAllStringSubmatch(list, -1) {
		l, _ := plannedLine(day, m[1])
		if l.Later.Decide < last {
			t.Errorf("%s, to decide by %s, stands behind one to decide by %s", l.ID, l.Later.Decide, last)
		}
		last = l.Later.Decide
	}
	if l, _ := plannedLine(day, "gate-bed-next"); !strings.Contains(page("/why/gate-bed-next"), l.Later.Words) {
		t.Errorf("the reasons do not say %q", l.Later.Words)
	}
	today := page("/")
	if n := strings.Count(today, day.Today[1].Reward); n != 1 {
		t.Errorf("today says %d times that few futures reward it, want once", n)
	}
	for _, at := range []string{"/plan", "/lines", "/why/gate-bed-next", "/"} {
		bare := *day
		bare.Later, bare.Today = nil, nil
		bare.Spaces = append([]reckon.SpaceDay(nil), day.Spaces...)
		for i := range bare.Spaces {
			ls := append([]reckon.Line(nil), bare.Spaces[i].Lines...)
			for k := range ls {
				ls[k].Later = nil
			}
			bare.Spaces[i].Lines = ls
		}
		other, err := New((&fakeGarden{day: &bare}).withWishes("Some words."))
		if err != nil {
			t.Fatal(err)
		}
		if body := ask(other, "GET", at, nil).Body.String(); strings.Contains(body, "still wanted in") || strings.Contains(body, "When more is known") || strings.Contains(body, "What can wait") {
			t.Errorf("%s tells of what is not worked out", at)
		}
	}
}
