package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/measure"
)

// Source: the demo's story 1: at a height of 198 white goes from 8 to 10 folios
// a sheet; at 8 the page could grow to 173 × 248. A click on a bar of the ruler
// takes its largest size.
func TestAClickOnTheRulerTakesTheLargestSize(t *testing.T) {
	w := openDemo(t)
	for _, c := range []struct {
		key    string
		folios string
		want   measure.Length
	}{
		{"page.height", "10", 198 * measure.Millimetre},
		{"page.height", "8", 248 * measure.Millimetre},
		{"page.width", "8", 173 * measure.Millimetre},
	} {
		param, _ := w.column.find(c.key)
		row := w.rowOf(t, c.key)
		v := param.InForce(w.session.Book())
		now := 0
		for _, bar := range param.yieldBars(w.session.Book(), v) {
			if bar.Now {
				now++
			}
			if bar.Text == c.folios {
				middle := row.Slider.Along((bar.From + bar.To) / 2)
				row.Ruler.Tapped(&fyne.PointEvent{Position: fyne.NewPos(middle, 10)})
			}
		}
		if now != 1 {
			t.Errorf("%s: %d bars hold the present size", c.key, now)
		}
		if got := param.InForce(w.session.Book()).Length; got != c.want {
			t.Errorf("%s, %s folios: %v mm, want %v", c.key, c.folios, got.MM(), c.want.MM())
		}
	}
}

// In inches the click lands on the inch slider's own steps.
func TestTheRulerInInches(t *testing.T) {
	w := openDemo(t)
	w.session.SetSystem(measure.Imperial)
	param, _ := w.column.find("page.height")
	b := w.session.Book()
	bars := param.yieldBars(b, param.InForce(b))
	if len(bars) < 5 {
		t.Errorf("%d bars", len(bars))
	}
	for _, bar := range bars {
		best := measure.Inches(bar.Best)
		if bar.Best < bar.From || bar.Best > bar.To {
			t.Errorf("%s folios: %v lies outside %v to %v", bar.Text, bar.Best, bar.From, bar.To)
		}
		if best.RoundDown(measure.Inch/16) != best && bar.To-bar.From > 1.0/16 {
			t.Errorf("%s folios: %v in is off the sixteenths", bar.Text, bar.Best)
		}
	}
}
