// Package cal holds civil days.
//
// A Day is a count of days in the proleptic Gregorian calendar, never a
// midnight in some zone. Weeks begin on Monday. Years 1 to 9999 are accepted.
package cal

import (
	"encoding/json"
	"fmt"
	"time"
)

// Day is a civil day, counted from 1970-01-01, which is day 0.
type Day int32

// Of returns the day of a year, month and day of the month. Values out of
// range carry over, as 30 February becomes 1 or 2 March.
func Of(year int, month time.Month, day int) Day {
	return FromTime(time.Date(year, month, day, 0, 0, 0, 0, time.UTC))
}

// FromTime returns the civil day shown by t's own clock.
func FromTime(t time.Time) Day {
	u := time.Date(t.Year(), t.Month(), t.Day(), 0, 0, 0, 0, time.UTC)
	s := u.Unix()
	if s < 0 {
		return Day((s - 86399) / 86400)
	}
	return Day(s / 86400)
}

// Parse reads a day written 2006-01-02.
func Parse(s string) (Day, error) {
	t, err := time.Parse("2006-01-02", s)
	if err != nil || t.Year() < 1 {
		return 0, fmt.Errorf("day %q: want year-month-day, such as 2015-04-12", s)
	}
	return FromTime(t), nil
}

// Time returns noon UTC of d, for formatting and week numbers.
func (d Day) Time() time.Time {
	return time.Unix(int64(d)*86400+43200, 0).UTC()
}

// Date returns year, month and day of the month.
func (d Day) Date() (year int, month time.Month, day int) { return d.Time().Date() }

// Year returns the calendar year.
func (d Day) Year() int { return d.Time().Year() }

// Month returns the calendar month.
func (d Day) Month() time.Month { return d.Time().Month() }

// YearDay returns the day of the year, 1 on 1 January.
func (d Day) YearDay() int { return d.Time().YearDay() }

// Weekday returns the day of the week.
func (d Day) Weekday() time.Weekday { return d.Time().Weekday() }

// Monday returns the Monday of d's week: d itself on a Monday.
func (d Day) Monday() Day {
	back := (int(d.Weekday()) + 6) % 7
	return d - Day(back)
}

// String writes d as 2006-01-02.
func (d Day) String() string { return d.Time().Format("2006-01-02") }

// Long writes d as "12 April 2015".
func (d Day) Long() string { return d.Time().Format("2 January 2006") }

// Short writes d as "12 April".
func (d Day) Short() string { return d.Time().Format("2 January") }

// MarshalText writes d as 2006-01-02.
func (d Day) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads a day written 2006-01-02.
func (d *Day) UnmarshalText(b []byte) error {
	v, err := Parse(string(b))
	if err != nil {
		return err
	}
	*d = v
	return nil
}

// Window is a time that is not sure: early and late are the ends of the
// middle four in five of what may come, likely its middle. All zero: never.
type Window struct {
	Early  Day `json:"early"`
	Likely Day `json:"likely"`
	Late   Day `json:"late"`
}

// MarshalJSON writes a window that holds no day as null.
func (w Window) MarshalJSON() ([]byte, error) {
	if w.None() {
		return []byte("null"), nil
	}
	type plain Window
	return json.Marshal(plain(w))
}

// None reports whether w holds no day.
func (w Window) None() bool { return w == Window{} }

// String writes w as "about 3 June (20 May to 15 June)".
func (w Window) String() string {
	if w.None() {
		return "not at all"
	}
	if w.Early == w.Late {
		return w.Likely.Short()
	}
	return fmt.Sprintf("about %s (%s to %s)", w.Likely.Short(), w.Early.Short(), w.Late.Short())
}
