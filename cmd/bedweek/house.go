package main

import (
	"archive/zip"
	"context"
	"crypto/tls"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"bedweek/internal/gate"
	"bedweek/internal/ledger"
	"bedweek/internal/web"
)

// house holds the doors of the program, open while what lies behind them
// changes: the pages, a pause, or the pages of a record that does not open.
type house struct {
	w      *world
	dir    string
	demo   bool
	hosts  []string
	inside atomic.Pointer[http.Handler]
	errs   chan error
	gate   *gate.Gate // nil = the home network is not open
	cert   []byte     // of the household's authority
	ways   []string   // addresses to print
	srvs   []*http.Server
	again  chan string // a backup to restore

	mu      sync.Mutex
	busy    bool
	trouble string // what the last restore said when it failed
	waiting map[string]int
}

// homeFlags are what opens the home network.
type homeFlags struct {
	open      bool
	on        string // address to listen on
	port      int    // plain; HTTPS is one above
	host      string // more names, by comma
	cert, key string // the owner's own certificate
}

var loopbackHosts = []string{"localhost", "127.0.0.1", "[::1]"}

// openHouse opens the doors. Behind them is a page that asks to wait.
func openHouse(w *world, dir string, port int, demo bool, home homeFlags) (*house, error) {
	h := &house{w: w, dir: dir, demo: demo, hosts: append([]string(nil), loopbackHosts...), errs: make(chan error, 4), again: make(chan string, 1), waiting: map[string]int{}}
	l, err := net.Listen("tcp", fmt.Sprintf("127.0.0.1:%d", port))
	if err != nil && port != 0 && strings.Contains(err.Error(), "in use") {
		fmt.Fprintf(w.err, "Port %d is taken; using a free one.\n", port)
		l, err = net.Listen("tcp", "127.0.0.1:0")
	}
	if err != nil {
		return nil, fmt.Errorf("opening the port: %w", err)
	}
	h.ways = []string{fmt.Sprintf("The pages are at http://%s/ (this machine only).", l.Addr())}
	var console http.Handler = http.HandlerFunc(h.enter)
	if home.open {
		if console, err = h.openHome(home, console); err != nil {
			l.Close()
			h.shut()
			return nil, err
		}
	}
	if err := h.pause("The program is starting."); err != nil {
		l.Close()
		h.shut()
		return nil, err
	}
	h.serve(l, console, nil)
	return h, nil
}

// openHome opens the doors of the home network, and returns the console's.
func (h *house) openHome(f homeFlags, inside http.Handler) (http.Handler, error) {
	hosts := homeNames(f.on)
	for _, n := range strings.Split(f.host, ",") {
		if n = strings.TrimSpace(n); n != "" {
			hosts = append(hosts, n)
		}
	}
	if len(hosts) == 0 {
		return nil, errors.New("no address of a home network was found on this machine. Name one with -home-on")
	}
	dir := filepath.Join(h.dir, "gate")
	own := f.cert != "" || f.key != ""
	var cert tls.Certificate
	if own {
		c, err := tls.LoadX509KeyPair(f.cert, f.key)
		if err != nil {
			return nil, fmt.Errorf("reading your certificate: %w", err)
		}
		cert = c
	} else {
		a, err := gate.OpenAuthority(dir, h.w.now)
		if err != nil {
			return nil, err
		}
		c, err := a.Certificate(hosts)
		if err != nil {
			return nil, err
		}
		cert, h.cert = *c, a.DER
	}
	plain, err := net.Listen("tcp", net.JoinHostPort(f.on, fmt.Sprint(f.port)))
	if err != nil {
		return nil, fmt.Errorf("opening the home network: %w", err)
	}
	tlsPort := 0
	if f.port != 0 {
		tlsPort = f.port + 1
	}
	private, err := net.Listen("tcp", net.JoinHostPort(f.on, fmt.Sprint(tlsPort)))
	if err != nil {
		plain.Close()
		return nil, fmt.Errorf("opening the home network: %w", err)
	}
	at := func(l net.Listener) string {
		_, port, _ := net.SplitHostPort(l.Addr().String())
		return net.JoinHostPort(hosts[0], port)
	}
	h.hosts = append(h.hosts, hosts...)
	h.gate, err = gate.Open(gate.Options{Dir: dir, Now: h.w.now, Hosts: h.hosts, Plain: at(plain), Secure: at(private), Own: own, Name: web.WithDevice})
	if err != nil {
		plain.Close()
		private.Close()
		return nil, err
	}
	h.ways = append(h.ways, "The home network is open: http://"+at(plain)+"/trust to make a phone ready, https://"+at(private)+"/ after. Only paired phones get an answer.")
	door := h.gate.Home(inside, h.cert)
	h.serve(gate.Few(plain), door, nil)
	h.serve(gate.Few(private), door, &tls.Config{Certificates: []tls.Certificate{cert}, MinVersion: tls.VersionTLS12})
	return h.gate.Console(inside, h.cert), nil
}

