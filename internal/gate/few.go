package gate

import (
	"net"
	"sync"
)

// Most open connections at once: from one address, and from all. A phone opens
// six to one host. Past that a connection is closed before a byte is read, so
// that a neighbour who holds many open cannot use up the files this program
// may open, and with them the record's.
const (
	fewFromOne = 32
	fewFromAll = 256
)

// Few wraps a listener of the home network so that no one holds too many
// connections open. The machine's own listener is not wrapped: it can always
// be reached.
func Few(l net.Listener) net.Listener {
	return &few{Listener: l, open: map[string]int{}}
}

type few struct {
	net.Listener
	mu   sync.Mutex
	open map[string]int // by address
	all  int
}

// Accept waits for a connection that is not one too many.
func (f *few) Accept() (net.Conn, error) {
	for {
		c, err := f.Listener.Accept()
		if err != nil {
			return nil, err
		}
		from := c.RemoteAddr().String()
		if host, _, err := net.SplitHostPort(from); err == nil {
			from = host
		}
		if f.enter(from) {
			return &counted{Conn: c, leave: sync.OnceFunc(func() { f.exit(from) })}, nil
		}
		c.Close()
	}
}

func (f *few) enter(from string) bool {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.open[from] >= fewFromOne || f.all >= fewFromAll {
		return false
	}
	f.open[from]++
	f.all++
	return true
}

func (f *few) exit(from string) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if f.open[from]--; f.open[from] <= 0 {
		delete(f.open, from)
	}
	f.all--
}

// counted gives its place back when it closes.
type counted struct {
	net.Conn
	leave func()
}

func (c *counted) Close() error {
	err := c.Conn.Close()
	c.leave()
	return err
}
