package web

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"net"
	"net/http"
	"net/url"
	"sort"
	"strings"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// brought is what a device sends: the notes it kept while there was no signal.
type brought struct {
	Epoch   string      `json:"epoch"` // of the record, as it last saw it
	Waiting int         `json:"waiting"`
	Oldest  int64       `json:"oldest"` // of those waiting, ms since 1970 by the device's clock
	Clock   int64       `json:"clock"`  // the device's clock now
	Device  string      `json:"device"` // only in a file handed over
	Entries []heldEntry `json:"entries"`
}

// heldEntry is one form, filled in at the bed.
type heldEntry struct {
	Form    string            `json:"form"`
	Path    string            `json:"path"` // the form's address
	Fields  map[string]string `json:"fields"`
	Stamped bool              `json:"stamped"` // the day comes from the device's clock
}

// home is the answer.
type home struct {
	Epoch   string    `json:"epoch"`
	Device  string    `json:"device"`
	Waiting int       `json:"waiting"` // the device's own last count, -1 = never heard of
	Words   string    `json:"words"`   // to be said once, "" = nothing
	Results []outcome `json:"results"`
}

type outcome struct {
	Form  string `json:"form"`
	Kept  bool   `json:"kept"`
	Again bool   `json:"again"` // not kept, but worth sending again
	Words string `json:"words"`
}

// broughtMost is the most notes in one go; a device sends the rest after.
const broughtMost = 100

// clockOff is how wrong a device's clock may be before it is said.
const clockOff = 24 * time.Hour

