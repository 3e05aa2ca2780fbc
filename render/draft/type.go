package draft

import (
	"grainwise/model/measure"
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// Least is the smallest type anywhere, in px.
const Least = 11

// Type is a face at a size in px and in a colour.
type Type struct {
	Font   scene.Font
	Size   float64
	Colour scene.Colour
}

// Title heads a drawing.
func Title() Type { return Type{scene.Serif, 25, Ink} }

// Name names a part.
func Name() Type { return Type{scene.Serif, 16, Ink} }

// SizeLine is the line of sizes under a name; its leading is 16.
func SizeLine() Type { return Type{scene.Sans, 12.5, Ink2} }

// FigureType is that of a dimension's figure.
func FigureType() Type { return Type{scene.Sans, 13, Ink} }

// Word is a key word or remark beside a line.
func Word() Type { return Type{scene.SansItalic, 11.5, Ink2} }

// ValueType is that of a field in the title strip.
func ValueType() Type { return Type{scene.Sans, 13.5, Ink} }

// Small is the smallest type, for scale bars and notes.
func Small() Type { return Type{scene.Sans, 11, Ink2} }

// Mark is the letter of a detail or a section.
func Mark() Type { return Type{scene.Serif, 16, Ink} }

// In is the type in another colour.
func (t Type) In(c scene.Colour) Type {
	t.Colour = c
	return t
}

// At is the type at another size, never below the least.
func (t Type) At(size float64) Type {
	t.Size = max(size, Least)
	return t
}

// Width of a text in px.
func (t Type) Width(text string) float64 { return typeface.Width(t.Font, t.Size, text) }

// Sizes is how drawings show lengths: millimetres to a tenth, inches to 1/32.
func Sizes(system measure.System) measure.Style {
	return measure.Style{System: system, Decimals: 1, Denominator: 32}
}

// Calipers is how drawings show thicknesses: two decimals, inches in three.
func Calipers(system measure.System) measure.Style {
	if system == measure.Imperial {
		return measure.Style{System: system, Decimals: 3}
	}
	return measure.Style{System: system, Decimals: 2}
}
