package view

import (
	"slices"

	"grainwise/model/book"
	"grainwise/render/draft"
)

// lookBack keeps the book as it was before a change, if anything drawn of it
// was different.
func (a *apart) lookBack() {
	if !a.in.haunted() {
		return
	}
	if then := apartOf(a.in.then()); then.size != a.size || !a.block.same(then.block) || closedSizesOf(then.in.Book) != closedSizesOf(a.in.Book) {
		then.sheet = a.sheet
		a.then = then
	}
}

// placeThen lays the old book in the same places, its leaves as much too thick.
func (a *apart) placeThen() {
	if a.then == nil {
		return
	}
	a.then.stack = a.stack
	scale := a.stack.sections.scale
	times := min(a.size.timesAt(scale, a.base), a.then.size.timesAt(scale, a.then.base))
	a.leaves, a.then.leaves = a.size.leavesThick(times, scale), a.then.size.leavesThick(times, scale)
}

// closeThen lays the old closed book on the same corner.
func (a *apart) closeThen() {
	if a.then != nil {
		a.then.closed = closedBook{shown: a.closed.shown, at: a.closed.at, size: closedSizesOf(a.then.in.Book)}
	}
}

// larger is the larger of a size now and before the change, on its way back
// to now while the change fades.
func (a *apart) larger(now float64, of func(*apart) float64) float64 {
	if a.then == nil {
		return now
	}
	return a.in.towards(now, max(now, of(a.then)))
}

// roomy are sizes that hold the book both as it is and as it was: a drag does
// not refit the drawing at every step.
func (a *apart) roomy() (apartSizes, apartBase) {
	if a.then == nil {
		return a.size, a.base
	}
	s, b, o, p := a.size, a.base, a.then.size, a.then.base
	grow := func(now *float64, then float64) { *now = a.in.towards(*now, max(*now, then)) }
	tops := max(s.boardHeight+s.marginY, o.boardHeight+o.marginY)
	grow(&s.marginY, o.marginY)
	s.coverHeight = a.in.towards(s.coverHeight, tops+max(a.size.marginY, o.marginY))
	for _, f := range []struct {
		now  *float64
		then float64
	}{
		{&s.coverWidth, o.coverWidth}, {&s.boardHeight, o.boardHeight}, {&s.board, o.board},
		{&s.section, o.section}, {&s.tail, o.tail}, {&s.pageHeight, o.pageHeight}, {&s.pageWidth, o.pageWidth},
		{&b.half, p.half}, {&b.ridge, p.ridge}, {&b.wing, p.wing}, {&b.pitch, p.pitch}, {&b.gap, p.gap},
	} {
		grow(f.now, f.then)
	}
	s.sections = max(s.sections, o.sections)
	head, tail := max(b.tail+b.height, p.tail+p.height), min(b.tail, p.tail)
	b.height = a.in.towards(b.height, head-tail)
	b.tail = a.in.towards(b.tail, tail)
	return s, b
}

// blockParts are those of the block, and those that it had in another structure.
func (a *apart) blockParts() []book.PartID {
	parts := a.block.parts()
	if a.then == nil {
		return parts
	}
	for _, p := range a.then.block.parts() {
		if !slices.Contains(parts, p) {
			parts = append(parts, p)
		}
	}
	return parts
}

// drawMoved marks what a change moves of these parts; what floats above
// covers it.
func (a *apart) drawMoved(layer []book.PartID) {
	if !a.in.haunted() {
		return
	}
	first := a.in.movedPart()
	dark := slices.Contains(layer, book.PartCovering) && draft.MarksOn(draft.Reverse(a.colours.Covering)) != draft.Ink
	for _, part := range layer {
		if onePart(part) != part || (part == book.PartJoint && part != first) {
			continue // drawn with its neighbours
		}
		now := a.silhouettes(part)
		if part == first {
			a.in.movedMarks(a.sheet.About("", ""), a.strips(a.in.Moving), now, true)
		}
		if a.then != nil {
			a.in.ghost(a.sheet.About("", ""), closedAll(a.then.silhouettes(part)), closedAll(now), part == first, dark)
		}
	}
}

