package table

import (
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/lists"
	"grainwise/model/measure"
)

// Parts is the list of parts, its sizes in one unit.
func Parts(rows []lists.PartRow, system measure.System) Table {
	t := Table{Name: words.Say("lists.parts"), Columns: heads(system,
		"number", "part", "material", "eachBook", "toCut", "height", "width", "tolerance", "grain", "mass")}
	for _, r := range rows {
		t.Rows = append(t.Rows, []Cell{
			Whole(int64(r.Number)), Text(r.Name), Text(r.Stock), Whole(int64(r.EachBook)), Whole(int64(r.ToCut)),
			size(r.Height, system), size(r.Width, system), size(r.Tolerance, system),
			Text(words.Say("lists.grain." + string(r.Grain))), Number(r.Mass, 1, 1),
		})
	}
	return t
}

// Shopping is the list of what to buy, its sizes in one unit, with a total a
// currency and what those lack. An error is a total that is out of range.
func Shopping(rows []lists.ShoppingRow, system measure.System) (Table, error) {
	t := Table{Name: words.Say("lists.shopping"), Columns: heads(system,
		"material", "kind", "supplier", "sheetLength", "sheetWidth", "sheets", "metres", "grams", "offcuts",
		"price", "per", "priceOf", "cost", "currency", "remark")}
	for _, r := range rows {
		t.Rows = append(t.Rows, shoppingRow(r, system))
	}
	totals, err := lists.Totals(rows)
	if err != nil {
		return Table{}, err
	}
	for _, sum := range totals {
		row := make([]Cell, costColumn, costColumn+2)
		row[0] = Text(words.Say("lists.total"))
		t.Totals = append(t.Totals, append(row, amount(sum), Text(sum.Currency)))
	}
	t.Notes = notes(rows)
	return t, nil
}

// costColumn is where the cost stands, from 0.
const costColumn = 12

func shoppingRow(r lists.ShoppingRow, system measure.System) []Cell {
	row := []Cell{
		Text(r.Material), Text(words.Say("lists.kind." + string(r.Kind))), Text(r.Supplier),
		unless0(r.Sheet.Length, system), unless0(r.Sheet.Width+r.RollWidth, system),
		{}, {}, {}, {}, {}, {}, {}, {}, {}, Text(remark(r)),
	}
	if r.Sheets > 0 || r.Offcuts > 0 {
		row[5], row[8] = Whole(r.Sheets), Whole(r.Offcuts)
	}
	if r.Length > 0 {
		row[6] = Number(r.Length.MM()/measure.Metre.MM(), 1, 3)
	}
	if r.Grams > 0 {
		row[7] = Number(r.Grams, 0, 0)
	}
	if currency := r.Price.Amount.Currency; currency != "" {
		row[9], row[10], row[13] = amount(r.Price.Amount), Text(words.Say("lists.per."+r.Price.Per)), Text(currency)
	}
	if !r.Price.On.IsZero() {
		row[11] = Text(r.Price.On.String())
	}
	if r.Lack == lists.Priced {
		row[costColumn] = amount(r.Cost)
	}
	return row
}

// remark is what to mind of a row.
func remark(r lists.ShoppingRow) string {
	var all []string
	if r.Lack != lists.Priced {
		all = append(all, words.Say("lists.remark."+string(r.Lack)))
	}
	if r.NoSpare {
		all = append(all, words.Say("lists.remark.noSpare"))
	}
	return strings.Join(all, ", ")
}

// notes say what the totals are without.
func notes(rows []lists.ShoppingRow) []string {
	var all []string
	if names := lists.Unpriced(rows, lists.NoPrice); len(names) > 0 {
		all = append(all, words.Say("lists.noPrice", words.With{"names": strings.Join(names, ", ")}))
	}
	if names := lists.Unpriced(rows, lists.NoPlan); len(names) > 0 {
		all = append(all, words.Say("lists.noPlan", words.With{"names": strings.Join(names, ", ")}))
	}
	return append(all, words.Say("lists.noSpoilage"))
}

func heads(system measure.System, keys ...string) []string {
	all := make([]string, len(keys))
	for i, key := range keys {
		all[i] = words.Say("lists."+key, words.With{"unit": system.Label()})
	}
	return all
}

// Decimals of a length: every size in mm to the micrometre, every 1/64 in.
const (
	decimalsMM   = 3
	decimalsInch = 6
)

func size(l measure.Length, system measure.System) Cell {
	if system == measure.Imperial {
		return Number(l.Inches(), 1, decimalsInch)
	}
	return Number(l.MM(), 1, decimalsMM)
}

func unless0(l measure.Length, system measure.System) Cell {
	if l == 0 {
		return Cell{}
	}
	return size(l, system)
}

// amount is money as a number with its currency's decimals.
func amount(m measure.Money) Cell {
	text, _, _ := strings.Cut(m.String(), " ")
	_, part, _ := strings.Cut(text, ".")
	value, err := strconv.ParseFloat(text, 64)
	if err != nil || m.Currency == "" || m == (measure.Money{}) {
		return Cell{}
	}
	return Number(value, len(part), len(part))
}
