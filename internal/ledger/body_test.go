package ledger

import (
	"context"
	"encoding/json"
	"errors"
	"reflect"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
)

func TestFaultsAreAllListed(t *testing.T) {
	long := strings.Repeat("x", 3000)
	for _, tt := range []struct {
		kind Kind
		body string
		want []string
	}{
		{Sown, `{"space":"a","crop":"b","count":3}`, nil},
		{Sown, `{"crop":"","count":-1,"planting":"p"}`, []string{`"space" is missing`, `"count" is -1`, `"planting" is given`}},
		{Sown, `{"crop":3,"space":[],"count":"many","colour":"red"}`, []string{`"colour" is not a field of "sown"`, `"count" is not a whole number`, `"crop" is not a text`, `"space" is not a text`}},
		{Sown, `{"Crop":"pea","space":"a"}`, []string{`"Crop" is not a field`}},
		{Sown, `{"crop":"pea","crop":"bean","space":"a"}`, []string{`"crop" is given twice`}},
		{Sown, `{"crop":null,"space":"a"}`, []string{`"crop" is null`}},
		{Sown, `{"crop":"pea","space":"a","count":1.5}`, []string{`"count" is not a whole number`}},
		{Sown, `{"crop":"pea ","space":"a\nb"}`, []string{`"crop" has spaces`, `"space" has more than one line`}},
		{Sown, `{"crop":"pea","space":"a"} {}`, []string{"something follows"}},
		{Sown, `["pea"]`, []string{"not a JSON object"}},
		{Sown, `{"crop":"pea"`, []string{"not whole JSON"}},
		{Sown, ``, []string{"not a JSON object"}},
		{Sown, "{\"crop\":\"\xff\",\"space\":\"a\"}", []string{"not UTF-8"}},
		{Sown, `{"crop":"pea","space":"a","note":"` + long + `"}`, []string{`"note" has 3000 characters; the most is 2000`}},
		{Sown, `{"crop":"pea","space":"a","note":"` + strings.Repeat(long, 6) + `"}`, []string{"bytes; the most is 16384"}},
		{Sown, `{"crop":"pea","space":"a","note":"bell \u0007"}`, []string{"control character"}},
		{PutOut, `{"planting":"p","space":"a","crop":""}`, nil},
		{Picked, `{"planting":"p","kg":-2,"measure":"lorry"}`, []string{`"kg" is -2`, `"measure" is "lorry"`}},
		{Picked, `{"planting":"p"}`, nil},
		{Pulled, `{"planting":"p"}`, nil},
		{Lost, `{"planting":"p"}`, []string{`"cause" is missing`}},
		{Counted, `{"planting":"p"}`, []string{`"count" is missing`}},
		{Counted, `{"planting":"p","count":0}`, nil},
		{Looked, `{"looks":" "}`, []string{`"planting" or "space" is missing`, `"looks" is missing`}},
		{Watered, `{"space":"bag-1","litres":10,"hour":7}`, nil},
		{Watered, `{"litres":-1,"hour":24,"cans":2}`, []string{`"cans" is not a field of "watered"`}},
		{Watered, `{"litres":-1,"hour":24}`, []string{`"space" is missing`, `"hour" is 24`, `"litres" is -1`}},
		{Measured, `{"what":"low","value":-1.5,"space":"bag-1","hour":8}`, nil},
		{Measured, `{"what":"low"}`, []string{`"value" is missing`}},
		{Measured, `{"what":"low","value":71}`, []string{`"value" is 71`}},
		{Measured, `{"what":"rain","value":-1}`, []string{`"value" is -1`}},
		{Measured, `{"what":"wind","value":3}`, []string{`"what" is "wind"`}},
		{Voided, `{"event":"x"}`, []string{`"event" is "x"`}},
		{Dismissed, `{}`, []string{`"task" is missing`}},
		{GardenSet, `{"text":"a","sha256":"b"}`, []string{"does not belong to the text"}},
		{"pruned", `{}`, []string{`does not know "pruned" in layout 1`}},
	} {
		_, _, got := canonical(tt.kind, 1, []byte(tt.body))
		if len(got) != len(tt.want) {
			t.Errorf("%s %.80s: %q, want %q", tt.kind, tt.body, got, tt.want)
			continue
		}
		for i, w := range tt.want {
			if !strings.Contains(got[i], w) {
				t.Errorf("%s %.80s: %q, want %q", tt.kind, tt.body, got[i], w)
			}
		}
	}
}

func TestFaultyEntryIsRefused(t *testing.T) {
	l := open(t, t.TempDir())
	good := event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"})
	e := good
	e.ID, e.Parent, e.Device, e.Happened, e.Written = "abc", "def", " ", 0, time.Date(12000, 1, 1, 0, 0, 0, 0, time.UTC)
	_, err := l.Append(context.Background(), e)
	var f Faults
	if !errors.As(err, &f) || len(f) != 5 {
		t.Errorf("Append: %q, want 5 faults", err)
	}
	for _, spoil := range []func(*Event){
		func(e *Event) { e.Parent = e.ID },
		func(e *Event) { e.Version = 0 },
		func(e *Event) { e.Version = 3 },
		func(e *Event) { e.Happened = cal.Of(1850, 1, 1) },
		func(e *Event) { e.Happened = cal.Of(2300, 1, 1) },
		func(e *Event) { e.ID = strings.ToLower(e.ID) },
		func(e *Event) { e.Kind, e.Body = Voided, json.RawMessage(`{"event":"`+e.ID+`"}`) },
	} {
		e := good
		spoil(&e)
		if _, err := l.Append(context.Background(), e); !errors.As(err, &f) || len(f) != 1 {
			t.Errorf("%+v: %v, want one fault", e, err)
		}
	}
	if _, err := l.Append(context.Background(), good, e); err == nil || !strings.Contains(err.Error(), "entry 2 of 2") {
		t.Errorf("a list: %v, want it to say which", err)
	}
	if seq, _ := l.Head(); seq != 0 {
		t.Errorf("%d entries were kept", seq)
	}
}

