package photo

import (
	"bytes"
	"encoding/binary"
	"image"
)

// orientation is how a JPEG's camera was held, 1 … 8 after Exif 2.3, section
// 4.6.4, tag 0x0112; 1, upright, where nothing says so.
func orientation(data []byte) int {
	for at := 2; at+4 <= len(data) && data[at] == 0xFF; {
		size := int(binary.BigEndian.Uint16(data[at+2:]))
		if data[at+1] == 0xDA || at+2+size > len(data) || size < 2 {
			break
		}
		if body, found := bytes.CutPrefix(data[at+4:at+2+size], []byte("Exif\x00\x00")); found && data[at+1] == 0xE1 {
			return orientationOf(body)
		}
		at += 2 + size
	}
	return 1
}

// orientationOf looks it up in the first directory of a TIFF header.
func orientationOf(tiff []byte) int {
	if len(tiff) < 8 {
		return 1
	}
	var order binary.ByteOrder = binary.BigEndian
	if tiff[0] == 'I' {
		order = binary.LittleEndian
	}
	at := int64(order.Uint32(tiff[4:]))
	if at+2 > int64(len(tiff)) {
		return 1
	}
	const entry = 12
	entries := tiff[at+2:]
	for range order.Uint16(tiff[at:]) {
		if len(entries) < entry {
			break
		}
		if order.Uint16(entries) == 0x0112 {
			if v := int(order.Uint16(entries[8:])); v >= 1 && v <= 8 {
				return v
			}
			break
		}
		entries = entries[entry:]
	}
	return 1
}

// upright turns a picture as its orientation asks.
func upright(from *image.RGBA, orientation int) *image.RGBA {
	if orientation == 1 {
		return from
	}
	w, h := from.Bounds().Dx(), from.Bounds().Dy()
	size := image.Rect(0, 0, w, h)
	if orientation >= 5 {
		size = image.Rect(0, 0, h, w)
	}
	to := image.NewRGBA(size)
	for y := range size.Dy() {
		for x := range size.Dx() {
			fx, fy := source(orientation, x, y, w, h)
			to.SetRGBA(x, y, from.RGBAAt(fx, fy))
		}
	}
	return to
}

// source is the pixel of the stored picture that comes to stand at x, y.
func source(orientation, x, y, w, h int) (fx, fy int) {
	switch orientation {
	case 2:
		return w - 1 - x, y
	case 3:
		return w - 1 - x, h - 1 - y
	case 4:
		return x, h - 1 - y
	case 5:
		return y, x
	case 6:
		return y, h - 1 - x
	case 7:
		return w - 1 - y, h - 1 - x
	case 8:
		return w - 1 - y, x
	}
	return x, y
}
