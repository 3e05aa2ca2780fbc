package view

import "grainwise/render/draft"

// apartStack is where the four layers float: one scale, one origin across, an
// origin of its own up the sheet for each.
type apartStack struct {
	covering, boards, base, sections oblique
	right                            float64 // of everything, px
}

// layerGaps are the fixed px between layers: covering to boards (it holds one
// dimension), boards to the block's base (the spine piece's leader), base to folds.
func layerGaps(b apartBase) [3]float64 { return [3]float64{38, 26, b.gap} }

const (
	bandShare = 0.18 // of the height to spare goes to each band
	bandMost  = 26.0
)

// across is how far the drawing reaches left and right of x = 0, mm.
func (s apartSizes) across(b apartBase) (left, right float64) {
	left = min(-s.coverWidth/2-depthX*s.marginY, -b.half+depthX*b.tail)
	right = max(s.coverWidth/2+depthX*(s.coverHeight-s.marginY),
		b.half+depthX*(b.tail+b.height),
		b.outerX(s.sections)+s.section+depthX*(s.tail+s.pageHeight))
	return left, right
}

// up is the height of all layers without bands, mm.
func (s apartSizes) up(b apartBase) float64 {
	rise := depthY*(s.coverHeight+s.boardHeight) + s.board
	block := depthY*(s.pageHeight+s.tail-b.tail) + s.pageWidth
	return rise + max(b.ridge+block, max(b.ridge, b.wing)+depthY*b.height)
}

// stackIn is the largest stack that fits a frame of px. Height to spare goes to
// the bands first, the rest above and below.
func (s apartSizes) stackIn(frame draft.Box, b apartBase) apartStack {
	left, right := s.across(b)
	wide, high := frame.X1-frame.X0, frame.Y1-frame.Y0
	gaps := layerGaps(b)
	free := high - sum(gaps)
	scale := max(min(wide/(right-left), free/s.up(b)), 1e-3)
	spare := max(free-scale*s.up(b), 0)
	for i := range gaps {
		gaps[i] += min(bandShare*spare, bandMost)
	}
	rest := max(high-sum(gaps)-scale*s.up(b), 0)
	from := draft.P{X: frame.X0 + (wide-scale*(right-left))/2 - scale*left, Y: frame.Y1 - rest/2}
	st := s.pile(b, from, scale, gaps)
	st.right = from.X + scale*right
	return st
}

// pile sets the layers from the covering up; from is x = 0 on the covering's
// tail edge.
func (s apartSizes) pile(b apartBase, from draft.P, scale float64, gaps [3]float64) apartStack {
	layer := func(front, tail float64) oblique { // front is the px of the edge at y = tail, z = 0
		return oblique{draft.P{X: from.X, Y: front + scale*depthY*tail}, scale}
	}
	st := apartStack{covering: layer(from.Y, -s.marginY)}
	y := from.Y - scale*depthY*s.coverHeight - gaps[0]
	st.boards = layer(y, 0)
	y -= scale*(depthY*s.boardHeight+s.board) + gaps[1]
	st.base = layer(y, b.tail)
	st.sections = layer(st.base.at(0, s.tail, b.ridge).Y-gaps[2], s.tail)
	return st
}

func sum(gaps [3]float64) float64 { return gaps[0] + gaps[1] + gaps[2] }
