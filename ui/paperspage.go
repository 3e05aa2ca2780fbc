package ui

import (
	"fmt"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/render/scene"
	printed "grainwise/render/sheet"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/preview"
)

// papersPage shows the papers that are printed: their list at the left, one page
// of one of them in the middle, how they are printed at the right.
type papersPage struct {
	window *Window
	making *papermaking
	frame  *frame
	object fyne.CanvasObject

	kinds    []printed.Kind // of this design
	chosen   string         // the paper on show
	at       int            // its page on show
	left     map[string]bool
	lines    map[string]*controls.TickedLine
	rows     *fyne.Container
	listed   string // the papers in the list, to know when they are others
	notes    *controls.Notes
	scroll   *container.Scroll
	pictures bool // PNG as well

	pane       *preview.Pane
	last, next *controls.Chip
	where      *controls.Label

	printing *printingColumn
	output   output
}

func newPapersPage(w *Window) *papersPage {
	p := &papersPage{window: w, left: map[string]bool{}, lines: map[string]*controls.TickedLine{}, rows: controls.Down(0)}
	p.making = newPapermaking(w.apart, w.onWindow, w.showPage)
	p.output = output{window: w, page: p}
	w.planner()
	for _, id := range untickedAtFirst() {
		p.left[id] = true
	}
	p.pane = preview.NewPane()
	p.pane.OnTurn = p.turn
	p.printing = newPrintingColumn(p)
	p.build()
	return p
}

// untickedAtFirst are the papers that few print: they teach others.
func untickedAtFirst() []string { return []string{"guide", "class-pack"} }

func (p *papersPage) build() {
	w := p.window
	p.last = controls.NewIconToggle(look.IconLast, w.tips, words.Say("papers.lastPage"), func() { p.turn(-1) })
	p.next = controls.NewIconToggle(look.IconNext, w.tips, words.Say("papers.nextPage"), func() { p.turn(1) })
	p.where = controls.NewLabel(controls.PlainLabel, "")
	minus := controls.NewIconToggle(look.IconMinus, w.tips, words.Say("drawing.out"), func() { p.pane.Zoom(1 / zoomStep) })
	plus := controls.NewIconToggle(look.IconPlus, w.tips, words.Say("drawing.in"), func() { p.pane.Zoom(zoomStep) })
	fit := controls.NewIconWord(look.IconFit, words.Say("drawing.fit"), p.pane.Fit)
	bar := controls.Across(4, p.last, p.next, controls.Gap(4, 1), controls.Fixed(pageOfWidth, 0, p.where), controls.Spring(), minus, plus, controls.Gap(4, 1), fit)
	middle := controls.Around(controls.Down(0, controls.Fixed(0, 36, controls.Inset(4, 4, 4, 4, bar)), controls.NewHairline()), nil, nil, nil, p.pane)
	p.notes = controls.NewNotes(5, words.Say("papers.notesHint"), func(text string) { w.session.SetNotes(text) })
	list := controls.Down(0,
		controls.Inset(8, 4, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("papers.title"))), p.rows,
		controls.Inset(16, 4, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("papers.notes"))),
		controls.Inset(0, 10, 10, 10, p.notes))
	p.scroll = container.NewVScroll(list)
	p.frame = &frame{left: p.scroll, leftLine: controls.NewHairline(), middle: middle, rightLine: controls.NewHairline(), right: p.printing.scroll}
	p.frame.changed, p.frame.widened = func(narrow bool) { w.pages.offerSides(narrow) }, func(float32, float32) {}
	f := p.frame
	p.object = container.New(f, f.left, f.leftLine, f.middle, f.rightLine, f.right)
}

// pageOfWidth is room for "page 12 of 34".
const pageOfWidth = float32(110)

func (p *papersPage) shown() fyne.CanvasObject { return p.object }
func (p *papersPage) columns() *frame          { return p.frame }
func (p *papersPage) drawing() *preview.Pane   { return p.pane }

// input is what the papers are made from, with the cutting plans there are.
func (p *papersPage) input() printed.Input {
	w := p.window
	s := w.session
	pr, printing := s.Project(), s.Studio().Printing
	return printed.Input{
		Book: s.Book(), Name: pr.Name, Revision: pr.Revision(), Date: measure.DayOf(s.Now()),
		Findings: append(s.Findings(), s.Left()...), Notes: pr.Notes, System: s.System(), Cuttings: w.cuttings(),
		Printer: printed.PrinterOf(printing, s.System()), Left: printing.Left(), Students: printing.Class(),
		Compared: w.pins.designs,
	}
}

// cuttings are the plans made so far.
func (w *Window) cuttings() []sheets.Cutting {
	var made []sheets.Cutting
	for _, j := range w.jobs() {
		if m := w.planner().of(j); m.cutting != nil {
			made = append(made, *m.cutting)
		}
	}
	return made
}

// key tells one input from another.
func (p *papersPage) key(in printed.Input) string {
	s := p.window.session
	pr, studio := s.Project(), s.Studio()
	plans := ""
	for _, j := range p.window.jobs() {
		plans += fmt.Sprintf("%+v %p ", j, p.window.planner().of(j).cutting)
	}
	return fmt.Sprintf("%d %s %+v %s %q %q %v %v %+v %s", p.window.pins.turn, in.Revision, s.Decisions(), in.Date, in.Name, in.Notes, in.System, pr.Accepted, studio, plans)
}

