package stock

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// DecodeCSV reads materials from a table after RFC 4180: UTF-8 with or without a
// mark at its beginning, commas, semicolons or tabs between the cells, a header
// that names [Columns] in any order, with or without a unit in brackets. A bare
// number has the header's unit, else the column's; a cell may say its own. All
// of it is read or nothing: a [*Fault] names line and column. An apostrophe
// before what would start a formula is taken away again.
func DecodeCSV(data []byte, file string) ([]Material, error) {
	data, err := utf8Text(data)
	if err != nil {
		return nil, within(file, err)
	}
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma = separator(data)
	t := &csvTable{reader: r}
	materials, err := t.materials()
	if err != nil {
		return nil, within(file, err)
	}
	return materials, nil
}

// utf8Text takes the mark away and refuses what is no UTF-8 where it begins.
func utf8Text(data []byte) ([]byte, error) {
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	at := 0
	for line, column := 1, 1; at < len(data); {
		r, size := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && size == 1 || r == 0 {
			return nil, &Fault{csvPlace(line, 0, words.Say("stock.csv.character", words.With{"at": column})), words.Say("stock.csv.notUTF8")}
		}
		at, column = at+size, column+1
		if r == '\n' {
			line, column = line+1, 1
		}
	}
	return data, nil
}

// separator is the sign between cells that stands most often in the header,
// outside of quotes.
func separator(data []byte) rune {
	counts, quoted := map[rune]int{}, false
	for _, r := range string(data) {
		if r == '"' {
			quoted = !quoted
		}
		if r == '\n' && !quoted {
			break
		}
		if !quoted {
			counts[r]++
		}
	}
	best := ','
	for _, r := range []rune{';', '\t'} {
		if counts[r] > counts[best] {
			best = r
		}
	}
	return best
}

// csvPlace names a line, and a column by its head or by its number.
func csvPlace(line, number int, head string) string {
	with := words.With{"line": line, "column": head, "number": number}
	switch {
	case head == "":
		return words.Say("stock.csv.line", with)
	case number == 0:
		return words.Say("stock.csv.lineAnd", with)
	}
	return words.Say("stock.csv.place", with)
}

// csvTable is a table while it is read.
type csvTable struct {
	reader  *csv.Reader
	columns []csvColumn
}

// csvColumn is a column as the header has it.
type csvColumn struct {
	Column
	head string
	bare measure.System
}

func (t *csvTable) materials() ([]Material, error) {
	if err := t.header(); err != nil {
		return nil, err
	}
	var all []Material
	seen := map[string]bool{}
	for {
		record, err := t.reader.Read()
		if errors.Is(err, io.EOF) {
			return all, nil
		}
		if err != nil {
			return nil, t.form(err)
		}
		if blank(record) {
			continue
		}
		m, err := t.material(record)
		if err != nil {
			return nil, err
		}
		key := string(m.Kind) + "\x00" + m.Name
		if seen[key] {
			return nil, t.blame("name", fault("name", "stock.want.oneName", nil))
		}
		seen[key] = true
		all = append(all, m)
	}
}

func blank(record []string) bool {
	return !slices.ContainsFunc(record, func(cell string) bool { return strings.TrimSpace(cell) != "" })
}

// form says what is wrong with a record's form. A wrong count of cells is the
// line's; a stray quote has a place in it.
func (t *csvTable) form(err error) error {
	var wrong *csv.ParseError
	if !errors.As(err, &wrong) {
		return err
	}
	if errors.Is(err, csv.ErrFieldCount) {
		return &Fault{csvPlace(wrong.Line, 0, ""), words.Say("stock.csv.count", words.With{"want": len(t.columns)})}
	}
	return &Fault{csvPlace(wrong.Line, 0, words.Say("stock.csv.character", words.With{"at": wrong.Column})), words.Say("stock.csv.quote")}
}

func (t *csvTable) header() error {
	record, err := t.reader.Read()
	switch {
	case errors.Is(err, io.EOF):
		return &Fault{csvPlace(1, 0, ""), words.Say("stock.csv.empty")}
	case err != nil:
		return t.form(err)
	}
	for i, head := range record {
		c, err := columnOf(head)
		if err != nil {
			return &Fault{csvPlace(1, i+1, head), err.Error()}
		}
		if slices.ContainsFunc(t.columns, func(other csvColumn) bool { return other.Name == c.Name }) {
			return &Fault{csvPlace(1, i+1, head), words.Say("stock.csv.twice")}
		}
		t.columns = append(t.columns, c)
	}
	for _, needed := range Columns()[:2] {
		if !slices.ContainsFunc(t.columns, func(c csvColumn) bool { return c.Name == needed.Name }) {
			return &Fault{csvPlace(1, 0, needed.Name), words.Say("stock.csv.lacks")}
		}
	}
	return nil
}

