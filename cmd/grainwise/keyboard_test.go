//go:build window

package main

import (
	"bytes"
	"image"
	"os"
	"path/filepath"
	"testing"
	"time"

	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// The main job without a pointer: size by slider keys and by typing, the grain
// turned wrong and put right from its finding, another view, undo, save through
// the native dialog, quit; then gw says the same sizes. WCAG 2.2, criterion
// 2.1.1: everything by keyboard.
func TestTheMainJobByKeyboardAlone(t *testing.T) {
	demo := project.Demo()
	demo.Decisions.Design.Paper.Turned = true // the mistake to put right
	if findings := check.All(demo.Book()); findings[0].ID != "grain-paper" {
		t.Fatalf("the worst finding is %s", findings[0].ID)
	}
	home := t.TempDir()
	file := filepath.Join(home, "turned.grainwise")
	if err := project.Save(file, demo); err != nil {
		t.Fatal(err)
	}
	p := launch(t, build(t, "grainwise"), home, file)
	p.resize(1280, 720)
	before := p.picture()
	p.keys("F6", "F6")              // the pages, the parameters: on the height's slider
	p.keys("Home", "Next", "Prior") // 60, the step below it none, ten more
	p.keys("Right", "Left", "Tab")  // one to and fro, and into the value
	p.typed("8 1/2 in")             // 215.9 mm
	p.keys("Return")
	p.await("a taller book", func() bool { return !alike(before, p.picture(), cutLines) })
	p.rest()
	wrong := p.picture()
	p.shot("keyboard-wrong-1280.png")
	p.keys("F8", "Return")
	p.await("the grain put right", func() bool { return !alike(wrong, p.picture(), drawing) })
	p.rest()
	p.keys("ctrl+2")
	p.rest()
	p.keys("ctrl+z", "ctrl+shift+z") // the mistake again, and put right again
	p.rest()
	p.shot("keyboard-mended-1280.png")
	p.key("ctrl+shift+s") // the file has a name: another one
	p.nameFile(filepath.Join(home, "by keys"))
	p.key("ctrl+q")
	p.quits()

	saved := opened(t, filepath.Join(home, "by keys.grainwise"))
	want := demo.Decisions
	want.Design.Paper.Turned = false
	want.Design.Page.Height = measure.Inches(8.5)
	if saved.Decisions != want {
		t.Errorf("saved: height %v mm, turned %v", saved.Decisions.Design.Page.Height.MM(), saved.Decisions.Design.Paper.Turned)
	}
	sameAsPlan(t, filepath.Join(home, "by keys.grainwise"), saved)
}

// keys presses one after the other and waits for what they do.
func (p *program) keys(keys ...string) {
	p.t.Helper()
	for _, key := range keys {
		p.key(key)
	}
	p.rest()
}

// typed is text for what has the focus.
func (p *program) typed(text string) {
	p.t.Helper()
	p.do("type", "--delay", "20", text)
}

// The Sheets page in the real window: turned to by its key, planned in the
// background, ten copies more by the slider's keys, back again.
func TestTheSheetsPageByKeyboard(t *testing.T) {
	p := launch(t, build(t, "grainwise"), t.TempDir())
	p.resize(1280, 720)
	design := p.picture()
	p.key("ctrl+Next")
	p.await("the Sheets page", func() bool { return !alike(design, p.picture(), drawing) })
	p.rest()
	p.shot("sheets-1280.png")
	planned := p.picture()
	for name, area := range map[string]image.Rectangle{
		"materials": image.Rect(0, 130, 350, 280), "layout": image.Rect(380, 110, 1000, 680), "summary": image.Rect(1020, 70, 1270, 400),
	} {
		if n := colours(planned, area); n < 20 {
			t.Errorf("%s: %d colours", name, n)
		}
	}
	p.keys("F6", "F6", "Prior") // the pages, the copies
	p.await("another plan", func() bool { return !alike(planned, p.picture(), image.Rect(1020, 70, 1270, 400)) })
	p.key("ctrl+Prior")
	p.await("the Design page", func() bool { return alike(design, p.picture(), image.Rect(10, 70, 350, 110)) })
	p.keys("ctrl+z")
	p.key("ctrl+q")
	p.quits()
}

// The papers without a pointer: turned to by the pages' key, opened in the viewer, then saved into a folder
// through the native dialog. The viewer is a script that notes what it was given.
func TestThePapersByKeyboard(t *testing.T) {
	home, tools := t.TempDir(), t.TempDir()
	seen := filepath.Join(home, "seen")
	viewer := "#!/bin/sh\nprintf %s \"$1\" >" + seen + ".new && mv " + seen + ".new " + seen + "\n"
	if err := os.WriteFile(filepath.Join(tools, "xdg-open"), []byte(viewer), 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", tools+":"+os.Getenv("PATH"))
	t.Setenv("TMPDIR", t.TempDir())
	p := launch(t, build(t, "grainwise"), home)
	p.resize(1280, 720)
	design := p.picture()
	p.key("ctrl+Next")
	p.rest()
	p.key("ctrl+Next")
	p.await("a page of paper", func() bool { return !alike(design, p.picture(), drawing) })
	p.rest()
	p.shot("papers-1280.png")
	p.keys("F6", "F6", "F6", "F6") // the pages, the papers, the page, the printing
	p.key("Return")
	p.await("the viewer", func() bool { _, err := os.Stat(seen); return err == nil })
	path, err := os.ReadFile(seen)
	if err != nil {
		t.Fatal(err)
	}
	if data, err := os.ReadFile(string(path)); err != nil || !bytes.HasPrefix(data, []byte("%PDF-")) {
		t.Errorf("the viewer was given %s: %v", path, err)
	}
	p.rest()
	p.keys("Tab")
	p.key("Return")
	folder := filepath.Join(home, "bench")
	if err := os.Mkdir(folder, 0o700); err != nil {
		t.Fatal(err)
	}
	p.do("windowactivate", "--sync", p.find("Open Folder"))
	p.do("type", "/") // opens the entry for a path, which loses keys while it is made
	time.Sleep(time.Second)
	p.key("ctrl+a")
	p.do("type", "--delay", "20", folder)
	p.rest()
	p.key("Return")
	own := filepath.Join(folder, "Low Water, papers")
	p.await("the papers", func() bool {
		files, _ := filepath.Glob(filepath.Join(own, "*.pdf"))
		return len(files) > 0
	})
	p.rest()
	p.shot("papers-saved-1280.png")
	p.key("Escape")
	p.rest()
	p.key("ctrl+q")
	p.quits()
}

// The batch without a pointer: turned to by the pages' key, an order added, named and
// counted in its table, and what is to be bought follows; saved, the file has it.
func TestTheBatchByKeyboard(t *testing.T) {
	home := t.TempDir()
	p := launch(t, build(t, "grainwise"), home)
	p.resize(1280, 720)
	p.keys("ctrl+Next")
	p.keys("ctrl+Next")
	p.changeRests() // the papers are laid out
	papers := p.picture()
	p.key("ctrl+Next")
	p.await("the page of the batch", func() bool { return !alike(papers, p.picture(), image.Rect(0, 70, 360, 500)) })
	p.changeRests()
	p.shot("batch-1280.png")
	toBuy := image.Rect(1020, 280, 1270, 520)
	before := p.picture()
	if n := colours(before, toBuy); n < 20 {
		t.Errorf("what is to be bought has %d colours", n)
	}
	p.keys("F6")
	p.keys("F6") // the pages, the orders
	p.keys("Insert")
	p.shot("batch-added-1280.png")
	p.typed("Saltmarsh")
	p.keys("Tab")            // taken; on to the variant
	p.keys("Right", "Right") // the books
	p.typed("8")
	p.keys("Return")
	p.await("more to buy", func() bool { return !alike(before, p.picture(), toBuy) })
	p.changeRests()
	p.shot("batch-more-1280.png")
	p.saveAs(filepath.Join(home, "more"))
	p.key("ctrl+q")
	p.quits()

	orders := opened(t, filepath.Join(home, "more.grainwise")).Batch.Orders
	if last := orders[len(orders)-1]; len(orders) != 25 || last.Customer != "Saltmarsh" || last.Count != 8 {
		t.Errorf("%d orders, the last %+v", len(orders), last)
	}
}
