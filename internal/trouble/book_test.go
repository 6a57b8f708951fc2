package trouble

import (
	"regexp"
	"strings"
	"testing"
)

// losses are the ledger's causes of loss; see the form of a loss.
var losses = map[string]bool{"unknown": true, "not up": true, "damped off": true, "eaten": true, "dug up": true, "dried": true, "drowned": true,
	"scorched": true, "chilled": true, "crowded": true, "diseased": true, "bolted": true}

// TestKeyIsWhole wants every sign to have causes that can be told apart, every
// loss of the ledger to be reachable, and no spray, dose or promise anywhere.
func TestKeyIsWhole(t *testing.T) {
	b, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Signs) < 15 || len(b.Culprits) < 12 || len(b.Cautions) < 8 {
		t.Fatalf("%d signs, %d culprits, %d cautions: the book is not whole", len(b.Signs), len(b.Culprits), len(b.Cautions))
	}
	reached := map[string]bool{}
	never := regexp.MustCompile(`(?i)\b(insecticide|fungicide|pesticide|bait|neem|ml/l|g/l|safe|safely)\b`)
	for _, s := range b.Signs {
		if len(s.Causes) == 0 || !losses[s.Loss] {
			t.Errorf("%s: %d causes, loss %q", s.ID, len(s.Causes), s.Loss)
		}
		tells := map[string]bool{}
		for _, c := range s.Causes {
			if c.Tells == "" || c.First == "" || c.From == "" || tells[c.Tells] {
				t.Errorf("%s, %s: it cannot be told apart, or has no first step or source", s.ID, c.Words)
			}
			tells[c.Tells], reached[c.Loss] = true, true
			if !losses[c.Loss] {
				t.Errorf("%s, %s: %q is no cause of loss", s.ID, c.Words, c.Loss)
			}
			if all := c.Words + c.Tells + c.First; never.MatchString(all) {
				t.Errorf("%s: %q is not for this program to say", s.ID, all)
			}
			if strings.Contains(strings.ToLower(c.First), "spray") {
				t.Errorf("%s: a spray comes first: %q", s.ID, c.First)
			}
		}
	}
	for l := range losses {
		if !reached[l] {
			t.Errorf("no cause leads to a loss by %q", l)
		}
	}
	for _, c := range b.Culprits {
		if c.Hour != "day" && c.Hour != "night" && c.Hour != "both" || c.Barrier == "" || c.Look == "" || c.From == "" {
			t.Errorf("%s: hour %q, or no look, barrier or source", c.Name, c.Hour)
		}
		if all := c.Barrier + c.Look; never.MatchString(all) {
			t.Errorf("%s: %q is not for this program to say", c.Name, all)
		}
	}
	if n := len(b.By("night")); n == 0 || n == len(b.By("")) {
		t.Errorf("%d culprits of the night of %d: the hour parts nothing", n, len(b.By("")))
	}
	for _, topic := range []string{"law", "droppings", "nets", "dust", "electricity", "load", "ladder", "heat", "spray"} {
		if b.Caution(topic) == "" {
			t.Errorf("no caution about %s", topic)
		}
	}
}
