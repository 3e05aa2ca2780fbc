package book

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"grainwise/model/measure"
)

// Source: the parameter table: sewing.method is machine or pamphlet with a
// pleated liner, link or link-on-tapes with a link-stitched block.
func TestMethodsOfAStructure(t *testing.T) {
	p, _ := Lookup("sewing.method")
	for structure, fits := range map[Structure][]string{
		PleatedLiner: {"machine", "pamphlet"}, LinkStitched: {"link", "link-on-tapes"},
	} {
		d := Defaults(measure.Metric)
		d.Design.Structure = structure
		d.Design.Sewing.Method = structure.Methods()[0]
		if got := p.WordsFor(d.Design); !slices.Equal(got, fits) {
			t.Errorf("%s offers %q", structure, got)
		}
		for _, word := range p.Words {
			before := d
			err := p.Set(&d, WordValue(word))
			if fit := slices.Contains(fits, word); fit != (err == nil) || !fit && d != before {
				t.Errorf("%s takes %s: %v", structure, word, err)
			}
			var wrong *ValueError
			if err != nil && (!errors.As(err, &wrong) || wrong.Key != p.Key || !strings.Contains(wrong.Want, fits[0])) {
				t.Errorf("%s, %s: %v does not say what fits", structure, word, err)
			}
		}
	}
}

// What the parameters say of the others: each row of the table that depends on
// a decision, at that decision and away from it.
func TestParametersKnowWhenTheyApply(t *testing.T) {
	usual := func(change func(*Design)) Design {
		d := Defaults(measure.Metric).Design
		change(&d)
		return d
	}
	asIs := usual(func(*Design) {})
	hand := usual(func(d *Design) { d.Sewing.Method = Pamphlet })
	link := usual(func(d *Design) { d.Structure, d.Sewing.Method = LinkStitched, Link })
	tapes := usual(func(d *Design) { d.Structure, d.Sewing.Method = LinkStitched, LinkOnTapes })
	for _, c := range []struct {
		keys    string
		in, out []Design
	}{
		{"page.width sections.count liner.pasteStretch covering joint.width", []Design{asIs, hand, link, tapes}, nil},
		{"sewing.stitch sewing.freeEnds", []Design{asIs}, []Design{hand, link, tapes}},
		{"sewing.stations", []Design{hand, link}, []Design{asIs, tapes}},
		{"sewing.endStation", []Design{hand, link, tapes}, []Design{asIs}},
		{"sewing.tapes sewing.tapeWidth sewing.tapeLap sewing.tape", []Design{tapes}, []Design{asIs, hand, link}},
		{"liner liner.pleatDepth liner.overhangHead", []Design{asIs, hand}, []Design{link, tapes}},
		{"endpaper endpaper.tip mull mull.lap mull.short", []Design{link, tapes}, []Design{asIs, hand}},
		{"interleaf interleaf.thickness", []Design{usual(func(d *Design) { d.Interleaf.Mode = GuardFolio })}, []Design{asIs}},
		{"liner.roughAllowance", []Design{usual(func(d *Design) { d.Liner.Torn.Head = true })}, []Design{asIs, link}},
		{"spine", []Design{asIs}, []Design{usual(func(d *Design) { d.Spine.Kind = SpineBoard })}},
		{"covering.side covering.overlap covering.sideLap", []Design{usual(func(d *Design) { d.Covering.Kind = QuarterCovering })}, []Design{asIs}},
	} {
		for _, key := range strings.Fields(c.keys) {
			p, known := Lookup(key)
			if !known {
				t.Fatalf("no key %s", key)
			}
			for _, d := range c.in {
				if !p.Applies(d) {
					t.Errorf("%s does not apply to %s, %s", key, d.Structure, d.Sewing.Method)
				}
			}
			for _, d := range c.out {
				if p.Applies(d) {
					t.Errorf("%s applies to %s, %s", key, d.Structure, d.Sewing.Method)
				}
			}
		}
	}
}