// homeNames lists the names and addresses of this machine at home. An address
// to listen on narrows it to that one.
func homeNames(on string) []string {
	if ip := net.ParseIP(on); ip != nil && !ip.IsUnspecified() {
		return []string{on}
	}
	var out []string
	addrs, _ := net.InterfaceAddrs()
	for _, a := range addrs {
		if n, ok := a.(*net.IPNet); ok && n.IP.To4() != nil && !n.IP.IsLoopback() && gate.HomeAddress(n.IP) {
			out = append(out, n.IP.String())
		}
	}
	if host, err := os.Hostname(); err == nil && host != "" && len(out) > 0 {
		out = append(out, strings.ToLower(host), strings.ToLower(host)+".local")
	}
	return out
}

func (h *house) serve(l net.Listener, door http.Handler, t *tls.Config) {
	srv := &http.Server{Handler: h.w.polite.door(door), TLSConfig: t, ReadHeaderTimeout: 10 * time.Second, ReadTimeout: 5 * time.Minute, WriteTimeout: 10 * time.Minute,
		IdleTimeout: 2 * time.Minute, MaxHeaderBytes: 64 << 10, ErrorLog: log.New(io.Discard, "", 0)}
	h.srvs = append(h.srvs, srv)
	go func() {
		if t != nil {
			h.errs <- srv.ServeTLS(l, "", "")
		} else {
			h.errs <- srv.Serve(l)
		}
	}()
}

// enter leads to what lies behind the doors now.
func (h *house) enter(w http.ResponseWriter, r *http.Request) { (*h.inside.Load()).ServeHTTP(w, r) }

func (h *house) put(x http.Handler) { h.inside.Store(&x) }

// pause puts a page behind the doors that asks to wait.
func (h *house) pause(words string) error {
	x, err := web.Wait(h.hosts, h.w.now, words)
	if err == nil {
		h.put(x)
	}
	return err
}

// shut closes the doors, letting those inside finish for a while.
func (h *house) shut() {
	end, cancel := context.WithTimeout(context.Background(), 5*time.Second)
	defer cancel()
	for _, s := range h.srvs {
		s.Shutdown(end)
	}
}

func (h *house) say() {
	for _, way := range h.ways {
		fmt.Fprintln(h.w.out, way)
	}
	fmt.Fprintln(h.w.out, "Stop with Ctrl-C.")
}

// attend serves the desk's pages until the program ends or the record is to
// be restored: then again is the backup.
func (h *house) attend(ctx context.Context, d *desk, tell bool) (code int, again string) {
	k := newKeeper(h, d)
	o := d.options(h.hosts, h.demo)
	o.Keeping = k.keeping()
	o.Export = k.export
	pages, err := web.New(o)
	if err != nil {
		fmt.Fprintf(h.w.err, "bedweek: making the pages: %v\n", err)
		return exitNo, ""
	}
	ctx, stop := context.WithCancel(ctx)
	done := make(chan struct{})
	go func() { k.run(ctx); close(done) }()
	defer func() { stop(); <-done }()
	h.put(pages)
	if tell {
		h.say()
	}
	select {
	case err := <-h.errs:
		if err != nil && !errors.Is(err, http.ErrServerClosed) {
			fmt.Fprintf(h.w.err, "bedweek: serving: %v\n", err)
			return exitNo, ""
		}
		return exitDone, ""
	case <-d.led.Failed():
		fmt.Fprintf(h.w.err, "bedweek: %v\n", d.led.Stopped())
		return exitNo, ""
	case again = <-h.again:
		return exitDone, again
	case <-ctx.Done():
		return exitDone, ""
	}
}

