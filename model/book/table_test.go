package book

import (
	"errors"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// The contract's keys that concern the pleated liner and full covering.
const contract = `structure rounding.system copies page.width page.height trim.foreEdge trim.head trim.tail
owner.addedPerLeaf paper paper.thickness paper.grammage paper.sheetLength paper.sheetWidth paper.grain paper.turned
paper.lostEdges paper.lostEdges.left paper.lostEdges.right paper.lostEdges.top paper.lostEdges.bottom
sections.count sections.folios interleaf.mode interleaf interleaf.thickness sewing.method sewing.threadDiameter
sewing.threadCrush sewing.stitch sewing.freeEnds sewing.stations sewing.endStation liner liner.thickness
liner.pleatDepth liner.valleyAllowance liner.valleySpacing liner.overhangForeEdge liner.overhangHead
liner.overhangTail liner.tornEdges liner.roughAllowance liner.pasteStretch board board.thickness board.width
board.height square.head square.tail square.foreEdge spine.kind spine.thickness spine.width spine.ease joint.setBack
joint.width joint.ease joint.groove joint.bendLoss covering covering.thickness covering.kind covering.turnIn
covering.cornerCut covering.cornerAngle adhesive measured.spineThickness measured.foreEdgeThickness
measured.blockWidth measured.blockHeight`

func TestContractKeys(t *testing.T) {
	for _, key := range strings.Fields(contract) {
		if _, ok := Lookup(key); !ok {
			t.Errorf("the contract's key %s is missing", key)
		}
	}
}

func TestEveryRowIsComplete(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range Params() {
		if seen[p.Key] {
			t.Errorf("%s stands twice", p.Key)
		}
		seen[p.Key] = true
		if p.Group == "" || p.Part == "" {
			t.Errorf("%s: group %q, part %q", p.Key, p.Group, p.Part)
		}
		if n := len([]rune(p.Short())); n > 16 || n == 0 {
			t.Errorf("%s: short label %q", p.Key, p.Short())
		}
		for _, end := range []string{".label", ".meaning", ".short"} {
			if _, ok := words.Lookup("param." + p.Key + end); !ok {
				t.Errorf("%s has no %s", p.Key, end)
			}
		}
		if p.Kind.IsNumber() && (p.Min >= p.Max || p.Step <= 0 || p.Kind.IsLength() && p.StepInch <= 0) {
			t.Errorf("%s: range %v to %v, step %v, %v in", p.Key, p.Min, p.Max, p.Step, p.StepInch)
		}
		if p.Derivable != (p.auto != nil) {
			t.Errorf("%s: derivable %v without a rule", p.Key, p.Derivable)
		}
		for _, s := range []measure.System{measure.Metric, measure.Imperial} {
			if err := p.Admit(p.Default(s)); err != nil {
				t.Errorf("default: %v", err)
			}
		}
	}
}

// Every automatic value lies in the parameter's own range, so that a slider
// can show it and typing it over is allowed.
func TestAutomaticValuesAreInRange(t *testing.T) {
	for _, system := range []measure.System{measure.Metric, measure.Imperial} {
		b := Compute(Resolve(Defaults(system), stock.Default()))
		for _, p := range Params() {
			if v := p.Automatic(b); !v.Auto {
				if err := p.Admit(v); err != nil {
					t.Errorf("%v", err)
				}
			}
		}
	}
}

// parse(print) returns every value on its step in each unit shown.
func TestWhatIsShownCanBeTyped(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.SampledFrom(Params()).Draw(t, "param")
		if !p.Kind.IsNumber() {
			return
		}
		system := rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system")
		step := p.Step
		if p.Kind.IsLength() && system == measure.Imperial {
			step = p.StepInch * 25.4
		}
		steps := rapid.IntRange(0, int((p.Max-p.Min)/step)).Draw(t, "steps")
		first := float64(int(p.Min / step)) // the first multiple inside the range
		if first*step < p.Min {
			first++
		}
		v := p.Clamped(atAmount(p.Kind, (first+float64(steps))*step))
		if v.amount(p.Kind) == p.Max {
			return // the range's end need not be on the step
		}
		text := p.Text(v, p.Style(system))
		back, err := p.Parse(text, system)
		if err != nil {
			t.Fatalf("%s shows %q: %v", p.Key, text, err)
		}
		again := p.Text(back, p.Style(system))
		if again != text {
			t.Fatalf("%s: %q came back as %q", p.Key, text, again)
		}
	})
}

