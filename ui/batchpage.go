package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/ui/controls"
	"grainwise/ui/preview"
)

// batchPage is what is made of the design at one time: tables of orders, variants,
// materials and spines, a picture under them, and what it all takes at the right.
type batchPage struct {
	window    *Window
	reckoning *reckoning
	frame     *frame
	object    fyne.CanvasObject

	tabs    *controls.Segment
	tables  []batchTable
	at      int
	stack   *fyne.Container
	orders  *ordersTable
	strip   *batchStrip
	summary *batchSummary
	found   *batchFindings
	output  output
	derived derived
}

// batchTable is one of the page's tables with its tools.
type batchTable interface {
	id() string
	object() fyne.CanvasObject
	grid() *controls.Grid
	show()
	book() (variant string, known bool) // that of the cursor's row
	first() fyne.Focusable              // what the keyboard begins with
}

func newBatchPage(w *Window) *batchPage {
	p := &batchPage{window: w}
	p.reckoning = &reckoning{apart: w.apart, onWindow: w.onWindow, changed: w.showPage, today: p.todays}
	p.output = output{window: w}
	p.orders = newOrdersTable(p)
	p.tables = []batchTable{p.orders, newVariantsTable(p), newNeedsTable(p), newSpinesTable(p), newPlanTable(p), newPricesTable(p), newParcelsTable(p), newRecordsTable(p)}
	p.strip = newBatchStrip(p)
	p.found = newBatchFindings(p)
	p.summary = newBatchSummary(p)
	p.build()
	return p
}

func (p *batchPage) build() {
	w := p.window
	var names []string
	p.stack = container.NewStack()
	for i, t := range p.tables {
		names = append(names, words.Say("batch.tab."+t.id()))
		p.stack.Add(t.object())
		setVisible(t.object(), i == 0)
	}
	p.tabs = controls.NewSegment(names, p.turn)
	bar := controls.Fixed(0, 36, controls.Inset(4, 4, 4, 4, controls.Across(4, p.tabs, controls.Spring())))
	left := controls.Around(controls.Down(0, bar, controls.NewHairline()), nil, nil, nil, p.stack)
	p.frame = &frame{left: left, leftLine: controls.NewHairline(), middle: p.strip.box, rightLine: controls.NewHairline(), right: p.summary.scroll, under: stripHeight}
	p.frame.changed, p.frame.widened = func(narrow bool) { w.pages.offerSides(narrow) }, func(float32, float32) {}
	f := p.frame
	p.object = container.New(f, f.left, f.leftLine, f.middle, f.rightLine, f.right)
}

func (p *batchPage) shown() fyne.CanvasObject { return p.object }
func (p *batchPage) columns() *frame          { return p.frame }
func (p *batchPage) drawing() *preview.Pane   { return p.strip.pane }

// turn shows another table.
func (p *batchPage) turn(to int) {
	p.at = to
	for i, t := range p.tables {
		setVisible(t.object(), i == to)
	}
	p.show()
}

// turnTo shows a table by its id.
func (p *batchPage) turnTo(id string) {
	for i, t := range p.tables {
		if t.id() == id {
			p.turn(i)
		}
	}
}

// table is the one on show.
func (p *batchPage) table() batchTable { return p.tables[p.at] }

// show brings the page up to date.
func (p *batchPage) show() {
	p.reckoning.want(p.window.batchInput())
	p.tabs.SetOn(p.at)
	p.table().show()
	p.strip.show()
	p.summary.show()
}

// chosen is told that the cursor stands elsewhere.
func (p *batchPage) chosen() { p.strip.show() }

// batch is what the project holds.
func (p *batchPage) batch() batch.Batch { return p.window.session.Batch() }

// set puts another batch in this one's place: one step to undo. What was wrong is
// given back in words, and then nothing has changed.
func (p *batchPage) set(b batch.Batch, err error, step string, blanks words.With) string {
	if err != nil {
		return faultText(err)
	}
	p.window.session.SetBatch(b, "", words.Say("batch.step."+step, blanks))
	return ""
}

// faultText is what was expected, without the place where: that is seen.
func faultText(err error) string {
	if fault, is := err.(*batch.Fault); is {
		return sentence(fault.Text)
	}
	return sentence(err.Error())
}

// today is the day in the session's clock.
func (p *batchPage) today() measure.Date { return measure.DayOf(p.window.session.Now()) }

// todays is what the batch's reckoning takes from today and from the unit shown.
func (p *batchPage) todays() batch.Today { return batch.Today{Date: p.today(), Style: p.style()} }

// style shows lengths to read by.
func (p *batchPage) style() measure.Style {
	system := p.window.session.System()
	if system == measure.Metric {
		return measure.Style{System: system, Decimals: 2}
	}
	return measure.Style{System: system, Decimals: 3}
}

// focus moves the focus to an area of the page.
func (p *batchPage) focus(canvas fyne.Canvas, area int) {
	switch area {
	case columnArea:
		if first := p.table().first(); first == p.table().grid().Body() && p.table().grid().Count() == 0 {
			canvas.Focus(p.tabs.Chips()[p.at]) // an empty table is not there
		} else {
			canvas.Focus(first)
		}
	case drawingArea:
		p.window.turnSide(false)
		canvas.Focus(p.strip.first())
	case findingsArea:
		p.window.turnSide(true)
		canvas.Focus(p.summary.firstToFocus())
	}
}
