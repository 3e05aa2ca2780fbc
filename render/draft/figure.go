package draft

import (
	"strings"

	"grainwise/model/measure"
	"grainwise/render/scene"
)

// Figure is a length as a dimension shows it: a number, or inches with a
// slashed fraction.
type Figure struct {
	whole, over, under string // over and under are empty where there is no fraction
}

// FigureOf is a length in the unit shown: millimetres to a tenth, inches to
// 1/32, with ≈ where the fraction is not exact.
func FigureOf(l measure.Length, system measure.System) Figure {
	return FigureText(Sizes(system).Format(l))
}

// FigureText sets a written number; its last word may be a fraction.
func FigureText(text string) Figure {
	head, fraction := "", text
	if i := strings.LastIndexByte(text, ' '); i >= 0 {
		head, fraction = text[:i], text[i+1:]
	}
	over, under, is := strings.Cut(fraction, "/")
	if !is {
		return Figure{whole: text}
	}
	if sign := strings.TrimLeft(over, "≈-"); head == "" {
		head, over = over[:len(over)-len(sign)], sign
	}
	return Figure{head, over, under}
}

// Setting of a fraction, px at size 13; numbers of a fraction are 74 % of the
// whole's size but never below the least type.
const (
	overRaise  = 4.0
	underDrop  = 1.4
	slashWidth = 4.2
	wholeSpace = 1.6
)

func (f Figure) small(t Type) Type { return t.At(0.74 * t.Size) }

// Width of the figure in px.
func (f Figure) Width(t Type) float64 {
	w := t.Width(f.whole)
	if f.over == "" {
		return w
	}
	if f.whole != "" {
		w += wholeSpace
	}
	small := f.small(t)
	return w + small.Width(f.over) + slashWidth + small.Width(f.under)
}

// Box is where the figure stands, centred on a place of its baseline, with a
// px of air.
func (f Figure) Box(at P, t Type, turn int) Box {
	b := textBox(at, f.Width(t), t.Size, scene.Middle, turn).Grown(1)
	if f.over == "" {
		return b
	}
	raised := overRaise + ascent*f.small(t).Size - ascent*t.Size
	if turn%2 == 1 {
		b.X0 -= raised
	} else {
		b.Y0 -= raised
	}
	return b
}

// Figure puts a figure down, centred on a place of its baseline; turn 1 reads
// from the right.
func (s *Sheet) Figure(at P, f Figure, t Type, turn int) {
	s.Keep(f.Box(at, t, turn))
	x := -f.Width(t) / 2
	put := func(text string, type_ Type, dx, dy float64) {
		p := turned(at, dx, dy, turn)
		s.scene.Add(scene.Text{Tag: s.tag, At: mm(p), String: text, Font: type_.Font,
			Size: type_.Size * scene.Px, Colour: type_.Colour, Turn: turn})
	}
	if f.whole != "" {
		put(f.whole, t, x, 0)
		x += t.Width(f.whole) + wholeSpace
	}
	if f.over == "" {
		return
	}
	small := f.small(t)
	put(f.over, small, x, -overRaise)
	x += small.Width(f.over)
	s.Line(line(0.8, t.Colour), turned(at, x+0.4, underDrop, turn), turned(at, x+slashWidth-0.4, -overRaise-0.55*small.Size, turn))
	put(f.under, small, x+slashWidth, underDrop)
}

// turned is a place dx along and dy below a baseline turned by quarter turns.
func turned(at P, dx, dy float64, turn int) P {
	if turn%4 == 1 {
		return P{X: at.X + dy, Y: at.Y - dx}
	}
	return P{X: at.X + dx, Y: at.Y + dy}
}
