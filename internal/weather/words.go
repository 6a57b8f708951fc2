package weather

import (
	"fmt"
	"strings"

	"bedweek/internal/cal"
)

// recordWords says where generated futures come from and what they cannot
// tell.
func recordWords(rec *Record, use []bool, c *climate, kept bool, from cal.Day, ask Ask) string {
	var b strings.Builder
	first, last := usedSpan(rec, use)
	fmt.Fprintf(&b, "Futures are drawn from the daily record %s, %s to %s. ", rec.Name, first.Long(), last.Long())
	if kept {
		b.WriteString("The days being planned were kept out of it. ")
	} else if rec.End() >= from && rec.Start < from+cal.Day(ask.Days) {
		b.WriteString("The record is too short to keep the planned days apart. They helped to make the futures. ")
	}
	fmt.Fprintf(&b, "%s of weather tell the usual well. They tell little of the coldest night in ten years, or of a year unlike them. ", yearsInWords(c.years))
	b.WriteString("So the spread was widened, and cold nights reach lower.")
	return b.String()
}

// usedSpan is from the first to the last day in use.
func usedSpan(rec *Record, use []bool) (first, last cal.Day) {
	seen := false
	for i, u := range use {
		if !u {
			continue
		}
		last = rec.Start + cal.Day(i)
		if !seen {
			first, seen = last, true
		}
	}
	return first, last
}

// yearsInWords rounds a length to halves of a year.
func yearsInWords(years float64) string {
	switch n := int(years*2 + 0.5); {
	case n <= 2:
		return "Twelve months"
	case n%2 == 1:
		return fmt.Sprintf("About %d and a half years", n/2)
	default:
		return fmt.Sprintf("About %d years", n/2)
	}
}

func normalsWords(norm *Normals) string {
	return fmt.Sprintf("Futures are drawn from the monthly means %s. ", norm.Name) +
		"Means do not say how far a day strays, so the spread is a rule of thumb. " +
		"First and last frosts may be two weeks out. A daily record does better."
}

// pastWords says what the shared past is.
func pastWords(past, known int) string {
	switch {
	case past == 0:
		return ""
	case known == past:
		return fmt.Sprintf(" The %d days before the plan are as recorded.", past)
	case known == 0:
		return fmt.Sprintf(" The %d days before the plan were not recorded; they are a mean year's.", past)
	default:
		return fmt.Sprintf(" Of the %d days before the plan, %d are as recorded; the others are a mean year's.", past, known)
	}
}
