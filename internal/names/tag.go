package names

import (
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"strconv"
	"strings"
)

// Tag is a spoken name: two words and two digits, "Brown Heron 42". It can be
// shouted across a garden, and written on a stick.
type Tag string

// tagged turns an id into a tag; try counts how often it was taken before.
// Born in the file are tags that end in 00 to 09; those of entries end in 10
// to 99: so a new entry never takes the tag of something in the file.
func tagged(id string, try int, file bool) Tag {
	sum := sha256.Sum256([]byte(id + "#" + strconv.Itoa(try)))
	n := binary.BigEndian.Uint64(sum[:8])
	first, second := strings.Fields(firstWords), strings.Fields(secondWords)
	a := first[n%uint64(len(first))]
	n /= uint64(len(first))
	b := second[n%uint64(len(second))]
	n /= uint64(len(second))
	digits := 10 + n%90
	if file {
		digits = n % 10
	}
	return Tag(fmt.Sprintf("%s %s %02d", title(a), title(b), digits))
}

func title(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// tags gives each id a tag, the earlier ones first: what has a tag keeps it
// whatever comes after.
type tags struct {
	of    map[string]Tag
	taken map[string]string // short form to id
}

func newTags() *tags { return &tags{of: map[string]Tag{}, taken: map[string]string{}} }

func (t *tags) claim(id string, file bool) {
	if _, has := t.of[id]; has {
		return
	}
	for try := 0; ; try++ {
		tag := tagged(id, try, file)
		if _, taken := t.taken[tag.Short()]; !taken {
			t.of[id], t.taken[tag.Short()] = tag, id
			return
		}
	}
}

// Short is the tag as an address: "BROWN-HERON-42".
func (t Tag) Short() string { return strings.ToUpper(strings.ReplaceAll(string(t), " ", "-")) }

// short brings what somebody typed or scanned into that form.
func short(s string) string {
	return strings.ToUpper(strings.Join(strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == '-' || r == '_' || r == '.' || r == ',' }), "-"))
}
