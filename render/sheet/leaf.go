package sheet

import (
	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// white is bare paper.
const white scene.Colour = 0xFFFFFF

// Margins of a page, mm. No office printer needs more than 6 at an edge; the foot
// has the line that names the page.
const (
	side   = 12.0
	head   = 12.0
	foot   = 18.0
	atFoot = 9.0 // baseline of the foot's line over the edge
)

// at is a place on a page: mm from its upper left corner.
type at = scene.Point

// leaf is one page while it is laid out. Places and sizes are in mm.
type leaf struct {
	*draft.Sheet
	format Format
}

func newLeaf(f Format) leaf {
	s := draft.NewSheet(f.Width/scene.Px, f.Height/scene.Px, white)
	s.Scene().Tooth = false
	return leaf{s, f}
}

// px turns a place in mm into the sheet's.
func px(p at) draft.P { return draft.P{X: p.X / scene.Px, Y: p.Y / scene.Px} }

func pxs(path []at) []draft.P {
	out := make([]draft.P, len(path))
	for i, p := range path {
		out[i] = px(p)
	}
	return out
}

// write sets a line of text.
func (l leaf) write(p at, text string, s style, align scene.Align) {
	l.Text(px(p), text, s.inPx(), align, 0)
}

// line draws an open line so many mm wide.
func (l leaf) line(width float64, through ...at) { l.Line(pen(width), pxs(through)...) }

// box draws a rectangle from its upper left corner.
func (l leaf) box(width float64, p at, w, h float64) {
	l.Outline(pen(width), pxs(rectangle(p, w, h))...)
}

// fill fills a rectangle.
func (l leaf) fill(p at, w, h float64, c scene.Colour) {
	l.Face(pxs(rectangle(p, w, h)), c, scene.None, scene.Plane{})
}

func rectangle(p at, w, h float64) []at {
	return []at{p, {X: p.X + w, Y: p.Y}, {X: p.X + w, Y: p.Y + h}, {X: p.X, Y: p.Y + h}}
}

// pen is a plain line so many mm wide.
func pen(width float64, dash ...float64) scene.Line {
	return scene.Line{Width: width, Colour: draft.Ink, Dash: dash}
}

// named writes the line at the foot of every page: what it is, of which design,
// and which page of how many.
func (in Input) named(l leaf, paper string, page, of int) {
	y := l.format.Height - atFoot
	right := words.Say("sheet.pageOf", words.With{"page": page, "of": of})
	width := l.format.Width - 2*side - small().width(right) - 6
	l.write(at{X: side, Y: y}, in.about(paper, small(), width), small(), scene.Start)
	l.write(at{X: l.format.Width - side, Y: y}, right, small(), scene.End)
}

// about is a paper's name with its design, revision and date, in so much room. A
// design's name gives way before its revision does: the revision tells two prints
// apart.
func (in Input) about(paper string, s style, room float64) string {
	mark := ""
	if in.Revision != "" {
		mark += " · " + words.Say("sheet.revision", words.With{"revision": in.Revision})
	}
	if !in.Date.IsZero() {
		mark += " · " + in.Date.String()
	}
	name := s.fitted(paper+" · "+in.title(), max(room-s.width(mark), room/2))
	return s.fitted(name+mark, room)
}

// title is the project's name.
func (in Input) title() string {
	if in.Name == "" {
		return words.Say("project.untitled")
	}
	return in.Name
}
