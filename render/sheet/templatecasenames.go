package sheet

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

func (d caseDrawing) figure(mm float64) draft.Figure {
	return draft.FigureOf(measure.MM(mm), d.in.System)
}

// names are the words on the parts.
func (d caseDrawing) names() {
	p := d.plan
	d.headAndTail()
	for _, side := range []float64{-1, 1} {
		d.leafNames(side)
		d.jointName(side)
		d.boardName(side)
	}
	d.spineName()
	if p.quarter {
		d.pieceNames()
	}
	d.coveringGrain()
}

// headAndTail name the two ends in the turn-ins, and what is cut there.
func (d caseDrawing) headAndTail() {
	p := d.plan
	y := p.high + p.endIn/2
	d.say(d.tryLevel(d.on(0, y), words.Say("template.head"), number(), scene.Middle), words.Say("template.head"))
	d.tryLevel(d.on(0, -p.endIn/2), words.Say("template.tail"), bold(), scene.Middle)
	turnIn, covering := words.Say("template.turnIn", words.With{"size": d.in.sized(measure.MM(p.endIn))}), book.PartCovering
	if p.quarter {
		covering = book.PartSide
	}
	d.inTurnIn(-1, y, turnIn)
	d.inTurnIn(1, y, d.in.part(covering))
	d.inTurnIn(-1, -p.endIn/2, d.in.cornerWords())
	d.inTurnIn(1, -p.endIn/2, turnIn)
}

// inTurnIn sets words in a turn-in, near the fore edge but clear of the cut corner.
func (d caseDrawing) inTurnIn(side, y float64, text string) {
	p := d.plan
	align := scene.Start
	if side > 0 {
		align = scene.End
	}
	fits := p.endIn >= 6 && body().width(text) < p.board-16
	d.say(fits && d.tryLevel(d.on(side*(p.outer()-12), y), text, body(), align), text)
}

// cornerWords say how far from the board's corner and at what angle it is cut.
func (in Input) cornerWords() string {
	return words.Say("template.corner", words.With{"cut": in.sized(in.Book.ToCut.CornerCut), "angle": in.Book.Resolved.Covering.CornerAngle})
}

// leafNames stand along the marks of a pasted leaf, inside them, in the upper and
// the lower half: a page that shows either says what they are.
func (d caseDrawing) leafNames(side float64) {
	p := d.plan
	mark := p.outer() - p.fore - max(p.shift, 0)
	for i, text := range []string{d.in.closedWords(), d.in.openWords()} {
		x := side * (mark - 4 - 6*float64(i))
		said := p.board > 50 && d.along(x, 0.74, text)
		d.say(said, text)
		if said && d.halved(text) {
			d.along(x, 0.26, text)
		}
	}
	x := side * (p.inner() + p.outer() - p.fore) / 2
	head := words.Say("template.leaf.head", words.With{"size": d.in.sized(d.in.Book.Casing.Head)})
	tail := words.Say("template.leaf.tail", words.With{"size": d.in.sized(d.in.Book.Casing.Tail)})
	d.say(body().width(head) < p.board-30 && d.tryLevel(d.on(x, p.high-max(p.head, 0)-5), head, body(), scene.Middle), head)
	d.say(body().width(tail) < p.board-30 && d.tryLevel(d.on(x, max(p.tail, 0)+5), tail, body(), scene.Middle), tail)
}

// halved tells whether a text fits in half a board's height.
func (d caseDrawing) halved(text string) bool { return body().width(text) < d.plan.high/2-12 }

// along sets a text up the sheet, at a share of the boards' height where half of it
// is enough, else in its middle.
func (d caseDrawing) along(x, share float64, text string) bool {
	if !d.halved(text) {
		share = 0.5
	}
	return body().width(text) < d.plan.high-6 && d.tryUpright(d.on(x, share*d.plan.high), text, body(), scene.Middle)
}

// closedWords say where the pasted leaf's edges lie.
func (in Input) closedWords() string {
	c := in.Book.Casing
	return words.Say("template.closed", words.With{"size": in.sized(c.ForeEdge)})
}

// openWords say by how much the leaf would lie wrong.
func (in Input) openWords() string {
	key, shift := "template.open", in.Book.Casing.ShiftIfOpen
	if shift < 0 {
		key, shift = "template.open.outward", -shift
	}
	return words.Say(key, words.With{"shift": in.sized(shift)})
}

func (d caseDrawing) jointName(side float64) {
	p := d.plan
	text := words.Say("template.joint", words.With{"size": d.in.sized(measure.MM(p.joint))})
	d.say(p.joint >= 5.2 && d.along(side*(p.spine+p.joint)/2, 0.74, text), text)
}

func (d caseDrawing) spineName() {
	p := d.plan
	text := d.in.part(book.PartSpine)
	d.say(p.spine >= 10.5 && d.along(p.spine/4, 0.74, text), text)
}

