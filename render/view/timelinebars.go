package view

import (
	"strconv"

	"grainwise/model/schedule"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// row draws one step: its name, and its rounds' work and rest.
func (d timeline) row(r stepRow) {
	y := (r.y0 + r.y1) / 2
	d.sheet.Line(draft.LeafLine(), draft.P{X: d.field.x0, Y: r.y1 + 1}, draft.P{X: d.field.x1, Y: r.y1 + 1})
	d.sheet.Try(draft.P{X: d.field.x0 - 14, Y: y + 5}, fitted(r.name, rowName(), d.names), rowName(), scene.End, 0)
	for _, g := range r.groups {
		d.rest(r, g)
	}
	for _, g := range r.groups {
		d.work(r, g)
	}
	if r.together || r.other {
		return
	}
	for _, g := range r.groups {
		d.number(r, g)
	}
}

// The colours of a timeline: the hands' work as dark cloth, what is in the press as
// board, what dries elsewhere as paper, other work as a wooden rule.
func barColour(b schedule.Bar) scene.Colour {
	switch {
	case b.Kind == schedule.Work:
		return draft.Cloth
	case b.Kind == schedule.Aside:
		return draft.Ruler
	case b.Places > 0:
		return draft.GreyBoard.Towards(draft.Paper, 0.35)
	}
	return draft.Paper
}

// leastBar is the narrowest bar, px.
const leastBar = 1.6

func (d timeline) span(r stepRow, g barGroup, b schedule.Bar) pxBox {
	x0, x1 := d.axis.x(b.From), d.axis.x(b.To)
	return r.box(g.lane, x0, max(x1, x0+leastBar))
}

// rest draws what waits: hatched, the press's with a firm outline.
func (d timeline) rest(r stepRow, g barGroup) {
	for _, b := range g.bars {
		if b.Kind != schedule.Rest {
			continue
		}
		box := d.span(r, g, b)
		d.sheet.Face(box.corners(), barColour(b), scene.None, scene.Plane{})
		d.sheet.Hatch(box.corners(), 5)
		line := draft.PastedLine(draft.Ink3)
		if b.Places > 0 {
			line = draft.PartLine(draft.GreyBoard)
		}
		d.sheet.Outline(line, box.corners()...)
	}
}

// work draws the hands' bars: solid, the set-up a shade lighter.
func (d timeline) work(r stepRow, g barGroup) {
	for _, b := range g.bars {
		if b.Kind == schedule.Rest {
			continue
		}
		box := d.span(r, g, b)
		d.sheet.Face(box.corners(), barColour(b), scene.None, scene.Plane{})
		if b.SetUp > 0 {
			end := b.From
			end.Minute += b.SetUp
			d.sheet.Face(pxBox{box.x0, box.y0, min(d.axis.x(end), box.x1), box.y1}.corners(), draft.Reverse(draft.Cloth), scene.None, scene.Plane{})
		}
		d.sheet.Outline(draft.PartLine(barColour(b)), box.corners()...)
	}
}

// number puts a round's number on its work, or beside it where that is too narrow.
func (d timeline) number(r stepRow, g barGroup) {
	text := strconv.Itoa(g.round)
	for _, b := range g.bars {
		if b.Kind == schedule.Rest {
			continue
		}
		box := d.span(r, g, b)
		if d.onBar(box, text) {
			return
		}
	}
	last := g.bars[0]
	for _, b := range g.bars {
		if b.Kind == schedule.Work {
			last = b
		}
	}
	d.beside(r, g, last, text)
}

// beside writes after a bar, where no other work lies; what is hatched there is wiped.
func (d timeline) beside(r stepRow, g barGroup, bar schedule.Bar, text string) {
	box, t := d.span(r, g, bar), draft.Small().In(draft.Ink)
	at := draft.P{X: box.x1 + 3.5, Y: lineIn(box)}
	room := draft.BoxOf(at, text, t, scene.Start, 0).Grown(1)
	if box.y1-box.y0 < draft.Least || !d.sheet.Free(room) || r.busy(d, g.lane, room.X0, room.X1) {
		return
	}
	for _, b := range g.bars {
		if rest := d.span(r, g, b); b.Kind == schedule.Rest && rest.x0 < room.X1 && room.X0 < rest.x1 {
			wiped := pxBox{room.X0, room.Y0, min(room.X1, rest.x1-0.5), room.Y1}
			d.sheet.Face(wiped.corners(), barColour(b), scene.None, scene.Plane{})
		}
	}
	d.sheet.Text(at, text, t, scene.Start, 0)
}

// busy: some work of a lane lies between two px.
func (r stepRow) busy(d timeline, lane int, x0, x1 float64) bool {
	for _, g := range r.groups {
		for _, b := range g.bars {
			if box := d.span(r, g, b); g.lane == lane && b.Kind != schedule.Rest && box.x0 < x1 && x0 < box.x1 {
				return true
			}
		}
	}
	return false
}

// onBar writes on a bar where there is room, the colour that shows on it.
func (d timeline) onBar(box pxBox, text string) bool {
	t := draft.FigureType().At(12).In(draft.MarksOn(draft.Cloth))
	if box.x1-box.x0 < t.Width(text)+4 || box.y1-box.y0 < draft.Least {
		return false
	}
	return d.sheet.Try(draft.P{X: (box.x0 + box.x1) / 2, Y: lineIn(box)}, text, t, scene.Middle, 0)
}

// lineIn is the baseline of a text in the middle of a box.
func lineIn(b pxBox) float64 { return (b.y0+b.y1)/2 + 4 }
