//go:build mutant_ack_early

package ledger

const (
	plantedAckEarly = true
	syncMode        = syncFull
	plantedNoChain  = false
)
