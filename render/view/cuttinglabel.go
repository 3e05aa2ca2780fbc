package view

import (
	"grainwise/assets/words"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// pieceForm is one way in which a piece bears its name: with its size below or
// behind it, or alone.
type pieceForm struct {
	name, size    draft.Type
	sized, row    bool
	turn          int
	large         bool    // in the face of names
	along, across float64 // the room that it takes, px
}

// kindLabel is what a kind of piece is called, and the ways to put it on one,
// the best first: upright before turned, with its size before without.
type kindLabel struct {
	name, size string
	forms      []pieceForm
}

func labelOf(name, size string) kindLabel {
	large, plain, small := draft.Name(), draft.SizeLine().In(draft.Ink), draft.Small()
	l := kindLabel{name: name, size: size}
	for _, turn := range []int{0, 1} {
		l.forms = append(l.forms,
			pieceForm{name: large, size: draft.SizeLine(), sized: true, turn: turn, large: true},
			pieceForm{name: plain, size: small, sized: true, turn: turn},
			pieceForm{name: plain, size: small, sized: true, row: true, turn: turn},
			pieceForm{name: small.In(draft.Ink), size: small, sized: true, row: true, turn: turn},
			pieceForm{name: large, turn: turn, large: true},
			pieceForm{name: plain, turn: turn},
			pieceForm{name: small.In(draft.Ink), turn: turn})
	}
	for i := range l.forms {
		l.forms[i].along, l.forms[i].across = l.forms[i].wants(name, size)
	}
	return l
}

// formAir parts a name from the size behind it, px.
const formAir = 5.0

// wants is the room that a form takes along and across its lines.
func (f pieceForm) wants(name, size string) (along, across float64) {
	const ends, roomy = 8.0, 14.0
	along, across = f.name.Width(name)+ends, f.name.Size+3
	switch {
	case f.row:
		along += formAir + f.size.Width(size)
	case f.sized:
		along, across = max(along, f.size.Width(size)+ends), f.name.Size+f.size.Size+9
	}
	if f.large {
		return along + roomy, across + roomy
	}
	return along, across
}

// fits says whether a form has room in a rectangle of some px.
func (f pieceForm) fits(width, height float64) bool {
	if f.turn == 1 {
		width, height = height, width
	}
	return f.along <= width && f.across <= height
}

// best is the first form that has room, of those allowed.
func (l kindLabel) best(width, height float64, large, sized bool) (pieceForm, bool) {
	for _, f := range l.forms {
		if (large || !f.large) && (sized || !f.sized) && f.fits(width, height) {
			return f, true
		}
	}
	return pieceForm{}, false
}

// put sets a label in the middle of a rectangle.
func (f pieceForm) put(s *draft.Sheet, b draft.Box, l kindLabel) bool {
	at := func(along, down float64) draft.P {
		p := draft.P{X: (b.X0 + b.X1) / 2, Y: (b.Y0 + b.Y1) / 2}
		if f.turn == 1 {
			return draft.P{X: p.X + down, Y: p.Y - along}
		}
		return draft.P{X: p.X + along, Y: p.Y + down}
	}
	third := f.name.Size / 3
	switch {
	case !f.sized:
		return s.Try(at(0, third), l.name, f.name, scene.Middle, f.turn)
	case f.row:
		half := (f.name.Width(l.name) + formAir + f.size.Width(l.size)) / 2
		return s.Try(at(-half, third), l.name, f.name, scene.Start, f.turn) &&
			s.Try(at(half, third), l.size, f.size, scene.End, f.turn)
	}
	return s.Try(at(0, -2), l.name, f.name, scene.Middle, f.turn) &&
		s.Try(at(0, f.size.Size+1), l.size, f.size, scene.Middle, f.turn)
}

// labels are those of every kind of a job.
func (in Input) labels(c *sheets.Cutting) []kindLabel {
	var all []kindLabel
	for _, piece := range c.Pieces {
		all = append(all, labelOf(words.Say("part."+piece.Word), in.by(piece.Width, piece.Height)))
	}
	return all
}
