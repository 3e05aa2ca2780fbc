package project

import (
	"regexp"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo project's page: "Low Water", 24 books, the sizes of the
// defaults; made here from the table so that the file cannot drift.
func TestDemoSchemaFile(t *testing.T) {
	p := New(measure.Metric)
	p.Name = "Low Water"
	p.Notes = "Curlew Slack Bindery, release 7: twenty-four sketchbooks, each section machine-sewn into its own valley of the liner."
	if err := p.Set("copies", "24", measure.Metric); err != nil {
		t.Fatal(err)
	}
	p.Batch = demoBatch(t, p)
	golden(t, demoFile, encoded(t, p))
	if !*update && !Demo().Equal(p) {
		t.Error("the demo is not what its file should hold")
	}
}

// Source: the demo's table, its Ebbwhite column.
func TestDemoComputes(t *testing.T) {
	b := Demo().Book()
	for what, c := range map[string]struct{ got, want measure.Length }{
		"spine piece":    {b.ToCut.SpineWidth, measure.MM(16)},
		"joint":          {b.ToCut.JointWidth, measure.MM(9)},
		"board width":    {b.ToCut.BoardWidth, measure.MM(149)},
		"board height":   {b.ToCut.BoardHeight, measure.MM(216)},
		"covering width": {b.ToCut.CoveringWidth, measure.MM(368)},
	} {
		if c.got != c.want {
			t.Errorf("%s %v mm, want %v", what, c.got.MM(), c.want.MM())
		}
	}
	if b.Resolved.Copies != 24 || len(b.Resolved.Unknown) > 0 {
		t.Errorf("%d copies, unknown materials %v", b.Resolved.Copies, b.Resolved.Unknown)
	}
}

func TestSet(t *testing.T) {
	p := New(measure.Metric)
	for _, c := range []struct {
		key, text string
		shown     measure.System
	}{
		{"page.width", "148", measure.Metric},
		{"page.height", "8 1/4", measure.Imperial},
		{"page.height", "8 1/4in", measure.Metric},
		{"paper", "Marramstone Oat 180", measure.Metric},
		{"paper.turned", "yes", measure.Metric},
		{"board.width", "auto", measure.Metric},
		{"measured.spineThickness", "14.1", measure.Metric},
		{"measured.spineThickness", "", measure.Metric},
	} {
		if err := p.Set(c.key, c.text, c.shown); err != nil {
			t.Errorf("%s=%s: %v", c.key, c.text, err)
		}
	}
	d := p.Decisions.Design
	if d.Page.Width != measure.MM(148) || d.Page.Height != measure.Inches(8.25) || d.Paper.Material != "Marramstone Oat 180" || !d.Paper.Turned {
		t.Errorf("set to %+v, %+v", d.Page, d.Paper)
	}
}

func TestSetRefuses(t *testing.T) {
	for _, c := range []struct{ key, text, says string }{
		{"page.widht", "148", "page.width"},
		{"joint", "9", "joint."},
		{"Page.Width", "148", "page.width"},
		{"", "1", "did you mean"},
		{"page.width", "wide", "page.width"},
		{"page.width", "9000", "60 to 420 mm"},
		{"page.width", "auto", "page.width"},
		{"page.width", "NaN", "page.width"},
		{"sections.count", "6.5", "1 to 40"},
		{"paper", "Nobody's Laid", "Ebbwhite Drawing 170"},
		{"covering", "Groynes 2.5", "Kelp"},
		{"spine.kind", "cord", "inlay"},
		{strings.Repeat("x", 5000), "1", "did you mean"},
	} {
		p := New(measure.Metric)
		before := p.Clone()
		err := p.Set(c.key, c.text, measure.Metric)
		if err == nil {
			t.Errorf("%s=%s is accepted", c.key, c.text)
			continue
		}
		if !strings.Contains(err.Error(), c.says) || strings.Contains(err.Error(), "\n") || len(err.Error()) > 600 {
			t.Errorf("%s=%s: %q does not say %q in a line", c.key, c.text, err, c.says)
		}
		if !p.Equal(before) {
			t.Errorf("%s=%s changed the project", c.key, c.text)
		}
	}
}

func TestCloneSharesNothing(t *testing.T) {
	p := Demo()
	q := p.Clone()
	q.Shelf.Materials[0].Name = "another"
	if p.Equal(q) || p.Shelf.Materials[0].Name == "another" || !Demo().Equal(p) {
		t.Error("the copy shares the shelf")
	}
}

func TestEveryDecisionComesBackExactly(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		p := New(measure.Metric)
		p.Decisions = booktest.Decisions().Draw(r, "decisions")
		p.Name = rapid.StringMatching(`[ -~äß€“”🙂]{0,40}`).Draw(r, "name")
		p.Notes = rapid.String().Draw(r, "notes")
		data, err := p.Encode()
		if err != nil {
			r.Fatal(err)
		}
		again, err := Decode(data, "again.json")
		if err != nil {
			r.Fatal(err)
		}
		if !again.Equal(p) {
			r.Fatalf("came back as %+v", again.Decisions)
		}
	})
}

