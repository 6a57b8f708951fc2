package ledger

import (
	"crypto/rand"
	"crypto/sha256"
)

// crockford is Crockford's base 32: no I, L, O or U, which the eye confuses.
const crockford = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// idLength is the number of characters of an id: 26 of 5 bits, 130 bits.
const idLength = 26

// NewID returns a new random event id: 26 characters of Crockford's base 32.
// It holds no time and no name of the device, so nothing can be read from it.
func NewID() string {
	var b [idLength]byte
	rand.Read(b[:]) // never fails: it ends the program when there is no randomness
	for i := range b {
		b[i] = crockford[b[i]&31]
	}
	return string(b[:])
}

// IsID reports whether s has the form of an event id. The ids of plantings in
// a garden file are lower case words, so the two are never mistaken.
func IsID(s string) bool {
	if len(s) != idLength {
		return false
	}
	for i := 0; i < len(s); i++ {
		c := s[i]
		digit := c >= '0' && c <= '9'
		letter := c >= 'A' && c <= 'Z' && c != 'I' && c != 'L' && c != 'O' && c != 'U'
		if !digit && !letter {
			return false
		}
	}
	return true
}

// FollowingID returns the id of a further event that one form writes: the same
// for the same form and word, so that a form sent twice stays once.
func FollowingID(form, word string) string {
	sum := sha256.Sum256([]byte("bedweek id 1\n" + form + "\n" + word))
	b := sum[:idLength]
	for i := range b {
		b[i] = crockford[b[i]&31]
	}
	return string(b)
}
