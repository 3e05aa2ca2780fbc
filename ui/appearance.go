package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/ui/look"
)

// How the window looks is remembered by these names.
const (
	coloursPreference  = "colours"
	textSizePreference = "text.size"
)

// textSizes are the sizes of text and controls that are offered, in per cent.
// The toolkit scales in whole tenths.
var textSizes = [...]int{90, 100, 110, 130, 150}

// TextSize is what a stored size counts as: one of those offered.
func TextSize(stored int) int {
	for _, size := range textSizes {
		if size == stored {
			return size
		}
	}
	return 100
}

// StoredTextSize is the size of text chosen last, in per cent.
func StoredTextSize(app fyne.App) int {
	return TextSize(app.Preferences().IntWithFallback(textSizePreference, 100))
}

func (w *Window) colours() look.Colours {
	stored := look.Colours(w.app.Preferences().String(coloursPreference))
	for _, c := range look.AllColours() {
		if c == stored {
			return c
		}
	}
	return look.AsSystem
}

func (w *Window) setColours(c look.Colours) {
	w.app.Preferences().SetString(coloursPreference, string(c))
	w.dress()
	w.menu.show()
}

// SetContrast tells that the system asks for high contrast, or no longer does.
func (w *Window) SetContrast(contrast bool) {
	if w.ports.Contrast != contrast {
		w.ports.Contrast = contrast
		w.dress()
	}
}

// dress puts the chosen colours on.
func (w *Window) dress() {
	w.app.Settings().SetTheme(look.Theme{Colours: w.colours(), Contrast: w.ports.Contrast})
}

// dressFirst leaves a theme alone where nothing else is asked for.
func (w *Window) dressFirst() {
	if w.colours() != look.AsSystem || w.ports.Contrast {
		w.dress()
	}
}

// setTextSize scales everything in the window, which keeps its place on the
// screen.
func (w *Window) setTextSize(percent int) {
	before := w.textSize
	if percent == before {
		return
	}
	w.textSize = percent
	w.app.Preferences().SetInt(textSizePreference, percent)
	if w.ports.Scale != nil {
		size := w.win.Canvas().Size()
		w.ports.Scale(percent)
		w.app.Settings().SetTheme(w.app.Settings().Theme())
		ratio := float32(before) / float32(percent)
		w.win.Resize(fyne.NewSize(size.Width*ratio, size.Height*ratio))
	}
	w.format.show()
	w.menu.show()
}

// stepTextSize goes to the next larger or smaller size.
func (w *Window) stepTextSize(n int) {
	for i, size := range textSizes {
		if next := i + n; size == w.textSize && next >= 0 && next < len(textSizes) {
			w.setTextSize(textSizes[next])
			return
		}
	}
}

// colourItems and sizeItems are the choices of the menu.
func (m *menu) colourItems() *fyne.MenuItem {
	top := fyne.NewMenuItem(words.Say("menu.colours"), nil)
	for _, c := range look.AllColours() {
		name := string(c)
		if c == look.AsSystem {
			name = "system"
		}
		item := fyne.NewMenuItem(words.Say("colours."+name), func() { m.window.setColours(c) })
		m.colours = append(m.colours, item)
	}
	top.ChildMenu = fyne.NewMenu("", m.colours...)
	return top
}

func (m *menu) sizeItems() *fyne.MenuItem {
	top := fyne.NewMenuItem(words.Say("menu.textSize"), nil)
	for _, size := range textSizes {
		item := fyne.NewMenuItem(words.Say("textSize.percent", words.With{"percent": size}), func() { m.window.setTextSize(size) })
		m.sizes = append(m.sizes, item)
	}
	top.ChildMenu = fyne.NewMenu("", append(m.sizes[:len(m.sizes):len(m.sizes)],
		fyne.NewMenuItemSeparator(), m.command("larger"), m.command("smaller"))...)
	return top
}

// showAppearance marks what is chosen.
func (m *menu) showAppearance() {
	for i, c := range look.AllColours() {
		m.colours[i].Checked = c == m.state.colours
	}
	for i, size := range textSizes {
		m.sizes[i].Checked = size == m.state.textSize
	}
}
