package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// A label's lines, px from the y of its leader.
const (
	nameDown   = 5.0
	sizeDown   = 22.0
	remarkDown = 38.0
	labelAbove = 11.0
	labelAir   = 10.0
	elbow      = 16.0 // left of the column
	leaderEnd  = 5.0
	bandWeight = 24.0
	bandTurn   = 40.0 // at most, to turn from the band to the label
	markGap    = 8.0  // between a name and its mark
	markUp     = 5.0  // from a name's baseline to the middle of its mark
)

// anchor is where a leader may start on its part: at a height of the sheet
// between two limits, and for the spine piece along a band between layers.
type anchor struct {
	low, high float64 // y, high the upper one: smaller
	at        func(y float64) draft.P
	band      float64 // y of the band, 0 without
}

// drawLabels sets the labels in one column, each level with its part.
func (a *apart) drawLabels() {
	labels := a.withMoving()
	blocks := make([]draft.Label, len(labels))
	anchors := make([]anchor, len(labels))
	for i, l := range labels {
		anchors[i] = a.anchorOf(l.part)
		if l.moving {
			anchors[i] = a.movingAnchor(l.part)
			if a.movingInOneLine(l) {
				l.size = ""
			}
		}
		blocks[i] = draft.Label{Anchor: (anchors[i].low + anchors[i].high) / 2, Above: labelAbove, Below: l.below()}
		if anchors[i].band != 0 {
			blocks[i].Anchor, blocks[i].Weight = anchors[i].band, bandWeight
		}
	}
	bottom := a.labelsFoot()
	ys, fit := draft.PlaceLabels(blocks, edgeLeast, bottom)
	if n := len(a.labels); !fit && n < len(labels) { // no room for a label more
		labels, blocks = labels[:n], blocks[:n]
		ys, _ = draft.PlaceLabels(blocks, edgeLeast, bottom)
	}
	for i, l := range labels {
		if l.moving {
			a.drawMovingLabel(l, anchors[i], ys[i])
			continue
		}
		a.drawLabel(l, anchors[i], ys[i])
	}
}

func (l apartLabel) below() float64 {
	switch {
	case l.remark != "":
		return remarkDown + 4 + labelAir
	case l.size != "":
		return sizeDown + 4 + labelAir
	}
	return nameDown + 4 + labelAir
}

func (a *apart) drawLabel(l apartLabel, from anchor, y float64) {
	s := a.sheet.About(l.part, "")
	end := []draft.P{{X: a.column - elbow, Y: y}, {X: a.column - leaderEnd, Y: y}}
	start := from.at(min(max(y, from.high), from.low))
	line := []draft.P{start}
	if from.band != 0 {
		turn := min(math.Abs(y-from.band), bandTurn)
		line = append(line, draft.P{X: start.X + max(start.Y-from.band, 0) + 4, Y: from.band}, draft.P{X: a.column - elbow - turn, Y: from.band})
	}
	s.Leader(append(line, end...)...)
	s.Text(draft.P{X: a.column, Y: y + nameDown}, l.name, draft.Name(), scene.Start, 0)
	s.Level(draft.P{X: a.column + draft.Name().Width(l.name) + markGap + draft.LevelSize/2, Y: y + nameDown - markUp}, l.mark)
	s.Text(draft.P{X: a.column, Y: y + sizeDown}, l.size, draft.SizeLine(), scene.Start, 0)
	s.Text(draft.P{X: a.column, Y: y + remarkDown}, l.remark, draft.SizeLine(), scene.Start, 0)
}

// Where along a part a leader may start: towards its right, off its corners.
const (
	anchorLow, anchorHigh = 0.2, 0.8
	anchorIn              = 0.12 // of a part's width, from its right edge
	anchorDeep            = 0.82 // of the page's height
)

func (a *apart) anchorOf(part book.PartID) anchor {
	s := a.size
	switch part {
	case book.PartFolio:
		x := a.sectionX(s.sections-1) + a.leaves.half
		return a.onSide(x, a.y0()+anchorDeep*s.pageHeight, s.pageWidth)
	case book.PartSpine:
		return a.onSpine()
	case book.PartBoard:
		return onFlat(a.stack.boards, s.boardX()[1][1]-anchorIn*s.boardWidth, 0, s.boardHeight, s.board)
	}
	if from, ok := a.block.anchor(part); ok {
		return from
	}
	if part == book.PartCovering && s.cloth.quarter {
		return a.onCloth()
	}
	in := min(s.marginX/2, anchorIn*s.coverWidth)
	return onFlat(a.stack.covering, s.coverWidth/2-in, 0, s.boardHeight, 0)
}

// onFlat is a line along y on a level face.
func onFlat(o oblique, x, y0, y1, z float64) anchor {
	return stretch(o.at(x, y0, z), o.at(x, y1, z), anchorLow, anchorHigh)
}

// stretch is a part of the line from a to b, from one share of it to another.
func stretch(a, b draft.P, from, to float64) anchor {
	at := func(t float64) draft.P { return draft.P{X: a.X + t*(b.X-a.X), Y: a.Y + t*(b.Y-a.Y)} }
	low, high := at(from), at(to)
	return anchor{low: low.Y, high: high.Y, at: func(y float64) draft.P {
		if low.Y == high.Y {
			return low
		}
		t := (low.Y - y) / (low.Y - high.Y)
		return draft.P{X: low.X + t*(high.X-low.X), Y: y}
	}}
}

// onSide is a line up the last section's page.
func (a *apart) onSide(x, y, top float64) anchor {
	low, high := a.stack.sections.at(x, y, 0.5*top), a.stack.sections.at(x, y, 0.9*top)
	return anchor{low: low.Y, high: high.Y, at: func(py float64) draft.P { return draft.P{X: low.X, Y: py} }}
}

// onCloth is the spine cloth's far corner, whose leader runs in the band above
// the covering.
func (a *apart) onCloth() anchor {
	o, b := a.stack.covering, a.coverBox()
	in := 4 / o.scale
	corner := o.at(a.size.cloth.cloth-in, b.y1-in, 0)
	front := a.stack.boards.at(0, 0, 0).Y
	return anchor{
		low: corner.Y, high: corner.Y, band: (o.at(0, b.y1, 0).Y + front) / 2,
		at: func(float64) draft.P { return corner },
	}
}

// onSpine is the spine piece's far corner, whose leader runs in the band above
// the boards.
func (a *apart) onSpine() anchor {
	s, o := a.size, a.stack.boards
	in := min(3/o.scale, s.spineWidth/2)
	corner := o.at(s.spineWidth/2-in, s.boardHeight-2/o.scale, a.boardBoxes()[1].z1)
	back := o.at(0, s.boardHeight, s.board).Y
	front := a.stack.base.at(0, a.base.tail, 0).Y
	return anchor{
		low: corner.Y, high: corner.Y, band: (back + front) / 2,
		at: func(float64) draft.P { return corner },
	}
}
