package ui

import (
	"bytes"
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/project"
	"grainwise/render/table"
	"grainwise/ui/controls"
)

// ordersTools is the bar over the orders: what is found, and what is done with the
// orders chosen.
type ordersTools struct {
	table             *ordersTable
	find              *searchEntry
	states, move      *controls.ChoiceField
	duplicate, remove *controls.Button
	bar               *fyne.Container
	export            *controls.Button
	said              *controls.Label
	shut              *controls.Chip
	line              *fyne.Container
}

func newOrdersTools(t *ordersTable) *ordersTools {
	o := &ordersTools{table: t, states: controls.NewChoiceField(), move: controls.NewChoiceField()}
	o.find = newSearchEntry(func() { t.find = o.find.Text; t.page.show() }, func() { t.page.window.win.Canvas().Focus(t.first()) })
	o.find.SetPlaceHolder(words.Say("batch.find"))
	o.states.OnChoose = func(i int) {
		t.state = append([]batch.State{""}, batch.States()...)[i]
		t.page.show()
	}
	o.move.OnChoose = func(i int) { t.move(batch.States()[i]) }
	o.duplicate = controls.NewButton(controls.Framed, words.Say("batch.duplicate"), t.duplicate)
	o.remove = controls.NewButton(controls.Framed, words.Say("batch.remove"), t.remove)
	o.export = controls.NewButton(controls.Framed, words.Say("batch.orders.export"), t.exportOrders)
	add := controls.NewButton(controls.Framed, words.Say("batch.add"), t.add)
	take := controls.NewButton(controls.Framed, words.Say("batch.orders.import"), t.importOrders)
	o.said, o.shut = controls.NewLabel(controls.QuietLabel, ""), controls.NewChip(words.Say("batch.orders.all"), t.showAll)
	o.line = controls.Inset(0, 2, 10, 10, controls.Across(8, o.said, o.shut, controls.Spring()))
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6,
		controls.Fixed(168, 28, o.find), controls.Fixed(112, 28, o.states), controls.Gap(4, 1),
		add, o.duplicate, o.remove, controls.Fixed(118, 28, o.move), controls.Spring(), take, o.export))
	o.bar = controls.Down(0, tools, o.line)
	return o
}

// show brings the tools up to date.
func (o *ordersTools) show(all int) {
	t := o.table
	o.states.Set(append([]string{words.Say("batch.states.all")}, labelsOf(batch.States())...), 1+slices.Index(batch.States(), t.state), t.state == "")
	o.move.Set(labelsOf(batch.States()), -1, false)
	o.move.SetHint(words.Say("batch.move"))
	some := t.table.Count() > 0
	for _, b := range []*controls.Button{o.duplicate, o.remove, o.export} {
		ableTo(b, some)
	}
	if some {
		o.move.Enable()
	} else {
		o.move.Disable()
	}
	o.said.SetText(t.inShort(all))
	sifted := t.find != "" || t.state != "" || t.of != nil
	if setVisible(o.shut, sifted) {
		o.line.Refresh()
	}
	o.line.Objects[0].Refresh()
}

func ableTo(b *controls.Button, on bool) {
	if on {
		b.Enable()
	} else {
		b.Disable()
	}
}

// inShort says how many orders and books are on show, and how many chosen.
func (t *ordersTable) inShort(all int) string {
	count := func(ids []string) (books int) {
		for _, id := range ids {
			if i, there := t.at[id]; there {
				books += t.page.batch().Orders[i].Count
			}
		}
		return books
	}
	said := words.Say("batch.orders.shown", words.With{"orders": len(t.rows), "books": count(t.rows)})
	if len(t.rows) != all {
		said = words.Say("batch.orders.found", words.With{"orders": len(t.rows), "all": all, "books": count(t.rows)})
	}
	if t.of != nil {
		said += words.Say("batch.orders.of", words.With{"what": t.of.label()})
	}
	if ids := t.ids(); len(ids) > 1 {
		said += words.Say("batch.orders.chosen", words.With{"orders": len(ids), "books": count(ids)})
	}
	return said
}

