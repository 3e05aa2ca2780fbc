package ui

import (
	"fyne.io/fyne/v2"
)

// frame lays the three columns out, with hairlines between: parameters,
// drawing, findings. The side columns have fixed widths by the window's; the
// drawing takes what is left.
type frame struct {
	left, leftLine, middle, rightLine, right fyne.CanvasObject

	wide, far float32                   // the left and right column at the last layout
	widened   func(left, right float32) // told when the columns have other widths

	table   bool // list and drawing give way to one table; what stands for the list is a part of it
	aside   bool // a narrow window shows the right column in the drawing's place
	narrow  bool // at the last layout
	changed func(narrow bool)

	under float32 // the drawing lies so high under the list, both as wide as the window leaves; 0 beside it
}

// narrowWindow is the width below which drawing and findings take turns.
const narrowWindow = float32(1130)

// turn shows the right column in a narrow window, or the drawing again.
func (f *frame) turn(aside bool) {
	f.aside = aside
	f.take()
}

// take shows what a narrow window has room for, a wide one both.
func (f *frame) take() {
	setVisible(f.middle, !f.narrow || !f.aside)
	setVisible(f.right, !f.narrow || f.aside)
	setVisible(f.rightLine, !f.narrow)
	if f.under > 0 {
		setVisible(f.left, !f.narrow || !f.aside)
		setVisible(f.leftLine, !f.narrow || !f.aside)
	}
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
	if narrow := size.Width < narrowWindow; narrow != f.narrow {
		f.narrow = narrow
		f.take()
		f.changed(narrow)
	}
	switch {
	case f.under > 0:
		f.layUnder(right, size)
		return
	case f.table:
		f.layTable(right, size)
		return
	case f.narrow:
		f.layNarrow(left, size)
		return
	}
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
	f.tell(left, right)
}

func (f *frame) tell(left, right float32) {
	if f.wide != left || f.far != right {
		f.wide, f.far = left, right
		f.widened(left, right)
	}
}

// layUnder lays the drawing under the list.
func (f *frame) layUnder(right float32, size fyne.Size) {
	wide := max(0, size.Width-right-1)
	if f.narrow {
		wide, right = size.Width, size.Width
	}
	high := max(0, size.Height-f.under-1)
	for _, place := range []struct {
		o          fyne.CanvasObject
		x, y, w, h float32
	}{
		{f.left, 0, 0, wide, high}, {f.leftLine, 0, high, wide, 1}, {f.middle, 0, high + 1, wide, f.under},
		{f.rightLine, wide, 0, 1, size.Height}, {f.right, size.Width - right, 0, right, size.Height},
	} {
		place.o.Resize(fyne.NewSize(place.w, place.h))
		place.o.Move(fyne.NewPos(place.x, place.y))
	}
	f.tell(wide, right)
}

// layNarrow gives drawing and findings the same place.
func (f *frame) layNarrow(left float32, size fyne.Size) {
	rest := max(0, size.Width-left-1)
	for _, column := range []struct {
		o        fyne.CanvasObject
		x, width float32
	}{{f.left, 0, left}, {f.leftLine, left, 1}, {f.middle, left + 1, rest}, {f.right, left + 1, rest}} {
		column.o.Resize(fyne.NewSize(column.width, size.Height))
		column.o.Move(fyne.NewPos(column.x, 0))
	}
	f.tell(left, rest)
}

// tableSpare is what the right column gains beside a table.
const tableSpare = float32(40)

// layTable gives a table what the right column leaves, in a narrow window all.
func (f *frame) layTable(right float32, size fyne.Size) {
	right += tableSpare
	rest := max(0, size.Width-right-1)
	if f.narrow {
		put(f.middle, 0, size.Width, size.Height)
		put(f.right, 0, size.Width, size.Height)
		return
	}
	put(f.middle, 0, rest, size.Height)
	put(f.rightLine, rest, 1, size.Height)
	put(f.right, rest+1, right, size.Height)
}

func put(o fyne.CanvasObject, x, width, height float32) {
	o.Resize(fyne.NewSize(width, height))
	o.Move(fyne.NewPos(x, 0))
}

// MinSize implements fyne.Layout: the parameters, and the drawing or the
// findings beside them.
func (f *frame) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(360+440, 330) }

// rightColumn gives the list to cut, or what is compared in its place, its own
// height and the findings the rest.
type rightColumn struct {
	findings, cut, compared fyne.CanvasObject
}

// Layout implements fyne.Layout.
func (r *rightColumn) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	low, share := r.cut, size.Height/2
	if r.compared.Visible() {
		low, share = r.compared, size.Height*2/3
	}
	height := min(low.MinSize().Height+6, share)
	r.findings.Resize(fyne.NewSize(size.Width, size.Height-height))
	r.findings.Move(fyne.NewPos(0, 0))
	low.Resize(fyne.NewSize(size.Width, height))
	low.Move(fyne.NewPos(0, size.Height-height))
}

// MinSize implements fyne.Layout.
func (r *rightColumn) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(268, 200) }
