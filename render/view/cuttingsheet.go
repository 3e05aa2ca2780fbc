package view

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// drawBlock draws a layout, below the heading of its material if it is the first.
func (d *cuttingDrawing) drawBlock(b cuttingBlock) {
	if b.layout <= 0 {
		for i, line := range d.in.headingOf(*b.cutting) {
			t := headingType(i)
			if b.cutting.Trouble != nil && i > 0 {
				t = t.In(draft.Stop)
			}
			d.sheet.Try(draft.P{X: b.x, Y: b.y + headingLine*float64(i+1)}, line, t, scene.Start, 0)
		}
	}
	if b.layout < 0 {
		return
	}
	l := cuttingSheet{drawing: d, cuttingBlock: b, tone: sheetTone(b.cutting.Material)}
	l.of = b.cutting.Plan.Layouts[b.layout]
	l.top = b.y + d.headingRoom()
	l.x0, l.y1 = b.x+cuttingLeft, l.top+cuttingAbove+b.scale*mmOf(l.of.Root.Height)
	l.draw()
}

// headingOf says what is cut, how many sheets it takes, how that is known, and
// what the other turn would give.
func (in Input) headingOf(c sheets.Cutting) []string {
	lines := []string{c.Material.Name}
	if c.Trouble != nil {
		return append(lines, TroubleText(c, in.System))
	}
	lines = append(lines, words.Say("cutting.needed", words.With{
		"needed": in.Needed(c), "proof": ProofText(c), "percent": fmt.Sprintf("%.0f", 100*c.Used),
	}))
	if turn := in.OtherTurn(c); turn != "" {
		lines = append(lines, turn)
	}
	return lines
}

func headingType(line int) draft.Type {
	if line == 0 {
		return draft.Name()
	}
	return draft.SizeLine()
}

// Needed is how much of a material a plan takes: sheets, or a length of roll.
func (in Input) Needed(c sheets.Cutting) string {
	if c.Roll() {
		return words.Say("cutting.length", words.With{"length": draft.Sizes(in.System).WithUnit(c.Length), "rows": counted("cutting.rows", int(c.Plan.Sheets))})
	}
	return counted("cutting.sheets", int(c.New()))
}

// ProofText says in words how a plan is known to be best.
func ProofText(c sheets.Cutting) string {
	switch {
	case c.Plan.Proved():
		return words.Say("cutting.proof." + string(c.Plan.Proof))
	case c.Roll():
		return words.Say("cutting.unproved.roll")
	}
	return words.Say("cutting.unproved", words.With{"gap": c.Plan.Cost - c.Plan.LowerBound})
}

// OtherTurn says what turning the pieces against the grain would give, and that
// it is refused; nothing where there is no such turn.
func (in Input) OtherTurn(c sheets.Cutting) string {
	o := c.Other
	switch {
	case !o.Forbidden && len(c.Pieces) > 0 && !c.Roll():
		return words.Say("cutting.turn.free")
	case !o.Forbidden:
		return ""
	case !o.Fits:
		return words.Say("cutting.turn.misfit")
	case c.Roll():
		return words.Say("cutting.turn.roll", words.With{"length": draft.Sizes(in.System).WithUnit(o.Length)})
	case len(c.Pieces) == 1:
		return words.Say("cutting.turn.one", words.With{"right": o.Right[0], "wrong": o.PerSheet[0]})
	}
	return words.Say("cutting.turn", words.With{"sheets": o.Sheets})
}

// TroubleText says why there is no plan.
func TroubleText(c sheets.Cutting, system measure.System) string {
	t := c.Trouble
	if t.Fault != cutting.TooLarge || t.Piece < 0 {
		return words.Say("cutting.trouble." + troubleKey(t.Fault))
	}
	p := c.Pieces[t.Piece]
	key := "cutting.trouble.large"
	if t.FitsTurned {
		key = "cutting.trouble.largeTurned"
	}
	style := draft.Sizes(system)
	return words.Say(key, words.With{
		"piece": words.Say("part." + p.Word), "width": style.WithUnit(sheets.Length(t.OverWidth)), "height": style.WithUnit(sheets.Length(t.OverHeight)),
	})
}

func troubleKey(f cutting.Fault) string {
	switch f {
	case cutting.LostEdges:
		return "edges"
	case cutting.StockSmall:
		return "stock"
	case cutting.NotASize:
		return "size"
	}
	return "much"
}

