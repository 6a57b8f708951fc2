package web

import (
	"context"
	"errors"
	"net/http"

	"bedweek/internal/ledger"
)

// ErrNotThere may be wrapped by a caller for something that is not there, as
// an event to take back. The ledger's own errors are known here too. Any other
// error is our own fault and is shown as such, without its text.
var ErrNotThere = errors.New("no such thing here")

// ErrBusy is returned while a restore is under way.
var ErrBusy = errors.New("a restore is under way")

// Errors of the pages themselves.
var (
	errGone    = errors.New("no longer on the list")
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
// is used; an error without an entry is our own fault.
var troubles = []trouble{
	{ErrNotThere, http.StatusNotFound, "No such page", "There is nothing at this address.", "Go back to Today and choose from there."},
	{errMethod, http.StatusMethodNotAllowed, "Not asked for that way", "This address does not take that kind of request. Nothing was changed.", "Open the page and use its buttons."},
	{errHost, http.StatusMisdirectedRequest, "Not known by that name", "This program does not answer to the name your browser used.", "Use the address printed when the program started."},
	{errForeign, http.StatusForbidden, "Not accepted", "This came from another site, or your browser did not say where from. Nothing was saved.", "Open the page here and use its own buttons."},
	{errBroken, http.StatusBadRequest, "The form did not arrive whole", "Part of the form was missing. Nothing was saved.", "Open the page again and fill in the form."},
	{errLarge, http.StatusRequestEntityTooLarge, "Too much at once", "The form holds more than we take in one go. Nothing was saved.", "Shorten the note and send it again."},
	{errNoPhoto, http.StatusUnprocessableEntity, "No picture was chosen", "No picture was chosen. Nothing was saved.", "Go back and choose one."},
	{errNoFile, http.StatusUnprocessableEntity, "No file was chosen", "No file was chosen. Nothing was changed.", "Go back and choose one."},
	{errNotNotes, http.StatusUnprocessableEntity, "Not a file of notes", "This is not a file of notes from a device. Nothing was changed.", "Choose the file that the device saved."},
	{errPhotoKind, http.StatusUnprocessableEntity, "Not a picture we take", "This is not a whole JPEG or PNG picture. Nothing was saved.", "Save it on the phone as JPEG and send it again."},
	{errSoundKind, http.StatusUnprocessableEntity, "Not a sound we take", "This is not a sound in a format we keep. Nothing was saved.", "Record it with the phone's own recorder and send it again."},
	{errPhotoLarge, http.StatusRequestEntityTooLarge, "The picture is too large", "The picture has more points than we take. Nothing was saved.", "Send it from the phone in a smaller size."},
	{ErrBusy, http.StatusServiceUnavailable, "Already at it", "A restore is under way. Nothing was changed.", "Wait a minute, then look again."},
	{ledger.ErrNotLedger, http.StatusUnprocessableEntity, "Not an exported record", "This file is not an exported record, or it was changed. Nothing was taken over.", "Choose the events.json of an export."},
	{errForm, http.StatusUnprocessableEntity, "Not saved yet", "Not saved yet: something below needs a look.", "Mend the marked places and save again."},
	{errGone, http.StatusGone, "No longer on the list", "This task has gone from the list. Nothing was saved.", "Look at Today again."},
	{ledger.ErrOtherBody, http.StatusConflict, "Saved before", "This form was saved before with other words. The first one stands.", "Take the first one back, or write a new one."},
	{ledger.ErrNoSpace, http.StatusInsufficientStorage, "No room to save", "There is no room left to write. It was not saved. Everything saved before is still there.", "Free some room on this machine, then save again."},
	{ledger.ErrStopped, http.StatusServiceUnavailable, "Not saving now", "The program has stopped saving, to keep what it has. It was not saved.", "Write it on paper and ask whoever looks after the program."},
	{ledger.ErrClosed, http.StatusServiceUnavailable, "Not saving now", "The program is closing. It was not saved.", "Write it on paper until the program runs again."},
	{ledger.ErrDamaged, http.StatusServiceUnavailable, "The record is damaged", "The record is damaged. Nothing was changed.", "Ask whoever looks after the program to restore a backup."},
	{context.Canceled, http.StatusServiceUnavailable, "Stopped", "The request was stopped before it was done.", "Try again."},
	{context.DeadlineExceeded, http.StatusServiceUnavailable, "Took too long", "The answer took too long.", "Wait a minute and try again."},
}

// ours is said of every error the table does not know.
var ours = trouble{nil, http.StatusInternalServerError, "Something went wrong", "The fault is ours, not yours. Nothing you saved before is lost.", "Try again. If it comes back, make a backup and report it."}

// troubleOf finds how err is said.
func troubleOf(err error) trouble {
	var large *http.MaxBytesError
	if errors.As(err, &large) {
		err = errLarge
	}
	var refused ledger.Faults
	if errors.As(err, &refused) {
		err = errForm
	}
	for _, t := range troubles {
		if errors.Is(err, t.err) {
			return t
		}
	}
	return ours
}

// TroublePage says in words what went wrong.
type TroublePage struct {
	Frame
	Status int
	Words  string
	Next   string
}
