package ui

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// recordsTable is what closed batches came to, book by book, beside what was
// predicted.
type recordsTable struct {
	page         *batchPage
	table        *controls.Grid
	box          *fyne.Container
	which        *controls.ChoiceField
	said         [2]*controls.Label
	again, learn *controls.Button
	empty        *fyne.Container
	at           int // the record on show, from the newest
	record       batch.Record
}

// The columns of a record's books.
const (
	recordOrder = iota
	recordCustomer
	recordVariant
	recordReckoned
	recordFound
	recordForeReckoned
	recordFore
	recordPiece
	recordMinutes
	recordPrice
	recordFault
	recordReason
)

func newRecordsTable(p *batchPage) *recordsTable {
	t := &recordsTable{page: p, which: controls.NewChoiceField()}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title, c.Read = words.Say("batch.column."+name), true
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		recordOrder:        column("order", controls.GridColumn{Width: 58}),
		recordCustomer:     column("customer", controls.GridColumn{Width: 110, Grows: true}),
		recordVariant:      column("variant", controls.GridColumn{Width: 130, Grows: true}),
		recordReckoned:     column("reckoned", controls.GridColumn{Width: 70, End: true}),
		recordFound:        column("found", controls.GridColumn{Width: 82, End: true}),
		recordForeReckoned: column("foreReckoned", controls.GridColumn{Width: 92, End: true, Late: 2}),
		recordFore:         column("fore", controls.GridColumn{Width: 76, End: true, Late: 2}),
		recordPiece:        column("piece", controls.GridColumn{Width: 78, End: true}),
		recordMinutes:      column("minutes", controls.GridColumn{Width: 64, End: true}),
		recordPrice:        column("sold", controls.GridColumn{Width: 84, End: true}),
		recordFault:        column("fault", controls.GridColumn{Width: 100, Grows: true, Late: 1}),
		recordReason:       column("reason", controls.GridColumn{Width: 100, Grows: true, Late: 3}),
	})
	t.table.Cell, t.table.OnChoose = t.cell, p.chosen
	t.which.OnChoose = func(i int) { t.at = i; p.show() }
	t.again = controls.NewButton(controls.Framed, words.Say("batch.again"), t.makeAgain)
	t.learn = controls.NewButton(controls.Framed, words.Say("batch.learn"), t.takeOver)
	closing := controls.NewButton(controls.Framed, words.Say("batch.close"), p.closeSheet)
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6, closing, controls.Gap(4, 1), controls.Fixed(230, 28, t.which), t.again, t.learn, controls.Spring()))
	heads := controls.Down(0, tools)
	for i := range t.said {
		t.said[i] = controls.NewLabel(controls.QuietLabel, "")
		heads.Add(controls.Inset(0, 2, 10, 10, t.said[i]))
	}
	t.empty = controls.Inset(28, 0, 28, 28, controls.Down(10, controls.NewParagraph(words.Say("batch.records.none"))))
	t.box = controls.Around(heads, nil, nil, nil, container.NewStack(t.table.Object(), t.empty))
	return t
}

func (t *recordsTable) id() string                { return "records" }
func (t *recordsTable) object() fyne.CanvasObject { return t.box }
func (t *recordsTable) grid() *controls.Grid      { return t.table }
func (t *recordsTable) first() fyne.Focusable     { return t.table.Body() }

func (t *recordsTable) book() (string, bool) {
	row, _ := t.table.At()
	if row < len(t.record.Books) {
		return t.record.Books[row].Variant, true
	}
	return t.page.mostOrdered()
}

// show brings the record on show up to date, the newest first.
func (t *recordsTable) show() {
	all := slices.Clone(t.page.batch().Records)
	slices.Reverse(all)
	var names []string
	for _, r := range all {
		names = append(names, words.Say("batch.record.name", words.With{"name": r.Name, "closed": r.Closed}))
	}
	t.at = max(0, min(t.at, len(all)-1))
	t.which.Set(names, t.at, false)
	t.record = batch.Record{}
	if len(all) > 0 {
		t.record = all[t.at]
	}
	for _, b := range []*controls.Button{t.again, t.learn} {
		ableTo(b, len(all) > 0)
	}
	ableTo(t.learn, len(t.record.Found) > 0)
	if len(all) > 0 {
		t.which.Enable()
	} else {
		t.which.Disable()
	}
	row, _ := t.table.At()
	t.table.SetCount(len(t.record.Books), row)
	setVisible(t.empty, len(all) == 0)
	setVisible(t.table.Object(), len(all) > 0)
	t.said[0].SetText(t.sums())
	t.said[1].SetText(t.found())
}

