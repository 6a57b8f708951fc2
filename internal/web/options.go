package web

import (
	"context"
	"io"
	"net/http"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/names"
	"bedweek/internal/reckon"
)

// Options are what the pages need from their caller.
type Options struct {
	// Day returns what can be said now. The caller keeps it between requests
	// and makes it anew after an event; pages do not change it.
	Day func(ctx context.Context) (*reckon.Day, error)
	// ToFill is the same day for a form that is being saved: the latest notes
	// may not stand on it yet. nil = Day.
	ToFill func(ctx context.Context) (*reckon.Day, error)

	// Record writes one event and returns its id. The form's own id is in the
	// context (FormID): used as the event's id, a form sent twice stays one
	// event even over a restart.
	Record func(ctx context.Context, kind ledger.Kind, happened cal.Day, parent string, body any) (id string, err error)

	// Void takes an event back.
	Void func(ctx context.Context, event string) error

	// Backup makes a backup, proves it, and says in words which one it is.
	Backup func(ctx context.Context) (string, error)

	// Proven says in words which backup was last proven; false = none known.
	// It may be nil.
	Proven func(ctx context.Context) (words string, ok bool)

	// Audit checks the ledger and says in words what it found.
	Audit func(ctx context.Context) (words []string, ok bool)

	// Export writes everything as one zip file.
	Export func(ctx context.Context, w io.Writer) error

	// Searching says in words what is searched behind the pages and how far it
	// is, "" = nothing; Enough ends it, false when there was nothing to end.
	// Both or neither may be nil.
	Searching func() string
	Enough    func() bool

	// Hosts are the names this program answers to, as in "garden.home" (any
	// port) or "garden.home:8080". Empty: this machine's own loopback names.
	Hosts []string

	// Dry answers who runs dry first for an hour, a next visit, a limit or an
	// absence, with everything noted so far. Nil = the day's own answer.
	Dry func(ctx context.Context, ask reckon.DryAsk) (*reckon.Dryness, error)

	// Light answers about sun and shade as the garden is now, corrections
	// included; nil = there are no such pages.
	Light func(ctx context.Context) (*reckon.LightDesk, error)

	// Names answers about seed, trays and which plant is which, with everything
	// noted so far; nil = there are no such pages.
	Names func(ctx context.Context) (*names.Desk, error)

	// TallCosts tells what tall plantings of the plan take from their
	// neighbours; nil = not told.
	TallCosts func(ctx context.Context) ([]reckon.TallCost, error)

	// Crops answers about crops as the garden and its own figures are now; nil =
	// there are no such pages. It returns nil while there is no plan.
	Crops func(ctx context.Context) (*reckon.CropDesk, error)

	// Wishes is what the pages about wishes, what-ifs and reasons need; nil =
	// there are no such pages.
	Wishes *Wishes

	// Now is the clock, for "printed on". Nil = time.Now.
	Now func() time.Time

	// Entry describes a garden through pages; nil = there are no such pages.
	// With it, Day may return nil while there is no plan yet.
	Entry *Entry

	// Keeping is what the pages about backups, photos and phones need; nil =
	// there are no such pages.
	Keeping *Keeping

	// Demo says on every page that the garden is invented, even when the Day
	// does not.
	Demo bool
}

type formKey struct{}

// FormID returns the id of the form being saved, 26 characters made when the
// form was drawn, or "" outside of a save. The same form sent twice carries
// the same id.
func FormID(ctx context.Context) string {
	id, _ := ctx.Value(formKey{}).(string)
	return id
}

// withForm returns a request context that carries the form's id.
func withForm(r *http.Request, id string) context.Context {
	return context.WithValue(r.Context(), formKey{}, id)
}
