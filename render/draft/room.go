package draft

import (
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// Box is a rectangle of the sheet, in px.
type Box struct{ X0, Y0, X1, Y1 float64 }

// Overlaps reports whether two boxes share more than their edges.
func (b Box) Overlaps(o Box) bool {
	return b.X0 < o.X1 && o.X0 < b.X1 && b.Y0 < o.Y1 && o.Y0 < b.Y1
}

// Grown is the box with so much more on every side.
func (b Box) Grown(by float64) Box {
	return Box{b.X0 - by, b.Y0 - by, b.X1 + by, b.Y1 + by}
}

// corners are the box as an outline.
func (b Box) corners() []P {
	return []P{{X: b.X0, Y: b.Y0}, {X: b.X1, Y: b.Y0}, {X: b.X1, Y: b.Y1}, {X: b.X0, Y: b.Y1}}
}

// Inside reports whether the box lies within another.
func (b Box) Inside(o Box) bool {
	return b.X0 >= o.X0 && b.Y0 >= o.Y0 && b.X1 <= o.X1 && b.Y1 <= o.Y1
}

// How far a face reaches above and below its baseline, in ems: enough for
// capitals, figures and the tails of g and y, accents excepted.
const (
	ascent  = 0.76
	descent = 0.23
)

// textBox is where a text of some width stands.
func textBox(at P, width, size float64, align scene.Align, turn int) Box {
	before := 0.0
	switch align {
	case scene.Middle:
		before = width / 2
	case scene.End:
		before = width
	}
	up, down := ascent*size, descent*size
	switch ((turn % 4) + 4) % 4 {
	case 1:
		return Box{at.X - up, at.Y - width + before, at.X + down, at.Y + before}
	case 2:
		return Box{at.X - width + before, at.Y - down, at.X + before, at.Y + up}
	case 3:
		return Box{at.X - down, at.Y - before, at.X + up, at.Y + width - before}
	}
	return Box{at.X - before, at.Y - up, at.X + width - before, at.Y + down}
}

// TextBoxes lists where the texts of a drawing stand, in px, in its order.
func TextBoxes(s *scene.Scene) []Box {
	var boxes []Box
	for _, item := range s.Items {
		if t, is := item.(scene.Text); is {
			size := t.Size / scene.Px
			at := P{X: t.At.X / scene.Px, Y: t.At.Y / scene.Px}
			boxes = append(boxes, textBox(at, typeface.Width(t.Font, size, t.String), size, t.Align, t.Turn))
		}
	}
	return boxes
}

// margin is the strip along the sheet's edges that text keeps off, in px.
const margin = 4

// Free reports whether text may stand in a box: on the sheet, and clear of
// every text and reserved place.
func (s *Sheet) Free(b Box) bool {
	if !b.Inside(Box{margin, margin, s.Width - margin, s.Height - margin}) {
		return false
	}
	for _, t := range s.taken {
		if b.Overlaps(t) {
			return false
		}
	}
	return true
}

// Keep reserves a place: no text is put there any more.
func (s *Sheet) Keep(b Box) { s.taken = append(s.taken, b) }

// BoxOf is where a text would stand.
func BoxOf(at P, text string, t Type, align scene.Align, turn int) Box {
	return textBox(at, t.Width(text), t.Size, align, turn)
}

// Text puts a text down, come what may: the caller has made the room.
func (s *Sheet) Text(at P, text string, t Type, align scene.Align, turn int) {
	if text == "" {
		return
	}
	s.Keep(BoxOf(at, text, t, align, turn))
	s.scene.Add(scene.Text{
		Tag: s.tag, At: mm(at), String: text, Font: t.Font,
		Size: t.Size * scene.Px, Colour: t.Colour, Align: align, Turn: turn,
	})
}

// Try puts a text down where there is room for it, and says whether.
func (s *Sheet) Try(at P, text string, t Type, align scene.Align, turn int) bool {
	if text == "" || !s.Free(BoxOf(at, text, t, align, turn)) {
		return false
	}
	s.Text(at, text, t, align, turn)
	return true
}
