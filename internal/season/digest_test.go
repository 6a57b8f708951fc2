package season

import (
	"context"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"reflect"
	"testing"
)

// TestDigest also logs a digest of prices and plan, to be compared between kinds
// of processor: ./check builds it without and with instructions that multiply
// and add at once.
func TestDigest(t *testing.T) {
	p := plausible(5, 6, 12, 52, 6)
	dry := plausible(5, 6, 12, 52, 6)
	thirsty(dry, 5, 0.3)
	dry.WorstShare = 0.3
	for _, p := range []*Problem{p, dry} {
		digestOf(t, p)
	}
}

func digestOf(t *testing.T, p *Problem) {
	roundAll(reflect.ValueOf(p)) // what made it may differ in its last bits
	digest := func(workers int) string {
		c := Bound(context.Background(), p, BoundLimits{Work: 80 * len(p.Options), Workers: workers})
		f := Bound(context.Background(), p, BoundLimits{Work: 20 * len(p.Options), Workers: workers, Warm: c, Futures: true})
		plan := Search(context.Background(), p, Limits{Work: 200_000, Workers: workers, Prices: f})
		for _, cert := range []*Certificate{c, f} {
			cert.Bound = 0 // the checker's sums are not rounded one by one
		}
		out, err := json.Marshal([]any{c, f, plan})
		if err != nil {
			t.Fatal(err)
		}
		return fmt.Sprintf("%x", sha256.Sum256(out))
	}
	one, two := digest(1), digest(2)
	if one != two {
		t.Errorf("one worker %s, two workers %s", one, two)
	}
	t.Logf("digest %s", one)
}

// roundAll rounds every number that v holds to seven digits or so.
func roundAll(v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		roundAll(v.Elem())
	case reflect.Struct:
		for i := range v.NumField() {
			roundAll(v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			roundAll(v.Index(i))
		}
	case reflect.Float64:
		v.SetFloat(float64(float32(v.Float())))
	}
}
