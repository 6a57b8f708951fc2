package web

import (
	"errors"
	"net/http"
	"net/url"
	"strings"

	"bedweek/internal/ledger"
	"bedweek/internal/photo"
	"bedweek/internal/reckon"
)

// askPicture adds the question for a picture of a space to its form, and shows
// the newest one kept. id is "" for a new space.
func (s *site) askPicture(r *http.Request, p *FormPage, id, named string) error {
	if s.o.Keeping == nil {
		return nil
	}
	p.Files = true
	p.Groups[0].Fields = append(p.Groups[0].Fields,
		Field{Name: "photo", Label: "A picture of it", Sort: "file", Photo: true, Hint: "May be empty. The place, the time and the camera written in it are dropped."},
		Field{Name: "shot", Sort: "hidden", Value: ledger.NewID()})
	if id == "" {
		return nil
	}
	p.Links = append(p.Links, Link{Href: "/space/" + url.PathEscape(id) + "/photos", Words: "Its pictures"})
	var err error
	p.Picture, err = s.newestPicture(r, reckon.SpaceDay{ID: id, Name: named})
	return err
}

// newestPicture is the newest kept picture of a space; nil = there is none.
func (s *site) newestPicture(r *http.Request, sp reckon.SpaceDay) (*Picture, error) {
	if s.o.Keeping == nil {
		return nil, nil
	}
	all, err := s.o.Keeping.Pictures(r.Context(), sp.ID)
	if err != nil || len(all) == 0 {
		return nil, err
	}
	pic := pictureOf(sp, all[0])
	return &pic, nil
}

// saveSpace saves the form of a space, and the picture that came with it.
func (s *site) saveSpace(w http.ResponseWriter, r *http.Request) {
	var shot []byte
	if strings.HasPrefix(strings.ToLower(r.Header.Get("Content-Type")), "multipart/") {
		fields, files, err := readParts(r, photoMost)
		if err != nil {
			s.fail(w, r, err)
			return
		}
		r.PostForm, shot = fields, files["photo"]
	} else if err := readForm(r); err != nil {
		s.fail(w, r, err)
		return
	}
	s.saveRead(w, r, func(r *http.Request, d *described, v url.Values) (*FormPage, error) {
		p, err := s.spaceForm(r, d, v)
		if err != nil || len(shot) == 0 || s.o.Keeping == nil {
			return p, err
		}
		if !ledger.IsID(v.Get("shot")) {
			return nil, errBroken
		}
		k, err := photo.Read(shot)
		switch {
		case errors.Is(err, photo.ErrLarge):
			p.Faults["photo"] = "The picture has more points than we take. Choose a smaller one."
		case err != nil:
			p.Faults["photo"] = "This is not a whole JPEG or PNG picture. Choose another, or leave it out."
		}
		if len(p.Faults) > 0 {
			if p.Faults["photo"] == "" {
				p.Faults["photo"] = "The picture is not kept yet. Choose it again when the rest is right."
			}
			p.Problem = or(p.Problem, "Not saved yet: something below needs a look.")
			return p, nil
		}
		p.after = func(r *http.Request) error { return s.keepShot(r, d, p, v.Get("shot"), k) }
		p.words = strings.TrimSuffix(p.words, ".") + ", with its picture."
		return p, nil
	})
}

// keepShot writes the picture of a space down, under an id of its own.
func (s *site) keepShot(r *http.Request, d *described, p *FormPage, id string, k photo.Kept) error {
	digest, err := s.o.Keeping.KeepPhoto(k.JPEG, k.Thumb)
	if err != nil {
		return err
	}
	return s.o.Entry.Append(withForm(r, id), []Happening{{ledger.Pictured, d.today,
		ledger.Photo{Space: p.space, SHA256: digest, Bytes: len(k.JPEG), Width: k.Width, Height: k.Height}}})
}
