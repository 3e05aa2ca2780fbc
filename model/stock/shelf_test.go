package stock

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"grainwise/model/measure"
)

// The demo project's materials, as its notes list them.
func TestShelfHasTheDemosMaterials(t *testing.T) {
	board := mm(1000, 700)
	shelf := Default()
	for _, c := range []struct {
		kind      Kind
		name      string
		sheet     Size
		roll      float64
		thickness float64
		grammage  measure.Grammage
		price     string
	}{
		{Paper, "Ebbwhite Drawing 170", board, 0, 0.22, 170, "2.40 EUR"},
		{Paper, "Marramstone Oat 180", mm(650, 500), 0, 0.24, 180, "1.90 EUR"},
		{Liner, "Saltgrass 120", board, 0, 0.15, 120, "1.60 EUR"},
		{Board, "Groynes 2.5", board, 0, 2.5, 1550, "5.20 EUR"},
		{Board, "Groynes 2.0", board, 0, 2.0, 1240, "4.30 EUR"},
		{Card, "Withy card 0.4", board, 0, 0.4, 300, "1.10 EUR"},
		{Covering, "Kelp", Size{}, 980, 0.45, 230, "28.00 EUR"},
		{Covering, "Brickdust", Size{}, 980, 0.45, 230, "24.00 EUR"},
		{Covering, "Fog", Size{}, 980, 0.45, 230, "31.00 EUR"},
	} {
		m, ok := shelf.Find(c.kind, c.name)
		if !ok {
			t.Errorf("no %s %q", c.kind, c.name)
			continue
		}
		if m.Sheet != c.sheet || m.RollWidth != measure.MM(c.roll) || m.Thickness != measure.MM(c.thickness) ||
			m.Grammage != c.grammage || m.Price.Amount.String() != c.price || m.Grain != Long {
			t.Errorf("%s: %+v", c.name, m)
		}
		if c.kind == Covering && !(m.Backed && m.GlueTested) {
			t.Errorf("%s is not backed and tested", c.name)
		}
	}
	pva, _ := shelf.Find(Adhesive, "PVA")
	if pva.Adhesive == nil || *pva.Adhesive != (AdhesiveFacts{WetSpread: 150, DryShare: 0.45, WorkingMinutes: 10, DryHours: 12}) {
		t.Errorf("PVA: %+v", pva.Adhesive)
	}
	if tissue, ok := shelf.Find(Interleaf, "thin tissue"); !ok || tissue.Thickness != measure.MM(0.04) {
		t.Errorf("thin tissue: %+v", tissue)
	}
}

func TestShelfOffersAChoiceOfEveryKind(t *testing.T) {
	for _, kind := range Kinds() {
		if got := Default().OfKind(kind); len(got) < 2 {
			t.Errorf("%d of kind %s", len(got), kind)
		}
	}
	if _, ok := Default().Find(Board, "Kelp"); ok {
		t.Error("a cloth is found among the boards")
	}
}

// 22 × 30 in and 24 × 36 in sheets are exact, and 80 lb of drawing paper is
// 130 g/m² (published-facts).
func TestInchSheetsOfTheShelf(t *testing.T) {
	for name, want := range map[string]Size{
		"Owerdyke Watercolour 300": {30 * measure.Inch, 22 * measure.Inch},
		"Tidewrack Drawing 80 lb":  {36 * measure.Inch, 24 * measure.Inch},
	} {
		if m, ok := Default().Find(Paper, name); !ok || m.Sheet != want {
			t.Errorf("%s: %v", name, m.Sheet)
		}
	}
	basis, _ := measure.FindBasis("drawing")
	m, _ := Default().Find(Paper, "Tidewrack Drawing 80 lb")
	if got := measure.FromPounds(80, basis); math.Abs(float64(got-m.Grammage)) > 0.5 {
		t.Errorf("80 lb is %v, on the shelf %v", got, m.Grammage)
	}
}

func TestDefaultIsACopy(t *testing.T) {
	first := Default()
	first.Materials[0].Name = "spoilt"
	for _, m := range first.Materials {
		if m.Adhesive != nil {
			m.Adhesive.DryHours = -1
		}
	}
	if err := Default().Validate(); err != nil || Default().Materials[0].Name == "spoilt" {
		t.Errorf("the built-in shelf changed: %v", err)
	}
	found, _ := Default().Find(Adhesive, "PVA")
	found.Adhesive.DryHours = -1
	if err := Default().Validate(); err != nil {
		t.Error(err)
	}
}

func TestShelfComesBackFromItsFile(t *testing.T) {
	data, err := Default().Encode()
	if err != nil {
		t.Fatal(err)
	}
	back, err := Decode(data, "shelf")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(Default(), back); diff != "" {
		t.Error(diff)
	}
}

// sound is a material that passes, for the tests to spoil.
func sound() Material {
	return Material{
		Kind: Paper, Name: "Sound", Sheet: mm(1000, 700), Grain: Long, Thickness: measure.MM(0.2), Grammage: 150,
		Price: Price{measure.Money{Minor: 100, Currency: "EUR"}, PerSheet, measure.Date{Year: 2026, Month: 2, Day: 2}},
	}
}

func glue() Material {
	return Material{Kind: Adhesive, Name: "Sticky", Adhesive: &AdhesiveFacts{WetSpread: 100, DryShare: 0.5}}
}

