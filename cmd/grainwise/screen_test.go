//go:build window

package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"
)

// patience is how long something on the screen may take on a slow machine.
const patience = 20 * time.Second

// program is the real program on a display of the test's own.
type program struct {
	t      testing.TB
	cmd    *exec.Cmd
	window string // the X window's id
	ended  chan error
}

// build makes one of our commands, as `go run ./cmd/dev run` does, and returns
// its path.
func build(t testing.TB, name string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), filepath.Base(name))
	if out, err := exec.Command("go", "build", "-tags", "no_emoji", "-o", path, "../"+name).CombinedOutput(); err != nil {
		t.Fatalf("build %s: %v\n%s", name, err, out)
	}
	return path
}

// launch starts the program in a home of its own and waits for its window.
func launch(t testing.TB, binary, home string, files ...string) *program {
	t.Helper()
	if os.Getenv("GRAINWISE_WINDOW_TEST") == "" {
		t.Skip("moves pointer and keys: only on a display made for it, as `go run ./cmd/dev test` does")
	}
	p := &program{t: t, cmd: exec.Command(binary, files...), ended: make(chan error, 1)}
	p.cmd.Env = append(os.Environ(), "HOME="+home, "XDG_CONFIG_HOME="+filepath.Join(home, "config"), "FYNE_THEME=light")
	var said bytes.Buffer
	p.cmd.Stderr = &said
	if err := p.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	go func() { p.ended <- p.cmd.Wait() }()
	t.Cleanup(func() {
		p.cmd.Process.Kill()
		if complaint := ofConcern(said.String()); complaint != "" {
			t.Errorf("the program complained:\n%s", complaint)
		}
	})
	p.window = p.find("Grainwise")
	return p
}

// halfWritten is what the toolkit logs when its watcher reads the preferences
// while its own last save has emptied the file and not yet filled it. Nothing
// is lost: what it holds in memory stays, and the save goes on. The end of the
// program may cut the message short.
var halfWritten = regexp.MustCompile(`(?m)^.*Preferences load error:.*\n?(.*Cause: EOF\n?(.*At: .*\n?)?)?`)

// folderDialog is what the system's folder dialog says of itself: a list of
// completions that is asked for before there is one while a path is typed, and a
// key that is let go when its press has closed the dialog.
var folderDialog = regexp.MustCompile(`(?m)^\n?\(grainwise:\d+\): Gtk-CRITICAL \*\*: .*(gtk_tree_model_get_iter_first: assertion 'GTK_IS_TREE_MODEL|gtk_widget_event: assertion 'WIDGET_REALIZED_FOR_EVENT).*\n?`)

// noSessionBus is what the dialog's settings store says on a display without a
// session bus: the dialog then forgets its own size, and nothing of ours.
var noSessionBus = regexp.MustCompile(`(?m)^\n?\(grainwise:\d+\): dconf-WARNING \*\*: .*failed to commit changes to dconf: .*dbus.*\n?`)

// ofConcern is what a program said, less what is known to be harmless.
func ofConcern(said string) string {
	for _, harmless := range []*regexp.Regexp{halfWritten, folderDialog, noSessionBus} {
		said = harmless.ReplaceAllString(said, "")
	}
	return strings.TrimSpace(said)
}

// find waits for a window whose title holds some words, and returns its id.
func (p *program) find(title string) string {
	p.t.Helper()
	var id string
	p.await("a window "+title, func() bool {
		out, _ := xdotool("search", "--onlyvisible", "--name", title)
		id, _, _ = strings.Cut(out, "\n")
		return id != ""
	})
	return id
}

func (p *program) await(what string, there func() bool) {
	p.t.Helper()
	for end := time.Now().Add(patience); !there(); time.Sleep(50 * time.Millisecond) {
		if time.Now().After(end) {
			p.shot("failed.png")
			p.t.Fatalf("waited in vain for %s", what)
		}
	}
}

// xdotool runs one command, which may not take long.
func xdotool(words ...string) (string, error) {
	cmd := exec.Command("xdotool", words...)
	var out bytes.Buffer
	cmd.Stdout = &out
	if err := cmd.Start(); err != nil {
		return "", err
	}
	done := make(chan error, 1)
	go func() { done <- cmd.Wait() }()
	select {
	case err := <-done:
		return strings.TrimSpace(out.String()), err
	case <-time.After(patience):
		cmd.Process.Kill()
		<-done
		return "", errors.New("xdotool does not answer")
	}
}

func (p *program) do(words ...string) string {
	p.t.Helper()
	out, err := xdotool(words...)
	if err != nil {
		p.t.Fatalf("xdotool %s: %v", strings.Join(words, " "), err)
	}
	return out
}

