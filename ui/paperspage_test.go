package ui

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"grainwise/model/measure"
	"grainwise/model/project"
	printed "grainwise/render/sheet"
	"grainwise/ui/controls"
)

// openPapers is the demo's window with the page of papers on show; everything is
// planned and laid out at once on the test's goroutine.
func openPapers(t *testing.T, change ...func(*Ports)) *Window {
	t.Helper()
	folder := t.TempDir()
	w := openDemo(t, append([]func(*Ports){func(p *Ports) { p.Studio = project.StudioIn(folder) }}, change...)...)
	w.onWindow = func(do func()) { do() }
	w.makePage(papersAt)
	w.papersPage.pane.Stop()
	w.turnPage(papersAt)
	return w
}

// saysOfPrinting is what the right column says of what is wrong.
func (w *Window) saysOfPrinting() string {
	return strings.Join(texts(w.papersPage.printing.found.Objects), "\n")
}

// Every paper of the design is listed with its pages, and each page can be turned
// to.
func TestPapersAreListedAndTurned(t *testing.T) {
	w := openPapers(t)
	p := w.papersPage
	if len(p.kinds) != len(printed.For(p.input())) || len(p.rows.Objects) != len(p.kinds) {
		t.Fatalf("%d papers, %d lines", len(p.kinds), len(p.rows.Objects))
	}
	total := 0
	for _, k := range p.kinds {
		p.lines[k.ID].Line.OnTapped()
		pages, made := p.making.pages(k.ID)
		if !made || p.onShow() != k.ID {
			t.Fatalf("%s is not on show", k.ID)
		}
		if !p.left[k.ID] {
			total += len(pages)
		}
		for i := range pages {
			if want := fmt.Sprintf("page %d of %d", i+1, len(pages)); p.where.Text() != want {
				t.Errorf("%s: %q, want %q", k.ID, p.where.Text(), want)
			}
			if p.next.Disabled() != (i == len(pages)-1) || p.last.Disabled() != (i == 0) {
				t.Errorf("%s, page %d: next %v, before %v", k.ID, i+1, p.next.Disabled(), p.last.Disabled())
			}
			p.turn(1)
		}
	}
	if got := p.printing.pages.Text(); got != fmt.Sprint(total) {
		t.Errorf("%s pages are ticked, counted %d", got, total)
	}
	w.turnPage(designPage)
	ticked := p.lines[p.kinds[0].ID].Tick
	ticked.SetChecked(false)
	w.turnPage(papersAt)
	if ticked.Checked || len(p.ticked()) >= len(p.kinds) {
		t.Error("a box is ticked again by turning the page")
	}
}

// A design that changes is laid out anew; undone it is the old one.
func TestPapersFollowTheDesign(t *testing.T) {
	w := openPapers(t)
	p := w.papersPage
	p.choose("sewing-template")
	height := func() float64 { return p.making.made["sewing-template"].Whole.Height }
	before := height()
	w.set(t, map[string]string{"page.height": "240 mm"})
	if got := height() - before; got < 29.9 || got > 30.1 {
		t.Errorf("30 mm more make the template %.2f mm longer", got)
	}
	w.undo()
	if height() != before {
		t.Error("undone, the template stays long")
	}
}

// Printer, hand and class are kept in the studio's file, and the papers follow.
func TestPrintingIsKept(t *testing.T) {
	w := openPapers(t)
	c := w.papersPage.printing
	c.format.OnChoose(1)
	c.hand.OnChoose(1)
	for value, text := range map[*controls.ValueField]string{c.bars[0].value: "97", c.bars[1].value: "10.05 cm", c.students.value: "9", c.dpi.value: "150"} {
		if problem := value.OnTake(text); problem != "" {
			t.Errorf("%s: %s", text, problem)
		}
	}
	kept, err := w.ports.Studio.Read()
	bars := kept.Printing.Bars.Plain
	if err != nil || kept.Printing.Page != "letter" || !kept.Printing.Left() || kept.Printing.Students != 9 || kept.Printing.DPI != 150 ||
		bars.Across != measure.MM(97) || bars.Down != measure.MM(100.5) {
		t.Errorf("kept %+v, %v", kept.Printing, err)
	}
	in := w.papersPage.input()
	if in.Printer.Format.ID != "letter" || !in.Left || in.Students != 9 || in.Printer.Across != measure.MM(97) {
		t.Errorf("the papers are made for %+v, left %v, %d students", in.Printer, in.Left, in.Students)
	}
	for value, says := range map[*controls.ValueField]string{c.bars[0].value: "80 to 120 mm", c.students.value: "whole number from 1 to 200"} {
		if problem := value.OnTake("many"); !strings.Contains(problem, says) {
			t.Errorf("%q", problem)
		}
	}
	if again, _ := w.ports.Studio.Read(); again.Printing != kept.Printing {
		t.Error("what cannot be understood changed what is kept")
	}
}

