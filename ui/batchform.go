package ui

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// batchRow is one value that a sheet asks for about the batch.
type batchRow struct {
	label, unit, shown string
	take               func(b *batch.Batch, text string) string // what is wrong, empty for nothing
}

// batchSheet asks for some values; all are taken in one step, or none.
func (p *batchPage) batchSheet(title, text, step string, rows []batchRow) {
	var s *sheet
	entries, trouble := make([]*sheetEntry, len(rows)), controls.NewLabel(controls.TroubleLabel, "")
	list := controls.Down(6, prose(text))
	keep := func() {
		b := p.batch().Clone()
		for i, row := range rows {
			if problem := row.take(&b, strings.TrimSpace(entries[i].Text)); problem != "" {
				trouble.SetText(words.Say("tools.trouble", words.With{"tool": row.label, "why": problem}))
				p.window.win.Canvas().Focus(entries[i])
				return
			}
		}
		s.close()
		p.set(b, nil, step, nil)
	}
	for i, row := range rows {
		e := newSheetEntry(func() { s.close() })
		e.SetText(row.shown)
		e.OnSubmitted = func(string) { keep() }
		entries[i] = e
		list.Add(controls.Across(8, controls.Fixed(studioLabelWidth, 0, controls.NewLabel(controls.PlainLabel, row.label)),
			controls.Fixed(studioEntryWidth, 0, e), controls.NewLabel(controls.QuietLabel, row.unit)))
	}
	list.Add(trouble)
	s = p.window.openSheet(title, list, fyne.NewSize(sheetWidth, 0), controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, words.Say("tools.keep"), keep))
	p.window.win.Canvas().Focus(entries[0])
}

// spoiled are the kinds of which some is spoiled when it is cut.
func spoiled() []stock.Kind {
	return []stock.Kind{stock.Paper, stock.Liner, stock.Board, stock.Covering}
}

// buyingSheet asks for spoilage and spares.
func (p *batchPage) buyingSheet() {
	b := p.batch()
	var rows []batchRow
	for _, kind := range spoiled() {
		rows = append(rows, batchRow{
			label: words.Say("batch.spoilage", words.With{"kind": kindText(kind)}), unit: "%", shown: percent(b.Buying.Of(kind)),
			take: func(b *batch.Batch, text string) string {
				share, problem := readPercent(text)
				b.Buying = withSpoilage(b.Buying, kind, share)
				return problem
			},
		})
	}
	rows = append(rows,
		batchRow{label: words.Say("batch.spareBlocks"), shown: strconv.Itoa(b.Buying.SpareBlocks),
			take: func(b *batch.Batch, text string) string {
				return checked(wholeText(text, &b.Buying.SpareBlocks), b.Buying.Validate)
			}},
		batchRow{label: words.Say("batch.spareCases"), shown: strconv.Itoa(b.Buying.SpareCases),
			take: func(b *batch.Batch, text string) string {
				return checked(wholeText(text, &b.Buying.SpareCases), b.Buying.Validate)
			}})
	p.batchSheet(words.Say("batch.buying.title"), words.Say("batch.buying.text"), "buying", rows)
}

// checked is what is wrong with a text, else with what it was taken into.
func checked(problem string, validate func() error) string {
	if problem != "" {
		return problem
	}
	if err := validate(); err != nil {
		return faultText(err)
	}
	return ""
}

func percent(share float64) string { return strconv.FormatFloat(100*share, 'f', -1, 64) }

// readPercent reads a share in per cent, below all of it.
func readPercent(text string) (share float64, problem string) {
	text = strings.TrimSpace(strings.TrimSuffix(strings.Replace(text, ",", ".", 1), "%"))
	if text == "" {
		return 0, ""
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil || !(v >= 0 && v < 100) {
		return 0, words.Say("batch.want.percent")
	}
	return v / 100, ""
}

func withSpoilage(b batch.Buying, kind stock.Kind, share float64) batch.Buying {
	var kept []batch.Spoilage
	for _, s := range b.Spoilage {
		if s.Kind != kind {
			kept = append(kept, s)
		}
	}
	if share > 0 {
		kept = append(kept, batch.Spoilage{Kind: kind, Share: share})
	}
	b.Spoilage = kept
	return b
}

// buyingText says what is bought beyond the pieces.
func (p *batchPage) buyingText() string {
	b := p.batch().Buying
	var all []string
	for _, s := range b.Spoilage {
		all = append(all, words.Say("batch.buying.spoilage", words.With{"kind": kindText(s.Kind), "percent": percent(s.Share)}))
	}
	if b.SpareBlocks > 0 {
		all = append(all, words.Say("batch.buying.blocks", words.With{"count": b.SpareBlocks}))
	}
	if b.SpareCases > 0 {
		all = append(all, words.Say("batch.buying.cases", words.With{"count": b.SpareCases}))
	}
	if len(all) == 0 {
		return words.Say("batch.buying.none")
	}
	return words.Say("batch.buying.some", words.With{"what": strings.Join(all, ", ")})
}
