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
	"grainwise/model/price"
	"grainwise/ui/controls"
)

// pricesTable is what a book of each variant costs, what must be asked for it, and
// what the whole release comes to.
type pricesTable struct {
	page     *batchPage
	table    *controls.Grid
	box      *fyne.Container
	said     *controls.Label
	variants []price.Of
}

// The columns of the table of prices.
const (
	priceVariant = iota
	priceBooks
	priceMaterials
	priceTime
	priceOther
	priceCost
	priceWanted
	priceAsked
	priceFees
	priceProfit
	priceMargin
)

func newPricesTable(p *batchPage) *pricesTable {
	t := &pricesTable{page: p, said: controls.NewLabel(controls.QuietLabel, "")}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title = words.Say("batch.column." + name)
		return c
	}
	figure := func(name string, late int) controls.GridColumn {
		return column(name, controls.GridColumn{Width: 84, End: true, Read: true, Late: late})
	}
	asked := figure("asked", 0)
	asked.Read = false
	t.table = controls.NewGrid([]controls.GridColumn{
		priceVariant:   column("variant", controls.GridColumn{Width: 140, Grows: true, Read: true}),
		priceBooks:     column("books", controls.GridColumn{Width: 52, End: true, Read: true}),
		priceMaterials: figure("materials", 0),
		priceTime:      figure("time", 0),
		priceOther:     figure("overheads", 1),
		priceCost:      figure("cost", 0),
		priceWanted:    figure("wanted", 0),
		priceAsked:     asked,
		priceFees:      figure("fees", 2),
		priceProfit:    figure("profit", 0),
		priceMargin:    column("margin", controls.GridColumn{Width: 62, End: true, Read: true}),
	})
	g := t.table
	g.Cell, g.Books, g.OnTake, g.Fixed, g.OnChoose = t.cell, t.colours, t.take, t.fixed, p.chosen
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6,
		controls.NewButton(controls.Framed, words.Say("batch.pricing"), p.pricingSheet),
		controls.NewButton(controls.Framed, words.Say("batch.whatIf"), p.whatIfSheet), controls.Spring()))
	t.box = controls.Around(controls.Down(0, tools, controls.Inset(0, 2, 10, 10, t.said)), nil, nil, nil, container.NewStack(g.Object()))
	return t
}

func (t *pricesTable) id() string                { return "prices" }
func (t *pricesTable) object() fyne.CanvasObject { return t.box }
func (t *pricesTable) grid() *controls.Grid      { return t.table }
func (t *pricesTable) first() fyne.Focusable     { return t.table.Body() }

func (t *pricesTable) book() (string, bool) {
	row, _ := t.table.At()
	if row < len(t.variants) {
		return t.variants[row].ID, true
	}
	return t.page.mostOrdered()
}

// show brings the prices up to date.
func (t *pricesTable) show() {
	made := t.page.reckoning.made
	t.variants = made.release().Variants
	row, _ := t.table.At()
	t.table.SetCount(len(t.variants), row)
	t.said.SetText(t.page.releaseInShort())
}

// releaseInShort says what the whole release comes to.
func (p *batchPage) releaseInShort() string {
	made := p.reckoning.made
	r := made.release()
	switch trouble := made.trouble(batch.OfCosts); {
	case trouble != "":
		return trouble
	case len(r.Variants) == 0:
		return words.Say("batch.prices.none")
	}
	said := words.Say("batch.prices.text", words.With{"books": r.Books, "cost": r.Cost, "takings": r.Takings, "profit": r.Profit, "cash": r.Cash})
	if r.BreakEven > 0 {
		said += " " + words.Say("batch.prices.even", words.With{"books": r.BreakEven})
	}
	if unpriced := made.work.Unpriced(); len(unpriced) > 0 {
		said += " " + words.Say("batch.prices.without", words.With{"names": strings.Join(unpriced, ", ")})
	}
	return said
}

func (t *pricesTable) colours(row int) []color.NRGBA {
	if row >= len(t.variants) {
		return nil
	}
	return t.page.colours(t.variants[row].ID)
}

