package ledger

import (
	"archive/zip"
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/csv"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

func TestGuard(t *testing.T) {
	for _, tt := range []struct{ cell, want, from string }{
		{"=1+1", "'=1+1", "OWASP, CSV Injection"},
		{"+44 20", "'+44 20", "OWASP"}, {"-x", "'-x", "OWASP"}, {"@sum", "'@sum", "OWASP"}, {"\tx", "'\tx", "OWASP"}, {"\rx", "'\rx", "OWASP"},
		{"-", "'-", "OWASP; a sign alone is no number"},
		{"-1+1", "'-1+1", "OWASP; a sum is no number"}, {"-1.", "'-1.", "no number"},
		{"-5", "-5", "numbers are left alone"}, {"+5.25", "+5.25", "numbers are left alone"}, {"12", "12", "a number"},
		{"carrot", "carrot", "plain"}, {"", "", "plain"}, {"x=1", "x=1", "plain"}, {"'tis", "'tis", "plain"},
		{"'=1", "''=1", "a text with an apostrophe of its own must come back"},
	} {
		got := Guard(tt.cell)
		if got != tt.want {
			t.Errorf("Guard(%q) = %q, want %q (%s)", tt.cell, got, tt.want, tt.from)
		}
		if back := Unguard(got); back != tt.cell {
			t.Errorf("Unguard(%q) = %q, want %q", got, back, tt.cell)
		}
	}
}

func FuzzGuard(f *testing.F) {
	for _, s := range []string{"", "=", "'=", "''", "-1", "'-1", "\t", "-+5", "+" + strings.Repeat("2", 320)} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		g := Guard(s)
		if Unguard(g) != s {
			t.Errorf("%q -> %q -> %q", s, g, Unguard(g))
		}
		if g != "" && strings.ContainsRune("=+-@\t\r", rune(g[0])) {
			if _, err := strconv.ParseFloat(g, 64); err != nil && !errors.Is(err, strconv.ErrRange) { // a number too great is one
				t.Errorf("%q begins like a formula", g)
			}
		}
	})
}

func exported(t *testing.T) (dir string, l *Ledger) {
	t.Helper()
	l = open(t, t.TempDir())
	add(t, l, everyKind(t)...)
	add(t, l, event(t, Looked, "2015-07-04", Look{Space: "arch", Looks: "=HYPERLINK(\"http://x\")", Note: "-5"}))
	dir = filepath.Join(t.TempDir(), "out")
	if err := l.Export(context.Background(), dir); err != nil {
		t.Fatal(err)
	}
	return dir, l
}

func rows(t *testing.T, path string) (header []string, lines [][]string) {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil || len(all) == 0 {
		t.Fatalf("%s: %d lines, %v", path, len(all), err)
	}
	return all[0], all[1:]
}

func TestExport(t *testing.T) {
	dir, l := exported(t)
	readme, err := os.ReadFile(filepath.Join(dir, "README.txt"))
	if err != nil {
		t.Fatal(err)
	}
	header, lines := rows(t, filepath.Join(dir, "events.csv"))
	if len(lines) != 19 || !strings.Contains(string(readme), "19 entries") {
		t.Errorf("events.csv has %d lines, want 19", len(lines))
	}
	cell := func(line int, name string) string {
		for i, h := range header {
			if h == name {
				return lines[line][i]
			}
		}
		t.Fatalf("no column %q", name)
		return ""
	}
	for _, tt := range []struct {
		line       int
		name, want string
	}{
		{1, "variety", "Red <oak> & more"}, {1, "one_of", "a | b"}, {1, "note", "under\nthe lamp"}, {1, "kind", "sown"},
		{8, "kg", "0.25"}, {9, "measure", "bowl"}, {13, "taken_back", "yes"}, {10, "taken_back", ""}, {15, "taken_back", "yes"},
		{18, "looks", "'=HYPERLINK(\"http://x\")"}, {18, "note", "-5"},
	} {
		if got := cell(tt.line, tt.name); got != tt.want {
			t.Errorf("entry %d, %s: %q, want %q", tt.line+1, tt.name, got, tt.want)
		}
	}
	plantingHeader, plantings := rows(t, filepath.Join(dir, "plantings.csv"))
	if len(plantings) != 5 {
		t.Errorf("plantings.csv has %d lines, want 5", len(plantings))
	}
	for _, name := range append(append([]string(nil), header...), plantingHeader...) {
		described := false
		for _, line := range strings.Split(string(readme), "\n") {
			f := strings.Fields(line)
			described = described || len(f) > 2 && f[0] == name && strings.HasPrefix(line, "  ")
		}
		if !described {
			t.Errorf("README.txt does not describe the column %q", name)
		}
	}
	garden, err := os.ReadFile(filepath.Join(dir, "garden.yaml"))
	if err != nil || string(garden) != "garden: Invented for tests\nspaces: []\n" {
		t.Errorf("garden.yaml: %q, %v", garden, err)
	}
	if err := l.Export(context.Background(), dir); err == nil {
		t.Error("an export into a folder that is not empty: no refusal")
	}
}

