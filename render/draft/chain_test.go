package draft_test

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Whatever a chain is divided into, its figures keep off one another and stay
// on the sheet; on either side of a drawing and up it.
func TestFiguresOfAChainKeepApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := draft.NewSheet(600, 500, draft.GroundFlat)
		for range 3 {
			c := draft.Chain{
				Up:   rapid.Bool().Draw(t, "up"),
				Line: rapid.Float64Range(60, 440).Draw(t, "line"),
				From: rapid.Float64Range(60, 440).Draw(t, "from"),
			}
			at := 80.0
			c.At = []float64{at}
			system := rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system")
			for range rapid.IntRange(1, 8).Draw(t, "parts") {
				at += rapid.Float64Range(0, 90).Draw(t, "part")
				c.At = append(c.At, at)
				l := measure.MM(rapid.Float64Range(0, 900).Draw(t, "length"))
				c.Figures = append(c.Figures, draft.FigureOf(l, system))
			}
			s.Chain(c)
		}
		apart(t, s.Scene())
	})
}

// apart fails where two texts overlap, one leaves the sheet or is too small.
// The three numbers of a fraction are set close on purpose: they are one text.
func apart(t *rapid.T, sc *scene.Scene) {
	if problem := draft.TextTrouble(sc); problem != "" {
		t.Fatal(problem)
	}
}

// The demo's row across the covering at 1.95 px a millimetre: the joints'
// figures fit between their strokes, nothing is lost.
func TestTheUsualChainFits(t *testing.T) {
	c := draft.Chain{Line: 100, From: 120, At: []float64{112, 147, 433, 450, 481, 498, 784, 819}}
	for _, mm := range []float64{18, 148, 9, 16, 9, 148, 18} {
		c.Figures = append(c.Figures, draft.FigureOf(measure.MM(mm), measure.Metric))
	}
	s := draft.NewSheet(1200, 800, draft.GroundFlat)
	if rows, lost := s.Chain(c); rows != 0 || lost != 0 {
		t.Errorf("%d rows more, %d figures found no room", rows, lost)
	}
}

// Written inches are set as fractions; the words come from the length itself.
func TestFractionsAreSetSmaller(t *testing.T) {
	plain, fraction := draft.FigureText("8"), draft.FigureText("8 9/32")
	t13 := draft.FigureType()
	if w := fraction.Width(t13) - plain.Width(t13); w < t13.At(11).Width("932") {
		t.Errorf("the fraction adds only %g px", w)
	}
	if draft.FigureText("≈9/32").Width(t13) <= draft.FigureText("9/32").Width(t13) {
		t.Error("the sign of about is lost")
	}
}
