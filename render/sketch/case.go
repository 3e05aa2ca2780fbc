package sketch

import (
	"math"

	"grainwise/render/draft"
	"grainwise/render/scene"
)

func boardThickness(d pen) {
	d.slab(34, 96, 120, 14)
	d.down(96, 110, 36, 20)
}

// slab is a board lying down, its front edge at the left lower corner.
func (d pen) slab(x, y, wide, thick float64) {
	const back, up = 46.0, 50.0
	d.piece(draft.GreyBoard, p{X: x, Y: y}, p{X: x + back, Y: y - up}, p{X: x + back + wide, Y: y - up}, p{X: x + wide, Y: y})
	d.piece(draft.Front(draft.GreyBoard), rect(x, y, x+wide, y+thick)...)
	d.piece(draft.Right(draft.GreyBoard), p{X: x + wide, Y: y}, p{X: x + back + wide, Y: y - up},
		p{X: x + back + wide, Y: y - up + thick}, p{X: x + wide, Y: y + thick})
}

func boardPiece(d pen) {
	d.slab(28, 92, 116, 12)
	d.meant(p{X: 28, Y: 92}, p{X: 74, Y: 42}, p{X: 190, Y: 42}, p{X: 144, Y: 92})
}

// The case laid flat, inside up: covering, two boards, the spine piece between.
const (
	caseTop, caseFoot = 38.0, 102.0
	leftBoard0        = 24.0
	leftBoard1        = 88.0
	spine0, spine1    = 98.0, 122.0
	rightBoard0       = 132.0
	rightBoard1       = 196.0
	caseTurn          = 12.0
	coverX0, coverX1  = leftBoard0 - caseTurn, rightBoard1 + caseTurn
	coverY0, coverY1  = caseTop - caseTurn, caseFoot + caseTurn
)

func (d pen) flatCase() {
	cloth := draft.Reverse(draft.Cloth)
	d.piece(cloth, p{X: coverX0 + 12, Y: coverY0}, p{X: coverX1 - 12, Y: coverY0}, p{X: coverX1, Y: coverY0 + 12},
		p{X: coverX1, Y: coverY1 - 12}, p{X: coverX1 - 12, Y: coverY1}, p{X: coverX0 + 12, Y: coverY1},
		p{X: coverX0, Y: coverY1 - 12}, p{X: coverX0, Y: coverY0 + 12})
	d.box(draft.GreyBoard, leftBoard0, caseTop, leftBoard1, caseFoot)
	d.box(draft.GreyBoard, rightBoard0, caseTop, rightBoard1, caseFoot)
	d.box(draft.Card, spine0, caseTop, spine1, caseFoot)
}

func boardWidth(d pen) {
	d.flatCase()
	d.across(rightBoard0, rightBoard1, coverY1+2, 126)
	d.meant(rect(rightBoard0, caseTop, rightBoard1, caseFoot)...)
}

func boardHigh(d pen) {
	d.flatCase()
	d.meant(rect(rightBoard0, caseTop, rightBoard1, caseFoot)...)
	d.span(p{X: 164, Y: caseTop + 2}, p{X: 164, Y: caseFoot - 2})
}

func spineWidth(d pen) {
	d.flatCase()
	d.across(spine0, spine1, coverY1+2, 126)
	d.meant(rect(spine0, caseTop, spine1, caseFoot)...)
}

func jointFlat(d pen) {
	d.flatCase()
	for _, x := range []float64{leftBoard1, spine1} {
		d.meant(rect(x, caseTop, x+10, caseFoot)...)
	}
	d.across(leftBoard1, spine0, coverY1+2, 126)
}

// ease is a little more than what is asked for.
func spineEase(d pen) {
	d.flatCase()
	d.meant(rect(spine1, caseTop, spine1+6, caseFoot)...)
	d.push(p{X: 106, Y: 122}, p{X: 130, Y: 122})
}

func jointEase(d pen) {
	d.flatCase()
	d.meant(rect(spine1+6, caseTop, rightBoard0, caseFoot)...)
	d.push(p{X: 126, Y: 122}, p{X: 148, Y: 122})
}

func coveringSheet(d pen) {
	d.flatCase()
	d.meant(p{X: coverX0 + 12, Y: coverY0}, p{X: coverX1 - 12, Y: coverY0}, p{X: coverX1, Y: coverY0 + 12},
		p{X: coverX1, Y: coverY1 - 12}, p{X: coverX1 - 12, Y: coverY1}, p{X: coverX0 + 12, Y: coverY1},
		p{X: coverX0, Y: coverY1 - 12}, p{X: coverX0, Y: coverY0 + 12})
}