// sums compares what was predicted and what came of it.
func (t *recordsTable) sums() string {
	r := t.record
	if r.Name == "" {
		return ""
	}
	cost, waste, cut := measure.Money{}, 0.0, 0
	for _, m := range r.Materials {
		cost, _ = cost.Add(m.Cost)
		if m.Waste > 0 {
			waste, cut = waste+m.Waste, cut+1
		}
	}
	worked := words.Say("batch.record.unnoted")
	if r.Worked > 0 {
		worked = hoursText(r.Worked)
	}
	return words.Say("batch.record.sums", words.With{
		"books": len(r.Books), "worked": worked, "predicted": hoursText(r.Minutes), "cost": moneyText(cost), "waste": fmt.Sprintf("%.0f", 100*waste/float64(max(1, cut)))})
}

// found is what the blocks say of their papers.
func (t *recordsTable) found() string {
	var all []string
	for _, c := range t.record.Found {
		said := words.Say("batch.record.found", words.With{"paper": c.Paper, "blocks": c.Blocks, "crush": strconv.FormatFloat(c.Crush, 'f', 2, 64)})
		if c.Thickness > 0 {
			said += words.Say("batch.record.leaf", words.With{"leaf": measure.Style{System: t.page.window.session.System(), Decimals: 3}.WithUnit(c.Thickness)})
		}
		all = append(all, said)
	}
	return strings.Join(all, "; ")
}

func (t *recordsTable) cell(row, column int) controls.GridCell {
	if row >= len(t.record.Books) {
		return controls.GridCell{}
	}
	b, style := t.record.Books[row], t.page.style()
	size := func(l measure.Length, quiet bool) controls.GridCell {
		if l == 0 {
			return controls.GridCell{Text: "–", Quiet: true}
		}
		return controls.GridCell{Text: style.Format(l), Quiet: quiet}
	}
	switch column {
	case recordOrder:
		if b.Copy > 1 {
			return controls.GridCell{Text: b.Order + "/" + strconv.Itoa(b.Copy)}
		}
		return controls.GridCell{Text: b.Order}
	case recordCustomer:
		return controls.GridCell{Text: b.Customer}
	case recordVariant:
		return controls.GridCell{Text: variantLabel(b.Variant), Quiet: true}
	case recordReckoned:
		return size(b.Predicted, true)
	case recordFound:
		return size(b.Spine, false)
	case recordForeReckoned:
		return size(b.ForePredict, true)
	case recordFore:
		return size(b.ForeEdge, false)
	case recordPiece:
		return size(b.SpinePiece, true)
	case recordMinutes:
		return number(b.Minutes)
	case recordPrice:
		return controls.GridCell{Text: moneyText(b.Price)}
	case recordFault:
		return controls.GridCell{Text: b.Fault, Trouble: b.Fault != ""}
	}
	return controls.GridCell{Text: b.Reason}
}

// closeSheet asks what the batch is called and how long it took, and freezes it.
func (p *batchPage) closeSheet() {
	made := p.reckoning.made
	if !made.whole || len(made.work.Batch.Orders) == 0 {
		p.window.tell(words.Say("batch.close.title"), words.Say("batch.close.notYet"))
		return
	}
	c := batch.Closing{}
	rows := []batchRow{
		{label: words.Say("batch.close.name"), shown: p.window.session.Project().Name, take: func(_ *batch.Batch, text string) string {
			c.Name = text
			if text == "" {
				return words.Say("batch.close.noName")
			}
			return ""
		}},
		{label: words.Say("batch.close.on"), shown: p.today().String(), unit: words.Say("batch.unit.date"), take: func(_ *batch.Batch, text string) string {
			if text == "" {
				return words.Say("measure.want.date", words.With{"text": text})
			}
			return readDate(text, &c.On)
		}},
		{label: words.Say("batch.close.worked"), unit: words.Say("batch.unit.minutesNoted"), take: func(b *batch.Batch, text string) string {
			problem := wholeText(text, &c.Worked)
			if problem != "" {
				return problem
			}
			closed, err := made.work.Close(c)
			if err != nil {
				return faultText(err)
			}
			*b = closed
			return ""
		}},
	}
	p.batchSheet(words.Say("batch.close.title"), words.Say("batch.close.text"), "closed", rows)
}

// makeAgain begins the batch anew from a record, with what was measured then.
func (t *recordsTable) makeAgain() {
	w := t.page.window
	p := w.session.Project()
	d, shelf, b := batch.Again(p.Decisions, p.Shelf, p.Batch, t.record)
	w.session.Remake(words.Say("batch.step.again", words.With{"name": t.record.Name}), d, shelf, b)
	t.page.turnTo("orders")
}

// takeOver takes what the blocks said over into papers and thread.
func (t *recordsTable) takeOver() {
	w := t.page.window
	p := w.session.Project()
	d, shelf, b := batch.Calibrated(p.Decisions, p.Shelf, p.Batch, t.record.Found)
	w.session.Remake(words.Say("batch.step.learned", words.With{"name": t.record.Name}), d, shelf, b)
}
