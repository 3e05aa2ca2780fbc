package ui

import (
	"strconv"
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// postSheet asks for the maker's own table of the post, a line each: bands by zone,
// mass and price, and the slots that parcels must go through.
func (p *batchPage) postSheet() {
	var s *sheet
	now := p.batch().Post
	bands := controls.NewNotes(8, words.Say("batch.post.bandsHint"), nil)
	bands.SetText(bandsText(now.Bands))
	slots := controls.NewNotes(2, words.Say("batch.post.slotsHint"), nil)
	slots.SetText(p.slotsText(now.Slots))
	grams, padding := newSheetEntry(func() { s.close() }), newSheetEntry(func() { s.close() })
	grams.SetText(strconv.FormatFloat(now.Packing, 'f', -1, 64))
	padding.SetText(p.style().Format(now.Padding))
	trouble := controls.NewLabel(controls.TroubleLabel, "")
	keep := func() {
		post, problem := p.readPost(bands.Text, slots.Text, grams.Text, padding.Text)
		if problem != "" {
			trouble.SetText(problem)
			return
		}
		s.close()
		b := p.batch().Clone()
		b.Post = post
		p.set(b, nil, "post", nil)
	}
	grams.OnSubmitted, padding.OnSubmitted = func(string) { keep() }, func(string) { keep() }
	label := func(key string) fyne.CanvasObject { return controls.NewLabel(controls.PlainLabel, words.Say(key)) }
	row := func(key string, e *sheetEntry, unit string) fyne.CanvasObject {
		return controls.Across(8, controls.Fixed(studioLabelWidth, 0, label(key)), controls.Fixed(studioEntryWidth, 0, e), controls.NewLabel(controls.QuietLabel, unit))
	}
	list := controls.Down(6, prose(words.Say("batch.post.text")), label("batch.post.bands"), bands, label("batch.post.slots"), slots,
		row("batch.post.packing", grams, words.Say("batch.unit.grams")), row("batch.post.padding", padding, p.window.session.System().Label()), trouble)
	s = p.window.openSheet(words.Say("batch.post.title"), list, fyne.NewSize(sheetWidth, 0), controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, words.Say("tools.keep"), keep))
	p.window.win.Canvas().Focus(bands)
}

func bandsText(all []batch.Band) string {
	var lines []string
	for _, b := range all {
		lines = append(lines, strings.Join([]string{b.Zone, strconv.FormatFloat(b.Most, 'f', -1, 64), b.Price.String()}, "; "))
	}
	return strings.Join(lines, "\n")
}

func (p *batchPage) slotsText(all []batch.Slot) string {
	var lines []string
	for _, s := range all {
		style := p.style()
		lines = append(lines, strings.Join([]string{s.Name, style.Format(s.Thickness), style.Format(s.Length), style.Format(s.Width)}, "; "))
	}
	return strings.Join(lines, "\n")
}

// readPost reads the sheet; a line that cannot be understood is named.
func (p *batchPage) readPost(bands, slots, grams, padding string) (post batch.Post, problem string) {
	was := p.batch().Post
	post.Each = was.Each
	for i, cells := range linesOf(bands) {
		band, ok := p.readBand(cells)
		if !ok {
			return post, words.Say("batch.post.wrongBand", words.With{"line": i + 1, "text": strings.Join(cells, "; ")})
		}
		post.Bands = append(post.Bands, limited(band, was.Bands))
	}
	for i, cells := range linesOf(slots) {
		slot, ok := p.readSlot(cells)
		if !ok {
			return post, words.Say("batch.post.wrongSlot", words.With{"line": i + 1, "text": strings.Join(cells, "; ")})
		}
		post.Slots = append(post.Slots, slot)
	}
	var err error
	if post.Packing, err = strconv.ParseFloat(orNought(grams), 64); err != nil {
		return post, words.Say("batch.want.grams")
	}
	if post.Padding, err = measure.ParseLength(orNought(padding), p.window.session.System()); err != nil {
		return post, sentence(err.Error())
	}
	return post, checked("", post.Validate)
}

// limited is a band with the name and the limits of size that the one like it had.
func limited(b batch.Band, was []batch.Band) batch.Band {
	for _, w := range was {
		if w.Zone == b.Zone && w.Most == b.Most {
			w.Price = b.Price
			return w
		}
	}
	return b
}

func orNought(text string) string {
	if text = strings.TrimSpace(text); text == "" {
		return "0"
	}
	return text
}

// linesOf are the cells of the lines that hold something.
func linesOf(text string) [][]string {
	var all [][]string
	for _, line := range strings.Split(text, "\n") {
		if strings.TrimSpace(line) == "" {
			continue
		}
		var cells []string
		for _, cell := range strings.Split(line, ";") {
			cells = append(cells, strings.TrimSpace(cell))
		}
		all = append(all, cells)
	}
	return all
}

func (p *batchPage) readBand(cells []string) (batch.Band, bool) {
	if len(cells) != 3 {
		return batch.Band{}, false
	}
	most, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(cells[1], "g")), 64)
	price, problem := p.money(cells[2])
	return batch.Band{Zone: cells[0], Most: most, Price: price}, err == nil && problem == "" && price.Currency != ""
}

func (p *batchPage) readSlot(cells []string) (slot batch.Slot, ok bool) {
	if len(cells) != 4 {
		return slot, false
	}
	slot.Name = cells[0]
	for i, side := range []*measure.Length{&slot.Thickness, &slot.Length, &slot.Width} {
		l, err := measure.ParseLength(orNought(cells[i+1]), p.window.session.System())
		if err != nil {
			return slot, false
		}
		*side = l
	}
	return slot, true
}
