package preview

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"grainwise/model/book"
	"grainwise/render/scene"
	"grainwise/ui/look"
)

// keyMove is how far an arrow key moves the drawing, dp.
const keyMove = 40

// keyed is what the keyboard has to do with a pane: Tab goes from part to part
// and, past the last, on; Enter opens the part; the arrows move the drawing.
type keyed struct {
	focused bool
	part    book.PartID // the one that Tab is on
	ring    *canvas.Rectangle
}

func newKeyed() keyed {
	ring := canvas.NewRectangle(color.Transparent)
	ring.StrokeWidth = 2
	ring.Hide()
	return keyed{ring: ring}
}

// FocusGained implements fyne.Focusable.
func (p *Pane) FocusGained() { p.setFocused(true) }

// FocusLost implements fyne.Focusable.
func (p *Pane) FocusLost() { p.setFocused(false) }

func (p *Pane) setFocused(focused bool) {
	p.focused, p.part = focused, ""
	p.ring.StrokeColor = look.Current().SheetAccent
	if focused {
		p.ring.Show()
	} else {
		p.ring.Hide()
		p.hover("", fyne.Position{})
	}
	p.ring.Refresh()
}

// AcceptsTab implements fyne.Tabbable: Tab goes through the parts first.
func (p *Pane) AcceptsTab() bool { return true }

// TypedRune implements fyne.Focusable.
func (p *Pane) TypedRune(rune) {}

// TypedKey implements fyne.Focusable. Keys of no use here go to the window.
func (p *Pane) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyTab:
		p.tab(shiftHeld())
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		if p.part != "" && p.OnOpen != nil {
			p.OnOpen(scene.Tag{Part: string(p.part)})
		}
	case fyne.KeyLeft:
		p.move(keyMove, 0)
	case fyne.KeyRight:
		p.move(-keyMove, 0)
	case fyne.KeyUp:
		p.move(0, keyMove)
	case fyne.KeyDown:
		p.move(0, -keyMove)
	case fyne.KeyHome:
		p.Fit()
	case fyne.KeyPageDown:
		p.turn(1)
	case fyne.KeyPageUp:
		p.turn(-1)
	default:
		if c := fyne.CurrentApp().Driver().CanvasForObject(p); c != nil && c.OnTypedKey() != nil {
			c.OnTypedKey()(key)
		}
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (p *Pane) TypedShortcut(s fyne.Shortcut) {
	if c, ok := fyne.CurrentApp().Driver().CanvasForObject(p).(fyne.Shortcutable); ok {
		c.TypedShortcut(s)
	}
}

func (p *Pane) turn(by int) {
	if p.OnTurn != nil {
		p.OnTurn(by)
	}
}

func (p *Pane) move(dx, dy float64) {
	p.port = p.port.Moved(dx, dy, p.width(), p.height())
	p.ask()
}

// tab goes to the next part, or the one before; past the ends it leaves.
func (p *Pane) tab(back bool) {
	parts := p.parts()
	at := -1
	for i, part := range parts {
		if part == p.part {
			at = i
		}
	}
	switch {
	case !back && at+1 < len(parts):
		p.point(parts[at+1])
	case back && at > 0:
		p.point(parts[at-1])
	case back && at == 0:
		p.point("")
	default:
		p.leave(back)
	}
}

func (p *Pane) point(part book.PartID) {
	p.part = part
	if p.OnPick != nil {
		p.OnPick(part)
	}
	p.hover(part, fyne.NewPos(keyMove, keyMove))
}

func (p *Pane) leave(back bool) {
	c := fyne.CurrentApp().Driver().CanvasForObject(p)
	switch {
	case c == nil:
	case back:
		c.FocusPrevious()
	default:
		c.FocusNext()
	}
}

// parts are those of the book that the drawing shows, in the order of making.
func (p *Pane) parts() []book.PartID {
	var parts []book.PartID
	for _, part := range p.input.Book.Parts {
		if p.shows(part.ID) {
			parts = append(parts, part.ID)
		}
	}
	return parts
}

// shows says whether a part is drawn; before the first drawing all count.
func (p *Pane) shows(part book.PartID) bool {
	if p.shown.scene == nil {
		return true
	}
	for _, item := range p.shown.scene.Items {
		if item.About().Part == string(part) {
			return true
		}
	}
	return false
}

func shiftHeld() bool {
	d, ok := fyne.CurrentApp().Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}
