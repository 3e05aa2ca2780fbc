package picture_test

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"

	"grainwise/render/picture"
)

func flat(width, height int) image.Image {
	im := image.NewNRGBA(image.Rect(0, 0, width, height))
	for i := range im.Pix {
		im.Pix[i] = []uint8{0x24, 0x44, 0x3A, 0xFF}[i%4]
	}
	return im
}

func pngOf(t *testing.T, im image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, im); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// claiming is a PNG of a few bytes that says it is of that size: a header chunk by
// hand (ISO/IEC 15948, 11.2.2), and no pixels.
func claiming(width, height uint32) []byte {
	head := []byte("IHDR")
	head = binary.BigEndian.AppendUint32(head, width)
	head = binary.BigEndian.AppendUint32(head, height)
	head = append(head, 8, 2, 0, 0, 0)
	out := []byte("\x89PNG\r\n\x1a\n\x00\x00\x00\x0d")
	out = append(out, head...)
	return binary.BigEndian.AppendUint32(out, crc32.ChecksumIEEE(head))
}

func TestBadPictures(t *testing.T) {
	whole := pngOf(t, flat(64, 48))
	var photo bytes.Buffer
	if err := jpeg.Encode(&photo, flat(64, 48), nil); err != nil {
		t.Fatal(err)
	}
	for name, c := range map[string]struct {
		data []byte
		says string
	}{
		"nothing":           {nil, "no picture that can be read"},
		"a text":            {[]byte("not a picture at all"), "PNG or a JPEG"},
		"another format":    {[]byte("GIF89a\x01\x00\x01\x00"), "PNG or a JPEG"},
		"cut off":           {whole[:len(whole)/2], "damaged"},
		"a flipped byte":    {append(append(bytes.Clone(whole[:45]), whole[45]^0xFF), whole[46:]...), "damaged"},
		"a photo, cut off":  {photo.Bytes()[:photo.Len()/2], "damaged"},
		"100 million":       {claiming(10_000, 10_000), "10000 × 10000 px, 100 million in all. At most 40 million"},
		"four thousand Mpx": {claiming(65_535, 65_535), "4295 million"},
	} {
		if im, err := picture.Read(c.data); err == nil || im != nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", name, err)
		}
		if kept, err := picture.Kept(c.data, 1<<20); err == nil || kept != nil {
			t.Errorf("%s is kept", name)
		}
	}
}

// What is kept is small, of the same shape and, where it is flat, of the same
// colour.
func TestKept(t *testing.T) {
	data, err := picture.Kept(pngOf(t, flat(3000, 1500)), 1<<20)
	if err != nil {
		t.Fatal(err)
	}
	im, err := picture.Read(data)
	if err != nil || im.Bounds().Dx() != 640 || im.Bounds().Dy() != 320 {
		t.Fatalf("%v, %v", im.Bounds(), err)
	}
	if got := color.NRGBAModel.Convert(im.At(100, 100)); got != (color.NRGBA{0x24, 0x44, 0x3A, 0xFF}) {
		t.Errorf("%v", got)
	}
}
