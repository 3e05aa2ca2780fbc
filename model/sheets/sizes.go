package sheets

import (
	"context"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/stock"
)

// SizeMap says what a sheet of paper gives over a range of page sizes, the rest
// of the book as it is. Rows are heights, columns widths, both ascending.
type SizeMap struct {
	Widths, Heights []Length
	Folios          [][]int     // a sheet, by height and width; −1 for what was not reckoned in time
	Share           [][]float64 // of the whole sheet that ends up in folios, likewise
	Width, Height   Length      // today's page
}

// Sizes reckons a map of count × count sizes over the ranges of the page's width
// and height that the sheet can give at all. It stops where the context ends;
// what is missing then holds −1.
func Sizes(ctx context.Context, b book.Book, count int) SizeMap {
	page := b.Resolved.Page
	m := SizeMap{Width: page.Width, Height: page.Height}
	f := folioOf(b)
	m.Widths = spread("page.width", f.mostWidth(), count)
	m.Heights = spread("page.height", f.mostHeight(), count)
	for _, h := range m.Heights {
		folios, share := make([]int, len(m.Widths)), make([]float64, len(m.Widths))
		for i, w := range m.Widths {
			folios[i] = -1
			if ctx.Err() == nil {
				folios[i], share[i] = f.yield(w, h)
			}
		}
		m.Folios, m.Share = append(m.Folios, folios), append(m.Share, share)
	}
	return m
}

// At is what a page of some size gives, and whether the sheet gives it at all.
func At(b book.Book, width, height Length) (folios int, share float64) {
	return folioOf(b).yield(width, height)
}

// folio turns a page into the piece that is cut for it.
type folio struct {
	sheet        stock.Sheet
	turned       bool
	foreTrim     Length // at each fore edge
	head         Length // trims at head and tail
	free, lying  bool
	wholeInSqrMM float64
}

func folioOf(b book.Book) folio {
	page, sheet := b.Resolved.Page, b.Resolved.PaperSheet()
	turned := b.Resolved.Paper.Turned
	return folio{
		sheet: sheet, turned: turned, foreTrim: page.TrimFore, head: page.TrimHead + page.TrimTail,
		free: sheet.Grain == stock.None, lying: (sheet.Grain == stock.Short) != turned,
		wholeInSqrMM: sheet.Length.MM() * sheet.Width.MM(),
	}
}

// size is the folio of a page.
func (f folio) size(width, height Length) (folioWidth, folioHeight Length) {
	return 2 * (width + f.foreTrim), height + f.head
}

func (f folio) yield(width, height Length) (int, float64) {
	w, h := f.size(width, height)
	n := 0
	if f.free {
		usable := f.sheet.Usable()
		n = int(cutting.MostAlike(int64(usable.Width), int64(usable.Length), int64(w), int64(h)))
	} else {
		n = f.sheet.Yield(h, w, f.turned).Total
	}
	if f.wholeInSqrMM <= 0 {
		return n, 0
	}
	return n, float64(n) * w.MM() * h.MM() / f.wholeInSqrMM
}

// mostWidth and mostHeight are the largest page sides of which a sheet gives one
// folio.
func (f folio) mostWidth() Length {
	usable := f.sheet.Usable()
	return f.side(usable.Width, usable.Length)/2 - f.foreTrim
}

func (f folio) mostHeight() Length {
	usable := f.sheet.Usable()
	return f.side(usable.Length, usable.Width) - f.head
}

// side is the sheet's side that one of a folio's lies along; other where it lies
// the other way, the longer where it may lie either way.
func (f folio) side(side, other Length) Length {
	switch {
	case f.free:
		return max(side, other)
	case f.lying:
		return other
	}
	return side
}

// spread is count sizes over a parameter's range, up to the most that is of use.
func spread(key string, most Length, count int) []Length {
	p, _ := book.Lookup(key)
	low, high := p.Lengths()
	high = max(low, min(high, most))
	if count < 2 || high == low {
		return []Length{low}
	}
	sizes := make([]Length, count)
	for i := range sizes {
		sizes[i] = low + (high-low)*Length(i)/Length(count-1)
	}
	return sizes
}
