package stock

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
)

// 25/3 linen is 0.51 mm by tex = 1653.5/lea × ply and 0.036·√tex mm
// (arithmetic and published-facts); twenty turns of the shelf's own measured 10 mm.
func TestThreadsOfTheShelf(t *testing.T) {
	m, ok := Default().Find(Thread, "Samphire linen 25/3")
	if !ok || m.Number != (Number{25, 3}) || m.Stack.Each() != measure.MM(0.5) {
		t.Fatalf("%+v", m)
	}
	if got := m.Number.Diameter().MM(); math.Abs(got-0.51) > 0.005 {
		t.Errorf("25/3 is %.4f mm by its number", got)
	}
	machine, _ := Default().Find(Thread, "Sandhopper machine thread")
	if machine.Thickness != measure.MM(0.28) {
		t.Errorf("%+v", machine)
	}
}

// Pounds to g/m² as papers are labelled, read in the source (published-facts):
// bond, cover, tag, text, index, bristol; watercolour and drawing derived there.
func TestPoundsAndTheirGrammageAreOneWeight(t *testing.T) {
	for _, c := range []struct {
		pounds Pounds
		gsm    float64
		within float64
	}{
		{Pounds{20, "bond"}, 75.2, 0.05}, {Pounds{100, "cover"}, 270.4, 0.05}, {Pounds{90, "text"}, 133.2, 0.05},
		{Pounds{69.93, "text"}, 103.6, 0.1}, {Pounds{100, "tag"}, 162.7, 0.1}, {Pounds{100, "index"}, 181, 0.5},
		{Pounds{100, "bristol"}, 219, 0.5}, {Pounds{140, "watercolour"}, 298.3, 0.05}, {Pounds{90, "watercolour"}, 191.7, 0.1},
		{Pounds{80, "watercolour"}, 170, 0.5}, {Pounds{80, "drawing"}, 130, 0.5},
	} {
		got, known := c.pounds.Grammage()
		if !known || math.Abs(float64(got)-c.gsm) > c.within {
			t.Errorf("%v lb %s is %v g/m², published %v", c.pounds.Weight, c.pounds.Basis, got, c.gsm)
		}
	}
	// What is printed is rounded: 140 lb as 300, 90 lb as 190, 80 lb of drawing as 130.
	for label, pounds := range map[measure.Grammage]Pounds{300: {140, "watercolour"}, 190: {90, "watercolour"}, 130: {80, "drawing"}} {
		m := sound()
		if m.Grammage, m.Pounds = label, pounds; m.Validate() != nil {
			t.Errorf("%v: %v", pounds, m.Validate())
		}
	}
}

func TestFactsAreHeldToOneAnother(t *testing.T) {
	stacked := sound()
	stacked.Stack = Stack{20, measure.MM(4)}
	thread := Material{Kind: Thread, Name: "Fine", Thickness: measure.MM(0.5), Number: Number{25, 3},
		Price: Price{measure.Money{Minor: 12, Currency: "EUR"}, PerMetre, measure.Date{}}}
	cloth := sound()
	cloth.Kind, cloth.Weave = Covering, Twill
	for _, m := range []Material{stacked, thread, cloth} {
		if err := m.Validate(); err != nil {
			t.Fatal(err)
		}
	}
	for _, c := range []struct {
		want  string
		of    Material
		spoil func(*Material)
	}{
		{"stack", stacked, func(m *Material) { m.Stack.Height++; m.Stack.Height += 20 }},
		{"stack", stacked, func(m *Material) { m.Stack.Count = 0 }},
		{"stack", glue(), func(m *Material) { m.Stack = Stack{1, 1} }},
		{"pounds.basis", sound(), func(m *Material) { m.Pounds = Pounds{100, "barrel"} }},
		{"pounds.weight", sound(), func(m *Material) { m.Pounds = Pounds{100, "text"}; m.Grammage = 150 }},
		{"pounds.weight", sound(), func(m *Material) { m.Pounds = Pounds{math.NaN(), "text"} }},
		{"weave", sound(), func(m *Material) { m.Weave = Twill }},
		{"weave", cloth, func(m *Material) { m.Weave = "knit" }},
		{"number", sound(), func(m *Material) { m.Number = Number{25, 3} }},
		{"number", thread, func(m *Material) { m.Number = Number{3, 25} }},
		{"grammage", thread, func(m *Material) { m.Grammage = 10 }},
		{"sheet", thread, func(m *Material) { m.RollWidth = measure.Metre }},
		{"price.per", thread, func(m *Material) { m.Price.Per = PerSheet }},
		{"frontTest", sound(), func(m *Material) { m.FrontTest = strings.Repeat("ä", 2001) }},
		{"photo", sound(), func(m *Material) { m.Photo = "../../etc.jpg" }},
	} {
		m := c.of.Clone()
		c.spoil(&m)
		var fault *Fault
		if err := m.Validate(); !errors.As(err, &fault) || fault.Place != c.want || strings.Contains(fault.Text, "stock.") {
			t.Errorf("%s: %v", c.want, err)
		}
	}
}

// One of a stack, times its count, is the stack to half a nanometre each.
func TestAStackComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Stack{rapid.IntRange(1, 999_999).Draw(t, "count"), measure.Length(rapid.Int64Range(1, int64(longestSheet)).Draw(t, "height"))}
		if rest := 2 * (s.Each()*measure.Length(s.Count) - s.Height); rest > measure.Length(s.Count) || -rest > measure.Length(s.Count) {
			t.Fatalf("%v: %d each", s, s.Each())
		}
	})
}
