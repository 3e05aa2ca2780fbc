package ui

import (
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/ui/controls"
)

// openSheets is the demo's window with the Sheets page on show, everything
// planned at once on the test's goroutine.
func openSheets(t *testing.T, set ...string) *Window {
	t.Helper()
	w := openDemo(t)
	for i := 0; i+1 < len(set); i += 2 {
		w.set(t, map[string]string{set[i]: set[i+1]})
	}
	w.sheetsPage = newSheetsPage(w)
	w.sheetsPage.pane.Stop()
	w.sheetsPage.plans.onWindow = func(do func()) { do() }
	w.columns.Add(w.sheetsPage.object)
	w.turnPage(sheetsAt)
	return w
}

// said is all that the summary says.
func (w *Window) said() string {
	return strings.Join(texts(w.sheetsPage.summary.list.Objects), "\n")
}

// Source: the demo's table for its 14 white books: 42 sheets, 8 folios a sheet,
// 9 across the grain; the offcut strip of 154 mm gives folios of pocket books.
func TestSheetsPageOfTheDemo(t *testing.T) {
	w := openSheets(t, "copies", "14")
	if need, state := w.sheetsPage.inShort(w.sheetsPage.plans.of(w.jobs()[0])); need != "42" || state != "proved fewest" {
		t.Errorf("%s sheets, %s", need, state)
	}
	for _, want := range []string{
		"42 sheets", "No plan can do with fewer", "No sheet can hold more than 8", "all that is wanted weighs 336",
		"8 a sheet; across the grain 9: refused", "Stop: The thickness is only estimated", "Check: These sheets leave no piece to spare",
		"694 × 154", "Pocket",
	} {
		if !strings.Contains(w.said(), want) {
			t.Errorf("the summary lacks %q:\n%s", want, w.said())
		}
	}
}

// Each line turns to its material; the copies are planned anew, and undone on
// this page as on the other.
func TestSheetsPageFollows(t *testing.T) {
	w := openSheets(t, "copies", "24")
	p := w.sheetsPage
	if paper := w.said(); !strings.Contains(paper, "72 sheets; 72 % ends up in the pieces") || !strings.Contains(paper, "Still gives folios for") {
		t.Errorf("the paper: %s", paper)
	}
	p.lines[4].OnTapped()
	if cloth := w.said(); !strings.Contains(cloth, "244 × 252") || strings.Contains(cloth, "Still gives folios for") {
		t.Errorf("cloth gives no folios: %s", cloth)
	}
	p.lines[2].OnTapped()
	if p.chosen != 2 || !strings.Contains(w.said(), "3 sheets") {
		t.Errorf("the boards: %s", w.said())
	}
	w.set(t, map[string]string{"copies": "48"})
	if !strings.Contains(w.said(), "6 sheets") {
		t.Errorf("48 books' boards: %s", w.said())
	}
	w.undo()
	if !strings.Contains(w.said(), "3 sheets") {
		t.Errorf("undone: %s", w.said())
	}
}

// A folio that no sheet holds says by how much, and whether it would fit turned.
func TestSheetsPageTellsTrouble(t *testing.T) {
	w := openSheets(t, "paper.sheetLength", "320 mm", "paper.sheetWidth", "290 mm")
	for _, want := range []string{"Folio: too large for the sheet, by 16 mm wide", "Turned it would fit, but the grain forbids it."} {
		if !strings.Contains(w.said(), want) {
			t.Errorf("the summary lacks %q:\n%s", want, w.said())
		}
	}
	w.set(t, map[string]string{"paper.sheetLength": "300 mm"})
	if !strings.Contains(w.said(), "by 16 mm wide") || strings.Contains(w.said(), "Turned") {
		t.Errorf("nothing fits either way:\n%s", w.said())
	}
}

// A click on the map takes that size in one step; a place beside it does
// nothing.
func TestMapTakesASize(t *testing.T) {
	w := openSheets(t)
	p := w.sheetsPage
	p.take(500, 400, 1000, 800) // the cutting view is on show
	before := w.session.Book().Resolved.Page
	p.at = 1
	p.take(20, 20, 1000, 800)
	if w.session.Book().Resolved.Page != before {
		t.Error("a click beside the map moved the page")
	}
	p.take(500, 400, 1000, 800)
	if w.session.Book().Resolved.Page == before {
		t.Error("a click on the map moved nothing")
	}
	w.undo()
	if w.session.Book().Resolved.Page != before {
		t.Error("it takes more than one step to undo")
	}
	p.growth.lines[0].OnTapped()
	if page := w.session.Book().Resolved.Page; page.Width != measure.MM(173) || page.Height != measure.MM(248) {
		t.Errorf("room to grow gives %v × %v, the demo's story says 173 × 248", page.Width, page.Height)
	}
}

