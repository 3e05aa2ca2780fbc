package view

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/solid"
)

// MockUp is the picture that a customer decides by: the finished book on a table,
// closed and open, beside a ruler and a pencil, with a caption. It is laid out for
// its frame alone; what changes now is not marked.
func MockUp(in Input) *scene.Scene {
	in.Before, in.Pinned = nil, nil
	s := in.sheet(draft.Ground)
	s.Scene().Tooth = false
	m := mockUp{in: in, sheet: s, caption: captionOf(s.Width, s.Height, in.columns)}
	m.paint(in.display(in.Book))
	m.caption.draw(s)
	return s.Scene()
}

type mockUp struct {
	in      Input
	sheet   *draft.Sheet
	caption caption
}

// paint sets the exhibits on the table over the caption.
func (m *mockUp) paint(all []exhibit) {
	s := m.sheet
	top := s.Height - m.caption.high
	t := m.in.arrange(draft.Box{X0: 10, Y0: 0, X1: s.Width - 10, Y1: top - 2}, all)
	s.Scene().Add(t.still(all, draft.Box{X1: s.Width, Y1: top}, draft.Table, nil))
	t.captions(s, all)
}

// How the books of the mock-up are turned, degrees.
const (
	leavesTurn = -16.0
	spineTurn  = 83.0
)

// display is everything that stands on the table, in the order of the rows.
func (in Input) display(b book.Book) []exhibit {
	all := []exhibit{in.standing(b), in.open(b, sewnOpening(b), openTurn)}
	if o, has := unsewnOpening(b); has {
		all = append(all, in.open(b, o, openTurn))
	}
	lying := in.lying(b, leavesTurn)
	lying.caption = words.Say("show.leaves")
	standing := &all[0]
	standing.caption = words.Say("show.standing")
	return append(all, lying, in.open(b, opening{}, openTurn), in.bench(b))
}

// bench is the book lying with its spine to the eye, and before it what shows how
// large it is and what it is made of.
func (in Input) bench(b book.Book) exhibit {
	k := closedSolidOf(b, in.title())
	t := toolsOf(in)
	x, deep := k.height, k.profile.fore-k.profile.back()
	spine := func(f solid.Frame) solid.Frame {
		return k.lying(f.At(x/2+deep*0.06, t.deep()+6, 0), spineTurn)
	}
	return exhibit{
		caption: words.Say("show.bench", words.With{"ruler": in.withUnit(t.ruler), "pencil": in.withUnit(t.pencil)}),
		stand:   func(at solid.V) solid.Frame { return solid.Lying(at, 0) },
		corners: func(f solid.Frame) []solid.V {
			return append(k.corners(spine(f)), f.Box(-t.half(), t.half(), 0, 0, 0, 0)...)
		},
		bodies: func(f solid.Frame) [][]solid.V { return append(t.bodies(f), k.corners(spine(f))) },
		draw: func(s *solid.Stage, f solid.Frame) {
			k.draw(s, spine(f))
			t.draw(s, f)
		},
	}
}
