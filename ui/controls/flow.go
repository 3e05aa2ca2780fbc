package controls

import "fyne.io/fyne/v2"

// Flow sets objects side by side in as many lines as they need.
type Flow struct {
	gap   float32
	width float32 // of the last layout
}

// NewFlow makes a box whose objects flow into lines.
func NewFlow(gap float32, objects ...fyne.CanvasObject) *fyne.Container {
	return &fyne.Container{Layout: &Flow{gap: gap}, Objects: objects}
}

// Layout implements fyne.Layout.
func (f *Flow) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	f.width = size.Width
	f.arrange(objects, size.Width, func(o fyne.CanvasObject, x, y float32, least fyne.Size) {
		put(o, x, y, least.Width, least.Height)
	})
}

// MinSize implements fyne.Layout: as high as at the last width.
func (f *Flow) MinSize(objects []fyne.CanvasObject) fyne.Size {
	least := fyne.Size{}
	for _, o := range objects {
		least.Width = max(least.Width, o.MinSize().Width)
	}
	least.Height = f.arrange(objects, max(f.width, least.Width), func(fyne.CanvasObject, float32, float32, fyne.Size) {})
	return least
}

func (f *Flow) arrange(objects []fyne.CanvasObject, width float32, place func(fyne.CanvasObject, float32, float32, fyne.Size)) float32 {
	x, y, high := float32(0), float32(0), float32(0)
	for _, o := range objects {
		if !o.Visible() {
			continue
		}
		least := o.MinSize()
		if x > 0 && x+least.Width > width {
			x, y, high = 0, y+high+f.gap/2, 0
		}
		place(o, x, y, least)
		x, high = x+least.Width+f.gap, max(high, least.Height)
	}
	return y + high
}
