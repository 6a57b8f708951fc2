package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"sort"
	"sync"
	"time"

	"bedweek/internal/agenda"
	"bedweek/internal/ledger"
	"bedweek/internal/web"
)

// keeper looks after the record behind the pages: a backup each day, old ones
// thinned, everything checked once a day.
type keeper struct {
	h *house
	d *desk

	mu      sync.Mutex
	checked time.Time
	report  ledger.Report
	trouble string
}

func newKeeper(h *house, d *desk) *keeper { return &keeper{h: h, d: d} }

// keeperTurn is how often the keeper looks whether something is due.
const keeperTurn = 10 * time.Minute

// run turns until ctx ends.
func (k *keeper) run(ctx context.Context) {
	t := time.NewTicker(keeperTurn)
	defer t.Stop()
	for {
		k.turn(ctx)
		select {
		case <-ctx.Done():
			return
		case <-t.C:
		}
	}
}

// turn does what is due. A fault is said on the page, and tried again.
func (k *keeper) turn(ctx context.Context) {
	if ctx.Err() != nil {
		return
	}
	now := k.d.now()
	trouble := ""
	if due, holds := k.backupDue(now); due && holds {
		if _, err := k.d.led.Backup(ctx, ""); err != nil {
			trouble = "Today's backup was not made: " + err.Error()
		} else if _, err := k.d.led.ThinBackups(); err != nil {
			trouble = err.Error()
		}
	}
	k.mu.Lock()
	due := now.Sub(k.checked) >= 24*time.Hour || now.Before(k.checked)
	k.mu.Unlock()
	if due && ctx.Err() == nil {
		k.check(now)
	}
	if trouble != "" && ctx.Err() == nil {
		fmt.Fprintf(k.h.w.err, "bedweek: %s\n", trouble)
	}
	k.mu.Lock()
	k.trouble = trouble
	k.mu.Unlock()
}

// backupDue reports whether the last backup is of another day, and whether
// there is anything to back up.
func (k *keeper) backupDue(now time.Time) (due, holds bool) {
	seq, _ := k.d.led.Head()
	all := ledger.Backups(k.d.led.Dir())
	if len(all) == 0 {
		return true, seq > 0
	}
	last := all[len(all)-1].Made
	return last.UTC().Format("2006-01-02") != now.UTC().Format("2006-01-02"), seq > 0
}

func (k *keeper) check(now time.Time) {
	r := ledger.Audit(k.d.led.Dir())
	k.mu.Lock()
	defer k.mu.Unlock()
	k.checked, k.report = now, r
	if !r.OK {
		fmt.Fprintf(k.h.w.err, "bedweek: the check found something wrong:\n%s", r.Words())
	}
}

// keeping wires the keeper to the pages.
func (k *keeper) keeping() *web.Keeping {
	return &web.Keeping{
		Safety: k.safety,
		Check:  func(context.Context) error { k.check(k.d.now()); return nil },
		WouldLose: func(_ context.Context, file string) (ledger.Loss, error) {
			path, err := k.h.backup(file)
			if err != nil {
				return ledger.Loss{}, err
			}
			return ledger.WouldLose(k.d.led.Dir(), path)
		},
		Restore:     func(_ context.Context, file string) error { return k.h.ask(file) },
		KeepPhoto:   k.d.led.KeepPhoto,
		Photo:       func(digest string, small bool) ([]byte, error) { return ledger.OpenPhoto(k.d.led.Dir(), digest, small) },
		Pictures:    k.pictures,
		KeepSound:   k.d.led.KeepSound,
		Sound:       func(digest, format string) ([]byte, error) { return ledger.OpenSound(k.d.led.Dir(), digest, format) },
		Sounds:      k.sounds,
		Calendar:    func(ctx context.Context) ([]byte, error) { return k.calendar(ctx) },
		Import:      k.bringIn,
		Epoch:       k.epoch,
		Waiting:     k.heard,
		LastWaiting: k.lastWaiting,
		Same:        k.same,
		Kept:        k.kept,
	}
}

func (k *keeper) calendar(ctx context.Context) ([]byte, error) {
	day, err := k.d.Day(ctx)
	if err != nil {
		return nil, err
	}
	return agenda.Write(day, k.d.now()), nil
}

func (k *keeper) export(ctx context.Context, w io.Writer) error {
	cal, err := k.calendar(ctx)
	if err != nil {
		return err
	}
	return k.d.led.ExportZip(ctx, w, ledger.Extra{Name: "plan.ics", Data: cal})
}

func (k *keeper) pictures(ctx context.Context, space string) ([]ledger.PictureNote, error) {
	s, err := k.d.led.State(ctx)
	if err != nil {
		return nil, err
	}
	where := map[string]string{}
	for _, p := range s.Plantings {
		where[p.ID] = p.Space
	}
	var out []ledger.PictureNote
	for i := len(s.Pictures) - 1; i >= 0; i-- {
		if p := s.Pictures[i]; p.Space == space || p.Space == "" && where[p.Planting] == space {
			out = append(out, p)
		}
	}
	return out, nil
}

