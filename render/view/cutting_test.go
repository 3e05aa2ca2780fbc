package view_test

import (
	"cmp"
	"context"
	"fmt"
	"math"
	"slices"
	"strconv"
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
// small, and every piece lies on its sheet and on no other piece.
func TestCuttingOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := input(t)
		if !in.Title && !in.Grain { // one in four in the least frame
			in.Width, in.Height = 360, 280
		}
		if rapid.Bool().Draw(t, "of a book") {
			in.Cuttings = cuttings(in.Book, rapid.IntRange(1, 40).Draw(t, "copies"))
		} else {
			in.Cuttings = []sheets.Cutting{mixed(t)}
		}
		s := view.Cutting(in)
		if trouble := draft.TextTrouble(s); trouble != "" {
			t.Fatal(trouble)
		}
		if trouble := misplaced(s); trouble != "" {
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
	b := boxOf(p)
	return [2]float64{b.x1 - b.x0, b.y1 - b.y0}
}

// The numbers follow the bench: on a roomy drawing every setting has its number,
// counted from 1 in the order of the steps, and it stands on one of that
// setting's cuts or off the sheet at an end of one.
func TestCutsAreNumbered(t *testing.T) {
	in := demo(t)
	in.Width, in.Height, in.Title = 1600, 1200, false
	for _, c := range cuttings(in.Book, 24) {
		in.Cuttings = []sheets.Cutting{c}
		if len(c.Plan.Layouts) != 1 {
			t.Fatalf("%s: %d layouts", c.Material.Name, len(c.Plan.Layouts))
		}
		s := view.Cutting(in)
		at := sheetAt(s, c)
		for i, step := range c.Steps {
			if !numbered(s, at, strconv.Itoa(i+1), step) {
				t.Errorf("%s: cut %d is not numbered", c.Material.Name, i+1)
			}
		}
	}
}

// placedSheet is where a sheet lies on the page, mm: its lower left corner, and
// its scale.
type placedSheet struct{ x, y, scale float64 }

// sheetAt finds the first layout's sheet: the face of no part as large as it.
func sheetAt(s *scene.Scene, c sheets.Cutting) placedSheet {
	root := c.Plan.Layouts[0].Root
	want := sheets.Length(root.Width).MM() / sheets.Length(root.Height).MM()
	for _, item := range s.Items {
		f, is := item.(scene.Face)
		if size := extent(f.Outline); is && f.Part == "" && size[1] > 20 && math.Abs(size[0]/size[1]-want) < 1e-6 {
			return placedSheet{f.Outline[0].X, f.Outline[0].Y, size[0] / sheets.Length(root.Width).MM()}
		}
	}
	return placedSheet{}
}

// numbered says whether a number stands on the line of one of a step's cuts.
func numbered(s *scene.Scene, at placedSheet, number string, step cutting.Step) bool {
	const down, near = 3.9 * scene.Px, 0.2
	for _, item := range s.Items {
		text, is := item.(scene.Text)
		if !is || text.String != number || text.Align != scene.Middle {
			continue
		}
		for _, c := range step.Lines {
			x, y := at.x+at.scale*sheets.Length(c.X1).MM(), at.y-at.scale*sheets.Length(c.Y1).MM()
			if c.X1 == c.X2 && math.Abs(text.At.X-x) < near || c.Y1 == c.Y2 && math.Abs(text.At.Y-down-y) < near {
				return true
			}
		}
	}
	return false
}

// misplaced says which piece lies on no sheet that is drawn, or on another piece.
func misplaced(s *scene.Scene) string {
	var whole, pieces []box
	for _, item := range s.Items {
		f, is := item.(scene.Face)
		switch {
		case is && f.Part != "":
			pieces = append(pieces, boxOf(f.Outline))
		case is:
			whole = append(whole, boxOf(f.Outline))
		}
	}
	slices.SortFunc(pieces, func(a, b box) int { return cmp.Compare(a.x0, b.x0) })
	for i, p := range pieces {
		if !slices.ContainsFunc(whole, func(w box) bool { return p.within(w) }) {
			return fmt.Sprintf("a piece at %v lies on no sheet", p)
		}
		for _, o := range pieces[i+1:] {
			if o.x0 >= p.x1 {
				break
			}
			if p.overlaps(o) {
				return fmt.Sprintf("pieces at %v and %v lie on each other", p, o)
			}
		}
	}
	return ""
}

// box is a rectangle of the page, mm.
type box struct{ x0, y0, x1, y1 float64 }

func boxOf(p scene.Path) box {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, at := range p {
		b = box{min(b.x0, at.X), min(b.y0, at.Y), max(b.x1, at.X), max(b.y1, at.Y)}
	}
	return b
}

const hair = 1e-6

func (b box) within(o box) bool {
	return b.x0 >= o.x0-hair && b.y0 >= o.y0-hair && b.x1 <= o.x1+hair && b.y1 <= o.y1+hair
}

func (b box) overlaps(o box) bool {
	return b.x0 < o.x1-hair && o.x0 < b.x1-hair && b.y0 < o.y1-hair && o.y0 < b.y1-hair
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
