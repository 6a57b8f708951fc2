// Package trouble tells from the look of a trouble which causes fit, which
// animal did it, and what keeps it off.
//
// What for: the question at the bed, "what is wrong with this plant?", and the
// cause of a loss.
//
// Method: a key. Each sign lists causes, likeliest first by our judgement, each
// with what would tell it from the others and what to do first. Sources are in
// book/sources.csv; most pages were read in part, and it says so. Order within
// a sign is ours: no page gives chances.
//
// Conventions: losses are the ledger's words. Mesh in mm.
//
// Left out: sprays, doses and poisons, for good; diseases by name where only a
// laboratory tells them apart; woody plants.
package trouble
