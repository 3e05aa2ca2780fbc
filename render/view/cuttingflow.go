package view

import (
	"grainwise/model/sheets"
	"grainwise/render/draft"
)

// cuttingRooms is what stands round every layout, px.
type cuttingRooms struct {
	numbers, stops, list      bool // the cuts' numbers, their stops, and both as a list
	left, right, above, below float64
	listed                    float64 // width of the list
}

// Scales of layouts, px a millimetre. Below the least a sheet shows nothing.
const (
	leastCuttingScale = 0.05
	mostCuttingScale  = 1.6
)

// flow places all layouts at the largest scale at which they have room; the
// lists, stops and numbers round them give way, in this order, where they would
// make the drawing much smaller.
func (d *cuttingDrawing) flow() {
	d.gather()
	d.rooms = d.roomsOf(false, false, false)
	bare := d.fit(d.rooms)
	d.scale = bare
	for _, try := range []struct {
		stops, list bool
		share       float64 // of the scale without them
	}{{true, true, 0.74}, {true, false, 0.62}, {false, false, 0.45}} {
		rooms := d.roomsOf(true, try.stops, try.list)
		if scale := d.fit(rooms); d.in.Dimensions && scale >= try.share*bare {
			d.rooms, d.scale = rooms, scale
			break
		}
	}
	d.place(d.rooms, d.scale)
	d.spread()
}

// roomsOf is the room for what is to stand round the layouts.
func (d *cuttingDrawing) roomsOf(numbers, stops, list bool) cuttingRooms {
	r := cuttingRooms{numbers: numbers, stops: stops, list: list, left: 4, right: 24, above: 6, below: 8}
	if numbers {
		r.left, r.above, r.below = 2*badgeReach, 2*badgeReach, 2*badgeReach
	}
	if stops {
		r.left += d.widestStop() + 3
		r.above += 15
		r.below += 12
	}
	if list {
		r.listed = d.listWidth()
	}
	return r
}

// widestStop is the width of the longest stop distance, px.
func (d *cuttingDrawing) widestStop() float64 {
	widest := 0.0
	for _, c := range d.in.Cuttings {
		for _, step := range c.Steps {
			widest = max(widest, draft.Small().Width(d.in.size(sheets.Length(step.Stop))))
		}
	}
	return widest
}

// fit is the largest scale at which all layouts have room, or the least.
func (d *cuttingDrawing) fit(rooms cuttingRooms) float64 {
	low, high := leastCuttingScale, mostCuttingScale
	for range 14 {
		if mid := (low + high) / 2; d.place(rooms, mid) {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// cuttingRow is layouts side by side, their sheets' tops level.
type cuttingRow struct {
	blocks []cuttingBlock
	y      float64
	head   float64 // room of the headings and titles
	height float64
	width  float64
}

func (r *cuttingRow) add(b cuttingBlock) {
	b.x = cuttingEdge + r.width
	r.blocks = append(r.blocks, b)
	r.width += b.width
	r.head, r.height = max(r.head, b.head), max(r.height, b.height)
}

// place lets the layouts flow at a scale; false where they do not all have room.
func (d *cuttingDrawing) place(rooms cuttingRooms, scale float64) bool {
	d.rows, d.left = nil, 0
	room := d.sheet.Width - 2*cuttingEdge
	y, row := 8.0, cuttingRow{}
	for _, b := range d.all {
		d.measure(&b, rooms, scale)
		if len(row.blocks) > 0 && row.width+b.width > room {
			y = d.end(row, y)
			row = cuttingRow{}
		}
		row.add(b)
	}
	d.end(row, y)
	return d.left == 0
}

// end ends a row at y, if it has room there, and tells where the next begins.
func (d *cuttingDrawing) end(row cuttingRow, y float64) float64 {
	if y+row.head+row.height > d.foot || row.width > d.sheet.Width-2*cuttingEdge+0.01 {
		for _, b := range row.blocks {
			d.left += max(1, len(b.layouts))
		}
		return y
	}
	row.y = y
	d.rows = append(d.rows, row)
	return y + row.head + row.height
}

// spread shares out the height that is left over, and moves a single row to the
// middle of the page.
func (d *cuttingDrawing) spread() {
	if len(d.rows) == 0 || d.left > 0 {
		return
	}
	last := d.rows[len(d.rows)-1]
	spare := max(0, d.foot-last.y-last.head-last.height) / float64(len(d.rows)+1)
	if len(d.rows) > 1 {
		for i := range d.rows {
			d.rows[i].y += min(spare, 26) * float64(i+1)
		}
		return
	}
	d.rows[0].y += min(spare, 0.09*d.sheet.Height)
	for i := range d.rows[0].blocks {
		d.rows[0].blocks[i].x += max(0, d.sheet.Width-2*cuttingEdge-last.width) / 2
	}
}
