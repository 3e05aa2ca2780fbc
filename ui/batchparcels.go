package ui

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/post"
	"grainwise/ui/controls"
)

// parcelsTable is what is sent to whom: what it weighs packed, which band takes it,
// and how far that is from the next.
type parcelsTable struct {
	page   *batchPage
	table  *controls.Grid
	box    *fyne.Container
	said   *controls.Label
	empty  *fyne.Container
	list   *controls.Button
	packed []post.Packed
}

// The columns of the parcels.
const (
	parcelID = iota
	parcelTo
	parcelZone
	parcelBooks
	parcelMass
	parcelSize
	parcelBand
	parcelPrice
	parcelSpare
	parcelSlot
)

func newParcelsTable(p *batchPage) *parcelsTable {
	t := &parcelsTable{page: p, said: controls.NewLabel(controls.QuietLabel, "")}
	column := func(name string, c controls.GridColumn) controls.GridColumn {
		c.Title, c.Read = words.Say("batch.column."+name), true
		return c
	}
	t.table = controls.NewGrid([]controls.GridColumn{
		parcelID:    column("parcel", controls.GridColumn{Width: 58}),
		parcelTo:    column("customer", controls.GridColumn{Width: 110, Grows: true}),
		parcelZone:  column("zone", controls.GridColumn{Width: 56}),
		parcelBooks: column("books", controls.GridColumn{Width: 52, End: true}),
		parcelMass:  column("packed", controls.GridColumn{Width: 70, End: true}),
		parcelSize:  column("outer", controls.GridColumn{Width: 176, End: true, Late: 2}),
		parcelBand:  column("band", controls.GridColumn{Width: 92}),
		parcelPrice: column("postage", controls.GridColumn{Width: 80, End: true}),
		parcelSpare: column("spare", controls.GridColumn{Width: 72, End: true}),
		parcelSlot:  column("slot", controls.GridColumn{Width: 80, End: true, Late: 1}),
	})
	t.table.Cell, t.table.OnChoose = t.cell, t.chosen
	t.list = controls.NewButton(controls.Framed, words.Say("batch.packingList"), t.saveList)
	tools := controls.Inset(5, 3, 10, 10, controls.Across(6, controls.NewButton(controls.Framed, words.Say("batch.post"), p.postSheet), t.list, controls.Spring()))
	t.empty = controls.Inset(28, 0, 28, 28, controls.Down(10, controls.NewParagraph(words.Say("batch.parcels.none"))))
	t.box = controls.Around(controls.Down(0, tools, controls.Inset(0, 2, 10, 10, t.said)), nil, nil, nil, container.NewStack(t.table.Object(), t.empty))
	return t
}

func (t *parcelsTable) id() string                { return "parcels" }
func (t *parcelsTable) object() fyne.CanvasObject { return t.box }
func (t *parcelsTable) grid() *controls.Grid      { return t.table }
func (t *parcelsTable) first() fyne.Focusable     { return t.table.Body() }

func (t *parcelsTable) book() (string, bool) {
	row, _ := t.table.At()
	if row < len(t.packed) && len(t.packed[row].Parcel.Books) > 0 {
		return t.packed[row].Parcel.Books[0].Name, true
	}
	return t.page.mostOrdered()
}

// show brings the parcels up to date.
func (t *parcelsTable) show() {
	made := t.page.reckoning.made
	packed, sum, trouble := made.work.Packed, made.work.Postage, made.trouble(batch.OfPost)
	t.packed = packed
	row, _ := t.table.At()
	t.table.SetCount(len(packed), row)
	setVisible(t.empty, len(packed) == 0)
	setVisible(t.table.Object(), len(packed) > 0)
	ableTo(t.list, len(packed) > 0)
	switch {
	case trouble != "":
		t.said.SetText(trouble)
	case len(packed) == 0:
		t.said.SetText("")
	default:
		t.said.SetText(words.Say("batch.parcels.text", words.With{"parcels": len(packed), "sum": moneyText(sum), "near": t.near()}))
	}
}

// near counts the parcels of which something is tight.
func (t *parcelsTable) near() int {
	n := 0
	for _, p := range t.packed {
		if len(p.Findings) > 0 {
			n++
		}
	}
	return n
}

func (t *parcelsTable) cell(row, column int) controls.GridCell {
	if row >= len(t.packed) {
		return controls.GridCell{}
	}
	p, style := t.packed[row], t.page.style()
	switch column {
	case parcelID:
		return controls.GridCell{Text: p.Parcel.ID}
	case parcelTo:
		return controls.GridCell{Text: p.Parcel.To}
	case parcelZone:
		return controls.GridCell{Text: p.Parcel.Zone}
	case parcelBooks:
		return number(p.Books)
	case parcelMass:
		return controls.GridCell{Text: massText(p.Grams, style.System), Trouble: len(p.Findings) > 0}
	case parcelSize:
		return controls.GridCell{Text: p.Size.Text(measure.Style{System: style.System, Decimals: 1}), Quiet: true}
	case parcelBand:
		if p.Band == nil {
			return controls.GridCell{Text: words.Say("batch.parcels.noBand"), Trouble: true}
		}
		return controls.GridCell{Text: p.Band.Name}
	case parcelPrice:
		if p.Band == nil {
			return controls.GridCell{}
		}
		return controls.GridCell{Text: moneyText(p.Band.Price)}
	case parcelSpare:
		if p.Band == nil || p.Band.Most == 0 {
			return controls.GridCell{}
		}
		return controls.GridCell{Text: massText(p.Spare.Grams, style.System), Quiet: true}
	}
	return t.slot(p)
}

// chosen says in the status line what is tight about the cursor's parcel.
func (t *parcelsTable) chosen() {
	row, _ := t.table.At()
	var said []string
	if row < len(t.packed) {
		for _, f := range t.packed[row].Findings {
			said = append(said, f.Text)
		}
	}
	t.page.window.status.say(strings.Join(said, " "))
	t.page.chosen()
}

// slot is whether a parcel goes through the first of the slots, and with how much
// to spare.
func (t *parcelsTable) slot(p post.Packed) controls.GridCell {
	for _, s := range p.Slots {
		if !s.Passes {
			return controls.GridCell{Text: words.Say("batch.parcels.tooThick"), Trouble: true}
		}
		return controls.GridCell{Text: t.page.style().WithUnit(s.Spare), Quiet: true}
	}
	return controls.GridCell{}
}

// saveList writes the packing list and the labels of all parcels as one text.
func (t *parcelsTable) saveList() {
	packed := t.packed
	t.page.window.saveFile(".txt", func() ([]byte, error) {
		var b strings.Builder
		for i, p := range packed {
			for _, line := range p.List(i+1, len(packed), t.page.style()) {
				fmt.Fprintln(&b, line)
			}
			fmt.Fprintln(&b)
		}
		fmt.Fprintln(&b, words.Say("batch.labels"))
		for _, p := range packed {
			fmt.Fprintf(&b, "\n%s\n", strings.Join(p.Label(), "\n"))
		}
		return []byte(b.String()), nil
	})
}
