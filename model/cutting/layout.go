package cutting

import (
	"cmp"
	"slices"
)

// group is a build with cuts of one direction gathered: its parts lie side by
// side. A group without parts is a piece. Groups may be shared.
type group struct {
	cut           Direction
	parts         []*group
	fit           int
	width, height int64  // kerf included
	key           uint64 // the same for groups that are cut alike
}

// gatherer turns builds into groups; what they share is gathered once.
type gatherer struct {
	fits []fit
	made map[*build]*group
}

func newGatherer(fits []fit) *gatherer {
	return &gatherer{fits, map[*build]*group{}}
}

// gathered turns a build into groups, parts that are alike together and the
// larger ones first, so that what is left over lies in one place.
func (l *gatherer) gathered(b *build) *group {
	if g, known := l.made[b]; known {
		return g
	}
	g := l.group(b)
	l.made[b] = g
	return g
}

func (l *gatherer) group(b *build) *group {
	if b.cut == "" {
		return &group{fit: b.fit, width: l.fits[b.fit].w, height: l.fits[b.fit].h, key: mixed(1, uint64(b.fit))}
	}
	g := &group{cut: b.cut, fit: Waste}
	l.collect(g, b)
	if len(g.parts) == 1 {
		return g.parts[0]
	}
	g.measure()
	slices.SortFunc(g.parts, g.before)
	g.key = uint64(len(g.cut))
	for _, p := range g.parts {
		g.key = mixed(g.key, p.key)
	}
	return g
}

// collect gathers all parts that cuts of the group's direction set free.
func (l *gatherer) collect(g *group, b *build) {
	for _, part := range []*build{b.first, b.second} {
		switch {
		case part == nil:
		case part.cut == g.cut:
			l.collect(g, part)
		default:
			if inner := l.gathered(part); inner.cut == g.cut {
				g.parts = append(g.parts, inner.parts...)
			} else {
				g.parts = append(g.parts, inner)
			}
		}
	}
}

// mixed adds a number to a key: two rounds of the finaliser of MurmurHash3.
func mixed(key, n uint64) uint64 {
	key = key*31 + n
	key = (key ^ key>>33) * 0xff51afd7ed558ccd
	key = (key ^ key>>33) * 0xc4ceb9fe1a85ec53
	return key ^ key>>33
}

func (g *group) measure() {
	for _, p := range g.parts {
		if g.cut == Vertical {
			g.width, g.height = g.width+p.width, max(g.height, p.height)
		} else {
			g.width, g.height = max(g.width, p.width), g.height+p.height
		}
	}
}

// before puts the thicker part first, as the bench cuts them, then the one that
// fills the strip across.
func (g *group) before(a, b *group) int {
	along, across := func(p *group) int64 { return p.width }, func(p *group) int64 { return p.height }
	if g.cut == Horizontal {
		along, across = across, along
	}
	if c := cmp.Or(cmp.Compare(along(b), along(a)), cmp.Compare(across(b), across(a))); c != 0 || a == b {
		return c
	}
	return cmp.Or(cmp.Compare(a.cut, b.cut), cmp.Compare(a.fit, b.fit), cmp.Compare(len(a.parts), len(b.parts)), cmp.Compare(a.key, b.key))
}

// layer lays groups out on a sheet.
type layer struct {
	fits []fit
	kerf int64
}

// lay cuts a group out of a rectangle; rest that is left over is cut off first,
// so that the larger offcut stays whole, or last where that spares a setting of
// the stop. The rectangle's sizes are without the kerf beyond its far edges.
func (l layer) lay(g *group, x, y, width, height int64) Part {
	wide, high := g.width-l.kerf, g.height-l.kerf
	switch {
	case width > wide && height <= high && g.endsAlike(Vertical), height > high && width <= wide && g.endsAlike(Horizontal):
		return l.layParts(g.cut, g.parts, x, y, width, height)
	case width > wide && (height <= high || height*(width-wide) >= width*(height-high)):
		return l.cutOff(Vertical, x, y, width, height, wide, l.lay(g, x, y, wide, height))
	case height > high:
		return l.cutOff(Horizontal, x, y, width, height, high, l.lay(g, x, y, width, high))
	case len(g.parts) == 0:
		f := l.fits[g.fit]
		return Part{X: x, Y: y, Width: width, Height: height, Piece: f.kind, Turned: f.turned}
	}
	return l.layParts(g.cut, g.parts, x, y, width, height)
}

// cutOff is a rectangle with what is kept of it and the waste beyond.
func (l layer) cutOff(cut Direction, x, y, width, height, kept int64, inner Part) Part {
	waste := Part{X: x, Y: y, Width: width, Height: height, Piece: Waste}
	at := x + kept
	if cut == Vertical {
		waste.X, waste.Width = min(at+l.kerf, x+width), max(0, width-kept-l.kerf)
	} else {
		at = y + kept
		waste.Y, waste.Height = min(at+l.kerf, y+height), max(0, height-kept-l.kerf)
	}
	return Part{X: x, Y: y, Width: width, Height: height, Cut: cut, At: at, Parts: []Part{inner, waste}, Piece: Waste}
}

