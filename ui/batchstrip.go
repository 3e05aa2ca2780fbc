package ui

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/stock"
	"grainwise/render/scene"
	"grainwise/render/view"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/preview"
)

// batchStrip is under the tables: how many books of each paper and cloth, and the
// book of the cursor's row as it will look.
type batchStrip struct {
	page   *batchPage
	counts *controls.Counts
	scroll *container.Scroll
	pane   *preview.Pane
	name   *controls.Label
	lines  [4]*controls.Label
	box    *fyne.Container
	layout *stripLayout
}

// stripHeight leaves a dozen rows to the table in a window of 720; the plan's
// timeline gets more.
const (
	stripHeight    = float32(176)
	timelineHeight = float32(330)
)

func newBatchStrip(p *batchPage) *batchStrip {
	s := &batchStrip{page: p, layout: &stripLayout{}, counts: controls.NewCounts(), pane: preview.NewPane(), name: controls.NewLabel(controls.HeadLabel, "")}
	s.counts.OnPick = s.pick
	s.scroll = container.NewScroll(s.counts)
	facts := controls.Down(3, s.name)
	for i := range s.lines {
		s.lines[i] = controls.NewLabel(controls.PlainLabel, "")
		facts.Add(s.lines[i])
	}
	s.box = container.New(s.layout, controls.Inset(6, 2, 10, 4, s.scroll), controls.NewHairline(), controls.Inset(10, 4, 12, 6, facts), s.pane)
	return s
}

// stripLayout gives the book's facts and picture their widths, and the counts what
// is left; or all to the picture.
type stripLayout struct{ wide bool }

// Layout implements fyne.Layout.
func (l *stripLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	if l.wide {
		objects[3].Resize(size)
		objects[3].Move(fyne.Position{})
		return
	}
	const facts, picture = float32(214), float32(220)
	rest := max(0, size.Width-facts-picture-1)
	x := float32(0)
	for i, width := range []float32{rest, 1, facts, picture} {
		objects[i].Resize(fyne.NewSize(width, size.Height))
		objects[i].Move(fyne.NewPos(x, 0))
		x += width
	}
}

// MinSize implements fyne.Layout.
func (*stripLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(500, stripHeight) }

// show brings counts and book up to date.
func (s *batchStrip) show() {
	s.spread(s.page.table().id() == "plan" && len(s.page.reckoning.made.plan().Bars) > 0)
	if s.layout.wide {
		s.showPlan()
		return
	}
	s.counts.SetState(s.state())
	s.showBook()
}

// spread gives all of the strip to the picture, and more height; or not.
func (s *batchStrip) spread(wide bool) {
	if s.layout.wide == wide {
		return
	}
	s.layout.wide = wide
	for _, o := range s.box.Objects[:3] {
		setVisible(o, !wide)
	}
	f := s.page.frame
	if f.under = stripHeight; wide {
		f.under = timelineHeight
	}
	s.page.object.Refresh()
	s.box.Refresh()
}

// showPlan draws the plan in time.
func (s *batchStrip) showPlan() {
	plan, name := s.page.reckoning.made.plan(), s.page.window.session.Project().Name
	s.pane.Draw(view.View{ID: "timeline", Draw: func(in view.Input) *scene.Scene {
		return view.Timeline(view.TimelineInput{Plan: plan, Name: name, Width: in.Width, Height: in.Height, DarkSurround: in.DarkSurround})
	}}, view.Input{DarkSurround: look.Current().Night, Stark: look.Current().Stark}, false)
}

// state counts the books of the batch by paper and cloth, in the order in which the
// variants name them.
func (s *batchStrip) state() controls.CountsState {
	p := s.page
	places, b, shelf := p.places(), p.batch(), p.window.session.Shelf()
	state := controls.CountsState{All: words.Say("batch.counts.all")}
	var papers, cloths []string
	ordered := map[variantPlace]int{}
	for _, o := range b.Orders {
		ordered[places[o.Variant]] += o.Count
	}
	for _, v := range append(slices.Clone(b.Variants), batch.Variant{}) {
		place := places[v.Name]
		if v.Name == "" && ordered[place] == 0 && len(b.Variants) > 0 {
			continue
		}
		if !slices.Contains(papers, place.paper) {
			papers = append(papers, place.paper)
			state.Rows = append(state.Rows, headIn(shelf, stock.Paper, place.paper))
		}
		if !slices.Contains(cloths, place.cloth) {
			cloths = append(cloths, place.cloth)
			state.Columns = append(state.Columns, headIn(shelf, stock.Covering, place.cloth))
		}
	}
	for i, paper := range papers {
		state.Cells = append(state.Cells, make([]int, len(cloths)))
		for j, cloth := range cloths {
			state.Cells[i][j] = ordered[variantPlace{paper, cloth}]
		}
	}
	if of := p.orders.of; of != nil {
		state.Chosen = true
		state.ChosenRow, state.ChosenColumn = slices.Index(papers, of.paper), slices.Index(cloths, of.cloth)
	}
	return state
}

func headIn(shelf stock.Shelf, kind stock.Kind, name string) controls.CountHead {
	m, _ := shelf.Find(kind, name)
	return controls.CountHead{Name: name, Colour: paint(m.Colour)}
}

// pick shows the orders of a paper and a cloth alone; a second time all again.
func (s *batchStrip) pick(row, column int) {
	state, place := s.counts.State(), variantPlace{}
	if row >= 0 {
		place.paper = state.Rows[row].Name
	}
	if column >= 0 {
		place.cloth = state.Columns[column].Name
	}
	orders := s.page.orders
	if place == (variantPlace{}) || orders.of.key() == place.key() {
		orders.of = nil
	} else {
		orders.of = &place
	}
	s.page.turnTo("orders")
}

// first is what the keyboard begins with.
func (s *batchStrip) first() fyne.Focusable {
	if s.layout.wide {
		return s.pane
	}
	return s.counts
}

// showBook draws the book of the cursor's row and says its sizes.
func (s *batchStrip) showBook() {
	variant, known := s.page.table().book()
	b, there := s.page.booksOf()[variant]
	if !known || !there {
		variant, _ = s.page.mostOrdered()
		b = s.page.booksOf()[variant]
	}
	s.name.SetText(variantLabel(variant))
	for i, line := range s.facts(b) {
		s.lines[i].SetText(line)
	}
	in := view.Input{
		Book: b, System: s.page.window.session.System(),
		DarkSurround: look.Current().Night, Stark: look.Current().Stark,
	}
	closed, _ := view.Find("closed")
	s.pane.Draw(closed, in, false)
}

// facts are a variant's key figures.
func (s *batchStrip) facts(b book.Book) [4]string {
	style := s.page.style()
	return [4]string{
		words.Say("batch.facts.spine", words.With{"size": style.WithUnit(b.Block.SpineThickness)}),
		words.Say("batch.facts.piece", words.With{"size": style.WithUnit(b.ToCut.SpineWidth)}),
		words.Say("batch.facts.board", words.With{"width": style.Format(b.ToCut.BoardWidth), "height": style.WithUnit(b.ToCut.BoardHeight)}),
		words.Say("batch.facts.mass", words.With{"mass": massText(b.Mass.Total(), style.System)}),
	}
}
