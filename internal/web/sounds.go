package web

import (
	"errors"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// Voice is a kept voice note as it is shown.
type Voice struct {
	At, On, Note, Kind string
}

var errSoundKind = errors.New("not a sound we take")

// sounds lists the voice notes of a space, newest first.
func (s *site) sounds(r *http.Request, sp reckon.SpaceDay) ([]Voice, error) {
	if s.o.Keeping.Sounds == nil {
		return nil, nil
	}
	all, err := s.o.Keeping.Sounds(r.Context(), sp.ID)
	if err != nil {
		return nil, err
	}
	var out []Voice
	for _, n := range all {
		out = append(out, Voice{At: "/sound/" + n.SHA256 + "." + n.Format, On: n.On.Long(), Note: n.Note, Kind: ledger.SoundType(n.Format)})
	}
	return out, nil
}

// saveVoice takes one voice note, as it came.
func (s *site) saveVoice(w http.ResponseWriter, r *http.Request) {
	fields, files, err := readParts(r, voiceMost)
	if err == nil {
		r.PostForm = fields
		err = s.once(w, r, func() (done, error) { return s.takeVoice(r, fields, files["voice"]) })
	}
	if err != nil {
		s.fail(w, r, err)
	}
}

func (s *site) takeVoice(r *http.Request, v url.Values, file []byte) (done, error) {
	day, err := s.o.Day(r.Context())
	if err != nil {
		return done{}, err
	}
	if day == nil || s.o.Keeping.KeepSound == nil {
		return done{}, errGone
	}
	i, ok := spaceOf(day, v.Get("space"))
	if !ok {
		return done{}, ErrNotThere
	}
	f := faults{}
	b := ledger.Sound{Space: day.Spaces[i].ID, Bytes: len(file), Note: f.text(v, "note", maxNote)}
	on := f.day(v, "day", day.Date)
	if len(f) > 0 {
		return done{}, errForm
	}
	if len(file) == 0 {
		return done{}, errNoFile
	}
	b.SHA256, b.Format, err = s.o.Keeping.KeepSound(file)
	if errors.Is(err, ledger.ErrSound) {
		return done{}, errSoundKind
	}
	if err != nil {
		return done{}, err
	}
	e, err := s.o.Record(withForm(r, v.Get("form")), ledger.Voiced, on, "", b)
	return done{event: e, words: "Saved: voice note, " + day.Spaces[i].Name + ".", back: backElse(v, "/space/"+url.PathEscape(b.Space)+"/photos"), undo: true}, err
}

// sendSound plays a voice note: "<digest>.<format>".
func (s *site) sendSound(w http.ResponseWriter, r *http.Request) {
	digest, format, _ := strings.Cut(r.PathValue("name"), ".")
	err := error(ErrNotThere)
	var b []byte
	if s.o.Keeping.Sound != nil {
		b, err = s.o.Keeping.Sound(digest, format)
	}
	if err != nil && !errors.Is(err, ledger.ErrDamaged) {
		err = ErrNotThere
	}
	if err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", ledger.SoundType(format))
	w.Header().Set("Cache-Control", "private, max-age=31536000, immutable")
	w.Write(b)
}

// saveCaption puts words to a picture taken before.
func (s *site) saveCaption(w http.ResponseWriter, r *http.Request) {
	err := readForm(r)
	if err == nil {
		err = s.once(w, r, func() (done, error) {
			day, err := s.present(r)
			if err != nil {
				return done{}, err
			}
			f := faults{}
			b := ledger.Caption{Picture: r.PostForm.Get("picture"), Note: f.text(r.PostForm, "note", maxNote)}
			if len(f) > 0 || !ledger.IsID(b.Picture) {
				return done{}, errBroken
			}
			if b.Note == "" {
				return done{words: "Nothing was written. The picture waits for its words.", back: "/quick"}, nil
			}
			e, err := s.o.Record(withForm(r, r.PostForm.Get("form")), ledger.Captioned, day.Date, b.Picture, b)
			return done{event: e, words: "Saved: the words to the picture.", back: "/quick", undo: true}, err
		})
	}
	if err != nil {
		s.fail(w, r, err)
	}
}
