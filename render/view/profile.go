package view

import (
	"math"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
)

// profile is the closed book's cross-section in millimetres, seen from the
// tail: x = 0 is the block's back and grows towards the fore edge, y = 0 is
// the middle of the thickness. Only the upper half is kept: the lower mirrors.
type profile struct {
	sections, leaves    int     // leaves of one section
	width               float64 // of the block
	spineHalf, foreHalf float64 // half thicknesses of the block
	board, spine, cloth float64 // thicknesses
	liner               float64 // of paper between the sections and a board
	inset               float64 // of the folds from the block's back
	spineWidth          float64
	setBack             float64 // board's spine edge from the block's back
	groove              float64
	fore                float64 // board's fore edge
	lift                float64 // of the board's spine edge where it rides
	turnIn              float64 // seen on the board's inner face
	pleat               float64
	leafFore            float64 // fore edge of the pasted leaf
	page, creep         float64
	closes              bool
	jointFree           float64 // of its width, what the bends leave
	filledHalf          float64 // half thickness at the fore edge as filled by its owner; 0 where nothing is added
	linked              linkedProfile
	quarter             quarterProfile
}

func profileOf(b book.Book) profile {
	r := b.Resolved
	p := profile{
		sections: r.Sections.Count, leaves: 2 * r.Sections.Folios,
		width: b.Block.Width.MM(), spineHalf: b.Block.SpineThickness.MM() / 2, foreHalf: b.Block.ForeEdgeThickness.MM() / 2,
		board: r.Stock.Board.Thickness.MM(), spine: r.SpineThickness().MM(), cloth: r.Stock.Covering.Thickness.MM(),
		liner: r.Stock.Liner.Thickness.MM(), spineWidth: b.ToCut.SpineWidth.MM(),
		setBack: b.ToCut.SetBack.MM(), groove: r.Groove().MM(),
		turnIn: b.TurnInSeen().MM(), pleat: r.Liner.PleatDepth.MM(),
		page: r.Page.Width.MM(), closes: b.ToCut.Closes,
	}
	if b.Block.FilledForeEdge > b.Block.ForeEdgeThickness {
		p.filledHalf = b.Block.FilledForeEdge.MM() / 2
	}
	p.inset = p.liner
	p.creep = p.width - p.page
	p.quarter = quarterOf(b)
	if linked(b) {
		p.linked = linkedOf(b)
		p.liner, p.inset, p.pleat = 2*p.linked.endpaper, p.linked.mull+p.linked.tape, 0
	}
	p.jointFree = (b.ToCut.JointWidth - r.Stock.Covering.Thickness.Times(r.Joint.BendLoss)).MM()
	if !p.closes {
		p.ride()
	}
	p.fore = p.setBack + b.ToCut.BoardWidth.MM()
	p.leafFore = p.fore - b.Casing.ForeEdge.MM()
	return p
}

// ride is what a joint does that is too narrow to close: it cannot be pressed
// into a groove, so it runs straight from the spine piece to the board's outer
// edge. The board comes to lie as far back as the joint lets it, and where
// that is past the block's back it rides up on the spine piece.
func (p *profile) ride() {
	rise := (p.spineWidth/2 - p.spineHalf) - p.board
	h := math.Sqrt(max(p.jointFree*p.jointFree-rise*rise, 0))
	p.groove, p.setBack = 0, h-p.spine
	if p.setBack < 0 {
		p.lift = max(p.spineWidth/2-p.spineHalf, 0)
	}
}

// blockTop is the board's inner face, and so the block's upper face, at x.
func (p profile) blockTop(x float64) float64 {
	return p.spineHalf + (p.foreHalf-p.spineHalf)*p.taper(x)
}

// taper is how much of the swell is gone at x: the block is as thick as its
// back up to the joint, then tapers evenly to its fore edge and, for the
// boards, beyond.
func (p profile) taper(x float64) float64 {
	from := max(p.setBack, 0)
	return max(x-from, 0) / max(p.width-from, 1)
}

// boardIn is the board's inner face, which leaves the block where it rides.
func (p profile) boardIn(x float64) float64 {
	y := p.blockTop(x)
	if p.lift > 0 && p.fore > p.setBack {
		y += p.lift * max(p.fore-x, 0) / (p.fore - p.setBack)
	}
	return y
}

// boardOut is the board's outer face.
func (p profile) boardOut(x float64) float64 { return p.boardIn(x) + p.board }

// boardOutline is the upper board.
func (p profile) boardOutline() []draft.P {
	return []draft.P{
		{X: p.setBack, Y: p.boardIn(p.setBack)}, {X: p.fore, Y: p.boardIn(p.fore)},
		{X: p.fore, Y: p.boardOut(p.fore)}, {X: p.setBack, Y: p.boardOut(p.setBack)},
	}
}

