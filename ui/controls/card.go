package controls

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"grainwise/ui/look"
)

// CardState is what the card of a finding shows. Empty parts are left out.
type CardState struct {
	Level              look.Level
	Word               string // the level's name
	Group              string
	Sentence           string
	Again              string // why it speaks although it was left as it is
	Found              string // "found 7, wanted 8.4 or more"
	Why                string
	Primary, Secondary string // the buttons
	Third, Fourth      string // quiet ones
	Picture            string // the name of one that says it faster
	Open               bool   // only an open card shows what comes after the sentence
}

const (
	cardText   = float32(40) // left end of its texts
	cardMargin = float32(6)  // from the panel's edge to the card's frame
	cardTop    = float32(10)
)

// Card is one finding. OnTapped chooses it; its height follows its width.
type Card struct {
	press
	// OnPrimary puts it right, OnSecondary leaves it as it is or speaks of it
	// again, OnThird copies it, OnFourth explains it at length.
	OnPrimary, OnSecondary, OnThird, OnFourth func()
	// Draw makes the picture of a name for the colours in force; nil for a card
	// without pictures.
	Draw func(name string) image.Image

	state               CardState
	picture             *canvas.Image
	drawn               drawnPicture
	ground, frame, ring *canvas.Rectangle
	level               *canvas.Image
	word, group         *canvas.Text
	sentence            *lines
	again, found, why   *lines
	primary, secondary  *Button
	third, fourth       *Button
	surface             *surface
}

// drawnPicture is the picture that a card holds: drawn anew only when its name
// or the colours change, never while a slider moves.
type drawnPicture struct {
	name         string
	night, stark bool
}

// The picture's size in an open card: three quarters of what it is drawn for.
const (
	cardPictureWidth  = float32(165)
	cardPictureHeight = float32(105)
)

// NewCard makes an empty card.
func NewCard() *Card {
	c := &Card{ground: box(), frame: box(), ring: ring(), level: icon(), picture: icon(), word: look.Strong(""), group: look.Caption(""),
		sentence: newLines(look.Body, 18), again: newLines(small, 16), found: newLines(small, 16), why: newLines(small, 16)}
	c.frame.CornerRadius = look.Radius
	c.primary = NewButton(Solid, "", func() { call(c.OnPrimary) })
	c.secondary = NewButton(Framed, "", func() { call(c.OnSecondary) })
	c.third = NewButton(Plain, "", func() { call(c.OnThird) })
	c.fourth = NewButton(Plain, "", func() { call(c.OnFourth) })
	c.primary.OnHover, c.secondary.OnHover, c.third.OnHover, c.fourth.OnHover = c.inside, c.inside, c.inside, c.inside
	c.primary.OnFocus = func(in bool) { tell(c.OnFocus, in) }
	c.secondary.OnFocus, c.third.OnFocus, c.fourth.OnFocus = c.primary.OnFocus, c.primary.OnFocus, c.primary.OnFocus
	c.is(c)
	return c
}

func small(text string) *canvas.Text {
	t := look.Body(text)
	t.TextSize = 12
	return t
}

// SetState shows another finding.
func (c *Card) SetState(state CardState) {
	if c.state != state {
		c.state = state
		c.Refresh()
	}
}

// State is what was set last.
func (c *Card) State() CardState { return c.state }

func (c *Card) inside(in bool) { tell(c.OnHover, in) }

// Focus gives the keyboard to what mends the finding, or else to the card.
func (c *Card) Focus(window fyne.Canvas) {
	if c.state.Open && c.state.Primary != "" {
		window.Focus(c.primary)
	} else {
		window.Focus(c)
	}
}

// Cursor implements desktop.Cursorable.
func (c *Card) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer implements fyne.Widget.
func (c *Card) CreateRenderer() fyne.WidgetRenderer {
	c.surface = on(c.ground)
	return c.surface.drawn(c.paint, c.place, func() fyne.Size {
		return fyne.NewSize(220, c.HeightFor(max(220, c.Size().Width)))
	})
}

// HeightFor is the height that the card needs at a width.
func (c *Card) HeightFor(width float32) float32 {
	return c.arrange(width, false)
}

func (c *Card) paint() {
	p := look.Current()
	fill, stroke := noColour, noColour
	switch {
	case c.state.Open:
		fill, stroke = p.Card, p.Hairline
	case c.hovered:
		fill = p.Hover
	}
	setFrame(c.frame, fill, stroke, 1)
	setIcon(c.level, c.state.Level.Shape())
	setText(c.word, c.state.Word, p.Level(c.state.Level))
	room := c.Size().Width - cardMargin - 10 - cardText - look.Width(c.word, c.word.Text) - 10
	setText(c.group, look.Fit(c.group, c.state.Group, room), p.Quiet)
	for _, b := range c.buttons() {
		b.SetText(b.word)
		show(b.Button, b.shown)
	}
	c.paintPicture(p)
	c.paintRing(c.ring, p)
}

