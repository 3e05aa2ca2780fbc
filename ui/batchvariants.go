package ui

import (
	"image/color"
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// variantsTable is the variants of the design, the design itself first.
type variantsTable struct {
	page              *batchPage
	table             *controls.Grid
	box               *fyne.Container
	duplicate, remove *controls.Button
	toOrders, other   *controls.Button
	books             map[string]int // ordered, by variant
	all               []batch.Variant
	made              map[string]book.Book
}

// The columns of the table of variants.
const (
	variantName = iota
	variantPaper
	variantCloth
	variantRibbon
	variantElastic
	variantOther
	variantAsked
	variantBooks
	variantSpine
	variantPiece
	variantMass
)

// extraKeys are the widths that make an extra of a column.
var extraKeys = [...]string{variantRibbon: "ribbon.width", variantElastic: "elastic.width"}

func newVariantsTable(p *batchPage) *variantsTable {
	t := &variantsTable{page: p}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title = words.Say("batch.column." + name)
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		variantName:    column("name", controls.GridColumn{Width: 136, Grows: true}),
		variantPaper:   column("paper", controls.GridColumn{Width: 136, Grows: true, Choices: func() []string { return p.materials(stock.Paper) }}),
		variantCloth:   column("cloth", controls.GridColumn{Width: 84, Grows: true, Choices: func() []string { return p.materials(stock.Covering) }}),
		variantRibbon:  column("ribbon", controls.GridColumn{Width: 62, End: true}),
		variantElastic: column("elastic", controls.GridColumn{Width: 62, End: true}),
		variantOther:   column("other", controls.GridColumn{Width: 80, Grows: true, Read: true, Late: 2}),
		variantAsked:   column("asked", controls.GridColumn{Width: 84, End: true}),
		variantBooks:   column("books", controls.GridColumn{Width: 54, End: true, Read: true}),
		variantSpine:   column("spine", controls.GridColumn{Width: 82, End: true, Read: true}),
		variantPiece:   column("piece", controls.GridColumn{Width: 78, End: true, Read: true}),
		variantMass:    column("mass", controls.GridColumn{Width: 62, End: true, Read: true, Late: 1}),
	})
	g := t.table
	g.Cell, g.Books, g.OnTake, g.Fixed, g.OnChoose = t.cell, t.colours, t.take, t.fixed, t.chosen
	g.OnDelete, g.OnInsert = t.takeOut, t.add
	t.duplicate = controls.NewButton(controls.Framed, words.Say("batch.duplicate"), t.again)
	t.remove = controls.NewButton(controls.Framed, words.Say("batch.remove"), t.takeOut)
	t.toOrders = controls.NewButton(controls.Framed, words.Say("batch.variant.orders"), t.showOrders)
	t.other = controls.NewButton(controls.Framed, words.Say("batch.setting"), t.settingSheet)
	tools := controls.Inset(5, 5, 10, 10, controls.Across(6, controls.NewButton(controls.Framed, words.Say("batch.variant.add"), t.add),
		t.duplicate, t.remove, t.other, controls.Gap(4, 1), t.toOrders,
		controls.NewButton(controls.Framed, words.Say("batch.variant.fromDesign"), t.fromDesign), controls.Spring()))
	said := controls.Inset(0, 2, 10, 10, controls.NewLabel(controls.QuietLabel, words.Say("batch.variant.text")))
	t.box = controls.Around(controls.Down(0, tools, said), nil, nil, nil, container.NewStack(g.Object()))
	return t
}

func (t *variantsTable) id() string                { return "variants" }
func (t *variantsTable) object() fyne.CanvasObject { return t.box }
func (t *variantsTable) grid() *controls.Grid      { return t.table }
func (t *variantsTable) first() fyne.Focusable     { return t.table.Body() }

// show brings the rows up to date.
func (t *variantsTable) show() {
	b := t.page.batch()
	t.all = append([]batch.Variant{{}}, b.Variants...)
	t.books, t.made = map[string]int{}, t.page.booksOf()
	for _, o := range b.Orders {
		t.books[o.Variant] += o.Count
	}
	row, _ := t.table.At()
	t.table.SetCount(len(t.all), row)
	t.able()
}

func (t *variantsTable) able() {
	row, _ := t.table.At()
	ableTo(t.remove, row > 0)
	ableTo(t.other, row > 0)
}

func (t *variantsTable) chosen() {
	t.able()
	t.page.chosen()
}

func (t *variantsTable) at() batch.Variant {
	row, _ := t.table.At()
	return t.all[min(row, len(t.all)-1)]
}

func (t *variantsTable) book() (string, bool) { return t.at().Name, true }

func (t *variantsTable) colours(row int) []color.NRGBA { return t.page.colours(t.all[row].Name) }

