package check

import (
	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/stock"
)

// spareNone: where sheets give exactly the pieces needed, one slip stops the batch.
func spareNone(m *batchMatter) []Finding {
	if m.Copies() < BatchFrom {
		return nil
	}
	var all []Finding
	for _, n := range m.Needs {
		if n.Cutting == nil || n.Cutting.Roll() || n.Spare > 0 {
			continue
		}
		part, key := keyOf(n.Kind)
		all = append(all, Finding{
			Level: Check, Part: part, Key: key + "/" + n.Material,
			Found: count(int(n.Spare)), Limit: count(1),
			Blanks: map[string]any{"name": n.Material, "sheets": n.OnHand.Sheets + n.ToBuy.Sheets},
		})
	}
	return all
}

// keyOf is the part and the parameter that a kind of material belongs to.
func keyOf(kind stock.Kind) (book.PartID, string) {
	switch kind {
	case stock.Interleaf:
		return book.PartInterleaf, "interleaf"
	case stock.Liner:
		return book.PartLiner, "liner"
	case stock.Mull:
		return book.PartMull, "mull"
	case stock.Board:
		return book.PartBoard, "board"
	case stock.Card:
		return book.PartSpine, "spine"
	case stock.Covering:
		return book.PartCovering, "covering"
	}
	return book.PartFolio, "paper"
}

// lotMixed: one colour of an order from two lots. Books that go together in one
// covering or paper are cut from what is in stock and from what is bought, and
// the two are not known to be of one lot.
func lotMixed(m *batchMatter) []Finding {
	var all []Finding
	for _, n := range m.Needs {
		stocked := lotOf(m.Batch, n)
		if n.Kind != stock.Covering && n.Kind != stock.Paper || n.OnHand.IsZero() || n.ToBuy.IsZero() || stocked == n.Stock.Lot {
			continue
		}
		if books := mostTogether(m.Work, n); books > 1 {
			part, key := keyOf(n.Kind)
			all = append(all, Finding{
				Level: Check, Part: part, Key: key + "/" + n.Material, Found: count(2), Limit: count(1),
				Blanks: map[string]any{"name": n.Material, "stocked": lotName(stocked), "bought": lotName(n.Stock.Lot), "books": books},
			})
		}
	}
	return all
}

// lotName is a lot as it is told; one that nobody noted is said to be so.
func lotName(lot string) string {
	if lot == "" {
		return words.Say("batch.lotUnknown")
	}
	return lot
}

func lotOf(b batch.Batch, n batch.Need) string {
	for _, h := range b.Stock {
		if h.Kind == n.Kind && h.Material == n.Material {
			return h.Lot
		}
	}
	return ""
}

// mostTogether is the most books that one order or parcel has in a material.
func mostTogether(w batch.Work, n batch.Need) int {
	parcels := map[string]string{}
	for _, o := range w.Batch.Orders {
		parcels[o.ID] = "order " + o.ID
		if o.Parcel != "" {
			parcels[o.ID] = "parcel " + o.Parcel
		}
	}
	books, most := map[string]int{}, 0
	for _, s := range w.Sets {
		if !uses(s, n) {
			continue
		}
		for _, c := range s.Books {
			books[parcels[c.Order]]++
			most = max(most, books[parcels[c.Order]])
		}
	}
	return most
}

func uses(s batch.Set, n batch.Need) bool {
	for _, p := range s.Book.Parts {
		if m, _, _ := s.Book.Source(p); m.Kind == n.Kind && m.Name == n.Material {
			return true
		}
	}
	return false
}