// boardBow: a board whose grain runs along the spine stays flat.
func boardBow(d pen) {
	d.box(draft.GreyBoard, 22, 24, 88, 108)
	d.fibres(22, 24, 88, 108, true)
	d.good(55, 124)
	l := bow(p{X: 132, Y: 24}, p{X: 132, Y: 108}, 12)
	r := bow(p{X: 198, Y: 24}, p{X: 198, Y: 108}, 12)
	d.piece(draft.GreyBoard, join(l, back(r))...)
	for i := 2; i < 20; i += 2 {
		d.fine(p{X: l[i].X + 3, Y: l[i].Y}, p{X: r[i].X - 3, Y: r[i].Y})
	}
	d.mark(r...)
	d.bad(165, 124)
}

func bow(a, b p, swing float64) []p {
	out := make([]p, 21)
	for i := range out {
		t := float64(i) / 20
		out[i] = p{X: a.X + (b.X-a.X)*t + swing*4*t*(1-t), Y: a.Y + (b.Y-a.Y)*t}
	}
	return out
}

// boardThin: a high board bends in the hand.
func boardThin(d pen) {
	d.box(draft.Paper, 76, 16, 118, 128)
	l, r := bow(p{X: 120, Y: 12}, p{X: 120, Y: 132}, 20), bow(p{X: 126, Y: 12}, p{X: 126, Y: 132}, 20)
	d.piece(draft.GreyBoard, join(l, back(r))...)
	d.mark(r...)
	d.push(p{X: 190, Y: 72}, p{X: 156, Y: 72})
}

// squares: how far the board reaches past the leaves.
func squares(head, fore, tail bool) func(pen) {
	return func(d pen) {
		const x0, y0, x1, y1, sq = 60.0, 14.0, 148.0, 126.0, 11.0
		d.box(draft.Cloth, x0-10, y0, x1, y1)
		d.box(draft.Paper, x0-10, y0+sq, x1-sq, y1-sq)
		if head {
			d.meant(rect(x0-10, y0, x1, y0+sq)...)
			d.first(156, y0+10, "head")
		}
		if tail {
			d.meant(rect(x0-10, y1-sq, x1, y1)...)
			d.first(156, y1-2, "tail")
		}
		if fore {
			d.meant(rect(x1-sq, y0, x1, y1)...)
			d.first(156, 74, "foreEdge")
		}
	}
}

func squareLarge(d pen) {
	d.box(draft.GreyBoard, 50, 10, 170, 130)
	d.piece(draft.Paper, p{X: 50, Y: 34}, p{X: 140, Y: 40}, p{X: 140, Y: 116}, p{X: 50, Y: 106})
	d.span(p{X: 126, Y: 12}, p{X: 126, Y: 37})
	d.push(p{X: 100, Y: 80}, p{X: 100, Y: 108})
}

// spineKinds: inlay, card and board between the boards, seen from the end.
func spineKinds(d pen) {
	for i, key := range []string{"inlay", "card", "board"} {
		// Published rules: an inlay is the block, a card one board more, a board two.
		x, reach := 30+70*float64(i), 6*float64(i)
		d.box(draft.GreyBoard, x, 26, x+38, 38)
		d.box(draft.GreyBoard, x, 92, x+38, 104)
		d.block(x, x+38, 40, 50, 3)
		thick := []float64{2.5, 5, 12}[i]
		d.meant(rect(x-8-thick, 40-reach, x-8, 90+reach)...)
		d.word(x+8, 126, key)
	}
}

func spineThin(d pen) {
	d.box(draft.GreyBoard, 60, 24, 190, 38)
	d.box(draft.GreyBoard, 60, 102, 190, 116)
	d.block(58, 190, 40, 60, 4)
	d.box(draft.Card, 36, 26, 46, 114)
	d.across(36, 46, 114, 128)
}

func spineLoose(d pen) {
	d.box(draft.GreyBoard, 62, 16, 190, 28)
	d.box(draft.GreyBoard, 62, 112, 190, 124)
	d.block(62, 190, 44, 52, 4)
	d.box(draft.Card, 40, 18, 46, 122)
	d.down(20, 120, 40, 24)
	d.Outline(line(1.2, draft.Accent, 3, 2), rect(62, 29, 190, 44)...)
	d.Outline(line(1.2, draft.Accent, 3, 2), rect(62, 96, 190, 111)...)
}

