package gate

import (
	"context"
	"crypto/tls"
	"crypto/x509"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

type clock struct{ t time.Time }

func (c *clock) now() time.Time { return c.t }

type nameKey struct{}

// setup is a gate with a page behind it that counts its visitors.
func setup(t testing.TB) (g *Gate, home, console http.Handler, inside *int, c *clock) {
	t.Helper()
	c = &clock{time.Date(2015, 4, 6, 9, 0, 0, 0, time.UTC)}
	g, err := Open(Options{Dir: t.TempDir(), Now: c.now, Hosts: []string{"192.168.1.7", "localhost"}, Plain: "192.168.1.7:8751", Secure: "192.168.1.7:8752",
		Name: func(ctx context.Context, n string) context.Context { return context.WithValue(ctx, nameKey{}, n) }})
	if err != nil {
		t.Fatal(err)
	}
	inside = new(int)
	next := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		*inside++
		fmt.Fprintf(w, "the garden, seen by %v", r.Context().Value(nameKey{}))
	})
	return g, g.Home(next, []byte("der")), g.Console(next, []byte("der")), inside, c
}

func do(h http.Handler, method, target string, form url.Values, change func(*http.Request)) *httptest.ResponseRecorder {
	r := httptest.NewRequest(method, "http://192.168.1.7:8751"+target, strings.NewReader(form.Encode()))
	if form != nil {
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		r.Header.Set("Origin", "http://192.168.1.7:8751")
	}
	if change != nil {
		change(r)
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w
}

func withCookie(v string) func(*http.Request) {
	return func(r *http.Request) { r.AddCookie(&http.Cookie{Name: plainCookie, Value: v}) }
}

// pairOne pairs a phone through the pages and returns its token.
func pairOne(t testing.TB, g *Gate, home http.Handler, name string) string {
	t.Helper()
	c := g.newCode()
	w := do(home, "POST", "/pair", url.Values{"code": {c.short}, "name": {name}}, nil)
	if w.Code != http.StatusSeeOther || len(w.Result().Cookies()) != 1 {
		t.Fatalf("pairing: %d %s", w.Code, w.Body)
	}
	k := w.Result().Cookies()[0]
	if !k.HttpOnly || k.SameSite != http.SameSiteLaxMode || len(k.Value) != tokenDigits {
		t.Errorf("the cookie %+v", k)
	}
	return k.Value
}

// TestNobodyUninvited: trust plan (vi), no pairing.
func TestNobodyUninvited(t *testing.T) {
	g, home, _, inside, _ := setup(t)
	token := pairOne(t, g, home, "Ann's phone")
	gone := pairOne(t, g, home, "lost phone")
	if err := g.revoke(g.Devices()[1].ID); err != nil {
		t.Fatal(err)
	}
	if w := do(home, "GET", "/", nil, withCookie(token)); w.Body.String() != "the garden, seen by Ann's phone" || *inside != 1 {
		t.Fatalf("a paired phone got %d %s", w.Code, w.Body)
	}
	*inside = 0
	bodies := map[string]int{}
	n := 0
	for _, path := range []string{"/", "/lines", "/keep", "/table", "/space/bed", "/space/bed/note/picked", "/plan", "/plan.ics", "/safe", "/backup", "/restore", "/export", "/photo/x.jpg",
		"/sync", "/worker.js", "/offline", "/assets/base.css", "/phones", "/phones/new", "/phones/revoke", "/nothing", "/pair/", "//pair", "/health/x", "/trust/x"} {
		for _, method := range []string{"GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"} {
			for _, cookie := range []string{"", "AAAAAAAAAAAAAAAAAAAAAAAAAA", gone, token[:25] + "0", hashed(token)[:26], strings.Repeat("A", 5000)} {
				if cookie == token {
					continue
				}
				w := do(home, method, path, nil, func(r *http.Request) {
					r.Header.Set("Origin", "http://192.168.1.7:8751")
					if cookie != "" {
						withCookie(cookie)(r)
					}
				})
				n++
				if w.Code != http.StatusUnauthorized {
					t.Errorf("%s %s: %d", method, path, w.Code)
				}
				bodies[w.Body.String()]++
			}
		}
	}
	if *inside != 0 || len(bodies) != 1 {
		t.Errorf("%d of %d requests came in; %d different answers, want one", *inside, n, len(bodies))
	}
	for b := range bodies {
		if strings.Contains(b, "Ann") || strings.Contains(strings.ToLower(b), "version") {
			t.Errorf("the answer tells too much: %s", b)
		}
	}
	t.Logf("%d requests without a pairing, all answered with the pairing page", n)
}

// TestGuessing: trust plan (vi), guessing. 10,000 codes, none succeeds; the
// owner's own phone is not barred meanwhile and pairs right after.
func TestGuessing(t *testing.T) {
	g, home, _, _, c := setup(t)
	token := pairOne(t, g, home, "mine")
	g.newCode()
	seen := map[int]int{}
	for range 10000 {
		w := do(home, "POST", "/pair", url.Values{"code": {secret(codeDigits)}}, nil)
		seen[w.Code]++
		c.t = c.t.Add(10 * time.Millisecond)
		if w.Code == http.StatusSeeOther {
			t.Fatal("a guess came in")
		}
	}
	if seen[http.StatusTooManyRequests] < 9000 {
		t.Errorf("hardly slowed: %v", seen)
	}
	if w := do(home, "GET", "/", nil, withCookie(token)); w.Code != 200 {
		t.Errorf("the owner's phone was shut out: %d", w.Code)
	}
	// the right short code is used up by five tries; the scan code is not
	code := g.newCode()
	c.t = c.t.Add(time.Minute)
	for i := range codeTries {
		if _, _, got, _ := g.pair("00000000", ""); got != wrongCode {
			t.Errorf("try %d: %v", i+1, got)
		}
	}
	if _, _, got, _ := g.pair(code.short, ""); got != noCode {
		t.Errorf("the sixth try, with the right code: %v", got)
	}
	if _, _, got, err := g.pair(code.link, "scanned"); got != paired || err != nil {
		t.Errorf("the scan code after five wrong tries: %v, %v", got, err)
	}
	if _, _, got, _ := g.pair(code.link, "again"); got != noCode {
		t.Errorf("the scan code a second time: %v", got)
	}
	code = g.newCode()
	c.t = c.t.Add(codeLife + time.Second)
	if _, _, got, _ := g.pair(code.short, ""); got != noCode {
		t.Errorf("a code of five minutes ago: %v", got)
	}
	code = g.newCode()
	if _, _, got, _ := g.pair(strings.ToLower(code.short[:4])+" "+code.short[4:], "typed by hand"); got != paired {
		t.Errorf("typed with a space and small letters: %v", got)
	}
}

// TestTokensAreHashedAtRest: who reads the file cannot come in with it.
func TestTokensAreHashedAtRest(t *testing.T) {
	g, home, _, inside, c := setup(t)
	token := pairOne(t, g, home, "mine")
	b, err := os.ReadFile(filepath.Join(g.o.Dir, devicesName))
	if err != nil || strings.Contains(string(b), token) || !strings.Contains(string(b), hashed(token)) {
		t.Errorf("the file of phones: %v\n%s", err, b)
	}
	if st, err := os.Stat(filepath.Join(g.o.Dir, devicesName)); err != nil || st.Mode().Perm() != 0o600 {
		t.Errorf("others may read it: %v", st.Mode())
	}
	again, err := Open(Options{Dir: g.o.Dir, Now: c.now, Hosts: g.o.Hosts, Name: g.o.Name})
	if err != nil {
		t.Fatal(err)
	}
	h := again.Home(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { *inside++ }), nil)
	if do(h, "GET", "/", nil, withCookie(token)); *inside != 1 {
		t.Error("a restart forgot the phone")
	}
}

