//go:build mutant_no_chain

package ledger

const (
	plantedAckEarly = false
	plantedSyncOff  = false
	plantedNoChain  = true
)
