package ui

import (
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// needsTable is what the batch takes of every material, what is in stock of it and
// what is to be bought.
type needsTable struct {
	page  *batchPage
	table *controls.Grid
	box   *fyne.Container
	said  *controls.Label
	needs []batch.Need
}

// The columns of the table of needs.
const (
	needMaterial = iota
	needKind
	needNet
	needNeeded
	needStock
	needPack
	needBuy
	needCost
	needSure
	needSupplier
	needLot
	needInstead
)

func newNeedsTable(p *batchPage) *needsTable {
	t := &needsTable{page: p, said: controls.NewLabel(controls.QuietLabel, "")}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title = words.Say("batch.column." + name)
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		needMaterial: column("material", controls.GridColumn{Width: 150, Grows: true, Read: true}),
		needKind:     column("materialKind", controls.GridColumn{Width: 76, Read: true, Late: 1}),
		needNet:      column("net", controls.GridColumn{Width: 82, End: true, Read: true, Late: 3}),
		needNeeded:   column("needed", controls.GridColumn{Width: 82, End: true, Read: true}),
		needStock:    column("stock", controls.GridColumn{Width: 82, End: true}),
		needPack:     column("pack", controls.GridColumn{Width: 82, End: true}),
		needBuy:      column("buy", controls.GridColumn{Width: 82, End: true, Read: true}),
		needCost:     column("cost", controls.GridColumn{Width: 94, End: true, Read: true}),
		needSure:     column("sure", controls.GridColumn{Width: 116, Read: true}),
		needSupplier: column("supplier", controls.GridColumn{Width: 90, Grows: true, Read: true, Late: 4}),
		needLot:      column("lot", controls.GridColumn{Width: 70, Read: true, Late: 5}),
		needInstead:  column("instead", controls.GridColumn{Width: 104, Grows: true, Late: 2}),
	})
	t.table.Cell, t.table.OnTake, t.table.Fixed, t.table.OnChoose = t.cell, t.take, t.fixed, p.chosen
	spare := controls.NewButton(controls.Framed, words.Say("batch.buying"), p.buyingSheet)
	tools := controls.Inset(5, 5, 10, 10, controls.Across(6, spare, controls.Spring()))
	t.box = controls.Around(controls.Down(0, tools, controls.Inset(0, 2, 10, 10, t.said)), nil, nil, nil, container.NewStack(t.table.Object()))
	return t
}

func (t *needsTable) id() string                { return "needs" }
func (t *needsTable) object() fyne.CanvasObject { return t.box }
func (t *needsTable) grid() *controls.Grid      { return t.table }
func (t *needsTable) first() fyne.Focusable     { return t.table.Body() }
func (t *needsTable) book() (string, bool)      { return t.page.mostOrdered() }

// show brings the rows up to date.
func (t *needsTable) show() {
	t.needs = t.page.reckoning.made.work.Needs
	row, _ := t.table.At()
	t.table.SetCount(len(t.needs), row)
	t.said.SetText(t.page.buyingText())
}

func (t *needsTable) cell(row, column int) controls.GridCell {
	if row >= len(t.needs) {
		return controls.GridCell{}
	}
	n := t.needs[row]
	text := func(a batch.Amount) controls.GridCell {
		said := t.page.amount(n, a)
		return controls.GridCell{Text: said, Quiet: said == "–"}
	}
	switch column {
	case needMaterial:
		return controls.GridCell{Text: n.Material}
	case needKind:
		return controls.GridCell{Text: kindText(n.Kind), Quiet: true}
	case needNet:
		return text(n.Net)
	case needNeeded:
		return text(n.Needed)
	case needStock:
		return text(n.OnHand)
	case needPack:
		return text(t.sold(n))
	case needBuy:
		return text(n.ToBuy)
	case needCost:
		return controls.GridCell{Text: moneyText(n.Cost)}
	case needSure:
		said, trouble := t.page.sure(n)
		return controls.GridCell{Text: said, Quiet: !trouble, Trouble: trouble}
	case needSupplier:
		return controls.GridCell{Text: n.Stock.Supplier}
	case needLot:
		return controls.GridCell{Text: n.Stock.Lot}
	}
	return controls.GridCell{Text: n.Substitute}
}

// sold is what is sold together: a pack, or of a roll the shortest length.
func (t *needsTable) sold(n batch.Need) batch.Amount {
	h := holdingOf(t.page.batch(), n)
	return batch.Amount{Sheets: h.Pack, Length: h.Least}
}

func holdingOf(b batch.Batch, n batch.Need) batch.Holding {
	for _, h := range b.Stock {
		if h.Kind == n.Kind && h.Material == n.Material {
			return h
		}
	}
	return batch.Holding{Kind: n.Kind, Material: n.Material}
}

