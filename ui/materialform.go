package ui

import (
	"errors"
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// materialForm asks for every fact of a material. What cannot be understood is
// said below its field, and nothing is kept until all of it can.
type materialForm struct {
	page  *materialsPage
	sheet *sheet
	was   stock.Material // as the shelf has it; nothing of a new one
	known bool           // it is on the shelf
	now   stock.Material // kind, photograph and what the fields do not hold

	fields  []*formField
	list    *fyne.Container
	scroll  *container.Scroll
	kind    *controls.ChoiceField
	patch   *controls.Paint
	panel   *fyne.Container // the photograph
	trouble fyne.CanvasObject
}

// formField is one fact with what it is entered by.
type formField struct {
	fact    fact
	shown   string // what it began with
	text    func() string
	control fyne.CanvasObject
	focus   fyne.Focusable
	line    fyne.CanvasObject
}

const (
	formLabelWidth = float32(138)
	formEntryWidth = float32(244)
	formNoteWidth  = float32(76)
	formPanelWidth = float32(220)
)

// openForm shows a material to be changed, or, not known, a new one.
func (p *materialsPage) openForm(m stock.Material, known bool) {
	w := p.window
	if w.busy() {
		return
	}
	f := &materialForm{page: p, was: m.Clone(), known: known, now: m.Clone(), list: controls.Down(4)}
	if !known {
		f.now.Kind = p.chosen.kind
		if f.now.Kind == "" {
			f.now.Kind = stock.Paper
		}
	}
	title := words.Say("materials.newTitle")
	if known {
		title = words.Say("materials.editTitle", words.With{"name": m.Name})
	}
	f.panel = controls.Down(8)
	f.scroll = container.NewVScroll(controls.Inset(0, 4, 2, 14, f.list))
	f.fill()
	body := controls.Around(nil, nil, nil, controls.Inset(0, 0, 16, 0, controls.Fixed(formPanelWidth, 0, f.panel)), f.scroll)
	height := min(float32(560), w.win.Canvas().Size().Height-150)
	f.sheet = w.openSheet(title, controls.Fixed(formLabelWidth+formEntryWidth+formNoteWidth+formPanelWidth+60, height, body), fyne.NewSize(0, 0),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.cancel"), func() { f.sheet.close() }),
		controls.NewButton(controls.Solid, words.Say("materials.keep"), f.keep))
	f.showPhoto()
	w.win.Canvas().Focus(f.fields[0].focus)
}

// fill makes the fields of the kind chosen; what was typed in others of the same
// name stays.
func (f *materialForm) fill() {
	typed := map[string]string{}
	for _, field := range f.fields {
		if text := field.text(); text != field.shown {
			typed[field.fact.name] = text
		}
	}
	f.fields, f.list.Objects = nil, nil
	f.addKind()
	for _, fact := range facts() {
		if !fact.applies(f.now.Kind) {
			continue
		}
		field := f.field(fact)
		f.fields = append(f.fields, field)
		if text, was := typed[fact.name]; was {
			f.put(field, text)
		}
		f.list.Add(field.line)
	}
	f.list.Refresh()
}

func (f *materialForm) addKind() {
	kinds := stock.Kinds()
	var names []string
	at := 0
	for i, k := range kinds {
		names = append(names, sentence(kindName(k)))
		if k == f.now.Kind {
			at = i
		}
	}
	f.kind = controls.NewChoiceField()
	f.kind.Set(names, at, false)
	f.kind.OnFocus = whenFocused(func() { bringIn(f.scroll, f.kind) })
	f.kind.OnChoose = func(i int) {
		f.now.Kind = kinds[i]
		f.fill()
		f.page.window.win.Canvas().Focus(f.kind)
	}
	f.list.Add(f.row(words.Say("materials.column.kind"), f.kind, ""))
}

// row is a label, a control and a word after it.
func (f *materialForm) row(label string, control fyne.CanvasObject, note string) fyne.CanvasObject {
	return controls.Across(8,
		controls.Fixed(formLabelWidth, 0, controls.NewLabel(controls.PlainLabel, label)),
		controls.Fixed(formEntryWidth, 0, control),
		controls.NewLabel(controls.QuietLabel, note))
}

// field makes the control that suits a fact.
func (f *materialForm) field(fact fact) *formField {
	system := f.page.window.session.System()
	field := &formField{fact: fact, shown: fact.shown(f.now, system)}
	note := fact.note(system)
	switch fact.entered {
	case byChoice:
		f.choice(field)
	case byTick:
		f.tick(field)
	case byNotes:
		notes := controls.NewNotes(2, "", nil)
		notes.SetText(field.shown)
		notes.OnFocus = func() { bringIn(f.scroll, notes) }
		field.text, field.control, field.focus = func() string { return notes.Text }, notes, notes
	default:
		entry := &formEntry{form: f}
		entry.ExtendBaseWidget(entry)
		entry.SetText(field.shown)
		entry.SetPlaceHolder(fact.hint(system))
		field.text, field.control, field.focus = func() string { return entry.Text }, entry, entry
		if fact.name == "colour" {
			field.control = f.coloured(entry)
		}
	}
	field.line = f.row(words.Say("materials.column."+fact.label), field.control, note)
	return field
}

func (f *materialForm) choice(field *formField) {
	choices := field.fact.choices()
	var names []string
	at := 0
	for i, c := range choices {
		names = append(names, field.fact.choiceName(c))
		if c == field.shown {
			at = i
		}
	}
	c := controls.NewChoiceField()
	c.Set(names, at, false)
	c.OnChoose = func(i int) { c.Set(names, i, false) }
	c.OnFocus = whenFocused(func() { bringIn(f.scroll, c) })
	field.shown = choices[at]
	field.text, field.control, field.focus = func() string { return choices[c.Chosen()] }, c, c
}

func (f *materialForm) tick(field *formField) {
	t := controls.NewTick(func() { f.sheet.close() }, nil)
	t.SetChecked(field.shown != "")
	t.OnFocus = func() { bringIn(f.scroll, t) }
	field.text = func() string {
		if t.Checked {
			return "yes"
		}
		return ""
	}
	field.control, field.focus = t, t
}

// coloured is an entry with a patch of the colour that it holds.
func (f *materialForm) coloured(entry *formEntry) fyne.CanvasObject {
	f.patch = controls.NewPaint(26, 26, func(p look.Palette) color.NRGBA {
		if c := colourOf(strings.TrimSpace(entry.Text)); c != nil {
			return *c
		}
		return p.Desk
	})
	entry.OnChanged = func(string) { f.patch.Refresh() }
	return controls.Around(nil, nil, nil, controls.Inset(2, 2, 6, 0, f.patch), entry)
}

// put shows another text in a field.
func (f *materialForm) put(field *formField, text string) {
	switch c := field.focus.(type) {
	case *formEntry:
		c.SetText(text)
	case *controls.Notes:
		c.SetText(text)
	case *controls.Tick:
		c.SetChecked(text != "")
	case *controls.ChoiceField:
		for i, choice := range field.fact.choices() {
			if choice == text {
				c.OnChoose(i)
			}
		}
	}
}

// find is the field of a fact; nil where the kind has none.
func (f *materialForm) find(name string) *formField {
	for _, field := range f.fields {
		if field.fact.name == name {
			return field
		}
	}
	return nil
}

// entered is the material that the fields say, or the field that is wrong and
// why. What still shows what it began with stays as it was, whatever was rounded
// for showing it.
func (f *materialForm) entered() (m stock.Material, wrong string, err error) {
	m = f.now.Clone()
	if m.Kind != f.was.Kind {
		m = m.Fitting()
	}
	system := f.page.window.session.System()
	for _, field := range f.fields {
		if text := field.text(); text != field.shown || !f.known || m.Kind != f.was.Kind {
			if err := field.fact.set(&m, text, system); err != nil {
				return m, field.fact.name, err
			}
		}
	}
	m = m.Priced()
	if price := f.find("price"); price != nil && price.text() != price.shown && f.find("priceDate").text() == f.find("priceDate").shown && m.Price != (stock.Price{}) {
		m.Price.On = measure.DayOf(f.page.window.session.Now())
	}
	var fault *stock.Fault
	if err := m.Validate(); errors.As(err, &fault) {
		return m, stock.ColumnAt(fault.Place), errors.New(sentence(fault.Text))
	}
	if has, taken := f.page.window.session.Own().Find(m.Kind, m.Name); taken && !(f.known && idOf(has) == idOf(f.was)) {
		return m, "name", errors.New(sentence(words.Say("stock.want.oneName")))
	}
	return m, "", nil
}

// keep puts the material on the shelf.
func (f *materialForm) keep() {
	m, wrong, err := f.entered()
	if err != nil {
		f.refuse(wrong, err)
		return
	}
	key := "step.shelfAdd"
	if f.known {
		key = "step.shelfEdit"
	}
	if m.Equal(f.was) {
		f.sheet.close()
		return
	}
	kept := f.page.window.changeShelf(words.Say(key, words.With{"name": m.Name}), func(shelf stock.Shelf) stock.Shelf {
		if f.known {
			return shelf.Replaced(f.was, m)
		}
		return shelf.With(m)
	})
	if kept {
		f.sheet.close()
		f.page.search.SetText("")
		f.page.choose(idOf(m))
	}
}

// refuse says what is wrong below the field that it speaks of.
func (f *materialForm) refuse(name string, err error) {
	field := f.find(name)
	if field == nil { // a fact that this kind does not ask for
		field = f.fields[0]
	}
	if f.trouble != nil {
		f.list.Remove(f.trouble)
	}
	f.trouble = controls.Inset(0, 4, formLabelWidth+8, 0, controls.NewTrouble(err.Error()))
	var lines []fyne.CanvasObject
	for _, line := range f.list.Objects {
		lines = append(lines, line)
		if line == field.line {
			lines = append(lines, f.trouble)
		}
	}
	f.list.Objects = lines
	f.list.Refresh()
	f.page.window.win.Canvas().Focus(field.focus)
}

// formEntry is one text of the form; Enter keeps it all and Esc leaves it.
type formEntry struct {
	widget.Entry
	form *materialForm
}

// FocusGained implements fyne.Focusable.
func (e *formEntry) FocusGained() {
	e.Entry.FocusGained()
	bringIn(e.form.scroll, e)
}

// TypedKey implements fyne.Focusable.
func (e *formEntry) TypedKey(key *fyne.KeyEvent) {
	switch key.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		e.form.keep()
	case fyne.KeyEscape:
		e.form.sheet.close()
	default:
		e.Entry.TypedKey(key)
	}
}
