package main

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"bedweek/internal/reckon"
)

// printDay prints a day as a short readable report.
func printDay(w io.Writer, d *reckon.Day) {
	fmt.Fprintf(w, "%s, %s\n%s\n", d.Garden, d.Date.Long(), d.Place)
	if d.Demo {
		fmt.Fprintln(w, "An invented demo garden on a real weather record.")
	}
	para(w, "", d.Weather)
	for _, n := range d.Notes {
		para(w, "note: ", n)
	}
	fmt.Fprintf(w, "\nTO DO NOW\n")
	if len(d.Today) == 0 {
		fmt.Fprintln(w, "Nothing is due.")
	}
	var cautions, places []string
	for i, t := range d.Today {
		cautions, places = append(cautions, t.Answer.Caution), append(places, strconv.Itoa(i+1))
	}
	care := reckon.CareOnce(cautions, places)
	for i, t := range d.Today {
		mark := " "
		if t.Pressing {
			mark = "!"
		}
		para(w, fmt.Sprintf("%s%2d. ", mark, i+1), t.Answer.Verdict)
		para(w, "     why: ", t.Answer.Reason)
		para(w, "     how sure: ", t.Answer.Sure)
		para(w, "     look first: ", t.Answer.Look)
		para(w, "     would change it: ", t.Answer.Change)
		para(w, "     but: ", t.Reward)
		para(w, "     take care: ", care[i])
	}
	fmt.Fprintf(w, "\nEACH SPACE, NOW AND NEXT\n")
	for _, s := range d.Spaces {
		fmt.Fprintf(w, "%s (%s)\n", s.Name, s.Kind)
		para(w, "   ", s.Now)
		para(w, "   ", s.Next)
	}
	if len(d.Keeps) > 0 {
		fmt.Fprintf(w, "\nPULL OR KEEP\n")
		for _, k := range d.Keeps {
			para(w, "   ", k.Answer.Verdict+" "+k.Answer.Reason)
		}
	}
	if d.Later != nil {
		fmt.Fprintf(w, "\nWHAT CAN WAIT\n")
		para(w, "   ", d.Later.Words)
		for _, x := range d.Waiting() {
			para(w, "   ", x.Says())
		}
	}
	fmt.Fprintf(w, "\nON THE TABLE\n")
	for _, f := range d.Table {
		line := "   " + f.Answer.Verdict
		if f.Answer.Sure != "" {
			line = strings.TrimSuffix(line, ".") + "; " + f.Answer.Sure + "."
		}
		fmt.Fprintln(w, line)
	}
	fmt.Fprintf(w, "\nTHE PLAN\n")
	para(w, "   ", d.Plan.Words)
	if d.Water != nil {
		para(w, "   ", d.Water.Words)
	}
	fmt.Fprintf(w, "   Status %s, seed %d, work %d.\n", d.Plan.Status, d.Plan.Seed, d.Plan.Work)
}

// para prints text broken at 78 columns behind a first-line lead; nothing for
// empty text.
func para(w io.Writer, lead, text string) {
	if text == "" {
		return
	}
	indent := strings.Repeat(" ", len([]rune(lead)))
	line, used := lead, len([]rune(lead))
	empty := true
	for _, word := range strings.Fields(text) {
		n := len([]rune(word))
		if !empty && used+1+n > 78 {
			fmt.Fprintln(w, line)
			line, used, empty = indent, len(indent), true
		}
		if !empty {
			line += " "
			used++
		}
		line += word
		used += n
		empty = false
	}
	fmt.Fprintln(w, line)
}
