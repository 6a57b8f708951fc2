//go:build mutant_sync_off

package ledger

const (
	plantedAckEarly = false
	syncMode        = "0"
	plantedNoChain  = false
)
