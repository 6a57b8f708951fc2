// Command child is the program that the crash tests run, kill and trace.
//
//	child append DIR   appends entries and prints "ack ID DIGEST" for each
//	child check DIR... audits and reads records, one line of JSON for each
//	child open DIR     opens and closes a record, and says when each is done
//
// It ends with code 3 when writing has stopped for good.
package main

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"sync"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

func main() {
	clients := flag.Int("clients", 8, "how many append at once")
	count := flag.Int("count", 0, "appends of each client, 0 = for ever")
	wait := flag.Bool("wait", false, `after the last append print "idle" and wait to be killed`)
	marks := flag.Bool("marks", false, `print "req ID" before each append`)
	backup := flag.Bool("backup", false, "make backups meanwhile")
	shots := flag.Bool("pictures", false, "keep a picture now and then")
	seed := flag.Uint64("seed", 1, "of the mix")
	flag.Parse()
	if flag.NArg() < 2 {
		fmt.Fprintln(os.Stderr, "child: want append DIR or check DIR...")
		os.Exit(2)
	}
	var err error
	switch flag.Arg(0) {
	case "append":
		w := writer{marks: *marks, wait: *wait, shots: *shots, seed: *seed}
		err = w.run(flag.Arg(1), *clients, *count, *backup)
	case "open":
		err = open(flag.Arg(1))
	case "check":
		err = check(flag.Args()[1:])
	default:
		err = fmt.Errorf("child: what is %q?", flag.Arg(0))
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		if errors.Is(err, ledger.ErrStopped) {
			os.Exit(3)
		}
		os.Exit(1)
	}
}

// say prints one line in one call to the system.
func say(format string, args ...any) { fmt.Fprint(os.Stdout, fmt.Sprintf(format+"\n", args...)) }

type writer struct {
	l     *ledger.Ledger
	marks bool
	wait  bool
	shots bool
	seed  uint64
}

func (w *writer) run(dir string, clients, count int, backup bool) error {
	l, err := ledger.Open(dir, ledger.Options{Now: time.Now, Program: "crash child"})
	if err != nil {
		return err
	}
	w.l = l
	say("open")
	errs := make([]error, clients+1)
	var hands sync.WaitGroup
	for c := range clients {
		hands.Add(1)
		go func() {
			defer hands.Done()
			errs[c] = w.client(c, count)
			if errors.Is(errs[c], ledger.ErrStopped) {
				fmt.Fprintln(os.Stderr, errs[c])
				os.Exit(3)
			}
		}()
	}
	if backup {
		hands.Add(1)
		go func() {
			defer hands.Done()
			for range 3 {
				p, err := l.Backup(context.Background(), "")
				if err != nil {
					errs[clients] = err
					return
				}
				say("backup %s", p.File)
			}
		}()
	}
	hands.Wait()
	if w.wait {
		say("idle")
		time.Sleep(time.Hour)
	}
	return errors.Join(append(errs, l.Close())...)
}

// client appends a mix: a sowing, then losses, looks, counts, pickings,
// entries taken back, entries sent twice, and lists of twenty.
func (w *writer) client(c, count int) error {
	chance := rand.New(rand.NewPCG(w.seed, uint64(c)))
	name := fmt.Sprintf("phone %d", c)
	day := cal.Of(2015, time.April, 12)
	sown, err := ledger.NewEvent(name, day, ledger.Sown, ledger.Started{Crop: "bean", Space: fmt.Sprintf("bed-%d", c), Count: 500})
	if err != nil {
		return err
	}
	if err := w.append(sown); err != nil {
		return err
	}
	last := sown
	for n := 1; count == 0 || n < count; n++ {
		many := 1
		if chance.IntN(25) == 0 {
			many = 20
		}
		var events []ledger.Event
		for range many {
			e, err := one(chance, name, day+cal.Day(n%200), sown.ID, last.ID)
			if err != nil {
				return err
			}
			events = append(events, e)
		}
		if w.shots && n%20 == 0 {
			e, err := w.picture(name, day, n)
			if err != nil {
				return err
			}
			events = append(events, e)
		}
		if err := w.append(events...); err != nil {
			return err
		}
		if chance.IntN(10) == 0 { // the answer was lost: sent once more
			if err := w.append(events...); err != nil {
				return err
			}
		}
		last = events[len(events)-1]
	}
	return nil
}

