package view

import "grainwise/render/draft"

// apartStack is where the four layers float: one scale, one origin across, an
// origin of its own up the sheet for each.
type apartStack struct {
	covering, boards, liner, sections oblique
	left, right, top, bottom          float64 // of everything, px
}

// layerGaps are the fixed px between layers: covering to boards (it holds one
// dimension), boards to liner (the spine piece's leader), ridges to folds.
func layerGaps() [3]float64 { return [3]float64{38, 26, 24} }

const (
	bandShare = 0.18 // of the height to spare goes to each band
	bandMost  = 26.0
)

// across is how far the drawing reaches left and right of x = 0, mm.
func (s apartSizes) across(h halfOpen) (left, right float64) {
	left = min(-s.coverWidth/2-depthX*s.marginY, -h.spread/2+depthX*s.linerTail)
	right = max(s.coverWidth/2+depthX*(s.coverHeight-s.marginY),
		h.spread/2+depthX*(s.linerTail+s.linerHeight),
		s.valleyX(h, s.sections-1)+s.section+depthX*(s.tail+s.pageHeight))
	return left, right
}

// up is the height of all layers without bands, mm.
func (s apartSizes) up(h halfOpen) float64 {
	rise := depthY*(s.coverHeight+s.boardHeight) + s.board + h.ridge
	block := depthY*(s.pageHeight+s.tail-s.linerTail) + s.pageWidth
	return rise + max(block, depthY*s.linerHeight)
}

// stackIn is the largest stack that fits a frame of px.
func (s apartSizes) stackIn(frame draft.Box, h halfOpen) apartStack {
	left, right := s.across(h)
	gaps := layerGaps()
	wide, high := frame.X1-frame.X0, frame.Y1-frame.Y0
	free := high - gaps[0] - gaps[1] - gaps[2]
	scale := max(min(wide/(right-left), free/s.up(h)), 1e-3)
	spare := max(free-scale*s.up(h), 0)
	for i := range gaps {
		gaps[i] += min(bandShare*spare, bandMost)
	}
	rest := max(high-gaps[0]-gaps[1]-gaps[2]-scale*s.up(h), 0)
	x := frame.X0 + (wide-scale*(right-left))/2 - scale*left
	y := frame.Y1 - rest/2
	st := apartStack{left: x + scale*left, right: x + scale*right, bottom: y}
	layer := func(front, tail float64) oblique { // front is the px of the edge at y = tail, z = 0
		return oblique{draft.P{X: x, Y: front + scale*depthY*tail}, scale}
	}
	st.covering = layer(y, -s.marginY)
	y -= scale*depthY*s.coverHeight + gaps[0]
	st.boards = layer(y, 0)
	y -= scale*(depthY*s.boardHeight+s.board) + gaps[1]
	st.liner = layer(y, s.linerTail)
	y = st.liner.at(0, s.tail, h.ridge).Y - gaps[2]
	st.sections = layer(y, s.tail)
	st.top = min(st.sections.at(0, s.tail+s.pageHeight, s.pageWidth).Y, st.liner.at(0, s.linerTail+s.linerHeight, 0).Y)
	return st
}
