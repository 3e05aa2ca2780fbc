package table

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/batch/batchtest"
	"grainwise/model/stock"
)

// What is written is read back the same, whatever the orders say.
func TestOrdersComeBack(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		b := batchtest.Batch().Draw(r, "batch")
		var text bytes.Buffer
		if err := CSV(&text, Orders(b.Orders)); err != nil {
			r.Fatal(err)
		}
		again, err := b.DecodeOrders(text.Bytes(), "orders.csv")
		if err != nil || !slices.Equal(again, b.Orders) {
			r.Fatalf("%v\ncame back as %+v,\nwere         %+v", err, again, b.Orders)
		}
	})
}

// A cell that a spreadsheet would run is kept from it, and stays the same text.
func TestFormulasStayText(t *testing.T) {
	o := batch.Order{ID: "1", Customer: "=HYPERLINK(1)", Kind: batch.Customer, Count: 1, State: batch.Ordered, Note: "-2+3"}
	var text bytes.Buffer
	if err := CSV(&text, Orders([]batch.Order{o})); err != nil {
		t.Fatal(err)
	}
	if s := text.String(); !strings.Contains(s, "'=HYPERLINK") || !strings.Contains(s, "'-2+3") {
		t.Error(s)
	}
	if again, err := (batch.Batch{}).DecodeOrders(text.Bytes(), "x.csv"); err != nil || again[0] != o {
		t.Errorf("%+v: %v", again, err)
	}
}

// Source: RFC 4180, section 2: lines end with CRLF, the last may do without (1, 2);
// cells with commas, line breaks and quotation marks are quoted (6), a mark in
// them is doubled (7). Spaces belong to a cell (4): here they are taken off.
func TestOrdersAfterRFC4180(t *testing.T) {
	text := "customer,variant,count,note\r\n\"Oakwhistle, of the mill\",,2,\"says \"\"soon\"\"\"\r\nThistlewane,,1,\"two\r\nlines\""
	all, err := (batch.Batch{}).DecodeOrders([]byte(text), "x.csv")
	if err != nil || len(all) != 2 || all[0].Customer != "Oakwhistle, of the mill" || all[0].Note != `says "soon"` || all[0].Count != 2 ||
		all[1].Note != "two\nlines" || all[0].ID != "01" || all[1].ID != "02" {
		t.Errorf("%+v: %v", all, err)
	}
}

// What is wrong is named by line and column, and nothing of the table is taken.
func TestOrdersNameLineAndColumn(t *testing.T) {
	const head = "id,customer,kind,variant,count,state,orderedOn,postedOn\n"
	const good = "1,Oakwhistle,customer,Kelp,1,ordered,2026-02-01,\n"
	b := batch.Batch{Variants: []batch.Variant{{Name: "Kelp"}}}
	for text, want := range map[string][]string{
		"":                            {"line 1", "empty"},
		"customer,price\n":            {"line 1", "column 2", "“price”", "zone"},
		"customer\n":                  {"line 1", "variant", "lacks"},
		"customer,variant,Customer\n": {"line 1", "column 3", "twice"},
		head + good + "2,A,customer,Kelp,many,ordered,,\n":                 {"line 3", "column 5", "“count”", "1 to 1000"},
		head + good + "2,A,customer,Kelp,0,ordered,,\n":                    {"line 3", "column 5"},
		head + good + "2,A,cousin,Kelp,1,ordered,,\n":                      {"line 3", "column 3", "keeper"},
		head + good + "2,A,customer,Fog,1,ordered,,\n":                     {"line 3", "column 4", "Kelp"},
		head + good + "2,A,customer,Kelp,1,lost,,\n":                       {"line 3", "column 6", "posted"},
		head + good + "2,A,customer,Kelp,1,posted,2026-02-30,\n":           {"line 3", "column 7", "Not a day"},
		head + good + "2,A,customer,Kelp,1,posted,2026-02-03,2026-02-01\n": {"line 3", "column 8", "before"},
		head + good + "2,A,customer,Kelp,1,made,,2026-02-01\n":             {"line 3", "not come so far"},
		head + good + good:                                            {"line 3", "column 1", "second time"},
		head + good + "2,A,customer,Kelp,1\n":                         {"line 3", "8"},
		head + good + "2,\"A,customer,Kelp,1,ordered,,\n":             {"quot"},
		head + good + "2,Caf\xe9,customer,Kelp,1,ordered,,\n":         {"line 3", "UTF-8"},
		head + good + "2,A,customer,Kelp,1,ordered,,\n" + "3,\x00,\n": {"line 4"},
		head + "2," + strings.Repeat("x", 200) + ",,,,,,\n":           {"line 2", "column 2", "120"},
	} {
		all, err := b.DecodeOrders([]byte(text), "x.csv")
		var wrong *stock.Fault
		if !errors.As(err, &wrong) || all != nil {
			t.Errorf("%q gives %d orders, %v", text, len(all), err)
			continue
		}
		for _, w := range append(want, "x.csv") {
			if !strings.Contains(err.Error(), w) {
				t.Errorf("%q: %v lacks %q", text, err, w)
			}
		}
	}
}

// A table without end is refused at its first order too many.
func TestOrdersAreBounded(t *testing.T) {
	text := "customer,variant\n" + strings.Repeat("A,\n", batch.MostOrders+1)
	if all, err := (batch.Batch{}).DecodeOrders([]byte(text), "x.csv"); err == nil || all != nil || !strings.Contains(err.Error(), fmt.Sprint(batch.MostOrders+2)) {
		t.Errorf("%d orders, %v", len(all), err)
	}
}

func BenchmarkOrders5000(b *testing.B) {
	var orders []batch.Order
	for i := range 5000 {
		orders = append(orders, batch.Order{ID: fmt.Sprint(i), Customer: "Thistlewane", Kind: batch.Customer, Count: 1, State: batch.Ordered})
	}
	var text bytes.Buffer
	if err := CSV(&text, Orders(orders)); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := (batch.Batch{}).DecodeOrders(text.Bytes(), "x.csv"); err != nil {
			b.Fatal(err)
		}
	}
}
