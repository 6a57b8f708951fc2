package garden

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/goccy/go-yaml/ast"
)

// Path leads to a place in a garden file: keys and, in lists, positions from
// "0". New as the last step means a new entry at the end of a list.
type Path []string

// New is the step that stands for a new entry of a list.
const New = "+"

func (p Path) String() string { return strings.Join(p, " > ") }

// Op is what a patch does.
type Op int

// What a patch can do.
const (
	Put  Op = iota // write Value at At, new or instead of what stands there
	Drop           // take the entry away; nothing there is no fault
	Move           // bring the entry at At before its sibling To, or last when To is ""
	Key            // give the entry another key, To
)

// Patch is one change to the text of a garden file. Everything it does not
// speak of, comments above all, stays byte for byte.
type Patch struct {
	Op    Op
	At    Path
	Value Value
	To    string
}

// Value is what a patch writes: a text as typed, keys with values, or a list.
type Value struct {
	Text  string
	Pairs []KeyValue // of a mapping, in order
	Items []Value    // of a list
	Line  bool       // a mapping or list on one line, in brackets
}

// KeyValue is one key of a Value with what stands behind it.
type KeyValue struct {
	Key   string
	Value Value
}

// Text makes a value of one text, written so that it reads back as typed.
func Text(typed string) Value { return Value{Text: typed} }

// errPlace is wrapped when a path leads nowhere or to something of another
// shape.
var errPlace = errors.New("no such place in the garden file")

// Apply makes patches to a text, one after the other. It fails, changing
// nothing, when the text is not readable YAML, when a path leads nowhere, or
// when the text would not read as meant after a patch.
func Apply(text []byte, patches ...Patch) ([]byte, error) {
	mark := []byte("\ufeff")
	head := len(text) - len(bytes.TrimPrefix(text, mark))
	out := text[head:]
	windows := bytes.Contains(out, []byte("\r\n"))
	if windows {
		if bytes.Count(out, []byte("\n")) != bytes.Count(out, []byte("\r\n")) {
			return nil, errors.New("the file mixes two kinds of line ends; save it again in an editor")
		}
		out = bytes.ReplaceAll(out, []byte("\r\n"), []byte("\n"))
	}
	for _, p := range patches {
		next, err := apply(out, p)
		if err != nil {
			return nil, fmt.Errorf("changing %s: %w", p.At, err)
		}
		out = next
	}
	if windows {
		out = bytes.ReplaceAll(out, []byte("\n"), []byte("\r\n"))
	}
	return slices.Concat(text[:head], out), nil
}

func apply(text []byte, p Patch) ([]byte, error) {
	if len(p.At) == 0 {
		return nil, errPlace
	}
	d, err := openText(text)
	if err != nil {
		return nil, err
	}
	switch p.Op {
	case Drop:
		return d.drop(p.At)
	case Move:
		return d.move(p.At, p.To)
	case Key:
		return d.rename(p.At, p.To)
	}
	return d.put(p.At, p.Value)
}

// put writes a value where the path leads, making what is missing on the way.
func (d *draft) put(at Path, v Value) ([]byte, error) {
	if s, ok := d.find(at); ok {
		return d.replace(s, v)
	}
	parent, ok := d.find(at[:len(at)-1])
	last := at[len(at)-1]
	if !ok {
		return d.put(at[:len(at)-1], wrapped(last, v))
	}
	if null(parent.value) || emptyFlow(parent.value) {
		if parent.pair == nil {
			return nil, errPlace
		}
		return d.replace(parent, wrapped(last, v))
	}
	if last == New {
		return d.add(parent, v)
	}
	return d.insert(parent, at, last, v)
}

// wrapped is a value with the step that leads to it around it.
func wrapped(step string, v Value) Value {
	if step == New {
		return Value{Items: []Value{v}}
	}
	return Value{Pairs: []KeyValue{{step, v}}}
}

// insert puts a new key into a mapping, where the published order has it.
func (d *draft) insert(parent spot, at Path, key string, v Value) ([]byte, error) {
	m, ok := mapping(parent.value)
	if !ok {
		return nil, errPlace
	}
	if m.flow {
		end := d.end(parent.value) - 1
		for end > 0 && (d.text[end-1] == ' ' || d.text[end-1] == '\n') {
			end--
		}
		v.Line = true
		return d.splice(end, end, ", "+quote(key, true)+": "+rendered(v, 0, d.nl, true))
	}
	indent := d.column(m.values[0].Key) - 1
	lines := block(KeyValue{key, v}, indent, d.nl)
	before := d.placeFor(m, at, key)
	if before >= 0 {
		from := d.lineStart(d.start(m.values[before].Key))
		return d.splice(d.aboveComments(from, indent), d.aboveComments(from, indent), lines)
	}
	to := d.lineEnd(d.end(m.values[len(m.values)-1]))
	if to == len(d.text) && (to == 0 || d.text[to-1] != '\n') {
		lines = d.nl + lines
	}
	return d.splice(to, to, lines)
}

