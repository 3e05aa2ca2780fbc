package draft_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/draft"
)

// No two labels overlap and none leaves the column, wherever they want to be.
func TestLabelsNeverOverlap(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		labels := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) draft.Label {
			return draft.Label{
				Anchor: rapid.Float64Range(-500, 1500).Draw(t, "anchor"),
				Above:  rapid.Float64Range(0, 30).Draw(t, "above"),
				Below:  rapid.Float64Range(1, 60).Draw(t, "below"),
				Weight: rapid.SampledFrom([]float64{0, 1, 24}).Draw(t, "weight"),
			}
		}), 0, 12).Draw(t, "labels")
		height := 0.0
		for _, l := range labels {
			height += l.Above + l.Below
		}
		top := rapid.Float64Range(0, 100).Draw(t, "top")
		bottom := top + rapid.Float64Range(0, 1200).Draw(t, "room")
		ys, fits := draft.PlaceLabels(labels, top, bottom)
		if fits != (height <= bottom-top) {
			t.Fatalf("fits %v: %g of labels in %g", fits, height, bottom-top)
		}
		if !fits {
			return
		}
		const hair = 1e-6
		for i, a := range labels {
			if ys[i]-a.Above < top-hair || ys[i]+a.Below > bottom+hair {
				t.Fatalf("label %d leaves the column", i)
			}
			for j, b := range labels {
				if i != j && ys[i]-a.Above < ys[j]+b.Below-hair && ys[j]-b.Above < ys[i]+a.Below-hair {
					t.Fatalf("labels %d and %d overlap", i, j)
				}
			}
		}
	})
}

// Worked by hand. Two labels 20 high that both want to stand at 100 part
// evenly, to 90 and 110; where one holds 3 times as hard, the squared moves
// x²·3 + (20 − x)² are least at x = 5: 95 and 115. Alone, a label stays.
func TestLabelsMoveAsLittleAsTheyCan(t *testing.T) {
	same := draft.Label{Anchor: 100, Above: 10, Below: 10}
	firm := same
	firm.Weight = 3
	for _, c := range []struct {
		labels []draft.Label
		want   []float64
	}{
		{[]draft.Label{same}, []float64{100}},
		{[]draft.Label{same, same}, []float64{90, 110}},
		{[]draft.Label{firm, same}, []float64{95, 115}},
		{[]draft.Label{{Anchor: 300, Above: 10, Below: 10}, {Anchor: 50, Above: 10, Below: 10}}, []float64{300, 50}},
	} {
		ys, _ := draft.PlaceLabels(c.labels, 0, 400)
		for i := range ys {
			if math.Abs(ys[i]-c.want[i]) > 1e-9 {
				t.Errorf("%v: got %v, want %v", c.labels, ys, c.want)
				break
			}
		}
	}
}
