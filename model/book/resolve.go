package book

import (
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Materials are the shelf's materials with the maker's overrides applied.
type Materials struct {
	Paper, Interleaf, Liner, Endpaper, Mull, Tape stock.Material
	Board, Card, Covering, Side, Ribbon, Elastic  stock.Material
	Adhesive                                      stock.Material
}

// at is where the material of a key stands.
func (m *Materials) at(key string) *stock.Material {
	switch key {
	case "paper":
		return &m.Paper
	case "interleaf":
		return &m.Interleaf
	case "liner":
		return &m.Liner
	case "endpaper":
		return &m.Endpaper
	case "mull":
		return &m.Mull
	case "sewing.tape":
		return &m.Tape
	case "board":
		return &m.Board
	case "spine":
		return &m.Card
	case "covering":
		return &m.Covering
	case "covering.side":
		return &m.Side
	case "ribbon":
		return &m.Ribbon
	case "elastic":
		return &m.Elastic
	case "adhesive":
		return &m.Adhesive
	}
	return nil
}

// Of is the material of a key, nothing where no material has it.
func (m *Materials) Of(key string) stock.Material {
	if at := m.at(key); at != nil {
		return *at
	}
	return stock.Material{}
}

// Resolved is a design whose materials are known: what Compute reads.
type Resolved struct {
	Design
	Measured Measured
	Stock    Materials // with the overrides applied
	OnShelf  Materials // as the shelf has them
	Unknown  []string  // keys whose named material is not on the shelf
}

// Resolve looks up every material and applies the overrides. A name that the
// shelf lacks takes the first material of its kind, and its key is listed as
// unknown.
func Resolve(d Decisions, shelf stock.Shelf) Resolved {
	r := Resolved{Design: d.Design, Measured: d.Measured}
	for _, p := range MaterialParams() {
		*r.Stock.at(p.Key) = r.find(shelf, p, p.get(&d).Word)
	}
	r.OnShelf = r.Stock
	r.override()
	return r
}

func (r *Resolved) find(shelf stock.Shelf, p Param, name string) stock.Material {
	if m, ok := shelf.Find(p.Stock, name); ok {
		return m
	}
	r.Unknown = append(r.Unknown, p.Key)
	if all := shelf.OfKind(p.Stock); len(all) > 0 {
		return all[0]
	}
	return stock.Material{Kind: p.Stock, Name: name}
}

func (r *Resolved) override() {
	p := &r.Stock.Paper
	p.Thickness = r.Paper.Thickness.Or(p.Thickness)
	p.Grammage = r.Paper.Grammage.Or(p.Grammage)
	p.Sheet.Length = r.Paper.SheetLength.Or(p.Sheet.Length)
	p.Sheet.Width = r.Paper.SheetWidth.Or(p.Sheet.Width)
	p.Grain = r.Paper.Grain.Or(p.Grain)
	thicken(&r.Stock.Interleaf, r.Interleaf.Thickness)
	thicken(&r.Stock.Liner, r.Liner.Thickness)
	thicken(&r.Stock.Endpaper, r.Endpaper.Thickness)
	thicken(&r.Stock.Board, r.Board.Thickness)
	thicken(&r.Stock.Covering, r.Covering.Thickness)
	r.Stock.Liner.Grain = r.Liner.Grain.Or(r.Stock.Liner.Grain)
	r.Stock.Endpaper.Grain = r.Endpaper.Grain.Or(r.Stock.Endpaper.Grain)
	r.Stock.Board.Grain = r.Board.Grain.Or(r.Stock.Board.Grain)
	r.Stock.Covering.Grain = r.Covering.Grain.Or(r.Stock.Covering.Grain)
}

// thicken replaces a material's thickness and lets its weight follow: the same
// stuff at another caliper keeps its density.
func thicken(m *stock.Material, typed Choice[Length]) {
	t, ok := typed.Get()
	if !ok {
		return
	}
	if m.Thickness > 0 {
		m.Grammage = measure.Grammage(float64(m.Grammage) * t.MM() / m.Thickness.MM())
	}
	m.Thickness = t
}

// PaperSheet is the parent sheet of the leaves with its lost edges.
func (r *Resolved) PaperSheet() stock.Sheet {
	p := r.Stock.Paper
	return stock.Sheet{Size: p.Sheet, Lost: r.Paper.Lost.Edges(), Grain: p.Grain}
}

// sheetOf is another material's parent sheet, with the same lost edges.
func (r *Resolved) sheetOf(m stock.Material) stock.Sheet {
	return stock.Sheet{Size: m.Sheet, Lost: r.Paper.Lost.Edges(), Grain: m.Grain}
}

// Edges spells the four lost strips out.
func (l LostEdges) Edges() stock.Edges {
	return stock.Edges{
		Left: l.Left.Or(l.All), Right: l.Right.Or(l.All),
		Top: l.Top.Or(l.All), Bottom: l.Bottom.Or(l.All),
	}
}
