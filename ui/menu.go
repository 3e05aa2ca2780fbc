package ui

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// menu is the menu bar. Items that cannot do anything just now are grey.
type menu struct {
	window              *Window
	main                *fyne.MainMenu
	undo, redo, back    *fyne.MenuItem
	views               []*fyne.MenuItem
	dimensions, grain   *fyne.MenuItem
	millimetres, inches *fyne.MenuItem
	recent              *fyne.MenuItem
	recentFiles         []string
	state               menuState
}

// menuState is everything that changes the look of the menu.
type menuState struct {
	undo, redo, back  bool
	view              int
	dimensions, grain bool
	system            measure.System
}

func newMenu(w *Window) *menu {
	m := &menu{window: w, state: menuState{view: -1}}
	m.main = fyne.NewMainMenu(m.file(), m.edit(), m.view(), m.book(), m.help())
	m.fillRecent()
	return m
}

// item is a menu item that does nothing while a sheet wants an answer first.
func (m *menu) item(key string, do func(), keys ...fyne.Shortcut) *fyne.MenuItem {
	item := fyne.NewMenuItem(words.Say("menu."+key), func() {
		if !m.window.busy() {
			do()
		}
	})
	if len(keys) > 0 {
		item.Shortcut = keys[0]
	}
	return item
}

// ctrl is a key with Ctrl, or Cmd on a Mac; more adds Shift and the like.
func ctrl(key fyne.KeyName, more ...fyne.KeyModifier) fyne.Shortcut {
	modifier := fyne.KeyModifierShortcutDefault
	for _, m := range more {
		modifier |= m
	}
	return &desktop.CustomShortcut{KeyName: key, Modifier: modifier}
}

func (m *menu) file() *fyne.Menu {
	w := m.window
	m.recent = fyne.NewMenuItem(words.Say("menu.recent"), nil)
	m.recent.ChildMenu = fyne.NewMenu("")
	quit := m.item("quit", w.Quit, ctrl(fyne.KeyQ))
	quit.IsQuit = true
	return fyne.NewMenu(words.Say("menu.file"),
		m.item("new", w.newBook, ctrl(fyne.KeyN)),
		m.item("open", w.open, ctrl(fyne.KeyO)),
		m.recent,
		fyne.NewMenuItemSeparator(),
		m.item("save", w.save, ctrl(fyne.KeyS)),
		m.item("saveAs", w.saveAs, ctrl(fyne.KeyS, fyne.KeyModifierShift)),
		fyne.NewMenuItemSeparator(),
		quit)
}

func (m *menu) edit() *fyne.Menu {
	w := m.window
	m.undo = fyne.NewMenuItem(words.Say("menu.undo"), w.undo)
	m.undo.Shortcut = &fyne.ShortcutUndo{}
	m.redo = fyne.NewMenuItem(words.Say("menu.redo"), w.redo)
	m.redo.Shortcut = &fyne.ShortcutRedo{}
	m.back = m.item("back", w.giveBack)
	return fyne.NewMenu(words.Say("menu.edit"), m.undo, m.redo, fyne.NewMenuItemSeparator(), m.back)
}

// viewKeys are the figures that turn to the views.
var viewKeys = [...]fyne.KeyName{fyne.Key1, fyne.Key2, fyne.Key3, fyne.Key4, fyne.Key5}

func (m *menu) view() *fyne.Menu {
	w, d := m.window, m.window.middle
	var items []*fyne.MenuItem
	for i, v := range d.views {
		item := fyne.NewMenuItem(v.Label(), func() { d.turnTo(i) })
		if i < len(viewKeys) {
			item.Shortcut = ctrl(viewKeys[i])
		}
		items = append(items, item)
		m.views = append(m.views, item)
	}
	m.dimensions = m.item("dimensions", d.toggleDimensions)
	m.grain = m.item("grain", d.toggleGrain)
	m.millimetres = m.item("millimetres", func() { w.setUnit(measure.Metric) })
	m.inches = m.item("inches", func() { w.setUnit(measure.Imperial) })
	items = append(items, fyne.NewMenuItemSeparator(),
		m.item("fit", d.pane.Fit, ctrl(fyne.Key0)),
		m.item("zoomIn", func() { d.pane.Zoom(zoomStep) }, ctrl(fyne.KeyEqual)),
		m.item("zoomOut", func() { d.pane.Zoom(1 / zoomStep) }, ctrl(fyne.KeyMinus)),
		fyne.NewMenuItemSeparator(), m.dimensions, m.grain,
		fyne.NewMenuItemSeparator(), m.millimetres, m.inches)
	return fyne.NewMenu(words.Say("menu.view"), items...)
}

func (m *menu) book() *fyne.Menu {
	w := m.window
	return fyne.NewMenu(words.Say("menu.book"),
		m.item("formats", w.openGallery, ctrl(fyne.KeyF)),
		m.item("fromPaper", w.openFromSheet),
		m.item("keep", w.keepFavourite, ctrl(fyne.KeyF, fyne.KeyModifierShift)))
}

func (m *menu) help() *fyne.Menu {
	return fyne.NewMenu(words.Say("menu.help"), m.item("keys", m.window.showKeys), m.item("about", m.window.showAbout))
}

// show brings the items up to date; the menu is drawn anew only if one differs.
func (m *menu) show() {
	now := m.now()
	if now == m.state {
		return
	}
	m.state = now
	m.undo.Disabled, m.redo.Disabled, m.back.Disabled = !now.undo, !now.redo, !now.back
	for i, item := range m.views {
		item.Checked = i == now.view
	}
	m.dimensions.Checked, m.grain.Checked = now.dimensions, now.grain
	m.millimetres.Checked, m.inches.Checked = now.system == measure.Metric, now.system == measure.Imperial
	m.main.Refresh()
}

func (m *menu) now() menuState {
	w := m.window
	undo, redo := w.session.Steps()
	return menuState{
		undo: undo != "", redo: redo != "", back: w.canGiveBack(),
		view: w.middle.at, dimensions: w.middle.showDims, grain: w.middle.showGrain,
		system: w.session.System(),
	}
}

// fillRecent lists the files used last.
func (m *menu) fillRecent() {
	m.recentFiles = m.window.ports.Recent.List()
	m.recent.ChildMenu.Items = nil
	for _, path := range m.recentFiles {
		item := fyne.NewMenuItem(recentName(path), func() {
			if !m.window.busy() {
				m.window.openRecent(path)
			}
		})
		m.recent.ChildMenu.Items = append(m.recent.ChildMenu.Items, item)
	}
	m.recent.Disabled = len(m.recentFiles) == 0
	m.main.Refresh()
}

func recentName(path string) string {
	return words.Say("menu.recentFile", words.With{"name": fileName(path), "folder": filepath.Base(filepath.Dir(path))})
}
