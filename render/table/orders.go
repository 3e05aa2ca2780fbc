package table

import (
	"grainwise/assets/words"
	"grainwise/model/batch"
)

// Orders is a batch's orders, as [batch.Batch.DecodeOrders] reads them back.
func Orders(all []batch.Order) Table {
	t := Table{Name: words.Say("lists.orders")}
	columns := batch.Columns()
	for _, c := range columns {
		t.Columns = append(t.Columns, c.Name)
	}
	for _, o := range all {
		row := make([]Cell, len(columns))
		for i, c := range columns {
			row[i] = Text(c.Text(o))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
