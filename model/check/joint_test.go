package check

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// The joint that joint-closed asks for is the narrowest that closes: it does,
// and one step of the cut less does not.
func TestJointClosedAsksForTheNarrowest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		joint := func(width book.Length) *matter {
			d.Design.Joint.Width = book.Typed(width)
			b := book.Compute(book.Resolve(d, stock.Default()))
			return newMatter(&b, Tools{}, usualLimits())
		}
		found := jointClosed(joint(2 * measure.Millimetre))
		if len(found) == 0 {
			return
		}
		least, step := measure.MM(found[0].Limit.Amount), measure.Millimetre/2
		if d.Design.CutIn == measure.Imperial {
			step = measure.Inch / 32
		}
		if !joint(least).ToCut.Closes {
			t.Fatalf("%v mm does not close", least.MM())
		}
		if joint(least - step).ToCut.Closes {
			t.Fatalf("%v mm closes too", (least - step).MM())
		}
	})
}
