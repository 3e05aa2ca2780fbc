package ui

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/check"
	"grainwise/model/lists"
	"grainwise/ui/controls"
)

// batchSummary says what the batch comes to: what is to be bought, which spines go
// together, and what is to be looked at.
type batchSummary struct {
	page        *batchPage
	list        *fyne.Container
	scroll      *container.Scroll
	stop, again *controls.Button
	said        string
}

func newBatchSummary(p *batchPage) *batchSummary {
	s := &batchSummary{page: p, list: controls.Down(0)}
	s.scroll = container.NewVScroll(s.list)
	s.stop = controls.NewButton(controls.Framed, words.Say("batch.stop"), p.reckoning.stop)
	s.again = controls.NewButton(controls.Framed, words.Say("batch.goOn"), p.reckoning.resume)
	return s
}

// show brings the summary up to date.
func (s *batchSummary) show() {
	objects := s.objects()
	said := fmt.Sprint(texts(objects), s.page.reckoning.busy(), s.page.reckoning.stopped, s.page.found.said())
	if said == s.said {
		return
	}
	s.said = said
	s.list.Objects = objects
	s.list.Refresh()
	s.scroll.Refresh()
}

func (s *batchSummary) objects() []fyne.CanvasObject {
	list := []fyne.CanvasObject{bandHead(words.Say("batch.summary"))}
	list = append(list, paragraph(s.books()))
	cards := s.page.found.objects()
	list = append(list, s.warnings()...)
	if plan := s.page.reckoning.made.plan(); len(plan.Bars) > 0 {
		list = append(list, paragraph(words.Say("batch.summary.plan", words.With{"promise": dayText(plan.Promise), "end": dayText(plan.End.Day)})))
	}
	list = append(list, bandHead(words.Say("batch.toBuy")))
	list = append(list, s.progress()...)
	list = append(list, s.needs()...)
	list = append(list, bandHead(words.Say("batch.spinePieces")))
	list = append(list, s.spines()...)
	if len(cards) > 0 {
		list = append(append(list, bandHead(words.Say("batch.findings"))), cards...)
	}
	return list
}

// bandHead is the head of a part of a column.
func bandHead(text string) fyne.CanvasObject {
	return controls.Inset(10, 4, 10, 10, controls.NewLabel(controls.HeadLabel, text))
}

// books counts books, orders and parcels.
func (s *batchSummary) books() string {
	b := s.page.batch()
	if len(b.Orders) == 0 {
		return words.Say("batch.summary.none", words.With{"copies": s.page.window.session.Book().Resolved.Copies})
	}
	books, parcels := 0, map[string]bool{}
	for _, o := range b.Orders {
		books += o.Count
		if o.Parcel != "" {
			parcels[o.Parcel] = true
		}
	}
	return words.Say("batch.summary.books", words.With{"books": books, "orders": len(b.Orders), "parcels": len(parcels)})
}

// progress says how far the planning has come, with a way to stop it.
func (s *batchSummary) progress() []fyne.CanvasObject {
	r := s.page.reckoning
	button := func(b *controls.Button) fyne.CanvasObject {
		return controls.Inset(2, 6, 10, 10, controls.Across(0, b, controls.Spring()))
	}
	switch {
	case r.stopped && !r.made.whole:
		return []fyne.CanvasObject{paragraph(words.Say("batch.stopped")), button(s.again)}
	case r.busy() && r.all > 0:
		return []fyne.CanvasObject{paragraph(words.Say("batch.planning", words.With{"done": r.done, "all": r.all})), button(s.stop)}
	case r.busy():
		return []fyne.CanvasObject{paragraph(words.Say("batch.begun")), button(s.stop)}
	}
	return nil
}

// needs are the materials that are to be bought, and what they cost.
func (s *batchSummary) needs() []fyne.CanvasObject {
	var list []fyne.CanvasObject
	made := s.page.reckoning.made
	for _, n := range made.work.Needs {
		if n.ToBuy.IsZero() && n.Lack != batch.NoPlan {
			continue
		}
		line := controls.NewLineItem()
		line.Set(s.page.amount(n, n.ToBuy), n.Material, moneyText(n.Cost), false)
		line.OnTapped = func() { s.page.toNeed(n) }
		line.OnFocus = whenFocused(func() { bringIn(s.scroll, line) })
		list = append(list, line)
	}
	if made.whole {
		list = append(list, paragraph(s.total(made.work.Needs)))
	}
	return list
}

