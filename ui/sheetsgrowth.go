package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// growthList offers the page sizes that the sheet of paper suggests: as large as
// today's count allows, and the next steps up.
type growthList struct {
	window *Window
	box    *fyne.Container
	head   *controls.Label
	lines  [3]*controls.LineItem
	sizes  [3][2]measure.Length // width and height of each line
}

func newGrowthList(w *Window) *growthList {
	g := &growthList{window: w, head: controls.NewLabel(controls.HeadLabel, words.Say("growth.title"))}
	g.box = controls.Down(0, controls.Inset(0, 4, 10, 10, g.head))
	for i := range g.lines {
		g.lines[i] = controls.NewLineItem()
		g.lines[i].OnTapped = func() { w.takeSize(g.sizes[i][0], g.sizes[i][1]) }
		g.box.Add(g.lines[i])
	}
	return g
}

// show brings the lines up to date; one that offers nothing is hidden.
func (g *growthList) show() {
	b := g.window.session.Book()
	page, grow := b.Resolved.Page, sheets.Grow(b)
	offers := [3]struct {
		folios        int
		name          string
		width, height measure.Length
	}{
		{grow.Folios, "growth.room", grow.Width, grow.Height},
		{grow.Narrower.Folios, "growth.narrower", grow.Narrower.Size, page.Height},
		{grow.Lower.Folios, "growth.lower", page.Width, grow.Lower.Size},
	}
	changed := false
	for i, o := range offers {
		offered := o.folios > 0 && (o.width != page.Width || o.height != page.Height)
		changed = setVisible(g.lines[i], offered) || changed
		g.sizes[i] = [2]measure.Length{o.width, o.height}
		if offered {
			g.lines[i].Set(folioCount(o.folios), words.Say(o.name), session.Size(o.width, o.height, g.window.session.System()), false)
		}
	}
	if changed {
		g.box.Refresh()
	}
}
