package view

import (
	"math"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// MostContacts is how many books one contact sheet shows.
const MostContacts = 60

// Measures of a contact sheet, px: it is as wide as a mock-up and, from a dozen
// books on, as much higher as they need.
const (
	contactGap   = 3.0
	contactLabel = 44.0
	contactHigh  = 56.0 // of a sheet without its strip, for every book of more than a dozen
	contactMany  = 12
)

// ContactHeight is how high the frame of a contact sheet of so many books is that is
// high px for a dozen.
func ContactHeight(books int, high float64) float64 {
	return high + contactHigh*float64(max(books-contactMany, 0))
}

// ContactSheet shows one design in several papers and coverings side by side, all at
// one scale: each closed and open, with the names of its materials.
func ContactSheet(in Input, books []book.Book) *scene.Scene {
	in.Before, in.Pinned = nil, nil
	s := in.sheet(draft.Ground)
	s.Scene().Tooth = false
	c := captionOf(s.Width, s.Height, func(room float64) []column { return in.contactColumns(books, room) })
	papers, _ := kindsOf(books)
	cells := contactCells(draft.Box{X1: s.Width, Y1: s.Height - c.high}, len(books), papers)
	tables, all := make([]table, len(cells)), make([][]exhibit, len(cells))
	least := mostScale
	for i, cell := range cells {
		all[i] = in.contact(books[i])
		cell.Y1 -= contactLabel
		tables[i] = in.arrange(cell, all[i])
		least = min(least, tables[i].scale)
	}
	for i, cell := range cells {
		tables[i].shrink(least, all[i])
		s.Scene().Add(tables[i].still(all[i], cell, draft.Table, nil))
		contactName(s, cell, materialsOf(books[i]))
	}
	c.draw(s)
	return s.Scene()
}

// contact is one book closed and open.
func (in Input) contact(b book.Book) []exhibit {
	open := in.open(b, sewnOpening(b), openTurn)
	open.caption = ""
	return []exhibit{in.standing(b), open}
}

// shrink sets the exhibits anew at a smaller scale.
func (t *table) shrink(scale float64, all []exhibit) {
	t.scale = scale
	t.place(t.rows, all)
}

// A row of a contact sheet holds one covering in all papers, where these are so many.
const leastInARow, mostInARow = 3, 6

// contactCells share a box out evenly, a row to a covering or else in cells half as
// wide again as high where that can be.
func contactCells(box draft.Box, n, papers int) []draft.Box {
	wide, high := box.X1-box.X0, box.Y1-box.Y0
	columns := min(max(int(math.Round(math.Sqrt(float64(n)*wide/high/1.5))), 1), max(n, 1))
	if papers >= leastInARow && papers <= mostInARow && n > papers {
		columns = papers
	}
	rows := (n + columns - 1) / columns
	columns = (n + rows - 1) / max(rows, 1)
	var cells []draft.Box
	for i := range n {
		x, y := float64(i%columns), float64(i/columns)
		cells = append(cells, draft.Box{
			X0: box.X0 + wide*x/float64(columns) + contactGap/2, X1: box.X0 + wide*(x+1)/float64(columns) - contactGap/2,
			Y0: box.Y0 + high*y/float64(rows) + contactGap/2, Y1: box.Y0 + high*(y+1)/float64(rows) - contactGap/2,
		})
	}
	return cells
}

// contactName names the covering and the paper of a cell, with their colours.
func contactName(s *draft.Sheet, cell draft.Box, all []material) {
	y := cell.Y1 - contactLabel + 17
	face := draft.SizeLine().At(12).In(draft.Ink)
	for _, m := range all {
		if m.part != book.PartCovering && m.part != book.PartFolio {
			continue
		}
		x := cell.X0 + 12
		chip(s, draft.P{X: x, Y: y}, m)
		x += chipWide + chipGap
		s.Try(draft.P{X: x, Y: y}, fitted(m.name, face, cell.X1-8-x), face, scene.Start, 0)
		y += 18
	}
}

// contactColumns are what is said of all of them: nothing that differs.
func (in Input) contactColumns(books []book.Book, room float64) []column {
	papers, cloths := kindsOf(books)
	count := func(key string, n int) string { return words.Say(key, words.With{"count": n}) }
	page := in.Book.Resolved.Page
	all := []column{in.head(min(room, 330))}
	if in.Offer.Price != "" || in.Offer.Ready != "" {
		all = append(all, in.priced())
	}
	return append(append(all,
		textColumn("show.contact", count("show.contact.cloths", cloths), count("show.contact.papers", papers), count("show.contact.count", len(books))),
		textColumn("show.pages", in.pageLines()...),
		textColumn("show.size", in.told(in.closedSizes()[:2]...), words.Say("show.page", words.With{"size": in.told(page.Width, page.Height)})),
	), in.others()...)
}

// kindsOf counts the papers and the coverings of some books.
func kindsOf(books []book.Book) (papers, cloths int) {
	seen := map[string]bool{}
	for _, b := range books {
		for _, m := range []struct {
			key   string
			count *int
		}{{"p" + b.Resolved.Stock.Paper.Name, &papers}, {"c" + b.Resolved.Stock.Covering.Name, &cloths}} {
			if !seen[m.key] {
				seen[m.key] = true
				*m.count++
			}
		}
	}
	return papers, cloths
}
