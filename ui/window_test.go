package ui

import (
	"image/color"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
	"grainwise/ui/history"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// still is a drawing that never draws.
func still(s *session.Session, tips *controls.Tips) *middle {
	m := newMiddle(s, tips)
	m.pane.Stop()
	m.fading.wait = func(time.Duration, func()) {}
	return m
}

// long leaves a test out of the run under the race detector, which slows its
// many layouts down tenfold: nothing runs beside them.
func long(t *testing.T) {
	t.Helper()
	if testing.Short() {
		t.Skip("long")
	}
}

// openDemo is the window of the first start, 1280 × 720, without a display.
func openDemo(t testing.TB, change ...func(*Ports)) *Window {
	t.Helper()
	app := test.NewTempApp(t)
	app.Settings().SetTheme(look.Always(theme.VariantLight))
	folder := t.TempDir()
	ports := Ports{Project: project.Demo(), Favourites: project.FavouritesIn(folder), Recent: project.RecentIn(folder)}
	for _, c := range change {
		c(&ports)
	}
	w := assemble(app, ports, still)
	w.apart = func(work func() (then func())) { work()() } // the test has one goroutine
	t.Cleanup(func() { w.win.SetCloseIntercept(nil); w.win.Close() })
	w.Show()
	w.win.Resize(fyne.NewSize(1280, 720))
	return w
}

func (w *Window) rowOf(t *testing.T, key string) *controls.Row {
	t.Helper()
	r, _ := w.column.find(key)
	if r == nil || !w.column.reveal(key) {
		t.Fatalf("no row %s", key)
	}
	return r.row
}

// cutTo is the size of a line of the list to cut.
func (w *Window) cutTo(t *testing.T, id book.PartID) string {
	t.Helper()
	for i, p := range w.session.Book().Parts {
		if p.ID == id {
			return w.cut.lines[i].SizeText()
		}
	}
	t.Fatalf("no part %s", id)
	return ""
}

func (w *Window) step() string {
	undo, _ := w.session.Steps()
	return undo
}

// later moves the session's clock on.
func (w *Window) later(d time.Duration) {
	now := w.session.Now().Add(d)
	w.session.Now = func() time.Time { return now }
}

// The figures are demo.md's: at 236 mm instead of 210 every height grows by 26.
func TestADragChangesTheListAndIsOneStep(t *testing.T) {
	w := openDemo(t)
	if got := w.cutTo(t, book.PartBoard); got != "149 × 216" {
		t.Fatalf("boards at first %q", got)
	}
	row := w.rowOf(t, "page.height")
	y := row.Slider.Size().Height / 2
	from := fyne.NewPos(row.Slider.Along(210), y)
	press(row.Slider, from)
	for h := 211.0; h <= 236; h++ {
		row.Slider.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(row.Slider.Along(h), y)}})
	}
	if key := w.session.Moving(); key != "page.height" {
		t.Errorf("the drag moves %q", key)
	}
	for i, p := range w.session.Book().Parts {
		if got := w.cut.lines[i].ChangeText(); got != "+26 high" {
			t.Errorf("while it moves, %s says %q", p.ID, got)
		}
	}
	row.Slider.MouseUp(nil)
	row.Slider.DragEnd()
	if got, want := w.step(), "Page height 210 → 236 mm"; got != want {
		t.Errorf("the step is %q, want %q", got, want)
	}
	for id, want := range map[book.PartID]string{book.PartFolio: "300 × 236", book.PartBoard: "149 × 242", book.PartCovering: "368 × 278"} {
		if got := w.cutTo(t, id); got != want {
			t.Errorf("%s %q, want %q", id, got, want)
		}
	}
	if !strings.Contains(w.win.Title(), "not saved") || w.status.saved.Text() != "Not saved" {
		t.Errorf("title %q, status %q", w.win.Title(), w.status.saved.Text())
	}
	w.undo()
	if got := w.cutTo(t, book.PartBoard); got != "149 × 216" || w.step() != "" {
		t.Errorf("after undo: boards %q, next step %q", got, w.step())
	}
}

