//go:build window

package main

import (
	"path/filepath"
	"testing"

	"grainwise/model/measure"
)

// A program that is killed with work unsaved offers it at its next start, and
// the keyboard alone takes it up and saves it.
func TestAfterACrashTheWorkIsOffered(t *testing.T) {
	binary, home := build(t, "grainwise"), t.TempDir()
	p := launch(t, binary, home)
	p.resize(1280, 720)
	p.drag(onTrack(210), heightTrack.Min.Y, onTrack(240))
	p.rest()
	p.await("a copy of the work", func() bool {
		all, err := filepath.Glob(filepath.Join(home, "config", "grainwise", "unsaved", "*.unsaved"))
		return err == nil && len(all) == 1
	})
	p.rest() // the last of the drag is kept within a second
	if err := p.cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	<-p.ended

	p = launch(t, binary, home)
	p.resize(1280, 720)
	p.shot("recovery-1280.png")
	if got := p.title(); got != "Low Water – Grainwise" {
		t.Errorf("title %q before it is opened", got)
	}
	p.key("space") // on "Open it"
	p.await("the work", func() bool { return p.title() == "Low Water (not saved) – Grainwise" })
	p.shot("recovered-1280.png")
	file := filepath.Join(home, "found")
	p.saveAs(file)
	height := opened(t, file+".grainwise").Decisions.Design.Page.Height
	if height < measure.MM(235) || height > measure.MM(245) {
		t.Errorf("the work has a height of %v mm", height.MM())
	}
	p.key("ctrl+q")
	p.quits()
}
