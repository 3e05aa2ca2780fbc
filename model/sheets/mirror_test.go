package sheets_test

import (
	"context"
	"reflect"
	"testing"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// Turned over, every piece lies as far from the right as it lay from the left,
// parts still fill what they divide, and turned over again all is as it was.
func TestMirrored(t *testing.T) {
	b := book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
	for _, job := range sheets.Jobs(b, 24) {
		c, err := job.Plan(context.Background(), sheets.Bench{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		m := c.Mirrored()
		if !reflect.DeepEqual(m.Mirrored(), c) {
			t.Errorf("%s: turned over twice it differs", job.Material.Name)
		}
		for i, l := range m.Plan.Layouts {
			places := map[[2]int64]bool{}
			c.Plan.Layouts[i].Root.Pieces(func(p cutting.Part) { places[[2]int64{l.Root.Width - p.X - p.Width, p.Y}] = true })
			l.Root.Pieces(func(p cutting.Part) {
				if !places[[2]int64{p.X, p.Y}] {
					t.Errorf("%s: a piece lies at %d, %d", job.Material.Name, p.X, p.Y)
				}
			})
			filled(t, l.Root)
		}
	}
}

// filled holds that the two parts of a cut lie side by side within it.
func filled(t *testing.T, p cutting.Part) {
	t.Helper()
	if len(p.Parts) == 0 {
		return
	}
	a, b := p.Parts[0], p.Parts[1]
	beside := a.X == p.X && b.X == p.At && a.X+a.Width == p.At && b.X+b.Width == p.X+p.Width
	over := a.Y == p.Y && b.Y == p.At && a.Y+a.Height == p.At && b.Y+b.Height == p.Y+p.Height
	if p.Cut == cutting.Vertical && !beside || p.Cut == cutting.Horizontal && !over {
		t.Errorf("the parts of %+v do not fill it", p)
	}
	filled(t, a)
	filled(t, b)
}
