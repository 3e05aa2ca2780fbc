package view

import (
	"grainwise/model/book"
	"grainwise/render/draft"
)

const (
	threadTight = 5.0 // px across between two threads, half of it clear; below it one stands for several
	linkReach   = 2.2 // mm of a link stitch along the fold
	kettleDot   = 1.1 // px
)

// threadsALine is how many sections one drawn thread stands for.
func (a linkedBlock) threadsALine() int {
	n := 1
	for float64(n)*a.base.seat*a.stack.base.scale < threadTight && n < a.size.sections {
		n++
	}
	return n
}

// drawSewing draws the sewing as it comes to lie on the back: along each fold,
// round the tapes or linked to the section before, with a kettle stitch at
// either end.
func (a linkedBlock) drawSewing() {
	if len(a.stations) < 2 {
		return
	}
	s := a.sheet.About(book.PartBlock, "sewing.method")
	var lines, links [][]draft.P
	every, last := a.threadsALine(), -1
	for i := 0; i < a.size.sections; i += every {
		lines = append(lines, a.threadAlong(a.seatX(i))...)
		if last >= 0 {
			links = append(links, a.linksBetween(a.seatX(last), a.seatX(i))...)
		}
		last = i
	}
	s.Lines(draft.ThreadLine(a.thread*a.stack.base.scale), append(lines, links...)...)
	for i := 0; i < a.size.sections; i += every {
		for _, y := range []float64{a.stations[0], a.stations[len(a.stations)-1]} {
			s.Dot(a.stack.base.at(a.seatX(i), y, 0), kettleDot, draft.Thread.Times(0.62))
		}
	}
}

// seatX is where a section comes to stand in the back.
func (a *apart) seatX(i int) float64 {
	return (float64(i) - float64(a.size.sections-1)/2) * a.base.seat
}

// threadAlong is the thread of one section from kettle to kettle; it passes
// under the tapes.
func (a linkedBlock) threadAlong(x float64) [][]draft.P {
	var lines [][]draft.P
	from := a.stations[0]
	run := func(to float64) {
		if to > from {
			lines = append(lines, []draft.P{a.stack.base.at(x, from, 0), a.stack.base.at(x, to, 0)})
		}
	}
	for _, tape := range a.tapes {
		run(tape[0])
		from = max(from, tape[1])
	}
	run(a.stations[len(a.stations)-1])
	return lines
}

// linksBetween are the stitches that hold a section to the one before: kettles
// at the ends and, without tapes, a link at every station between.
func (a linkedBlock) linksBetween(before, x float64) [][]draft.P {
	o, last := a.stack.base, len(a.stations)-1
	var links [][]draft.P
	for i, y := range a.stations {
		switch {
		case i == 0 || i == last:
			links = append(links, []draft.P{o.at(before, y, 0), o.at(x, y, 0)})
		case len(a.tapes) == 0:
			links = append(links, []draft.P{o.at(x, y-linkReach, 0), o.at(before, y, 0), o.at(x, y+linkReach, 0)})
		}
	}
	return links
}
