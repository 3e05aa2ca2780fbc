package view_test

import (
	"fmt"
	"image"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/draft"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// offered is any design with anything typed for its customer.
func offered(t *rapid.T) view.Input {
	in := input(t)
	text := func(name string) string {
		return rapid.SampledFrom([]string{"", "58.00 EUR", "Niedrigwasser – Skizzen vom Wattenmeer zwischen Ebbe und Flut",
			"Donaudampfschifffahrtsgesellschaftskapitänsmützenfabrikantin"}).Draw(t, name)
	}
	in.Offer = view.Offer{Title: text("title"), Media: text("media"), Price: text("price"), Ready: text("ready"), Studio: text("studio"), Line: text("line")}
	if rapid.Bool().Draw(t, "logo") {
		in.Offer.Logo = image.NewRGBA(image.Rect(0, 0, 30, 50))
	}
	return in
}

// Any design and any words in any frame: no text leaves the page, overlaps another
// or is too small, and it always says that it is a drawing.
func TestMockUpOfAnyOffer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := view.MockUp(offered(t))
		if trouble := draft.TextTrouble(s); trouble != "" {
			t.Fatal(trouble)
		}
		if !says(s, "a drawing, not a photograph") {
			t.Fatal("it does not say that it is a drawing")
		}
	})
}

// The same of contact sheets of any designs.
func TestContactSheetOfAnyBooks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := offered(t)
		var books []book.Book
		for range rapid.SampledFrom([]int{1, 1, 2, 3, 13}).Draw(t, "books") {
			books = append(books, booktest.Books().Draw(t, "book"))
		}
		s := view.ContactSheet(in, books)
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

// Every paper in every covering of the shelf stands on one sheet, once each, named.
func TestContactSheetHasEveryCombination(t *testing.T) {
	p := project.Demo()
	names := func(k stock.Kind) (out []string) {
		for _, m := range p.Shelf.OfKind(k) {
			out = append(out, m.Name)
		}
		return out
	}
	papers, coverings := names(stock.Paper), names(stock.Covering)
	books := book.Combine(p.Decisions, p.Shelf, papers, coverings)
	found := texts(view.ContactSheet(view.Input{Book: p.Book(), Width: 1200, Height: view.ContactHeight(len(books), 800)}, books))
	for _, name := range papers {
		if found[name] != len(coverings) {
			t.Errorf("%s stands there %d times, want %d", name, found[name], len(coverings))
		}
	}
	for _, name := range coverings {
		if found[name] != len(papers) {
			t.Errorf("%s stands there %d times, want %d", name, found[name], len(papers))
		}
	}
}

// Everything that is typed is said, and nothing that is not.
func TestMockUpSaysWhatIsTyped(t *testing.T) {
	in := demo(t)
	bare := texts(view.MockUp(in))
	in.Offer = view.OfferOf(project.Offer{
		Title: "Low Water", Media: "pencil and ink", Price: measure.Money{Minor: 5800, Currency: "EUR"}, Ready: measure.Date{Year: 2027, Month: 3, Day: 14},
	}, project.Showing{Name: "Curlew Slack Bindery", Line: "over the boat-shed"}, nil)
	full := texts(view.MockUp(in))
	for _, text := range []string{"pencil and ink", "58.00 EUR", "ready 14 March 2027", "Curlew Slack Bindery", "over the boat-shed"} {
		if full[text] != 1 || bare[text] != 0 {
			t.Errorf("%q: %d times, %d without it", text, full[text], bare[text])
		}
	}
	// demo.md and the openings of arithmetic.md: 48 leaves, 2·24 − 1 openings, 6 section middles
	for _, text := range []string{"96 pages, 48 leaves", "6 of 47 openings unbroken", "155 × 217 × 19 mm", "page 150 × 210 mm", "ruler 200 mm, pencil 175 mm"} {
		if bare[text] != 1 {
			t.Errorf("%q is missing: %v", text, bare)
		}
	}
}

// Flat swatches beside the names keep the shelf's colours exactly: every hex in, the
// same pixel out.
func TestColoursRoundTrip(t *testing.T) {
	kinds := map[stock.Kind]book.PartID{stock.Covering: book.PartCovering, stock.Paper: book.PartFolio}
	for _, hex := range []string{"#000000", "#FFFFFF", "#24443A", "#95482F", "#010203", "#FE7F80", "#C3C4BF"} {
		d, shelf := book.Defaults(measure.Metric), stock.Default()
		for i := range shelf.Materials {
			shelf.Materials[i].Colour = hex
		}
		s := view.MockUp(view.Input{Book: book.Compute(book.Resolve(d, shelf)), Width: 1200, Height: 800})
		s.Items = slices.DeleteFunc(s.Items, func(i scene.Item) bool { _, still := i.(scene.Still); return still }) // quicker
		im := raster.Image(s, 1200)
		for _, part := range kinds {
			swatches := 0
			for _, item := range s.Items {
				f, is := item.(scene.Face)
				if !is || f.Part != string(part) {
					continue
				}
				x, y := (f.Outline[0].X+f.Outline[2].X)/2/scene.Px, (f.Outline[0].Y+f.Outline[2].Y)/2/scene.Px
				c := im.RGBAAt(int(x), int(y))
				if got := fmt.Sprintf("#%02X%02X%02X", c.R, c.G, c.B); got != hex {
					t.Errorf("%s: %s, want %s", part, got, hex)
				}
				swatches++
			}
			if swatches != 1 {
				t.Errorf("%d swatches of %s", swatches, part)
			}
		}
	}
}

// Letters on the label are told from it as WCAG 2.2 asks (1.4.3: 4.5 to 1), whatever
// colour the label's paper has.
func TestTitleIsReadableOnItsLabel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := dressed(t)
		in.Book.Resolved.Finishing.LabelWidth, in.Book.Resolved.Finishing.LabelHeight = measure.MM(60), measure.MM(40)
		c := scene.Colour(rapid.Uint32Range(0, 0xFFFFFF).Draw(t, "colour"))
		in.Book.Resolved.Stock.Endpaper.Colour = fmt.Sprintf("#%06X", uint32(c))
		in.Offer.Title = "Low Water"
		letters := 0
		for _, item := range view.MockUp(in).Items {
			still, is := item.(scene.Still)
			if !is {
				continue
			}
			for i, inner := range still.Items {
				f, is := inner.(scene.Face)
				if !is || len(f.More) == 0 || i == 0 {
					continue
				}
				if label, is := still.Items[i-1].(scene.Face); is && label.Part == string(book.PartLabel) {
					letters++
					if got := draft.Contrast(f.Fill, c); got < draft.LeastContrast {
						t.Fatalf("%06x on %06x: %.2f", uint32(f.Fill), uint32(c), got)
					}
				}
			}
		}
		if letters == 0 {
			t.Fatal("no title on any label")
		}
	})
}
