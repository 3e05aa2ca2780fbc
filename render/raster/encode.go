package raster

import (
	"bytes"
	"context"
	"image"
	"image/draw"
	"image/jpeg"
	"image/png"

	"grainwise/render/scene"
)

// How a still is put into files of vectors: so fine that a loupe is needed, in
// the form for pictures with much noise.
const (
	stillDPI     = 300
	stillQuality = 92
)

// PrintScale is that resolution in px a millimetre of the page.
const PrintScale = stillDPI / 25.4

// Printed is a still as a picture for a page at true size.
func Printed(s scene.Still) scene.Picture {
	return new(Painter).developed(s, PrintScale)
}

func (p *Painter) developed(s scene.Still, perMM float64) scene.Picture {
	return scene.Picture{Tag: s.Tag, Min: s.Min, Max: s.Max, Image: p.stillImage(s, perMM), Painted: true}
}

// Encode writes a picture for a file: as JPEG what was painted, as PNG, without
// loss, what was brought.
func Encode(p scene.Picture) (data []byte, form string, err error) {
	var b bytes.Buffer
	if p.Painted {
		err = jpeg.Encode(&b, p.Image, &jpeg.Options{Quality: stillQuality})
		return b.Bytes(), "jpeg", err
	}
	err = png.Encode(&b, eightBits(p.Image))
	return b.Bytes(), "png", err
}

// eightBits is a picture of one form that every reader of PNG knows.
func eightBits(im image.Image) *image.NRGBA {
	out := image.NewNRGBA(image.Rect(0, 0, im.Bounds().Dx(), im.Bounds().Dy()))
	draw.Draw(out, out.Rect, im, im.Bounds().Min, draw.Src)
	return out
}

// Develop paints every still of a scene, so many px a millimetre of the page, and
// returns the scene with pictures in their places. It tells how many are done, and
// stops where the context ends.
func Develop(ctx context.Context, s *scene.Scene, perMM float64, told func(done, of int)) (*scene.Scene, error) {
	of := 0
	for _, item := range s.Items {
		if _, is := item.(scene.Still); is {
			of++
		}
	}
	out := *s
	out.Items = make([]scene.Item, len(s.Items))
	var p Painter
	done := 0
	for i, item := range s.Items {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		out.Items[i] = item
		if still, is := item.(scene.Still); is {
			out.Items[i] = p.developed(still, perMM)
			done++
			if told != nil {
				told(done, of)
			}
		}
	}
	return &out, nil
}
