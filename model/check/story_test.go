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

// Source: the demo's table and stories 1 and 7. The demo's two books, the lower
// one, and the block measured at 14.1 are well made.
func TestStoryTheDemoIsQuiet(t *testing.T) {
	for _, set := range [][]string{
		{}, {"paper", "Marramstone Oat 180"}, {"page.height", "198 mm"}, {"page.width", "173 mm", "page.height", "248 mm"},
		{"board", "Groynes 2.0"}, {"covering", "Brickdust"}, {"covering", "Fog"},
	} {
		found := All(reckon(with(t, measure.Metric, set...)))
		if len(found) != 1 || found[0].ID != "measure-first" || found[0].Level != Note {
			t.Errorf("%v: %v", set, found)
		}
	}
	if found := All(reckon(with(t, measure.Metric, "measured.spineThickness", "14.1 mm"))); len(found) != 0 {
		t.Errorf("measured: %v", found)
	}
}