// closedCorner is the joint of a closed book seen from the end, large: spine
// piece at the left, board on top, block below, and the covering over them.
func (d pen) closedCorner(setBack, groove float64) (boardEdge p) {
	const boardY, thick, back = 30.0, 26.0, 62.0
	x := back + setBack
	d.section(back, 206, 92, 66)
	d.box(draft.Card, 34, 34, 44, 134)
	d.box(draft.GreyBoard, x, boardY, 206, boardY+thick)
	floor := boardY - 5 + groove
	cover := draft.Rounded([]p{{X: 29, Y: 134}, {X: 29, Y: 28}, {X: 46, Y: 26}, {X: back - 2 + setBack*0.2, Y: floor}, {X: x - 6, Y: floor},
		{X: x - 3, Y: boardY - 5}, {X: 206, Y: boardY - 5}}, 6)
	d.sheetLine(draft.Cloth, 5, cover...)
	return p{X: x, Y: boardY + thick}
}

func setBack(d pen) {
	edge := d.closedCorner(34, 20)
	d.fine(p{X: 62, Y: 92}, p{X: 62, Y: 12})
	d.fine(p{X: edge.X, Y: 30}, p{X: edge.X, Y: 12})
	d.span(p{X: 62, Y: 14}, p{X: edge.X, Y: 14})
}

func groove(d pen) {
	d.closedCorner(34, 24)
	d.fine(p{X: 92, Y: 25}, p{X: 58, Y: 25})
	d.span(p{X: 76, Y: 25}, p{X: 76, Y: 49})
	d.push(p{X: 76, Y: 4}, p{X: 76, Y: 22})
}

// bendLoss: the covering's own thickness uses up some of it in every bend.
func bendLoss(d pen) {
	const thick = 15.0
	outer := draft.Rounded([]p{{X: 24, Y: 40}, {X: 88, Y: 40}, {X: 104, Y: 100}, {X: 130, Y: 100}, {X: 146, Y: 40}, {X: 204, Y: 40}}, 18)
	l := line(thick, draft.Cloth)
	l.Halo, l.Under = (thick+1.6)*scene.Px, draft.Edge(draft.Cloth)
	d.Line(l, outer...)
	for _, at := range []p{{X: 86, Y: 44}, {X: 107, Y: 95}, {X: 127, Y: 95}, {X: 148, Y: 44}} {
		d.Outline(line(2, draft.Accent), draft.Circle(at, 12)...)
	}
}

// closingJoint: the board swings round the spine piece's edge.
func closingJoint(d pen) {
	d.section(76, 206, 104, 40)
	d.box(draft.Card, 44, 62, 52, 130)
	d.sheetLine(draft.Cloth, 4, p{X: 40, Y: 130}, p{X: 40, Y: 58}, p{X: 52, Y: 56}, p{X: 72, Y: 62}, p{X: 90, Y: 62})
	d.box(draft.GreyBoard, 92, 64, 206, 80)
	pivot := p{X: 84, Y: 62}
	d.Outline(line(0.9, draft.Ink2, 4, 2.5), turned(pivot, -0.62, p{X: 92, Y: 64}, p{X: 166, Y: 64}, p{X: 166, Y: 80}, p{X: 92, Y: 80})...)
	d.turn(pivot, 92, 0.5, 0.02)
	d.dot(pivot)
}

// turned is an outline swung round a place, anticlockwise for less than 0.
func turned(pivot p, angle float64, outline ...p) []p {
	sin, cos := math.Sincos(angle)
	out := make([]p, len(outline))
	for i, at := range outline {
		x, y := at.X-pivot.X, at.Y-pivot.Y
		out[i] = p{X: pivot.X + x*cos - y*sin, Y: pivot.Y + x*sin + y*cos}
	}
	return out
}

// jointTight: a board that would ride up on the spine piece.
func jointTight(d pen) {
	d.section(66, 206, 100, 40)
	d.box(draft.Card, 44, 54, 56, 128)
	d.piece(draft.GreyBoard, p{X: 56, Y: 40}, p{X: 60, Y: 54}, p{X: 204, Y: 34}, p{X: 202, Y: 18})
	d.mark(p{X: 56, Y: 38}, p{X: 60, Y: 56})
	d.Outline(line(1.6, draft.Accent), draft.Circle(p{X: 57, Y: 50}, 14)...)
	d.turn(p{X: 60, Y: 50}, 128, 0.02, 0.36)
}

