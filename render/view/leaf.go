package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// pastedLeaf is what goes on each board's inside: the liner's end, or one leaf
// of an endpaper.
type pastedLeaf struct {
	part          book.PartID
	width, height book.Length
	thickness     book.Length
}

func leafOf(b book.Book) pastedLeaf {
	if linked(b) {
		e := b.Endpaper
		return pastedLeaf{book.PartEndpaper, e.LeafWidth, e.LeafHeight, b.Resolved.Stock.Endpaper.Thickness}
	}
	return pastedLeaf{book.PartLiner, b.Liner.PastedWidth, b.Liner.Height, b.Resolved.Stock.Liner.Thickness}
}

// colour of the leaf's paper.
func (l pastedLeaf) colour(p draft.Palette) scene.Colour {
	if l.part == book.PartEndpaper {
		return p.Endpaper
	}
	return p.Liner
}

// linked tells whether the sections are sewn to one another.
func linked(b book.Book) bool { return b.Resolved.Structure == book.LinkStitched }
