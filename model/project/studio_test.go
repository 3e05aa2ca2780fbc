package project

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

func someTools() Studio {
	return Studio{Tools: check.Tools{
		LongestCut: measure.MM(430), Throat: measure.Inches(6.5),
		Press: check.Plate{Width: measure.MM(300), Height: measure.MM(400)},
		Mat:   check.Plate{Width: measure.MM(450), Height: measure.MM(600)},
	}, Printing: somePrinting()}.Keep(strip()).WithLimit("squareLeast", 3.5, true).WithLimit("sheetUsed", 70, true)
}

func somePrinting() Printing {
	return Printing{
		Page: "letter", Hand: "left", DPI: 600, Students: 9,
		Bars: check.Printer{Plain: check.Bars{Across: measure.MM(97.05), Down: measure.MM(101)}, Again: check.Bars{Across: measure.MM(99.8)}},
	}
}

// strip is the demo's white offcut, 154 × 694 usable, grain across it.
func strip() sheets.Offcut {
	return sheets.Offcut{Material: "Ebbwhite Drawing 170", Length: measure.MM(154), Width: measure.MM(694), Grain: stock.Long, Times: 42}
}

func TestTheStudioIsKept(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "own", "grainwise")
	file := StudioIn(folder)
	if s, err := file.Read(); err != nil || !s.Equal(Studio{}) {
		t.Errorf("before the first save: %v, %v", s, err)
	}
	for _, s := range []Studio{someTools(), {}, {Tools: check.Tools{Throat: measure.MM(160)}}} {
		if err := file.Write(s); err != nil {
			t.Fatal(err)
		}
		if got, err := StudioIn(folder).Read(); err != nil || !got.Equal(s) {
			t.Errorf("came back as %+v: %v", got, err)
		}
	}
	data, err := os.ReadFile(filepath.Join(folder, "studio.json"))
	if want := "{\n  \"format\": \"grainwise-studio\",\n  \"version\": 1,\n  \"tools\": {\n    \"machineThroat\": 160\n  }\n}\n"; err != nil || string(data) != want {
		t.Errorf("the file is %s", data)
	}
}

func TestAnyStudioComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s Studio
		for _, tool := range check.ToolTable() {
			*tool.At(&s.Tools) = measure.Length(rapid.Int64Range(int64(tool.Least), int64(mostTool)).Draw(t, tool.Key))
		}
		bar := func(what string) measure.Length {
			return measure.Length(rapid.Int64Range(int64(check.LeastBar), int64(check.MostBar)).Draw(t, what))
		}
		s.Printing = Printing{
			Page: rapid.SampledFrom(append(Pages(), "")).Draw(t, "page"), Hand: rapid.SampledFrom(append(Hands(), "")).Draw(t, "hand"),
			DPI: rapid.IntRange(LeastDPI, MostDPI).Draw(t, "dpi"), Students: rapid.IntRange(0, MostStudents).Draw(t, "students"),
			Bars: check.Printer{Plain: check.Bars{Across: bar("across"), Down: bar("down")}, Again: check.Bars{Down: bar("again")}},
		}
		for _, limit := range check.LimitTable() {
			v := rapid.Float64Range(limit.Least, limit.Most).Draw(t, limit.Key)
			if s = s.WithLimit(limit.Key, v, rapid.Bool().Draw(t, limit.Key+"?")); !limit.Allows(limit.Of(s.Limits)) {
				t.Fatalf("%s is %v", limit.Key, limit.Of(s.Limits))
			}
		}
		for range rapid.IntRange(0, 4).Draw(t, "offcuts") {
			size := func(what string) measure.Length {
				return measure.Length(rapid.Int64Range(int64(measure.Millimetre), int64(mostTool)).Draw(t, what))
			}
			s = s.Keep(sheets.Offcut{
				Material: rapid.StringMatching(`[A-Za-z"\\\\ ]{1,20}[a-z]`).Draw(t, "material"), Length: size("length"), Width: size("width"),
				Grain: rapid.SampledFrom(stock.Grains()).Draw(t, "grain"), Times: rapid.Int64Range(1, mostOfOneKind).Draw(t, "count"),
			})
		}
		again, problem := decodeStudio(s.encode(), "studio.json")
		if problem != nil || !again.Equal(s) {
			t.Fatalf("%+v: %v", again, problem)
		}
	})
}

