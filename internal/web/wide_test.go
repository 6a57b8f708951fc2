package web

import (
	"context"
	"encoding/json"
	"os"
	"testing"

	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// The wide browser set (browser/wide.test.mjs) looks at every page in every
// view. An address that answers a reader must be in its list, or be said there
// to be no page; and what the list names must be there.
func TestEveryPageIsInTheWideSet(t *testing.T) {
	text, err := os.ReadFile("../../browser/wide.json")
	if err != nil {
		t.Fatal(err)
	}
	var list map[string]any
	if err := json.Unmarshal(text, &list); err != nil {
		t.Fatal(err)
	}
	besides := map[string]bool{"/phones": true, "/trust": true, "/nowhere": true} // of the gate; and none at all
	o := (&fakeGarden{day: emptyDay()}).options()
	o.Light = func(context.Context) (*reckon.LightDesk, error) { return nil, nil }
	o.Names = func(context.Context) (*names.Desk, error) { return nil, nil }
	o.Crops = func(context.Context) (*reckon.CropDesk, error) { return nil, nil }
	o.Wishes, o.Entry, o.Keeping = &Wishes{}, &Entry{}, &Keeping{}
	all, err := Addresses(o)
	if err != nil {
		t.Fatal(err)
	}
	reads := map[string]bool{}
	for _, a := range all {
		if !a.Reads {
			continue
		}
		reads[a.Path] = true
		switch is := list[a.Path].(type) {
		case []any:
			if len(is) == 0 {
				t.Errorf("%s: listed with no address to open", a.Path)
			}
		case string: // why it is no page
		default:
			t.Errorf("%s: not in browser/wide.json, so the wide browser set never looks at it", a.Path)
		}
	}
	if len(reads) < 60 {
		t.Errorf("%d addresses read: the routes are not all here", len(reads))
	}
	for path := range list {
		if !reads[path] && !besides[path] {
			t.Errorf("%s: in browser/wide.json, but nothing answers it", path)
		}
	}
}
