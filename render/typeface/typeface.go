// Package typeface measures text on the embedded faces, in millimetres. It is
// the only measurer: pixels, PDF and SVG set the same glyphs at the same
// advances, without kerning and without ligatures, so a label that fits in one
// of them fits in all.
package typeface

import (
	"strings"
	"sync"
	"unicode"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"grainwise/assets/fonts"
	"grainwise/render/scene"
)

// Face is one embedded face. It is read-only and safe for concurrent use.
type Face struct {
	Family string // as fonts are named in SVG and CSS
	Style  string // "", "I" or "B"
	File   []byte // TrueType

	font                       *sfnt.Font
	unit                       float64        // font units an em
	advances                   map[rune]glyph // of the characters that labels use
	ascent, descent, capHeight float64
}

// glyph is a glyph and its advance in font units.
type glyph struct {
	index   sfnt.GlyphIndex
	advance uint16
}

// Of returns a face; a number that names none is the plain sans.
func Of(f scene.Font) *Face {
	switch f {
	case scene.Serif:
		return serif()
	case scene.SansItalic:
		return sansItalic()
	case scene.SansBold:
		return sansBold()
	}
	return sans()
}

// Each face is read at its first use.
var (
	serif      = once("Gentium Book Plus", "", fonts.Serif)
	sans       = once("Lato", "", fonts.Sans)
	sansItalic = once("Lato", "I", fonts.SansItalic)
	sansBold   = once("Lato", "B", fonts.SansBold)
)

func once(family, style string, file []byte) func() *Face {
	return sync.OnceValue(func() *Face { return read(family, style, file) })
}

// Characters up to here are looked up once and for all: Latin, Greek,
// Cyrillic, punctuation, fractions, arrows and operators.
const common = 0x2300

func read(family, style string, file []byte) *Face {
	f, err := sfnt.Parse(file)
	if err != nil {
		panic("typeface: the embedded " + family + " is damaged: " + err.Error())
	}
	face := &Face{Family: family, Style: style, File: file, font: f, unit: float64(f.UnitsPerEm())}
	face.advances = make(map[rune]glyph, 2000)
	var b sfnt.Buffer
	for r := rune(' '); r < common; r++ {
		if g, ok := face.look(&b, r); ok {
			face.advances[r] = g
		}
	}
	m, err := f.Metrics(&b, face.ppem(), font.HintingNone)
	if err != nil {
		panic("typeface: the embedded " + family + " has no metrics: " + err.Error())
	}
	em := face.unit * 64
	face.ascent, face.descent = float64(m.Ascent)/em, float64(m.Descent)/em
	face.capHeight = float64(m.CapHeight) / em
	return face
}

// ppem is the size at which a font unit is a pixel, so that nothing is rounded.
func (f *Face) ppem() fixed.Int26_6 { return fixed.I(int(f.unit)) }

func (f *Face) look(b *sfnt.Buffer, r rune) (glyph, bool) {
	g, err := f.font.GlyphIndex(b, r)
	if err != nil || g == 0 {
		return glyph{}, false
	}
	advance, err := f.font.GlyphAdvance(b, g, f.ppem(), font.HintingNone)
	if err != nil {
		return glyph{}, false
	}
	return glyph{g, uint16(advance.Round())}, true
}

func (f *Face) find(r rune) (glyph, bool) {
	if g, ok := f.advances[r]; ok || r < common {
		return g, ok
	}
	return f.look(new(sfnt.Buffer), r)
}

// Shown is a text as a face can show it: white space of any kind is a space,
// other control characters are dropped, and a character that the face lacks
// is a question mark. All backends draw this.
func Shown(f scene.Font, text string) string {
	face := Of(f)
	return strings.Map(func(r rune) rune {
		if _, ok := face.find(r); ok && r <= 0xFFFF {
			return r
		}
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r):
			return -1
		}
		return '?'
	}, text)
}

// Lacking lists the characters of a text that a face shows as question marks, each
// once, in their order.
func Lacking(f scene.Font, text string) string {
	lacking := ""
	for _, r := range text {
		if r != '?' && Shown(f, string(r)) == "?" && !strings.ContainsRune(lacking, r) {
			lacking += string(r)
		}
	}
	return lacking
}

// Width is the advance of a text, in millimetres, at an em of size millimetres.
func Width(f scene.Font, size float64, text string) float64 {
	face := Of(f)
	units := 0.0
	for _, r := range Shown(f, text) {
		units += face.units(r)
	}
	return units / face.unit * size
}

func (f *Face) units(r rune) float64 {
	g, _ := f.find(r)
	return float64(g.advance)
}

// Advance is the width of one shown character as a share of the em.
func (f *Face) Advance(r rune) float64 { return f.units(r) / f.unit }

// Outline returns a character's outline, y downwards, the origin on the
// baseline, and how many of its 26.6 units make an em. The segments belong to
// the buffer.
func (f *Face) Outline(b *sfnt.Buffer, r rune) (segments sfnt.Segments, unit float64) {
	g, _ := f.find(r)
	segments, err := f.font.LoadGlyph(b, g.index, f.ppem(), nil)
	if err != nil {
		return nil, f.unit * 64
	}
	return segments, f.unit * 64
}

// Ascent is how far a line of text may rise over its baseline, in millimetres.
func Ascent(f scene.Font, size float64) float64 { return Of(f).ascent * size }

// Descent is how far it may hang below, a positive number of millimetres.
func Descent(f scene.Font, size float64) float64 { return Of(f).descent * size }

// CapHeight is the height of a capital, in millimetres: half of it centres a
// figure on its line.
func CapHeight(f scene.Font, size float64) float64 { return Of(f).capHeight * size }
