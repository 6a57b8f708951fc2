package web

import (
	"encoding/json"
	"net/url"
	"strings"
	"testing"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// TestSowingSaysItsPacket: a sowing answered on Today takes the name of its
// packet: the only one by itself, "not said" when that is said, and one that
// is not of this crop never.
func TestSowingSaysItsPacket(t *testing.T) {
	n := namedWith(t, "Black")
	sow := reckon.Task{ID: "gate-bed.sow.kale", Space: "gate-bed", SpaceName: "Gate bed", Verb: "sow", Object: "kale", Event: string(ledger.Sown), Crop: "kale", Count: 4, Answer: reckon.Answer{Verdict: "Sow kale."}}
	n.day.Today = append([]reckon.Task{sow}, n.day.Today...)
	nth := func(page string) url.Values {
		root := open(t, n.h, page)
		for i := 0; ; i++ {
			v := formOf(t, root, "/task", i)
			if v == nil || v.Get("task") == sow.ID {
				return v
			}
		}
	}
	for _, tt := range []struct{ lot, wantLot, variety string }{{"asked", "kale-a", "Black one"}, {"", "", ""}, {"leek-a", "", ""}, {"nobody", "", ""}} {
		v := nth("/")
		if tt.lot == "asked" {
			if v.Get("lot") != "kale-a" {
				t.Fatalf("the only packet of kale is not chosen: %v", v)
			}
		} else {
			v.Set("lot", tt.lot)
		}
		v.Set("answer", "did")
		if w := ask(n.h, "POST", "/task", v); w.Code != 303 {
			t.Fatalf("%q: %d", tt.lot, w.Code)
		}
		var b ledger.Started
		if err := json.Unmarshal(n.last().Body, &b); err != nil {
			t.Fatal(err)
		}
		if b.Lot != tt.wantLot || b.Variety != tt.variety || b.Crop != "kale" {
			t.Errorf("%q: %+v, want lot %q and variety %q", tt.lot, b, tt.wantLot, tt.variety)
		}
	}
	if w := open(t, n.h, "/").words(); strings.Count(w, "From which packet?") != 1 {
		t.Errorf("the packet is asked %d times, want once: only the sowing of kale has one", strings.Count(w, "From which packet?"))
	}
}

// TestCannotTellANameIsKept as what it is, and not as a look that all is well.
func TestCannotTellANameIsKept(t *testing.T) {
	n := namedWith(t, "Black")
	n.day.Today = []reckon.Task{{ID: "store.name.tray-1", Space: "store", Verb: "name", Object: "the kale", Planting: "tray-1", Crop: "kale", Event: string(ledger.Named), Which: true, Answer: reckon.Answer{Verdict: "Which kale is this?"}}}
	root := open(t, n.h, "/")
	if !strings.Contains(root.words(), "I cannot tell") || len(root.find("a")) == 0 {
		t.Error("Today does not let one say so")
	}
	v := formOf(t, root, "/task", 0)
	v.Set("answer", "did")
	if w := ask(n.h, "POST", "/task", v); w.Code != 303 {
		t.Fatal(w.Code)
	}
	var b ledger.Naming
	if e := n.last(); e.Kind != ledger.Named || json.Unmarshal(e.Body, &b) != nil || b.Planting != "tray-1" || b.Is != "" || len(b.Not) > 0 {
		t.Errorf("%s %s", e.Kind, e.Body)
	}
	led := false
	for _, a := range root.find("a") {
		led = led || a.attr["href"] == "/which/tray-1"
	}
	if !led {
		t.Error("Today does not lead to the line-up")
	}
}
