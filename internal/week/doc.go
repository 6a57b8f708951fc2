// Package week plays two phones and the record through one bad week.
//
// What for: notes are written where there is no signal and come home days
// later, doubled, out of order, or after the record was put back to a backup.
// These tests look for a note that was lost or doubled on the way.
//
// Method: one thread, everything from a seed: the phones follow the rules of
// the outbox script (keep first, send all that was not acknowledged, send
// everything again in a new epoch); the record is a real ledger on disk, with
// real restores. A run that fails prints its seed and is played again by it.
// Planted faults (a phone that sends only what changed since it last sent; one
// that keeps nothing for a new epoch; one that takes no answer for a yes) must be
// caught. Method after "Testing sync at Dropbox" (2020).
//
// Range: "no loss in N runs" bounds the true rate at about 3/N (95 %).
//
// Left out: the browser itself (browser/offline.test.mjs) and real radio.
package week
