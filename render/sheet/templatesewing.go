package sheet

import (
	"cmp"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The strip that is laid on a fold, mm: its left edge lies on the fold.
const (
	stripWidth  = 70.0
	stripCorner = 12.0 // cut off at the head, so that it is not turned over unnoticed
	stripTitle  = 10.0 // along the far edge
	factsGap    = 10.0 // between a strip and its facts
	factsWidth  = 90.0
)

// byHand and byMachine tell how a block is sewn.
func byHand(in Input) bool    { return len(in.Book.Sewing.Stations) > 0 }
func byMachine(in Input) bool { return !byHand(in) }

// sewingTemplate shows where a machine's seam starts and stops.
func sewingTemplate(in Input) Document {
	seam := in.Book.Sewing.Seam
	l := in.layOnFold(in.seamFacts())
	start, stop := l.up(seam.Low), l.up(seam.High)
	if stitch := in.Book.Resolved.Sewing.Stitch.MM(); stitch > 0 {
		l.line(pen(0.6, stitch*0.75, stitch*0.25), at{X: 2, Y: start}, at{X: 2, Y: stop})
	}
	l.strip(in, "sewing-template", []label{
		{y: start, number: in.sized(seam.Low), word: words.Say("template.seam.start"), kind: station},
		{y: stop, number: in.sized(seam.High), word: words.Say("template.seam.stop"), kind: station},
	})
	return in.fullSize("sewing-template", l.Scene())
}

// punchingTemplate shows where the stations of sewing by hand are pierced, and
// where the tapes lie.
func punchingTemplate(in Input) Document {
	l := in.layOnFold(in.stationFacts())
	l.tapes(in, 0, 9)
	l.strip(in, "punching-template", in.stationLabels(l.up))
	return in.fullSize("punching-template", l.Scene())
}

// foldStrip is a strip as high as a section is when it is sewn, beside its facts.
type foldStrip struct {
	stencil
	high float64 // of the section, mm
	base float64 // y of its tail
	trim float64 // what is cut off at the head once it is sewn
}

// sectionHigh is a section's height as it is sewn, nothing trimmed yet.
func (in Input) sectionHigh() float64 {
	page := in.Book.Resolved.Page
	return (in.Book.Block.Height + page.TrimHead + page.TrimTail).MM()
}

func (in Input) layOnFold(facts []fact) foldStrip {
	high := in.sectionHigh()
	room := max(high, factsHeight(facts, factsWidth))
	s := newStencil(stripWidth+factsGap+factsWidth, room, in.Left)
	s.facts(at{X: stripWidth + factsGap, Y: room}, facts, factsWidth)
	return foldStrip{s, high, room - high, in.Book.Resolved.Page.TrimHead.MM()}
}

// up is how high on the sheet a distance from the trimmed head lies.
func (f foldStrip) up(fromHead book.Length) float64 {
	return f.base + f.high - f.trim - fromHead.MM()
}

// strip is the outline and what stands on it.
func (f foldStrip) strip(in Input, id string, labels []label) {
	w, low, high := stripWidth, f.base, f.base+f.high
	f.cutOut(at{Y: low}, at{X: w, Y: low}, at{X: w, Y: high - stripCorner}, at{X: w - stripCorner, Y: high}, at{Y: high})
	f.labels(0, w-stripTitle, low, high, append(labels, in.trimLabels(low, high)...))
	f.ends(in, id, w-stripTitle/2, low, high-stripCorner)
}

// ends names head and tail along a strip's far edge, and the strip where there is
// room between.
func (s stencil) ends(in Input, id string, x, low, high float64) {
	const air = 5.0
	headWord, tailWord := words.Say("template.head"), words.Say("template.tail")
	s.upright(at{X: x, Y: high - 1}, headWord, number(), scene.End)
	high -= 1 + number().width(headWord) + air
	if high-low < bold().width(tailWord)+2 {
		return
	}
	s.upright(at{X: x, Y: low + 3}, tailWord, bold(), scene.Start)
	low += 3 + bold().width(tailWord) + air
	if high-low > 20 {
		s.upright(at{X: x, Y: (low + high) / 2}, in.about(words.Say("paper."+id), quiet(), high-low), quiet(), scene.Middle)
	}
}

// labelKind is how a label's place is marked on the strip.
type labelKind int

const (
	station labelKind = iota // a line, and a triangle with its tip on the fold
	across                   // a dashed line over the strip
	toFold                   // an open arrow to the fold
)

// label is what stands beside a place along a strip.
type label struct {
	y            float64
	number, word string
	kind         labelKind
}

// Where labels stand from the fold, mm.
const (
	markEnd   = 9.0
	labelFrom = 13.0
)

// labels marks places on a fold at x and names them in the room beside it.
func (s stencil) labels(x, room, low, high float64, all []label) {
	all = withArrow(all, low, high)
	st, every := labelled(len(all), high-low)
	half := st.leading / 2
	var wanted []float64
	var named []label
	for i, l := range all {
		s.place(x, room, l)
		if i%every == 0 || l.kind != station {
			wanted, named = append(wanted, l.y), append(named, l)
		}
	}
	gap := min(st.leading, (high-low)/float64(len(named)))
	for i, y := range spread(wanted, gap, low+half, high-half) {
		s.named(x, y, room, named[i], st)
	}
}

// withArrow puts the labels in their order, and an arrow to the fold into the
// largest gap between them.
func withArrow(all []label, low, high float64) []label {
	slices.SortFunc(all, func(a, b label) int { return cmp.Compare(a.y, b.y) })
	at, most, middle := 0, 0.0, low
	before := low
	for i := range len(all) + 1 {
		after := high
		if i < len(all) {
			after = all[i].y
		}
		if after-before > most {
			at, most, middle = i, after-before, (before+after)/2
		}
		before = after
	}
	return slices.Insert(all, at, label{y: middle, word: words.Say("template.fold"), kind: toFold})
}

// place marks a label's place.
func (s stencil) place(x, room float64, l label) {
	switch l.kind {
	case station:
		s.mark(at{X: x, Y: l.y}, at{X: x + markEnd, Y: l.y})
		s.area(draft.Ink, at{X: x, Y: l.y}, at{X: x + 3.4, Y: l.y + 1.1}, at{X: x + 3.4, Y: l.y - 1.1})
	case across:
		s.dashed(at{X: x, Y: l.y}, at{X: x + markEnd, Y: l.y})
	case toFold:
		s.openArrow(at{X: x, Y: l.y}, markEnd)
	}
}

// named writes a label and leads it to its place.
func (s stencil) named(x, y, room float64, l label, st style) {
	s.line(pen(thinWidth), at{X: x + markEnd, Y: l.y}, at{X: x + labelFrom - 0.8, Y: y})
	at := at{X: x + labelFrom, Y: y}
	room -= labelFrom
	if l.number != "" {
		s.level(at, l.number, st, scene.Start)
		used := st.width(l.number) + 2
		at.X, room = at.X+used, room-used
	}
	word := quiet()
	if l.kind == toFold {
		word = bold()
	}
	word.size = min(word.size, st.size)
	if l.word != "" && word.width(l.word) <= room {
		s.level(at, l.word, word, scene.Start)
	}
}

// trimLabels mark where a section's ends are cut off once it is sewn.
func (in Input) trimLabels(low, high float64) []label {
	var all []label
	page := in.Book.Resolved.Page
	if page.TrimTail > 0 {
		all = append(all, label{y: low + page.TrimTail.MM(), word: words.Say("template.trim"), kind: across})
	}
	if page.TrimHead > 0 {
		all = append(all, label{y: high - page.TrimHead.MM(), word: words.Say("template.trim"), kind: across})
	}
	return all
}

// stationLabels name the stations; the first and the last of a linked block are
// its kettles. Stations that fall together have one label.
func (in Input) stationLabels(up func(book.Length) float64) []label {
	var all []label
	linked := in.Book.Resolved.Structure == book.LinkStitched
	stations := in.Book.Sewing.Stations
	for i, d := range stations {
		if i > 0 && d == stations[i-1] {
			continue
		}
		l := label{y: up(d), number: in.sized(d), kind: station}
		if linked && (i == 0 || i == len(stations)-1) {
			l.word = words.Say("template.kettle")
		}
		all = append(all, l)
	}
	return all
}

// tapes tints where the tapes lie on the fold, from x to far beside it.
func (f foldStrip) tapes(in Input, x, far float64) {
	half := in.Book.Tapes.Width / 2
	for _, middle := range in.Book.Tapes.At {
		low, high := f.up(middle+half), f.up(middle-half)
		f.area(draft.Paper.Times(0.88), at{X: x, Y: low}, at{X: far, Y: low}, at{X: far, Y: high}, at{X: x, Y: high})
	}
}

// seamFacts is what the machine is set to.
func (in Input) seamFacts() []fact {
	b := in.Book
	seam := b.Sewing.Seam
	facts := []fact{
		told(words.Say("template.fact.seam"), words.Say("template.fromTo", words.With{"from": in.size(seam.Low), "to": in.sized(seam.High)})),
		told(words.Say("template.fact.stitches"), words.Say("template.stitches", words.With{"count": b.Sewing.Stitches, "size": in.sized(b.Resolved.Sewing.Stitch)})),
		told(words.Say("template.fact.fence"), in.sized(b.Fence())),
	}
	return append(append(facts, in.threadFacts()...), usualCare(making.Machine))
}

// stationFacts is what is pierced.
func (in Input) stationFacts() []fact {
	b := in.Book
	facts := []fact{{what: words.Say("template.fact.stations"), row: in.inRow(b.Sewing.Stations)}}
	if tapes := b.Tapes; len(tapes.At) > 0 {
		facts = append(facts, fact{what: words.Say("template.fact.tapes", words.With{"width": in.sized(tapes.Width)}), row: in.inRow(tapes.At)})
	}
	return append(append(facts, in.threadFacts()...), usualCare(making.Awl))
}

// inRow are sizes one after the other, the last with its unit.
func (in Input) inRow(all []book.Length) []string {
	var sizes []string
	for i, l := range all {
		if i == len(all)-1 {
			return append(sizes, in.sized(l))
		}
		sizes = append(sizes, in.size(l))
	}
	return sizes
}

// threadFacts is what goes through the fold.
func (in Input) threadFacts() []fact {
	b := in.Book
	sections := words.Say("template.sections", words.With{"count": b.Resolved.Sections.Count, "size": in.thick(b.Block.SectionThickness)})
	facts := []fact{
		told(words.Say("template.fact.thread"), in.thick(b.Sewing.ThreadDiameter)),
		told(words.Say("template.fact.sections"), sections),
	}
	if head := b.Resolved.Liner.OverHead; b.Resolved.Structure == book.PleatedLiner && head != 0 {
		facts = append(facts, told(words.Say("template.fact.linerHead"), in.sized(head)))
	}
	return facts
}

// thick is a thickness with its unit, finer than a size.
func (in Input) thick(l measure.Length) string { return draft.Calipers(in.System).WithUnit(l) }
