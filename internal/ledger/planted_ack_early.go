//go:build mutant_ack_early

package ledger

const (
	plantedAckEarly = true
	plantedSyncOff  = false
	plantedNoChain  = false
)
