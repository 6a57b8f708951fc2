CREATE TABLE schema_version (
	version    INTEGER PRIMARY KEY,
	name       TEXT NOT NULL,           -- of the migration
	sha256     TEXT NOT NULL,           -- of the migration's text
	program    TEXT NOT NULL,           -- that applied it
	applied_at TEXT NOT NULL,           -- instant, UTC
	mark       TEXT NOT NULL            -- SHA-256 of the columns before
) STRICT;

CREATE TABLE event (
	seq      INTEGER PRIMARY KEY,       -- order of writing here
	id       TEXT    NOT NULL UNIQUE,   -- made on the device
	parent   TEXT,                      -- the event this one answers or corrects
	device   TEXT    NOT NULL,
	happened TEXT    NOT NULL,          -- civil date in the garden
	written  TEXT    NOT NULL,          -- instant, UTC
	kind     TEXT    NOT NULL,          -- 'sown', 'counted', 'voided', ...
	version  INTEGER NOT NULL,          -- of the body's layout
	body     TEXT    NOT NULL CHECK (json_valid(body)),
	digest   BLOB    NOT NULL,          -- of the content
	chain    BLOB    NOT NULL           -- of digest and the chain before it
) STRICT;

CREATE TRIGGER event_no_update BEFORE UPDATE ON event
	BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;

CREATE TRIGGER event_no_delete BEFORE DELETE ON event
	BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;

-- What can be dropped and replayed, and by which rules it was made.
CREATE TABLE projection (
	name  TEXT PRIMARY KEY,
	rules INTEGER NOT NULL
) STRICT;

CREATE TABLE planting (
	id         TEXT PRIMARY KEY,
	started    TEXT REFERENCES event(id), -- NULL = stands in the garden file
	crop       TEXT    NOT NULL,
	variety    TEXT    NOT NULL,
	one_of     TEXT    NOT NULL,          -- JSON list
	space      TEXT    NOT NULL,
	sown       TEXT,                      -- civil dates; NULL = not known
	set_out    TEXT,
	count      INTEGER NOT NULL,
	known      INTEGER NOT NULL,          -- 1 = count is known
	began      INTEGER NOT NULL,
	removed    INTEGER NOT NULL,
	ended      TEXT,
	cause      TEXT    NOT NULL,
	looks      TEXT    NOT NULL,
	looked_on  TEXT,
	picked_kg  REAL    NOT NULL,
	picks      INTEGER NOT NULL,
	last_pick  TEXT,
	lot        TEXT    NOT NULL,
	moved_from TEXT    NOT NULL
) STRICT;
