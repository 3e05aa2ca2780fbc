package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// openTurn is how an open book is turned, degrees.
const openTurn = -7.0

// OpenFlat is the book open on the table: in the middle of a section, where one
// unbroken sheet lies in both halves, and where two sheets meet.
func OpenFlat(in Input) *scene.Scene {
	d := newShow(in, "open-flat")
	openings := in.openings(in.Book)
	for _, o := range openings {
		d.exhibits = append(d.exhibits, in.open(in.Book, o, openTurn))
	}
	d.draw(func(frames []solid.Frame) {
		d.captions()
		d.marks(func(b book.Book, part book.PartID) [][]draft.P {
			var all [][]draft.P
			for i, f := range frames {
				if now := in.openings(b); i < len(now) {
					all = append(all, openSolidOf(b, now[i]).outlines(d.table.camera, f, part)...)
				}
			}
			return all
		})
	})
	return d.sheet.Scene()
}

// openings are a sewn one and, where the book has it, an unsewn one.
func (in Input) openings(b book.Book) []opening {
	all := []opening{sewnOpening(b)}
	if o, has := unsewnOpening(b); has {
		all = append(all, o)
	}
	return all
}

// open is the book open on the table.
func (in Input) open(b book.Book, o opening, degrees float64) exhibit {
	k := openSolidOf(b, o)
	e := exhibit{
		caption: words.Say(o.word()),
		stand:   func(at solid.V) solid.Frame { return solid.Lying(at, degrees) },
		corners: k.corners, bodies: k.bodies, draw: k.draw,
	}
	if in.moving() {
		then := o
		for _, at := range in.openings(*in.Before) {
			if at.sewn == o.sewn {
				then = at
			}
		}
		e.then = openSolidOf(*in.Before, then).corners
	}
	return e
}

// word is the key of an opening's caption.
func (o opening) word() string {
	switch {
	case o.left == 0:
		return "show.endpaper"
	case o.sewn:
		return "show.sewn"
	case o.inside:
		return "show.inside"
	}
	return "show.between"
}

// captions stand under their exhibits, where there is room.
func (d *show) captions() {
	for i, e := range d.exhibits {
		b := d.table.boxes[i]
		t := draft.Word().At(12.5).In(draft.Ink)
		if e.caption != "" {
			d.sheet.Try(draft.P{X: (b.X0 + b.X1) / 2, Y: b.Y1 + 22}, e.caption, t, scene.Middle, 0)
		}
	}
}

// outlines are a part's silhouettes on the page, px; none of one that is not seen.
func (k openSolid) outlines(c solid.Camera, f solid.Frame, part book.PartID) [][]draft.P {
	var all [][]draft.P
	switch part {
	case book.PartBook, book.PartCovering:
		return [][]draft.P{c.Hull(f.Box(-k.outer, k.outer, 0, k.height, 0, k.plate)...)}
	case book.PartBoard:
		for _, side := range []float64{-1, 1} {
			x0, x1 := min(side*k.inner, side*k.outer), max(side*k.inner, side*k.outer)
			all = append(all, c.Hull(f.Box(x0, x1, 0, k.height, k.plate, k.plate)...))
		}
	case book.PartFolio, book.PartBlock:
		for _, side := range []float64{-1, 1} {
			if pile := k.pile(side); pile > 0 {
				points := k.pagePoints(pile)
				end := points[len(points)-1]
				all = append(all, c.Hull(
					f.At(k.gutter, k.tail, k.low), f.At(k.gutter+side*end.X, k.tail, end.Y),
					f.At(k.gutter+side*end.X, k.tail+k.high, end.Y), f.At(k.gutter, k.tail+k.high, k.low)))
			}
		}
	}
	return all
}
