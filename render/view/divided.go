package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Divided draws a sheet of a book's paper as a division cuts it: the folios with
// their folds, what is lost, and the grain. The frame's scale is not used: the
// sheet fills the frame.
func Divided(b book.Book, d book.Division, f ThumbFrame) *scene.Scene {
	s := draft.NewSheet(f.Width, f.Height, f.Ground)
	s.Scene().Tooth = false
	v := dividedOf(b, d, f)
	paper := draft.PaletteOf(b).Paper
	about := s.About(book.PartFolio, "")
	about.Face(v.whole.corners(), paper.Towards(draft.Ink3, 0.35), scene.None, scene.Plane{})
	about.Outline(draft.WasteLine(), v.whole.corners()...)
	for _, folio := range v.folios {
		v.drawFolio(about, folio, paper)
	}
	v.drawGrain(s, b.Resolved.PaperSheet().Grain)
	return s.Scene()
}

// pxBox is an upright box of the card, px.
type pxBox struct{ x0, y0, x1, y1 float64 }

func (b pxBox) corners() []draft.P {
	return []draft.P{{X: b.x0, Y: b.y0}, {X: b.x1, Y: b.y0}, {X: b.x1, Y: b.y1}, {X: b.x0, Y: b.y1}}
}

// dividedSheet is the sheet lying on the card, its length upright.
type dividedSheet struct {
	whole  pxBox
	folios []pxBox
	level  bool // the folds run across the card
}

const dividedAir = 6.0 // px round the sheet

func dividedOf(b book.Book, d book.Division, f ThumbFrame) dividedSheet {
	sheet := b.Resolved.PaperSheet()
	long, wide := max(sheet.Length.MM(), 1), max(sheet.Width.MM(), 1)
	scale := min((f.Width-2*dividedAir)/wide, (f.Height-2*dividedAir)/long)
	x0, y0 := (f.Width-scale*wide)/2, (f.Height-scale*long)/2
	v := dividedSheet{whole: pxBox{x0, y0, x0 + scale*wide, y0 + scale*long}, level: d.Cut.Lying}
	along, across := folioOnSheet(b, d)
	left, top := x0+scale*sheet.Lost.Left.MM(), y0+scale*sheet.Lost.Top.MM()
	for row := range d.Cut.Along {
		for column := range d.Cut.Across {
			x, y := left+scale*across*float64(column), top+scale*along*float64(row)
			v.folios = append(v.folios, pxBox{x, y, x + scale*across, y + scale*along})
		}
	}
	return v
}

// folioOnSheet is a division's folio in millimetres along the sheet's length
// and across it.
func folioOnSheet(b book.Book, d book.Division) (along, across float64) {
	page := b.Resolved.Page
	height := (d.Height + page.TrimHead + page.TrimTail).MM()
	width := 2 * (d.Width + page.TrimFore).MM()
	if d.Cut.Lying {
		return width, height
	}
	return height, width
}

func (v dividedSheet) drawFolio(s *draft.Sheet, f pxBox, paper scene.Colour) {
	s.Face(f.corners(), paper, scene.None, scene.Plane{})
	s.Outline(draft.FlatLine(paper), f.corners()...)
	x, y := (f.x0+f.x1)/2, (f.y0+f.y1)/2
	if v.level {
		s.Line(draft.FoldLine(draft.Ink2), draft.P{X: f.x0, Y: y}, draft.P{X: f.x1, Y: y})
		return
	}
	s.Line(draft.FoldLine(draft.Ink2), draft.P{X: x, Y: f.y0}, draft.P{X: x, Y: f.y1})
}

// drawGrain puts the arrow beside the middle of the sheet, off the folds.
func (v dividedSheet) drawGrain(s *draft.Sheet, grain stock.Grain) {
	if grain != stock.Long && grain != stock.Short {
		return
	}
	first := v.folios[0]
	x, y := first.x0+(first.x1-first.x0)/4, first.y0+(first.y1-first.y0)/4
	reach := 0.3 * math.Min(first.x1-first.x0, first.y1-first.y0)
	if grain == stock.Long {
		y = (first.y0 + first.y1) / 2
		s.GrainArrow(draft.P{X: x, Y: y - reach}, draft.P{X: x, Y: y + reach}, draft.Ink)
		return
	}
	x = (first.x0 + first.x1) / 2
	s.GrainArrow(draft.P{X: x - reach, Y: y}, draft.P{X: x + reach, Y: y}, draft.Ink)
}