func TestValidateNamesThePlace(t *testing.T) {
	for _, m := range []Material{sound(), glue()} {
		if err := m.Validate(); err != nil {
			t.Fatal(err)
		}
	}
	for _, c := range []struct {
		want  string
		spoil func(*Material)
	}{
		{"kind", func(m *Material) { m.Kind = "cheese" }},
		{"name", func(m *Material) { m.Name = " " }},
		{"grain", func(m *Material) { m.Grain = "" }},
		{"sheet", func(m *Material) { m.RollWidth = measure.Metre }},
		{"rollWidth", func(m *Material) { m.Sheet, m.RollWidth = Size{}, -1 }},
		{"sheet.length", func(m *Material) { m.Sheet.Length = 11 * measure.Metre }},
		{"sheet.width", func(m *Material) { m.Sheet.Width = m.Sheet.Length + 1 }},
		{"thickness", func(m *Material) { m.Thickness = 0 }},
		{"grammage", func(m *Material) { m.Grammage = measure.Grammage(math.NaN()) }},
		{"price.amount", func(m *Material) { m.Price.Amount.Minor = -1 }},
		{"price.per", func(m *Material) { m.Price.Per = PerMetre }},
		{"price.on", func(m *Material) { m.Price.On.Day = 31 }},
		{"colour", func(m *Material) { m.Colour = "green" }},
		{"adhesive", func(m *Material) { m.Adhesive = &AdhesiveFacts{} }},
		{"sheet", func(m *Material) { m.Sheet = Size{} }},
		{"sheet.length", func(m *Material) { m.Sheet.Length = 0 }},
		{"sheet.width", func(m *Material) { m.Sheet.Width = -1 }},
		{"price.per", func(m *Material) { m.Price.Per = "barrel" }},
		{"adhesive", func(m *Material) { *m = glue(); m.Adhesive = nil }},
		{"sheet", func(m *Material) { *m = glue(); m.Sheet = mm(10, 10) }},
		{"thickness", func(m *Material) { *m = glue(); m.Grammage = 5 }},
		{"adhesive.wetSpread", func(m *Material) { *m = glue(); m.Adhesive.WetSpread = 0 }},
		{"adhesive.dryShare", func(m *Material) { *m = glue(); m.Adhesive.DryShare = 1.5 }},
		{"adhesive.workingMinutes", func(m *Material) { *m = glue(); m.Adhesive.WorkingMinutes = -1 }},
		{"adhesive.dryHours", func(m *Material) { *m = glue(); m.Adhesive.DryHours = -1 }},
	} {
		m := sound()
		c.spoil(&m)
		var fault *Fault
		if err := m.Validate(); !errors.As(err, &fault) || fault.Place != c.want || strings.Contains(fault.Text, "stock.") {
			t.Errorf("%s: %v", c.want, err)
		}
	}
}

func TestDecodeNamesFileAndPlace(t *testing.T) {
	for text, want := range map[string][]string{
		``:                    {"shelf.json", "too early"},
		`{"materials":[`:      {"shelf.json", "too early"},
		"{\n\"materials\" 5}": {"shelf.json", "line 2"},
		`{"materials":[]} {}`: {"shelf.json", "after the end"},
		`{"stuff":[]}`:        {"shelf.json", "stuff"},
		`{"materials":{}}`:    {"shelf.json", "materials"},
		`{"materials":[{"kind":"paper","name":"A","weight":5}]}`:        {"shelf.json", "materials[0]", "“A”", "weight"},
		`{"materials":[{"kind":"paper","name":"A","thickness":"0.2"}]}`: {"shelf.json", "“A”", "thickness", "0.2"},
		`{"materials":[{"name":"A","sheet":{"length":1e3}}]}`:           {"shelf.json", "“A”", "sheet.length", "1e3"},
		`{"materials":[{"kind":"paper","name":"A","grain":"up"}]}`:      {"shelf.json", "“A”", "grain", "“up”"},
		`{"materials":[null]}`: {"shelf.json", "materials[0]", "kind"},
		`{"materials":[{"name":"A","price":{"amount":"2.401 EUR"}}]}`: {"shelf.json", "“A”", "12.31 EUR"},
		`{"materials":[{"name":"A","price":{"on":"2026-02-30"}}]}`:    {"shelf.json", "“A”", "2026-03-01"},
	} {
		_, err := Decode([]byte(text), "shelf.json")
		if err == nil {
			t.Errorf("%s is read", text)
			continue
		}
		for _, part := range want {
			if !strings.Contains(err.Error(), part) {
				t.Errorf("%s: %q lacks %q", text, err, part)
			}
		}
	}
}

func TestTwoOfOneNameAreRefused(t *testing.T) {
	board := sound()
	board.Kind = Board
	if err := (Shelf{[]Material{sound(), board}}).Validate(); err != nil {
		t.Errorf("one name in two kinds: %v", err)
	}
	if err := (Shelf{[]Material{sound(), sound()}}).Validate(); err == nil {
		t.Error("two papers of one name pass")
	}
}

func FuzzShelf(f *testing.F) {
	f.Add([]byte(`{"materials":[{"kind":"adhesive","name":"A","adhesive":{"wetSpread":1,"dryShare":1}}]}`))
	one, err := json.Marshal(Shelf{[]Material{sound()}})
	if err != nil {
		f.Fatal(err)
	}
	f.Add(one)
	f.Fuzz(func(t *testing.T, data []byte) {
		shelf, err := Decode(data, "fuzz")
		if err != nil {
			if err.Error() == "" || len(shelf.Materials) > 0 {
				t.Fatalf("refused without a reason, or half read: %v", err)
			}
			return
		}
		written, err := shelf.Encode()
		if err != nil {
			t.Fatal(err)
		}
		back, err := Decode(written, "again")
		if err != nil {
			t.Fatalf("%v in %s", err, written)
		}
		if diff := cmp.Diff(shelf, back); diff != "" {
			t.Fatal(diff)
		}
	})
}
