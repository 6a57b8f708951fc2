package web

import (
	"net/http"

	"bedweek/internal/ledger"
)

// Searching is the search going on behind the pages.
type Searching struct {
	Words string // what is being done and how far it is
	Form  string
}

// searching is what is searched now; nil = nothing.
func (s *site) searching() *Searching {
	if s.o.Searching == nil {
		return nil
	}
	words := s.o.Searching()
	if words == "" {
		return nil
	}
	return &Searching{Words: words, Form: ledger.NewID()}
}

// enough ends the search under way; its best plan so far is then worked out.
func (s *site) enough(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) {
			words := "The search is stopped. The best plan it found comes in some seconds."
			if s.o.Enough == nil || !s.o.Enough() {
				words = "There was no search to stop."
			}
			return done{words: words, back: "/"}, nil
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}
