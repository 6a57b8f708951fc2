package gate

import (
	"bytes"
	"embed"
	"fmt"
	"html/template"
	"net/http"
	"strings"

	"rsc.io/qr"
)

//go:embed ui
var ui embed.FS

// policy is that of the pages behind the gate.
const policy = "default-src 'self'; base-uri 'none'; object-src 'none'; form-action 'self'; frame-ancestors 'none'"

// cookies hold the token: one for plain addresses, one that only HTTPS sees.
const (
	plainCookie  = "bedweek"
	secureCookie = "__Host-bedweek"
)

// face is what a page shows.
type face struct {
	Title  string
	Words  string // what went wrong, or what to know
	Code   string // typed or from a link
	Name   string
	Secure bool
	Own    bool
	Print  string // fingerprint of the authority
	Host   string
	HTTPS  string // address to check with
	Plain  string
	Pairs  []Device
	Short  string
	Link   string
	QR     template.HTML // svg made here, of numbers only
}

// Home is the door of the home network: pairing, trust, and for paired phones
// what lies behind.
func (g *Gate) Home(next http.Handler, authority []byte) http.Handler {
	return g.guarded(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch r.URL.Path {
		case "/health":
			if read(r) {
				w.Header().Set("Content-Type", "text/plain; charset=utf-8")
				fmt.Fprintln(w, "ok")
				return
			}
		case "/gate.css":
			if read(r) {
				sheet(w)
				return
			}
		case "/authority.crt":
			if read(r) && len(authority) > 0 {
				w.Header().Set("Content-Type", "application/x-x509-ca-cert")
				w.Header().Set("Content-Disposition", `attachment; filename="garden-at-home.crt"`)
				w.Write(authority)
				return
			}
		case "/trust":
			if read(r) {
				g.draw(w, http.StatusOK, "trust.html", g.trust(r, authority))
				return
			}
		case "/trust/check":
			if read(r) {
				g.draw(w, http.StatusOK, "check.html", g.trust(r, authority))
				return
			}
		case "/pair":
			g.pairing(w, r)
			return
		}
		d, ok := g.device(r)
		if !ok {
			g.askPair(w, r, http.StatusUnauthorized, "")
			return
		}
		if strings.HasPrefix(r.URL.Path, "/phones") {
			g.draw(w, http.StatusForbidden, "only.html", face{Title: "Only on the machine itself"})
			return
		}
		next.ServeHTTP(w, r.WithContext(g.o.Name(r.Context(), d.Name)))
	}))
}

// Console is the door of the machine itself: everything, and the phones.
func (g *Gate) Console(next http.Handler, authority []byte) http.Handler {
	console := g.guarded(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { g.phones(w, r, authority) }))
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch r.URL.Path {
		case "/phones", "/phones/new", "/phones/name", "/phones/revoke", "/gate.css", "/trust", "/trust/check", "/authority.crt":
			console.ServeHTTP(w, r)
		default:
			next.ServeHTTP(w, r)
		}
	})
}

func read(r *http.Request) bool { return r.Method == http.MethodGet || r.Method == http.MethodHead }

// guarded checks the host, the origin of writes and the size, in that order.
func (g *Gate) guarded(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("X-Frame-Options", "DENY")
		h.Set("Referrer-Policy", "same-origin")
		h.Set("Cache-Control", "no-store")
		if !g.knows(r.Host) {
			http.Error(w, "This program does not answer to that name.", http.StatusMisdirectedRequest)
			return
		}
		if !read(r) && r.Method != http.MethodOptions && !fromHere(r) {
			http.Error(w, "Sent by another site. Nothing was changed.", http.StatusForbidden)
			return
		}
		next.ServeHTTP(w, r)
	})
}

// device finds the paired phone a request comes from.
func (g *Gate) device(r *http.Request) (Device, bool) {
	name := plainCookie
	if r.TLS != nil {
		name = secureCookie
	}
	c, err := r.Cookie(name)
	if err != nil {
		return Device{}, false
	}
	return g.byToken(c.Value)
}

// pairing shows the form, or tries a code.
func (g *Gate) pairing(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodPost {
		if read(r) {
			g.askPair(w, r, http.StatusOK, "")
		} else {
			g.askPair(w, r, http.StatusUnauthorized, "")
		}
		return
	}
	r.Body = http.MaxBytesReader(w, r.Body, 4<<10)
	if err := r.ParseForm(); err != nil {
		g.askPair(w, r, http.StatusBadRequest, "The form did not arrive whole. Try again.")
		return
	}
	token, _, t, err := g.pair(r.PostForm.Get("code"), r.PostForm.Get("name"))
	switch {
	case err != nil:
		g.askPair(w, r, http.StatusInsufficientStorage, "The phone could not be kept. Is the disk full?")
	case t == tooFast:
		w.Header().Set("Retry-After", "5")
		g.askPair(w, r, http.StatusTooManyRequests, "Too many tries at once. Wait some seconds, then try again.")
	case t == noCode:
		g.askPair(w, r, http.StatusForbidden, "No code is open now. Make a new one on the machine itself.")
	case t == wrongCode:
		g.askPair(w, r, http.StatusForbidden, "That is not the code. Look again at the machine's screen.")
	default:
		c := &http.Cookie{Name: plainCookie, Value: token, Path: "/", HttpOnly: true, SameSite: http.SameSiteLaxMode, MaxAge: 400 * 24 * 3600}
		if r.TLS != nil {
			c.Name, c.Secure = secureCookie, true
		}
		http.SetCookie(w, c)
		http.Redirect(w, r, "/", http.StatusSeeOther)
	}
}

