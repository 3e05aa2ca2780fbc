package view

import (
	"cmp"
	"slices"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// EndOn is the cross-section of the closed book, seen from the tail.
func EndOn(in Input) *scene.Scene {
	s := in.sheet(draft.GroundFlat)
	d := endOnDrawing{in: in, sheet: s, exact: profileOf(in.Book)}
	before := d.exact
	if in.haunted() {
		before = profileOf(in.other())
	}
	d.layout = in.layEndOn(s, d.exact, before)
	d.shape = d.exact.thickened(d.layout.spine.plan.Scale)
	d.then = before.thickened(d.layout.spine.plan.Scale)
	d.layout.spine.x0, d.layout.fore.x1 = reachOf(d.shape, d.then)
	if !d.layout.broken {
		d.layout.spine.x1 = d.layout.fore.x1
	}
	if in.Title {
		d.title()
	} else {
		footAlone(s, d.layout.left, d.foot())
	}
	for _, w := range d.windows() {
		part := profileDrawing{s, d.shape, w.plan, w.x0, w.x1, draft.PaletteOf(in.Book), in.Book.Resolved.Interleaf.Mode}
		part.draw()
		part.filled()
		d.marks(part)
	}
	d.breakLines()
	d.stopMarks()
	if in.Dimensions {
		d.dimensions()
	}
	d.labels()
	d.nameMoved()
	return s.Scene()
}

type endOnDrawing struct {
	in     Input
	sheet  *draft.Sheet
	exact  profile // to scale
	shape  profile // as it is drawn
	then   profile // as it would be drawn before what changes now; the shape itself at rest
	layout endOnLayout
}

func (d *endOnDrawing) windows() []profileWindow {
	if d.layout.broken {
		return []profileWindow{d.layout.spine, d.layout.fore}
	}
	return []profileWindow{d.layout.spine}
}

func (d *endOnDrawing) title() {
	b, in := d.in.Book, d.in
	c := b.Closed
	fields := []draft.Field{
		{Word: words.Say("strip.book"), Value: in.bookLine()},
		{Word: words.Say("endon.closed"), Value: in.by(c.Width, c.Height) + " × " + in.size(c.Thickness)},
		{Word: words.Say("endon.swell"), Value: in.size(b.Block.SpineThickness - b.Block.ForeEdgeThickness)},
		{Word: words.Say("strip.block"), Value: words.Say("strip.leaves", words.With{"count": b.Block.Leaves})},
		{Word: words.Say("strip.sizes"), Value: in.sizesLine()},
	}
	if !d.shape.closes {
		fields = slices.Delete(fields, 1, 2)
	}
	d.sheet.Strip(draft.Strip{
		Title: words.Say("view.end-on"), Subtitle: words.Say("endon.subtitle"), Compact: d.layout.compact,
		Fields: fields,
		Foot:   d.foot(),
		Bar: func(right draft.P, widest float64) float64 {
			return d.sheet.ScaleBar(right, d.layout.spine.plan.Scale, widest, in.System)
		},
	}, d.layout.left, d.layout.right, d.layout.strip)
}

// foot says what is wrong, and what of the drawing is not as it is.
func (d *endOnDrawing) foot() []string {
	out := d.in.pinnedNote()
	if free, need := d.exact.jointFree, d.exact.jointLength(); !d.exact.closes && need > free {
		out = append(out, words.Say("endon.foot.joint", words.With{
			"need": d.in.size(measure.MM(need)), "have": d.in.size(measure.MM(max(free, 0)))}))
	}
	if every := d.shape.leavesALine(d.layout.spine.plan.Scale); every > 1 {
		out = append(out, words.Say("endon.foot.leaves", words.With{"count": strconv.Itoa(every)}))
	}
	if d.shape.filledHalf > 0 {
		out = append(out, words.Say("endon.foot.filled", words.With{"size": d.in.size(d.in.Book.Block.FilledForeEdge)}))
	}
	if parts := d.exact.thicker(d.shape); parts != "" {
		out = append(out, words.Say("endon.foot.thicker", words.With{"parts": parts}))
	}
	if d.layout.broken {
		return append(out, words.Say("endon.foot.broken"))
	}
	return append(out, words.Say("endon.foot.whole"))
}

func (d *endOnDrawing) breakLines() {
	if !d.layout.broken {
		return
	}
	w := d.layout
	half := d.shape.halfThickness() * w.spine.plan.Scale
	mid := w.spine.plan.Origin.Y
	d.sheet.BreakLine(w.spine.plan.X(w.spine.x1), mid-half, mid+half)
	d.sheet.BreakLine(w.fore.plan.X(w.fore.x0), mid-half, mid+half)
}

// stopMarks draws a joint that cannot close in red.
func (d *endOnDrawing) stopMarks() {
	if d.shape.closes {
		return
	}
	plan := d.layout.spine.plan
	s := d.sheet.About(book.PartJoint, "joint.width")
	for _, up := range []float64{1, -1} {
		s.Line(draft.StopLine(), plan.Path(mirrored(d.shape.jointPath(), up))...)
	}
}

// dimensions draws the chains: thicknesses to the left and right, widths below.
func (d *endOnDrawing) dimensions() {
	p, b := d.shape, d.in.Book
	spine, fore := d.layout.spine.plan, d.layout.fore.plan
	step := 29.0
	if d.layout.compact {
		step = 24
	}
	left := spine.X(p.back())
	right := fore.X(max(p.fore, p.width) + p.edge())
	d.spineThicknesses(left, step)
	d.thickness("measured.foreEdgeThickness", book.PartBlock, right+step, fore.X(p.width), fore, p.foreHalf, b.Block.ForeEdgeThickness)
	out, in := fore.Y(p.boardOut(p.fore)), fore.Y(p.boardIn(p.fore))
	thick := draft.FigureText(draft.Calipers(d.in.System).Format(b.Resolved.Stock.Board.Thickness))
	d.sheet.About(book.PartBoard, "board.thickness").Chain(draft.Chain{
		Up: true, Line: right + 2*step, From: right, At: []float64{out, in}, Figures: []draft.Figure{thick}})
	d.widths(step)
}

// spineThicknesses stack the dimensions at the spine, the least innermost, so
// that no extension line crosses another's figure.
func (d *endOnDrawing) spineThicknesses(left, step float64) {
	p, b, plan := d.shape, d.in.Book, d.layout.spine.plan
	type row struct {
		key  string
		part book.PartID
		from float64
		half float64
		size measure.Length
	}
	rows := []row{
		{"measured.spineThickness", book.PartBlock, plan.X(0), p.spineHalf, b.Block.SpineThickness},
		{"spine.width", book.PartSpine, left, p.spineWidth / 2, b.ToCut.SpineWidth},
	}
	if p.closes {
		rows = append(rows, row{"", book.PartBook, left, p.spineHalf + p.board + p.outside(), b.Closed.Thickness})
	}
	slices.SortStableFunc(rows, func(a, b row) int { return cmp.Compare(a.half, b.half) })
	for i, r := range rows {
		d.thickness(r.key, r.part, left-float64(i+1)*step, r.from, plan, r.half, r.size)
	}
}

// thickness is one dimension up the sheet, even about the middle.
func (d *endOnDrawing) thickness(key string, part book.PartID, line, from float64, plan draft.Plan, half float64, l measure.Length) {
	d.sheet.About(part, key).Chain(draft.Chain{
		Up: true, Line: line, From: from, At: []float64{plan.Y(half), plan.Y(-half)},
		Figures: []draft.Figure{d.in.figure(l)}, Keys: []string{key},
	})
}

func (d *endOnDrawing) widths(step float64) {
	p, b := d.shape, d.in.Book
	spine, fore := d.layout.spine.plan, d.layout.fore.plan
	under := spine.Y(-p.halfThickness())
	if !p.closes {
		return
	}
	row := func(key string, part book.PartID, line, x0, x1 float64, l measure.Length) {
		if x1-x0 >= 1 {
			d.sheet.About(part, key).Chain(draft.Chain{Line: line, From: under, At: []float64{x0, x1},
				Figures: []draft.Figure{d.in.figure(l)}, Keys: []string{key}})
		}
	}
	row("joint.setBack", book.PartJoint, under+step, spine.X(0), spine.X(p.setBack), b.ToCut.SetBack)
	row("square.foreEdge", book.PartBoard, under+step, fore.X(p.width), fore.X(p.fore), b.Squares.ForeEdge)
	row("", book.PartBook, under+2*step, spine.X(p.back()), fore.X(p.fore), b.Closed.Width)
}
