package ui

import (
	"image/color"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/ui/controls"
)

// ordersTable is who ordered what. Its rows stay where they are while they are
// edited: they are sorted and sifted when that is asked for.
type ordersTable struct {
	page    *batchPage
	table   *controls.Grid
	box     *fyne.Container
	empty   *fyne.Container // in the table's place while nothing is ordered
	tools   *ordersTools
	columns []ordersColumn

	at     map[string]int // order by id, in the project
	rows   []string       // ids on show
	sort   string         // name of the column they were sorted by; empty for none
	down   bool
	find   string
	state  batch.State   // those in one state alone; empty for all
	of     *variantPlace // those of one paper and cloth alone; nil for all
	sifted string        // what the rows were sifted by
}

// ordersColumn is a column of the table: of an order, or what follows from it.
type ordersColumn struct {
	controls.GridColumn
	name string
}

// extrasColumn follows from the variant.
const extrasColumn = "extras"

func ordersColumns(p *batchPage) []ordersColumn {
	words := func(all []string) func() []string { return func() []string { return all } }
	all := []ordersColumn{
		{controls.GridColumn{Width: 58}, "id"},
		{controls.GridColumn{Width: 170, Grows: true}, "customer"},
		{controls.GridColumn{Width: 142, Grows: true, Choices: p.variantNames}, "variant"},
		{controls.GridColumn{Width: 96, Read: true, Late: 2}, extrasColumn},
		{controls.GridColumn{Width: 52, End: true}, "count"},
		{controls.GridColumn{Width: 122, Choices: words(labelsOf(batch.Kinds()))}, "kind"},
		{controls.GridColumn{Width: 62}, "parcel"},
		{controls.GridColumn{Width: 62}, "zone"},
		{controls.GridColumn{Width: 92, Choices: words(labelsOf(batch.States()))}, "state"},
		{controls.GridColumn{Width: 94, Late: 1}, "orderedOn"},
		{controls.GridColumn{Width: 94, Late: 4}, "madeOn"},
		{controls.GridColumn{Width: 94, Late: 5}, "postedOn"},
		{controls.GridColumn{Width: 110, Grows: true, Late: 3}, "note"},
	}
	for i := range all {
		all[i].Title = sayColumn(all[i].name)
	}
	return all
}

func sayColumn(name string) string {
	if c, known := batch.ColumnOf(name); known {
		return c.Label()
	}
	return words.Say("batch.column." + name)
}

func labelsOf[T interface{ Label() string }](all []T) []string {
	var texts []string
	for _, one := range all {
		texts = append(texts, one.Label())
	}
	return texts
}

func newOrdersTable(p *batchPage) *ordersTable {
	t := &ordersTable{page: p, columns: ordersColumns(p), at: map[string]int{}}
	var columns []controls.GridColumn
	for _, c := range t.columns {
		columns = append(columns, c.GridColumn)
	}
	t.table = controls.NewGrid(columns)
	t.table.Cell, t.table.Books, t.table.OnTake = t.cell, t.colours, t.take
	t.table.OnSort, t.table.OnChoose = t.sortBy, t.chosen
	t.table.OnDelete, t.table.OnInsert = t.remove, t.add
	t.tools = newOrdersTools(t)
	t.empty = t.begin()
	t.box = controls.Around(t.tools.bar, nil, nil, nil, container.NewStack(t.table.Object(), t.empty))
	return t
}

// begin is what stands in the table's place while nothing is ordered.
func (t *ordersTable) begin() *fyne.Container {
	said := controls.NewParagraph(words.Say("batch.orders.none"))
	return controls.Inset(28, 0, 28, 28, controls.Down(10, said, controls.Across(8,
		controls.NewButton(controls.Solid, words.Say("batch.orders.first"), t.add),
		controls.NewButton(controls.Framed, words.Say("batch.orders.import"), t.importOrders),
		controls.Spring())))
}

func (t *ordersTable) id() string                { return "orders" }
func (t *ordersTable) object() fyne.CanvasObject { return t.box }
func (t *ordersTable) grid() *controls.Grid      { return t.table }

func (t *ordersTable) first() fyne.Focusable {
	if t.table.Count() == 0 {
		return focusable(t.empty.Objects)
	}
	return t.table.Body()
}

// show brings the rows up to date; those on show keep their order.
func (t *ordersTable) show() {
	all := t.page.batch().Orders
	clear(t.at)
	for i, o := range all {
		t.at[o.ID] = i
	}
	at := t.cursor()
	t.keep(all)
	setVisible(t.empty, len(all) == 0)
	setVisible(t.table.Object(), len(all) > 0)
	row, _ := t.table.At()
	if i := slices.Index(t.rows, at); i >= 0 {
		row = i
	}
	t.table.SetCount(len(t.rows), row)
	t.tools.show(len(all))
}

// keep sifts anew when that is asked for otherwise; else it takes out what is gone
// and puts what is new below.
func (t *ordersTable) keep(all []batch.Order) {
	asked := t.find + "\x00" + string(t.state) + "\x00" + t.of.key()
	if asked != t.sifted {
		t.sifted = asked
		t.sift(all)
		return
	}
	shown := make(map[string]bool, len(t.rows))
	var rows []string
	for _, id := range t.rows {
		if _, there := t.at[id]; there {
			rows, shown[id] = append(rows, id), true
		}
	}
	if asked == "\x00\x00" {
		for _, o := range all {
			if !shown[o.ID] {
				rows = append(rows, o.ID)
			}
		}
	}
	t.rows = rows
}

