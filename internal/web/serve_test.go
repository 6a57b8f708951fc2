package web

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"sync"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// written is one event the pages recorded.
type written struct {
	kind   ledger.Kind
	on     cal.Day
	parent string
	body   any
	form   string
}

// fakeGarden stands in for the program around the pages: it keeps what is
// recorded in memory.
type fakeGarden struct {
	mu      sync.Mutex
	day     *reckon.Day
	events  []written
	voided  []string
	backups int
	err     error // returned by every writing function when set
}

func (g *fakeGarden) options() Options {
	return Options{
		Day: func(context.Context) (*reckon.Day, error) { return g.day, nil },
		Record: func(ctx context.Context, k ledger.Kind, on cal.Day, parent string, body any) (string, error) {
			g.mu.Lock()
			defer g.mu.Unlock()
			if g.err != nil {
				return "", g.err
			}
			g.events = append(g.events, written{k, on, parent, body, FormID(ctx)})
			return FormID(ctx), nil
		},
		Void: func(_ context.Context, e string) error {
			g.mu.Lock()
			defer g.mu.Unlock()
			if g.err != nil {
				return g.err
			}
			g.voided = append(g.voided, e)
			return nil
		},
		Backup: func(context.Context) (string, error) {
			g.mu.Lock()
			defer g.mu.Unlock()
			if g.err != nil {
				return "", g.err
			}
			g.backups++
			return fmt.Sprintf("backup %d, opened again and counted", g.backups), nil
		},
		Audit: func(context.Context) ([]string, bool) { return []string{"Every entry is where it should be."}, true },
		Export: func(_ context.Context, w io.Writer) error {
			_, err := io.Copy(w, bytes.NewBufferString("PK\x05\x06"))
			return err
		},
		Now: func() time.Time { return time.Date(2015, 10, 8, 9, 0, 0, 0, time.UTC) },
	}
}

var serve = flag.String("serve", "", "serve the fixtures on three ports of this loopback address until stopped, for the browser tests")

// TestServeFixture serves the rich, the empty and the hostile day when asked
// with -serve, and prints where. Browser tests start it.
func TestServeFixture(t *testing.T) {
	if *serve == "" {
		t.Skip("no -serve")
	}
	for _, f := range []struct {
		name string
		day  *reckon.Day
	}{{"rich", richDay()}, {"empty", emptyDay()}, {"hostile", hostileDay()}} {
		g := &fakeGarden{day: f.day}
		o := g.options()
		o.Hosts = []string{"127.0.0.1", "garden.test"}
		h, err := New(o)
		if err != nil {
			t.Fatal(err)
		}
		l, err := net.Listen("tcp", *serve+":0")
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(os.Stdout, "serving %s http://%s\n", f.name, l.Addr())
		go http.Serve(l, h)
	}
	io.Copy(io.Discard, os.Stdin) // until the starter closes our input
}
