package ui

import (
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/render/raster"
	"grainwise/render/sketch"
	"grainwise/ui/controls"
	"grainwise/ui/glossary"
	"grainwise/ui/look"
)

// whyText is how wide the words beside a picture are.
const whyText = float32(330)

// sketch draws a small picture in the window's look; nil for a name without one.
func (w *Window) sketch(n sketch.Name) image.Image {
	p := look.Current()
	s := sketch.Scene(n, sketch.Look{Dark: p.Night, Stark: p.Stark})
	if s == nil {
		return nil
	}
	return raster.Image(s, int(sketch.Width*w.win.Canvas().Scale()))
}

// wordless draws a small picture to be shown smaller than its words can be
// read.
func (w *Window) wordless(n sketch.Name) image.Image {
	p := look.Current()
	return raster.Image(sketch.Scene(n, sketch.Look{Dark: p.Night, Stark: p.Stark, Wordless: true}), int(sketch.Width*w.win.Canvas().Scale()))
}

// pictureOf is a place for a small picture, which may be empty.
func (w *Window) pictureOf(n sketch.Name) *fyne.Container {
	picture := canvas.NewImageFromImage(w.sketch(n))
	picture.FillMode = canvas.ImageFillContain
	return controls.Fixed(sketch.Width, sketch.Height, picture)
}

// why explains what has the focus: a finding's card, or else the row chosen
// last, or else the finding that is open.
func (w *Window) why() {
	if card, ok := w.win.Canvas().Focused().(*controls.Card); ok {
		for i, c := range w.findings.cards {
			if c == card && i < len(w.findings.found) {
				w.whyFinding(w.findings.found[i])
				return
			}
		}
	}
	switch {
	case w.focused != "":
		w.whyParam(w.focused)
	case len(w.findings.found) > 0:
		w.whyFinding(w.findings.found[w.findings.open()])
	default:
		w.openGlossary("")
	}
}

// whyParam explains a parameter: what it means, where its value comes from, and
// what one step of it would move.
func (w *Window) whyParam(key string) {
	r, _ := w.column.find(key)
	if r == nil || w.busy() {
		return
	}
	n, _ := sketch.OfParam(key)
	more, _ := words.Lookup("why.param." + key)
	texts := []string{r.Meaning(), more}
	if reason := r.reason(); reason != "" {
		texts = append(texts, words.Say("why.auto", words.With{"reason": reason}))
	}
	if r.Kind.IsNumber() {
		texts = append(texts, r.Takes(r.session.System()))
	}
	w.whySheet(r.Label(), n, append(texts, r.steps(), careOf(key)), glossary.Of(key))
}

// careOf is the usual caution where the work that a parameter decides can hurt;
// empty for none.
func careOf(key string) string {
	care := map[string]string{
		"trim.foreEdge": "guillotine", "trim.head": "guillotine", "trim.tail": "guillotine",
		"board": "guillotine", "board.thickness": "guillotine",
		"covering.cornerCut": "knife", "covering.cornerAngle": "knife", "covering.turnIn": "knife",
		"sewing.stations": "awl", "sewing.endStation": "awl",
		"sewing.stitch": "machine", "sewing.freeEnds": "machine",
		"adhesive": "adhesive", "liner.pasteStretch": "adhesive",
		"measured.spineThickness": "press", "measured.foreEdgeThickness": "press", "sewing.threadCrush": "press",
	}
	if tool, ok := care[key]; ok {
		return words.Say("why.care." + tool)
	}
	return ""
}

// steps says which sizes to cut one step of the parameter would move.
func (r *parameter) steps() string {
	d := r.session.Decisions()
	before := r.session.Book()
	v, ok := r.next(before)
	if !ok || r.Set(&d, v) != nil {
		return ""
	}
	after := book.Compute(book.Resolve(d, r.session.Offered()))
	return oneStep(r.Text(v, r.style()), movedSizes(before, after, r.session.System()))
}

// next is one step more of a number, or one less at the end of its range, and
// the next choice of a word; false where there is none.
func (r *parameter) next(b book.Book) (book.Value, bool) {
	now := r.InForce(b)
	if r.Kind.IsNumber() {
		at := r.toSlider(now)
		v := r.Clamped(r.fromSlider(at + r.step()))
		if v == now {
			v = r.Clamped(r.fromSlider(at - r.step()))
		}
		return v, v != now
	}
	for i, word := range r.choices {
		if word == now.Word {
			v := book.WordValue(r.choices[(i+1)%len(r.choices)])
			return v, v != now
		}
	}
	return book.Value{}, false
}

func oneStep(value string, moves []movedSize) string {
	list := ""
	for _, m := range moves {
		if m.by != "" {
			list += "\n" + words.Say("why.move", words.With{"name": sentence(m.name), "from": m.from, "to": m.to})
		}
	}
	if list == "" {
		return words.Say("why.still", words.With{"value": value})
	}
	return words.Say("why.moves", words.With{"value": value}) + list
}

// whyFinding explains a finding: what was found, why it matters, and its words.
func (w *Window) whyFinding(f check.Finding) {
	if w.busy() {
		return
	}
	style := findingStyle(w.session.System())
	n, _ := sketch.OfRule(f.ID)
	w.whySheet(f.Text(style), n, []string{sentence(f.Wanted(style)) + ".", f.Why(style)}, glossary.Of(f.Key))
}

// whySheet is a picture with texts beside it, and under it the trade's words.
func (w *Window) whySheet(title string, n sketch.Name, texts []string, terms []glossary.Term) {
	var s *sheet
	said := controls.Down(8)
	for _, text := range texts {
		if text != "" {
			said.Add(flowing(text, whyText))
		}
	}
	if len(terms) > 0 {
		links := controls.NewFlow(14)
		for _, t := range terms {
			links.Add(controls.NewLink(t.Word, func() { s.close(); w.openGlossary(t.ID) }))
		}
		said.Add(controls.NewLabel(controls.QuietLabel, words.Say("why.words")))
		said.Add(controls.Fixed(whyText, 0, links))
	}
	body := controls.Across(16, w.pictureOf(n), controls.Fixed(whyText, sketch.Height, said))
	shut := controls.NewButton(controls.Solid, words.Say("sheet.close"), func() { s.close() })
	s = w.openSheet(title, body, fyne.NewSize(sketch.Width+16+whyText+2*sheetSide, 0), controls.Spring(), shut)
	w.win.Canvas().Focus(shut)
}

// flowing is running text of a width.
func flowing(text string, width float32) *controls.Paragraph {
	p := controls.NewParagraph(text)
	p.Resize(fyne.NewSize(width, 0))
	return p
}
