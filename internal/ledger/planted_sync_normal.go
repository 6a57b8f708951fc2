//go:build mutant_sync_normal

package ledger

const (
	plantedAckEarly = false
	syncMode        = "1"
	plantedNoChain  = false
)
