package sketch

import (
	"os"
	"testing"

	"grainwise/render/raster"
)

// GRAINWISE_SKETCHES=FOLDER draws every picture there, light and dark.
func TestGallery(t *testing.T) {
	folder := os.Getenv("GRAINWISE_SKETCHES")
	if folder == "" {
		t.Skip("no folder given")
	}
	for _, n := range All() {
		for suffix, dark := range map[string]bool{"": false, "-dark": true} {
			file, err := os.Create(folder + "/" + string(n) + suffix + ".png")
			if err != nil {
				t.Fatal(err)
			}
			defer file.Close()
			if err := raster.WritePNG(file, Scene(n, Look{Dark: dark}), 2*Width); err != nil {
				t.Fatal(err)
			}
		}
	}
}
