package web

import (
	"errors"
	"io"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/photo"
	"bedweek/internal/reckon"
)

// PhotosPage shows the pictures of a space and takes new ones.
type PhotosPage struct {
	Frame
	Space     reckon.SpaceDay
	Plantings []Option
	Pictures  []Picture
	Voices    []Voice
	Form      string
	Happened  string
}

// Picture is one kept photo.
type Picture struct {
	Thumb, Whole string
	Alt, On      string
	Note         string
	W, H         int
}

func (s *site) photos(r *http.Request, day *reckon.Day) (page, error) {
	i, ok := spaceOf(day, r.PathValue("id"))
	if !ok {
		return nil, ErrNotThere
	}
	sp := day.Spaces[i]
	p := &PhotosPage{Frame: s.framed(r, day, "Pictures: "+sp.Name, "photos"), Space: sp, Form: ledger.NewID(), Happened: day.Date.String(),
		Plantings: append([]Option{{Value: "", Words: "The whole space"}}, standingHere(day, sp)...)}
	all, err := s.o.Keeping.Pictures(r.Context(), sp.ID)
	if err != nil {
		return nil, err
	}
	for _, n := range all {
		p.Pictures = append(p.Pictures, pictureOf(sp, n))
	}
	p.Voices, err = s.sounds(r, sp)
	return p, err
}

// pictureOf is how a kept photo is shown.
func pictureOf(sp reckon.SpaceDay, n ledger.PictureNote) Picture {
	return pictureNamed(sp.Name, n)
}

// pictureNamed is a kept photo of what has a name.
func pictureNamed(of string, n ledger.PictureNote) Picture {
	w, h := n.Width, n.Height
	if m := max(w, h); m > photo.Small {
		w, h = max(1, w*photo.Small/m), max(1, h*photo.Small/m)
	}
	return Picture{Thumb: "/photo/" + n.SHA256 + ".small.jpg", Whole: "/photo/" + n.SHA256 + ".jpg",
		Alt: of + ", " + n.On.Long(), On: n.On.Long(), Note: n.Note, W: w, H: h}
}

var (
	errNoPhoto    = errors.New("no picture was chosen")
	errPhotoKind  = errors.New("not a picture we take")
	errPhotoLarge = errors.New("picture too large")
)

// savePhoto takes one picture. Decoding goes one at a time, to spare memory.
func (s *site) savePhoto(w http.ResponseWriter, r *http.Request) {
	fields, files, err := readParts(r, photoMost)
	if err == nil {
		r.PostForm = fields
		err = s.once(w, r, func() (done, error) { return s.takePhoto(r, fields, files["photo"]) })
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

func (s *site) takePhoto(r *http.Request, v url.Values, file []byte) (done, error) {
	day, err := s.o.Day(r.Context())
	if err != nil {
		return done{}, err
	}
	if day == nil {
		return done{}, errGone
	}
	i, ok := spaceOf(day, v.Get("space"))
	if !ok {
		return done{}, ErrNotThere
	}
	if len(file) == 0 {
		return done{}, errNoPhoto
	}
	k, err := photo.Read(file)
	switch {
	case errors.Is(err, photo.ErrLarge):
		return done{}, errPhotoLarge
	case err != nil:
		return done{}, errPhotoKind
	}
	f := faults{}
	b := ledger.Photo{Space: day.Spaces[i].ID, Bytes: len(k.JPEG), Width: k.Width, Height: k.Height, Note: f.text(v, "note", maxNote)}
	b.Planting = f.oneOf(v, "planting", append([]Option{{}}, standingHere(day, day.Spaces[i])...), "Choose which one.")
	on := f.day(v, "day", day.Date)
	if len(f) > 0 {
		return done{}, errForm
	}
	if b.SHA256, err = s.o.Keeping.KeepPhoto(k.JPEG, k.Thumb); err != nil {
		return done{}, err
	}
	e, err := s.o.Record(withForm(r, v.Get("form")), ledger.Pictured, on, "", b)
	return done{event: e, words: "Saved: picture, " + day.Spaces[i].Name + ".", back: backElse(v, "/space/"+url.PathEscape(b.Space)+"/photos"), undo: true}, err
}

// readParts reads a form with files into memory, each at most most bytes, at
// most a hundred parts.
func readParts(r *http.Request, most int64) (url.Values, map[string][]byte, error) {
	m, err := r.MultipartReader()
	if err != nil {
		return nil, nil, errBroken
	}
	fields, files := url.Values{}, map[string][]byte{}
	for n := 0; ; n++ {
		p, err := m.NextPart()
		if errors.Is(err, io.EOF) {
			return fields, files, nil
		}
		if err == nil && n >= 100 {
			return nil, nil, errBroken
		}
		var b []byte
		if err == nil {
			b, err = io.ReadAll(io.LimitReader(p, most+1))
		}
		var large *http.MaxBytesError
		switch {
		case errors.As(err, &large), int64(len(b)) > most:
			return nil, nil, errLarge
		case err != nil:
			return nil, nil, errBroken
		case p.FileName() != "":
			files[p.FormName()] = b // the name it had on the phone is not kept
		case len(b) > maxBody || strings.ContainsRune(string(b), 0):
			return nil, nil, errBroken
		default:
			fields.Add(p.FormName(), strings.ToValidUTF8(string(b), "?"))
		}
	}
}

// sendPhoto sends a picture: "<digest>.jpg" or "<digest>.small.jpg".
func (s *site) sendPhoto(w http.ResponseWriter, r *http.Request) {
	name := strings.TrimSuffix(r.PathValue("name"), ".jpg")
	digest, small := strings.CutSuffix(name, ".small")
	b, err := s.o.Keeping.Photo(digest, small)
	if err != nil && !errors.Is(err, ledger.ErrDamaged) {
		err = ErrNotThere
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "image/jpeg")
	w.Header().Set("Cache-Control", "private, max-age=31536000, immutable")
	w.Write(b)
}

// importFile takes over the entries of an export.
func (s *site) importFile(w http.ResponseWriter, r *http.Request) {
	fields, files, err := readParts(r, importMost)
	if err == nil {
		r.PostForm = fields
		err = s.once(w, r, func() (done, error) {
			if len(files["events"]) == 0 {
				return done{}, errNoFile
			}
			n, err := s.o.Keeping.Import(r.Context(), strings.NewReader(string(files["events"])))
			return done{words: plural(n, "entry", "entries") + " brought in. Those already here were left as they are.", back: "/safe"}, err
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

var errNoFile = errors.New("no file was chosen")
