package table

import (
	"grainwise/assets/words"
	"grainwise/model/stock"
)

// Materials is what lies on a shelf, as [stock.DecodeCSV] reads it back.
func Materials(all []stock.Material) Table {
	t := Table{Name: words.Say("lists.materials")}
	for _, c := range stock.Columns() {
		t.Columns = append(t.Columns, c.Head())
	}
	for _, m := range all {
		row := make([]Cell, len(t.Columns))
		for i, c := range stock.Columns() {
			row[i] = Text(c.Text(m))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
