// Package ui is the window: parameters left, drawing in the middle, findings
// and the list to cut right. It shows what package session holds and changes
// it; what is native comes in through ports.
package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/render/scene"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// Window is the program's one window and all that is in it.
type Window struct {
	app     fyne.App
	win     fyne.Window
	ports   Ports
	session *session.Session
	tips    *controls.Tips
	over    *fyne.Container // over the panels, for the walk
	tour    *tour           // nil but while one is taken

	frame      *frame
	columns    *fyne.Container // the pages, one on show
	design     fyne.CanvasObject
	sheetsPage *sheetsPage    // nil until it is turned to
	papersPage *papersPage    // likewise
	batchPage  *batchPage     // likewise
	drawings   output         // makes files of drawings
	shelfPage  *materialsPage // likewise
	shelf      shelfKeeping
	pageAt     int       // the page on show
	plans      *planning // of how sheets are cut; nil until a page asks
	pages      *pagesBar
	format     *formatHead
	column     *column
	middle     *middle
	findings   *findings
	cut        *cutList
	pins       pins
	compared   *comparedList
	status     *status
	menu       *menu
	keeping    keeping
	sheets     []*sheet // open ones, the topmost last
	waiting    bool     // a native dialog is open
	saving     *saving  // on its way; nil at rest
	ended      bool     // the window has been closed
	apart      func(work func() (then func()))
	textSize   int          // in per cent
	onWindow   func(func()) // does something on the window's goroutine
	pointed    string       // the row under the pointer
	focused    string       // the row chosen last
}

// The window at first: it fits a screen of 1280 × 720 with its bars.
const (
	startWidth  = 1240
	startHeight = 660
)

// New makes the window around a project; Show opens it.
func New(app fyne.App, ports Ports) *Window { return assemble(app, ports, newMiddle) }

// assemble leaves the making of the drawing to the caller: the tests' one stands
// still, for they have no goroutine that is the window's own.
func assemble(app fyne.App, ports Ports, drawing func(*session.Session, *controls.Tips) *middle) *Window {
	w := &Window{app: app, win: app.NewWindow(words.Say("window.name")), ports: ports, tips: controls.NewTips(), apart: onOwnThread, onWindow: ports.onWindow}
	if w.onWindow == nil {
		w.onWindow = fyne.Do
	}
	w.keeping = keeping{window: w, base: ports.Base}
	w.textSize = StoredTextSize(app)
	w.dressFirst()
	w.session = session.New(ports.Project, ports.Path)
	w.session.SetSystem(w.firstUnit())
	w.middle = drawing(w.session, w.tips)
	w.build()
	w.session.Listen(w.show)
	w.show()
	w.win.SetCloseIntercept(w.Quit)
	w.restore()
	return w
}

// Show opens the window; what went wrong before it was up is said in it.
func (w *Window) Show() {
	w.win.Show()
	if w.ports.Path != "" {
		w.remember(w.ports.Path)
	}
	w.readStudio()
	w.readShelf()
	if w.ports.Kept {
		w.keeping.begin()
	}
	switch trouble := w.ports.Trouble; {
	case ofNewer(trouble):
		w.lookAt(w.ports.Asked)
	case trouble != nil:
		w.complain(trouble)
	}
	if w.ports.Kept {
		w.offerRecovered()
	}
}

func (w *Window) build() {
	w.column = newColumn(w.session, w.tips, w.chooseRow, w.pointAt)
	w.findings = newFindings(w.session)
	w.cut = newCutList(w.session)
	w.pins.changed = w.show
	w.compared = newComparedList(w)
	w.middle.pinned = w.pins.ghost
	w.status = newStatus(w.session)
	w.status.unsaved = w.keeping.state
	w.pages = newPagesBar(w)
	w.format = newFormatHead(w)
	w.menu = newMenu(w)
	w.join()
	w.showStrip()
	w.win.SetPadded(false)
	w.win.SetMainMenu(w.menu.main)
	w.over = container.NewWithoutLayout()
	w.win.SetContent(container.NewStack(w.body(), w.over, w.tips))
	w.win.Canvas().SetOnTypedKey(w.typedKey)
	w.listenToKeys()
	w.win.SetOnDropped(w.drop)
	w.app.Settings().AddListener(func(fyne.Settings) {
		w.middle.draw()
		w.format.show()
		w.showPage()
	})
}

func (w *Window) body() fyne.CanvasObject {
	left := controls.Around(w.format.object(), nil, nil, nil, w.column.scroll)
	findings := w.findings.object()
	right := container.New(&rightColumn{findings, w.cut.list, w.compared.list}, findings, w.cut.list, w.compared.list)
	f := &frame{left: left, leftLine: controls.NewHairline(), middle: w.middle.box, rightLine: controls.NewHairline(), right: right}
	w.frame, f.changed = f, func(narrow bool) { w.pages.offerSides(narrow) }
	f.widened = func(left, right float32) {
		w.format.fit(left)
		w.cut.fit(right)
	}
	w.design = container.New(f, f.left, f.leftLine, f.middle, f.rightLine, f.right)
	w.columns = container.NewStack(w.design)
	top := controls.Down(0, w.pages.object(), controls.NewHairline())
	foot := controls.Down(0, controls.NewHairline(), w.status.object())
	return controls.Around(top, foot, nil, nil, w.columns)
}

