package book

import (
	"regexp"
	"strings"
	"testing"

	"grainwise/model/measure"
)

// The figures are demo.md's: T_s 13.37, board 2.5, spine piece 16, joint 9,
// block 151.04. The joint's sum is worked by hand for the spine piece as it is
// cut: e = (16 − 13.368)/2 = 1.316; 2.5 + √(5.4² + 1.316²) + 0.9 = 8.958.
func TestReasonsTellTheDemosFigures(t *testing.T) {
	b := demo()
	style := measure.Style{System: measure.Metric, Decimals: 2}
	for key, want := range map[string]string{
		"spine.width":     "Block at the spine + one board: 13.37 + 2.5 = 15.87, rounded up",
		"board.height":    "Block + squares at head and tail: 210 + 3 + 3 = 216",
		"board.width":     "Block + square − set-back: 151.04 + 3 − 5.04 = 148.99, rounded",
		"paper.thickness": "From Ebbwhite Drawing 170",
	} {
		if got := Reason(b, key, style); got != want {
			t.Errorf("%s: %q, want %q", key, got, want)
		}
	}
	if got := Reason(b, "joint.width", style); !strings.HasSuffix(got, "= 8.96, rounded up") {
		t.Errorf("joint: %q", got)
	}
	if got := Reason(b, "page.height", style); got != "" {
		t.Errorf("a given size has the reason %q", got)
	}
}

// Every derivable parameter gives a reason without an unfilled blank, and one
// that ends in a sum ends in the automatic value or says that it was rounded.
func TestEveryAutomaticValueHasAReason(t *testing.T) {
	sum := regexp.MustCompile(`= ([0-9.]+)$`)
	for _, kind := range []SpineKind{SpineInlay, SpineCard, SpineBoard} {
		for _, change := range []func(*Decisions){
			func(d *Decisions) { d.Design.Liner.PleatDepth = 0 },
			func(d *Decisions) { d.Design.Liner.PleatDepth = 10 * measure.Millimetre },
			func(d *Decisions) { d.Design.Structure, d.Design.Sewing.Method = LinkStitched, Link },
			func(d *Decisions) { d.Design.Structure, d.Design.Sewing.Method = LinkStitched, LinkOnTapes },
			func(d *Decisions) { d.Design.Covering.Kind = QuarterCovering },
		} {
			b := demo(change, func(d *Decisions) { d.Design.Spine.Kind = kind })
			for _, p := range Params() {
				style := p.Style(measure.Metric)
				why := Reason(b, p.Key, style)
				if (why != "") != p.Derivable || strings.ContainsAny(why, "{}") || strings.Contains(why, "reason.") {
					t.Errorf("%s, derivable %v: %q", p.Key, p.Derivable, why)
				}
				if m := sum.FindStringSubmatch(why); m != nil && m[1] != p.Number(p.Automatic(b), style) {
					t.Errorf("%s: %q, but automatic is %s", p.Key, why, p.Number(p.Automatic(b), style))
				}
			}
		}
	}
}
