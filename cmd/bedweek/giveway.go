package main

import (
	"context"
	"net/http"
	"os"
	"runtime"
	"runtime/debug"
	"sync"
	"sync/atomic"
	"time"
)

// courtesy is how long one answer may hold up the planning behind it. It then
// plans for a turn before it gives way again, so that many requests slow a plan
// to a fifth and never stop it.
const (
	courtesy = 400 * time.Millisecond
	turn     = courtesy / 4
)

// manners let the planning behind the pages rest at its checkpoints while a
// request is being answered. The same work is done, only later: the plan found
// is the same.
type manners struct {
	planners  int // processors that planning may use
	answering atomic.Int32
	until     atomic.Int64 // nanoseconds since began: no rest before
	began     time.Time
}

func newManners() *manners { return &manners{planners: runtime.GOMAXPROCS(0), began: time.Now()} }

// makeRoom gives those who answer a thread of their own beside those that
// plan, so that the system lets them in at once. Without it an answer waits for
// a planner's turn to end, some ten milliseconds at each step of it. Memory is
// cleared sooner than a command that soon ends would have it.
func (m *manners) makeRoom() {
	if m == nil {
		return
	}
	runtime.GOMAXPROCS(m.planners + 1)
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(spareShare)
	}
}

// spareShare is how much memory may lie unused until it is cleared, in parts of
// 100 of what is in use. Half as much as usual: the program stays for months,
// and the plan searched meanwhile leaves much behind.
const spareShare = 50

// workers is how many processors planning may use.
func (m *manners) workers() int {
	if m == nil {
		return runtime.GOMAXPROCS(0)
	}
	return m.planners
}

// door counts the requests under way, each for a courtesy's length at most: an
// upload or a page kept open holds nothing up.
func (m *manners) door(next http.Handler) http.Handler {
	if m == nil {
		return next
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		m.answering.Add(1)
		var once sync.Once
		leave := func() { once.Do(func() { m.answering.Add(-1) }) }
		t := time.AfterFunc(courtesy, leave)
		defer t.Stop()
		defer leave()
		next.ServeHTTP(w, r)
	})
}

// rest waits while somebody is being answered, a courtesy at most, or until
// gone is closed.
func (m *manners) rest(gone <-chan struct{}) {
	since := time.Since(m.began)
	if m.answering.Load() == 0 || int64(since) < m.until.Load() {
		return
	}
	t := time.NewTicker(2 * time.Millisecond)
	defer t.Stop()
	for m.answering.Load() > 0 {
		select {
		case <-gone:
			return
		case <-t.C:
		}
		if now := time.Since(m.began); now-since >= courtesy {
			m.until.Store(int64(now + turn))
			return
		}
	}
}

type mannersKey struct{}

// with carries the manners to the planning started with ctx.
func (m *manners) with(ctx context.Context) context.Context {
	return context.WithValue(ctx, mannersKey{}, m)
}

// patient is a context whose question "shall I stop?" first gives way.
type patient struct {
	context.Context
	m *manners
}

// mannered returns ctx giving way whenever it is asked whether to stop; as it
// is, without manners.
func mannered(ctx context.Context) context.Context {
	if m, _ := ctx.Value(mannersKey{}).(*manners); m != nil {
		return patient{ctx, m}
	}
	return ctx
}

func (p patient) Err() error {
	p.m.rest(p.Done())
	return p.Context.Err()
}