// sounds lists the voice notes of a space, newest first.
func (k *keeper) sounds(ctx context.Context, space string) ([]ledger.SoundNote, error) {
	s, err := k.d.led.State(ctx)
	if err != nil {
		return nil, err
	}
	var out []ledger.SoundNote
	for i := len(s.Sounds) - 1; i >= 0; i-- {
		if s.Sounds[i].Space == space {
			out = append(out, s.Sounds[i])
		}
	}
	return out, nil
}

func (k *keeper) bringIn(ctx context.Context, r io.Reader) (int, error) {
	n, err := k.d.led.Import(ctx, r)
	if err == nil && n > 0 {
		err = k.d.readText(ctx)
		k.d.again()
	}
	return n, err
}

func (k *keeper) epoch(context.Context) (string, error) { return k.d.led.Epoch(), nil }

func (k *keeper) heard(_ context.Context, device string, n int, oldest time.Time) {
	k.h.mu.Lock()
	k.h.waiting[device] = n
	k.h.mu.Unlock()
	if k.h.gate != nil {
		k.h.gate.Hear(device, n, oldest)
	}
}

func (k *keeper) lastWaiting(device string) int {
	if k.h.gate != nil {
		for _, d := range k.h.gate.Devices() {
			if d.Name == device {
				return d.Waiting
			}
		}
	}
	k.h.mu.Lock()
	defer k.h.mu.Unlock()
	if n, ok := k.h.waiting[device]; ok {
		return n
	}
	return -1
}

// same reports whether the entry with an id is of this kind and body.
func (k *keeper) same(ctx context.Context, id string, kind ledger.Kind, body any) bool {
	e, ok := k.entry(ctx, id)
	if !ok {
		return false
	}
	want, err := ledger.NewEvent(e.Device, e.Happened, kind, body)
	return err == nil && e.Kind == kind && bytes.Equal(e.Body, want.Body)
}

// kept reports whether there is an entry with an id.
func (k *keeper) kept(ctx context.Context, id string) bool {
	_, ok := k.entry(ctx, id)
	return ok
}

func (k *keeper) entry(ctx context.Context, id string) (ledger.Event, bool) {
	e, ok, err := k.d.past.Entry(ctx, id)
	return e, ok && err == nil
}

// safety gathers what "Is it safe?" shows.
func (k *keeper) safety(ctx context.Context) (web.Safety, error) {
	events, err := k.d.past.Events(ctx)
	if err != nil {
		return web.Safety{}, err
	}
	state, err := k.d.led.State(ctx)
	if err != nil {
		return web.Safety{}, err
	}
	dir := k.d.led.Dir()
	s := web.Safety{Backups: ledger.Backups(dir), Entries: int64(len(events)), Knots: web.KnotsOf(state.Disputes, events), Phones: k.h.gate != nil}
	s.Newer = s.Entries
	if n := len(s.Backups); n > 0 {
		s.Newer = max(0, s.Entries-s.Backups[n-1].Entries)
	}
	s.Epoch = state.Epoch
	s.Drill, s.Drilled = ledger.LastDrill(dir)
	s.Free, s.FreeOf = ledger.Free(dir)
	k.mu.Lock()
	s.Checked, s.CheckOK, s.Trouble = k.checked, k.report.OK, k.trouble
	for _, c := range k.report.Checks {
		s.Words = append(s.Words, c.Words)
	}
	k.mu.Unlock()
	k.h.mu.Lock()
	if k.h.trouble != "" {
		s.Trouble = k.h.trouble
	}
	k.h.mu.Unlock()
	s.Devices = k.strands(events)
	return s, nil
}

// strands tells for each device what it brought home.
func (k *keeper) strands(events []ledger.Event) []web.Strand {
	by := map[string]*web.Strand{}
	of := func(name string) *web.Strand {
		s := by[name]
		if s == nil {
			s = &web.Strand{Name: name, Waiting: k.lastWaiting(name)}
			by[name] = s
		}
		return s
	}
	for _, e := range events {
		s := of(e.Device)
		s.Entries++
		if s.Last = e.Written; len(s.Homes) == 0 || e.Written.Sub(s.Homes[len(s.Homes)-1]) > 24*time.Hour {
			s.Homes = append(s.Homes, e.Written)
		}
	}
	if k.h.gate != nil {
		for _, d := range k.h.gate.Devices() {
			s := of(d.Name)
			s.Waiting, s.Heard, s.Oldest, s.Revoked = d.Waiting, d.Heard, d.Oldest, !d.Revoked.IsZero()
		}
	}
	names := make([]string, 0, len(by))
	for n := range by {
		names = append(names, n)
	}
	sort.Strings(names)
	out := make([]web.Strand, len(names))
	for i, n := range names {
		out[i] = *by[n]
	}
	return out
}