// endsAlike says that cuts of a direction set the last part free with the stop as
// it was for the part before: what lies beyond is then left without measuring it.
func (g *group) endsAlike(cut Direction) bool {
	last := len(g.parts) - 1
	return g.cut == cut && g.parts[last].along(cut) == g.parts[last-1].along(cut)
}

// along is a group's size from cut to cut.
func (g *group) along(cut Direction) int64 {
	if cut == Vertical {
		return g.width
	}
	return g.height
}

// layParts divides a rectangle among parts, and what they leave beyond; from the
// last to the first, since there may be a hundred thousand.
func (l layer) layParts(cut Direction, parts []*group, x, y, width, height int64) Part {
	last, before := len(parts)-1, int64(0)
	for _, p := range parts[:last] {
		before += p.along(cut)
	}
	part := Part{X: x, Y: y, Width: width, Height: height}
	if cut == Vertical {
		part.X, part.Width = x+before, width-before
	} else {
		part.Y, part.Height = y+before, height-before
	}
	part = l.layLast(cut, parts[last], part)
	for _, p := range slices.Backward(parts[:last]) {
		part = l.layBefore(cut, p, part)
	}
	return part
}

// layLast lays the last part of a run in what is left, and cuts off the rest.
func (l layer) layLast(cut Direction, last *group, left Part) Part {
	x, y, width, height, kept := left.X, left.Y, left.Width, left.Height, last.along(cut)-l.kerf
	switch {
	case cut == Vertical && width > kept:
		return l.cutOff(cut, x, y, width, height, kept, l.lay(last, x, y, kept, height))
	case cut == Horizontal && height > kept:
		return l.cutOff(cut, x, y, width, height, kept, l.lay(last, x, y, width, kept))
	}
	return l.lay(last, x, y, width, height)
}

// layBefore lays a group to the left of what is laid already, or below it.
func (l layer) layBefore(cut Direction, g *group, laid Part) Part {
	whole := Part{X: laid.X, Y: laid.Y, Width: laid.Width, Height: laid.Height, Cut: cut, Piece: Waste}
	var first Part
	if cut == Vertical {
		whole.X, whole.Width, whole.At = laid.X-g.width, laid.Width+g.width, laid.X-l.kerf
		first = l.lay(g, whole.X, whole.Y, g.width-l.kerf, whole.Height)
	} else {
		whole.Y, whole.Height, whole.At = laid.Y-g.height, laid.Height+g.height, laid.Y-l.kerf
		first = l.lay(g, whole.X, whole.Y, whole.Width, g.height-l.kerf)
	}
	whole.Parts = []Part{first, laid}
	return whole
}

// sheet lays a group out on a whole sheet, whose lost strips are cut off first.
func (l layer) sheet(g *group, s Sheet) Part {
	width, height := s.usable()
	x, y := s.Trim.Left, s.Trim.Bottom
	// A lost strip beside an offcut stays on it: one cut less.
	if g.width-l.kerf < width {
		width, s.Trim.Right = width+s.Trim.Right, 0
	}
	if g.height-l.kerf < height {
		height, s.Trim.Top = height+s.Trim.Top, 0
	}
	part := l.lay(g, x, y, width, height)
	if s.Height > s.Width { // the longer edges are cut first, so they come last here
		return l.trimX(l.trimY(part, s.Trim), s.Trim)
	}
	return l.trimY(l.trimX(part, s.Trim), s.Trim)
}

// trimX puts the lost strips beside a part, trimY those above and below it.
func (l layer) trimX(p Part, t Trim) Part {
	if t.Right > 0 {
		p = l.cutOff(Vertical, p.X, p.Y, p.Width+t.Right, p.Height, p.Width, p)
	}
	if t.Left > 0 {
		p = l.cutBefore(Vertical, p.X-t.Left, p.Y, p.Width+t.Left, p.Height, t.Left, p)
	}
	return p
}

func (l layer) trimY(p Part, t Trim) Part {
	if t.Top > 0 {
		p = l.cutOff(Horizontal, p.X, p.Y, p.Width, p.Height+t.Top, p.Height, p)
	}
	if t.Bottom > 0 {
		p = l.cutBefore(Horizontal, p.X, p.Y-t.Bottom, p.Width, p.Height+t.Bottom, t.Bottom, p)
	}
	return p
}

// cutBefore takes a lost strip off the left or lower side; the kerf falls within
// it.
func (l layer) cutBefore(cut Direction, x, y, width, height, lost int64, inner Part) Part {
	strip := max(0, lost-l.kerf)
	waste := Part{X: x, Y: y, Width: width, Height: height, Piece: Waste}
	at := x + strip
	if cut == Vertical {
		waste.Width = strip
	} else {
		waste.Height, at = strip, y+strip
	}
	return Part{X: x, Y: y, Width: width, Height: height, Cut: cut, At: at, Parts: []Part{waste, inner}, Piece: Waste}
}
