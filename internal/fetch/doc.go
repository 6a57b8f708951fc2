// Package fetch asks two open weather services for the coming days and the
// days just past.
//
// What for: the next ten days of the futures may follow a forecast, and a
// record that ends may be carried on. Neither is ever needed: without a network
// everything still answers from the record.
//
// Services and their terms: Open-Meteo (forecast and archive; CC BY 4.0, named
// wherever its figures are used; the free service is for non-commercial use)
// and MET Norway's Locationforecast 2.0 (CC BY 4.0; asks for an identifying
// User-Agent, at most four decimals, and that Expires and If-Modified-Since be
// obeyed). The place is sent to two decimals, about a kilometre.
//
// Method: one GET at a time, https, no proxy, at most 1 MB and 10 s. Where a
// name leads is looked at when the connection is made, so that no answer of a
// name server reaches this machine or the home network. Answers are kept with
// their ETag, Last-Modified and Expires; nothing is asked again before it has
// expired, nor while a service has asked us to wait. When a service fails, the
// last good answer is used and its age is said.
//
// Conventions: °C, mm, MJ/m2 a day, wind in m/s at 2 m ([FAO56] eq. 47), local
// days. nil is "not said".
//
// Each day's first forecast is kept in a table of its own, to be compared with
// what comes.
//
// Left out: other services, hours, warnings, and the services' own spread.
package fetch
