package draft

import "grainwise/render/scene"

// Field is one word and its value in the title strip.
type Field struct{ Word, Value string }

// Strip is the title strip along the foot of a working drawing.
type Strip struct {
	Title, Subtitle string
	Fields          []Field // the first are kept when there is no room for all
	Foot            string  // a remark under the fields, may be empty
	Bar             func(right P, widest float64) float64
}

// Size of the strip, px.
const (
	StripHeight = 84
	stripAir    = 26 // between columns
)

// Strip draws the title strip between two margins, its rule at y. What does
// not fit is left out from the end: fields, then the foot.
func (s *Sheet) Strip(t Strip, left, right, y float64) {
	s.Line(RuleLine(), P{X: left, Y: y}, P{X: right, Y: y})
	s.Text(P{X: left, Y: y + 34}, t.Title, Title(), scene.Start, 0)
	s.Try(P{X: left, Y: y + 54}, t.Subtitle, Word().At(12), scene.Start, 0)
	end := right
	if t.Bar != nil {
		end -= t.Bar(P{X: right, Y: y + 36}, 110) + stripAir
	}
	x := left + max(Title().Width(t.Title), Word().At(12).Width(t.Subtitle)) + 2*stripAir
	s.fields(t, x, end, y)
	s.foot(t.Foot, x, right, left, y)
}

// fields sets as many columns as fit and spreads what air is left over.
func (s *Sheet) fields(t Strip, x, end, y float64) {
	var widths []float64
	used := 0.0
	for _, f := range t.Fields {
		w := max(Word().At(12).Width(f.Word), ValueType().Width(f.Value))
		if used+w > end-x {
			break
		}
		widths = append(widths, w)
		used += w + stripAir
	}
	spare := max(0, end-x-used) / float64(len(widths)+1)
	for i, w := range widths {
		s.Try(P{X: x, Y: y + 22}, t.Fields[i].Word, Word().At(12), scene.Start, 0)
		s.Try(P{X: x, Y: y + 41}, t.Fields[i].Value, ValueType(), scene.Start, 0)
		x += w + stripAir + min(spare, 40)
	}
}

// foot sets the remark where it fits: beside the title, or under it.
func (s *Sheet) foot(text string, x, right, left, y float64) {
	if x+Small().Width(text) <= right && s.Try(P{X: x, Y: y + 64}, text, Small().At(12), scene.Start, 0) {
		return
	}
	s.Try(P{X: left, Y: y + 73}, text, Small(), scene.Start, 0)
}
