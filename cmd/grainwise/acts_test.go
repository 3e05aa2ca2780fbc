//go:build window

package main

import (
	"fmt"
	"image"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"
)

// Random acts go to the program in handfuls, one call of xdotool each. Their
// number is small in the ordinary test; GRAINWISE_ACTS asks for another, and
// GRAINWISE_SEED for the acts of an earlier run.
const (
	fewActs  = 300
	manyActs = 5000 // enough for the memory to tell something
	handful  = 50
)

// The program takes whatever comes: it does not end, complains of nothing on
// its standard error (a panic, a call from the wrong goroutine), still answers,
// and holds no more memory at the end than in its second quarter.
func TestRandomActs(t *testing.T) {
	count, seed := number(t, "GRAINWISE_ACTS", fewActs), number(t, "GRAINWISE_SEED", int(time.Now().UnixNano()%1e6))
	t.Logf("%d acts, GRAINWISE_SEED=%d", count, seed)
	home := t.TempDir()
	p := launch(t, build(t, "grainwise"), home)
	p.resize(1280, 720)
	monkey := &acts{program: p, dice: rand.New(rand.NewPCG(uint64(seed), 1))}
	var held []int
	for done := 0; done < count; done += handful {
		monkey.some(handful)
		held = append(held, p.resident())
		if !p.runs() {
			t.Fatalf("the program ended after %d acts", done+handful)
		}
	}
	if alike(p.turned("ctrl+1"), p.turned("ctrl+3"), drawing) {
		p.shot("acts.png")
		t.Error("the window does not answer any more")
	}
	if count >= manyActs {
		noGrowth(t, held)
	}
}

// turned is the window once it shows the drawing that a key turns to.
func (p *program) turned(key string) *image.RGBA {
	p.t.Helper()
	p.calm()
	p.key(key)
	p.rest()
	return p.picture()
}

// noGrowth compares the least memory held in the second quarter, when caches
// are full, with that of the last.
func noGrowth(t *testing.T, held []int) {
	t.Helper()
	quarter := len(held) / 4
	early, late := least(held[quarter:2*quarter]), least(held[3*quarter:])
	for i := 0; i < len(held); i += max(1, len(held)/20) {
		t.Logf("after %d acts %d MB", (i+1)*handful, held[i]>>10)
	}
	t.Logf("memory: at least %d MB in the second quarter, %d in the last", early>>10, late>>10)
	if grown := late - early; grown > early/10+8<<10 {
		t.Errorf("memory grew by %d MB", grown>>10)
	}
}

func least(kilobytes []int) int {
	low := kilobytes[0]
	for _, k := range kilobytes {
		low = min(low, k)
	}
	return low
}

func number(t *testing.T, name string, otherwise int) int {
	t.Helper()
	text := os.Getenv(name)
	if text == "" {
		return otherwise
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 {
		t.Fatalf("%s=%q is not a number", name, text)
	}
	return n
}

// resident is the memory that the program holds, kB.
func (p *program) resident() int {
	p.t.Helper()
	status, err := os.ReadFile(filepath.Join("/proc", strconv.Itoa(p.cmd.Process.Pid), "status"))
	if err != nil {
		return 0 // it has ended, and is found out elsewhere
	}
	_, rest, _ := strings.Cut(string(status), "VmRSS:")
	n, _ := strconv.Atoi(strings.Fields(rest)[0])
	return n
}

// acts is someone who tries everything, without sense.
type acts struct {
	*program
	dice *rand.Rand
}

// Keys of all kinds, but none that ends the program or opens a dialog of the
// platform, which would take the keys that follow.
var randomKeys = []string{
	"Tab", "Tab", "Tab", "shift+Tab", "Left", "Right", "Up", "Down", "Prior", "Next", "Home", "End", "Return", "space", "Escape",
	"shift+Right", "ctrl+BackSpace", "BackSpace", "Delete", "F6", "shift+F6", "F8", "shift+F8", "F1", "plus", "minus",
	"ctrl+1", "ctrl+2", "ctrl+3", "ctrl+0", "ctrl+f", "ctrl+m", "ctrl+z", "ctrl+y", "ctrl+a", "1", "7", "3", "slash", "period", "a",
}

// some does a handful of acts and then puts aside what stands in the way.
func (a *acts) some(n int) {
	a.t.Helper()
	var words []string
	for range n {
		words = append(words, a.one()...)
	}
	if _, err := xdotool(append(words, "mouseup", "1")...); err != nil && a.runs() {
		a.t.Fatalf("xdotool: %v", err)
	}
	a.calm()
}

func (a *acts) one() []string {
	switch n := a.dice.IntN(10); {
	case n < 3:
		return []string{"key", a.of(randomKeys)}
	case n < 6:
		return append(a.move(), "click", "1")
	case n < 8:
		return append(append(append(a.move(), "mousedown", "1"), a.move()...), "mouseup", "1")
	case n < 9:
		return append(a.move(), "click", a.of([]string{"4", "5"}))
	}
	return append(a.move(), "click", "--repeat", "2", "--delay", "10", "1")
}

// move goes somewhere in the window, but not to the menu of files.
func (a *acts) move() []string {
	x, y := a.dice.IntN(1280), 27+a.dice.IntN(720-27)
	if a.dice.IntN(20) == 0 {
		x, y = 45+a.dice.IntN(180), 13
	}
	return []string{"mousemove", "--window", a.window, fmt.Sprint(x), fmt.Sprint(y)}
}

func (a *acts) of(list []string) string { return list[a.dice.IntN(len(list))] }

// calm puts away dialogs of the platform, sheets and menus.
func (p *program) calm() {
	p.t.Helper()
	for _, title := range []string{"Save File", "Open File"} {
		if id, _ := xdotool("search", "--onlyvisible", "--name", title); id != "" {
			id, _, _ = strings.Cut(id, "\n")
			_, _ = xdotool("windowactivate", "--sync", id, "key", "Escape") // it may be gone already
		}
	}
	_, _ = xdotool("windowactivate", p.window, "key", "Escape", "Escape", "Escape")
}
