package view

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// openTurn is how an open book is turned, degrees.
const openTurn = -7.0

// OpenFlat is the book open on the table: in the middle of a section, where one
// unbroken sheet lies in both halves, and where two sheets meet.
func OpenFlat(in Input) *scene.Scene {
	d := newShow(in, "open-flat")
	openings := in.openings(in.Book)
	for _, o := range openings {
		d.exhibits = append(d.exhibits, in.open(in.Book, o, openTurn))
	}
	d.draw(func(frames []solid.Frame) {
		d.table.captions(d.sheet, d.exhibits)
		d.marks(func(b book.Book, part book.PartID) [][]draft.P {
			var all [][]draft.P
			for i, f := range frames {
				if now := in.openings(b); i < len(now) {
					all = append(all, openSolidOf(b, now[i]).outlines(d.table.camera, f, part)...)
				}
			}
			return all
		})
	})
	return d.sheet.Scene()
}

// openings are a sewn one and, where the book has it, an unsewn one.
func (in Input) openings(b book.Book) []opening {
	all := []opening{sewnOpening(b)}
	if o, has := unsewnOpening(b); has {
		all = append(all, o)
	}
	return all
}

// open is the book open on the table.
func (in Input) open(b book.Book, o opening, degrees float64) exhibit {
	k := openSolidOf(b, o)
	e := exhibit{
		caption: words.Say(o.word()),
		stand:   func(at solid.V) solid.Frame { return solid.Lying(at, degrees) },
		corners: k.corners, bodies: k.bodies, draw: k.draw,
	}
	if in.haunted() {
		then := o
		for _, at := range in.openings(in.other()) {
			if at.sewn == o.sewn {
				then = at
			}
		}
		e.then = openSolidOf(in.other(), then).corners
	}
	return e
}

// word is the key of an opening's caption.
func (o opening) word() string {
	switch {
	case o.left == 0:
		return "show.endpaper"
	case o.sewn:
		return "show.sewn"
	case o.inside:
		return "show.inside"
	}
	return "show.between"
}

// captions stand under their exhibits, in one line or two, where there is room.
func (t *table) captions(s *draft.Sheet, all []exhibit) {
	for i, e := range all {
		b := t.boxes[i]
		for n, line := range captionLines(e.caption, b) {
			s.Try(draft.P{X: (b.X0 + b.X1) / 2, Y: b.Y1 + captionUnder + captionLeading*float64(n)}, line, exhibitWord(), scene.Middle, 0)
		}
	}
}

// How a caption stands under its exhibit, px.
const captionUnder, captionLeading = 21.0, 15.0

func exhibitWord() draft.Type { return draft.Word().At(12).In(draft.Ink) }

func captionLines(text string, b draft.Box) []string {
	return brokenIn(text, exhibitWord(), b.X1-b.X0+exhibitAir, 2)
}

// brokenIn breaks a text into so many lines of a width at most; what does not fit
// ends in an ellipsis.
func brokenIn(text string, face draft.Type, wide float64, most int) []string {
	var lines []string
	line := ""
	words := strings.Fields(text)
	for i, word := range words {
		longer := strings.TrimPrefix(line+" "+word, " ")
		if face.Width(longer) <= wide {
			line = longer
			continue
		}
		if len(lines) == most-1 || line == "" {
			return append(lines, fitted(strings.Join(append([]string{line}, words[i:]...), " "), face, wide))
		}
		lines, line = append(lines, line), word
	}
	if line == "" {
		return lines
	}
	return append(lines, fitted(line, face, wide))
}

// fitted is a text cut to a width, with an ellipsis where something is missing.
func fitted(text string, face draft.Type, wide float64) string {
	text = strings.TrimSpace(text)
	if face.Width(text) <= wide {
		return text
	}
	runes := []rune(text)
	for n := len(runes) - 1; n > 0; n-- {
		if cut := strings.TrimSpace(string(runes[:n])) + "…"; face.Width(cut) <= wide {
			return cut
		}
	}
	return ""
}

// outlines are a part's silhouettes on the page, px; none of one that is not seen.
func (k openSolid) outlines(c solid.Camera, f solid.Frame, part book.PartID) [][]draft.P {
	var all [][]draft.P
	switch part {
	case book.PartBook, book.PartCovering:
		return [][]draft.P{c.Hull(f.Box(-k.outer, k.outer, 0, k.height, 0, k.plate)...)}
	case book.PartBoard:
		for _, side := range []float64{-1, 1} {
			x0, x1 := min(side*k.inner, side*k.outer), max(side*k.inner, side*k.outer)
			all = append(all, c.Hull(f.Box(x0, x1, 0, k.height, k.plate, k.plate)...))
		}
	case book.PartFolio, book.PartBlock:
		for _, side := range []float64{-1, 1} {
			if pile := k.pile(side); pile > 0 {
				points := k.pagePoints(pile)
				end := points[len(points)-1]
				all = append(all, c.Hull(
					f.At(k.gutter, k.tail, k.low), f.At(k.gutter+side*end.X, k.tail, end.Y),
					f.At(k.gutter+side*end.X, k.tail+k.high, end.Y), f.At(k.gutter, k.tail+k.high, k.low)))
			}
		}
	}
	return all
}
