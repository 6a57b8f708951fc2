package gate

import (
	"context"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/hex"
	"fmt"
	"net"
	"net/http"
	"net/url"
	"os"
	"strings"
	"sync"
	"time"

	"golang.org/x/time/rate"
)

// Options are what a gate needs.
type Options struct {
	Dir    string           // where phones, authority and certificate are kept
	Now    func() time.Time // the clock; must be given
	Hosts  []string         // names and addresses phones may use
	Plain  string           // "192.168.1.7:8751", shown to phones; "" = no plain listener
	Secure string           // the same for HTTPS, "" = none
	Own    bool             // the certificate is the owner's own: nothing to trust

	// Name puts a device's name into the context the pages read.
	Name func(ctx context.Context, device string) context.Context
}

// Sizes of secrets, in digits of 5 bits.
const (
	tokenDigits = 26 // 130 bits; OWASP asks for at least 64
	linkDigits  = 26
	codeDigits  = 8 // 40 bits
	codeLife    = 5 * time.Minute
	codeTries   = 5
)

// Gate is the one door. Its methods may be called from many goroutines.
type Gate struct {
	o     Options
	hosts map[string]bool
	slow  *rate.Limiter // wrong and right codes together

	mu      sync.Mutex
	devices []Device
	code    code
}

// code is the one pairing under way; the zero code matches nothing.
type code struct {
	short, link string
	until       time.Time
	tries       int
}

// Open reads what was kept in o.Dir.
func Open(o Options) (*Gate, error) {
	if o.Now == nil {
		panic("gate: Options.Now is nil")
	}
	if err := os.MkdirAll(o.Dir, 0o700); err != nil {
		return nil, fmt.Errorf("opening the gate: %w", err)
	}
	d, err := loadDevices(o.Dir)
	if err != nil {
		return nil, fmt.Errorf("opening the gate: %w", err)
	}
	g := &Gate{o: o, devices: d, hosts: map[string]bool{}, slow: rate.NewLimiter(rate.Every(time.Second), 10)}
	for _, h := range o.Hosts {
		g.hosts[hostOf(h)] = true
	}
	return g, nil
}

// hostOf brings a host's name into one form, without its port.
func hostOf(h string) string {
	h = strings.ToLower(h)
	if name, port, err := net.SplitHostPort(h); err == nil && port != "" && strings.Trim(port, "0123456789") == "" {
		h = name
	}
	return strings.Trim(h, "[]")
}

// knows reports whether a request names us. A name with a trailing dot, a
// decimal address or a port that is no number is not ours.
func (g *Gate) knows(host string) bool {
	if strings.Count(host, ":") == 1 {
		_, port, _ := strings.Cut(host, ":")
		if port == "" || strings.Trim(port, "0123456789") != "" {
			return false
		}
	}
	return g.hosts[hostOf(host)]
}

// newCode begins a pairing; the one before it ends.
func (g *Gate) newCode() code {
	g.mu.Lock()
	defer g.mu.Unlock()
	g.code = code{short: secret(codeDigits), link: secret(linkDigits), until: g.o.Now().Add(codeLife)}
	return g.code
}

// What came of a try to pair.
type tried int

const (
	paired tried = iota
	wrongCode
	noCode // none is open, or it is used up
	tooFast
)

// pair tries a code, or the link's secret, and gives a new phone its token.
func (g *Gate) pair(said, name string) (token string, d Device, t tried, err error) {
	said = strings.ToUpper(strings.NewReplacer(" ", "", "-", "", "o", "0", "O", "0", "i", "1", "I", "1", "l", "1", "L", "1").Replace(said))
	long := len(said) == linkDigits
	if !long && !g.slow.AllowN(g.o.Now(), 1) {
		return "", Device{}, tooFast, nil
	}
	g.mu.Lock()
	defer g.mu.Unlock()
	c := &g.code
	if c.short == "" || g.o.Now().After(c.until) {
		return "", Device{}, noCode, nil
	}
	match := long && same(said, c.link)
	if !long {
		if c.tries >= codeTries {
			return "", Device{}, noCode, nil
		}
		c.tries++
		match = same(said, c.short)
	}
	if !match {
		return "", Device{}, wrongCode, nil
	}
	token = secret(tokenDigits)
	now := g.o.Now().UTC()
	d = Device{ID: secret(10), Name: g.freeName(cleanName(name)), Token: hashed(token), Made: now, Seen: now, Waiting: -1}
	g.devices = append(g.devices, d)
	if err := g.save(); err != nil {
		g.devices = g.devices[:len(g.devices)-1]
		return "", Device{}, wrongCode, err
	}
	g.code = code{}
	return token, d, paired, nil
}

// same compares two secrets without telling where they part.
func same(a, b string) bool {
	x, y := sha256.Sum256([]byte(a)), sha256.Sum256([]byte(b))
	return subtle.ConstantTimeCompare(x[:], y[:]) == 1
}

// rename gives a phone another name; revoke shuts it out.
func (g *Gate) rename(id, name string) error {
	return g.change(id, func(d *Device) {
		if n := cleanName(name); n != "" && n != d.Name {
			d.Name = g.freeName(n)
		}
	})
}

func (g *Gate) revoke(id string) error {
	return g.change(id, func(d *Device) {
		if d.Revoked.IsZero() {
			d.Revoked = g.o.Now().UTC()
		}
	})
}

func (g *Gate) change(id string, f func(*Device)) error {
	g.mu.Lock()
	defer g.mu.Unlock()
	for i := range g.devices {
		if g.devices[i].ID == id {
			f(&g.devices[i])
			return g.save()
		}
	}
	return os.ErrNotExist
}

// fromHere reports whether a writing request comes from our own page.
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

// Fingerprint is the SHA-256 of a certificate in pairs, as phones show it.
func Fingerprint(der []byte) string {
	sum := sha256.Sum256(der)
	h := strings.ToUpper(hex.EncodeToString(sum[:]))
	var b strings.Builder
	for i := 0; i < len(h); i += 2 {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(h[i : i+2])
	}
	return b.String()
}
