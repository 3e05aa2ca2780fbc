package ui

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/compare"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// comparedList stands in the place of the list to cut while a design is pinned:
// what of it differs from the live one, pinned at the left, live at the right.
type comparedList struct {
	session *session.Session
	pins    *pins
	head    *controls.GroupHead
	buttons *fyne.Container
	rows    *fyne.Container
	list    *fyne.Container
	folded  bool
	shown   string // what the rows say, to know when they are others
}

func newComparedList(w *Window) *comparedList {
	c := &comparedList{session: w.session, pins: &w.pins, head: controls.NewGroupHead(""), rows: controls.Down(0)}
	c.head.OnTapped = func() { c.folded = !c.folded; c.show() }
	c.buttons = controls.NewFlow(6,
		controls.NewButton(controls.Framed, words.Say("pins.others"), w.openCompare),
		controls.NewButton(controls.Framed, words.Say("pins.print"), w.comparePrinted),
		controls.NewButton(controls.Framed, words.Say("pins.remove"), func() { w.pins.remove(w.pins.at) }))
	line := controls.NewHairline()
	below := controls.Down(0, controls.Inset(4, 6, 10, 10, c.buttons), c.rows)
	scroll := container.NewVScroll(below)
	c.list = container.New(&cutLayout{line, c.head, below, scroll}, line, c.head, scroll)
	return c
}

// show brings the rows up to date; without a pinned design there are none.
func (c *comparedList) show() {
	pinned := c.pins.ghost()
	setVisible(c.list, pinned != nil)
	if pinned == nil {
		return
	}
	designs := []compare.Design{*pinned, {Book: c.session.Book(), Findings: c.session.Findings()}}
	all := compare.Rows(designs, c.session.System())
	rows, told := compare.Differing(all), compare.Findings(designs, c.session.System())
	c.head.SetState(controls.HeadState{
		Title: words.Say("pins.against", words.With{"name": pinned.Name}), Open: !c.folded, Summary: words.Say("pins.differ", words.With{"count": len(rows)}),
	})
	if said := fmt.Sprint(pinned.Name, c.folded, rows, told); said != c.shown {
		c.shown = said
		c.fill(rows, told, len(all))
	}
}

func (c *comparedList) fill(rows []compare.Row, told []compare.Told, of int) {
	c.rows.Objects = nil
	if !c.folded {
		for _, r := range rows {
			c.rows.Add(differing(r))
		}
		c.rows.Add(controls.Inset(6, 2, 10, 10, controls.NewLabel(controls.QuietLabel, words.Say("pins.same", words.With{"count": of - len(rows)}))))
		for _, f := range told {
			c.rows.Add(controls.Inset(4, 2, 10, 10, controls.NewParagraph(warned(f))))
		}
	}
	setVisible(c.buttons, !c.folded)
	c.rows.Refresh()
	c.list.Refresh()
}

// differing is one row: its name over both values.
func differing(r compare.Row) fyne.CanvasObject {
	was, now := controls.NewLabel(controls.QuietLabel, r.Values[0]), controls.NewEndLabel(controls.PlainLabel, r.Values[1])
	values := controls.AcrossGiving(8, []fyne.CanvasObject{was}, was, controls.Spring(), now)
	return controls.Down(0, controls.Inset(4, 4, 10, 10, controls.Down(0, controls.NewLabel(controls.QuietLabel, r.Name), values)), controls.NewHairline())
}

// warned is a finding that only one of the two has.
func warned(f compare.Told) string {
	key := "pins.onlyNow"
	if f.In[0] {
		key = "pins.onlyPinned"
	}
	return words.Say(key, words.With{"level": f.Level.Label(), "text": f.Text})
}
