package view

import (
	"math"
	"reflect"

	"grainwise/model/book"
	"grainwise/render/draft"
)

// linkedBlock is the block whose sections are sewn to one another: under them lie
// the lining with the tapes and the sewing on it, where the back will be, and
// beside it the folded endpapers, half open.
type linkedBlock struct {
	*apart
	linkedSizes
}

// linkedSizes are its sizes in mm; y counts from the boards' tail edge.
type linkedSizes struct {
	back                   float64 // thickness of the block at its spine
	mull                   [2]float64
	mullY                  [2]float64
	tapes                  [][2]float64 // y of each tape's edges, from the tail
	tapeLength, tapeThick  float64
	stations               []float64 // y
	thread                 float64
	leaf, leafTail, leafUp float64 // an endpaper's leaf: width, y of its edges
	tip                    float64
	fold                   float64 // x of an endpaper's fold
}

// How the block is drawn apart.
const (
	linkedGap     = 46.0 // px from the lining to the folds: the sewing shows between
	sectionsApart = 10.5 // mm between two sections, besides what they take
	linkedWidest  = 0.5  // of the covering: the sections side by side
	endpaperClear = 7.0  // mm from the lining's ends to the endpapers' folds
	endpaperOpen  = 8 * math.Pi / 180
)

func (a *apart) linkedSizes() linkedSizes {
	b, s := a.in.Book, a.size
	head := s.tail + s.pageHeight
	l := linkedSizes{
		back: some(b.Block.SpineThickness), thread: some(b.Sewing.ThreadDiameter),
		leaf: s.pasted, leafTail: s.leafTail, leafUp: s.leafTail + s.leafHeight, tip: max(b.Endpaper.Tip.MM(), 0),
		tapeLength: max(b.Tapes.Length.MM(), 0), tapeThick: some(b.Resolved.Stock.Tape.Thickness),
	}
	l.mull = [2]float64{-b.Mull.Width.MM() / 2, b.Mull.Width.MM() / 2}
	top := head - b.Mull.Head.MM()
	l.mullY = [2]float64{top - some(b.Mull.Height), top}
	for i := len(b.Tapes.At) - 1; i >= 0; i-- {
		at, half := head-b.Tapes.At[i].MM(), b.Tapes.Width.MM()/2
		l.tapes = append(l.tapes, [2]float64{at - half, at + half})
	}
	for i := len(b.Sewing.Stations) - 1; i >= 0; i-- {
		l.stations = append(l.stations, head-b.Sewing.Stations[i].MM())
	}
	l.fold = max(l.mull[1], l.tapeEnd()) + endpaperClear
	return l
}

// tapeEnd is x of the tapes' right ends, 0 without.
func (l linkedSizes) tapeEnd() float64 {
	if len(l.tapes) == 0 {
		return 0
	}
	return l.tapeLength / 2
}

func (a linkedBlock) layer() apartBase {
	n := float64(a.size.sections)
	seat := max(a.back-4*a.in.Book.Resolved.Stock.Endpaper.Thickness.MM(), a.back/2) / n
	return apartBase{
		half: a.fold + a.leaf, tail: min(a.leafTail, a.mullY[0]), height: max(a.leafUp, a.mullY[1]) - min(a.leafTail, a.mullY[0]),
		wing: a.leaf * math.Sin(endpaperOpen), gap: linkedGap,
		pitch: max(min(seat+sectionsApart, linkedWidest*a.size.coverWidth/n), seat), seat: seat,
	}
}

func (a linkedBlock) same(then apartBlock) bool {
	other, ok := then.(linkedBlock)
	return ok && reflect.DeepEqual(other.linkedSizes, a.linkedSizes) && other.layer() == a.layer()
}

func (a linkedBlock) parts() []book.PartID {
	return []book.PartID{book.PartMull, book.PartTape, book.PartEndpaper}
}

// join ties the endpapers' outer corners to where they are pasted.
func (a linkedBlock) join() {
	s, half := a.size, a.base.half
	boards := s.boardX()
	var lines [][]draft.P
	for _, y := range []float64{a.leafTail, a.leafUp} {
		lines = append(lines,
			[]draft.P{a.stack.base.at(-half, y, 0), a.stack.boards.at(boards[0][0]+s.pastedIn, y, s.board)},
			[]draft.P{a.stack.base.at(half, y, 0), a.stack.boards.at(boards[1][1]-s.pastedIn, y, s.board)})
	}
	a.sheet.Lines(draft.JoiningLine(), lines...)
}

func (a linkedBlock) draw() {
	a.drawMull()
	a.drawTapes()
	a.drawSewing()
	a.drawEndpaper(-1)
	a.drawEndpaper(1)
	a.joinEndpapers()
}

// joinEndpapers ties each endpaper's fold to the section that it is tipped to.
func (a linkedBlock) joinEndpapers() {
	outer := a.base.outerX(a.size.sections)
	var lines [][]draft.P
	for _, side := range []float64{-1, 1} {
		lines = append(lines, []draft.P{
			a.stack.sections.at(side*outer, a.size.tail, 0), a.stack.base.at(side*a.fold, a.leafTail, 0)})
	}
	a.sheet.Lines(draft.JoiningLine(), lines...)
}
