package table

import (
	"bytes"
	"context"
	"strconv"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"grainwise/model/book"
	"grainwise/model/lists"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

func demo(t *testing.T, copies int) (book.Book, []lists.ShoppingRow) {
	t.Helper()
	b := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
	var cuttings []sheets.Cutting
	for _, j := range sheets.Jobs(b, copies) {
		c, err := j.Plan(context.Background(), sheets.Bench{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		cuttings = append(cuttings, c)
	}
	return b, lists.Shopping(b, cuttings, copies)
}

// columns reads a CSV as a spreadsheet would: the values under each heading.
func columns(t *testing.T, table Table) map[string][]string {
	t.Helper()
	var b bytes.Buffer
	if err := CSV(&b, table); err != nil {
		t.Fatal(err)
	}
	records := readCSV(t, b.Bytes())
	all := map[string][]string{}
	for _, record := range records[1:] {
		for k, value := range record {
			all[records[0][k]] = append(all[records[0][k]], value)
		}
	}
	return all
}

// Source: the demo project's tables, computed by hand: boards 149 × 216, 48 for
// 24 books; in inches by 25.4.
func TestPartsOfTheDemoAsAFile(t *testing.T) {
	b, _ := demo(t, 1)
	mm := columns(t, Parts(lists.Parts(b, 24), measure.Metric))
	inch := columns(t, Parts(lists.Parts(b, 24), measure.Imperial))
	for i, name := range mm["Part"] {
		if name != "Board" {
			continue
		}
		if mm["To cut"][i] != "48" || mm["Height, mm"][i] != "216.0" || mm["Width, mm"][i] != "149.0" || mm["± mm"][i] != "0.5" || mm["Grain"][i] != "along the height" {
			t.Errorf("%v", mm)
		}
		if got, want := inch["Height, in"][i], strconv.FormatFloat(216/25.4, 'f', 6, 64); got != want {
			t.Errorf("216 mm are %s in, want %s", got, want)
		}
		return
	}
	t.Errorf("no board among %v", mm["Part"])
}

// By hand, from the demo's table: 42 sheets at 2.40 EUR; the total is the sum of
// the costs that are there, and the rest is named below it.
func TestShoppingForTheDemoAsAFile(t *testing.T) {
	_, rows := demo(t, 14)
	table, err := Shopping(rows, measure.Metric)
	if err != nil {
		t.Fatal(err)
	}
	c := columns(t, table)
	if c["Material"][0] != "Ebbwhite Drawing 170" || c["Sheets to buy"][0] != "42" || c["Price"][0] != "2.40" || c["Per"][0] != "sheet" ||
		c["Cost"][0] != "100.80" || c["Currency"][0] != "EUR" || c["Sheet length, mm"][0] != "1000.0" || c["Price of"][0] != "2026-02-02" {
		t.Errorf("%v", c)
	}
	sum, total := 0.0, ""
	for i, name := range c["Material"] {
		if name == "Total" {
			total = c["Cost"][i]
			break
		}
		cost, _ := strconv.ParseFloat(c["Cost"][i], 64)
		sum += cost
	}
	if want := strconv.FormatFloat(sum, 'f', 2, 64); total != want {
		t.Errorf("total %s, want %s", total, want)
	}
	notes := strings.Join(c["Material"], "\n")
	if !strings.Contains(notes, "no price is known: PVA, Sewing thread 0.28 mm") || !strings.Contains(notes, "spoilage") {
		t.Errorf("the notes are missing: %s", notes)
	}
}

func TestBothListsInOneWorkbook(t *testing.T) {
	b, rows := demo(t, 14)
	shopping, err := Shopping(rows, measure.Metric)
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := XLSX(&out, Parts(lists.Parts(b, 14), measure.Metric), shopping); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	if names := f.GetSheetList(); len(names) != 2 || names[0] != "Parts" || names[1] != "Shopping" {
		t.Errorf("sheets %v", names)
	}
	if cost, _ := f.GetCellValue("Shopping", "M2"); cost != "100.80" {
		t.Errorf("42 sheets cost %q", cost)
	}
}

// Every heading and word is there, for every kind of material and lack.
func TestEveryKindHasAWord(t *testing.T) {
	for _, kind := range stock.Kinds() {
		for _, lack := range []lists.Lack{lists.Priced, lists.NoPrice, lists.NoPlan} {
			for _, per := range []string{stock.PerSheet, stock.PerMetre} {
				price := stock.Price{Amount: measure.Money{Minor: 5, Currency: "JPY"}, Per: per}
				table, err := Shopping([]lists.ShoppingRow{{Material: "m", Kind: kind, Lack: lack, Price: price, NoSpare: true}}, measure.Imperial)
				if err != nil {
					t.Fatal(err)
				}
				for heading, values := range columns(t, table) {
					if said := heading + strings.Join(values, " "); strings.Contains(said, "lists.") {
						t.Errorf("no words for %s", said)
					}
				}
			}
		}
	}
}