// Source: the rule itself, 100 ± 0.3 mm on a corrected page; 0.97 × 0.995 is
// 0.96515.
func TestThePageSaysWhatTheBarsMean(t *testing.T) {
	w := openPapers(t)
	c := w.papersPage.printing
	if !strings.Contains(w.saysOfPrinting(), "Measure the check bars") || c.again.Visible() {
		t.Errorf("before a measure: %s", w.saysOfPrinting())
	}
	c.bars[0].value.OnTake("97")
	if said := w.saysOfPrinting(); !strings.Contains(said, "Note: The check bar measured 97 mm") || !strings.Contains(said, "3.1 % across") || !c.again.Visible() {
		t.Errorf("off: %s", said)
	}
	c.bars[2].value.OnTake("99.5")
	if said := w.saysOfPrinting(); !strings.Contains(said, "Stop: On a page that was printed corrected, the check bar still measures 99.5 mm") {
		t.Errorf("still off: %s", said)
	}
	c.correctFurther()
	if bars := w.session.Studio().Printing.Bars; bars.Plain.Across != measure.MM(96.515) || bars.Again.Across != 0 {
		t.Errorf("corrected further: %+v", bars)
	}
	c.bars[2].value.OnTake("100.3")
	if said := w.saysOfPrinting(); strings.Contains(said, "Stop: On a page") {
		t.Errorf("within the limit: %s", said)
	}
	w.setUnit(measure.Imperial)
	c.bars[0].value.OnTake("4.04")
	if said := w.saysOfPrinting(); c.measured.Text() != "Its 4 in bars measured" || !strings.Contains(said, "measured 101 mm instead of 100 mm") ||
		c.barText(w.session.Studio().Printing.Bars.Plain.Across) != "4.04" {
		t.Errorf("in inches: %s", said)
	}
	c.bars[0].value.OnTake("")
	if w.session.Studio().Printing.Bars.Corrected() || c.again.Visible() {
		t.Error("a measure taken away still corrects")
	}
}

// A batch of five whose thickness is only estimated is a stop here, one of four
// is none; printing is possible all the same.
func TestABatchIsMeasuredFirst(t *testing.T) {
	for copies, stops := range map[string]bool{"4": false, "5": true} {
		w := openPapers(t)
		w.set(t, map[string]string{"copies": copies})
		if said := w.saysOfPrinting(); strings.Contains(said, "Stop: The thickness is only estimated") != stops {
			t.Errorf("%s copies: %s", copies, said)
		}
		if w.papersPage.printing.open.Disabled() {
			t.Errorf("%s copies: nothing can be printed", copies)
		}
	}
}

// What is ticked goes as one PDF to the viewer. Source of the count: pdfinfo.
func TestOpenToPrint(t *testing.T) {
	seen := ""
	w := openPapers(t, func(p *Ports) { p.View = func(path string) error { seen = path; return nil } })
	w.papersPage.printing.open.OnTapped()
	defer func() { os.RemoveAll(filepath.Dir(seen)) }()
	data, err := os.ReadFile(seen)
	if err != nil || !bytes.HasPrefix(data, []byte("%PDF-")) {
		t.Fatalf("the viewer got %q: %v", seen, err)
	}
	if len(w.sheets) != 0 {
		t.Error("a sheet is left open")
	}
	out, err := exec.Command("pdfinfo", seen).Output()
	if err != nil {
		t.Skip("pdfinfo: ", err)
	}
	count, _ := w.papersPage.pagesTicked()
	if want := fmt.Sprintf("Pages:           %d\n", count); !strings.Contains(string(out), want) {
		t.Errorf("%d pages are ticked, pdfinfo says %s", count, out)
	}
}