func TestAWrongTextKeepsTheLastGoodValue(t *testing.T) {
	w := openDemo(t)
	row := w.rowOf(t, "page.width")
	for _, c := range []struct{ text, want string }{
		{"wide", "Not a size. Try 187, 18.7 cm or 7 3/8 in."},
		{"7 3/0", "The lower figure of a fraction starts at 1. Try 7 3/8."},
		{"10 m", "Expected 60 to 420 mm"},
	} {
		if got := row.OnTake(c.text); got != c.want {
			t.Errorf("%q: %q, want %q", c.text, got, c.want)
		}
	}
	if _, problem := row.OnText("7 3/"); problem != "" {
		t.Errorf("an unfinished text is wrong: %q", problem)
	}
	if reads, _ := row.OnText("6 in"); reads != "= 152.4 mm" {
		t.Errorf("6 in reads %q", reads)
	}
	if w.step() != "" || row.State().Text != "150" {
		t.Errorf("the value became %q", row.State().Text)
	}
	if problem := row.OnTake("15.2 cm"); problem != "" || w.cutTo(t, book.PartFolio) != "304 × 210" {
		t.Errorf("15.2 cm: %q, folios %q", problem, w.cutTo(t, book.PartFolio))
	}
}

func TestTypedTextThroughTheKeyboard(t *testing.T) {
	w := openDemo(t)
	row := w.rowOf(t, "page.width")
	row.Edit(w.win.Canvas())
	focused := w.win.Canvas().Focused()
	test.Type(focused, "90000")
	focused.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if height := row.MinSize().Height; height != controls.WideRowHeight+controls.ErrorHeight {
		t.Errorf("the row with its error is %v high", height)
	}
	focused.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if w.step() != "" || row.MinSize().Height != controls.WideRowHeight {
		t.Error("Esc puts the last value back and takes the error away")
	}
}

func TestARemedyIsOneStepUnderItsName(t *testing.T) {
	w := openDemo(t)
	r, _ := w.column.find("paper.turned")
	r.row.OnChoose(1)
	card := w.findings.cards[0]
	if card.State().Level != look.Stop || card.State().Primary == "" || !card.State().Open {
		t.Fatalf("the worst card is %+v", card.State())
	}
	if got := r.row.State().Level; got != look.Stop {
		t.Errorf("the row's level is %v", got)
	}
	name := card.State().Primary
	card.OnPrimary()
	if w.step() != name || w.session.Decisions() != project.Demo().Decisions {
		t.Errorf("step %q, want %q and the demo's grain again", w.step(), name)
	}
	w.undo()
	if w.findings.cards[0].State().Level != look.Stop {
		t.Error("undo brings the finding back")
	}
}

func TestChoosingAFindingOpensTheWayToItsRow(t *testing.T) {
	w := openDemo(t)
	if err := w.session.Set("square.head", book.LengthValue(0)); err != nil {
		t.Fatal(err)
	}
	r, g := w.column.find("square.head")
	if r.row.Visible() {
		t.Fatal("the boards' group is folded at first")
	}
	i := w.findings.at("square-small square.head")
	if i < 0 {
		t.Fatalf("no finding of the square: %v", w.findings.found)
	}
	test.Tap(w.findings.cards[i])
	if !g.open || !r.row.Visible() || !r.row.State().Chosen || w.middle.chosen != book.PartBoard {
		t.Errorf("open %v, visible %v, chosen %v, part %q", g.open, r.row.Visible(), r.row.State().Chosen, w.middle.chosen)
	}
	top, bottom := w.column.scroll.Offset.Y, w.column.scroll.Offset.Y+w.column.scroll.Size().Height
	if at := r.row.Position().Y; at < top || at+r.row.Size().Height > bottom {
		t.Errorf("the row at %v is outside %v to %v", at, top, bottom)
	}
}

func TestAChosenCardStaysOpenUntilSomethingWorseComesUp(t *testing.T) {
	w := openDemo(t)
	isOpen := func(id string) bool {
		i := w.findings.open()
		return w.findings.found[i].ID == id && w.findings.cards[i].State().Open
	}
	note := w.findings.found[0]
	test.Tap(w.findings.cards[0])
	r, _ := w.column.find("paper.turned")
	r.row.OnChoose(1)
	if note.Level != check.Note || !isOpen("grain-paper") {
		t.Fatalf("the chosen %s hides the stop", note.ID)
	}
	test.Tap(w.findings.cards[w.findings.at(note.Identity())])
	widen(t, w, 151)
	if !isOpen(note.ID) {
		t.Error("nothing worse has come up, and the chosen card has shut")
	}
	if err := w.session.Set("square.head", book.LengthValue(0)); err != nil {
		t.Fatal(err)
	}
	if isOpen(note.ID) || w.findings.open() != 0 {
		t.Error("another stop has come up behind the chosen card")
	}
}

