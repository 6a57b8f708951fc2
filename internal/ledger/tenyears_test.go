package ledger

import (
	"context"
	"crypto/sha256"
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
)

var writeYears = flag.Bool("write-years", false, "write testdata/tenyears.txt anew, after the rules of replay were changed on purpose")

// decade is an invented garden from 2026 to 2035: two leap years, two years of
// 53 weeks, a move from north to south of the equator with the zone that goes
// with it, a phone that gets another name, and a clock that is put forward and
// back. Nothing of it is anybody's.
type decade struct {
	t     *testing.T
	l     *Ledger
	now   time.Time
	n     int
	owner string
	month []Event
}

func (d *decade) write(on cal.Day, kind Kind, body any) string {
	d.t.Helper()
	e, err := NewEvent(d.owner, on, kind, body)
	if err != nil {
		d.t.Fatal(err)
	}
	e.ID = FollowingID("ten years", fmt.Sprint(d.n))
	d.n++
	if d.month = append(d.month, e); len(d.month) == 20 {
		d.send()
	}
	return e.ID
}

// send writes what has gathered.
func (d *decade) send() {
	if len(d.month) > 0 {
		add(d.t, d.l, d.month...)
	}
	d.month = nil
}

// year writes one year, a bed-week at a time: each second week a sowing, set
// out, counted, picked and pulled as the months go on.
func (d *decade) year(y int) {
	first := cal.Of(y, time.January, 1)
	crops := []string{"kale", "bean", "leek", "beet", "lettuce"}
	var stand []string
	days := int(cal.Of(y+1, time.January, 1) - first)
	for i := 0; i < days; i++ {
		on := first + cal.Day(i)
		zone, err := time.LoadLocation(map[bool]string{true: "America/Los_Angeles", false: "Pacific/Auckland"}[y < 2031])
		if err != nil {
			d.t.Fatal(err)
		}
		d.now = time.Date(y, time.January, 1+i, 19, 30, 0, 0, zone)
		switch {
		case i == 0 && (y == 2026 || y == 2031):
			place := "latitude: 47.6 N\nzone: America/Los_Angeles"
			if y == 2031 {
				place = "latitude: 41.3 S\nzone: Pacific/Auckland"
			}
			text := "garden: a yard\nplace:\n  " + strings.ReplaceAll(place, "\n", "\n  ") + "\n"
			d.write(on, GardenSet, Garden{Text: text, SHA256: fmt.Sprintf("%x", sha256.Sum256([]byte(text)))})
		case i == 200 && y == 2029:
			d.owner = "the new phone"
		case y%4 == 0 && on == cal.Of(y, time.February, 29):
			d.write(on, Looked, Look{Space: "bed-1", Looks: "well", Note: "the day that comes every four years"})
		case i == days-1: // in 2026 and 2032 this day lies in a 53rd week
			d.write(on, Looked, Look{Space: "bed-1", Looks: "finished"})
		case i%14 == 0:
			stand = append(stand, d.write(on, Sown, Started{Crop: crops[(i/14)%5], Variety: fmt.Sprintf("kind %d", (y+i)%3), Space: fmt.Sprintf("bed-%d", (i/14)%8), Count: 6 + i%11}))
		case i%14 == 3 && i > 30:
			d.write(on, PutOut, Started{Planting: stand[len(stand)-2], Space: fmt.Sprintf("bed-%d", i%8), Count: 4 + i%3})
		case len(stand) == 0: // the first day of a year with news of the garden sows later
		case i%14 == 5:
			d.write(on, Picked, Amount{Planting: stand[len(stand)/2], Kg: float64(1+i%7) / 4})
		case i%14 == 7:
			d.write(on, Lost, Ended{Planting: stand[len(stand)/3], Count: 1, Cause: "eaten"})
		case i%14 == 9:
			id := d.write(on, Counted, Count{Planting: stand[len(stand)/2], Count: 2 + i%5})
			if i%28 == 9 {
				d.write(on, Voided, Void{Event: id, Why: "counted the wrong bed"})
			}
		case i%14 == 11 && len(stand) > 4:
			d.write(on, Pulled, Ended{Planting: stand[len(stand)-5]})
		}
	}
	d.send()
}