func TestAViewerThatFailsIsSaid(t *testing.T) {
	for _, view := range []func(string) error{nil, func(string) error { return errors.New("no such thing") }} {
		w := openPapers(t, func(p *Ports) { p.View = view })
		w.papersPage.printing.open.OnTapped()
		if len(w.sheets) != 1 {
			t.Errorf("%d sheets", len(w.sheets))
		}
	}
}

// Saved papers lie in a folder of their own, as papers.Files makes them; a second
// time they are replaced.
func TestSavePapers(t *testing.T) {
	folder, shown := t.TempDir(), ""
	w := openPapers(t, func(p *Ports) {
		p.Dialogs = dialogs{folder, nil}
		p.View = func(path string) error { shown = path; return nil }
	})
	p := w.papersPage
	for _, k := range p.kinds {
		p.tick(k.ID, k.ID == "sewing-template")
	}
	p.printing.pictures.SetChecked(true)
	for range 2 {
		p.printing.save.OnTapped()
		w.button(t, "Show the folder").OnTapped()
	}
	own := filepath.Join(folder, "Low Water, papers")
	if shown != own {
		t.Errorf("%q is shown", shown)
	}
	entries, err := os.ReadDir(own)
	endings := ""
	for _, e := range entries {
		endings += filepath.Ext(e.Name())
	}
	if err != nil || endings != ".pdf.png.svg" {
		t.Errorf("the folder holds %v, %v", entries, err)
	}
}

