package look

import (
	"math"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/assets/fonts"
)

// Sizes in device-independent pixels.
const (
	CaptionSize float32 = 11 // units, remarks, reasons
	TextSize    float32 = 13
	FigureSize  float32 = 15 // key figures
	HeadSize    float32 = 16 // headings, in the serif face
	TitleSize   float32 = 19
	Radius      float32 = 3
)

// The faces never change; the toolkit keeps what it parsed by these pointers.
var (
	sans       = fyne.NewStaticResource("Lato-Regular.ttf", fonts.Sans)
	sansBold   = fyne.NewStaticResource("Lato-Bold.ttf", fonts.SansBold)
	sansItalic = fyne.NewStaticResource("Lato-Italic.ttf", fonts.SansItalic)
	serif      = fyne.NewStaticResource("GentiumBookPlus-Regular.ttf", fonts.Serif)
)

// Body is a line of running text, 13.
func Body(text string) *canvas.Text { return line(text, TextSize) }

// Strong is a bold line of running text, 13.
func Strong(text string) *canvas.Text {
	t := line(text, TextSize)
	t.TextStyle.Bold = true
	return t
}

// Caption is a small line, 11.
func Caption(text string) *canvas.Text { return line(text, CaptionSize) }

// Figure is a key figure, 15.
func Figure(text string) *canvas.Text { return line(text, FigureSize) }

// Serif is a name or heading of any size in Gentium Book Plus.
func Serif(text string, size float32) *canvas.Text {
	t := line(text, size)
	t.FontSource = serif
	return t
}

func line(text string, size float32) *canvas.Text {
	t := canvas.NewText(text, Current().Ink)
	t.TextSize = size
	return t
}

// Extent is the size of s as t would draw it, and the distance from its top
// to the baseline.
func Extent(t *canvas.Text, s string) (fyne.Size, float32) {
	return fyne.CurrentApp().Driver().RenderedTextSize(s, t.TextSize, t.TextStyle, t.FontSource)
}

// Width is the width of s as t would draw it.
func Width(t *canvas.Text, s string) float32 {
	size, _ := Extent(t, s)
	return size.Width
}

// Fit returns s, or as much of it as fits with an ellipsis after it, as t
// would draw it. Nothing fits in a width that has no room for the ellipsis.
func Fit(t *canvas.Text, s string, width float32) string {
	if Width(t, s) <= width {
		return s
	}
	runes := []rune(s)
	low, high := 0, len(runes)
	for low < high {
		middle := (low + high + 1) / 2
		if Width(t, shortened(runes[:middle])) <= width {
			low = middle
		} else {
			high = middle - 1
		}
	}
	if low == 0 && Width(t, "…") > width {
		return ""
	}
	return shortened(runes[:low])
}

func shortened(runes []rune) string {
	return strings.TrimRight(string(runes), " ,.;:") + "…"
}

// Wrap breaks s between words into lines that fit width as t would draw them.
// A line break in s stays; a word wider than the line is broken inside.
func Wrap(t *canvas.Text, s string, width float32) []string {
	var lines []string
	for _, paragraph := range strings.Split(s, "\n") {
		lines = append(lines, wrapParagraph(t, paragraph, width)...)
	}
	return lines
}

func wrapParagraph(t *canvas.Text, s string, width float32) []string {
	var lines []string
	current := ""
	for _, word := range strings.Fields(s) {
		joined := word
		if current != "" {
			joined = current + " " + word
		}
		if Width(t, joined) <= width {
			current = joined
			continue
		}
		if current != "" {
			lines = append(lines, current)
		}
		pieces := breakWord(t, word, width)
		lines = append(lines, pieces[:len(pieces)-1]...)
		current = pieces[len(pieces)-1]
	}
	if current != "" {
		lines = append(lines, current)
	}
	return lines
}

// breakWord cuts a word into pieces that fit, at least one rune each.
func breakWord(t *canvas.Text, word string, width float32) []string {
	var pieces []string
	start := 0
	runes := []rune(word)
	for end := 1; end <= len(runes); end++ {
		if end-start > 1 && Width(t, string(runes[start:end])) > width {
			pieces = append(pieces, string(runes[start:end-1]))
			start = end - 1
		}
	}
	return append(pieces, string(runes[start:]))
}

// At moves t so that it begins at left and stands on the baseline y. Positions
// are whole, so that the letters stay sharp.
func At(t *canvas.Text, left, y float32) {
	size, base := Extent(t, t.Text)
	t.Resize(fyne.NewSize(ceil(size.Width), ceil(size.Height)))
	t.Move(fyne.NewPos(ceil(left-0.5), y-ceil(base)))
}

// EndingAt moves t so that it ends at right and stands on the baseline y.
func EndingAt(t *canvas.Text, right, y float32) {
	At(t, right-Width(t, t.Text), y)
}

// Amid moves t to the middle of a width that begins at left.
func Amid(t *canvas.Text, left, width, y float32) {
	At(t, left+(width-Width(t, t.Text))/2, y)
}

func ceil(v float32) float32 { return float32(math.Ceil(float64(v))) }
