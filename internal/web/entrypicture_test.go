package web

import (
	"bytes"
	"context"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"bedweek/internal/garden"
	"bedweek/internal/ledger"
)

// sendShot posts the form of a space as a browser does when it holds a file.
func sendShot(t *testing.T, h http.Handler, fields map[string]string, shot []byte) (int, string) {
	t.Helper()
	var b bytes.Buffer
	m := multipart.NewWriter(&b)
	for k, v := range fields {
		m.WriteField(k, v)
	}
	f, err := m.CreateFormFile("photo", "IMG_2015 secret place.png")
	if err != nil {
		t.Fatal(err)
	}
	f.Write(shot)
	m.Close()
	r := httptest.NewRequest("POST", "http://localhost/entry/space", &b)
	r.Header.Set("Content-Type", m.FormDataContentType())
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	w := httptest.NewRecorder()
	h.ServeHTTP(w, r)
	return w.Code, w.Body.String()
}

// TestPictureOfASpace sends a picture with a new space: both are kept once,
// also when sent twice; a spoilt picture keeps nothing and loses no word.
func TestPictureOfASpace(t *testing.T) {
	f, _ := fakeEntry(t, begun)
	kept := 0
	h := entryWith(t, f, func(o *Options) {
		o.Keeping = &Keeping{
			KeepPhoto: func(picture, small []byte) (string, error) {
				kept++
				if len(small) == 0 || bytes.Contains(picture, []byte("secret")) {
					t.Errorf("kept %d bytes with a thumbnail of %d", len(picture), len(small))
				}
				return strings.Repeat("ab", 32), nil
			},
			Pictures: func(_ context.Context, space string) ([]ledger.PictureNote, error) {
				if space != "barrel" {
					return nil, nil
				}
				return []ledger.PictureNote{{On: o.Entry.Today(), Photo: ledger.Photo{Space: space, SHA256: strings.Repeat("ab", 32), Width: 640, Height: 480}}}, nil
			},
			Epoch: func(context.Context) (string, error) { return "0", nil },
		}
	})
	m := image.NewRGBA(image.Rect(0, 0, 64, 48))
	m.Set(3, 3, color.White)
	var shot bytes.Buffer
	if err := png.Encode(&shot, m); err != nil {
		t.Fatal(err)
	}
	fields := map[string]string{"form": ledger.NewID(), "shot": ledger.NewID(), "kind": "bag", "name": "Barrel", "size": "60 cm across", "where": "12 m east, 1 m north"}
	if code, body := sendShot(t, h, fields, []byte("no picture")); code != http.StatusUnprocessableEntity || f.text != begun || kept != 0 || len(f.wrote) != 0 ||
		!strings.Contains(body, "not a whole JPEG or PNG") || !strings.Contains(body, `value="60 cm across"`) {
		t.Errorf("a spoilt picture: status %d, %d kept, %d written", code, kept, len(f.wrote))
	}
	slip := map[string]string{"form": ledger.NewID(), "shot": ledger.NewID(), "kind": "bag", "size": "60"}
	if code, body := sendShot(t, h, slip, shot.Bytes()); code != http.StatusUnprocessableEntity || kept != 0 || !strings.Contains(body, "Choose it again") {
		t.Errorf("a slip beside a picture: status %d, %d kept", code, kept)
	}
	for range 2 {
		if code, body := sendShot(t, h, fields, shot.Bytes()); code != http.StatusSeeOther {
			t.Fatalf("status %d: %v", code, faultWords.FindAllStringSubmatch(body, -1))
		}
	}
	g, faults := garden.Read("x", []byte(f.text), nil)
	if len(faults) > 0 || len(g.Spaces) != 3 || f.kept != 1 || kept != 1 || len(f.wrote) != 1 {
		t.Fatalf("%d spaces, text kept %d times, picture %d times, %d written, %v", len(g.Spaces), f.kept, kept, len(f.wrote), faults)
	}
	b, ok := f.wrote[0].Body.(ledger.Photo)
	if _, err := ledger.NewEvent("x", f.wrote[0].On, f.wrote[0].Kind, f.wrote[0].Body); err != nil || !ok || b.Space != "barrel" || b.Width != 64 {
		t.Errorf("written %s %+v, %v", f.wrote[0].Kind, b, err)
	}
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest("GET", "http://localhost/entry/space?id=barrel", nil))
	if want := fmt.Sprintf("/photo/%s.small.jpg", strings.Repeat("ab", 32)); !strings.Contains(w.Body.String(), want) || !strings.Contains(w.Body.String(), `enctype="multipart/form-data"`) {
		t.Errorf("the form of the space does not show its picture")
	}
}
