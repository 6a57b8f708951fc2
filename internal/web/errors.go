package web

import (
	"context"
	"errors"
	"net/http"
)

// Errors a caller may wrap, so that the page can say what happened. Any other
// error is our own fault and is shown as such, without its text.
var (
	ErrNotThere = errors.New("no such thing here")
	ErrConflict = errors.New("already saved with other words")
	ErrGone     = errors.New("no longer on the list")
	ErrFull     = errors.New("no room left to write")
	ErrClosed   = errors.New("writing has stopped")
)

// Errors of the pages themselves.
var (
	errMethod  = errors.New("no such way to ask")
	errHost    = errors.New("name not known here")
	errForeign = errors.New("sent by another site")
	errBroken  = errors.New("form not complete")
	errLarge   = errors.New("form too large")
	errForm    = errors.New("form has faults")
)

// trouble is how an error is said.
type trouble struct {
	err    error
	status int
	title  string
	words  string
	next   string
}

// troubles is the one table from errors to statuses. The first that matches
// is used; the last matches everything.
var troubles = []trouble{
	{ErrNotThere, http.StatusNotFound, "No such page", "There is nothing at this address.", "Go back to Today and choose from there."},
	{errMethod, http.StatusMethodNotAllowed, "Not asked for that way", "This address does not take that kind of request. Nothing was changed.", "Open the page and use its buttons."},
	{errHost, http.StatusMisdirectedRequest, "Not known by that name", "This program does not answer to the name your browser used.", "Use the address printed when the program started."},
	{errForeign, http.StatusForbidden, "Not accepted", "This came from another site, or your browser did not say where from. Nothing was saved.", "Open the page here and use its own buttons."},
	{errBroken, http.StatusBadRequest, "The form did not arrive whole", "Part of the form was missing. Nothing was saved.", "Open the page again and fill in the form."},
	{errLarge, http.StatusRequestEntityTooLarge, "Too much at once", "The form holds more than we take in one go. Nothing was saved.", "Shorten the note and send it again."},
	{errForm, http.StatusUnprocessableEntity, "Not saved yet", "Something in the form needs a look.", "Mend the marked places and save again."},
	{ErrConflict, http.StatusConflict, "Saved before", "This form was saved before with other words. The first one stands.", "Take the first one back, or write a new one."},
	{ErrGone, http.StatusGone, "No longer on the list", "This task has gone from the list. Nothing was saved.", "Look at Today again."},
	{ErrFull, http.StatusInsufficientStorage, "No room to save", "There is no room left to write. It was not saved. Everything saved before is still there.", "Free some room on this machine, then save again."},
	{ErrClosed, http.StatusServiceUnavailable, "Not saving now", "The program has stopped saving, to keep what it has. It was not saved.", "Write it on paper and ask whoever looks after the program."},
	{context.Canceled, http.StatusServiceUnavailable, "Stopped", "The request was stopped before it was done.", "Try again."},
	{context.DeadlineExceeded, http.StatusServiceUnavailable, "Took too long", "The answer took too long.", "Wait a minute and try again."},
	{nil, http.StatusInternalServerError, "Something went wrong", "The fault is ours, not yours. Nothing you saved before is lost.", "Try again. If it comes back, make a backup and report it."},
}

// troubleOf finds how err is said.
func troubleOf(err error) trouble {
	var large *http.MaxBytesError
	if errors.As(err, &large) {
		err = errLarge
	}
	for _, t := range troubles {
		if t.err != nil && errors.Is(err, t.err) {
			return t
		}
	}
	return troubles[len(troubles)-1]
}

// TroublePage says in words what went wrong.
type TroublePage struct {
	Frame
	Status int
	Words  string
	Next   string
}
