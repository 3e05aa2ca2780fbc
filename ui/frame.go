package ui

import (
	"fyne.io/fyne/v2"
)

// frame lays the three columns out, with hairlines between: parameters,
// drawing, findings. The side columns have fixed widths by the window's; the
// drawing takes what is left.
type frame struct {
	left, leftLine, middle, rightLine, right fyne.CanvasObject

	wide    float32                   // the left column at the last layout
	widened func(left, right float32) // told when the columns have other widths
}

// sideWidths are the widths of the side columns in a window so wide.
func sideWidths(window float32) (left, right float32) {
	switch {
	case window >= 1500:
		return 420, 336
	case window >= 1360:
		return 384, 300
	}
	return 360, 268
}

// Layout implements fyne.Layout.
func (f *frame) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	left, right := sideWidths(size.Width)
	x := float32(0)
	for _, column := range []struct {
		o     fyne.CanvasObject
		width float32
	}{
		{f.left, left},
		{f.leftLine, 1},
		{f.middle, max(0, size.Width-left-right-2)},
		{f.rightLine, 1},
		{f.right, right},
	} {
		column.o.Resize(fyne.NewSize(column.width, size.Height))
		column.o.Move(fyne.NewPos(x, 0))
		x += column.width
	}
	if f.wide != left {
		f.wide = left
		f.widened(left, right)
	}
}

// MinSize implements fyne.Layout: the drawing at its least beside the columns.
func (f *frame) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(360+268+300, 480) }

// rightColumn gives the list to cut its own height and the findings the rest.
type rightColumn struct {
	findings, cut fyne.CanvasObject
}

// Layout implements fyne.Layout.
func (r *rightColumn) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	height := min(r.cut.MinSize().Height+6, size.Height/2)
	r.findings.Resize(fyne.NewSize(size.Width, size.Height-height))
	r.findings.Move(fyne.NewPos(0, 0))
	r.cut.Resize(fyne.NewSize(size.Width, height))
	r.cut.Move(fyne.NewPos(0, size.Height-height))
}

// MinSize implements fyne.Layout.
func (r *rightColumn) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(268, 200) }
