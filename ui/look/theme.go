package look

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"
)

// Theme dresses the whole window. The zero value follows the system's variant.
type Theme struct {
	Colours Colours
	// Contrast says that the system asks for high contrast; it counts where the
	// colours follow the system.
	Contrast bool
}

// Colours is the maker's choice.
type Colours string

// The choices; the empty one follows the system.
const (
	AsSystem     Colours = ""
	LightColours Colours = "light"
	DarkColours  Colours = "dark"
	StarkLight   Colours = "light-contrast"
	StarkDark    Colours = "dark-contrast"
)

// AllColours lists the choices in the order in which they are offered.
func AllColours() []Colours {
	return []Colours{AsSystem, LightColours, DarkColours, StarkLight, StarkDark}
}

// Following is the theme that follows the system.
func Following() Theme { return Theme{} }

// Always is the theme that keeps to one variant.
func Always(variant fyne.ThemeVariant) Theme {
	if variant == theme.VariantDark {
		return Theme{Colours: DarkColours}
	}
	return Theme{Colours: LightColours}
}

// Palette is the set of colours for the variant the system asks for.
func (t Theme) Palette(variant fyne.ThemeVariant) Palette {
	switch t.Colours {
	case LightColours:
		return Light()
	case DarkColours:
		return Dark()
	case StarkLight:
		return LightContrast()
	case StarkDark:
		return DarkContrast()
	}
	switch dark := variant == theme.VariantDark; {
	case dark && t.Contrast:
		return DarkContrast()
	case dark:
		return Dark()
	case t.Contrast:
		return LightContrast()
	}
	return Light()
}

// Color implements fyne.Theme.
func (t Theme) Color(name fyne.ThemeColorName, variant fyne.ThemeVariant) color.Color {
	p := t.Palette(variant)
	switch name {
	case theme.ColorNameForeground:
		return ink{p.Ink}
	case theme.ColorNameBackground, theme.ColorNameHeaderBackground, theme.ColorNameDisabledButton:
		return p.Panel
	case theme.ColorNameButton, theme.ColorNameInputBackground, theme.ColorNameMenuBackground, theme.ColorNameOverlayBackground:
		return p.Card
	case theme.ColorNamePrimary, theme.ColorNameHyperlink:
		return p.Accent
	case theme.ColorNameForegroundOnPrimary:
		return p.OnAccent
	case theme.ColorNameFocus:
		return p.Wash
	case theme.ColorNameSelection:
		return faded(p.Accent, 0x48)
	case theme.ColorNameInputBorder:
		return p.Field
	case theme.ColorNameSeparator:
		return p.Hairline
	case theme.ColorNamePlaceHolder:
		return p.Quiet
	case theme.ColorNameDisabled:
		return faded(p.Quiet, 0xA0)
	case theme.ColorNameError:
		return p.Stop
	case theme.ColorNameForegroundOnError:
		return p.OnStop
	case theme.ColorNameWarning:
		return p.Check
	case theme.ColorNameSuccess:
		return p.Note
	case theme.ColorNameForegroundOnWarning, theme.ColorNameForegroundOnSuccess:
		return p.Panel
	case theme.ColorNameHover:
		return p.Hover
	case theme.ColorNamePressed:
		return p.Pressed
	case theme.ColorNameScrollBar:
		return faded(p.Quiet, 0x90)
	case theme.ColorNameScrollBarBackground:
		return color.NRGBA{}
	case theme.ColorNameShadow:
		return p.Shade
	}
	return theme.DefaultTheme().Color(name, variant)
}

// Font implements fyne.Theme: Lato, with the toolkit's own for fixed widths
// and symbols.
func (t Theme) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Monospace, style.Symbol:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return sansBold
	case style.Italic:
		return sansItalic
	}
	return sans
}

// Icon implements fyne.Theme with the toolkit's icons.
func (t Theme) Icon(name fyne.ThemeIconName) fyne.Resource {
	return theme.DefaultTheme().Icon(name)
}

// Size implements fyne.Theme, in device-independent pixels.
func (t Theme) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameText:
		return TextSize
	case theme.SizeNameCaptionText:
		return CaptionSize
	case theme.SizeNameSubHeadingText:
		return FigureSize
	case theme.SizeNameHeadingText:
		return TitleSize
	case theme.SizeNamePadding:
		return 4
	case theme.SizeNameInnerPadding:
		return 6
	case theme.SizeNameInlineIcon:
		return 18
	case theme.SizeNameScrollBar:
		return 10
	case theme.SizeNameScrollBarSmall:
		return 4
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius, theme.SizeNameScrollBarRadius:
		return Radius
	case theme.SizeNameSeparatorThickness, theme.SizeNameInputBorder:
		return 1
	}
	return theme.DefaultTheme().Size(name)
}

// ink is a foreground that stays legible where the toolkit's menus take the
// low byte of 95 per cent of its alpha for the text of a shortcut: with an
// alpha of 0xFFFF that is 20 per cent, with 0xFF80 it is 73.
type ink struct{ color.NRGBA }

// RGBA implements color.Color.
func (c ink) RGBA() (r, g, b, a uint32) {
	const alpha = 0xFF80
	r, g, b, _ = c.NRGBA.RGBA()
	return min(r, alpha), min(g, alpha), min(b, alpha), alpha
}

func faded(c color.NRGBA, alpha uint8) color.NRGBA {
	c.A = alpha
	return c
}
