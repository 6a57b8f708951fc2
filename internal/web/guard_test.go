package web

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strings"
	"testing"
)

// changes counts everything that was written.
func (g *fakeGarden) changes() int { return len(g.events) + len(g.voided) + g.backups }

// TestHosts refuses every name but ours before any handler runs, so that a
// name made to point here cannot read the pages (DNS rebinding).
func TestHosts(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	asked := 0
	o := g.options()
	o.Hosts = []string{"garden.home", "192.168.1.5:8080", "[::1]"}
	day := o.Day
	o.Day = func(ctx ctxT) (*dayT, error) { asked++; return day(ctx) }
	h, err := New(o)
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		host string
		want int
	}{
		{"garden.home", 200}, {"garden.home:8080", 200}, {"GARDEN.home:1", 200}, {"192.168.1.5:8080", 200}, {"[::1]:8080", 200}, {"[::1]", 200},
		{"evil.example", 421}, {"evil.example:8080", 421}, {"garden.home.", 421}, {"garden.home.evil.example", 421}, {"192.168.1.5", 421}, {"192.168.1.5:81", 421},
		{"3232235781:8080", 421}, {"garden.home:8080:1", 421}, {"garden.home:x", 421}, {"", 421}, {"localhost", 421}, {"127.0.0.1", 421}, {"a@garden.home", 421},
	} {
		asked = 0
		r := httptest.NewRequest("GET", "/", nil)
		r.Host = tt.host
		r.Header.Set("X-Forwarded-Host", "garden.home")
		r.Header.Set("Forwarded", "host=garden.home")
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		if w.Code != tt.want {
			t.Errorf("Host %q: %d, want %d", tt.host, w.Code, tt.want)
		}
		if tt.want == 421 && (asked > 0 || strings.Contains(w.Body.String(), "Invented yard") || strings.Contains(w.Body.String(), "/lines")) {
			t.Errorf("Host %q was told something of the garden", tt.host)
		}
	}
}

// TestCrossSiteWrites refuses writes from elsewhere and leaves nothing behind:
// every writing route × where from × kind of body (trust.md 4 vi, CSRF row).
func TestCrossSiteWrites(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	h := handler(t, g)
	good := goodForm("strip.plant.garlic")
	for _, path := range writing {
		for _, tt := range []struct{ site, origin string }{
			{"cross-site", "http://evil.example"}, {"same-site", "http://other.127.0.0.1"}, {"none", "null"}, {"cross-site", ""},
			{"", "http://evil.example"}, {"", "null"}, {"", "http://127.0.0.1:81"}, {"", ""}, {"", "127.0.0.1"}, {"none", ""}, {"nonsense", "http://127.0.0.1"},
		} {
			for _, kind := range []string{"application/x-www-form-urlencoded", "text/plain", "application/json", "multipart/form-data; boundary=x"} {
				r := httptest.NewRequest("POST", "http://127.0.0.1"+path, strings.NewReader(good.Encode()))
				r.Header.Set("Content-Type", kind)
				if tt.site != "" {
					r.Header.Set("Sec-Fetch-Site", tt.site)
				}
				if tt.origin != "" {
					r.Header.Set("Origin", tt.origin)
				}
				w := httptest.NewRecorder()
				h.ServeHTTP(w, r)
				if w.Code != http.StatusForbidden {
					t.Errorf("POST %s site %q origin %q %s: %d, want 403", path, tt.site, tt.origin, kind, w.Code)
				}
			}
		}
	}
	if g.changes() != 0 {
		t.Errorf("%d changes were made", g.changes())
	}
	// An older browser says only where from; that is enough when it is here.
	r := httptest.NewRequest("POST", "http://127.0.0.1/task", strings.NewReader(good.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("Origin", "http://127.0.0.1")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	if w.Code != http.StatusSeeOther || g.changes() != 1 {
		t.Errorf("own form by Origin alone: %d and %d changes, want 303 and 1", w.Code, g.changes())
	}
}

// writing lists the routes that write.
var writing = []string{"/task", "/look", "/undo", "/backup", "/space/gate-bed/note/sown"}

// goodForm is a form that would be saved.
func goodForm(task string) url.Values {
	return url.Values{"form": {"0123456789ABCDEFGHJKMNPQRS"}, "task": {task}, "answer": {"did"}, "measure": {""}, "event": {"0123456789ABCDEFGHJKMNPQRT"}}
}

// TestRoutesByMethod asks every route in every way: no fault of ours, reading
// changes nothing, and what is not taken says what is.
func TestRoutesByMethod(t *testing.T) {
	g := &fakeGarden{day: richDay()}
	s, err := newSite(g.options())
	if err != nil {
		t.Fatal(err)
	}
	h := s.guard(s.mux())
	paths := strings.NewReplacer("{$}", "", "{id}", "gate-bed", "{kind}", "sown", "{name}", "nothing.css")
	for _, rt := range s.routes() {
		for _, m := range []string{"GET", "HEAD", "OPTIONS", "PUT", "PATCH", "DELETE", "POST", "TRACE", "PROPFIND"} {
			w := ask(h, m, paths.Replace(rt.path), url.Values{})
			taken := rt.get != nil && (m == "GET" || m == "HEAD") || rt.post != nil && m == "POST"
			if w.Code >= 500 {
				t.Errorf("%s %s: %d", m, rt.path, w.Code)
			}
			if !taken && w.Code != http.StatusMethodNotAllowed {
				t.Errorf("%s %s: %d, want 405", m, rt.path, w.Code)
			}
			if w.Code == http.StatusMethodNotAllowed && w.Header().Get("Allow") != rt.allow() {
				t.Errorf("%s %s: Allow %q, want %q", m, rt.path, w.Header().Get("Allow"), rt.allow())
			}
			for k, want := range map[string]string{"Content-Security-Policy": policy, "X-Content-Type-Options": "nosniff", "Referrer-Policy": "same-origin"} {
				if w.Header().Get(k) != want {
					t.Errorf("%s %s: %s is %q", m, rt.path, k, w.Header().Get(k))
				}
			}
			if strings.Contains(w.Header().Get("Content-Type"), "html") {
				parse(t, w.Body.String())
			}
		}
	}
	if g.changes() != 0 {
		t.Errorf("%d changes by empty requests", g.changes())
	}
	for _, p := range []string{"/lines/", "/space/", "/space/gate-bed/", "/space/gate-bed/note/", "/space/gate-bed/note/eaten", "/space/nowhere", "/assets/", "/assets/../ui/base/base.css", "/favicon.ico", "/.git/config", "/%00", "/space/%2e%2e%2f"} {
		if w := ask(h, "GET", p, nil); w.Code != 404 && w.Code != 301 && w.Code != 307 {
			t.Errorf("GET %s: %d, want 404", p, w.Code)
		}
	}
}

// TestPolicyAllowsNothingInline reads the policy for what would open it.
func TestPolicyAllowsNothingInline(t *testing.T) {
	for _, bad := range []string{"unsafe", "*", "http:", "https:", "data:", "blob:"} {
		if strings.Contains(policy, bad) {
			t.Errorf("the policy holds %q", bad)
		}
	}
	for _, want := range []string{"default-src 'self'", "frame-ancestors 'none'", "form-action 'self'", "base-uri 'none'"} {
		if !strings.Contains(policy, want) {
			t.Errorf("the policy lacks %q", want)
		}
	}
}
