package sheet

import (
	"strings"
	"testing"

	"grainwise/model/making"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/scene"
	"grainwise/render/typeface"
)

func demoSet(t *testing.T, set ...string) Input {
	t.Helper()
	p := project.Demo()
	for _, s := range set {
		key, value, _ := strings.Cut(s, "=")
		if err := p.Set(key, value, measure.Metric); err != nil {
			t.Fatal(err)
		}
	}
	b := p.Book()
	return Input{Book: b, Name: p.Name, Findings: p.Findings(b, project.Studio{}), Notes: p.Notes, System: p.Decisions.Design.CutIn}
}

// textsOf are all texts of a paper, one a line.
func textsOf(d Document) string {
	var all []string
	for _, page := range d.Pages {
		for _, item := range page.Items {
			if t, is := item.(scene.Text); is {
				all = append(all, t.String)
			}
		}
	}
	return strings.Join(all, "\n") + "\n"
}

// Key numbers have capitals of 4 mm or more, so that they are read from a metre
// away (the measure; about 14 minutes of arc, while 5 are the least that
// a normal eye tells apart: ISO 8596, from memory).
func TestKeyNumbersAreLarge(t *testing.T) {
	if high := typeface.CapHeight(number().font, number().size); high < 4 {
		t.Errorf("capitals are %.2f mm high", high)
	}
	found := false
	for _, page := range benchSheet(demoSet(t)).Pages {
		for _, item := range page.Items {
			if text, is := item.(scene.Text); is && text.String == "13.4 mm" {
				found = true
				if high := typeface.CapHeight(text.Font, text.Size); high < 4 {
					t.Errorf("the spine's thickness is %.2f mm high", high)
				}
			}
		}
	}
	if !found {
		t.Error("the spine's thickness is not on the sheet")
	}
}

// Source: the table of the demo, computed by hand: spine piece 16, joint 9, board
// 149 × 216, covering 368 × 252, liner 410.6 × 210; seam 20 to 190.
func TestBenchSheetOfTheDemo(t *testing.T) {
	said := textsOf(benchSheet(demoSet(t, "copies=24")))
	for _, want := range []string{
		"Low Water", "576", "410.6", "149", "216", "368", "252", "9 mm", "16 mm", "4 mm at 45°", "20", "190", "4.5 mm", "2.5 mm", "HEAD", "Ebbwhite Drawing 170", "Next time",
	} {
		if !strings.Contains(said, want+"\n") {
			t.Errorf("the sheet lacks %q", want)
		}
	}
}

// What is needed is told up, as in the guide. Source: by hand, a seam of 170 mm in
// stitches of 4.5 through 1.76 + 0.15 takes 2 · 170 · (1 + 1.91/4.5) + 4 · 150 mm of
// thread, six sections 6506; the liner's folds lie 21.76 mm apart, which a tenth of
// a millimetre would tell 0.2 mm wrong at the last.
func TestNeedsAreToldUp(t *testing.T) {
	said := textsOf(benchSheet(demoSet(t)))
	for _, want := range []string{"6.6 m, 0.28 mm\n", "24 g PVA\n", "21.76 mm"} {
		if !strings.Contains(said, want) {
			t.Errorf("the sheet lacks %q", want)
		}
	}
}

// No number is broken in two lines, of however many copies: by hand, 200 copies of
// 40 sections of 4 folios are 32000 folios; 5000 of 12 folios are 2400000.
func TestNumbersAreNotBroken(t *testing.T) {
	for folios, set := range map[string][]string{
		"32000":   {"copies=200", "sections.count=40"},
		"2400000": {"copies=5000", "sections.count=40", "sections.folios=12", "rounding.system=inch"},
	} {
		if said := textsOf(benchSheet(demoSet(t, set...))); !strings.Contains(said, "\n"+folios+"\n") {
			t.Errorf("the sheet lacks %s", folios)
		}
	}
}

// What the maker leaves as it is stands there with the reason.
// The foot of a page tells its revision, however long the design's name is.
func TestALongNameLeavesTheRevision(t *testing.T) {
	in := demoSet(t)
	in.Name, in.Revision = strings.Repeat("Winter evenings ", 12), "XVPV8"
	for _, page := range benchSheet(in).Pages {
		foot := false
		for _, item := range page.Items {
			text, is := item.(scene.Text)
			foot = foot || is && strings.Contains(text.String, "… · revision XVPV8")
		}
		if !foot {
			t.Error("a page does not tell its revision")
		}
	}
}

// A count that breaks over two lines would be misread: 40 × 12 × 5000 folios.
func TestLargeCountsStandOnOneLine(t *testing.T) {
	for _, system := range []string{"mm", "in"} {
		in := demoSet(t, "copies=5000", "sections.count=40", "sections.folios=12")
		if system == "in" {
			in.System = measure.Imperial
		}
		if said := textsOf(benchSheet(in)); !strings.Contains(said, "\n2400000\n") {
			t.Errorf("in %s the folios' count is broken:\n%s", system, said)
		}
	}
}

func TestAcceptedFindingsStandOnTheSheet(t *testing.T) {
	in := demoSet(t)
	in.Findings[0].Accepted = "The customer asked for it"
	if said := textsOf(benchSheet(in)); !strings.Contains(said, "Reason: The customer asked for it") {
		t.Error("the reason is missing")
	}
}

// Every caution stands in full at the first step that needs it, and by its step
// at the later ones.
func TestCautionsStandAtTheirSteps(t *testing.T) {
	in := demoSet(t)
	met := map[making.Caution]int{}
	full := 0
	for i, s := range making.Steps(in.Book) {
		known := len(met)
		for _, line := range cautions(s, i+1, met) {
			if strings.HasPrefix(line, "Local rules") {
				full++
			}
		}
		if len(s.Cautions) > 0 && len(met) == known && cautions(s, i+1, met) == nil {
			t.Errorf("step %s says nothing of its cautions", s.ID)
		}
	}
	if full != len(met) || full == 0 {
		t.Errorf("%d cautions in full, %d are met", full, len(met))
	}
}

// A measure that was entered is printed in its place.
func TestMeasuresThatWereTaken(t *testing.T) {
	said := textsOf(benchSheet(demoSet(t, "measured.spineThickness=14.1", "measured.foreEdgeThickness.head=10.7")))
	if !strings.Contains(said, "14.1\n") || !strings.Contains(said, "10.7\n") {
		t.Error("a measure is missing")
	}
}

// A number is not parted from its fraction and unit at the end of a line, and a
// word wider than a line is broken.
func TestWrapping(t *testing.T) {
	s := body()
	for _, line := range s.wrapped("turn in 5 7/8 in all round, then 18 mm more", s.width("turn in 5 7/8 in")+0.1) {
		if strings.HasPrefix(line, "7/8") || strings.HasPrefix(line, "in all") || strings.HasPrefix(line, "mm") {
			t.Errorf("a line starts with %q", line)
		}
	}
	long := strings.Repeat("Handbuchbinderei", 9)
	joined := ""
	for _, line := range s.wrapped(long, 40) {
		if s.width(line) > 40 {
			t.Errorf("%q is %.1f wide", line, s.width(line))
		}
		joined += strings.TrimSuffix(line, "-")
	}
	if joined != long {
		t.Errorf("wrapped to %q", joined)
	}
}
