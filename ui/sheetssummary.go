package ui

import (
	"fmt"
	"slices"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/scene"
	"grainwise/render/view"
	"grainwise/ui/controls"
)

// sheetsSummary says what the chosen material's plan means: how many sheets and
// why no fewer, the other turn, the cuts in the order of the bench, what is left
// over.
type sheetsSummary struct {
	page   *sheetsPage
	list   *fyne.Container
	scroll *container.Scroll
	stop   *controls.Button
	more   *controls.Button
	said   string // all that is on show: it is made anew only when that differs
	job    sheets.Job
}

func newSheetsSummary(p *sheetsPage) *sheetsSummary {
	s := &sheetsSummary{page: p, list: controls.Down(0)}
	s.scroll = container.NewVScroll(s.list)
	s.stop = controls.NewButton(controls.Framed, words.Say("sheets.stop"), p.plans.stop)
	s.more = controls.NewButton(controls.Framed, words.Say("sheets.more"), func() { p.plans.resume(s.job) })
	return s
}

// show brings the summary up to date.
func (s *sheetsSummary) show(j sheets.Job, m *planned) {
	s.job = j
	objects := s.objects(j, m)
	said := fmt.Sprintf("%v %v %v %v", m.state, m.best, m.cutting != nil, texts(objects))
	if said == s.said {
		return
	}
	s.said = said
	s.list.Objects = objects
	s.list.Refresh()
	s.scroll.Refresh()
}

// texts is what labels and lines say.
func texts(objects []fyne.CanvasObject) []string {
	var all []string
	for _, o := range objects {
		switch o := o.(type) {
		case *controls.Label:
			all = append(all, o.Text())
		case *controls.Paragraph:
			all = append(all, o.Text())
		case *controls.LineItem:
			all = append(all, o.NameText(), o.SizeText())
		case *fyne.Container:
			all = append(all, texts(o.Objects)...)
		}
	}
	return all
}

func (s *sheetsSummary) objects(j sheets.Job, m *planned) []fyne.CanvasObject {
	list := []fyne.CanvasObject{s.head(j.Material.Name)}
	list = append(list, s.warnings(m)...)
	switch {
	case m.cutting == nil:
		return append(list, s.waiting(m)...)
	case m.cutting.Trouble != nil:
		return append(list, s.trouble(*m.cutting)...)
	}
	c := *m.cutting
	list = append(list, s.result(c)...)
	list = append(list, s.head(words.Say("sheets.cuts")))
	numbers := c.StepNumbers()
	for i, step := range c.Steps {
		list = append(list, s.step(numbers[i], step))
	}
	list = append(list, paragraph(s.work(c)))
	return append(list, s.offcuts(c)...)
}

func (s *sheetsSummary) head(text string) fyne.CanvasObject {
	return controls.Inset(10, 4, 10, 10, controls.NewLabel(controls.HeadLabel, text))
}

func paragraph(text string) fyne.CanvasObject {
	return controls.Inset(2, 4, 10, 10, controls.NewParagraph(text))
}

// waiting says how far a plan has come that is not there yet.
func (s *sheetsSummary) waiting(m *planned) []fyne.CanvasObject {
	switch {
	case m.state == planStopped:
		return []fyne.CanvasObject{paragraph(words.Say("sheets.stopped")), s.button(s.more)}
	case m.state == planSearching && m.best.Cost > 0:
		return []fyne.CanvasObject{paragraph(s.soFar(m.best)), s.button(s.stop)}
	case m.state == planSearching:
		return []fyne.CanvasObject{paragraph(words.Say("sheets.begun")), s.button(s.stop)}
	}
	return []fyne.CanvasObject{paragraph(words.Say("sheets.waiting"))}
}

func (s *sheetsSummary) button(b *controls.Button) fyne.CanvasObject {
	return controls.Inset(4, 6, 10, 10, controls.Across(0, b, controls.Spring()))
}

