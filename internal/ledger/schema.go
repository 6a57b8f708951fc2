package ledger

import (
	"context"
	"crypto/sha256"
	"database/sql"
	"embed"
	"encoding/hex"
	"fmt"
	"io/fs"
	"sort"
	"strconv"
	"strings"
	"time"
)

//go:embed migrations/*.sql
var layouts embed.FS

// shipped is where the steps of the layout are read from.
var shipped fs.FS = layouts

// applicationID stands in the file's header: "BDWK".
const applicationID = 0x4244574B

// migration is one step of the layout, in plain SQL. Once shipped it is never
// changed: its hash is kept in every file it was applied to.
type migration struct {
	version      int
	name, sha256 string
	text         string
}

// migrations reads steps named NNNN_name.sql, numbered 1, 2, 3 without gaps.
func migrations(files fs.FS) ([]migration, error) {
	names, err := fs.Glob(files, "migrations/*.sql")
	if err != nil {
		return nil, fmt.Errorf("listing migrations: %w", err)
	}
	sort.Strings(names)
	var out []migration
	for i, path := range names {
		text, err := fs.ReadFile(files, path)
		if err != nil {
			return nil, fmt.Errorf("reading %s: %w", path, err)
		}
		name := strings.TrimSuffix(strings.TrimPrefix(path, "migrations/"), ".sql")
		number, _, ok := strings.Cut(name, "_")
		if v, err := strconv.Atoi(number); !ok || err != nil || v != i+1 {
			return nil, fmt.Errorf("migration %s: want number %04d", path, i+1)
		}
		sum := sha256.Sum256(text)
		out = append(out, migration{i + 1, name, hex.EncodeToString(sum[:]), string(text)})
	}
	return out, nil
}

// sqlRunner is a connection, whichever way it is held.
type sqlRunner interface {
	ExecContext(context.Context, string, ...any) (sql.Result, error)
	QueryContext(context.Context, string, ...any) (*sql.Rows, error)
	QueryRowContext(context.Context, string, ...any) *sql.Row
}

// migrate applies the steps after version from, each in a transaction of its
// own that also writes the version, so that a step is whole or was not.
func migrate(ctx context.Context, db sqlRunner, steps []migration, from int, program string, now time.Time) error {
	for _, m := range steps[from:] {
		if plantedMarkEarly && m.version > 1 {
			early := m
			early.text = "SELECT 1"
			if err := early.apply(ctx, db, program, instant(now)); err != nil {
				return err
			}
			if _, err := db.ExecContext(ctx, "BEGIN IMMEDIATE; "+m.text+"; COMMIT"); err != nil {
				return err
			}
			continue
		}
		if err := m.apply(ctx, db, program, instant(now)); err != nil {
			db.ExecContext(ctx, "ROLLBACK")
			return fmt.Errorf("changing the layout (%s): %w", m.name, err)
		}
	}
	return nil
}

func (m migration) apply(ctx context.Context, db sqlRunner, program, at string) error {
	if _, err := db.ExecContext(ctx, "BEGIN IMMEDIATE"); err != nil {
		return err
	}
	if _, err := db.ExecContext(ctx, m.text); err != nil {
		return err
	}
	if _, err := db.ExecContext(ctx, `INSERT INTO schema_version (version, name, sha256, program, applied_at, mark) VALUES (?, ?, ?, ?, ?, ?)`,
		m.version, m.name, m.sha256, program, at, versionMark(m.version, m.name, m.sha256, program, at)); err != nil {
		return err
	}
	pragmas := fmt.Sprintf("PRAGMA application_id = %d; PRAGMA user_version = %d", applicationID, m.version)
	if _, err := db.ExecContext(ctx, pragmas); err != nil {
		return err
	}
	_, err := db.ExecContext(ctx, "COMMIT")
	return err
}

func versionMark(version int, fields ...string) string {
	b := appendField([]byte("bedweek version 1\n"), strconv.Itoa(version))
	for _, f := range fields {
		b = appendField(b, f)
	}
	sum := sha256.Sum256(b)
	return hex.EncodeToString(sum[:])
}

// checkSchema compares a file's layout with the steps, and returns its version.
func checkSchema(ctx context.Context, db sqlRunner, steps []migration) (int, error) {
	version, err := checkVersions(ctx, db, steps)
	if err != nil {
		return 0, err
	}
	if version == 0 {
		return 0, nil
	}
	have, err := schemaText(ctx, db)
	if err != nil {
		return 0, err
	}
	fresh, err := sql.Open("sqlite", ":memory:")
	if err != nil {
		return 0, err
	}
	defer fresh.Close()
	fresh.SetMaxOpenConns(1)
	if err := migrate(ctx, fresh, steps[:version], 0, "", time.Time{}); err != nil {
		return 0, err
	}
	want, err := schemaText(ctx, fresh)
	if err != nil {
		return 0, err
	}
	if have != want {
		return 0, fmt.Errorf("%w: the tables are not those of layout %d", ErrDamaged, version)
	}
	return version, nil
}

func checkVersions(ctx context.Context, db sqlRunner, steps []migration) (int, error) {
	var user int
	if err := db.QueryRowContext(ctx, "PRAGMA user_version").Scan(&user); err != nil {
		return 0, err
	}
	if user == 0 {
		return 0, nil
	}
	rows, err := db.QueryContext(ctx, "SELECT version, name, sha256, program, applied_at, mark FROM schema_version ORDER BY version")
	if err != nil {
		return 0, err
	}
	defer rows.Close()
	n := 0
	for rows.Next() {
		var version int
		var name, sum, program, at, mark string
		if err := rows.Scan(&version, &name, &sum, &program, &at, &mark); err != nil {
			return 0, err
		}
		n++
		switch {
		case version > len(steps):
			return 0, newer(version, program, len(steps))
		case version != n || mark != versionMark(version, name, sum, program, at):
			return 0, fmt.Errorf("%w: the list of layouts does not hold together", ErrDamaged)
		case sum != steps[n-1].sha256:
			return 0, fmt.Errorf("%w: layout %d was made by other steps than this program's", ErrDamaged, n)
		}
	}
	if err := rows.Err(); err != nil {
		return 0, err
	}
	if n != user {
		return 0, fmt.Errorf("%w: the header says layout %d, the list %d", ErrDamaged, user, n)
	}
	return n, nil
}

func newer(version int, program string, mine int) error {
	by := ""
	if program != "" {
		by = ", made by " + program
	}
	return fmt.Errorf("%w: it has layout %d%s, and this program knows layouts up to %d. Start a version that knows layout %d", ErrNewer, version, by, mine, version)
}

func schemaText(ctx context.Context, db sqlRunner) (string, error) {
	rows, err := db.QueryContext(ctx, "SELECT type, name, tbl_name, ifnull(sql, '') FROM sqlite_schema ORDER BY type, name")
	if err != nil {
		return "", err
	}
	defer rows.Close()
	var b []byte
	for rows.Next() {
		var f [4]string
		if err := rows.Scan(&f[0], &f[1], &f[2], &f[3]); err != nil {
			return "", err
		}
		for _, s := range f {
			b = appendField(b, s)
		}
	}
	return string(b), rows.Err()
}
