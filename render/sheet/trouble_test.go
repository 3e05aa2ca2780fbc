package sheet_test

import (
	"context"
	"testing"
	"time"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/sheet"
)

// leastMargin is what no printer prints on, mm.
const leastMargin = 6.0

// Names as long as a German compound, and longer than any line.
const (
	longName  = "Naturpapierhandbuchbinderleinenkaschierungsmuster"
	longTitle = "Donaudampfschifffahrtsgesellschaftskapitänsskizzenbuchsammlung und noch ein zweiter Band mit sehr langem Namen"
)

// pageTrouble says what is wrong with a page that is read: texts that overlap or
// leave it, or anything within the margin.
func pageTrouble(s *scene.Scene) string {
	if trouble := draft.TextTrouble(s); trouble != "" {
		return trouble
	}
	printable := draft.Box{
		X0: leastMargin / scene.Px, Y0: leastMargin / scene.Px,
		X1: (s.Width - leastMargin) / scene.Px, Y1: (s.Height - leastMargin) / scene.Px,
	}
	for i, b := range draft.TextBoxes(s) {
		if !b.Inside(printable) {
			return "text " + string(rune('0'+i%10)) + " stands in the margin"
		}
	}
	return inkInMargin(s)
}

func inkInMargin(s *scene.Scene) string {
	for _, item := range s.Items {
		var paths []scene.Path
		switch it := item.(type) {
		case scene.Stroke:
			paths = it.Paths
		case scene.Face:
			paths = []scene.Path{it.Outline}
		}
		for _, path := range paths {
			for _, p := range path {
				if p.X < leastMargin || p.Y < leastMargin || p.X > s.Width-leastMargin || p.Y > s.Height-leastMargin {
					return "a line stands in the margin"
				}
			}
		}
	}
	return ""
}

// troubles makes all papers that are read and says what is wrong with them.
func troubles(t interface{ Errorf(string, ...any) }, in sheet.Input) {
	for _, k := range sheet.For(in) {
		d := k.Make(in)
		if len(d.Pages) == 0 {
			t.Errorf("%s has no page", k.ID)
		}
		if d.Whole != nil {
			continue // its pages show a part of a drawing each, which is tested whole
		}
		for i, page := range d.Pages {
			if trouble := pageTrouble(page); trouble != "" {
				t.Errorf("%s, page %d: %s", k.ID, i+1, trouble)
			}
		}
	}
}

// planned adds the cutting plans, whatever is found in a short time.
func planned(in sheet.Input) sheet.Input {
	for _, job := range sheets.Jobs(in.Book, in.Book.Resolved.Copies) {
		ctx, cancel := context.WithTimeout(context.Background(), 20*time.Millisecond)
		if c, err := job.Plan(ctx, sheets.Bench{}, nil); err == nil {
			in.Cuttings = append(in.Cuttings, c)
		}
		cancel()
	}
	return in
}

func inputOf(b book.Book, name string, system measure.System) sheet.Input {
	in := sheet.Input{
		Book: b, Name: name, Revision: "ABCDE", Date: measure.Date{Year: 2026, Month: 3, Day: 1},
		Findings: check.AllWith(b, check.Tools{}, check.Limits{}), Notes: longTitle, System: system, Students: 6,
	}
	for i := range in.Findings {
		if i%2 == 0 {
			in.Findings[i].Accepted = longTitle
		}
	}
	return planned(in)
}

// No text of any paper overlaps another, leaves the page or stands in its margin:
// a hundred random designs in millimetres and a hundred in inches, on both papers,
// for both hands.
func TestNoPaperIsInTrouble(t *testing.T) {
	for _, system := range []measure.System{measure.Metric, measure.Imperial} {
		t.Run(system.String(), rapid.MakeCheck(func(t *rapid.T) {
			b := longNamed(booktest.Books().Draw(t, "book"))
			in := inputOf(b, longTitle, system)
			in.Printer.Format = rapid.SampledFrom(sheet.Formats()).Draw(t, "format")
			in.Left = rapid.Bool().Draw(t, "left")
			for range rapid.IntRange(0, 3).Draw(t, "compared") {
				other := longNamed(booktest.Books().Draw(t, "other"))
				in.Compared = append(in.Compared, compare.Design{Name: longTitle, Book: other, Findings: check.All(other)})
			}
			troubles(t, in)
		}))
	}
}

// The same for the demo's book as it is.
func TestTheDemosPapersAreInNoTrouble(t *testing.T) {
	for _, system := range []measure.System{measure.Metric, measure.Imperial} {
		for _, f := range sheet.Formats() {
			in := inputOf(book.Compute(book.Resolve(book.Defaults(system), stock.Default())), "Low Water", system)
			in.Printer.Format = f
			troubles(t, in)
		}
	}
}

// longNamed gives every material a name of one long word.
func longNamed(b book.Book) book.Book {
	for i := range b.Parts {
		b.Parts[i].Stock = longName
	}
	m := &b.Resolved.Stock
	for _, material := range []*stock.Material{&m.Paper, &m.Liner, &m.Endpaper, &m.Board, &m.Covering, &m.Adhesive} {
		material.Name = longName
	}
	return b
}
