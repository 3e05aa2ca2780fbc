package view

import (
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// How a section is shaded: paper is almost its own colour where the light
// falls, and what stands between two sections is a little darker.
const (
	tailOfBlock   = 0.93
	topOfBlock    = 0.90
	foreSpacing   = 2.0 // seen aslant, the fore edge has room for half the lines
	betweenBlocks = 0.93
	foldShade     = 0.32 // half of it shows at the fold itself
	standShade    = 0.10
	skinLeast     = 1.3 // px of an interleaf seen from its edge
	interleafTint = 0.62
	manySections  = 8 // above it only the outer ones are joined
	foldChords    = 10
	smallFold     = 2.0 // px of radius under which few chords do
	seenFold      = math.Pi / 3
)

// joinSections ties sections to where they belong.
func (a *apart) joinSections() {
	s, last := a.size, a.size.sections-1
	var lines [][]draft.P
	join := func(i int, y float64) {
		lines = append(lines, []draft.P{a.stack.sections.at(a.sectionX(i), y, 0), a.stack.base.at(a.seatX(i), y, 0)})
	}
	for i := range s.sections {
		if s.sections <= manySections || i == 0 || i == last {
			join(i, s.tail)
		}
	}
	join(last, s.tail+s.pageHeight)
	a.sheet.Lines(draft.JoiningLine(), lines...)
}

func (a *apart) drawSections() {
	tail, fore := a.leaves.offsets(1), a.leaves.offsets(foreSpacing)
	for i := range a.size.sections {
		a.drawSection(i, tail, fore)
	}
	face := draft.Box{X0: a.size.tail, X1: a.size.tail + a.size.pageHeight, Y1: a.size.pageWidth}
	a.pageGrain(face)
}

// pageGrain draws the leaves' grain on the last section, whose u is the height.
func (a *apart) pageGrain(face draft.Box) {
	plane := a.stack.sections.side(a.sectionX(a.size.sections-1) + a.leaves.half)
	plane.U, plane.V = plane.V, plane.U
	face = draft.Box{X0: face.Y0, X1: face.Y1, Y0: face.X0, Y1: face.X1}
	a.grainOn(book.PartFolio, plane, face, grainMiddle, a.pageColour())
}

// pageColour is the outermost leaf's: the guard sheet's where there is one.
func (a *apart) pageColour() scene.Colour {
	if a.size.guard == 0 {
		return a.colours.Paper
	}
	return a.colours.Paper.Towards(a.colours.Interleaf, interleafTint)
}

func (a *apart) drawSection(i int, tail, fore []float64) {
	about := a.sheet.About(book.PartFolio, "")
	skin := about
	if a.size.guard > 0 {
		skin = a.sheet.About(book.PartInterleaf, "")
	}
	x := a.sectionX(i)
	a.drawPage(skin, x, i == a.size.sections-1)
	a.drawTail(about, skin, x)
	a.drawFore(about, skin, x)
	a.drawLeaves(about, x, tail, fore)
	a.outlineSection(about, x, i == a.size.sections-1)
}

// chords are enough for the fold's radius as drawn.
func (a *apart) chords() int {
	if a.leaves.half*a.stack.sections.scale < smallFold {
		return 4
	}
	return foldChords
}

func (a *apart) y0() float64 { return a.size.tail }
func (a *apart) y1() float64 { return a.size.tail + a.size.pageHeight }

// rightSide is what is seen of a section's right: up from the fold, whose
// surface shows down to 60° below the horizontal.
func (a *apart) rightSide(x float64) [][2]float64 {
	half, chords := a.leaves.half, a.chords()/2
	var line [][2]float64
	for i := range chords + 1 {
		sin, cos := math.Sincos(seenFold * (1 - float64(i)/float64(chords)))
		line = append(line, [2]float64{x + half*cos, half - half*sin})
	}
	return append(line, [2]float64{x + half, a.size.pageWidth})
}

// drawPage draws the last section's outer page, and of the others the strip
// that the next section leaves to be seen.
func (a *apart) drawPage(about *draft.Sheet, x float64, last bool) {
	o, right := a.stack.sections, a.rightSide(x)
	plane := o.side(x + a.leaves.half)
	if last {
		about.Face(o.swept(right, a.y0(), a.y1()), a.pageColour(), scene.Tooth, plane, a.shadesOfPage()...)
		return
	}
	gap := max(a.base.pitch-2*a.leaves.half, 0)
	deep, low := min(gap/depthX, a.size.pageHeight), min(gap*depthY/depthX, a.size.pageWidth)
	side, top := x+a.leaves.half, a.size.pageWidth
	strip := o.along(right, a.y0())
	strip = append(strip, o.at(side, a.y1(), top), o.at(side, a.y1(), top-low),
		o.at(side, a.y0()+deep, top-low), o.at(side, a.y0()+deep, a.leaves.half))
	about.Face(strip, a.pageColour().Times(betweenBlocks), scene.None, plane, a.shadesOfPage()...)
}

// shadesOfPage darken the page a little towards the valley, and more at the fold.
func (a *apart) shadesOfPage() []scene.Shade {
	high, fold := a.size.pageWidth, 3+1.2*a.leaves.half
	wide := a.size.pageHeight + 2*high + 10*fold
	tint := draft.Shade
	return []scene.Shade{
		{U0: -wide, U1: wide, V0: -high, V1: 0, Width: high / 1.3, Amount: standShade, Tint: tint},
		{U0: -wide, U1: wide, V0: -6 * fold, V1: 0, Width: 2.2 * fold / 1.3, Amount: foldShade, Tint: tint},
	}
}

// skin is how thick the guard sheet is drawn, seen from its edge.
func (a *apart) skin() float64 {
	return min(max(a.size.guard*a.leaves.times, skinLeast/a.stack.sections.scale), a.leaves.half/2)
}

func (a *apart) drawTail(about, skin *draft.Sheet, x float64) {
	o, half, fill := a.stack.sections, a.leaves.half, a.colours.Paper.Times(tailOfBlock)
	plane := o.front(a.y0())
	outer := half
	if a.size.guard > 0 {
		skin.Face(o.along(sectionLine(x, half, half, a.size.pageWidth, a.chords()), a.y0()),
			a.colours.Interleaf.Times(tailOfBlock), scene.None, plane)
		outer = half - a.skin()
	}
	about.Face(o.along(sectionLine(x, outer, half, a.size.pageWidth, a.chords()), a.y0()), fill, scene.None, plane)
}

func (a *apart) drawFore(about, skin *draft.Sheet, x float64) {
	o, half, top := a.stack.sections, a.leaves.half, a.size.pageWidth
	plane := o.level(top)
	outer := half
	if a.size.guard > 0 {
		skin.Face(o.flat(x-half, x+half, a.y0(), a.y1(), top), a.colours.Interleaf.Times(topOfBlock), scene.None, plane)
		outer = half - a.skin()
	}
	about.Face(o.flat(x-outer, x+outer, a.y0(), a.y1(), top), a.colours.Paper.Times(topOfBlock), scene.None, plane)
}

// drawLeaves draws the lines of the leaves on tail and fore edge in one stroke.
func (a *apart) drawLeaves(about *draft.Sheet, x float64, tail, fore []float64) {
	o, top := a.stack.sections, a.size.pageWidth
	var lines [][]draft.P
	for _, r := range tail {
		lines = append(lines, o.along(sectionLine(x, r, a.leaves.half, top, a.chords()), a.y0()))
	}
	for _, r := range fore {
		lines = append(lines, []draft.P{o.at(x-r, a.y0(), top), o.at(x-r, a.y1(), top)})
		if r > 0 {
			lines = append(lines, []draft.P{o.at(x+r, a.y0(), top), o.at(x+r, a.y1(), top)})
		}
	}
	about.Lines(draft.LeafLine(), lines...)
}

func (a *apart) outlineSection(about *draft.Sheet, x float64, last bool) {
	o, half, top := a.stack.sections, a.leaves.half, a.size.pageWidth
	lines := [][]draft.P{
		closed(o.along(sectionLine(x, half, half, top, a.chords()), a.y0())),
		{o.at(x-half, a.y0(), top), o.at(x-half, a.y1(), top), o.at(x+half, a.y1(), top), o.at(x+half, a.y0(), top)},
	}
	if last {
		right := a.rightSide(x)
		back := o.along(right, a.y1())
		lines = append(lines, append([]draft.P{o.along(right, a.y0())[0]}, back...))
	}
	about.Lines(draft.PartLine(a.colours.Paper), lines...)
}
