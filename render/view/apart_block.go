package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

// apartBlock is what holds the sections together and to the boards, one kind a
// structure: the layer between the boards and the sections.
type apartBlock interface {
	layer() apartBase
	same(then apartBlock) bool // drawn alike
	join()                     // ties it to the boards
	draw()
	parts() []book.PartID                           // that it draws, a chosen one to be outlined
	silhouettes(part book.PartID) [][]draft.P       // of a part of it as drawn, none of no part
	anchor(part book.PartID) (from anchor, ok bool) // for a label's leader
	labels() []apartLabel                           // from the top down
	notes() []string                                // what of it is not drawn true
}

// blockOf is how this book's structure is drawn.
func (a *apart) blockOf() apartBlock {
	if linked(a.in.Book) {
		return linkedBlock{a, a.linkedSizes()}
	}
	return pleated{a, a.size.halfOpen()}
}

// apartBase is what the layout needs to know of that layer, in mm: it lies
// evenly about x = 0, with the sections standing over its middle.
type apartBase struct {
	half         float64 // half its width
	tail, height float64 // y of its tail edge, and how far it reaches to the head
	ridge        float64 // how far it stands up under the sections
	wing         float64 // how far it stands up beside them
	pitch        float64 // from section to section
	seat         float64 // from where one section belongs on it to the next
	gap          float64 // up to the sections, px
}

func (a *apart) baseY0() float64 { return a.base.tail }
func (a *apart) baseY1() float64 { return a.base.tail + a.base.height }

// sectionX is the middle of a section.
func (a *apart) sectionX(i int) float64 {
	return (float64(i) - float64(a.size.sections-1)/2) * a.base.pitch
}

// outerX is the middle of the last section.
func (b apartBase) outerX(sections int) float64 { return float64(sections-1) / 2 * b.pitch }