// coveringPath is the covering's inner face, from the end of the turn-in round
// the upper board and through the joint to the middle of the spine piece.
func (p profile) coveringPath() []draft.P {
	end := max(p.fore-max(p.turnIn, 0), p.setBack)
	path := []draft.P{
		{X: end, Y: p.boardIn(end)},
		{X: p.fore, Y: p.boardIn(p.fore)}, {X: p.fore, Y: p.boardOut(p.fore)},
		{X: p.setBack, Y: p.boardOut(p.setBack)},
	}
	if p.groove > 0 {
		path = append(path, draft.P{X: p.setBack, Y: p.boardOut(p.setBack) - p.groove})
	}
	return append(path, draft.P{X: -p.spine, Y: p.spineWidth / 2}, draft.P{X: -p.spine, Y: 0})
}

// jointPath is the covering between board and spine piece.
func (p profile) jointPath() []draft.P {
	path := p.coveringPath()
	return path[3 : len(path)-1]
}

// jointLength is how long the covering is between board and spine piece.
func (p profile) jointLength() float64 {
	sum, path := 0.0, p.jointPath()
	for i := 1; i < len(path); i++ {
		sum += math.Hypot(path[i].X-path[i-1].X, path[i].Y-path[i-1].Y)
	}
	return sum
}

// coveringMiddle is the middle of the covering's thickness, its bends rounded;
// of a quarter covering, the spine cloth's.
func (p profile) coveringMiddle() []draft.P {
	path := p.coveringPath()
	if p.quarter.is {
		path = p.clothPath()
	}
	return middle(path, p.cloth)
}

// middle is the middle of a sheet that lies on a path with its inner face, its
// bends rounded.
func middle(path []draft.P, thick float64) []draft.P {
	return offset(draft.Rounded(path, 0.35+0.5*thick), -thick/2)
}

// offset is a row of points moved to the left of its direction by so much,
// mitred at the bends (no mitre longer than three times the distance).
func offset(path []draft.P, by float64) []draft.P {
	out := make([]draft.P, len(path))
	for i := range path {
		before, after := normal(path, i-1), normal(path, i)
		if before == (draft.P{}) {
			before = after
		}
		if after == (draft.P{}) {
			after = before
		}
		m := draft.P{X: before.X + after.X, Y: before.Y + after.Y}
		l2 := m.X*m.X + m.Y*m.Y
		reach := 2 / max(l2, 2.0/9)
		out[i] = draft.P{X: path[i].X + by*reach*m.X, Y: path[i].Y + by*reach*m.Y}
	}
	return out
}

// normal is the unit vector to the left of the i-th stretch; nought where
// there is none.
func normal(path []draft.P, i int) draft.P {
	if i < 0 || i+1 >= len(path) {
		return draft.P{}
	}
	dx, dy := path[i+1].X-path[i].X, path[i+1].Y-path[i].Y
	l := math.Hypot(dx, dy)
	if l == 0 {
		return draft.P{}
	}
	return draft.P{X: -dy / l, Y: dx / l}
}

// band is one section's place in the block: its lower and upper edge at x,
// counted from the tail-end side of the drawing upwards.
func (p profile) band(i int, x float64) (low, high float64) {
	n := float64(p.sections)
	at := func(half, between float64) (float64, float64) {
		inner := 2 * (half - p.liner)
		pitch := inner / n
		mid := -inner/2 + (float64(i)+0.5)*pitch
		thick := max(pitch-between, pitch*0.4)
		return mid - thick/2, mid + thick/2
	}
	gap := 0.0
	if p.pleat > 0 && p.sections > 1 {
		gap = 2 * p.liner
	}
	l0, h0 := at(p.spineHalf, gap)
	l1, h1 := at(p.foreHalf, 0)
	f := p.taper(x)
	return l0 + (l1-l0)*f, h0 + (h1-h0)*f
}

// leafPair is folio j of section i, 0 outermost: from the fore edge along its
// lower half round the fold and back, as far as right.
func (p profile) leafPair(i, j int, right float64) []draft.P {
	folios := p.leaves / 2
	share := 1 - float64(j)/float64(folios) // of the section's half thickness
	edge := min(p.foreOf(j), right)
	low, high := p.band(i, 0)
	half := (high - low) / 2 * share
	depth := min(half, p.width/4)
	start := p.inset + (high-low)/2 - half // nested folds stand one inside the other
	centre := start + depth
	path := []draft.P{p.inBand(i, edge, -share), p.inBand(i, centre, -share)}
	for k := 1; k < foldSteps; k++ {
		sin, cos := math.Sincos(math.Pi * float64(k) / foldSteps)
		path = append(path, p.inBand(i, centre-depth*sin, -share*cos))
	}
	return append(path, p.inBand(i, centre, share), p.inBand(i, edge, share))
}

