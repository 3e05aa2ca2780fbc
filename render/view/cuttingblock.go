package view

import (
	"slices"

	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
)

// cuttingBlock is a sheet that is cut, or the rows of a roll, with its heading
// if it is the first of its material. A material without a plan has its heading
// alone.
type cuttingBlock struct {
	cutting *sheets.Cutting
	layouts []int // of a roll from its end up
	first   bool
	labels  []kindLabel // by kind of piece
	kinds   []kindOf    // that lie on it
	titled  float64     // width of its title, px

	// What follows from the scale.
	heading       []string
	large         bool  // names are set large
	captions      []int // kinds that are named below, for want of room on them
	x             float64
	head          float64 // room above the layout
	width, height float64 // of all; of what stands below the head
}

// gather lists all that is to be drawn, in order.
func (d *cuttingDrawing) gather() {
	for i := range d.in.Cuttings {
		c := &d.in.Cuttings[i]
		labels := d.in.labels(c)
		for n, layouts := range layoutsOf(c) {
			b := cuttingBlock{cutting: c, layouts: layouts, first: n == 0, labels: labels}
			if len(layouts) > 0 {
				b.kinds = kindsOn(b)
				b.titled = draft.Name().Width(b.title()) + titleGap + draft.SizeLine().Width(d.in.sheetSize(b))
			}
			d.all = append(d.all, b)
		}
	}
	if n := d.in.Alone; n > 0 {
		d.all = d.all[min(n, len(d.all))-1 : min(n, len(d.all))]
		d.all[0].first = false // its page has the heading
	}
}

// CuttingBlock is what the cutting view shows in one piece: a sheet, or rows of a
// roll drawn above each other.
type CuttingBlock struct {
	Cutting int   // index in Input.Cuttings
	Layouts []int // of its plan; none where there is no plan
}

// CuttingBlocks lists what the view shows, in its order: [Input.Alone] counts them.
func CuttingBlocks(cuttings []sheets.Cutting) []CuttingBlock {
	var all []CuttingBlock
	for i := range cuttings {
		for _, layouts := range layoutsOf(&cuttings[i]) {
			all = append(all, CuttingBlock{i, layouts})
		}
	}
	return all
}

// layoutsOf are the layouts that are drawn together: each sheet by itself, rows
// of a roll above each other.
func layoutsOf(c *sheets.Cutting) [][]int {
	if len(c.Plan.Layouts) == 0 {
		return [][]int{nil}
	}
	var all [][]int
	high := 0.0
	for l, layout := range c.Plan.Layouts {
		row := mmOf(layout.Root.Height)
		if c.Roll() && l > 0 && high+row <= rollDrawn*mmOf(layout.Root.Width) {
			all[len(all)-1] = append(all[len(all)-1], l)
			high += row
			continue
		}
		all, high = append(all, []int{l}), row
	}
	return all
}

// rollDrawn is how long a roll is drawn in one, in its widths.
const rollDrawn = 1.2

// kindOf is a kind of piece on a block.
type kindOf struct {
	kind  int
	count int
	lies  [][2]float64 // sizes in which it lies there, mm: one, or two where it may turn
}

// kindsOn lists the kinds on a block in the order of the sheet.
func kindsOn(b cuttingBlock) []kindOf {
	var all []kindOf
	b.pieces(func(p cutting.Part, _ int64) {
		at := slices.IndexFunc(all, func(k kindOf) bool { return k.kind == p.Piece })
		if at < 0 {
			at = len(all)
			all = append(all, kindOf{kind: p.Piece})
		}
		all[at].count++
		if size := [2]float64{mmOf(p.Width), mmOf(p.Height)}; !slices.Contains(all[at].lies, size) {
			all[at].lies = append(all[at].lies, size)
		}
	})
	return all
}

// pieces calls do for every piece of a block, and how far up a roll its layout
// lies.
func (b cuttingBlock) pieces(do func(p cutting.Part, up int64)) {
	up := int64(0)
	for _, l := range b.layouts {
		root := b.cutting.Plan.Layouts[l].Root
		root.Pieces(func(p cutting.Part) { do(p, up) })
		up += root.Height
	}
}

// extent is how wide and high a block's sheet or strip of the roll is, mm.
func (b cuttingBlock) extent() (width, height float64) {
	for _, l := range b.layouts {
		root := b.cutting.Plan.Layouts[l].Root
		width, height = max(width, mmOf(root.Width)), height+mmOf(root.Height)
	}
	return width, height
}

// leastHeading is the width that the lines of a heading may take in any case,
// and titleGap what parts a title from its size, px.
const (
	leastHeading = 215.0
	titleGap     = 10.0
)

// measure finds what a block takes of the page at a scale.
func (d *cuttingDrawing) measure(b *cuttingBlock, rooms cuttingRooms, scale float64) {
	if len(b.layouts) > 0 {
		width, height := b.extent()
		b.label(scale)
		b.width = rooms.left + scale*width + b.rightRoom(rooms) + d.listRoom(*b, rooms, scale)
		b.width = max(b.width, rooms.left+b.titled, b.captionWidth(rooms)) + 14
		b.height = b.aboveRoom(rooms) + scale*height + rooms.below + captionLead*float64(len(b.captions))
		b.head = 24
	}
	if !b.first {
		return
	}
	room := d.sheet.Width - 2*cuttingEdge
	b.heading = d.in.headingOf(*b.cutting, min(room, max(b.width-14, leastHeading)))
	if d.sheet.Height < 340 && len(b.heading) > 2 && len(b.layouts) > 0 {
		b.heading = b.heading[:2]
	}
	for i, line := range b.heading {
		b.width = max(b.width, min(room, headingType(i).Width(line)+24))
	}
	b.head += 6 + headingLine*float64(len(b.heading))
}

// rightRoom is that of the sheet's grain arrow, or of what a roll's rows are
// called.
func (b cuttingBlock) rightRoom(rooms cuttingRooms) float64 {
	if !b.cutting.Roll() {
		return rooms.right
	}
	widest := 0.0
	for _, l := range b.layouts {
		widest = max(widest, draft.Name().Width(b.layoutName(l)))
	}
	return rooms.right + widest + 10
}

func (b cuttingBlock) aboveRoom(rooms cuttingRooms) float64 {
	if b.cutting.Roll() {
		return webHigh + rollHigh + 4
	}
	return rooms.above
}
