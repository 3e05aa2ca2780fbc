package batch

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
)

// A patch turns one design into another, and the patch between them the other way
// leads back: designs are random, and so are the pairs.
func TestPatchAndBack(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		from, to := booktest.Decisions().Draw(r, "from"), booktest.Decisions().Draw(r, "to")
		to.Design.Copies, to.Design.CutIn, to.Measured = from.Design.Copies, from.Design.CutIn, from.Measured
		there, refused := Between(from, to).Apply(from)
		if there != to || len(refused) > 0 {
			r.Fatalf("not the other design; left %v, refused %v", Between(there, to), refused)
		}
		if back, refused := Between(to, from).Apply(there); back != from || len(refused) > 0 {
			r.Fatalf("not the first again; refused %v", refused)
		}
	})
}

// A setting that a changed base cannot take is named and left out; the rest holds.
func TestRefusedSettingsAreNamed(t *testing.T) {
	p := Patch{{"sewing.method", book.WordValue("pamphlet")}, {"board", book.WordValue("Groynes 2.0")}, {"gone.key", book.AutoValue}}
	base := book.Defaults(0)
	base.Design.Structure, base.Design.Sewing.Method = book.LinkStitched, book.Link
	d, refused := p.Apply(base)
	if d.Design.Board.Material != "Groynes 2.0" || d.Design.Sewing.Method != book.Link || len(refused) != 2 {
		t.Errorf("%q, %s, refused %v", d.Design.Board.Material, d.Design.Sewing.Method, refused)
	}
}
