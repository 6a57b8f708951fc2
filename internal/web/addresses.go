package web

import "fmt"

// Address is one address the pages answer to, as a pattern of net/http.
type Address struct {
	Path   string
	Reads  bool // takes GET and HEAD
	Writes bool // takes POST
}

// Addresses lists every address that pages with these options answer to, so
// that a check of all of them cannot miss a new one.
func Addresses(o Options) ([]Address, error) {
	s, err := newSite(o)
	if err != nil {
		return nil, fmt.Errorf("listing the addresses: %w", err)
	}
	var out []Address
	for _, rt := range s.routes() {
		out = append(out, Address{Path: rt.path, Reads: rt.get != nil, Writes: rt.post != nil})
	}
	return out, nil
}
