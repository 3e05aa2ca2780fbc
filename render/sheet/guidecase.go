package sheet

import (
	"fmt"
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// laid is the case laid flat on the page, its inner side up.
type laid struct {
	d             plate
	c             at      // the middle of the spine piece
	s             float64 // mm of the page a mm
	spine, joint  float64 // half the spine piece, and a joint
	board, height float64
	coverX        float64 // half the covering, or the spine cloth
	coverY        float64
}

// laidOut fits the case into so much room round its middle.
func (d plate) laidOut(c at, room, high float64) laid {
	cut := d.in.Book.ToCut
	wide := max(cut.CoveringWidth.MM(), (cut.SpineWidth + 2*cut.JointWidth + 2*cut.BoardWidth).MM())
	s := fitting(wide, cut.CoveringHeight.MM(), room, high)
	mm := func(l book.Length) float64 { return l.MM() * s }
	return laid{
		d: d, c: c, s: s, spine: mm(cut.SpineWidth) / 2, joint: mm(cut.JointWidth),
		board: mm(cut.BoardWidth), height: mm(cut.BoardHeight) / 2,
		coverX: mm(cut.CoveringWidth) / 2, coverY: mm(cut.CoveringHeight) / 2,
	}
}

// at is a place so far right of the middle of the spine piece and below it.
func (l laid) at(x, y float64) at { return at{X: l.c.X + x, Y: l.c.Y + y} }

// box is an upright piece about the middle line.
func (l laid) box(fill scene.Colour, x0, x1, half float64) {
	l.d.slab(fill, l.c.X+x0, l.c.Y-half, l.c.X+x1, l.c.Y+half)
}

// inner and fore are the edges of a board, from the middle.
func (l laid) inner() float64 { return l.spine + l.joint }
func (l laid) fore() float64  { return l.inner() + l.board }

// draw draws covering, boards and spine piece.
func (l laid) draw() {
	l.box(clothTint(), -l.coverX, l.coverX, l.coverY)
	l.pieces()
}

// pieces draws boards and spine piece.
func (l laid) pieces() {
	l.box(boardTint(), -l.fore(), -l.inner(), l.height)
	l.box(boardTint(), l.inner(), l.fore(), l.height)
	l.box(cardTint(), -l.spine, l.spine, l.height)
	if l.coverX < l.fore() { // a spine cloth ends on the boards
		for _, x := range []float64{-l.coverX, l.coverX} {
			l.d.line(partLine, []at{l.at(x, -l.height), l.at(x, l.height)}, 1.6, 1)
		}
	}
}

// layingOutPlate is the case laid out with its sizes.
func layingOutPlate(d plate) {
	cut := d.in.Book.ToCut
	l := d.laidOut(at{X: d.width / 2, Y: 50}, 128, 58)
	l.draw()
	l.d.Line(draft.CentreLine(), d.places([]at{l.at(0, -l.coverY-3), l.at(0, l.coverY+3)})...)
	foot, top := l.coverY, -l.coverY
	d.size(l.at(-l.fore(), foot), l.at(-l.inner(), foot), 5, cut.BoardWidth)
	d.size(l.at(-l.spine, foot), l.at(l.spine, foot), 5, cut.SpineWidth)
	d.size(l.at(l.spine, top), l.at(l.inner(), top), -5, cut.JointWidth)
	d.size(l.at(-l.inner(), foot), l.at(l.inner(), foot), 13, cut.SpineWidth+2*cut.JointWidth)
	d.size(l.at(-max(l.coverX, l.fore()), -l.height), l.at(-max(l.coverX, l.fore()), l.height), -5, cut.BoardHeight)
	d.size(l.at(max(l.coverX, l.fore()), top), l.at(max(l.coverX, l.fore()), -l.height), 5, d.in.Book.Resolved.Covering.TurnIn)
	if l.coverX < l.fore() {
		d.size(l.at(l.inner(), top), l.at(l.coverX, top), -14, min(d.in.Book.Resolved.Covering.Overlap, cut.BoardWidth))
	}
}

// gluingPlate is the same in the order of laying down, with spacers in the joints.
func gluingPlate(d plate) {
	l := d.laidOut(at{X: d.width / 2, Y: 48}, 128, 60)
	l.draw()
	for _, side := range []float64{-1, 1} {
		a, b := side*l.spine, side*l.inner()
		spacer := []at{l.at(a, -l.height-2), l.at(b, -l.height-2), l.at(b, l.height+2), l.at(a, l.height+2)}
		d.piece(white, spacer...)
		d.hatched(spacer...)
	}
	d.line(heavyLine, []at{l.at(-l.fore()-4, -l.height), l.at(l.fore()+4, -l.height)})
	over := min(l.c.Y-l.coverY-7, 12)
	gap := max(l.spine+l.joint/2, 7)
	board := (l.inner() + l.fore()) / 2
	far := max(board, gap+7)
	for i, to := range []float64{-board, -(l.spine + l.joint/2), 0, l.spine + l.joint/2, board} {
		x := []float64{-far, -gap, 0, gap, far}[i]
		d.turn(l.c.X+x, over, i+1)
		d.line(thinLine, []at{{X: l.c.X + x, Y: over + 2.9}, l.at(to, -l.height+4)})
	}
}

// cornersPlate is one corner of the covering, large.
func cornersPlate(d plate) {
	b := d.in.Book
	turn, cut := b.Resolved.Covering.TurnIn.MM(), b.ToCut.CornerCut.MM()
	legX, legY := b.CornerLegs()
	s := min(22/max(turn, 1), 40/max(legX.MM(), 1), 34/max(legY.MM(), 1))
	const x0, y0, x1, y1 = 20.0, 13.0, 74.0, 58.0
	d.Face(d.places(rectangle(at{X: x0, Y: y0}, x1-x0, y1-y0)), clothTint(), scene.None, scene.Plane{})
	d.line(partLine, []at{{X: x1, Y: y0}, {X: x0, Y: y0}, {X: x0, Y: y1}})
	bx, by := x0+turn*s, y0+turn*s
	d.Face(d.places(rectangle(at{X: bx, Y: by}, x1-bx, y1-by)), boardTint(), scene.None, scene.Plane{})
	d.line(partLine, []at{{X: x1, Y: by}, {X: bx, Y: by}, {X: bx, Y: y1}})
	if legX <= 0 || legY <= 0 {
		return
	}
	p, q := at{X: x0 + legX.MM()*s, Y: y0}, at{X: x0, Y: y0 + legY.MM()*s}
	d.Face(d.places([]at{{X: x0, Y: y0}, p, q}), white, scene.None, scene.Plane{})
	d.hatched(at{X: x0, Y: y0}, p, q)
	d.line(heavyLine, []at{p, q})
	d.size(at{X: x0, Y: y0}, p, -4, legX)
	d.size(at{X: x0, Y: y0}, q, -4, legY)
	sin, cos := math.Sincos(b.Resolved.Covering.CornerAngle * math.Pi / 180)
	foot := at{X: bx - cut*s*sin, Y: by - cut*s*cos}
	d.Span(d.place(foot.X, foot.Y), d.place(bx, by))
	text := d.in.size(b.ToCut.CornerCut)
	d.number(bx+3+draft.FigureText(text).Width(figures())*scene.Px/2, by+6.5, text)
	d.say(p.X+2.5, y0+6, fmt.Sprintf("%.3g°", b.Resolved.Covering.CornerAngle), scene.Start)
}

// turningInPlate is the case with its turn-ins numbered in their order.
func turningInPlate(d plate) {
	l := d.laidOut(at{X: d.width / 2, Y: 30}, 50, 32)
	cloth := d.step.ID == "turn-in-cloth"
	if cloth {
		l.draw()
	} else {
		l.corners()
	}
	x := l.coverX / 2
	if !cloth {
		x = (l.inner() + l.fore()) / 2
	}
	for _, side := range []float64{-1, 1} {
		d.push(l.at(side*x, -l.coverY-4), l.at(side*x, -l.height+3))
		d.push(l.at(side*x, l.coverY+4), l.at(side*x, l.height-3))
		if !cloth {
			d.push(l.at(side*(max(l.coverX, l.fore())+5), 0), l.at(side*(l.fore()-4), 0))
			d.turn(l.c.X+side*(max(l.coverX, l.fore())+8.5), l.c.Y, 4)
			for _, up := range []float64{-1, 1} {
				c := l.at(side*(l.fore()+6.5), up*(l.height+7.5))
				d.line(thinLine, []at{c, l.at(side*l.fore(), up*l.height)})
				d.turn(c.X, c.Y, 3)
			}
		}
	}
	d.turn(l.c.X, l.c.Y-l.coverY-7, 1)
	d.turn(l.c.X, l.c.Y+l.coverY+7, 2)
}

// corners draws the case with its corners cut: of a quarter covering the sides have
// them, which reach round the boards.
func (l laid) corners() {
	turn := l.d.in.Book.Resolved.Covering.TurnIn.MM() * l.s
	legX, legY := l.d.in.Book.CornerLegs()
	x, y := l.fore()+turn, l.height+turn
	cx, cy := min(legX.MM()*l.s, x), min(legY.MM()*l.s, y)
	l.d.piece(clothTint(), l.at(-x+cx, -y), l.at(x-cx, -y), l.at(x, -y+cy), l.at(x, y-cy), l.at(x-cx, y), l.at(-x+cx, y), l.at(-x, y-cy), l.at(-x, -y+cy))
	l.pieces()
}
