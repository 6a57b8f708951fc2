//go:build next_layouts

package ledger

import (
	"fmt"
	"testing/fstest"
)

// Two layouts that were never shipped, each some work to make, so that the
// crash tests can kill a program while it brings a record up to date.
func init() {
	first, err := layouts.ReadFile("migrations/0001_ledger.sql")
	if err != nil {
		panic(err)
	}
	with := fstest.MapFS{"migrations/0001_ledger.sql": {Data: first}}
	for n := 2; n <= 3; n++ {
		with[fmt.Sprintf("migrations/%04d_next.sql", n)] = &fstest.MapFile{Data: fmt.Appendf(nil, `
ALTER TABLE planting ADD COLUMN next%[1]d TEXT NOT NULL DEFAULT '';
CREATE TABLE told%[1]d (seq INTEGER, id TEXT NOT NULL, words TEXT NOT NULL) STRICT;
INSERT INTO told%[1]d SELECT a.seq, a.id, a.body || b.rowid FROM event a, (SELECT seq AS rowid FROM event LIMIT 20) b;
CREATE INDEX told%[1]d_words ON told%[1]d (words, id)`, n)}
	}
	shipped = with
}
