//go:build mutant_no_chain

package ledger

const (
	plantedAckEarly = false
	syncMode        = syncFull
	plantedNoChain  = true
)
