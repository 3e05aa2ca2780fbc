package sheet

import (
	"strings"

	"grainwise/model/making"
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

// page is a place as mm from the upper left corner.
func (s stencil) page(p at) at {
	if s.mirrored {
		p.X = s.width - p.X
	}
	return at{X: p.X, Y: s.height - p.Y}
}

// px is a place on the sheet.
func (s stencil) px(p at) draft.P { return px(s.page(p)) }

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
	thinWidth   = 0.15
)

// cutOut is a closed line that the knife follows.
func (s stencil) cutOut(around ...at) { s.On(scene.Cut).Outline(pen(cutWidth), s.pxs(around)...) }

// crease is a fold of the stencil itself.
func (s stencil) crease(from, to at) {
	s.On(scene.Crease).Line(pen(creaseWidth, 4, 2), s.px(from), s.px(to))
}

// line is a line to see, in any pen.
func (s stencil) line(p scene.Line, through ...at) { s.On(scene.Draw).Line(p, s.pxs(through)...) }

// mark is a line to see.
func (s stencil) mark(through ...at) { s.line(pen(markWidth), through...) }

// dashed is a line to see of which nothing is cut or folded.
func (s stencil) dashed(through ...at) { s.line(pen(markWidth, 1.2, 1.2), through...) }

// area is a shape of one tint.
func (s stencil) area(c scene.Colour, around ...at) {
	s.On(scene.Draw).Face(s.pxs(around), c, scene.None, scene.Plane{})
}

// openArrow points to the left, its tip at a place.
func (s stencil) openArrow(tip at, long float64) {
	s.mark(tip, at{X: tip.X + long, Y: tip.Y})
	s.mark(at{X: tip.X + 4, Y: tip.Y + 2.2}, tip, at{X: tip.X + 4, Y: tip.Y - 2.2})
}

// span is a dimension line with its heads.
func (s stencil) span(a, b at) { s.On(scene.Draw).Span(s.px(a), s.px(b)) }

// write sets a text; mirrored, it starts where it would have ended.
func (s stencil) write(p at, text string, st style, align scene.Align, turn int) {
	s.On(scene.Draw).Text(s.px(p), text, st.inPx(), s.aligned(align, turn), turn)
}

func (s stencil) aligned(align scene.Align, turn int) scene.Align {
	if s.mirrored && turn%2 == 0 {
		return [...]scene.Align{scene.Start: scene.End, scene.Middle: scene.Middle, scene.End: scene.Start}[align]
	}
	return align
}

// level sets a text whose capitals stand in the middle of a place's height.
func (s stencil) level(p at, text string, st style, align scene.Align) {
	s.write(at{X: p.X, Y: p.Y - st.capHeight()/2}, text, st, align, 0)
}

// upright sets a text that reads from the right, its capitals in the middle of a
// place's width.
func (s stencil) upright(p at, text string, st style, align scene.Align) {
	s.On(scene.Draw).Text(s.uprightAt(p, st), text, st.inPx(), align, 1)
}

func (s stencil) uprightAt(p at, st style) draft.P {
	q := s.page(p)
	return px(at{X: q.X + st.capHeight()/2, Y: q.Y})
}

// tryUpright sets such a text where there is room for it, and says whether.
func (s stencil) tryUpright(p at, text string, st style, align scene.Align) bool {
	return s.On(scene.Draw).Try(s.uprightAt(p, st), text, st.inPx(), align, 1)
}

// tryLevel sets a text as level does, where there is room for it.
func (s stencil) tryLevel(p at, text string, st style, align scene.Align) bool {
	p.Y -= st.capHeight() / 2
	return s.On(scene.Draw).Try(s.px(p), text, st.inPx(), s.aligned(align, 0), 0)
}

// lines sets a text from its upper left corner, broken to the room, and returns
// the height below it.
func (s stencil) lines(p at, text string, st style, room float64) float64 {
	if s.mirrored {
		p.X = s.width - p.X - room
	}
	for _, line := range st.wrapped(text, room) {
		s.On(scene.Draw).Text(px(at{X: p.X, Y: s.height - p.Y + st.first()}), line, st.inPx(), scene.Start, 0)
		p.Y -= st.leading
	}
	return p.Y
}

// fact is a number of the work and what it is, a row of numbers, or a remark without
// any.
type fact struct {
	what, value string
	row         []string // in place of a value: broken between its numbers only
}

// usualCare is the usual caution of the work that a template is for, said after its
// facts.
func usualCare(c making.Caution) fact { return fact{what: c.Text()} }

// told is a fact of one number.
func told(what, value string) fact { return fact{what: what, value: value} }

const factGap = 2.4

// set are the styles of a fact in a room, and its value as it is broken: large
// where it fits on one line.
func (f fact) set(room float64) (what, value style, text string) {
	text = f.value
	if f.row != nil {
		text = strings.Join(f.row, dotted)
	}
	if number().width(text) <= room {
		return quiet(), number(), text
	}
	if f.row != nil {
		text = rows(f.row, bold(), room)
	}
	return quiet(), bold(), text
}

// dotted stands between two numbers of a row.
const dotted = " · "

// rows breaks a row of numbers into lines.
func rows(all []string, st style, room float64) string {
	text, line := "", ""
	for i, n := range all {
		longer := n
		if i > 0 {
			longer = line + dotted + n
		}
		if i > 0 && st.width(longer) > room {
			text, longer = text+line+"\n", n
		}
		line = longer
	}
	return text + line
}

// factsHeight is how high facts stand, set in a column.
func factsHeight(facts []fact, room float64) float64 {
	height := 0.0
	for i, f := range facts {
		what, value, text := f.set(room)
		height += float64(len(what.wrapped(f.what, room))) * what.leading
		if text != "" {
			height += float64(len(value.wrapped(text, room))) * value.leading
		}
		if i > 0 {
			height += factGap
		}
	}
	return height
}

// facts sets them from their upper left corner.
func (s stencil) facts(p at, facts []fact, room float64) {
	for _, f := range facts {
		what, value, text := f.set(room)
		p.Y = s.lines(p, f.what, what, room)
		if text != "" {
			p.Y = s.lines(p, text, value, room)
		}
		p.Y -= factGap
	}
}
