package ui

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/ui/look"
)

// menu is the menu bar. Items that cannot do anything just now are grey.
type menu struct {
	window              *Window
	main                *fyne.MainMenu
	undo, redo, back    *fyne.MenuItem
	views               []*fyne.MenuItem
	dimensions, grain   *fyne.MenuItem
	inWords             *fyne.MenuItem
	millimetres, inches *fyne.MenuItem
	colours, sizes      []*fyne.MenuItem
	recent              *fyne.MenuItem
	recentFiles         []string
	state               menuState
}

// menuState is everything that changes the look of the menu.
type menuState struct {
	undo, redo, back  bool
	view              int
	dimensions, grain bool
	inWords           bool
	colours           look.Colours
	textSize          int
	system            measure.System
}

func newMenu(w *Window) *menu {
	m := &menu{window: w, state: menuState{view: -1}}
	m.main = fyne.NewMainMenu(m.file(), m.edit(), m.view(), m.book(), m.help())
	m.fillRecent()
	return m
}

// item is a menu item that does nothing while a sheet wants an answer first.
func (m *menu) item(key string, do func()) *fyne.MenuItem {
	return fyne.NewMenuItem(words.Say("menu."+key), func() {
		if !m.window.busy() {
			do()
		}
	})
}

// command is an item for a row of the table of keys, which says what it does.
func (m *menu) command(id string) *fyne.MenuItem {
	c, _ := commandOf(id)
	item := fyne.NewMenuItem(words.Say("menu."+id), func() { m.window.run(c) })
	item.Shortcut = c.keys[0].shortcut()
	return item
}

func (m *menu) file() *fyne.Menu {
	m.recent = fyne.NewMenuItem(words.Say("menu.recent"), nil)
	m.recent.ChildMenu = fyne.NewMenu("")
	quit := m.command("quit")
	quit.IsQuit = true
	return fyne.NewMenu(words.Say("menu.file"),
		m.command("new"),
		m.command("open"),
		m.recent,
		fyne.NewMenuItemSeparator(),
		m.command("save"),
		m.command("saveAs"),
		m.item("earlier", m.window.showEarlier),
		fyne.NewMenuItemSeparator(),
		m.item("saveDrawing", m.window.saveDrawing),
		m.item("contactSheet", m.window.contactSheet),
		fyne.NewMenuItemSeparator(),
		quit)
}

func (m *menu) edit() *fyne.Menu {
	m.undo, m.redo = m.command("undo"), m.command("redo")
	m.back = m.item("back", m.window.giveBack)
	return fyne.NewMenu(words.Say("menu.edit"), m.undo, m.redo, fyne.NewMenuItemSeparator(), m.back)
}

func (m *menu) view() *fyne.Menu {
	w, d := m.window, m.window.middle
	var items []*fyne.MenuItem
	for i, v := range d.views {
		item := fyne.NewMenuItem(v.Label(), func() { w.turnPage(designPage); d.turnTo(i) })
		if c, has := commandOf("view." + v.ID); has {
			item.Shortcut = c.keys[0].shortcut()
		}
		items = append(items, item)
		m.views = append(m.views, item)
	}
	m.dimensions = m.item("dimensions", d.toggleDimensions)
	m.grain = m.item("grain", d.toggleGrain)
	m.millimetres = m.item("millimetres", func() { w.setUnit(measure.Metric) })
	m.inches = m.item("inches", func() { w.setUnit(measure.Imperial) })
	m.inWords = m.command("words")
	items = append(items, m.inWords, m.command("nextPage"), m.command("lastPage"), fyne.NewMenuItemSeparator(),
		m.command("fit"), m.command("zoomIn"), m.command("zoomOut"),
		fyne.NewMenuItemSeparator(), m.dimensions, m.grain,
		fyne.NewMenuItemSeparator(), m.millimetres, m.inches,
		fyne.NewMenuItemSeparator(), m.sizeItems(), m.colourItems())
	return fyne.NewMenu(words.Say("menu.view"), items...)
}

func (m *menu) book() *fyne.Menu {
	return fyne.NewMenu(words.Say("menu.book"), m.command("formats"), m.item("fromPaper", m.window.openFromSheet), m.command("measure"), m.command("compare"), m.item("tools", m.window.toolsSheet), m.item("limits", m.window.limitsSheet), m.item("customer", func() { m.window.customerSheet() }), m.item("logo", m.window.logoSheet), m.command("keep"))
}

func (m *menu) help() *fyne.Menu {
	return fyne.NewMenu(words.Say("menu.help"), m.item("tour", m.window.takeTour), m.command("why"), m.item("tradeWords", func() { m.window.openGlossary("") }), m.command("keys"), m.item("about", m.window.showAbout))
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
	m.dimensions.Checked, m.grain.Checked, m.inWords.Checked = now.dimensions, now.grain, now.inWords
	m.millimetres.Checked, m.inches.Checked = now.system == measure.Metric, now.system == measure.Imperial
	m.showAppearance()
	m.main.Refresh()
}

func (m *menu) now() menuState {
	w := m.window
	undo, redo := w.session.Steps()
	return menuState{
		undo: undo != "", redo: redo != "", back: w.canGiveBack(),
		view: w.middle.at, dimensions: w.middle.showDims, grain: w.middle.showGrain, inWords: w.middle.showWords,
		colours: w.colours(), textSize: w.textSize,
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
	if len(m.recentFiles) == 0 {
		none := fyne.NewMenuItem(words.Say("menu.recentNone"), nil)
		none.Disabled = true
		m.recent.ChildMenu.Items = append(m.recent.ChildMenu.Items, none)
	}
	m.main.Refresh()
}

func recentName(path string) string {
	return words.Say("menu.recentFile", words.With{"name": fileName(path), "folder": filepath.Base(filepath.Dir(path))})
}