// columnOf reads a head: a column's name, spaces and capitals aside, and its unit.
func columnOf(head string) (csvColumn, error) {
	name, unit, _ := strings.Cut(strings.TrimSuffix(strings.TrimSpace(head), ")"), "(")
	unit = strings.TrimSpace(unit)
	var names []string
	for _, c := range Columns() {
		names = append(names, c.Name)
		if !strings.EqualFold(c.Name, strings.ReplaceAll(name, " ", "")) {
			continue
		}
		read := csvColumn{Column: c, head: head}
		switch {
		case unit == "" || unit == c.Unit:
		case c.Unit == measure.Metric.Label() && unit == measure.Imperial.Label():
			read.bare = measure.Imperial
		default:
			return csvColumn{}, errors.New(words.Say("stock.csv.unit", words.With{"found": unit, "want": orNone(c)}))
		}
		return read, nil
	}
	return csvColumn{}, errors.New(words.Say("stock.csv.unknown", words.With{"names": strings.Join(names, ", ")}))
}

func orNone(c Column) string {
	switch c.Unit {
	case "":
		return words.Say("stock.csv.noUnit")
	case measure.Metric.Label():
		return measure.Metric.Label() + ", " + measure.Imperial.Label()
	}
	return c.Unit
}

// material is what a record says, in the table's own order of columns: what one
// fact follows from comes before it.
func (t *csvTable) material(record []string) (Material, error) {
	var m Material
	for _, c := range Columns() {
		i := slices.IndexFunc(t.columns, func(read csvColumn) bool { return read.Name == c.Name })
		if i < 0 || i >= len(record) || strings.TrimSpace(record[i]) == "" {
			continue
		}
		if err := c.set(&m, bared(record[i]), t.columns[i].bare); err != nil {
			return m, t.blame(c.Name, err)
		}
	}
	if m.Grain == "" && m.Kind.InSheets() {
		m.Grain = Untested
	}
	if err := m.Validate(); err != nil {
		var wrong *Fault
		errors.As(err, &wrong)
		return m, t.blame(ColumnAt(wrong.Place), err)
	}
	return m, nil
}

// ColumnAt is the name of the column that the place of a [Fault] speaks of:
// "sheet.width" is sheetWidth.
func ColumnAt(place string) string {
	switch place {
	case "sheet":
		return "sheetLength"
	case "price.amount":
		return "price"
	case "price.on":
		return "priceDate"
	case "adhesive":
		return "wetSpread"
	case "pounds.basis", "pounds.weight":
		return "pounds"
	}
	first, second, two := strings.Cut(place, ".")
	switch {
	case !two:
		return first
	case first == "adhesive":
		return second
	}
	return first + strings.ToUpper(second[:1]) + second[1:]
}

// blame puts an error at its column of the record read last.
func (t *csvTable) blame(column string, err error) error {
	text := err.Error()
	var wrong *Fault
	if errors.As(err, &wrong) {
		text = wrong.Text
	}
	for i, c := range t.columns {
		if c.Name == column {
			line, _ := t.reader.FieldPos(i)
			return &Fault{csvPlace(line, i+1, c.head), text}
		}
	}
	line, _ := t.reader.FieldPos(0)
	return &Fault{csvPlace(line, 0, column), text}
}

// bared takes away the apostrophes that keep a text from starting a formula: at
// its beginning, and after what may end a cell.
func bared(text string) string {
	var b strings.Builder
	runes, start := []rune(text), true
	for i, r := range runes {
		if start && r == '\'' && i+1 < len(runes) && startsFormula(runes[i+1]) {
			continue
		}
		start = r == ';' || r == '\t' || r == '\n' || start && !startsFormula(r) && (unicode.IsSpace(r) || unicode.Is(unicode.Cf, r))
		b.WriteRune(r)
	}
	return b.String()
}

func startsFormula(r rune) bool { return strings.ContainsRune("=+-@\t\r\n＝＋－＠", r) }
