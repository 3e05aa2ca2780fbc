package ui

import (
	"strings"

	"fyne.io/fyne/v2"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/ui/controls"
)

// settingKeys are what a variant may set besides its own columns, those that books
// of one release differ in.
func settingKeys() []string {
	return []string{"page.height", "page.width", "sections.count", "sections.folios", "liner", "endpaper", "board", "spine.kind", "covering.turnIn", "covering.kind", "covering.side", "ribbon", "elastic"}
}

// settingSheet asks for one more setting of the cursor's variant; an empty one
// follows the design again.
func (t *variantsTable) settingSheet() {
	var s *sheet
	v, w := t.at(), t.page.window
	var params []book.Param
	var names []string
	for _, key := range settingKeys() {
		if p, known := book.Lookup(key); known {
			params, names = append(params, p), append(names, p.Short())
		}
	}
	chosen, which := 0, controls.NewChoiceField()
	entry, trouble := newSheetEntry(func() { s.close() }), controls.NewLabel(controls.TroubleLabel, "")
	turn := func(i int) {
		chosen = i
		which.Set(names, i, false)
		d, _ := v.Patch.Apply(w.session.Decisions())
		entry.SetText("")
		entry.SetPlaceHolder(params[i].Text(params[i].Get(d), params[i].Style(w.session.System())))
	}
	which.OnChoose = turn
	keep := func() {
		if trouble.SetText(t.setting(params[chosen], entry.Text)); trouble.Text() == "" {
			s.close()
		}
	}
	entry.OnSubmitted = func(string) { keep() }
	row := func(key string, o fyne.CanvasObject) fyne.CanvasObject {
		return controls.Across(8, controls.Fixed(120, 0, controls.NewLabel(controls.PlainLabel, words.Say(key))), controls.Fixed(220, 0, o))
	}
	list := controls.Down(6, prose(words.Say("batch.setting.text", words.With{"name": v.Name})), row("batch.setting.which", which), row("batch.setting.value", entry), trouble)
	s = w.openSheet(words.Say("batch.setting.title"), list, fyne.NewSize(sheetWidth, 0), controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { s.close() }),
		controls.NewButton(controls.Solid, words.Say("tools.keep"), keep))
	turn(0)
	w.win.Canvas().Focus(which)
}

// setting sets a key of the cursor's variant, and says what is wrong.
func (t *variantsTable) setting(p book.Param, text string) string {
	v := t.at().Clone()
	text = strings.TrimSpace(text)
	value, err := p.Parse(text, t.page.window.session.System())
	if text != "" && err != nil {
		return wanted(err)
	}
	v = with(v, p.Key, value, text == "")
	if _, refused := v.Patch.Apply(t.page.window.session.Decisions()); len(refused) > 0 {
		return words.Say("batch.variant.refused", words.With{"what": p.Short()})
	}
	changed, err := t.page.batch().WithVariant(v.Name, v)
	return t.page.set(changed, err, "variant", words.With{"name": v.Name})
}
