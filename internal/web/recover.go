package web

import (
	"context"
	"fmt"
	"io"
	"net/http"
	"time"

	"bedweek/internal/ledger"
)

// RecoverOptions are what the pages of a record that does not open need.
type RecoverOptions struct {
	Hosts     []string
	Now       func() time.Time
	Why       string // what was found, in words
	Backups   func() []ledger.Proof
	WouldLose func(ctx context.Context, file string) (ledger.Loss, error)
	Restore   func(ctx context.Context, file string) error
	Read      func(ctx context.Context, file string, w io.Writer) error // a backup as an export
	Copy      func(ctx context.Context, w io.Writer) error              // the record's files as they lie
}

// Recover serves the pages of a record that does not open: what happened, and
// three choices. Nothing is changed until one is taken.
func Recover(o RecoverOptions) (http.Handler, error) {
	s, err := bareSite(o.Hosts, o.Now)
	if err != nil {
		return nil, fmt.Errorf("making the pages: %w", err)
	}
	m := http.NewServeMux()
	m.HandleFunc("GET /assets/{name}", s.serveAsset)
	m.HandleFunc("POST /restore", func(w http.ResponseWriter, r *http.Request) {
		err := readForm(r)
		file := r.PostForm.Get("backup")
		if err == nil && !cleanName(file) {
			err = ErrNotThere
		}
		if err == nil {
			err = o.Restore(r.Context(), file)
		}
		if err != nil {
			s.fail(w, r, err)
			return
		}
		http.Redirect(w, r, "/", http.StatusSeeOther)
	})
	m.HandleFunc("GET /copy", func(w http.ResponseWriter, r *http.Request) {
		s.sendZip(w, r, "record-as-it-lies", func(out io.Writer) error { return o.Copy(r.Context(), out) })
	})
	m.HandleFunc("GET /read", func(w http.ResponseWriter, r *http.Request) {
		file := r.URL.Query().Get("backup")
		if !cleanName(file) {
			s.fail(w, r, ErrNotThere)
			return
		}
		s.sendZip(w, r, "garden-from-backup", func(out io.Writer) error { return o.Read(r.Context(), file, out) })
	})
	m.HandleFunc("GET /{$}", func(w http.ResponseWriter, r *http.Request) {
		p := &DamagedPage{Frame: s.bare("The record does not open", "damaged"), Why: o.Why, Form: ledger.NewID()}
		p.Bare = true
		all := o.Backups()
		for i := len(all) - 1; i >= 0 && len(p.Copies) < 5; i-- {
			c := CopyChoice{File: all[i].File, Words: all[i].Words(), Newer: "How many entries are newer is not known."}
			if loss, err := o.WouldLose(r.Context(), all[i].File); err != nil {
				c.Newer, c.Bad = "It does not prove any more: "+err.Error(), true
			} else if loss.Count >= 0 {
				c.Newer = plural(int(loss.Count), "entry is", "entries are") + " newer than it. Phones still hold those they sent in the last 60 days."
			}
			p.Copies = append(p.Copies, c)
		}
		s.draw(w, r, http.StatusServiceUnavailable, p)
	})
	m.HandleFunc("/", func(w http.ResponseWriter, r *http.Request) {
		if r.Method != http.MethodGet && r.Method != http.MethodHead {
			s.fail(w, r, ledger.ErrDamaged)
			return
		}
		http.Redirect(w, r, "/", http.StatusSeeOther)
	})
	return s.guard(m), nil
}

// DamagedPage says what happened to a record, and offers three choices.
type DamagedPage struct {
	Frame
	Why    string
	Copies []CopyChoice
	Form   string
}

// CopyChoice is one backup to go back to.
type CopyChoice struct {
	File, Words, Newer string
	Bad                bool
}

// bareSite is a site without a garden.
func bareSite(hosts []string, now func() time.Time) (*site, error) {
	a, err := loadAssets(uiFiles)
	if err != nil {
		return nil, err
	}
	p, err := loadPages(uiFiles)
	if err != nil {
		return nil, err
	}
	return &site{o: Options{Now: now}, hosts: hostSet(hosts), pages: p, assets: a, sent: newSentForms(sentKept)}, nil
}

// Wait serves one page that says what is going on and looks again by itself.
func Wait(hosts []string, now func() time.Time, words string) (http.Handler, error) {
	s, err := bareSite(hosts, now)
	if err != nil {
		return nil, fmt.Errorf("making the pages: %w", err)
	}
	m := http.NewServeMux()
	m.HandleFunc("GET /assets/{name}", s.serveAsset)
	m.HandleFunc("/", func(w http.ResponseWriter, r *http.Request) {
		p := &TroublePage{Frame: s.bare("One moment", "trouble"), Words: words, Next: "This page looks again by itself every few seconds."}
		p.Bare = true
		w.Header().Set("Refresh", "3")
		w.Header().Set("Retry-After", "5")
		s.draw(w, r, http.StatusServiceUnavailable, p)
	})
	return s.guard(m), nil
}

// sendZip sends a zip, or says in words why there is none.
func (s *site) sendZip(w http.ResponseWriter, r *http.Request, name string, write func(io.Writer) error) {
	out := &lazyBody{w: w, begin: func() {
		w.Header().Set("Content-Type", "application/zip")
		w.Header().Set("Content-Disposition", `attachment; filename="`+name+`.zip"`)
	}}
	if err := write(out); err != nil {
		if out.begun {
			panic(http.ErrAbortHandler) // the browser must see that the file is not whole
		}
		s.fail(w, r, err)
		return
	}
	out.start()
}
