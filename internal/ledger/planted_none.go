//go:build !mutant_ack_early && !mutant_sync_off && !mutant_no_chain

package ledger

// Faults planted by build tags, so that the tests can be seen to catch them.
// In every ordinary build all are off.
const (
	plantedAckEarly = false // answer before the commit
	plantedSyncOff  = false // never ask the disk to keep
	plantedNoChain  = false // do not compare digests and chain
)
