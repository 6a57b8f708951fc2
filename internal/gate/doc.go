// Package gate decides which phones on the home network may see the garden.
//
// What for: the program listens to this machine alone. When its owner opens
// the home network, only phones that were paired get an answer; anybody else
// gets the pairing page and nothing more.
//
// Method: the console on the machine itself makes a code of 40 bits, good for
// five minutes, five tries and one phone, and a scan code with a secret of 130
// bits that needs no tries. A paired phone gets a token of 130 bits in a
// cookie; only its SHA-256 is kept. Wrong tries are slowed, never barred, and
// the console can always make a new code. HTTPS comes from an authority made
// here, limited to home names and addresses. Sources: OWASP cheat sheets
// "Session Management" and "Cross-Site Request Forgery Prevention"; RFC 5280,
// 4.2.1.10 (name constraints); RFC 1918 and RFC 4193 (home addresses).
//
// Conventions: a host is allowed with any port. Forwarded names are not read.
//
// Range: some dozens of phones, one file of them, written whole each time.
//
// Left out: accounts, rights of different sizes, access from outside the home.
package gate