// part is a part's name and size.
func (in Input) part(id book.PartID) string {
	p, _ := in.Book.Part(id)
	return words.Say("template.part", words.With{"name": words.Say("part." + p.Word), "height": in.size(p.Height), "width": in.sized(p.Width)})
}

// boardName is the block of words on a board, with its grain.
func (d caseDrawing) boardName(side float64) {
	p := d.plan
	// From the inside with the head up, the front board lies on the left.
	name := words.Say("template.board.back")
	if side < 0 {
		name = words.Say("template.board.front")
	}
	board, _ := d.in.Book.Part(book.PartBoard)
	d.grain(side, board.Grain)
	inner := p.inner() + 12
	if p.quarter {
		inner = max(inner, p.cloth+8)
	}
	room := p.outer() - p.fore - max(p.shift, 0) - 18 - inner
	if side < 0 {
		inner = -inner - room
	}
	y := p.high*0.78 + 10
	for _, l := range d.in.boardLines(name, board) {
		if room < 16 || l.width(l.text) > room && l.style == number() {
			d.say(false, d.in.part(book.PartBoard))
			continue
		}
		for _, line := range l.wrapped(l.text, room) {
			y -= l.leading
			d.say(y > 4 && d.tryLevel(d.on(inner, y+l.leading/2), line, l.style, scene.Start), l.text)
		}
	}
	if y > p.high*0.4 && headStyle().width(name) <= room {
		d.tryLevel(d.on(inner, p.high*0.24), name, headStyle(), scene.Start)
	}
}

// set is a text and its style.
type set struct {
	text string
	style
}

// boardLines are what stands on a board.
func (in Input) boardLines(name string, board book.Part) []set {
	return []set{
		{name, headStyle()},
		{words.Say("template.size", words.With{"height": in.size(board.Height), "width": in.sized(board.Width)}), number()},
		{words.Say("template.thick", words.With{"size": in.thick(in.Book.Resolved.Stock.Board.Thickness)}), body()},
		{board.Stock, quiet()},
	}
}

// grain is the arrow of a board, beside its words.
func (d caseDrawing) grain(side float64, run book.GrainRun) {
	p := d.plan
	x, y := side*(p.inner()+6), p.high*0.78
	switch run {
	case book.AlongHeight:
		d.grainUp(x, side)
	case book.AlongWidth:
		far := side * (p.inner() + p.board*0.7)
		y = p.high * 0.1
		d.On(scene.Draw).GrainArrow(d.px(d.on(x, y)), d.px(d.on(far, y)), draft.Ink)
		d.tryLevel(d.on((x+far)/2, y+4), words.Say("template.grain"), quiet(), scene.Middle)
	}
}

// grainUp is an arrow up the sheet, its word on the far side of it.
func (d caseDrawing) grainUp(x, side float64) {
	low, high := d.plan.high*0.2, d.plan.high*0.78
	d.On(scene.Draw).GrainArrow(d.px(d.on(x, low)), d.px(d.on(x, high)), draft.Ink)
	d.tryUpright(d.on(x+side*3, low), words.Say("template.grain"), quiet(), scene.Start)
}

// coveringGrain is that of the covering in its turn-ins, and of the spine piece.
func (d caseDrawing) coveringGrain() {
	p := d.plan
	id := book.PartCovering
	if p.quarter {
		id = book.PartSide
	}
	covering, _ := d.in.Book.Part(id)
	if covering.Grain == book.AlongHeight && p.sideIn >= 8 {
		d.grainUp(-p.outer()-p.sideIn/2, 1)
	}
	if covering.Grain == book.AlongWidth && p.endIn >= 8 {
		y := p.high + p.endIn*0.5
		d.On(scene.Draw).GrainArrow(d.px(d.on(p.inner()+6, y)), d.px(d.on(p.inner()+p.board*0.3, y)), draft.Ink)
	}
	if spine, _ := d.in.Book.Part(book.PartSpine); spine.Grain == book.AlongHeight && p.spine >= 10.5 {
		d.grainUp(-p.spine/4, -0.85)
	}
}

// pieceNames stand along the edges of a quarter covering's pieces.
func (d caseDrawing) pieceNames() {
	p := d.plan
	cloth, side := d.in.part(book.PartCovering), d.in.part(book.PartSide)
	low, high := min(p.cloth, p.side), max(p.cloth, p.side)
	for _, hand := range []float64{-1, 1} {
		d.say(low-p.inner() > 12 && d.along(hand*(low-3), 0.26, cloth), cloth)
		d.say(p.outer()-high > 30 && d.along(hand*(high+3), 0.26, side), side)
	}
}

// say keeps what was not said where it belongs, once.
func (d caseDrawing) say(said bool, text string) {
	if !said && !slices.Contains(*d.mute, text) {
		*d.mute = append(*d.mute, text)
	}
}
