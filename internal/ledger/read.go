package ledger

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"bedweek/internal/cal"
)

const eventColumns = "seq, id, ifnull(parent, ''), device, happened, written, kind, version, body, digest, chain"

// scan reads the rows after a place in the chain, in order, and checks each
// against its digest and the chain before it. It returns the last place.
func scan(ctx context.Context, db sqlRunner, from mark, each func(row) error) (mark, error) {
	rows, err := db.QueryContext(ctx, "SELECT "+eventColumns+" FROM event WHERE seq > ? ORDER BY seq", from.seq)
	if err != nil {
		return from, err
	}
	defer rows.Close()
	for rows.Next() {
		r, err := scanRow(rows)
		if err != nil {
			return from, err
		}
		if err := r.check(from); err != nil {
			return from, err
		}
		if err := each(r); err != nil {
			return from, err
		}
		from = mark{r.seq, r.chain}
	}
	return from, rows.Err()
}

func scanRow(rows *sql.Rows) (row, error) {
	var r row
	err := rows.Scan(&r.seq, &r.id, &r.parent, &r.device, &r.happened, &r.written, &r.kind, &r.version, &r.body, &r.digest, &r.chain)
	return r, err
}

// errDigest and errChain tell the two ways in which a row can be wrong.
var (
	errDigest = errors.New("its words are not those that were written")
	errChain  = errors.New("it does not follow the entry before it")
)

// check compares r with its digest and with the place before it.
func (r row) check(before mark) error {
	if plantedNoChain {
		return nil
	}
	switch {
	case !bytes.Equal(r.digest, r.contentDigest()):
		return fmt.Errorf("%w: entry %d: %w", ErrDamaged, r.seq, errDigest)
	case r.seq != before.seq+1 || !bytes.Equal(r.chain, r.chainAfter(before.chain)):
		return fmt.Errorf("%w: entry %d: %w", ErrDamaged, r.seq, errChain)
	}
	return nil
}

// event turns columns back into an event.
func (r row) event() (Event, error) {
	day, err := cal.Parse(r.happened)
	if err != nil {
		return Event{}, fmt.Errorf("%w: entry %d: %v", ErrDamaged, r.seq, err)
	}
	written, err := time.Parse(instantLayout, r.written)
	if err != nil {
		return Event{}, fmt.Errorf("%w: entry %d: %v", ErrDamaged, r.seq, err)
	}
	return Event{
		Seq: r.seq, ID: r.id, Parent: r.parent, Device: r.device, Happened: day, Written: written.UTC(),
		Kind: Kind(r.kind), Version: r.version, Body: json.RawMessage(r.body), Digest: r.digest, Chain: r.chain,
	}, nil
}

// readEvents returns the events after a place, checked.
func readEvents(ctx context.Context, db sqlRunner, from mark) ([]Event, mark, error) {
	var n int // read only to make room: how many come is what scan finds
	if err := db.QueryRowContext(ctx, "SELECT count(*) FROM event WHERE seq > ?", from.seq).Scan(&n); err != nil {
		return nil, from, err
	}
	out := make([]Event, 0, n)
	last, err := scan(ctx, db, from, func(r row) error {
		e, err := r.event()
		out = append(out, e)
		return err
	})
	return out, last, err
}

// Events returns every entry in order of writing, each checked against its
// digest and the chain while it is read.
func (l *Ledger) Events(ctx context.Context) ([]Event, error) { return l.Since(ctx, 0) }

// Since returns the entries with a Seq above seq, checked in the same way.
func (l *Ledger) Since(ctx context.Context, seq int64) ([]Event, error) {
	from := mark{0, firstChain()}
	if seq > 0 {
		from.seq = seq
		err := l.readers.QueryRowContext(ctx, "SELECT chain FROM event WHERE seq = ?", seq).Scan(&from.chain)
		if errors.Is(err, sql.ErrNoRows) {
			return nil, nil
		}
		if err != nil {
			return nil, fmt.Errorf("reading entry %d: %w", seq, err)
		}
	}
	events, _, err := readEvents(ctx, l.readers, from)
	if err != nil {
		return nil, fmt.Errorf("reading entries after %d: %w", from.seq, err)
	}
	return events, nil
}

// State returns what all entries amount to. It is kept until the next entry;
// the caller may change the copy's slices and map, but not what a OneOf holds.
func (l *Ledger) State(ctx context.Context) (State, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if err := ctx.Err(); err != nil {
		return State{}, err
	}
	if l.work == nil {
		if err := l.reload(ctx, l.readers); err != nil {
			return State{}, fmt.Errorf("replaying the record: %w", err)
		}
		l.fresh = false
	}
	if !l.fresh {
		l.state, l.fresh = l.work.state(), true
	}
	return l.state.clone(), nil
}

// Head returns the place of the last entry and its chain value: 0 and 32 zero
// bytes when there is none.
func (l *Ledger) Head() (seq int64, chain []byte) {
	k := l.kept.Load()
	return k.seq, bytes.Clone(k.chain)
}

// Epoch names how often the record was restored and by which entry last, "0" =
// never. It costs nothing, however long the record is.
func (l *Ledger) Epoch() string { return l.kept.Load().epoch }

// kept is the place of the last kept entry, and the epoch it belongs to.
type kept struct {
	mark
	epoch string
}

// tellKept says what is kept now. l.mu is held, and l.work is there.
func (l *Ledger) tellKept() {
	l.kept.Store(&kept{l.head, epochMark(l.work.epoch, l.work.epochBy)})
}

// reload makes the running state again from the file.
func (l *Ledger) reload(ctx context.Context, db sqlRunner) error {
	events, last, err := readEvents(ctx, db, mark{0, firstChain()})
	if err != nil {
		return err
	}
	l.work, l.head = replayed(nil, events), last
	l.tellKept()
	return nil
}

func (s State) clone() State {
	c := s
	c.Plantings = append([]Planting(nil), s.Plantings...)
	c.Differences = append([]string(nil), s.Differences...)
	c.SpaceLooks = append([]SpaceLook(nil), s.SpaceLooks...)
	c.Disputes = append([]Dispute(nil), s.Disputes...)
	c.Forecasts = append([]ForecastNote(nil), s.Forecasts...)
	c.Dismissed = make(map[string]string, len(s.Dismissed))
	for k, v := range s.Dismissed {
		c.Dismissed[k] = v
	}
	return c
}
