package view_test

import (
	"context"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// cuttings plans what is cut for some copies of a book, in little time: what the
// drawing shows need not be proved.
func cuttings(b book.Book, copies int) []sheets.Cutting {
	var all []sheets.Cutting
	for _, j := range sheets.Jobs(b, copies) {
		ctx, cancel := context.WithTimeout(context.Background(), 300*time.Millisecond)
		c, err := j.Plan(ctx, sheets.Bench{}, nil)
		cancel()
		if err == nil {
			all = append(all, c)
		}
	}
	return all
}

// mixed is a job of random pieces, more and stranger than any book's.
func mixed(t *rapid.T) sheets.Cutting {
	j := sheets.Job{
		Material: stock.Material{Kind: rapid.SampledFrom([]stock.Kind{stock.Paper, stock.Board, stock.Covering}).Draw(t, "kind"),
			Name: rapid.SampledFrom([]string{"Ebbwhite", "A paper with a name that no heading has room for, however wide its column is"}).Draw(t, "name")},
		Sheet: stock.Sheet{
			Size:  stock.Size{Length: measure.MM(float64(rapid.IntRange(300, 1400).Draw(t, "length"))), Width: measure.MM(700)},
			Lost:  stock.AllEdges(measure.MM(float64(rapid.IntRange(0, 20).Draw(t, "lost")))),
			Grain: rapid.SampledFrom(stock.Grains()).Draw(t, "grain"),
		},
	}
	for range rapid.IntRange(1, 9).Draw(t, "kinds") {
		j.Pieces = append(j.Pieces, sheets.Piece{
			Part: book.PartBoard, Word: "board", Count: rapid.IntRange(1, 60).Draw(t, "count"),
			Height: measure.MM(float64(rapid.IntRange(10, 260).Draw(t, "height"))),
			Width:  measure.MM(float64(rapid.IntRange(10, 260).Draw(t, "width"))),
			Lying:  rapid.Bool().Draw(t, "lying"),
		})
	}
	ctx, cancel := context.WithTimeout(context.Background(), 200*time.Millisecond)
	defer cancel()
	c, err := j.Plan(ctx, sheets.Bench{}, nil)
	if err != nil {
		t.Skip("no plan in time")
	}
	return c
}

// Any job in any frame: no text leaves the page, overlaps another or is too
// small.
func TestCuttingOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := input(t)
		if rapid.Bool().Draw(t, "of a book") {
			in.Cuttings = cuttings(in.Book, rapid.IntRange(1, 40).Draw(t, "copies"))
		} else {
			in.Cuttings = []sheets.Cutting{mixed(t)}
		}
		s := view.Cutting(in)
		if trouble := draft.TextTrouble(s); trouble != "" {
			t.Fatal(trouble)
		}
		for _, item := range s.Items {
			if !finite(item) {
				t.Fatalf("%#v", item)
			}
		}
	})
}

// Every piece of the demo's plans is drawn, at one scale, as large as it is cut.
func TestCuttingIsToScale(t *testing.T) {
	in := demo(t, "copies", "24")
	in.Cuttings = cuttings(in.Book, 24)
	drawn := map[string][][2]float64{}
	for _, item := range view.Cutting(in).Items {
		if f, is := item.(scene.Face); is && f.Part != "" {
			drawn[f.Part] = append(drawn[f.Part], extent(f.Outline))
		}
	}
	scale := 0.0 // of the page's millimetres to the piece's
	for _, c := range in.Cuttings {
		for _, l := range c.Plan.Layouts {
			l.Root.Pieces(func(p cutting.Part) {
				id := string(c.Pieces[p.Piece].Part)
				if len(drawn[id]) == 0 {
					t.Fatalf("a %s is not drawn", id)
				}
				got := drawn[id][0]
				drawn[id] = drawn[id][1:]
				if scale == 0 {
					scale = got[0] / sheets.Length(p.Width).MM()
				}
				for i, want := range []float64{sheets.Length(p.Width).MM() * scale, sheets.Length(p.Height).MM() * scale} {
					if math.Abs(got[i]-want) > 1e-6 {
						t.Errorf("a %s is drawn %v, want %v", id, got[i], want)
					}
				}
			})
		}
	}
	for id, rest := range drawn {
		if len(rest) > 0 {
			t.Errorf("%d more of %s are drawn than cut", len(rest), id)
		}
	}
}

func extent(p scene.Path) [2]float64 {
	x0, y0, x1, y1 := math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)
	for _, at := range p {
		x0, y0, x1, y1 = min(x0, at.X), min(y0, at.Y), max(x1, at.X), max(y1, at.Y)
	}
	return [2]float64{x1 - x0, y1 - y0}
}

// The numbers follow the bench: every setting of a roomy drawing is numbered
// once, from 1.
func TestCutsAreNumbered(t *testing.T) {
	in := demo(t)
	in.Width, in.Height = 1600, 1200
	in.Cuttings = cuttings(in.Book, 4)[:1]
	found := texts(view.Cutting(in))
	for _, want := range []string{"1 · 3", "Folio"} {
		if found[want] == 0 {
			t.Errorf("%q is not drawn: %v", want, found)
		}
	}
}

// Any book's map: no text leaves the page or overlaps, and a place on it is the
// size that it is read as.
func TestSizeMapOfAnyBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := input(t)
		sizes := sheets.Sizes(context.Background(), in.Book, rapid.IntRange(1, 40).Draw(t, "sizes"))
		in.Sizes = &sizes
		if trouble := draft.TextTrouble(view.SizeMap(in)); trouble != "" {
			t.Fatal(trouble)
		}
	})
}

// The demo's story: at 8 folios a sheet the page could grow to 173 × 248. Both
// that corner of the map and the page today are read back from it.
func TestPlacesOfTheSizeMap(t *testing.T) {
	in := demo(t)
	sizes := sheets.Sizes(context.Background(), in.Book, 60)
	in.Sizes = &sizes
	width, height, ok := view.SizeAt(in, 74, in.Height-46)
	if !ok || width != sizes.Widths[0] || height != sizes.Heights[0] {
		t.Errorf("the lower left corner is %v × %v", width, height)
	}
	width, height, ok = view.SizeAt(in, in.Width-30, 56)
	if !ok || width != sizes.Widths[59] || height != sizes.Heights[59] {
		t.Errorf("the upper right corner is %v × %v", width, height)
	}
	if _, _, ok := view.SizeAt(in, 20, 20); ok {
		t.Error("a size beside the map")
	}
	if folios, _ := sheets.At(in.Book, measure.MM(173), measure.MM(248)); folios != 8 {
		t.Errorf("%d folios at 173 × 248", folios)
	}
}
