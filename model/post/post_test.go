package post

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

const mm = measure.Millimetre

var style = measure.Style{Decimals: 1}

func eur(minor int64) Money { return Money{Minor: minor, Currency: "EUR"} }

// table is an invented one.
func table() Table {
	return Table{
		Bands: []Band{
			{Name: "small", Zone: "H", Most: 500, Length: 353 * mm, Width: 250 * mm, Thickness: 50 * mm, Price: eur(275)},
			{Name: "large", Zone: "H", Most: 1000, Length: 353 * mm, Width: 250 * mm, Thickness: 50 * mm, Price: eur(420)},
			{Name: "parcel", Zone: "H", Most: 5000, Girth: 3000 * mm, Price: eur(690)},
			{Name: "small", Zone: "N", Most: 500, Thickness: 50 * mm, Price: eur(700)},
		},
		Slots: []Slot{{Name: "letter box", Length: 400 * mm, Thickness: 25 * mm}},
	}
}

func toned(board string) book.Book {
	d := book.Defaults(measure.Metric)
	d.Design.Paper.Material, d.Design.Board.Material = "Marramstone Oat 180", board
	return book.Compute(book.Resolve(d, stock.Default()))
}

// Source: the demo project, its story 5: a packed toned book, 88 g of packing, sits
// near a 500 g band and 2 mm board changes which side. By hand: 24 folios of 300 × 210
// at 180 g/m² are 272.16 g, the liner of 411.5 × 210 at 120 10.37, two boards of 149 ×
// 216 at 1550 99.77 (at 1240 79.81), spine piece 1.10, cloth of 0.0912 m² at 230 20.96,
// 0.154 m² of PVA at 150 × 0.45 10.4, thread 0.4: 415.2 g, and some 20 g less.
func TestTheTonedBookAtItsBand(t *testing.T) {
	packing := Packing{Grams: 88, Padding: 5 * mm}
	parcel := func(board string) Parcel {
		return Parcel{ID: "03", To: "Quincewater", Zone: "H", Books: []Book{BookOf("Oat, Kelp", toned(board), 1)}}
	}
	thick, thin := parcel("Groynes 2.5"), parcel("Groynes 2.0")
	movers, err := table().Movers([]Parcel{thick}, []Parcel{thin}, packing, packing, style)
	if err != nil || len(movers) != 1 {
		t.Fatalf("%+v, %v", movers, err)
	}
	was, now := movers[0].Was, movers[0].Now
	if math.Abs(was.Grams-503.2) > 1 || math.Abs(was.Grams-now.Grams-19.96) > 0.5 {
		t.Errorf("%.2f g and %.2f g", was.Grams, now.Grams)
	}
	if was.Band.Name != "large" || now.Band.Name != "small" || was.Lighter == nil || was.Lighter.Price != eur(-145) {
		t.Errorf("%+v, %+v", was.Band, now.Band)
	}
	if math.Abs(was.Lighter.Grams-(was.Grams-500)) > 1e-9 || len(was.Findings) != 1 || was.Findings[0].ID != "post-band" {
		t.Errorf("%+v, %+v", was.Lighter, was.Findings)
	}
	if len(now.Findings) != 0 || math.Abs(now.Spare.Grams-(500-now.Grams)) > 1e-9 {
		t.Errorf("%+v, %v", now.Findings, now.Spare)
	}
}

// A mass by hand from published grammages: 20 lb bond is 75.2 g/m² (pounds to g/m² after
// the published factors: 20 × 3.760), greyboard of 2 mm 1200 g/m², library buckram 7.9
// oz/yd² = 268 g/m² (R&E dt0739). Bare parts, no adhesive, no liner's leaves: 4 sections
// of 4 folios, 240 × 180, and two boards.
func TestMassAgainstPublishedGrammages(t *testing.T) {
	d := book.Defaults(measure.Metric)
	shelf := stock.Default()
	for i := range shelf.Materials {
		switch m := &shelf.Materials[i]; m.Name {
		case "Ebbwhite Drawing 170":
			m.Grammage = 75.2
		case "Groynes 2.5":
			m.Grammage, m.Thickness = 1200, 2*mm
		case "Kelp":
			m.Grammage = 268
		}
	}
	d.Design.Page.Width, d.Design.Page.Height = 120*mm, 180*mm
	d.Design.Sections.Count = 4
	b := book.Compute(book.Resolve(d, shelf))
	paper := 16 * 0.240 * 0.180 * 75.2
	board, _ := b.Part(book.PartBoard)
	boards := 2 * board.Width.MM() * board.Height.MM() / 1e6 * 1200
	if math.Abs(b.Mass.Paper-paper) > 0.01 || math.Abs(paper-51.978) > 0.001 {
		t.Errorf("paper %.3f g, by hand %.3f", b.Mass.Paper, paper)
	}
	if math.Abs(b.Mass.Boards-boards) > 0.01 {
		t.Errorf("boards %.3f g, by hand %.3f", b.Mass.Boards, boards)
	}
	packed, err := table().Pack(Parcel{Zone: "H", Books: []Book{BookOf("x", b, 2)}}, Packing{Grams: 60, EachGrams: 5}, style)
	if want := 2*b.Mass.Total() + 70; err != nil || math.Abs(packed.Grams-want) > 1e-9 {
		t.Errorf("%v g, want %v; %v", packed.Grams, want, err)
	}
}

