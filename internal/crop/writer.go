package crop

import (
	"fmt"
	"io"
	"strings"
)

// Write writes crops in the format Read takes. Reading the text gives equal
// crops; comments are not kept.
func Write(w io.Writer, crops []*Crop) error {
	var b strings.Builder
	for _, c := range crops {
		fmt.Fprintf(&b, "crop: %s\n", c.ID)
		for _, k := range wordKeys() {
			if s := k.get(c); s != "" {
				fmt.Fprintf(&b, "%s: %s\n", k.name, s)
			}
		}
		for _, k := range figKeys() {
			f := *k.at(c)
			if !f.Known() {
				continue
			}
			fmt.Fprintf(&b, "%s: %s %s %s | %s | %s", k.name, show(f.Value), show(f.Low), show(f.High), f.Source, f.Basis)
			if f.Note != "" {
				fmt.Fprintf(&b, " | %s", f.Note)
			}
			b.WriteString("\n")
		}
		fmt.Fprintf(&b, "end: %s\n\n", c.ID)
	}
	if _, err := io.WriteString(w, b.String()); err != nil {
		return fmt.Errorf("writing crops: %w", err)
	}
	return nil
}
