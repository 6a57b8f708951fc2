package ledger

import (
	"bytes"
	"encoding/hex"
	"fmt"
	"strconv"
	"strings"
)

func eventSheetColumns() []column[entry] {
	field := func(name, means string) column[entry] {
		return column[entry]{name, means, func(e entry) string { return e.fields[name] }}
	}
	return []column[entry]{
		{"seq", "place in the order of writing, from 1", func(e entry) string { return strconv.FormatInt(e.Seq, 10) }},
		{"id", "the entry's own name, 26 characters", func(e entry) string { return e.ID }},
		{"parent", "id of the entry this one answers or corrects; empty = none", func(e entry) string { return e.Parent }},
		{"device", "the phone or computer it was made on", func(e entry) string { return e.Device }},
		{"happened", "day in the garden, as the gardener said: year-month-day", func(e entry) string { return e.Happened.String() }},
		{"written", "instant when it was kept, UTC", func(e entry) string { return instant(e.Written) }},
		{"kind", "what happened: garden, sown, set out, picked, pulled, lost, counted, looked, voided, dismissed, watered, measured, photo, restored, assumed, skyline, wish, plan kept", func(e entry) string { return string(e.Kind) }},
		{"layout", "number of the layout of the fields that follow", func(e entry) string { return strconv.Itoa(e.Version) }},
		{"taken_back", "yes = a later entry took this one back, so it counts no more", func(e entry) string { return yes(e.back) }},
		field("planting", "the planting it is about: an id of plantings.csv"),
		field("crop", "the crop, by its short name in the crop book"),
		field("variety", "the variety; empty = not known"),
		field("one_of", "it is one of these varieties, divided by |"),
		field("space", "the growing space, by its short name in the garden file"),
		field("count", "plants; empty on a pulling or loss = all of them; 0 on a sowing = not counted"),
		field("kg", "weight picked, kg; empty = not weighed"),
		field("measure", "handful, bowl or bucket, when it was not weighed"),
		field("looks", "how it looked"),
		field("hour", "hour of the day of a look, a watering or a reading, 0 to 23; empty = not said, or midnight"),
		field("litres", "water given, L; empty = until it ran through; of a wish: a day in a dry week"),
		field("what", "what was measured: low, high (air, C) or rain (mm)"),
		field("value", "the reading, in C or mm"),
		field("cause", "why it was pulled or lost"),
		field("event", "id of the entry that this one takes back"),
		field("task", "the advice that was not wanted"),
		field("lot", "the lot of seed"),
		field("note", "the gardener's note"),
		field("why", "why it was taken back or not wanted"),
		field("sha256", "SHA-256 of the garden file's text, which is in events.json, or of a photo, which is photos/<sha256>.jpg"),
		field("bytes", "size of a photo"),
		field("width", "of a photo, px"),
		field("height", "of a photo, px"),
		field("bearing_deg", "true bearing of a corrected skyline, degrees clockwise from north"),
		field("was_deg", "height of its edge as it was shown, degrees"),
		field("edge_deg", "height of its edge as it was seen, degrees"),
		field("how", "how it was seen: by hand, sun reached, sun left"),
		field("clock", "time of day at which the sun was seen"),
		field("way", "of a wish about a planned line: sow, set or plant"),
		field("since", "first day of a line or an absence wished about"),
		field("until", "last day of it"),
		field("plants", "plants wished for"),
		field("food", "food wished for"),
		field("meals", "meals of it a week, more than the garden file says; below 0 = fewer"),
		field("first", "first month of the wish, 1 to 12"),
		field("last", "last month of the wish"),
		field("minutes", "minutes a week wished for, beyond the garden file's"),
		field("level", "how much bad years are planned for: not at all, somewhat, much"),
		field("plan", "id of the kept plan to return to"),
		field("name", "name of a kept plan; its lines are in events.json"),
		field("on", "day of that plan"),
		field("worth", "its worth above leaving everything as it stands, meals"),
		field("epoch", "how many times the record was put back to a backup, on the entry that says so"),
		field("from", "name of that backup"),
		field("entries", "entries it held"),
		{"digest", "SHA-256 of the entry's content, hexadecimal; see below", func(e entry) string { return hex.EncodeToString(e.Digest) }},
		{"chain", "SHA-256 of the digest and the chain before it, hexadecimal; see below", func(e entry) string { return hex.EncodeToString(e.Chain) }},
	}
}

