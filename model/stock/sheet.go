package stock

import (
	"math"

	"grainwise/model/measure"
)

// Size is the extent of a sheet: Length and Width, normally its long and its
// short side.
type Size struct {
	Length measure.Length `json:"length"`
	Width  measure.Length `json:"width"`
}

// Edges are strips that are lost at a sheet's edges: deckle, maker's mark,
// bruise. The sheet lies with its length upright, so Top and Bottom are lost
// along the length, Left and Right along the width.
type Edges struct {
	Left   measure.Length `json:"left"`
	Right  measure.Length `json:"right"`
	Top    measure.Length `json:"top"`
	Bottom measure.Length `json:"bottom"`
}

// AllEdges loses the same strip on all four edges.
func AllEdges(l measure.Length) Edges { return Edges{l, l, l, l} }

// Sheet is a parent sheet as it is cut: its size, what is lost of it, its grain.
type Sheet struct {
	Size
	Lost  Edges
	Grain Grain
}

// Usable is the size that is left between the lost strips, in the sheet's own
// directions; nothing where they meet.
func (s Sheet) Usable() Size {
	return Size{
		Length: left(s.Length, s.Lost.Top, s.Lost.Bottom),
		Width:  left(s.Width, s.Lost.Left, s.Lost.Right),
	}
}

// left takes two strips from a side. Nothing below nought is taken or returned,
// and no sum can overflow.
func left(side, a, b measure.Length) measure.Length {
	side = max(side, 0)
	for _, strip := range []measure.Length{a, b} {
		side = max(side-max(strip, 0), 0)
	}
	return side
}

// Yield is how many pieces a sheet gives, cut edge to edge in one grid.
type Yield struct {
	Along  int // pieces in a row along the sheet's length
	Across int // rows across its width
	Total  int
	Lying  bool // the pieces' height runs across the sheet's length
}

// Yield returns how many pieces of height × width the sheet gives when the
// grain is to run along their height, or, turned, across it. A sheet whose grain
// is untested counts as long; one without grain takes the better way.
func (s Sheet) Yield(height, width measure.Length, turned bool) Yield {
	upright, lying := s.grid(height, width), s.grid(width, height)
	lying.Lying = true
	switch {
	case s.Grain == None && lying.Total > upright.Total:
		return lying
	case s.Grain == None:
		return upright
	case (s.Grain == Short) != turned:
		return lying
	}
	return upright
}

// grid places pieces with one side along the sheet's length.
func (s Sheet) grid(along, across measure.Length) Yield {
	usable := s.Usable()
	y := Yield{Along: fit(usable.Length, along), Across: fit(usable.Width, across)}
	if y.Along == 0 || y.Across == 0 {
		return Yield{}
	}
	y.Total = math.MaxInt
	if y.Along <= math.MaxInt/y.Across {
		y.Total = y.Along * y.Across
	}
	return y
}

// fit is how many pieces lie side by side in a room.
func fit(room, piece measure.Length) int {
	if piece <= 0 {
		return 0
	}
	return int(room / piece)
}
