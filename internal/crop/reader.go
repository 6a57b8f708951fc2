package crop

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"
)

// mostBytes is the longest book file taken: the built-in book is a twentieth
// of it.
const mostBytes = 4 << 20

// Read reads crops from one book file; docs/crops.md gives the format. Every
// fault of the file is listed. A crop with a fault of its own is left out and
// the others are still returned, in the order of the file. The sources and
// emergence tables of the built-in book may be named. The built-in book itself
// is never touched.
func Read(name string, r io.Reader) ([]*Crop, []Fault) {
	rd := newReader()
	rd.read(name, r)
	return rd.crops, rd.faults
}

// reader gathers crops and tables from files, one after another.
type reader struct {
	sources map[string]bool
	figs    []figKey
	words   []wordKey
	tables  []*Table
	crops   []*Crop
	faults  []Fault

	file string
	line int
	text string

	crop  *Crop  // being read, nil between crops
	table *Table // being read, nil between tables
	seen  map[string]int
	first int  // line the block began on
	bad   bool // the block has a fault
}

// newReader returns a reader that knows the built-in sources and tables.
func newReader() *reader {
	rd := &reader{sources: map[string]bool{}, figs: figKeys(), words: wordKeys()}
	src, _ := readSources()
	for _, s := range src {
		rd.sources[s.Key] = true
	}
	if b, err := bookFiles.ReadFile(emergenceFile); err == nil {
		rd.read(emergenceFile, bytes.NewReader(b))
	}
	return rd
}

var slug = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

func (rd *reader) read(name string, r io.Reader) {
	rd.file, rd.line, rd.text = name, 0, ""
	all := &io.LimitedReader{R: r, N: mostBytes + 1}
	sc := bufio.NewScanner(all)
	sc.Buffer(make([]byte, 0, 1<<16), 1<<16)
	for sc.Scan() {
		rd.line++
		rd.text = strings.TrimRight(sc.Text(), " \t\r")
		if !utf8.ValidString(rd.text) {
			rd.text = strings.ToValidUTF8(rd.text, "?")
			rd.fault("not plain UTF-8 text", "Save the file as UTF-8.")
			continue
		}
		rd.take(rd.text)
	}
	if err := sc.Err(); err != nil {
		rd.text = ""
		rd.fault("the file could not be read to its end: "+err.Error(), "Check for a very long line.")
	}
	if all.N == 0 {
		rd.text = ""
		rd.fault(fmt.Sprintf("longer than %d MB: the rest was not read", mostBytes>>20), "Part the book into several files.")
	}
	rd.cutShort()
}

// take handles one line.
func (rd *reader) take(s string) {
	if s == "" || strings.HasPrefix(s, "#") {
		return
	}
	key, val, ok := strings.Cut(s, ":")
	key, val = strings.TrimSpace(key), strings.TrimSpace(val)
	if !ok || key == "" {
		rd.fault("not a line of the book", "Write a key, a colon and a value, such as \"base: 4 2 6 | RECALL | memory\".")
		return
	}
	switch {
	case key == "crop" || key == "table":
		rd.cutShort()
		rd.begin(key, val)
	case key == "end":
		rd.end(val)
	case rd.crop != nil:
		rd.once(key)
		rd.cropLine(key, val)
	case rd.table != nil:
		if key != "row" {
			rd.once(key)
		}
		rd.tableLine(key, val)
	default:
		rd.fault("a line outside any crop", "Begin each crop with \"crop: its-name\".")
	}
}

func (rd *reader) fault(what, try string) {
	rd.bad = true
	rd.faults = append(rd.faults, Fault{rd.file, rd.line, excerpt(rd.text), what, try})
}

func (rd *reader) once(key string) {
	if at, twice := rd.seen[key]; twice {
		rd.fault(fmt.Sprintf("%s is given twice, first on line %d", key, at), "Keep one.")
		return
	}
	rd.seen[key] = rd.line
}

func (rd *reader) begin(kind, name string) {
	rd.seen, rd.first, rd.bad = map[string]int{}, rd.line, false
	if !slug.MatchString(name) {
		rd.fault(fmt.Sprintf("%q cannot name a %s", name, kind), "Use small letters, digits and single hyphens.")
	}
	if kind == "table" {
		rd.table = &Table{Name: name}
		if slices.ContainsFunc(rd.tables, func(t *Table) bool { return t.Name == name }) {
			rd.fault("a second table of this name", "Name it differently.")
		}
		return
	}
	rd.crop = &Crop{ID: ID(name)}
	if slices.ContainsFunc(rd.crops, func(c *Crop) bool { return c.ID == ID(name) }) {
		rd.fault("a second crop of this name", "Name it differently.")
	}
}

// cutShort faults a block that has not ended.
func (rd *reader) cutShort() {
	if rd.crop == nil && rd.table == nil {
		return
	}
	kind, name := "crop", ""
	if rd.table != nil {
		kind, name = "table", rd.table.Name
	} else {
		name = string(rd.crop.ID)
	}
	keep := rd.text
	rd.text = ""
	rd.fault(fmt.Sprintf("cut short: %s %s, begun on line %d, has no end", kind, name, rd.first),
		fmt.Sprintf("Add \"end: %s\", or fetch the file again.", name))
	rd.text = keep
	rd.crop, rd.table = nil, nil
}

