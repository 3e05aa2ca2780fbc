package table

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"encoding/xml"
	"io"
	"math"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
	"pgregory.net/rapid"
)

// nasty are texts that spreadsheets take for formulas, cells or markup.
var nasty = []string{"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\u00a0=1", "\u200b=1", "＝1", "a;=1", "a\n=1", "\"=1", "'=1", "=cmd|' /C calc'!A0",
	"a,b", "_x003D_1", "_x005F_x003D_1", "_x005F_", "_x", "<f>1</f>", "&amp;", "\x00", "", " ", "\xff", "007", "TRUE", "2026-03-01", "1e5", "#REF!"}

func texts() *rapid.Generator[string] {
	return rapid.OneOf(rapid.SampledFrom(nasty), rapid.String(), rapid.Map(rapid.SliceOfN(rapid.SampledFrom(nasty), 1, 3), func(s []string) string { return strings.Join(s, "") }))
}

func tableOf(t *rapid.T) Table {
	line := func(label string) []string { return rapid.SliceOfN(texts(), 3, 3).Draw(t, label) }
	table := Table{Name: "Parts", Columns: line("columns"), Notes: line("notes")}
	for range rapid.IntRange(0, 4).Draw(t, "rows") {
		var row []Cell
		for _, s := range line("row") {
			row = append(row, Text(s))
		}
		table.Rows = append(table.Rows, row)
	}
	table.Totals = [][]Cell{{Text(texts().Draw(t, "total")), Number(rapid.Float64Range(-1e9, 1e9).Draw(t, "sum"), 2, 2)}}
	return table
}

// wanted is every text of a table, in the order of its file.
func (t Table) wanted() [][]string {
	var all [][]string
	add := func(cells ...Cell) {
		row := make([]string, len(t.Columns))
		for i, c := range cells {
			row[i] = c.text
		}
		all = append(all, row)
	}
	var header []Cell
	for _, c := range t.Columns {
		header = append(header, Text(c))
	}
	add(header...)
	for _, row := range append(append([][]Cell{}, t.Rows...), t.Totals...) {
		add(row...)
	}
	for _, note := range t.Notes {
		add(Text(note))
	}
	return all
}

// OWASP Foundation, "CSV Injection": no cell may start with = + - @, tab or
// carriage return, nor may one that a separator starts; ours may not do so after
// spaces either. An apostrophe is all that may be added.
func TestCSVHoldsEveryTextAndNoFormula(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := tableOf(t)
		var b bytes.Buffer
		if err := CSV(&b, table); err != nil {
			t.Fatal(err)
		}
		records := readCSV(t, b.Bytes())
		want := table.wanted()
		if len(records) != len(want) {
			t.Fatalf("%d records, want %d", len(records), len(want))
		}
		for i, record := range records {
			for k, got := range record {
				if i == len(table.Rows)+1 && k == 1 {
					continue // the total is a number
				}
				checkHarmless(t, got)
				if strings.ReplaceAll(got, "'", "") != strings.ReplaceAll(want[i][k], "'", "") {
					t.Fatalf("%q became %q", want[i][k], got)
				}
				if !strings.ContainsAny(want[i][k], "=+-@\t\r\n＝＋－＠") && got != want[i][k] {
					t.Fatalf("%q holds no sign of a formula and became %q", want[i][k], got)
				}
			}
		}
	})
}

// checkHarmless cuts at separators, drops what is not seen, looks at the first
// sign.
func checkHarmless(t *rapid.T, cell string) {
	for _, part := range strings.FieldsFunc(cell, func(r rune) bool { return r == ';' || r == '\t' || r == '\n' || r == '\r' }) {
		seen := strings.TrimLeftFunc(part, blank)
		if seen != "" && strings.ContainsRune("=+-@＝＋－＠", []rune(seen)[0]) {
			t.Fatalf("%q is a formula", cell)
		}
	}
	if cell != "" && strings.ContainsRune("\t\r\n", rune(cell[0])) {
		t.Fatalf("%q starts with a control sign", cell)
	}
}

func readCSV(t interface{ Fatal(...any) }, data []byte) [][]string {
	text, marked := strings.CutPrefix(string(data), "\uFEFF")
	if !marked {
		t.Fatal("no mark of UTF-8")
	}
	if strings.Contains(strings.ReplaceAll(text, "\r\n", ""), "\n") {
		t.Fatal("a line ends with a line feed alone (RFC 4180, 2.1)")
	}
	records, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return records
}

