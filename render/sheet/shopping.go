package sheet

import (
	"fmt"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/lists"
	"grainwise/render/scene"
)

// shoppingList is what the copies take, to be ticked in the shop.
func shoppingList(in Input) Document {
	f := newFlow(in.Printer.format())
	w := f.width()
	rows := lists.Shopping(in.Book, in.Cuttings, in.copies())
	f.add(stacked(lines(in.title(), titleStyle(), w), lines(counted("shopping.for", int64(in.copies())), body(), w)))
	f.add(in.shoppingTable(rows, w)...)
	f.add(in.shoppingTotals(rows, w)...)
	f.add(lines(words.Say("lists.noSpoilage"), quiet(), w))
	return f.document(in, words.Say("paper.shopping-list"))
}

func (in Input) shoppingTable(rows []lists.ShoppingRow, w float64) []block {
	columns := []column{
		{name: words.Say("shopping.material"), style: body()},
		{name: words.Say("shopping.size"), width: 42, style: body()},
		{name: words.Say("shopping.buy"), width: 34, align: scene.End, style: number()},
		{name: words.Say("shopping.cost"), width: 30, align: scene.End, style: body()},
		{name: words.Say("shopping.have"), width: 14, align: scene.Middle, style: body()},
	}
	var cells [][]cell
	for _, r := range rows {
		cells = append(cells, []cell{{text: in.shoppingName(r)}, {text: in.shoppingSize(r)}, {text: in.toBuy(r)}, {text: costOf(r)}, tick()})
	}
	return table(columns, cells, w)
}

// shoppingName is the material with what has to be known of it.
func (in Input) shoppingName(r lists.ShoppingRow) string {
	said := []string{r.Material}
	if r.Supplier != "" {
		said = append(said, r.Supplier)
	}
	if r.Offcuts > 0 {
		said = append(said, words.Say("shopping.offcuts", words.With{"count": r.Offcuts}))
	}
	if r.NoSpare {
		said = append(said, words.Say("lists.remark.noSpare"))
	}
	return strings.Join(said, "\n")
}

// shoppingSize is a sheet's sizes, or a roll's width.
func (in Input) shoppingSize(r lists.ShoppingRow) string {
	switch {
	case r.Sheet.Length > 0:
		return in.size(r.Sheet.Length) + " × " + in.sized(r.Sheet.Width)
	case r.RollWidth > 0:
		return words.Say("shopping.wide", words.With{"width": in.sized(r.RollWidth)})
	}
	return ""
}

// toBuy is how much, in what it is sold by.
func (in Input) toBuy(r lists.ShoppingRow) string {
	switch {
	case r.Lack == lists.NoPlan:
		return "?"
	case r.Sheets > 0:
		return counted("shopping.sheets", r.Sheets)
	case r.Length > 0:
		return in.metres(r.Length)
	case r.Grams > 0:
		return fmt.Sprintf("%.0f g", r.Grams)
	}
	return "0"
}

// counted is a number with its word, which differs for one.
func counted(key string, n int64) string {
	if n == 1 {
		return words.Say(key + ".one")
	}
	return words.Say(key+".many", words.With{"count": n})
}

func costOf(r lists.ShoppingRow) string {
	switch r.Lack {
	case lists.NoPrice:
		return words.Say("lists.remark.price")
	case lists.NoPlan:
		return words.Say("lists.remark.plan")
	}
	return r.Cost.String()
}

func (in Input) shoppingTotals(rows []lists.ShoppingRow, w float64) []block {
	var all []block
	totals, err := lists.Totals(rows)
	if err != nil {
		return []block{lines(err.Error(), body(), w)}
	}
	for _, m := range totals {
		b := lines(words.Say("lists.total")+" "+m.String(), number(), w)
		b.gap = 4
		all = append(all, b)
	}
	for _, lack := range []struct {
		is   lists.Lack
		word string
	}{{lists.NoPrice, "lists.noPrice"}, {lists.NoPlan, "lists.noPlan"}} {
		if names := lists.Unpriced(rows, lack.is); len(names) > 0 {
			all = append(all, lines(words.Say(lack.word, words.With{"names": strings.Join(names, ", ")}), body(), w))
		}
	}
	return all
}
