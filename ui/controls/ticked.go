package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// TickedLine is a line of a list with a tick box before it: the box says whether
// it is wanted, the line chooses it.
type TickedLine struct {
	Tick *Tick
	Line *LineItem
	box  *fyne.Container
}

// NewTickedLine makes an empty one.
func NewTickedLine(ticked func(bool), chosen func()) *TickedLine {
	l := &TickedLine{Tick: NewTick(nil, ticked), Line: NewLineItem()}
	l.Line.OnTapped = chosen
	l.box = container.New(tickedLayout{}, l.Line, l.Tick)
	return l
}

// Object is what to put into the window.
func (l *TickedLine) Object() *fyne.Container { return l.box }

type tickedLayout struct{}

// Layout implements fyne.Layout.
func (tickedLayout) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	tick := objects[1].MinSize()
	put(objects[0], 0, 0, size.Width, size.Height)
	put(objects[1], 6, (size.Height-tick.Height)/2, tick.Width, tick.Height)
}

// MinSize implements fyne.Layout.
func (tickedLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return objects[0].MinSize().Max(objects[1].MinSize())
}
