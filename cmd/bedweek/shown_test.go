package main

import (
	"testing"
	"time"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TestNotesDoNotWaitForAPage: while a page is told what was noted, more notes
// are kept. The page tells those before it was asked for, the next one all.
func TestNotesDoNotWaitForAPage(t *testing.T) {
	d, _ := testDesk(t)
	space := string(d.in.Garden.Spaces[0].ID)
	write := func() string {
		id, err := d.record(t.Context(), ledger.Looked, d.today(), "", ledger.Look{Space: space, Looks: "well"})
		if err != nil {
			t.Error(err)
		}
		return id
	}
	read := func() *reckon.Day {
		day, err := d.Day(t.Context())
		if err != nil {
			t.Error(err)
		}
		return day
	}
	first := write()
	d.told.mu.Lock() // whoever tells stands still
	page := make(chan *reckon.Day, 1)
	go func() { page <- read() }()
	for d.shown.telling.TryLock() {
		d.shown.telling.Unlock()
		time.Sleep(time.Millisecond)
	}
	kept := make(chan string, 1)
	go func() { kept <- write() }()
	var second string
	select {
	case second = <-kept:
	case <-time.After(20 * time.Second):
		t.Error("a note waits for a page that is being told")
	}
	d.told.mu.Unlock()
	if second == "" {
		second = <-kept
	}
	if day := <-page; !tells(day, first) {
		t.Error("the page does not tell the note before it")
	}
	if day := read(); !tells(day, first) || !tells(day, second) {
		t.Error("the next page does not tell both notes")
	}
}

// tells reports whether an entry stands in the past of a space.
func tells(day *reckon.Day, entry string) bool {
	for _, sp := range day.Spaces {
		for _, n := range sp.History {
			if n.ID == entry {
				return true
			}
		}
	}
	return false
}
