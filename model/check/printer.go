package check

import (
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Bars are what the check bars of 100 mm measured on a printed page, across the
// upright page and down it; 0 where it was not measured.
type Bars struct{ Across, Down book.Length }

// Printer is what a printer makes of the check bars. Plain was measured on a page
// printed as it is: from then on full-size pages are corrected by it. Again was
// measured on a page so corrected, where the bars should measure 100 mm.
type Printer struct{ Plain, Again Bars }

// Bar is the length of a check bar, and what one can have measured: a printer
// further off than a fifth is set wrongly, not off.
const (
	Bar      = 100 * measure.Millimetre
	InchBar  = 4 * measure.Inch // the one beside it, for a rule of inches
	LeastBar = 80 * measure.Millimetre
	MostBar  = 120 * measure.Millimetre
)

// off is how far a measured bar is from its length; 0 where it was not measured.
func off(measured book.Length) book.Length {
	if measured <= 0 {
		return 0
	}
	return max(measured-Bar, Bar-measured)
}

// worse is the one of the two that is further off.
func (b Bars) worse() book.Length {
	if off(b.Down) > off(b.Across) {
		return b.Down
	}
	return b.Across
}

// Off says whether a bar measured other than 100 ± 0.3 mm.
func (b Bars) Off() bool { return off(b.worse()) > barOff }

// Corrected says whether full-size pages are printed larger or smaller than
// drawn.
func (p Printer) Corrected() bool { return off(p.Plain.worse()) > 0 }

// Further is the printer with both measures in one: what it printed corrected
// and still off is corrected by that as well.
func (p Printer) Further() Printer {
	return Printer{Plain: Bars{compound(p.Plain.Across, p.Again.Across), compound(p.Plain.Down, p.Again.Down)}}
}

func compound(plain, again book.Length) book.Length {
	switch {
	case again <= 0:
		return plain
	case plain <= 0:
		return again
	}
	return plain.Times(again.MM() / Bar.MM())
}

// ScaleOff is what a printer's check bars mean for the papers that it prints. A
// bar that was off on a plain page is no longer a stop once its measure is
// entered, for what follows is corrected by it: that is noted, with by how much.
// A bar that is off on a corrected page is a stop, since every piece laid out on
// it comes out wrong. It is no rule of a book: only where papers are printed has
// it something to say.
func ScaleOff(p Printer) []Finding {
	f := Finding{ID: "scale-off", Limit: length(barOff)}
	switch {
	case p.Again.Off():
		f.Level, f.Found = Stop, length(off(p.Again.worse()))
		f.Blanks = map[string]any{"bar": p.Again.worse()}
	case p.Plain.Off():
		f.Level, f.Found, f.saying = Note, length(off(p.Plain.worse())), "corrected"
		f.Blanks = map[string]any{"bar": p.Plain.worse(), "across": correction(p.Plain.Across), "down": correction(p.Plain.Down)}
	}
	return one(f)
}

// correction is by how much a corrected page is larger, in per cent.
func correction(measured book.Length) Quantity {
	if measured <= 0 {
		return percent(0)
	}
	return percent(100 * (Bar.MM()/measured.MM() - 1))
}

// Valid says whether every bar that was measured can have measured so much.
func (p Printer) Valid() bool {
	for _, bar := range []book.Length{p.Plain.Across, p.Plain.Down, p.Again.Across, p.Again.Down} {
		if bar != 0 && (bar < LeastBar || bar > MostBar) {
			return false
		}
	}
	return true
}