// trouble says why there is no plan, and leads to what would mend it.
func (s *sheetsSummary) trouble(c sheets.Cutting) []fyne.CanvasObject {
	w := s.page.window
	list := []fyne.CanvasObject{paragraph(view.TroubleText(c, w.session.System()))}
	key := "paper"
	if t := c.Trouble; t.Piece >= 0 && t.Piece < len(c.Pieces) {
		if k := first(scene.Tag{Part: string(c.Pieces[t.Piece].Part)}); k != "" {
			key = k
		}
	}
	mend := controls.NewButton(controls.Framed, words.Say("sheets.mend"), func() {
		w.turnPage(designPage)
		w.chooseRow(key)
		w.column.reveal(key)
	})
	return append(list, s.button(mend))
}

// result is how much is cut, why no less, and what the other turn would give.
func (s *sheetsSummary) result(c sheets.Cutting) []fyne.CanvasObject {
	in := s.page.input(nil)
	list := []fyne.CanvasObject{
		paragraph(words.Say("sheets.result", words.With{"needed": in.Needed(c), "percent": fmt.Sprintf("%.0f", 100*c.Used)})),
		paragraph(s.proof(c)),
	}
	if !c.Plan.Proved() {
		list = append(list, s.button(s.more))
	}
	if turn := in.OtherTurn(c); turn != "" {
		list = append(list, paragraph(words.Say("sheets.turn", words.With{"turn": turn})))
	}
	return list
}

// mostWeighed is how many kinds of piece a proof is spelled out for.
const mostWeighed = 3

// proof says why no plan can do with less.
func (s *sheetsSummary) proof(c sheets.Cutting) string {
	cert := c.Plan.Certificate
	weighed, sum := "", int64(0)
	kinds := 0
	for k, w := range cert.Weights {
		if w > 0 {
			kinds++
			weighed += words.Say("sheets.proof.weight", words.With{"piece": words.Say("part." + c.Pieces[k].Word), "weight": w})
			sum += w * int64(c.Pieces[k].Count)
		}
	}
	switch {
	case c.Roll():
		return s.rollProof(c)
	case c.Plan.Proof == cutting.BySearch:
		return words.Say("sheets.proof.search")
	case !c.Plan.Proved():
		return words.Say("sheets.proof.open", words.With{"gap": c.Plan.Cost - c.Plan.LowerBound, "least": c.Plan.LowerBound})
	case len(cert.Best) == 1 && kinds <= mostWeighed:
		return words.Say("sheets.proof.certificate", words.With{"weights": weighed, "best": cert.Best[0], "sum": sum})
	}
	return words.Say("sheets.proof.weights")
}

// step is one setting of the stop, numbered as in the drawing.
func (s *sheetsSummary) step(number int, step cutting.Step) fyne.CanvasObject {
	line := controls.NewLineItem()
	key := "sheets.step." + string(step.Cut)
	if step.Waste {
		key += ".waste"
	}
	name := words.Say(key, words.With{"layout": sheets.LayoutName(step.Layout), "cuts": step.Cuts, "strokes": step.Strokes})
	style := measure.Style{System: s.page.window.session.System(), Decimals: 1, Denominator: 32}
	line.Set(strconv.Itoa(number), name, style.Format(sheets.Length(step.Stop)), false)
	return line
}

func (s *sheetsSummary) work(c sheets.Cutting) string {
	return words.Say("sheets.work", words.With{
		"settings": c.Work.Settings, "cuts": c.Work.Cuts, "strokes": c.Work.Strokes,
		"metres": fmt.Sprintf("%.1f", sheets.Length(c.Work.Length).MM()/1000),
	})
}

// warnings are what this page stops or checks: a thickness that is only
// estimated for a batch, and no sheet to spare.
func (s *sheetsSummary) warnings(m *planned) []fyne.CanvasObject {
	if s.page.window.session.Book().Resolved.Copies < check.BatchFrom {
		return nil
	}
	list := s.page.window.measuredFirst()
	if m.cutting != nil && m.cutting.Trouble == nil && !m.cutting.Roll() && m.cutting.Spare() == 0 {
		list = append(list, levelled(check.Check, words.Say("sheets.spareNone")))
	}
	return list
}