// jointSag: a wide joint carries the block poorly.
func jointSag(d pen) {
	d.box(draft.Cloth, 40, 14, 52, 126)
	d.box(draft.Cloth, 84, 14, 184, 126)
	d.Veil(rect(52, 14, 84, 126), draft.Cloth, 0.5)
	d.piece(draft.Paper, p{X: 56, Y: 22}, p{X: 172, Y: 34}, p{X: 172, Y: 132}, p{X: 56, Y: 120})
	d.across(52, 84, 14, 7)
	d.push(p{X: 140, Y: 60}, p{X: 140, Y: 108})
}

func jointQuarter(d pen) {
	d.block(70, 200, 36, 84, 6)
	for i := range 5 {
		y := 36 + 21*float64(i)
		d.fine(p{X: 44, Y: y}, p{X: 66, Y: y})
	}
	d.span(p{X: 54, Y: 36}, p{X: 54, Y: 57})
	d.box(draft.GreyBoard, 91, 18, 200, 32)
	d.span(p{X: 70, Y: 12}, p{X: 91, Y: 12})
}

func turnIn(d pen) {
	d.flatCase()
	d.meant(rect(coverX1-caseTurn, coverY0+12, coverX1, coverY1-12)...)
	d.meant(rect(leftBoard0, coverY0, rightBoard1, caseTop)...)
	d.turn(p{X: 164, Y: 34}, 18, 1.7, -1.2)
}

func turnInShort(d pen) {
	d.box(draft.GreyBoard, 20, 58, 150, 84)
	d.sheetLine(draft.Cloth, 6, p{X: 20, Y: 90}, p{X: 156, Y: 90}, p{X: 156, Y: 52}, p{X: 138, Y: 46})
	d.mark(p{X: 158, Y: 50}, p{X: 138, Y: 43})
	d.turn(p{X: 156, Y: 52}, 24, 2.9, 1.4)
}

// The corner of the case, seen from inside.
func corner(cut float64, angle float64) func(pen) {
	return func(d pen) {
		const x, y, turn = 128.0, 92.0, 34.0
		cloth := draft.Reverse(draft.Cloth)
		sin, cos := math.Sincos(angle * math.Pi / 180)
		// The cut passes the board's corner at the distance given, along the diagonal.
		at := p{X: x + cut/math.Sqrt2, Y: y + cut/math.Sqrt2}
		right := p{X: x + turn, Y: at.Y - (x+turn-at.X)*sin/cos}
		foot := p{X: at.X - (y+turn-at.Y)*cos/sin, Y: y + turn}
		d.piece(cloth, p{X: 24, Y: 12}, p{X: x + turn, Y: 12}, right, foot, p{X: 24, Y: y + turn})
		d.box(draft.GreyBoard, 24, 12, x, y)
		d.mark(right, foot)
		if angle == 45 && cut > 0 {
			d.span(p{X: x, Y: y}, at)
		}
	}
}

func cornerAngle(d pen) {
	corner(10, 38)(d)
	d.Line(line(1.2, draft.Accent), draft.Arc(p{X: 106, Y: 126}, 26, 0, 0.66, 8)...)
	d.fine(p{X: 100, Y: 126}, p{X: 150, Y: 126})
}

func cornerNear(d pen) {
	d.turnedCorner()
	d.meant(p{X: 156, Y: 106}, p{X: 132, Y: 106}, p{X: 156, Y: 82})
}

func cornerFar(d pen) {
	d.turnedCorner()
	d.piece(draft.Cloth.Towards(draft.Paper, 0.25), p{X: 150, Y: 104}, p{X: 112, Y: 84}, p{X: 108, Y: 66}, p{X: 128, Y: 66}, p{X: 152, Y: 82})
	d.meant(p{X: 154, Y: 106}, p{X: 112, Y: 86}, p{X: 108, Y: 66}, p{X: 130, Y: 64}, p{X: 156, Y: 84})
}

// turnedCorner is a corner whose turn-ins lie on the board, which shows at it.
func (d pen) turnedCorner() {
	d.box(draft.GreyBoard, 34, 14, 156, 106)
	d.piece(draft.Cloth, p{X: 34, Y: 74}, p{X: 124, Y: 74}, p{X: 136, Y: 106}, p{X: 34, Y: 106})
	d.piece(draft.Cloth, p{X: 124, Y: 14}, p{X: 156, Y: 14}, p{X: 156, Y: 84}, p{X: 124, Y: 74})
}
