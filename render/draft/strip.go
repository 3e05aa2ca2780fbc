package draft

import (
	"strings"

	"grainwise/render/scene"
)

// Field is one word and its value in the title strip.
type Field struct{ Word, Value string }

// Strip is the title strip along the foot of a working drawing.
type Strip struct {
	Title, Subtitle string
	Fields          []Field  // the first are kept when there is no room for all
	Foot            []string // remarks under the fields: as many as fit, the first kept longest
	Compact         bool     // one line lower, without the subtitle
	Bar             func(right P, widest float64) float64
}

// stripAir is the least air between columns, px.
const stripAir = 26

// StripHeight is how much of the sheet's foot the strip takes, px.
func StripHeight(compact bool) float64 {
	if compact {
		return 62
	}
	return 84
}

// Strip draws the title strip between two margins, its rule at y. What does
// not fit is left out from the end: fields, then the foot.
func (s *Sheet) Strip(t Strip, left, right, y float64) {
	s.Line(RuleLine(), P{X: left, Y: y}, P{X: right, Y: y})
	title, line, low := Title(), 34.0, 73.0
	if t.Compact {
		title, line, low, t.Subtitle = Title().At(19), 28.0, 50.0, ""
	}
	s.Text(P{X: left, Y: y + line}, t.Title, title, scene.Start, 0)
	s.Try(P{X: left, Y: y + 54}, t.Subtitle, Word().At(12), scene.Start, 0)
	end := right
	if t.Bar != nil {
		end -= t.Bar(P{X: right, Y: y + line - 3}, 110) + stripAir
	}
	x := left + max(title.Width(t.Title), Word().At(12).Width(t.Subtitle)) + 1.5*stripAir
	s.fields(t, x, end, y+line-34)
	s.foot(t, x, right, left, y+low)
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

// foot sets as many remarks as fit in one line: under the fields, else from
// the margin.
func (s *Sheet) foot(t Strip, x, right, left, y float64) {
	for n := len(t.Foot); n > 0; n-- {
		text := strings.Join(t.Foot[:n], "  ")
		if !t.Compact && x+Small().At(12).Width(text) <= right && s.Try(P{X: x, Y: y - 9}, text, Small().At(12), scene.Start, 0) {
			return
		}
		if left+Small().Width(text) <= right && s.Try(P{X: left, Y: y}, text, Small(), scene.Start, 0) {
			return
		}
	}
}
