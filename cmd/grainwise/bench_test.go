//go:build window

package main

import (
	"flag"
	"fmt"
	"io"
	"log"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"fyne.io/fyne/v2"

	"grainwise/model/project"
	"grainwise/ui"
)

// The drag is measured on a window within this process: only there can its
// pictures be counted. Everything else starts the real program.

// drawn counts the pictures that it has shown so far.
var drawn atomic.Int64

func TestMain(m *testing.M) {
	flag.Parse()
	if flag.Lookup("test.bench").Value.String() == "" || os.Getenv("GRAINWISE_WINDOW_TEST") == "" {
		os.Exit(m.Run())
	}
	folder, err := os.MkdirTemp("", "grainwise")
	if err != nil {
		panic(err)
	}
	os.Setenv("XDG_CONFIG_HOME", folder)
	code := 1
	a := application()
	w := ui.New(a, ui.Ports{Project: project.Demo(), Favourites: project.FavouritesIn(folder), Recent: project.RecentIn(folder)})
	w.OnDrawn(func() { drawn.Add(1) })
	a.Lifecycle().SetOnStarted(func() {
		go func() {
			code = m.Run()
			fyne.Do(a.Quit)
		}()
	})
	w.Show()
	a.Run()
	log.SetOutput(io.Discard) // the toolkit watches its folder, and complains that it goes
	os.RemoveAll(folder)
	os.Exit(code)
}

// mine is the window of this process, to be moved and dragged.
func mine(b *testing.B) *program {
	b.Helper()
	if os.Getenv("GRAINWISE_WINDOW_TEST") == "" {
		b.Skip("only on a display made for it")
	}
	p := &program{t: b}
	p.window = p.find("Grainwise")
	return p
}

// The slider goes to and fro 120 times a second for three seconds, by the
// pointer.
func benchmarkDrag(b *testing.B, width, height int) {
	p := mine(b)
	p.resize(width, height)
	words := []string{"mousemove", "--window", p.window, fmt.Sprint(onTrack(210)), fmt.Sprint(heightTrack.Min.Y), "sleep", "0.2", "mousedown", "1"}
	const moves, perSecond = 360, 120
	for i := range moves {
		at := onTrack(210) + 40 - max(40-i%80, i%80-40)
		words = append(words, "sleep", fmt.Sprint(1.0/perSecond), "mousemove", "--window", p.window, fmt.Sprint(at), fmt.Sprint(heightTrack.Min.Y))
	}
	frames, seconds := int64(0), 0.0
	for b.Loop() {
		from, began := drawn.Load(), time.Now()
		p.do(append(words, "mouseup", "1")...)
		frames += drawn.Load() - from
		seconds += time.Since(began).Seconds()
	}
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(float64(frames)/seconds, "frames/s")
}

func BenchmarkDrag1600x1000(b *testing.B) { benchmarkDrag(b, 1600, 1000) }
func BenchmarkDrag1280x720(b *testing.B)  { benchmarkDrag(b, 1280, 720) }

// memory is what a process holds, in megabytes, as Linux tells it.
func memory(b *testing.B, pid int) float64 {
	b.Helper()
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
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

// The real program, from its start to a window on the screen with its name, to
// some 50 ms: that is how often it is looked for.
func BenchmarkStart(b *testing.B) {
	mine(b)
	binary, home := build(b, "grainwise"), b.TempDir()
	file := filepath.Join(home, "started.grainwise")
	if err := project.Save(file, project.Demo()); err != nil {
		b.Fatal(err)
	}
	seconds, held := 0.0, 0.0
	for b.Loop() {
		p := &program{t: b, cmd: exec.Command(binary, file)}
		p.cmd.Env = append(os.Environ(), "HOME="+home, "XDG_CONFIG_HOME="+home)
		began := time.Now()
		if err := p.cmd.Start(); err != nil {
			b.Fatal(err)
		}
		p.window = p.find("^started")
		seconds += time.Since(began).Seconds()
		p.rest()
		held = memory(b, p.cmd.Process.Pid)
		p.cmd.Process.Kill()
		p.cmd.Wait()
		p.await("the window to go", func() bool {
			out, _ := xdotool("search", "--onlyvisible", "--name", "^started")
			return out == ""
		})
	}
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(1000*seconds/float64(b.N), "ms")
	b.ReportMetric(held, "MB")
}

// After the drags: what this process holds, the tests' own share included.
func BenchmarkMemoryAfterUse(b *testing.B) {
	mine(b)
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(memory(b, os.Getpid()), "MB")
}
