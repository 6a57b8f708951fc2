// Package crop is the crop book and what a crop does at its seed and in its
// degree days.
//
// What for: the growth kernel, the season plan and the pages all read one
// book, so that a gardener meets one set of figures with their sources.
//
// Method and source: the book is a set of text files in book/, embedded and
// read by a strict reader (Read) that lists every fault of a file. Emergence
// follows the 1954 table of percent and days by constant soil temperature
// [HM1954], straight between its rows and never across a gap unless the name
// of the function says so. Degree days follow the methods of [ZALOM83] and
// [MCMASTER97]; the sine day is integrated exactly.
//
// Conventions: °C, kg, m, litres, minutes, mol/m² a day; times of year never
// appear, since a crop of the book is planted anywhere. Days to first harvest
// hold at the crop's own reference temperature RefC.
//
// Range and accuracy: the table covers 0 to 40 °C of soil in steps of 5, seed
// 13 mm deep, watered. Field losses in cold or crusted soil are greater and
// have no table. Days to harvest differ between sources by a quarter and more;
// every figure keeps that range.
//
// A gardener's own figures stand beside the book's (Change, Book.WithChanges).
//
// Left out: varieties, except where the type decides (climbing and bush
// tomato, onions by day length) or a gardener changes a figure for one; pests
// and diseases; seed life.
package crop
