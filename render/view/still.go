package view

import (
	"math"

	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// exhibit is one thing on the table.
type exhibit struct {
	caption string
	stand   func(at solid.V) solid.Frame
	corners func(f solid.Frame) []solid.V // round all of it
	then    func(f solid.Frame) []solid.V // round it as it was, where something moves
	// thenStand is how it stood then; nil where that is as it stands now.
	thenStand func(at solid.V) solid.Frame
	bodies    func(f solid.Frame) [][]solid.V // convex, those that cast its shadow
	draw      func(s *solid.Stage, f solid.Frame)
}

// table is where exhibits stand: rows of them, all at one scale.
type table struct {
	in     Input
	box    draft.Box // of the page, px
	camera solid.Camera
	places []solid.V // of the table, where each stands
	frames []solid.Frame
	boxes  []draft.Box // what each covers, its caption left out
	rows   [][]int
	scale  float64 // px of the page a millimetre, in the middle
}

// Air between exhibits, and the band that a caption takes under its own, px.
const (
	exhibitAir  = 26.0
	topAir      = 14.0
	captionBand = 32.0 // of one line
	bareBand    = 12.0
	mostScale   = 6.0 // px a millimetre
	worthARow   = 1.1 // times larger: else there is one row less
	mostTries   = 60  // of a box in which hardly anything fits
)

// extent is what an exhibit covers round its place, px at one px a millimetre.
type extent struct{ left, right, up, down float64 }

func (in Input) extentOf(c solid.Camera, e exhibit, at solid.V) extent {
	here := c.At(at)
	now := boundsOf(c, e.corners(e.stand(at)))
	x := extent{here.X - now.X0, now.X1 - here.X, here.Y - now.Y0, now.Y1 - here.Y}
	if e.then != nil && in.haunted() {
		stand := e.stand
		if e.thenStand != nil {
			stand = e.thenStand
		}
		then := boundsOf(c, e.then(stand(at)))
		x.left = in.towards(x.left, max(x.left, here.X-then.X0))
		x.right = in.towards(x.right, max(x.right, then.X1-here.X))
		x.up = in.towards(x.up, max(x.up, here.Y-then.Y0))
		x.down = in.towards(x.down, max(x.down, then.Y1-here.Y))
	}
	return x
}

func boundsOf(c solid.Camera, places []solid.V) draft.Box {
	b := draft.Box{X0: math.Inf(1), Y0: math.Inf(1), X1: math.Inf(-1), Y1: math.Inf(-1)}
	for _, p := range places {
		at := c.At(p)
		b = draft.Box{X0: min(b.X0, at.X), Y0: min(b.Y0, at.Y), X1: max(b.X1, at.X), Y1: max(b.Y1, at.Y)}
	}
	return b
}

// arrange sets exhibits in rows in the box, in their order, as large as they can
// stand. The camera's page is in px.
func (in Input) arrange(box draft.Box, all []exhibit) table {
	t := table{in: in, box: box}
	unit := solid.NewCamera(1, scene.Point{})
	extents := make([]extent, len(all))
	for i, e := range all {
		extents[i] = in.extentOf(unit, e, solid.V{})
	}
	var best table
	for n := 1; n <= len(all); n++ {
		rows := inRows(len(all), n)
		if rows == nil {
			continue
		}
		t.scale = min(max(t.scaleOf(rows, extents, all), 0.01), mostScale)
		for tries := 0; tries < mostTries && t.scale > best.scale*worthARow && !t.place(rows, all); tries++ {
			t.scale *= 0.975
		}
		if t.scale > best.scale*worthARow {
			best, best.rows = t, rows
		}
	}
	return best
}

// inRows splits things into n rows as even as can be, the shorter ones last.
func inRows(things, n int) [][]int {
	rows := make([][]int, n)
	at := 0
	for r := range n {
		long := (things - at + n - r - 1) / (n - r)
		for range long {
			rows[r] = append(rows[r], at)
			at++
		}
		if long == 0 {
			return nil
		}
	}
	return rows
}

// scaleOf is the largest scale at which rows fit, their depth not yet told.
func (t *table) scaleOf(rows [][]int, extents []extent, all []exhibit) float64 {
	wide, high := t.box.X1-t.box.X0, t.box.Y1-t.box.Y0
	scale, tall, bands := mostScale, 0.0, 0.0
	for _, row := range rows {
		sum, most, band := 0.0, 0.0, bareBand
		for _, i := range row {
			sum += extents[i].left + extents[i].right
			most = max(most, extents[i].up+extents[i].down)
			if all[i].caption != "" {
				band = captionBand
			}
		}
		scale = min(scale, (wide-exhibitAir*float64(len(row)+1))/sum)
		tall += most
		bands += band
	}
	return min(scale, (high-bands-topAir)/tall)
}

// place puts every exhibit into its row, and says whether all of them fit.
func (t *table) place(rows [][]int, all []exhibit) bool {
	t.camera = solid.NewCamera(t.scale, scene.Point{X: (t.box.X0 + t.box.X1) / 2, Y: (t.box.Y0 + t.box.Y1) / 2})
	t.places, t.frames, t.boxes = make([]solid.V, len(all)), make([]solid.Frame, len(all)), make([]draft.Box, len(all))
	heights := make([]float64, len(rows))
	used, bottom := 0.0, 0.0
	for range 3 { // nearer things are larger, and where they stand depends on it
		air := max(t.box.Y1-t.box.Y0-used, 0) / float64(len(rows)+1)
		y := t.box.Y0 + topAir + air
		used = topAir
		for r, row := range rows {
			t.setRow(row, all, y, heights[r])
			high, band := t.rowSize(row, all)
			heights[r] = high
			used += high + band
			bottom = y + high + band
			y = bottom + air
		}
	}
	return bottom <= t.box.Y1 && t.fits(rows)
}

func (t *table) rowSize(row []int, all []exhibit) (high, band float64) {
	band = bareBand
	for _, i := range row {
		high = max(high, t.boxes[i].Y1-t.boxes[i].Y0)
		if all[i].caption == "" {
			continue
		}
		lines := captionLines(all[i].caption, t.boxes[i])
		band = max(band, captionBand+captionLeading*float64(len(lines)-1))
	}
	return high, band
}

// setRow stands a row's exhibits side by side, their lower edges level, so that the
// row begins at y.
func (t *table) setRow(row []int, all []exhibit, y, high float64) {
	for range 3 {
		sum := 0.0
		sizes := make([]extent, len(row))
		for k, i := range row {
			at := t.places[i]
			sizes[k] = t.in.extentOf(t.camera, all[i], at)
			sum += sizes[k].left + sizes[k].right
			high = max(high, sizes[k].up+sizes[k].down)
		}
		air := (t.box.X1 - t.box.X0 - sum) / float64(len(row)+1)
		x := t.box.X0 + air
		for k, i := range row {
			x += sizes[k].left
			at := t.camera.Table(scene.Point{X: x, Y: y + high - sizes[k].down})
			t.places[i], t.frames[i] = at, all[i].stand(at)
			x += sizes[k].right + air
			e := t.in.extentOf(t.camera, all[i], at)
			here := t.camera.At(at)
			t.boxes[i] = draft.Box{X0: here.X - e.left, X1: here.X + e.right, Y0: here.Y - e.up, Y1: here.Y + e.down}
		}
	}
}

func (t *table) fits(rows [][]int) bool {
	for _, row := range rows {
		for k, i := range row {
			b := t.boxes[i]
			if !b.Inside(t.box) {
				return false
			}
			if k > 0 && b.X0-t.boxes[row[k-1]].X1 < exhibitAir/2 {
				return false
			}
		}
	}
	return true
}

// pageCamera is the camera whose page is in millimetres.
func (t *table) pageCamera() solid.Camera {
	return solid.NewCamera(t.scale*scene.Px, onPage(draft.P{X: (t.box.X0 + t.box.X1) / 2, Y: (t.box.Y0 + t.box.Y1) / 2}))
}

func onPage(p draft.P) scene.Point { return scene.Point{X: p.X * scene.Px, Y: p.Y * scene.Px} }

// still paints the exhibits in a box on a ground: first all shadows, then what
// stands farthest.
func (t *table) still(all []exhibit, box draft.Box, ground scene.Colour, before func(*solid.Stage)) scene.Still {
	s := &solid.Stage{Camera: t.pageCamera()}
	if before != nil {
		before(s)
	}
	for i, e := range all {
		if e.bodies != nil {
			s.Add(s.Shadow(e.bodies(t.frames[i])...)...)
		}
	}
	for i, e := range all {
		e.draw(s, t.frames[i])
	}
	return scene.Still{
		Min: onPage(draft.P{X: box.X0, Y: box.Y0}), Max: onPage(draft.P{X: box.X1, Y: box.Y1}),
		Ground: ground, Tooth: true, Items: s.Items,
	}
}
