package draft

import (
	"strconv"
	"strings"

	"grainwise/model/book"
	"grainwise/model/stock"
	"grainwise/render/scene"
)

// Sheet grounds, inks, and the two colours that mean something.
const (
	Ground     scene.Colour = 0xF2EDE2
	GroundFlat scene.Colour = 0xF6F3EC // working drawings
	GroundDark scene.Colour = 0xE8E2D5 // in dark surroundings
	Ink        scene.Colour = 0x2E2A25 // text, names
	Ink2       scene.Colour = 0x655E54 // dimensions, sizes
	Ink3       scene.Colour = 0xA59C8D // waste, cut-away
	Accent     scene.Colour = 0x2459B5 // only what changes now
	Stop       scene.Colour = 0xA5301C // only what stops the maker
	Shade      scene.Colour = 0x3A2E1E // every shadow
)

// Materials whose colour is not the maker's choice, or not known.
const (
	Paper     scene.Colour = 0xFFFDF7
	Liner     scene.Colour = 0xEFE7D6
	GreyBoard scene.Colour = 0xBCB7AD
	Card      scene.Colour = 0xD8CDB6
	Interleaf scene.Colour = 0xC9D9DE
	Cloth     scene.Colour = 0x24443A
	Mull      scene.Colour = 0xE6E0CF
	Tape      scene.Colour = 0xF1EADB
	Thread    scene.Colour = 0xC8B48A
	Ribbon    scene.Colour = 0x5E7A63
	Elastic   scene.Colour = 0x2F3A3B
)

// The table that a finished book is shown on, and what lies on it for scale.
const (
	Table  scene.Colour = 0xDDD3C2
	Ruler  scene.Colour = 0xD9B985
	Pencil scene.Colour = 0x3C4A57
	Wood   scene.Colour = 0xE6CDA2 // of the pencil's point
)

// Targets of the derived colours.
const (
	reverseTarget   scene.Colour = 0xC9D2C2
	flatClothTarget scene.Colour = 0xEEF0E6
)

// Palette is the colours of one book's materials, as the shelf has them.
type Palette struct {
	Paper, Interleaf, Liner, Board, Spine, Covering scene.Colour
	Endpaper, Mull, Tape, Side, Ribbon, Elastic     scene.Colour
	Label                                           scene.Colour // as the pasted leaves
}

// PaletteOf reads the shelf's colours; a material without one takes the usual
// colour of its kind.
func PaletteOf(b book.Book) Palette {
	m := b.Resolved.Stock
	p := Palette{
		Paper:     named(m.Paper.Colour, Paper),
		Interleaf: named(m.Interleaf.Colour, Interleaf),
		Liner:     named(m.Liner.Colour, Liner),
		Board:     named(m.Board.Colour, GreyBoard),
		Spine:     named(m.Card.Colour, Card),
		Covering:  named(m.Covering.Colour, Cloth),
		Endpaper:  named(m.Endpaper.Colour, Liner),
		Mull:      named(m.Mull.Colour, Mull),
		Tape:      named(m.Tape.Colour, Tape),
		Side:      named(m.Side.Colour, Cloth),
		Ribbon:    named(m.Ribbon.Colour, Ribbon),
		Elastic:   named(m.Elastic.Colour, Elastic),
	}
	p.Label = p.Liner
	if b.Resolved.Structure == book.LinkStitched {
		p.Label = p.Endpaper
	}
	if b.Resolved.Spine.Kind == book.SpineBoard {
		p.Spine = p.Board
	}
	return p
}

// MaterialColour is a material's colour as the shelf has it, or the usual one of
// its kind.
func MaterialColour(m stock.Material) scene.Colour {
	usual := map[stock.Kind]scene.Colour{
		stock.Paper: Paper, stock.Interleaf: Interleaf, stock.Liner: Liner, stock.Board: GreyBoard, stock.Card: Card,
		stock.Covering: Cloth, stock.Mull: Mull, stock.Tape: Tape, stock.Ribbon: Ribbon, stock.Elastic: Elastic,
	}
	return named(m.Colour, usual[m.Kind])
}

// WeaveOf is the texture of a cloth as the shelf describes it.
func WeaveOf(m stock.Material) scene.Texture {
	switch m.Weave {
	case stock.Canvas:
		return scene.Canvas
	case stock.Twill:
		return scene.Twill
	case stock.Fine:
		return scene.Fine
	}
	return scene.Weave
}

// named reads "#RRGGBB".
func named(hex string, otherwise scene.Colour) scene.Colour {
	n, err := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 24)
	if err != nil || len(strings.TrimPrefix(hex, "#")) != 6 {
		return otherwise
	}
	return scene.Colour(n)
}

// Reverse is the uncoated back of a cloth.
func Reverse(cloth scene.Colour) scene.Colour { return cloth.Towards(reverseTarget, 0.42) }

// FlatCloth is a cloth's back as a working drawing tints it.
func FlatCloth(cloth scene.Colour) scene.Colour { return cloth.Towards(flatClothTarget, 0.62) }

// FlatBoard is a board as a working drawing tints it.
func FlatBoard(board scene.Colour) scene.Colour { return board.Towards(Paper, 0.62) }

// Edge is the outline of a material, 0.42 (dark cloth) to 0.58 (paper) of it.
func Edge(c scene.Colour) scene.Colour { return c.Times(0.42 + 0.16*c.Luminance()) }

// Front is a face turned to the reader, Right one turned away to the right.
func Front(c scene.Colour) scene.Colour { return c.Times(0.80) }

// Right is a face turned to the right.
func Right(c scene.Colour) scene.Colour { return c.Times(0.70) }

// MarksOn is the colour of lines and words on a material.
func MarksOn(c scene.Colour) scene.Colour {
	if c.Luminance() < 0.52 {
		return Paper
	}
	return Ink
}
