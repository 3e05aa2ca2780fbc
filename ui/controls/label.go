package controls

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"grainwise/ui/look"
)

// LabelKind is the face and colour of a label.
type LabelKind int

// Plain text, small quiet text, small text, headings in the serif face, and
// what is wrong.
const (
	PlainLabel LabelKind = iota
	QuietLabel
	SmallLabel
	HeadLabel
	TitleLabel
	TroubleLabel
)

// Label is one line of text that follows the theme and is shortened to fit.
type Label struct {
	widget.BaseWidget

	kind   LabelKind
	words  string
	ending bool // ends at the right
	ground *canvas.Rectangle
	text   *canvas.Text
}

// NewLabel makes a label that begins at the left.
func NewLabel(kind LabelKind, text string) *Label {
	l := &Label{kind: kind, words: text, ground: box(), text: kind.line()}
	l.ExtendBaseWidget(l)
	return l
}

// NewEndLabel makes a label that ends at the right.
func NewEndLabel(kind LabelKind, text string) *Label {
	l := NewLabel(kind, text)
	l.ending = true
	return l
}

func (k LabelKind) line() *canvas.Text {
	switch k {
	case QuietLabel, SmallLabel, TroubleLabel:
		return look.Caption("")
	case HeadLabel:
		return look.Serif("", look.HeadSize)
	case TitleLabel:
		return look.Serif("", look.TitleSize)
	}
	return look.Body("")
}

// SetText shows another text.
func (l *Label) SetText(text string) {
	if l.words != text {
		l.words = text
		l.Refresh()
	}
}

// Text is the label's text in full.
func (l *Label) Text() string { return l.words }

// CreateRenderer implements fyne.Widget.
func (l *Label) CreateRenderer() fyne.WidgetRenderer {
	return on(l.ground, l.text).drawn(l.paint, l.place, l.least)
}

func (l *Label) least() fyne.Size {
	size, _ := look.Extent(l.text, l.words)
	return fyne.NewSize(ceiling(size.Width), ceiling(size.Height))
}

func (l *Label) ink() colour {
	switch l.kind {
	case QuietLabel:
		return look.Current().Quiet
	case TroubleLabel:
		return look.Current().Stop
	}
	return look.Current().Ink
}

func (l *Label) paint() {
	width := l.Size().Width
	if width == 0 {
		width = l.least().Width
	}
	setText(l.text, look.Fit(l.text, l.words, width+0.5), l.ink())
}

func (l *Label) place(size fyne.Size) {
	setText(l.text, look.Fit(l.text, l.words, size.Width+0.5), l.ink())
	base := ceiling(size.Height/2 + l.text.TextSize*0.36)
	if l.ending {
		look.EndingAt(l.text, size.Width, base)
	} else {
		look.At(l.text, 0, base)
	}
}

// Paragraph is text that is broken into lines and takes the height it needs.
type Paragraph struct {
	widget.BaseWidget

	words   string
	trouble bool
	ground  *canvas.Rectangle
	lines   *lines
	surface *surface
}

// NewTrouble makes running text that says what is wrong, 11.
func NewTrouble(text string) *Paragraph {
	p := &Paragraph{words: text, trouble: true, ground: box(), lines: newLines(look.Caption, 15)}
	p.ExtendBaseWidget(p)
	return p
}

// NewParagraph makes running text, 13.
func NewParagraph(text string) *Paragraph {
	p := &Paragraph{words: text, ground: box(), lines: newLines(look.Body, 18)}
	p.ExtendBaseWidget(p)
	return p
}

// SetText shows another text; whoever laid the paragraph out lays it out anew.
func (p *Paragraph) SetText(text string) {
	if p.words == text {
		return
	}
	p.words = text
	if p.surface != nil {
		p.place(p.Size())
	}
	p.Refresh()
}

// Text is the whole of it.
func (p *Paragraph) Text() string { return p.words }

// HeightFor is the height that the text needs at a width.
func (p *Paragraph) HeightFor(width float32) float32 { return p.lines.height(p.words, width) }

// CreateRenderer implements fyne.Widget.
func (p *Paragraph) CreateRenderer() fyne.WidgetRenderer {
	p.surface = on(p.ground)
	return p.surface.drawn(func() {}, p.place, func() fyne.Size {
		return fyne.NewSize(120, p.HeightFor(max(120, p.Size().Width)))
	})
}

func (p *Paragraph) place(size fyne.Size) {
	ink := look.Current().Ink
	if p.trouble {
		ink = look.Current().Stop
	}
	p.lines.set(p.words, size.Width, ink, 0, 0)
	p.surface.objects = []fyne.CanvasObject{p.ground}
	for _, t := range p.lines.shown {
		p.surface.objects = append(p.surface.objects, t)
	}
}
