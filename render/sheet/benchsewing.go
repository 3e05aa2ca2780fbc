package sheet

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/model/measure"
	"grainwise/render/scene"
)

// sewingRule is the fold drawn lying, its head at the left, with the seam or the
// stations and their distances from the head.
func (in Input) sewingRule(w float64) block {
	return block{height: 27, draw: func(l leaf, p at) {
		height := in.Book.Block.Height.MM()
		y := p.Y + 15
		x := func(d book.Length) float64 { return p.X + d.MM()/height*w }
		l.line(0.3, at{X: p.X, Y: y}, at{X: p.X + w, Y: y})
		l.line(0.3, at{X: p.X, Y: y - 5}, at{X: p.X, Y: y + 5})
		l.line(0.3, at{X: p.X + w, Y: y - 5}, at{X: p.X + w, Y: y + 5})
		l.write(at{X: p.X + 1.5, Y: p.Y + 25}, words.Say("sheet.head"), bold(), scene.Start)
		l.write(at{X: p.X + w - 1.5, Y: p.Y + 25}, words.Say("sheet.tail"), body(), scene.End)
		if len(in.Book.Sewing.Stations) == 0 {
			seam := in.Book.Sewing.Seam
			l.Line(pen(0.7, 2.2, 1.1), px(at{X: x(seam.Low), Y: y}), px(at{X: x(seam.High), Y: y}))
		}
		for _, m := range in.marksOnFold() {
			l.line(0.4, at{X: x(m), Y: y - 3}, at{X: x(m), Y: y + 3})
		}
		in.foldFigures(l, p, w, x)
	}}
}

// marksOnFold are the stations, or where the seam starts and stops.
func (in Input) marksOnFold() []book.Length {
	if s := in.Book.Sewing.Stations; len(s) > 0 {
		return s
	}
	return []book.Length{in.Book.Sewing.Seam.Low, in.Book.Sewing.Seam.High}
}

// foldFigures writes the distances over their marks, as large as all of them have
// room for; where they have none, the list below says them.
func (in Input) foldFigures(l leaf, p at, w float64, x func(book.Length) float64) {
	marks := in.marksOnFold()
	for _, s := range []style{number(), body(), small()} {
		if !in.figuresFit(s, marks, p.X, w, x) {
			continue
		}
		for _, m := range marks {
			l.write(at{X: within(x(m), s.width(in.size(m)), p.X, w), Y: p.Y + 9}, in.size(m), s, scene.Middle)
		}
		return
	}
}

func (in Input) figuresFit(s style, marks []book.Length, left, w float64, x func(book.Length) float64) bool {
	end := left
	for _, m := range marks {
		wide := s.width(in.size(m))
		c := within(x(m), wide, left, w)
		if c-wide/2 < end {
			return false
		}
		end = c + wide/2 + 2
	}
	return true
}

// within keeps a centred text inside the line.
func within(c, wide, left, w float64) float64 {
	return max(left+wide/2, min(left+w-wide/2, c))
}

// sewingNumbers are what the machine or the needle is set to.
func (in Input) sewingNumbers(w float64) block {
	b := in.Book
	r := b.Resolved
	thread := figure{"bench.thread", words.Say("bench.threadOf", words.With{"length": in.metres(b.Sewing.ThreadPerBook), "thick": in.thin(b.Sewing.ThreadDiameter)})}
	if len(b.Sewing.Stations) > 0 {
		all := ""
		for i, s := range b.Sewing.Stations {
			if i > 0 {
				all += " · "
			}
			all += in.size(s)
		}
		return stacked(in.numbers([]figure{{"bench.stations", all}}, w, 1), in.numbers([]figure{thread, {"bench.stationCount", fmt.Sprint(len(b.Sewing.Stations))}}, w, 2))
	}
	return in.numbers([]figure{
		{"bench.seamStart", in.sized(b.Sewing.Seam.Low)}, {"bench.seamStop", in.sized(b.Sewing.Seam.High)}, {"bench.stitch", in.sized(r.Sewing.Stitch)},
		{"bench.fence", in.sized(b.Fence())}, thread, {"bench.stitches", fmt.Sprint(b.Sewing.Stitches)},
	}, w, 3)
}

// metres is a long length, in metres or yards, never less than is needed.
func (in Input) metres(l book.Length) string {
	return making.Run(l, measure.Style{System: in.System})
}
