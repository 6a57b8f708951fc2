package photo

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"runtime"
	"testing"
	"time"
)

// corner is a white picture of 64 by 32 with its top left corner black.
func corner(w, h int) *image.RGBA {
	m := white(w, h)
	for y := range h / 4 {
		for x := range w / 4 {
			m.Set(x, y, color.Black)
		}
	}
	return m
}

func asJPEG(t testing.TB, m image.Image) []byte {
	t.Helper()
	b, err := write(m, 95)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// both is an order of bytes that reads and appends.
type both interface {
	binary.ByteOrder
	binary.AppendByteOrder
}

// withExif puts an Exif part with an orientation and a place in front.
func withExif(b []byte, turn uint16, order both) []byte {
	mark := "MM\x00*"
	if order == both(binary.LittleEndian) {
		mark = "II*\x00"
	}
	t := []byte(mark)
	put16 := func(v uint16) { t = order.AppendUint16(t, v) }
	put32 := func(v uint32) { t = order.AppendUint32(t, v) }
	put32(8)
	put16(1)
	put16(0x0112)
	put16(3)
	put32(1)
	put16(turn)
	put16(0)
	put32(0)
	t = append(t, "GPS 47.6 -122.3 secret place"...)
	part := append([]byte("Exif\x00\x00"), t...)
	head := binary.BigEndian.AppendUint16([]byte{0xff, 0xd8, 0xff, 0xe1}, uint16(len(part)+2))
	return append(append(head, part...), b[2:]...)
}

func TestEveryOrientationComesUpright(t *testing.T) {
	// where the upright picture's top left corner lies in the stored points
	stored := map[uint16]struct{ right, bottom bool }{
		1: {false, false}, 2: {true, false}, 3: {true, true}, 4: {false, true},
		5: {false, false}, 6: {false, true}, 7: {true, true}, 8: {true, false},
	}
	for _, order := range []both{binary.LittleEndian, binary.BigEndian} {
		for turn := uint16(1); turn <= 8; turn++ {
			w, h := 64, 32
			if turn >= 5 {
				w, h = h, w
			}
			m := white(w, h)
			x0, y0 := 0, 0
			if stored[turn].right {
				x0 = w * 3 / 4
			}
			if stored[turn].bottom {
				y0 = h * 3 / 4
			}
			for y := range h / 4 {
				for x := range w / 4 {
					m.Set(x0+x, y0+y, color.Black)
				}
			}
			k, err := Read(withExif(asJPEG(t, m), turn, order))
			if err != nil {
				t.Fatal(err)
			}
			got, err := jpeg.Decode(bytes.NewReader(k.JPEG))
			if err != nil {
				t.Fatal(err)
			}
			if k.Width != 64 || k.Height != 32 || got.Bounds().Dx() != 64 {
				t.Errorf("orientation %d: %d by %d, want 64 by 32", turn, k.Width, k.Height)
				continue
			}
			for _, p := range []struct {
				x, y int
				dark bool
			}{{4, 3, true}, {60, 3, false}, {4, 28, false}, {60, 28, false}} {
				r, _, _, _ := got.At(p.x, p.y).RGBA()
				if (r < 0x8000) != p.dark {
					t.Errorf("orientation %d, %v: at %d,%d dark = %v", turn, order, p.x, p.y, !p.dark)
				}
			}
		}
	}
}

func TestNothingButThePointsIsKept(t *testing.T) {
	in := withExif(asJPEG(t, corner(64, 32)), 1, binary.BigEndian)
	if !bytes.Contains(in, []byte("secret place")) {
		t.Fatal("the test's picture tells no place")
	}
	k, err := Read(in)
	if err != nil {
		t.Fatal(err)
	}
	for _, b := range [][]byte{k.JPEG, k.Thumb} {
		if bytes.Contains(b, []byte("Exif")) || bytes.Contains(b, []byte("secret")) || bytes.Contains(b, []byte{0xff, 0xe1}) {
			t.Error("the kept picture still tells something")
		}
	}
	again, err := Read(k.JPEG)
	if err != nil || again.Width != 64 {
		t.Errorf("read again: %v", err)
	}
}

func TestLargePicturesAreScaled(t *testing.T) {
	k, err := Read(asJPEG(t, corner(3000, 1500)))
	if err != nil || k.Width != 2048 || k.Height != 1024 {
		t.Fatalf("%d by %d, %v", k.Width, k.Height, err)
	}
	c, err := jpeg.DecodeConfig(bytes.NewReader(k.Thumb))
	if err != nil || c.Width != 320 || c.Height != 160 || len(k.Thumb) > 15<<10 {
		t.Errorf("thumbnail %d by %d, %d bytes, %v", c.Width, c.Height, len(k.Thumb), err)
	}
}

// pngClaiming is a PNG whose header claims a size and that has no points.
func pngClaiming(w, h uint32, depth byte) []byte {
	b := []byte("\x89PNG\r\n\x1a\n")
	head := binary.BigEndian.AppendUint32([]byte("IHDR"), w)
	head = append(binary.BigEndian.AppendUint32(head, h), depth, 6, 0, 0, 0)
	b = append(binary.BigEndian.AppendUint32(b, 13), head...)
	return binary.BigEndian.AppendUint32(b, crc32.ChecksumIEEE(head))
}

// jpegClaiming rewrites the size in a small picture's frame header.
func jpegClaiming(t testing.TB, w, h uint16) []byte {
	b := bytes.Clone(asJPEG(t, corner(16, 16)))
	i := bytes.Index(b, []byte{0xff, 0xc0})
	binary.BigEndian.PutUint16(b[i+5:], h)
	binary.BigEndian.PutUint16(b[i+7:], w)
	return b
}

// TestBombs: trust plan (vi), image bomb. Nothing may take 256 MB or 2 s.
func TestBombs(t *testing.T) {
	gif := append([]byte("GIF89a\xff\xff\xff\xff\x00\x00\x00"), make([]byte, 21)...)
	for _, tt := range []struct {
		name string
		b    []byte
		want error
	}{
		{"gif of 34 bytes claiming 65,535 squared", gif, ErrKind},
		{"png claiming 50,000 squared", pngClaiming(50000, 50000, 8), ErrLarge},
		{"png claiming 19,999 squared", pngClaiming(19999, 19999, 8), ErrLarge},
		{"png of 16 bits, 12 million", pngClaiming(4000, 3000, 16), ErrLarge},
		{"png claiming nothing", pngClaiming(0, 10, 8), ErrBad},
		{"jpeg claiming 65,500 squared", jpegClaiming(t, 65500, 65500), ErrLarge},
		{"jpeg claiming 40 million and holding 256", jpegClaiming(t, 8000, 5000), ErrBad},
		{"svg", []byte(`<svg xmlns="http://www.w3.org/2000/svg"/>`), ErrKind},
		{"polyglot", append([]byte("<html>"), asJPEG(t, corner(8, 8))...), ErrKind},
		{"empty", nil, ErrKind},
		{"cut", asJPEG(t, corner(64, 64))[:200], ErrBad},
		{"17 MB", append(asJPEG(t, corner(8, 8)), make([]byte, 17<<20)...), ErrLarge},
	} {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		began := time.Now()
		_, err := Read(tt.b)
		took := time.Since(began)
		runtime.ReadMemStats(&after)
		if !errors.Is(err, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, err, tt.want)
		}
		if used := (after.TotalAlloc - before.TotalAlloc) >> 20; used > 256 || took > 2*time.Second {
			t.Errorf("%s: %d MB in %v", tt.name, used, took)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(withExif(asJPEG(f, corner(64, 32)), 6, binary.LittleEndian))
	var b bytes.Buffer
	if err := png.Encode(&b, corner(20, 10)); err != nil {
		f.Fatal(err)
	}
	f.Add(b.Bytes())
	f.Add(pngClaiming(300, 300, 16))
	f.Fuzz(func(t *testing.T, in []byte) {
		k, err := Read(in)
		if err == nil && (k.Width < 1 || k.Height < 1 || max(k.Width, k.Height) > Long || len(k.Thumb) == 0) {
			t.Errorf("kept %d by %d", k.Width, k.Height)
		}
	})
}
