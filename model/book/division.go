package book

import (
	"cmp"
	"slices"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Division is one way to cut a whole sheet of paper, edge to edge, into equal
// folios, and the largest page that they fold to.
type Division struct {
	Cut           stock.Yield
	Width, Height Length  // of the page, rounded down to the steps it is cut in
	Share         float64 // of the whole sheet that ends up in the folios
}

// Divisions lists the ways to divide a sheet of this book's paper: its grain
// and lost edges, and the book's trims, as they are, the largest page first. A
// sheet without grain may be divided either way up. Only pages that a book may
// have, and no longer than narrow allows, are listed.
func (b *Book) Divisions() []Division {
	sheet, turned := b.Resolved.PaperSheet(), b.Resolved.Paper.Turned
	lying := []bool{(sheet.Grain == stock.Short) != turned}
	if sheet.Grain == stock.None {
		lying = []bool{false, true}
	}
	var all []Division
	for _, lies := range lying {
		for along := 1; along <= mostAlong; along++ {
			for across := 1; across <= mostAlong; across++ {
				d := b.divided(sheet, stock.Yield{Along: along, Across: across, Total: along * across, Lying: lies})
				if d.useful() {
					all = append(all, d)
				}
			}
		}
	}
	slices.SortStableFunc(all, func(x, y Division) int { return cmp.Compare(y.area(), x.area()) })
	return all
}

// mostAlong is more folios in a row than the smallest page gives of the largest
// sheet; narrow is the most that one side of a page offered may be of the other.
const (
	mostAlong = 27
	narrow    = 2.2
)

// divided is a page of the largest folio that a grid leaves.
func (b *Book) divided(sheet stock.Sheet, cut stock.Yield) Division {
	page, usable := b.Resolved.Page, sheet.Usable()
	along, across := usable.Length/Length(cut.Along), usable.Width/Length(cut.Across)
	folio := face{height: along, width: across}
	if cut.Lying {
		folio = face{height: across, width: along}
	}
	step := PageStep(b.Resolved.CutIn)
	d := Division{
		Cut:    cut,
		Height: (folio.height - page.TrimHead - page.TrimTail).RoundDown(step),
		Width:  (folio.width/2 - page.TrimFore).RoundDown(step),
	}
	whole := face{sheet.Length, sheet.Width}.area()
	folio = face{d.Height + page.TrimHead + page.TrimTail, 2 * (d.Width + page.TrimFore)}
	if whole > 0 {
		d.Share = float64(cut.Total) * folio.area() / whole
	}
	return d
}

// PageStep is the step of the page's sizes in a system.
func PageStep(system measure.System) Length {
	p, _ := Lookup("page.height")
	if system == measure.Imperial {
		return measure.Inches(p.StepInch)
	}
	return measure.MM(p.Step)
}

// useful says whether a page is one that a maker may ask for.
func (d Division) useful() bool {
	return inRange("page.height", d.Height) && inRange("page.width", d.Width) &&
		max(d.Height, d.Width).MM() <= narrow*min(d.Height, d.Width).MM()
}

func inRange(key string, l Length) bool {
	p, _ := Lookup(key)
	least, most := p.Lengths()
	return l >= least && l <= most
}

func (d Division) area() float64 { return face{d.Height, d.Width}.area() }

// RoomToGrow is the largest page that still gives as many folios of a sheet, cut
// in the same grid; both sizes on the steps that they are cut in, and never
// below the present ones. False where the sheet gives no folio at all.
func (b *Book) RoomToGrow() (width, height Length, ok bool) {
	sheet, folio := b.Resolved.PaperSheet(), folioSize(&b.Resolved)
	cut := sheet.Yield(folio.height, folio.width, b.Resolved.Paper.Turned)
	if cut.Total == 0 {
		return 0, 0, false
	}
	d := b.divided(sheet, cut)
	return max(d.Width, b.Resolved.Page.Width), max(d.Height, b.Resolved.Page.Height), true
}