// TestRebindingAndForeignSites: trust plan (vi), rebinding and CSRF.
func TestRebindingAndForeignSites(t *testing.T) {
	g, home, console, inside, _ := setup(t)
	token := pairOne(t, g, home, "mine")
	for _, host := range []string{"evil.example", "evil.example:8751", "192.168.1.7.", "192.168.1.7.evil.example", "3232235783", "192.168.1.7:x", "192.168.1.7:", "", "192.168.1.8", "[::1]"} {
		for name, h := range map[string]http.Handler{"home": home, "console": console} {
			path := "/"
			if name == "console" {
				path = "/phones" // the rest is guarded behind
			}
			w := do(h, "GET", path, nil, func(r *http.Request) {
				r.Host = host
				r.Header.Set("Origin", "http://"+host)
				r.Header.Set("X-Forwarded-Host", "192.168.1.7:8751")
				withCookie(token)(r)
			})
			if w.Code != http.StatusMisdirectedRequest {
				t.Errorf("%s as %q: %d", name, host, w.Code)
			}
		}
	}
	form := url.Values{"id": {g.Devices()[0].ID}}
	for _, origin := range []string{"http://evil.example", "null", "http://192.168.1.7:1", ""} {
		for _, path := range []string{"/phones/new", "/phones/revoke", "/phones/name"} {
			w := do(console, "POST", path, form, func(r *http.Request) {
				if r.Header.Set("Origin", origin); origin == "" {
					r.Header.Del("Origin")
				}
			})
			if w.Code != http.StatusForbidden {
				t.Errorf("POST %s from %q: %d", path, origin, w.Code)
			}
		}
		if w := do(home, "POST", "/pair", url.Values{"code": {"x"}}, func(r *http.Request) { r.Header.Set("Sec-Fetch-Site", "cross-site") }); w.Code != http.StatusForbidden {
			t.Errorf("pairing from another site: %d", w.Code)
		}
	}
	if *inside != 0 || !g.Devices()[0].Revoked.IsZero() || g.code.short != "" {
		t.Error("something got through")
	}
	if w := do(home, "POST", "/phones/revoke", form, withCookie(token)); w.Code != http.StatusForbidden || !g.Devices()[0].Revoked.IsZero() {
		t.Errorf("a phone shut out a phone: %d", w.Code)
	}
	if w := do(console, "POST", "/phones/revoke", form, nil); w.Code != 200 || g.Devices()[0].Revoked.IsZero() {
		t.Errorf("the console could not shut it out: %d", w.Code)
	}
}