// told is what stands in the table of plantings, in one line for a person and
// one sum for the eye that compares.
func (d *decade) told(y int) string {
	ps, err := projected(context.Background(), d.l.writer)
	if err != nil {
		d.t.Fatal(err)
	}
	rows, standing, kg := sha256.New(), 0, 0.0
	for _, id := range slices.Sorted(maps.Keys(ps)) {
		p := ps[id]
		fmt.Fprintln(rows, p.columns()...)
		if p.Ended == 0 {
			standing += p.Count
		}
		kg += p.PickedKg
	}
	return fmt.Sprintf("%d: %d entries, %d plantings, %d plants standing, %.2f kg picked, rows %x", y, d.n, len(ps), standing, kg, rows.Sum(nil)[:6])
}

// TestTenYears: trust plan (viii). The table of plantings is that of the lines
// kept in testdata, year by year; each year the record is closed, audited,
// opened and backed up; the backup of the fifth year gives the fifth year back;
// an export taken into an empty record gives the same record.
func TestTenYears(t *testing.T) {
	ctx := context.Background()
	d := &decade{t: t, owner: "the phone"}
	dir := t.TempDir()
	var lines []string
	var fifth Proof
	for y := 2026; y <= 2035; y++ {
		l, err := Open(dir, Options{Now: func() time.Time { return d.now }, Program: "bedweek test"})
		if err != nil {
			t.Fatalf("%d: %v", y, err)
		}
		d.l = l
		d.year(y)
		lines = append(lines, d.told(y))
		p, err := l.Backup(ctx, "")
		if err != nil {
			t.Fatalf("%d: %v", y, err)
		}
		if y == 2030 {
			fifth = p
		}
		if err := l.Close(); err != nil {
			t.Fatal(err)
		}
		auditClean(t, dir)
	}
	got := strings.Join(lines, "\n") + "\n"
	if *writeYears {
		if err := os.WriteFile("testdata/tenyears.txt", []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile("testdata/tenyears.txt")
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("ten years amount to\n%swant\n%s", got, want)
	}
	d.sameAfterExport(dir)
	back := t.TempDir()
	if _, err := Restore(back, fifth.Path, Options{Now: func() time.Time { return d.now }, Program: "bedweek test"}); err != nil {
		t.Fatal(err)
	}
	d.l = open(t, back)
	line := d.told(2030)
	_, is, _ := strings.Cut(line, " entries, ")
	_, was, _ := strings.Cut(lines[4], " entries, ")
	if is != was {
		t.Errorf("the fifth year given back: %s, want %s", is, was)
	}
	if proofs := Backups(dir); len(proofs) != 10 {
		t.Errorf("%d backups, want one for each year", len(proofs))
	}
}

// sameAfterExport exports, takes the export into an empty record and compares.
func (d *decade) sameAfterExport(dir string) {
	ctx := context.Background()
	was, fresh := open(d.t, dir), open(d.t, d.t.TempDir())
	out := filepath.Join(d.t.TempDir(), "out")
	if err := was.Export(ctx, out); err != nil {
		d.t.Fatal(err)
	}
	if n, err := fresh.ImportFolder(ctx, out); err != nil || n != d.n {
		d.t.Fatalf("%d of %d entries came back: %v", n, d.n, err)
	}
	a, err := was.State(ctx)
	if err != nil {
		d.t.Fatal(err)
	}
	b, err := fresh.State(ctx)
	if err != nil {
		d.t.Fatal(err)
	}
	if !reflect.DeepEqual(a, b) {
		d.t.Error("an export taken into an empty record gives another record")
	}
	if a.GardenText != "garden: a yard\nplace:\n  latitude: 41.3 S\n  zone: Pacific/Auckland\n" {
		d.t.Errorf("the garden moved south, the record says %q", a.GardenText)
	}
}