func TestOneClickGivesAValueBack(t *testing.T) {
	w := openDemo(t)
	row := w.rowOf(t, "joint.width")
	if problem := row.OnTake("12"); problem != "" {
		t.Fatal(problem)
	}
	if s := row.State(); s.Origin != controls.Typed || !strings.Contains(s.AutoText, "9 mm") {
		t.Errorf("after typing: %+v", s)
	}
	w.later(history.Patience + time.Second)
	test.Tap(row.Pill)
	if s := row.State(); s.Origin != controls.Auto || s.Text != "9" || w.step() != "Joint 12 → auto" {
		t.Errorf("given back: %+v, step %q", s, w.step())
	}
	measured := w.rowOf(t, "measured.spineThickness")
	measured.OnTake("14.1")
	if s := measured.State(); s.Origin != controls.Measured || w.cutTo(t, book.PartSpine) != "17 × 216" {
		t.Errorf("a measured spine: %+v, piece %q", s, w.cutTo(t, book.PartSpine))
	}
}

func TestAutomaticValuesSayWhy(t *testing.T) {
	w := openDemo(t)
	w.pointAt("spine.width")
	if got, want := w.status.about.Text(), "Block at the spine + one board: 13.37 + 2.5 = 15.87, rounded up"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	w.pointAt("")
	if got := w.status.about.Text(); got != "" {
		t.Errorf("pointing nowhere says %q", got)
	}
}

func TestTheUnitMovesNoSize(t *testing.T) {
	w := openDemo(t)
	before := w.session.Book().Parts
	w.setUnit(measure.Imperial)
	for i, p := range w.session.Book().Parts {
		if p != before[i] {
			t.Errorf("%v became %v", before[i], p)
		}
	}
	if w.step() != "" || w.session.Unsaved() {
		t.Error("showing inches is no change")
	}
	row := w.rowOf(t, "page.width")
	if s := row.State(); s.Unit != "in" || s.Slider.Step != 1.0/16 || row.OnTake("6") != "" {
		t.Errorf("in inches: %+v", s)
	}
	if got := w.session.Book().Resolved.Page.Width; got != 6*measure.Inch {
		t.Errorf("6 became %v", got)
	}
}

func TestEveryLabelFitsItsRow(t *testing.T) {
	openDemo(t)
	const narrow = 108 // the label's place in the narrow column
	for _, p := range book.Params() {
		if n := len([]rune(p.Short())); n > 16 {
			t.Errorf("%s: %q has %d letters", p.Key, p.Short(), n)
		}
		if width := look.Width(look.Body(""), p.Short()); width > narrow {
			t.Errorf("%s: %q is %.0f wide", p.Key, p.Short(), width)
		}
	}
}

func TestEveryGroupAndRowIsThere(t *testing.T) {
	w := openDemo(t)
	design := w.session.Decisions().Design
	for _, p := range book.Params() {
		if mute(p, design) {
			continue
		}
		row := w.rowOf(t, p.Key)
		if !row.Visible() || row.Size().Width < 300 {
			t.Errorf("%s: visible %v, %v", p.Key, row.Visible(), row.Size())
		}
		if row.Choice != nil && row.State().Choice < 0 {
			t.Errorf("%s shows no choice", p.Key)
		}
	}
	for _, g := range w.column.groups {
		if s := summary(g.id, w.session); s == "" || strings.ContainsAny(s, "{}") {
			t.Errorf("%s is summed up as %q", g.id, s)
		}
	}
}

func TestABadFileIsSaidOverTheDemo(t *testing.T) {
	_, trouble := project.Open(filepath.Join(t.TempDir(), "gone.grainwise"))
	w := openDemo(t, func(p *Ports) { p.Trouble = trouble })
	if len(w.sheets) != 1 || w.cutTo(t, book.PartFolio) != "300 × 210" {
		t.Errorf("%d sheets over %s", len(w.sheets), w.cutTo(t, book.PartFolio))
	}
	w.typedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if len(w.sheets) != 0 {
		t.Error("Esc closes the message")
	}
}

// The toolkit leaves out color.Transparent and paints every other colour, seen
// or not: a layer over the whole window once halved the frames of a drag.
func TestNothingUnseenIsPainted(t *testing.T) {
	w := openDemo(t)
	for _, o := range test.LaidOutObjects(w.win.Content()) {
		r, ok := o.(*canvas.Rectangle)
		if !ok || !r.Visible() {
			continue
		}
		for _, c := range []color.Color{r.FillColor, r.StrokeColor} {
			if c == nil || c == color.Color(color.Transparent) {
				continue
			}
			if _, _, _, alpha := c.RGBA(); alpha == 0 {
				t.Errorf("a rectangle of %v is painted in %v", r.Size(), c)
			}
		}
	}
}
