package view

import (
	"math"
	"slices"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// closedDress is what the finished book wears besides one cloth, in mm; nought
// is none of it.
type closedDress struct {
	spineCloth              float64 // of a quarter covering, seen of it past the joint
	quarter                 bool
	ribbon, elastic         float64 // widths
	labelWidth, labelHeight float64
	bands                   int
	band                    float64 // a band's height
}

func dressOf(b book.Book) closedDress {
	r, f := b.Resolved, b.Resolved.Finishing
	d := closedDress{
		quarter: quartered(b), ribbon: max(f.RibbonWidth.MM(), 0), elastic: max(f.ElasticWidth.MM(), 0),
		bands: max(f.Bands, 0),
	}
	if d.quarter {
		d.spineCloth = max((min(r.Covering.Overlap, b.ToCut.BoardWidth) - r.Covering.SideLap).MM(), 0)
	}
	if f.LabelWidth > 0 && f.LabelHeight > 0 {
		d.labelWidth, d.labelHeight = f.LabelWidth.MM(), f.LabelHeight.MM()
	}
	if band, ok := b.Part(book.PartBand); ok {
		d.band = band.Height.MM()
	}
	return d
}

// Where the finishing sits.
const (
	elasticFromFore = 18.0 // mm from the fore edge
	elasticShare    = 0.2  // of the cover at most
	labelUp         = 0.66 // of the cover's height, its middle
	ribbonReach     = 20.0 // mm out at the tail
	ribbonAcross    = 0.55 // of the block's width
	ribbonNotch     = 0.6  // of its width
	bandRise        = 2.0  // mm out of the back as drawn
)

func (d closedDress) ribbonOut() float64 {
	if d.ribbon == 0 {
		return 0
	}
	return ribbonReach
}

func (d closedDress) bandsOut() float64 {
	if d.bands == 0 {
		return 0
	}
	return bandRise
}

// sideFrom is x of the side's inner edge on a closed book's cover, which leaves
// so much to see; all of its width where there is no side.
func (c closedSizes) sideFrom(least float64) float64 {
	if !c.dress.quarter {
		return c.width
	}
	return max(min(c.spine+c.joint+c.dress.spineCloth, c.width-least), 0)
}

// labelBox is the label on the front cover, no larger than the cover and at
// least so wide and high.
func (c closedSizes) labelBox(wide, high float64) (x0, x1, y0, y1 float64) {
	from := min(c.spine+c.joint, c.width)
	w, h := min(max(c.dress.labelWidth, wide), c.width-from), min(max(c.dress.labelHeight, high), c.height)
	x, y := (from+c.width)/2, labelUp*c.height
	y = min(max(y, h/2), c.height-h/2)
	return x - w/2, x + w/2, y - h/2, y + h/2
}

// elasticX are the elastic's edges on the cover, at least so wide.
func (c closedSizes) elasticX(least float64) (x0, x1 float64) {
	w := min(max(c.dress.elastic, least), c.width)
	x1 = c.width - min(elasticFromFore, elasticShare*c.width)
	return max(x1-w, 0), max(x1-w, 0) + w
}

// bandY are the edges of the bands up the back, evenly spread, each at least so
// high.
func (c closedSizes) bandY(least float64) [][2]float64 {
	var out [][2]float64
	half := max(c.dress.band, least) / 2
	for i := 1; i <= c.dress.bands; i++ {
		y := c.height * float64(i) / float64(c.dress.bands+1)
		out = append(out, [2]float64{y - half, y + half})
	}
	return out
}

// closedFinish draws what the lying closed book wears.
type closedFinish struct {
	sheet   *draft.Sheet
	o       oblique
	c       closedSizes
	colours draft.Palette
}

// least is the least size of a part at this scale, mm.
func (f closedFinish) least() float64 { return leastPart / f.o.scale }

// cover draws a board with what covers it: cloth, or spine cloth and side.
func (f closedFinish) cover(z0, z1 float64, shades ...scene.Shade) {
	c, side := f.c, f.c.sideFrom(f.least())
	if side > 0 {
		f.o.box(f.sheet, box{x1: side, y1: c.height, z0: z0, z1: z1}, boxLook{f.colours.Covering, scene.Weave, shades})
	}
	if side < c.width {
		s := f.sheet.About(book.PartSide, "")
		f.o.box(s, box{x0: side, x1: c.width, y1: c.height, z0: z0, z1: z1}, boxLook{f.colours.Side, scene.Weave, nil})
	}
}

// outlines are a finishing part's silhouettes, none of no such part.
func (f closedFinish) outlines(part book.PartID) [][]draft.P {
	switch dress := f.c.dress; {
	case part == book.PartRibbon && dress.ribbon > 0:
		return [][]draft.P{f.ribbonOutline()}
	case part == book.PartLabel && dress.labelWidth > 0:
		x0, x1, y0, y1 := f.c.labelBox(f.least(), f.least()/math.Hypot(depthX, depthY))
		return [][]draft.P{f.o.flat(x0, x1, y0, y1, f.c.thickness)}
	case part == book.PartElastic && dress.elastic > 0:
		x0, x1 := f.c.elasticX(f.least())
		front := []draft.P{f.o.at(x0, 0, 0), f.o.at(x1, 0, 0), f.o.at(x1, 0, f.c.thickness), f.o.at(x0, 0, f.c.thickness)}
		return [][]draft.P{front, f.o.flat(x0, x1, 0, f.c.height, f.c.thickness)}
	case part == book.PartBand:
		var all [][]draft.P
		for _, b := range f.bandBoxes() {
			all = append(all, f.o.outline(b))
		}
		return all
	}
	return nil
}

func (f closedFinish) bandBoxes() []box {
	var boxes []box
	for _, y := range f.c.bandY(f.least()) {
		boxes = append(boxes, box{x0: -max(bandRise, f.least()), y0: y[0], y1: y[1], z1: f.c.thickness})
	}
	slices.Reverse(boxes)
	return boxes
}

// bands are seen where they stand out of the back.
func (f closedFinish) bands() {
	for _, b := range f.bandBoxes() {
		f.o.box(f.sheet.About(book.PartBand, ""), b, boxLook{fill: f.colours.Covering})
	}
}

// ribbonOutline comes out of the leaves at the tail and lies before the book.
func (f closedFinish) ribbonOutline() []draft.P {
	b, half := f.c.block, max(f.c.dress.ribbon, f.least())/2
	x, z := b.x0+ribbonAcross*(b.x1-b.x0), (b.z0+b.z1)/2
	fall := [][2]float64{{b.y0, z}, {-3, 0.8 * z}, {-7, 0.15 * z}, {-10, 0}, {-ribbonReach, 0}} // y, z
	var left, right []draft.P
	for _, p := range fall {
		left = append(left, f.o.at(x-half, p[0], p[1]))
		right = append(right, f.o.at(x+half, p[0], p[1]))
	}
	slices.Reverse(right)
	return slices.Concat(left, []draft.P{f.o.at(x, -ribbonReach+ribbonNotch*2*half, 0)}, right)
}

func (f closedFinish) ribbon() {
	f.pieces(book.PartRibbon, f.colours.Ribbon, scene.None)
}

// over is what lies on the front cover: the label, and the elastic that runs
// from head to tail and round the edge.
func (f closedFinish) over() {
	f.pieces(book.PartLabel, f.colours.Label, scene.Tooth)
	f.pieces(book.PartElastic, f.colours.Elastic, scene.Weave)
}

// pieces fills a part's outlines; the last of them lies on the front cover.
func (f closedFinish) pieces(part book.PartID, fill scene.Colour, texture scene.Texture) {
	s := f.sheet.About(part, "")
	all := f.outlines(part)
	for i, outline := range all {
		if i < len(all)-1 {
			s.Face(outline, draft.Front(fill), scene.None, f.o.front(0))
		} else {
			s.Face(outline, fill, texture, f.o.level(f.c.thickness))
		}
		s.Outline(draft.PartLine(fill), outline...)
	}
}
