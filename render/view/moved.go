package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// What a drawing shows while a parameter changes: what the parameter itself is
// about in the accent with a name, and of everything that it moves the old
// outline as a ghost. Ghosts lie where the old book would lie at the drawing's
// present scale, so that the gap between old and new can be believed.

// changing tells whether there is a change to show.
func (in Input) changing() bool { return in.Before != nil && in.Faded < 1 }

// haunted tells whether there is another book to show as a ghost: the one pinned,
// or else the book as it was before a change.
func (in Input) haunted() bool { return in.Pinned != nil || in.changing() }

// other is that book.
func (in Input) other() book.Book {
	if in.Pinned != nil {
		return *in.Pinned
	}
	return *in.Before
}

// then is the input with that book alone.
func (in Input) then() Input {
	in.Book, in.Before, in.Pinned = in.other(), nil, nil
	return in
}

// strength is what is left of a change's marks, 0 … 1.
func (in Input) strength() float64 { return min(max(1-in.Faded, 0), 1) }

// pinnedNote says what the dash-dot lines are, where there are any.
func (in Input) pinnedNote() []string {
	if in.Pinned == nil {
		return nil
	}
	return []string{words.Say("compare.pinned", words.With{"name": in.PinnedName})}
}

// held is how far the frame still keeps room for the old book, 0 … 1: eased, so
// that the drawing comes to rest without a jolt.
func (in Input) held() float64 {
	switch {
	case in.Pinned != nil:
		return 1
	case !in.changing():
		return 0
	}
	s := in.strength()
	return s * s * (3 - 2*s)
}

// towards is a size on its way back from the larger of now and then.
func (in Input) towards(now, larger float64) float64 {
	return now + in.held()*(larger-now)
}

// movedName is the parameter that moves, and what it was: "Square 3", "was 6".
// False where none moves by itself, or it reads as before.
func (in Input) movedName() (name, was string, ok bool) {
	if !in.changing() {
		return "", "", false
	}
	p, known := book.Lookup(in.Moving)
	if !known || p.Part == book.PartBook {
		return "", "", false
	}
	now, before := in.valueIn(p, in.Book), in.valueIn(p, *in.Before)
	return words.Say("moved.name", words.With{"name": p.Short(), "value": now}),
		words.Say("moved.was", words.With{"value": before}), now != before
}

func (in Input) valueIn(p book.Param, b book.Book) string {
	style := p.Style(in.System)
	if in.System == measure.Metric {
		style.Decimals = 2
	}
	return p.Number(p.InForce(b), style)
}

// movedPart is the part that the moving parameter is about as these drawings
// have it: leaves, guards and block are one. None where nothing moves.
func (in Input) movedPart() book.PartID {
	if _, _, ok := in.movedName(); !ok {
		return ""
	}
	p, _ := book.Lookup(in.Moving)
	return onePart(p.Part)
}

func onePart(part book.PartID) book.PartID {
	if part == book.PartBlock || part == book.PartInterleaf {
		return book.PartFolio
	}
	return part
}

// Veils over what moves: strong on a strip, light over a whole part so that its
// material is still seen.
const (
	stripVeil = 0.30
	wholeVeil = 0.10
)

// movedMarks draws what the moving parameter is about: veil and edge of a part
// as it is now.
func (in Input) movedMarks(s *draft.Sheet, strips, edges [][]draft.P, closed bool) {
	veil, areas := stripVeil, strips
	if len(areas) == 0 && closed {
		veil, areas = wholeVeil, edges
	}
	for _, area := range areas {
		s.Veil(area, draft.Accent, max(veil*in.strength(), 1e-3))
	}
	if in.outlined() {
		return
	}
	line := draft.Fainter(draft.MovingLine(), in.strength())
	if !closed && len(edges) > 0 {
		s.Lines(line, edges...)
		return
	}
	for _, edge := range edges {
		s.Outline(line, edge...)
	}
}

// outlined tells whether the chosen part is outlined: always at rest, and while
// a parameter of its own moves.
func (in Input) outlined() bool {
	part := in.movedPart()
	return part == "" || part == onePart(in.Chosen)
}

// ghost draws what of a part's old outline lies clear of the new one, lighter
// where it lies on a dark part.
func (in Input) ghost(s *draft.Sheet, then, now [][]draft.P, first, dark bool) {
	line := draft.FollowingLine()
	if first {
		line = draft.GhostLine()
	}
	line = draft.Fainter(line, in.strength())
	if in.Pinned != nil {
		line = draft.PinnedLine()
	}
	var off, on [][]draft.P
	for _, run := range draft.Ghosts(then, now) {
		if dark && within(run, now) {
			on = append(on, run)
		} else {
			off = append(off, run)
		}
	}
	if len(off) > 0 {
		s.Lines(line, off...)
	}
	if len(on) > 0 {
		line.Colour = line.Colour.Towards(draft.Paper, ghostOnDark)
		s.Lines(line, on...)
	}
}

// ghostOnDark is how far a ghost on dark cloth is lightened.
const ghostOnDark = 0.6

// within tells whether most of a line lies inside one of some outlines.
func within(line []draft.P, outlines [][]draft.P) bool {
	at := longestSide(line)
	for _, o := range outlines {
		if scene.Path(o).Contains(at) {
			return true
		}
	}
	return false
}

// callout names what moves beside a place of it.
func (in Input) callout(s *draft.Sheet, at draft.P) {
	if name, was, ok := in.movedName(); ok {
		s.Callout(draft.Callout{At: at, Name: name, Was: was, Strong: in.strength()})
	}
}

// closedAll closes every outline.
func closedAll(outlines [][]draft.P) [][]draft.P {
	var out [][]draft.P
	for _, o := range outlines {
		if len(o) > 0 {
			out = append(out, closed(o))
		}
	}
	return out
}

// middleOf is the middle of an area's corners.
func middleOf(area []draft.P) draft.P {
	var at draft.P
	for _, p := range area {
		at.X, at.Y = at.X+p.X/float64(len(area)), at.Y+p.Y/float64(len(area))
	}
	return at
}

// longestSide is the middle of the longest stretch of a line.
func longestSide(line []draft.P) draft.P {
	var at draft.P
	longest := -1.0
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if l := (b.X-a.X)*(b.X-a.X) + (b.Y-a.Y)*(b.Y-a.Y); l > longest {
			longest, at = l, draft.P{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
		}
	}
	return at
}
