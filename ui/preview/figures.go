package preview

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Cell is one key figure of the title block: its name, the figure in the unit
// shown, and under it the same in the other unit, or what belongs to it. The tip
// says why there is no figure; empty where there is one.
type Cell struct{ Name, Value, Under, Tip string }

// cellCount is how many key figures there are.
const cellCount = 8

// Figures are a book's key figures as it is cut, in the order of the title
// block. Showing another unit changes the words, never a size.
func Figures(b book.Book, shown measure.System) []Cell {
	cut := b.ToCut
	return []Cell{
		sizes("page", b.Resolved.Page.Width, b.Resolved.Page.Height, shown),
		{Name: words.Say("figure.leaves"), Value: strconv.Itoa(b.Block.Leaves), Under: words.Say("figure.pages", words.With{"pages": b.Block.Pages})},
		thickness(b, shown),
		sizes("board", cut.BoardWidth, cut.BoardHeight, shown),
		sizes(coveringWord(b), cut.CoveringWidth, cut.CoveringHeight, shown),
		sheets(b),
		mass(b),
		materials(b),
	}
}

// Style is how a figure is shown: a tenth of a millimetre, 1/32 of an inch.
func Style(system measure.System) measure.Style {
	if system == measure.Imperial {
		return measure.Style{System: system, Denominator: 32}
	}
	return measure.Style{System: system, Decimals: 1}
}

func other(system measure.System) measure.System {
	if system == measure.Metric {
		return measure.Imperial
	}
	return measure.Metric
}

// coveringWord is what the covering's piece is called.
func coveringWord(b book.Book) string {
	p, _ := b.Part(book.PartCovering)
	return p.Word
}

func sizes(name string, width, height book.Length, shown measure.System) Cell {
	pair := func(s measure.Style) string { return s.Format(width) + " × " + s.Format(height) }
	under := Style(other(shown))
	return Cell{
		Name:  words.Say("figure." + name),
		Value: pair(Style(shown)),
		Under: pair(under) + " " + under.System.Label(),
	}
}

// thickness is shown to a hundredth: the spine piece is rounded from it.
func thickness(b book.Book, shown measure.System) Cell {
	style := thicknessStyle(shown)
	return Cell{
		Name:  words.Say("figure.spine"),
		Value: style.Format(b.Block.SpineThickness),
		Under: Style(other(shown)).WithUnit(b.Block.SpineThickness),
	}
}

func thicknessStyle(shown measure.System) measure.Style {
	style := Style(shown)
	if shown == measure.Metric {
		style.Decimals = 2
	}
	return style
}

func sheets(b book.Book) Cell {
	c := Cell{Name: words.Say("figure.sheets"), Value: unknown, Under: words.Say("figure.no-folio")}
	if b.Use.FoliosASheet > 0 {
		c.Value = strconv.FormatFloat(b.Use.SheetsABook, 'f', 1, 64)
		c.Under = words.Say("figure.folios", words.With{"folios": b.Use.FoliosASheet})
	}
	return c
}

func mass(b book.Book) Cell {
	const gramsPerOunce = 28.349523125 // avoirdupois, exact
	g := b.Mass.Total()
	return Cell{
		Name:  words.Say("figure.mass"),
		Value: fmt.Sprintf("%.0f g", g),
		Under: fmt.Sprintf("%.1f oz", g/gramsPerOunce),
	}
}

func materials(b book.Book) Cell {
	c := Cell{Name: words.Say("figure.materials"), Value: unknown, Under: words.Say("figure.no-price")}
	if b.Use.Priced {
		m := b.Use.Cost
		c.Value = m.String()[:len(m.String())-len(m.Currency)-1]
		c.Under = words.Say("figure.a-book", words.With{"currency": m.Currency})
		return c
	}
	c.Tip = whyUnpriced(b)
	return c
}

// whyUnpriced says what keeps the materials from being added up.
func whyUnpriced(b book.Book) string {
	if names := b.Unpriced(); len(names) > 0 {
		return words.Say("figure.no-price.names", words.With{"names": strings.Join(names, ", ")})
	}
	if slices.ContainsFunc(b.Parts, func(p book.Part) bool { return !b.Fits(p) }) {
		return words.Say("figure.no-price.size")
	}
	return words.Say("figure.no-price.currency")
}
