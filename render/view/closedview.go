package view

import (
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// How the two closed books are turned, degrees: one stands with its front and its
// spine to the eye, one lies with its tail and its fore edge.
const (
	standingTurn = 32.0
	lyingTurn    = -20.0
)

// Closed is the closed book twice: standing, and lying with the leaves in view.
func Closed(in Input) *scene.Scene {
	d := newShow(in, "closed")
	d.exhibits = []exhibit{d.in.standing(d.in.Book), d.in.lying(d.in.Book, lyingTurn)}
	d.draw(func(f []solid.Frame) {
		d.closedParts(f)
		if in.Dimensions {
			d.closedDimensions(f[1])
		}
	})
	return d.sheet.Scene()
}

// standing is the closed book on its tail.
func (in Input) standing(b book.Book) exhibit {
	k := closedSolidOf(b, in.title())
	e := exhibit{
		stand:   func(at solid.V) solid.Frame { return solid.Standing(at, standingTurn) },
		corners: k.corners,
		bodies:  func(f solid.Frame) [][]solid.V { return [][]solid.V{k.corners(f)} },
		draw:    k.draw,
	}
	if in.haunted() {
		e.then = closedSolidOf(in.other(), "").corners
	}
	return e
}

// lying is the closed book on its back cover, turned by so many degrees.
func (in Input) lying(b book.Book, degrees float64) exhibit {
	k := closedSolidOf(b, in.title())
	k.wear.lying = true
	e := exhibit{
		stand:   func(at solid.V) solid.Frame { return k.lying(at, degrees) },
		corners: k.reach,
		bodies:  func(f solid.Frame) [][]solid.V { return [][]solid.V{k.corners(f)} },
		draw:    k.draw,
	}
	if in.haunted() {
		then := closedSolidOf(in.other(), "")
		then.wear.lying = true
		e.thenStand, e.then = func(at solid.V) solid.Frame { return then.lying(at, degrees) }, then.reach
	}
	return e
}

// reach are the corners with those of a ribbon before the book.
func (k closedSolid) reach(f solid.Frame) []solid.V {
	all := k.corners(f)
	if k.dress.ribbon > 0 {
		x := k.closedSizes.block.x1
		all = append(all, f.At(0, -ribbonReach, 0), f.At(x, -ribbonReach, 0))
	}
	return all
}

// title is what stands on the label.
func (in Input) title() string {
	if in.Offer.Title != "" {
		return in.Offer.Title
	}
	return in.Name
}

// show is a view that shows the finished book: its exhibits over a title strip.
type show struct {
	in       Input
	id       string
	sheet    *draft.Sheet
	exhibits []exhibit
	table    table
	compact  bool
	strip    float64
	left     float64
}

func newShow(in Input, id string) *show {
	d := &show{in: in, id: id, sheet: in.sheet(draft.Ground)}
	s := d.sheet
	d.compact = s.Width < 760 || s.Height < 560
	d.strip, d.left = s.Height, 57
	if d.compact {
		d.left = 20
	}
	if in.Title {
		d.strip -= draft.StripHeight(d.compact)
	}
	return d
}

// draw lays the exhibits out, paints them and what over says of them.
func (d *show) draw(over func([]solid.Frame)) {
	foot := 0.0
	if !d.in.Title {
		foot = footUp
	}
	margin := draft.Box{X0: d.left / 2, Y0: 8, X1: d.sheet.Width - d.left/2, Y1: d.strip - 8 - foot}
	if d.in.Dimensions { // the figures stand round the book
		margin = draft.Box{X0: margin.X0 + showFigures, Y0: margin.Y0, X1: margin.X1 - showFigures, Y1: margin.Y1 - showFigures}
	}
	d.table = d.in.arrange(margin, d.exhibits)
	still := d.table.still(d.exhibits, draft.Box{X1: d.sheet.Width, Y1: d.strip}, d.sheet.Scene().Ground, nil)
	d.sheet.Scene().Add(still)
	if d.in.Title {
		d.title()
	} else {
		footAlone(d.sheet, d.left, d.foot())
	}
	over(d.table.frames)
}

// showFigures is the room for figures beside the exhibits, px.
const showFigures = 22.0

func (d *show) title() {
	b, in := d.in.Book, d.in
	d.sheet.Strip(draft.Strip{
		Title: words.Say("view." + d.id), Subtitle: words.Say(d.id + ".subtitle"), Compact: d.compact,
		Fields: []draft.Field{
			{Word: words.Say("strip.book"), Value: in.bookLine()},
			{Word: words.Say("endon.closed"), Value: in.by(b.Closed.Width, b.Closed.Height) + " × " + in.size(b.Closed.Thickness)},
			{Word: words.Say("show.weight"), Value: in.weight()},
			{Word: words.Say("strip.block"), Value: words.Say("strip.leaves", words.With{"count": b.Block.Leaves})},
			{Word: words.Say("strip.sizes"), Value: in.sizesLine()},
		},
		Foot: d.foot(),
	}, d.left, d.sheet.Width-d.left, d.strip)
}

func (d *show) foot() []string { return append(d.in.pinnedNote(), words.Say("show.foot")) }

// gramsAnOunce is the avoirdupois ounce (International Yard and Pound Agreement,
// 1959).
const gramsAnOunce = 28.349523125

// weight is the finished book's, in whole grams or tenths of an ounce.
func (in Input) weight() string {
	grams := in.Book.Mass.Total()
	if in.System == measure.Imperial {
		return words.Say("show.ounces", words.With{"number": strconv.FormatFloat(grams/gramsAnOunce, 'f', 1, 64)})
	}
	return words.Say("show.grams", words.With{"number": strconv.FormatFloat(grams, 'f', 0, 64)})
}
