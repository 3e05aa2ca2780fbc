package ui

import (
	"strconv"

	"grainwise/assets/words"
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

// yieldWords says how many folios a sheet gives, and how far the page can grow
// before it gives fewer: "8 folios a sheet, room to 248".
func (r *parameter) yieldWords(b book.Book, v book.Value) string {
	folios := words.Say("row.folios", words.With{"count": b.Use.FoliosASheet})
	if b.Use.FoliosASheet == 1 {
		folios = words.Say("row.oneFolio")
	}
	width, height, ok := b.RoomToGrow()
	room := height
	if r.Key == "page.width" {
		room = width
	}
	if !ok || room <= v.Length {
		return folios
	}
	return words.Say("row.room", words.With{"count": b.Use.FoliosASheet, "size": r.Number(book.LengthValue(room), r.style())})
}

// stepLength is the slider's step in the unit shown.
func (r *parameter) stepLength() measure.Length {
	if r.inches() {
		return measure.Inches(r.StepInch)
	}
	return measure.MM(r.Step)
}
