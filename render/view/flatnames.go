package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// names sets the words that stand on the parts, where there is room.
func (d *flatDrawing) names() {
	d.boardNames()
	d.spineName()
	d.turnInNames()
	d.leafNames()
}

// boardNames sets name, stock and thickness in the middle of each board, as
// many of them as its height has room for.
func (d *flatDrawing) boardNames() {
	p := d.shape
	stock := d.in.Book.Resolved.Stock.Board
	thick := words.Say("flat.thick", words.With{"size": draft.Calipers(d.in.System).Format(stock.Thickness)})
	lines := []string{words.Say("part.board"), stock.Name, thick}
	high := p.height*d.plan.Scale - 16
	lines = lines[:min(max(int((high-20)/17)+1, 1), len(lines))]
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.boardRect(side)
		at := d.plan.At((x0+x1)/2, p.height/2)
		at.Y += 6 - 8.5*float64(len(lines)-1)
		for i, line := range lines {
			t := draft.Word().At(12)
			mark := check.Level("")
			if i == 0 {
				t, mark = draft.Name(), d.in.Marks.of(book.PartBoard)
			}
			s := d.sheet.About(book.PartBoard, "")
			if d.centred(s, at, line, t, p.board*d.plan.Scale-24-2*markRoom(mark)) {
				s.Level(draft.P{X: at.X + t.Width(line)/2 + markRoom(mark) - draft.LevelSize/2, Y: at.Y - markUp}, mark)
				at.Y += 17
			}
		}
	}
}

// centred sets a text in the middle of a room, if it fits.
func (d *flatDrawing) centred(s *draft.Sheet, at draft.P, text string, t draft.Type, room float64) bool {
	return t.Width(text) <= room && s.Try(at, text, t, scene.Middle, 0)
}

func (d *flatDrawing) spineName() {
	p := d.shape
	s := d.sheet.About(book.PartSpine, "")
	wide := p.spine * d.plan.Scale
	above, below := p.height+p.endIn*0.55, -p.endIn*0.55
	s.Line(draft.CentreLine(), d.plan.At(0, above), d.plan.At(0, below))
	name := words.Say("part.spine-piece")
	at := d.plan.At(0, p.height*0.5)
	if wide >= 26 && draft.Name().At(15).Width(name) < 0.5*p.height*d.plan.Scale {
		at.X -= min(wide/4-4, 6)
		if s.Try(at, name, draft.Name().At(15), scene.Middle, 1) {
			s.Level(draft.P{X: at.X - markUp, Y: at.Y - draft.Name().At(15).Width(name)/2 - markGap - draft.LevelSize/2}, d.in.Marks.of(book.PartSpine, book.PartJoint))
		}
	}
}

func (d *flatDrawing) turnInNames() {
	p := d.shape
	strip := p.endIn * d.plan.Scale
	if strip < 17 {
		return
	}
	edge := p.cloth.edge(d.colour)
	ink := draft.Word().In(draft.MarksOn(draft.FlatCloth(edge.colour)))
	s := d.sheet.About(edge.part, "covering.turnIn")
	left, right := (p.inner()+p.fore())/-2, (p.inner()+p.fore())/2
	for _, w := range []struct {
		text string
		x, y float64
	}{
		{words.Say("flat.turn-in"), left, p.height + p.endIn/2},
		{words.Say("flat.head"), right, p.height + p.endIn/2},
		{words.Say("flat.tail"), right, -p.endIn / 2},
	} {
		at := d.plan.At(w.x, w.y)
		at.Y += 4
		s.Try(at, w.text, ink, scene.Middle, 0)
	}
}

// leafNames say what the dashed lines are, on the left board, and the dotted
// ones, on the right.
func (d *flatDrawing) leafNames() {
	leaf := leafOf(d.in.Book)
	size := words.With{"size": d.in.by(leaf.width, leaf.height)}
	d.leafName(-1, words.Say("flat.leaf", size), words.Say("flat.leaf.1", size), words.Say("flat.leaf.2"), words.Say("flat.leaf.short"))
	shift, key := d.shape.shift, "flat.open"
	if shift < 0 {
		shift, key = -shift, "flat.open.outward"
	}
	nearer := words.With{"size": d.in.size(measure.MM(shift))}
	d.leafName(1, words.Say(key, nearer), words.Say(key+".1"), words.Say(key+".2", nearer), words.Say("flat.open.short"))
}

// leafName sets a remark at the tail of a board: in one line, in two,
// short, or not.
func (d *flatDrawing) leafName(side float64, whole, first, second, short string) {
	p := d.shape
	t := draft.Word().At(12)
	s := d.sheet.About(leafOf(d.in.Book).part, "")
	room := (p.board-2*abs(p.shift))*d.plan.Scale - 24
	at := d.plan.At(side*(p.fore()+p.inner())/2, max(p.leafTail, 0))
	at.Y -= 12
	if d.centred(s, at, whole, t, room) {
		return
	}
	if max(t.Width(first), t.Width(second)) > room {
		d.centred(s, at, short, t, room)
		return
	}
	above := draft.P{X: at.X, Y: at.Y - 15}
	if s.Free(draft.BoxOf(above, first, t, scene.Middle, 0)) && d.centred(s, at, second, t, room) {
		d.centred(s, above, first, t, room)
	}
}

func abs(v float64) float64 { return max(v, -v) }

// grain draws an arrow along the grain of every part that has one.
func (d *flatDrawing) grain() {
	p := d.shape
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.boardRect(side)
		in := 0.16 * p.board
		if abs(p.leafFore-p.shift-p.fore()+in)*d.plan.Scale < 7 { // on the dotted line
			in = 0.24 * p.board
		}
		if side > 0 && d.in.Book.Resolved.Finishing.ElasticWidth > 0 { // beside the elastic's ends
			in = max(in, min(elasticFromFore+d.in.Book.Resolved.Finishing.ElasticWidth.MM()+4, 0.5*p.board))
		}
		clear := min(46/d.plan.Scale, 0.4*p.height) // of the remarks at the tail
		d.arrow(book.PartBoard, x0+in, max(0.14*p.height, clear), x1-in, 0.86*p.height, side)
	}
	if wide := p.spine * d.plan.Scale; wide >= 12 {
		d.arrow(book.PartSpine, -p.spine/2, 0.19*p.height, p.spine*0.25, 0.81*p.height, 1)
	}
	if strip := p.endIn * d.plan.Scale; strip >= 17 {
		middle := (p.fore() + p.inner()) / -2
		d.arrow(p.cloth.edge(d.colour).part, middle-p.endIn, -0.82*p.endIn, middle, -0.18*p.endIn, 1)
	}
}

// arrow lies along a part's grain inside a rectangle: up its left (-1) or
// right (1) side, or across near its tail.
func (d *flatDrawing) arrow(id book.PartID, x0, y0, x1, y1, side float64) {
	part, _ := d.in.Book.Part(id)
	s := d.sheet.About(id, "")
	x := x1
	if side < 0 {
		x = x0
	}
	switch part.Grain {
	case book.AlongHeight:
		s.GrainArrow(d.plan.At(x, y0), d.plan.At(x, y1), draft.Ink2)
	case book.AlongWidth:
		y := y0 + 0.1*(y1-y0)
		if id == book.PartCovering || id == book.PartSide {
			y = (y0 + y1) / 2
		}
		s.GrainArrow(d.plan.At(x0, y), d.plan.At(x1, y), draft.Ink2)
	}
}
