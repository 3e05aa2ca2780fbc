package preview

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/render/view"
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

// Cover lays something else over the drawing, hidden until it is shown.
func (s *Stage) Cover(o fyne.CanvasObject) {
	o.Hide()
	s.Object.(*fyne.Container).Add(o)
}

// Show draws a view and sets the figures. While a parameter is moving, the
// figures that differ from before it began stand in the accent.
func (s *Stage) Show(v view.View, in view.Input, moving bool) {
	s.title.set(Figures(in.Book, in.System), moving)
	s.Pane.Draw(v, in, moving)
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
