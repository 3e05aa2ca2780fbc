package look

import (
	"fmt"
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
)

// Level is how much a finding weighs; a higher one is worse.
type Level int

// The levels, mildest first.
const (
	None Level = iota
	Note
	Check
	Stop
)

// Icon names one of the drawings below.
type Icon string

// The level shapes (16 units wide) and the toolbar's icons (20).
const (
	IconStop       Icon = "stop"
	IconCheck      Icon = "check"
	IconNote       Icon = "note"
	IconUndo       Icon = "undo"
	IconRedo       Icon = "redo"
	IconDimensions Icon = "dimensions"
	IconGrain      Icon = "grain"
	IconMinus      Icon = "minus"
	IconPlus       Icon = "plus"
	IconFit        Icon = "fit"
	IconDown       Icon = "down"
	IconUp         Icon = "up"
	IconRight      Icon = "right"
	IconNext       Icon = "next"
	IconLast       Icon = "last"
	IconClose      Icon = "close"
)

// icons are drawn with INK for the one colour and PAPER for what is cut out.
var icons = map[Icon]string{
	IconStop: shape(16, `<path d="M4.9 0.6 H11.1 L15.4 4.9 V11.1 L11.1 15.4 H4.9 L0.6 11.1 V4.9 Z" fill="INK"/>`+
		`<path d="M5.2 5.2 L10.8 10.8 M10.8 5.2 L5.2 10.8" fill="none" stroke="PAPER" stroke-width="1.9" stroke-linecap="round"/>`),
	IconCheck: shape(16, `<path d="M8 1.4 L15.1 14.3 H0.9 Z" fill="none" stroke="INK" stroke-width="1.5" stroke-linejoin="round"/>`+
		`<path d="M8 6 V10" fill="none" stroke="INK" stroke-width="1.6" stroke-linecap="round"/><circle cx="8" cy="12.2" r="0.95" fill="INK"/>`),
	IconNote: shape(16, `<circle cx="8" cy="8" r="7" fill="none" stroke="INK" stroke-width="1.4"/>`+
		`<circle cx="8" cy="4.8" r="1" fill="INK"/><path d="M8 7.4 V11.6" fill="none" stroke="INK" stroke-width="1.6" stroke-linecap="round"/>`),
	IconUndo:       strokes(`M7.4 3.6 L3.6 7.4 L7.4 11.2 M3.8 7.4 H11.8 C14.6 7.4 16.4 9.2 16.4 11.7 C16.4 14.2 14.6 16 11.8 16 H9`),
	IconRedo:       strokes(`M12.6 3.6 L16.4 7.4 L12.6 11.2 M16.2 7.4 H8.2 C5.4 7.4 3.6 9.2 3.6 11.7 C3.6 14.2 5.4 16 8.2 16 H11`),
	IconDimensions: strokes(`M3 4 V16 M17 4 V16 M3.6 10 H16.4 M6.4 7.4 L3.6 10 L6.4 12.6 M13.6 7.4 L16.4 10 L13.6 12.6`),
	IconGrain:      strokes(`M4 16 L16 4 M4 11.8 V16 H8.2 M11.8 4 H16 V8.2`),
	IconMinus:      strokes(`M4 10 H16`),
	IconPlus:       strokes(`M4 10 H16 M10 4 V16`),
	IconFit:        strokes(`M3.5 7.5 V3.5 H7.5 M12.5 3.5 H16.5 V7.5 M16.5 12.5 V16.5 H12.5 M7.5 16.5 H3.5 V12.5`),
	IconDown:       thin(`M4.5 7.5 L10 13 L15.5 7.5`),
	IconUp:         thin(`M4.5 12.5 L10 7 L15.5 12.5`),
	IconRight:      thin(`M7.5 4.5 L13 10 L7.5 15.5`),
	IconNext:       strokes(`M7.5 4.5 L13 10 L7.5 15.5`),
	IconLast:       strokes(`M12.5 4.5 L7 10 L12.5 15.5`),
	IconClose:      strokes(`M5 5 L15 15 M15 5 L5 15`),
}

func strokes(path string) string { return stroked(path, "1.5") }

// thin is for arrows that are shown at half the size.
func thin(path string) string { return stroked(path, "1.35") }

func stroked(path, width string) string {
	return shape(20, `<path d="`+path+`" fill="none" stroke="INK" stroke-width="`+width+`" stroke-linecap="round" stroke-linejoin="round"/>`)
}

func shape(size int, body string) string {
	return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d">%s</svg>`, size, size, size, size, body)
}

// In returns the icon in one colour. The resource's name holds the colour: the
// toolkit keeps what it drew by that name.
func (i Icon) In(ink color.NRGBA) fyne.Resource { return i.drawn(ink, Current().OnStop) }

func (i Icon) drawn(ink, paper color.NRGBA) fyne.Resource {
	text := strings.NewReplacer("INK", hex(ink), "PAPER", hex(paper)).Replace(icons[i])
	name := fmt.Sprintf("%s-%s-%s.svg", i, hex(ink)[1:], hex(paper)[1:])
	return fyne.NewStaticResource(name, []byte(text))
}

// Shape is the icon of a level in its colour; nil for none.
func (l Level) Shape() fyne.Resource {
	p := Current()
	if icon, ok := l.icon(); ok {
		return icon.drawn(p.Level(l), p.OnStop)
	}
	return nil
}

func (l Level) icon() (Icon, bool) {
	switch l {
	case Stop:
		return IconStop, true
	case Check:
		return IconCheck, true
	case Note:
		return IconNote, true
	}
	return "", false
}

func hex(c color.NRGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
