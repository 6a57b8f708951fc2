//go:build !mutant_mark_early

package ledger

// plantedMarkEarly writes the number of a layout before the layout is made.
const plantedMarkEarly = false
