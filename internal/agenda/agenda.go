// Package agenda writes the plan as a calendar that any calendar program reads.
//
// What for: the season's dates beside the household's other dates, and in the
// export, without this program.
//
// Method: one all-day entry for each task of now, each likely day into the
// ground, first pick and ground free. The text of each says how sure it is.
// Source: RFC 5545 (iCalendar): lines end in CR LF and are folded at 75
// octets, DTEND is the day after the last.
//
// Conventions: days are civil days, without a zone. The UID of an entry is made
// from the task's or line's own id, so that reading a new plan moves an entry
// and does not double it.
//
// Range: what one reckon.Day holds.
//
// Left out: reminders, repeats, and reading calendars.
package agenda

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// Write returns the plan of a day as iCalendar text. stamp is the instant it
// was written. A nil day gives an empty calendar.
func Write(day *reckon.Day, stamp time.Time) []byte {
	c := ics.NewCalendarFor("bedweek")
	c.SetMethod(ics.MethodPublish)
	if day != nil {
		c.SetXWRCalName(day.Garden)
		w := writer{c, day.Garden, stamp.UTC()}
		for _, t := range day.Today {
			w.task(day, t)
		}
		for _, sp := range day.Spaces {
			for _, l := range sp.Lines {
				w.line(sp, l)
			}
		}
	}
	return []byte(c.Serialize(ics.WithNewLineWindows))
}

type writer struct {
	c      *ics.Calendar
	garden string
	stamp  time.Time
}

func (w writer) task(day *reckon.Day, t reckon.Task) {
	last := max(t.Until, day.Date)
	where := t.SpaceName
	if where == "" {
		where = "Shelf"
	}
	w.add("task", t.ID, day.Date, last, where+": "+t.Verb+" "+t.Object, join(t.Answer.Verdict, t.Answer.Sure, t.Answer.Look))
}

func (w writer) line(sp reckon.SpaceDay, l reckon.Line) {
	name := l.Crop
	if l.Variety != "" {
		name += " " + l.Variety
	}
	sure := ""
	if l.OfTwenty >= 0 && !l.Standing {
		sure = fmt.Sprintf("Works in %d of 20 futures.", l.OfTwenty)
	}
	if !l.Standing {
		w.window("in", l.ID, l.In, sp.Name+": "+name+" into the ground", sure)
	}
	w.window("pick", l.ID, l.First, sp.Name+": first "+name+" to pick", sure)
	w.window("out", l.ID, l.Out, sp.Name+": "+name+" out, ground free", sure)
}

// window adds the likely day, and says how far it may move.
func (w writer) window(kind, id string, x cal.Window, words, sure string) {
	if x.Likely == 0 {
		return
	}
	w.add(kind, id, x.Likely, x.Likely, words, join(fmt.Sprintf("Likely %s; between %s and %s.", x.Likely.Long(), x.Early.Long(), x.Late.Long()), sure))
}

func (w writer) add(kind, id string, from, to cal.Day, words, more string) {
	sum := sha256.Sum256([]byte(w.garden + "\n" + kind + "\n" + id))
	e := w.c.AddEvent(hex.EncodeToString(sum[:12]) + "@bedweek")
	e.SetDtStampTime(w.stamp)
	e.SetAllDayStartAt(from.Time())
	e.SetAllDayEndAt((to + 1).Time())
	e.SetSummary(plain(words))
	if more != "" {
		e.SetDescription(plain(more))
	}
	e.SetTimeTransparency(ics.TransparencyTransparent)
}

func join(parts ...string) string {
	var out []string
	for _, p := range parts {
		if p = strings.TrimSpace(p); p != "" {
			out = append(out, p)
		}
	}
	return strings.Join(out, " ")
}

// plain drops controls, which no calendar text may hold. [RFC 5545, 3.3.11]
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if r < 0x20 && r != '\n' || r == 0x7f {
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, "?"))
}