// show brings the page up to date.
func (p *papersPage) show() {
	w := p.window
	w.planner().want(w.jobs(), w.bench())
	in := p.input()
	p.kinds = printed.For(in)
	p.making.want(p.key(in), in, p.wanted())
	p.showList()
	if text := w.session.Notes(); text != p.notes.Text {
		p.notes.SetText(text)
	}
	p.draw()
	p.printing.show()
	p.output.goOn()
}

// wanted are the papers to be laid out: the one on show, then the ticked.
func (p *papersPage) wanted() []printed.Kind {
	var first, others []printed.Kind
	for _, k := range p.kinds {
		switch {
		case k.ID == p.onShow():
			first = append(first, k)
		case !p.left[k.ID]:
			others = append(others, k)
		}
	}
	return append(first, others...)
}

// onShow is the paper chosen; the first where this design lacks it.
func (p *papersPage) onShow() string {
	for _, k := range p.kinds {
		if k.ID == p.chosen {
			return p.chosen
		}
	}
	if len(p.kinds) > 0 {
		return p.kinds[0].ID
	}
	return ""
}

// ticked are the papers that are printed.
func (p *papersPage) ticked() []printed.Kind {
	var some []printed.Kind
	for _, k := range p.kinds {
		if !p.left[k.ID] {
			some = append(some, k)
		}
	}
	return some
}

// pagesTicked counts them; whole is false while some are still being laid out.
func (p *papersPage) pagesTicked() (count int, whole bool) {
	whole = true
	for _, k := range p.ticked() {
		pages, made := p.making.pages(k.ID)
		count, whole = count+len(pages), whole && made
	}
	return count, whole
}

func (p *papersPage) showList() {
	listed := ""
	for _, k := range p.kinds {
		line := p.line(k)
		count := "…"
		if pages, made := p.making.pages(k.ID); made {
			count = words.Say("papers.pages.many", words.With{"count": len(pages)})
			if len(pages) == 1 {
				count = words.Say("papers.pages.one")
			}
		} else if p.left[k.ID] && k.ID != p.onShow() {
			count = ""
		}
		line.Line.Set("", k.Label(), count, k.ID == p.onShow())
		if line.Tick.Checked == p.left[k.ID] {
			line.Tick.SetChecked(!p.left[k.ID])
		}
		listed += k.ID + " "
	}
	if listed == p.listed {
		return
	}
	p.listed, p.rows.Objects = listed, nil
	for _, k := range p.kinds {
		p.rows.Add(p.lines[k.ID].Object())
	}
	p.rows.Refresh()
}

// line is a paper's in the list.
func (p *papersPage) line(k printed.Kind) *controls.TickedLine {
	if p.lines[k.ID] == nil {
		line := controls.NewTickedLine(func(on bool) { p.tick(k.ID, on) }, func() { p.choose(k.ID) })
		line.Line.OnFocus = whenFocused(func() { bringIn(p.scroll, line.Line) })
		p.lines[k.ID] = line
	}
	return p.lines[k.ID]
}

func (p *papersPage) tick(id string, on bool) {
	if p.left[id] == on {
		p.left[id] = !on
		p.show()
	}
}

func (p *papersPage) choose(id string) {
	p.chosen, p.at = id, 0
	p.show()
}

// turn shows the next page or the one before.
func (p *papersPage) turn(by int) {
	pages, _ := p.making.pages(p.onShow())
	to := p.at + by
	if to >= 0 && to < len(pages) {
		p.at = to
		p.show()
	}
}

// draw shows the chosen page on the desk.
func (p *papersPage) draw() {
	pages, made := p.making.pages(p.onShow())
	p.at = max(0, min(p.at, len(pages)-1))
	var page *scene.Scene
	said := ""
	switch {
	case len(pages) > 0:
		page = pages[p.at]
		said = words.Say("papers.pageOf", words.With{"page": p.at + 1, "of": len(pages)})
	case made:
		said = words.Say("papers.noPages")
	case p.onShow() != "":
		said = words.Say("papers.making")
	}
	p.where.SetText(said)
	for chip, can := range map[*controls.Chip]bool{p.last: p.at > 0, p.next: p.at < len(pages)-1} {
		if can {
			chip.Enable()
		} else {
			chip.Disable()
		}
	}
	if page == nil && !made {
		return // the last page stays until the new one is there
	}
	p.pane.Lay(page, p.onShow()+strconv.Itoa(p.at), desk())
}

// desk is what a page lies on in today's colours.
func desk() preview.Desk {
	c := look.Current()
	d := preview.Desk{Ground: c.Desk, Edge: c.Ruled, Shade: c.Shade}
	if c.Night {
		d.Paper = &c.Sheet
	}
	return d
}

// focus moves the focus to an area of the page.
func (p *papersPage) focus(canvas fyne.Canvas, area int) {
	switch area {
	case columnArea:
		if line := p.lines[p.onShow()]; line != nil {
			canvas.Focus(line.Line)
		} else {
			canvas.Focus(p.notes)
		}
	case drawingArea:
		p.window.turnSide(false)
		canvas.Focus(p.pane)
	case findingsArea:
		p.window.turnSide(true)
		canvas.Focus(p.printing.open)
	}
}

// setPrinting keeps how papers are printed with the studio.
func (w *Window) setPrinting(change func(*project.Printing)) {
	studio := w.session.Studio()
	change(&studio.Printing)
	if studio.Printing == w.session.Studio().Printing {
		return
	}
	if err := w.ports.Studio.Write(studio); err != nil {
		w.complain(err)
		return
	}
	w.session.SetStudio(studio)
}