// cuttingSheet is one layout on the page. Its x0, y1 is the lower left corner of
// the whole sheet, px.
type cuttingSheet struct {
	drawing *cuttingDrawing
	cuttingBlock
	of     cutting.Layout
	tone   scene.Colour
	top    float64 // of its title
	x0, y1 float64
}

func (l cuttingSheet) px(x, y int64) draft.P {
	return draft.P{X: l.x0 + l.scale*mmOf(x), Y: l.y1 - l.scale*mmOf(y)}
}

// box is a rectangle of the sheet as an outline.
func (l cuttingSheet) box(x, y, width, height int64) []draft.P {
	return []draft.P{l.px(x, y), l.px(x+width, y), l.px(x+width, y+height), l.px(x, y+height)}
}

func (l cuttingSheet) draw() {
	s := l.drawing.sheet
	root := l.of.Root
	waste := l.tone.Towards(draft.Ink3, 0.32)
	whole := l.box(root.X, root.Y, root.Width, root.Height)
	s.Face(whole, waste, scene.None, scene.Plane{})
	s.Outline(draft.WasteLine(), whole...)
	l.lostStrips()
	l.title()
	l.offcuts()
	named := map[int]bool{}
	l.of.Root.Pieces(func(p cutting.Part) { l.piece(p) })
	l.cuts()
	l.grain()
	l.of.Root.Pieces(func(p cutting.Part) {
		if l.label(p, !named[p.Piece]) {
			named[p.Piece] = true
		}
	})
	l.offcutNames()
}

// lostStrips marks what is lost at the sheet's edges.
func (l cuttingSheet) lostStrips() {
	parent := l.cutting.Parents[l.of.Sheet].Sheet
	lost, root := parent.Lost, l.of.Root
	if lost == (stock.Edges{}) {
		return
	}
	inner := l.box(int64(lost.Left), int64(lost.Bottom), root.Width-int64(lost.Left+lost.Right), root.Height-int64(lost.Top+lost.Bottom))
	l.drawing.sheet.Outline(draft.FoldLine(draft.Ink3.Times(0.8)), inner...)
}

// title is the layout's letter, how often it is cut, and the sheet's size.
func (l cuttingSheet) title() {
	s, root := l.drawing.sheet, l.of.Root
	at := draft.P{X: l.x0, Y: l.top - 1}
	name := layoutTitle(l.cuttingBlock)
	if !s.Try(at, name, draft.Name(), scene.Start, 0) {
		return
	}
	size := l.drawing.in.by(sheets.Length(root.Width), sheets.Length(root.Height))
	s.Try(draft.P{X: at.X + draft.Name().Width(name) + 10, Y: at.Y}, size, draft.SizeLine(), scene.Start, 0)
}

func layoutTitle(b cuttingBlock) string {
	l := b.cutting.Plan.Layouts[b.layout]
	with := words.With{"name": sheets.LayoutName(b.layout), "times": l.Times, "offcut": b.cutting.Parents[l.Sheet].Offcut}
	if with["offcut"] != "" {
		return words.Say("cutting.layout.offcut", with)
	}
	return words.Say("cutting.layout", with)
}

func (l cuttingSheet) piece(p cutting.Part) {
	part := l.cutting.Pieces[p.Piece].Part
	s := l.drawing.sheet.About(part, "")
	outline := l.box(p.X, p.Y, p.Width, p.Height)
	s.Face(outline, l.kindTone(p.Piece), scene.None, scene.Plane{})
	line := draft.FlatLine(l.tone)
	if part == l.drawing.in.Chosen {
		line = draft.ChosenLine()
	}
	s.Outline(line, outline...)
}

// kindTone tells the kinds of piece apart a little, beside their names.
func (l cuttingSheet) kindTone(kind int) scene.Colour {
	return l.tone.Towards(draft.Ink2, 0.09*float64(kind%4))
}

