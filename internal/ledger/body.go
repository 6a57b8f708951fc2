package ledger

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"sort"
	"strings"
	"unicode/utf8"

	"bedweek/internal/cal"
)

// bodyLimit and gardenLimit are the most bytes a body may have. A garden file
// of 20 spaces with remarks is about 10 kB; a note is a few lines.
const (
	bodyLimit   = 16 << 10
	gardenLimit = 1 << 20
)

// newBody returns an empty body to decode into, nil when this program does
// not know the kind in that version. Layouts are added here, never removed.
func newBody(k Kind, version int) any {
	if k == Looked && version == 2 {
		return &LookAt{}
	}
	if k == PutOut && version == 2 {
		return &Moved{}
	}
	if version != 1 {
		return nil
	}
	switch k {
	case GardenSet:
		return &Garden{}
	case Sown, PutOut:
		return &Started{}
	case Picked:
		return &Amount{}
	case Pulled, Lost:
		return &Ended{}
	case Counted:
		return &Count{}
	case Looked:
		return &Look{}
	case Voided:
		return &Void{}
	case Dismissed:
		return &Dismissal{}
	case Watered:
		return &Watering{}
	case Measured:
		return &Reading{}
	case Pictured:
		return &Photo{}
	case Voiced:
		return &Sound{}
	case Captioned:
		return &Caption{}
	case Skyline:
		return &Edge{}
	case Figured:
		return &OwnFigure{}
	case Forecasted:
		return &Forecast{}
	case Assumed:
		return &Assumption{}
	case Agreed:
		return &Agreement{}
	case Restored:
		return &Restoration{}
	case SeedGot:
		return &Lot{}
	case SeedTested:
		return &Germination{}
	case SeedUsed:
		return &SeedUse{}
	case SeedLeft:
		return &SeedCount{}
	case PrickedOut, PottedOn, Hardening:
		return &Handover{}
	case Named:
		return &Naming{}
	case Described:
		return &Trait{}
	case Wished:
		return &Wish{}
	case PlanKept:
		return &KeptPlan{}
	}
	return nil
}

// layoutOf is the number of a body's layout.
func layoutOf(body any) int {
	switch body.(type) {
	case LookAt, Moved:
		return 2
	}
	return 1
}

// Decode returns e's body: Garden, Started, Amount, Ended, Count, Look, LookAt,
// Void, Dismissal, Watering, Reading, Photo, Sound, Caption, Restoration, Assumption, Agreement, Edge,
// OwnFigure, Lot, Germination, SeedUse, SeedCount, Handover, Moved, Naming,
// Trait, Wish, KeptPlan or Forecast. It reads every layout ever written.
func Decode(e Event) (any, error) {
	if e.body != nil {
		return e.body, nil
	}
	b := newBody(e.Kind, e.Version)
	if b == nil {
		return nil, fmt.Errorf("reading entry %s: %w: %q, layout %d", e.ID, ErrUnknownKind, e.Kind, e.Version)
	}
	if err := json.Unmarshal(e.Body, b); err != nil {
		return nil, fmt.Errorf("reading entry %s (%s): %w", e.ID, e.Kind, err)
	}
	return reflect.ValueOf(b).Elem().Interface(), nil
}

// NewEvent returns an event with a new id and the body written out, ready for
// Append. The layout is this program's newest.
func NewEvent(device string, happened cal.Day, kind Kind, body any) (Event, error) {
	b, err := marshal(body)
	if err != nil {
		return Event{}, fmt.Errorf("writing the body of %q: %w", kind, err)
	}
	return Event{ID: NewID(), Device: device, Happened: happened, Kind: kind, Version: layoutOf(body), Body: b}, nil
}

// marshal writes v as JSON with <, > and & left as they are.
func marshal(v any) ([]byte, error) {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return nil, err
	}
	return bytes.TrimRight(b.Bytes(), "\n"), nil
}

