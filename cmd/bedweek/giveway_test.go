package main

import (
	"context"
	"net/http"
	"net/http/httptest"
	"testing"
	"time"
)

// While a request is answered, planning stands at its checkpoint; it goes on
// when the answer is out, when the context ends, and after a courtesy at the
// latest. No time is measured: each step waits for the one before.
func TestPlanningGivesWay(t *testing.T) {
	m := newManners()
	ctx, cancel := context.WithCancel(m.with(t.Context()))
	if mannered(context.Background()) != context.Background() {
		t.Error("a context without manners is changed")
	}
	plan := mannered(ctx)
	if plan.Err() != nil {
		t.Fatal("nobody asks, and the planning stops")
	}
	inside, leave := make(chan bool), make(chan bool, 1)
	door := m.door(http.HandlerFunc(func(http.ResponseWriter, *http.Request) { inside <- true; <-leave }))
	ask := func() chan bool {
		out := make(chan bool)
		go func() {
			door.ServeHTTP(httptest.NewRecorder(), httptest.NewRequest("GET", "/", nil))
			close(out)
		}()
		<-inside
		return out
	}
	out, passed := ask(), make(chan error)
	go func() { passed <- plan.Err() }()
	select {
	case <-passed:
		t.Fatal("a checkpoint was passed while a request was answered")
	case <-time.After(20 * time.Millisecond): // far below a courtesy
	}
	leave <- true
	<-out
	if err := <-passed; err != nil {
		t.Errorf("after the answer: %v", err)
	}
	out = ask() // a request that never ends
	go func() { passed <- plan.Err() }()
	if err := <-passed; err != nil {
		t.Errorf("an endless request ends the plan: %v", err)
	}
	m.answering.Add(1)
	cancel()
	if plan.Err() != context.Canceled || context.Cause(plan) != context.Canceled {
		t.Errorf("an ended context goes on: %v", plan.Err())
	}
	m.answering.Add(-1)
	leave <- true
	if <-out; m.answering.Load() != 0 {
		t.Errorf("%d requests counted after all have left", m.answering.Load())
	}
}
