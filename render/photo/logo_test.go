package photo_test

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"testing"

	"grainwise/render/photo"
)

// A studio's picture is kept small, of the same shape, clear where it was clear
// and, where it is flat, of exactly the same colour. What is no picture is refused,
// and so is one that cannot be made small enough.
func TestLogo(t *testing.T) {
	im := image.NewNRGBA(image.Rect(0, 0, 3000, 1500))
	for y := range 1500 {
		for x := range 1500 {
			im.SetNRGBA(x, y, color.NRGBA{0x24, 0x44, 0x3A, 0xFF})
		}
	}
	var b bytes.Buffer
	if err := png.Encode(&b, im); err != nil {
		t.Fatal(err)
	}
	data, err := photo.TakeLogo(b.Bytes(), 1<<20)
	if err != nil {
		t.Fatal(err)
	}
	kept, err := photo.Decode(data)
	if err != nil || kept.Bounds().Dx() != 640 || kept.Bounds().Dy() != 320 {
		t.Fatalf("%v, %v", kept, err)
	}
	if got := color.NRGBAModel.Convert(kept.At(100, 100)); got != (color.NRGBA{0x24, 0x44, 0x3A, 0xFF}) {
		t.Errorf("%v", got)
	}
	if _, _, _, a := kept.At(500, 100).RGBA(); a != 0 {
		t.Error("what was clear is not")
	}
	for name, bad := range map[string][]byte{"nothing": nil, "a text": []byte("no picture"), "half of one": b.Bytes()[:b.Len()/2]} {
		if kept, err := photo.TakeLogo(bad, 1<<20); err == nil || kept != nil {
			t.Errorf("%s is taken", name)
		}
	}
	if _, err := photo.TakeLogo(b.Bytes(), 100); err == nil {
		t.Error("kept in a hundred bytes")
	}
}
