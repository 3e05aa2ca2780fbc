package photo

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// corners is a picture with a colour of its own in each quarter.
func corners(w, h int) *image.RGBA {
	m := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := color.RGBA{R: 30, G: 30, B: 30, A: 255}
			if x < w/2 {
				c.R = 220
			}
			if y < h/2 {
				c.G = 220
			}
			m.SetRGBA(x, y, c)
		}
	}
	return m
}

func pngOf(t *testing.T, m image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, m); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestAPictureIsKeptSmaller(t *testing.T) {
	path := filepath.Join(t.TempDir(), "cloth.png")
	os.WriteFile(path, pngOf(t, corners(3000, 1500)), 0o644)
	kept, err := Read(path)
	if err != nil {
		t.Fatal(err)
	}
	m, err := jpeg.Decode(bytes.NewReader(kept))
	if err != nil || m.Bounds().Dx() != 1600 || m.Bounds().Dy() != 800 {
		t.Fatalf("%v, %v", m.Bounds(), err)
	}
	for _, c := range []struct {
		x, y float64
		want color.NRGBA
	}{{0.25, 0.25, color.NRGBA{220, 220, 30, 255}}, {0.75, 0.25, color.NRGBA{30, 220, 30, 255}}, {0.25, 0.75, color.NRGBA{220, 30, 30, 255}}} {
		if got := At(m, c.x, c.y); off(got, c.want) > 4 {
			t.Errorf("at %v, %v: %v, want %v", c.x, c.y, got, c.want)
		}
	}
}

// A colour is picked exactly where the picture itself is exact.
func TestAPlainColourIsPickedExactly(t *testing.T) {
	want := color.NRGBA{0x24, 0x44, 0x3A, 0xFF}
	m := image.NewNRGBA(image.Rect(0, 0, 40, 30))
	for y := range 30 {
		for x := range 40 {
			m.SetNRGBA(x, y, want)
		}
	}
	for _, at := range [][2]float64{{0, 0}, {0.5, 0.5}, {0.999, 0.999}, {1, 1}} {
		if got := At(m, at[0], at[1]); got != want {
			t.Errorf("at %v: %v", at, got)
		}
	}
	if got := At(image.NewNRGBA(image.Rectangle{}), 0.5, 0.5); got.A != 0xFF {
		t.Error("no picture has a clear colour")
	}
}

func off(a, b color.NRGBA) int {
	d := func(p, q uint8) int { return max(int(p)-int(q), int(q)-int(p)) }
	return max(d(a.R, b.R), d(a.G, b.G), d(a.B, b.B))
}

// What the eight values mean: Exif 2.3 (JEITA CP-3451C), section 4.6.4: where
// row 0 and column 0 of the stored picture lie once it is seen.
func TestPicturesStandUpright(t *testing.T) {
	stored := corners(40, 20)
	for value, at := range map[int][2]float64{ // where the stored top left quarter is seen
		1: {0.25, 0.25}, 2: {0.75, 0.25}, 3: {0.75, 0.75}, 4: {0.25, 0.75},
		5: {0.25, 0.25}, 6: {0.75, 0.25}, 7: {0.75, 0.75}, 8: {0.25, 0.75},
	} {
		var plain bytes.Buffer
		jpeg.Encode(&plain, stored, &jpeg.Options{Quality: 100})
		kept, err := Take(withOrientation(plain.Bytes(), value))
		if err != nil {
			t.Fatal(err)
		}
		m, _ := jpeg.Decode(bytes.NewReader(kept))
		if lying := m.Bounds().Dx() > m.Bounds().Dy(); lying != (value < 5) {
			t.Errorf("%d: %v", value, m.Bounds())
		}
		if got := At(m, at[0], at[1]); off(got, color.NRGBA{220, 220, 30, 255}) > 12 {
			t.Errorf("%d: %v at %v", value, got, at)
		}
	}
}

// withOrientation puts an Exif segment of one tag after a JPEG's first marker.
func withOrientation(data []byte, value int) []byte {
	tiff := []byte("MM\x00\x2a\x00\x00\x00\x08\x00\x01\x01\x12\x00\x03\x00\x00\x00\x01\x00\x00\x00\x00\x00\x00\x00\x00")
	tiff[19] = byte(value)
	body := append([]byte("Exif\x00\x00"), tiff...)
	segment := binary.BigEndian.AppendUint16([]byte{0xFF, 0xE1}, uint16(len(body)+2))
	return bytes.Join([][]byte{data[:2], segment, body, data[2:]}, nil)
}

func TestBadPicturesAreRefused(t *testing.T) {
	whole := pngOf(t, corners(60, 40))
	for name, c := range map[string]struct {
		data []byte
		says string
	}{
		"nothing":      {nil, "JPEG"},
		"text":         {[]byte("kind,name\npaper,A\n"), "JPEG"},
		"cut short":    {whole[:len(whole)-30], "damaged"},
		"a head alone": {whole[:20], "damaged"},
		"huge":         {pngClaiming(whole, 12_000, 9_000), "12000"},
	} {
		kept, err := Take(c.data)
		if err == nil || kept != nil || !strings.Contains(err.Error(), c.says) || strings.Contains(err.Error(), "photo.") {
			t.Errorf("%s: %d bytes, %v", name, len(kept), err)
		}
	}
	if _, err := Read(t.TempDir()); err == nil {
		t.Error("a folder is a picture")
	}
	if _, err := Read(filepath.Join(t.TempDir(), "none.png")); err == nil {
		t.Error("nothing is a picture")
	}
}

// pngClaiming is a PNG whose header claims another size: it must be refused before
// anything of such a size is made.
func pngClaiming(data []byte, w, h uint32) []byte {
	data = bytes.Clone(data)
	binary.BigEndian.PutUint32(data[16:], w)
	binary.BigEndian.PutUint32(data[20:], h)
	binary.BigEndian.PutUint32(data[29:], crc32.ChecksumIEEE(data[12:29]))
	return data
}

func FuzzPicture(f *testing.F) {
	var plain bytes.Buffer
	jpeg.Encode(&plain, corners(8, 6), nil)
	f.Add(withOrientation(plain.Bytes(), 6))
	f.Add([]byte("RIFF\x00\x00\x00\x00WEBPVP8 "))
	f.Fuzz(func(t *testing.T, data []byte) {
		if config, _, err := image.DecodeConfig(bytes.NewReader(data)); err == nil && config.Width*config.Height > 1_000_000 {
			t.Skip("takes its time")
		}
		if kept, err := Take(data); (err == nil) != (len(kept) > 0) {
			t.Fatalf("%d bytes, %v", len(kept), err)
		}
	})
}