// label names a piece where it has room: the first of its kind with its size.
func (l cuttingSheet) label(p cutting.Part, first bool) bool {
	piece := l.cutting.Pieces[p.Piece]
	s := l.drawing.sheet.About(piece.Part, "")
	name, size := words.Say("part."+piece.Word), l.drawing.in.by(piece.Width, piece.Height)
	a, c := l.px(p.X, p.Y+p.Height), l.px(p.X+p.Width, p.Y)
	width, height := c.X-a.X-6, c.Y-a.Y-4
	middle := draft.P{X: (a.X + c.X) / 2, Y: (a.Y + c.Y) / 2}
	t, small := draft.SizeLine().In(draft.Ink), draft.Small()
	switch {
	case first && t.Width(name) <= width && small.Width(size) <= width && height >= 34:
		return s.Try(draft.P{X: middle.X, Y: middle.Y - 2}, name, t, scene.Middle, 0) &&
			s.Try(draft.P{X: middle.X, Y: middle.Y + 13}, size, small, scene.Middle, 0)
	case t.Width(name) <= width && height >= 15:
		return s.Try(draft.P{X: middle.X, Y: middle.Y + 4}, name, t, scene.Middle, 0) && false
	case first && small.Width(name+" "+size) <= height && width >= 12:
		return s.Try(draft.P{X: middle.X + 4, Y: middle.Y}, name+" "+size, small, scene.Middle, 1)
	case small.Width(name) <= height && width >= 12:
		return s.Try(draft.P{X: middle.X + 4, Y: middle.Y}, name, small, scene.Middle, 1) && false
	}
	return false
}

// grain is the arrow beside the sheet.
func (l cuttingSheet) grain() {
	grain := l.cutting.Sheet.Grain
	if !l.drawing.in.Grain || grain != stock.Long && grain != stock.Short && !l.cutting.Roll() {
		return
	}
	root := l.of.Root
	x := l.x0 + l.scale*mmOf(root.Width)
	top := l.y1 - l.scale*mmOf(root.Height)
	if grain == stock.Short {
		reach := min(24, l.scale*mmOf(root.Width)/2)
		l.drawing.sheet.GrainArrow(draft.P{X: x - 2*reach, Y: top - 6}, draft.P{X: x, Y: top - 6}, draft.Ink2)
		l.drawing.sheet.Keep(draft.Box{X0: x - 2*reach - 2, Y0: top - 11, X1: x + 2, Y1: top - 1})
		return
	}
	reach := min(30, l.scale*mmOf(root.Height)/2)
	l.drawing.sheet.GrainArrow(draft.P{X: x + 13, Y: l.y1 - 2*reach}, draft.P{X: x + 13, Y: l.y1}, draft.Ink2)
}

// sheetTone is a material as a working drawing tints it.
func sheetTone(m stock.Material) scene.Colour {
	colour := draft.MaterialColour(m)
	switch m.Kind {
	case stock.Covering:
		return draft.FlatCloth(colour)
	case stock.Board, stock.Card:
		return draft.FlatBoard(colour)
	}
	return colour
}

// offcuts shows what is worth keeping.
func (l cuttingSheet) offcuts() {
	s := l.drawing.sheet.About(book.PartID(""), "")
	for _, o := range l.kept() {
		outline := l.box(int64(o.X), int64(o.Y), int64(o.Width), int64(o.Length))
		s.Face(outline, l.tone.Towards(draft.Ink3, 0.12), scene.None, scene.Plane{})
		s.Outline(draft.FoldLine(draft.Ink2), outline...)
	}
}

// kept are the offcuts that lie on this layout.
func (l cuttingSheet) kept() []sheets.Offcut {
	var kept []sheets.Offcut
	for _, o := range l.cutting.Offcuts {
		if o.Layout == l.layout {
			kept = append(kept, o)
		}
	}
	return kept
}

func (l cuttingSheet) offcutNames() {
	for _, o := range l.kept() {
		a, c := l.px(int64(o.X), int64(o.Y+o.Length)), l.px(int64(o.X+o.Width), int64(o.Y))
		middle := draft.P{X: (a.X + c.X) / 2, Y: (a.Y+c.Y)/2 + 4}
		text := o.Name + "  " + l.drawing.in.by(o.Width, o.Length)
		t, turn, room := draft.Small(), 0, c.X-a.X
		if c.Y-a.Y > room {
			turn, room = 1, c.Y-a.Y
			middle = draft.P{X: (a.X+c.X)/2 + 4, Y: (a.Y + c.Y) / 2}
		}
		if t.Width(text) > room-4 || !l.drawing.sheet.Try(middle, text, t, scene.Middle, turn) {
			l.drawing.sheet.Try(middle, o.Name, t, scene.Middle, turn)
		}
	}
}
