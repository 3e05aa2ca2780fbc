package check

import (
	"math"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Unit is what a quantity counts in.
type Unit string

// The units of what is found. Lengths are millimetres, shown in inches where
// the reader wants them.
const (
	Millimetres Unit = "mm"
	Degrees     Unit = "degree" // to the spine
	GSM         Unit = "g/m²"
	Grams       Unit = "g"
	Percent     Unit = "percent"
	Ratio       Unit = "ratio"
	Count       Unit = "count"
	None        Unit = "" // nothing to say
)

// Units lists what a value can count in.
func Units() []Unit { return []Unit{Millimetres, Degrees, GSM, Grams, Percent, Ratio, Count} }

// Quantity is an amount with its unit.
type Quantity struct {
	Amount float64
	Unit   Unit
}

func length(l measure.Length) Quantity { return Quantity{l.MM(), Millimetres} }
func count(n int) Quantity             { return Quantity{float64(n), Count} }
func ratio(r float64) Quantity         { return Quantity{r, Ratio} }
func percent(p float64) Quantity       { return Quantity{p, Percent} }
func degrees(d float64) Quantity       { return Quantity{d, Degrees} }

// Text is the quantity as it is shown, with its unit.
func (q Quantity) Text(style measure.Style) string {
	switch q.Unit {
	case Millimetres:
		return lengthText(measure.MM(q.Amount), style)
	case Degrees:
		return plain(q.Amount, 0) + words.Say("unit.degree")
	case GSM:
		return plain(q.Amount, 0) + " " + words.Say("unit.gsm")
	case Grams:
		return plain(q.Amount, 0) + " " + words.Say("unit.gram")
	case Percent:
		return plain(q.Amount, 1) + " %"
	case Ratio:
		return plain(q.Amount, max(style.Decimals, 2))
	case Count:
		return plain(q.Amount, 0)
	}
	return ""
}

// Where fractions of an inch, and tenths of a millimetre, get too coarse.
const (
	thin  = measure.Millimetre
	small = measure.Inch / 4
)

// lengthText tells a thin length as a caliper does, and a small one that is no
// fraction of an inch in decimals.
func lengthText(l measure.Length, style measure.Style) string {
	size := max(l, -l)
	fraction := style.System == measure.Imperial && style.Denominator > 0
	switch {
	case size < thin && l != 0:
		style = finer(style, 2)
	case size < small && fraction && !l.Fraction(style.Denominator).Exact:
		style = finer(style, 1)
	}
	return style.WithUnit(l)
}

// finer shows at least so many decimals of a millimetre; inches go with it.
func finer(style measure.Style, decimals int) measure.Style {
	if style.System == measure.Imperial {
		style.Denominator, decimals = 0, decimals+1
	}
	style.Decimals = max(style.Decimals, decimals)
	return style
}

// apart returns the style in which two different amounts do not look alike.
func apart(a, b Quantity, style measure.Style) measure.Style {
	if a.Unit != b.Unit || a.Amount == b.Amount {
		return style
	}
	for decimals := 1; decimals <= 3 && a.Text(style) == b.Text(style); decimals++ {
		style = finer(style, decimals)
	}
	return style
}

func plain(v float64, decimals int) string {
	scale := math.Pow(10, float64(decimals))
	return strconv.FormatFloat(math.Round(v*scale)/scale, 'f', -1, 64)
}
