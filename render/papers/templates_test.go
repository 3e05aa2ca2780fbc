package papers

import (
	"context"
	"image"
	"math"
	"testing"

	"grainwise/model/measure"
	"grainwise/render/scene"
	"grainwise/render/sheet"
)

// fine is the resolution at which lengths are measured, dots an inch, and within
// how far from the truth they must lie, mm.
const (
	fine   = 600
	within = 0.1
)

// fullSizes are the papers of a design that are laid on the work.
func fullSizes(in sheet.Input) []sheet.Document {
	var all []sheet.Document
	for _, k := range sheet.For(in) {
		made, err := sheet.Make(context.Background(), in, []sheet.Kind{k}, nil)
		if err == nil && made[0].Whole != nil {
			all = append(all, made[0])
		}
	}
	return all
}

// finely has poppler paint one page of a paper, as it is printed.
func finely(t *testing.T, in sheet.Input, d sheet.Document, page int) *image.Gray {
	t.Helper()
	data, err := Bound(in, []sheet.Document{d})
	if err != nil {
		t.Fatal(err)
	}
	return popplers(t, kept(t, d.ID+".pdf", data), page+1, fine)
}

func toDots(mm float64) int      { return int(math.Round(mm * fine / 25.4)) }
func fromDots(n float64) float64 { return n * 25.4 / fine }

// inkAlong are the middles of the stretches of ink on a straight line over a page,
// across it at a height or down it, mm; and how long the longest is.
func inkAlong(im *image.Gray, down bool, at, from, to float64) (middles []float64, longest float64) {
	start := -1
	for i := toDots(from); i <= toDots(to); i++ {
		grey := im.GrayAt(i, toDots(at)).Y
		if down {
			grey = im.GrayAt(toDots(at), i).Y
		}
		ink := grey < 128 && i < toDots(to)
		switch {
		case ink && start < 0:
			start = i
		case !ink && start >= 0:
			middles = append(middles, fromDots(float64(start+i)/2))
			longest = max(longest, fromDots(float64(i-start)))
			start = -1
		}
	}
	return middles, longest
}

// Every check bar is as long as it says, in both directions, on paper; or longer by
// what a printer makes it shorter. A bar of 100 mm that came out 99 mm long is
// drawn 100 · 100/99 mm long (ISO 31-1: an inch is 25.4 mm).
func TestCheckBarsMeasure(t *testing.T) {
	for _, printer := range []struct{ across, down float64 }{{0, 0}, {99, 0}, {100.5, 98}} {
		for _, f := range sheet.Formats() {
			if testing.Short() && f.ID != "a4" {
				continue
			}
			in := demo(t)
			in.Printer = sheet.Printer{Format: f, Across: measure.MM(printer.across), Down: measure.MM(printer.down)}
			all := fullSizes(in)
			some := testing.Short() || printer.across != 0 || f.ID != "a4"
			if some {
				all = all[:2] // one page that stands, and one that lies
			}
			for _, d := range all {
				for i := range d.Pages {
					if i > 0 && some {
						break
					}
					barsMeasure(t, d, i, finely(t, in, d, i), printer.across, printer.down)
				}
			}
		}
	}
}

func barsMeasure(t *testing.T, d sheet.Document, page int, im *image.Gray, across, down float64) {
	t.Helper()
	scale := func(bar float64) float64 {
		if bar == 0 {
			return 1
		}
		return 100 / bar
	}
	sideways, upright := scale(across), scale(down)
	s := d.Pages[page]
	if s.Width > s.Height { // a page that lies is printed upright
		sideways, upright = upright, sideways
	}
	for i, length := range []float64{100, 4 * 25.4} {
		// The bars stand at the foot and on the left, 7 mm apart.
		x, y := 8+7*float64(i), s.Height-24+7*float64(i)
		_, got := inkAlong(im, false, y, 15, s.Width-10)
		if !near(got, length*sideways, within) {
			t.Errorf("%s, page %d: the bar of %g mm across is %.3f long, want %.3f", d.ID, page+1, length, got, length*sideways)
		}
		_, got = inkAlong(im, true, x, 30, s.Height-10)
		if !near(got, length*upright, within) {
			t.Errorf("%s, page %d: the bar of %g mm down is %.3f long, want %.3f", d.ID, page+1, length, got, length*upright)
		}
	}
}

// cutBox is where the first line to cut lies on a page.
func cutBox(t *testing.T, s *scene.Scene) (x0, y0, x1, y1 float64) {
	t.Helper()
	for _, item := range s.Items {
		it, is := item.(scene.Stroke)
		if !is || it.Layer != scene.Cut {
			continue
		}
		x0, y0 = math.Inf(1), math.Inf(1)
		for _, p := range it.Paths[0] {
			x0, y0, x1, y1 = min(x0, p.X), min(y0, p.Y), max(x1, p.X), max(y1, p.Y)
		}
		return x0, y0, x1, y1
	}
	t.Fatal("nothing to cut")
	return
}

// Known lengths on paper. Source: the demo's table, worked by hand: the page is 210
// high, the seam 170 long with 20 free at each end.
func TestSewingTemplateMeasures(t *testing.T) {
	for _, bar := range []float64{0, 99} {
		in, wider := demo(t), 1.0
		if bar != 0 {
			in.Printer.Across, wider = measure.MM(bar), 100/bar
		}
		d := fullSizes(in)[0]
		im := finely(t, in, d, 0)
		x0, y0, x1, y1 := cutBox(t, d.Pages[0])
		edges, _ := inkAlong(im, true, x0+52, y0-3, y1+3) // clear of labels and title
		is(t, "strip, high", span(edges), 210)
		edges, _ = inkAlong(im, false, y0+60, x0-3, x1+3)
		is(t, "strip, wide", span(edges), 70*wider)
		marks, _ := inkAlong(im, true, x0+6, y0-3, y1+3) // edge, start, arrow, stop, edge
		if len(marks) != 5 {
			t.Fatalf("marks at %v", marks)
		}
		is(t, "free end", marks[1]-marks[0], 20)
		is(t, "seam", marks[3]-marks[1], 170)
		is(t, "other free end", marks[4]-marks[3], 20)
	}
}

// Source: arithmetic.md, "Pleated liner", by hand for the demo: τ = 1.76 and a = 1,
// so valley i lies 150 + (i − 1)·21.76 + 0.88 from the edge, and ridge i
// 150 + i·1.76 + (2i − 1)·10.
func TestFoldRulerMeasures(t *testing.T) {
	in := demo(t)
	for _, d := range fullSizes(in) {
		if d.ID != "liner-ruler" {
			continue
		}
		im := finely(t, in, d, 0)
		x0, y0, _, _ := cutBox(t, d.Pages[0])
		w := d.Windows[0]
		// Half a millimetre under the edge the first dash of every ridge is ink too.
		lines, _ := inkAlong(im, false, y0+0.8, x0-3, w.Page.X+w.Width)
		want := []float64{0, 150.88, 161.76, 172.64, 183.52, 194.40, 205.28, 216.16, 227.04}
		if len(lines) < len(want) {
			t.Fatalf("lines at %v", lines)
		}
		for i := range want {
			is(t, "fold", lines[i]-lines[0], want[i])
		}
		return
	}
	t.Fatal("the demo has no fold ruler")
}

func span(places []float64) float64 {
	if len(places) == 0 {
		return 0
	}
	return places[len(places)-1] - places[0]
}

func is(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !near(got, want, within) {
		t.Errorf("%s: %.3f mm on paper, want %.3f ± %g", what, got, want, within)
	}
}
