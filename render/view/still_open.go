package view

import (
	"math"
	"slices"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// opening is where a book lies open.
type opening struct {
	left   int  // leaves on the left; 0 shows the pasted leaf
	sewn   bool // in the middle of a section: one unbroken sheet, and the thread
	inside bool // between two leaves of one section
}

// sewnOpening is the section middle nearest to the middle of the book.
func sewnOpening(b book.Book) opening {
	n, leaves := sectionsOf(b)
	return opening{left: (n-1)/2*leaves + leaves/2, sewn: true}
}

// unsewnOpening lies between two sections, or inside the only one; false where the
// book has none.
func unsewnOpening(b book.Book) (opening, bool) {
	n, leaves := sectionsOf(b)
	switch {
	case n > 1:
		return opening{left: max((2*n+1)/3, 1) * leaves}, true
	case leaves > 2:
		return opening{left: leaves/2 + 1, inside: true}, true
	}
	return opening{}, false
}

func sectionsOf(b book.Book) (sections, leaves int) {
	return max(b.Resolved.Sections.Count, 1), 2 * max(b.Resolved.Sections.Folios, 1)
}

// openSolid is the book lying open, flat on its covers: x from the middle of the
// spine piece, y from the tail of the boards, z up from the table, mm.
type openSolid struct {
	opening
	page, high            float64 // of the leaves
	tail                  float64 // of the leaves' foot from the boards' tail
	height                float64 // of the covered boards
	plate                 float64 // board with its covering
	inner, outer          float64 // a board's edges
	pasted                float64 // fore edge of the pasted leaf
	pastedY0, pastedY1    float64
	gutter                float64 // x of the fold
	low                   float64 // its z
	leftPile, rightPile   float64 // thickness of the leaves on either side
	spineHalf, spinePlate float64
	side                  float64 // inner edge of a side of a quarter covering, seen from inside
	pleat                 float64
	stitches              [][2]float64 // along the fold, from the tail of the leaves
	thread                float64
	ribbon                float64
	leaves, sections      int
	linked                bool
	colours               draft.Palette
	weaves                weaves
}

func openSolidOf(b book.Book, o opening) openSolid {
	c, r := b.ToCut, b.Resolved
	edge := max(r.EdgeCovering().Thickness, r.Stock.Covering.Thickness).MM()
	k := openSolid{
		opening: o, page: some(r.Page.Width), high: some(r.Page.Height),
		height: some(c.BoardHeight) + 2*edge, plate: some(r.Stock.Board.Thickness) + edge,
		inner: (c.SpineWidth/2 + c.JointWidth).MM(), spineHalf: some(c.SpineWidth) / 2,
		spinePlate: some(r.SpineThickness()) + edge,
		leaves:     max(b.Block.Leaves, 2), sections: max(r.Sections.Count, 1), linked: linked(b),
		colours: draft.PaletteOf(b), weaves: weavesOf(b),
		ribbon: max(r.Finishing.RibbonWidth.MM(), 0), thread: max(r.ThreadDiameter().MM(), 0.2),
	}
	k.inner = max(k.inner, k.spineHalf)
	k.outer = k.inner + some(c.BoardWidth)
	k.tail = edge + b.Squares.Tail.MM()
	k.pasted = k.outer - b.Casing.ForeEdge.MM()
	k.pastedY0, k.pastedY1 = edge+b.Casing.Tail.MM(), edge+some(c.BoardHeight)-b.Casing.Head.MM()
	if !k.linked && o.left > 0 && !o.sewn && !o.inside {
		k.pleat = min(max(r.Liner.PleatDepth.MM(), 0), k.page/3)
	}
	total := some(b.Block.ForeEdgeThickness)
	share := float64(o.left) / float64(k.leaves)
	k.leftPile, k.rightPile = total*share, total*(1-share)
	k.gutter = (share - 0.5) * min(b.Block.SpineThickness.MM(), 2*k.spineHalf)
	k.low = k.spinePlate + min(0.4, total/4)
	if o.left == 0 {
		k.gutter, k.low = k.pasted-k.page, k.plate // as it lies on the board, closed
	}
	k.stitches = stitchesOf(b)
	return k
}

// stitchesOf are the stretches of thread seen in the middle of a section, from the
// tail of the leaves.
func stitchesOf(b book.Book) [][2]float64 {
	var out [][2]float64
	high := b.Resolved.Page.Height.MM()
	if seam := b.Sewing.Seam; b.Resolved.Sewing.Method == book.Machine && seam.High > seam.Low {
		stitch := max(b.Resolved.Sewing.Stitch.MM(), 1)
		for y := high - seam.High.MM(); y+stitch <= high-seam.Low.MM()+1e-6; y += stitch {
			out = append(out, [2]float64{y + 0.12*stitch, y + 0.88*stitch})
		}
		return out
	}
	at := slices.Clone(b.Sewing.Stations)
	for i := 1; i < len(at); i++ {
		out = append(out, [2]float64{high - at[i].MM() + 0.6, high - at[i-1].MM() - 0.6})
	}
	return out
}

// pagePoints is one page's upper face in cross-section, from the gutter to the fore
// edge: how far from the gutter, and z. The page keeps its width along the curve.
func (k openSolid) pagePoints(pile float64) []draft.P {
	top := k.plate + pile
	if k.left == 0 { // the block lies closed under the cover that was opened
		var points []draft.P
		for i := range 9 {
			u := k.page * float64(i) / 8
			points = append(points, draft.P{X: u, Y: top})
		}
		return points
	}
	rise := max(top-k.low, 0)
	fall := 2.2 + 0.32*rise // how soon it has risen
	hump := min(3.4, 0.8+0.22*pile) * min(k.page/150, 1)
	z := func(u float64) float64 {
		over := (u - 0.14*k.page) / (0.11 * k.page)
		lift := min(0.1*pile, 1.1) * math.Pow(min(u/k.page, 1), 3)
		return k.low + rise*(1-math.Exp(-u/fall)) + hump*math.Exp(-over*over)*(1-math.Exp(-u/4)) + lift
	}
	points := []draft.P{{X: 0, Y: z(0)}}
	u, along := 0.0, 0.0
	for i := 0; along < k.page && i < 400; i++ {
		step := min(0.25+0.05*u, k.page/28)
		last := points[len(points)-1]
		next := draft.P{X: u + step, Y: z(u + step)}
		long := math.Hypot(next.X-last.X, next.Y-last.Y)
		if along+long > k.page {
			t := (k.page - along) / long
			next = draft.P{X: last.X + t*(next.X-last.X), Y: last.Y + t*(next.Y-last.Y)}
		}
		points = append(points, next)
		along += long
		u += step
	}
	return points
}

// foot is where the undermost leaf of a side lies on its board, from the gutter.
func (k openSolid) foot(side float64, points []draft.P) float64 {
	if k.left == 0 {
		return k.page
	}
	at := k.pasted - side*k.gutter
	return max(at, points[len(points)-1].X*0.9)
}

func (k openSolid) corners(f solid.Frame) []solid.V {
	all := f.Box(-k.outer, k.outer, 0, k.height, 0, k.plate)
	for _, side := range []float64{-1, 1} {
		if pile := k.pile(side); pile > 0 {
			at := k.gutter + side*k.page
			top := k.plate + pile + 3
			all = append(all, f.At(at, k.tail, top), f.At(at, k.tail+k.high, top), f.At(at*0.2, k.tail+k.high, top))
		}
	}
	if k.ribbon > 0 {
		all = append(all, f.At(0, k.tail-ribbonReach, 0))
	}
	return all
}

func (k openSolid) pile(side float64) float64 {
	if side < 0 {
		return k.leftPile
	}
	return k.rightPile
}

// bodies are the two halves and the spine between them.
func (k openSolid) bodies(f solid.Frame) [][]solid.V {
	all := [][]solid.V{f.Box(-k.outer, k.outer, 0, k.height, 0, k.plate)}
	for _, side := range []float64{-1, 1} {
		if pile := k.pile(side); pile > 0 {
			x0, x1 := k.gutter+side*0.08*k.page, k.gutter+side*0.97*k.page
			all = append(all, f.Box(min(x0, x1), max(x0, x1), k.tail, k.tail+k.high, 0, k.plate+pile))
		}
	}
	return all
}

func (k openSolid) draw(s *solid.Stage, f solid.Frame) {
	d := openDrawing{k, s, f}
	d.boards()
	if k.left > 0 {
		d.half(-1)
		d.half(1)
	} else {
		d.half(1)
		d.endpaper()
	}
	d.fold()
}

type openDrawing struct {
	openSolid
	stage *solid.Stage
	frame solid.Frame
}

func (d openDrawing) at(x, y, z float64) solid.V { return d.frame.At(x, y, z) }

// flat is a rectangle that lies face up.
func (d openDrawing) flat(x0, x1, y0, y1, z float64, l solid.Look) {
	if x1 > x0 && y1 > y0 {
		d.stage.Quad(d.at(x0, y0, z), d.frame.Way(x1-x0, 0, 0), d.frame.Way(0, y1-y0, 0), l)
	}
}

// upright is a side that faces the tail, and one that faces a fore edge.
func (d openDrawing) ends(x0, x1, z0, z1 float64, l solid.Look) {
	d.stage.Quad(d.at(x0, 0, z0), d.frame.Way(x1-x0, 0, 0), d.frame.Way(0, 0, z1-z0), l)
	d.stage.Quad(d.at(x1, 0, z0), d.frame.Way(0, d.height, 0), d.frame.Way(0, 0, z1-z0), l)
	d.stage.Quad(d.at(x0, d.height, z0), d.frame.Way(0, -d.height, 0), d.frame.Way(0, 0, z1-z0), l)
}

// boards draws boards, joints and spine piece from the inside.
func (d openDrawing) boards() {
	cloth := solid.Look{Colour: d.colours.Covering, Texture: d.weaves.covering, Tag: tagged(book.PartCovering)}
	edge := cloth
	if d.quarter() {
		edge = solid.Look{Colour: d.colours.Side, Texture: d.weaves.side, Tag: tagged(book.PartSide)}
	}
	lining := solid.Look{Colour: draft.Reverse(d.colours.Covering), Shade: 0.8, Tag: tagged(book.PartCovering)}
	thin := min(d.spinePlate, d.plate) / 2
	d.ends(-d.inner, d.inner, 0, thin, cloth)
	d.flat(-d.inner, d.inner, 0, d.height, thin, lining)
	d.ends(-d.spineHalf, d.spineHalf, 0, d.spinePlate, cloth)
	d.flat(-d.spineHalf, d.spineHalf, 0, d.height, d.spinePlate, lining)
	for _, side := range []float64{-1, 1} {
		x0, x1 := min(side*d.inner, side*d.outer), max(side*d.inner, side*d.outer)
		d.ends(x0, x1, 0, d.plate, edge)
		d.flat(x0, x1, 0, d.height, d.plate, edge)
		d.pastedLeaf(side)
	}
	for _, side := range []float64{-1, 1} {
		d.pileShadow(side)
	}
}

func (d openDrawing) quarter() bool { return d.side > 0 }

// pastedLook is the look of the leaf that is pasted on the boards.
func (d openDrawing) pastedLook() solid.Look {
	if d.linked {
		return solid.Look{Colour: d.colours.Endpaper, Texture: scene.Tooth, Tag: tagged(book.PartEndpaper)}
	}
	return solid.Look{Colour: d.colours.Liner, Texture: scene.Tooth, Tag: tagged(book.PartLiner)}
}

func (d openDrawing) pastedLeaf(side float64) {
	x0, x1 := min(side*d.inner, side*d.pasted), max(side*d.inner, side*d.pasted)
	z := d.plate + 0.15
	d.flat(x0-0.25, x1+0.25, d.pastedY0-0.25, d.pastedY1+0.25, z, solid.Look{Colour: draft.Edge(d.colours.Covering)})
	d.flat(x0, x1, d.pastedY0, d.pastedY1, z, d.pastedLook())
}

// pileShadow is what a pile of leaves casts on the board beside it.
func (d openDrawing) pileShadow(side float64) {
	pile := d.pile(side)
	if pile <= 0 {
		return
	}
	lamp := solid.Lamp()
	local := draft.P{X: lamp.Dot(d.frame.X), Y: lamp.Dot(d.frame.Y)}
	up := lamp.Dot(d.frame.Z)
	x0, x1 := d.gutter, d.gutter+side*d.page*0.97
	y0, y1 := d.tail, d.tail+d.high
	edge := []draft.P{{X: min(x0, x1), Y: y0}, {X: max(x0, x1), Y: y0}, {X: max(x0, x1), Y: y1}, {X: min(x0, x1), Y: y1}}
	board := []draft.P{{X: min(side*d.inner, side*d.outer), Y: 0}, {X: max(side*d.inner, side*d.outer), Y: 0}}
	board = append(board, draft.P{X: board[1].X, Y: d.height}, draft.P{X: board[0].X, Y: d.height})
	for _, share := range []float64{0.5, 0.8, 1.1} {
		moved := make([]draft.P, len(edge))
		for i, p := range edge {
			moved[i] = draft.P{X: p.X - local.X/up*pile*share, Y: p.Y - local.Y/up*pile*share}
		}
		var corners [][2]float64
		for _, p := range draft.Clip(moved, board) {
			corners = append(corners, [2]float64{p.X, p.Y})
		}
		d.stage.Veil(d.at(0, 0, d.plate+0.2), d.frame.X, d.frame.Y, corners, draft.Shade, 0.16)
	}
}

// half draws the leaves on one side: their edges at tail and fore edge, and the page
// on top.
func (d openDrawing) half(side float64) {
	pile := d.pile(side)
	if pile <= 0 {
		return
	}
	points := d.pagePoints(pile)
	foot := d.foot(side, points)
	at := func(u, y, z float64) solid.V { return d.at(d.gutter+side*u, y, z) }
	paper := solid.Look{Colour: d.colours.Paper, Tag: tagged(book.PartBlock)}
	last := points[len(points)-1]
	d.tailEdge(side, points, foot, paper)
	// the fore edge
	low, high := at(foot, d.tail, d.plate), at(last.X, d.tail, last.Y)
	up, along := high.Minus(low), d.frame.Way(0, d.high, 0)
	if side > 0 {
		d.stage.Quad(low, along, up, paper)
	} else {
		d.stage.Quad(low.Plus(along), along.Times(-1), up, paper)
	}
	leaves := d.left
	if side > 0 {
		leaves = d.leaves - d.left
	}
	look := leafLook{d.colours.Paper, leaves, max(d.sections*leaves/d.leaves, 1)}
	foreSeen := d.stage.Sees(low, along.Cross(up).Times(side))
	tailSeen := d.stage.Sees(at(0, d.tail, d.plate), d.frame.Way(0, -1, 0))
	look.rule(d.stage, func(share float64) [][]solid.V {
		t := (share + 1) / 2
		var line []solid.V
		for i := 0; i < len(points); i += 2 {
			p := points[i]
			u := p.X + (foot-last.X)*(1-t)*p.X/max(last.X, 1)
			line = append(line, at(u, d.tail, d.floor(p.X)+t*(p.Y-d.floor(p.X))))
		}
		u := last.X + (foot-last.X)*(1-t)
		end := at(u, d.tail, d.plate+t*(last.Y-d.plate))
		line = append(line, end)
		var lines [][]solid.V
		if tailSeen {
			lines = append(lines, line)
		}
		if foreSeen {
			lines = append(lines, []solid.V{end, end.Plus(along)})
		}
		return lines
	})
	d.pageFace(side, points)
}

// floor is what the undermost leaf lies on, so far from the gutter.
func (d openDrawing) floor(u float64) float64 {
	t := min(u/max(d.inner-d.spineHalf+1, 3), 1)
	return d.low*(1-t) + d.plate*t
}

func (d openDrawing) tailEdge(side float64, points []draft.P, foot float64, l solid.Look) {
	var corners [][2]float64
	add := func(u, z float64) { corners = append(corners, [2]float64{d.gutter + side*u, z}) }
	for _, p := range points {
		add(p.X, p.Y)
	}
	add(foot, d.plate)
	for i := len(points) - 1; i >= 0; i -= 3 {
		add(min(points[i].X, foot), d.floor(points[i].X))
	}
	if side > 0 {
		slices.Reverse(corners)
	}
	d.stage.Flat(d.at(0, d.tail, 0), d.frame.X, d.frame.Z, corners, l)
}

// How dark a page is in the gutter, and how far out.
const (
	gutterDark  = 0.40
	gutterReach = 5.0 // mm
)

// pageFace is the page on top of one side.
func (d openDrawing) pageFace(side float64, points []draft.P) {
	look := solid.Look{Colour: d.colours.Paper, Texture: scene.Tooth, Tag: tagged(book.PartFolio)}
	if d.left == 0 && d.linked { // the free leaf of the endpaper
		look = d.pastedLook()
	}
	shown := slices.Clone(points)
	if side < 0 {
		slices.Reverse(shown)
	}
	var through []solid.V
	for _, p := range shown {
		through = append(through, d.at(d.gutter+side*p.X, d.tail, p.Y))
	}
	reach, dark := gutterReach+0.15*d.pile(side), gutterDark
	if d.left == 0 {
		dark = 0.12
	}
	d.stage.Bend(solid.Bend{
		Through: through, Across: d.frame.Way(0, d.high, 0), Look: look, Back: true,
		Shade: func(i int) float64 {
			u := (shown[i].X + shown[i+1].X) / 2
			return 1 - dark*math.Exp(-u/reach)
		},
	})
	end := shown[len(shown)-1]
	if side < 0 {
		end = shown[0]
	}
	d.stage.Line(pageEdge(look.Colour), d.at(d.gutter+side*end.X, d.tail, end.Y), d.at(d.gutter+side*end.X, d.tail+d.high, end.Y))
}

func pageEdge(c scene.Colour) scene.Line {
	l := draft.PartLine(c)
	l.Width, l.Alpha = 0.5*scene.Px, 0.5
	return l
}

// endpaper is the leaf that runs from the board over the joint on to the block,
// where the book is open at its front cover.
func (d openDrawing) endpaper() {
	top, edge := d.plate+d.rightPile, d.gutter+0.4
	from := -d.inner * 1.02
	var through []solid.V
	steps := 20
	for i := range steps + 1 {
		t := 1 - math.Pow(1-float64(i)/float64(steps), 2)
		through = append(through, d.at(from+t*(edge-from), d.pastedY0, d.plate+0.2+(top-d.plate)*math.Pow(t, 9)))
	}
	d.stage.Bend(solid.Bend{
		Through: through, Across: d.frame.Way(0, d.pastedY1-d.pastedY0, 0), Look: d.pastedLook(), Back: true,
		Shade: func(i int) float64 { t := float64(i) / float64(steps); return 1 - 0.30*t*t },
	})
}

// fold is what is seen along the fold: the thread, or the seam of two sections with
// the liner's pleat between them.
func (d openDrawing) fold() {
	if d.left == 0 {
		return
	}
	z := d.low + 0.3
	at := func(y float64) solid.V { return d.at(d.gutter, d.tail+y, z) }
	if !d.sewn {
		d.pleatStub()
		d.stage.Line(scene.Line{Width: 1.1 * scene.Px, Colour: draft.Shade, Alpha: 0.75}, at(0), at(d.high))
		return
	}
	d.stage.Line(scene.Line{Width: 0.7 * scene.Px, Colour: draft.Shade, Alpha: 0.40}, at(0), at(d.high))
	var under, thread scene.Stroke
	for _, st := range d.stitches {
		a, b := at(st[0]), at(st[1])
		path := scene.Path{d.stage.At(a), d.stage.At(b)}
		lower := scene.Path{{X: path[0].X + 0.5*scene.Px, Y: path[0].Y + 0.4*scene.Px}, {X: path[1].X + 0.5*scene.Px, Y: path[1].Y + 0.4*scene.Px}}
		thread.Paths, under.Paths = append(thread.Paths, path), append(under.Paths, lower)
	}
	if len(thread.Paths) == 0 {
		return
	}
	wide := max(1.3*scene.Px, pageLong(d.stage, at(0), at(1))*d.thread)
	thread.Line = scene.Line{Width: wide, Colour: draft.Paper}
	under.Line = scene.Line{Width: wide, Colour: draft.Shade, Alpha: 0.6}
	d.stage.Add(under, thread)
}

// pleatStub is the liner's pleat that stands between two sections and lies over on
// the right page.
func (d openDrawing) pleatStub() {
	if d.pleat <= 0 {
		return
	}
	points := d.pagePoints(d.rightPile)
	look := solid.Look{Colour: d.colours.Liner, Texture: scene.Tooth, Tag: tagged(book.PartLiner)}
	var through []solid.V
	along := 0.0
	for i, p := range points {
		if i > 0 {
			along += math.Hypot(p.X-points[i-1].X, p.Y-points[i-1].Y)
		}
		if along > d.pleat {
			break
		}
		through = append(through, d.at(d.gutter+p.X, d.tail, p.Y+0.35))
	}
	if len(through) < 2 {
		return
	}
	reach := gutterReach + 0.15*d.rightPile
	d.stage.Bend(solid.Bend{Through: through, Across: d.frame.Way(0, d.high, 0), Look: look, Back: true,
		Shade: func(i int) float64 { return 1 - gutterDark*math.Exp(-points[i].X/reach) }})
	end := through[len(through)-1]
	d.stage.Line(scene.Line{Width: 0.8 * scene.Px, Colour: draft.Shade, Alpha: 0.5}, end, end.Plus(d.frame.Way(0, d.high, 0)))
}

// pageLong is how long a stretch of the room is on the page, mm.
func pageLong(s *solid.Stage, a, b solid.V) float64 {
	p, q := s.At(a), s.At(b)
	return math.Hypot(q.X-p.X, q.Y-p.Y)
}
