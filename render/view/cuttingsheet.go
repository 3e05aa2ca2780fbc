package view

import (
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// cuttingSheet is a block at its place: plan maps the millimetres of the sheet,
// or of the strip of a roll, from its lower left corner.
type cuttingSheet struct {
	cuttingBlock
	drawing       *cuttingDrawing
	sheet         *draft.Sheet
	plan          draft.Plan
	tone          scene.Colour
	titleY        float64   // of its title's baseline
	across, along float64   // mm, how large it is
	settings      []setting // of the stop, in the order of the bench
}

// drawBlock draws a block of a row.
func (d *cuttingDrawing) drawBlock(b cuttingBlock, row cuttingRow) {
	for i, line := range b.heading {
		t := headingType(i)
		if b.cutting.Trouble != nil && i > 0 {
			t = t.In(draft.Stop)
		}
		d.sheet.Try(draft.P{X: b.x, Y: row.y + headingLine*float64(i+1)}, line, t, scene.Start, 0)
	}
	if len(b.layouts) == 0 {
		return
	}
	l := cuttingSheet{cuttingBlock: b, drawing: d, sheet: d.sheet, tone: sheetTone(b.cutting.Material), titleY: row.y + row.head - 6}
	l.across, l.along = b.extent()
	l.settings = settingsOf(b)
	top := row.y + row.head + b.aboveRoom(d.rooms)
	l.plan = draft.Plan{Origin: draft.P{X: b.x + d.rooms.left, Y: top + d.scale*l.along}, Scale: d.scale}
	l.draw()
}

// draw puts down what lies lowest first, and of the words the weightiest first:
// names, sizes, grain, numbers, stops.
func (l cuttingSheet) draw() {
	l.title()
	if l.cutting.Roll() {
		l.roll()
	}
	l.rests()
	l.offcuts()
	l.each(l.piece)
	l.cuts()
	l.sheet.Outline(draft.PartLine(l.tone), l.whole()...)
	l.each(l.chosen)
	named := l.names()
	l.offcutNames()
	l.captionsBelow(named)
	if l.drawing.in.Grain {
		l.grain()
	}
	if l.drawing.rooms.numbers {
		l.numbers()
	}
	if l.drawing.rooms.list {
		l.list()
	}
}

// whole is the outline of the sheet, or of the strip.
func (l cuttingSheet) whole() []draft.P { return l.plan.Rect(0, 0, l.across, l.along) }

// px is a place of the sheet, in the planner's units.
func (l cuttingSheet) px(x, y int64) draft.P { return l.plan.At(mmOf(x), mmOf(y)) }

// outline is a rectangle of the sheet, and pxBox where it lies on the page.
func (l cuttingSheet) outline(x, y, width, height int64) []draft.P {
	return l.plan.Rect(mmOf(x), mmOf(y), mmOf(x+width), mmOf(y+height))
}

func (l cuttingSheet) pxBox(x, y, width, height int64) draft.Box {
	a, b := l.px(x, y+height), l.px(x+width, y)
	return draft.Box{X0: a.X, Y0: a.Y, X1: b.X, Y1: b.Y}
}

// each calls do for every piece, moved up to where its row lies.
func (l cuttingSheet) each(do func(p cutting.Part)) {
	l.pieces(func(p cutting.Part, up int64) {
		p.Y += up
		do(p)
	})
}

// title is what the block is called, and how large it is.
func (l cuttingSheet) title() {
	at := draft.P{X: l.plan.Origin.X, Y: l.titleY}
	name := l.cuttingBlock.title()
	if l.sheet.Try(at, name, draft.Name(), scene.Start, 0) {
		l.sheet.Try(draft.P{X: at.X + draft.Name().Width(name) + titleGap, Y: at.Y}, l.drawing.in.sheetSize(l.cuttingBlock), draft.SizeLine(), scene.Start, 0)
	}
}

// rests lays down the whole sheet as waste; what is of use comes over it.
func (l cuttingSheet) rests() {
	l.sheet.Face(l.whole(), l.tone.Towards(draft.GroundFlat, 0.62), scene.None, scene.Plane{})
	l.sheet.Hatch(l.whole(), 4.5)
}

func (l cuttingSheet) piece(p cutting.Part) {
	outline := l.outline(p.X, p.Y, p.Width, p.Height)
	s := l.sheet.About(l.cutting.Pieces[p.Piece].Part, "")
	s.Face(outline, l.kindTone(p.Piece), sheetTexture(l.cutting.Material.Kind), l.plan.Plane())
	s.Outline(draft.PartLine(l.tone), outline...)
}

// chosen outlines the pieces of the part that is chosen.
func (l cuttingSheet) chosen(p cutting.Part) {
	if part := l.cutting.Pieces[p.Piece].Part; part != "" && part == l.drawing.in.Chosen {
		l.sheet.About(part, "").Outline(draft.ChosenLine(), l.outline(p.X, p.Y, p.Width, p.Height)...)
	}
}

// kindTone tells the kinds of piece apart a little, beside their names.
func (l cuttingSheet) kindTone(kind int) scene.Colour {
	return l.tone.Towards(draft.Ink3, 0.16*float64(kind%3))
}

// sheetTone is a material as a working drawing tints it.
func sheetTone(m stock.Material) scene.Colour {
	colour := draft.MaterialColour(m)
	switch m.Kind {
	case stock.Covering:
		return draft.FlatCloth(colour)
	case stock.Board:
		return draft.FlatBoard(colour)
	case stock.Card:
		return colour.Towards(draft.Paper, 0.3)
	}
	return colour
}

func sheetTexture(k stock.Kind) scene.Texture {
	switch k {
	case stock.Covering, stock.Mull:
		return scene.Weave
	case stock.Board:
		return scene.Board
	}
	return scene.Tooth
}

// offcuts shows what is worth keeping.
func (l cuttingSheet) offcuts() {
	for _, o := range l.kept() {
		outline := l.outline(int64(o.X), int64(o.Y), int64(o.Width), int64(o.Length))
		l.sheet.Face(outline, l.tone.Towards(draft.GroundFlat, 0.45), scene.None, scene.Plane{})
		l.sheet.Outline(draft.FoldLine(draft.Ink2), outline...)
	}
}

// kept are the offcuts that lie on this block, moved up to their rows.
func (l cuttingSheet) kept() []sheets.Offcut {
	var kept []sheets.Offcut
	up := int64(0)
	for _, layout := range l.layouts {
		for _, o := range l.cutting.Offcuts {
			if o.Layout == layout {
				o.Y += sheets.Length(up)
				kept = append(kept, o)
			}
		}
		up += l.cutting.Plan.Layouts[layout].Root.Height
	}
	return kept
}
