package photo

import (
	"bytes"
	"encoding/binary"
	"image"
)

// segments walks the parts of a JPEG file before its points and tells whether
// it is progressive and its Exif orientation, 1 to 8; 1 when none is told.
func segments(b []byte) (progressive bool, turn int) {
	turn = 1
	for i := 2; i+4 <= len(b); {
		if b[i] != 0xff {
			return progressive, turn
		}
		marker := b[i+1]
		if marker == 0xff {
			i++
			continue
		}
		n := int(binary.BigEndian.Uint16(b[i+2:]))
		if n < 2 || i+2+n > len(b) {
			return progressive, turn
		}
		part := b[i+4 : i+2+n]
		switch {
		case marker == 0xda: // the points begin
			return progressive, turn
		case marker == 0xc2:
			progressive = true
		case marker == 0xe1 && bytes.HasPrefix(part, []byte("Exif\x00\x00")):
			if t := orientation(part[6:]); t != 0 {
				turn = t
			}
		}
		i += 2 + n
	}
	return progressive, turn
}

// orientation reads tag 0x0112 of the first directory of a TIFF block, 0 when
// it is not there or makes no sense.
func orientation(t []byte) int {
	if len(t) < 8 {
		return 0
	}
	var order binary.ByteOrder
	switch string(t[:4]) {
	case "II*\x00":
		order = binary.LittleEndian
	case "MM\x00*":
		order = binary.BigEndian
	default:
		return 0
	}
	at := uint64(order.Uint32(t[4:]))
	if at+2 > uint64(len(t)) {
		return 0
	}
	n := uint64(order.Uint16(t[at:]))
	for k := range n {
		e := at + 2 + 12*k
		if e+12 > uint64(len(t)) {
			return 0
		}
		if order.Uint16(t[e:]) == 0x0112 && order.Uint16(t[e+2:]) == 3 && order.Uint32(t[e+4:]) == 1 {
			if v := int(order.Uint16(t[e+8:])); v >= 1 && v <= 8 {
				return v
			}
			return 0
		}
	}
	return 0
}

// upright undoes an orientation. [Exif 2.32, 4.6.5 A]
func upright(in *image.RGBA, turn int) *image.RGBA {
	if turn <= 1 || turn > 8 {
		return in
	}
	w, h := in.Bounds().Dx(), in.Bounds().Dy()
	ow, oh := w, h
	if turn >= 5 {
		ow, oh = h, w
	}
	out := image.NewRGBA(image.Rect(0, 0, ow, oh))
	for y := range oh {
		for x := range ow {
			var sx, sy int
			switch turn {
			case 2:
				sx, sy = w-1-x, y
			case 3:
				sx, sy = w-1-x, h-1-y
			case 4:
				sx, sy = x, h-1-y
			case 5:
				sx, sy = y, x
			case 6:
				sx, sy = y, h-1-x
			case 7:
				sx, sy = w-1-y, h-1-x
			case 8:
				sx, sy = w-1-y, x
			}
			copy(out.Pix[out.PixOffset(x, y):][:4], in.Pix[in.PixOffset(sx, sy):][:4])
		}
	}
	return out
}