func TestNamesAreOnlyNames(t *testing.T) {
	g, home, console, _, _ := setup(t)
	pairOne(t, g, home, "<script>alert(1)</script>\u202e")
	pairOne(t, g, home, "home")
	pairOne(t, g, home, strings.Repeat("ä", 300))
	var names []string
	for _, d := range g.Devices() {
		names = append(names, d.Name)
	}
	if names[0] != "<script>alert(1)</script>" || names[1] != "home 2" || names[2] != strings.Repeat("ä", 40) {
		t.Errorf("names %q", names)
	}
	w := do(console, "POST", "/phones/new", url.Values{}, nil)
	if strings.Contains(w.Body.String(), "<script>") || !strings.Contains(w.Body.String(), "<svg") {
		t.Error("a name was drawn as markup, or the scan code is missing")
	}
}

// TestAuthority: HTTPS works for who trusts the authority, and the authority
// cannot vouch for a name outside the home.
func TestAuthority(t *testing.T) {
	dir := t.TempDir()
	now := time.Now
	a, err := OpenAuthority(dir, now)
	if err != nil {
		t.Fatal(err)
	}
	cert, err := a.Certificate([]string{"127.0.0.1", "localhost"})
	if err != nil {
		t.Fatal(err)
	}
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	_, home, _, _, _ := setup(t)
	srv := &http.Server{Handler: home, TLSConfig: &tls.Config{Certificates: []tls.Certificate{*cert}}, ErrorLog: nil}
	go srv.ServeTLS(l, "", "")
	defer srv.Close()
	pool := x509.NewCertPool()
	pool.AddCert(a.cert)
	get := func(roots *x509.CertPool) error {
		c := &http.Client{Transport: &http.Transport{TLSClientConfig: &tls.Config{RootCAs: roots}}, Timeout: 10 * time.Second}
		r, err := http.NewRequest("GET", "https://"+l.Addr().String()+"/trust/check", nil)
		if err != nil {
			return err
		}
		r.Host = "192.168.1.7:8752"
		w, err := c.Do(r)
		if err != nil {
			return err
		}
		defer w.Body.Close()
		if b, _ := io.ReadAll(w.Body); !strings.Contains(string(b), "It worked") {
			return fmt.Errorf("answered %d", w.StatusCode)
		}
		return nil
	}
	if err := get(pool); err != nil {
		t.Errorf("trusted: %v", err)
	}
	if err := get(x509.NewCertPool()); err == nil {
		t.Error("not trusted, and let in all the same")
	}
	again, err := OpenAuthority(dir, now)
	if err != nil || string(again.DER) != string(a.DER) {
		t.Errorf("a restart made another authority: %v", err)
	}
	same, err := again.Certificate([]string{"localhost", "127.0.0.1"})
	if err != nil || string(same.Certificate[0]) != string(cert.Certificate[0]) {
		t.Errorf("a restart made another certificate: %v", err)
	}
	for _, host := range []string{"bank.example", "8.8.8.8"} {
		bad, err := a.Certificate([]string{host})
		if err != nil {
			continue
		}
		if _, err := bad.Leaf.Verify(x509.VerifyOptions{Roots: pool, DNSName: host}); err == nil {
			t.Errorf("the authority vouches for %s", host)
		}
	}
	for _, name := range []string{"authority.pem", "server.pem"} {
		if st, err := os.Stat(filepath.Join(dir, name)); err != nil || st.Mode().Perm() != 0o600 {
			t.Errorf("others may read %s: %v", name, err)
		}
	}
}

