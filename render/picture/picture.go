// Package picture reads pictures that a maker brings, with care: nothing is decoded
// before its size is known to be bearable, and what cannot be read is said.
package picture

import (
	"bytes"
	"errors"
	"image"
	_ "image/jpeg" // a form that can be read
	"image/png"
	"math"
	"strings"

	"golang.org/x/image/draw"

	"grainwise/assets/words"
)

// mostPixels is how many pixels are decoded: as many as a large photograph has, and
// 160 MB of memory.
const mostPixels = 40_000_000

// Read reads a PNG or a JPEG.
func Read(data []byte) (image.Image, error) {
	size, _, err := image.DecodeConfig(bytes.NewReader(data))
	switch {
	case errors.Is(err, image.ErrFormat):
		return nil, errors.New(words.Say("picture.unknown"))
	case err != nil:
		return nil, damaged(err)
	case size.Width <= 0 || size.Height <= 0:
		return nil, errors.New(words.Say("picture.unknown"))
	case float64(size.Width)*float64(size.Height) > mostPixels:
		return nil, errors.New(words.Say("picture.huge", words.With{
			"width": size.Width, "height": size.Height, "most": mostPixels / 1_000_000,
			"mega": int(math.Round(float64(size.Width) * float64(size.Height) / 1e6)),
		}))
	}
	im, _, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, damaged(err)
	}
	return im, nil
}

func damaged(err error) error {
	why := strings.TrimPrefix(strings.TrimPrefix(err.Error(), "png: "), "jpeg: ")
	return errors.New(words.Say("picture.damaged", words.With{"why": strings.TrimPrefix(why, "invalid format: ")}))
}

// keptSide is the longest side of a picture that is kept, px: a logo on a print of
// 600 dots an inch is no larger.
const keptSide = 640

// Kept reads a picture and returns it small enough to be kept with the studio, as
// PNG, of at most so many bytes.
func Kept(data []byte, most int) ([]byte, error) {
	im, err := Read(data)
	if err != nil {
		return nil, err
	}
	b := im.Bounds()
	for side := keptSide; side >= keptSide/4; side /= 2 {
		scale := min(1, float64(side)/float64(max(b.Dx(), b.Dy())))
		small := image.NewNRGBA(image.Rect(0, 0, max(int(scale*float64(b.Dx())), 1), max(int(scale*float64(b.Dy())), 1)))
		draw.CatmullRom.Scale(small, small.Rect, im, b, draw.Src, nil)
		var out bytes.Buffer
		if err := png.Encode(&out, small); err != nil {
			return nil, err
		}
		if out.Len() <= most {
			return out.Bytes(), nil
		}
	}
	return nil, errors.New(words.Say("picture.large"))
}