// join connects the panels with each other: finding, parameter and part lead
// to one another.
func (w *Window) join() {
	w.middle.rested = w.cut.show
	w.cut.before = w.middle.fading.figures
	w.middle.turned = func() {
		w.menu.show()
		w.showPage()
	}
	w.column.why = w.whyParam
	w.findings.choose = w.chooseFinding
	w.findings.point = w.middle.point
	w.findings.mend = w.mend
	w.findings.leave = w.leaveSheet
	w.findings.left.sayAgain = w.session.SayAgain
	w.findings.copy = func(text string) { w.app.Clipboard().SetContent(text) }
	w.middle.reader.OnCopy = w.findings.copy
	w.findings.why = w.whyFinding
	w.findings.draw = w.wordless
	w.cut.choose = func(part book.PartID) { w.chooseTag(scene.Tag{Part: string(part)}, false) }
	w.cut.point = w.middle.point
	w.middle.pane.OnPick = func(part book.PartID) { w.tips.Out(w.middle.pane); w.chooseTag(scene.Tag{Part: string(part)}, false) }
	w.middle.pane.OnOpen = func(tag scene.Tag) { w.tips.Out(w.middle.pane); w.chooseTag(tag, true) }
	w.middle.pane.OnHover = w.hover
}

// show brings everything up to date after a change.
func (w *Window) show() {
	w.followShelf()
	w.column.show(levels(w.session.Findings()))
	w.findings.show()
	w.cut.show()
	w.compared.show()
	setVisible(w.cut.list, w.pins.ghost() == nil)
	w.middle.show()
	w.pages.show()
	w.format.show()
	w.status.show()
	w.menu.show()
	w.keeping.show()
	w.tellAbout()
	w.showPage()
	if w.tour != nil {
		w.tour.follow()
	}
	if title := w.title(); title != w.win.Title() {
		w.win.SetTitle(title)
	}
}

// title is the file's name with a mark while it is not saved, and the program's.
func (w *Window) title() string {
	name := w.name()
	if w.keeping.looked != "" {
		name = words.Say("look.name", words.With{"name": name})
	}
	if w.session.Unsaved() {
		name = words.Say("window.unsaved", words.With{"name": name})
	}
	return words.Say("window.title", words.With{"name": name})
}

// name is the file's, or that of a project without a file.
func (w *Window) name() string {
	if name := fileName(w.session.Path()); name != "" {
		return name
	}
	if name := fileName(w.keeping.looked); name != "" {
		return name
	}
	return w.session.Project().Name
}

// chooseRow marks a row, and its part in the drawing.
func (w *Window) chooseRow(key string) {
	w.focused = key
	w.column.mark(key)
	if p, ok := book.Lookup(key); ok {
		w.choosePart(p.Part)
	}
	w.menu.show()
	w.tellAbout()
}

func (w *Window) choosePart(part book.PartID) {
	w.middle.choose(part)
	if w.cut.chosen != part {
		w.cut.chosen = part
		w.cut.show()
	}
}

// chooseFinding opens the way to the row that a finding speaks of.
func (w *Window) chooseFinding(f check.Finding) {
	w.turnSide(true)
	w.chooseRow(f.Key)
	w.choosePart(f.Part)
	w.column.reveal(f.Key)
}

// chooseTag turns to what was picked in the drawing or the list; with focus
// its first row takes the keyboard.
func (w *Window) chooseTag(tag scene.Tag, focus bool) {
	key := first(tag)
	w.column.mark(key)
	w.choosePart(book.PartID(tag.Part))
	if key == "" || !w.column.reveal(key) {
		return
	}
	if r, _ := w.column.find(key); focus {
		r.row.Focus(w.win.Canvas())
	}
}

// pointAt tells which row the pointer is on.
func (w *Window) pointAt(key string) {
	w.pointed = key
	part := book.PartID("")
	if p, ok := book.Lookup(key); ok {
		part = p.Part
	}
	w.middle.point(part)
	w.tellAbout()
}

// tellAbout explains the row under the pointer, or else the one chosen last.
func (w *Window) tellAbout() {
	key := w.pointed
	if key == "" {
		key = w.focused
	}
	if said := w.afterMeasure(key); said != "" {
		w.status.say(said)
	} else if r, _ := w.column.find(key); r != nil {
		w.status.say(r.about())
	} else {
		w.status.say("")
	}
}

// mend takes a finding's remedy: one step to undo.
func (w *Window) mend(f check.Finding) {
	if f.ID == measureFirst && f.Remedy == nil {
		w.openMeasure()
		return
	}
	d, err := f.Remedy.Apply(w.session.Decisions())
	if err != nil {
		w.complain(err)
		return
	}
	area := w.area()
	w.session.Apply(f.Remedy.Label(), d)
	if area == findingsArea { // the button pressed has gone with its finding
		w.focusArea(area)
	}
}

// headPadding keeps the head of the left column off its edges.
const headPadding = float32(6)