// TestReadmeTellsHowToCheck does what README.txt says with nothing but the
// JSON, sharing no code with the ledger.
func TestReadmeTellsHowToCheck(t *testing.T) {
	dir, l := exported(t)
	b, err := os.ReadFile(filepath.Join(dir, "events.json"))
	if err != nil {
		t.Fatal(err)
	}
	var all []struct {
		Seq                                                        uint64
		ID, Parent, Device, Happened, Written, Kind, Digest, Chain string
		Version                                                    int
		Body                                                       json.RawMessage
	}
	if err := json.Unmarshal(b, &all); err != nil {
		t.Fatal(err)
	}
	line := func(s string) string { return fmt.Sprintf("%d:%s\n", len(s), s) }
	chain := string(make([]byte, 32))
	for _, e := range all {
		d := sha256.Sum256([]byte("bedweek event 1\n" + line(e.ID) + line(e.Parent) + line(e.Device) + line(e.Happened) +
			line(e.Kind) + line(fmt.Sprint(e.Version)) + line(string(e.Body))))
		seq := string([]byte{0, 0, 0, 0, 0, 0, byte(e.Seq >> 8), byte(e.Seq)})
		c := sha256.Sum256([]byte("bedweek chain 1\n" + line(chain) + seq + line(e.Written) + line(string(d[:]))))
		if hex.EncodeToString(d[:]) != e.Digest || hex.EncodeToString(c[:]) != e.Chain {
			t.Fatalf("entry %d: digest %x, chain %x; the file says %s, %s", e.Seq, d, c, e.Digest, e.Chain)
		}
		chain = string(c[:])
	}
	if _, head := l.Head(); len(all) != 19 || chain != string(head) {
		t.Errorf("%d entries, last chain %x, want %x", len(all), chain, head)
	}
	spoilt := bytes.Replace(b, []byte("it still stands"), []byte("it still stood!"), 1)
	if _, err := ReadEvents(bytes.NewReader(spoilt)); err == nil || !strings.Contains(err.Error(), "entry 15") {
		t.Errorf("a changed export: %v, want entry 15 named", err)
	}
}

func TestExportZip(t *testing.T) {
	dir, l := exported(t)
	var one, two bytes.Buffer
	if err := l.ExportZip(context.Background(), &one); err != nil {
		t.Fatal(err)
	}
	if err := l.ExportZip(context.Background(), &two); err != nil || !bytes.Equal(one.Bytes(), two.Bytes()) {
		t.Errorf("the same record gives other bytes (%v)", err)
	}
	z, err := zip.NewReader(bytes.NewReader(one.Bytes()), int64(one.Len()))
	if err != nil {
		t.Fatal(err)
	}
	if len(z.File) != 5 {
		t.Errorf("%d files, want 5", len(z.File))
	}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			t.Fatal(err)
		}
		got, err := io.ReadAll(r)
		want, err2 := os.ReadFile(filepath.Join(dir, f.Name))
		if err != nil || err2 != nil || !bytes.Equal(got, want) {
			t.Errorf("%s differs from the folder's (%v, %v)", f.Name, err, err2)
		}
	}
}

func TestExportOfNothing(t *testing.T) {
	l := open(t, t.TempDir())
	dir := filepath.Join(t.TempDir(), "out")
	if err := l.Export(context.Background(), dir); err != nil {
		t.Fatal(err)
	}
	if _, lines := rows(t, filepath.Join(dir, "events.csv")); len(lines) != 0 {
		t.Errorf("%d lines, want none", len(lines))
	}
	if err := l.ExportZip(context.Background(), io.Discard); err != nil {
		t.Fatal(err)
	}
}
