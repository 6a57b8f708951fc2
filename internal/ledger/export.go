package ledger

import (
	"archive/zip"
	"bytes"
	"context"
	"encoding/csv"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"bedweek/internal/cal"
)

// sheetFile is one file of an export.
type sheetFile struct {
	name string
	data []byte
	read func() ([]byte, error) // for what is large; nil = data is all
}

func (f sheetFile) bytes() ([]byte, error) {
	if f.read == nil {
		return f.data, nil
	}
	return f.read()
}

// Extra is a file that somebody else adds to an export, as the plan's calendar.
type Extra struct {
	Name string
	Data []byte
}

// Export writes the whole record into a new or empty folder, in files that
// need no program of ours: events.csv, plantings.csv, events.json, the garden
// file when there is one, the weather files it names, the pictures, and README.txt, which describes every
// column and the extra files.
func (l *Ledger) Export(ctx context.Context, folder string, more ...Extra) error {
	files, _, err := l.export(ctx, more)
	if err != nil {
		return fmt.Errorf("exporting: %w", err)
	}
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return fmt.Errorf("exporting: %w", err)
	}
	there, err := os.ReadDir(folder)
	if err != nil {
		return fmt.Errorf("exporting: %w", err)
	}
	if len(there) > 0 {
		return fmt.Errorf("exporting: %s is not empty. Name a new folder", folder)
	}
	for _, f := range files {
		path := filepath.Join(folder, filepath.FromSlash(f.name))
		data, err := f.bytes()
		if err == nil {
			err = os.MkdirAll(filepath.Dir(path), 0o700)
		}
		if err != nil {
			return fmt.Errorf("exporting %s: %w", f.name, err)
		}
		if err := os.WriteFile(path, data, 0o600); err != nil {
			return fmt.Errorf("exporting: %w", err)
		}
		if err := syncFile(path); err != nil {
			return fmt.Errorf("exporting: %w", err)
		}
	}
	return syncFolder(folder)
}

// ExportZip writes the same files as one zip archive. The same record gives
// the same bytes.
func (l *Ledger) ExportZip(ctx context.Context, w io.Writer, more ...Extra) error {
	files, at, err := l.export(ctx, more)
	if err != nil {
		return fmt.Errorf("exporting: %w", err)
	}
	z := zip.NewWriter(w)
	for _, f := range files {
		p, err := z.CreateHeader(&zip.FileHeader{Name: f.name, Method: zip.Deflate, Modified: at})
		if err != nil {
			return fmt.Errorf("exporting %s: %w", f.name, err)
		}
		data, err := f.bytes()
		if err != nil {
			return fmt.Errorf("exporting %s: %w", f.name, err)
		}
		if _, err := p.Write(data); err != nil {
			return fmt.Errorf("exporting %s: %w", f.name, err)
		}
	}
	if err := z.Close(); err != nil {
		return fmt.Errorf("exporting: %w", err)
	}
	return nil
}

// export makes the files, and tells when the last entry was written.
func (l *Ledger) export(ctx context.Context, more []Extra) ([]sheetFile, time.Time, error) {
	events, err := l.Events(ctx)
	if err != nil {
		return nil, time.Time{}, err
	}
	at := time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC) // the oldest a zip can say
	if n := len(events); n > 0 && events[n-1].Written.After(at) {
		at = events[n-1].Written.Truncate(time.Second)
	}
	state := Replay(events)
	eventSheet, err := eventsCSV(events)
	if err != nil {
		return nil, at, err
	}
	plantingSheet, err := plantingsCSV(state.Plantings)
	if err != nil {
		return nil, at, err
	}
	all, err := eventsJSON(events)
	if err != nil {
		return nil, at, err
	}
	files := []sheetFile{
		{name: "README.txt"}, // written last, when all is known
		{name: "events.csv", data: eventSheet},
		{name: "plantings.csv", data: plantingSheet},
		{name: "events.json", data: all},
	}
	if state.GardenText != "" {
		files = append(files, sheetFile{name: "garden.yaml", data: []byte(state.GardenText)})
	}
	weather, err := besides(l.dir, weatherNamed(events))
	if err != nil {
		return nil, at, err
	}
	for _, b := range weather {
		files = append(files, sheetFile{name: b.Name, read: func() ([]byte, error) { return os.ReadFile(filepath.Join(l.dir, b.Name)) }})
	}
	files[0].data = readme(events, state, weather, more)
	for _, x := range more {
		files = append(files, sheetFile{name: x.Name, data: x.Data})
	}
	for _, d := range photosNamed(events) {
		files = append(files, sheetFile{name: "photos/" + fileOf(d), read: func() ([]byte, error) {
			if len(d) > 64 {
				return OpenSound(l.dir, d[:64], d[65:])
			}
			return OpenPhoto(l.dir, d, false)
		}})
	}
	return files, at, nil
}

