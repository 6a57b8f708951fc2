// Package crash holds tests that kill, trace and damage the ledger.
//
// What for: the ledger promises that an acknowledged entry is never lost, and
// that a damaged record is never shown as a good one. These tests try to make
// it break both promises.
//
// Method: the program in child appends entries and prints an acknowledgement
// for each. It is killed at random moments; its calls to the system are
// traced, to see that the disk was asked to keep an entry before it was
// acknowledged; calls are made to fail; single bits of its file are turned.
// Each test is also run on a child with a planted fault (a build tag of
// package ledger), which it must catch. Method after the SQLite project's page
// "How SQLite Is Tested".
//
// Range: "no loss in N kills" bounds the true rate at about 3/N (95 %).
//
// Left out: a real power cut. The trace shows that the disk was asked, and cuts
// are played on it; whether a given disk does what it is asked cannot be seen
// from here.
package crash
