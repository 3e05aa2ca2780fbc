package ui

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// printingColumn is how the papers are printed, what is wrong with that, and the
// two ways out: to the viewer, and into a folder.
type printingColumn struct {
	page   *papersPage
	scroll *container.Scroll
	list   *fyne.Container

	format, hand  *controls.ChoiceField
	bars          [4]*printingField // across and down, plain; the same corrected
	again         *fyne.Container   // the corrected ones, once there is a correction
	students, dpi *printingField
	pages         *controls.Label
	found         *fyne.Container
	said          string // what is in found
	pictures      *controls.Tick
	open, save    *controls.Button
	measured      *controls.Label // which bars
	why           *controls.Link
	further       *controls.Button
}

// printingField is a value of the column with what is wrong with it under it.
type printingField struct {
	value   *controls.ValueField
	trouble *controls.Paragraph
	row     *fyne.Container
}

// Widths of the column's rows at its narrowest.
const (
	printingLabel = float32(146)
	printingValue = float32(96)
)

func newPrintingColumn(p *papersPage) *printingColumn {
	c := &printingColumn{page: p, found: controls.Down(0), again: controls.Down(0)}
	w := p.window
	c.format, c.hand = controls.NewChoiceField(), controls.NewChoiceField()
	c.format.OnChoose = func(i int) { w.setPrinting(func(to *project.Printing) { to.Page = project.Pages()[i] }) }
	c.hand.OnChoose = func(i int) { w.setPrinting(func(to *project.Printing) { to.Hand = project.Hands()[i] }) }
	for i := range c.bars {
		c.bars[i] = c.barField(i)
	}
	c.students = c.wholeField("papers.students", 1, project.MostStudents, project.Printing.Class, func(to *project.Printing, n int) { to.Students = n })
	c.dpi = c.wholeField("papers.dpi", project.LeastDPI, project.MostDPI, project.Printing.Resolution, func(to *project.Printing, n int) { to.DPI = n })
	c.pages = controls.NewEndLabel(controls.PlainLabel, "")
	c.pictures = controls.NewTick(nil, func(on bool) { p.pictures = on })
	c.open = controls.NewButton(controls.Solid, words.Say("papers.open"), p.output.open)
	c.save = controls.NewButton(controls.Framed, words.Say("papers.save"), p.output.save)
	c.lay()
	return c
}

func (c *printingColumn) lay() {
	c.measured = controls.NewLabel(controls.PlainLabel, words.Say("papers.bars.mm"))
	c.why = controls.NewLink(words.Say("papers.bars.why"), func() { c.page.window.tell(words.Say("papers.bars.whyTitle"), words.Say("papers.bars.whyText")) })
	c.further = controls.NewButton(controls.Framed, words.Say("papers.further"), c.correctFurther)
	for _, o := range []fyne.CanvasObject{
		controls.Inset(6, 0, 10, 10, controls.NewParagraph(words.Say("papers.bars.again"))), c.bars[2].row, c.bars[3].row,
		controls.Inset(4, 2, 10, 10, controls.Across(0, c.further, controls.Spring())),
	} {
		c.again.Add(o)
	}
	c.list = controls.Down(0,
		controls.Inset(8, 4, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("papers.printing"))),
		c.row(controls.NewLabel(controls.PlainLabel, words.Say("papers.pages.ticked")), c.pages),
		controls.Inset(6, 4, 10, 10, controls.Across(8, c.open, c.save, controls.Spring())),
		c.row(controls.NewLabel(controls.PlainLabel, words.Say("papers.pictures")), controls.Across(0, controls.Spring(), c.pictures)),
		c.dpi.row,
		c.found,
		controls.Inset(12, 2, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("papers.printer"))),
		c.row(controls.NewLabel(controls.PlainLabel, words.Say("papers.format")), c.format),
		controls.Inset(4, 0, 10, 10, controls.Across(8, c.measured, controls.Spring(), c.why)),
		c.bars[0].row, c.bars[1].row, c.again,
		controls.Inset(12, 2, 10, 10, controls.NewLabel(controls.HeadLabel, words.Say("papers.maker"))),
		c.row(controls.NewLabel(controls.PlainLabel, words.Say("papers.hand")), c.hand),
		c.students.row,
		controls.Gap(1, 12))
	c.scroll = container.NewVScroll(c.list)
	c.follow()
}