func (v *variantPlace) label() string {
	return strings.Trim(v.paper+" × "+v.cloth, " ×")
}

// showAll takes back what the orders are sifted by.
func (t *ordersTable) showAll() {
	t.find, t.state, t.of = "", "", nil
	t.tools.find.SetText("")
	t.page.show()
	t.page.window.win.Canvas().Focus(t.first())
}

// add puts an order below, with the cursor in its customer.
func (t *ordersTable) add() {
	b := t.page.batch()
	o := b.NewOrder(t.page.today())
	t.put(o)
}

func (t *ordersTable) put(orders ...batch.Order) {
	changed, err := t.page.batch().WithOrders(orders...)
	step := "added"
	if said := t.page.set(changed, err, step, words.With{"id": orders[0].ID, "count": len(orders)}); said != "" {
		t.page.window.tell(words.Say("sheet.trouble"), said)
		return
	}
	var rows []int
	for _, o := range orders {
		if !slices.Contains(t.rows, o.ID) { // sifted out
			t.rows = append(t.rows, o.ID)
		}
		rows = append(rows, slices.Index(t.rows, o.ID))
	}
	t.table.SetCount(len(t.rows), rows[0])
	t.page.show()
	t.table.Go(rows[0], 1)
	if len(rows) > 1 {
		t.table.ChooseRows(rows...)
	}
	t.page.window.win.Canvas().Focus(t.table.Body())
}

// duplicate puts copies of the orders chosen below, ordered today.
func (t *ordersTable) duplicate() {
	b := t.page.batch()
	var copies []batch.Order
	for _, id := range t.ids() {
		again := b.NewOrder(t.page.today())
		was := b.Orders[t.at[id]]
		was.ID, was.State, was.Dates = again.ID, again.State, again.Dates
		copies = append(copies, was)
		b, _ = b.WithOrders(was) // takes the id
	}
	if len(copies) > 0 {
		t.put(copies...)
	}
}

// remove takes the orders chosen out; undo brings them back.
func (t *ordersTable) remove() {
	ids := t.ids()
	if len(ids) == 0 {
		return
	}
	row, column := t.table.Chosen()[0], 0
	t.page.set(t.page.batch().WithoutOrders(ids...), nil, "removed", words.With{"id": ids[0], "count": len(ids)})
	t.table.Go(min(row, max(0, t.table.Count()-1)), column)
	t.page.window.win.Canvas().Focus(t.first())
}

// move brings the orders chosen to a state, today.
func (t *ordersTable) move(to batch.State) {
	changed, err := t.page.batch().Moved(to, t.page.today(), t.ids()...)
	if said := t.page.set(changed, err, "moved", words.With{"count": len(t.ids()), "state": to.Label()}); said != "" {
		t.page.window.tell(words.Say("sheet.trouble"), said)
	}
}

// importOrders asks for a table of orders and takes all of it, or nothing.
func (t *ordersTable) importOrders() {
	w := t.page.window
	w.askPath(func(d Dialogs) (string, error) { return d.Open(w.beginningOf(TableEnding)) }, w.toolkitTable, func(path string) {
		before := len(w.session.Batch().Orders)
		changed, err := project.ImportOrders(path, w.session.Project())
		if err != nil {
			w.complain(err)
			return
		}
		w.session.SetBatch(changed, "", words.Say("batch.step.imported", words.With{"name": fileName(path)}))
		w.status.say(words.Say("batch.orders.imported", words.With{"count": len(changed.Orders) - before, "all": len(changed.Orders)}))
	})
}

// exportOrders writes the orders on show as a table.
func (t *ordersTable) exportOrders() {
	w := t.page.window
	var orders []batch.Order
	for _, id := range t.rows {
		orders = append(orders, t.page.batch().Orders[t.at[id]])
	}
	w.saveFile(TableEnding, func() ([]byte, error) {
		var b bytes.Buffer
		err := table.CSV(&b, table.Orders(orders))
		return b.Bytes(), err
	})
}
