package ui

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/sketch"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// measureKeys are what is measured, in the order of making.
var measureKeys = [...]string{
	"paper.thickness", "sewing.threadDiameter",
	"measured.spineThickness.head", "measured.spineThickness.middle", "measured.spineThickness.tail",
	"measured.foreEdgeThickness.head", "measured.foreEdgeThickness.middle", "measured.foreEdgeThickness.tail",
	"measured.blockWidth", "measured.blockHeight", "measured.squareForeEdge",
}

// measureFirst is the finding whose card leads here: no setting mends it.
const measureFirst = "measure-first"

// firstMeasure is where the focus begins: what the case rests on.
const firstMeasure = "measured.spineThickness.head"

// measureForm is the sheet that asks for measures. What is being entered is a
// session of its own until it is taken.
type measureForm struct {
	window  *Window
	tried   *session.Session
	rows    []*parameter
	sheet   *sheet
	picture *canvas.Image
	side    *fyne.Container
	moves   *fyne.Container
	lines   []moveLine
	crush   *offer
	groove  *offer
}

// moveLine is one size before and after.
type moveLine struct{ name, sizes, by *controls.Label }

// offer is a figure found on the block, which only the maker takes.
type offer struct {
	tick *controls.Tick
	why  *controls.Paragraph
	box  *fyne.Container
	set  func(*book.Design) // nil where nothing is offered
}

const (
	measureRowWidth = float32(440)
	measureSide     = float32(340)
	offerHeight     = float32(112) // four lines and the tick
)

// openMeasure is the menu's and the card's way in.
func (w *Window) openMeasure() {
	if !w.busy() {
		newMeasureForm(w)
	}
}

func newMeasureForm(w *Window) *measureForm {
	tried := session.New(w.session.Project(), "")
	tried.SetSystem(w.session.System())
	f := &measureForm{window: w, tried: tried, moves: controls.Down(2), picture: canvas.NewImageFromImage(nil)}
	f.crush, f.groove = f.newOffer(), f.newOffer()
	f.sheet = w.openSheet(words.Say("measured.title"), f.content(), fyne.NewSize(measureRowWidth+measureSide+40, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { f.sheet.close() }),
		controls.NewButton(controls.Solid, words.Say("measured.take"), f.take))
	f.tried.Listen(f.show)
	f.show()
	f.look(firstMeasure)
	f.row(firstMeasure).row.Edit(w.win.Canvas())
	return f
}

func (f *measureForm) content() fyne.CanvasObject {
	rows := controls.Down(2)
	for _, key := range measureKeys {
		p, _ := book.Lookup(key)
		r := newParameter(p, f.tried, nil)
		r.row.OnFocus = func(in bool) {
			if in {
				f.look(key)
			}
		}
		f.rows = append(f.rows, r)
		rows.Add(r.row)
	}
	f.picture.FillMode = canvas.ImageFillContain
	rows.Add(controls.Inset(8, 0, 22, 0, controls.Across(0, controls.Fixed(sketch.Width, sketch.Height, f.picture))))
	f.side = controls.Down(6,
		controls.NewLabel(controls.HeadLabel, words.Say("measured.moves")), f.moves,
		controls.Fixed(measureSide, offerHeight, f.crush.box), controls.Fixed(measureSide, offerHeight, f.groove.box))
	return controls.Down(6, controls.NewLabel(controls.QuietLabel, words.Say("measured.text")),
		controls.Across(16, controls.Fixed(measureRowWidth, 0, rows), controls.Fixed(measureSide, rows.MinSize().Height, f.side)))
}

func (f *measureForm) row(key string) *parameter {
	for _, r := range f.rows {
		if r.Key == key {
			return r
		}
	}
	return nil
}

// look draws where the calliper goes for a measure.
func (f *measureForm) look(key string) {
	name, _ := sketch.OfParam(key)
	picture := f.window.sketch(name)
	if picture == nil {
		return
	}
	f.picture.Image = picture
	f.picture.Refresh()
}

func (f *measureForm) newOffer() *offer {
	o := &offer{why: controls.NewParagraph("")}
	o.why.Resize(fyne.NewSize(measureSide, 0))
	o.tick = controls.NewTick(func() { f.sheet.close() }, func(bool) { f.showMoves() })
	o.box = controls.Down(0, o.why, o.tick)
	return o
}

// show brings rows, offers and table up to date with what was entered.
func (f *measureForm) show() {
	for _, r := range f.rows {
		r.show(look.None, false)
	}
	f.offerCrush()
	f.offerGroove()
	f.showMoves()
}

