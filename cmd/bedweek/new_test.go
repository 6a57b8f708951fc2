package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// answered runs a command with answers typed into it.
func answered(t *testing.T, answers string, args ...string) (int, string, string) {
	t.Helper()
	var o, e bytes.Buffer
	w := &world{out: &o, err: &e, in: strings.NewReader(answers), now: func() time.Time { return time.Date(2015, 4, 6, 8, 0, 0, 0, time.UTC) }}
	return run(context.Background(), w, args), o.String(), e.String()
}

// TestNewBeginsAGardenThatPlans answers the questions, with slips, and wants
// each slip named and a file that plans.
func TestNewBeginsAGardenThatPlans(t *testing.T) {
	path := filepath.Join(t.TempDir(), "mine.yaml")
	code, out, errs := answered(t, "Back step\nnowhere\n47.5 N, 122.2 W\nbucket\nbag\n18\n18 in across\n\n2 kalle, since 2014\n2 kale, since September 2014, well\n", "new", path)
	if code != exitDone {
		t.Fatalf("code %d: %s %s", code, out, errs)
	}
	for _, want := range []string{"Not understood", "Write one of them", "not enough", "Did you mean kale"} {
		if !strings.Contains(out, want) {
			t.Errorf("no words %q in\n%s", want, out)
		}
	}
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"garden: Back step", "across: 18 in", "depth: 20-40 cm", "months from: Seattle, from memory", "{crop: kale, since: September 2014, count: 2, looks: well}"} {
		if !strings.Contains(string(text), want) {
			t.Errorf("%q is not in\n%s", want, text)
		}
	}
	if code, out, errs := call(t, "plan", path, "-weeks", "20", "-work", "50000"); code != exitDone || !strings.Contains(out, "ale") {
		t.Errorf("the new garden does not plan: %d %s %s", code, out, errs)
	}
	if code, _, _ := answered(t, "", "new", path); code != exitNo {
		t.Error("an existing file was taken for a new one")
	}
	short := filepath.Join(t.TempDir(), "short.yaml")
	if code, _, errs := answered(t, "X\nSeattle\n", "new", short); code != exitNo || !strings.Contains(errs, "Nothing was written") {
		t.Errorf("answers that end early: %d %s", code, errs)
	}
	if _, err := os.Stat(short); err == nil {
		t.Error("half an answer was written")
	}
}