// resize gives the window a size and waits until it has it. It asks again while
// it waits: a window that has only just come up may take its own first size
// after ours, and the toolkit may lose one of two close upon each other.
func (p *program) resize(width, height int) {
	p.t.Helper()
	p.rest()
	p.do("windowactivate", "--sync", p.window)
	p.do("windowmove", p.window, "20", "40")
	p.await(fmt.Sprintf("the window's size %d × %d", width, height), func() bool {
		p.do("windowsize", p.window, fmt.Sprint(width), fmt.Sprint(height))
		time.Sleep(300 * time.Millisecond)
		size := p.shot("")
		return size.Dx() == width && size.Dy() == height
	})
	p.rest()
}

// title is the window's, as the window manager has it.
func (p *program) title() string { return p.do("getwindowname", p.window) }

func (p *program) key(key string) {
	p.t.Helper()
	p.do("key", "--clearmodifiers", key)
}

// click presses the left button at a place of the window.
func (p *program) click(x, y int) {
	p.t.Helper()
	p.do("mousemove", "--window", p.window, fmt.Sprint(x), fmt.Sprint(y), "click", "1")
}

// drag takes hold at a place and lets go at another, with stops between.
func (p *program) drag(x, y, to int) {
	p.t.Helper()
	words := []string{"mousemove", "--window", p.window, fmt.Sprint(x), fmt.Sprint(y), "sleep", "0.2", "mousedown", "1", "sleep", "0.1"}
	for step := 1; step <= 10; step++ {
		at := x + (to-x)*step/10
		words = append(words, "mousemove", "--window", p.window, fmt.Sprint(at), fmt.Sprint(y), "sleep", "0.03")
	}
	p.do(append(words, "mouseup", "1")...)
}

// picture is what the window shows. Of a window that has gone, import waits
// for one to be pointed at.
func (p *program) picture() *image.RGBA {
	p.t.Helper()
	soon, done := context.WithTimeout(context.Background(), patience)
	defer done()
	out, err := exec.CommandContext(soon, "import", "-window", p.window,
		"-define", "png:compression-level=1", "png:-").Output()
	if err != nil {
		p.t.Fatalf("import: %v", err)
	}
	shown, err := png.Decode(bytes.NewReader(out))
	if err != nil {
		p.t.Fatal(err)
	}
	plain := image.NewRGBA(shown.Bounds())
	draw.Draw(plain, plain.Rect, shown, plain.Rect.Min, draw.Src)
	return plain
}

// shot takes a picture and keeps it in the folder that the tester named, if
// there is one, to be looked at.
func (p *program) shot(name string) image.Rectangle {
	p.t.Helper()
	shown := p.picture()
	if folder := os.Getenv("GRAINWISE_SHOTS"); folder != "" && name != "" {
		file, err := os.Create(filepath.Join(folder, name))
		if err != nil {
			p.t.Fatal(err)
		}
		defer file.Close()
		if err := png.Encode(file, shown); err != nil {
			p.t.Fatal(err)
		}
	}
	return shown.Bounds()
}

// rest waits until the window shows the same twice.
func (p *program) rest() {
	p.t.Helper()
	last := p.picture()
	p.await("a still window", func() bool {
		time.Sleep(150 * time.Millisecond)
		now := p.picture()
		same := alike(last, now, now.Bounds())
		last = now
		return same
	})
}

// alike says whether two pictures are the same within a frame.
func alike(a, b *image.RGBA, frame image.Rectangle) bool {
	if !frame.In(a.Rect) || !frame.In(b.Rect) {
		return false
	}
	for y := frame.Min.Y; y < frame.Max.Y; y++ {
		rowA := a.Pix[a.PixOffset(frame.Min.X, y):a.PixOffset(frame.Max.X, y)]
		rowB := b.Pix[b.PixOffset(frame.Min.X, y):b.PixOffset(frame.Max.X, y)]
		if !bytes.Equal(rowA, rowB) {
			return false
		}
	}
	return true
}

// colours counts the different ones within a frame: a blank place has few.
func colours(a image.Image, frame image.Rectangle) int {
	seen := map[any]bool{}
	for y := frame.Min.Y; y < frame.Max.Y; y++ {
		for x := frame.Min.X; x < frame.Max.X; x++ {
			seen[a.At(x, y)] = true
		}
	}
	return len(seen)
}

// quits waits for the program's end and wants it to be a good one.
func (p *program) quits() {
	p.t.Helper()
	select {
	case err := <-p.ended:
		if err != nil {
			p.t.Fatalf("the program ended with %v", err)
		}
	case <-time.After(patience):
		p.shot("failed.png")
		p.t.Fatal("the program does not end")
	}
}

// runs says whether the program is still there.
func (p *program) runs() bool {
	select {
	case err := <-p.ended:
		p.ended <- err
		return false
	default:
		return true
	}
}
