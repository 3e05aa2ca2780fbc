package view

import (
	"math"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// closedBook is where the closed book stands in the drawing, and at what share
// of the parts' scale; shown is false where no place was found.
type closedBook struct {
	shown   bool
	at      oblique
	size    closedSizes
	caption []string // lines under its name
	foot    float64  // y of the book's lowest edge
}

const (
	closedMost, closedLeast = 66, 20 // per cent of the parts
	closedClear             = 8.0    // px off the liner and the sections
	closedTitle             = 96.0   // y under the title
	captionName             = 26.0   // under the book, to its name's baseline
	captionLine             = 17.0
	captionAir              = 4.0
	closedLift              = 0.45 // of the height to spare stays above
)

// placeClosed finds the largest closed book that keeps clear of the parts.
func (a *apart) placeClosed() closedBook {
	c := closedBook{size: closedSizesOf(a.in.Book)}
	for percent := closedMost; percent >= closedLeast; percent-- {
		for i, caption := range a.captions(percent) {
			c.caption = caption
			under := draft.P{
				X: a.larger(widest(caption), func(b *apart) float64 { return widest(b.captions(percent)[i]) }),
				Y: a.larger(captionHigh(caption), func(b *apart) float64 { return captionHigh(b.captions(percent)[i]) }),
			}
			if a.tryClosed(&c, float64(percent)/100, under) {
				return c
			}
		}
	}
	return c
}

// captions are the ways to say the size and the scale, widest first.
func (a *apart) captions(percent int) [][]string {
	solid := a.in.Book.Closed
	size := a.in.by(solid.Width, solid.Height) + " × " + a.in.size(solid.Thickness)
	if a.in.System == measure.Metric { // what was added up is worth no more than whole millimetres
		whole := measure.Style{System: measure.Metric}
		size = whole.Format(solid.Width) + " × " + whole.Format(solid.Height) + " × " + whole.Format(solid.Thickness)
	}
	if strings.Contains(size, measure.About) { // said once
		size = measure.About + strings.ReplaceAll(size, measure.About, "")
	}
	with := words.With{"percent": percent}
	worn := a.in.worn()
	return [][]string{
		append([]string{size + ",  " + words.Say("apart.closed.scale", with)}, listed(worn, len(worn))...),
		append([]string{size, words.Say("apart.closed.scale.short", with)}, listed(worn, 2)...),
	}
}

// tryClosed places it at a share of the parts' scale over a caption so wide
// and high.
func (a *apart) tryClosed(c *closedBook, share float64, caption draft.P) bool {
	scale := share * a.stack.boards.scale
	left, right, down, up := a.lyingReach(c.size)
	wide, high := max((right-left)*scale, caption.X), (up-down)*scale+caption.Y
	edge, top := a.edge(), a.edge()/2+edgeLeast/2
	if a.in.Title {
		top = closedTitle
	}
	limit := -a.larger(-a.freeBelow(edge+wide+closedClear), func(b *apart) float64 { return -b.freeBelow(edge + wide + closedClear) })
	if top+high+closedClear > limit || high <= 0 {
		return false
	}
	spare := limit - closedClear - top - high
	c.foot = top + closedLift*spare + (up-down)*scale
	c.at = oblique{draft.P{X: edge - left*scale, Y: c.foot + down*scale}, scale}
	c.shown = true
	return true
}

// lyingReach is that of the closed book, as it is and as it was.
func (a *apart) lyingReach(c closedSizes) (left, right, down, up float64) {
	left, right, down, up = c.lyingReach()
	if a.then == nil {
		return left, right, down, up
	}
	l, r, d, u := closedSizesOf(a.then.in.Book).lyingReach()
	to := a.in.towards
	return to(left, min(left, l)), to(right, max(right, r)), to(down, min(down, d)), to(up, max(up, u))
}

// captionHigh is what the name and the lines under it take, px.
func captionHigh(lines []string) float64 {
	return captionName + captionLine*float64(len(lines)) + captionAir
}

// widest is the width of the widest line, px.
func widest(lines []string) float64 {
	wide := 0.0
	for _, line := range lines {
		wide = max(wide, draft.SizeLine().Width(line))
	}
	return wide
}

// freeBelow is how far down the upper left of the sheet is free, up to some x.
func (a *apart) freeBelow(x float64) float64 {
	s, half, wing := a.size, a.base.half, a.base.wing
	front := a.stack.base.at(-half, a.baseY0(), wing)
	back := a.stack.base.at(-half, a.baseY1(), wing)
	limit := front.Y
	if x > front.X && back.X > front.X {
		limit = front.Y + (back.Y-front.Y)*min((x-front.X)/(back.X-front.X), 1)
	}
	left := a.stack.sections.at(a.sectionX(0)-a.leaves.half, a.y0(), s.pageWidth)
	if x <= left.X {
		return limit
	}
	rise := (x - left.X) * depthY / depthX
	return math.Min(limit, left.Y-rise-closedClear)
}

// drawClosed draws the closed book with its caption.
func (a *apart) drawClosed() {
	c := a.closed
	if !c.shown {
		return
	}
	a.shadowOnSheet(c.at, box{x1: c.size.width, y1: c.size.height})
	drawClosedBook(a.sheet, c.at, c.size, a.colours)
	y := c.foot + captionName
	a.sheet.Text(draft.P{X: a.edge(), Y: y}, words.Say("apart.closed"), draft.Name(), scene.Start, 0)
	for _, line := range c.caption {
		y += captionLine
		a.sheet.Text(draft.P{X: a.edge(), Y: y}, line, draft.SizeLine(), scene.Start, 0)
	}
}

// closedOutline is the closed book's silhouette, none where it is not shown.
func (a *apart) closedOutline() [][]draft.P {
	if !a.closed.shown {
		return nil
	}
	c := a.closed.size
	return [][]draft.P{a.closed.at.outline(box{x1: c.width, y1: c.height, z1: c.thickness})}
}

// wornOutlines are the silhouettes of a finishing part on the closed book.
func (a *apart) wornOutlines(part book.PartID) [][]draft.P {
	if !a.closed.shown {
		return nil
	}
	return closedFinish{a.sheet, a.closed.at, a.closed.size, a.colours}.outlines(part)
}
