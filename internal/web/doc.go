// Package web draws one reckon.Day as pages for a phone at the bed, a screen
// at the bench and a sheet of paper, and turns plain forms into ledger events.
//
// What for: answer what must be done now, what follows what in each space,
// whether to pull or keep, whether the table will have a gap, and whether what
// was written down is kept well.
//
// Method: every page is drawn on the server with html/template, works without
// script, and is one exported struct drawn by one template. Each picture and
// the table behind it come from the same struct. Nothing is reckoned here:
// figures come from reckon.Day, and only their places on the page are worked
// out.
//
// Conventions: time runs left to right, today is a heavy upright line, spaces
// stand in walking order, and chance is counted out of twenty. Lengths inside
// pictures are CSS pixels.
//
// Guarding: hosts are allow-listed before anything else, writes from another
// site are refused by net/http's cross-origin protection and by a stricter
// rule of our own, and the content policy allows no inline script or style.
//
// Left out: pairing of phones, an outbox for use without a signal, photos, and
// a dark theme. Pages need the program within reach.
package web
