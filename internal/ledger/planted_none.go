//go:build !mutant_ack_early && !mutant_sync_off && !mutant_sync_normal && !mutant_no_chain

package ledger

// Faults planted by build tags, so that the tests can be seen to catch them.
// In every ordinary build all are off.
const (
	plantedAckEarly = false    // answer before the commit
	syncMode        = syncFull // 0: never ask the disk to keep; 1: only when the log is taken in
	plantedNoChain  = false    // do not compare digests and chain
)
