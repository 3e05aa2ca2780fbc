package raster

import (
	"bytes"
	"image"
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

// StillJPEG is a still as a JPEG for a page at true size.
func StillJPEG(s scene.Still) ([]byte, error) {
	var b bytes.Buffer
	err := jpeg.Encode(&b, StillImage(s, stillDPI/25.4), &jpeg.Options{Quality: stillQuality})
	return b.Bytes(), err
}

// PNG is a picture as it is, without loss.
func PNG(im image.Image) ([]byte, error) {
	var b bytes.Buffer
	err := png.Encode(&b, im)
	return b.Bytes(), err
}