// placeFor returns the index of the key that a new key should stand before by
// the order of the formats page, -1 for the end. Ids come in the order of
// entry.
func (d *draft) placeFor(m keys, at Path, key string) int {
	order := orderAt(at[:len(at)-1])
	mine := slices.Index(order, key)
	if mine < 0 {
		return -1
	}
	for i, v := range m.values {
		text, _, _ := scalar(v.Key)
		if theirs := slices.Index(order, text); theirs > mine {
			return i
		}
	}
	return -1
}

// orderAt lists the keys of the mapping a path leads to, in published order.
func orderAt(at Path) []string {
	switch {
	case len(at) == 0:
		return fileShape().names()
	case len(at) == 1 && at[0] == "place":
		return placeShape().names()
	case len(at) == 2 && at[0] == "spaces":
		return spaceShape().names()
	case len(at) == 2 && at[0] == "people":
		return personShape().names()
	case len(at) == 2 && at[0] == "media":
		return mediumShape().names()
	case len(at) == 2 && at[0] == "obstacles":
		return obstacleShape().names()
	case len(at) == 4 && at[0] == "spaces" && at[2] == "standing":
		return standingShape().names()
	case len(at) == 4 && at[0] == "spaces" && at[2] == OtherKey:
		return otherShape().names()
	}
	return nil
}

// add puts a new entry at the end of a list.
func (d *draft) add(parent spot, v Value) ([]byte, error) {
	s, ok := bare(parent.value).(*ast.SequenceNode)
	if !ok {
		return d.listOfOne(parent, v)
	}
	end := d.end(s)
	if s.IsFlowStyle {
		at := end - 1
		for at > 0 && d.text[at-1] == ' ' {
			at--
		}
		return d.splice(at, at, ", "+rendered(v, 0, d.nl, true))
	}
	to := d.lineEnd(end)
	lines := item(v, d.column(s)-1, d.nl)
	if to == len(d.text) && d.text[to-1] != '\n' {
		lines = d.nl + lines
	}
	return d.splice(to, to, lines)
}

// listOfOne turns a single entry, which stands for a list of one, into a list
// and adds to it.
func (d *draft) listOfOne(parent spot, v Value) ([]byte, error) {
	_, _, single := scalar(parent.value)
	m, isMap := mapping(parent.value)
	if parent.pair == nil || !single && !(isMap && m.flow) {
		return nil, fmt.Errorf("%w: a single entry spread over lines; write it as a list with a dash", errPlace)
	}
	was := string(d.text[d.start(parent.value):d.end(parent.value)])
	indent := strings.Repeat(" ", d.column(parent.pair.Key)+1)
	lines := d.nl + indent + "- " + was + d.nl + strings.TrimRight(item(v, d.column(parent.pair.Key)+1, d.nl), "\r\n")
	return d.splice(d.start(parent.value), d.end(parent.value), strings.TrimPrefix(lines, " "))
}

// replace writes a value instead of another.
func (d *draft) replace(s spot, v Value) ([]byte, error) {
	was, _, single := scalar(s.value)
	plain := v.Pairs == nil && v.Items == nil
	switch {
	case single && plain && strings.TrimSpace(was) == strings.TrimSpace(v.Text):
		return d.text, nil
	case single && plain && bare(s.value).Type() != ast.LiteralType:
		return d.splice(d.start(s.value), d.end(s.value), quote(v.Text, s.flow))
	case s.flow:
		from, to := d.start(s.value), d.end(s.value)
		if null(s.value) {
			return nil, errPlace
		}
		v.Line = true
		return d.splice(from, to, rendered(v, 0, d.nl, true))
	case s.pair != nil:
		return d.replaceBlock(s, v)
	}
	from := d.lineStart(d.start(s.value))
	return d.splice(from, d.lineEnd(d.end(s.value)), item(v, d.dash(s), d.nl))
}