// strips are the areas that a parameter measures by itself; none where it is
// about a whole part.
func (a *apart) strips(key string) [][]draft.P {
	s, b := a.size, a.in.Book
	top := func(x0, x1, y0, y1 float64) []draft.P { return a.stack.boards.flat(x0, x1, y0, y1, s.board) }
	boards := s.boardX()
	inset := func(l book.Length, most float64) float64 { return min(max(l.MM(), 0), most) }
	switch key {
	case "square.head":
		y := s.boardHeight - inset(b.Squares.Head, s.boardHeight)
		return [][]draft.P{top(boards[0][0], boards[0][1], y, s.boardHeight), top(boards[1][0], boards[1][1], y, s.boardHeight)}
	case "square.tail":
		y := inset(b.Squares.Tail, s.boardHeight)
		return [][]draft.P{top(boards[0][0], boards[0][1], 0, y), top(boards[1][0], boards[1][1], 0, y)}
	case "square.foreEdge":
		in := inset(b.Squares.ForeEdge, s.boardWidth)
		return [][]draft.P{top(boards[0][0], boards[0][0]+in, 0, s.boardHeight), top(boards[1][1]-in, boards[1][1], 0, s.boardHeight)}
	case "covering.turnIn":
		return a.turnIns()
	case "spine.width", "spine.ease":
		return a.silhouettes(book.PartSpine)
	case "joint.width", "joint.setBack", "joint.ease":
		return a.silhouettes(book.PartJoint)
	}
	return nil
}

// turnIns are what of the covering lies past the boards, corners cut off.
func (a *apart) turnIns() [][]draft.P {
	s, o := a.size, a.stack.covering
	x, y0, y1 := s.boardX()[1][1], -s.marginY, s.boardHeight+s.marginY
	end := s.coverWidth / 2
	var out [][]draft.P
	for _, window := range [][]draft.P{
		o.flat(-end, -x, y0, y1, 0), o.flat(-x, x, y0, 0, 0), o.flat(-x, x, s.boardHeight, y1, 0), o.flat(x, end, y0, y1, 0),
	} {
		if area := draft.Clip(o.ground(a.coverCut()), window); len(area) > 2 {
			out = append(out, area)
		}
	}
	return out
}

// movingLabel names what moves in the column of labels.
func (a *apart) movingLabel() (apartLabel, bool) {
	name, was, ok := a.in.movedName()
	part := a.in.movedPart()
	return apartLabel{part: part, name: name, size: was, moving: true}, ok && !finishing(part) && len(a.silhouettes(part)) > 0
}

// movingWidth is what that label asks of the column: two lines, if need be, the
// same on the way there and back.
func (a *apart) movingWidth() float64 {
	name, was, ok := a.in.movedName()
	if !ok {
		return 0
	}
	back := a.in
	back.Book, back.Before, back.Faded = *a.in.Before, &a.in.Book, 0
	name2, was2, _ := back.movedName()
	return a.in.held() * max(draft.Name().Width(name), draft.Name().Width(name2), draft.SizeLine().Width(was), draft.SizeLine().Width(was2))
}

// movingAnchor is where that label's leader starts.
func (a *apart) movingAnchor(part book.PartID) anchor {
	o, s := a.stack.boards, a.size
	switch part {
	case book.PartSpine, book.PartJoint:
		x := s.spineWidth / 2
		if part == book.PartJoint {
			x += s.joint / 2
		}
		at := o.at(x, 0, 0)
		return anchor{low: at.Y, high: at.Y, band: at.Y + movingBand, at: func(float64) draft.P { return at }}
	}
	if strips := a.strips(a.in.Moving); len(strips) > 0 {
		at := middleOf(strips[len(strips)-1])
		return anchor{low: at.Y, high: at.Y, at: func(float64) draft.P { return at }}
	}
	from := a.anchorOf(part)
	from.high = from.low // its own label comes from higher up
	return from
}

// movingBand is how far under the boards a leader runs to the column, px.
const movingBand = 11.0

// drawMovingLabel sets name and old value in one line, or in two where the
// column is narrow.
func (a *apart) drawMovingLabel(l apartLabel, from anchor, y float64) {
	line := []draft.P{from.at(min(max(y, from.high), from.low))}
	if from.band != 0 {
		line = append(line, draft.P{X: line[0].X + movingBand, Y: from.band})
	}
	line = append(line, draft.P{X: a.column - elbow, Y: y}, draft.P{X: a.column - leaderEnd, Y: y})
	share := a.in.strength()
	a.sheet.MovingLeader(share, line...)
	at := draft.P{X: a.column, Y: y + nameDown}
	if !a.movingInOneLine(l) {
		a.sheet.Moving(at, l.name, "", share)
		at.Y = y + sizeDown
		a.sheet.Moving(at, "", l.size, share)
		return
	}
	a.sheet.Moving(at, l.name, l.size, share)
}

func (a *apart) movingInOneLine(l apartLabel) bool {
	return a.column+draft.MovingWidth(l.name, l.size) <= a.sheet.Width-edgeLeast
}

// withMoving are the labels and the one that names what moves, where it fits.
func (a *apart) withMoving() []apartLabel {
	l, ok := a.movingLabel()
	if !ok || a.column+max(draft.Name().Width(l.name), draft.SizeLine().Width(l.size)) > a.sheet.Width-edgeLeast/2 {
		return a.labels // the column has begun to close
	}
	return append(slices.Clone(a.labels), l)
}
