package web

import (
	"fmt"
	"net/http"
	"strings"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// FilePage is the file's door: take it out, bring it in.
type FilePage struct {
	Frame
	Form    string
	Bytes   int
	Faults  []string // of a file brought in
	Text    string   // what was pasted, when it has faults
	Problem string
}

// DiffPage shows what a file brought in would change.
type DiffPage struct {
	Frame
	Form    string
	Changes []garden.Change
	Remarks bool // nothing but remarks and spacing differs
	Text    string
}

func (s *site) filePage(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	s.draw(w, r, http.StatusOK, &FilePage{Frame: s.entryFrame(r, d, "The garden as a file", "entryfile"), Form: ledger.NewID(), Bytes: len(d.text)})
}

// fileOut sends the garden's text, byte for byte.
func (s *site) fileOut(w http.ResponseWriter, r *http.Request) {
	d, err := s.described(r.Context())
	if err == nil && len(d.text) == 0 {
		err = ErrNotThere
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "application/yaml; charset=utf-8")
	w.Header().Set("Content-Disposition", `attachment; filename="garden.yaml"`)
	w.Header().Set("Content-Length", fmt.Sprint(len(d.text)))
	w.Write(d.text)
}

// fileDiff reads a file brought in and shows the difference. It keeps nothing.
func (s *site) fileDiff(w http.ResponseWriter, r *http.Request) {
	_, data, err := readUpload(r)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	d, err := s.described(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	p := &FilePage{Frame: s.entryFrame(r, d, "The garden as a file", "entryfile"), Form: ledger.NewID(), Bytes: len(d.text)}
	if strings.TrimSpace(string(data)) == "" {
		p.Problem = "Choose a file, or paste its text."
		s.draw(w, r, http.StatusUnprocessableEntity, p)
		return
	}
	fresh, bad := garden.Read("garden.yaml", data, d.book)
	if len(bad) > 0 {
		p.Problem = "This file has " + plural(len(bad), "fault", "faults") + ". Nothing was changed."
		for _, f := range bad[:min(len(bad), 50)] {
			p.Faults = append(p.Faults, f.String())
		}
		if len(data) < maxBody {
			p.Text = strings.ToValidUTF8(string(data), "?")
		}
		s.draw(w, r, http.StatusUnprocessableEntity, p)
		return
	}
	q := &DiffPage{Frame: s.entryFrame(r, d, "What the file changes", "entrydiff"), Form: ledger.NewID(), Changes: garden.Diff(d.g, fresh), Text: string(data)}
	q.Remarks = len(q.Changes) == 0 && string(data) != string(d.text)
	s.draw(w, r, http.StatusOK, q)
}

// fileAccept takes a shown file over.
func (s *site) fileAccept(w http.ResponseWriter, r *http.Request) {
	if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	err := s.once(w, r, func() (done, error) {
		d, err := s.described(r.Context())
		if err != nil {
			return done{}, err
		}
		// A browser sends every line end as two bytes; the file has one.
		text := strings.ReplaceAll(r.PostForm.Get("text"), "\r\n", "\n")
		if _, bad := garden.Read("garden.yaml", []byte(text), d.book); len(bad) > 0 {
			return done{}, errBroken
		}
		if text == string(d.text) {
			return done{words: "Nothing to change.", back: "/entry"}, nil
		}
		event, err := s.o.Entry.Keep(withForm(r, r.PostForm.Get("form")), text)
		return done{event: event, words: "The file was taken over.", back: "/entry", undo: true}, err
	})
	if err != nil {
		s.fail(w, r, err)
	}
}
