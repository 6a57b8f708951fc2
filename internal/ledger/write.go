package ledger

import (
	"bytes"
	"context"
	"database/sql"
	"errors"
	"fmt"
	"time"
)

// groupLimit is the most entries in one commit, so that one large import does
// not make everybody else wait for long.
const groupLimit = 2000

// request is one call of Append on its way to the writer.
type request struct {
	steps []step
	out   []Event
	err   error
	done  chan struct{}
}

// Append keeps events, all or none, and returns them with their place, their
// instant and their chain value. It returns only after the disk has them. An
// event already here with the same content counts as kept; with another
// content the error is ErrOtherBody. What is wrong with an event is in Faults.
//
// Once events are with the writer, ending ctx changes nothing: the answer is
// what happened to them.
func (l *Ledger) Append(ctx context.Context, events ...Event) ([]Event, error) {
	if len(events) == 0 {
		return nil, nil
	}
	r := &request{done: make(chan struct{})}
	for i, e := range events {
		e, body, err := prepared(e)
		if err != nil && len(events) > 1 {
			return nil, fmt.Errorf("entry %d of %d: %w", i+1, len(events), err)
		}
		if err != nil {
			return nil, err
		}
		r.steps = append(r.steps, step{e, body})
	}
	select {
	case <-l.quit:
		return nil, ErrClosed
	default:
	}
	select {
	case l.requests <- r:
	case <-l.quit:
		return nil, ErrClosed
	case <-ctx.Done():
		return nil, ctx.Err()
	}
	<-r.done
	return r.out, r.err
}

// write is the one writer: it takes what waits, commits it together, answers.
func (l *Ledger) write() {
	defer close(l.ended)
	for {
		select {
		case <-l.quit:
			return
		case r := <-l.requests:
			l.commit(l.gather(r))
		}
	}
}

func (l *Ledger) gather(first *request) []*request {
	group, n := []*request{first}, len(first.steps)
	for n < groupLimit {
		select {
		case r := <-l.requests:
			group = append(group, r)
			n += len(r.steps)
		default:
			return group
		}
	}
	return group
}

// commit writes a group of requests in one transaction and answers each.
func (l *Ledger) commit(group []*request) {
	l.mu.Lock()
	defer l.mu.Unlock()
	answered := false
	err := l.stopped
	if err == nil {
		err = l.transact(context.Background(), group, func() { reply(group, nil); answered = true })
	}
	if !answered {
		reply(group, err)
	}
}

func reply(group []*request, err error) {
	for _, r := range group {
		if err != nil {
			r.out, r.err = nil, err
		}
		close(r.done)
	}
}

// transact is the transaction itself: rows, plantings, commit, mark.
func (l *Ledger) transact(ctx context.Context, group []*request, early func()) error {
	if l.work == nil {
		if err := l.reload(ctx, l.writer); err != nil {
			if passing(err) {
				return fmt.Errorf("replaying the record: %w", err)
			}
			return l.stop(err)
		}
	}
	if _, err := l.writer.ExecContext(ctx, "BEGIN IMMEDIATE"); err != nil {
		return l.undo(err)
	}
	b := batch{l: l, head: l.head, written: l.now().UTC()}
	for _, r := range group {
		if err := b.take(ctx, r); err != nil {
			return l.undo(err)
		}
	}
	if b.added == 0 {
		_, err := l.writer.ExecContext(ctx, "ROLLBACK")
		return err
	}
	if err := b.project(ctx); err != nil {
		return l.undo(err)
	}
	if plantedAckEarly {
		early()
	}
	if _, err := l.writer.ExecContext(ctx, "COMMIT"); err != nil {
		return l.undo(err)
	}
	l.head, l.fresh = b.head, false
	l.tellKept()
	if err := l.last.write(l.head); err != nil {
		return l.stop(err)
	}
	return nil
}

// undo rolls back, and decides whether writing may go on: it may when the
// disk was full or the file was held, and never after another fault.
func (l *Ledger) undo(cause error) error {
	l.work, l.fresh = nil, false
	_, err := l.writer.ExecContext(context.Background(), "ROLLBACK")
	switch {
	case full(cause):
		return fmt.Errorf("%w. Nothing of this was kept. Make room and try again (%v)", ErrNoSpace, cause)
	case passing(cause):
		return fmt.Errorf("the record is held by another program. Nothing of this was kept. Try again: %w", cause)
	case errors.Is(cause, context.Canceled), errors.Is(cause, context.DeadlineExceeded):
		if err == nil {
			return cause
		}
	}
	return l.stop(cause)
}

// stop ends writing for good.
func (l *Ledger) stop(cause error) error {
	if l.stopped == nil {
		l.stopped = fmt.Errorf("%w. The disk or the system answered: %w", ErrStopped, cause)
		close(l.failed)
	}
	return l.stopped
}

