// Package look is how the window looks: its colours, sizes, faces, level
// shapes and icons. It knows nothing of books.
package look

import (
	"image/color"

	"fyne.io/fyne/v2"
)

// Palette holds every colour of one variant of the theme.
type Palette struct {
	Panel color.NRGBA // the window's background
	Sheet color.NRGBA // drawing and title block
	Card  color.NRGBA // card, menu, popup, a switch that is on
	Desk  color.NRGBA // round a page

	Ink   color.NRGBA
	Quiet color.NRGBA // captions, automatic values

	Hairline color.NRGBA
	Ruled    color.NRGBA // frames round what its own words show to be a control
	Field    color.NRGBA // the line under a value or choice, the frame of a switch that is on

	Accent   color.NRGBA // what changes now, the primary button, the focus ring
	OnAccent color.NRGBA // text on it
	Wash     color.NRGBA // behind the chosen row, translucent

	Stop, Check, Note color.NRGBA
	OnStop            color.NRGBA // the cross in the octagon

	Track    color.NRGBA
	Ruler    color.NRGBA
	RulerNow color.NRGBA

	SheetInk       color.NRGBA // on the sheet in both variants
	SheetQuiet     color.NRGBA
	SheetAccent    color.NRGBA
	SheetHairline  color.NRGBA
	Tip, TipInk    color.NRGBA // tooltip and its text
	Shade          color.NRGBA // the soft edge under what floats
	Hover, Pressed color.NRGBA // translucent

	Night bool // light on dark
	Stark bool // of high contrast
}

// Light is the palette of paper and ink.
func Light() Palette {
	return Palette{
		Panel: rgb(0xEFECE5), Sheet: rgb(0xFCFAF5), Card: rgb(0xFBFAF7), Desk: rgb(0xDDD9D0),
		Ink: rgb(0x2A2823), Quiet: rgb(0x645F54),
		Hairline: rgb(0xD3CDC1), Ruled: rgb(0xBDB6A8), Field: rgb(0x7F7869),
		Accent: rgb(0x2459B5), OnAccent: rgb(0xFFFFFF), Wash: share(0x2459B5, 11),
		Stop: rgb(0xA5301C), Check: rgb(0x835900), Note: rgb(0x5B6660), OnStop: rgb(0xFFFFFF),
		Track: rgb(0xC9C3B6), Ruler: rgb(0xDFDACF), RulerNow: rgb(0xB5AC9B),
		SheetInk: rgb(0x35322C), SheetQuiet: rgb(0x6B665B), SheetAccent: rgb(0x2459B5), SheetHairline: rgb(0xC9C3B6),
		Tip: rgb(0x2A2823), TipInk: rgb(0xF6F3EC), Shade: share(0x2A2823, 14),
		Hover: share(0x2A2823, 6), Pressed: share(0x2A2823, 12),
	}
}

// Dark is the palette of the evening; the sheet stays paper, dimmed.
func Dark() Palette {
	return Palette{
		Panel: rgb(0x24221F), Sheet: rgb(0xE7E2D6), Card: rgb(0x2E2C28), Desk: rgb(0x191816),
		Ink: rgb(0xE9E5DC), Quiet: rgb(0xADA698),
		Hairline: rgb(0x3B3833), Ruled: rgb(0x57524A), Field: rgb(0x8D8577),
		Accent: rgb(0x86AEF5), OnAccent: rgb(0x16202F), Wash: share(0x86AEF5, 16),
		Stop: rgb(0xF08A74), Check: rgb(0xE0B453), Note: rgb(0xB3BBB4), OnStop: rgb(0x24221F),
		Track: rgb(0x4A463F), Ruler: rgb(0x37342F), RulerNow: rgb(0x655F54),
		SheetInk: rgb(0x35322C), SheetQuiet: rgb(0x5F5A50), SheetAccent: rgb(0x2459B5), SheetHairline: rgb(0xB9B2A3),
		Tip: rgb(0xE9E5DC), TipInk: rgb(0x24221F), Shade: share(0x000000, 34),
		Hover: share(0xE9E5DC, 7), Pressed: share(0xE9E5DC, 14),
		Night: true,
	}
}

// Current is the palette of the running application: the theme's own when it
// is ours, else the one that fits the system's variant.
func Current() Palette {
	settings := fyne.CurrentApp().Settings()
	if t, ok := settings.Theme().(Theme); ok {
		return t.Palette(settings.ThemeVariant())
	}
	return Theme{}.Palette(settings.ThemeVariant())
}

// Level is the colour of a level's shape and word; quiet for none.
func (p Palette) Level(l Level) color.NRGBA {
	switch l {
	case Stop:
		return p.Stop
	case Check:
		return p.Check
	case Note:
		return p.Note
	}
	return p.Quiet
}

func rgb(hex uint32) color.NRGBA {
	return color.NRGBA{R: uint8(hex >> 16), G: uint8(hex >> 8), B: uint8(hex), A: 0xFF}
}

// share is a colour at so many per cent of opacity.
func share(hex uint32, percent int) color.NRGBA {
	c := rgb(hex)
	c.A = uint8((percent*0xFF + 50) / 100)
	return c
}
