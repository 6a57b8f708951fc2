package web

import (
	"context"
	"io"
	"net/http"
	"strings"
	"time"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Keeping is what the pages about keeping the record need: backups, restore,
// photos, phones and what they have not brought home. Nil = no such pages.
type Keeping struct {
	// Safety tells all that "Is it safe?" shows.
	Safety func(ctx context.Context) (Safety, error)
	// Check goes through the whole record and its backups now.
	Check func(ctx context.Context) error
	// WouldLose tells what a backup, by its file name, does not hold.
	WouldLose func(ctx context.Context, file string) (ledger.Loss, error)
	// Restore begins to put the record back and returns at once.
	Restore func(ctx context.Context, file string) error
	// KeepPhoto puts a picture and its thumbnail into the store.
	KeepPhoto func(picture, small []byte) (digest string, err error)
	// Photo reads one back.
	Photo func(digest string, small bool) ([]byte, error)
	// Pictures lists the kept photos of a space, newest first.
	Pictures func(ctx context.Context, space string) ([]ledger.PictureNote, error)
	// KeepSound puts a voice note into the store; nil = there is none.
	KeepSound func(sound []byte) (digest, format string, err error)
	// Sound reads one back.
	Sound func(digest, format string) ([]byte, error)
	// Sounds lists the voice notes of a space, newest first.
	Sounds func(ctx context.Context, space string) ([]ledger.SoundNote, error)
	// Calendar is the plan as iCalendar text.
	Calendar func(ctx context.Context) ([]byte, error)
	// Import takes over the entries of an export that are not here yet.
	Import func(ctx context.Context, events io.Reader) (added int, err error)
	// Epoch names the record's epoch; "0" = never restored.
	Epoch func(ctx context.Context) (string, error)
	// Waiting is told how many entries a device still holds.
	Waiting func(ctx context.Context, device string, n int, oldest time.Time)
	// LastWaiting is what Waiting was last told of a device, -1 = nothing.
	LastWaiting func(device string) int
	// Kept reports whether the record has an entry with this id.
	Kept func(ctx context.Context, id string) bool
	// Same reports whether the entry with an id has this kind and body.
	Same func(ctx context.Context, id string, k ledger.Kind, body any) bool
}

// Safety is what is known of how well the record is kept.
type Safety struct {
	Backups []ledger.Proof // proven when made, oldest first
	Entries int64          // in the record now
	Newer   int64          // of them, not in the last backup
	Checked time.Time      // last full check; zero = not yet
	CheckOK bool
	Words   []string // what the check found
	Drill   ledger.Drilled
	Drilled bool
	Devices []Strand
	Free    uint64 // bytes
	FreeOf  bool   // Free is known
	Epoch   string
	Knots   []Knot // questions answered differently, until settled
	Trouble string // what went wrong in the background, "" = nothing
	Phones  bool   // the home network is open
}

// Strand is one device: what it brought home, and what it still holds.
type Strand struct {
	Name    string
	Entries int
	Last    time.Time   // when its last entry was kept; zero = none
	Homes   []time.Time // days on which entries of it were kept, oldest first
	Waiting int         // entries it held when last heard of, -1 = never heard of
	Heard   time.Time
	Oldest  time.Time // of those entries, by the device's own clock
	Revoked bool
}

type deviceKey struct{}

// WithDevice names the device a request comes from.
func WithDevice(ctx context.Context, name string) context.Context {
	return context.WithValue(ctx, deviceKey{}, name)
}

// DeviceOf returns the device's name, or otherwise when none was named.
func DeviceOf(ctx context.Context, otherwise string) string {
	if name, ok := ctx.Value(deviceKey{}).(string); ok && name != "" {
		return name
	}
	return otherwise
}

// keepingRoutes are the addresses of this part; none without Keeping.
func (s *site) keepingRoutes() []route {
	if s.o.Keeping == nil {
		return nil
	}
	return []route{
		{"/restore", s.unplanned(s.restoreAsk), s.restoreDo},
		{"/check", nil, s.checkNow},
		{"/knot", nil, s.settle},
		{"/recovery", s.unplanned(s.recoverySheet), nil},
		{"/photo", nil, s.savePhoto},
		{"/voice", nil, s.saveVoice},
		{"/caption", nil, s.saveCaption},
		{"/sound/{name}", s.sendSound, nil},
		{"/space/{id}/photos", s.view(s.photos), nil},
		{"/photo/{name}", s.sendPhoto, nil},
		{"/plan.ics", s.calendar, nil},
		{"/unsent", s.view(s.unsent), nil},
		{"/bring", nil, s.bring},
		{"/import", nil, s.importFile},
		{"/sync", s.syncState, s.syncIn},
		{"/worker.js", s.worker, nil},
		{"/offline", s.offline, nil},
	}
}

// keepingLimit is the most bytes a request to an address may hold.
func keepingLimit(path string) int64 {
	switch path {
	case "/photo":
		return photoMost + maxBody
	case "/voice":
		return voiceMost + maxBody
	case "/import", "/bring":
		return importMost
	case "/sync":
		return 256 << 10
	}
	return maxBody
}

const (
	photoMost  = 16 << 20
	voiceMost  = 10 << 20
	importMost = 64 << 20
)

// outbox is the script that keeps notes while there is no signal.
func (s *site) outbox() string {
	if s.o.Keeping == nil {
		return ""
	}
	return s.assets.href["outbox.js"]
}

// Keeps reports whether the page keeps notes while there is no signal.
func (f Frame) Keeps() bool { return f.Outbox != "" }

// checkNow goes through everything at once.
func (s *site) checkNow(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) {
			if err := s.o.Keeping.Check(r.Context()); err != nil {
				return done{}, err
			}
			return done{words: "The whole record was checked.", back: "/safe"}, nil
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

// calendar sends the plan for any calendar program.
func (s *site) calendar(w http.ResponseWriter, r *http.Request) {
	b, err := s.o.Keeping.Calendar(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "text/calendar; charset=utf-8")
	w.Header().Set("Content-Disposition", `attachment; filename="plan.ics"`)
	w.Write(b)
}

// RecoveryPage is the sheet to print and keep: where the copies are, and how
// to come back.
type RecoveryPage struct {
	Frame
	Safety Safety
	Last   ledger.Proof
}

func (s *site) recoverySheet(r *http.Request, day *reckon.Day) (page, error) {
	p := &RecoveryPage{Frame: s.framed(r, day, "If everything is gone", "recovery")}
	var err error
	p.Safety, err = s.o.Keeping.Safety(r.Context())
	if n := len(p.Safety.Backups); n > 0 {
		p.Last = p.Safety.Backups[n-1]
	}
	return p, err
}

// ago says how long ago an instant is, in words.
func ago(now, then time.Time) string {
	d := now.Sub(then)
	switch {
	case then.IsZero():
		return "never"
	case d < time.Hour:
		return "less than an hour ago"
	case d < 24*time.Hour:
		return plural(int(d/time.Hour), "hour", "hours") + " ago"
	}
	return plural(int(d/(24*time.Hour)), "day", "days") + " ago"
}

// megabytes writes a size for a reader.
func megabytes(b uint64) string {
	switch {
	case b >= 1<<30:
		return plural(int(b>>30), "GB", "GB")
	case b >= 1<<20:
		return plural(int(b>>20), "MB", "MB")
	}
	return "less than 1 MB"
}

// cleanName drops what must not stand in a file name we are asked for.
func cleanName(s string) bool {
	return s != "" && !strings.ContainsAny(s, "/\\\x00") && !strings.HasPrefix(s, ".") && len(s) < 200
}
