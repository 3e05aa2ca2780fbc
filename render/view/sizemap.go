package view

import (
	"fmt"
	"math"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// SizeMap draws what a sheet of paper gives over a range of page sizes: width to
// the right, height upwards, the darker the more of the sheet ends up in folios,
// a line where the number of folios a sheet steps, today's page marked.
func SizeMap(in Input) *scene.Scene {
	s := in.sheet(draft.GroundFlat)
	if in.Sizes == nil || len(in.Sizes.Widths) < 2 || len(in.Sizes.Heights) < 2 {
		s.Text(draft.P{X: s.Width / 2, Y: s.Height / 2}, words.Say("sizemap.none"), draft.Word().At(13), scene.Middle, 0)
		return s.Scene()
	}
	d := mapDrawing{in: in, sheet: s, sizes: *in.Sizes, field: mapField(s.Width, s.Height)}
	d.least, d.most = d.shares()
	d.cells()
	d.nothing()
	d.steps()
	d.axes()
	d.today()
	d.figures()
	d.titles()
	d.key()
	return s.Scene()
}

// mapDrawing is one map on its page.
type mapDrawing struct {
	in    Input
	sheet *draft.Sheet
	sizes sheets.SizeMap
	field pxBox
	least float64 // share of the sheet that the palest tone stands for
	most  float64 // and the darkest
}

// shares are the least and the most of a sheet that any size of the map uses.
func (d mapDrawing) shares() (least, most float64) {
	least = 1
	for row, folios := range d.sizes.Folios {
		for column, n := range folios {
			if n > 0 {
				least, most = min(least, d.sizes.Share[row][column]), max(most, d.sizes.Share[row][column])
			}
		}
	}
	return min(least, most), most
}

// mapField is where the map lies on a page.
func mapField(width, height float64) pxBox { return pxBox{74, 56, width - 30, height - 46} }

// SizeAt is the page size at a place of a map's page, px; false beside the map.
func SizeAt(in Input, x, y float64) (width, height measure.Length, ok bool) {
	if in.Sizes == nil || len(in.Sizes.Widths) < 2 || len(in.Sizes.Heights) < 2 {
		return 0, 0, false
	}
	f, m := mapField(max(in.Width, leastWidth), max(in.Height, leastHeight)), in.Sizes
	if x < f.x0 || x > f.x1 || y < f.y0 || y > f.y1 {
		return 0, 0, false
	}
	return sizeAlong(m.Widths, (x-f.x0)/(f.x1-f.x0)), sizeAlong(m.Heights, (f.y1-y)/(f.y1-f.y0)), true
}

// sizeAlong is a length at a share of a range.
func sizeAlong(over []measure.Length, share float64) measure.Length {
	low, high := over[0], over[len(over)-1]
	return low + measure.MM(share*(high-low).MM())
}

// x and y are the places of a width and a height.
func (d mapDrawing) x(width measure.Length) float64 {
	return d.field.x0 + (d.field.x1-d.field.x0)*shareAlong(d.sizes.Widths, width)
}

func (d mapDrawing) y(height measure.Length) float64 {
	return d.field.y1 - (d.field.y1-d.field.y0)*shareAlong(d.sizes.Heights, height)
}

func shareAlong(over []measure.Length, l measure.Length) float64 {
	return (l - over[0]).MM() / (over[len(over)-1] - over[0]).MM()
}

// box is the cell round a size of the map.
func (d mapDrawing) box(row, column int) pxBox {
	edge := func(over []measure.Length, i int) measure.Length {
		switch {
		case i <= 0:
			return over[0]
		case i >= len(over):
			return over[len(over)-1]
		}
		return (over[i-1] + over[i]) / 2
	}
	w, h := d.sizes.Widths, d.sizes.Heights
	return pxBox{d.x(edge(w, column)), d.y(edge(h, row+1)), d.x(edge(w, column+1)), d.y(edge(h, row))}
}

// cells tones each size by the share of the sheet that is used; runs of one tone
// in a row are one face.
func (d mapDrawing) cells() {
	for row := range d.sizes.Heights {
		for from := 0; from < len(d.sizes.Widths); {
			to := from
			for to+1 < len(d.sizes.Widths) && d.tone(row, to+1) == d.tone(row, from) {
				to++
			}
			a, b := d.box(row, from), d.box(row, to)
			d.sheet.Face(pxBox{a.x0, max(a.y0-mapOverlap, d.field.y0), min(b.x1+mapOverlap, d.field.x1), b.y1}.corners(), d.tone(row, from), scene.None, scene.Plane{})
			from = to + 1
		}
	}
}

// mapOverlap hides the seam between two cells, px.
const mapOverlap = 0.6

// mapTones is how many tones there are: enough that no edge shows between two.
const mapTones = 24

// tone is paper where the least of a sheet is used, board where the most is; bare
// ground where a sheet gives no page at all, or none was reckoned.
func (d mapDrawing) tone(row, column int) scene.Colour {
	if d.sizes.Folios[row][column] <= 0 {
		return draft.Ground
	}
	return d.shareTone(d.sizes.Share[row][column])
}

func (d mapDrawing) shareTone(share float64) scene.Colour {
	step := float64(int((share-d.least)/max(d.most-d.least, 1e-9)*mapTones)) / mapTones
	return draft.Paper.Towards(draft.GreyBoard, step)
}

// nothing hatches the sizes of which a sheet gives no page.
func (d mapDrawing) nothing() {
	for row, folios := range d.sizes.Folios {
		for from := 0; from < len(folios); {
			to := from
			for to < len(folios) && folios[to] == 0 {
				to++
			}
			if to > from {
				a, b := d.box(row, from), d.box(row, to-1)
				d.sheet.Hatch(pxBox{a.x0, a.y0, b.x1, b.y1}.corners(), 4.5)
			}
			from = max(to, from+1)
		}
	}
}

// key shows the tones with the shares of a sheet that they stand for, at the
// right above the map.
func (d mapDrawing) key() {
	const wide, high, parts = 96.0, 8.0, 24
	least, most := percent(d.least), percent(d.most)
	t := draft.Small()
	right := d.field.x1 - t.Width(most) - 5
	left := right - wide
	at := draft.P{X: left - 5 - t.Width(least), Y: 43}
	if !d.sheet.Free(draft.Box{X0: at.X - 10, Y0: at.Y - 14, X1: d.field.x1, Y1: at.Y + 4}) {
		return
	}
	for i := range parts {
		x0, x1 := left+wide*float64(i)/parts, left+wide*float64(i+1)/parts
		share := d.least + (d.most-d.least)*float64(i)/(parts-1)
		d.sheet.Face(pxBox{x0, at.Y - high, min(x1+0.3, right), at.Y}.corners(), d.shareTone(share), scene.None, scene.Plane{})
	}
	d.sheet.Outline(draft.ExtensionLine(), pxBox{left, at.Y - high, right, at.Y}.corners()...)
	d.sheet.Text(at, least, t, scene.Start, 0)
	d.sheet.Text(draft.P{X: right + 5, Y: at.Y}, most, t, scene.Start, 0)
}

func percent(share float64) string {
	return words.Say("sizemap.percent", words.With{"percent": fmt.Sprintf("%.0f", 100*share)})
}

// steps draws a line wherever the number of folios changes.
func (d mapDrawing) steps() {
	var lines [][]draft.P
	n := d.sizes.Folios
	for row := range n {
		for column := range n[row] {
			b := d.box(row, column)
			if column+1 < len(n[row]) && n[row][column+1] != n[row][column] {
				lines = append(lines, []draft.P{{X: b.x1, Y: b.y0}, {X: b.x1, Y: b.y1}})
			}
			if row+1 < len(n) && n[row+1][column] != n[row][column] {
				lines = append(lines, []draft.P{{X: b.x0, Y: b.y0}, {X: b.x1, Y: b.y0}})
			}
		}
	}
	if len(lines) > 0 {
		d.sheet.Lines(draft.ExtensionLine(), lines...)
	}
	d.sheet.Outline(draft.FlatLine(draft.Paper), d.field.corners()...)
}

// axes has a figure at every round size.
func (d mapDrawing) axes() {
	for _, l := range d.ticks(d.sizes.Widths) {
		x := d.x(l)
		d.sheet.Line(draft.DimensionLine(), draft.P{X: x, Y: d.field.y1}, draft.P{X: x, Y: d.field.y1 + 5})
		d.sheet.Try(draft.P{X: x, Y: d.field.y1 + 18}, d.in.size(l), draft.Small(), scene.Middle, 0)
	}
	for _, l := range d.ticks(d.sizes.Heights) {
		y := d.y(l)
		d.sheet.Line(draft.DimensionLine(), draft.P{X: d.field.x0 - 5, Y: y}, draft.P{X: d.field.x0, Y: y})
		d.sheet.Try(draft.P{X: d.field.x0 - 8, Y: y + 4}, d.in.size(l), draft.Small(), scene.End, 0)
	}
}

// ticks are the round sizes of a range.
func (d mapDrawing) ticks(over []measure.Length) []measure.Length {
	step := 50 * measure.Millimetre
	if d.in.System == measure.Imperial {
		step = 2 * measure.Inch
	}
	var ticks []measure.Length
	for l := over[0].RoundUp(step); l <= over[len(over)-1]; l += step {
		ticks = append(ticks, l)
	}
	return ticks
}

// today marks the page as it is, with lines to both axes.
func (d mapDrawing) today() {
	x, y := d.x(d.sizes.Width), d.y(d.sizes.Height)
	f := d.field
	if x < f.x0 || x > f.x1 || y < f.y0 || y > f.y1 {
		return
	}
	d.sheet.Line(draft.FoldLine(draft.Ink), draft.P{X: f.x0, Y: y}, draft.P{X: x, Y: y})
	d.sheet.Line(draft.FoldLine(draft.Ink), draft.P{X: x, Y: y}, draft.P{X: x, Y: f.y1})
	d.sheet.Anchor(draft.P{X: x, Y: y})
	d.sheet.Keep(draft.Box{X0: f.x0, Y0: y - 1, X1: x, Y1: y + 1})
	d.sheet.Keep(draft.Box{X0: x - 1, Y0: y, X1: x + 1, Y1: f.y1})
	d.sheet.Keep(draft.Box{X0: x - 6, Y0: y - 6, X1: x + 6, Y1: y + 6})
	for _, text := range []string{d.saidOf(d.sizes.Width, d.sizes.Height), d.in.by(d.sizes.Width, d.sizes.Height)} {
		if d.beside(draft.P{X: x, Y: y}, text) {
			return
		}
	}
}

// saidOf is a size with what a sheet gives of it.
func (d mapDrawing) saidOf(width, height measure.Length) string {
	folios, share := sheets.At(d.in.Book, width, height)
	return words.Say("sizemap.today", words.With{
		"size": d.in.by(width, height), "folios": folios, "percent": fmt.Sprintf("%.0f", 100*share),
	})
}

// beside sets a text at a place of the map on a plate of the ground, where it
// stays on the map.
func (d mapDrawing) beside(at draft.P, text string) bool {
	t, f := draft.SizeLine().In(draft.Ink), d.field
	for _, try := range []struct {
		x, y  float64
		align scene.Align
	}{{11, -8, scene.Start}, {11, 19, scene.Start}, {-11, -8, scene.End}, {-11, 19, scene.End}} {
		place := draft.P{X: at.X + try.x, Y: at.Y + try.y}
		plate := draft.BoxOf(place, text, t, try.align, 0).Grown(3)
		if plate.Inside(draft.Box{X0: f.x0, Y0: f.y0, X1: f.x1, Y1: f.y1}) && d.sheet.Free(plate) {
			d.sheet.Veil(corners(plate), draft.Paper, 0.82)
			return d.sheet.Try(place, text, t, try.align, 0)
		}
	}
	return false
}

// figures says in the upper right corner of each region how many folios a sheet
// gives there, where it has room; along a slanting edge now and then.
func (d mapDrawing) figures() {
	n := d.sizes.Folios
	said := map[int][]draft.P{}
	for row := range n {
		for column, count := range n[row] {
			last, top := column+1 == len(n[row]), row+1 == len(n)
			if count <= 0 || !last && n[row][column+1] == count || !top && n[row+1][column] == count {
				continue
			}
			b, text := d.box(row, column), fmt.Sprint(count)
			at := draft.P{X: b.x1 - 6, Y: b.y0 + 15}
			near := slices.ContainsFunc(said[count], func(p draft.P) bool { return math.Hypot(p.X-at.X, p.Y-at.Y) < figuresApart })
			if !near && d.inRegion(draft.BoxOf(at, text, draft.SizeLine(), scene.End, 0).Grown(1), count) &&
				d.sheet.Try(at, text, draft.SizeLine().In(draft.Ink), scene.End, 0) {
				said[count] = append(said[count], at)
			}
		}
	}
}

// figuresApart is how far the same figure stands from itself, px.
const figuresApart = 70

// inRegion says whether a box lies where a sheet gives just so many.
func (d mapDrawing) inRegion(b draft.Box, count int) bool {
	for _, at := range [][2]float64{{b.X0, b.Y0}, {b.X1, b.Y0}, {b.X0, b.Y1}, {b.X1, b.Y1}} {
		width, height, ok := SizeAt(d.in, at[0], at[1])
		if !ok || d.sizes.Folios[nearest(d.sizes.Heights, height)][nearest(d.sizes.Widths, width)] != count {
			return false
		}
	}
	return true
}

func nearest(over []measure.Length, l measure.Length) int {
	at := int(shareAlong(over, l)*float64(len(over)-1) + 0.5)
	return min(max(at, 0), len(over)-1)
}

func (d mapDrawing) titles() {
	d.sheet.Try(draft.P{X: d.field.x0, Y: 24}, words.Say("view.sizes"), draft.Name(), scene.Start, 0)
	d.sheet.Try(draft.P{X: d.field.x0, Y: 43}, words.Say("sizemap.subtitle", words.With{"paper": d.in.Book.Resolved.Stock.Paper.Name}), draft.Word(), scene.Start, 0)
	d.sheet.Try(draft.P{X: (d.field.x0 + d.field.x1) / 2, Y: d.field.y1 + 36}, words.Say("sizemap.width", words.With{"unit": d.in.System.Label()}), draft.Word(), scene.Middle, 0)
	d.sheet.Try(draft.P{X: 20, Y: (d.field.y0 + d.field.y1) / 2}, words.Say("sizemap.height", words.With{"unit": d.in.System.Label()}), draft.Word(), scene.Middle, 1)
}
