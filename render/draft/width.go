package draft

import (
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"grainwise/assets/fonts"
	"grainwise/render/scene"
)

// em is the width of a text in ems of its face: the sum of the advances.
func em(f scene.Font, text string) float64 {
	face := faces()[f]
	var buffer sfnt.Buffer
	units := fixed.I(int(face.UnitsPerEm()))
	sum := 0.0
	for _, r := range text {
		glyph, err := face.GlyphIndex(&buffer, r)
		if err != nil {
			continue
		}
		if advance, err := face.GlyphAdvance(&buffer, glyph, units, font.HintingNone); err == nil {
			sum += float64(advance) / float64(units)
		}
	}
	return sum
}

var faces = sync.OnceValue(func() map[scene.Font]*sfnt.Font {
	all := map[scene.Font]*sfnt.Font{}
	for f, data := range map[scene.Font][]byte{
		scene.Serif: fonts.Serif, scene.Sans: fonts.Sans,
		scene.SansItalic: fonts.SansItalic, scene.SansBold: fonts.SansBold,
	} {
		face, err := sfnt.Parse(data)
		if err != nil {
			panic(err) // the file is embedded: it was there when we compiled
		}
		all[f] = face
	}
	return all
})