// replaceBlock rewrites what stands behind a key, keeping a comment behind
// the key's own line.
func (d *draft) replaceBlock(s spot, v Value) ([]byte, error) {
	from := d.afterColon(s.pair)
	to := from
	if !null(s.value) {
		to = d.end(s.value)
	}
	indent := d.column(s.pair.Key) - 1
	fresh := strings.TrimRight(rendered(v, indent, d.nl, false), "\r\n")
	first, rest, more := strings.Cut(fresh, "\n")
	line := d.lineEnd(from)
	if to <= line { // it stood on the key's own line: its comment stays there
		remark := strings.TrimRight(string(d.text[to:line]), "\r\n")
		if strings.TrimSpace(remark) == "" {
			remark = ""
		} else if !more {
			remark = " " + strings.TrimLeft(remark, " ")
			if pad := string(d.text[to:line]); strings.HasPrefix(pad, "  ") {
				remark = strings.TrimRight(pad, "\r\n")
			}
		}
		end := line
		for end > to && (d.text[end-1] == '\n' || d.text[end-1] == '\r') {
			end--
		}
		if more {
			return d.splice(from, end, strings.TrimRight(first, "\r")+keepRemark(remark)+d.nl+rest)
		}
		return d.splice(from, end, first+remark)
	}
	// Below the key: its own line keeps its remark; the lines below go.
	head := line
	for head > from && (d.text[head-1] == '\n' || d.text[head-1] == '\r') {
		head--
	}
	end := d.lineEnd(to)
	for end > to && (d.text[end-1] == '\n' || d.text[end-1] == '\r') {
		end--
	}
	remark := strings.TrimSpace(string(d.text[from:head]))
	out := strings.TrimRight(first, "\r") + keepRemark(remark)
	if more {
		out += d.nl + rest
	}
	return d.splice(from, end, out)
}

func keepRemark(remark string) string {
	if remark = strings.TrimSpace(remark); remark == "" {
		return ""
	}
	return " " + remark
}

// drop takes an entry away with its lines. Comments above it stay.
func (d *draft) drop(at Path) ([]byte, error) {
	s, ok := d.find(at)
	if !ok {
		return d.text, nil
	}
	if s.siblings == 1 && len(at) > 1 { // the last of its section: the section goes empty
		parent, _ := d.find(at[:len(at)-1])
		if parent.pair != nil && !parent.flow {
			if len(at) > 2 || at[0] != "spaces" {
				return d.drop(at[:len(at)-1])
			}
			return d.splice(d.afterColon(parent.pair), d.end(parent.value), " {}")
		}
		return nil, errPlace
	}
	if s.flow {
		return d.dropFlow(s)
	}
	from := d.lineStart(d.begin(s))
	to := d.lineEnd(d.finish(s))
	return d.splice(from, to, "")
}

// dropFlow takes an entry out of brackets, with one comma.
func (d *draft) dropFlow(s spot) ([]byte, error) {
	from, to := d.begin(s), d.finish(s)
	if s.index+1 < s.siblings {
		for to < len(d.text) && strings.ContainsRune(", \n", rune(d.text[to])) {
			to++
		}
		return d.splice(from, to, "")
	}
	for from > 0 && strings.ContainsRune(", \n", rune(d.text[from-1])) {
		from--
	}
	return d.splice(from, to, "")
}

// move brings an entry of a section before another, with the comments that
// stand right above it.
func (d *draft) move(at Path, to string) ([]byte, error) {
	s, ok := d.find(at)
	if !ok || s.flow || s.pair == nil {
		return nil, errPlace
	}
	if to == at[len(at)-1] {
		return d.text, nil
	}
	indent := d.column(s.pair.Key) - 1
	from := d.aboveComments(d.lineStart(d.begin(s)), indent)
	end := d.belowComments(d.lineEnd(d.finish(s)), indent)
	lines := string(d.text[from:end])
	if !strings.HasSuffix(lines, "\n") {
		lines += d.nl
	}
	var target int
	if to == "" {
		parent, _ := d.find(at[:len(at)-1])
		m, ok := mapping(parent.value)
		if !ok {
			return nil, errPlace
		}
		target = d.belowComments(d.lineEnd(d.end(m.values[len(m.values)-1])), indent)
	} else {
		other, ok := d.find(append(slices.Clone(at[:len(at)-1]), to))
		if !ok || other.flow {
			return nil, errPlace
		}
		target = d.aboveComments(d.lineStart(d.begin(other)), indent)
	}
	switch {
	case target >= from && target <= end:
		return d.text, nil
	case target < from:
		return slices.Concat(d.text[:target], []byte(lines), d.text[target:from], d.text[end:]), nil
	}
	mid := string(d.text[end:target])
	if !strings.HasSuffix(mid, "\n") {
		mid += d.nl
	}
	return slices.Concat(d.text[:from], []byte(mid), []byte(lines), d.text[target:]), nil
}

// rename gives an entry another key. Names of it elsewhere are the caller's.
func (d *draft) rename(at Path, to string) ([]byte, error) {
	s, ok := d.find(at)
	if !ok || s.pair == nil {
		return nil, errPlace
	}
	if _, taken := d.find(append(slices.Clone(at[:len(at)-1]), to)); taken {
		return nil, fmt.Errorf("%s stands there already", to)
	}
	from := d.start(s.pair.Key)
	return d.splice(from, d.scalarEnd(from, s.pair.Key, s.flow, true), quote(to, s.flow))
}
