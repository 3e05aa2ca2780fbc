package preview

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/model/book"
	"grainwise/render/view"
	"grainwise/ui/controls"
)

// Stage is the drawing with its title block under it.
type Stage struct {
	Pane   *Pane
	Object fyne.CanvasObject // what to put into the window
	title  *titleBlock
}

// NewStage returns a stage that shows nothing until Show.
func NewStage() *Stage {
	s := &Stage{Pane: NewPane(), title: newTitleBlock()}
	s.Object = container.New(overTitle{}, s.Pane, s.title.object)
	return s
}

// SetTips says where tips of the figures are shown.
func (s *Stage) SetTips(tips *controls.Tips) { s.title.tips = tips }

// Cover lays something else over the drawing, hidden until it is shown.
func (s *Stage) Cover(o fyne.CanvasObject) {
	o.Hide()
	s.Object.(*fyne.Container).Add(o)
}

// Show draws a view and sets the figures. Those that differ from a book before,
// nil at rest, stand in the accent. While a drag goes on, fine screens get half
// the pixels.
func (s *Stage) Show(v view.View, in view.Input, before *book.Book, held bool) {
	var changes []string
	if before != nil {
		changes = Changes(in.Book, *before, in.System)
	}
	s.title.set(Figures(in.Book, in.System), changes)
	s.Pane.Draw(v, in, held)
}

// overTitle gives the title block its height and the drawing the rest.
type overTitle struct{}

// Layout implements fyne.Layout.
func (overTitle) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	title := titleHeight(size.Width)
	for i, o := range objects {
		if i != 1 {
			o.Resize(fyne.NewSize(size.Width, size.Height-title))
		}
	}
	objects[1].Move(fyne.NewPos(0, size.Height-title))
	objects[1].Resize(fyne.NewSize(size.Width, title))
}

// MinSize implements fyne.Layout.
func (overTitle) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := objects[0].MinSize()
	return fyne.NewSize(least.Width, least.Height+titleHeight(0))
}