// By hand: books of 156 × 217 × 21, three of them, 5 mm of padding. In one pile 166 ×
// 227 × 73, too thick for 50; in two, one of two books, 42 + 10 = 52, too thick still; in
// three, 31 thick and 478 wide, too long; so it goes as a parcel, in one pile. Two books
// go in one pile of 52, too thick, or two beside each other, 322 × 227 × 31.
func TestHowBooksAreLaid(t *testing.T) {
	one := Book{Name: "b", Width: 156 * mm, Height: 217 * mm, Thickness: 21 * mm, Grams: 200}
	for count, want := range map[int]struct {
		piles int
		size  Size
		band  string
	}{
		1: {1, Size{227 * mm, 166 * mm, 31 * mm}, "small"},
		2: {2, Size{322 * mm, 227 * mm, 31 * mm}, "small"},
		3: {1, Size{227 * mm, 166 * mm, 73 * mm}, "parcel"},
	} {
		one.Count = count
		p, err := table().Pack(Parcel{To: "x", Zone: "H", Books: []Book{one}}, Packing{Grams: 50, Padding: 5 * mm}, style)
		if err != nil || p.Piles != want.piles || p.Size != want.size || p.Band == nil || p.Band.Name != want.band {
			t.Errorf("%d: %d piles, %+v, %+v; %v", count, p.Piles, p.Size, p.Band, err)
		}
	}
}

// Each limit at it and one step over, by hand.
func TestBandsAtTheirLimits(t *testing.T) {
	b := Band{Name: "b", Zone: "H", Most: 500, Length: 300 * mm, Width: 200 * mm, Thickness: 30 * mm, Girth: 760 * mm, Price: eur(1)}
	at := Size{300 * mm, 200 * mm, 30 * mm} // girth 300 + 2 × 230 = 760
	for _, c := range []struct {
		zone  string
		grams float64
		size  Size
		takes bool
	}{
		{"H", 500, at, true}, {"H", 500.01, at, false}, {"N", 500, at, false},
		{"H", 500, Size{at.Length + 1, at.Width, at.Thickness}, false},
		{"H", 500, Size{at.Length, at.Width + 1, at.Thickness}, false},
		{"H", 500, Size{at.Length, at.Width, at.Thickness + 1}, false},
	} {
		if got := b.takes(c.zone, c.grams, c.size); got != c.takes {
			t.Errorf("%+v: %v", c, got)
		}
	}
	b.Girth--
	if b.takes("H", 500, at) {
		t.Error("over its girth")
	}
}

// The finding speaks within a fiftieth of a limit, 490 to 510 of 500 g, and a
// millimetre of a slot, by hand.
func TestWhatIsTight(t *testing.T) {
	for _, c := range []struct {
		grams float64
		thick Length
		finds int
	}{
		{489.9, 20 * mm, 0}, {490.1, 20 * mm, 1}, {500, 20 * mm, 1}, {510, 20 * mm, 1}, {510.1, 20 * mm, 0},
		{300, 24 * mm, 1}, {300, 24*mm - 1, 0}, {300, 26 * mm, 1}, {300, 26*mm + 1, 0},
	} {
		p, err := table().Pack(Parcel{To: "x", Zone: "H", Books: []Book{{Width: 100 * mm, Height: 200 * mm, Thickness: c.thick, Grams: c.grams, Count: 1}}}, Packing{}, style)
		if err != nil || len(p.Findings) != c.finds {
			t.Errorf("%+v: %v, %v", c, p.Findings, err)
		}
	}
	p, _ := table().Pack(Parcel{To: "x", Zone: "N", Books: []Book{{Width: 1, Height: 1, Thickness: 1, Grams: 501, Count: 1}}}, Packing{}, style)
	if p.Band != nil || len(p.Findings) != 2 || p.Findings[0].ID != "post-none" || p.Lighter == nil {
		t.Errorf("%+v", p)
	}
}

