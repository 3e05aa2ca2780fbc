package ui

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// tourPreference remembers that the walk was taken.
const tourPreference = "tour.taken"

// stop is one place of the walk. Its words are tour.ID.title and tour.ID.text.
type stop struct {
	id    string
	place func(*Window) fyne.CanvasObject
	begin func(*tour)                      // makes ready what the maker is asked to do
	done  func(now, then book.Design) bool // what was asked is done; nil where nothing was
	able  func(*Window) bool               // whether this book can show it; nil: any
	right bool                             // the place is among the findings, which a narrow window shows in the drawing's place
}

// stops is the whole walk, in order.
func stops() []stop {
	return []stop{
		{id: "drawing", place: func(w *Window) fyne.CanvasObject { return w.middle.pane }},
		{id: "column", place: func(w *Window) fyne.CanvasObject { return w.column.scroll }},
		{
			id: "height", place: func(w *Window) fyne.CanvasObject { return w.rowToShow("page.height") },
			done: func(now, then book.Design) bool { return now.Page.Height != then.Page.Height },
		},
		{id: "cut", right: true, place: func(w *Window) fyne.CanvasObject { return w.cut.list }},
		{
			id: "grain", right: true, place: func(w *Window) fyne.CanvasObject { return w.findings.scroll },
			begin: (*tour).turnLeaves,
			done:  func(now, _ book.Design) bool { return !now.Paper.Turned },
			able:  (*Window).showsGrain,
		},
		{id: "why", place: func(w *Window) fyne.CanvasObject { return w.rowToShow("paper") }},
		{id: "paper", place: func(w *Window) fyne.CanvasObject { return w.rowToShow("page.width") }},
		{id: "kept", place: func(w *Window) fyne.CanvasObject { return w.status.saved }},
	}
}

// rowToShow brings a row into sight.
func (w *Window) rowToShow(key string) fyne.CanvasObject {
	r, _ := w.column.find(key)
	w.column.reveal(key)
	return r.row
}

// tour is a walk in progress: a frame round the place spoken of, and a card
// beside it. The window stays usable; what the maker changes on the way is
// theirs, and they are asked whether it stays.
type tour struct {
	window  *Window
	stops   []stop
	at      int
	then    book.Design // when the stop began
	begun   int         // the session's project that it began with
	start   project.Project
	back    func()
	mistake func() // puts the walk's own mistake right; nil where none is made

	layer            *fyne.Container
	frame            [4]fyne.CanvasObject // its sides
	card             fyne.CanvasObject
	title, count     *controls.Label
	text             *controls.Paragraph
	previous, onward *controls.Button
}

// takeTour begins the walk, or begins it anew.
func (w *Window) takeTour() {
	w.turnPage(designPage)
	if w.busy() {
		return
	}
	w.leaveTour()
	w.app.Preferences().SetBool(tourPreference, true)
	w.closeStrip()
	t := &tour{
		window: w, stops: stopsFor(w), begun: w.session.Begun(), start: w.session.Project(), back: w.session.Bookmark(), layer: w.over,
	}
	t.build()
	w.tour = t
	t.turnTo(0)
}

// endTour ends the walk and asks whether what the maker has changed on it stays;
// it says whether there was one.
func (w *Window) endTour() bool {
	t := w.tour
	if !w.leaveTour() {
		return false
	}
	if t.changed() {
		w.ask(words.Say("tour.keepTitle"), words.Say("tour.keepText"),
			answer{words.Say("tour.putBack"), controls.Framed, t.back},
			answer{words.Say("tour.keep"), controls.Solid, nil})
	}
	return true
}

// leaveTour ends the walk, its own mistake put right; it says whether there was
// one. What the maker has changed stays.
func (w *Window) leaveTour() bool {
	t := w.tour
	if t == nil {
		return false
	}
	t.mend()
	w.tour = nil
	t.layer.Objects = nil
	t.layer.Refresh()
	if !t.changed() {
		t.back() // its steps as well
	}
	return true
}

const tourWidth = float32(300)

func (t *tour) build() {
	w := t.window
	for i := range t.frame {
		t.frame[i] = controls.NewPaint(0, 0, func(p look.Palette) color.NRGBA { return p.Accent })
	}
	t.title, t.count = controls.NewLabel(controls.TitleLabel, ""), controls.NewEndLabel(controls.QuietLabel, "")
	t.text = controls.NewParagraph("")
	t.text.Resize(fyne.NewSize(tourWidth-28, 0))
	t.previous = controls.NewButton(controls.Framed, words.Say("tour.back"), func() { t.turnTo(t.at - 1) })
	t.onward = controls.NewButton(controls.Solid, words.Say("tour.next"), func() { t.turnTo(t.at + 1) })
	leave := controls.NewButton(controls.Plain, words.Say("tour.leave"), func() { w.endTour() })
	buttons := controls.Across(8, leave, controls.Spring(), t.previous, t.onward)
	body := controls.Inset(12, 12, 14, 14, controls.Down(8, controls.Across(8, t.title, controls.Spring(), t.count), t.text, buttons))
	edge := controls.NewPaint(0, 0, func(p look.Palette) color.NRGBA { return p.Quiet })
	ground := controls.NewPaint(0, 0, func(p look.Palette) color.NRGBA { return p.Card })
	t.card = container.NewStack(edge, controls.Inset(1, 1, 1, 1, container.NewStack(ground, body)))
	t.layer.Objects = []fyne.CanvasObject{t.frame[0], t.frame[1], t.frame[2], t.frame[3], t.card}
	t.layer.Layout = t
}

