package view

import (
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
)

// Dimension lines stand off their part, px.
const (
	belowCovering = 21.0
	besideCover   = 26.0 // at least
	besideFigure  = 15.0 // of a wide figure's end
	belowBoards   = 15.0
	figureDrop    = 4.5 // of a figure's baseline under its line
)

// apartDimension is a dimension and the part it measures.
type apartDimension struct {
	part book.PartID
	draft.Dimension
}

// measured are the dimensions of the two layers cut to figures: covering and
// boards.
func (a *apart) measured() []apartDimension {
	if !a.in.Dimensions {
		return nil
	}
	cut, c, o := a.in.Book.ToCut, a.coverBox(), a.stack.covering
	cloth := a.size.cloth.cloth
	left := a.size.boardX()[0]
	from, to := o.at(c.x0, c.y0, 0), o.at(c.x0, c.y1, 0)
	return []apartDimension{
		{book.PartCovering, a.below(o, -cloth, cloth, c.y0, belowCovering, cut.CoveringWidth)},
		{a.size.cloth.edge(a.colours).part, draft.Dimension{
			A: draft.P{X: from.X - a.beside(), Y: from.Y}, B: draft.P{X: to.X - a.beside(), Y: to.Y},
			FromA: from, FromB: to, Figure: a.in.figure(cut.CoveringHeight), Gap: true,
		}},
		{book.PartBoard, a.below(a.stack.boards, left[0], left[1], 0, belowBoards, cut.BoardWidth)},
	}
}

// beside is how far the covering's height stands off it: a wide figure in its
// line must clear the slanting edge.
func (a *apart) beside() float64 {
	width := func(b *apart) float64 { return b.in.figure(b.in.Book.ToCut.CoveringHeight).Width(draft.FigureType()) }
	return max(besideCover, a.larger(width(a), width)/2+besideFigure)
}

// drawDimensions draws them.
func (a *apart) drawDimensions() {
	for _, d := range a.measured() {
		a.sheet.About(d.part, "").Dimension(d.Dimension)
	}
}

// below measures a front edge; its extension lines run on along the depth.
func (a *apart) below(o oblique, x0, x1, y, down float64, length measure.Length) draft.Dimension {
	near := y - down/(depthY*o.scale)
	return draft.Dimension{
		A: o.at(x0, near, 0), B: o.at(x1, near, 0), FromA: o.at(x0, y, 0), FromB: o.at(x1, y, 0),
		Figure: a.in.figure(length), Gap: true,
	}
}

// aroundFigures leaves the figures' places out of upright lines.
func (a *apart) aroundFigures(lines [][]draft.P) [][]draft.P {
	for _, d := range a.measured() {
		at := draft.P{X: (d.A.X + d.B.X) / 2, Y: (d.A.Y+d.B.Y)/2 + figureDrop}
		lines = cutOut(lines, d.Figure.Box(at, draft.FigureType(), 0).Grown(2))
	}
	return lines
}

// cutOut takes a box out of lines that run straight down.
func cutOut(lines [][]draft.P, b draft.Box) [][]draft.P {
	var out [][]draft.P
	for _, l := range lines {
		top, foot := l[0], l[1]
		if top.X <= b.X0 || top.X >= b.X1 || foot.Y <= b.Y0 || top.Y >= b.Y1 {
			out = append(out, l)
			continue
		}
		if top.Y < b.Y0 {
			out = append(out, []draft.P{top, {X: top.X, Y: b.Y0}})
		}
		if foot.Y > b.Y1 {
			out = append(out, []draft.P{{X: top.X, Y: b.Y1}, foot})
		}
	}
	return out
}
