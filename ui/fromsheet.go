package ui

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/raster"
	"grainwise/render/view"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// sheetKeys are what the sizes from a sheet of paper depend on.
var sheetKeys = [...]string{"paper", "paper.sheetLength", "paper.sheetWidth", "paper.lostEdges"}

// fromSheet shows the pages that a sheet of paper divides into. The paper being
// tried is a session of its own until a size is taken.
type fromSheet struct {
	window *Window
	tried  *session.Session
	rows   []*parameter
	sheet  *sheet
	grid   *fyne.Container
	scroll *container.Scroll
	none   *controls.Label

	shown []book.Division // one a card
}

// openFromSheet is the menu's and the greeting's way in.
func (w *Window) openFromSheet() {
	if !w.busy() {
		newFromSheet(w)
	}
}

func newFromSheet(w *Window) *fromSheet {
	f := &fromSheet{window: w, tried: withGrain(w.session), grid: container.New(&cardGrid{}),
		none: controls.NewLabel(controls.QuietLabel, words.Say("paper.none"))}
	f.scroll = container.NewVScroll(controls.Down(0, f.none, f.grid))
	size := fyne.NewSize(galleryWidth(w.win.Canvas().Size().Width), w.win.Canvas().Size().Height-60)
	content := controls.Around(controls.Inset(0, 10, 0, 0, f.head(size.Width-2*sheetSide)), nil, nil, nil, f.scroll)
	f.sheet = w.openSheet(words.Say("paper.title"), content, size,
		controls.Spring(),
		controls.NewButton(controls.Framed, words.Say("sheet.close"), func() { f.sheet.close() }))
	f.tried.Listen(f.show)
	f.show()
	return f
}

// withGrain is a session on a copy of the project whose folios lie with the
// grain along the spine.
func withGrain(s *session.Session) *session.Session {
	p := s.Project()
	p.Decisions.Design.Paper.Turned = false
	tried := session.New(p, "")
	tried.SetOwn(s.Own())
	tried.SetSystem(s.System())
	return tried
}

// head is the paper's rows, as many abreast as there is room for, under a line
// of explanation.
func (f *fromSheet) head(width float32) fyne.CanvasObject {
	rows := container.NewGridWithColumns(max(1, min(2, int(width/sheetRowWidth))))
	for _, key := range sheetKeys {
		p, _ := book.Lookup(key)
		r := newParameter(p, f.tried, f.window.tips)
		f.rows = append(f.rows, r)
		rows.Add(controls.Fixed(sheetRowWidth, 0, r.row))
	}
	return controls.Down(2, controls.NewLabel(controls.QuietLabel, words.Say("paper.text")), rows)
}

const sheetRowWidth = float32(360) // at least

// show brings rows and cards up to date with the paper being tried.
func (f *fromSheet) show() {
	for _, r := range f.rows {
		r.show(look.None, false)
	}
	b := f.tried.Book()
	f.shown = b.Divisions()
	setVisible(f.none, len(f.shown) == 0)
	f.grid.Objects = nil
	for _, d := range f.shown {
		f.grid.Add(f.card(b, d))
	}
	f.grid.Refresh()
	f.scroll.Refresh()
}

func (f *fromSheet) card(b book.Book, d book.Division) fyne.CanvasObject {
	system := f.tried.System()
	card := controls.NewPictureCard(cardWidth, cardHeight, func() { f.take(d) })
	now := ""
	if width, height, ok := b.RoomToGrow(); ok && width == d.Width && height == d.Height {
		now = words.Say("paper.now")
	}
	card.Set(session.Size(d.Width, d.Height, system)+" "+system.Label(), divisionWords(d), now)
	card.SetPicture(f.window.divided(b, d))
	return card
}

// divisionWords is how much of the sheet a division uses: "8 folios, 97 %".
func divisionWords(d book.Division) string {
	key := "paper.folios"
	if d.Cut.Total == 1 {
		key = "paper.oneFolio"
	}
	return words.Say(key, words.With{"count": d.Cut.Total, "share": int(math.Floor(100 * d.Share))})
}

// divided is the picture of a division on a card.
func (w *Window) divided(b book.Book, d book.Division) image.Image {
	room := fyne.NewSize(cardWidth-2*pictureInset, cardHeight-captionRoom)
	s := view.Divided(b, d, view.ThumbFrame{Width: float64(room.Width), Height: float64(room.Height), Ground: cardGround()})
	return raster.Image(s, int(room.Width*w.win.Canvas().Scale()))
}

// take gives the book the size and the paper: one step to undo. Measures were of
// a block of another size.
func (f *fromSheet) take(d book.Division) {
	f.sheet.close()
	next := f.tried.Decisions()
	next.Design.Page.Width, next.Design.Page.Height = d.Width, d.Height
	s := f.window.session
	if next.Design != s.Decisions().Design {
		next.Measured = book.Measured{}
	}
	s.Apply(words.Say("step.fromPaper", words.With{"size": session.Size(d.Width, d.Height, s.System())}), next)
	f.window.closeStrip()
}
