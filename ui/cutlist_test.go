package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
)

// set takes values as a maker types them.
func (w *Window) set(t *testing.T, values map[string]string) {
	t.Helper()
	for _, p := range book.Params() {
		text, ok := values[p.Key]
		if !ok {
			continue
		}
		v, err := p.Parse(text, w.session.System())
		if err == nil {
			err = w.session.Set(p.Key, v)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
}

// A book with every kind of piece there is: the list stays in its half of the
// column and scrolls, its heading in sight.
func TestTheListToCutHoldsEveryKindOfPiece(t *testing.T) {
	w := openDemo(t)
	w.set(t, map[string]string{"structure": "link-stitched"})
	w.set(t, map[string]string{
		"sewing.method": "link-on-tapes", "interleaf.mode": "around-section", "covering.kind": "quarter",
		"ribbon.width": "6", "elastic.width": "8", "label.width": "60", "label.height": "30", "bands": "3",
	})
	if n := len(w.session.Book().Parts); n < 13 {
		t.Fatalf("only %d kinds of piece", n)
	}
	w.win.Resize(fyne.NewSize(1240, 660))
	foot := w.cut.list.Position().Y + w.cut.list.Size().Height
	if w.cut.scroll.Position().Y+w.cut.scroll.Size().Height > w.cut.list.Size().Height+0.5 || foot > 660 {
		t.Error("the list to cut reaches out of the column")
	}
	if w.cut.rows.MinSize().Height <= w.cut.scroll.Size().Height {
		t.Error("so many rows need no scrolling: the test tells nothing")
	}
}
