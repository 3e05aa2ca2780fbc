package book

import "grainwise/model/stock"

// Source is what a part is cut from: the material, the sheet as it is cut (of a
// roll there is none), and whether the part lies turned on it, its height across
// the grain.
func (b *Book) Source(p Part) (m stock.Material, sheet stock.Sheet, turned bool) {
	m, turned = b.Resolved.materialOf(p.ID)
	return m, b.Resolved.sheetOf(m), turned
}