// batch is one transaction under way.
type batch struct {
	l       *Ledger
	head    mark
	written time.Time
	added   int
	replay  bool // something reaches back: the state must be made again
}

// take checks a request and writes its new events. What is wrong with the
// request is its own error; the error returned is the transaction's.
func (b *batch) take(ctx context.Context, r *request) error {
	known, fault, err := b.check(ctx, r.steps)
	if err != nil {
		return err
	}
	if fault != nil {
		r.err = fault
		return nil
	}
	r.out = make([]Event, len(r.steps))
	here := map[string]Event{}
	for i, s := range r.steps {
		e, ok := known[i], true
		if e.Seq == 0 {
			e, ok = here[s.ID]
		}
		if !ok {
			if e, err = b.insert(ctx, s); err != nil {
				return err
			}
			here[s.ID] = e
		}
		r.out[i] = e
	}
	return nil
}

// check returns the events of the request that are here already, by place.
func (b *batch) check(ctx context.Context, steps []step) (known map[int]Event, fault, err error) {
	known = map[int]Event{}
	mine := map[string]step{}
	awaited := map[string]bool{}
	for i, s := range steps {
		digest := rowOf(s.Event).contentDigest()
		old, ok, err := b.find(ctx, s.ID)
		if err != nil {
			return nil, nil, err
		}
		if twin, twice := mine[s.ID]; twice && !bytes.Equal(rowOf(twin.Event).contentDigest(), digest) || ok && !bytes.Equal(old.Digest, digest) {
			return nil, fmt.Errorf("entry %s: %w, with other words", s.ID, ErrOtherBody), nil
		}
		if ok {
			known[i] = old
			continue
		}
		mine[s.ID] = s
		if b.l.work.awaited[s.ID] || awaited[s.ID] {
			ring, err := b.ring(ctx, s, mine)
			if err != nil {
				return nil, nil, err
			}
			if ring {
				return nil, Faults{fmt.Sprintf("entry %s answers an entry that answers it", s.ID)}, nil
			}
		}
		for _, id := range s.causes() {
			awaited[id] = true
		}
	}
	return known, nil, nil
}

// ring reports whether s is among the causes of its own causes.
func (b *batch) ring(ctx context.Context, s step, mine map[string]step) (bool, error) {
	seen := map[string]bool{}
	todo := s.causes()
	for len(todo) > 0 {
		id := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if id == s.ID {
			return true, nil
		}
		if seen[id] {
			continue
		}
		seen[id] = true
		next, ok := mine[id]
		if !ok {
			e, here, err := b.find(ctx, id)
			if err != nil {
				return false, err
			}
			if !here {
				continue
			}
			body, err := Decode(e)
			if err != nil {
				continue
			}
			next = step{e, body}
		}
		todo = append(todo, next.causes()...)
	}
	return false, nil
}

// find returns the event with an id.
func (b *batch) find(ctx context.Context, id string) (Event, bool, error) {
	rows, err := b.l.writer.QueryContext(ctx, "SELECT "+eventColumns+" FROM event WHERE id = ?", id)
	if err != nil {
		return Event{}, false, err
	}
	defer rows.Close()
	if !rows.Next() {
		return Event{}, false, rows.Err()
	}
	r, err := scanRow(rows)
	if err != nil {
		return Event{}, false, err
	}
	e, err := r.event()
	return e, err == nil, err
}

const putEvent = `INSERT INTO event (seq, id, parent, device, happened, written, kind, version, body, digest, chain)
	VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`

// insert writes one event at the end of the chain.
func (b *batch) insert(ctx context.Context, s step) (Event, error) {
	s.Seq = b.head.seq + 1
	if s.Written.IsZero() {
		s.Written = b.written
	}
	s.Written = s.Written.UTC()
	r := rowOf(s.Event)
	r.digest = r.contentDigest()
	r.chain = r.chainAfter(b.head.chain)
	s.Digest, s.Chain = r.digest, r.chain
	parent := sql.NullString{String: r.parent, Valid: r.parent != ""}
	if _, err := b.l.writer.ExecContext(ctx, putEvent, r.seq, r.id, parent, r.device, r.happened, r.written,
		r.kind, r.version, r.body, r.digest, r.chain); err != nil {
		return Event{}, fmt.Errorf("writing entry %s: %w", r.id, err)
	}
	b.head = mark{r.seq, r.chain}
	b.added++
	w := b.l.work
	b.replay = b.replay || !w.follows(s)
	w.arrive(light(s))
	if !b.replay {
		w.apply(s)
	}
	return s.Event, nil
}

// project brings the table of plantings up to the entries just written.
func (b *batch) project(ctx context.Context) error {
	l := b.l
	if b.replay {
		// What the table holds is the old state: the running one may be half way.
		was, err := projected(ctx, l.writer)
		if err != nil {
			return err
		}
		l.work = replayedSteps(nil, l.work.steps)
		l.work.differing(was)
	}
	return project(ctx, l.writer, l.work)
}