// Stop leaves what is not planned unplanned, and says so; search on plans it.
func TestPlanningStopsAndGoesOn(t *testing.T) {
	var waiting []func()
	p := newPlanning(nil, func(do func()) { do() }, func() {})
	p.begin = func(work func()) { waiting = append(waiting, work) }
	w := openDemo(t)
	jobs := sheets.Jobs(w.session.Book(), 3)
	p.want(jobs, sheets.Bench{})
	if !p.busy() || p.of(jobs[0]).state != planSearching || p.of(jobs[1]).state != planWaiting {
		t.Fatal("the first job is not being planned")
	}
	p.stop()
	waiting[0]() // its news comes too late
	if p.busy() || p.of(jobs[0]).state != planStopped || p.of(jobs[1]).state != planStopped {
		t.Fatalf("not stopped: %v %v", p.of(jobs[0]).state, p.of(jobs[1]).state)
	}
	p.resume(jobs[1])
	for i := 1; i < len(waiting); i++ {
		waiting[i]()
	}
	for _, j := range jobs {
		if m := p.of(j); m.state != planDone || !m.cutting.Plan.Proved() {
			t.Errorf("%s is not planned: %v", j.Material.Name, m.state)
		}
	}
}

// What is planned is not planned again, and a newer wish drops the older one.
func TestPlanningKeepsWhatItHas(t *testing.T) {
	begun := 0
	p := newPlanning(nil, func(do func()) { do() }, func() {})
	p.begin = func(work func()) { begun++; work() }
	w := openDemo(t)
	jobs := sheets.Jobs(w.session.Book(), 3)
	p.want(jobs, sheets.Bench{})
	first := begun
	p.want(jobs[:2], sheets.Bench{})
	p.want(jobs, sheets.Bench{})
	if begun != first || first != len(jobs) {
		t.Errorf("%d plans made, then %d", first, begun-first)
	}
}

// F6 goes through the Sheets page as through the other, and its keys turn the
// page.
func TestSheetsPageByKeyboard(t *testing.T) {
	w := openSheets(t)
	seen := map[int]bool{}
	for range areas {
		w.nextArea(1)
		time.Sleep(time.Millisecond)
		seen[w.area()] = true
	}
	if len(seen) != areas || seen[-1] {
		t.Errorf("F6 reaches the areas %v", seen)
	}
	next, _ := commandOf("nextPage")
	last, ok := commandOf("lastPage")
	if !ok {
		t.Fatal("no key turns the page")
	}
	w.run(last)
	if w.pageAt != designPage || !w.design.Visible() || w.sheetsPage.object.Visible() {
		t.Error("the Design page is not on show")
	}
	w.run(next)
	if w.pageAt != sheetsAt || w.design.Visible() || !w.sheetsPage.object.Visible() {
		t.Error("the Sheets page is not on show")
	}
}

// The columns leave no text out of their width.
func TestSheetsPageInANarrowWindow(t *testing.T) {
	w := openSheets(t, "copies", "24")
	w.win.Resize(fyne.NewSize(1280, 720))
	for _, line := range w.sheetsPage.lines {
		if line.Visible() && line.Size().Width > 361 {
			t.Errorf("a line is %v wide", line.Size().Width)
		}
	}
}

// An offcut that is kept is used before new sheets; pressed again it is gone.
// Source: the demo's story, the white strip of 154 × 694; its folio is 300 × 210,
// so that 42 sheets stay 42, and a strip of pocket folios would serve.
func TestOffcutsAreKept(t *testing.T) {
	w := openSheets(t, "copies", "14")
	folder := t.TempDir()
	w.ports.Studio = project.StudioIn(folder)
	press := func(want string) {
		t.Helper()
		for _, o := range w.sheetsPage.summary.list.Objects {
			if line, is := o.(*controls.LineItem); is && strings.HasPrefix(line.NameText(), want) {
				line.OnTapped()
				return
			}
		}
		t.Fatalf("no line %q:\n%s", want, w.said())
	}
	press("A1,")
	if kept := w.session.Studio().Offcuts; len(kept) != 1 || kept[0].Times != 42 || kept[0].Length != measure.MM(154) || kept[0].Width != measure.MM(694) {
		t.Fatalf("kept %+v", kept)
	}
	if again, err := project.StudioIn(folder).Read(); err != nil || len(again.Offcuts) != 1 {
		t.Errorf("the file holds %+v, %v", again.Offcuts, err)
	}
	// A landscape page 70 mm high: its folios are cut from the strips first.
	w.set(t, map[string]string{"page.height": "70 mm", "page.width": "150 mm"})
	m := w.sheetsPage.plans.of(w.jobs()[0])
	fromStrips := int64(0)
	for _, l := range m.cutting.Plan.Layouts {
		if m.cutting.Parents[l.Sheet].Offcut != "" {
			fromStrips += l.Times
		}
	}
	if fromStrips != 42 {
		t.Errorf("%d strips are used", fromStrips)
	}
	press("No. 1,")
	if kept := w.session.Studio().Offcuts; len(kept) != 0 {
		t.Errorf("still kept: %+v", kept)
	}
}

// What the drawing shows can be read in words, of the material that is chosen;
// the map of sizes has no such chip, for its figures stand at the left.
func TestTheCuttingInWords(t *testing.T) {
	w := openSheets(t, "copies", "24")
	p := w.sheetsPage
	p.wordsChip.Tapped(nil)
	if said := p.reader.Text(); p.pane.Visible() || !strings.Contains(said, "Ebbwhite Drawing 170") || !strings.Contains(said, "694") {
		t.Errorf("the reader says %q", said)
	}
	p.at = 1
	p.show()
	if p.reader.Visible() || p.wordsChip.Visible() || !p.pane.Visible() {
		t.Error("the map of sizes is hidden by words")
	}
}
