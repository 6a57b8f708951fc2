package web

import (
	"context"
	"crypto/sha256"
	"net/http"
	"net/url"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// sentKept is how many saved forms are remembered for double sending.
const sentKept = 1000

// done is what came of a saved form.
type done struct {
	event  string
	words  string
	back   string
	undo   bool
	digest [32]byte
}

// sentForms remembers saved forms by id, so that the same form sent twice is
// saved once. One household writes here: saves go one at a time.
type sentForms struct {
	write sync.Mutex // held while a form is being saved
	mu    sync.Mutex
	byID  map[string]done
	order []string
	cap   int
}

func newSentForms(n int) *sentForms {
	return &sentForms{byID: map[string]done{}, cap: n}
}

func (f *sentForms) get(id string) (done, bool) {
	f.mu.Lock()
	defer f.mu.Unlock()
	d, ok := f.byID[id]
	return d, ok
}

func (f *sentForms) put(id string, d done) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if _, ok := f.byID[id]; !ok {
		f.order = append(f.order, id)
		if len(f.order) > f.cap {
			delete(f.byID, f.order[0])
			f.order = f.order[1:]
		}
	}
	f.byID[id] = d
}

// digestOf tells two fillings of one form apart. Encode sorts by name.
func digestOf(v url.Values) [32]byte { return sha256.Sum256([]byte(v.Encode())) }

func (s *site) toFill(ctx context.Context) (*reckon.Day, error) {
	if s.o.ToFill != nil {
		return s.o.ToFill(ctx)
	}
	return s.o.Day(ctx)
}

// present is the day a form speaks of; errGone while there is no plan yet.
func (s *site) present(r *http.Request) (*reckon.Day, error) {
	day, err := s.toFill(r.Context())
	if err == nil && day == nil {
		err = errGone
	}
	return day, err
}

// firstTime reports whether a form has a name of its own and was not saved before.
func (s *site) firstTime(r *http.Request) bool {
	id := r.PostForm.Get("form")
	if !ledger.IsID(id) {
		return false
	}
	_, before := s.sent.get(id)
	return !before
}

// once saves a form, or finds that it was saved before, and then shows the
// page it came from. A form that was saved with other words is an error.
func (s *site) once(w http.ResponseWriter, r *http.Request, save func() (done, error)) error {
	id := r.PostForm.Get("form")
	if !ledger.IsID(id) {
		return errBroken
	}
	s.sent.write.Lock()
	defer s.sent.write.Unlock()
	digest := digestOf(r.PostForm)
	d, before := s.sent.get(id)
	if before && d.digest != digest {
		return ledger.ErrOtherBody
	}
	if held := r.Header.Get(heldHeader) != ""; !before && held && s.keptBefore(r, id) {
		d = done{digest: digest, back: "/unsent"}
	} else if !before {
		if held {
			s.noLater(r)
		}
		var err error
		if d, err = save(); err != nil {
			return err
		}
		d.digest = digest
		s.sent.put(id, d)
	}
	to := d.back
	if d.words != "" {
		mark := "?"
		if strings.Contains(to, "?") {
			mark = "&"
		}
		to += mark + "saved=" + id
	}
	http.Redirect(w, r, to, http.StatusSeeOther)
	return nil
}

// heldHeader marks a form that waited on a device and may have come before.
const heldHeader = "Bedweek-Held"

// keptBefore reports whether the record has the entry of a form already: its
// answer was lost, and this program has been started anew since.
func (s *site) keptBefore(r *http.Request, id string) bool {
	return s.o.Keeping != nil && s.o.Keeping.Kept != nil && s.o.Keeping.Kept(r.Context(), id)
}

// noLater puts the day of a form that waited, which a device's clock may have
// given, no later than today.
func (s *site) noLater(r *http.Request) {
	day, err := s.present(r)
	if err != nil {
		return
	}
	if on, err := cal.Parse(strings.TrimSpace(r.PostForm.Get("day"))); err == nil && on > day.Date {
		r.PostForm.Set("day", day.Date.String())
	}
}

