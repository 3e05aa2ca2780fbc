package ui

import (
	"image/color"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// spinesTable is every book of the batch by its spine: what was reckoned, what was
// measured at the bench, and which piece it gets.
type spinesTable struct {
	page  *batchPage
	table *controls.Grid
	box   *fyne.Container
	said  *controls.Label
	rows  []spineRow
	apart map[batch.Copy]batch.Outlier
	print *controls.Button
}

// spineRow is one book.
type spineRow struct {
	batch.Copy
	set      batch.Set
	group    string
	customer string
	block    batch.Block
}

// The columns of the table of spines.
const (
	spineGroup = iota
	spineOrder
	spineCustomer
	spineVariant
	spineReckoned
	spineFound
	spineFore
	spineMinutes
	spineSaid
	spineFault
	spineReason
)

func newSpinesTable(p *batchPage) *spinesTable {
	t := &spinesTable{page: p, said: controls.NewLabel(controls.QuietLabel, "")}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title = words.Say("batch.column." + name)
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		spineGroup:    column("piece", controls.GridColumn{Width: 76, End: true, Read: true}),
		spineOrder:    column("order", controls.GridColumn{Width: 64, Read: true}),
		spineCustomer: column("customer", controls.GridColumn{Width: 120, Grows: true, Read: true}),
		spineVariant:  column("variant", controls.GridColumn{Width: 132, Grows: true, Read: true}),
		spineReckoned: column("reckoned", controls.GridColumn{Width: 74, End: true, Read: true}),
		spineFound:    column("found", controls.GridColumn{Width: 82, End: true}),
		spineFore:     column("fore", controls.GridColumn{Width: 82, End: true}),
		spineMinutes:  column("minutes", controls.GridColumn{Width: 64, End: true, Late: 1}),
		spineSaid:     column("outlier", controls.GridColumn{Width: 138, Read: true}),
		spineFault:    column("fault", controls.GridColumn{Width: 110, Grows: true, Late: 2}),
		spineReason:   column("reason", controls.GridColumn{Width: 110, Grows: true, Late: 3}),
	})
	g := t.table
	g.Cell, g.Books, g.OnTake, g.Fixed, g.OnChoose, g.OnDelete = t.cell, t.colours, t.take, t.fixed, p.chosen, t.clear
	t.print = controls.NewButton(controls.Framed, words.Say("batch.papers"), t.printGroup)
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6, t.print, controls.Spring()))
	t.box = controls.Around(controls.Down(0, tools, controls.Inset(0, 2, 10, 10, t.said)), nil, nil, nil, container.NewStack(g.Object()))
	return t
}

func (t *spinesTable) id() string                { return "spines" }
func (t *spinesTable) object() fyne.CanvasObject { return t.box }
func (t *spinesTable) grid() *controls.Grid      { return t.table }
func (t *spinesTable) first() fyne.Focusable     { return t.table.Body() }

// show brings the rows up to date: by group, and in a group as they were ordered.
func (t *spinesTable) show() {
	made, b := t.page.reckoning.made, t.page.batch()
	customers, blocks := map[string]string{}, map[batch.Copy]batch.Block{}
	for _, o := range b.Orders {
		customers[o.ID] = o.Customer
	}
	for _, m := range b.Blocks {
		blocks[batch.Copy{Order: m.Order, Number: m.Copy}] = m
	}
	at, was := t.cursor()
	t.rows, t.apart = t.rows[:0:0], map[batch.Copy]batch.Outlier{}
	for _, o := range made.work.Outliers {
		t.apart[o.Copy] = o
	}
	for _, g := range made.work.Groups {
		for _, s := range g.Sets {
			for _, c := range s.Books {
				t.rows = append(t.rows, spineRow{c, s, g.Name, customers[c.Order], blocks[c]})
			}
		}
	}
	row, _ := t.table.At()
	for i, r := range t.rows {
		if was && r.Copy == at {
			row = i
		}
	}
	t.table.SetCount(len(t.rows), row)
	t.said.SetText(t.text(made))
	ableTo(t.print, len(t.rows) > 0)
}

// printGroup writes the papers of the cursor's group.
func (t *spinesTable) printGroup() {
	row, _ := t.table.At()
	for _, g := range t.page.reckoning.made.work.Groups {
		if row < len(t.rows) && g.Name == t.rows[row].group {
			t.page.printGroup(g.Sets)
		}
	}
}

func (t *spinesTable) cursor() (batch.Copy, bool) {
	row, _ := t.table.At()
	if row < len(t.rows) {
		return t.rows[row].Copy, true
	}
	return batch.Copy{}, false
}

// text sums the groups up.
func (t *spinesTable) text(made reckoned) string {
	if len(t.rows) == 0 {
		return words.Say("batch.spines.none")
	}
	return words.Say("batch.spines.text", words.With{"groups": t.page.groupsInShort(made)})
}

// groupsInShort is "16 mm for 14 books, 17 mm for 10".
func (p *batchPage) groupsInShort(made reckoned) string {
	var all []string
	for _, g := range made.work.Groups {
		all = append(all, words.Say("batch.spines.group", words.With{"width": p.style().WithUnit(g.Width), "books": g.Copies(), "measured": g.Measured()}))
	}
	return strings.Join(all, words.Say("batch.spines.and"))
}

func (t *spinesTable) book() (string, bool) {
	row, _ := t.table.At()
	if row < len(t.rows) {
		return t.rows[row].set.Variant, true
	}
	return "", false
}

func (t *spinesTable) colours(row int) []color.NRGBA {
	if row >= len(t.rows) {
		return nil
	}
	return t.page.colours(t.rows[row].set.Variant)
}

func (t *spinesTable) cell(row, column int) controls.GridCell {
	if row >= len(t.rows) {
		return controls.GridCell{}
	}
	r, style := t.rows[row], t.page.style()
	size := func(l measure.Length) controls.GridCell {
		if l == 0 {
			return controls.GridCell{Text: "–", Quiet: true}
		}
		return controls.GridCell{Text: style.Format(l)}
	}
	switch column {
	case spineGroup:
		return controls.GridCell{Text: style.WithUnit(r.set.Width())}
	case spineOrder:
		return controls.GridCell{Text: bookName(t.page.batch(), r.Copy)}
	case spineCustomer:
		return controls.GridCell{Text: r.customer}
	case spineVariant:
		return controls.GridCell{Text: variantLabel(r.set.Variant), Quiet: true}
	case spineReckoned:
		return controls.GridCell{Text: style.Format(r.set.Book.Block.EstimatedSpine), Quiet: true}
	case spineFound:
		return size(r.block.Spine)
	case spineFore:
		return size(r.block.ForeEdge)
	case spineMinutes:
		if r.block.Minutes == 0 {
			return controls.GridCell{Text: "–", Quiet: true}
		}
		return controls.GridCell{Text: strconv.Itoa(r.block.Minutes)}
	case spineSaid:
		if o, is := t.apart[r.Copy]; is {
			return controls.GridCell{Text: words.Say("batch.spines.apart", words.With{"usual": style.Format(o.Usual)}), Trouble: true}
		}
		return controls.GridCell{}
	case spineFault:
		return controls.GridCell{Text: r.block.Fault}
	}
	return controls.GridCell{Text: r.block.Reason}
}

// bookName is a book's order, with its number where that has several: "06b", "07/2".
func bookName(b batch.Batch, c batch.Copy) string {
	for _, o := range b.Orders {
		if o.ID == c.Order && o.Count > 1 {
			return c.Order + "/" + strconv.Itoa(c.Number)
		}
	}
	return c.Order
}

func (t *spinesTable) fixed(row, column int) string {
	if m := t.rows[row].block; column == spineFore && m.Spine == 0 {
		return words.Say("batch.spines.first")
	}
	return ""
}

func (t *spinesTable) take(row, column int, text string) string {
	r := t.rows[row]
	m := r.block
	m.Order, m.Copy = r.Order, r.Number
	text = strings.Trim(strings.TrimSpace(text), "–")
	problem := ""
	switch column {
	case spineFound:
		problem = t.size(text, &m.Spine)
	case spineFore:
		problem = t.size(text, &m.ForeEdge)
	case spineMinutes:
		problem = wholeText(text, &m.Minutes)
	case spineFault:
		m.Fault = text
	case spineReason:
		m.Reason = text
	}
	if problem != "" {
		return problem
	}
	changed, err := t.page.batch().WithBlock(m)
	return t.page.set(changed, err, "block", words.With{"book": bookName(t.page.batch(), r.Copy)})
}

func (t *spinesTable) size(text string, size *measure.Length) string {
	*size = 0
	if text == "" {
		return ""
	}
	l, err := measure.ParseLength(text, t.page.window.session.System())
	if err != nil {
		return sentence(err.Error())
	}
	*size = l
	return ""
}

func wholeText(text string, n *int) string {
	*n = 0
	if text == "" {
		return ""
	}
	v, err := strconv.Atoi(text)
	if err != nil {
		return words.Say("batch.want.whole")
	}
	*n = v
	return ""
}

// clear takes back what was measured of the books chosen.
func (t *spinesTable) clear() {
	b, name := t.page.batch(), ""
	for _, row := range t.table.Chosen() {
		r := t.rows[row]
		b, _ = b.WithBlock(batch.Block{Order: r.Order, Copy: r.Number}) // nothing to refuse
		name = bookName(b, r.Copy)
	}
	if name != "" {
		t.page.set(b, nil, "block", words.With{"book": name})
	}
}
