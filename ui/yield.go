package ui

import (
	"strconv"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/controls"
)

// yieldBars are the ruler under the page's height or width: how many folios a
// sheet gives at which sizes. A click takes the largest size of a bar on the
// slider's own steps.
func (r *parameter) yieldBars(b book.Book, v book.Value) []controls.Bar {
	var bars []controls.Bar
	from := measure.MM(r.Min)
	for _, s := range b.YieldSteps(r.Key) {
		best := s.Largest.RoundDown(r.stepLength())
		if best < from {
			best = s.Largest // narrower than a step
		}
		bars = append(bars, controls.Bar{
			From: r.toSlider(book.LengthValue(from)), To: r.toSlider(book.LengthValue(s.Largest)),
			Text: strconv.Itoa(s.Folios), Now: v.Length >= from && v.Length <= s.Largest,
			Best: r.toSlider(book.LengthValue(best)),
		})
		from = s.Largest + measure.Nanometre
	}
	return bars
}

// stepLength is the slider's step in the unit shown.
func (r *parameter) stepLength() measure.Length {
	if r.inches() {
		return measure.Inches(r.StepInch)
	}
	return measure.MM(r.Step)
}
