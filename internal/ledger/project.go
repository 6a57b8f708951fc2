package ledger

import (
	"context"
	"database/sql"
	"encoding/json"
	"fmt"
	"reflect"
	"sort"

	"bedweek/internal/cal"
)

const plantingColumns = `id, started, crop, variety, one_of, space, sown, set_out, count, known, began,
	removed, ended, cause, looks, looked_on, picked_kg, picks, last_pick, lot, moved_from`

const putPlanting = `INSERT INTO planting (` + plantingColumns + `)
	VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
	ON CONFLICT (id) DO UPDATE SET started = excluded.started, crop = excluded.crop,
	variety = excluded.variety, one_of = excluded.one_of, space = excluded.space,
	sown = excluded.sown, set_out = excluded.set_out, count = excluded.count,
	known = excluded.known, began = excluded.began, removed = excluded.removed,
	ended = excluded.ended, cause = excluded.cause, looks = excluded.looks,
	looked_on = excluded.looked_on, picked_kg = excluded.picked_kg, picks = excluded.picks,
	last_pick = excluded.last_pick, lot = excluded.lot, moved_from = excluded.moved_from`

// project writes the plantings touched since the last time to the table.
func project(ctx context.Context, db sqlRunner, r *replayer) error {
	ids := make([]string, 0, len(r.touched))
	for id := range r.touched {
		ids = append(ids, id)
	}
	sort.Strings(ids)
	for _, id := range ids {
		p, stands := r.plantings[id]
		var err error
		if stands {
			_, err = db.ExecContext(ctx, putPlanting, p.columns()...)
		} else {
			_, err = db.ExecContext(ctx, "DELETE FROM planting WHERE id = ?", id)
		}
		if err != nil {
			return fmt.Errorf("writing planting %s: %w", id, err)
		}
	}
	r.touched = map[string]bool{}
	return nil
}

// differing marks as touched in r every planting that is not as it was.
func (r *replayer) differing(was map[string]*Planting) {
	for id, p := range r.plantings {
		if old, ok := was[id]; !ok || !reflect.DeepEqual(old, p) {
			r.touched[id] = true
		}
	}
	for id := range was {
		if _, ok := r.plantings[id]; !ok {
			r.touched[id] = true
		}
	}
}

func (p *Planting) columns() []any {
	oneOf, _ := marshal(append([]string{}, p.OneOf...)) // texts only: cannot fail
	var started any
	if !p.FromFile {
		started = p.ID
	}
	return []any{p.ID, started, p.Crop, p.Variety, string(oneOf), p.Space, dayText(p.Sown), dayText(p.SetOut),
		p.Count, p.Known, p.Began, p.Removed, dayText(p.Ended), p.Cause, p.Looks, dayText(p.LookedOn),
		p.PickedKg, p.Picks, dayText(p.LastPick), p.Lot, p.From}
}

func dayText(d cal.Day) any {
	if d == 0 {
		return nil
	}
	return d.String()
}

// projected reads the table back.
func projected(ctx context.Context, db sqlRunner) (map[string]*Planting, error) {
	rows, err := db.QueryContext(ctx, "SELECT "+plantingColumns+" FROM planting")
	if err != nil {
		return nil, err
	}
	defer rows.Close()
	out := map[string]*Planting{}
	for rows.Next() {
		p, err := scanPlanting(rows)
		if err != nil {
			return nil, err
		}
		out[p.ID] = p
	}
	return out, rows.Err()
}

func scanPlanting(rows *sql.Rows) (*Planting, error) {
	var p Planting
	var started, sown, setOut, ended, looked, picked sql.NullString
	var oneOf string
	err := rows.Scan(&p.ID, &started, &p.Crop, &p.Variety, &oneOf, &p.Space, &sown, &setOut, &p.Count, &p.Known, &p.Began,
		&p.Removed, &ended, &p.Cause, &p.Looks, &looked, &p.PickedKg, &p.Picks, &picked, &p.Lot, &p.From)
	if err != nil {
		return nil, err
	}
	p.FromFile = !started.Valid
	if err := json.Unmarshal([]byte(oneOf), &p.OneOf); err != nil {
		return nil, fmt.Errorf("%w: planting %s: %v", ErrDamaged, p.ID, err)
	}
	if len(p.OneOf) == 0 {
		p.OneOf = nil
	}
	for _, d := range []struct {
		text sql.NullString
		day  *cal.Day
	}{{sown, &p.Sown}, {setOut, &p.SetOut}, {ended, &p.Ended}, {looked, &p.LookedOn}, {picked, &p.LastPick}} {
		if !d.text.Valid {
			continue
		}
		if *d.day, err = cal.Parse(d.text.String); err != nil {
			return nil, fmt.Errorf("%w: planting %s: %v", ErrDamaged, p.ID, err)
		}
	}
	return &p, nil
}

// compareProjection says which plantings of the table are not as replayed.
func compareProjection(table map[string]*Planting, r *replayer) error {
	check := &replayer{plantings: table, touched: map[string]bool{}}
	check.differing(r.plantings)
	if len(check.touched) == 0 {
		return nil
	}
	ids := make([]string, 0, len(check.touched))
	for id := range check.touched {
		ids = append(ids, id)
	}
	sort.Strings(ids)
	return fmt.Errorf("%w: %d of the plantings in the table are not as the entries say, the first is %s", ErrDamaged, len(ids), ids[0])
}

// rulesOf returns by which rules the table was made, 0 when it never was.
func rulesOf(ctx context.Context, db sqlRunner) (int, error) {
	var n int
	err := db.QueryRowContext(ctx, "SELECT ifnull(max(rules), 0) FROM projection WHERE name = 'planting'").Scan(&n)
	return n, err
}

// rebuild drops the table's rows and writes them again from a replay, inside
// the caller's transaction.
func rebuild(ctx context.Context, db sqlRunner, r *replayer) error {
	if _, err := db.ExecContext(ctx, "DELETE FROM planting"); err != nil {
		return err
	}
	r.touched = map[string]bool{}
	for id := range r.plantings {
		r.touched[id] = true
	}
	if err := project(ctx, db, r); err != nil {
		return err
	}
	_, err := db.ExecContext(ctx, `INSERT INTO projection (name, rules) VALUES ('planting', ?)
		ON CONFLICT (name) DO UPDATE SET rules = excluded.rules`, replayRules)
	return err
}