// entered is what the rows say; places that were entered go before a thickness
// of the whole that was there.
func (f *measureForm) entered() book.Decisions {
	d, was := f.tried.Decisions(), f.window.session.Decisions().Measured
	if d.Measured.SpineAt != was.SpineAt && d.Measured.SpineAt.Greatest().IsTyped() {
		d.Measured.SpineThickness = book.Auto[book.Length]()
	}
	if d.Measured.ForeEdgeAt != was.ForeEdgeAt && d.Measured.ForeEdgeAt.Greatest().IsTyped() {
		d.Measured.ForeEdgeThickness = book.Auto[book.Length]()
	}
	return d
}

// next is what is taken: the measures, and the figures that were ticked.
func (f *measureForm) next() book.Decisions {
	d := f.entered()
	if f.crush.ticked() {
		f.crush.set(&d.Design)
	}
	if f.groove.ticked() {
		// The square was found on a case cut for the groove as it was.
		f.groove.set(&d.Design)
		d.Measured.SquareForeEdge = book.Auto[book.Length]()
	}
	return d
}

func (o *offer) ticked() bool { return o.set != nil && o.tick.Checked }

func (f *measureForm) compute(d book.Decisions) book.Book {
	return book.Compute(book.Resolve(d, f.tried.Shelf()))
}

// offerCrush offers the thread that this block kept.
func (f *measureForm) offerCrush() {
	b := f.compute(f.entered())
	c, p := book.FindCrush(b), f.param("sewing.threadCrush")
	if c.Why != "" {
		f.crush.refuse(c.Why)
		return
	}
	c.Value, _ = strconv.ParseFloat(hundredths(c.Value), 64)
	value := p.Clamped(book.NumberValue(c.Value))
	f.crush.make(words.Say("measured.crush", words.With{
		"value": hundredths(c.Value), "low": hundredths(c.Low), "high": hundredths(c.High),
		"now": hundredths(b.Resolved.Sewing.Crush),
	}), hundredths(value.Number), func(d *book.Design) { d.Sewing.Crush = value.Number })
}

// offerGroove offers the groove that the finished book shows.
func (f *measureForm) offerGroove() {
	b, system := f.compute(f.entered()), f.tried.System()
	style := session.SumStyle(system)
	g := book.FindGroove(b, style)
	if g.Why != "" {
		f.groove.refuse(g.Why)
		return
	}
	value := g.Value.RoundNearest(style.Grid())
	f.groove.make(words.Say("measured.groove", words.With{
		"value": style.WithUnit(value), "low": style.Format(g.Range.Low), "high": style.WithUnit(g.Range.High),
		"now": style.WithUnit(b.Resolved.Groove()),
	}), style.WithUnit(value), func(d *book.Design) { d.Joint.Groove = book.Typed(value) })
}

func (f *measureForm) param(key string) book.Param {
	p, _ := book.Lookup(key)
	return p
}

func hundredths(v float64) string { return strconv.FormatFloat(v, 'f', 2, 64) }

// refuse says why there is nothing to offer; a tick does not outlive it.
func (o *offer) refuse(why string) {
	o.set, o.tick.Checked = nil, false
	o.tick.Hide()
	o.say(why)
}

func (o *offer) make(text, value string, set func(*book.Design)) {
	o.set = set
	o.tick.SetText(words.Say("measured.use", words.With{"value": value}))
	o.tick.Show()
	o.say(text)
}

func (o *offer) say(text string) {
	o.why.SetText(text)
	o.box.Refresh()
}

// showMoves tells each size to cut, before and after.
func (f *measureForm) showMoves() {
	if f.sheet == nil {
		return // a tick while the sheet is being made
	}
	moves := movedSizes(f.window.session.Book(), f.compute(f.next()), f.tried.System())
	for len(f.lines) < len(moves) {
		line := moveLine{controls.NewLabel(controls.PlainLabel, ""), controls.NewEndLabel(controls.PlainLabel, ""), controls.NewEndLabel(controls.SmallLabel, "")}
		f.lines = append(f.lines, line)
		f.moves.Add(controls.Across(8, controls.Fixed(140, 0, line.name), controls.Fixed(120, 0, line.sizes), controls.Fixed(50, 0, line.by)))
	}
	for i, line := range f.lines {
		m := movedSize{}
		if i < len(moves) {
			m = moves[i]
		}
		sizes := m.to
		if m.by != "" {
			sizes = words.Say("measured.fromTo", words.With{"from": m.from, "to": m.to})
		}
		line.name.SetText(sentence(m.name))
		line.sizes.SetText(sizes)
		line.by.SetText(m.by)
	}
	f.side.Refresh() // the table may have grown
}

// take puts the measures, and what was ticked, into the project: one step. A
// field that still holds what cannot be understood keeps the sheet open.
func (f *measureForm) take() {
	f.window.win.Canvas().Unfocus() // an open field takes what was typed
	for _, r := range f.rows {
		if r.row.Value.Problem() != "" {
			r.row.Edit(f.window.win.Canvas())
			return
		}
	}
	next := f.next()
	f.sheet.close()
	f.window.session.Apply(words.Say("step.measure"), next)
}
