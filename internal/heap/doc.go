// Package heap judges compost: whether a log of temperatures meets a published
// rule for killing germs, and what a mixture of materials comes to.
//
// Rules: [CFR503] 40 CFR Part 503 Appendix B, processes to further and to
// significantly reduce pathogens; [CFR257] the older wording of 40 CFR Part
// 257 Appendix II; [NOP] 7 CFR 205.203(c)(2) of the US National Organic
// Program. Mixing: mass balance as taught by the Cornell Waste Management
// Institute; carbon and nitrogen add up, ratios do not.
//
// Conventions: °C; one temperature a day is the day's lowest reading in the
// hot part; moisture in percent of wet weight, carbon and nitrogen in percent
// of dry weight.
//
// A plain heap is not one of the listed methods, however hot it once was, and
// counts as not hygienised. Local rules, and what the eaters can bear, come
// first: nothing here declares a compost fit for salad.
//
// Left out: how long weed seeds, herbicide residues and plant diseases last,
// sampling, and sewage sludge, for which the rules were written.
package heap
