package reckon

import (
	"context"
	"testing"
)

// askedContext counts how often it is asked whether to stop.
type askedContext struct {
	context.Context
	times *int
}

func (a askedContext) Err() error {
	*a.times++
	return a.Context.Err()
}

// TestSearchAsksTheContextAround: whether to stop is asked of the context given,
// which may let others go first, and not only of one made from it.
func TestSearchAsksTheContextAround(t *testing.T) {
	for _, end := range []chan struct{}{nil, make(chan struct{})} {
		outer, cancel := context.WithCancel(t.Context())
		times := 0
		ctx, stop := until(askedContext{outer, &times}, end)
		if ctx.Err() != nil || times != 1 {
			t.Errorf("%v, asked %d times; want once", ctx.Err(), times)
		}
		if end != nil {
			close(end)
			<-ctx.Done()
			if ctx.Err() != context.Canceled || outer.Err() != nil {
				t.Errorf("ended: %v, around it %v", ctx.Err(), outer.Err())
			}
		}
		cancel()
		<-ctx.Done()
		if ctx.Err() != context.Canceled {
			t.Errorf("ended around it: %v", ctx.Err())
		}
		stop()
	}
}
