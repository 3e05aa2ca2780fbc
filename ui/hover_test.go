package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// The sizes are demo.md's; 149 mm is 5.866 in, shown to 1/32 as ≈5 7/8.
func TestHoverNamesPartAndSize(t *testing.T) {
	w := openDemo(t)
	for _, c := range []struct {
		part  book.PartID
		shown measure.System
		want  string
	}{
		{book.PartBoard, measure.Metric, "Board, 149 × 216 mm, 2 of Groynes 2.5"},
		{book.PartBoard, measure.Imperial, "Board, ≈5 7/8 × ≈8 1/2 in, 2 of Groynes 2.5"},
		{book.PartCovering, measure.Metric, "Covering, 368 × 252 mm, Kelp"},
		{book.PartJoint, measure.Metric, "Joint, 9 mm"},
		{"", measure.Metric, ""},
	} {
		if got := aboutPart(w.session.Book(), c.part, c.shown); got != c.want {
			t.Errorf("%q: %q, want %q", c.part, got, c.want)
		}
	}
	if got := aboutPart(w.session.Book(), book.PartBook, measure.Metric); !strings.HasPrefix(got, "Closed book, ") {
		t.Errorf("the closed book: %q", got)
	}
	w.hover(book.PartBoard, fyne.NewPos(100, 100))
	if got := w.status.about.Text(); got != "Board, 149 × 216 mm, 2 of Groynes 2.5" {
		t.Errorf("the status line: %q", got)
	}
	w.hover("", fyne.Position{})
	if got := w.status.about.Text(); got != "" {
		t.Errorf("on bare paper: %q", got)
	}
}
