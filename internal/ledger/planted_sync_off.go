//go:build mutant_sync_off

package ledger

const (
	plantedAckEarly = false
	plantedSyncOff  = true
	plantedNoChain  = false
)
