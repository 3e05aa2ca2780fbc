package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/project"
)

// again opens a second window of the same program.
func again(t *testing.T, w *Window, screen fyne.Size) *Window {
	t.Helper()
	ports := w.ports
	ports.Project, ports.Screen = project.Demo(), func() fyne.Size { return screen }
	second := assemble(w.app, ports, still)
	t.Cleanup(func() { second.win.SetCloseIntercept(nil); second.win.Close() })
	second.Show()
	return second
}

func TestTheWindowComesBackAsItWasLeft(t *testing.T) {
	w := openDemo(t)
	w.win.Resize(fyne.NewSize(1500, 900))
	w.middle.turnTo(2)
	for _, g := range w.column.groups {
		w.column.fold(g, g.id == w.column.groups[1].id)
	}
	w.noteForNextTime()
	second := again(t, w, fyne.NewSize(1920, 1080))
	if size := second.win.Canvas().Size(); size != w.win.Canvas().Size() {
		t.Errorf("the size is %v", size)
	}
	if second.middle.at != 2 {
		t.Errorf("the drawing is %d", second.middle.at)
	}
	for i, g := range second.column.groups {
		if g.open != (i == 1) {
			t.Errorf("group %s is open: %v", g.id, g.open)
		}
	}
}

// A screen that is smaller than the last one holds the whole window.
func TestTheWindowStaysOnTheScreen(t *testing.T) {
	w := openDemo(t)
	w.win.Resize(fyne.NewSize(2400, 1300))
	w.noteForNextTime()
	second := again(t, w, fyne.NewSize(1366, 768))
	if size := second.win.Canvas().Size(); size.Width > 1366 || size.Height > 768 {
		t.Errorf("the size is %v", size)
	}
	if third := again(t, w, fyne.Size{}); third.win.Canvas().Size().Width < 2000 {
		t.Error("an unknown screen is no small one")
	}
	w.app.Preferences().SetFloat(widthPreference, 1e9)
	w.app.Preferences().SetFloat(heightPreference, -1)
	if size := w.onScreen(fyne.NewSize(1e9, -1)); size != fyne.NewSize(mostWidth, leastHeight) {
		t.Errorf("without a screen's size, %v", size)
	}
	if fourth := again(t, w, fyne.Size{}); fourth.win.Canvas().Size().Width > mostWidth {
		t.Errorf("the width is %v", fourth.win.Canvas().Size().Width)
	}
}
