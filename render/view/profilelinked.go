package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// linkedProfile is what the cross-section shows of a link-stitched block, in mm:
// thicknesses, and how far lining and tapes reach from the back.
type linkedProfile struct {
	is            bool
	endpaper      float64
	mull, mullLap float64
	tape, tapeLap float64 // 0 without tapes
	thread        float64
}

func linkedOf(b book.Book) linkedProfile {
	stock := b.Resolved.Stock
	l := linkedProfile{
		is: true, endpaper: some(stock.Endpaper.Thickness), thread: some(b.Sewing.ThreadDiameter),
		mull: some(stock.Mull.Thickness), mullLap: max(b.Mull.Width-b.Block.SpineThickness, 0).MM() / 2,
	}
	if len(b.Tapes.At) > 0 {
		l.tape, l.tapeLap = some(stock.Tape.Thickness), max(b.Tapes.Length-b.Block.SpineThickness, 0).MM()/2
	}
	return l
}

// holding are the paths of a part that holds the block, none of no part.
func (p profile) holding(part book.PartID) [][]draft.P {
	l := p.linked
	switch {
	case part == book.PartLiner && !l.is:
		return [][]draft.P{p.linerPath()}
	case part == book.PartEndpaper && l.is:
		return [][]draft.P{p.endpaperPath(), mirrored(p.endpaperPath(), -1)}
	case part == book.PartMull && l.is:
		return [][]draft.P{p.backPath(l.mullLap, l.mull/2)}
	case part == book.PartTape && l.tape > 0:
		return [][]draft.P{p.backPath(l.tapeLap, l.mull+l.tape/2)}
	}
	return nil
}

// endpaperPath is the upper endpaper: the pasted leaf on the board to its fold
// at the back, and the free leaf on the block.
func (p profile) endpaperPath() []draft.P {
	g, edge := p.linked.endpaper, max(p.leafFore, p.inset+p.linked.endpaper)
	centre := p.inset + g
	path := []draft.P{{X: edge, Y: p.blockTop(edge) - g/2}}
	if edge > p.setBack && p.setBack > centre {
		path = append(path, draft.P{X: p.setBack, Y: p.blockTop(p.setBack) - g/2})
	}
	for k := range foldSteps + 1 {
		sin, cos := math.Sincos(math.Pi * float64(k) / foldSteps)
		path = append(path, draft.P{X: centre - g/2*sin, Y: p.spineHalf - g + g/2*cos})
	}
	if p.page > p.setBack && p.setBack > centre {
		path = append(path, draft.P{X: p.setBack, Y: p.blockTop(p.setBack) - 1.5*g})
	}
	return append(path, draft.P{X: max(p.page, centre), Y: p.blockTop(max(p.page, centre)) - 1.5*g})
}

// backPath is a sheet round the back, so far from its outer face, whose ends
// lie on the block's sides as far as lap.
func (p profile) backPath(lap, in float64) []draft.P {
	half := []draft.P{{X: lap, Y: p.blockTop(lap) - in}}
	if p.setBack > in && lap > p.setBack {
		half = append(half, draft.P{X: p.setBack, Y: p.blockTop(p.setBack) - in})
	}
	half = append(half, draft.P{X: in, Y: p.spineHalf - in}, draft.P{X: in, Y: 0})
	return mirroredOn(half)
}

func (d profileDrawing) endpapers() {
	s := d.sheet.About(book.PartEndpaper, "")
	thick := d.shape.linked.endpaper * d.plan.Scale
	for _, path := range d.shape.holding(book.PartEndpaper) {
		s.Lines(draft.SheetLine(d.colour.Endpaper, thick), d.lines(path)...)
	}
}

// lining draws the sewing along the back, tapes and lining over it.
func (d profileDrawing) lining() {
	d.sewing()
	l := d.shape.linked
	for _, of := range []struct {
		part   book.PartID
		thick  float64
		colour scene.Colour
	}{{book.PartTape, l.tape, d.colour.Tape}, {book.PartMull, l.mull, d.colour.Mull}} {
		for _, path := range d.shape.holding(of.part) {
			if lines := d.lines(path); lines != nil {
				d.sheet.About(of.part, "").Lines(draft.SheetLine(of.colour, of.thick*d.plan.Scale), lines...)
			}
		}
	}
}

// sewing is the thread inside every fold, and along the back from the first to
// the last.
func (d profileDrawing) sewing() {
	p := d.shape
	s := d.sheet.About(book.PartBlock, "sewing.method")
	radius := max(p.linked.thread*d.plan.Scale/2, 0.8)
	low, _ := p.band(0, 0)
	_, high := p.band(p.sections-1, 0)
	for i := range p.sections {
		from, to := p.band(i, 0)
		if at := p.inset + (to-from)/2; (to-from)*d.plan.Scale > 3*radius && at < d.x1 {
			s.Dot(d.plan.At(at, (from+to)/2), radius, draft.Thread.Times(0.8))
		}
	}
	if p.sections > 1 && p.inset > d.x0 {
		s.Line(draft.ThreadLine(p.linked.thread*d.plan.Scale), d.plan.At(p.inset, low), d.plan.At(p.inset, high))
	}
}
