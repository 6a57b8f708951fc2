package web

import (
	"net"
	"net/http"
	"net/url"
	"strings"
)

// maxBody is the most a form may hold, in bytes: a note of 1,000 letters with
// every letter escaped is under 10,000.
const maxBody = 64 << 10

// policy lets pages load from this program only, with nothing inline.
const policy = "default-src 'self'; base-uri 'none'; object-src 'none'; form-action 'self'; frame-ancestors 'none'"

// guard wraps every page. Order matters: headers, then the host's name, then
// where a write comes from, then the size.
func (s *site) guard(next http.Handler) http.Handler {
	cross := http.NewCrossOriginProtection()
	cross.SetDenyHandler(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		s.fail(w, r, errForeign)
	}))
	inner := cross.Handler(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if !safeMethod(r.Method) && !fromHere(r) {
			s.fail(w, r, errForeign)
			return
		}
		r.Body = http.MaxBytesReader(w, r.Body, max(bodyLimit(r.URL.Path), keepingLimit(r.URL.Path)))
		next.ServeHTTP(w, r)
	}))
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h := w.Header()
		h.Set("Content-Security-Policy", policy)
		h.Set("X-Content-Type-Options", "nosniff")
		h.Set("X-Frame-Options", "DENY")
		h.Set("Cross-Origin-Opener-Policy", "same-origin")
		h.Set("Cross-Origin-Resource-Policy", "same-origin")
		// Not "no-referrer": under it a browser sends "Origin: null" with our
		// own forms, and over plain http on a home network it sends no
		// Sec-Fetch-Site either, so every save would be refused. "same-origin"
		// tells other sites just as little.
		h.Set("Referrer-Policy", "same-origin")
		h.Set("Cache-Control", "no-cache")
		if !s.hostKnown(r.Host) {
			s.fail(w, r, errHost)
			return
		}
		inner.ServeHTTP(w, r)
	})
}

// bodyLimit is the most a request to an address may hold, in bytes: files may
// be given to a few.
func bodyLimit(path string) int64 {
	switch path {
	case "/entry/weather", "/entry/file", "/entry/accept", "/entry/list", "/entry/list/save":
		return maxUpload + maxBody
	case "/entry/space":
		return photoMost + maxBody
	}
	return maxBody
}

// safeMethod reports whether a method only reads.
func safeMethod(m string) bool {
	return m == http.MethodGet || m == http.MethodHead || m == http.MethodOptions
}

// fromHere reports whether a browser says that a write comes from our own
// page. The standard protection lets a request pass that says nothing at all;
// we do not, since every browser of the last years says one or the other.
func fromHere(r *http.Request) bool {
	switch r.Header.Get("Sec-Fetch-Site") {
	case "same-origin":
		return true
	case "":
		o, err := url.Parse(r.Header.Get("Origin"))
		return err == nil && o.Host != "" && strings.EqualFold(o.Host, r.Host)
	}
	return false
}

// hostKnown reports whether the request names us. Forwarded names are not
// looked at.
func (s *site) hostKnown(host string) bool {
	host = strings.ToLower(host)
	if s.hosts[host] {
		return true
	}
	name := host
	if h, port, err := net.SplitHostPort(host); err == nil {
		if !digits(port) {
			return false
		}
		name = h
		if strings.Contains(h, ":") {
			name = "[" + h + "]"
		}
	}
	return s.hosts[name]
}

// digits reports whether p is 1 to 5 digits.
func digits(p string) bool {
	if len(p) < 1 || len(p) > 5 {
		return false
	}
	return strings.Trim(p, "0123456789") == ""
}

// hostSet makes the allow-list.
func hostSet(hosts []string) map[string]bool {
	if len(hosts) == 0 {
		hosts = []string{"localhost", "127.0.0.1", "[::1]"}
	}
	set := make(map[string]bool, len(hosts))
	for _, h := range hosts {
		h = strings.ToLower(strings.TrimSpace(h))
		if h == "" {
			continue
		}
		if ip := net.ParseIP(h); ip != nil && strings.Contains(h, ":") {
			h = "[" + h + "]"
		}
		set[h] = true
	}
	return set
}
