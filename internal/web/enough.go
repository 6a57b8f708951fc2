package web

import (
	"net/http"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
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

// Meanwhile says that what a page shows is about to change, and how to see it.
type Meanwhile struct {
	Words string
	Again string // the page's own address
}

// meanwhile is what goes on behind a page; nil = nothing.
func (s *site) meanwhile(r *http.Request, day *reckon.Day) *Meanwhile {
	m := &Meanwhile{Again: r.URL.Path}
	switch x := s.searching(); {
	case len(day.Notes) > 0 && day.Notes[0] == reckon.Anew:
		m.Words = "The plan is being worked out anew, which takes some seconds. What stands here is from before and can be read meanwhile."
	case x != nil:
		m.Words = x.Words + " What stands here holds meanwhile."
	default:
		return nil
	}
	return m
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
