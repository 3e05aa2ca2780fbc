package controls

import (
	"image"
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"grainwise/ui/look"
)

// The levels differ where no colour is seen: WCAG 2.2, criterion 1.4.1, does not
// let colour alone tell them apart. What counts is which pixels stand out from
// the ground in grey, however dark they are.
func TestLevelsDifferInGrey(t *testing.T) {
	for name, variant := range map[string]fyne.ThemeVariant{"light": theme.VariantLight, "dark": theme.VariantDark} {
		dress(t, variant)
		for where, shown := range map[string]func(look.Level) fyne.CanvasObject{
			"row": func(l look.Level) fyne.CanvasObject {
				r := NewRow("Joint", nil)
				r.SetState(RowState{Text: "7", Unit: "mm", Level: l, Slider: SliderState{Min: 1, Max: 9, Step: 1, Value: 7}})
				return r
			},
			"head": func(l look.Level) fyne.CanvasObject {
				h := NewGroupHead("Spine")
				h.SetState(HeadState{Title: "Spine", Level: l})
				return h
			},
			"card": func(l look.Level) fyne.CanvasObject {
				c := NewCard()
				c.SetState(CardState{Level: l, Word: "the same", Sentence: "Narrow joint"})
				return c
			},
			"count": func(l look.Level) fyne.CanvasObject {
				c := NewLevelCount(l)
				c.Set("2")
				return c
			},
		} {
			levels := []look.Level{look.None, look.Note, look.Check, look.Stop}
			var shapes []*image.Alpha
			for _, l := range levels {
				shapes = append(shapes, shapeInGrey(t, shown(l)))
			}
			for i := range shapes {
				for j := range i {
					const apart = 20 // of the 196 pixels of a shape; copies of one differ in none
					if n := unlike(shapes[i], shapes[j]); n < apart {
						t.Errorf("%s, %s: levels %v and %v differ in %d pixels", name, where, levels[i], levels[j], n)
					}
				}
			}
			if n := unlike(shapes[1], shapeInGrey(t, shown(look.Note))); n != 0 {
				t.Errorf("%s, %s: the same level twice differs in %d pixels", name, where, n)
			}
		}
	}
}

// shapeInGrey marks what stands out from the ground at the lower right corner by
// the 3 : 1 that WCAG 2.2, criterion 1.4.11, asks of a shape.
func shapeInGrey(t *testing.T, o fyne.CanvasObject) *image.Alpha {
	t.Helper()
	window := test.NewTempWindow(t, o)
	window.SetPadded(false)
	window.Resize(fyne.NewSize(320, 90))
	picture := window.Canvas().Capture()
	bounds := picture.Bounds()
	ground := grey(picture.At(bounds.Max.X-1, bounds.Max.Y-1))
	shape := image.NewAlpha(bounds)
	for y := bounds.Min.Y; y < bounds.Max.Y; y++ {
		for x := bounds.Min.X; x < bounds.Max.X; x++ {
			here := grey(picture.At(x, y))
			if (max(here, ground)+0.05)/(min(here, ground)+0.05) >= 3 {
				shape.SetAlpha(x, y, color.Alpha{A: 255})
			}
		}
	}
	return shape
}

// grey is a colour's relative luminance, 0 … 1, as WCAG 2.2 defines it.
func grey(c color.Color) float64 {
	r, g, b, _ := c.RGBA()
	linear := func(part uint32) float64 {
		s := float64(part) / 0xFFFF
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
}

func unlike(a, b *image.Alpha) int {
	n := 0
	for i := range a.Pix {
		if a.Pix[i] != b.Pix[i] {
			n++
		}
	}
	return n
}

// The level's word stands in its card.
func TestACardSaysItsLevel(t *testing.T) {
	dress(t, theme.VariantLight)
	c := NewCard()
	test.NewTempWindow(t, c).Resize(fyne.NewSize(320, 200))
	for level, word := range map[look.Level]string{look.Note: "Note", look.Check: "Check", look.Stop: "Stop"} {
		c.SetState(CardState{Level: level, Word: word, Sentence: "Narrow joint"})
		seen := false
		for _, o := range test.WidgetRenderer(c).Objects() {
			text, is := o.(*canvas.Text)
			seen = seen || is && text.Visible() && text.Text == word && text.Size().Width > 0
		}
		if !seen {
			t.Errorf("the card does not say %q", word)
		}
	}
}