// picture keeps a file as a picture is kept, and returns its entry.
func (w *writer) picture(name string, day cal.Day, n int) (ledger.Event, error) {
	whole := fmt.Appendf(nil, "picture %d of %s", n, name)
	digest, err := w.l.KeepPhoto(whole, whole[:9])
	if err != nil {
		return ledger.Event{}, err
	}
	return ledger.NewEvent(name, day, ledger.Pictured, ledger.Photo{Space: "bed-0", SHA256: digest, Bytes: len(whole), Width: 4, Height: 3})
}

func one(chance *rand.Rand, name string, day cal.Day, planting, last string) (ledger.Event, error) {
	note := fmt.Sprintf("row %d, seen from the path", chance.IntN(100))
	switch chance.IntN(10) {
	case 0:
		return ledger.NewEvent(name, day, ledger.Voided, ledger.Void{Event: last, Why: note})
	case 1, 2:
		return ledger.NewEvent(name, day, ledger.Counted, ledger.Count{Planting: planting, Count: 100 + chance.IntN(300), Note: note})
	case 3, 4:
		return ledger.NewEvent(name, day, ledger.Lost, ledger.Ended{Planting: planting, Count: 1, Cause: "eaten", Note: note})
	case 5, 6:
		return ledger.NewEvent(name, day, ledger.Picked, ledger.Amount{Planting: planting, Kg: float64(chance.IntN(30)) / 10, Note: note})
	}
	return ledger.NewEvent(name, day, ledger.Looked, ledger.Look{Planting: planting, Looks: "well", Note: note})
}

func (w *writer) append(events ...ledger.Event) error {
	if w.marks {
		say("req %s", events[0].ID)
	}
	kept, err := w.l.Append(context.Background(), events...)
	if err != nil {
		return err
	}
	for _, e := range kept {
		say("ack %s %s", e.ID, hex.EncodeToString(e.Digest))
	}
	return nil
}

func open(dir string) error {
	l, err := ledger.Open(dir, ledger.Options{Now: time.Now, Program: "crash child"})
	if err != nil {
		return err
	}
	say("open")
	err = l.Close()
	say("closed")
	return err
}

// verdict is what check finds of one record.
type verdict struct {
	AuditOK bool   `json:"audit_ok"`
	Refused string `json:"refused"` // why it did not open
	Rows    string `json:"rows"`    // SHA-256 of all it serves
	Words   string `json:"words"`   // the audit's
}

func check(dirs []string) error {
	for _, dir := range dirs {
		r := ledger.Audit(dir)
		v := verdict{AuditOK: r.OK, Words: r.Words()}
		if err := v.serve(dir); err != nil {
			v.Refused = err.Error()
		}
		b, err := json.Marshal(v)
		if err != nil {
			return err
		}
		say("%s", b)
	}
	return nil
}

// serve opens the record and hashes everything that it shows.
func (v *verdict) serve(dir string) error {
	l, err := ledger.Open(dir, ledger.Options{Now: time.Now, Program: "crash child"})
	if err != nil {
		return err
	}
	defer l.Close()
	events, err := l.Events(context.Background())
	if err != nil {
		return err
	}
	state, err := l.State(context.Background())
	if err != nil {
		return err
	}
	b, err := json.Marshal(struct {
		Events []ledger.Event
		State  ledger.State
	}{events, state})
	sum := sha256.Sum256(b)
	v.Rows = hex.EncodeToString(sum[:])
	return err
}
