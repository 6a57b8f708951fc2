//go:build mutant_mark_early

package ledger

const plantedMarkEarly = true
