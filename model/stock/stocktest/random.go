// Package stocktest draws random materials for property tests.
package stocktest

import (
	"fmt"

	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Shelf draws a sound shelf of up to eight materials.
func Shelf() *rapid.Generator[stock.Shelf] {
	return rapid.Custom(func(t *rapid.T) stock.Shelf {
		var s stock.Shelf
		for range rapid.IntRange(0, 8).Draw(t, "count") {
			m := Material().Draw(t, "material")
			if _, taken := s.Find(m.Kind, m.Name); !taken {
				s.Materials = append(s.Materials, m)
			}
		}
		return s
	})
}

// Material draws a sound material of any kind, with any of its facts.
func Material() *rapid.Generator[stock.Material] {
	return rapid.Custom(func(t *rapid.T) stock.Material {
		m := stock.Material{
			Kind: rapid.SampledFrom(stock.Kinds()).Draw(t, "kind"),
			Name: rapid.StringMatching(`[A-Za-zÄé=+"][A-Za-z0-9 ,;"=@é-]{0,18}[A-Za-z0-9]`).Draw(t, "name"),
			Lot:  text(t, "lot"), Supplier: text(t, "supplier"), Notes: text(t, "notes"),
			FrontTest: text(t, "front"), BackTest: text(t, "back"),
		}
		if rapid.Bool().Draw(t, "coloured") {
			m.Colour = fmt.Sprintf("#%06X", rapid.IntRange(0, 0xFFFFFF).Draw(t, "colour"))
		}
		body(t, &m)
		if rapid.Bool().Draw(t, "priced") {
			m.Price = stock.Price{Amount: measure.Money{Minor: rapid.Int64Range(0, 1e6).Draw(t, "price"), Currency: "EUR"},
				Per: stock.PerSheet, On: measure.Date{Year: 2026, Month: 2, Day: rapid.IntRange(1, 28).Draw(t, "day")}}
			if m.RollWidth != 0 || m.Kind == stock.Thread {
				m.Price.Per = stock.PerMetre
			}
		}
		return m
	})
}

// text draws prose, now and then with what might start a formula. What begins
// with an apostrophe before such a sign does not come back from a table.
func text(t *rapid.T, name string) string {
	return rapid.StringMatching(`|[=+@-]?[A-Za-z0-9é][ -&(-~é\n]{0,20}[A-Za-z0-9]`).Draw(t, name)
}

// body draws what a kind is made of.
func body(t *rapid.T, m *stock.Material) {
	length := func(name string, most measure.Length) measure.Length {
		return measure.Length(rapid.Int64Range(1, int64(most)).Draw(t, name))
	}
	if m.Kind == stock.Adhesive {
		m.Adhesive = &stock.AdhesiveFacts{
			WetSpread: measure.Grammage(rapid.Float64Range(1, 500).Draw(t, "spread")), DryShare: rapid.Float64Range(0.01, 1).Draw(t, "share"),
			WorkingMinutes: rapid.IntRange(0, 90).Draw(t, "minutes"), DryHours: rapid.IntRange(0, 90).Draw(t, "hours"), Paste: rapid.Bool().Draw(t, "paste"),
		}
		return
	}
	m.Thickness = length("thickness", 20*measure.Millimetre)
	if rapid.Bool().Draw(t, "measured") {
		m.Stack = stock.Stack{Count: rapid.IntRange(1, 40).Draw(t, "leaves"), Height: length("height", 19*measure.Millimetre) + 40}
		m.Thickness = m.Stack.Each()
	}
	if m.Kind == stock.Thread {
		if rapid.Bool().Draw(t, "numbered") {
			m.Number = stock.Number{Lea: rapid.IntRange(10, 100).Draw(t, "lea"), Ply: rapid.IntRange(1, 9).Draw(t, "ply")}
		}
		return
	}
	m.Grain = rapid.SampledFrom(stock.Grains()).Draw(t, "grain")
	m.Grammage = measure.Grammage(rapid.Float64Range(1, 2000).Draw(t, "weight"))
	if rapid.Bool().Draw(t, "pounds") {
		m.Pounds = stock.Pounds{Weight: float64(rapid.IntRange(1, 200).Draw(t, "lb")), Basis: rapid.SampledFrom(measure.Bases()).Draw(t, "basis").Name}
		m.Grammage, _ = m.Pounds.Grammage()
	}
	if rapid.Bool().Draw(t, "roll") {
		m.RollWidth = length("roll", measure.Metre)
	} else {
		m.Sheet = stock.Size{Length: length("length", measure.Metre) + measure.Millimetre}
		m.Sheet.Width = length("width", m.Sheet.Length)
	}
	if m.Kind.Woven() {
		m.Weave = rapid.SampledFrom(append(stock.Weaves(), "")).Draw(t, "weave")
		m.Backed, m.GlueTested = rapid.Bool().Draw(t, "backed"), rapid.Bool().Draw(t, "tested")
	}
}
