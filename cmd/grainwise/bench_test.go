//go:build window

package main

import (
	"fmt"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"grainwise/render/view"
)

// Everything is measured from outside, on the program as it is shipped.

// begin starts a program in a home of its own, with no time spent on waiting.
func begin(b *testing.B, binary string) *program {
	b.Helper()
	home := b.TempDir()
	p := &program{t: b, cmd: exec.Command(binary), ended: make(chan error, 1)}
	p.cmd.Env = append(os.Environ(), "HOME="+home, "XDG_CONFIG_HOME="+filepath.Join(home, "config"), "FYNE_THEME=light")
	if err := p.cmd.Start(); err != nil {
		b.Fatal(err)
	}
	go func() { p.ended <- p.cmd.Wait() }()
	b.Cleanup(func() { p.cmd.Process.Kill() })
	return p
}

// end kills it and waits until its window has gone.
func end(b *testing.B, p *program, title string) {
	b.Helper()
	p.cmd.Process.Kill()
	<-p.ended
	p.await("the window to go", func() bool {
		out, _ := xdotool("search", "--onlyvisible", "--name", title)
		return out == ""
	})
}

// onDisplay skips where a program's window would be in somebody's way.
func onDisplay(b *testing.B) {
	b.Helper()
	if os.Getenv("GRAINWISE_WINDOW_TEST") == "" {
		b.Skip("only on a display made for it, as `go run ./cmd/dev bench` does")
	}
}

// awaitID is the window's id as soon as the display shows it, looked for
// without a pause (some 5 ms a look).
func (p *program) awaitID(b *testing.B, title string) uint32 {
	b.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); {
		out, _ := xdotool("search", "--onlyvisible", "--name", title)
		p.window, _, _ = strings.Cut(out, "\n")
		if id, err := strconv.ParseUint(p.window, 10, 32); err == nil {
			return uint32(id)
		}
	}
	b.Fatalf("no window %s", title)
	return 0
}

// Budget: 1 s. From the start of the process, in the window's first size:
// mapped-ms until the display shows the window, paint-ms until its upper edge
// has more than one colour, drawing-ms until the drawing stands in it (200
// colours, as the other tests have it). Looked at every millisecond or so.
func BenchmarkStart(b *testing.B) {
	onDisplay(b)
	binary, eye := build(b, "grainwise"), newProbe(b)
	sheet := image.Rect(380, 150, 940, 500) // between tabs and title block
	var mapped, paint, drawn time.Duration
	for b.Loop() {
		began := time.Now()
		p := begin(b, binary)
		id := p.awaitID(b, "Grainwise")
		mapped += time.Since(began)
		awaitTints(b, eye, id, image.Rect(0, 0, 1000, 40), 2)
		paint += time.Since(began)
		awaitTints(b, eye, id, sheet, 200)
		drawn += time.Since(began)
		b.StopTimer()
		end(b, p, "Grainwise")
		b.StartTimer()
	}
	each := func(d time.Duration) float64 { return float64(d.Milliseconds()) / float64(b.N) }
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(each(mapped), "mapped-ms")
	b.ReportMetric(each(paint), "paint-ms")
	b.ReportMetric(each(drawn), "drawing-ms")
}

func awaitTints(b *testing.B, eye *probe, id uint32, frame image.Rectangle, enough int) {
	b.Helper()
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(time.Millisecond) {
		if tints(eye.look(b, id, frame), enough) >= enough {
			return
		}
	}
	b.Fatalf("the window stays blank in %v", frame)
}

// toAndFro drags the slider of the page's height through 80 pixels and back,
// 120 moves a second, for so many moves.
func (p *program) toAndFro(moves int) {
	p.t.Helper()
	const perSecond = 120
	y := fmt.Sprint(heightTrack.Min.Y)
	words := []string{"mousemove", "--window", p.window, fmt.Sprint(onTrack(210)), y, "sleep", "0.2", "mousedown", "1"}
	for i := range moves {
		at := onTrack(210) + 40 - max(40-i%80, i%80-40)
		words = append(words, "sleep", fmt.Sprint(1.0/perSecond), "mousemove", "--window", p.window, fmt.Sprint(at), y)
	}
	p.do(append(words, "mouseup", "1")...)
}

// counted is what was seen of a drawing while something else went on.
type counted struct {
	pictures int // changes on the screen
	looks    int
	seconds  float64 // from the first change to the last
	err      error
}

