package ui

import (
	"cmp"
	"fmt"
	"image/color"
	"math"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// variantLabel is a variant's name; the design itself has a word.
func variantLabel(name string) string {
	if name == "" {
		return asDesigned()
	}
	return name
}

func asDesigned() string { return words.Say("batch.asDesigned") }

// variantOf is the variant whose label is a text.
func variantOf(label string) string {
	if label == asDesigned() {
		return ""
	}
	return label
}

// variantNames are those that an order may have.
func (p *batchPage) variantNames() []string {
	var names []string
	for _, v := range p.batch().Variants {
		names = append(names, v.Name)
	}
	return append(names, asDesigned())
}

// materials are the names of those of a kind, and that of the design's own.
func (p *batchPage) materials(kind stock.Kind) []string {
	names := []string{asDesigned()}
	for _, m := range p.window.session.Offered().OfKind(kind) {
		names = append(names, m.Name)
	}
	return names
}

// derived is what tables ask again and again of variants, until one differs.
type derived struct {
	of     batchInput
	known  bool
	books  map[string]book.Book
	places map[string]variantPlace
	extras map[string]string
	paints map[string][]color.NRGBA
}

// derive works it out, if the design, its materials or its variants are others.
func (p *batchPage) derive() *derived {
	in := p.window.batchInput()
	in.batch = batch.Batch{Variants: in.batch.Variants}
	d := &p.derived
	if d.known && d.of.equal(in) {
		return d
	}
	*d = derived{of: in, known: true, books: map[string]book.Book{}, places: placesOf(in.base, in.batch),
		extras: map[string]string{}, paints: map[string][]color.NRGBA{}}
	for _, v := range append([]batch.Variant{{}}, in.batch.Variants...) {
		set, _ := in.batch.Of(in.base, in.shelf, v.Name)
		b := book.Compute(book.Resolve(set, in.shelf))
		d.books[v.Name], d.extras[v.Name] = b, p.extrasOf(v)
		d.paints[v.Name] = []color.NRGBA{paint(b.Resolved.Stock.Covering.Colour), paint(b.Resolved.Stock.Paper.Colour)}
	}
	return d
}

func (p *batchPage) booksOf() map[string]book.Book        { return p.derive().books }
func (p *batchPage) places() map[string]variantPlace      { return p.derive().places }
func (p *batchPage) extras() map[string]string            { return p.derive().extras }
func (p *batchPage) colours(variant string) []color.NRGBA { return p.derive().paints[variant] }

// extrasOf is what a variant has besides paper and cloth.
func (p *batchPage) extrasOf(v batch.Variant) string {
	var all []string
	for _, s := range v.Patch {
		if s.Key == "ribbon.width" && s.Value.Length > 0 {
			all = append(all, words.Say("batch.extra.ribbon"))
		}
		if s.Key == "elastic.width" && s.Value.Length > 0 {
			all = append(all, words.Say("batch.extra.elastic"))
		}
	}
	if other := p.others(v); other != "" {
		all = append(all, other)
	}
	return strings.Join(all, ", ")
}

// others are the settings of a variant that have no column, "Board Groynes 2.0".
func (p *batchPage) others(v batch.Variant) string {
	own := map[string]bool{"paper": true, "covering": true, "ribbon.width": true, "ribbon": true, "elastic.width": true, "elastic": true}
	var all []string
	for _, s := range v.Patch {
		if param, known := book.Lookup(s.Key); known && !own[s.Key] {
			all = append(all, param.Short()+" "+param.Text(s.Value, param.Style(p.window.session.System())))
		}
	}
	return strings.Join(all, ", ")
}

// wanted puts what a value should have been into a sentence.
func wanted(err error) string {
	if wrong, is := err.(*book.ValueError); is {
		return sentence(wrong.Want)
	}
	return sentence(err.Error())
}

// money reads an amount; without a currency it is in the project's own. Nothing is
// no amount.
func (p *batchPage) money(text string) (measure.Money, string) {
	text = strings.TrimSpace(text)
	if text == "" {
		return measure.Money{}, ""
	}
	m, err := measure.ParseMoney(text)
	if err != nil {
		m, err = measure.ParseMoney(text + " " + p.currency())
	}
	if err != nil || m.Minor < 0 {
		return measure.Money{}, words.Say("batch.want.price")
	}
	return m, ""
}

// currency is that of the batch's prices, or of its materials.
func (p *batchPage) currency() string {
	b := p.batch()
	if c := b.Pricing.Currency(); c != "" {
		return c
	}
	for _, v := range b.Variants {
		if v.Asked.Currency != "" {
			return v.Asked.Currency
		}
	}
	for _, m := range p.window.session.Shelf().Materials {
		if c := m.Price.Amount.Currency; c != "" {
			return c
		}
	}
	return ""
}

// massText is a mass in the unit shown.
func massText(grams float64, system measure.System) string {
	if system == measure.Imperial {
		return fmt.Sprintf("%.1f oz", grams/28.349523125)
	}
	return fmt.Sprintf("%.0f g", math.Round(grams))
}

// paint is a material's colour; none where it has no other.
func paint(hex string) color.NRGBA {
	var r, g, b uint8
	if _, err := fmt.Sscanf(hex, "#%02x%02x%02x", &r, &g, &b); err != nil {
		return color.NRGBA{}
	}
	return color.NRGBA{R: r, G: g, B: b, A: 0xFF}
}

func compareText(a, b string, down bool) int {
	if down {
		a, b = b, a
	}
	return cmp.Compare(strings.ToLower(a), strings.ToLower(b))
}
