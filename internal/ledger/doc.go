// Package ledger keeps what happened in the garden, for ever, and proves it.
//
// What for: entries ("sown", "picked", "counted") are appended to one SQLite
// file in a data folder and never changed. Everything else the program knows
// of the past is replayed from them.
//
// Method: each event carries the SHA-256 of its content and a chain value of
// that digest and the chain before it, so a changed, missing or moved entry
// is found. Write-ahead log, synchronous=FULL, one writer that commits waiting
// entries together; Append returns only after the commit returned. The
// planting table is written in the same transaction and is compared with a
// fresh replay at every start and every audit. Sources: the SQLite project's
// pages "Write-Ahead Logging", "How To Corrupt An SQLite Database File" and
// "PRAGMA Statements".
//
// Conventions: Happened is the day the gardener says, and is content; the
// order is by cause, then by Seq, the order of writing here. A day of 0 means
// "not known". Text is UTF-8. Errors the gardener may meet are sentences.
//
// Range: tried with 200,000 events (docs/ledger.md has the figures). One
// program writes; any number read.
//
// Left out: photos, restoring, several devices writing at once without a
// server, encryption of the file. Whether the disk keeps what it says it has
// kept cannot be seen from here.
package ledger