// The same for XLSX, where nothing at all is added.
func TestXLSXHoldsEveryTextAndNoFormula(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		table := tableOf(t)
		var b bytes.Buffer
		if err := XLSX(&b, table, Table{Name: "Shopping", Columns: []string{"a"}}); err != nil {
			t.Fatal(err)
		}
		noFormulas(t, b.Bytes())
		f, err := excelize.OpenReader(&b)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		for i, row := range table.wanted() {
			for k, want := range row {
				if i == len(table.Rows)+1 && k == 1 {
					continue
				}
				at, _ := excelize.CoordinatesToCellName(k+1, i+1)
				got, err := f.GetCellValue("Parts", at)
				if err != nil || got != want {
					t.Fatalf("%s: %q became %q: %v", at, want, got, err)
				}
				if kind, _ := f.GetCellType("Parts", at); want != "" && kind != excelize.CellTypeSharedString && kind != excelize.CellTypeInlineString {
					t.Fatalf("%s %q is of type %v, no string", at, want, kind)
				}
				if formula, _ := f.GetCellFormula("Parts", at); formula != "" {
					t.Fatalf("%s: formula %q", at, formula)
				}
			}
		}
	})
}

// noFormulas reads the sheets as the XML they are (ISO/IEC 29500-1, 18.3.1.40: a
// formula is an element f).
func noFormulas(t interface{ Fatal(...any) }, data []byte) {
	archive, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, part := range archive.File {
		if !strings.HasPrefix(part.Name, "xl/worksheets/sheet") {
			continue
		}
		found++
		r, err := part.Open()
		if err != nil {
			t.Fatal(err)
		}
		for d := xml.NewDecoder(r); ; {
			token, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
			if start, is := token.(xml.StartElement); is && start.Name.Local == "f" {
				t.Fatal("a formula in ", part.Name)
			}
		}
	}
	if found != 2 {
		t.Fatal("sheets: ", found)
	}
}

// Numbers are numbers with a format, the header stands still, columns hold what
// is in them.
func TestXLSXNumbersAndHeader(t *testing.T) {
	table := Table{Name: "Parts", Columns: []string{"No.", "A rather long heading"}, Rows: [][]Cell{{Whole(12), Number(410.56, 1, 3)}, {Text("12"), Number(210, 1, 3)}}}
	var b bytes.Buffer
	if err := XLSX(&b, table); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&b)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	for at, want := range map[string]string{"A2": "12", "B2": "410.56", "B3": "210"} {
		raw, _ := f.GetCellValue("Parts", at, excelize.Options{RawCellValue: true})
		kind, _ := f.GetCellType("Parts", at)
		if raw != want || kind != excelize.CellTypeUnset && kind != excelize.CellTypeNumber {
			t.Errorf("%s is %q of type %v, want the number %s", at, raw, kind, want)
		}
	}
	if kind, _ := f.GetCellType("Parts", "A3"); kind != excelize.CellTypeSharedString {
		t.Errorf("the text 12 is of type %v", kind)
	}
	if shown, _ := f.GetCellValue("Parts", "B3"); shown != "210.0" {
		t.Errorf("210 shows as %q", shown)
	}
	if p, err := f.GetPanes("Parts"); err != nil || !p.Freeze || p.YSplit != 1 || p.XSplit != 0 {
		t.Errorf("panes %+v, %v", p, err)
	}
	if w, _ := f.GetColWidth("Parts", "B"); w < float64(len(table.Columns[1])) {
		t.Errorf("the heading of %d letters has a width of %g", len(table.Columns[1]), w)
	}
	if p, _ := f.GetDocProps(); p.Creator != "Grainwise" || p.LastModifiedBy != "Grainwise" {
		t.Errorf("made by %q, changed by %q", p.Creator, p.LastModifiedBy)
	}
}

func TestNumbersInCSV(t *testing.T) {
	for _, c := range []struct {
		cell Cell
		want string
	}{
		{Whole(576), "576"}, {Number(210, 1, 3), "210.0"}, {Number(410.56, 1, 3), "410.56"}, {Number(8.265625, 1, 6), "8.265625"},
		{Number(12.3, 2, 2), "12.30"}, {Number(-0.5, 1, 1), "-0.5"}, {Number(1e6, 0, 0), "1000000"}, {Number(math.NaN(), 1, 1), ""}, {Number(math.Inf(1), 1, 1), ""},
	} {
		if got := c.cell.csv(); got != c.want {
			t.Errorf("%+v is %q, want %q", c.cell, got, c.want)
		}
	}
}

func TestHarmless(t *testing.T) {
	for text, want := range map[string]string{
		"Kelp": "Kelp", "=1": "'=1", "  -1": "  '-1", "\t1": "'\t1", "a-b": "a-b", "½ × 3": "½ × 3", "a; =1": "a; '=1", "Nettleby-Moss, +1": "Nettleby-Moss, +1", "'=1": "'=1",
	} {
		if got := harmless(text); got != want {
			t.Errorf("%q became %q, want %q", text, got, want)
		}
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func TestAFullDiskIsAnError(t *testing.T) {
	table := Table{Name: "Parts", Columns: []string{"a"}}
	if CSV(full{}, table) == nil || XLSX(full{}, table) == nil {
		t.Error("a full disk was not noticed")
	}
}
