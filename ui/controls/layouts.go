package controls

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// flowing is a widget whose height follows from its width.
type flowing interface {
	HeightFor(width float32) float32
}

func heightFor(o fyne.CanvasObject, width float32) float32 {
	if f, ok := o.(flowing); ok {
		return f.HeightFor(width)
	}
	return o.MinSize().Height
}

// Down stacks objects at the full width with a gap between and no padding.
func Down(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(&down{gap: gap}, objects...)
}

type down struct {
	gap   float32
	width float32 // of the last layout: what flows is measured for it
}

// Layout implements fyne.Layout.
func (d *down) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	d.width = size.Width
	y := float32(0)
	for _, o := range objects {
		if o.Visible() {
			height := heightFor(o, size.Width)
			put(o, 0, y, size.Width, height)
			y += height + d.gap
		}
	}
}

// MinSize implements fyne.Layout.
func (d *down) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := fyne.Size{}
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		if least.Height > 0 {
			least.Height += d.gap
		}
		size := o.MinSize()
		least.Width = max(least.Width, size.Width)
		if d.width > 0 {
			size.Height = heightFor(o, d.width)
		}
		least.Height += size.Height
	}
	return least
}

// Across sets objects side by side at their own widths, each in the middle of
// the height; a Spring takes what is left.
func Across(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(across{gap: gap}, objects...)
}

// AcrossGiving is Across where some of the objects, the first of them first,
// give way as soon as there is no room for all.
func AcrossGiving(gap float32, giving []fyne.CanvasObject, objects ...fyne.CanvasObject) *fyne.Container {
	return container.New(across{gap, giving}, objects...)
}

type across struct {
	gap    float32
	giving []fyne.CanvasObject
}

// give hides what there is no room for.
func (a across) give(objects []fyne.CanvasObject, room float32) {
	if len(a.giving) == 0 {
		return
	}
	need := a.MinSize(objects).Width
	widths := make([]float32, len(a.giving))
	for i, o := range a.giving {
		widths[i] = o.MinSize().Width + a.gap
		need += widths[i]
	}
	for i, o := range a.giving {
		show(o, need <= room)
		if need > room {
			need -= widths[i]
		}
	}
}

// Layout implements fyne.Layout.
func (a across) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	a.give(objects, size.Width)
	spare := size.Width - across{gap: a.gap}.MinSize(objects).Width
	springs := 0
	for _, o := range objects {
		if _, ok := o.(*spring); ok && o.Visible() {
			springs++
		}
	}
	x := float32(0)
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		if _, ok := o.(*spring); ok {
			least.Width = max(0, spare/float32(springs))
		}
		put(o, x, float32(int((size.Height-least.Height)/2)), least.Width, least.Height)
		x += least.Width + a.gap
	}
}

// MinSize implements fyne.Layout.
func (a across) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := fyne.Size{}
	shown := 0
	for _, o := range objects {
		if o.Visible() && !slices.Contains(a.giving, o) {
			size := o.MinSize()
			least.Width += size.Width
			least.Height = max(least.Height, size.Height)
			shown++
		}
	}
	least.Width += a.gap * float32(max(0, shown-1))
	return least
}

// spring takes the spare width between its neighbours.
type spring struct{ canvas.Rectangle }

// Spring makes the spare width of Across.
func Spring() fyne.CanvasObject { return &spring{canvas.Rectangle{FillColor: color.Transparent}} }

// Gap is an empty place of a fixed size.
func Gap(width, height float32) fyne.CanvasObject {
	r := box()
	r.SetMinSize(fyne.NewSize(width, height))
	return r
}

// Around sets objects at the edges of a middle one without padding; any may be
// nil. Top and bottom take the whole width.
func Around(top, bottom, left, right, middle fyne.CanvasObject) *fyne.Container {
	a := &around{top, bottom, left, right, middle}
	var objects []fyne.CanvasObject
	for _, o := range []fyne.CanvasObject{middle, top, left, right, bottom} {
		if o != nil {
			objects = append(objects, o)
		}
	}
	return container.New(a, objects...)
}

