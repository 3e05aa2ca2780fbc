package view

import (
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// caption is the strip under the picture: columns of what a customer asks, in as
// many rows as the frame has room for.
type caption struct {
	width  float64
	bottom float64
	high   float64
	rows   [][]column
}

// column is a word with lines under it, some with a colour before them.
type column struct {
	word  string
	lines []lineOfColumn
	wide  float64
	draw  func(s *draft.Sheet, x, y float64) // instead, where it is no such column
}

type lineOfColumn struct {
	text string
	face draft.Type
	chip bool
	of   material // whose colour the chip shows
}

// Measures of the caption, px.
const (
	captionSide   = 40.0
	captionGap    = 24.0
	captionRow    = 96.0
	captionFoot   = 26.0
	captionMost   = 0.36 // of the frame's height
	columnMost    = 190.0
	chipWide      = 13.0
	chipGap       = 7.0
	captionWordY  = 26.0
	captionTextY  = 46.0
	columnLeading = 18.0
	columnLines   = 4
)

// captionOf sets columns in a strip for a frame.
func captionOf(width, high float64, columns func(room float64) []column) caption {
	c := caption{width: width, bottom: high}
	side := c.side()
	room := width - 2*side
	rows := max(int((captionMost*high-captionFoot)/captionRow), 1)
	x := 0.0
	row := []column{}
	for _, col := range columns(room) {
		need := col.wide
		if len(row) > 0 {
			need += captionGap
		}
		if x+need > room && len(row) > 0 {
			c.rows = append(c.rows, row)
			row, x, need = nil, 0, col.wide
			if len(c.rows) == rows {
				break
			}
		}
		row, x = append(row, col), x+need
	}
	if len(row) > 0 && len(c.rows) < rows {
		c.rows = append(c.rows, row)
	}
	c.high = float64(len(c.rows))*captionRow + captionFoot
	return c
}

func (c caption) side() float64 {
	if c.width < 760 {
		return 16
	}
	return captionSide
}

// columns are what there is to say, the most important first.
func (in Input) columns(room float64) []column {
	all := []column{in.head(min(room, 330))}
	if in.Offer.Price != "" || in.Offer.Ready != "" {
		all = append(all, in.priced())
	}
	r := in.Book.Resolved
	pages := append(in.pageLines(), in.weightOf(float64(r.Stock.Paper.Grammage)))
	return append(append(all,
		textColumn("show.pages", pages...),
		textColumn("show.size", in.told(in.closedSizes()...), words.Say("show.page", words.With{"size": in.told(r.Page.Width, r.Page.Height)}),
			words.Say("show.weighs", words.With{"weight": in.weight()})),
		in.materials()), in.others()...)
}

// others are the columns that are there where something was typed for them.
func (in Input) others() []column {
	var all []column
	if in.Offer.Media != "" {
		all = append(all, textColumn("show.media", in.Offer.Media))
	}
	if in.Offer.Studio != "" || in.Offer.Line != "" {
		all = append(all, textColumn("show.studio", in.Offer.Studio, in.Offer.Line))
	}
	return all
}

// textColumn is a word with a few texts under it, each in two lines at most.
func textColumn(word string, texts ...string) column {
	c := column{word: words.Say(word)}
	for _, text := range texts {
		for _, line := range brokenIn(text, draft.ValueType(), columnMost, 2) {
			c.lines = append(c.lines, lineOfColumn{text: line, face: draft.ValueType()})
		}
	}
	return c.measured()
}

// pageLines are pages and openings.
func (in Input) pageLines() []string {
	block := in.Book.Block
	return []string{
		words.Say("show.pages.count", words.With{"pages": block.Pages, "leaves": block.Leaves}),
		words.Say("show.openings", words.With{"count": block.Openings.Inside, "whole": block.Openings.OneSheet}),
	}
}

func (in Input) closedSizes() []measure.Length {
	c := in.Book.Closed
	return []measure.Length{c.Width, c.Height, c.Thickness}
}

// told is sizes as a customer is told them: whole millimetres, or eighths of an inch.
func (in Input) told(sizes ...measure.Length) string {
	style := measure.Style{System: in.System, Denominator: 8}
	var texts []string
	for _, l := range sizes {
		texts = append(texts, strings.TrimPrefix(style.Format(l), measure.About))
	}
	return strings.Join(texts, " × ") + " " + in.System.Label()
}

// withUnit is a length with its unit.
func (in Input) withUnit(l measure.Length) string { return in.size(l) + " " + in.System.Label() }

// weightOf is a paper's weight a square metre.
func (in Input) weightOf(grammage float64) string {
	return words.Say("show.grammage", words.With{"number": strconv.FormatFloat(grammage, 'f', 0, 64)})
}

// materials are the swatches with their names: flat, in exactly their colours.
func (in Input) materials() column {
	col := column{word: words.Say("show.materials")}
	for _, m := range materialsOf(in.Book) {
		name := fitted(m.name, draft.ValueType(), columnMost-chipWide-chipGap)
		col.lines = append(col.lines, lineOfColumn{text: name, face: draft.ValueType(), of: m, chip: true})
	}
	return col.measured()
}

func (in Input) priced() column {
	col := column{word: words.Say("show.price")}
	if in.Offer.Price != "" {
		col.lines = append(col.lines, lineOfColumn{text: fitted(in.Offer.Price, priceType(), columnMost), face: priceType()})
	} else {
		col.word = words.Say("show.ready")
	}
	if in.Offer.Ready != "" {
		ready := in.Offer.Ready
		if in.Offer.Price != "" {
			ready = words.Say("show.readyOn", words.With{"date": ready})
		}
		for _, part := range brokenIn(ready, draft.ValueType(), columnMost, 2) {
			col.lines = append(col.lines, lineOfColumn{text: part, face: draft.ValueType()})
		}
	}
	return col.measured()
}

func priceType() draft.Type { return draft.Title().At(21) }

// measured is the column with its width.
func (c column) measured() column {
	if len(c.lines) > columnLines {
		c.lines = c.lines[:columnLines]
	}
	c.wide = draft.Word().At(12).Width(c.word)
	for _, l := range c.lines {
		wide := l.face.Width(l.text)
		if l.chip {
			wide += chipWide + chipGap
		}
		c.wide = max(c.wide, wide)
	}
	return c
}

// head is the title, large, with what kind of book it is, and the studio's picture
// before it.
func (in Input) head(most float64) column {
	logo := 0.0
	if in.Offer.Logo != nil {
		logo = logoSide + 14
	}
	title, face := in.title(), draft.Title().At(34)
	if title == "" {
		title = words.Say("show.untitled")
	}
	kind := brokenIn(words.Say("show.kind."+string(in.Book.Resolved.Structure)), draft.Word().At(13), most-logo, 2)
	lines := brokenIn(title, face, most-logo, 1)
	for size := 32.0; face.Width(title) > most-logo && size >= 19; size -= 1.5 {
		face = face.At(size)
		lines = brokenIn(title, face, most-logo, 1)
	}
	if face.Width(title) > most-logo {
		lines = brokenIn(title, face, most-logo, 2)
	}
	wide := 0.0
	for _, l := range lines {
		wide = max(wide, face.Width(l))
	}
	for _, l := range kind {
		wide = max(wide, draft.Word().At(13).Width(l))
	}
	return column{wide: wide + logo + 8, draw: func(s *draft.Sheet, x, y float64) {
		if logo > 0 {
			in.logo(s, x, y+20)
		}
		at := y + 20 + 0.76*face.Size
		if len(lines) == 1 {
			at += 4
		}
		for _, l := range lines {
			s.Try(draft.P{X: x + logo, Y: at}, l, face, scene.Start, 0)
			at += face.Size * 1.08
		}
		at += 6
		if len(lines) == 1 {
			at -= face.Size*1.08 - 24
		} else {
			at -= 4
		}
		for _, l := range kind {
			s.Try(draft.P{X: x + logo, Y: at}, l, draft.Word().At(13), scene.Start, 0)
			at += 16
		}
	}}
}

// logoSide is the side of the square that a studio's picture fits into, px.
const logoSide = 62.0

func (in Input) logo(s *draft.Sheet, x, y float64) {
	b := in.Offer.Logo.Bounds()
	if b.Empty() {
		return
	}
	scale := logoSide / float64(max(b.Dx(), b.Dy()))
	w, h := scale*float64(b.Dx()), scale*float64(b.Dy())
	x, y = x+(logoSide-w)/2, y+(logoSide-h)/2
	s.Scene().Add(scene.Picture{Min: onPage(draft.P{X: x, Y: y}), Max: onPage(draft.P{X: x + w, Y: y + h}), Image: in.Offer.Logo})
}

// draw sets the strip at the foot of the sheet.
func (c caption) draw(s *draft.Sheet) {
	top := c.bottom - c.high
	s.Line(draft.RuleLine(), draft.P{X: 0, Y: top}, draft.P{X: c.width, Y: top})
	note := words.Say("show.drawing")
	s.Text(draft.P{X: c.width - c.side(), Y: c.bottom - 11}, note, draft.Word().At(12), scene.End, 0)
	for r, row := range c.rows {
		c.drawRow(s, row, top+float64(r)*captionRow)
	}
}

func (c caption) drawRow(s *draft.Sheet, row []column, y float64) {
	used := 0.0
	for _, col := range row {
		used += col.wide + captionGap
	}
	spare := 0.0
	if len(row) > 1 {
		spare = min((c.width-2*c.side()-used+captionGap)/float64(len(row)-1), 70)
	}
	x := c.side()
	for i, col := range row {
		if i > 0 {
			line := draft.ExtensionLine()
			line.Alpha = 0.35
			at := x - (captionGap+spare)/2
			s.Line(line, draft.P{X: at, Y: y + 20}, draft.P{X: at, Y: y + captionRow - 4})
		}
		col.set(s, x, y)
		x += col.wide + captionGap + spare
	}
}

func (c column) set(s *draft.Sheet, x, y float64) {
	if c.draw != nil {
		c.draw(s, x, y)
		return
	}
	s.Try(draft.P{X: x, Y: y + captionWordY}, c.word, draft.Word().At(12), scene.Start, 0)
	at := y + captionTextY
	for _, l := range c.lines {
		from := x
		if l.chip {
			chip(s, draft.P{X: x, Y: at}, l.of)
			from += chipWide + chipGap
		}
		if l.face.Size > 18 {
			at += 4
		}
		s.Try(draft.P{X: from, Y: at}, l.text, l.face, scene.Start, 0)
		at += columnLeading
		if l.face.Size > 18 {
			at += 2
		}
	}
}

// chip is a flat piece of a material's colour before its name.
func chip(s *draft.Sheet, at draft.P, m material) {
	b := draft.Box{X0: at.X, Y0: at.Y - 11, X1: at.X + chipWide, Y1: at.Y + 2}
	around := []draft.P{{X: b.X0, Y: b.Y0}, {X: b.X1, Y: b.Y0}, {X: b.X1, Y: b.Y1}, {X: b.X0, Y: b.Y1}}
	s = s.About(m.part, "")
	s.Face(around, m.colour, scene.None, scene.Plane{})
	s.Outline(draft.PartLine(m.colour), around...)
}
