package sheet

import (
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// stencil is a drawing at true size that is laid on the work. Its places are mm
// from its lower left corner, x right and y up; mirrored, it is drawn for the
// other hand, its texts still to be read.
type stencil struct {
	*draft.Sheet
	width, height float64
	mirrored      bool
}

func newStencil(width, height float64, mirrored bool) stencil {
	s := draft.NewSheet(width/scene.Px, height/scene.Px, white)
	s.Scene().Tooth = false
	return stencil{s, width, height, mirrored}
}

// px is a place on the sheet.
func (s stencil) px(p at) draft.P {
	if s.mirrored {
		p.X = s.width - p.X
	}
	return px(at{X: p.X, Y: s.height - p.Y})
}

func (s stencil) pxs(path []at) []draft.P {
	out := make([]draft.P, len(path))
	for i, p := range path {
		out[i] = s.px(p)
	}
	return out
}

// Lines of a stencil, mm.
const (
	cutWidth    = 0.3
	creaseWidth = 0.2
	markWidth   = 0.2
)

// cutOut is a closed line that the knife follows.
func (s stencil) cutOut(around ...at) { s.Outline(pen(cutWidth), s.pxs(around)...) }

// crease is a fold.
func (s stencil) crease(from, to at) { s.Line(pen(creaseWidth, 4, 2), s.px(from), s.px(to)) }

// mark is a line to see.
func (s stencil) mark(through ...at) { s.Line(pen(markWidth), s.pxs(through)...) }

// dashed is a line to see of which nothing is cut or folded.
func (s stencil) dashed(through ...at) { s.Line(pen(markWidth, 1.2, 1.2), s.pxs(through)...) }

// dot is a place to pierce.
func (s stencil) dot(p at, radius float64) { s.Dot(s.px(p), radius/scene.Px, draft.Ink) }

// write sets a text; mirrored, it starts where it would have ended.
func (s stencil) write(p at, text string, st style, align scene.Align, turn int) {
	if s.mirrored && turn%2 == 0 {
		align = [...]scene.Align{scene.Start: scene.End, scene.Middle: scene.Middle, scene.End: scene.Start}[align]
	}
	s.Text(s.px(p), text, st.inPx(), align, turn)
}
