package web

import (
	"bytes"
	"context"
	"fmt"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// SafePage says how well what was written down is kept.
type SafePage struct {
	Frame
	Proven  string
	HasOne  bool
	Audit   []string
	AuditOK bool
	Form    string

	Keep  *Safety // nil = the program around the pages does not tell
	Lead  string  // the answer in one sentence
	Last  string  // when the last backup was made
	Check string
	Drill string
	Free  string
	Braid Braid
	Knots []KnotShown
	Forms [2]string
}

// safe draws the page.
func (s *site) safe(r *http.Request, day *reckon.Day) (page, error) { return s.safePage(r, day) }

func (s *site) safePage(r *http.Request, day *reckon.Day) (*SafePage, error) {
	p := &SafePage{Frame: s.framed(r, day, "Is what I wrote kept?", "safe"), Form: ledger.NewID()}
	p.Proven, p.HasOne = s.proven(r.Context())
	if s.o.Keeping != nil {
		return p, s.safeKept(r, day, p)
	}
	p.Audit, p.AuditOK = s.o.Audit(r.Context())
	return p, nil
}

// safeKept fills in all that the program around the pages knows.
func (s *site) safeKept(r *http.Request, day *reckon.Day, p *SafePage) error {
	k, err := s.o.Keeping.Safety(r.Context())
	if err != nil {
		return err
	}
	now := s.o.Now()
	p.Keep, p.Title = &k, "Is it safe?"
	p.Forms = [2]string{ledger.NewID(), ledger.NewID()}
	p.Audit, p.AuditOK = k.Words, k.CheckOK || k.Checked.IsZero()
	p.Last, p.Lead = "There is no backup yet.", "Not yet: there is no proven backup. Make one now."
	if n := len(k.Backups); n > 0 {
		p.Last = "Made " + ago(now, k.Backups[n-1].Made) + ": " + k.Backups[n-1].Words() + "."
		p.Lead = "Yes. Everything written down is in a proven backup."
		if k.Newer > 0 {
			p.Lead = "Yes, with " + plural(int(k.Newer), "entry", "entries") + " newer than the last proven backup."
		}
	}
	if k.Trouble != "" {
		p.Lead = k.Trouble
	}
	p.Check = "No full check was made since the program started."
	if !k.Checked.IsZero() {
		p.Check = "The whole record was checked " + ago(now, k.Checked) + "."
	}
	if !p.AuditOK {
		p.Lead = "No. The check found something wrong."
	}
	p.Drill = "No restore was ever tried. Try one: it changes nothing."
	if k.Drilled {
		p.Drill = ago(now, k.Drill.At) + ": " + k.Drill.Words
		p.Drill = strings.ToUpper(p.Drill[:1]) + p.Drill[1:]
	}
	p.Free = "The system does not say how much room is left."
	if k.FreeOf {
		p.Free = megabytes(k.Free) + " are free on this disk."
	}
	p.Braid = braid(now, k.Devices)
	p.Knots = showKnots(day, k.Knots)
	return nil
}

// proven says which backup was last proven.
func (s *site) proven(ctx context.Context) (string, bool) {
	if s.o.Proven != nil {
		if w, ok := s.o.Proven(ctx); ok {
			return w, true
		}
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.backed, s.backed != ""
}

// backup makes a backup now.
func (s *site) backup(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) {
			words, err := s.o.Backup(r.Context())
			if err != nil {
				return done{}, fmt.Errorf("making a backup: %w", err)
			}
			s.mu.Lock()
			s.backed = words
			s.mu.Unlock()
			return done{words: "Backup made and proven: " + words, back: "/safe"}, nil
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

// export sends everything as one zip file.
func (s *site) export(w http.ResponseWriter, r *http.Request) {
	if r.Method == http.MethodHead {
		exportHead(w, s)
		return
	}
	out := &lazyBody{w: w, begin: func() { exportHead(w, s) }}
	err := s.o.Export(r.Context(), out)
	if err == nil {
		out.start()
		return
	}
	if !out.begun {
		s.fail(w, r, fmt.Errorf("exporting: %w", err))
		return
	}
	panic(http.ErrAbortHandler) // the browser must see that the file is not whole
}

func exportHead(w http.ResponseWriter, s *site) {
	h := w.Header()
	h.Set("Content-Type", "application/zip")
	h.Set("Content-Disposition", "attachment; filename=\"garden-"+url.PathEscape(s.o.Now().Format("2006-01-02"))+".zip\"")
	h.Set("Cache-Control", "no-store")
}

// lazyBody sends its headers with the first bytes, so that an error before
// them can still be said in words. The first bytes are held back a little.
type lazyBody struct {
	w     http.ResponseWriter
	begin func()
	begun bool
	held  bytes.Buffer
}

// heldMost is how much is held back before the first byte is sent.
const heldMost = 1 << 20

func (l *lazyBody) Write(b []byte) (int, error) {
	if l.begun {
		return l.w.Write(b)
	}
	l.held.Write(b)
	if l.held.Len() > heldMost {
		l.start()
	}
	return len(b), nil
}

// start sends what was held.
func (l *lazyBody) start() {
	if l.begun {
		return
	}
	l.begun = true
	l.begin()
	l.held.WriteTo(l.w)
}
