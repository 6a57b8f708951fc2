package web

import (
	"net/http"
	"net/url"
	"strings"
	"unicode"
	"unicode/utf8"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// recordDone writes the event of a task that was done.
func (s *site) recordDone(r *http.Request, day *reckon.Day, t reckon.Task, count int, measure, note string, on cal.Day) (done, error) {
	kind := ledger.Kind(t.Event)
	var body any
	switch kind {
	case ledger.Sown: // starts a planting of its own
		body = s.fromPacket(r.Context(), ledger.Started{Crop: t.Crop, Space: spaceFor(day, t), Count: count, Note: note}, r.PostForm.Get("lot"))
	case ledger.PutOut:
		body = ledger.Started{Planting: t.Planting, Crop: t.Crop, Space: spaceFor(day, t), Count: count, Note: note}
	case ledger.Picked:
		body = ledger.Amount{Planting: t.Planting, Measure: measure, Note: note}
	case ledger.Pulled:
		body = ledger.Ended{Planting: t.Planting, Note: note}
	case ledger.PrickedOut, ledger.PottedOn, ledger.Hardening:
		body = ledger.Handover{Planting: t.Planting, Note: note}
	case ledger.Named: // could not tell
		body = ledger.Naming{Planting: t.Planting, Note: note}
	case ledger.Watered:
		body = ledger.Watering{Space: spaceFor(day, t), Hour: s.hourNow(day), Note: note}
	default:
		kind = ledger.Looked
		looks := "well"
		if t.Event != string(ledger.Looked) {
			looks = ledger.DoneMark + t.Verb
		}
		body = ledger.Look{Planting: t.Planting, Space: spaceFor(day, t), Looks: looks, Note: note}
	}
	e, err := s.o.Record(withForm(r, r.PostForm.Get("form")), kind, on, "", body)
	if err != nil {
		return done{}, err
	}
	if kind == ledger.Named {
		return done{event: e, words: "Noted: nobody could tell yet. " + name(t.Object) + " is asked about again later.", back: "/", undo: true}, nil
	}
	return done{event: e, words: "Saved: " + t.Verb + " " + t.Object + ".", back: "/", undo: true}, nil
}

// shelfID names the seed shelf in an event when the garden file has none.
const shelfID = "shelf"

// spaceFor is the space a task's event is about. A task of the seed shelf is
// about the first lamp shelf of the garden.
func spaceFor(day *reckon.Day, t reckon.Task) string {
	if t.Space != "" {
		return t.Space
	}
	for _, sp := range day.Spaces {
		if sp.Kind == string(garden.LampShelf) {
			return sp.ID
		}
	}
	return shelfID
}

// undo takes an event back.
func (s *site) undo(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) {
			event := r.PostForm.Get("event")
			if !ledger.IsID(event) {
				return done{}, errBroken
			}
			if err := s.o.Void(withForm(r, r.PostForm.Get("form")), event); err != nil {
				return done{}, err
			}
			return done{words: "Taken back. The history keeps both.", back: backTo(r.PostForm.Get("back"))}, nil
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

// backTo lets a form choose the page to come back to, but only one of ours:
// a path from the root without a host.
func backTo(p string) string {
	u, err := url.Parse(p)
	if err != nil || u.Host != "" || u.Scheme != "" || !strings.HasPrefix(u.Path, "/") ||
		strings.HasPrefix(u.Path, "//") || strings.Contains(u.Path, "\\") {
		return "/"
	}
	return (&url.URL{Path: u.Path}).EscapedPath()
}

// backElse is where a form leads back to when it says so, else otherwise.
func backElse(v url.Values, otherwise string) string {
	if v.Get("back") == "" {
		return otherwise
	}
	return backTo(v.Get("back"))
}

// queryEscape is url.QueryEscape under a name that reads well here.
func queryEscape(s string) string { return url.QueryEscape(s) }

// name starts a word with a capital letter.
func name(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}
