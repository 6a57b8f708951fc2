package stand

import (
	"testing"

	"bedweek/internal/crop"
)

func book(tb testing.TB) []*crop.Crop {
	tb.Helper()
	b, err := crop.Load()
	if err != nil {
		tb.Fatal(err)
	}
	return b.Crops
}

func fromBook(tb testing.TB, id crop.ID) *crop.Crop {
	tb.Helper()
	for _, c := range book(tb) {
		if c.ID == id {
			return c
		}
	}
	tb.Fatalf("no crop %s in the book", id)
	return nil
}