// measuredFirst is the stop on pages that a batch is cut by: its thickness is only
// estimated.
func (w *Window) measuredFirst() []fyne.CanvasObject {
	for _, f := range w.stops() {
		if f.ID == measureFirst {
			copies := words.With{"copies": w.session.Book().Resolved.Copies}
			return []fyne.CanvasObject{levelled(check.Stop, words.Say("sheets.measureFirst", copies))}
		}
	}
	return nil
}

// stops are the findings that stop so many copies.
func (w *Window) stops() []check.Finding {
	batched := check.Batched(w.session.Findings(), w.session.Book().Resolved.Copies)
	return slices.DeleteFunc(slices.Clone(batched), func(f check.Finding) bool { return f.Level != check.Stop })
}

// levelled is a line with the word of its level before it.
func levelled(level check.Level, text string) fyne.CanvasObject {
	return paragraph(words.Say("level."+string(level)) + ": " + text)
}

// offcuts are what is left over and worth keeping, and what is in stock.
func (s *sheetsSummary) offcuts(c sheets.Cutting) []fyne.CanvasObject {
	list := []fyne.CanvasObject{s.head(words.Say("sheets.offcuts"))}
	if len(c.Offcuts) == 0 {
		list = append(list, paragraph(words.Say("sheets.offcuts.none")))
	} else {
		list = append(list, paragraph(words.Say("sheets.offcuts.keep")))
	}
	for _, o := range c.Offcuts {
		list = append(list, s.offcut(o, o.Name, func(p project.Studio) project.Studio { return p.Keep(o) }))
		if fits := s.page.window.formatsOf(o); fits != "" && c.Material.Kind == stock.Paper {
			list = append(list, paragraph(fits))
		}
	}
	return append(list, s.kept(c)...)
}

// kept are the offcuts of this material in stock; a click takes one out.
func (s *sheetsSummary) kept(c sheets.Cutting) []fyne.CanvasObject {
	var list []fyne.CanvasObject
	for _, o := range s.page.window.session.Studio().Offcuts {
		if o.Material != c.Material.Name {
			continue
		}
		if list == nil {
			list = []fyne.CanvasObject{s.head(words.Say("sheets.kept")), paragraph(words.Say("sheets.kept.text"))}
		}
		name := words.Say("sheets.kept.name", words.With{"name": o.Name})
		list = append(list, s.offcut(o, name, func(p project.Studio) project.Studio { return p.Drop(o.Name) }))
	}
	return list
}

// offcut is a line that changes the studio's stock when it is pressed.
func (s *sheetsSummary) offcut(o sheets.Offcut, name string, change func(project.Studio) project.Studio) fyne.CanvasObject {
	w := s.page.window
	style := measure.Style{System: w.session.System(), Decimals: 1, Denominator: 32}
	line := controls.NewLineItem()
	line.Set(strconv.FormatInt(o.Times, 10), words.Say("sheets.offcut", words.With{"name": name, "grain": words.Say("sheets.offcut.grain." + string(o.Grain))}),
		style.Format(o.Width)+" × "+style.Format(o.Length), false)
	line.OnTapped = func() {
		studio := change(w.session.Studio())
		if err := w.ports.Studio.Write(studio); err != nil {
			w.complain(err)
			return
		}
		w.session.SetStudio(studio)
	}
	return line
}

// firstToFocus is the first thing in the summary that takes the keyboard.
func (s *sheetsSummary) firstToFocus() fyne.Focusable {
	if found := focusable(s.list.Objects); found != nil {
		return found
	}
	return s.more
}

func focusable(objects []fyne.CanvasObject) fyne.Focusable {
	for _, o := range objects {
		switch o := o.(type) {
		case fyne.Focusable:
			return o
		case *fyne.Container:
			if found := focusable(o.Objects); found != nil {
				return found
			}
		}
	}
	return nil
}
