package ui

import (
	"slices"

	"grainwise/model/compare"
)

// pins are the designs that the live one is compared with. They belong to the
// window: no file holds them, and undo leaves them alone.
type pins struct {
	designs []compare.Design
	at      int // the one that is drawn as a ghost
	turn    int // counts the changes of what is pinned
	changed func()
}

// add pins a design and draws it; the oldest gives way to a fourth.
func (p *pins) add(d compare.Design) {
	if len(p.designs) == compare.Most-1 {
		p.designs = p.designs[1:]
	}
	p.designs = append(slices.Clone(p.designs), d)
	p.at = len(p.designs) - 1
	p.turn++
	p.changed()
}

// show draws another one.
func (p *pins) show(at int) {
	p.at = at
	p.changed()
}

// remove takes one away.
func (p *pins) remove(at int) {
	p.designs = slices.Delete(slices.Clone(p.designs), at, at+1)
	p.at = max(0, min(p.at, len(p.designs)-1))
	p.turn++
	p.changed()
}

// ghost is the design drawn under the live one; nil for none.
func (p *pins) ghost() *compare.Design {
	if p.at < len(p.designs) {
		return &p.designs[p.at]
	}
	return nil
}