// canonical returns the one text that stands for a body: its fields in the
// layout's order, nothing else. It lists every fault instead when there are
// any. canonical of its own output is the same text.
func canonical(k Kind, version int, raw []byte) ([]byte, any, Faults) {
	limit := bodyLimit
	switch k {
	case GardenSet:
		limit = gardenLimit
	case PlanKept:
		limit = keptLimit
	}
	switch {
	case newBody(k, version) == nil:
		return nil, nil, Faults{fmt.Sprintf("this program does not know %q in layout %d", k, version)}
	case len(raw) > limit:
		return nil, nil, Faults{fmt.Sprintf("the body has %d bytes; the most is %d", len(raw), limit)}
	case !utf8.Valid(raw):
		return nil, nil, Faults{"the body is not UTF-8 text"}
	}
	fields, faults := topLevel(raw)
	if fields == nil {
		return nil, nil, faults
	}
	body := newBody(k, version)
	faults = append(faults, fill(body, k, fields)...)
	if len(faults) > 0 {
		return nil, nil, faults
	}
	v := reflect.ValueOf(body).Elem().Interface()
	if faults = sense(k, v, fields); len(faults) > 0 {
		return nil, nil, faults
	}
	out, err := marshal(v)
	if err != nil {
		return nil, nil, Faults{"the body cannot be written again: " + err.Error()}
	}
	if len(out) > limit {
		return nil, nil, Faults{fmt.Sprintf("the body has %d bytes; the most is %d", len(out), limit)}
	}
	return out, v, nil
}

// topLevel splits a JSON object into its fields. encoding/json alone would
// take the last of two equal names in silence.
func topLevel(raw []byte) (map[string]json.RawMessage, Faults) {
	dec := json.NewDecoder(bytes.NewReader(raw))
	if t, err := dec.Token(); err != nil || t != json.Delim('{') {
		return nil, Faults{"the body is not a JSON object"}
	}
	fields := map[string]json.RawMessage{}
	var faults Faults
	for dec.More() {
		t, err := dec.Token()
		name, ok := t.(string)
		if err != nil || !ok {
			return nil, Faults{"the body is not whole JSON"}
		}
		var v json.RawMessage
		if err := dec.Decode(&v); err != nil {
			return nil, Faults{fmt.Sprintf("%q is not whole JSON", name)}
		}
		if _, twice := fields[name]; twice {
			faults = append(faults, fmt.Sprintf("%q is given twice", name))
		}
		fields[name] = v
	}
	if _, err := dec.Token(); err != nil { // the closing brace
		return nil, Faults{"the body is not whole JSON"}
	}
	if dec.More() {
		return nil, Faults{"something follows the body"}
	}
	return fields, faults
}

// fill sets the struct's fields from the JSON fields and reports each that is
// unknown, empty or of the wrong sort.
func fill(body any, k Kind, fields map[string]json.RawMessage) Faults {
	v := reflect.ValueOf(body).Elem()
	place := map[string]int{}
	for i := 0; i < v.NumField(); i++ {
		name, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
		place[name] = i
	}
	names := make([]string, 0, len(fields))
	for name := range fields {
		names = append(names, name)
	}
	sort.Strings(names)
	var faults Faults
	for _, name := range names {
		i, ok := place[name]
		switch {
		case !ok:
			faults = append(faults, fmt.Sprintf("%q is not a field of %q", name, k))
		case string(fields[name]) == "null":
			faults = append(faults, fmt.Sprintf("%q is null; leave it out instead", name))
		case json.Unmarshal(fields[name], v.Field(i).Addr().Interface()) != nil:
			faults = append(faults, fmt.Sprintf("%q is not %s", name, sortOf(v.Field(i).Kind())))
		}
	}
	return faults
}

func sortOf(k reflect.Kind) string {
	switch k {
	case reflect.Int:
		return "a whole number"
	case reflect.Float64:
		return "a number"
	case reflect.Bool:
		return "true or false"
	case reflect.Slice:
		return "a list of texts"
	}
	return "a text"
}
