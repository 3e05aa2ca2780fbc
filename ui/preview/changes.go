package preview

import (
	"math"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Changes says by how much each key figure differs from a book before, in the
// order of the title block: "+2", "+2 × −1", "+2 wide"; empty where it reads as
// it did.
func Changes(now, before book.Book, shown measure.System) []string {
	style, a, b := Style(shown), before.ToCut, now.ToCut
	return []string{
		Spread(style, before.Resolved.Page.Width, before.Resolved.Page.Height, now.Resolved.Page.Width, now.Resolved.Page.Height),
		Counted(before.Block.Leaves, now.Block.Leaves),
		More(thicknessStyle(shown), before.Block.SpineThickness, now.Block.SpineThickness),
		Spread(style, a.BoardWidth, a.BoardHeight, b.BoardWidth, b.BoardHeight),
		Spread(style, a.CoveringWidth, a.CoveringHeight, b.CoveringWidth, b.CoveringHeight),
		otherwise(sheets(before), sheets(now), tenths(before.Use.SheetsABook, now.Use.SheetsABook, 1)),
		tenths(before.Mass.Total(), now.Mass.Total(), 0),
		otherwise(materials(before), materials(now), price(before, now)),
	}
}

// Spread says by how much a width and a height differ from before.
func Spread(style measure.Style, width, height, newWidth, newHeight measure.Length) string {
	wide, high := More(style, width, newWidth), More(style, height, newHeight)
	switch {
	case wide != "" && high != "":
		return wide + " × " + high
	case wide != "":
		return words.Say("moved.wide", words.With{"size": wide})
	case high != "":
		return words.Say("moved.high", words.With{"size": high})
	}
	return ""
}

// More says by how much a length as it is shown differs from one before, with
// its sign; empty where both read the same.
func More(style measure.Style, before, now measure.Length) string {
	grid := style.Grid()
	steps := func(l measure.Length) measure.Length {
		return measure.Length(math.Round(float64(l)/float64(grid))) * grid
	}
	return signed(float64(steps(now)-steps(before)), style.Format(max(steps(now)-steps(before), steps(before)-steps(now))))
}

// Counted says by how many one count differs from another.
func Counted(before, now int) string {
	return signed(float64(now-before), strconv.Itoa(max(now-before, before-now)))
}

// signed sets the sign of a difference before its size; nothing before nought.
func signed(difference float64, size string) string {
	switch {
	case difference > 0:
		return "+" + size
	case difference < 0:
		return "−" + size
	}
	return ""
}

// tenths is the difference of two numbers as they are shown, to some decimals.
func tenths(before, now float64, decimals int) string {
	scale := math.Pow10(decimals)
	d := (math.Round(now*scale) - math.Round(before*scale)) / scale
	return signed(d, strconv.FormatFloat(math.Abs(d), 'f', decimals, 64))
}

func price(before, now book.Book) string {
	m, n := before.Use.Cost, now.Use.Cost
	if m.Currency != n.Currency {
		return ""
	}
	d := measure.Money{Minor: max(n.Minor-m.Minor, m.Minor-n.Minor), Currency: n.Currency}
	return signed(float64(n.Minor-m.Minor), strings.TrimSuffix(d.String(), " "+d.Currency))
}

// otherwise tells the old figure where one of the two is none.
func otherwise(before, now Cell, difference string) string {
	switch {
	case before.Value == now.Value:
		return ""
	case before.Value == unknown || now.Value == unknown:
		return words.Say("moved.was", words.With{"value": before.Value})
	}
	return difference
}

// unknown stands for a figure that cannot be told.
const unknown = "–"
