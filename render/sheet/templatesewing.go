package sheet

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/scene"
)

// sewingStrip is how wide a sewing template is, mm.
const sewingStrip = 40.0

// sewingTemplate is a strip as long as the page is high, laid on a fold: where the
// seam starts and stops, or where the stations are pierced. Its ends differ, so that
// it cannot be turned over unnoticed.
func sewingTemplate(in Input) Document {
	height := in.Book.Liner.Height
	if height <= 0 {
		height = in.Book.Resolved.Page.Height
	}
	s := newStencil(sewingStrip, height.MM(), in.Left)
	s.strip(words.Say("sheet.head"))
	sewing := in.Book.Sewing
	if len(sewing.Stations) > 0 {
		for _, d := range sewing.Stations {
			s.station(d, in.sized(d))
		}
	} else {
		s.station(sewing.Seam.Low, words.Say("sheet.seam.start", words.With{"at": in.sized(sewing.Seam.Low)}))
		s.station(sewing.Seam.High, words.Say("sheet.seam.stop", words.With{"at": in.sized(sewing.Seam.High)}))
	}
	return in.fullSize(words.Say("paper.sewing-template"), s.Scene())
}

// strip is the outline, its corner at the head cut off.
func (s stencil) strip(headWord string) {
	const corner = 12.0
	w, h := s.width, s.height
	s.cutOut(at{}, at{X: w}, at{X: w, Y: h - corner}, at{X: w - corner, Y: h}, at{Y: h})
	s.write(at{X: 3, Y: h - 8}, headWord, bold(), scene.Start, 0)
}

// station marks a distance from the head on the folded edge, x = 0.
func (s stencil) station(fromHead book.Length, label string) {
	y := s.height - fromHead.MM()
	s.mark(at{Y: y}, at{X: 10, Y: y})
	s.dot(at{X: 1.5, Y: y}, 0.8)
	s.write(at{X: 12, Y: y - body().capHeight()/2}, label, body(), scene.Start, 0)
}
