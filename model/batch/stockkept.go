package batch

import (
	"slices"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// WithHolding notes what there is of a material and how it is bought, in the place
// of what was noted before; nothing noted takes it away. On an error nothing
// changed.
func (b Batch) WithHolding(h Holding) (Batch, error) {
	if err := h.Validate(); err != nil {
		return b, err
	}
	held := slices.Clone(b.Stock)
	i := slices.IndexFunc(held, func(o Holding) bool { return o.Kind == h.Kind && o.Material == h.Material })
	switch {
	case h == Holding{Kind: h.Kind, Material: h.Material} && i < 0:
		return b, nil
	case h == Holding{Kind: h.Kind, Material: h.Material}:
		held = slices.Delete(held, i, i+1)
	case i < 0:
		held = append(held, h)
	default:
		held[i] = h
	}
	b.Stock = held
	return b, nil
}

// Holding is what was noted of a material.
func (b Batch) Holding(kind stock.Kind, name string) Holding {
	h := b.holding(kind, name)
	h.Kind, h.Material = kind, name
	return h
}

// Bought puts what is to be bought of a material into the stock, of a lot where it
// is known. Where another lot lies there already, none is noted: the two are mixed.
func (b Batch) Bought(n Need) (Batch, error) {
	h := b.Holding(n.Kind, n.Material)
	had := Amount{h.Sheets, h.Length, h.Grams}
	sum := had.and(n.ToBuy)
	h.Sheets, h.Length, h.Grams = sum.Sheets, sum.Length, sum.Grams
	switch {
	case had.IsZero():
		h.Lot = n.Stock.Lot
	case h.Lot != n.Stock.Lot:
		h.Lot = ""
	}
	return b.WithHolding(h)
}

// CutAll notes that a material's pieces are cut, as they are planned, and draws what
// they take from the stock. From now on they are locked at their size: a changed
// design needs others, and tells which of these no book takes.
func (b Batch) CutAll(n Need, on measure.Date) (Batch, error) {
	if n.Lack == NoPlan || len(n.Pieces) == 0 {
		return b, want("pieces", "batch.want.planned", "name", n.Material)
	}
	cut := slices.Clone(b.Cut)
	for i, p := range n.Pieces {
		c := Cut{Kind: n.Kind, Material: n.Material, Part: string(p.Part), Height: p.Height, Width: p.Width, Count: p.Count, On: on}
		if i == 0 {
			c.Took = n.Net
		}
		if err := c.Validate(); err != nil {
			return b, err
		}
		cut = append(cut, c)
	}
	h := b.Holding(n.Kind, n.Material)
	left := Amount{h.Sheets, h.Length, h.Grams}.less(n.Net)
	h.Sheets, h.Length, h.Grams = left.Sheets, left.Length, left.Grams
	b.Cut = cut
	return b.WithHolding(h)
}