// syncState answers a device that only asks.
func (s *site) syncState(w http.ResponseWriter, r *http.Request) {
	a, err := s.homeFor(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	sendJSON(w, a)
}

func (s *site) homeFor(r *http.Request) (home, error) {
	epoch, err := s.o.Keeping.Epoch(r.Context())
	a := home{Epoch: epoch, Device: DeviceOf(r.Context(), "home"), Waiting: -1, Results: []outcome{}}
	if s.o.Keeping.LastWaiting != nil {
		a.Waiting = s.o.Keeping.LastWaiting(a.Device)
	}
	return a, err
}

func sendJSON(w http.ResponseWriter, v any) {
	w.Header().Set("Content-Type", "application/json")
	w.Header().Set("Cache-Control", "no-store")
	json.NewEncoder(w).Encode(v)
}

// syncIn takes what a device brings. Each note is kept or said why not; one
// that was kept before counts as kept.
func (s *site) syncIn(w http.ResponseWriter, r *http.Request) {
	var b brought
	err := readBrought(r, &b)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	a, err := s.homeFor(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	now := s.o.Now()
	off := time.Duration(0)
	if b.Clock > 0 {
		off = time.UnixMilli(b.Clock).Sub(now)
	}
	if off > clockOff || off < -clockOff {
		a.Words = clockWords(off)
	} else {
		off = 0
	}
	if a.Results, err = s.bringHome(r, b.Entries, off); err != nil {
		s.fail(w, r, err)
		return
	}
	if s.o.Keeping.Waiting != nil {
		left := b.Waiting
		for _, o := range a.Results {
			if o.Kept {
				left--
			}
		}
		s.o.Keeping.Waiting(r.Context(), a.Device, max(0, left), time.UnixMilli(b.Oldest).Add(-off))
	}
	sendJSON(w, a)
}

func readBrought(r *http.Request, b *brought) error {
	kind, _, _ := strings.Cut(r.Header.Get("Content-Type"), ";")
	if strings.TrimSpace(strings.ToLower(kind)) != "application/json" {
		return errBroken
	}
	if err := json.NewDecoder(r.Body).Decode(b); err != nil {
		var large *http.MaxBytesError
		if errors.As(err, &large) {
			return errLarge
		}
		return errBroken
	}
	if len(b.Entries) > broughtMost || b.Waiting < 0 || b.Waiting > 1e6 {
		return errLarge
	}
	return nil
}

func clockWords(off time.Duration) string {
	way := "ahead"
	if off < 0 {
		way, off = "behind", -off
	}
	days := int(off / (24 * time.Hour))
	if days > 365 {
		return fmt.Sprintf("This device's clock is about %s %s. The days it wrote were moved to match.", plural(days/365, "year", "years"), way)
	}
	return fmt.Sprintf("This device's clock is %s %s. The days it wrote were moved to match.", plural(days, "day", "days"), way)
}

// bringHome turns each note into an event and keeps it.
func (s *site) bringHome(r *http.Request, entries []heldEntry, off time.Duration) ([]outcome, error) {
	day, err := s.toFill(r.Context())
	if err != nil {
		return nil, err
	}
	out := make([]outcome, len(entries))
	for i, e := range entries {
		out[i] = outcome{Form: e.Form}
		if day == nil {
			out[i].Again, out[i].Words = true, "There is no plan yet. It waits."
			continue
		}
		err := s.bringOne(r, day, e, off)
		t := troubleOf(err)
		var held errHeld
		switch {
		case err == nil:
			out[i].Kept = true
		case errors.As(err, &held):
			out[i].Words = err.Error()
		case t.status >= 500: // no room, writing stopped, our own fault
			out[i].Again, out[i].Words = true, t.words
		default:
			out[i].Words = t.words
		}
	}
	return out, nil
}

// errHeld is why a note cannot be kept, in words for the one who wrote it.
type errHeld string

func (e errHeld) Error() string { return string(e) }

// bringOne keeps one note. Lists of what stands are not asked: what stood
// when it was written may be gone by now.
func (s *site) bringOne(r *http.Request, day *reckon.Day, e heldEntry, off time.Duration) error {
	if !ledger.IsID(e.Form) {
		return errHeld("The note has no mark of its own. Write it again.")
	}
	space, kind, ok := noteAddress(e.Path)
	if !ok && e.Path != "/task" {
		return errHeld("This kind of note cannot wait. Write it again.")
	}
	v := url.Values{"form": {e.Form}}
	for k, x := range e.Fields {
		if len(k) > 40 || len(x) > maxBody || strings.ContainsRune(x, 0) {
			return errHeld("The note holds something that cannot be kept.")
		}
		v.Set(k, strings.ToValidUTF8(x, "?"))
	}
	if e.Path == "/task" {
		return s.bringTask(r, day, v)
	}
	ask := r.Clone(r.Context())
	ask.SetPathValue("id", space)
	ask.SetPathValue("kind", kind)
	p, err := s.notePage(ask, day, v)
	if err != nil {
		return errHeld("That space is no longer in the garden. Save the note as a file.")
	}
	p.Plantings = append(p.Plantings, Option{Value: v.Get("planting")})
	p.Crops = append(p.Crops, Option{Value: v.Get("crop")})
	k, body, _ := p.event(day, v)
	on, err := cal.Parse(strings.TrimSpace(v.Get("day")))
	if err != nil {
		p.Faults["day"] = "The day is not a date."
	}
	if e.Stamped {
		on -= cal.Day(math.Round(off.Hours() / 24))
		if on > day.Date+1 { // nobody typed it: the garden's day stands still, as in the demonstration
			on = day.Date
		}
	}
	if on > day.Date+1 { // a phone east of here may be a day ahead
		p.Faults["day"] = "That day has not come yet."
	}
	if len(p.Faults) > 0 {
		return errHeld(p.Faults.sentence())
	}
	event, err := s.o.Record(withForm(r, e.Form), k, on, "", body)
	if err == nil {
		s.sent.put(e.Form, done{digest: digestOf(v), event: event, words: "Saved: " + string(k) + ".", back: "/", undo: true})
	}
	if errors.Is(err, ledger.ErrOtherBody) && s.o.Keeping.Same != nil && s.o.Keeping.Same(r.Context(), e.Form, k, body) {
		err = nil // kept before; only the day was reckoned otherwise
	}
	var f ledger.Faults
	if errors.As(err, &f) {
		return errHeld(strings.Join(f, " "))
	}
	return err
}

// bringTask keeps an answer to a task given without a signal. The list may
// have moved on since, so the note itself says what the task was. Its day is
// the one it was drawn for.
func (s *site) bringTask(r *http.Request, day *reckon.Day, v url.Values) error {
	t, ok := taskOf(day, v.Get("task"))
	if !ok {
		t = taskFrom(v)
	}
	on, err := cal.Parse(strings.TrimSpace(v.Get("day")))
	if err != nil {
		return errHeld("The day is not a date.")
	}
	r = r.Clone(r.Context())
	r.PostForm = v
	kept, err := s.recordAnswer(r, day, t, v, min(on, day.Date))
	if err == nil { // the page that comes next tells of it, with a way back
		kept.digest = digestOf(v)
		s.sent.put(v.Get("form"), kept)
	}
	var f ledger.Faults
	switch {
	case errors.As(err, &f):
		return errHeld(strings.Join(f, " "))
	case errors.Is(err, errBroken):
		return errHeld("The note does not say what was answered. Write it again.")
	}
	return err
}

// sentence joins the faults, by field.
func (f faults) sentence() string {
	var names []string
	for n := range f {
		names = append(names, n)
	}
	sort.Strings(names)
	var words []string
	for _, n := range names {
		words = append(words, f[n])
	}
	return strings.Join(words, " ")
}

// noteAddress takes "/space/{id}/note/{kind}" apart.
func noteAddress(path string) (space, kind string, ok bool) {
	parts := strings.Split(path, "/")
	if len(parts) != 5 || parts[0] != "" || parts[1] != "space" || parts[3] != "note" {
		return "", "", false
	}
	space, err := url.PathUnescape(parts[2])
	return space, parts[4], err == nil
}

// UnsentPage shows what this device holds; its script fills it in.
type UnsentPage struct {
	Frame
	Form   string
	Device string
	Secure bool // the address allows working without a signal
}

func (s *site) unsent(r *http.Request, day *reckon.Day) (page, error) {
	return &UnsentPage{Frame: s.framed(r, day, "What waits on this device", "unsent"), Form: ledger.NewID(),
		Device: DeviceOf(r.Context(), "home"), Secure: r.TLS != nil || loopback(r.Host)}, nil
}

func loopback(host string) bool {
	h := strings.ToLower(strings.Trim(host, "[]"))
	if name, _, err := net.SplitHostPort(host); err == nil {
		h = strings.ToLower(name)
	}
	ip := net.ParseIP(h)
	return h == "localhost" || ip != nil && ip.IsLoopback()
}

// bring takes a file handed over from a device that cannot send.
func (s *site) bring(w http.ResponseWriter, r *http.Request) {
	fields, files, err := readParts(r, importMost)
	if err == nil {
		r.PostForm = fields
		err = s.once(w, r, func() (done, error) { return s.bringFile(r, files["notes"]) })
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

func (s *site) bringFile(r *http.Request, file []byte) (done, error) {
	if len(file) == 0 {
		return done{}, errNoFile
	}
	var b brought
	if json.Unmarshal(file, &b) != nil {
		return done{}, errNotNotes
	}
	off := time.Duration(0)
	ctx := r.Context()
	if n := []rune(strings.TrimSpace(b.Device)); len(n) > 0 && len(n) <= 60 {
		ctx = WithDevice(ctx, string(n))
	}
	out, err := s.bringHome(r.WithContext(ctx), b.Entries, off)
	if err != nil {
		return done{}, err
	}
	kept, first := 0, ""
	for _, o := range out {
		if o.Kept {
			kept++
		} else if first == "" {
			first = " One that could not be kept: " + o.Words
		}
	}
	return done{words: fmt.Sprintf("%d of %s kept.%s", kept, plural(len(out), "note", "notes"), first), back: "/unsent"}, nil
}

var errNotNotes = errors.New("not a file of notes")
