package ui

import (
	"context"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// whatIf is a sheet that works the prices out as they would be: with another board
// or page, at another rate. Nothing of it is kept.
type whatIf struct {
	page    *batchPage
	sheet   *sheet
	board   *controls.ChoiceField
	boards  []string
	chosen  int
	entries map[string]*sheetEntry
	trouble *controls.Label
	lines   *fyne.Container
	cancel  context.CancelFunc
}

// whatIfKeys are the sizes that may be tried, whatIfRate the hour's rate.
var whatIfKeys = [...]string{"page.height", "page.width"}

const whatIfRate = "rate"

func (p *batchPage) whatIfSheet() {
	f := &whatIf{page: p, board: controls.NewChoiceField(), boards: p.materials(stock.Board), entries: map[string]*sheetEntry{},
		trouble: controls.NewLabel(controls.TroubleLabel, ""), lines: controls.Down(3)}
	f.board.Set(f.boards, 0, true)
	f.board.OnChoose = func(i int) { f.chosen = i; f.board.Set(f.boards, i, i == 0); f.work() }
	list := controls.Down(6, prose(words.Say("batch.whatIf.text")), f.row(words.Say("batch.whatIf.board"), f.board, ""))
	d, system := p.window.session.Decisions(), p.window.session.System()
	for _, key := range whatIfKeys {
		param, _ := book.Lookup(key)
		list.Add(f.row(param.Short(), f.entry(key, p.style().Format(param.Get(d).Length)), system.Label()))
	}
	list.Add(f.row(words.Say("batch.pricing.rate"), f.entry(whatIfRate, moneyText(p.batch().Pricing.Rate)), ""))
	list.Add(f.trouble)
	list.Add(controls.Fixed(0, float32(len(p.reckoning.made.release().Variants)+2)*21, f.lines))
	f.sheet = p.window.openSheet(words.Say("batch.whatIf.title"), list, fyne.NewSize(sheetWidth+60, 0), controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("batch.whatIf.work"), f.work),
		controls.NewButton(controls.Solid, words.Say("sheet.close"), f.close))
	f.sheet.escape = f.close
	p.window.win.Canvas().Focus(f.board)
}

func (f *whatIf) row(label string, field fyne.CanvasObject, unit string) fyne.CanvasObject {
	return controls.Across(8, controls.Fixed(150, 0, controls.NewLabel(controls.PlainLabel, label)),
		controls.Fixed(170, 0, field), controls.NewLabel(controls.QuietLabel, unit))
}

func (f *whatIf) entry(key, shown string) *sheetEntry {
	e := newSheetEntry(f.close)
	e.SetText(shown)
	e.OnSubmitted = func(string) { f.work() }
	f.entries[key] = e
	return e
}

func (f *whatIf) close() {
	if f.cancel != nil {
		f.cancel()
	}
	f.sheet.close()
}

// read is the batch as it would be, or what cannot be read of it.
func (f *whatIf) read() (batchInput, string) {
	in := f.page.window.batchInput()
	in.batch = in.batch.Clone()
	if f.chosen > 0 {
		param, _ := book.Lookup("board")
		if err := param.Set(&in.base, book.WordValue(f.boards[f.chosen])); err != nil {
			return in, wanted(err)
		}
	}
	for _, key := range whatIfKeys {
		param, _ := book.Lookup(key)
		v, err := param.Parse(strings.TrimSpace(f.entries[key].Text), f.page.window.session.System())
		if err == nil && f.entries[key].Text != f.page.style().Format(param.Get(in.base).Length) {
			err = param.Set(&in.base, v)
		}
		if err != nil {
			return in, param.Short() + ": " + wanted(err)
		}
	}
	rate, problem := f.page.money(f.entries[whatIfRate].Text)
	in.batch.Pricing.Rate = rate
	return in, problem
}

// work reckons it apart from the window, the newest alone.
func (f *whatIf) work() {
	in, problem := f.read()
	f.trouble.SetText(problem)
	if problem != "" {
		return
	}
	if f.cancel != nil {
		f.cancel()
	}
	ctx, cancel := context.WithCancel(context.Background())
	f.cancel = cancel
	f.trouble.SetText(words.Say("batch.begun"))
	today := f.page.todays()
	f.page.window.apart(func() (then func()) {
		planner := batch.Planner{Bench: in.bench, Allowed: planTime}
		work, err := planner.Work(ctx, in.base, in.shelf, in.batch, today, nil)
		return func() {
			if ctx.Err() == nil {
				f.show(reckoned{work: work}, err)
			}
		}
	})
}

// show sets what would be beside what is.
func (f *whatIf) show(made reckoned, err error) {
	f.trouble.SetText(made.trouble(batch.OfCosts))
	if err != nil {
		f.trouble.SetText(sentence(err.Error()))
		return
	}
	now := made.release()
	was := f.page.reckoning.made.release()
	f.lines.Objects = []fyne.CanvasObject{f.line("", words.Say("batch.column.cost"), words.Say("batch.column.wanted"))}
	for _, v := range now.Variants {
		for _, old := range was.Variants {
			if old.ID == v.ID {
				f.lines.Add(f.line(variantLabel(v.ID), fromTo(old.Cost, v.Cost), fromTo(old.Wanted, v.Wanted)))
			}
		}
	}
	f.lines.Add(f.line(words.Say("batch.whatIf.cash"), fromTo(was.Cash, now.Cash), ""))
	f.lines.Refresh()
}

func (f *whatIf) line(name, cost, wanted string) fyne.CanvasObject {
	return controls.Across(8, controls.Fixed(150, 0, controls.NewLabel(controls.PlainLabel, name)),
		controls.Fixed(140, 0, controls.NewEndLabel(controls.PlainLabel, cost)), controls.Fixed(140, 0, controls.NewEndLabel(controls.PlainLabel, wanted)))
}

func fromTo(was, now measure.Money) string {
	if was == now {
		return plainMoney(now)
	}
	return words.Say("measured.fromTo", words.With{"from": plainMoney(was), "to": plainMoney(now)})
}