const foldSteps = 10

// section is the outline of section i as far as right: the fold, and at the
// fore edge the inner folios standing out.
func (p profile) section(i int, right float64) []draft.P {
	out := p.leafPair(i, 0, right)
	folios := p.leaves / 2
	share := func(j int) float64 { return 1 - float64(j)/float64(folios) }
	for j := range folios {
		out = append(out, p.inBand(i, min(p.foreOf(j), right), share(j)), p.inBand(i, min(p.foreOf(j), right), share(j+1)))
	}
	for j := folios - 1; j >= 0; j-- {
		out = append(out, p.inBand(i, min(p.foreOf(j), right), -share(j+1)), p.inBand(i, min(p.foreOf(j), right), -share(j)))
	}
	return out
}

// foreOf is the fore edge of folio j: the inner ones creep out.
func (p profile) foreOf(j int) float64 {
	folios := p.leaves / 2
	if folios < 2 {
		return p.page
	}
	return p.page + p.creep*float64(j)/float64(folios-1)
}

// inBand is a point of section i at x, -1 … 1 of its thickness.
func (p profile) inBand(i int, x, share float64) draft.P {
	low, high := p.band(i, x)
	return draft.P{X: x, Y: (low+high)/2 + share*(high-low)/2}
}

// linerPath is the liner from the upper board's pasted leaf down through every
// valley, round the section that stands in it, and over every pleat to the
// lower one's.
func (p profile) linerPath() []draft.P {
	half := p.liner / 2
	edge := max(p.leafFore, 0)
	path := []draft.P{{X: edge, Y: p.blockTop(edge) - half}}
	for i := p.sections - 1; i >= 0; i-- {
		path = append(path, p.valley(i)...)
		if i > 0 && p.pleat > 0 {
			low, _ := p.band(i, p.pleat)
			_, high := p.band(i-1, p.pleat)
			path = append(path, draft.P{X: p.pleat, Y: max(low, high) - half*0.2}, draft.P{X: p.pleat, Y: min(low, high) + half*0.2})
		}
	}
	return append(path, draft.P{X: edge, Y: half - p.blockTop(edge)})
}

// valley is the liner's middle round the fold of section i, from above.
func (p profile) valley(i int) []draft.P {
	low, high := p.band(i, 0)
	mid, radius := (low+high)/2, (high-low)/2+p.liner/2
	depth := min(radius, p.width/4)
	centre := p.liner/2 + depth
	var out []draft.P
	for k := range foldSteps + 1 {
		sin, cos := math.Sincos(math.Pi * float64(k) / foldSteps)
		out = append(out, draft.P{X: centre - depth*sin, Y: mid + radius*cos})
	}
	return out
}

// back is the outer face of the covering at the spine.
func (p profile) back() float64 { return -p.spine - p.cloth }

// halfThickness is half of the most that the drawing is thick.
func (p profile) halfThickness() float64 {
	most := max(p.boardOut(p.setBack), p.boardOut(p.fore), p.spineWidth/2, p.filledOut(p.fore))
	return most + p.outside()
}

// leastPart is the least that a part may be thick on the sheet, px.
const leastPart = 3.0

// thickened is the profile with every part of the case thick enough to see at
// a scale [px/mm]. They grow outwards: nothing inside them moves.
func (p profile) thickened(scale float64) profile {
	least := leastPart / scale
	p.board, p.cloth = max(p.board, least), max(p.cloth, least)
	if p.quarter.is {
		p.quarter.side = max(p.quarter.side, least)
	}
	p.spine, p.spineWidth = max(p.spine, least), max(p.spineWidth, least)
	return p
}

// thicker names the parts that are drawn thicker than they are, "" for none.
func (p profile) thicker(drawn profile) string {
	var parts []string
	for _, of := range []struct {
		key     string
		thicker bool
	}{
		{"endon.spine-piece", drawn.spine > p.spine || drawn.spineWidth > p.spineWidth},
		{"endon.board", drawn.board > p.board},
		{"endon.covering", drawn.cloth > p.cloth || drawn.quarter.side > p.quarter.side},
	} {
		if of.thicker {
			parts = append(parts, words.Say(of.key))
		}
	}
	return strings.Join(parts, ", ")
}

// JointLength is how long the closed book's covering is drawn between board
// and spine piece, in millimetres: a check of the drawing against the joint.
func JointLength(b book.Book) float64 { return profileOf(b).jointLength() }
