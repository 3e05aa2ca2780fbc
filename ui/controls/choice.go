package controls

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// ChoiceField shows one of several words over a ruled line and opens a menu.
// ↑ and ↓ go to the neighbour, Space and Enter open the menu.
type ChoiceField struct {
	press
	// OnChoose is told the index of another choice.
	OnChoose func(int)
	// OnAuto is Ctrl+Backspace; nil where the choice cannot be automatic.
	OnAuto  func()
	options []string
	chosen  int
	quiet   bool
	hint    string // stands there while nothing is chosen

	ground, rule, ring *canvas.Rectangle
	word               *canvas.Text
	caret              *canvas.Image
}

// NewChoiceField makes a field without choices.
func NewChoiceField() *ChoiceField {
	c := &ChoiceField{ground: box(), rule: box(), ring: ring(), word: look.Body(""), caret: icon()}
	c.OnTapped = c.openMenu
	c.is(c)
	return c
}

// Set shows the choice at an index; one outside shows nothing. Quiet marks an
// automatic choice.
func (c *ChoiceField) Set(options []string, chosen int, quiet bool) {
	if c.chosen == chosen && c.quiet == quiet && slices.Equal(c.options, options) {
		return
	}
	c.options, c.chosen, c.quiet = slices.Clone(options), chosen, quiet
	c.Refresh()
}

// SetHint is what stands there while nothing is chosen.
func (c *ChoiceField) SetHint(hint string) {
	if c.hint != hint {
		c.hint = hint
		c.Refresh()
	}
}

// Chosen is the index on show.
func (c *ChoiceField) Chosen() int { return c.chosen }

func (c *ChoiceField) text() string {
	if c.chosen < 0 || c.chosen >= len(c.options) {
		return c.hint
	}
	return c.options[c.chosen]
}

// pick tells the callback and shows nothing itself: the owner answers by Set.
func (c *ChoiceField) pick(i int) {
	if i >= 0 && i < len(c.options) && (i != c.chosen || c.quiet) {
		tell(c.OnChoose, i)
	}
}

func (c *ChoiceField) openMenu() {
	where := canvasOf(c)
	if where == nil || len(c.options) == 0 {
		return
	}
	var items []*fyne.MenuItem
	for i, option := range c.options {
		item := fyne.NewMenuItem(option, func() { c.pick(i) })
		item.Checked = i == c.chosen
		items = append(items, item)
	}
	menu := widget.NewPopUpMenu(fyne.NewMenu("", items...), where)
	menu.ShowAtRelativePosition(fyne.NewPos(0, c.Size().Height), c)
	menu.Resize(fyne.NewSize(max(c.Size().Width, menu.MinSize().Width), menu.MinSize().Height))
}

// TypedKey implements fyne.Focusable.
func (c *ChoiceField) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyUp:
		c.pick(c.chosen - 1)
	case fyne.KeyDown:
		c.pick(c.chosen + 1)
	case fyne.KeyHome:
		c.pick(0)
	case fyne.KeyEnd:
		c.pick(len(c.options) - 1)
	default:
		c.press.TypedKey(key)
	}
}

// TypedShortcut implements fyne.Shortcutable.
func (c *ChoiceField) TypedShortcut(s fyne.Shortcut) {
	if givesBack(s) {
		call(c.OnAuto)
		return
	}
	handOnShortcut(c, s)
}

// Cursor implements desktop.Cursorable.
func (c *ChoiceField) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (c *ChoiceField) CreateRenderer() fyne.WidgetRenderer {
	return on(c.ground, c.rule, c.word, c.caret, c.ring).drawn(c.paint, c.place,
		func() fyne.Size { return fyne.NewSize(80, 28) })
}

func (c *ChoiceField) paint() {
	p := look.Current()
	ink := p.Ink
	if c.quiet {
		ink = p.Quiet
	}
	setFill(c.rule, p.Field)
	if c.hovered {
		setFill(c.rule, p.Quiet)
	}
	setText(c.word, look.Fit(c.word, c.text(), max(0, c.Size().Width-caretSize-12)), ink)
	setIcon(c.caret, look.IconDown.In(p.Ink))
	c.paintRing(c.ring, p)
}

func (c *ChoiceField) place(size fyne.Size) {
	put(c.rule, 0, valueRule, size.Width, 1)
	look.At(c.word, 4, valueBase)
	put(c.caret, size.Width-caretSize-5, 14-caretSize/2, caretSize, caretSize)
	put(c.ring, -2, 1, size.Width+4, 25)
}
