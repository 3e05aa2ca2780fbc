package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/stock"
	"grainwise/ui/controls"
	"grainwise/ui/preview"
)

// materialsPage shows the maker's own shelf as a table, and at the right what the
// chosen material is and what it would change in the open book.
type materialsPage struct {
	window *Window
	frame  *frame
	object fyne.CanvasObject

	search *searchEntry
	count  *controls.Label
	table  *controls.Table
	empty  *fyne.Container // in the table's place where it has no rows
	said   *controls.Paragraph
	all    *controls.Button // every material again
	bar    *fyne.Container

	items  []shelved // as the rows show them; heads are nothing
	chosen materialID
	column int // sorted by
	down   bool

	summary  *materialSummary
	pictures pictures
}

// materialID is what tells materials apart.
type materialID struct {
	kind stock.Kind
	name string
}

func idOf(m stock.Material) materialID { return materialID{m.Kind, m.Name} }

func newMaterialsPage(w *Window) *materialsPage {
	p := &materialsPage{window: w, pictures: pictures{shelf: w.ports.Shelf}}
	p.summary = newMaterialSummary(p)
	p.table = controls.NewTable(materialColumns())
	p.table.OnChoose = func(i int) { p.choose(idOf(p.items[i].Material)) }
	p.table.OnOpen = func(i int) { p.choose(idOf(p.items[i].Material)); p.summary.edit() }
	p.table.OnSort = p.sortBy
	p.table.OnInsert = func() { p.openForm(stock.Material{}, false) }
	p.table.OnDelete = func() {
		if p.summary.item.onShelf {
			p.summary.askDelete()
		}
	}
	p.build()
	if now, err := w.ports.Shelf.Read(); err == nil {
		w.holdShelf(now) // another window may have changed it
	}
	return p
}

// searchWidth is room for a few words.
const searchWidth = float32(230)

func (p *materialsPage) build() {
	w := p.window
	p.search = newSearchEntry(p.show, func() { w.win.Canvas().Focus(p.table.Body()) })
	p.search.SetPlaceHolder(words.Say("materials.search"))
	p.count = controls.NewLabel(controls.QuietLabel, "")
	add := controls.NewButton(controls.Framed, words.Say("materials.add"), func() { p.openForm(stock.Material{}, false) })
	in := controls.NewButton(controls.Plain, words.Say("materials.import"), p.askImport)
	out := controls.NewButton(controls.Plain, words.Say("materials.export"), p.export)
	p.bar = controls.AcrossGiving(8, []fyne.CanvasObject{p.count},
		controls.Fixed(searchWidth, 0, p.search), p.count, controls.Spring(), in, out, add)
	p.said = controls.NewParagraph("")
	p.all = controls.NewButton(controls.Framed, words.Say("materials.all"), func() { p.search.SetText("") })
	p.empty = controls.Inset(40, 0, 30, 30, controls.Down(10, p.said, controls.Across(0, p.all, controls.Spring())))
	middle := controls.Around(controls.Down(0, controls.Inset(4, 4, 10, 10, p.bar), controls.NewHairline()),
		nil, nil, nil, container.NewStack(p.table.Object(), p.empty))
	p.frame = &frame{table: true, left: p.bar, leftLine: controls.NewHairline(), middle: middle, rightLine: controls.NewHairline(), right: p.summary.scroll}
	p.frame.changed, p.frame.widened = func(narrow bool) { w.pages.offerSides(narrow) }, func(float32, float32) {}
	f := p.frame
	p.object = container.New(f, f.middle, f.rightLine, f.right)
}

func (p *materialsPage) shown() fyne.CanvasObject { return p.object }
func (p *materialsPage) columns() *frame          { return p.frame }
func (p *materialsPage) drawing() *preview.Pane   { return nil }

// show brings the page up to date.
func (p *materialsPage) show() {
	all := p.window.materials()
	found := searched(all, p.search.Text)
	p.items = sorted(found, p.column, p.down)
	p.table.SetSorted(p.column, p.down)
	p.count.SetText(words.Say("materials.count", words.With{"found": len(found), "all": len(all)}))
	if _, there := p.find(p.chosen); !there {
		p.chosen = materialID{}
		for _, i := range p.items {
			if i.Name != "" {
				p.chosen = idOf(i.Material)
				break
			}
		}
	}
	p.table.SetRows(p.rows())
	p.showEmpty(len(all), len(found))
	item, there := p.find(p.chosen)
	p.summary.show(item, there)
}

// find is the item of a material among those on show.
func (p *materialsPage) find(id materialID) (shelved, bool) {
	for _, i := range p.items {
		if i.Name != "" && idOf(i.Material) == id {
			return i, true
		}
	}
	return shelved{}, false
}

// showEmpty says why there are no rows, and what to do about it.
func (p *materialsPage) showEmpty(all, found int) {
	setVisible(p.empty, found == 0)
	setVisible(p.table.Object(), found > 0)
	setVisible(p.all, all > 0)
	if all == 0 {
		p.said.SetText(words.Say("materials.none"))
	} else {
		p.said.SetText(words.Say("materials.notFound", words.With{"text": p.search.Text}))
	}
	p.empty.Refresh()
}

func (p *materialsPage) choose(id materialID) {
	p.chosen = id
	p.show()
}

func (p *materialsPage) sortBy(column int) {
	p.down = p.column == column && !p.down
	p.column = column
	p.show()
}

// focus moves the focus to an area of the page.
func (p *materialsPage) focus(canvas fyne.Canvas, area int) {
	switch area {
	case columnArea:
		p.window.turnSide(false)
		canvas.Focus(p.search)
	case drawingArea:
		p.window.turnSide(false)
		if len(p.items) > 0 {
			canvas.Focus(p.table.Body())
		} else {
			canvas.Focus(p.search)
		}
	case findingsArea:
		p.window.turnSide(true)
		canvas.Focus(p.summary.firstToFocus())
	}
}
