//go:build window

package main

import (
	"encoding/json"
	"fmt"
	"image"
	"image/color"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/look"
)

// Where things stand in a window of 1280 × 720 with the greeting over the
// drawing, in pixels.
var (
	heightTrack = image.Rect(22, 191, 343, 191) // 60 to 450 mm
	drawing     = image.Rect(362, 142, 1010, 580)
	cutLines    = image.Rect(1013, 572, 1280, 690) // all but the folios' line
)

// onTrack is where the thumb of the page's height stands.
func onTrack(height float64) int {
	share := (height - 60) / (450 - 60)
	return heightTrack.Min.X + int(math.Round(share*float64(heightTrack.Dx())))
}

// The book is there as soon as the window is, in the size it opens with:
// nothing has to be moved first.
func TestTheBookIsThereAtOnce(t *testing.T) {
	p := launch(t, build(t, "grainwise"), t.TempDir())
	p.await("the first drawing", func() bool { return colours(p.picture(), drawing.Inset(60)) >= 200 })
	p.key("ctrl+q")
	p.quits()
}

// The job end to end: start, drag a slider, save through the native dialog,
// quit, start again with the file, compare, and have gw say the same sizes.
func TestADragIsSavedAndComesBack(t *testing.T) {
	binary, home := build(t, "grainwise"), t.TempDir()
	p := launch(t, binary, home)
	p.resize(1280, 720)
	p.shot("first-start-1280.png")
	before := p.picture()
	if n := colours(before, drawing); n < 200 {
		t.Fatalf("the drawing has %d colours: it is blank", n)
	}
	p.drag(onTrack(210), heightTrack.Min.Y, onTrack(240))
	p.changeRests()
	p.shot("dragged-1280.png")
	dragged := p.picture()
	if alike(before, dragged, cutLines) || alike(before, dragged, drawing) {
		t.Error("the drag changed neither the list to cut nor the drawing")
	}
	if got := p.title(); got != "Low Water (not saved) – Grainwise" {
		t.Errorf("title %q", got)
	}
	file := filepath.Join(home, "high water")
	p.saveAs(file)
	saved := opened(t, file+".grainwise")
	height := saved.Decisions.Design.Page.Height
	if height < measure.MM(235) || height > measure.MM(245) || height%measure.Millimetre != 0 {
		t.Errorf("a drag to 240 mm gave %v mm", height.MM())
	}
	demo := project.Demo()
	demo.Decisions.Design.Page.Height = height
	if saved.Decisions != demo.Decisions {
		t.Error("more than the height has changed")
	}
	p.key("ctrl+q")
	p.quits()

	p = launch(t, binary, home, file+".grainwise")
	p.resize(1280, 720)
	if got := p.title(); got != "high water – Grainwise" {
		t.Errorf("title %q", got)
	}
	p.shot("again-1280.png")
	if !alike(dragged, p.picture(), cutLines) {
		t.Error("started again, the window shows other sizes to cut")
	}
	p.key("ctrl+q")
	p.quits()
	sameAsPlan(t, file+".grainwise", saved)
}

// changeRests waits until what a change moved no longer says so.
func (p *program) changeRests() {
	p.t.Helper()
	time.Sleep(2 * time.Second)
	p.rest()
}

// While a slider is held, what it moves stands in the accent, in the drawing
// and in the list to cut; let go, it comes to rest.
func TestWhatChangesIsSeenWhileItMoves(t *testing.T) {
	p := launch(t, build(t, "grainwise"), t.TempDir())
	p.resize(1280, 720)
	y := fmt.Sprint(heightTrack.Min.Y)
	at := func(height float64) []string {
		return []string{"mousemove", "--window", p.window, fmt.Sprint(onTrack(height)), y}
	}
	p.do(at(210)...)
	p.rest()
	over, overCut := accents(p.picture(), drawing), accents(p.picture(), cutLines)
	p.do(append(at(210), "mousedown", "1")...)
	for _, height := range []float64{214, 220, 226, 230} {
		p.do(append(at(height), "sleep", "0.05")...)
	}
	p.rest()
	p.shot("held-1280.png")
	held := p.picture()
	if n := accents(held, drawing); n < over+100 {
		t.Errorf("%d px of the drawing in the accent, %d before", n, over)
	}
	if n := accents(held, cutLines); n < overCut+10 {
		t.Errorf("%d px of the list in the accent, %d before", n, overCut)
	}
	p.do("mouseup", "1")
	p.changeRests()
	rest := p.picture()
	if n := accents(rest, cutLines); n > overCut {
		t.Errorf("at rest %d px of the list stay in the accent", n)
	}
	if n := accents(rest, drawing); n >= accents(held, drawing) {
		t.Errorf("at rest %d px of the drawing stay in the accent", n)
	}
	p.key("ctrl+z")
	p.rest()
	p.key("ctrl+q")
	p.quits()
}

