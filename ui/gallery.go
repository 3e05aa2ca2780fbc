package ui

import (
	"errors"
	"image"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// The gallery's cards, and the room for a book on each.
const (
	cardWidth    = float32(186)
	cardHeight   = float32(206)
	cardGap      = float32(7)
	barRoom      = float32(10) // for the scroll bar, beside the cards
	galleryMost  = 5           // cards in a row
	pictureInset = float32(10)
	captionRoom  = float32(62)
)

// gallery is the sheet of favourite formats, all drawn at one scale.
type gallery struct {
	window *Window
	sheet  *sheet
	grid   *fyne.Container
	scroll *container.Scroll
	text   *controls.Label

	formats []project.Format // one a card
}

func (w *Window) openGallery() {
	if w.busy() {
		return
	}
	g := &gallery{window: w, grid: container.New(&cardGrid{}), text: controls.NewLabel(controls.QuietLabel, "")}
	g.scroll = container.NewVScroll(g.grid)
	content := controls.Around(controls.Inset(0, 10, 0, 0, g.text), nil, nil, nil, g.scroll)
	canvas := w.win.Canvas().Size()
	size := fyne.NewSize(galleryWidth(canvas.Width), min(2*cardHeight+cardGap+132, canvas.Height-60))
	g.sheet = w.openSheet(words.Say("gallery.title"), content, size,
		controls.NewButton(controls.Framed, words.Say("gallery.keep"), func() { w.keepFavouriteThen(g.reveal) }),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.close"), func() { g.sheet.close() }))
	g.fill()
	w.win.Canvas().Focus(g.first())
}

// about says what picking does, and where the maker's own will stand while there
// are none.
func (g *gallery) about() string {
	for _, f := range g.formats {
		if f.Yours {
			return words.Say("gallery.text")
		}
	}
	return words.Say("gallery.text") + " " + words.Say("gallery.noneOwn")
}

// first is the first card, for the keyboard to begin with.
func (g *gallery) first() fyne.Focusable {
	if card, ok := g.grid.Objects[0].(fyne.Focusable); ok {
		return card
	}
	return nil
}

// formats are the built-in ones and the maker's own; a list that could not be
// read is said once and shown empty.
func (w *Window) formats() []project.Format {
	own, err := w.ports.Favourites.List()
	if err != nil {
		w.complain(err)
	}
	return append(project.BuiltIn(), own...)
}

// fill makes the cards anew.
func (g *gallery) fill() {
	g.formats = g.window.formats()
	books := make([]book.Book, len(g.formats))
	for i, f := range g.formats {
		books[i] = g.window.inFormat(f)
	}
	room := fyne.NewSize(cardWidth-2*pictureInset, cardHeight-captionRoom)
	scale := oneScale(books, room)
	g.text.SetText(g.about())
	g.grid.Objects = nil
	for i, f := range g.formats {
		g.add(f, books[i], g.window.thumbnail(books[i], room, scale))
	}
	g.grid.Refresh()
	g.scroll.Refresh()
}

// reveal makes the cards anew and scrolls to the maker's own of that name.
func (g *gallery) reveal(name string) {
	g.fill()
	for i, f := range g.formats {
		if f.Yours && f.Name == name {
			g.scroll.ScrollToOffset(g.grid.Objects[i].Position().SubtractXY(0, cardGap))
		}
	}
}

// inFormat is the book that a format would make of the present one.
func (w *Window) inFormat(f project.Format) book.Book {
	d, err := f.Apply(w.session.Decisions().Design)
	if err != nil {
		return w.session.Book()
	}
	return book.Compute(book.Resolve(book.Decisions{Design: d}, w.session.Shelf()))
}

func (g *gallery) add(f project.Format, b book.Book, picture image.Image) {
	card := controls.NewPictureCard(cardWidth, cardHeight, func() { g.take(f) })
	own := ""
	if f.Yours {
		own = words.Say("gallery.yours")
	}
	caption := words.Say("gallery.extent", words.With{
		"size":   session.Size(b.Resolved.Page.Width, b.Resolved.Page.Height, g.window.session.System()),
		"leaves": b.Block.Leaves,
	})
	card.OnFocus = whenFocused(func() { bringIn(g.scroll, card) })
	card.Set(f.Label(), caption, own)
	card.SetPicture(picture)
	if !f.Yours {
		g.grid.Add(card)
		return
	}
	rename := controls.NewButton(controls.Plain, words.Say("gallery.rename"), func() { g.rename(f) })
	remove := controls.NewButton(controls.Plain, words.Say("gallery.delete"), func() { g.remove(f) })
	rename.OnFocus, remove.OnFocus = card.OnFocus, card.OnFocus
	buttons := controls.Across(0, controls.Spring(), rename, remove)
	g.grid.Add(container.NewStack(card, container.New(onTop{}, buttons)))
}

// take gives the book the format: one step to undo. Measures were of a block
// of another size.
func (g *gallery) take(f project.Format) {
	s := g.window.session
	design, err := f.Apply(s.Decisions().Design)
	if err != nil {
		g.window.complain(err)
		return
	}
	g.sheet.close()
	next := book.Decisions{Design: design}
	if design == s.Decisions().Design {
		next = s.Decisions()
	}
	s.Apply(words.Say("step.format", words.With{"name": f.Label()}), next)
	g.window.closeStrip()
}

func (g *gallery) rename(f project.Format) {
	g.window.askName(words.Say("gallery.renameTitle"), f.Name, words.Say("gallery.rename"), func(name string) error {
		if err := g.window.ports.Favourites.Rename(f.Name, name); err != nil {
			return reasonOf(err)
		}
		g.reveal(name)
		return nil
	})
}

func (g *gallery) remove(f project.Format) {
	g.window.ask(words.Say("gallery.deleteTitle", words.With{"name": f.Name}), words.Say("gallery.deleteText"),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("gallery.delete"), controls.Solid, func() {
			if err := g.window.ports.Favourites.Delete(f.Name); err != nil {
				g.window.complain(err)
			}
			g.fill()
		}})
}

// keepFavourite saves the present book's sizes under a name.
func (w *Window) keepFavourite() { w.keepFavouriteThen(func(string) {}) }

func (w *Window) keepFavouriteThen(then func(name string)) {
	name := session.Name(w.session.Book(), w.session.System())
	w.askName(words.Say("gallery.keepTitle"), name, words.Say("gallery.keepDo"), func(name string) error {
		format := project.FromDesign(name, w.session.Decisions().Design)
		err := w.ports.Favourites.Save(format, false)
		if err != nil {
			return reasonOf(err)
		}
		w.status.say(words.Say("status.kept", words.With{"name": format.Name}))
		then(format.Name)
		return nil
	})
}

// reasonOf leaves the file's name out: the maker asked for no file.
func reasonOf(err error) error {
	var problem *project.Problem
	if errors.As(err, &problem) {
		return errors.New(sentence(problem.Reason))
	}
	return err
}

// galleryWidth is that of a sheet with cards, in a window so wide.
func galleryWidth(window float32) float32 {
	cards := float32(cardsIn(window - 40 - 2*sheetSide - barRoom))
	return cards*cardWidth + (cards-1)*cardGap + 2*sheetSide + barRoom
}

// cardsIn is how many cards stand side by side in a width.
func cardsIn(width float32) int {
	return max(1, min(galleryMost, int((width+cardGap)/(cardWidth+cardGap))))
}

// cardGrid stands cards in rows, as many in each as there is room for.
type cardGrid struct{ width float32 }

// Layout implements fyne.Layout.
func (g *cardGrid) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	g.width = size.Width
	n := cardsIn(g.width)
	for i, o := range objects {
		o.Resize(fyne.NewSize(cardWidth, cardHeight))
		o.Move(fyne.NewPos(float32(i%n)*(cardWidth+cardGap), float32(i/n)*(cardHeight+cardGap)))
	}
}

// MinSize implements fyne.Layout.
func (g *cardGrid) MinSize(objects []fyne.CanvasObject) fyne.Size {
	n := galleryMost
	if g.width > 0 {
		n = cardsIn(g.width)
	}
	rows := float32((len(objects) + n - 1) / n)
	return fyne.NewSize(cardWidth, rows*cardHeight+max(0, rows-1)*cardGap)
}

// onTop lays a line of buttons over the upper edge of a card.
type onTop struct{}

// Layout implements fyne.Layout.
func (onTop) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	for _, o := range objects {
		o.Resize(fyne.NewSize(size.Width-6, o.MinSize().Height))
		o.Move(fyne.NewPos(3, 3))
	}
}

// MinSize implements fyne.Layout.
func (onTop) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }
