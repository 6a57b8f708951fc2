package reckon

import (
	"context"
	"testing"
)

// planned is the plan of inputs, their ground worked out for it alone.
func planned(t testing.TB, in *Inputs) *Result {
	t.Helper()
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	r, err := Reckon(context.Background(), in, g)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// modelled is the season's problem of inputs, with the words behind its numbers.
func modelled(t testing.TB, in *Inputs) *model {
	t.Helper()
	g, err := NewGround(in)
	if err != nil {
		t.Fatal(err)
	}
	m, err := modelOf(in, g)
	if err != nil {
		t.Fatal(err)
	}
	return m
}
