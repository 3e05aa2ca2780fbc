package view

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Cutting draws how sheets and rolls are cut: every layout to scale, with its
// lost strips, its pieces, its cuts numbered in the order of the bench with
// their stop distances, and what is left over.
func Cutting(in Input) *scene.Scene {
	s := in.sheet(draft.GroundFlat)
	d := cuttingDrawing{in: in, sheet: s, foot: s.Height - cuttingEdge}
	if in.Title {
		d.strip()
	}
	if len(in.Cuttings) == 0 {
		s.Text(draft.P{X: s.Width / 2, Y: s.Height / 2}, words.Say("cutting.none"), draft.Word().At(13), scene.Middle, 0)
		return s.Scene()
	}
	d.flow()
	for _, b := range d.blocks {
		d.drawBlock(b)
	}
	if d.left > 0 {
		s.Try(draft.P{X: cuttingEdge, Y: d.foot - 4}, words.Say("cutting.notDrawn", words.With{"count": d.left}), draft.Word(), scene.Start, 0)
	}
	return s.Scene()
}

// cuttingDrawing is one drawing of layouts that flow over the sheet in rows.
type cuttingDrawing struct {
	in     Input
	sheet  *draft.Sheet
	foot   float64 // px; nothing is drawn below
	blocks []cuttingBlock
	left   int // layouts that there was no room for
}

// cuttingBlock is one layout with its material's heading; a material without a
// plan has its heading alone.
type cuttingBlock struct {
	cutting *sheets.Cutting
	layout  int // −1 for none
	x, y    float64
	scale   float64
}

// Room round the layouts, px: for the numbers at the left and above, the grain
// arrow at the right, and the headings.
const (
	cuttingEdge  = 22.0
	cuttingLeft  = 64.0
	cuttingRight = 40.0
	cuttingAbove = 24.0
	cuttingBelow = 18.0
	headingLine  = 17.0
	leastScale   = 0.02 // px a millimetre
	mostScale    = 1.6
)

// flow finds the largest scale at which all layouts have room, and places them.
func (d *cuttingDrawing) flow() {
	low, high := leastScale, mostScale
	for range 24 {
		if mid := (low + high) / 2; d.place(mid) {
			low = mid
		} else {
			high = mid
		}
	}
	d.place(low)
}

// place lets the layouts flow at a scale; false where they do not all have room.
func (d *cuttingDrawing) place(scale float64) bool {
	d.blocks, d.left = nil, 0
	x, y, tallest := cuttingEdge, cuttingEdge-10, 0.0
	right, fits := d.sheet.Width-cuttingEdge, true
	for _, b := range d.all(scale) {
		width, height := d.room(b)
		if x > cuttingEdge && x+width > right {
			x, y, tallest = cuttingEdge, y+tallest, 0
		}
		if x+width > right || y+height > d.foot {
			fits = false
			d.left++
			continue
		}
		b.x, b.y = x, y
		d.blocks = append(d.blocks, b)
		x, tallest = x+width, max(tallest, height)
	}
	return fits
}

// all are the layouts of every material, or the heading of one that has none.
func (d *cuttingDrawing) all(scale float64) []cuttingBlock {
	var all []cuttingBlock
	for i := range d.in.Cuttings {
		c := &d.in.Cuttings[i]
		if len(c.Plan.Layouts) == 0 {
			all = append(all, cuttingBlock{cutting: c, layout: -1, scale: scale})
		}
		for l := range c.Plan.Layouts {
			all = append(all, cuttingBlock{cutting: c, layout: l, scale: scale})
		}
	}
	return all
}

// room is what a block takes of the page.
func (d *cuttingDrawing) room(b cuttingBlock) (width, height float64) {
	if b.layout <= 0 {
		for i, line := range d.in.headingOf(*b.cutting) {
			width = max(width, headingType(i).Width(line)+cuttingEdge)
		}
	}
	height = d.headingRoom() + cuttingAbove
	if b.layout < 0 {
		return width, height
	}
	root := b.cutting.Plan.Layouts[b.layout].Root
	across := cuttingLeft + b.scale*mmOf(root.Width) + cuttingRight
	title := draft.Name().Width(layoutTitle(b)) + 10 + draft.SizeLine().Width(d.in.by(sheets.Length(root.Width), sheets.Length(root.Height)))
	return max(width, across, cuttingLeft+title+cuttingEdge), height + b.scale*mmOf(root.Height) + cuttingBelow
}

// headingRoom is the height of the tallest heading, and of a layout's own title.
func (d *cuttingDrawing) headingRoom() float64 {
	most := 0
	for _, c := range d.in.Cuttings {
		most = max(most, len(d.in.headingOf(c)))
	}
	return 8 + headingLine*float64(most+1)
}

func mmOf(n int64) float64 { return sheets.Length(n).MM() }

// strip is the title strip along the foot.
func (d *cuttingDrawing) strip() {
	compact := d.sheet.Height < 560
	y := d.sheet.Height - draft.StripHeight(compact)
	d.foot = y - 8
	work := cutting.Work{}
	for _, c := range d.in.Cuttings {
		work.Settings += c.Work.Settings
		work.Cuts += c.Work.Cuts
		work.Strokes += c.Work.Strokes
	}
	d.sheet.Strip(draft.Strip{
		Title: words.Say("view.cutting"), Subtitle: words.Say("cutting.subtitle"), Compact: compact,
		Fields: []draft.Field{
			{Word: words.Say("strip.book"), Value: d.in.bookLine()},
			{Word: words.Say("cutting.copies"), Value: fmt.Sprint(d.in.Book.Resolved.Copies)},
			{Word: words.Say("cutting.settings"), Value: fmt.Sprint(work.Settings)},
			{Word: words.Say("cutting.cuts"), Value: fmt.Sprint(work.Cuts)},
			{Word: words.Say("cutting.strokes"), Value: fmt.Sprint(work.Strokes)},
		},
	}, cuttingEdge, d.sheet.Width-cuttingEdge, y)
}
