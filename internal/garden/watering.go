package garden

import (
	"strconv"
	"strings"

	"bedweek/internal/unit"
)

// Watering is what a garden file may say of a space's water beyond how it is
// given. Zero values are "not said".
type Watering struct {
	EmitterLH    Flow
	EmitterEvery unit.Length // along the line
	LinesEvery   unit.Length // between lines
	Tank         unit.Volume // reservoir under the medium, up to its overflow
	TierShare    float64     // of what is poured in at the top of a tiered planter, kept by this tier
	Mulch        unit.Length // how thick it lies
}

// Flow is an emitter's, in litres an hour, with what was typed.
type Flow struct {
	LH    float64
	Typed string
}

// watering reads the keys of a space about water.
func (f fields) watering(s Space) Watering {
	w := Watering{
		EmitterLH: f.flow("emitter flow"), EmitterEvery: f.length("emitter spacing", bound{0.02, 5, false}),
		LinesEvery: f.length("line spacing", bound{0.02, 5, false}), Tank: f.volume("reservoir", bound{0, 2000, true}),
		TierShare: f.part("tier share"), Mulch: f.length("mulch", bound{0, 0.5, true}),
	}
	for _, name := range []string{"emitter flow", "emitter spacing", "line spacing"} {
		if f.has(name) && s.Water != "drip" {
			f.r.at(f.where(name), name+" in a space without a drip line", "Write water: drip, or leave the line out.")
		}
	}
	if f.has("emitter flow") && !f.has("emitter spacing") {
		f.r.at(f.where("emitter flow"), "emitters without their spacing", "Add emitter spacing: the way from one to the next along the line.")
	}
	if f.has("reservoir") && s.Water != "reservoir" {
		f.r.at(f.where("reservoir"), "a reservoir in a space not watered by one", "Write water: reservoir, or leave the line out.")
	}
	if f.has("tier share") && s.Kind != Tier {
		f.r.at(f.where("tier share"), "a tier share in a space that is no tier", "Leave the line out, or write kind: tier.")
	}
	return w
}

// mostFlow is above any garden emitter; micro sprinklers end near 100 L/h.
const mostFlow = 200

// flow reads litres or gallons an hour: "2 L/h", "0.5 gal/h", "1 gph".
func (f fields) flow(name string) Flow {
	text, tk, ok := f.text(name)
	if !ok {
		return Flow{}
	}
	amount, per := strings.TrimSpace(text), false
	for _, end := range []string{"/h", "/ h", " per hour", " an hour", "/hour"} {
		if cut, ok := strings.CutSuffix(amount, end); ok {
			amount, per = strings.TrimSpace(cut), true
			break
		}
	}
	if cut, ok := strings.CutSuffix(amount, "gph"); ok && !per {
		amount, per = strings.TrimSpace(cut)+" gal", true
	}
	v, err := unit.ParseVolume(amount)
	switch {
	case !per:
		f.r.at(tk, name+" "+clip(text)+" without its time", "Write litres or gallons an hour, such as 2 L/h or 0.5 gal/h.")
	case err != nil:
		f.r.typed(err, tk, name, text)
	case v.LowL <= 0 || v.HighL > mostFlow:
		f.r.at(tk, name+" "+clip(text), "One emitter gives more than 0 and at most 200 L/h. Time one into a cup.")
	default:
		return Flow{LH: v.L, Typed: text}
	}
	return Flow{}
}

// part reads a part of one that is not light: "40 %" or "0.4".
func (f fields) part(name string) float64 {
	text, tk, ok := f.text(name)
	if !ok {
		return 0
	}
	digits, percent := strings.CutSuffix(text, "%")
	x, err := strconv.ParseFloat(strings.TrimSpace(digits), 64)
	if percent {
		x /= 100
	}
	if err != nil || !(x >= 0 && x <= 1) || !percent && x == 1 {
		f.r.at(tk, name+" "+clip(text), "Write the share of the water poured in at the top that this tier keeps, from 0 % to 100 %.")
		return 0
	}
	return x
}