type around struct{ top, bottom, left, right, middle fyne.CanvasObject }

// Layout implements fyne.Layout.
func (a *around) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	above, below, before, after := leastOf(a.top).Height, leastOf(a.bottom).Height, leastOf(a.left).Width, leastOf(a.right).Width
	inner := max(0, size.Height-above-below)
	for _, p := range []struct {
		o          fyne.CanvasObject
		x, y, w, h float32
	}{
		{a.top, 0, 0, size.Width, above},
		{a.bottom, 0, size.Height - below, size.Width, below},
		{a.left, 0, above, before, inner},
		{a.right, size.Width - after, above, after, inner},
		{a.middle, before, above, max(0, size.Width-before-after), inner},
	} {
		if p.o != nil {
			put(p.o, p.x, p.y, p.w, p.h)
		}
	}
}

// MinSize implements fyne.Layout.
func (a *around) MinSize([]fyne.CanvasObject) fyne.Size {
	top, bottom, left, right, middle := leastOf(a.top), leastOf(a.bottom), leastOf(a.left), leastOf(a.right), leastOf(a.middle)
	return fyne.NewSize(
		max(top.Width, bottom.Width, left.Width+right.Width+middle.Width),
		top.Height+bottom.Height+max(left.Height, right.Height, middle.Height))
}

func leastOf(o fyne.CanvasObject) fyne.Size {
	if o == nil || !o.Visible() {
		return fyne.Size{}
	}
	return o.MinSize()
}

// Inset leaves room round an object.
func Inset(top, bottom, left, right float32, o fyne.CanvasObject) *fyne.Container {
	return container.New(&inset{top, bottom, left, right}, o)
}

type inset struct{ top, bottom, left, right float32 }

// Layout implements fyne.Layout.
func (n *inset) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		put(o, n.left, n.top, max(0, size.Width-n.left-n.right), max(0, size.Height-n.top-n.bottom))
	}
}

// MinSize implements fyne.Layout.
func (n *inset) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := fyne.Size{}
	for _, o := range objects {
		least = least.Max(o.MinSize())
	}
	return least.AddWidthHeight(n.left+n.right, n.top+n.bottom)
}

// Fixed gives an object a least size of at least so much.
func Fixed(width, height float32, o fyne.CanvasObject) *fyne.Container {
	return container.New(&fixed{width, height}, o)
}

type fixed struct{ width, height float32 }

// Layout implements fyne.Layout.
func (f *fixed) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		put(o, 0, 0, size.Width, size.Height)
	}
}

// MinSize implements fyne.Layout.
func (f *fixed) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := fyne.NewSize(f.width, f.height)
	for _, o := range objects {
		least = least.Max(o.MinSize())
	}
	return least
}

// Paint is a plain area in a colour of the palette that follows the theme.
type Paint struct {
	widget.BaseWidget
	colour func(look.Palette) colour
	least  fyne.Size
	ground *canvas.Rectangle
}

// NewPaint makes an area with a least size; colour picks from the palette.
func NewPaint(width, height float32, colour func(look.Palette) colour) *Paint {
	p := &Paint{colour: colour, least: fyne.NewSize(width, height), ground: box()}
	p.ExtendBaseWidget(p)
	return p
}

// NewHairline is a one pixel line between panels, as long as it is given room.
func NewHairline() *Paint {
	return NewPaint(1, 1, func(p look.Palette) colour { return p.Hairline })
}

// CreateRenderer implements fyne.Widget.
func (p *Paint) CreateRenderer() fyne.WidgetRenderer {
	return on(p.ground).drawn(func() { setFill(p.ground, p.colour(look.Current())) },
		func(fyne.Size) {}, func() fyne.Size { return p.least })
}
