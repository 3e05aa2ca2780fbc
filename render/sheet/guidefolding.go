package sheet

import (
	"fmt"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// folded is the piece that a folding step folds in half.
func (d plate) folded() book.Part {
	id := book.PartFolio
	switch d.step.ID {
	case "fold-endpapers":
		id = book.PartEndpaper
	case "fold-guards":
		id = book.PartInterleaf
	}
	p, _ := d.in.Book.Part(id)
	return p
}

// foldingPlate brings one half over to the other, then creases the fold.
func foldingPlate(d plate) {
	p := d.folded()
	half, high := p.Width.MM()/2, p.Height.MM()
	s := fitting(3*half, high, 46, 36)
	half, high = half*s, high*s
	top := 12 + (36-high)/2
	foot := top + high
	x0, fold := 3.0, 3+half
	d.slab(paperTint(), x0, top, fold+half, foot)
	d.line(partLine, []at{{X: fold, Y: top}, {X: fold, Y: foot}}, 1.6, 1)
	lift := at{X: half * 0.62, Y: -min(half*0.5, 7)}
	d.piece(white, at{X: fold, Y: top}, at{X: fold + lift.X, Y: top + lift.Y}, at{X: fold + lift.X, Y: foot + lift.Y}, at{X: fold, Y: foot})
	switch p.Grain {
	case book.AlongHeight:
		d.grain(at{X: x0 + half/3, Y: top + high*0.25}, at{X: x0 + half/3, Y: top + high*0.75})
	case book.AlongWidth:
		d.grain(at{X: x0 + half*0.15, Y: top + high*0.7}, at{X: x0 + half*0.85, Y: top + high*0.7})
	}
	d.push(bow(at{X: fold + lift.X*0.8, Y: top + lift.Y - 1}, at{X: x0 + half*0.35, Y: top - 1.5}, -3.2)...)
	d.creased(d.width-12-half, top, half, high, p)
}

// creased is the folded piece with its size, its fold at the right under the folder.
func (d plate) creased(x, top, half, high float64, p book.Part) {
	fold, foot := x+half, top+high
	d.slab(paperTint(), x, top, fold, foot)
	d.line(heavyLine, []at{{X: fold, Y: top}, {X: fold, Y: foot}})
	mid := top + high/2
	d.piece(cardTint(), at{X: fold - 1, Y: mid - 2}, at{X: fold + 1.5, Y: mid - 3.5}, at{X: fold + 9, Y: mid - 11}, at{X: fold + 10.4, Y: mid - 9.6}, at{X: fold + 3, Y: mid - 0.5})
	d.push(at{X: fold + 3, Y: mid + 2}, at{X: fold + 3, Y: min(foot-1, mid+9)})
	d.size(at{X: x, Y: foot}, at{X: fold, Y: foot}, 4, p.Width/2)
	d.size(at{X: x, Y: top}, at{X: x, Y: foot}, -3.5, p.Height)
}

// mostShown is how many folios of a section are drawn.
const mostShown = 6

// gatheringPlate lays the folios into each other, seen from the tail: loose, then one
// tight section, and how many of it there are.
func gatheringPlate(d plate) {
	r := d.in.Book.Resolved
	n := min(r.Sections.Folios, mostShown)
	const mid = 29.0
	apart := min(3.6, 14/float64(n))
	for i := range n {
		tip := at{X: 7 + float64(i)*apart, Y: mid}
		d.line(partLine, vee(tip, 20, 15))
		if d.guardAt(i) {
			d.line(partLine, vee(at{X: tip.X - apart*0.45, Y: mid}, 20, 15), 1.2, 0.8)
		}
	}
	d.say(14, 8, fmt.Sprintf("%d ×", r.Sections.Folios), scene.Middle)
	d.push(at{X: 36, Y: mid}, at{X: 42, Y: mid})
	open := 0.0
	for i := n - 1; i >= 0; i-- {
		open += 1.1
		d.line(partLine, nested(at{X: 46 + float64(i)*0.9, Y: mid}, open, 60))
		if d.guardAt(i) {
			open += 0.9
			d.line(partLine, nested(at{X: 46 + float64(i)*0.9 - 0.6, Y: mid}, open, 60), 1.2, 0.8)
		}
	}
	thick := draft.Calipers(d.in.System).Format(d.in.Book.Block.SectionThickness)
	d.sizeText(at{X: 60, Y: mid - open}, at{X: 60, Y: mid + open}, 3, thick)
	d.say(57, 8, fmt.Sprintf("%d ×", r.Sections.Count), scene.Middle)
}

// guardAt says whether a guard sheet lies round the i-th folio from outside.
func (d plate) guardAt(i int) bool {
	mode := d.in.Book.Resolved.Interleaf.Mode
	return mode == book.GuardFolio || mode == book.GuardSection && i == 0
}

// vee is a folded sheet half open, its fold at the left.
func vee(fold at, long, open float64) []at {
	return []at{{X: fold.X + long, Y: fold.Y - open}, fold, {X: fold.X + long, Y: fold.Y + open}}
}

// nested is the same closed round others, up to x.
func nested(fold at, open, x float64) []at {
	return []at{
		{X: x, Y: fold.Y - open}, {X: fold.X + open, Y: fold.Y - open}, fold, {X: fold.X + open, Y: fold.Y + open}, {X: x, Y: fold.Y + open},
	}
}