func (t *needsTable) fixed(row, column int) string {
	if column == needPack && t.needs[row].Kind == stock.Adhesive {
		return words.Say("batch.needs.noPack")
	}
	return ""
}

func (t *needsTable) take(row, column int, text string) string {
	n := t.needs[row]
	h := holdingOf(t.page.batch(), n)
	text = strings.Trim(strings.TrimSpace(text), "–")
	problem := ""
	switch column {
	case needStock:
		problem = t.page.readAmount(n, text, &h.Sheets, &h.Length, &h.Grams)
	case needPack:
		problem = t.page.readAmount(n, text, &h.Pack, &h.Least, new(float64))
	case needInstead:
		h.Substitute = text
	}
	if problem != "" {
		return problem
	}
	if err := h.Validate(); err != nil {
		return faultText(err)
	}
	b := t.page.batch()
	b.Stock = slices.DeleteFunc(slices.Clone(b.Stock), func(o batch.Holding) bool { return o.Kind == h.Kind && o.Material == h.Material })
	if h != (batch.Holding{Kind: h.Kind, Material: h.Material}) {
		b.Stock = append(b.Stock, h)
	}
	return t.page.set(b, nil, "stock", words.With{"name": n.Material})
}

// byLength says whether a material is counted by its length.
func byLength(n batch.Need) bool { return n.Stock.RollWidth > 0 || n.Kind == stock.Thread }

// amount is so much of a material in its own unit; a dash for nothing.
func (p *batchPage) amount(n batch.Need, a batch.Amount) string {
	system := p.window.session.System()
	switch {
	case a.IsZero():
		return "–"
	case n.Kind == stock.Adhesive:
		return massText(a.Grams, system)
	case byLength(n):
		return runText(a.Length, system)
	}
	return strconv.FormatInt(a.Sheets, 10)
}

// inchesOfYard are as cloth is sold by.
const inchesOfYard = 36

// runText is a length of cloth or thread: metres, or yards.
func runText(l measure.Length, system measure.System) string {
	if system == measure.Imperial {
		return strconv.FormatFloat(l.Inches()/inchesOfYard, 'f', 2, 64) + " yd"
	}
	return strconv.FormatFloat(l.MM()/1000, 'f', 2, 64) + " m"
}

// readAmount reads what is typed as an amount of a material: whole sheets, a
// length (bare figures are metres, or yards), or grams.
func (p *batchPage) readAmount(n batch.Need, text string, sheets *int64, length *measure.Length, grams *float64) string {
	*sheets, *length, *grams = 0, 0, 0
	switch {
	case text == "":
	case n.Kind == stock.Adhesive:
		v, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(text, "g")), 64)
		if err != nil {
			return words.Say("batch.want.grams")
		}
		*grams = v
	case byLength(n):
		return p.readRun(text, length)
	default:
		v, err := strconv.ParseInt(text, 10, 64)
		if err != nil {
			return words.Say("batch.want.sheets")
		}
		*sheets = v
	}
	return ""
}

func (p *batchPage) readRun(text string, length *measure.Length) string {
	system := p.window.session.System()
	bare, yards := strings.CutSuffix(strings.Replace(text, ",", ".", 1), "yd")
	if v, err := strconv.ParseFloat(strings.TrimSpace(bare), 64); err == nil {
		*length = measure.MM(v * 1000)
		if yards || system == measure.Imperial {
			*length = measure.Inches(v * inchesOfYard)
		}
		return ""
	}
	l, err := measure.ParseLength(text, system)
	if err != nil {
		return sentence(err.Error())
	}
	*length = l
	return ""
}

// sure says how sure a need is: proved, or what is missing.
func (p *batchPage) sure(n batch.Need) (said string, trouble bool) {
	switch {
	case !p.reckoning.made.whole:
		return words.Say("batch.sure.pending"), false
	case n.Lack == batch.NoPlan:
		return words.Say("batch.sure.noPlan"), true
	case n.Cutting != nil && !n.Cutting.Plan.Proved():
		return words.Say("batch.sure.near"), false
	case n.Lack == batch.NoPrice && !n.ToBuy.IsZero():
		return words.Say("batch.sure.noPrice"), false
	case n.Cutting != nil:
		return words.Say("batch.sure.proved"), false
	}
	return "", false
}

// mostOrdered is the variant of which most books are ordered.
func (p *batchPage) mostOrdered() (string, bool) {
	books, best := map[string]int{}, ""
	for _, o := range p.batch().Orders {
		books[o.Variant] += o.Count
		if books[o.Variant] > books[best] || best == o.Variant {
			best = o.Variant
		}
	}
	return best, true
}

// kindText is a kind of material in words.
func kindText(kind stock.Kind) string { return words.Say("lists.kind." + string(kind)) }
