package view_test

import (
	"testing"

	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/view"
)

// What is not proved of a roll is not said: the words are the wording wanted of
// a roll, "proved least, or within" so much.
func TestWhatIsSaidOfARoll(t *testing.T) {
	c := sheets.Cutting{Job: sheets.Job{Material: stock.Material{RollWidth: 980 * measure.Millimetre}}}
	c.Plan = cutting.Plan{Cost: int64(1970 * measure.Millimetre), LowerBound: int64(1828 * measure.Millimetre)}
	in := view.Input{System: measure.Metric}
	want := "within 142 mm of the shortest possible"
	if said := in.ProofText(c); said != want {
		t.Errorf("%q, want %q", said, want)
	}
	c.RowsUpTo, c.RowsLeast = 333*measure.Millimetre, 1970*measure.Millimetre
	if said, want := in.ProofText(c), want+", and none with rows up to 333 mm is shorter"; said != want {
		t.Errorf("%q, want %q", said, want)
	}
	c.RowsLeast -= 20 * measure.Millimetre
	if said, want := in.ProofText(c), want+"; with rows up to 333 mm, within 20 mm"; said != want {
		t.Errorf("%q, want %q", said, want)
	}
	c.Plan.Proof = cutting.BySearch
	if said := in.ProofText(c); said != "proved least" {
		t.Errorf("%q", said)
	}
}
