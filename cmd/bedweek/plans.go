package main

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"sync"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// plansName is the file beside the record that holds the last plan of each of
// a few weeks. It is made from the record: without it the next plan only cannot
// say what changed.
const plansName = "plans.json"

// plansWeeks is how far back a plan is still compared with.
const plansWeeks = 6

// plansKept is how many weeks' plans are remembered, however long ago: a round
// after months away asks by the plan that stood when somebody left.
const plansKept = 30

// plans remembers the last plan of each week.
type plans struct {
	path string
	mu   sync.Mutex
	week map[cal.Day]ledger.KeptPlan // by Monday
}

// readPlans reads what is remembered; a file that cannot be read counts as
// none.
func readPlans(dir string) *plans {
	p := &plans{path: filepath.Join(dir, plansName), week: map[cal.Day]ledger.KeptPlan{}}
	b, err := os.ReadFile(p.path)
	if err != nil {
		return p
	}
	var list []ledger.KeptPlan
	if json.Unmarshal(b, &list) != nil {
		return p
	}
	for _, k := range list {
		p.week[k.On.Monday()] = k
	}
	return p
}

// before is the latest plan of an earlier week, nil when none is remembered.
func (p *plans) before(date cal.Day) *ledger.KeptPlan {
	p.mu.Lock()
	defer p.mu.Unlock()
	var best *ledger.KeptPlan
	for monday, k := range p.week {
		if monday < date.Monday() && monday >= date.Monday()-7*plansWeeks && (best == nil || monday > best.On.Monday()) {
			best = &k
		}
	}
	return best
}

// latest is the plan to start from: of this week, or else the one before.
func (p *plans) latest(date cal.Day) *ledger.KeptPlan {
	p.mu.Lock()
	k, ok := p.week[date.Monday()]
	p.mu.Unlock()
	if ok {
		return &k
	}
	return p.before(date)
}

// stood is the plan by which somebody left: the last of that week or of one
// before, else the first after it and before today's.
func (p *plans) stood(left, today cal.Day) *ledger.KeptPlan {
	p.mu.Lock()
	defer p.mu.Unlock()
	var best, next *ledger.KeptPlan
	for monday, k := range p.week {
		if monday <= left.Monday() && (best == nil || monday > best.On.Monday()) {
			best = &k
		}
		if monday > left.Monday() && monday < today.Monday() && (next == nil || monday < next.On.Monday()) {
			next = &k
		}
	}
	if best == nil {
		return next
	}
	return best
}

// remember keeps a plan as its week's last, and writes the file whole.
func (p *plans) remember(k ledger.KeptPlan) error {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.week[k.On.Monday()] = k
	var list []ledger.KeptPlan
	for monday, x := range p.week {
		if monday <= k.On.Monday() {
			list = append(list, x)
		}
	}
	sort.Slice(list, func(i, j int) bool { return list[i].On < list[j].On })
	for len(list) > plansKept {
		delete(p.week, list[0].On.Monday())
		list = list[1:]
	}
	b, err := json.Marshal(list)
	if err != nil {
		return fmt.Errorf("writing %s: %w", plansName, err)
	}
	tmp := p.path + ".new"
	if err := os.WriteFile(tmp, append(b, '\n'), 0o600); err != nil {
		return fmt.Errorf("writing %s: %w", plansName, err)
	}
	if err := os.Rename(tmp, p.path); err != nil {
		return fmt.Errorf("writing %s: %w", plansName, err)
	}
	return nil
}

// round tells what the plan that stood wanted since somebody wrote last.
func (d *desk) round(ctx context.Context) (*reckon.CatchUp, error) {
	d.mu.Lock()
	g, today := d.in.Garden, d.in.Date
	d.mu.Unlock()
	if g == nil {
		return &reckon.CatchUp{}, nil
	}
	events, state, err := d.remembered(ctx, g)
	if err != nil {
		return nil, err
	}
	left := reckon.LeftOn(events, today, cal.FromTime(d.now()))
	return reckon.CatchUpOf(g, d.in.Book, &state, d.plans.stood(left, today), left, today), nil
}

// ponder works out, behind the pages, what questions about the plan need: what
// of it can wait, the plan searched on, and what each wish costs. It ends when
// ctx does.
func (d *desk) ponder(ctx context.Context) {
	d.lightAhead(ctx)
	d.mu.Lock()
	r := d.out.last
	d.mu.Unlock()
	if r == nil {
		return
	}
	d.tellLater(r, r.Later(ctx))
	if len(r.Day.Heard) > 0 {
		r.Prices(ctx)
	}
}

// tellLater puts what can wait on the day, if that is still of the plan asked.
func (d *desk) tellLater(r *reckon.Result, l *reckon.Later) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.out.last != r || d.day == nil {
		return
	}
	if told := d.day.WithLater(l); told != d.day {
		d.put(told)
	}
}

// asking is the plan that questions are asked of; nil when there is none.
func (d *desk) asking() *reckon.Result {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.out.last
}

// errNoPlan is said when a question is asked before there is a plan.
var errNoPlan = errors.New("there is no plan yet")

func (d *desk) try(ctx context.Context, t reckon.Trial) (*reckon.Compared, error) {
	r := d.asking()
	if r == nil {
		return nil, errNoPlan
	}
	return r.Try(ctx, t)
}

func (d *desk) why(ctx context.Context, line string) (*reckon.Why, error) {
	r := d.asking()
	if r == nil {
		return nil, nil
	}
	y, _ := r.WhyOf(ctx, line)
	return y, nil
}

// prices are what the wishes cost; false while they are being worked out.
func (d *desk) prices(context.Context) ([]reckon.WishPrice, bool) {
	r := d.asking()
	if r == nil {
		return nil, false
	}
	return r.Priced()
}

// likeness is the plan as it may be kept.
func (d *desk) likeness(context.Context) (*ledger.KeptPlan, error) {
	r := d.asking()
	if r == nil {
		return nil, errNoPlan
	}
	k := r.Likeness()
	return &k, nil
}

// keptPlans are the plans kept under a name, each beside the present one.
func (d *desk) keptPlans(ctx context.Context) ([]reckon.KeptBeside, error) {
	r := d.asking()
	if r == nil {
		return nil, nil
	}
	state, err := d.led.State(ctx)
	if err != nil {
		return nil, fmt.Errorf("reading the ledger: %w", err)
	}
	var out []reckon.KeptBeside
	for _, k := range state.Kept {
		out = append(out, r.BesideKept(k))
	}
	return out, nil
}
