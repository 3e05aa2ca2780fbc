package stock

import (
	"math"
	"regexp"
	"slices"

	"grainwise/model/measure"
)

// Weave is how a cloth's threads cross, as its surface shows.
type Weave string

// The weaves. Fine is a plain weave too close to be seen at arm's length.
const (
	PlainWeave Weave = "plain"
	Canvas     Weave = "canvas"
	Twill      Weave = "twill"
	Fine       Weave = "fine"
)

// Weaves returns every weave.
func Weaves() []Weave { return []Weave{PlainWeave, Canvas, Twill, Fine} }

// Stack is so many leaves, boards or turns of thread laid together, and what
// they measured: better than any figure on a label.
type Stack struct {
	Count  int            `json:"count"`
	Height measure.Length `json:"height"` // of a thread, the width of the turns
}

// Each is the thickness of one, to the nearest nanometre; 0 of no stack.
func (s Stack) Each() measure.Length {
	if s.Count <= 0 {
		return 0
	}
	n := measure.Length(s.Count)
	return s.Height/n + (2*(s.Height%n)+n)/(2*n)
}

// Pounds is a weight as it is sold: so many pounds a 500 basic sheets.
type Pounds struct {
	Weight float64 `json:"weight"`
	Basis  string  `json:"basis"` // a name of [measure.Bases]
}

// Grammage is the weight in g/m²; false where the basis is none.
func (p Pounds) Grammage() (measure.Grammage, bool) {
	basis, known := measure.FindBasis(p.Basis)
	if !known || basis.Name != p.Basis {
		return 0, false
	}
	return measure.FromPounds(p.Weight, basis), true
}

// agree is how far a weight in pounds may lie from the one in g/m²: makers round
// what they print, 140 lb of watercolour paper to 300 g/m².
const agree = 0.01

// agrees says whether pounds and g/m² are one weight.
func (p Pounds) agrees(with measure.Grammage) bool {
	g, known := p.Grammage()
	return known && math.Abs(float64(g-with)) <= agree*float64(with)
}

// Number is a linen thread's, 25/3: leas to the pound, and plies.
type Number struct {
	Lea int `json:"lea"`
	Ply int `json:"ply"`
}

// Diameter estimates the thread's diameter from its number.
func (n Number) Diameter() measure.Length {
	return measure.ThreadDiameter(measure.Tex(float64(n.Lea), float64(n.Ply)))
}

// sound is within the numbers that are sold, lea above ply.
func (n Number) sound() bool { return n.Ply > 0 && n.Lea > n.Ply && n.Lea <= 9999 }

// Limits of what is typed; they keep slips of the hand out, no more.
const (
	mostStacked = 999_999
	longestTest = 2000
)

// pictureName is what a picture of the shelf is called: what it holds decides it.
var pictureName = regexp.MustCompile(`^[0-9a-f]{32}\.jpg$`)

// PhotoName reports whether a text is the name of a picture on the shelf, as
// its file is called.
func PhotoName(text string) bool { return pictureName.MatchString(text) }

func (m Material) checkStack() error {
	s := m.Stack
	switch {
	case s == Stack{}:
		return nil
	case m.Kind == Adhesive:
		return fault("stack", "stock.want.noStack", nil)
	case s.Count < 1 || s.Count > mostStacked || !between(s.Height, longestSheet):
		return fault("stack", "stock.want.stackOf", s.Count)
	case m.Thickness != s.Each():
		return fault("stack", "stock.want.stackAgrees", millimetres(s.Each()))
	}
	return nil
}

func (m Material) checkPounds() error {
	p := m.Pounds
	_, known := p.Grammage()
	switch {
	case p == Pounds{}:
		return nil
	case !known:
		return fault("pounds.basis", "stock.want.basis", p.Basis)
	case !m.Kind.InSheets() || !(p.Weight > 0) || !p.agrees(m.Grammage):
		return fault("pounds.weight", "stock.want.pounds", p.Weight)
	}
	return nil
}

func (m Material) checkWeave() error {
	if m.Weave == "" || m.Kind.Woven() && slices.Contains(Weaves(), m.Weave) {
		return nil
	}
	return fault("weave", "stock.want.weave", m.Weave)
}

func (m Material) checkNumber() error {
	if (m.Number == Number{}) || m.Kind == Thread && m.Number.sound() {
		return nil
	}
	return fault("number", "stock.want.number", m.Number)
}

func (m Material) checkTexts() error {
	for _, text := range []struct{ place, is string }{{"frontTest", m.FrontTest}, {"backTest", m.BackTest}} {
		if len([]rune(text.is)) > longestTest {
			return fault(text.place, "stock.want.test", longestTest)
		}
	}
	if m.Photo != "" && !PhotoName(m.Photo) {
		return fault("photo", "stock.want.photo", m.Photo)
	}
	return nil
}

// Fitting is the material without the facts that its kind cannot have.
func (m Material) Fitting() Material {
	m = m.Clone()
	if !m.Kind.InSheets() {
		m.Sheet, m.RollWidth, m.Grain, m.Grammage, m.Pounds = Size{}, 0, "", 0, Pounds{}
	}
	if m.Kind == Adhesive {
		m.Thickness, m.Stack = 0, Stack{}
	} else {
		m.Adhesive = nil
	}
	if m.Kind != Thread {
		m.Number = Number{}
	}
	if !m.Kind.Woven() {
		m.Weave = ""
	}
	if m.Kind != Covering {
		m.Backed, m.GlueTested = false, false
	}
	return m
}

// Priced is the material with its price for the unit that it is sold by.
func (m Material) Priced() Material {
	if m.Price.Amount.Currency == "" {
		m.Price = Price{}
	} else if m.Kind != Adhesive || m.Price.Per == "" {
		m.Price.Per = m.soldBy()
	}
	return m
}
