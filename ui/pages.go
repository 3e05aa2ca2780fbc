package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// pagesBar is the bar under the menu: the pages there are, undo and redo, and
// the unit shown.
type pagesBar struct {
	window     *Window
	tabs       [pageCount]*controls.Tab
	undo, redo *controls.Chip
	units      *controls.Segment
	sides      *controls.Segment // in a narrow window: the drawing, or what stands at its right
	bar        *fyne.Container
}

// systems are the units shown, in the order of the switch.
var systems = [...]measure.System{measure.Metric, measure.Imperial}

func newPagesBar(w *Window) *pagesBar {
	b := &pagesBar{window: w}
	for i := range b.tabs {
		b.tabs[i] = controls.NewTab(words.Say("page."+pageNames[i]), func() { w.turnPage(i) })
	}
	b.tabs[designPage].SetOn(true)
	b.undo = controls.NewIconToggle(look.IconUndo, w.tips, words.Say("menu.undo"), w.undo)
	b.redo = controls.NewIconToggle(look.IconRedo, w.tips, words.Say("menu.redo"), w.redo)
	b.units = controls.NewSegment([]string{measure.Metric.Label(), measure.Imperial.Label()}, func(i int) { w.setUnit(systems[i]) })
	b.sides = controls.NewSegment([]string{words.Say("side.drawing"), words.Say("side.of.design")}, func(i int) { w.turnSide(i == 1) })
	b.sides.SetOn(0)
	b.sides.Hide()
	return b
}

// offerSides shows the switch where drawing and findings take turns.
func (b *pagesBar) offerSides(narrow bool) { setVisible(b.sides, narrow) }

// turnSide shows the findings in a narrow window, or the drawing.
func (w *Window) turnSide(findings bool) {
	side := 0
	if findings {
		side = 1
	}
	w.pages.sides.SetOn(side)
	w.frame.turn(findings)
	for _, p := range w.turnedTo() {
		p.columns().turn(findings)
	}
}

// turn marks the page on show.
func (b *pagesBar) turn(to int) {
	for i, tab := range b.tabs {
		tab.SetOn(i == to)
	}
	b.sides.Chips()[0].SetText(sideBeside(pageNames[to]))
	b.sides.Chips()[1].SetText(words.Say("side.of." + pageNames[to]))
	b.bar.Refresh()
}

// sideBeside is what takes turns with the right column: a drawing, where the page has
// no other word for it.
func sideBeside(page string) string {
	if text, own := words.Lookup("side.beside." + page); own {
		return text
	}
	return words.Say("side.drawing")
}

func (b *pagesBar) object() fyne.CanvasObject {
	bar := controls.Across(4, controls.Gap(4, 1))
	b.bar = bar
	for _, tab := range b.tabs {
		bar.Add(tab)
	}
	for _, o := range []fyne.CanvasObject{controls.Gap(8, 1), b.sides, controls.Spring(), b.undo, b.redo, controls.Gap(8, 1), b.units, controls.Gap(8, 1)} {
		bar.Add(o)
	}
	return controls.Fixed(0, controls.TabHeight, bar)
}

// show brings the bar up to date.
func (b *pagesBar) show() {
	undo, redo := b.window.session.Steps()
	enable(b.undo, undo != "", b.window.tips, "menu.undo", undo)
	enable(b.redo, redo != "", b.window.tips, "menu.redo", redo)
	b.units.SetOn(int(b.window.session.System()))
}

func enable(c *controls.Chip, on bool, tips *controls.Tips, key, step string) {
	tip := words.Say(key)
	if on {
		tip += ": " + step
		c.Enable()
	} else {
		c.Disable()
	}
	c.SetTip(tips, tip)
}