// turnTo goes to a stop; past the last the walk is over.
func (t *tour) turnTo(i int) {
	if i >= len(t.stops) {
		t.window.endTour()
		return
	}
	t.at = max(i, 0)
	s := t.stops[t.at]
	t.window.turnSide(s.right)
	t.mend()
	text := "tour." + s.id + ".text"
	if s.id == "grain" && t.window.session.Decisions().Design.Paper.Turned {
		text = "tour.grain.already"
	} else if s.begin != nil {
		s.begin(t)
	}
	t.then = t.window.session.Decisions().Design
	t.title.SetText(words.Say("tour." + s.id + ".title"))
	t.text.SetText(words.Say(text))
	t.count.SetText(words.Say("tour.count", words.With{"at": t.at + 1, "of": len(t.stops)}))
	t.onward.SetText(t.onwardWord(s))
	setVisible(t.previous, t.at > 0)
	t.layer.Refresh()
	t.window.win.Canvas().Focus(t.onward)
}

// typed is a key that no control had a use for; it says whether the walk has.
func (t *tour) typed(key fyne.KeyName) bool {
	switch key {
	case fyne.KeyRight, fyne.KeyReturn, fyne.KeyEnter:
		t.turnTo(t.at + 1)
	case fyne.KeyLeft:
		if t.at > 0 {
			t.turnTo(t.at - 1)
		}
	default:
		return false
	}
	return true
}

// onwardWord is what the button says that goes on.
func (t *tour) onwardWord(s stop) string {
	switch {
	case t.at == len(t.stops)-1:
		return words.Say("tour.end")
	case s.done != nil:
		return words.Say("tour.skip")
	}
	return words.Say("tour.next")
}

// follow goes on once what was asked has been done, and keeps to the place.
func (t *tour) follow() {
	s := t.stops[t.at]
	if s.done != nil && t.window.session.Moving() == "" && s.done(t.window.session.Decisions().Design, t.then) {
		t.turnTo(t.at + 1)
		return
	}
	t.layer.Refresh()
}

// Layout implements fyne.Layout: the frame round the place, the card beside it.
func (t *tour) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	driver := fyne.CurrentApp().Driver()
	place := t.stops[t.at].place(t.window)
	at := driver.AbsolutePositionForObject(place).Subtract(driver.AbsolutePositionForObject(t.layer))
	high := place.Size()
	seen := place.Visible() && high.Width > 0 && high.Height > 0
	t.round(at, high, seen)
	card := fyne.NewSize(tourWidth, t.card.MinSize().Height)
	t.card.Resize(card)
	t.card.Move(cardPlace(at, high, card, size, seen))
}

// MinSize implements fyne.Layout: the layer asks for no room.
func (t *tour) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// round puts the frame's sides round a place.
func (t *tour) round(at fyne.Position, size fyne.Size, seen bool) {
	const thick = float32(3)
	for i, side := range []struct{ x, y, width, height float32 }{
		{at.X, at.Y, size.Width, thick}, {at.X, at.Y + size.Height - thick, size.Width, thick},
		{at.X, at.Y, thick, size.Height}, {at.X + size.Width - thick, at.Y, thick, size.Height},
	} {
		setVisible(t.frame[i], seen)
		t.frame[i].Resize(fyne.NewSize(side.width, side.height))
		t.frame[i].Move(fyne.NewPos(side.x, side.y))
	}
}

// cardPlace is where the card stands: right of a place, else left of it, else over
// its lower part; always inside the window.
func cardPlace(at fyne.Position, size, card, window fyne.Size, seen bool) fyne.Position {
	const gap = float32(12)
	if !seen {
		return fyne.NewPos((window.Width-card.Width)/2, (window.Height-card.Height)/2)
	}
	x := at.X + size.Width + gap
	if x+card.Width > window.Width-gap {
		x = at.X - card.Width - gap
	}
	if x < gap {
		x = at.X + (size.Width-card.Width)/2
		at.Y += size.Height - card.Height - 2*gap
	}
	return fyne.NewPos(min(max(x, gap), max(gap, window.Width-card.Width-gap)),
		min(max(at.Y, gap), max(gap, window.Height-card.Height-gap)))
}
