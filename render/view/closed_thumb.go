package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// ThumbFrame is one card of a gallery: its size in design px, the scale in px a
// millimetre that all cards share, and the card's colour.
type ThumbFrame struct {
	Width, Height float64
	Scale         float64
	Ground        scene.Colour
}

// How a standing book recedes: its thickness up to the right.
const (
	thumbDeepX = 0.55
	thumbDeepY = 0.32
	thumbAir   = 10.0 // px round the largest book
)

// ThumbScale is the largest scale, px a millimetre, at which every book fits a
// card of so many px.
func ThumbScale(books []book.Book, width, height float64) float64 {
	scale := 2.0
	for _, b := range books {
		c := closedSizesOf(b)
		_, size := c.standingReach()
		scale = min(scale, max(width-2*thumbAir, 1)/size.X, max(height-2*thumbAir, 1)/size.Y)
	}
	return scale
}

// standing maps the closed book to a card: x across, y up, z away from the eye.
type standing struct {
	origin draft.P
	scale  float64
}

func (p standing) at(x, y, z float64) draft.P {
	return draft.P{X: p.origin.X + p.scale*(x+thumbDeepX*z), Y: p.origin.Y - p.scale*(y+thumbDeepY*z)}
}

// standingReach is the lower left corner and the size of what a standing book
// covers, a millimetre being one.
func (c closedSizes) standingReach() (from, size draft.P) {
	w := c.whole()
	return draft.P{X: w.x0, Y: w.y0},
		draft.P{X: w.x1 - w.x0 + thumbDeepX*w.z1, Y: w.y1 - w.y0 + thumbDeepY*w.z1}
}

func (p standing) plane() scene.Plane {
	return draft.Plane(p.origin, draft.P{X: p.scale}, draft.P{Y: -p.scale})
}

// Thumb draws the closed book standing, its front cover to the reader.
func Thumb(b book.Book, f ThumbFrame) *scene.Scene {
	s := draft.NewSheet(f.Width, f.Height, f.Ground)
	s.Scene().Tooth = false
	c, colours := closedSizesOf(b), draft.PaletteOf(b)
	from, size := c.standingReach()
	p := standing{scale: f.Scale, origin: draft.P{
		X: (f.Width-f.Scale*size.X)/2 - f.Scale*from.X,
		Y: (f.Height+f.Scale*size.Y)/2 + f.Scale*from.Y,
	}}
	about := s.About(book.PartBook, "")
	p.shadow(s, c)
	finish := standingFinish{s, p, c, colours}
	finish.behind()
	cloth, paper := finish.cloth(), slabLook{colours.Paper, colours.Paper.Times(blockRight), colours.Paper.Times(blockFront)}
	p.slab(about, box{x1: c.width, y1: c.height, z0: c.thickness - c.plate, z1: c.thickness}, cloth)
	p.slab(about, c.block, paper)
	p.leaves(about, c)
	p.slab(about, box{x1: c.spine, y1: c.height, z0: c.plate, z1: c.thickness}, cloth)
	p.slab(about, box{x1: c.width, y1: c.height, z1: c.plate}, cloth)
	front := []draft.P{p.at(0, 0, 0), p.at(c.width, 0, 0), p.at(c.width, c.height, 0), p.at(0, c.height, 0)}
	about.Face(front, colours.Covering, scene.Weave, p.plane(), grooveOf(c, f.Scale, colours.Covering))
	shoulder := c.spine + max(c.joint, 2/f.Scale)
	about.Line(draft.LightLine(colours.Covering), p.at(shoulder, 0, 0), p.at(shoulder, c.height, 0))
	about.Outline(draft.PartLine(colours.Covering), front...)
	finish.front()
	return s.Scene()
}

// shadow lies under the book's foot, on the card.
func (p standing) shadow(s *draft.Sheet, c closedSizes) {
	plane := p.plane()
	shade := scene.Shade{
		U0: 3, U1: c.width + thumbDeepX*c.thickness, V0: -1, V1: max(c.height-6, 0),
		Width: 4, Amount: 0.3, Tint: draft.Shade,
	}
	u, v := shade.Reach()
	s.Scene().Add(scene.Face{Bare: true, Plane: plane, Shades: []scene.Shade{shade}, Outline: scene.Path{
		plane.At(shade.U0-u, shade.V0-v), plane.At(shade.U1+u, shade.V0-v),
		plane.At(shade.U1+u, shade.V1+v), plane.At(shade.U0-u, shade.V1+v),
	}})
}

// slabLook is the colour of a block's outline, right and top.
type slabLook struct{ edge, right, top scene.Colour }

// leaves draws the leaves' edges at fore edge and head.
func (p standing) leaves(s *draft.Sheet, c closedSizes) {
	b := c.block
	step := (b.z1 - b.z0) / float64(c.leaves)
	for step*p.scale*thumbDeepX < closedLeafStep {
		step *= 2
	}
	var lines [][]draft.P
	for z := b.z0 + step; z < b.z1-step/2; z += step {
		lines = append(lines, []draft.P{p.at(b.x1, b.y0, z), p.at(b.x1, b.y1, z), p.at(b.x0, b.y1, z)})
	}
	s.Lines(draft.LeafLine(), lines...)
}

// slab draws what is seen of a block behind its front: its right and its top.
func (p standing) slab(s *draft.Sheet, b box, look slabLook) {
	right := []draft.P{p.at(b.x1, b.y0, b.z0), p.at(b.x1, b.y0, b.z1), p.at(b.x1, b.y1, b.z1), p.at(b.x1, b.y1, b.z0)}
	top := []draft.P{p.at(b.x0, b.y1, b.z0), p.at(b.x1, b.y1, b.z0), p.at(b.x1, b.y1, b.z1), p.at(b.x0, b.y1, b.z1)}
	s.Face([]draft.P{p.at(b.x0, b.y0, b.z0), p.at(b.x1, b.y0, b.z0), p.at(b.x1, b.y1, b.z0), p.at(b.x0, b.y1, b.z0)},
		look.right, scene.None, scene.Plane{})
	s.Face(right, look.right, scene.None, scene.Plane{})
	s.Face(top, look.top, scene.None, scene.Plane{})
	s.Lines(draft.PartLine(look.edge), closed(right), closed(top))
}