func TestFileIsInTableOrderOneKeyALine(t *testing.T) {
	lines := strings.Split(string(encoded(t, Demo())), "\n")
	next := 0
	for _, p := range book.Params() {
		if p.Measure {
			continue
		}
		start := "    " + jsonText(p.Key) + ": "
		for next < len(lines) && !strings.HasPrefix(lines[next], start) {
			next++
		}
		next++
	}
	if next > len(lines) {
		t.Error("the keys are not one a line in the order of the table")
	}
}

func TestMissingKeysTakeDefaults(t *testing.T) {
	for text, want := range map[string]book.Decisions{
		`{"format":"grainwise-project","version":1,"design":{}}`:                         book.Defaults(measure.Metric),
		`{"format":"grainwise-project","version":1,"design":{"rounding.system":"inch"}}`: book.Defaults(measure.Imperial),
	} {
		p, err := Decode([]byte(text), "short.json")
		if err != nil || p.Decisions != want || len(p.Shelf.Materials) == 0 {
			t.Errorf("%s: %v %+v", text, err, p.Decisions)
		}
	}
}

// One key sets four: whatever the order of the file, that of the table counts.
func TestOrderOfTheFileDoesNotMatter(t *testing.T) {
	const text = `{"design":{"paper.lostEdges.left":12,"paper.lostEdges":3},"version":1,"format":"grainwise-project"}`
	p, err := Decode([]byte(text), "order.json")
	if err != nil {
		t.Fatal(err)
	}
	if left, ok := p.Decisions.Design.Paper.Lost.Left.Get(); !ok || left != measure.MM(12) {
		t.Errorf("left strip %v, %v", left, ok)
	}
}

// A short shelf, written by hand, is enough: what is not named is found.
func TestMaterialsThatAreNotNamed(t *testing.T) {
	const text = `{"format":"grainwise-project","version":1,"design":{},"shelf":[
		{"kind":"paper","name":"Saltmarsh Laid","sheet":{"length":700,"width":500},"grain":"long","thickness":0.15,"grammage":110}]}`
	p, err := Decode([]byte(text), "short.json")
	if err != nil {
		t.Fatal(err)
	}
	if got := p.Decisions.Design.Paper.Material; got != "Saltmarsh Laid" {
		t.Errorf("the paper is %s, want the one on the shelf", got)
	}
	if unknown := p.Book().Resolved.Unknown; len(unknown) > 0 || len(p.Shelf.OfKind(stock.Paper)) != 1 {
		t.Errorf("unknown %v, papers %v", unknown, p.Shelf.OfKind(stock.Paper))
	}
}

// A file from before link-stitched blocks has no spine lining, no tape and none
// of the finishing on its shelf, and says nothing of them: it opens as it was,
// with the program's own, and nothing of it is unknown.
func TestFilesFromBeforeLinkedBlocksOpen(t *testing.T) {
	since := []stock.Kind{stock.Mull, stock.Tape, stock.Ribbon, stock.Elastic}
	newKey := regexp.MustCompile(`"(structure|sewing\.tape|endpaper|mull|covering\.(side|overlap)|ribbon|elastic|label|bands)`)
	newKind := regexp.MustCompile(`"kind":"(mull|tape|ribbon|elastic)"`)
	demo, old := Demo(), []string(nil)
	demo.Batch = batch.Batch{}
	for _, line := range strings.Split(string(encoded(t, demo)), "\n") {
		if !newKey.MatchString(line) && !newKind.MatchString(line) {
			old = append(old, line)
		}
	}
	p, err := Decode([]byte(strings.Join(old, "\n")), "old.json")
	if err != nil {
		t.Fatal(err)
	}
	if p.Decisions != Demo().Decisions || len(p.Book().Resolved.Unknown) > 0 {
		t.Errorf("it opens as another book; unknown: %q", p.Book().Resolved.Unknown)
	}
	for _, kind := range since {
		if len(p.Shelf.OfKind(kind)) != 1 {
			t.Errorf("%d of kind %s", len(p.Shelf.OfKind(kind)), kind)
		}
	}
	if b := p.Book(); b.ToCut != Demo().Book().ToCut {
		t.Errorf("it is cut as %+v", b.ToCut)
	}
}