func TestCancelledBeforeItBegins(t *testing.T) {
	l := open(t, t.TempDir())
	l.mu.Lock() // the writer is busy with another entry
	busy := make(chan struct{})
	go func() {
		l.Append(context.Background(), event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"}))
		close(busy)
	}()
	time.Sleep(20 * time.Millisecond)
	ctx, cancel := context.WithTimeout(context.Background(), 20*time.Millisecond)
	defer cancel()
	if _, err := l.Append(ctx, event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "poor"})); !errors.Is(err, context.DeadlineExceeded) {
		t.Errorf("Append: %v, want the deadline", err)
	}
	l.mu.Unlock()
	<-busy
	if seq, _ := l.Head(); seq != 1 {
		t.Errorf("%d entries, want 1", seq)
	}
	l.Close()
	if _, err := l.Append(context.Background(), event(t, Looked, "2015-05-01", Look{Space: "arch", Looks: "well"})); !errors.Is(err, ErrClosed) {
		t.Errorf("after Close: %v, want ErrClosed", err)
	}
}

func TestNewID(t *testing.T) {
	seen := map[string]bool{}
	signs := map[byte]int{}
	for range 2000 {
		id := NewID()
		if !IsID(id) || seen[id] {
			t.Fatalf("id %q: form %v, seen %v", id, IsID(id), seen[id])
		}
		seen[id] = true
		for i := range len(id) {
			signs[id[i]]++
		}
	}
	for i := range len(crockford) { // 52,000 signs, 1625 of each expected, standard deviation 40
		if n := signs[crockford[i]]; n < 1425 || n > 1825 {
			t.Errorf("%c came %d times, want about 1625", crockford[i], n)
		}
	}
	for _, bad := range []string{"", "long-bed-1", strings.Repeat("I", 26), strings.Repeat("a", 26), strings.Repeat("0", 27)} {
		if IsID(bad) {
			t.Errorf("IsID(%q)", bad)
		}
	}
}

// FuzzBody gives any bytes as any kind's body: no panic, and what is accepted
// is a fixed point, decodes, and replays.
func FuzzBody(f *testing.F) {
	kinds := []Kind{GardenSet, Sown, PutOut, Picked, Pulled, Lost, Counted, Looked, Voided, Dismissed, Watered, Measured, Assumed, Skyline, Forecasted, "pruned"}
	for i, body := range []string{
		`{"text":"a","sha256":"ca978112ca1bbdcafac231b39a23dc4da786eff8147c4e72b9807785afee48bb"}`,
		`{"crop":"pea","variety":"<b>","one_of":["a","b"],"space":"arch","count":30,"lot":"t","note":"x\ny"}`,
		`{"planting":"shelf-1","crop":"","space":"arch","count":0}`, `{"planting":"p","kg":1e-7,"measure":"bowl"}`,
		`{"planting":"p","count":3}`, `{"planting":"p","cause":"eaten"}`, `{"planting":"p","count":0}`,
		`{"space":"arch","looks":"\ud800 well"}`, `{"event":"00000000000000000000000000"}`, `{"task":"a.b c.d"}`, `{}`,
	} {
		f.Add(uint8(i), []byte(body))
	}
	f.Fuzz(func(t *testing.T, k uint8, raw []byte) {
		kind := kinds[int(k)%len(kinds)]
		text, body, faults := canonical(kind, 1, raw)
		if len(faults) > 0 {
			for _, s := range faults {
				if s == "" || len(s) > 2000 && len(raw) < 500 {
					t.Errorf("a fault of %d bytes", len(s))
				}
			}
			return
		}
		again, body2, faults := canonical(kind, 1, text)
		if len(faults) > 0 || string(again) != string(text) || !reflect.DeepEqual(body, body2) {
			t.Fatalf("%s -> %s -> %s (%q)", raw, text, again, faults)
		}
		e := Event{Seq: 1, ID: NewID(), Device: "d", Happened: 16000, Kind: kind, Version: 1, Body: text}
		if _, err := Decode(e); err != nil {
			t.Fatal(err)
		}
		if st := Replay([]Event{e}); st.Events != 1 {
			t.Fatalf("replayed %+v", st)
		}
		if _, err := eventsCSV([]Event{e}); err != nil {
			t.Fatal(err)
		}
	})
}

// FuzzEvent gives any frame around a good body: no panic; what is accepted has
// an unambiguous encoding.
func FuzzEvent(f *testing.F) {
	f.Add(NewID(), "", "phone", int32(16000), "")
	f.Add("", "x", "\xff", int32(0), "2:ab\n")
	f.Fuzz(func(t *testing.T, id, parent, device string, day int32, note string) {
		e := Event{ID: id, Parent: parent, Device: device, Happened: cal.Day(day), Kind: Dismissed, Version: 1}
		e.Body, _ = marshal(Dismissal{Task: "t", Why: note})
		got, _, err := prepared(e)
		if err != nil {
			return
		}
		moved := got
		moved.Device += "1"
		if string(rowOf(got).content()) == string(rowOf(moved).content()) {
			t.Error("two devices, one encoding")
		}
		if !IsID(got.ID) || got.Happened < firstDay || got.Happened > lastDay {
			t.Errorf("accepted %+v", got)
		}
	})
}
