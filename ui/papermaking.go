package ui

import (
	"context"

	"grainwise/render/scene"
	printed "grainwise/render/sheet"
)

// papermaking lays papers out behind the window's back: one at a time, the newest
// wish wins, and what is made stays until the design is another. It belongs to
// the window's goroutine but for the laying out itself.
type papermaking struct {
	begin    func(work func()) // on another goroutine
	onWindow func(func())
	changed  func()

	key   string
	in    printed.Input
	kinds []printed.Kind // wanted, the one on show first
	made  map[string]printed.Document
	busy  bool
}

func newPapermaking(apart func(work func() (then func())), onWindow func(func()), changed func()) *papermaking {
	begin := func(work func()) {
		apart(func() func() { work(); return func() {} })
	}
	return &papermaking{begin: begin, onWindow: onWindow, changed: changed, made: map[string]printed.Document{}}
}

// want has these papers made of an input, which the key tells from any other.
func (p *papermaking) want(key string, in printed.Input, kinds []printed.Kind) {
	if key != p.key {
		p.key, p.in, p.made = key, in, map[string]printed.Document{}
	}
	p.kinds = kinds
	p.next()
}

// pages are a paper's, if it is made.
func (p *papermaking) pages(id string) ([]*scene.Scene, bool) {
	d, made := p.made[id]
	return d.Pages, made
}

func (p *papermaking) next() {
	if p.busy {
		return
	}
	for _, k := range p.kinds {
		if _, made := p.made[k.ID]; !made {
			p.busy = true
			key, in := p.key, p.in
			p.begin(func() { p.work(key, in, k) })
			return
		}
	}
}

// work runs on its own goroutine.
func (p *papermaking) work(key string, in printed.Input, k printed.Kind) {
	made, err := printed.Make(context.Background(), in, []printed.Kind{k}, nil)
	p.onWindow(func() {
		p.busy = false
		if err == nil && key == p.key {
			p.made[k.ID] = made[0]
			p.changed()
		}
		p.next()
	})
}
