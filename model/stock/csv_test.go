package stock

import (
	"errors"
	"strings"
	"testing"
)

func TestCSVNamesLineAndColumn(t *testing.T) {
	const head = "kind,name,sheetLength (mm),sheetWidth (mm),thickness (mm),grammage (g/m²)\n"
	const good = "paper,Good,1000,700,0.2,150\n"
	for text, want := range map[string][]string{
		"":                                {"line 1", "empty"},
		"kind,nam\n":                      {"line 1", "column 2", "“nam”", "sheetLength"},
		"name\n":                          {"line 1", "kind", "lacks"},
		"kind,name,kind\npaper,A,paper\n": {"line 1", "column 3", "twice"},
		"kind,name,thickness (kg)\n":      {"line 1", "column 3", "“thickness (kg)”", "mm, in"},
		"kind,name,colour (mm)\n":         {"line 1", "column 3", "none"},
		head + good + "paper,Bad,1000,700,thick,150\n":        {"line 3", "column 5", "“thickness (mm)”"},
		head + good + "paper,Bad,1000,700,0.2,80 lb\n":        {"line 3", "column 6", "Pounds need"},
		head + good + "paper,Bad,1000,700,0.2,80 lb barrel\n": {"line 3", "column 6"},
		head + good + "cheese,Bad,1000,700,0.2,150\n":         {"line 3", "column 1", "“cheese”"},
		head + good + "paper,Bad,700,1000,0.2,150\n":          {"line 3", "column 4", "long side"},
		head + good + "paper,Bad,1000,700,25,150\n":           {"line 3", "column 5", "20 mm"},
		head + good + "paper,Bad,1000,700,0.2\n":              {"line 3", "6"},
		head + good + "paper,Bad,1000,700,0.2,150,1\n":        {"line 3", "6"},
		head + good + "paper,B\"ad,1000,700,0.2,150\n":        {"line 3", "quot"},
		head + good + "paper,\"Bad,1000,700,0.2,150\n":        {"line", "quot"},
		head + good + good: {"line 3", "column 2", "same name"},
		head + "paper,\"Two\nlines\",1000,700,0.2,150\n":         {"line 2", "column 2", "name"},
		head + good + "paper,Caf\xe9,1000,700,0.2,150\n":         {"line 3", "character 10", "UTF-8"},
		"\xff\xfek\x00i\x00n\x00d\x00":                           {"line 1", "character 1", "UTF-8"},
		"kind,name,price\nadhesive,Glue,5 bananas\n":             {"line 2", "column 3", "12.31 EUR"},
		"kind,name,thickness,priceDate\nthread,T,0.3,1.2.2026\n": {"line 2", "column 4", "2026-03-01"},
		"kind,name\nadhesive,Glue\n":                             {"line 2", "wetSpread"},
	} {
		all, err := DecodeCSV([]byte(text), "x.csv")
		var wrong *Fault
		if !errors.As(err, &wrong) || all != nil {
			t.Errorf("%q gives %d materials, %v", text, len(all), err)
			continue
		}
		for _, part := range append(want, "x.csv") {
			if !strings.Contains(err.Error(), part) {
				t.Errorf("%q: %q lacks %q", text, err, part)
			}
		}
	}
}

func FuzzCSV(f *testing.F) {
	f.Add([]byte("kind,name,sheetLength,sheetWidth,thickness,grammage\npaper,A,1000,700,0.2,150\n"))
	f.Add([]byte("kind;name;thickness (in);number\r\nthread;B;\"20 = 0,4\";25/3\r\n"))
	f.Add([]byte("\xef\xbb\xbfkind\tname\twetSpread\tdryShare\nadhesive\tC\t150\t0.4\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		all, err := DecodeCSV(data, "fuzz")
		if err != nil {
			if all != nil || !strings.Contains(err.Error(), "line ") {
				t.Fatalf("half read, or without a line: %v", err)
			}
			return
		}
		if err := (Shelf{all}).Validate(); err != nil {
			t.Fatal(err)
		}
	})
}