// total is what all of it costs, and what that leaves out.
func (s *batchSummary) total(needs []batch.Need) string {
	var rows []lists.ShoppingRow
	var unpriced, unplanned, near []string
	for _, n := range needs {
		switch {
		case n.Lack == batch.NoPlan:
			unplanned = append(unplanned, n.Material)
		case n.Lack == batch.NoPrice && !n.ToBuy.IsZero():
			unpriced = append(unpriced, n.Material)
		case n.Cost.Currency != "":
			rows = append(rows, lists.ShoppingRow{Cost: n.Cost})
		}
		if n.Cutting != nil && !n.Cutting.Plan.Proved() {
			near = append(near, n.Material)
		}
	}
	sums, err := lists.Totals(rows)
	if err != nil {
		return faultText(err)
	}
	var all []string
	for _, m := range sums {
		all = append(all, m.String())
	}
	said := words.Say("batch.total.nothing")
	if len(all) > 0 {
		said = words.Say("batch.total", words.With{"sum": strings.Join(all, " + ")})
	}
	for _, part := range []struct {
		key   string
		names []string
	}{{"batch.total.unpriced", unpriced}, {"batch.total.unplanned", unplanned}, {"batch.total.near", near}} {
		if len(part.names) > 0 {
			said += " " + words.Say(part.key, words.With{"names": strings.Join(part.names, ", ")})
		}
	}
	return said
}

// toNeed turns to a material in the table of needs.
func (p *batchPage) toNeed(n batch.Need) {
	p.turnTo("needs")
	i := slices.IndexFunc(p.reckoning.made.work.Needs, func(m batch.Need) bool { return m.Kind == n.Kind && m.Material == n.Material })
	if i >= 0 {
		p.table().grid().Go(i, needStock)
		p.window.win.Canvas().Focus(p.table().first())
	}
}

// spines are the groups of one spine piece.
func (s *batchSummary) spines() []fyne.CanvasObject {
	var list []fyne.CanvasObject
	made, style := s.page.reckoning.made, s.page.style()
	for _, g := range made.work.Groups {
		line := controls.NewLineItem()
		said := words.Say("batch.group.measured", words.With{"measured": g.Measured(), "books": g.Copies()})
		line.Set(fmt.Sprint(g.Copies()), words.Say("batch.group", words.With{"width": style.WithUnit(g.Width)}), said, false)
		line.OnTapped = func() { s.page.toGroup(g) }
		line.OnFocus = whenFocused(func() { bringIn(s.scroll, line) })
		list = append(list, line)
	}
	return list
}

// toGroup turns to the first book of a group in the table of spines.
func (p *batchPage) toGroup(g batch.Group) {
	p.turnTo("spines")
	row := 0
	for _, other := range p.reckoning.made.work.Groups {
		if other.Name == g.Name {
			break
		}
		for _, set := range other.Sets {
			row += len(set.Books)
		}
	}
	p.table().grid().Go(row, spineFound)
	p.window.win.Canvas().Focus(p.table().first())
}

// warnings lead to the findings, and say what the design refuses of the variants.
func (s *batchSummary) warnings() []fyne.CanvasObject {
	var list []fyne.CanvasObject
	if found := s.page.found; len(found.found) > 0 {
		line := controls.NewLineItem()
		worst := found.found[0]
		line.Set(fmt.Sprint(len(found.found)), words.Say("batch.findings.below", words.With{"level": worst.Level.Label()}), words.Say("batch.findings.show"), false)
		line.OnFocus = whenFocused(func() { bringIn(s.scroll, line) })
		line.OnTapped = func() {
			s.page.window.win.Canvas().Focus(found.cards[0])
			bringIn(s.scroll, found.cards[0])
		}
		list = append(list, line)
	}
	for _, v := range s.refused() {
		list = append(list, levelled(check.Check, v))
	}
	return list
}

// refused are settings of variants that the design as it stands cannot take.
func (s *batchSummary) refused() []string {
	var said []string
	for _, v := range s.page.batch().Variants {
		if _, refused := v.Patch.Apply(s.page.window.session.Decisions()); len(refused) > 0 {
			said = append(said, words.Say("batch.refused", words.With{"name": v.Name, "keys": strings.Join(refused, ", ")}))
		}
	}
	return said
}

// firstToFocus is the first thing in the summary that takes the keyboard.
func (s *batchSummary) firstToFocus() fyne.Focusable {
	if found := focusable(s.list.Objects); found != nil {
		return found
	}
	return s.page.tabs.Chips()[s.page.at]
}
