package table

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode"
)

// bom tells spreadsheets that a file is UTF-8.
const bom = "\uFEFF"

// CSV writes a table after RFC 4180: commas, a point in decimals, a header, every
// record as long. Totals and notes follow the rows.
func CSV(w io.Writer, t Table) error {
	if _, err := io.WriteString(w, bom); err != nil {
		return err
	}
	out := csv.NewWriter(w)
	out.UseCRLF = true
	for _, record := range t.records() {
		if err := out.Write(record); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func (t Table) records() [][]string {
	header := make([]Cell, len(t.Columns))
	for i, c := range t.Columns {
		header[i] = Text(c)
	}
	all := [][]string{t.record(header)}
	for _, row := range t.Rows {
		all = append(all, t.record(row))
	}
	for _, row := range t.Totals {
		all = append(all, t.record(row))
	}
	for _, note := range t.Notes {
		all = append(all, t.record([]Cell{Text(note)}))
	}
	return all
}

// record is a row filled up to the header's length.
func (t Table) record(row []Cell) []string {
	record := make([]string, max(len(t.Columns), len(row)))
	for i, c := range row {
		record[i] = c.csv()
	}
	return record
}

func (c Cell) csv() string {
	if !c.numeric {
		return harmless(c.text)
	}
	s := strconv.FormatFloat(c.number, 'f', c.most, 64)
	whole, part, _ := strings.Cut(s, ".")
	for len(part) > c.least && strings.HasSuffix(part, "0") {
		part = part[:len(part)-1]
	}
	if part == "" {
		return whole
	}
	return whole + "." + part
}

// harmless puts an apostrophe before whatever would start a formula: at the
// start of the text, also after spaces, and after what a spreadsheet of another
// country may take for the end of a cell (OWASP Foundation, "CSV Injection":
// = + - @, tab and carriage return, and cells that separators start).
func harmless(text string) string {
	var b strings.Builder
	start := true
	for _, r := range text {
		if start && startsFormula(r) {
			b.WriteByte('\'')
		}
		start = r == ';' || r == '\t' || r == '\n' || start && !startsFormula(r) && blank(r)
		b.WriteRune(r)
	}
	return b.String()
}

// startsFormula knows the signs and their full-width forms.
func startsFormula(r rune) bool { return strings.ContainsRune("=+-@\t\r\n＝＋－＠", r) }

// blank tells what a spreadsheet may skip before a formula: spaces, and signs
// that nobody sees.
func blank(r rune) bool { return unicode.IsSpace(r) || unicode.Is(unicode.Cf, r) }
