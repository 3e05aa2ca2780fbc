package sheet

import (
	"grainwise/render/scene"
)

// block is something that stands on one page in one piece.
type block struct {
	height float64
	draw   func(l leaf, p at)
	gap    float64 // over it, except at the head of a page
	stay   bool    // on the page of what follows it
	again  *block  // what heads a page that starts with this block, as a table's head
}

// flow sets blocks one below the other, over as many pages as they need.
type flow struct {
	format Format
	pages  []leaf
	y      float64 // where the next block goes
	bottom float64
	kept   []block // that stay with what follows
}

func newFlow(f Format) *flow {
	return &flow{format: f, bottom: f.Height - foot}
}

// width is that of a line.
func (f *flow) width() float64 { return f.format.Width - 2*side }

// add sets blocks.
func (f *flow) add(blocks ...block) {
	for _, b := range blocks {
		f.kept = append(f.kept, b)
		if !b.stay {
			f.set(f.kept)
			f.kept = nil
		}
	}
}

// set puts blocks down that stay together, on a new page if there is no room.
func (f *flow) set(together []block) {
	if len(together) == 0 {
		return
	}
	height := 0.0
	for i, b := range together {
		height += b.height
		if i > 0 || len(f.pages) > 0 && f.y > head {
			height += b.gap
		}
	}
	if len(f.pages) == 0 || f.y+height > f.bottom && f.y > head {
		f.turn()
		if again := together[0].again; again != nil {
			f.put(*again)
		}
	}
	for _, b := range together {
		if len(together) > 1 && f.y+b.gap+b.height > f.bottom && f.y > head {
			f.turn() // together they are longer than a page
		}
		f.put(b)
	}
}

func (f *flow) put(b block) {
	if f.y > head {
		f.y += b.gap
	}
	b.draw(f.pages[len(f.pages)-1], at{X: side, Y: f.y})
	f.y += b.height
}

// turn starts a page.
func (f *flow) turn() {
	f.pages = append(f.pages, newLeaf(f.format))
	f.y = head
}

// next lets what follows start a page.
func (f *flow) next() {
	f.set(f.kept)
	f.kept = nil
	if len(f.pages) > 0 && f.y > head {
		f.turn()
	}
}

// document ends the paper: every page is named.
func (f *flow) document(in Input, name string) Document {
	f.set(f.kept)
	f.kept = nil
	var d Document
	for i, l := range f.pages {
		in.named(l, name, i+1, len(f.pages))
		d.Pages = append(d.Pages, l.Scene())
	}
	return d
}

// heading is a title or a head, which stays with what follows it.
func heading(text string, s style, room float64) block {
	b := lines(text, s, room)
	b.gap, b.stay = 5, true
	return b
}

// lines is a text in one piece.
func lines(text string, s style, room float64) block {
	set := s.wrapped(text, room)
	return block{height: float64(len(set)) * s.leading, gap: 1.5, draw: func(l leaf, p at) {
		for i, line := range set {
			l.write(at{X: p.X, Y: p.Y + s.first() + float64(i)*s.leading}, line, s, scene.Start)
		}
	}}
}

// paragraphs is a text of any length: a block a line, so that it may run over
// pages.
func paragraphs(text string, s style, room float64) []block {
	var all []block
	for i, line := range s.wrapped(text, room) {
		b := lines(line, s, room)
		if i > 0 {
			b.gap = 0
		}
		all = append(all, b)
	}
	return all
}

// beside sets blocks next to each other, the left ones' width given; all in one
// piece.
func beside(left, right block, leftWidth, between float64) block {
	return block{height: max(left.height, right.height), gap: max(left.gap, right.gap), draw: func(l leaf, p at) {
		left.draw(l, p)
		right.draw(l, at{X: p.X + leftWidth + between, Y: p.Y})
	}}
}

// stacked is blocks below each other in one piece.
func stacked(blocks ...block) block {
	whole := block{}
	for i, b := range blocks {
		if i > 0 {
			whole.height += b.gap
		}
		whole.height += b.height
	}
	if len(blocks) > 0 {
		whole.gap = blocks[0].gap
	}
	whole.draw = func(l leaf, p at) {
		for i, b := range blocks {
			if i > 0 {
				p.Y += b.gap
			}
			b.draw(l, p)
			p.Y += b.height
		}
	}
	return whole
}

// picture is a drawing made for its place, of so many mm.
func picture(draw func(width, height float64) *scene.Scene, width, height float64) block {
	return block{height: height, gap: 3, draw: func(l leaf, p at) {
		l.place(draw(width/scene.Px, height/scene.Px), p)
	}}
}
