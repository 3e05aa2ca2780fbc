// Package photo takes in the photographs of materials: it looks before it reads,
// turns them upright and keeps them no larger than a screen needs.
package photo

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	_ "image/gif" // the formats that are read
	"image/jpeg"
	_ "image/png"
	"io"
	"os"

	"golang.org/x/image/draw"
	_ "golang.org/x/image/webp"

	"grainwise/assets/words"
)

// Limits of a photograph: what is read, and what is kept of it.
const (
	MostPixels  = 100_000_000
	mostBytes   = 200 << 20
	LongestKept = 1600 // pixels along the longer side
	quality     = 88   // of JPEG, 1 … 100
)

// Read takes in a picture's file and returns it as JPEG, upright, its longer side
// at most [LongestKept]. The file itself is left alone. The error says what is
// wrong with it.
func Read(path string) ([]byte, error) {
	data, err := bytesOf(path)
	if err != nil {
		return nil, err
	}
	return Take(data)
}

// bytesOf is what a picture's file holds.
func bytesOf(path string) ([]byte, error) {
	info, err := os.Stat(path)
	if err == nil && !info.Mode().IsRegular() {
		return nil, errors.New(words.Say("photo.notAFile"))
	}
	if err != nil {
		return nil, err
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, mostBytes+1))
	switch {
	case err != nil:
		return nil, err
	case len(data) > mostBytes:
		return nil, errors.New(words.Say("photo.tooLarge", words.With{"most": MostPixels / 1_000_000}))
	}
	return data, nil
}

// Take is [Read] with the file's bytes.
func Take(data []byte) ([]byte, error) {
	picture, err := Decode(data)
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	err = jpeg.Encode(&out, upright(smaller(picture), orientation(data)), &jpeg.Options{Quality: quality})
	return out.Bytes(), err
}

// Decode reads a picture once it is known that it is one, and not too large.
func Decode(data []byte) (image.Image, error) {
	config, _, err := image.DecodeConfig(bytes.NewReader(data))
	switch {
	case errors.Is(err, image.ErrFormat):
		return nil, errors.New(words.Say("photo.format"))
	case err != nil:
		return nil, damaged(err)
	case config.Width <= 0 || config.Height <= 0:
		return nil, damaged(image.ErrFormat)
	case int64(config.Width)*int64(config.Height) > MostPixels:
		return nil, errors.New(words.Say("photo.pixels", words.With{"width": config.Width, "height": config.Height, "most": MostPixels / 1_000_000}))
	}
	picture, err := decode(data)
	if err != nil {
		return nil, damaged(err)
	}
	return picture, nil
}

// decode reads a picture; a decoder that gives way is a damaged picture too.
func decode(data []byte) (picture image.Image, err error) {
	defer func() {
		if gone := recover(); gone != nil {
			err = fmt.Errorf("%v", gone)
		}
	}()
	picture, _, err = image.Decode(bytes.NewReader(data))
	return picture, err
}

func damaged(err error) error {
	return errors.New(words.Say("photo.damaged", words.With{"why": err.Error()}))
}

// smaller is a picture on white, its longer side at most [LongestKept].
func smaller(picture image.Image) *image.RGBA {
	from := picture.Bounds()
	width, height := from.Dx(), from.Dy()
	if longest := max(width, height); longest > LongestKept {
		width, height = max(1, width*LongestKept/longest), max(1, height*LongestKept/longest)
	}
	to := image.NewRGBA(image.Rect(0, 0, width, height))
	draw.Draw(to, to.Bounds(), image.White, image.Point{}, draw.Src)
	draw.CatmullRom.Scale(to, to.Bounds(), picture, from, draw.Over, nil)
	return to
}

// At is the colour of a picture about a place, both from 0 to 1: the mean of the
// pixels within one hundredth of its width, for a cloth has light and dark threads.
func At(picture image.Image, x, y float64) color.NRGBA {
	b := picture.Bounds()
	reach := max(1, b.Dx()/100)
	cx, cy := b.Min.X+int(x*float64(b.Dx())), b.Min.Y+int(y*float64(b.Dy()))
	spot := image.Rect(cx-reach, cy-reach, cx+reach+1, cy+reach+1).Intersect(b)
	var red, green, blue, n uint64
	for py := spot.Min.Y; py < spot.Max.Y; py++ {
		for px := spot.Min.X; px < spot.Max.X; px++ {
			r, g, b, _ := picture.At(px, py).RGBA()
			red, green, blue, n = red+uint64(r>>8), green+uint64(g>>8), blue+uint64(b>>8), n+1
		}
	}
	if n == 0 {
		return color.NRGBA{A: 0xFF}
	}
	mean := func(sum uint64) uint8 { return uint8((sum + n/2) / n) }
	return color.NRGBA{R: mean(red), G: mean(green), B: mean(blue), A: 0xFF}
}