// restore puts the record back, once nobody has it open.
func (h *house) restore(path string) {
	b, err := ledger.Restore(h.dir, path, ledger.Options{Now: h.w.now})
	h.mu.Lock()
	defer h.mu.Unlock()
	h.busy, h.trouble = false, ""
	if err != nil {
		h.trouble = "The restore was not done: " + err.Error()
		fmt.Fprintf(h.w.err, "bedweek: %v\n", err)
		return
	}
	fmt.Fprintln(h.w.err, backWords(b))
}

// ask takes a restore in hand. The pages pause before it answers, so that
// nobody is shown the old record once more and takes it for the new.
func (h *house) ask(file string) error {
	path, err := h.backup(file)
	if err != nil {
		return err
	}
	if _, err := ledger.VerifyBackup(path); err != nil {
		return err
	}
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.busy {
		return web.ErrBusy
	}
	h.busy = true
	h.again <- path
	return h.pause("The record is put back to a backup. This takes some seconds.")
}

// backup finds one of the folder's own backups by its name.
func (h *house) backup(file string) (string, error) {
	for _, p := range ledger.Backups(h.dir) {
		if p.File == file {
			return p.Path, nil
		}
	}
	return "", web.ErrNotThere
}

// refused serves the pages of a record that does not open.
func (h *house) refused(ctx context.Context, why error) (code int, again string) {
	o := web.RecoverOptions{Hosts: h.hosts, Now: h.w.now, Why: why.Error(),
		Backups: func() []ledger.Proof { return ledger.Backups(h.dir) },
		WouldLose: func(_ context.Context, file string) (ledger.Loss, error) {
			path, err := h.backup(file)
			if err != nil {
				return ledger.Loss{}, err
			}
			return ledger.WouldLose(h.dir, path)
		},
		Restore: func(_ context.Context, file string) error { return h.ask(file) },
		Read:    h.readBackup,
		Copy:    h.copyRecord,
	}
	pages, err := web.Recover(o)
	if err != nil {
		fmt.Fprintf(h.w.err, "bedweek: %v\n", err)
		return exitNo, ""
	}
	h.put(pages)
	h.say()
	fmt.Fprintln(h.w.err, "The page there says what you can do.")
	select {
	case again = <-h.again:
		return exitDone, again
	case <-h.errs:
	case <-ctx.Done():
	}
	return exitNo, ""
}

// readBackup writes what a backup holds as an export. The backup is opened in
// a folder of its own, so that nothing beside it is made.
func (h *house) readBackup(ctx context.Context, file string, w io.Writer) error {
	path, err := h.backup(file)
	if err != nil {
		return err
	}
	at, err := os.MkdirTemp("", "bedweek-read-")
	if err != nil {
		return fmt.Errorf("reading a backup: %w", err)
	}
	defer os.RemoveAll(at)
	to := filepath.Join(at, "data")
	if _, err := ledger.Restore(to, path, ledger.Options{Now: h.w.now}); err != nil {
		return err
	}
	l, err := ledger.Open(to, ledger.Options{Now: h.w.now})
	if err != nil {
		return err
	}
	defer l.Close()
	return l.ExportZip(ctx, w)
}

// copyRecord writes the record's files as they lie.
func (h *house) copyRecord(_ context.Context, w io.Writer) error {
	z := zip.NewWriter(w)
	for _, name := range []string{"ledger.db", "ledger.db-wal", "ledger.head"} {
		f, err := os.Open(filepath.Join(h.dir, name))
		if errors.Is(err, os.ErrNotExist) {
			continue
		}
		if err != nil {
			return fmt.Errorf("copying the record: %w", err)
		}
		out, err := z.Create(name)
		if err == nil {
			_, err = io.Copy(out, f)
		}
		f.Close()
		if err != nil {
			return fmt.Errorf("copying the record: %w", err)
		}
	}
	return z.Close()
}
