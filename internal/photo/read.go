package photo

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"

	"golang.org/x/image/draw"
)

// Sizes of what is kept.
const (
	Long  = 2048     // px, longer side of a kept picture
	Small = 320      // px, longer side of a thumbnail
	Most  = 16 << 20 // bytes of a file that is looked at
)

// What a file can be refused for, to be asked with errors.Is.
var (
	ErrKind  = errors.New("this is not a JPEG or PNG picture")
	ErrLarge = errors.New("the picture is too large")
	ErrBad   = errors.New("the picture is damaged")
)

// Kept is a picture ready for the store.
type Kept struct {
	JPEG, Thumb   []byte
	Width, Height int // px, of JPEG
}

// Read decodes, turns, scales and writes a picture anew. It refuses by the
// header alone what would take too much memory.
func Read(b []byte) (Kept, error) {
	if len(b) > Most {
		return Kept{}, fmt.Errorf("%w: %d MB, the most is %d", ErrLarge, len(b)>>20, Most>>20)
	}
	img, turn, err := decode(b)
	if err != nil {
		return Kept{}, err
	}
	big := upright(shrink(img, Long), turn)
	var k Kept
	if k.JPEG, err = write(big, 85); err != nil {
		return Kept{}, err
	}
	if k.Thumb, err = write(shrink(big, Small), 70); err != nil {
		return Kept{}, err
	}
	k.Width, k.Height = big.Bounds().Dx(), big.Bounds().Dy()
	return k, nil
}

// decode reads the header, judges it, and only then the points.
func decode(b []byte) (image.Image, int, error) {
	switch {
	case bytes.HasPrefix(b, []byte("\xff\xd8\xff")):
		progressive, turn := segments(b)
		cfg, err := jpeg.DecodeConfig(bytes.NewReader(b))
		if err != nil {
			return nil, 0, fmt.Errorf("%w: %v", ErrBad, err)
		}
		most := 40_000_000
		if progressive || cfg.ColorModel == color.CMYKModel {
			most = 20_000_000
		}
		if err := judge(cfg, most); err != nil {
			return nil, 0, err
		}
		img, err := jpeg.Decode(bytes.NewReader(b))
		if err != nil {
			return nil, 0, fmt.Errorf("%w: %v", ErrBad, err)
		}
		return img, turn, nil
	case bytes.HasPrefix(b, []byte("\x89PNG\r\n\x1a\n")):
		cfg, err := png.DecodeConfig(bytes.NewReader(b))
		if err != nil {
			return nil, 0, fmt.Errorf("%w: %v", ErrBad, err)
		}
		most := 20_000_000
		switch cfg.ColorModel {
		case color.NRGBA64Model, color.RGBA64Model, color.Gray16Model:
			most = 10_000_000
		}
		if err := judge(cfg, most); err != nil {
			return nil, 0, err
		}
		img, err := png.Decode(bytes.NewReader(b))
		if err != nil {
			return nil, 0, fmt.Errorf("%w: %v", ErrBad, err)
		}
		return img, 1, nil
	}
	return nil, 0, ErrKind
}

// judge refuses what the memory could not hold.
func judge(c image.Config, most int) error {
	if c.Width < 1 || c.Height < 1 {
		return ErrBad
	}
	if c.Width > 20000 || c.Height > 20000 || c.Width > most/c.Height {
		return fmt.Errorf("%w: %d by %d points", ErrLarge, c.Width, c.Height)
	}
	return nil
}

// shrink scales so that the longer side is at most long, on white. A first
// quick pass goes to twice the size, a careful one the rest of the way.
func shrink(img image.Image, long int) *image.RGBA {
	w, h := fit(img.Bounds(), long)
	if w2, h2 := fit(img.Bounds(), 2*long); w2 < img.Bounds().Dx() {
		half := white(w2, h2)
		draw.ApproxBiLinear.Scale(half, half.Bounds(), img, img.Bounds(), draw.Over, nil)
		img = half
	}
	out := white(w, h)
	draw.CatmullRom.Scale(out, out.Bounds(), img, img.Bounds(), draw.Over, nil)
	return out
}

func white(w, h int) *image.RGBA {
	out := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(out, out.Bounds(), image.White, image.Point{}, draw.Src)
	return out
}

func fit(b image.Rectangle, long int) (w, h int) {
	w, h = b.Dx(), b.Dy()
	if m := max(w, h); m > long {
		w, h = max(1, w*long/m), max(1, h*long/m)
	}
	return w, h
}

func write(img image.Image, quality int) ([]byte, error) {
	var b bytes.Buffer
	if err := jpeg.Encode(&b, img, &jpeg.Options{Quality: quality}); err != nil {
		return nil, fmt.Errorf("writing the picture: %w", err)
	}
	return b.Bytes(), nil
}