// readForm reads a posted form of any plain kind.
func readForm(r *http.Request) error {
	kind, _, _ := strings.Cut(r.Header.Get("Content-Type"), ";")
	if strings.TrimSpace(strings.ToLower(kind)) != "application/x-www-form-urlencoded" {
		return errBroken
	}
	if err := r.ParseForm(); err != nil {
		if troubleOf(err).err == errLarge {
			return errLarge
		}
		return errBroken
	}
	for _, vs := range r.PostForm {
		for _, v := range vs {
			if !utf8.ValidString(v) || strings.ContainsRune(v, 0) {
				return errBroken
			}
		}
	}
	return nil
}

// Limits of what a form takes.
const (
	maxNote    = 1000  // letters
	maxVariety = 80    // letters, as the ledger takes
	maxCount   = 10000 // plants
	maxKg      = 500   // kilograms in one picking
	oldestDays = 3660  // how far back an event may lie, ten years
)

// faults are the words at each field, by field name.
type faults map[string]string

// text reads a free field.
func (f faults) text(v url.Values, field string, most int) string {
	t := strings.TrimSpace(strings.ReplaceAll(v.Get(field), "\r\n", "\n"))
	if n := utf8.RuneCountInString(t); n > most {
		f[field] = "This is " + strconv.Itoa(n) + " letters long. At most " + strconv.Itoa(most) + " fit."
	}
	if strings.ContainsFunc(t, func(r rune) bool { return unicode.IsControl(r) && r != '\n' && r != '\t' }) {
		f[field] = "This holds a letter that cannot be kept. Type it again."
	}
	return t
}

// count reads a number of plants, at least least; empty gives 0 when it need
// not be said.
func (f faults) count(v url.Values, field string, needed bool, least int) int {
	t := strings.TrimSpace(v.Get(field))
	if t == "" {
		if needed {
			f[field] = "Say how many, such as 6."
		}
		return 0
	}
	n, err := strconv.Atoi(t)
	switch {
	case err != nil:
		f[field] = "Write a whole number, such as 6."
	case n < least:
		f[field] = "At least " + strconv.Itoa(least) + "."
	case n > maxCount:
		f[field] = "More than 10,000 is more than we take."
	}
	return n
}

// day reads a date, not after today and not older than ten years.
func (f faults) day(v url.Values, field string, today cal.Day) cal.Day {
	d, err := cal.Parse(strings.TrimSpace(v.Get(field)))
	switch {
	case err != nil:
		f[field] = "Write the day as year-month-day, such as " + today.String() + "."
	case d > today:
		f[field] = "That day has not come yet. Today is " + today.Long() + "."
	case d < today-oldestDays:
		f[field] = "That is more than ten years ago."
	}
	return d
}

// oneOf reads a choice.
func (f faults) oneOf(v url.Values, field string, choices []Option, words string) string {
	t := v.Get(field)
	for _, c := range choices {
		if c.Value == t {
			return t
		}
	}
	f[field] = words
	return ""
}

// kg reads a weight in kilograms; a comma is taken as a decimal point.
func (f faults) kg(v url.Values, field string) float64 {
	t := strings.Replace(strings.TrimSpace(v.Get(field)), ",", ".", 1)
	if t == "" {
		return 0
	}
	x, err := strconv.ParseFloat(t, 64)
	if err != nil || !(x > 0) {
		f[field] = "Write kilograms, such as 0.4."
		return 0
	}
	if x > maxKg {
		f[field] = "More than 500 kg in one picking is more than we take."
		return 0
	}
	return x
}

// Option is one choice of a field.
type Option struct {
	Value, Words string
	Chosen       bool
}

// choose marks the chosen option.
func choose(opts []Option, value string) []Option {
	out := make([]Option, len(opts))
	for i, o := range opts {
		o.Chosen = o.Value == value
		out[i] = o
	}
	return out
}