func (t *pricesTable) cell(row, column int) controls.GridCell {
	if row >= len(t.variants) {
		return controls.GridCell{}
	}
	v := t.variants[row]
	quiet := func(m measure.Money) controls.GridCell { return controls.GridCell{Text: plainMoney(m), Quiet: true} }
	switch column {
	case priceVariant:
		return controls.GridCell{Text: variantLabel(v.ID)}
	case priceBooks:
		return number(v.Books)
	case priceMaterials:
		return quiet(sumOf(v.Materials))
	case priceTime:
		return quiet(sumOf(v.Times))
	case priceOther:
		sum, _ := v.Overheads.Add(v.Packing)
		return quiet(sum)
	case priceCost:
		return controls.GridCell{Text: plainMoney(v.Cost)}
	case priceWanted:
		return controls.GridCell{Text: plainMoney(v.Wanted)}
	case priceAsked:
		asked, _ := t.page.batch().FindVariant(v.ID)
		return controls.GridCell{Text: plainMoney(asked.Asked)}
	case priceFees:
		return quiet(v.Fees)
	case priceProfit:
		return controls.GridCell{Text: plainMoney(v.Profit), Trouble: v.Profit.Minor < 0}
	}
	return controls.GridCell{Text: strconv.FormatFloat(100*v.Margin, 'f', 0, 64) + " %", Trouble: v.Margin < 0}
}

// plainMoney is an amount without its currency, which all of them share.
func plainMoney(m measure.Money) string {
	if m.Currency == "" {
		return ""
	}
	return strings.TrimSuffix(m.String(), " "+m.Currency)
}

func sumOf(lines []price.Line) measure.Money {
	sum := measure.Money{}
	for _, l := range lines {
		sum, _ = sum.Add(l.Cost)
	}
	return sum
}

func (t *pricesTable) fixed(row, column int) string {
	if t.variants[row].ID == "" {
		return words.Say("batch.prices.design")
	}
	return ""
}

func (t *pricesTable) take(row, column int, text string) string {
	asked, problem := t.page.money(text)
	if problem != "" {
		return problem
	}
	name := t.variants[row].ID
	v, _ := t.page.batch().FindVariant(name)
	v = v.Clone()
	v.Asked = asked
	changed, err := t.page.batch().WithVariant(name, v)
	return t.page.set(changed, err, "asked", words.With{"name": name})
}

// pricingSheet asks what a price is made of, besides materials and minutes.
func (p *batchPage) pricingSheet() {
	now := p.batch().Pricing
	money := func(key string, m measure.Money, at func(*batch.Pricing) *measure.Money) batchRow {
		return batchRow{label: words.Say("batch.pricing." + key), shown: moneyText(m), take: func(b *batch.Batch, text string) string {
			read, problem := p.money(text)
			*at(&b.Pricing) = read
			return checked(problem, b.Pricing.Validate)
		}}
	}
	share := func(key string, v float64, at func(*batch.Pricing) *float64) batchRow {
		return batchRow{label: words.Say("batch.pricing." + key), unit: "%", shown: percent(v), take: func(b *batch.Batch, text string) string {
			read, problem := readPercent(text)
			*at(&b.Pricing) = read
			return checked(problem, b.Pricing.Validate)
		}}
	}
	p.batchSheet(words.Say("batch.pricing.title"), words.Say("batch.pricing.text"), "pricing", []batchRow{
		money("rate", now.Rate, func(p *batch.Pricing) *measure.Money { return &p.Rate }),
		money("overheads", now.Overheads, func(p *batch.Pricing) *measure.Money { return &p.Overheads }),
		money("packing", now.Packing, func(p *batch.Pricing) *measure.Money { return &p.Packing }),
		share("feeShare", now.FeeShare, func(p *batch.Pricing) *float64 { return &p.FeeShare }),
		money("feeFixed", now.FeeFixed, func(p *batch.Pricing) *measure.Money { return &p.FeeFixed }),
		share("profit", now.Profit, func(p *batch.Pricing) *float64 { return &p.Profit }),
	})
}
