package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// RestorePage asks once more before the record goes back to a backup.
type RestorePage struct {
	Frame
	File    string
	Holds   string
	Lead    string
	Newer   []string // what would be gone, newest first, at most newerShown
	More    int
	Form    string
	Unknown string
}

const newerShown = 12

// restoreAsk shows what would be lost.
func (s *site) restoreAsk(r *http.Request, day *reckon.Day) (page, error) {
	file := r.URL.Query().Get("backup")
	if !cleanName(file) {
		return nil, ErrNotThere
	}
	loss, err := s.o.Keeping.WouldLose(r.Context(), file)
	if err != nil {
		return nil, err
	}
	p := &RestorePage{Frame: s.framed(r, day, "Go back to a backup?", "restore"), File: file, Holds: loss.Backup.Words(), Form: ledger.NewID()}
	p.tell(loss)
	return p, nil
}

// tell puts a loss in words.
func (p *RestorePage) tell(loss ledger.Loss) {
	switch {
	case loss.Count < 0:
		p.Lead = "How many entries are newer is not known."
	case loss.Count == 0:
		p.Lead = "Nothing is newer than this backup. Nothing would be gone."
	default:
		p.Lead = plural(int(loss.Count), "entry is", "entries are") + " newer than this backup, and would be gone from these pages."
	}
	if loss.NotKnown != "" {
		p.Unknown = loss.NotKnown
	}
	for i := len(loss.Newer) - 1; i >= 0; i-- {
		if len(p.Newer) == newerShown {
			p.More = i + 1
			break
		}
		e := loss.Newer[i]
		p.Newer = append(p.Newer, fmt.Sprintf("%s: %s, from %s", e.Happened.Long(), e.Kind, e.Device))
	}
}

// restoreDo begins. The pages come back by themselves when it is done.
func (s *site) restoreDo(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	file := r.PostForm.Get("backup")
	if err == nil && (!cleanName(file) || !strings.HasSuffix(file, ".db")) {
		err = ErrNotThere
	}
	if err == nil && !ledger.IsID(r.PostForm.Get("form")) {
		err = errBroken
	}
	if err == nil {
		err = s.o.Keeping.Restore(r.Context(), file)
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	http.Redirect(w, r, "/safe", http.StatusSeeOther)
}