// accents counts the pixels of the accent's own colour within a frame.
func accents(a image.Image, frame image.Rectangle) int {
	accent := color.NRGBAModel.Convert(look.Light().Accent)
	n := 0
	for y := frame.Min.Y; y < frame.Max.Y; y++ {
		for x := frame.Min.X; x < frame.Max.X; x++ {
			if color.NRGBAModel.Convert(a.At(x, y)) == accent {
				n++
			}
		}
	}
	return n
}

// saveAs types a path into the native dialog.
func (p *program) saveAs(path string) {
	p.t.Helper()
	p.key("ctrl+s")
	p.nameFile(path)
}

// nameFile types a path into the native dialog that is coming up.
func (p *program) nameFile(path string) {
	p.t.Helper()
	dialog := p.find("Save File")
	p.do("windowactivate", "--sync", dialog)
	p.key("ctrl+a")
	p.do("type", "--delay", "20", path)
	p.key("Return")
	p.await("the file", func() bool {
		_, err := os.Stat(path + ".grainwise")
		return err == nil
	})
	p.rest()
}

func opened(t *testing.T, path string) project.Project {
	t.Helper()
	p, err := project.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// sameAsPlan has gw compute the file in a process of its own.
func sameAsPlan(t *testing.T, file string, p project.Project) {
	t.Helper()
	out, err := exec.Command(build(t, "gw"), "plan", file).Output()
	if err != nil {
		t.Fatalf("gw plan: %v", err)
	}
	var plan struct {
		ToCut struct {
			BoardHeight, BoardWidth, CoveringHeight, CoveringWidth, SpineWidth float64
		}
	}
	if err := json.Unmarshal(out, &plan); err != nil {
		t.Fatal(err)
	}
	cut := p.Book().ToCut
	for _, c := range []struct {
		name  string
		plan  float64
		shown measure.Length
	}{
		{"board height", plan.ToCut.BoardHeight, cut.BoardHeight},
		{"board width", plan.ToCut.BoardWidth, cut.BoardWidth},
		{"covering height", plan.ToCut.CoveringHeight, cut.CoveringHeight},
		{"covering width", plan.ToCut.CoveringWidth, cut.CoveringWidth},
		{"spine width", plan.ToCut.SpineWidth, cut.SpineWidth},
	} {
		if math.Abs(c.plan-c.shown.MM()) > 0.0005 {
			t.Errorf("%s: gw plan says %v, the window %v", c.name, c.plan, c.shown.MM())
		}
	}
}

// What is not saved is asked about, by the window's own cross as well.
func TestClosingAsksBeforeWorkIsLost(t *testing.T) {
	p := launch(t, build(t, "grainwise"), t.TempDir())
	p.resize(1280, 720)
	p.drag(onTrack(210), heightTrack.Min.Y, onTrack(250))
	p.rest()
	calm := p.picture()
	p.key("alt+F4") // the window manager closes what has the focus
	p.await("a question", func() bool { return !alike(calm, p.picture(), drawing) })
	p.shot("question-1280.png")
	p.key("Escape")
	p.rest()
	if !p.runs() {
		t.Fatal("the program closed all the same")
	}
	p.key("ctrl+z")
	p.rest()
	p.key("ctrl+q")
	p.quits()
}

// A file that cannot be opened is said over the demo.
func TestABadFileIsSaidInTheWindow(t *testing.T) {
	home := t.TempDir()
	bad := filepath.Join(home, "bad.grainwise")
	if err := os.WriteFile(bad, []byte("{"), 0o600); err != nil {
		t.Fatal(err)
	}
	p := launch(t, build(t, "grainwise"), home, bad)
	p.resize(1280, 720)
	p.shot("bad-file-1280.png")
	with := p.picture()
	p.key("Escape")
	p.await("the message to go", func() bool { return !alike(with, p.picture(), drawing) })
	p.key("ctrl+q")
	p.quits()
}

// At both sizes and in both themes every area has something in it.
func TestTheWindowAtBothSizes(t *testing.T) {
	p := launch(t, build(t, "grainwise"), t.TempDir())
	for _, size := range []struct {
		width, height int
		name          string
	}{{1600, 1000, "window-1600.png"}, {1280, 720, "window-1280.png"}} {
		p.resize(size.width, size.height)
		p.shot(size.name)
		shown := p.picture()
		for name, area := range map[string]image.Rectangle{
			"parameters": image.Rect(0, 60, 340, size.height-30),
			"drawing":    image.Rect(440, 160, size.width-360, size.height-160),
			"findings":   image.Rect(size.width-260, 70, size.width, 300),
			"to cut":     image.Rect(size.width-260, size.height-190, size.width, size.height-30),
		} {
			if n := colours(shown, area); n < 30 {
				t.Errorf("%s at %d × %d: %d colours", name, size.width, size.height, n)
			}
		}
	}
	p.key("ctrl+q")
	p.quits()
}
