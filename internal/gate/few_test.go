package gate

import (
	"io"
	"net"
	"testing"
	"time"
)

// TestFew: one address gets so many connections and no more; what it closes it
// gets back; another address is not barred meanwhile.
func TestFew(t *testing.T) {
	plain, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	l := Few(plain)
	defer l.Close()
	go func() {
		for {
			c, err := l.Accept()
			if err != nil {
				return
			}
			c.Write([]byte("x"))
			go func() { io.Copy(io.Discard, c); c.Close() }() // until the other side hangs up
		}
	}()
	dial := func(from string) (net.Conn, bool) {
		c, err := (&net.Dialer{LocalAddr: &net.TCPAddr{IP: net.ParseIP(from)}}).Dial("tcp", l.Addr().String())
		if err != nil {
			t.Skipf("no second loopback address here (%v): whether another is served was not looked at", err)
		}
		c.SetReadDeadline(time.Now().Add(time.Minute)) // only so that a fault ends
		_, err = c.Read(make([]byte, 1))
		return c, err == nil
	}
	var held []net.Conn
	for i := range fewFromOne {
		c, ok := dial("127.0.0.1")
		if !ok {
			t.Fatalf("connection %d was refused", i+1)
		}
		held = append(held, c)
	}
	if _, ok := dial("127.0.0.1"); ok {
		t.Error("one too many was let in")
	}
	if c, ok := dial("127.0.0.2"); !ok {
		t.Error("another address was barred")
	} else {
		c.Close()
	}
	held[0].Close()
	again := false
	for range 500 { // the other side needs a moment to notice
		if c, ok := dial("127.0.0.1"); ok {
			c.Close()
			again = true
			break
		}
		time.Sleep(10 * time.Millisecond)
	}
	if !again {
		t.Error("a place given back is not used again")
	}
	for _, c := range held[1:] {
		c.Close()
	}
}
