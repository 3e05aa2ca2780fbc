package compare

import (
	"fmt"
	"slices"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// figure is one row: its name's key, and what it says of a book.
type figure struct {
	key   string
	value func(book.Book, measure.Style) string
}

// figures stand over the pieces to cut.
func figures() []figure {
	length := func(of func(book.Book) book.Length) func(book.Book, measure.Style) string {
		return func(b book.Book, s measure.Style) string { return s.Format(of(b)) }
	}
	return []figure{
		{"page", func(b book.Book, s measure.Style) string { return by(s, b.Resolved.Page.Width, b.Resolved.Page.Height) }},
		{"sections", sections},
		{"leaves", func(b book.Book, _ measure.Style) string { return strconv.Itoa(b.Block.Leaves) }},
		{"structure", func(b book.Book, _ measure.Style) string { return ofParam(b, "structure") }},
		{"sewing", func(b book.Book, _ measure.Style) string { return ofParam(b, "sewing.method") }},
		{"spine", finely(func(b book.Book) book.Length { return b.Block.SpineThickness })},
		{"foreEdge", finely(func(b book.Book) book.Length { return b.Block.ForeEdgeThickness })},
		{"joint", length(func(b book.Book) book.Length { return b.ToCut.JointWidth })},
		{"squares", squares},
		{"turnIn", length(func(b book.Book) book.Length { return b.Resolved.Covering.TurnIn })},
		{"closed", closed},
	}
}

// sums stand under them.
func sums() []figure {
	return []figure{
		{"paper", func(b book.Book, _ measure.Style) string { return stockOf(b, book.PartFolio) }},
		{"covering", func(b book.Book, _ measure.Style) string { return stockOf(b, book.PartCovering) }},
		{"folios", func(b book.Book, _ measure.Style) string { return strconv.Itoa(b.Use.FoliosASheet) }},
		{"sheets", sheets},
		{"mass", func(b book.Book, _ measure.Style) string { return fmt.Sprintf("%.0f g", b.Mass.Total()) }},
		{"materials", materials},
	}
}

// finely shows hundredths of a millimetre: the spine piece is rounded from them.
func finely(of func(book.Book) book.Length) func(book.Book, measure.Style) string {
	return func(b book.Book, s measure.Style) string {
		s.Decimals = 2
		return s.Format(of(b))
	}
}

func by(s measure.Style, width, height book.Length) string {
	return s.Format(width) + " × " + s.Format(height)
}

func sections(b book.Book, _ measure.Style) string {
	return words.Say("compare.of", words.With{"sections": b.Resolved.Sections.Count, "folios": b.Resolved.Sections.Folios})
}

// squares are those at head, tail and fore edge.
func squares(b book.Book, s measure.Style) string {
	q := b.Squares
	return s.Format(q.Head) + " · " + s.Format(q.Tail) + " · " + s.Format(q.ForeEdge)
}

func closed(b book.Book, s measure.Style) string {
	return by(s, b.Closed.Width, b.Closed.Height) + " × " + s.Format(b.Closed.Thickness)
}

// sheets is how many sheets of text paper one book takes; none where its folio
// does not fit.
func sheets(b book.Book, _ measure.Style) string {
	if b.Use.FoliosASheet == 0 {
		return None
	}
	return strconv.FormatFloat(b.Use.SheetsABook, 'f', 2, 64)
}

func materials(b book.Book, _ measure.Style) string {
	if !b.Use.Priced {
		return None
	}
	return b.Use.Cost.String()
}

// ofParam is a decision in words.
func ofParam(b book.Book, key string) string {
	p, known := book.Lookup(key)
	if !known || !p.Applies(b.Resolved.Design) {
		return None
	}
	return p.Number(p.InForce(b), measure.Style{})
}

func stockOf(b book.Book, id book.PartID) string {
	if p, has := b.Part(id); has && p.Count > 0 {
		return p.Stock
	}
	return None
}

// pieces are the size of one and, where there are several, how many.
func pieces(b book.Book, id book.PartID, s measure.Style) string {
	p, has := b.Part(id)
	switch {
	case !has || p.Count == 0:
		return None
	case p.Count == 1:
		return by(s, p.Width, p.Height)
	}
	return words.Say("compare.pieces", words.With{"count": p.Count, "size": by(s, p.Width, p.Height)})
}

// partsOf are the kinds of piece that any of the designs has, in the order of
// making.
func partsOf(designs []Design) []book.PartID {
	var all []book.PartID
	for _, d := range designs {
		at := 0
		for _, p := range d.Book.Parts {
			if i := slices.Index(all, p.ID); i >= 0 {
				at = i + 1
				continue
			}
			all = slices.Insert(all, at, p.ID)
			at++
		}
	}
	return all
}

func partName(designs []Design, id book.PartID) string {
	for _, d := range designs {
		if p, has := d.Book.Part(id); has {
			return words.Say("part." + p.Word)
		}
	}
	return ""
}
