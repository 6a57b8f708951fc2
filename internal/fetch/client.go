package fetch

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strconv"
	"sync"
	"time"
)

// Options of a Client. The zero value asks the real services and keeps answers
// in memory only.
type Options struct {
	Dir     string // folder answers are kept in; "" = memory only
	Agent   string // User-Agent, with a way to reach whoever runs this
	Now     func() time.Time
	Meteo   string // base addresses; "" = the real ones
	Archive string
	Met     string
	// AllowPrivate lets tests use a server on this machine. Never set it
	// otherwise.
	AllowPrivate bool
	// Wait is how long one request may take; 0 = 10 s.
	Wait time.Duration
}

// Client asks weather services. It is safe for use by several goroutines;
// requests go one at a time.
type Client struct {
	o    Options
	http *http.Client

	mu    sync.Mutex
	kept  map[string]kept
	quiet map[string]pause // by host
}

// pause is how long a host is left alone.
type pause struct {
	until time.Time
	fails int
	why   string
}

// kept is an answer as it came.
type kept struct {
	URL, ETag, LastModified   string
	Fetched, Checked, Expires time.Time
	Body                      []byte
}

// Base addresses of the services.
const (
	meteoBase   = "https://api.open-meteo.com"
	archiveBase = "https://archive-api.open-meteo.com"
	metBase     = "https://api.met.no"
)

// DefaultAgent names the program to the services.
const DefaultAgent = "bedweek/1 (a household's garden planner, run at home)"

// New returns a client.
func New(o Options) *Client {
	if o.Now == nil {
		o.Now = time.Now
	}
	for _, d := range []struct {
		to *string
		or string
	}{{&o.Agent, DefaultAgent}, {&o.Meteo, meteoBase}, {&o.Archive, archiveBase}, {&o.Met, metBase}} {
		if *d.to == "" {
			*d.to = d.or
		}
	}
	c := &Client{o: o, http: newHTTP(o.AllowPrivate), kept: map[string]kept{}, quiet: map[string]pause{}}
	if o.Wait > 0 {
		c.http.Timeout = o.Wait
	}
	return c
}

// Times between requests when a service does not say.
const (
	freshFor   = time.Hour
	firstPause = time.Minute
	mostPause  = 6 * time.Hour
	shutPause  = 24 * time.Hour // after a refusal
)

// errNothing is said when there is neither an answer nor an older one.
var errNothing = errors.New("no answer, and none kept from before")

// get returns an answer's body and when it was last known good. trouble says
// why it is an older one; it is nil when the answer is current.
func (c *Client) get(ctx context.Context, address string) (body []byte, good time.Time, trouble, err error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	u, err := url.Parse(address)
	if err != nil {
		return nil, time.Time{}, nil, fmt.Errorf("reading the service's address: %w", err)
	}
	now := c.o.Now()
	have, ok := c.recall(address)
	if ok && now.Before(have.Expires) {
		return have.Body, have.Checked, nil, nil
	}
	p := c.quiet[u.Host]
	if now.Before(p.until) {
		trouble = fmt.Errorf("%s is left alone until %s: %s", u.Host, p.until.UTC().Format("2 January 15:04 UTC"), p.why)
	} else {
		var fresh kept
		if fresh, trouble = c.ask(ctx, u, have, now); trouble == nil {
			delete(c.quiet, u.Host)
			c.keep(fresh)
			return fresh.Body, fresh.Checked, nil, nil
		}
	}
	if !ok {
		return nil, time.Time{}, trouble, fmt.Errorf("asking %s: %w: %w", u.Host, errNothing, trouble)
	}
	return have.Body, have.Checked, trouble, nil
}

