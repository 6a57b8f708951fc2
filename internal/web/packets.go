package web

import (
	"context"
	"slices"

	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// packetChoices are the packets that a sowing may come from, to be asked where
// it is answered: one packet is taken, of several none until somebody says.
// nil = nothing to ask.
func packetChoices(d *names.Desk, t reckon.Task) []Option {
	if d == nil || t.Event != string(ledger.Sown) {
		return nil
	}
	var out []Option
	for _, l := range d.Lots() {
		if l.CropID == t.Crop && l.Gone == 0 && l.Left != 0 {
			words := l.Name() + ", " + string(l.Tag)
			out = append(out, Option{Value: l.ID, Words: words})
		}
	}
	if len(out) == 0 {
		return nil
	}
	chosen := ""
	if len(out) == 1 {
		chosen = out[0].Value
	}
	return choose(append(out, Option{Value: "", Words: "Not said"}), chosen)
}

// namesIf is everything about names, nil when it cannot be had now: then
// nothing is asked.
func (s *site) namesIf(ctx context.Context) *names.Desk {
	if s.o.Names == nil {
		return nil
	}
	d, err := s.o.Names(ctx)
	if err != nil {
		return nil
	}
	return d
}

// fromPacket puts a packet's name on a sowing. A packet that is not there any
// more leaves the sowing without one.
func (s *site) fromPacket(ctx context.Context, b ledger.Started, lot string) ledger.Started {
	if lot == "" {
		return b
	}
	d := s.namesIf(ctx)
	if d == nil {
		return b
	}
	if l, ok := d.Lot(lot); ok && l.CropID == b.Crop {
		b.Lot, b.Variety, b.OneOf = l.ID, l.Variety, slices.Clone(l.OneOf)
	}
	return b
}
