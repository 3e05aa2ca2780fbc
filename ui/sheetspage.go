package ui

import (
	"context"
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/describe"
	"grainwise/render/view"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/preview"
	"grainwise/ui/session"
)

// sheetsPage shows how the sheets for some copies of the book are cut: the
// materials at the left, a drawing in the middle, what it means at the right.
type sheetsPage struct {
	window *Window
	plans  *planning
	frame  *frame
	object fyne.CanvasObject

	sliders []*parameter // copies, and the page's sizes
	growth  *growthList
	lines   []*controls.LineItem
	rows    *fyne.Container
	chosen  int // index of the material

	tabs      *controls.Segment
	pane      *preview.Pane
	wordsChip *controls.Chip   // of the cutting alone: the map's figures stand at the left
	reader    *controls.Reader // the cutting in words, over the drawing
	showWords bool
	views     []view.View
	at        int
	part      book.PartID // chosen in the drawing

	summary *sheetsSummary
}

func newSheetsPage(w *Window) *sheetsPage {
	p := &sheetsPage{window: w, views: view.OfSheets(), rows: controls.Down(0)}
	p.plans = w.planner()
	for _, key := range []string{"copies", "page.height", "page.width"} {
		p.sliders = append(p.sliders, p.slider(key))
	}
	p.growth = newGrowthList(w)
	p.pane = preview.NewPane()
	p.pane.OnPick = p.pick
	p.pane.OnPlace = p.take
	p.pane.OnHover = p.hover
	p.summary = newSheetsSummary(p)
	p.build()
	return p
}

func (p *sheetsPage) build() {
	var names []string
	for _, v := range p.views {
		names = append(names, v.Label())
	}
	w := p.window
	p.tabs = controls.NewSegment(names, func(i int) { p.at = i; p.show() })
	p.wordsChip = controls.NewChip(words.Say("drawing.words"), func() { p.showWords = !p.showWords; p.show() })
	p.wordsChip.SetTip(w.tips, words.Say("drawing.wordsTip"))
	p.reader = controls.NewReader()
	minus := controls.NewIconToggle(look.IconMinus, w.tips, words.Say("drawing.out"), func() { p.pane.Zoom(1 / zoomStep) })
	plus := controls.NewIconToggle(look.IconPlus, w.tips, words.Say("drawing.in"), func() { p.pane.Zoom(zoomStep) })
	fit := controls.NewIconWord(look.IconFit, words.Say("drawing.fit"), p.pane.Fit)
	bar := controls.Across(4, p.tabs, p.wordsChip, controls.Spring(), minus, plus, controls.Gap(4, 1), fit)
	middle := controls.Around(controls.Down(0, controls.Fixed(0, 36, controls.Inset(4, 4, 4, 4, bar)), controls.NewHairline()), nil, nil, nil, container.NewStack(p.pane, p.reader))
	head := controls.Inset(8, 4, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("sheets.title")))
	list := controls.Down(0, head)
	for _, r := range p.sliders {
		list.Add(r.row)
	}
	for _, o := range []fyne.CanvasObject{controls.Gap(1, 6), p.rows, controls.Gap(1, 8), p.growth.box} {
		list.Add(o)
	}
	left := container.NewVScroll(list)
	p.frame = &frame{left: left, leftLine: controls.NewHairline(), middle: middle, rightLine: controls.NewHairline(), right: p.summary.scroll}
	p.frame.changed, p.frame.widened = func(narrow bool) { w.pages.offerSides(narrow) }, func(float32, float32) {}
	f := p.frame
	p.object = container.New(f, f.left, f.leftLine, f.middle, f.rightLine, f.right)
}

// slider is a row of the table of parameters; a drag is one step to undo.
func (p *sheetsPage) slider(key string) *parameter {
	w := p.window
	param, _ := book.Lookup(key)
	r := newParameter(param, w.session, w.tips)
	r.row.OnStart = func() {
		if r.row.Slider.Held() {
			w.session.Hold(key)
		}
	}
	r.row.OnEnd = w.session.Release
	r.row.Why.OnTapped = func() { w.whyParam(key) }
	r.row.Why.SetTip(w.tips, words.Say("why.tip"))
	return r
}

func (p *sheetsPage) shown() fyne.CanvasObject { return p.object }
func (p *sheetsPage) columns() *frame          { return p.frame }
func (p *sheetsPage) drawing() *preview.Pane   { return p.pane }

// show brings the page up to date, if it is the one on show.
func (p *sheetsPage) show() {
	jobs := p.window.jobs()
	p.plans.want(jobs, p.window.bench())
	p.chosen = min(p.chosen, max(len(jobs)-1, 0))
	for _, r := range p.sliders {
		r.show(look.None, false)
	}
	p.growth.show()
	p.showLines(jobs)
	p.tabs.SetOn(p.at)
	p.draw(jobs)
	if len(jobs) > 0 {
		p.summary.show(jobs[p.chosen], p.plans.of(jobs[p.chosen]))
	}
}

