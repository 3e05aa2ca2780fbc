package batch

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/stock"
)

// DecodeOrders reads orders from a table after RFC 4180, in the form of
// [stock.DecodeCSV]: its header names [Columns] in any order, customer and
// variant among them. Empty cells are the usual: one book, a customer's, ordered;
// an order without an id is given one that is free in the batch. All of it is read
// or nothing: an error is a [*stock.Fault] that names file, line and column.
func (b Batch) DecodeOrders(data []byte, file string) ([]Order, error) {
	r, err := stock.OpenCSV(data)
	if err != nil {
		return nil, inFile(file, err)
	}
	t := orderTable{reader: r, batch: b, ids: map[string]bool{}, variants: map[string]bool{"": true}}
	for _, v := range b.Variants {
		t.variants[v.Name] = true
	}
	all, err := t.orders()
	if err != nil {
		return nil, inFile(file, err)
	}
	return all, nil
}

func inFile(file string, err error) error {
	var wrong *stock.Fault
	if errors.As(err, &wrong) {
		return &stock.Fault{Place: file + ": " + wrong.Place, Text: wrong.Text}
	}
	return &stock.Fault{Place: file, Text: err.Error()}
}

// orderTable is a table while it is read.
type orderTable struct {
	reader   *csv.Reader
	batch    Batch
	columns  []Column // as the header has them
	heads    []string
	ids      map[string]bool // met so far
	variants map[string]bool
}

func (t *orderTable) orders() ([]Order, error) {
	if err := t.header(); err != nil {
		return nil, err
	}
	var all []Order
	for {
		record, err := t.reader.Read()
		switch {
		case errors.Is(err, io.EOF):
			return t.named(all), nil
		case err != nil:
			return nil, stock.CSVForm(err, len(t.columns))
		case !slices.ContainsFunc(record, func(cell string) bool { return strings.TrimSpace(cell) != "" }):
			continue
		case len(all) == MostOrders:
			return nil, t.blame("", words.Say("batch.want.fewer", words.With{"most": MostOrders}))
		}
		o, err := t.order(record)
		if err != nil {
			return nil, err
		}
		all = append(all, o)
	}
}

func (t *orderTable) header() error {
	record, err := t.reader.Read()
	switch {
	case errors.Is(err, io.EOF):
		return &stock.Fault{Place: stock.CSVPlace(1, 0, ""), Text: words.Say("order.csv.empty")}
	case err != nil:
		return stock.CSVForm(err, 0)
	}
	for i, head := range record {
		c, known := columnOf(head)
		switch {
		case !known:
			return &stock.Fault{Place: stock.CSVPlace(1, i+1, head), Text: words.Say("order.csv.unknown", words.With{"names": columnNames()})}
		case slices.ContainsFunc(t.columns, func(other Column) bool { return other.Name == c.Name }):
			return &stock.Fault{Place: stock.CSVPlace(1, i+1, head), Text: words.Say("stock.csv.twice")}
		}
		t.columns, t.heads = append(t.columns, c), append(t.heads, head)
	}
	for _, needed := range []string{"customer", "variant"} {
		if !slices.ContainsFunc(t.columns, func(c Column) bool { return c.Name == needed }) {
			return &stock.Fault{Place: stock.CSVPlace(1, 0, needed), Text: words.Say("stock.csv.lacks")}
		}
	}
	return nil
}

// columnOf reads a head: a column's name, spaces and capitals aside.
func columnOf(head string) (Column, bool) {
	name := strings.ReplaceAll(head, " ", "")
	for _, c := range Columns() {
		if strings.EqualFold(c.Name, name) {
			return c, true
		}
	}
	return Column{}, false
}

func columnNames() string {
	var names []string
	for _, c := range Columns() {
		names = append(names, c.Name)
	}
	return strings.Join(names, ", ")
}

// order is what a record says, and that it can be.
func (t *orderTable) order(record []string) (Order, error) {
	o := Order{Kind: Customer, State: Ordered, Count: 1}
	for i, c := range t.columns {
		cell := strings.TrimSpace(stock.Bared(record[i]))
		if cell == "" {
			continue
		}
		if err := c.set(&o, cell); err != nil {
			_, text := placeOf(err, o)
			return o, t.blame(c.Name, text)
		}
	}
	missing := o.ID == ""
	if missing {
		o.ID = "?" // stands for the one that it will be given
	}
	if err := o.Validate(); err != nil {
		column, text := placeOf(err, o)
		return o, t.blame(column, text)
	}
	switch {
	case !t.variants[o.Variant]:
		return o, t.blame("variant", words.Say("order.want.variant", words.With{"found": o.Variant, "names": t.batch.variantNames()}))
	case missing:
		o.ID = ""
	case t.ids[o.ID]:
		return o, t.blame("id", words.Say("order.want.once", words.With{"id": o.ID}))
	}
	t.ids[o.ID] = true
	return o, nil
}

// named gives free ids to the orders without one.
func (t *orderTable) named(all []Order) []Order {
	for _, o := range t.batch.Orders {
		t.ids[o.ID] = true
	}
	next := 1
	for i := range all {
		if all[i].ID == "" {
			all[i].ID, next = freeID(t.ids, next)
			t.ids[all[i].ID] = true
		}
	}
	return all
}

// freeID is the first free number from one on, of two figures or more.
func freeID(taken map[string]bool, from int) (id string, next int) {
	for n := from; ; n++ {
		if id := fmt.Sprintf("%02d", n); !taken[id] {
			return id, n + 1
		}
	}
}

// blame puts what is wrong at its column of the record read last.
func (t *orderTable) blame(column, text string) error {
	for i, c := range t.columns {
		if c.Name == column {
			line, _ := t.reader.FieldPos(i)
			return &stock.Fault{Place: stock.CSVPlace(line, i+1, t.heads[i]), Text: text}
		}
	}
	line, _ := t.reader.FieldPos(0)
	return &stock.Fault{Place: stock.CSVPlace(line, 0, column), Text: text}
}
