package table

import (
	"bytes"
	"encoding/json"
	"os/exec"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/model/stock/stocktest"
)

func materialsCSV(t interface{ Fatal(...any) }, all []stock.Material) []byte {
	var b bytes.Buffer
	if err := CSV(&b, Materials(all)); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// What is exported is read back as the same materials, colours to the last
// figure and lengths to the nanometre.
func TestMaterialsComeBackFromCSV(t *testing.T) {
	all := stock.Default().Materials
	back, err := stock.DecodeCSV(materialsCSV(t, all), "materials.csv")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(all, back); diff != "" {
		t.Error(diff)
	}
	rapid.Check(t, func(t *rapid.T) {
		all := stocktest.Shelf().Draw(t, "shelf").Materials
		back, err := stock.DecodeCSV(materialsCSV(t, all), "materials.csv")
		if err != nil {
			t.Fatalf("%v in %s", err, materialsCSV(t, all))
		}
		if diff := cmp.Diff(all, back); diff != "" {
			t.Fatal(diff)
		}
	})
}

// Another reader, Python's csv module (RFC 4180 after its own documentation),
// finds the same cells, and none that starts a formula.
func TestAnotherReaderReadsTheMaterials(t *testing.T) {
	python, err := exec.LookPath("python3")
	if err != nil {
		t.Skip("no python3 here to read the file")
	}
	all := stock.Default().Materials
	odd := all[0].Clone()
	odd.Name, odd.Notes, odd.Supplier = `Odd "quoted", with; commas`, "=1+1\nand a second line", "@SUM(A1)"
	all = append(all, odd)
	reader := exec.Command(python, "-c", "import csv,io,json,sys\n"+
		"text=io.TextIOWrapper(sys.stdin.buffer,encoding='utf-8-sig',newline='')\nprint(json.dumps(list(csv.reader(text,strict=True))))")
	reader.Stdin = bytes.NewReader(materialsCSV(t, all))
	out, err := reader.Output()
	if err != nil {
		t.Fatal(err)
	}
	var rows [][]string
	if err := json.Unmarshal(out, &rows); err != nil {
		t.Fatal(err)
	}
	if len(rows) != len(all)+1 {
		t.Fatalf("%d rows, want %d", len(rows), len(all)+1)
	}
	columns := stock.Columns()
	for i, row := range rows[1:] {
		if len(row) != len(columns) {
			t.Fatalf("row %d has %d cells", i, len(row))
		}
		for j, cell := range row {
			if got := strings.ReplaceAll(strings.TrimPrefix(cell, "'"), "\r\n", "\n"); got != columns[j].Text(all[i]) {
				t.Errorf("%s of %s: %q, want %q", columns[j].Name, all[i].Name, cell, columns[j].Text(all[i]))
			}
			if cell != "" && strings.ContainsRune("=+-@", rune(cell[0])) {
				t.Errorf("a formula: %q", cell)
			}
		}
	}
}

func TestCSVOfOtherHands(t *testing.T) {
	text := "Name;KIND;sheet length (in);Sheet Width(in);thickness;grammage;price;colour\r\n" +
		"Rand;paper;36;24;20 leaves = 4,4 mm;80 lb drawing;1,35 EUR;#FBF7EC\r\n"
	for _, mark := range []string{"", bom} {
		all, err := stock.DecodeCSV([]byte(mark+text), "x.csv")
		if err != nil || len(all) != 1 {
			t.Fatal(all, err)
		}
		m := all[0]
		if m.Sheet.Length != 36*measure.Inch || m.Thickness != measure.MM(0.22) || m.Stack.Count != 20 ||
			m.Grain != stock.Untested || m.Price.Amount.Minor != 135 || m.Price.Per != stock.PerSheet || m.Colour != "#FBF7EC" {
			t.Errorf("%+v", m)
		}
	}
}
