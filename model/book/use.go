package book

import (
	"math"
	"slices"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// computeUse is what one book takes from the shelf: shares of whole sheets of
// one kind of piece each, nothing added for spoilage.
func computeUse(r *Resolved, b *Book) SheetUse {
	size := folioSize(r)
	use := SheetUse{
		FoliosASheet: r.PaperSheet().Yield(size.height, size.width, r.Paper.Turned).Total,
		FoliosTurned: r.PaperSheet().Yield(size.height, size.width, !r.Paper.Turned).Total,
	}
	if use.FoliosASheet > 0 {
		use.SheetsABook = float64(r.Sections.Count*r.Sections.Folios) / float64(use.FoliosASheet)
	}
	use.Cost, use.Priced = computeCost(r, b)
	return use
}

// computeCost adds the price of every part's share of its sheet or roll; it is
// not priced where a price is missing, a piece does not fit, or currencies mix.
func computeCost(r *Resolved, b *Book) (measure.Money, bool) {
	sum, currency := 0.0, ""
	for _, p := range b.Parts {
		m, turned := r.materialOf(p.ID)
		units, ok := unitsOf(r, m, p, turned)
		if !ok || m.Price.Amount.Currency == "" {
			return measure.Money{}, false
		}
		if currency != "" && currency != m.Price.Amount.Currency {
			return measure.Money{}, false
		}
		currency = m.Price.Amount.Currency
		sum += units * float64(m.Price.Amount.Minor)
	}
	if math.IsNaN(sum) || sum > 1e15 {
		return measure.Money{}, false
	}
	return measure.Money{Minor: int64(math.Round(sum)), Currency: currency}, true
}

// Unpriced are the materials of the book that have no price, in the order of
// making.
func (b *Book) Unpriced() []string {
	var names []string
	for _, p := range b.Parts {
		m, _ := b.Resolved.materialOf(p.ID)
		if m.Price.Amount.Currency == "" && !slices.Contains(names, m.Name) {
			names = append(names, m.Name)
		}
	}
	return names
}

// materialOf is the material that a part is cut from, and whether it is turned.
func (r *Resolved) materialOf(id PartID) (stock.Material, bool) {
	switch id {
	case PartFolio:
		return r.Stock.Paper, r.Paper.Turned
	case PartInterleaf:
		return r.Stock.Interleaf, false
	case PartLiner:
		return r.Stock.Liner, r.Liner.Turned
	case PartEndpaper:
		return r.Stock.Endpaper, r.Endpaper.Turned
	case PartTape:
		return r.Stock.Tape, false
	case PartMull:
		return r.Stock.Mull, false
	case PartBoard:
		return r.Stock.Board, r.Board.Turned
	case PartCovering:
		return r.Stock.Covering, r.Covering.Turned
	case PartSide:
		return r.Stock.Side, false
	case PartRibbon:
		return r.Stock.Ribbon, false
	case PartElastic:
		return r.Stock.Elastic, false
	case PartLabel:
		return r.pastedStock(), false
	case PartBand:
		return r.Stock.Card, true
	}
	return r.spineStock(), false
}

// Fits reports whether a part can be cut from its sheet or roll at all, lying
// as its grain and the design ask.
func (b *Book) Fits(p Part) bool {
	m, turned := b.Resolved.materialOf(p.ID)
	_, ok := unitsOf(&b.Resolved, m, p, turned)
	return ok
}

// unitsOf is how many sheets, or metres of roll, a part takes; false where it
// does not fit.
func unitsOf(r *Resolved, m stock.Material, p Part, turned bool) (float64, bool) {
	if m.Kind.ByLength() {
		return stripMetres(m, p)
	}
	if m.RollWidth > 0 {
		return rollMetres(m, p, turned)
	}
	yield := r.sheetOf(m).Yield(p.Height, p.Width, turned).Total
	if yield == 0 {
		return 0, false
	}
	return float64(p.Count) / float64(yield), true
}

// rollMetres cuts pieces side by side across a roll whose grain runs along it.
func rollMetres(m stock.Material, p Part, turned bool) (float64, bool) {
	along, across := p.Height, p.Width
	if turned {
		along, across = across, along
	}
	if across <= 0 || across > m.RollWidth {
		return 0, false
	}
	side := int64(m.RollWidth / across)
	return float64(p.Count) * along.MM() / 1000 / float64(side), true
}

// stripMetres takes a strip that is bought by its length, in its own width.
func stripMetres(m stock.Material, p Part) (float64, bool) {
	long, wide := max(p.Height, p.Width), min(p.Height, p.Width)
	return float64(p.Count) * long.MM() / 1000, wide <= m.RollWidth
}