func (p *sheetsPage) showLines(jobs []sheets.Job) {
	for len(p.lines) < len(jobs) {
		i, line := len(p.lines), controls.NewLineItem()
		line.OnTapped = func() { p.choose(i) }
		p.lines = append(p.lines, line)
		p.rows.Add(line)
	}
	changed := false
	for i, line := range p.lines {
		changed = setVisible(line, i < len(jobs)) || changed
		if i < len(jobs) {
			need, state := p.inShort(p.plans.of(jobs[i]))
			line.Set(need, jobs[i].Material.Name, state, i == p.chosen)
		}
	}
	if changed {
		p.rows.Refresh()
	}
}

// inShort is what a line says of a plan: how much, and how sure.
func (p *sheetsPage) inShort(m *planned) (need, state string) {
	switch {
	case m.cutting != nil && m.cutting.Trouble != nil:
		return "–", words.Say("sheets.state.trouble")
	case m.cutting != nil && m.cutting.Roll():
		return "", p.input(nil).Needed(*m.cutting)
	case m.cutting != nil && m.cutting.Plan.Proved():
		return fmt.Sprint(m.cutting.New()), words.Say("sheets.state.proved")
	case m.cutting != nil:
		return fmt.Sprint(m.cutting.New()), words.Say("sheets.state.near")
	}
	return "…", words.Say([...]string{"sheets.state.waiting", "sheets.state.searching", "sheets.state.waiting", "sheets.state.stopped"}[m.state])
}

func (p *sheetsPage) choose(i int) {
	p.chosen, p.part = i, ""
	p.pane.Fit()
	p.show()
}

// input is what the drawings are made from.
func (p *sheetsPage) input(cuttings []sheets.Cutting) view.Input {
	s := p.window.session
	return view.Input{
		Book: s.Book(), System: s.System(), Cuttings: cuttings, Dimensions: p.window.middle.showDims, Grain: p.window.middle.showGrain, Chosen: p.part,
		DarkSurround: look.Current().Night, Stark: look.Current().Stark,
	}
}

func (p *sheetsPage) draw(jobs []sheets.Job) {
	var cuttings []sheets.Cutting
	if len(jobs) > 0 {
		if m := p.plans.of(jobs[p.chosen]); m.cutting != nil {
			cuttings = []sheets.Cutting{*m.cutting}
		}
	}
	in := p.input(cuttings)
	if p.views[p.at].ID == "sizes" {
		sizes := sheets.Sizes(context.Background(), in.Book, sizesShown)
		in.Sizes = &sizes
	}
	p.inWords(in)
	p.pane.Draw(p.views[p.at], in, false)
}

// inWords says the cutting in words in place of its drawing, if it is asked for.
func (p *sheetsPage) inWords(in view.Input) {
	cutting := p.views[p.at].ID == "cutting"
	shown := cutting && p.showWords
	setVisible(p.wordsChip, cutting)
	p.wordsChip.SetOn(p.showWords)
	setVisible(p.pane, !shown)
	if setVisible(p.reader, shown); shown {
		p.reader.SetText(passages(describe.Cut(in.Cuttings, in.System)))
	}
}

// sizesShown is how many sizes the map has each way: it is reckoned within a
// frame of a drag.
const sizesShown = 60

// pick chooses a part in the drawing.
func (p *sheetsPage) pick(part book.PartID) {
	p.part = part
	p.show()
}

func (p *sheetsPage) hover(part book.PartID, at fyne.Position) {
	w := p.window
	about := aboutPart(w.session.Book(), part, w.session.System())
	w.status.say(about)
	w.tips.Out(p.pane)
	if about != "" {
		w.tips.OverAt(p.pane, at, about)
	}
}

// take makes the page as large as a place of the map says, on the steps that
// pages are cut in: one step to undo.
func (p *sheetsPage) take(x, y, width, height float64) {
	if p.views[p.at].ID != "sizes" {
		return
	}
	in := p.input(nil)
	in.Width, in.Height = width, height
	sizes := sheets.Sizes(context.Background(), in.Book, 2) // its range alone
	in.Sizes = &sizes
	if w, h, ok := view.SizeAt(in, x, y); ok {
		p.window.takeSize(w, h)
	}
}

// takeSize sets the page's width and height in one step.
func (w *Window) takeSize(width, height measure.Length) {
	d := w.session.Decisions()
	step := book.PageStep(d.Design.CutIn)
	d.Design.Page.Width, d.Design.Page.Height = width.RoundDown(step), height.RoundDown(step)
	if d.Design != w.session.Decisions().Design {
		d.Measured = book.Measured{} // measures were of a block of another size
	}
	size := session.Size(d.Design.Page.Width, d.Design.Page.Height, w.session.System())
	w.session.Apply(words.Say("step.fromPaper", words.With{"size": size}), d)
}

// focus moves the focus to an area of the page.
func (p *sheetsPage) focus(canvas fyne.Canvas, area int) {
	switch area {
	case columnArea:
		p.sliders[0].row.Focus(canvas)
	case drawingArea:
		p.window.turnSide(false)
		canvas.Focus(p.tabs.Chips()[p.at])
	case findingsArea:
		p.window.turnSide(true)
		canvas.Focus(p.summary.firstToFocus())
	}
}
