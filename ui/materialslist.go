package ui

import (
	"cmp"
	"image/color"
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/ui/controls"
	"grainwise/ui/session"
)

// shelved is a material with where it lies and what the open book takes it for.
type shelved struct {
	stock.Material
	onShelf bool         // on the maker's own; else in this book alone
	other   bool         // the book has it with other facts than the shelf
	used    []book.Param // by the design
	in      []string     // the variants of its batch that take it
}

// taken says whether the open book or a variant of it has it.
func (s shelved) taken() bool { return len(s.used)+len(s.in) > 0 }

// materials are those on the maker's shelf, and those that the open book alone
// has and uses.
func (w *Window) materials() []shelved {
	s := w.session
	var all []shelved
	for _, m := range s.Own().Materials {
		item := shelved{Material: m, onShelf: true, used: usesOf(s.Decisions(), m), in: variantsOf(s.Batch(), m)}
		if has, ok := s.Shelf().Find(m.Kind, m.Name); ok && item.taken() {
			item.other = !has.Equal(m)
		}
		all = append(all, item)
	}
	for _, m := range s.Shelf().Materials {
		if _, there := s.Own().Find(m.Kind, m.Name); there {
			continue
		}
		item := shelved{Material: m, used: usesOf(s.Decisions(), m), in: variantsOf(s.Batch(), m)}
		if item.taken() {
			all = append(all, item)
		}
	}
	return all
}

// usesOf is what a design takes a material for.
func usesOf(d book.Decisions, m stock.Material) []book.Param {
	var used []book.Param
	for _, p := range book.MaterialParams() {
		if p.Stock == m.Kind && p.Get(d).Word == m.Name && p.Applies(d.Design) {
			used = append(used, p)
		}
	}
	return used
}

// variantsOf names the variants of a batch that set a material.
func variantsOf(b batch.Batch, m stock.Material) []string {
	var names []string
	for _, v := range b.Variants {
		if slices.ContainsFunc(v.Patch, func(set batch.Setting) bool {
			p, known := book.Lookup(set.Key)
			return known && p.Kind == book.KindMaterial && p.Stock == m.Kind && set.Value.Word == m.Name
		}) {
			names = append(names, v.Name)
		}
	}
	return names
}

// usedFor names what a material is taken for: "Covering, Sides, 2 variants".
func (s shelved) usedFor() string {
	var names []string
	for _, p := range s.used {
		names = append(names, p.Short())
	}
	switch len(s.in) {
	case 0:
	case 1:
		names = append(names, words.Say("materials.variant"))
	default:
		names = append(names, words.Say("materials.variants", words.With{"n": len(s.in)}))
	}
	return strings.Join(names, ", ")
}

// searched are those that have every word of a text somewhere.
func searched(all []shelved, text string) []shelved {
	var found []shelved
	for _, item := range all {
		hay := strings.ToLower(strings.Join(item.said(), " "))
		if !slices.ContainsFunc(strings.Fields(strings.ToLower(text)), func(word string) bool { return !strings.Contains(hay, word) }) {
			found = append(found, item)
		}
	}
	return found
}

// said is everything about a material that somebody may look for.
func (s shelved) said() []string {
	all := []string{s.Name, kindName(s.Kind), s.Supplier, s.Lot, s.Notes, s.FrontTest, s.BackTest, s.Colour,
		grainName(s.Grain), s.Number.String(), s.Pounds.String(), s.Price.Amount.String(), s.usedFor()}
	if s.Weave != "" {
		all = append(all, words.Say("materials.weave."+string(s.Weave)))
	}
	if s.taken() {
		all = append(all, words.Say("materials.inBook"))
	}
	return all
}

func kindName(k stock.Kind) string { return words.Say("lists.kind." + string(k)) }

func grainName(g stock.Grain) string {
	if g == "" {
		return ""
	}
	return words.Say("materials.grain." + string(g))
}

// The columns of the table, in their order.
const (
	nameColumn = iota
	sizeColumn
	grainColumn
	thicknessColumn
	weightColumn
	priceColumn
	pricedColumn
	supplierColumn
	usedColumn
)

func materialColumns() []controls.TableColumn {
	column := func(name string, width, least float32, late int, end bool) controls.TableColumn {
		return controls.TableColumn{Title: words.Say("materials.column." + name), Width: width, Least: least, Late: late, End: end}
	}
	return []controls.TableColumn{
		column("name", 0, 180, 0, false), column("size", 178, 0, 0, false), column("grain", 84, 0, 3, false),
		column("thickness", 92, 0, 0, true), column("weight", 92, 0, 2, true), column("price", 104, 0, 1, true),
		column("priced", 90, 0, 5, false), column("supplier", 130, 0, 6, false), column("used", 140, 0, 4, false),
	}
}

