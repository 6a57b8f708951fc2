//go:build linux

package crash

import (
	"bufio"
	"bytes"
	"context"
	"crypto/tls"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"math/rand/v2"
	"net"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

var (
	devices = flag.Int("devices", 6, "how many phones read and write at once; 50 in the full tier")
	entries = flag.Int("entries", 2000, "how many entries the record holds before; 200,000 in the full tier")
	crowded = flag.Duration("crowded", 10*time.Second, "for how long; ten minutes in the full tier")
)

// TestManyDevices pairs many phones with the whole program, held to one core,
// over a long record. Each writes a note every two seconds and reads a page
// every five, while a backup is made and everything is checked. Every note
// must be answered, and be there once when the program was killed in the end.
// The times are told and not judged: they are this machine's.
func TestManyDevices(t *testing.T) {
	c := newCrowd(t)
	end := time.Now().Add(*crowded)
	var hands sync.WaitGroup
	for i := range *devices {
		hands.Add(1)
		go func() {
			defer hands.Done()
			c.live(i, end)
		}()
	}
	hands.Add(1)
	go func() {
		defer hands.Done()
		time.Sleep(*crowded / 4)
		c.keep("/backup")
		time.Sleep(*crowded / 4)
		c.keep("/check")
	}()
	hands.Wait()
	peak, log := c.peak(), c.logSize()
	c.kill()
	for _, f := range c.faults {
		t.Error(f)
	}
	writes, reads := c.times("write"), c.times("read")
	t.Logf("%d devices on one core for %v, %d entries before: %d notes acknowledged (99 in 100 within %v, worst %v), %d pages read (99 in 100 within %v, worst %v), memory at most %d MB, log at most %.1f MB",
		*devices, *crowded, *entries, len(writes), at99(writes), last(writes), len(reads), at99(reads), last(reads), peak/1024, float64(log)/1e6)
	if len(writes) < *devices || len(reads) < *devices {
		t.Error("too little was written or read: the test saw too little")
	}
	c.mustHold()
}

type crowd struct {
	t             *testing.T
	dir           string
	cmd           *exec.Cmd
	here, private string
	phones        []*http.Client

	mu     sync.Mutex
	acked  map[string]bool
	took   map[string][]time.Duration
	faults []string
	log    int64
}

func newCrowd(t *testing.T) *crowd {
	c := &crowd{t: t, dir: filepath.Join(t.TempDir(), "data"), acked: map[string]bool{}, took: map[string][]time.Duration{}}
	program := filepath.Join(t.TempDir(), "bedweek")
	if out, err := exec.Command("go", "build", "-o", program, "../../cmd/bedweek").CombinedOutput(); err != nil {
		t.Fatalf("building the program: %v: %s", err, out)
	}
	c.fill()
	c.cmd = exec.Command("taskset", "-c", "0", program, "serve", "-port", "0", "-home", "-home-on", "127.0.0.2", "-home-port", "0",
		"-garden", "../../demo/garden.yaml", "-weather", "../../demo/seattle-weather.csv", "-date", "2015-04-06", c.dir)
	c.cmd.Env = append(os.Environ(), "GOMAXPROCS=1")
	c.cmd.Stderr = os.Stderr
	c.cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	out, err := c.cmd.StdoutPipe()
	if err == nil {
		err = c.cmd.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(c.kill)
	private := regexp.MustCompile(`https://127\.0\.0\.2:\d+`)
	sc := bufio.NewScanner(out)
	for (c.here == "" || c.private == "") && sc.Scan() {
		if a := pagesAt.FindString(sc.Text()); a != "" {
			c.here = a
		}
		if a := private.FindString(sc.Text()); a != "" {
			c.private = a
		}
	}
	if c.here == "" || c.private == "" {
		t.Fatal("the program told no addresses")
	}
	go io.Copy(io.Discard, out)
	for i := range *devices {
		c.pair(i)
	}
	return c
}

// fill writes the record of many years: looks, counts and pickings.
func (c *crowd) fill() {
	l, err := ledger.Open(c.dir, ledger.Options{Now: time.Now, Program: "crash test"})
	if err != nil {
		c.t.Fatal(err)
	}
	chance := rand.New(rand.NewPCG(*seed, 11))
	day := cal.Of(2005, time.April, 1)
	var planting string
	for done := 0; done < *entries; {
		var some []ledger.Event
		for range min(500, *entries-done) {
			kind, body := ledger.Looked, any(ledger.Look{Planting: planting, Looks: "well", Note: "seen from the path"})
			switch x := chance.IntN(40); {
			case planting == "" || x == 0:
				kind, body = ledger.Sown, ledger.Started{Crop: "bean", Space: "tier-low", Count: 40}
			case x < 4:
				kind, body = ledger.Lost, ledger.Ended{Planting: planting, Count: 1, Cause: "eaten"}
			case x < 20:
				kind, body = ledger.Picked, ledger.Amount{Planting: planting, Kg: 0.2}
			}
			e, err := ledger.NewEvent("home", day+cal.Day(done*3600 / *entries), kind, body)
			if err != nil {
				c.t.Fatal(err)
			}
			if kind == ledger.Sown {
				if planting != "" {
					done++
					gone, err := ledger.NewEvent("home", e.Happened, ledger.Pulled, ledger.Ended{Planting: planting})
					if err != nil {
						c.t.Fatal(err)
					}
					some = append(some, gone)
				}
				planting = e.ID
			}
			some = append(some, e)
			done++
		}
		if _, err := l.Append(context.Background(), some...); err != nil {
			c.t.Fatal(err)
		}
	}
	if err := l.Close(); err != nil {
		c.t.Fatal(err)
	}
}

var pairingCode = regexp.MustCompile(`\b([0-9A-HJKMNP-TV-Z]{4} [0-9A-HJKMNP-TV-Z]{4})\b`)

// pair makes a phone with an address of its own and pairs it.
func (c *crowd) pair(i int) {
	jar, err := cookiejar.New(nil)
	if err != nil {
		c.t.Fatal(err)
	}
	from := &net.Dialer{LocalAddr: &net.TCPAddr{IP: net.IPv4(127, 0, 1, byte(1+i))}}
	phone := &http.Client{Jar: jar, Timeout: time.Minute, CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse },
		Transport: &http.Transport{DialContext: from.DialContext, TLSClientConfig: &tls.Config{InsecureSkipVerify: true}}} // whether the authority is trusted is tried in package gate
	page, err := c.post(http.DefaultClient, c.here, "/phones/new", "application/x-www-form-urlencoded", nil)
	if err != nil {
		c.t.Fatal(err)
	}
	m := pairingCode.FindSubmatch(page)
	if m == nil {
		c.t.Fatalf("no code on the page: %.300s", page)
	}
	form := url.Values{"code": {string(m[1])}, "name": {fmt.Sprintf("phone %d", i)}}.Encode()
	for try := 0; ; try++ {
		_, err := c.post(phone, c.private, "/pair", "application/x-www-form-urlencoded", []byte(form))
		if err == nil {
			break
		}
		if try == 4 || !strings.Contains(err.Error(), "429") { // more than ten at once are slowed
			c.t.Fatalf("pairing phone %d: %v", i, err)
		}
		time.Sleep(2 * time.Second)
	}
	c.phones = append(c.phones, phone)
}

func (c *crowd) post(by *http.Client, base, path, kind string, body []byte) ([]byte, error) {
	r, err := http.NewRequest("POST", base+path, bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	r.Header.Set("Origin", base)
	r.Header.Set("Content-Type", kind)
	return answer(by.Do(r))
}

func answer(w *http.Response, err error) ([]byte, error) {
	if err != nil {
		return nil, err
	}
	defer w.Body.Close()
	b, err := io.ReadAll(w.Body)
	if err == nil && w.StatusCode >= 400 {
		err = fmt.Errorf("status %d: %.200s", w.StatusCode, b)
	}
	return b, err
}

// live is one phone until the end: a note every two seconds, a page every five.
func (c *crowd) live(i int, end time.Time) {
	chance := rand.New(rand.NewPCG(*seed, 100+uint64(i)))
	time.Sleep(time.Duration(chance.Int64N(int64(2 * time.Second))))
	pages := []string{"/", "/lines", "/dry", "/space/tier-low", "/keep"}
	for n := 0; time.Now().Before(end); n++ {
		next := time.Now().Add(time.Second)
		if n%2 == 0 {
			c.write(i)
		}
		if n%5 == 1 {
			begun := time.Now()
			_, err := answer(c.phones[i].Get(c.private + pages[chance.IntN(len(pages))]))
			c.note("read", time.Since(begun), err)
		}
		time.Sleep(time.Until(next))
	}
}

func (c *crowd) write(i int) {
	id := ledger.NewID()
	b, err := json.Marshal(map[string]any{"entries": []any{map[string]any{"form": id, "path": "/space/tier-low/note/looked",
		"fields": map[string]string{"day": "2015-04-06", "looks": "well", "note": "by the gate"}}}})
	if err != nil {
		c.t.Error(err)
		return
	}
	begun := time.Now()
	b, err = c.post(c.phones[i], c.private, "/sync", "application/json", b)
	took := time.Since(begun)
	var home struct{ Results []struct{ Kept bool } }
	if err == nil {
		err = json.Unmarshal(b, &home)
	}
	if err == nil && (len(home.Results) != 1 || !home.Results[0].Kept) {
		err = fmt.Errorf("not kept: %.300s", b)
	}
	c.note("write", took, err)
	if err == nil {
		c.mu.Lock()
		c.acked[id] = true
		c.mu.Unlock()
	}
}

func (c *crowd) keep(path string) {
	begun := time.Now()
	form := url.Values{"form": {ledger.NewID()}}.Encode()
	_, err := c.post(&http.Client{Timeout: 5 * time.Minute}, c.here, path, "application/x-www-form-urlencoded", []byte(form))
	c.note(path, time.Since(begun), err)
	c.t.Logf("%s took %v", path, time.Since(begun).Round(time.Millisecond))
}

func (c *crowd) note(what string, took time.Duration, err error) {
	c.logSize()
	c.mu.Lock()
	defer c.mu.Unlock()
	c.took[what] = append(c.took[what], took)
	if err != nil && len(c.faults) < 20 {
		c.faults = append(c.faults, fmt.Sprintf("%s: %v", what, err))
	}
}

func (c *crowd) times(what string) []time.Duration {
	slices.Sort(c.took[what])
	return c.took[what]
}

func at99(d []time.Duration) time.Duration {
	if len(d) == 0 {
		return 0
	}
	return d[len(d)*99/100].Round(time.Millisecond)
}

func last(d []time.Duration) time.Duration {
	if len(d) == 0 {
		return 0
	}
	return d[len(d)-1].Round(time.Millisecond)
}

// peak is the most memory the program held, in kB.
func (c *crowd) peak() (kB int) {
	b, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", c.cmd.Process.Pid))
	if err != nil {
		c.t.Error(err)
	}
	_, rest, _ := strings.Cut(string(b), "VmHWM:")
	fmt.Sscan(rest, &kB)
	return kB
}

// logSize is the greatest size of the log so far, in bytes.
func (c *crowd) logSize() int64 {
	st, err := os.Stat(filepath.Join(c.dir, "ledger.db-wal"))
	c.mu.Lock()
	defer c.mu.Unlock()
	if err == nil {
		c.log = max(c.log, st.Size())
	}
	return c.log
}

func (c *crowd) kill() {
	syscall.Kill(-c.cmd.Process.Pid, syscall.SIGKILL)
	_ = c.cmd.Wait() // killed, as wanted
}

// mustHold opens the record after the kill and looks for every note.
func (c *crowd) mustHold() {
	begun := time.Now()
	l, err := ledger.Open(c.dir, ledger.Options{Now: time.Now, Program: "crash test"})
	if err != nil {
		c.t.Fatal(err)
	}
	defer l.Close()
	c.t.Logf("opened again in %v", time.Since(begun).Round(time.Millisecond))
	begun = time.Now()
	if err := l.Rebuild(context.Background()); err != nil {
		c.t.Error(err)
	}
	c.t.Logf("its table of plantings made again in %v", time.Since(begun).Round(time.Millisecond))
	events, err := l.Events(context.Background())
	if err != nil {
		c.t.Fatal(err)
	}
	there := map[string]int{}
	for _, e := range events {
		there[e.ID]++
	}
	for id := range c.acked {
		if there[id] != 1 {
			c.t.Errorf("acknowledged note %s is there %d times", id, there[id])
		}
	}
}
