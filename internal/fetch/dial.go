package fetch

import (
	"errors"
	"fmt"
	"net"
	"net/http"
	"net/netip"
	"syscall"
	"time"
)

// Limits of one request.
const (
	mostBytes = 1 << 20
	mostTime  = 10 * time.Second
	mostHops  = 3
)

// errInward is said of an address on this machine or the home network.
var errInward = errors.New("the address leads to this machine or the home network")

// inward reports whether an address is not on the open internet. IPv6 forms
// that carry an IPv4 address are unwrapped first.
func inward(a netip.Addr) bool {
	a = a.Unmap().WithZone("")
	if a.Is6() {
		b := a.As16()
		switch {
		case netip.MustParsePrefix("64:ff9b::/96").Contains(a): // translated
			return inward(netip.AddrFrom4([4]byte(b[12:])))
		case netip.MustParsePrefix("2002::/16").Contains(a): // 6to4
			return inward(netip.AddrFrom4([4]byte(b[2:6])))
		case netip.MustParsePrefix("::/96").Contains(a), netip.MustParsePrefix("64:ff9b:1::/48").Contains(a),
			netip.MustParsePrefix("fec0::/10").Contains(a), netip.MustParsePrefix("2001::/32").Contains(a):
			return true
		}
	}
	if !a.IsGlobalUnicast() || a.IsPrivate() {
		return true
	}
	for _, p := range []string{"0.0.0.0/8", "100.64.0.0/10", "192.0.0.0/24", "198.18.0.0/15", "240.0.0.0/4"} {
		if netip.MustParsePrefix(p).Contains(a) {
			return true
		}
	}
	return false
}

// outside lets a connection be made only to the open internet. It is called
// with the address that is dialled, after any look-up.
func outside(_, address string, _ syscall.RawConn) error {
	at, err := netip.ParseAddrPort(address)
	if err != nil {
		return fmt.Errorf("reading the address %q: %w", address, err)
	}
	if inward(at.Addr()) {
		return errInward
	}
	return nil
}

// newHTTP makes the client all requests go through.
func newHTTP(allowPrivate bool) *http.Client {
	d := &net.Dialer{Timeout: mostTime}
	if !allowPrivate {
		d.Control = outside
	}
	return &http.Client{
		Timeout:   mostTime,
		Transport: &http.Transport{Proxy: nil, DialContext: d.DialContext, TLSHandshakeTimeout: mostTime, MaxResponseHeaderBytes: 64 << 10, MaxIdleConns: 2, IdleConnTimeout: 30 * time.Second, ForceAttemptHTTP2: true},
		CheckRedirect: func(r *http.Request, via []*http.Request) error {
			if len(via) >= mostHops {
				return errors.New("it was sent on too often")
			}
			if r.URL.Scheme != "https" && !allowPrivate {
				return errors.New("it was sent on to an address without encryption")
			}
			return nil
		},
	}
}