// count looks some 300 times a second at a band of a window until done, and
// counts how often it shows something else than before.
func (p *probe) count(window uint32, band image.Rectangle, done <-chan struct{}) counted {
	var c counted
	var first, last time.Time
	for before := uint64(0); ; time.Sleep(3 * time.Millisecond) {
		select {
		case <-done:
			c.seconds = last.Sub(first).Seconds()
			return c
		default:
		}
		pixels, _, err := p.pixels(window, band)
		if err != nil {
			return counted{err: err}
		}
		now := p.sum(pixels)
		if c.looks++; c.looks > 1 && now != before {
			if last = time.Now(); first.IsZero() {
				first = last
			} else {
				c.pictures++
			}
		}
		before = now
	}
}

// frames/s is how many different pictures of the drawing's middle the screen
// has shown one after the other while the slider moved for some three seconds.
// What the toolkit drew but never showed does not count, nor do two pictures
// alike. looks/s says how closely it was watched.
func benchmarkDrag(b *testing.B, width, height int) {
	onDisplay(b)
	eye := newProbe(b)
	p := begin(b, build(b, "grainwise"))
	id := p.awaitID(b, "Grainwise")
	p.rest() // a size asked for before the program sets its own is lost
	p.resize(width, height)
	band := image.Rect(width/2-50, height/2-150, width/2+50, height/2+150)
	var all counted
	for b.Loop() {
		done, seen := make(chan struct{}), make(chan counted)
		go func() { seen <- eye.count(id, band, done) }()
		p.toAndFro(360)
		close(done)
		c := <-seen
		if c.err != nil {
			b.Fatal(c.err)
		}
		all = counted{all.pictures + c.pictures, all.looks + c.looks, all.seconds + c.seconds, nil}
	}
	end(b, p, "Grainwise")
	if all.seconds == 0 {
		b.Fatal("the drawing does not follow the slider")
	}
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(float64(all.pictures)/all.seconds, "frames/s")
	b.ReportMetric(float64(all.looks)/all.seconds, "looks/s")
}

func BenchmarkDrag1600x1000(b *testing.B) { benchmarkDrag(b, 1600, 1000) }
func BenchmarkDrag1280x720(b *testing.B)  { benchmarkDrag(b, 1280, 720) }

// held is what a process holds in memory, in MB (VmRSS of proc(5)).
func held(b *testing.B, p *program) float64 {
	b.Helper()
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", p.cmd.Process.Pid))
	if err != nil {
		b.Fatal(err)
	}
	_, after, _ := strings.Cut(string(status), "VmRSS:")
	fields := strings.Fields(after)
	if len(fields) == 0 {
		b.Fatal("no VmRSS")
	}
	kb, err := strconv.ParseFloat(fields[0], 64)
	if err != nil {
		b.Fatal(err)
	}
	return kb / 1024
}

// Budgets: at most 60 MB over an empty window at start, 150 MB after use. The
// empty window stands in testdata/emptywindow; both begin at the same size, at
// rest, and are then made as large as the size named. Use is 30 s of dragging
// the page's height in one view after the other.
func benchmarkMemory(b *testing.B, width, height int) {
	onDisplay(b)
	program, nothing := build(b, "grainwise"), build(b, "grainwise/testdata/emptywindow")
	for b.Loop() {
		empty := begin(b, nothing)
		empty.awaitID(b, "Emptywindow")
		empty.rest()
		emptyStart := held(b, empty)
		empty.resize(width, height)
		emptyLarge := held(b, empty)
		end(b, empty, "Emptywindow")

		p := begin(b, program)
		p.awaitID(b, "Grainwise")
		p.rest()
		start := held(b, p)
		p.resize(width, height)
		use(p, 30*time.Second)
		p.rest()
		used := held(b, p)
		end(b, p, "Grainwise")

		b.ReportMetric(emptyStart, "empty-MB")
		b.ReportMetric(start, "start-MB")
		b.ReportMetric(start-emptyStart, "start-over-MB")
		b.ReportMetric(used, "used-MB")
		b.ReportMetric(used-emptyLarge, "used-over-MB")
	}
	b.ReportMetric(0, "ns/op")
}

// use drags in every view in turn, for so long.
func use(p *program, long time.Duration) {
	views := len(view.OfBook())
	for i, end := 0, time.Now().Add(long); time.Now().Before(end); i++ {
		p.key(fmt.Sprintf("ctrl+%d", 1+i%views))
		p.toAndFro(120)
	}
}

func BenchmarkMemory1600x1000(b *testing.B) { benchmarkMemory(b, 1600, 1000) }
func BenchmarkMemory1280x720(b *testing.B)  { benchmarkMemory(b, 1280, 720) }