// Any parcel: no band of the table that takes it in one pile costs less than the one
// picked, which takes it; checked band by band with the limits written out again.
func TestTheCheapestBand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var bands []Band
		side := func(name string) Length { return Length(rapid.Int64Range(0, 400).Draw(t, name)) * mm }
		for range rapid.IntRange(0, 8).Draw(t, "bands") {
			bands = append(bands, Band{
				Zone: rapid.SampledFrom([]string{"H", "N"}).Draw(t, "zone"), Most: float64(rapid.IntRange(0, 2000).Draw(t, "most")),
				Length: side("length"), Width: side("width"), Thickness: side("thickness"), Girth: 3 * side("girth"), Price: eur(rapid.Int64Range(0, 900).Draw(t, "price")),
			})
		}
		b := Book{Width: side("w") + 1, Height: side("h") + 1, Thickness: side("t")/10 + 1, Grams: float64(rapid.IntRange(1, 800).Draw(t, "grams")), Count: rapid.IntRange(1, 4).Draw(t, "count")}
		packing := Packing{Grams: 50, Padding: side("padding") / 20}
		p, err := Table{Bands: bands}.Pack(Parcel{Zone: "H", Books: []Book{b}}, packing, style)
		if err != nil {
			t.Fatal(err)
		}
		takes := func(c Band, s []Length) bool {
			slices.Sort(s)
			for i, most := range []Length{c.Thickness, c.Width, c.Length} {
				if most > 0 && s[i] > most {
					return false
				}
			}
			return c.Zone == "H" && (c.Most == 0 || p.Grams <= c.Most) && (c.Girth == 0 || s[2]+2*s[1]+2*s[0] <= c.Girth)
		}
		if p.Band != nil && !takes(*p.Band, []Length{p.Size.Length, p.Size.Width, p.Size.Thickness}) {
			t.Errorf("%+v does not take %+v", p.Band, p.Size)
		}
		pad := 2 * packing.Padding
		for _, c := range bands {
			if takes(c, []Length{b.Width + pad, b.Height + pad, Length(b.Count)*b.Thickness + pad}) && (p.Band == nil || c.Price.Minor < p.Band.Price.Minor) {
				t.Errorf("%+v takes it for less than %+v", c, p.Band)
			}
		}
	})
}

func TestListsAndLabels(t *testing.T) {
	p, err := table().Pack(Parcel{To: "Umberlow", Address: []string{" 3  Sluice\tRow", "", "Saltmarsh\r\nEnd"}, Zone: "H", Note: "ribbon", Books: []Book{
		{Name: "Ebbwhite, Fog", Width: 156 * mm, Height: 217 * mm, Thickness: 19 * mm, Grams: 390, Count: 1},
		{Name: "Oat, Fog", Width: 156 * mm, Height: 217 * mm, Thickness: 20 * mm, Grams: 415, Count: 1},
	}}, Packing{Grams: 120, Padding: 5 * mm}, style)
	if err != nil {
		t.Fatal(err)
	}
	if got := p.Label(); !slices.Equal(got, []string{"Umberlow", "3 Sluice Row", "Saltmarsh End"}) {
		t.Errorf("%q", got)
	}
	want := []string{"Parcel 11 of 19: Umberlow", "1 × Ebbwhite, Fog", "1 × Oat, Fog", "Note: ribbon", "925.0 g packed, 227 × 166 × 49 mm", "Send as large H, 4.20 EUR"}
	if got := p.List(11, 19, style); !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
	all, sum, err := table().All([]Parcel{p.Parcel, p.Parcel}, Packing{Grams: 120, Padding: 5 * mm}, style)
	if err != nil || len(all) != 2 || sum != eur(840) {
		t.Errorf("%v, %v", sum, err)
	}
}

func TestWhatIsNoPost(t *testing.T) {
	good := func() (Table, Parcel, Packing) {
		return table(), Parcel{To: "Vireo", Zone: "H", Books: []Book{{Name: "b", Width: mm, Height: mm, Thickness: mm, Grams: 1, Count: 1}}}, Packing{}
	}
	for name, c := range map[string]struct {
		spoil func(*Table, *Parcel, *Packing)
		says  string
	}{
		"two currencies": {func(t *Table, _ *Parcel, _ *Packing) { t.Bands[1].Price.Currency = "GBP" }, "GBP"},
		"minus a price":  {func(t *Table, _ *Parcel, _ *Packing) { t.Bands[1].Price.Minor = -1 }, "large"},
		"no currency":    {func(t *Table, _ *Parcel, _ *Packing) { t.Bands[2].Price = Money{} }, "parcel"},
		"minus a limit":  {func(t *Table, _ *Parcel, _ *Packing) { t.Bands[0].Width = -1 }, "small"},
		"NaN of a limit": {func(t *Table, _ *Parcel, _ *Packing) { t.Bands[0].Most = math.NaN() }, "small"},
		"minus a slot":   {func(t *Table, _ *Parcel, _ *Packing) { t.Slots[0].Length = -1 }, "letter box"},
		"no books":       {func(_ *Table, p *Parcel, _ *Packing) { p.Books = nil }, "Vireo"},
		"a flat book":    {func(_ *Table, p *Parcel, _ *Packing) { p.Books[0].Thickness = 0 }, "b:"},
		"minus a mass":   {func(_ *Table, p *Parcel, _ *Packing) { p.Books[0].Grams = -1 }, "b:"},
		"minus packing":  {func(_ *Table, _ *Parcel, k *Packing) { k.Padding = -1 }, "Packing"},
		"no packing":     {func(_ *Table, _ *Parcel, k *Packing) { k.Grams = math.Inf(1) }, "Packing"},
	} {
		table, parcel, packing := good()
		c.spoil(&table, &parcel, &packing)
		_, err := table.Pack(parcel, packing, style)
		if known := (*Error)(nil); !errors.As(err, &known) || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
