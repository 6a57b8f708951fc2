module bedweek

go 1.26.0

require (
	codeberg.org/go-pdf/fpdf v0.12.0 // sheets of labels in millimetres, as PDF
	github.com/arran4/golang-ical v0.3.4 // the plan as iCalendar
	github.com/goccy/go-yaml v1.19.2 // the garden file, with places and remarks kept
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3 // tests: the garden file's schema
	golang.org/x/image v0.48.0 // thumbnails, and formats of pictures
	golang.org/x/time v0.16.0 // throttling of guesses
	gonum.org/v1/gonum v0.17.0 // random draws and distributions
	modernc.org/sqlite v1.62.0 // the ledger, without C
	rsc.io/qr v0.2.0 // codes for labels and pairing
)

require (
	github.com/dustin/go-humanize v1.1.0 // indirect
	github.com/google/uuid v1.6.0 // indirect
	github.com/mattn/go-isatty v0.0.24 // indirect
	github.com/ncruces/go-strftime v1.1.0 // indirect
	github.com/remyoudompheng/bigfft v0.0.0-20230129092748-24d4a6f8daec // indirect
	golang.org/x/sys v0.50.0 // indirect
	golang.org/x/text v0.44.0 // indirect
	modernc.org/libc v1.80.1 // indirect
	modernc.org/mathutil v1.7.1 // indirect
	modernc.org/memory v1.12.1 // indirect
)
