package ui

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"grainwise/assets/words"
)

// A screen of 1280 × 720 at each size of text, in the window's own units.
func TestNothingIsClippedAtAnySizeOfText(t *testing.T) {
	long(t)
	for _, percent := range textSizes {
		for _, aside := range []bool{false, true} {
			w := openDemo(t)
			w.textSize = percent
			// 26 for the menu, which the test's window does not draw
			w.win.Resize(fyne.NewSize(float32(1280*100/percent), float32(720*100/percent-26)))
			if got := w.win.Canvas().Size().Width; got > float32(1280*100/percent)+1 {
				t.Errorf("%d %%: the window is %v wide", percent, got)
			}
			if got := w.win.Content().MinSize().Height; got > float32(720*100/percent-26) {
				t.Errorf("%d %%: the window needs a height of %v", percent, got)
			}
			w.turnSide(aside)
			for _, trouble := range troublesOfText(w.win.Content()) {
				t.Errorf("%d %%, aside %v: %s", percent, aside, trouble)
			}
		}
	}
}

// drawnText is a text with its place in the window and what is seen of it.
type drawnText struct {
	*canvas.Text
	at, to fyne.Position
}

// troublesOfText says which texts are shortened, run out of what shows them or
// stand over one another. What a scroll has out of sight does not count.
func troublesOfText(o fyne.CanvasObject) []string {
	var troubles []string
	var all []drawnText
	var walk func(o fyne.CanvasObject, at, clipFrom, clipTo fyne.Position)
	walk = func(o fyne.CanvasObject, at, clipFrom, clipTo fyne.Position) {
		if !o.Visible() {
			return
		}
		at = at.Add(o.Position())
		to := at.AddXY(o.Size().Width, o.Size().Height)
		if s, ok := o.(*container.Scroll); ok {
			clipFrom = fyne.NewPos(max(clipFrom.X, at.X), max(clipFrom.Y, at.Y))
			clipTo = fyne.NewPos(min(clipTo.X, to.X), min(clipTo.Y, to.Y))
			walk(s.Content, at, clipFrom, clipTo)
			return
		}
		if text, ok := o.(*canvas.Text); ok {
			if text.Text == "" || to.Y <= clipFrom.Y+2 || at.Y >= clipTo.Y-2 {
				return
			}
			size := text.MinSize()
			to = at.AddXY(size.Width, size.Height)
			if strings.HasSuffix(text.Text, "…") && !offered(text.Text) {
				troubles = append(troubles, fmt.Sprintf("%q is shortened", text.Text))
			}
			if at.X < clipFrom.X-1 || to.X > clipTo.X+1 {
				troubles = append(troubles, fmt.Sprintf("%q runs from %v to %v, outside %v to %v", text.Text, at.X, to.X, clipFrom.X, clipTo.X))
			}
			at.Y, to.Y = max(at.Y, clipFrom.Y), min(to.Y, clipTo.Y)
			for _, other := range all {
				const air = 3 // the toolkit's line box is higher than the letters
				if at.X+1 < other.to.X && other.at.X+1 < to.X && at.Y+air < other.to.Y && other.at.Y+air < to.Y {
					troubles = append(troubles, fmt.Sprintf("%q and %q overlap", text.Text, other.Text.Text))
				}
			}
			all = append(all, drawnText{text, at, to})
			return
		}
		for _, child := range childrenOf(o) {
			walk(child, at, clipFrom, clipTo)
		}
	}
	walk(o, fyne.Position{}, fyne.Position{}, fyne.NewPos(o.Size().Width, o.Size().Height))
	return troubles
}

// offered are words that end in dots of their own.
func offered(text string) bool {
	switch text {
	case "Pick a format…", "From my paper…", words.Say("findings.leave"), words.Say("measured.enter"), words.Say("gallery.keep"), words.Say("papers.save"),
		words.Say("batch.move"), words.Say("batch.orders.import"), words.Say("batch.orders.export"), words.Say("batch.buying"),
		words.Say("materials.add"), words.Say("materials.import"), words.Say("materials.export"), words.Say("materials.edit"),
		words.Say("materials.search"), words.Say("materials.photoTake"), words.Say("materials.photoOther"),
		words.Say("batch.working"), words.Say("batch.lostDay"), words.Say("batch.pricing"), words.Say("batch.whatIf"), words.Say("batch.post"), words.Say("batch.packingList"),
		words.Say("batch.calendar"), words.Say("batch.papers"), words.Say("batch.close"), words.Say("batch.setting"):
		return true
	}
	return false
}

func childrenOf(o fyne.CanvasObject) []fyne.CanvasObject {
	switch o := o.(type) {
	case *fyne.Container:
		return o.Objects
	case fyne.Widget:
		return test.WidgetRenderer(o).Objects()
	}
	return nil
}
