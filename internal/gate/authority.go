package gate

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/tls"
	"crypto/x509"
	"crypto/x509/pkix"
	"encoding/pem"
	"errors"
	"fmt"
	"math/big"
	"net"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"time"
)

// Lives of certificates. Phones refuse server certificates of over 825 days
// under an authority put in by hand (from memory); ours live a year.
const (
	authorityLife = 10 * 366 * 24 * time.Hour
	serverLife    = 366 * 24 * time.Hour
	renewBefore   = 60 * 24 * time.Hour
)

// Authority is the private authority of one household.
type Authority struct {
	DER  []byte // its certificate, what phones are asked to trust
	cert *x509.Certificate
	key  *ecdsa.PrivateKey
	dir  string
	now  func() time.Time
}

// OpenAuthority reads the authority kept in dir, or makes one. It can only
// vouch for home names and addresses, so that its key, if stolen, cannot
// stand in for a bank.
func OpenAuthority(dir string, now func() time.Time) (*Authority, error) {
	a := &Authority{dir: dir, now: now}
	cert, key, err := readPair(dir, "authority")
	switch {
	case err == nil && now().Before(cert.NotAfter.Add(-renewBefore)):
		a.DER, a.cert, a.key = cert.Raw, cert, key
		return a, nil
	case err != nil && !errors.Is(err, os.ErrNotExist):
		return nil, fmt.Errorf("reading the authority: %w", err)
	}
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, fmt.Errorf("making the authority: %w", err)
	}
	a.key, err = ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		return nil, fmt.Errorf("making the authority: %w", err)
	}
	host, _ := os.Hostname()
	tmpl := &x509.Certificate{
		SerialNumber: serial(), Subject: pkix.Name{CommonName: "Garden at home (" + host + ")", Organization: []string{"Bedweek, this household only"}},
		NotBefore: now().Add(-24 * time.Hour), NotAfter: now().Add(authorityLife),
		IsCA: true, BasicConstraintsValid: true, MaxPathLenZero: true, KeyUsage: x509.KeyUsageCertSign | x509.KeyUsageCRLSign,
		PermittedDNSDomainsCritical: true, PermittedDNSDomains: []string{"local", "home.arpa", "internal", "lan", "home", "localhost"},
		PermittedIPRanges: homeRanges(),
	}
	if host != "" {
		tmpl.PermittedDNSDomains = append(tmpl.PermittedDNSDomains, host)
	}
	a.DER, err = x509.CreateCertificate(rand.Reader, tmpl, tmpl, &a.key.PublicKey, a.key)
	if err != nil {
		return nil, fmt.Errorf("making the authority: %w", err)
	}
	if a.cert, err = x509.ParseCertificate(a.DER); err != nil {
		return nil, fmt.Errorf("making the authority: %w", err)
	}
	return a, writePair(dir, "authority", a.DER, a.key)
}

// homeRanges are the addresses of homes. [RFC 1918, RFC 3927, RFC 4193]
func homeRanges() []*net.IPNet {
	var out []*net.IPNet
	for _, s := range []string{"127.0.0.0/8", "10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16", "169.254.0.0/16", "::1/128", "fc00::/7", "fe80::/10"} {
		_, n, err := net.ParseCIDR(s)
		if err != nil {
			panic("gate: a home range is not one")
		}
		out = append(out, n)
	}
	return out
}

// HomeAddress reports whether an address is one of a home.
func HomeAddress(ip net.IP) bool {
	return slices.ContainsFunc(homeRanges(), func(n *net.IPNet) bool { return n.Contains(ip) })
}

func serial() *big.Int {
	b := make([]byte, 16)
	rand.Read(b)
	b[0] &= 0x7f
	return new(big.Int).SetBytes(b)
}

// Certificate returns the server's certificate for names and addresses. It is
// made anew when they change or it nears its end.
func (a *Authority) Certificate(hosts []string) (*tls.Certificate, error) {
	var names []string
	var ips []net.IP
	sorted := append([]string(nil), hosts...)
	sort.Strings(sorted)
	for _, h := range slices.Compact(sorted) {
		if ip := net.ParseIP(h); ip != nil {
			ips = append(ips, ip)
		} else {
			names = append(names, h)
		}
	}
	if cert, key, err := readPair(a.dir, "server"); err == nil && a.now().Before(cert.NotAfter.Add(-renewBefore)) &&
		cert.CheckSignatureFrom(a.cert) == nil && covers(cert, names, ips) {
		return &tls.Certificate{Certificate: [][]byte{cert.Raw, a.DER}, PrivateKey: key, Leaf: cert}, nil
	}
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		return nil, fmt.Errorf("making the certificate: %w", err)
	}
	tmpl := &x509.Certificate{
		SerialNumber: serial(), Subject: pkix.Name{CommonName: "Garden at home"}, DNSNames: names, IPAddresses: ips,
		NotBefore: a.now().Add(-24 * time.Hour), NotAfter: a.now().Add(serverLife),
		KeyUsage: x509.KeyUsageDigitalSignature, ExtKeyUsage: []x509.ExtKeyUsage{x509.ExtKeyUsageServerAuth}, BasicConstraintsValid: true,
	}
	der, err := x509.CreateCertificate(rand.Reader, tmpl, a.cert, &key.PublicKey, a.key)
	if err != nil {
		return nil, fmt.Errorf("making the certificate: %w", err)
	}
	leaf, err := x509.ParseCertificate(der)
	if err != nil {
		return nil, fmt.Errorf("making the certificate: %w", err)
	}
	if err := writePair(a.dir, "server", der, key); err != nil {
		return nil, err
	}
	return &tls.Certificate{Certificate: [][]byte{der, a.DER}, PrivateKey: key, Leaf: leaf}, nil
}

func covers(c *x509.Certificate, names []string, ips []net.IP) bool {
	for _, n := range names {
		if !slices.Contains(c.DNSNames, n) {
			return false
		}
	}
	for _, ip := range ips {
		if !slices.ContainsFunc(c.IPAddresses, ip.Equal) {
			return false
		}
	}
	return true
}

func readPair(dir, name string) (*x509.Certificate, *ecdsa.PrivateKey, error) {
	b, err := os.ReadFile(filepath.Join(dir, name+".pem"))
	if err != nil {
		return nil, nil, err
	}
	var cert *x509.Certificate
	var key *ecdsa.PrivateKey
	for {
		p, rest := pem.Decode(b)
		if p == nil {
			break
		}
		switch p.Type {
		case "CERTIFICATE":
			if cert, err = x509.ParseCertificate(p.Bytes); err != nil {
				return nil, nil, err
			}
		case "EC PRIVATE KEY":
			if key, err = x509.ParseECPrivateKey(p.Bytes); err != nil {
				return nil, nil, err
			}
		}
		b = rest
	}
	if cert == nil || key == nil || !key.PublicKey.Equal(cert.PublicKey) {
		return nil, nil, fmt.Errorf("%s.pem is damaged", name)
	}
	return cert, key, nil
}

func writePair(dir, name string, der []byte, key *ecdsa.PrivateKey) error {
	k, err := x509.MarshalECPrivateKey(key)
	if err != nil {
		return fmt.Errorf("writing %s.pem: %w", name, err)
	}
	b := pem.EncodeToMemory(&pem.Block{Type: "CERTIFICATE", Bytes: der})
	b = append(b, pem.EncodeToMemory(&pem.Block{Type: "EC PRIVATE KEY", Bytes: k})...)
	return writeFile(filepath.Join(dir, name+".pem"), b)
}
