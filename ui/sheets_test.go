package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/model/stock"
)

// With the largest text on a screen of 1280 × 720 every sheet lies within the
// window, its texts within the sheet, and Esc leaves it from where it begins.
func TestSheetsFitTheLargestText(t *testing.T) {
	long(t)
	for name, open := range map[string]func(*Window){
		"measure":    (*Window).openMeasure,
		"from paper": (*Window).openFromSheet,
		"formats":    (*Window).openGallery,
		"tools":      (*Window).toolsSheet,
		"limits":     (*Window).limitsSheet,
		"words":      func(w *Window) { w.openGlossary("") },
		"keys":       (*Window).showKeys,
		"why":        (*Window).why,
		"new":        (*Window).newBook,
		"about":      (*Window).showAbout,
		"name":       (*Window).keepFavourite,
		"material": func(w *Window) {
			w.turnPage(materialsAt)
			w.shelfPage.openForm(stock.Material{}, false)
		},
	} {
		w := openDemo(t)
		w.win.Resize(fyne.NewSize(1280/1.5, 720/1.5-26))
		open(w)
		if len(w.sheets) != 1 {
			t.Errorf("%s: %d sheets", name, len(w.sheets))
			continue
		}
		window, content := w.win.Canvas().Size(), w.sheets[0].popup.Content
		if needs := content.MinSize(); needs.Width > window.Width || needs.Height > window.Height {
			t.Errorf("%s: needs %v of %v", name, needs, window)
		}
		shown := container.NewWithoutLayout(content)
		shown.Resize(window)
		for _, trouble := range troublesOfText(shown) {
			t.Errorf("%s: %s", name, trouble)
		}
		typeKey(w, fyne.KeyEscape)
		if len(w.sheets) != 0 {
			t.Errorf("%s: Esc does not leave it", name)
		}
	}
}

// typeKey types into what has the focus, or into the window.
func typeKey(w *Window, key fyne.KeyName) {
	c := w.win.Canvas()
	if focused := c.Focused(); focused != nil {
		focused.TypedKey(&fyne.KeyEvent{Name: key})
		return
	}
	c.OnTypedKey()(&fyne.KeyEvent{Name: key})
}
