package ledger

import "strings"

// Guard makes a cell of a CSV file safe to open in a spreadsheet, which takes
// a cell that begins with = + - @, a tab or a line return for a formula. Such
// a cell gets a leading apostrophe; numbers are left alone. Unguard gives the
// text back. [OWASP, "CSV Injection"]
func Guard(cell string) string {
	if guarded(cell) && !isNumber(cell) {
		return "'" + cell
	}
	return cell
}

// Unguard takes the apostrophe away again where Guard set one.
func Unguard(cell string) string {
	if rest, ok := strings.CutPrefix(cell, "'"); ok && guarded(rest) {
		return rest
	}
	return cell
}

// guarded reports whether a cell begins like a formula, after any apostrophes:
// those are counted in, so that a text that had one of its own comes back whole.
func guarded(cell string) bool {
	rest := strings.TrimLeft(cell, "'")
	return rest != "" && strings.ContainsRune("=+-@\t\r", rune(rest[0]))
}

// isNumber reports whether s is a plain decimal number: one sign at most,
// digits, and at most one point between digits.
func isNumber(s string) bool {
	if s != "" && (s[0] == '-' || s[0] == '+') {
		s = s[1:]
	}
	whole, part, point := strings.Cut(s, ".")
	return digits(whole) && (!point || digits(part))
}

func digits(s string) bool {
	for _, c := range s {
		if c < '0' || c > '9' {
			return false
		}
	}
	return s != ""
}