// TestWhatIsHeardOutlivesTheProgram: a change in what a phone holds is written
// down at once; that all is home, once an hour.
func TestWhatIsHeardOutlivesTheProgram(t *testing.T) {
	g, home, _, _, c := setup(t)
	pairOne(t, g, home, "Ann's phone")
	again := func() Device {
		t.Helper()
		o, err := Open(g.o)
		if err != nil || len(o.Devices()) != 1 {
			t.Fatalf("%v, %v", o.Devices(), err)
		}
		return o.Devices()[0]
	}
	begun := c.t
	g.Hear("Ann's phone", 0, time.UnixMilli(0))
	if d := again(); d.Waiting != 0 || !d.Heard.Equal(begun) {
		t.Errorf("after the first word: %+v", d)
	}
	c.t = begun.Add(time.Minute)
	g.Hear("Ann's phone", 0, time.UnixMilli(7))
	if d, now := again(), g.Devices()[0]; !d.Heard.Equal(begun) || !now.Heard.Equal(c.t) {
		t.Errorf("all is home once more: written %v, told %v", d.Heard, now.Heard)
	}
	g.Hear("Ann's phone", 3, begun)
	if d := again(); d.Waiting != 3 || !d.Oldest.Equal(begun) || !d.Heard.Equal(c.t) {
		t.Errorf("three wait: %+v", d)
	}
	g.Hear("Ann's phone", 0, begun)
	if d := again(); d.Waiting != 0 {
		t.Errorf("they came home: %+v", d)
	}
	c.t = c.t.Add(2 * time.Hour)
	g.Hear("Ann's phone", 0, begun)
	if d := again(); !d.Heard.Equal(c.t) {
		t.Errorf("two hours later: %+v", d)
	}
}
