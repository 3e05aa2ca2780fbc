package sheet

import (
	"grainwise/assets/words"
	"grainwise/render/scene"
)

// The jig that lines a V-shaped trough, mm: two wings beside the fold, and at the
// head a stop that stands across the trough.
const (
	wing        = 48.0
	stopDeep    = 8.0
	stopFlap    = 10.0
	troughFacts = 62.0
)

// troughJig is a strip folded along its middle at a right angle: sections stand in
// it, their heads at its stop, and are pierced where its fold shows.
func troughJig(in Input) Document {
	facts := append([]fact{told(words.Say("template.fact.fold"), words.Say("template.rightAngle"))}, in.stationFacts()...)
	high := in.sectionHigh()
	room := max(high+stopDeep, factsHeight(facts, troughFacts))
	s := newStencil(2*wing+factsGap+troughFacts, room, in.Left)
	s.facts(at{X: 2*wing + factsGap, Y: room}, facts, troughFacts)
	f := foldStrip{s, high, room - high - stopDeep, in.Book.Resolved.Page.TrimHead.MM()}
	f.trough(in)
	return in.fullSize("trough-jig", f.Scene())
}

// trough is the outline with its folds, and what stands on it. The stop belongs to
// the right wing; folded up it reaches across the left one, where its flap is
// glued.
func (f foldStrip) trough(in Input) {
	low, high := f.base, f.base+f.high
	top := high + stopDeep
	f.tapes(in, wing-markEnd, wing+markEnd)
	f.cutOut(at{Y: low}, at{X: 2 * wing, Y: low}, at{X: 2 * wing, Y: top}, at{X: wing, Y: top},
		at{X: wing - stopFlap, Y: top - 1}, at{X: wing - stopFlap, Y: high + 1}, at{X: wing, Y: high}, at{Y: high})
	f.crease(at{X: wing, Y: low}, at{X: wing, Y: top})
	f.crease(at{X: wing, Y: high}, at{X: 2 * wing, Y: high})
	f.level(at{X: wing * 1.5, Y: high + stopDeep/2}, words.Say("template.stop"), bold(), scene.Middle)
	f.level(at{X: wing - stopFlap/2, Y: high + stopDeep/2}, words.Say("template.glue"), quiet(), scene.Middle)
	labels := append(in.stationLabels(f.up), in.trimLabels(low, high)...)
	for _, l := range labels {
		f.mark(at{X: wing - markEnd, Y: l.y}, at{X: wing, Y: l.y})
	}
	f.labels(wing, wing, low, high, labels)
	f.ends(in, "trough-jig", stripTitle, low, high)
}
