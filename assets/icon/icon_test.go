package icon

import (
	"bytes"
	"image/png"
	"testing"
)

func TestIconIs512Square(t *testing.T) {
	picture, err := png.DecodeConfig(bytes.NewReader(PNG))
	if err != nil {
		t.Fatal(err)
	}
	if picture.Width != 512 || picture.Height != 512 {
		t.Errorf("icon.png is %d × %d, want 512 × 512", picture.Width, picture.Height)
	}
}