// sorted puts the materials under heads by kind, and within a kind in the order
// of a column.
func sorted(all []shelved, column int, down bool) []shelved {
	slices.SortStableFunc(all, func(a, b shelved) int {
		order := byColumn(a, b, column)
		if down {
			order = -order
		}
		kinds := stock.Kinds()
		return cmp.Or(cmp.Compare(slices.Index(kinds, a.Kind), slices.Index(kinds, b.Kind)), order, strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name)))
	})
	var rows []shelved
	for i, item := range all {
		if i == 0 || item.Kind != all[i-1].Kind {
			rows = append(rows, shelved{Material: stock.Material{Kind: item.Kind}})
		}
		rows = append(rows, item)
	}
	return rows
}

func byColumn(a, b shelved, column int) int {
	switch column {
	case sizeColumn:
		area := func(m shelved) float64 { return m.Sheet.Length.MM()*m.Sheet.Width.MM() + m.RollWidth.MM() }
		return cmp.Compare(area(a), area(b))
	case grainColumn:
		return strings.Compare(string(a.Grain), string(b.Grain))
	case thicknessColumn:
		return cmp.Compare(a.Thickness, b.Thickness)
	case weightColumn:
		return cmp.Compare(a.Grammage, b.Grammage)
	case priceColumn:
		return cmp.Or(strings.Compare(a.Price.Amount.Currency, b.Price.Amount.Currency), cmp.Compare(a.Price.Amount.Minor, b.Price.Amount.Minor))
	case pricedColumn:
		return a.Price.On.Compare(b.Price.On)
	case supplierColumn:
		return strings.Compare(strings.ToLower(a.Supplier), strings.ToLower(b.Supplier))
	case usedColumn:
		return cmp.Compare(len(b.used)+len(b.in), len(a.used)+len(a.in))
	}
	return strings.Compare(strings.ToLower(a.Name), strings.ToLower(b.Name))
}

// rows are the items as the table shows them, and which of them is chosen.
func (p *materialsPage) rows() (rows []controls.TableRow, chosen int) {
	chosen = -1
	system := p.window.session.System()
	for i, item := range p.items {
		if item.Name == "" {
			rows = append(rows, controls.TableRow{Head: sentence(kindName(item.Kind))})
			continue
		}
		if idOf(item.Material) == p.chosen {
			chosen = i
		}
		rows = append(rows, controls.TableRow{Swatch: colourOf(item.Colour), Cells: []string{
			item.Name, sizeText(item.Material, system), grainName(item.Grain), thicknessText(item.Material, system),
			weightText(item.Material), priceText(item.Material), dateText(item.Price.On), item.Supplier, item.usedFor(),
		}})
	}
	return rows, chosen
}

// colourOf is a colour as the screen shows it; nil for none.
func colourOf(hex string) *color.NRGBA {
	v, err := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 32)
	if err != nil || len(hex) != len("#RRGGBB") {
		return nil
	}
	return &color.NRGBA{R: uint8(v >> 16), G: uint8(v >> 8), B: uint8(v), A: 0xFF}
}

func sizeText(m stock.Material, system measure.System) string {
	style := measure.Style{System: system, Decimals: 1, Denominator: 32}
	switch {
	case m.RollWidth > 0:
		return words.Say("materials.roll", words.With{"width": style.WithUnit(m.RollWidth)})
	case m.Sheet != stock.Size{}:
		return session.Size(m.Sheet.Length, m.Sheet.Width, system) + " " + system.Label()
	}
	return ""
}

// thinStyle shows thicknesses to a thousandth of a millimetre or a tenth of a mil.
func thinStyle(system measure.System) measure.Style {
	if system == measure.Imperial {
		return measure.Style{System: system, Decimals: 4}
	}
	return measure.Style{System: system, Decimals: 3}
}

func thicknessText(m stock.Material, system measure.System) string {
	if m.Thickness == 0 {
		return ""
	}
	return thinStyle(system).WithUnit(m.Thickness)
}

func weightText(m stock.Material) string {
	switch {
	case m.Adhesive != nil:
		return m.Adhesive.WetSpread.String()
	case m.Grammage == 0:
		return m.Number.String()
	}
	return m.Grammage.String()
}

// priceText is "2.40 EUR", a metre's with its unit.
func priceText(m stock.Material) string {
	if m.Price.Amount.Currency == "" {
		return ""
	}
	return words.Say("materials.price."+m.Price.Per, words.With{"amount": m.Price.Amount.String()})
}

func dateText(d measure.Date) string {
	if d.IsZero() {
		return ""
	}
	return d.String()
}
