package controls

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// A count of five figures stands on the line, beside the name.
func TestALineHoldsALargeCount(t *testing.T) {
	line := NewLineItem()
	window := test.NewTempWindow(t, line)
	line.Set("60000", "boards", "proved fewest", true)
	window.Resize(fyne.NewSize(360, LineHeight))
	count, name := line.texts[0], line.texts[1]
	if from := count.Position().X; from < line.bar.Size().Width {
		t.Errorf("the count begins at %v", from)
	}
	if end := count.Position().X + count.MinSize().Width; end > name.Position().X {
		t.Errorf("the count ends at %v, the name begins at %v", end, name.Position().X)
	}
}
