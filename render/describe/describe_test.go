package describe

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/view"
)

func of(b book.Book, system measure.System) Input {
	return Input{View: "taken-apart", Book: b, Findings: check.All(b), System: system}
}

// Every piece of the plan stands in the words with how many, the size it is
// cut to and the way of its grain, and every finding with its level and part.
func TestEveryPartAndFindingIsInTheWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		system := rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system")
		in := of(b, system)
		text := Text(Words(in))
		if strings.ContainsAny(text, "{}") || strings.Contains(text, "describe.") || strings.Contains(text, "word.") {
			t.Fatalf("a blank or a key is left:\n%s", text)
		}
		for _, p := range b.Parts {
			line := lineOf(text, words.Say("part."+p.Word)+": ")
			for _, want := range []string{in.size(p.Width) + " wide", in.size(p.Height) + " high", p.Stock, words.Say("describe.grain." + string(p.Grain))} {
				if !strings.Contains(line, want) {
					t.Fatalf("%s: %q lacks %q", p.ID, line, want)
				}
			}
		}
		for _, f := range in.Findings {
			if !strings.Contains(text, f.Level.Label()+", on the part “"+words.Say("part."+string(f.Part))+"”: "+f.Text(in.fine())) {
				t.Fatalf("%s is not said:\n%s", f.ID, text)
			}
		}
	})
}

func lineOf(text, beginning string) string {
	for _, line := range strings.Split(text, "\n") {
		if strings.HasPrefix(line, beginning) {
			return line
		}
	}
	return ""
}

// The demo's sizes are those of its published plan: 150 × 210 pages, boards
// 149 × 216, covering 368 × 252; the covering lies lowest, the folios on top.
func TestTheDemoInWords(t *testing.T) {
	b := project.Demo().Book()
	text := Text(Words(of(b, measure.Metric)))
	for _, want := range []string{
		"Board: 2 pieces, each 149 mm wide and 216 mm high, of",
		"Covering: 1 piece, 368 mm wide and 252 mm high, of",
		"Folio: 24 pieces, each 300 mm wide and 210 mm high, of",
		"48 leaves, 96 pages",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	order := []string{"\nCovering: ", "\nSpine piece: ", "\nBoard: ", "\nLiner: ", "\nFolio: "}
	for i := 1; i < len(order); i++ {
		if strings.Index(text, order[i-1]) > strings.Index(text, order[i]) {
			t.Errorf("%q comes before %q", order[i], order[i-1])
		}
	}
}

// A trade term is explained where it is used.
func TestTradeTermsAreExplained(t *testing.T) {
	explained := map[string]string{
		"folio": "folio is a sheet", "section": "section is some folios", "joint": "joint, the gap", "valleys": "valleys, folds that",
		"squares": "reach past the block", "fore edge": "fore edge, the side that opens", "the head": "head, the upper edge",
		"liner": "liner is the sheet", "guard sheet": "guard sheet is thin", "grain": "the way its fibres lie",
	}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.ToLower(Text(Words(of(booktest.Books().Draw(t, "book"), measure.Metric))))
		for term, meaning := range explained {
			if strings.Contains(text, term) && !strings.Contains(text, meaning) {
				t.Fatalf("%q is used and not explained:\n%s", term, text)
			}
		}
	})
}

// Each drawing says what it is like.
func TestEveryDrawingIsDescribed(t *testing.T) {
	seen := map[string]bool{}
	for _, v := range view.OfBook() {
		p := (Input{View: v.ID}).drawing()
		if len(p.Lines) != 1 || seen[p.Lines[0]] {
			t.Errorf("%s: %q", v.ID, p.Lines)
			continue
		}
		seen[p.Lines[0]] = true
	}
}

func TestAQuietBookSaysSo(t *testing.T) {
	p := Input{}.troubles()
	if len(p.Lines) != 1 || p.Lines[0] != words.Say("describe.noTrouble") {
		t.Errorf("%q", p.Lines)
	}
}

// A link-stitched book is described by its own parts, not by a liner's.
func TestALinkedBookInWords(t *testing.T) {
	d := book.Defaults(measure.Metric)
	d.Design.Structure, d.Design.Sewing.Method = book.LinkStitched, book.LinkOnTapes
	d.Design.Covering.Kind = book.QuarterCovering
	in := of(book.Compute(book.Resolve(d, stock.Default())), measure.Metric)
	for _, v := range view.OfBook() {
		in.View = v.ID
		text := Text(Words(in))
		for _, want := range []string{"Endpaper: 2 pieces", "Tape: 2 pieces", "Spine lining: 1 piece", "Side: 2 pieces"} {
			if !strings.Contains(text, want) {
				t.Errorf("%s: %q is missing in\n%s", v.ID, want, text)
			}
		}
		if strings.Contains(strings.ToLower(text), "liner") {
			t.Errorf("%s speaks of a liner:\n%s", v.ID, text)
		}
	}
}