// ask makes one request.
func (c *Client) ask(ctx context.Context, u *url.URL, have kept, now time.Time) (kept, error) {
	r, err := http.NewRequestWithContext(ctx, http.MethodGet, u.String(), nil)
	if err != nil {
		return kept{}, err
	}
	r.Header.Set("User-Agent", c.o.Agent)
	r.Header.Set("Accept", "application/json")
	if have.ETag != "" {
		r.Header.Set("If-None-Match", have.ETag)
	}
	if have.LastModified != "" {
		r.Header.Set("If-Modified-Since", have.LastModified)
	}
	a, err := c.http.Do(r)
	if err != nil {
		if ctx.Err() == nil {
			c.pauseFor(u.Host, now, 0, "it could not be reached")
		}
		var far *url.Error
		if errors.As(err, &far) {
			err = far.Err // without the address and the place in it
		}
		return kept{}, fmt.Errorf("it could not be reached: %w", err)
	}
	defer a.Body.Close()
	fresh := kept{URL: u.String(), ETag: a.Header.Get("ETag"), LastModified: a.Header.Get("Last-Modified"), Fetched: now, Checked: now, Expires: expires(a.Header, now)}
	switch {
	case a.StatusCode == http.StatusNotModified && have.Body != nil:
		have.Checked, have.Expires = now, fresh.Expires
		return have, nil
	case a.StatusCode == http.StatusOK, a.StatusCode == http.StatusNonAuthoritativeInfo:
	case a.StatusCode == http.StatusTooManyRequests, a.StatusCode == http.StatusServiceUnavailable:
		c.pauseFor(u.Host, now, retryAfter(a.Header, now), "it asked us to wait")
		return kept{}, fmt.Errorf("it asked us to wait (%d)", a.StatusCode)
	case a.StatusCode == http.StatusForbidden, a.StatusCode == http.StatusUnauthorized:
		c.pauseFor(u.Host, now, shutPause, "it refused us")
		return kept{}, fmt.Errorf("it refused us (%d)", a.StatusCode)
	default:
		c.pauseFor(u.Host, now, 0, fmt.Sprintf("it answered %d", a.StatusCode))
		return kept{}, fmt.Errorf("it answered %d%s", a.StatusCode, reason(a.Body))
	}
	fresh.Body, err = io.ReadAll(io.LimitReader(a.Body, mostBytes+1))
	if err == nil && len(fresh.Body) > mostBytes {
		err = fmt.Errorf("its answer is larger than %d bytes", mostBytes)
	}
	if err == nil && !json.Valid(fresh.Body) {
		err = errors.New("its answer is cut off, or no JSON")
	}
	if err != nil {
		c.pauseFor(u.Host, now, 0, "its answer could not be read")
		return kept{}, err
	}
	return fresh, nil
}

// reason is what a service says is wrong, when it says so.
func reason(r io.Reader) string {
	var e struct{ Reason string }
	b, _ := io.ReadAll(io.LimitReader(r, 4096))
	if json.Unmarshal(b, &e) != nil || e.Reason == "" {
		return ""
	}
	words := []rune(e.Reason)
	return ": " + string(words[:min(len(words), 200)])
}

// pauseFor leaves a host alone: as long as it asked, else twice as long each
// time it fails.
func (c *Client) pauseFor(host string, now time.Time, asked time.Duration, why string) {
	p := c.quiet[host]
	p.fails++
	wait := min(mostPause, firstPause<<min(p.fails-1, 10))
	if asked > 0 {
		wait = min(max(wait, asked), 7*24*time.Hour)
	}
	p.until, p.why = now.Add(wait), why
	c.quiet[host] = p
}

// expires is how long an answer stands, between a minute and a day.
func expires(h http.Header, now time.Time) time.Time {
	at := now.Add(freshFor)
	if t, err := http.ParseTime(h.Get("Expires")); err == nil {
		at = t
	}
	if at.Before(now.Add(firstPause)) {
		at = now.Add(firstPause)
	}
	if most := now.Add(24 * time.Hour); at.After(most) {
		at = most
	}
	return at
}

// retryAfter reads the seconds or the date a service asks for.
func retryAfter(h http.Header, now time.Time) time.Duration {
	v := h.Get("Retry-After")
	if n, err := strconv.Atoi(v); err == nil && n > 0 {
		return time.Duration(min(n, 7*86400)) * time.Second
	}
	if t, err := http.ParseTime(v); err == nil {
		return t.Sub(now)
	}
	return 0
}

// path is where an answer is kept.
func (c *Client) path(address string) string {
	sum := sha256.Sum256([]byte(address))
	return filepath.Join(c.o.Dir, hex.EncodeToString(sum[:12])+".json")
}

// recall finds an answer kept before. One that cannot be read counts as none.
func (c *Client) recall(address string) (kept, bool) {
	if k, ok := c.kept[address]; ok {
		return k, true
	}
	if c.o.Dir == "" {
		return kept{}, false
	}
	b, err := os.ReadFile(c.path(address))
	var k kept
	if err != nil || json.Unmarshal(b, &k) != nil || k.URL != address || len(k.Body) == 0 {
		return kept{}, false
	}
	c.kept[address] = k
	return k, true
}

// keep writes an answer down. Failing to is no fault: it is asked again later.
func (c *Client) keep(k kept) {
	c.kept[k.URL] = k
	if c.o.Dir == "" {
		return
	}
	b, err := json.Marshal(k)
	if err != nil || os.MkdirAll(c.o.Dir, 0o700) != nil {
		return
	}
	part := c.path(k.URL) + ".part"
	if os.WriteFile(part, b, 0o600) == nil {
		os.Rename(part, c.path(k.URL))
	}
}

// forget drops an answer that made no sense, so that it is asked for again once
// the service has been left alone for a while.
func (c *Client) forget(address, why string) {
	c.mu.Lock()
	defer c.mu.Unlock()
	delete(c.kept, address)
	if c.o.Dir != "" {
		os.Remove(c.path(address))
	}
	if u, err := url.Parse(address); err == nil {
		c.pauseFor(u.Host, c.o.Now(), 0, why)
	}
}
