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
	galleryWide  = 5
	pictureInset = float32(10)
	captionRoom  = float32(62)
)

// gallery is the sheet of favourite formats, all drawn at one scale.
type gallery struct {
	window *Window
	sheet  *sheet
	grid   *fyne.Container
	scroll *container.Scroll
	cards  []*controls.PictureCard
}

func (w *Window) openGallery() {
	if w.busy() {
		return
	}
	g := &gallery{window: w, grid: container.New(cardGrid{})}
	g.scroll = container.NewVScroll(g.grid)
	content := controls.Around(controls.Inset(0, 10, 0, 0, controls.NewLabel(controls.QuietLabel, words.Say("gallery.text"))), nil, nil, nil, g.scroll)
	canvas := w.win.Canvas().Size()
	size := fyne.NewSize(galleryWide*cardWidth+(galleryWide-1)*cardGap+24, min(2*cardHeight+cardGap+132, canvas.Height-60))
	g.sheet = w.openSheet(words.Say("gallery.title"), content, size,
		controls.NewButton(controls.Framed, words.Say("gallery.keep"), func() { w.keepFavouriteThen(g.fill) }),
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.close"), func() { g.sheet.close() }))
	g.fill()
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
	formats := g.window.formats()
	books := make([]book.Book, len(formats))
	for i, f := range formats {
		books[i] = g.window.inFormat(f)
	}
	room := fyne.NewSize(cardWidth-2*pictureInset, cardHeight-captionRoom)
	scale := oneScale(books, room)
	g.grid.Objects, g.cards = nil, nil
	for i, f := range formats {
		g.add(f, books[i], g.window.thumbnail(books[i], room, scale))
	}
	g.grid.Refresh()
	g.scroll.Refresh()
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
	card.Set(f.Label(), caption, own)
	card.SetPicture(picture)
	g.cards = append(g.cards, card)
	if !f.Yours {
		g.grid.Add(card)
		return
	}
	buttons := controls.Across(0, controls.Spring(),
		controls.NewButton(controls.Plain, words.Say("gallery.rename"), func() { g.rename(f) }),
		controls.NewButton(controls.Plain, words.Say("gallery.delete"), func() { g.remove(f) }))
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
		g.fill()
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
func (w *Window) keepFavourite() { w.keepFavouriteThen(func() {}) }

func (w *Window) keepFavouriteThen(then func()) {
	name := session.Name(w.session.Book(), w.session.System())
	w.askName(words.Say("gallery.keepTitle"), name, words.Say("gallery.keepDo"), func(name string) error {
		format := project.FromDesign(name, w.session.Decisions().Design)
		err := w.ports.Favourites.Save(format, false)
		if err != nil {
			return reasonOf(err)
		}
		then()
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

// cardGrid stands cards in rows of five.
type cardGrid struct{}

// Layout implements fyne.Layout.
func (cardGrid) Layout(objects []fyne.CanvasObject, _ fyne.Size) {
	for i, o := range objects {
		o.Resize(fyne.NewSize(cardWidth, cardHeight))
		o.Move(fyne.NewPos(float32(i%galleryWide)*(cardWidth+cardGap), float32(i/galleryWide)*(cardHeight+cardGap)))
	}
}

// MinSize implements fyne.Layout.
func (cardGrid) MinSize(objects []fyne.CanvasObject) fyne.Size {
	rows := float32((len(objects) + galleryWide - 1) / galleryWide)
	return fyne.NewSize(galleryWide*cardWidth+(galleryWide-1)*cardGap, rows*cardHeight+max(0, rows-1)*cardGap)
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