func (t *variantsTable) cell(row, column int) controls.GridCell {
	v := t.all[row]
	b, style := t.made[v.Name], t.page.style()
	asDesigned := func(key, text string) controls.GridCell {
		return controls.GridCell{Text: text, Quiet: !sets(v, key)}
	}
	switch column {
	case variantName:
		return controls.GridCell{Text: variantLabel(v.Name), Quiet: row == 0}
	case variantPaper:
		return asDesigned("paper", b.Resolved.Stock.Paper.Name)
	case variantCloth:
		return asDesigned("covering", b.Resolved.Stock.Covering.Name)
	case variantRibbon, variantElastic:
		p, _ := book.Lookup(extraKeys[column])
		d, _ := v.Patch.Apply(t.page.window.session.Decisions())
		if width := p.Get(d).Length; width > 0 {
			return asDesigned(p.Key, style.Format(width))
		}
		return controls.GridCell{Text: "–", Quiet: true}
	case variantOther:
		return controls.GridCell{Text: t.page.others(v), Quiet: true}
	case variantAsked:
		return controls.GridCell{Text: moneyText(v.Asked)}
	case variantBooks:
		return controls.GridCell{Text: strconv.Itoa(t.books[v.Name])}
	case variantSpine:
		return controls.GridCell{Text: style.Format(b.Block.SpineThickness), Quiet: true}
	case variantPiece:
		return controls.GridCell{Text: style.Format(b.ToCut.SpineWidth), Quiet: true}
	}
	return controls.GridCell{Text: massText(b.Mass.Total(), style.System), Quiet: true}
}

// fixed says why the design's own row is not changed here.
func (t *variantsTable) fixed(row, column int) string {
	if row == 0 {
		return words.Say("batch.variant.design")
	}
	return ""
}

func sets(v batch.Variant, key string) bool {
	return slices.ContainsFunc(v.Patch, func(s batch.Setting) bool { return s.Key == key })
}

// with sets a key of a variant otherwise; asDesigned takes the setting away.
func with(v batch.Variant, key string, value book.Value, asDesigned bool) batch.Variant {
	v.Patch = slices.DeleteFunc(slices.Clone(v.Patch), func(s batch.Setting) bool { return s.Key == key })
	if !asDesigned {
		v.Patch = append(v.Patch, batch.Setting{Key: key, Value: value})
	}
	return v
}

func (t *variantsTable) take(row, column int, text string) string {
	v := t.all[row].Clone()
	name := v.Name
	switch column {
	case variantName:
		v.Name = strings.TrimSpace(text)
	case variantPaper:
		v = with(v, "paper", book.WordValue(text), text == asDesigned())
	case variantCloth:
		v = with(v, "covering", book.WordValue(text), text == asDesigned())
	case variantRibbon, variantElastic:
		p, _ := book.Lookup(extraKeys[column])
		text = strings.Trim(strings.TrimSpace(text), "–")
		value, err := p.Parse(text, t.page.window.session.System())
		if text != "" && err != nil {
			return wanted(err)
		}
		v = with(v, p.Key, value, text == "")
	case variantAsked:
		asked, problem := t.page.money(text)
		if problem != "" {
			return problem
		}
		v.Asked = asked
	}
	if _, refused := v.Patch.Apply(t.page.window.session.Decisions()); len(refused) > 0 {
		p, _ := book.Lookup(refused[0])
		return words.Say("batch.variant.refused", words.With{"what": p.Short()})
	}
	changed, err := t.page.batch().WithVariant(name, v)
	return t.page.set(changed, err, "variant", words.With{"name": v.Name})
}

// add puts a variant in, named after the design until it is set otherwise.
func (t *variantsTable) add() {
	t.put(batch.Variant{Name: t.freeName(words.Say("batch.variant.new"))})
}

// again puts a copy of the variant of the cursor in.
func (t *variantsTable) again() {
	v := t.at().Clone()
	v.Name = t.freeName(variantLabel(v.Name))
	t.put(v)
}

// fromDesign keeps the design as it stands as a variant, so that the design itself
// can be changed.
func (t *variantsTable) fromDesign() {
	d := t.page.window.session.Decisions()
	v := batch.Variant{Name: t.freeName(d.Design.Paper.Material + ", " + d.Design.Covering.Material)}
	for _, key := range []string{"paper", "covering", "ribbon.width", "ribbon", "elastic.width", "elastic"} {
		if p, known := book.Lookup(key); known {
			v.Patch = append(v.Patch, batch.Setting{Key: key, Value: p.Get(d)})
		}
	}
	t.put(v)
}

func (t *variantsTable) put(v batch.Variant) {
	changed, err := t.page.batch().WithVariant("\x00", v)
	if said := t.page.set(changed, err, "variantAdded", words.With{"name": v.Name}); said != "" {
		t.page.window.tell(words.Say("sheet.trouble"), said)
		return
	}
	t.page.show()
	t.table.Go(len(t.all)-1, variantName)
	t.page.window.win.Canvas().Focus(t.table.Body())
}

// freeName is a name that no variant has.
func (t *variantsTable) freeName(name string) string {
	_, taken := t.page.batch().FindVariant(name)
	for n := 2; taken; n++ {
		next := name + " " + strconv.Itoa(n)
		if _, taken = t.page.batch().FindVariant(next); !taken {
			return next
		}
	}
	return name
}

func (t *variantsTable) takeOut() {
	v := t.at()
	if v.Name == "" {
		return
	}
	changed, err := t.page.batch().WithoutVariant(v.Name)
	if said := t.page.set(changed, err, "variantRemoved", words.With{"name": v.Name}); said != "" {
		t.page.window.tell(words.Say("sheet.trouble"), said)
	}
}

// showOrders turns to the orders of the cursor's paper and cloth.
func (t *variantsTable) showOrders() {
	place := t.page.places()[t.at().Name]
	t.page.orders.of = &place
	t.page.turnTo("orders")
}

func moneyText(m measure.Money) string {
	if m.Currency == "" {
		return ""
	}
	return m.String()
}