func plantingSheetColumns() []column[Planting] {
	return []column[Planting]{
		{"id", "id of the entry that started it, or its name in the garden file", func(p Planting) string { return p.ID }},
		{"crop", "the crop; empty = see the garden file", func(p Planting) string { return p.Crop }},
		{"variety", "the variety; empty = not known", func(p Planting) string { return p.Variety }},
		{"one_of", "it is one of these varieties, divided by |", func(p Planting) string { return strings.Join(p.OneOf, " | ") }},
		{"space", "the growing space it stands or stood in", func(p Planting) string { return p.Space }},
		{"sown", "day it was sown; empty = not sown here", func(p Planting) string { return dayCell(p.Sown) }},
		{"set_out", "day it was set out; empty = not set out", func(p Planting) string { return dayCell(p.SetOut) }},
		{"count", "plants that stand; empty = not known", func(p Planting) string { return number(p.Count, !p.Known && p.Ended == 0) }},
		{"began", "plants it began with; empty = not known", func(p Planting) string { return number(p.Began, p.Began == 0) }},
		{"removed", "plants pulled, lost or moved away since the last count", func(p Planting) string { return strconv.Itoa(p.Removed) }},
		{"ended", "day it ended; empty = it stands", func(p Planting) string { return dayCell(p.Ended) }},
		{"cause", "why it ended", func(p Planting) string { return p.Cause }},
		{"looks", "how it looked last", func(p Planting) string { return p.Looks }},
		{"looked_on", "day of that look", func(p Planting) string { return dayCell(p.LookedOn) }},
		{"picked_kg", "weight picked and weighed in all, kg", func(p Planting) string { return strconv.FormatFloat(p.PickedKg, 'f', -1, 64) }},
		{"picks", "how many times it was picked, weighed or not", func(p Planting) string { return strconv.Itoa(p.Picks) }},
		{"last_pick", "day of the latest picking", func(p Planting) string { return dayCell(p.LastPick) }},
		{"lot", "the lot of seed", func(p Planting) string { return p.Lot }},
		{"moved_from", "id of the planting it was a part of", func(p Planting) string { return p.From }},
		{"from_file", "yes = it stood in the garden file before the first entry", func(p Planting) string { return yes(p.FromFile) }},
	}
}

// readme describes the export for somebody who has nothing but the folder.
func readme(events []Event, s State, weather []Beside, more []Extra) []byte {
	var b bytes.Buffer
	last := firstChain()
	if n := len(events); n > 0 {
		last = events[n-1].Chain
	}
	fmt.Fprintf(&b, `A GARDEN'S RECORD

This folder holds everything that was kept about one garden: %d entries and
%d plantings. You need no program of ours, no account and no key to read it.
All files are UTF-8 text. Days are written year-month-day.

events.csv     every entry, one a line, in the order of writing
plantings.csv  what the entries amount to: one planting a line
events.json    every entry again, with all its words and nothing left out
garden.yaml    the garden file as last accepted (only if there is one)
photos/        the pictures and voice notes, each named by the SHA-256 of its bytes (only if
               there are any); a photo entry says what is in it
%s%s
A cell that begins with = + - @ or a tab has an apostrophe in front, so that a
spreadsheet does not take it for a formula. Take one apostrophe away to get
the text. Numbers have none.

An entry is never changed. One that was wrong is taken back by a later entry.

`, len(events), len(s.Plantings), weatherFileWords(weather), calendarWords(more))
	b.WriteString("COLUMNS OF events.csv\n\n")
	for _, c := range eventSheetColumns() {
		fmt.Fprintf(&b, "  %-11s %s\n", c.name, c.means)
	}
	b.WriteString("\nCOLUMNS OF plantings.csv\n\n")
	for _, c := range plantingSheetColumns() {
		fmt.Fprintf(&b, "  %-11s %s\n", c.name, c.means)
	}
	fmt.Fprintf(&b, `
events.json is a list with one object an entry. Its fields have the names
above; "body" holds the fields from "planting" to "sha256", and "version" is
the column "layout". A garden entry's body has the garden file in "text".

HOW TO CHECK THE RECORD

The digest is the SHA-256 of this text: the line "bedweek event 1", then id,
parent, device, happened, kind, version and body, each written as its length
in bytes, a colon, the bytes, and a line end. The body is the JSON exactly as
events.json has it.

The chain is the SHA-256 of: the line "bedweek chain 1"; the chain before it
(32 zero bytes before the first); seq as 8 bytes, highest first; written; the
digest. All but seq are again length, colon, bytes, line end. The digest and
the chain go in as 32 bytes, not as hexadecimal.

The last entry's chain is %s.
`, hex.EncodeToString(last))
	return b.Bytes()
}

// weatherFileWords lists the weather files with their digests.
func weatherFileWords(all []Beside) string {
	words := ""
	for _, b := range all {
		words += fmt.Sprintf("%s\n               weather that a garden file names; %d bytes, SHA-256\n               %s\n", b.Name, b.Bytes, b.SHA256)
	}
	return words
}

// calendarWords describes the extra files.
func calendarWords(more []Extra) string {
	words := ""
	for _, x := range more {
		if x.Name == "plan.ics" {
			words += "plan.ics       the plan as it stood that day, for any calendar program (iCalendar)\n"
		}
	}
	return words
}