// sift finds and sorts the rows.
func (t *ordersTable) sift(all []batch.Order) {
	found := batch.Found(all, t.find)
	if t.sort == extrasColumn {
		extras := t.page.extras()
		slices.SortStableFunc(found, func(a, b batch.Order) int { return compareText(extras[a.Variant], extras[b.Variant], t.down) })
	} else if c, known := batch.ColumnOf(t.sort); known {
		found = batch.Sorted(found, c, t.down)
	}
	places := t.page.places()
	t.rows = t.rows[:0:0]
	for _, o := range found {
		if (t.state == "" || o.State == t.state) && (t.of == nil || t.of.holds(places[o.Variant])) {
			t.rows = append(t.rows, o.ID)
		}
	}
}

// again sifts and sorts, whatever was asked before.
func (t *ordersTable) again() {
	t.sifted = "\x01"
	t.page.show()
}

// cursor is the id of the cursor's row; empty for none.
func (t *ordersTable) cursor() string {
	if row, _ := t.table.At(); row < len(t.rows) {
		return t.rows[row]
	}
	return ""
}

func (t *ordersTable) order(row int) (batch.Order, bool) {
	if row < len(t.rows) {
		if i, there := t.at[t.rows[row]]; there {
			return t.page.batch().Orders[i], true
		}
	}
	return batch.Order{}, false
}

func (t *ordersTable) cell(row, column int) controls.GridCell {
	o, there := t.order(row)
	if !there {
		return controls.GridCell{}
	}
	switch name := t.columns[column].name; name {
	case "kind":
		return controls.GridCell{Text: o.Kind.Label(), Quiet: o.Kind != batch.Customer}
	case "state":
		return controls.GridCell{Text: o.State.Label()}
	case "variant":
		return controls.GridCell{Text: variantLabel(o.Variant), Quiet: o.Variant == ""}
	case extrasColumn:
		return controls.GridCell{Text: t.page.extras()[o.Variant], Quiet: true}
	default:
		c, _ := batch.ColumnOf(name)
		return controls.GridCell{Text: c.Text(o)}
	}
}

func (t *ordersTable) colours(row int) []color.NRGBA {
	o, there := t.order(row)
	if !there {
		return nil
	}
	return t.page.colours(o.Variant)
}

// take is an entry that is finished.
func (t *ordersTable) take(row, column int, text string) string {
	o, there := t.order(row)
	if !there {
		return ""
	}
	name, b := t.columns[column].name, t.page.batch()
	step := words.With{"id": o.ID, "what": t.columns[column].Title}
	switch name {
	case "id":
		if text == o.ID {
			return ""
		}
		changed, err := b.Renamed(o.ID, text)
		if err == nil {
			t.rows[row] = text
		}
		return t.page.set(changed, err, "order", step)
	case "state":
		changed, err := b.Moved(valueOf(batch.States(), text), t.page.today(), o.ID)
		return t.page.set(changed, err, "order", step)
	case "kind":
		text = string(valueOf(batch.Kinds(), text))
	case "variant":
		text = variantOf(text)
	}
	c, _ := batch.ColumnOf(name)
	set, err := c.Set(o, text)
	if err != nil {
		return faultText(err)
	}
	changed, err := b.WithOrders(set)
	return t.page.set(changed, err, "order", step)
}

// valueOf is the one of some values whose label is a text.
func valueOf[T interface{ Label() string }](all []T, label string) T {
	var none T
	for _, one := range all {
		if one.Label() == label {
			return one
		}
	}
	return none
}

func (t *ordersTable) sortBy(column int) {
	name := t.columns[column].name
	t.down = t.sort == name && !t.down
	t.sort = name
	t.table.SetSorted(column, t.down)
	t.again()
}

func (t *ordersTable) chosen() {
	t.tools.show(len(t.page.batch().Orders))
	t.tell()
	t.page.chosen()
}

// tell says the cursor's order in the status line, where its names have room.
func (t *ordersTable) tell() {
	row, _ := t.table.At()
	o, there := t.order(row)
	if !there {
		return
	}
	var said []string
	for _, part := range []string{o.ID, o.Customer, variantLabel(o.Variant), o.Note} {
		if part != "" {
			said = append(said, part)
		}
	}
	t.page.window.status.say(strings.Join(said, "  ·  "))
}

func (t *ordersTable) book() (string, bool) {
	row, _ := t.table.At()
	o, there := t.order(row)
	return o.Variant, there
}

// ids are the orders chosen.
func (t *ordersTable) ids() []string {
	var ids []string
	for _, row := range t.table.Chosen() {
		if row < len(t.rows) {
			ids = append(ids, t.rows[row])
		}
	}
	return ids
}

// variantPlace is a paper and a cloth; either is empty for all.
type variantPlace struct{ paper, cloth string }

func (v *variantPlace) key() string {
	if v == nil {
		return ""
	}
	return v.paper + "\x00" + v.cloth
}

func (v *variantPlace) holds(other variantPlace) bool {
	return (v.paper == "" || v.paper == other.paper) && (v.cloth == "" || v.cloth == other.cloth)
}

// placesOf tells paper and cloth of every variant, the base design's under no name.
func placesOf(base book.Decisions, b batch.Batch) map[string]variantPlace {
	places := map[string]variantPlace{}
	for _, v := range append([]batch.Variant{{}}, b.Variants...) {
		d, _ := v.Patch.Apply(base)
		places[v.Name] = variantPlace{d.Design.Paper.Material, d.Design.Covering.Material}
	}
	return places
}
