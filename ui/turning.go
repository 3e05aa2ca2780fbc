package ui

import (
	"fyne.io/fyne/v2"

	"grainwise/ui/preview"
)

// The pages of the window, in the order of their tabs.
const (
	designPage = iota
	sheetsAt
	papersAt
	batchAt
	materialsAt
	pageCount
)

// pageNames are their keys in the words.
var pageNames = [pageCount]string{"design", "sheets", "papers", "batch", "materials"}

// page is what stands in the design's place while its tab is on.
type page interface {
	shown() fyne.CanvasObject
	columns() *frame
	drawing() *preview.Pane             // nil on a page without one
	show()                              // brings it up to date
	focus(canvas fyne.Canvas, area int) // moves the focus to an area of it
}

// turnedTo are the pages that were on show before.
func (w *Window) turnedTo() []page {
	var all []page
	if w.sheetsPage != nil {
		all = append(all, w.sheetsPage)
	}
	if w.papersPage != nil {
		all = append(all, w.papersPage)
	}
	if w.batchPage != nil {
		all = append(all, w.batchPage)
	}
	if w.shelfPage != nil {
		all = append(all, w.shelfPage)
	}
	return all
}

// page is the page on show; nil for the design.
func (w *Window) page() page {
	switch w.pageAt {
	case sheetsAt:
		return w.sheetsPage
	case papersAt:
		return w.papersPage
	case batchAt:
		return w.batchPage
	case materialsAt:
		return w.shelfPage
	}
	return nil
}

// showPage brings the page on show up to date; the design is shown apart.
func (w *Window) showPage() {
	if p := w.page(); p != nil {
		p.show()
	}
}

// turnPage shows a page.
func (w *Window) turnPage(to int) {
	if to == w.pageAt {
		return
	}
	w.makePage(to)
	w.pageAt = to
	setVisible(w.design, to == designPage)
	for _, p := range w.turnedTo() {
		setVisible(p.shown(), p == w.page())
	}
	w.pages.turn(to)
	w.columns.Refresh()
	w.show()
}

// makePage makes a page when it is first turned to.
func (w *Window) makePage(to int) {
	switch {
	case to == sheetsAt && w.sheetsPage == nil:
		w.sheetsPage = newSheetsPage(w)
		w.columns.Add(w.sheetsPage.object)
	case to == papersAt && w.papersPage == nil:
		w.papersPage = newPapersPage(w)
		w.columns.Add(w.papersPage.object)
	case to == batchAt && w.batchPage == nil:
		w.batchPage = newBatchPage(w)
		w.columns.Add(w.batchPage.object)
	case to == materialsAt && w.shelfPage == nil:
		w.shelfPage = newMaterialsPage(w)
		w.columns.Add(w.shelfPage.object)
	}
}

// stepPage turns to the next page or the one before; they stand in a ring.
func (w *Window) stepPage(by int) { w.turnPage((w.pageAt + by + pageCount) % pageCount) }

// paneNow is the drawing on show, or that of the design.
func (w *Window) paneNow() *preview.Pane {
	if p := w.page(); p != nil && p.drawing() != nil {
		return p.drawing()
	}
	return w.middle.pane
}

// frameNow is the columns on show.
func (w *Window) frameNow() *frame {
	if p := w.page(); p != nil {
		return p.columns()
	}
	return w.frame
}