func (rd *reader) end(name string) {
	switch {
	case rd.crop != nil:
		if name != string(rd.crop.ID) {
			rd.fault(fmt.Sprintf("ends %q, but the crop is %q", name, rd.crop.ID), "Give both the same name.")
		}
		for _, g := range gaps(rd.crop) {
			rd.fault(fmt.Sprintf("%s: %s", rd.crop.ID, g), "")
		}
		if !rd.bad {
			rd.crops = append(rd.crops, rd.crop)
		}
	case rd.table != nil:
		if name != rd.table.Name {
			rd.fault(fmt.Sprintf("ends %q, but the table is %q", name, rd.table.Name), "Give both the same name.")
		}
		if len(rd.table.Rows) < 2 {
			rd.fault("a table needs two rows or more", "")
		}
		if rd.table.Source == "" {
			rd.fault("the table names no source", "Add \"source:\" with a key of docs/sources.md.")
		}
		if !rd.bad {
			rd.tables = append(rd.tables, rd.table)
		}
	default:
		rd.fault("an end with nothing begun", "Begin each crop with \"crop: its-name\".")
	}
	rd.crop, rd.table = nil, nil
}

// cropLine handles one line inside a crop.
func (rd *reader) cropLine(key, val string) {
	if val == "" {
		rd.fault(key+" has no value", "Leave the line out when it is not known.")
		return
	}
	for _, k := range rd.figs {
		if k.name == key {
			rd.figure(k, val)
			return
		}
	}
	if key == "emergence" || key == "emergence-like" {
		rd.emergence(key, val)
		return
	}
	for _, k := range rd.words {
		if k.name == key {
			if what := k.set(rd.crop, val); what != "" {
				rd.fault(key+": "+what, "")
			}
			return
		}
	}
	try := ""
	if near, ok := nearest(key, keyNames()); ok {
		try = fmt.Sprintf("Did you mean %q?", near)
	}
	rd.fault(fmt.Sprintf("no key is called %q", key), try)
}

// emergence joins the crop to its table.
func (rd *reader) emergence(key, name string) {
	if rd.crop.GermTable != "" {
		rd.fault("a crop takes one emergence table", "Keep \"emergence\" or \"emergence-like\".")
		return
	}
	for _, t := range rd.tables {
		if t.Name == name {
			rd.crop.GermTable, rd.crop.GermOwn = name, key == "emergence"
			rd.crop.Germ = slices.Clone(t.Rows)
			return
		}
	}
	var names []string
	for _, t := range rd.tables {
		names = append(names, t.Name)
	}
	rd.fault(fmt.Sprintf("no emergence table is called %q", name), "Tables: "+strings.Join(names, ", ")+".")
}

// figure reads "value low high | source | basis | note".
func (rd *reader) figure(k figKey, val string) {
	parts := strings.SplitN(val, "|", 4)
	for i := range parts {
		parts[i] = strings.TrimSpace(parts[i])
	}
	if len(parts) < 3 {
		rd.fault(k.name+" needs numbers, a source and a basis", "Write \"value low high | source | basis | note\"; the note may be left out.")
		return
	}
	f := Figure{Source: parts[1], Basis: parts[2]}
	if len(parts) == 4 {
		f.Note = parts[3]
	}
	ok := rd.numbers(k, parts[0], &f)
	for _, s := range strings.Split(f.Source, "+") {
		if s = strings.TrimSpace(s); !rd.sources[s] {
			ok = false
			rd.fault(fmt.Sprintf("%s: no source is called %q", k.name, s), "docs/sources.md lists them; a recalled value is \"RECALL\", a working rule \"PRACTICE\".")
		}
	}
	if !slices.Contains(bases(), f.Basis) {
		ok = false
		rd.fault(fmt.Sprintf("%s: %q is not a basis", k.name, f.Basis), "Use one of: "+strings.Join(bases(), ", ")+".")
	}
	if ok {
		*k.at(rd.crop) = f
	}
}

// numbers reads the three numbers of a figure and judges them.
func (rd *reader) numbers(k figKey, s string, f *Figure) bool {
	w := strings.Fields(s)
	if len(w) != 3 {
		rd.fault(k.name+" needs three numbers: value, low, high", "Repeat the value when no range is known.")
		return false
	}
	for i, to := range []*float64{&f.Value, &f.Low, &f.High} {
		v, ok := parseNumber(w[i])
		if !ok {
			rd.fault(fmt.Sprintf("%s: %q is not a number", k.name, w[i]), "")
			return false
		}
		*to = v
	}
	if f.Low > f.Value || f.Value > f.High {
		rd.fault(fmt.Sprintf("%s: range upside down: low %s, value %s, high %s", k.name, show(f.Low), show(f.Value), show(f.High)),
			"The order is value, low, high.")
		return false
	}
	if f.Low < k.min || f.High > k.max {
		rd.fault(fmt.Sprintf("%s: impossible: outside %s to %s %s", k.name, show(k.min), show(k.max), k.unit), "Check the unit.")
		return false
	}
	return true
}

func keyNames() []string {
	out := []string{"crop", "end"}
	for _, k := range wordKeys() {
		out = append(out, k.name)
	}
	for _, k := range figKeys() {
		out = append(out, k.name)
	}
	return out
}