// column is one column of a sheet and what it means.
type column[T any] struct {
	name, means string
	cell        func(T) string
}

func sheet[T any](columns []column[T], rows []T) ([]byte, error) {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	line := make([]string, len(columns))
	for i, c := range columns {
		line[i] = c.name
	}
	if err := w.Write(line); err != nil {
		return nil, err
	}
	for _, r := range rows {
		for i, c := range columns {
			line[i] = Guard(c.cell(r))
		}
		if err := w.Write(line); err != nil {
			return nil, err
		}
	}
	w.Flush()
	return b.Bytes(), w.Error()
}

// entry is an event ready for a line of a sheet.
type entry struct {
	Event
	back   bool
	fields map[string]string // of the body, by JSON name, as shown
}

func eventsCSV(events []Event) ([]byte, error) {
	back := TakenBack(events)
	entries := make([]entry, len(events))
	for i, e := range events {
		fields, err := shown(e)
		if err != nil {
			return nil, err
		}
		entries[i] = entry{e, back[e.ID], fields}
	}
	return sheet(eventSheetColumns(), entries)
}

// shown writes each field of a body as a cell. A list is joined by " | ".
func shown(e Event) (map[string]string, error) {
	var raw map[string]json.RawMessage
	if err := json.Unmarshal(e.Body, &raw); err != nil {
		return nil, fmt.Errorf("reading entry %s: %w", e.ID, err)
	}
	out := make(map[string]string, len(raw))
	for name, v := range raw {
		var text string
		var list []string
		switch {
		case json.Unmarshal(v, &text) == nil:
			out[name] = text
		case json.Unmarshal(v, &list) == nil:
			out[name] = strings.Join(list, " | ")
		default:
			out[name] = string(v)
		}
	}
	return out, nil
}

func plantingsCSV(all []Planting) ([]byte, error) { return sheet(plantingSheetColumns(), all) }

// flatEvent is an event as events.json has it.
type flatEvent struct {
	Seq      int64           `json:"seq"`
	ID       string          `json:"id"`
	Parent   string          `json:"parent,omitempty"`
	Device   string          `json:"device"`
	Happened cal.Day         `json:"happened"`
	Written  string          `json:"written"`
	Kind     Kind            `json:"kind"`
	Version  int             `json:"version"`
	Body     json.RawMessage `json:"body"`
	Digest   string          `json:"digest"`
	Chain    string          `json:"chain"`
}

// eventsJSON writes a list with one event a line.
func eventsJSON(events []Event) ([]byte, error) {
	var b bytes.Buffer
	b.WriteString("[")
	for i, e := range events {
		line, err := marshal(flatEvent{e.Seq, e.ID, e.Parent, e.Device, e.Happened, instant(e.Written),
			e.Kind, e.Version, e.Body, hex.EncodeToString(e.Digest), hex.EncodeToString(e.Chain)})
		if err != nil {
			return nil, fmt.Errorf("writing entry %s: %w", e.ID, err)
		}
		if i > 0 {
			b.WriteString(",")
		}
		b.WriteString("\n")
		b.Write(line)
	}
	b.WriteString("\n]\n")
	return b.Bytes(), nil
}

// ReadEvents reads the events.json of an export back, checking every digest
// and the chain. Given to Append of an empty record in this order, the events
// get the same places and the same chain.
func ReadEvents(r io.Reader) ([]Event, error) {
	var flat []flatEvent
	if err := json.NewDecoder(r).Decode(&flat); err != nil {
		return nil, fmt.Errorf("reading exported entries: %w", err)
	}
	last := mark{0, firstChain()}
	var out []Event
	for i, f := range flat {
		digest, err1 := hex.DecodeString(f.Digest)
		chain, err2 := hex.DecodeString(f.Chain)
		if err1 != nil || err2 != nil {
			return nil, fmt.Errorf("reading exported entry %d: its digest or chain is not hexadecimal", i+1)
		}
		line := row{f.Seq, f.ID, f.Parent, f.Device, f.Happened.String(), f.Written, string(f.Kind), f.Version, string(f.Body), digest, chain}
		if err := line.check(last); err != nil {
			return nil, fmt.Errorf("reading exported entry %d: %w", i+1, err)
		}
		e, err := line.event()
		if err != nil {
			return nil, fmt.Errorf("reading exported entry %d: %w", i+1, err)
		}
		out, last = append(out, e), mark{f.Seq, chain}
	}
	return out, nil
}

func number(n int, none bool) string {
	if none {
		return ""
	}
	return strconv.Itoa(n)
}

func dayCell(d cal.Day) string {
	if d == 0 {
		return ""
	}
	return d.String()
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return ""
}