// Each damage beside what is said of it; the file is kept under another name,
// and what is saved then does not touch it.
func TestADamagedStudioIsSetAside(t *testing.T) {
	good := string(someTools().encode())
	for _, c := range []struct{ from, to, says string }{
		{`430`, `"430"`, `line 5, column 19, longestCut: "430": expected 10 to 5000 mm`},
		{`430`, `4`, "longestCut: expected 10 to 5000 mm"},
		{`430`, `-430`, "longestCut: expected 10 to 5000 mm"},
		{`430`, `9e3`, "longestCut: 9e3: expected 10 to 5000 mm"},
		{`"longestCut"`, `"longestcut"`, "did you mean longestCut?"},
		{`"squareLeast": 3.5`, `"squareLeast": "3.5"`, `squareLeast: "3.5": expected 0 to 20 mm`},
		{`"squareLeast": 3.5`, `"squareLeast": null`, `squareLeast: null: expected 0 to 20 mm`},
		{`"sheetUsed": 70`, `"sheetUsed": 101`, `sheetUsed: 101: expected 0 to 100 %`},
		{`"sheetUsed"`, `"sheetused"`, "did you mean sheetUsed?"},
		{`"limits": {`, `"limits": [`, "studio.json"},
		{`"matHeight": 600,`, ``, "matHeight: expected both sides"},
		{`"tools": {`, `"tools": [`, "studio.json"},
		{`"letter"`, `"foolscap"`, `page: "foolscap": expected one of: a4, letter`},
		{`"left"`, `7`, `hand: 7: expected one of: right, left`},
		{`97.05`, `79.9`, "barAcross: 79.9: expected what a bar of 100 mm measured, 80 to 120 mm"},
		{`99.8`, `"99.8"`, `correctedAcross: "99.8": expected what a bar`},
		{`"dpi": 600`, `"dpi": 1201`, "dpi: 1201: expected a whole number from 30 to 1200"},
		{`"students": 9`, `"students": 0`, "students: 0: expected a whole number from 1 to 200"},
		{`"students"`, `"student"`, "did you mean students?"},
		{good, good[:len(good)/2], "ends too early"},
		{good, "", "empty"},
		{good, `{"format":"grainwise-project","version":1}`, "grainwise-studio"},
	} {
		folder := t.TempDir()
		path := filepath.Join(folder, "studio.json")
		bad := strings.Replace(good, c.from, c.to, 1)
		if bad == good {
			t.Fatalf("%s is not in the file", c.from)
		}
		if err := os.WriteFile(path, []byte(bad), 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := OpenStudio(path); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: opened: %v", c.to, err)
		}
		s, err := StudioIn(folder).Read()
		if err == nil || !s.Equal(Studio{}) || !strings.Contains(err.Error(), c.says) || !strings.Contains(err.Error(), "studio.damaged-1.json") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", c.to, err)
		}
		if err := StudioIn(folder).Write(someTools()); err != nil {
			t.Errorf("%s: not saved anew: %v", c.to, err)
		}
		if kept, err := os.ReadFile(filepath.Join(folder, "studio.damaged-1.json")); err != nil || string(kept) != bad {
			t.Errorf("%s: not kept: %v", c.to, err)
		}
	}
}

func TestANewerStudioStays(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "studio.json")
	newer := strings.Replace(string(someTools().encode()), `"version": 1`, `"version": 2`, 1)
	if err := os.WriteFile(path, []byte(newer), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := StudioIn(folder).Read(); err == nil || !strings.Contains(err.Error(), "newer version") {
		t.Errorf("read: %v", err)
	}
	if err := StudioIn(folder).Write(someTools()); err == nil {
		t.Error("saved over a newer one")
	}
	if kept, err := os.ReadFile(path); err != nil || string(kept) != newer {
		t.Errorf("not left as it was: %v", err)
	}
}

func TestParseTool(t *testing.T) {
	for text, want := range map[string]measure.Length{"430": measure.MM(430), " 17 in": measure.Inches(17), "43 cm": measure.MM(430), "": 0, "  ": 0} {
		if got, err := ParseTool(text, check.ToolTable()[0], measure.Metric); err != nil || got != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"wide", "-5", "9", "5001", "0"} {
		if _, err := ParseTool(text, check.ToolTable()[0], measure.Metric); err == nil || err.Error() != "expected 10 to 5000 mm" {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// A studio's file of before there was printing opens, and has the defaults.
func TestPrintingHasDefaults(t *testing.T) {
	s, problem := decodeStudio([]byte(`{"format":"grainwise-studio","version":1,"tools":{"machineThroat":160}}`), "studio.json")
	p := s.Printing
	if problem != nil || p.PageIn(measure.Metric) != "a4" || p.PageIn(measure.Imperial) != "letter" || p.Left() || p.Resolution() != 300 || p.Class() != 6 {
		t.Errorf("%+v, %v", p, problem)
	}
	p = somePrinting()
	if p.PageIn(measure.Metric) != "letter" || !p.Left() || p.Resolution() != 600 || p.Class() != 9 {
		t.Errorf("%+v", p)
	}
}

func TestParseBar(t *testing.T) {
	for text, want := range map[string]measure.Length{"": 0, "  ": 0, "99.2": measure.MM(99.2), "9.92 cm": measure.MM(99.2), "4 in": measure.Inches(4)} {
		if got, err := ParseBar(text, measure.Metric); err != nil || got != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	// Both bars are on one page, printed at one scale: 4.04 to 4 is 101 to 100.
	for text, want := range map[string]measure.Length{"": 0, "4": measure.MM(100), "4.04 in": measure.MM(101), "101 mm": measure.MM(101)} {
		if got, err := ParseBar(text, measure.Imperial); err != nil || got != want {
			t.Errorf("inches, %q: %v, %v", text, got, err)
		}
	}
	if _, err := ParseBar("5", measure.Imperial); err == nil || !strings.Contains(err.Error(), "3.2 to 4.8 in") {
		t.Errorf("5 in: %v", err)
	}
	for text, says := range map[string]string{"long": "80 to 120 mm", "79.9": "80 to 120 mm", "121": "80 to 120 mm", "0": "80 to 120 mm"} {
		if _, err := ParseBar(text, measure.Metric); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v", text, err)
		}
	}
}