// A folder that cannot be made is said, and nothing is written.
func TestABadFolderIsSaid(t *testing.T) {
	file := filepath.Join(t.TempDir(), "a file")
	if err := os.WriteFile(file, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	w := openPapers(t, func(p *Ports) { p.Dialogs = dialogs{file, nil} })
	w.papersPage.printing.save.OnTapped()
	if len(w.sheets) != 1 {
		t.Fatalf("%d sheets", len(w.sheets))
	}
	w.button(t, "Close")
	if kept, err := os.ReadFile(file); err != nil || string(kept) != "mine" {
		t.Errorf("the file holds %q, %v", kept, err)
	}
}

// Work that lasts is spoken of, and can be cancelled: then nothing follows.
func TestPapersAreCancelled(t *testing.T) {
	seen := false
	w := openPapers(t, func(p *Ports) { p.View = func(string) error { seen = true; return nil } })
	var later []func() func()
	w.apart = func(work func() (then func())) { later = append(later, work) }
	o := &w.papersPage.output
	spoken := make(chan func(), 1)
	w.onWindow = func(do func()) { spoken <- do }
	o.open()
	o.open() // pressed twice
	if len(later) != 1 {
		t.Fatalf("%d works begun", len(later))
	}
	select {
	case do := <-spoken:
		do()
	case <-time.After(20 * patience):
		t.Fatal("nothing is said of the work")
	}
	w.button(t, "Cancel").OnTapped()
	w.onWindow = func(do func()) { do() }
	later[0]()()
	if seen || len(w.sheets) != 0 || o.cancel != nil {
		t.Errorf("seen %v, %d sheets", seen, len(w.sheets))
	}
}

// What is pressed while the cutting is still planned waits for the plans.
func TestPapersAwaitTheCuttingPlans(t *testing.T) {
	opened := 0
	w := openPapers(t, func(p *Ports) { p.View = func(string) error { opened++; return nil } })
	var waiting []func()
	w.plans.begin = func(work func()) { waiting = append(waiting, work) }
	w.set(t, map[string]string{"copies": "7"})
	w.papersPage.printing.open.OnTapped()
	if opened != 0 || len(w.sheets) != 1 {
		t.Fatalf("opened %d, %d sheets", opened, len(w.sheets))
	}
	for i := 0; i < len(waiting); i++ {
		waiting[i]()
	}
	if opened != 1 || len(w.sheets) != 0 {
		t.Errorf("opened %d, %d sheets", opened, len(w.sheets))
	}
	if n := len(w.papersPage.input().Cuttings); n != len(w.jobs()) {
		t.Errorf("%d of %d plans", n, len(w.jobs()))
	}
}

// Notes are one step to undo, and printed.
func TestNotesAreTheProjects(t *testing.T) {
	w := openPapers(t)
	p := w.papersPage
	before := w.session.Notes()
	p.notes.SetText(before + "\nThinner thread.")
	if !strings.HasSuffix(p.making.in.Notes, "Thinner thread.") || w.step() != "Notes" || !w.session.Unsaved() {
		t.Errorf("notes %q, step %q", p.making.in.Notes, w.step())
	}
	w.undo()
	if w.session.Notes() != before || p.notes.Text != before {
		t.Errorf("undone: %q", p.notes.Text)
	}
}

// F6 goes through the page, its keys turn the leaves, and Tab leaves the notes.
func TestPapersByKeyboard(t *testing.T) {
	w := openPapers(t)
	seen := map[int]bool{}
	for range areas {
		w.nextArea(1)
		seen[w.area()] = true
	}
	if len(seen) != areas || seen[-1] {
		t.Errorf("F6 reaches the areas %v", seen)
	}
	p := w.papersPage
	w.win.Canvas().Focus(p.notes)
	if p.notes.AcceptsTab() {
		t.Error("the notes keep the Tab key")
	}
	typeKey(w, fyne.KeyF6)
	if w.area() != drawingArea {
		t.Errorf("from the notes F6 goes to %d", w.area())
	}
	line := p.lines[p.kinds[0].ID]
	w.win.Canvas().Focus(line.Tick)
	on := line.Tick.Checked
	line.Tick.TypedRune(' ')
	if line.Tick.Checked == on || p.left[p.kinds[0].ID] != on {
		t.Error("Space does not tick")
	}
	typeKey(w, fyne.KeyReturn)
	typeKey(w, fyne.KeyF6)
	if line.Tick.Checked != on || w.area() != drawingArea {
		t.Errorf("Enter does not tick, or F6 is lost: %d", w.area())
	}
}

// On a screen of 1280 × 720 nothing of the page is shortened, covered or outside
// its column, at every size of text and with everything said that can be.
func TestPapersFitAtAnySizeOfText(t *testing.T) {
	long(t)
	for _, system := range []measure.System{measure.Metric, measure.Imperial} {
		for _, percent := range textSizes {
			for _, aside := range []bool{false, true} {
				w := openPapers(t)
				w.session.SetSystem(system)
				w.papersPage.printing.bars[0].value.OnTake("97 mm")
				w.papersPage.printing.bars[2].value.OnTake("99 mm")
				w.papersPage.printing.bars[1].value.OnProblem("Expected what a bar of 100 mm measured, 80 to 120 mm")
				w.win.Resize(fyne.NewSize(float32(1280*100/percent), float32(720*100/percent-26)))
				w.turnSide(aside)
				for _, trouble := range troublesOfText(w.win.Content()) {
					t.Errorf("%v, %d %%, aside %v: %s", system, percent, aside, trouble)
				}
			}
		}
	}
}

// In a narrow window the switch names what stands at the drawing's right.
func TestASideHasItsPagesName(t *testing.T) {
	w := openPapers(t)
	w.win.Resize(fyne.NewSize(1000, 700))
	chip := w.pages.sides.Chips()[1]
	for page, want := range map[int]string{papersAt: "Printing", designPage: "Findings, to cut"} {
		w.turnPage(page)
		if chip.Text() != want {
			t.Errorf("page %d: %q, want %q", page, chip.Text(), want)
		}
	}
	w.turnPage(papersAt)
	w.turnSide(true)
	if w.papersPage.pane.Visible() && w.papersPage.frame.middle.Visible() || !w.papersPage.printing.scroll.Visible() {
		t.Error("the printing is not on show")
	}
}
