package ledger

import (
	"crypto/sha256"
	"encoding/binary"
	"strconv"
	"time"
)

// Headings of the two hashed texts. They name the layout: another layout gets
// another heading, so that a digest can never be read two ways.
const (
	contentHeading = "bedweek event 1\n"
	chainHeading   = "bedweek chain 1\n"
)

// instantLayout writes an instant in UTC with nine decimals, so that equal
// instants have equal text.
const instantLayout = "2006-01-02T15:04:05.000000000Z"

// row is an event as its columns hold it, before anything is understood.
type row struct {
	seq                          int64
	id, parent, device, happened string
	written, kind                string
	version                      int
	body                         string
	digest, chain                []byte
}

// content returns the canonical encoding of what the device said: a heading,
// then each field as its length in bytes, a colon, the bytes and a line end.
// Seq and Written are the server's and belong to the chain instead.
func (r row) content() []byte {
	b := make([]byte, 0, 160+len(r.body))
	b = append(b, contentHeading...)
	for _, f := range [...]string{r.id, r.parent, r.device, r.happened, r.kind, strconv.Itoa(r.version), r.body} {
		b = appendField(b, f)
	}
	return b
}

// contentDigest is the SHA-256 of the content.
func (r row) contentDigest() []byte {
	sum := sha256.Sum256(r.content())
	return sum[:]
}

// chainAfter is the SHA-256 of the chain before it, the place in the order,
// the instant of writing and the digest.
func (r row) chainAfter(before []byte) []byte {
	b := make([]byte, 0, 160)
	b = append(b, chainHeading...)
	b = appendField(b, string(before))
	var seq [8]byte
	binary.BigEndian.PutUint64(seq[:], uint64(r.seq))
	b = append(b, seq[:]...)
	b = appendField(b, r.written)
	b = appendField(b, string(r.digest))
	sum := sha256.Sum256(b)
	return sum[:]
}

// firstChain is the chain value before the first event: 32 zero bytes.
func firstChain() []byte { return make([]byte, sha256.Size) }

func appendField(b []byte, f string) []byte {
	b = strconv.AppendInt(b, int64(len(f)), 10)
	b = append(b, ':')
	b = append(b, f...)
	return append(b, '\n')
}

// rowOf turns an event into columns. The body is taken as it is: see canonical.
func rowOf(e Event) row {
	return row{
		seq: e.Seq, id: e.ID, parent: e.Parent, device: e.Device,
		happened: e.Happened.String(), written: instant(e.Written),
		kind: string(e.Kind), version: e.Version, body: string(e.Body),
		digest: e.Digest, chain: e.Chain,
	}
}

func instant(t time.Time) string { return t.UTC().Format(instantLayout) }
