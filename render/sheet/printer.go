package sheet

import (
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// Format is a printer's paper, upright, mm.
type Format struct {
	ID            string
	Width, Height float64
}

// Formats are the papers that office printers take: ISO 216 A4, and Letter of
// ANSI/ASME Y14.1 (8½ × 11 in).
func Formats() []Format {
	return []Format{{"a4", 210, 297}, {"letter", 215.9, 279.4}}
}

// FormatOf finds a format by its id; the first where there is none.
func FormatOf(id string) Format {
	for _, f := range Formats() {
		if f.ID == id {
			return f
		}
	}
	return Formats()[0]
}

// turned is the format lying on its long side.
func (f Format) turned() Format { return Format{f.ID, f.Height, f.Width} }

// Printer is what the pages are printed on: its paper, and what the check bars of
// 100 mm measured on a page that it printed, across the upright page and down it.
// A measure of 0 was not taken.
type Printer struct {
	Format       Format
	Across, Down measure.Length
}

// PrinterOf is a studio's printer; its page goes by the system of units where
// none was chosen.
func PrinterOf(p project.Printing, system measure.System) Printer {
	plain := p.Bars.Plain
	return Printer{Format: FormatOf(p.PageIn(system)), Across: plain.Across, Down: plain.Down}
}

// scales are by how much a drawing grows so that it is true once printed.
func (p Printer) scales() (across, down float64) {
	return correction(p.Across), correction(p.Down)
}

func correction(measured measure.Length) float64 {
	if measured <= 0 {
		return 1
	}
	return check.Bar.MM() / measured.MM()
}

func (p Printer) format() Format {
	if p.Format.Width <= 0 {
		return Formats()[0]
	}
	return p.Format
}
