package view

import (
	"cmp"
	"slices"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// endOnLabel is a word above the cross-section and what it points at.
type endOnLabel struct {
	part        book.PartID
	long, short string
	at          draft.P // px
	stop        bool
	mark        check.Level // of the part, after its name
}

// width is what a label takes with its mark, px.
func (l endOnLabel) width() float64 { return draft.SizeLine().Width(l.long) + markRoom(l.mark) }

// marked is a part's own label: the one that its worst level stands beside.
func (l endOnLabel) marked(level check.Level) endOnLabel {
	l.mark = level
	return l
}

// labels sets one row of words above the drawing, each with a leader: in full
// where they fit, else short, else without the last ones.
func (d *endOnDrawing) labels() {
	labels := d.wanted()
	room := d.sheet.Width - 2*d.layout.left
	for rowWidth(labels) > room && len(labels) > 1 {
		if anyLong(labels) {
			for i := range labels {
				labels[i].long = labels[i].short
			}
			continue
		}
		labels = labels[:len(labels)-1]
	}
	slices.SortStableFunc(labels, func(a, b endOnLabel) int { return cmp.Compare(a.at.X, b.at.X) })
	d.setLabels(labels)
}

func anyLong(labels []endOnLabel) bool {
	return slices.ContainsFunc(labels, func(l endOnLabel) bool { return l.long != l.short })
}

// rowAir is between two labels, px.
const rowAir = 18.0

// rowWidth is what a row of labels takes.
func rowWidth(labels []endOnLabel) float64 {
	sum := 0.0
	for _, l := range labels {
		sum += l.width() + rowAir
	}
	return sum
}

// setLabels places a row of labels, each as near to above its anchor as the
// others allow.
func (d *endOnDrawing) setLabels(labels []endOnLabel) {
	t := draft.SizeLine().In(draft.Ink)
	top := d.layout.spine.plan.Y(d.shape.halfThickness())
	y := top - 48
	if d.layout.compact {
		y = top - 34
	}
	labels, xs := d.uncrossed(labels, y+16)
	for i, l := range labels {
		s := d.sheet.About(l.part, "")
		colour := t
		if l.stop {
			colour = t.In(draft.Stop)
		}
		if s.Try(draft.P{X: xs[i] - markRoom(l.mark)/2, Y: y}, l.long, colour, scene.Middle, 0) {
			s.Level(draft.P{X: xs[i] + (l.width()-draft.LevelSize)/2, Y: y - markUp}, l.mark)
			s.Leader(l.at, draft.P{X: xs[i], Y: y + 16}, draft.P{X: xs[i], Y: y + 6})
		}
	}
}

// uncrossed orders the labels so that no two neighbours' leaders cross, as far
// as swapping neighbours can, and returns where each is centred.
func (d *endOnDrawing) uncrossed(labels []endOnLabel, y float64) ([]endOnLabel, []float64) {
	xs := d.centresInOrder(labels)
	for range len(labels) {
		crossed := false
		for i := 1; i < len(labels); i++ {
			if leadersCross(labels[i-1].at, draft.P{X: xs[i-1], Y: y}, labels[i].at, draft.P{X: xs[i], Y: y}) {
				labels[i-1], labels[i] = labels[i], labels[i-1]
				xs, crossed = d.centresInOrder(labels), true
			}
		}
		if !crossed {
			break
		}
	}
	return labels, xs
}

// leadersCross tells whether the straight lines a–b and c–d cross.
func leadersCross(a, b, c, d draft.P) bool {
	side := func(p, q, r draft.P) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// centresInOrder centres the labels in the order given, whatever their anchors.
func (d *endOnDrawing) centresInOrder(labels []endOnLabel) []float64 {
	boxes := make([]draft.Label, len(labels))
	last := 0.0
	for i, l := range labels {
		half := (l.width() + rowAir) / 2
		last = max(last, l.at.X) // never before its left neighbour
		boxes[i] = draft.Label{Anchor: last, Above: half, Below: half}
	}
	xs, _ := draft.PlaceLabels(boxes, d.layout.left, d.sheet.Width-d.layout.left)
	return xs
}

// wanted lists the labels, the ones to keep first.
func (d *endOnDrawing) wanted() []endOnLabel {
	p := d.shape
	spine, fore := d.layout.spine, d.layout.fore
	leaf := leafOf(d.in.Book)
	n := p.sections
	low, high := p.band(n-1, spine.x1)
	joint := endOnLabel{book.PartJoint, words.Say("endon.joint"), words.Say("endon.joint"), d.on(spine, p.jointMiddle()), false, d.in.Marks.of(book.PartJoint)}
	if !p.closes {
		joint.long, joint.short, joint.stop = words.Say("endon.too-narrow"), words.Say("endon.too-narrow"), true
	}
	labels := []endOnLabel{
		joint,
		d.label(book.PartBoard, "endon.board", spine, draft.P{X: p.setBack + 0.35*(min(spine.x1, p.setBack+30)-p.setBack), Y: p.boardIn(p.setBack) + 0.5*p.board}).marked(d.in.Marks.of(book.PartBoard)),
		d.label(book.PartSpine, "endon.spine-piece", spine, draft.P{X: -p.spine / 2, Y: p.spineWidth/2 - min(0.14*p.spineWidth, 3)}).marked(d.in.Marks.of(book.PartSpine)),
		d.free(spine),
		{book.PartFolio, words.Say("endon.section", words.With{"folios": strconv.Itoa(p.leaves / 2)}), words.Say("endon.section.short"),
			d.on(spine, draft.P{X: min(spine.x1-3, p.setBack+36, p.width*0.4), Y: (low + high) / 2}), false,
			d.in.Marks.of(spokenOf(book.PartFolio)...)},
		d.label(book.PartBlock, "endon.square", fore, draft.P{X: (p.width + p.fore) / 2, Y: p.foreHalf - min(0.6*p.foreHalf, 4)}),
		d.label(d.edge(), "endon.turn-in", fore, draft.P{X: p.fore - 0.45*max(p.turnIn, 0), Y: p.boardIn(p.fore) - p.edge()/2}),
		d.label(leaf.part, "endon.leaf", fore, draft.P{X: max(p.leafFore-max(p.turnIn, 4), fore.x0+1.5), Y: p.blockTop(p.leafFore) - leaf.thickness.MM()/2}).marked(d.in.Marks.of(leaf.part)),
	}
	labels = append(labels, d.linkedLabels(spine)...)
	if p.filledHalf > 0 {
		x := max(p.width-3, fore.x0+1)
		labels = slices.Insert(labels, 4, d.label(book.PartBlock, "endon.filled", fore, draft.P{X: x, Y: p.filledIn(x)}))
	}
	cloth := max(p.setBack, fore.x0) + 0.25*(p.fore-max(p.setBack, fore.x0))
	labels = append(labels, d.label(d.edge(), "endon."+string(d.edge()), fore, draft.P{X: cloth, Y: p.boardOut(cloth) + p.edge()/2}).marked(d.in.Marks.of(d.edge())))
	if p.quarter.is {
		on := p.setBack + 0.5*max(p.quarter.overlap-p.quarter.lap, 0)
		labels = append(labels, d.label(book.PartCovering, "endon.cloth", spine, draft.P{X: on, Y: p.boardOut(on) + p.cloth/2}).marked(d.in.Marks.of(book.PartCovering)))
	}
	if n > 1 && p.pleat > 0 {
		low, _ := p.band(n-1, p.pleat)
		_, under := p.band(n-2, p.pleat)
		labels = slices.Insert(labels, 4, d.label(book.PartLiner, "endon.pleat", spine, draft.P{X: p.pleat * 0.8, Y: (low + under) / 2}))
	}
	return labels
}

// edge is the part that goes round the boards' fore edges.
func (d *endOnDrawing) edge() book.PartID {
	if d.shape.quarter.is {
		return book.PartSide
	}
	return book.PartCovering
}

// linkedLabels name what a link-stitched block has at its back.
func (d *endOnDrawing) linkedLabels(spine profileWindow) []endOnLabel {
	p := d.shape
	l := p.linked
	if !l.is {
		return nil
	}
	labels := []endOnLabel{
		d.label(book.PartMull, "endon.mull", spine, draft.P{X: 0.75 * min(l.mullLap, spine.x1), Y: p.blockTop(0.75*min(l.mullLap, spine.x1)) - l.mull/2}).marked(d.in.Marks.of(book.PartMull)),
	}
	if l.tape > 0 {
		labels = append(labels, d.label(book.PartTape, "endon.tape", spine, draft.P{X: 0.4 * max(p.setBack, 0), Y: p.spineHalf - l.mull - 0.5*l.tape}).marked(d.in.Marks.of(book.PartTape)))
	}
	return labels
}

// jointMiddle is a point on the covering in the joint.
func (p profile) jointMiddle() draft.P {
	path := p.jointPath()
	a, b := path[len(path)-2], path[len(path)-1]
	return draft.P{X: (a.X + b.X) / 2, Y: (a.Y+b.Y)/2 + p.cloth/2}
}

// free labels the spine that no adhesive may reach: the hollow between the
// uppermost two sections and the spine piece.
func (d *endOnDrawing) free(spine profileWindow) endOnLabel {
	p := d.shape
	low, _ := p.band(p.sections-1, 0)
	return d.label(book.PartBlock, "endon.free", spine, draft.P{X: p.liner * 1.2, Y: low})
}

func (d *endOnDrawing) label(part book.PartID, key string, w profileWindow, at draft.P) endOnLabel {
	short, ok := words.Lookup(key + ".short")
	if !ok {
		short = words.Say(key)
	}
	return endOnLabel{part, words.Say(key), short, d.on(w, at), false, ""}
}

// on is a point of the cross-section on the sheet, kept inside its window.
func (d *endOnDrawing) on(w profileWindow, at draft.P) draft.P {
	return w.plan.At(min(max(at.X, w.x0), w.x1), at.Y)
}