// follow scrolls what takes the focus into sight.
func (c *printingColumn) follow() {
	to := func(o fyne.CanvasObject) func(bool) { return whenFocused(func() { bringIn(c.scroll, o) }) }
	for _, f := range append(c.bars[:], c.students, c.dpi) {
		f.value.OnFocus = to(f.value)
	}
	c.format.OnFocus, c.hand.OnFocus, c.open.OnFocus, c.save.OnFocus = to(c.format), to(c.hand), to(c.open), to(c.save)
	c.why.OnFocus, c.further.OnFocus = to(c.why), to(c.further)
}

// row is a label with a field at the column's right.
func (c *printingColumn) row(label, field fyne.CanvasObject) *fyne.Container {
	return controls.Inset(1, 1, 10, 10, controls.Across(4, controls.Fixed(printingLabel, 28, label), controls.Spring(), controls.Fixed(printingValue, 28, field)))
}

// field is a value that is read by take.
func (c *printingColumn) field(label string, take func(text string) error, step func(n int)) *printingField {
	f := &printingField{value: controls.NewValueField(c.page.window.tips), trouble: controls.NewParagraph("")}
	f.value.OnTake = func(text string) string {
		if err := take(strings.TrimSpace(text)); err != nil {
			return sentence(err.Error())
		}
		return ""
	}
	f.value.OnStep = step
	trouble := controls.Inset(0, 4, 10, 10, f.trouble)
	trouble.Hide()
	f.value.OnProblem = func(text string) {
		f.trouble.SetText(text)
		setVisible(trouble, text != "")
		f.row.Refresh()
		c.list.Refresh()
	}
	f.row = controls.Down(0, c.row(controls.NewLabel(controls.PlainLabel, words.Say(label)), f.value), trouble)
	return f
}

func (c *printingColumn) wholeField(label string, least, most int, get func(project.Printing) int, set func(*project.Printing, int)) *printingField {
	w := c.page.window
	take := func(n int) { w.setPrinting(func(to *project.Printing) { set(to, n) }) }
	return c.field(label, func(text string) error {
		n, err := project.ParseWhole(text, least, most)
		if err == nil {
			take(n)
		}
		return err
	}, func(n int) { take(min(max(get(w.session.Studio().Printing)+n, least), most)) })
}

// barAt is one of the four measures of the check bars.
func barAt(p *check.Printer, i int) *measure.Length {
	return [...]*measure.Length{&p.Plain.Across, &p.Plain.Down, &p.Again.Across, &p.Again.Down}[i]
}

func (c *printingColumn) barField(i int) *printingField {
	w := c.page.window
	take := func(bar measure.Length) {
		w.setPrinting(func(to *project.Printing) {
			if *barAt(&to.Bars, i) != bar && i < 2 {
				to.Bars.Again = check.Bars{} // it was measured on a page corrected otherwise
			}
			*barAt(&to.Bars, i) = bar
		})
	}
	label := [...]string{"papers.bars.across", "papers.bars.down"}[i%2]
	return c.field(label, func(text string) error {
		now := w.session.Studio().Printing.Bars
		if text == c.barText(*barAt(&now, i)) {
			return nil
		}
		bar, err := project.ParseBar(text, w.session.System())
		if err == nil {
			take(bar)
		}
		return err
	}, func(n int) {
		now := w.session.Studio().Printing.Bars
		bar := *barAt(&now, i)
		if bar == 0 {
			bar = check.Bar
		}
		take(min(max(bar+measure.Length(n)*barStep, check.LeastBar), check.MostBar))
	})
}