func (c *Card) pictured() bool { return c.state.Open && c.state.Picture != "" && c.Draw != nil }

func (c *Card) paintPicture(p look.Palette) {
	show(c.picture, c.pictured())
	want := drawnPicture{c.state.Picture, p.Night, p.Stark}
	if !c.pictured() || c.drawn == want {
		return
	}
	c.drawn, c.picture.Image = want, c.Draw(want.name)
	c.picture.Refresh()
}

func (c *Card) place(size fyne.Size) {
	put(c.frame, cardMargin, 1, size.Width-2*cardMargin, size.Height-2)
	put(c.ring, cardMargin, 1, size.Width-2*cardMargin, size.Height-2)
	put(c.level, cardMargin+10, cardTop+1, 14, 14)
	look.At(c.word, cardText, cardTop+13)
	look.EndingAt(c.group, size.Width-cardMargin-10, cardTop+13)
	c.arrange(size.Width, true)
	c.gather()
}

// arrange goes down the card and returns its height; with move it also puts
// the parts where they belong.
func (c *Card) arrange(width float32, move bool) float32 {
	p := look.Current()
	room := width - cardText - cardMargin - 10
	y := cardTop + 20
	flow := func(l *lines, text string, ink colour) {
		height := l.height(text, room)
		if move {
			l.set(text, room, ink, cardText, y)
		}
		y += height
	}
	found, why := c.state.Found, c.state.Why
	if !c.state.Open {
		found, why = "", ""
	}
	flow(c.sentence, c.state.Sentence, p.Ink)
	flow(c.again, c.state.Again, p.Ink)
	flow(c.found, found, p.Ink)
	flow(c.why, why, p.Quiet)
	if c.pictured() {
		if move {
			put(c.picture, cardText, y+6, cardPictureWidth, cardPictureHeight)
		}
		y += cardPictureHeight + 8
	}
	return c.arrangeButtons(y+6, room, move) + 9
}

// cardButton is one of the card's buttons with its word.
type cardButton struct {
	*Button
	word  string
	shown bool
}

func (c *Card) buttons() []cardButton {
	s := c.state
	return []cardButton{
		{c.primary, s.Primary, s.Open && s.Primary != ""},
		{c.secondary, s.Secondary, s.Open && s.Secondary != ""},
		{c.fourth, s.Fourth, s.Open && s.Fourth != ""},
		{c.third, s.Third, s.Open && s.Third != ""},
	}
}

// arrangeButtons sets them side by side from y on, as many in a row as there is
// room for, and returns where they end.
func (c *Card) arrangeButtons(y, room float32, move bool) float32 {
	x, end := float32(0), y-6
	for _, b := range c.buttons() {
		if !b.shown {
			continue
		}
		width := min(b.least().Width, room)
		if x > 0 && x+width > room {
			x, y = 0, y+ButtonHeight+6
		}
		if move {
			put(b.Button, cardText+x, y, width, ButtonHeight)
		}
		x, end = x+width+8, y+ButtonHeight
	}
	return end
}

func (c *Card) gather() {
	objects := []fyne.CanvasObject{c.ground, c.frame, c.level, c.word, c.group}
	for _, l := range []*lines{c.sentence, c.again, c.found, c.why} {
		for _, t := range l.shown {
			objects = append(objects, t)
		}
	}
	c.surface.objects = append(objects, c.picture, c.primary, c.secondary, c.fourth, c.third, c.ring)
}

// lines are texts under each other that keep their objects.
type lines struct {
	make   func(string) *canvas.Text
	pitch  float32
	sample *canvas.Text
	all    []*canvas.Text
	shown  []*canvas.Text

	text   string // what was wrapped last, and how
	room   float32
	broken []string
}

func newLines(make func(string) *canvas.Text, pitch float32) *lines {
	return &lines{make: make, pitch: pitch, sample: make("")}
}

func (l *lines) wrap(text string, room float32) []string {
	if l.text != text || l.room != room {
		l.text, l.room, l.broken = text, room, nil
		if text != "" {
			l.broken = look.Wrap(l.sample, text, room)
		}
	}
	return l.broken
}

func (l *lines) height(text string, room float32) float32 {
	return float32(len(l.wrap(text, room))) * l.pitch
}

func (l *lines) set(text string, room float32, ink colour, x, y float32) {
	broken := l.wrap(text, room)
	for len(l.all) < len(broken) {
		l.all = append(l.all, l.make(""))
	}
	l.shown = l.all[:len(broken)]
	for i, s := range broken {
		setText(l.all[i], s, ink)
		look.At(l.all[i], x, y+l.pitch-4+float32(i)*l.pitch)
	}
}
