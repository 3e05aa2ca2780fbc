package stock

import (
	"math"
	"testing"

	"grainwise/model/measure"
)

// Worked cases of ISO 534 bulk, read in the source (published-facts): 60 g/m² at
// bulk 1.5 is 90 µm, at 2.0 120 µm.
func TestBulk(t *testing.T) {
	for bulk, want := range map[float64]measure.Length{1.5: measure.MM(0.090), 2.0: measure.MM(0.120)} {
		got := CaliperFromBulk(60, bulk)
		if got != want {
			t.Errorf("60 g/m² at %v is %s mm", bulk, measure.FileForm(got))
		}
		if back := Bulk(60, got); math.Abs(back-bulk) > 1e-9 {
			t.Errorf("bulk comes back as %v", back)
		}
	}
	if Bulk(0, measure.MM(1)) != 0 {
		t.Error("no weight has a bulk")
	}
}

// Greyboard: 2 mm is 1200 g/m² (published-facts, read in the source): a bulk of
// 1.67. The shelf's boards must be of that sort, within a tenth.
func TestBoardsWeighAsGreyboardDoes(t *testing.T) {
	want := Bulk(1200, measure.MM(2))
	for _, b := range Default().OfKind(Board) {
		if got := Bulk(b.Grammage, b.Thickness); math.Abs(got-want) > want/10 {
			t.Errorf("%s: bulk %.2f, greyboard %.2f", b.Name, got, want)
		}
	}
}

// Pages per inch = 2 / caliper in inches; worked: 128 pages of 0.0039 in stand
// 0.2496 in high. Calipers of offset papers: 50 lb 0.0039 in, 60 lb 0.0046, 70 lb
// 0.0051, bulky 55 lb 0.0056 (published-facts, read in the source).
func TestPagesPerInch(t *testing.T) {
	high := 128 / PagesPerInch(measure.Inches(0.0039))
	if math.Abs(high-0.2496) > 1e-6 {
		t.Errorf("128 pages stand %v in high", high)
	}
	if PagesPerInch(0) != 0 {
		t.Error("no thickness gives pages")
	}
}

// The same calipers against their weights: paper is 0.7 to 1.9 cm³/g bulky, the
// bulky one above the smooth ones; bond 16/20/24/28 lb is 0.081/0.097/0.12/0.152
// mm (published-facts, read in the source; the range is from memory).
func TestPublishedCalipersAgreeWithTheirPounds(t *testing.T) {
	var smooth, bulky float64
	for _, c := range []struct {
		lb      float64
		basis   string
		caliper measure.Length
	}{
		{50, "text", measure.Inches(0.0039)}, {60, "text", measure.Inches(0.0046)},
		{70, "text", measure.Inches(0.0051)}, {55, "text", measure.Inches(0.0056)},
		{16, "bond", measure.MM(0.081)}, {20, "bond", measure.MM(0.097)},
		{24, "bond", measure.MM(0.12)}, {28, "bond", measure.MM(0.152)},
	} {
		basis, _ := measure.FindBasis(c.basis)
		bulk := Bulk(measure.FromPounds(c.lb, basis), c.caliper)
		if bulk < 0.7 || bulk > 1.9 {
			t.Errorf("%v lb %s of %v in has bulk %.2f", c.lb, c.basis, c.caliper.Inches(), bulk)
		}
		if c.lb == 55 {
			bulky = bulk
		} else {
			smooth = max(smooth, bulk)
		}
	}
	if bulky <= smooth {
		t.Errorf("bulky paper has bulk %.2f, the others up to %.2f", bulky, smooth)
	}
}

// Book cloth weighs 1.7 to 7.0 oz/yd², 58 to 237 g/m², library buckram from 7.9
// oz/yd², 268 g/m²: Roberts and Etherington, 1982, dt0739. By definition an
// ounce is 28.349523125 g and a yard 0.9144 m. The shelf's cloths are of that sort.
func TestClothsWeighAsBookClothDoes(t *testing.T) {
	const ounce = 28.349523125 / (0.9144 * 0.9144)
	for oz, published := range map[float64]float64{1.7: 58, 7.0: 237, 7.9: 268} {
		if got := oz * ounce; math.Abs(got-published) > 0.5 {
			t.Errorf("%v oz/yd² is %.1f g/m², published %v", oz, got, published)
		}
	}
	rolls := 0
	for _, c := range Default().OfKind(Covering) {
		if c.RollWidth == 0 {
			continue // covering paper in sheets
		}
		rolls++
		if g := float64(c.Grammage); g < 1.7*ounce || g > 7.9*ounce {
			t.Errorf("%s: %v g/m² is not the weight of book cloth", c.Name, g)
		}
	}
	if rolls < 3 {
		t.Errorf("%d cloths on the shelf", rolls)
	}
}

func TestCaliperFromAStack(t *testing.T) {
	for text, want := range map[string]measure.Length{
		"20 leaves = 4.4 mm": measure.MM(0.22), "20=4,4": measure.MM(0.22), "20 leaves = 4.4": measure.MM(0.22),
		"0.22": measure.MM(0.22), "0.0039 in": measure.Inches(0.0039), "40 leaves = 5/32 in": measure.Inches(5.0 / 32 / 40),
	} {
		if got, err := ParseCaliper(text, measure.Metric); err != nil || got != want {
			t.Errorf("%q: %s mm, %v", text, measure.FileForm(got), err)
		}
	}
	for _, text := range []string{"", "0 leaves = 4 mm", "20 leaves =", "= 4 mm", "20 leaves = thick", "-2 = 4"} {
		if got, err := ParseCaliper(text, measure.Metric); err == nil {
			t.Errorf("%q is read as %s mm", text, measure.FileForm(got))
		}
	}
}