// barStep is what a good rule shows.
const barStep = measure.Millimetre / 10

// barText is a measured bar as it is shown, empty where it was not measured.
func (c *printingColumn) barText(bar measure.Length) string {
	if bar == 0 {
		return ""
	}
	style := measure.Style{System: c.page.window.session.System(), Decimals: 2}
	if style.System == measure.Imperial {
		style.Decimals = 3
	}
	return style.Format(project.BarShown(bar, style.System))
}

// correctFurther takes what a corrected page measured into the correction.
func (c *printingColumn) correctFurther() {
	w := c.page.window
	w.setPrinting(func(to *project.Printing) {
		if further := to.Bars.Further(); further.Valid() {
			to.Bars = further
		} else {
			w.tell(words.Say("papers.further"), words.Say("papers.furtherNot"))
		}
	})
}

// show brings the column up to date.
func (c *printingColumn) show() {
	s := c.page.window.session
	now := s.Studio().Printing
	c.format.Set(labels("papers.format.", project.Pages()), indexOf(project.Pages(), now.PageIn(s.System())), now.Page == "")
	hand := project.Hands()[0]
	if now.Left() {
		hand = project.Hands()[1]
	}
	c.hand.Set(labels("papers.hand.", project.Hands()), indexOf(project.Hands(), hand), now.Hand == "")
	c.measured.SetText(words.Say("papers.bars." + s.System().String()))
	for i, f := range c.bars {
		f.value.SetState(controls.ValueState{Text: c.barText(*barAt(&now.Bars, i)), Unit: s.System().Label(), Bold: true})
	}
	c.students.value.SetState(controls.ValueState{Text: strconv.Itoa(now.Class()), Bold: now.Students > 0, Quiet: now.Students == 0})
	c.dpi.value.SetState(controls.ValueState{Text: strconv.Itoa(now.Resolution()), Bold: now.DPI > 0, Quiet: now.DPI == 0})
	if setVisible(c.again, now.Bars.Corrected()) {
		c.list.Refresh()
	}
	count, whole := c.page.pagesTicked()
	text := strconv.Itoa(count)
	if !whole {
		text = "…"
	}
	c.pages.SetText(text)
	for _, b := range []*controls.Button{c.open, c.save} {
		if len(c.page.ticked()) > 0 {
			b.Enable()
		} else {
			b.Disable()
		}
	}
	c.showFound(now)
}

// showFound says what concerns printing: of the printer, of the batch, and of the
// design as a whole.
func (c *printingColumn) showFound(now project.Printing) {
	w := c.page.window
	var list []fyne.CanvasObject
	style := measure.Style{Decimals: 2} // of the bar of 100 mm, in its unit
	for _, f := range check.ScaleOff(now.Bars) {
		list = append(list, levelled(f.Level, f.Text(style)), paragraph(f.Why(style)))
	}
	measured := w.measuredFirst()
	list = append(list, measured...)
	switch stops := len(w.stops()) - len(measured); {
	case stops == 1:
		list = append(list, levelled(check.Stop, words.Say("papers.stop")))
	case stops > 1:
		list = append(list, levelled(check.Stop, words.Say("papers.stops", words.With{"count": stops})))
	}
	if m := now.Bars.Plain; m.Across == 0 && m.Down == 0 {
		list = append(list, levelled(check.Note, words.Say("papers.unmeasured")))
	}
	if lacking := c.page.input().Lacking(); lacking != "" {
		list = append(list, levelled(check.Note, words.Say("papers.lacking", words.With{"letters": lacking})))
	}
	said := fmt.Sprint(texts(list))
	if said == c.said {
		return
	}
	c.said, c.found.Objects = said, list
	c.found.Refresh()
	c.list.Refresh()
}

func labels(stem string, keys []string) []string {
	var all []string
	for _, k := range keys {
		all = append(all, words.Say(stem+k))
	}
	return all
}

func indexOf(all []string, one string) int {
	for i, k := range all {
		if k == one {
			return i
		}
	}
	return -1
}