func TestWrongValuesSayWhatIsWanted(t *testing.T) {
	for _, c := range []struct{ key, text, want string }{
		{"page.width", "9999", "60 to 420 mm"},
		{"page.width", "wide", "Not a size"},
		{"sections.count", "2.5", "1 to 40"},
		{"sections.count", "0", "1 to 40"},
		{"sections.folios", "auto", "1 to 12"},
		{"spine.kind", "leather", "card, inlay, board"},
		{"paper.grammage", "80 lb", "Pounds need"},
		{"liner.tornEdges", "middle", "none, or some of"},
	} {
		p, _ := Lookup(c.key)
		_, err := p.Parse(c.text, measure.Metric)
		var value *ValueError
		if !errors.As(err, &value) || value.Key != c.key || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s = %q: %v, want it to name the key and say %q", c.key, c.text, err, c.want)
		}
	}
}

func TestSetLosesNothingOnError(t *testing.T) {
	d := Defaults(measure.Metric)
	before := d
	p, _ := Lookup("page.width")
	if err := p.Set(&d, LengthValue(10*measure.Metre)); err == nil || d != before {
		t.Errorf("a 10 m page: %v", err)
	}
}

// One strip for all gives way to nothing, and takes the sides with it.
func TestLostEdges(t *testing.T) {
	d := Defaults(measure.Metric)
	set := func(key, text string) {
		p, _ := Lookup(key)
		v, err := p.Parse(text, measure.Metric)
		if err != nil {
			t.Fatal(err)
		}
		p.Set(&d, v)
	}
	set("paper.lostEdges.top", "25")
	set("paper.lostEdges.left", "auto")
	if e := d.Design.Paper.Lost.Edges(); e.Top != 25*measure.Millimetre || e.Left != 3*measure.Millimetre {
		t.Errorf("%+v", e)
	}
	set("paper.lostEdges", "5")
	if e := d.Design.Paper.Lost.Edges(); e != stock.AllEdges(5*measure.Millimetre) {
		t.Errorf("%+v", e)
	}
}

// Source: the parameter table: a thickness takes "20 leaves = 4.4 mm" too,
// which makes 0.22 a leaf; a page's size does not.
func TestThicknessOfAStack(t *testing.T) {
	for _, p := range Params() {
		if !p.Stack {
			continue
		}
		for _, text := range []string{"10 pieces = 4 mm", "10 = 4,0"} {
			v, err := p.Parse(text, measure.Metric)
			if p.Admit(LengthValue(measure.MM(0.4))) == nil && (err != nil || v.Length != measure.MM(0.4)) {
				t.Errorf("%s, %s: %v mm, %v", p.Key, text, v.Length.MM(), err)
			}
		}
		if _, err := p.Parse("0 leaves = 4.4 mm", measure.Metric); err == nil {
			t.Errorf("%s: a stack of none is accepted", p.Key)
		}
	}
	for _, key := range []string{"paper.thickness", "interleaf.thickness", "liner.thickness", "endpaper.thickness", "board.thickness", "spine.thickness", "covering.thickness"} {
		if p, _ := Lookup(key); !p.Stack || !p.Unfinished("20 leaves = ") {
			t.Errorf("%s takes no stack", key)
		}
	}
	page, _ := Lookup("page.height")
	if _, err := page.Parse("20 leaves = 4400 mm", measure.Metric); err == nil {
		t.Error("a stack of pages is accepted")
	}
	thread, _ := Lookup("sewing.threadDiameter")
	if v, err := thread.Parse("20 turns = 3/8 in", measure.Metric); err != nil || v.Length != measure.MM(0.47625) {
		t.Errorf("turns of thread: %v mm, %v", v.Length.MM(), err)
	}
}