func (g *Gate) askPair(w http.ResponseWriter, r *http.Request, status int, words string) {
	f := face{Title: "Pair this phone", Words: words, Secure: r.TLS != nil, Own: g.o.Own}
	if r.URL.Path == "/pair" && read(r) {
		f.Code = r.URL.Query().Get("k")
		if len(f.Code) > linkDigits {
			f.Code = ""
		}
	}
	g.draw(w, status, "pair.html", f)
}

func (g *Gate) trust(r *http.Request, authority []byte) face {
	f := face{Title: "Make this phone ready for the far bed", Secure: r.TLS != nil, Own: g.o.Own, HTTPS: g.o.Secure, Plain: g.o.Plain}
	if len(authority) > 0 {
		f.Print = Fingerprint(authority)
	}
	return f
}

// phones is the console's page of phones.
func (g *Gate) phones(w http.ResponseWriter, r *http.Request, authority []byte) {
	f := g.trust(r, authority)
	f.Title = "Phones"
	switch {
	case r.URL.Path == "/gate.css" && read(r):
		sheet(w)
		return
	case r.URL.Path == "/authority.crt" && read(r) && len(authority) > 0:
		w.Header().Set("Content-Type", "application/x-x509-ca-cert")
		w.Write(authority)
		return
	case strings.HasPrefix(r.URL.Path, "/trust") && read(r):
		f.Title = "Make a phone ready for the far bed"
		g.draw(w, http.StatusOK, "trust.html", f)
		return
	case r.URL.Path == "/phones" && read(r):
	case r.Method == http.MethodPost:
		r.Body = http.MaxBytesReader(w, r.Body, 4<<10)
		if err := r.ParseForm(); err != nil {
			http.Error(w, "The form did not arrive whole.", http.StatusBadRequest)
			return
		}
		var err error
		switch r.URL.Path {
		case "/phones/new":
			g.show(&f)
		case "/phones/name":
			err = g.rename(r.PostForm.Get("id"), r.PostForm.Get("name"))
		case "/phones/revoke":
			err = g.revoke(r.PostForm.Get("id"))
		default:
			http.Error(w, "No such way to ask.", http.StatusMethodNotAllowed)
			return
		}
		if err != nil {
			f.Words = "That could not be kept. Look at the list again."
		}
	default:
		http.Error(w, "No such way to ask.", http.StatusMethodNotAllowed)
		return
	}
	f.Pairs = g.Devices()
	g.draw(w, http.StatusOK, "phones.html", f)
}

// show begins a pairing and draws its code.
func (g *Gate) show(f *face) {
	c := g.newCode()
	f.Short = c.short[:4] + " " + c.short[4:]
	base := "https://" + g.o.Secure
	if g.o.Secure == "" {
		base = "http://" + g.o.Plain
	}
	f.Link = base + "/pair"
	f.QR = ScanCode(base + "/pair?k=" + c.link)
}

// ScanCode draws a scan code as one path; text goes in only as black squares.
// Text too long for one gives nothing.
func ScanCode(text string) template.HTML {
	q, err := qr.Encode(text, qr.M)
	if err != nil {
		return ""
	}
	var b strings.Builder
	n := q.Size + 8
	fmt.Fprintf(&b, `<svg class="scan" viewBox="0 0 %d %d" role="img" aria-label="Scan code for the phone's camera"><path fill="#fff" d="M0 0H%dV%dH0z"/><path fill="#000" d="`, n, n, n, n)
	for y := range q.Size {
		for x := range q.Size {
			if q.Black(x, y) {
				fmt.Fprintf(&b, "M%d %dh1v1h-1z", x+4, y+4)
			}
		}
	}
	b.WriteString(`"/></svg>`)
	return template.HTML(b.String())
}

func sheet(w http.ResponseWriter) {
	b, err := ui.ReadFile("ui/gate.css")
	if err != nil {
		http.Error(w, "No sheet.", http.StatusNotFound)
		return
	}
	w.Header().Set("Content-Type", "text/css; charset=utf-8")
	w.Write(b)
}

func (g *Gate) draw(w http.ResponseWriter, status int, name string, f face) {
	t, err := template.ParseFS(ui, "ui/frame.html", "ui/"+name)
	var b bytes.Buffer
	if err == nil {
		err = t.ExecuteTemplate(&b, name, f)
	}
	if err != nil {
		http.Error(w, "Something went wrong. The fault is ours, not yours.", http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.WriteHeader(status)
	w.Write(b.Bytes())
}
