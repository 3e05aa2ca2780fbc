package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
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

func (d *flatDrawing) boardNames() {
	p := d.shape
	stock := d.in.Book.Resolved.Stock.Board
	room := p.board*d.plan.Scale - 24
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.boardRect(side)
		at := d.plan.At((x0+x1)/2, p.height*0.56)
		s := d.sheet.About(book.PartBoard, "")
		d.centred(s, at, words.Say("part.board"), draft.Name(), room)
		at.Y += 18
		d.centred(s, at, stock.Name, draft.Word().At(12), room)
		at.Y += 16
		thick := words.Say("flat.thick", words.With{"size": draft.Calipers(d.in.System).Format(stock.Thickness)})
		d.centred(s, at, thick, draft.Word().At(12), room)
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
		s.Try(at, name, draft.Name().At(15), scene.Middle, 1)
	}
}

func (d *flatDrawing) turnInNames() {
	p := d.shape
	strip := p.endIn * d.plan.Scale
	if strip < 17 {
		return
	}
	ink := draft.Word().In(draft.MarksOn(draft.FlatCloth(d.colour.Covering)))
	s := d.sheet.About(book.PartCovering, "covering.turnIn")
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

// leafNames say what the dashed and the dotted lines are.
func (d *flatDrawing) leafNames() {
	p := d.shape
	s := d.sheet.About(book.PartLiner, "")
	x0, x1 := p.leafRect(-1, 0)
	room := (x1-x0-p.joint-p.shift)*d.plan.Scale - 20
	at := d.plan.At((-p.fore()-p.inner())/2, max(p.leafTail, 0))
	at.Y -= 12
	leaf := words.Say("flat.leaf", words.With{"size": d.in.by(d.in.Book.Liner.PastedWidth, d.in.Book.Liner.Height)})
	d.centred(s, at, leaf, draft.Word().At(12), room)
	nearer := words.With{"size": d.in.size(measure.MM(p.shift))}
	if p.shift < 0 {
		nearer["size"] = d.in.size(measure.MM(-p.shift))
	}
	d.openNames(s, nearer)
}

// openNames explain the dotted line on the right board: in one line or two.
func (d *flatDrawing) openNames(s *draft.Sheet, nearer words.With) {
	p := d.shape
	key := "flat.open"
	if p.shift < 0 {
		key = "flat.open.outward"
	}
	room := p.board*d.plan.Scale - 2*abs(p.shift)*d.plan.Scale - 24
	at := d.plan.At((p.fore()+p.inner())/2, max(p.leafTail, 0))
	at.Y -= 12
	t := draft.Word().At(12)
	if d.centred(s, at, words.Say(key, nearer), t, room) {
		return
	}
	lines := []string{words.Say(key+".2", nearer), words.Say(key + ".1")}
	for _, line := range lines {
		if !d.centred(s, at, line, t, room) {
			return
		}
		at.Y -= 15
	}
}

func abs(v float64) float64 { return max(v, -v) }

// grain draws an arrow along the grain of every part that has one.
func (d *flatDrawing) grain() {
	p := d.shape
	for _, side := range []float64{-1, 1} {
		x0, x1 := p.boardRect(side)
		in := 0.16 * p.board
		d.arrow(book.PartBoard, x0+in, 0.14*p.height, x1-in, 0.86*p.height, side)
	}
	if wide := p.spine * d.plan.Scale; wide >= 12 {
		d.arrow(book.PartSpine, -p.spine/2, 0.19*p.height, p.spine*0.25, 0.81*p.height, 1)
	}
	if strip := p.endIn * d.plan.Scale; strip >= 17 {
		middle := (p.fore() + p.inner()) / -2
		d.arrow(book.PartCovering, middle-p.endIn, -0.82*p.endIn, middle, -0.18*p.endIn, 1)
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
		if id == book.PartCovering {
			y = (y0 + y1) / 2
		}
		s.GrainArrow(d.plan.At(x0, y), d.plan.At(x1, y), draft.Ink2)
	}
}
