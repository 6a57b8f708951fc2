// Package weather turns weather files into days without holes, works out the
// radiation and water demand of a day, and makes possible futures.
//
// Reading. Plain daily CSV, GHCN-Daily (.dly, by-station CSV in long and wide
// form), monthly normals and hourly normals. Every fault is reported in words,
// all at once. Missing days are filled and listed; nothing is filled in
// silence.
//
// Radiation and evaporation follow [FAO56], R. G. Allen, L. S. Pereira,
// D. Raes and M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage
// Paper 56 (1998). Equation numbers stand beside the formulas.
//
// Futures. A long record is sampled by whole years. A short one, or monthly
// normals, drive a generator after C. W. Richardson, Stochastic simulation of
// daily precipitation, temperature and solar radiation, Water Resources
// Research 17 (1981): wet and dry days as a Markov chain, gamma rain, and
// correlated temperatures that depend on the day being wet. Ours adds a slow
// swing of about a month, an offset that lasts a year, and a longer tail of
// cold nights. See docs/weather.md for the values assumed.
//
// Conventions: °C, mm, m/s at 2 m, MJ/m² per day; latitude north +; the day of
// the year counts from 1. Time never comes from the clock and chance only from
// a seed, so the same arguments give the same futures.
//
// Range: latitudes -90 to 90, years 1750 to 2200. Futures need a year of
// record at least, or twelve normals.
//
// Left out: humidity and sunshine hours (files rarely have them), snow lying,
// hail, gusts, climate change over the years of a record, and any link between
// the weather of one year and the next.
package weather
