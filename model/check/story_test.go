package check

import (
	"slices"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// only is the one finding of a rule.
func only(t *testing.T, b book.Book, rule string) Finding {
	t.Helper()
	var found []Finding
	for _, f := range All(b) {
		if f.ID == rule {
			found = append(found, f)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%d findings of %s, want 1", len(found), rule)
	}
	return found[0]
}

// Source: the demo's story 3. Across the grain more folios come out of a
// sheet, and it is a stop that one step mends.
func TestStoryAcrossTheGrain(t *testing.T) {
	for paper, yields := range map[string][2]int{"Ebbwhite Drawing 170": {9, 8}, "Marramstone Oat 180": {4, 3}} {
		d := with(t, measure.Metric, "paper", paper, "paper.turned", "yes")
		b := reckon(d)
		f := only(t, b, "grain-paper")
		if f.Level != Stop || f.Part != book.PartFolio || b.Use.FoliosASheet != yields[0] {
			t.Errorf("%s: %s on %s, %d folios a sheet", paper, f.Level, f.Part, b.Use.FoliosASheet)
		}
		if All(b)[0].Level != Stop {
			t.Errorf("%s: the stop does not come first", paper)
		}
		if f.Remedy == nil || f.Remedy.Label() != "Turn the piece" {
			t.Fatalf("%s: remedy %v", paper, f.Remedy)
		}
		mended, err := f.Remedy.Apply(d)
		if err != nil {
			t.Fatal(err)
		}
		after := reckon(mended)
		if stops := slices.ContainsFunc(All(after), func(f Finding) bool { return f.Level == Stop }); stops || after.Use.FoliosASheet != yields[1] {
			t.Errorf("%s, mended: %d folios a sheet, stops %v", paper, after.Use.FoliosASheet, stops)
		}
	}
}

// Source: the demo's story 6. 48 leaves of 0.05 find room at the spine, of 0.15
// they do not: the fore edge gapes.
func TestStoryTheOwnerAdds(t *testing.T) {
	f := only(t, reckon(with(t, measure.Metric, "owner.addedPerLeaf", "0.15 mm")), "block-hungry")
	if f.Level != Check || f.Key != "owner.addedPerLeaf" || f.Found != (Quantity{7.2, Millimetres}) {
		t.Errorf("%s, %s, %v", f.Level, f.Key, f.Found)
	}
	if got, want := f.Limit.Text(measure.Style{Decimals: 2}), "3.26 mm"; got != want { // 1.3 × (13.368 − 10.86)
		t.Errorf("limit %s, want %s", got, want)
	}
}

// ids are the rules that speak of a book.
func ids(found []Finding) []string {
	var all []string
	for _, f := range found {
		all = append(all, f.ID)
	}
	return all
}

// Source: the demo's table and stories 1, 3 and 7. The demo's two books, the
// lower one, the one as large as its sheet allows and the block measured at 14.1
// are well made: nothing but notes, on the estimate and on what paper gives.
func TestStoryTheDemoIsQuiet(t *testing.T) {
	for _, c := range []struct{ set, want []string }{
		{set(), set("measure-first", "yield-crossgrain")}, // 9 against 8
		{set("paper", "Marramstone Oat 180"), set("measure-first", "sheet-waste", "yield-crossgrain")},
		{set("page.height", "198 mm"), set("measure-first")},
		{set("page.width", "173 mm", "page.height", "248 mm"), set("measure-first")},
		{set("board", "Groynes 2.0"), set("measure-first", "yield-crossgrain")},
		{set("covering", "Brickdust"), set("measure-first", "yield-crossgrain")},
		{set("covering", "Fog"), set("measure-first", "yield-crossgrain")},
		{set("measured.spineThickness", "14.1 mm"), set("yield-crossgrain")},
	} {
		found := All(reckon(with(t, measure.Metric, c.set...)))
		if !slices.Equal(ids(found), c.want) || slices.ContainsFunc(found, func(f Finding) bool { return f.Level != Note }) {
			t.Errorf("%v: %v", c.set, found)
		}
	}
}

// Source: the demo's story 2. Oat uses 58 % of its sheet, three folios of 300 ×
// 210 out of 650 × 500; a page that fills the same cuts wastes little.
func TestStoryOatWastesItsSheet(t *testing.T) {
	d := with(t, measure.Metric, "paper", "Marramstone Oat 180")
	f := only(t, reckon(d), "sheet-waste")
	if text := f.Text(measure.Style{Decimals: 1}); f.Level != Note || text != "The folios take 58.2 % of their sheet of paper." {
		t.Errorf("%s: %s", f.Level, text)
	}
	if f.Remedy == nil {
		t.Fatal("the page could fill the sheet")
	}
	grown, err := f.Remedy.Apply(d)
	if err != nil {
		t.Fatal(err)
	}
	if b := reckon(grown); b.SheetShare() < 0.65 || b.Use.FoliosASheet != 3 {
		t.Errorf("%v: %d folios take %v of the sheet", f.Remedy, b.Use.FoliosASheet, b.SheetShare())
	}
}

// Source: the demo's table, grain right and wrong: 8 and 9, 3 and 4.
func TestStoryTheForbiddenTurn(t *testing.T) {
	for paper, yields := range map[string][2]float64{"Ebbwhite Drawing 170": {8, 9}, "Marramstone Oat 180": {3, 4}} {
		f := only(t, reckon(with(t, measure.Metric, "paper", paper)), "yield-crossgrain")
		if f.Limit.Amount != yields[0] || f.Found.Amount != yields[1] || f.Remedy != nil {
			t.Errorf("%s: %v along, %v across, remedy %v", paper, f.Limit, f.Found, f.Remedy)
		}
	}
}
