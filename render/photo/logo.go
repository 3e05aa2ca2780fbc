package photo

import (
	"bytes"
	"errors"
	"image"
	"image/png"

	"golang.org/x/image/draw"

	"grainwise/assets/words"
)

// logoSide is the longer side of a studio's picture as it is kept, px: no print
// shows more of it.
const logoSide = 640

// Logo takes in a studio's picture: what is clear in it stays clear. It is returned
// as PNG of so many bytes at most. The file itself is left alone.
func Logo(path string, most int) ([]byte, error) {
	data, err := bytesOf(path)
	if err != nil {
		return nil, err
	}
	return TakeLogo(data, most)
}

// TakeLogo is [Logo] with the file's bytes.
func TakeLogo(data []byte, most int) ([]byte, error) {
	picture, err := Decode(data)
	if err != nil {
		return nil, err
	}
	for side := logoSide; side >= logoSide/4; side /= 2 {
		var out bytes.Buffer
		if err := png.Encode(&out, within(picture, side)); err != nil {
			return nil, err
		}
		if out.Len() <= most {
			return out.Bytes(), nil
		}
	}
	return nil, errors.New(words.Say("photo.logo"))
}

// within is a picture whose longer side is so many px at most.
func within(picture image.Image, side int) image.Image {
	b := picture.Bounds()
	scale := min(1, float64(side)/float64(max(b.Dx(), b.Dy())))
	small := image.NewNRGBA(image.Rect(0, 0, max(int(scale*float64(b.Dx())), 1), max(int(scale*float64(b.Dy())), 1)))
	draw.CatmullRom.Scale(small, small.Rect, picture, b, draw.Src, nil)
	return small
}
