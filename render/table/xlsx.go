package table

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/xuri/excelize/v2"
)

// XLSX writes a workbook (ISO/IEC 29500), one sheet a table: the header stands
// still and is printed on every page, numbers have a format, texts are strings.
func XLSX(w io.Writer, tables ...Table) error {
	book := &workbook{File: excelize.NewFile(), styles: map[look]int{}}
	defer book.Close()
	for i, t := range tables {
		if err := book.add(i, t); err != nil {
			return fmt.Errorf("%s: %w", t.Name, err)
		}
	}
	if err := book.named(tables); err != nil {
		return err
	}
	return book.Write(w)
}

// workbook is the file being made, with the styles it has so far.
type workbook struct {
	*excelize.File
	styles map[look]int
}

// look is how a cell stands: bold or not, and its number's format.
type look struct {
	bold   bool
	format string
}

// named says what the file is, in place of the library's own words.
func (b *workbook) named(tables []Table) error {
	names := make([]string, len(tables))
	for i, t := range tables {
		names[i] = t.Name
	}
	if err := b.SetAppProps(&excelize.AppProperties{Application: "Grainwise"}); err != nil {
		return err
	}
	return b.SetDocProps(&excelize.DocProperties{Title: strings.Join(names, ", "), Creator: "Grainwise", LastModifiedBy: "Grainwise"})
}

// firstSheet is the sheet that a new workbook has.
const firstSheet = "Sheet1"

func (b *workbook) add(i int, t Table) error {
	if i == 0 {
		if err := b.SetSheetName(firstSheet, t.Name); err != nil {
			return err
		}
	} else if _, err := b.NewSheet(t.Name); err != nil {
		return err
	}
	if err := b.fill(t); err != nil {
		return err
	}
	if err := b.widen(t); err != nil {
		return err
	}
	return b.lay(t)
}

// fill writes header, rows, totals and notes, one below the other.
func (b *workbook) fill(t Table) error {
	header := make([]Cell, len(t.Columns))
	for i, c := range t.Columns {
		header[i] = Text(c)
	}
	rows, bold := [][]Cell{header}, []bool{true}
	for _, row := range t.Rows {
		rows, bold = append(rows, row), append(bold, false)
	}
	for _, row := range t.Totals {
		rows, bold = append(rows, row), append(bold, true)
	}
	for _, note := range t.Notes {
		rows, bold = append(rows, []Cell{Text(note)}), append(bold, false)
	}
	for i, row := range rows {
		for k, c := range row {
			if err := b.put(t.Name, k+1, i+1, c, bold[i]); err != nil {
				return err
			}
		}
	}
	return nil
}

// put writes one cell.
func (b *workbook) put(sheet string, column, row int, c Cell, bold bool) error {
	at, err := excelize.CoordinatesToCellName(column, row)
	if err != nil {
		return err
	}
	switch {
	case c.numeric:
		err = b.SetCellFloat(sheet, at, c.rounded(), -1, 64)
	case c.text != "":
		err = b.putText(sheet, at, c.text)
	default:
		return nil
	}
	if err != nil {
		return err
	}
	style, err := b.style(look{bold, c.format()})
	if err != nil {
		return err
	}
	return b.SetCellStyle(sheet, at, at, style)
}

// putText writes a string. The library (2.11.1) escapes what stands for a sign,
// as _x003D_ does for = (ISO/IEC 29500-1, 22.9.2.19), in runs of text alone.
func (b *workbook) putText(sheet, at, text string) error {
	if strings.Contains(text, "_x") {
		return b.SetCellRichText(sheet, at, []excelize.RichTextRun{{Text: text}})
	}
	return b.SetCellStr(sheet, at, text)
}

// rounded is the number to the decimals shown.
func (c Cell) rounded() float64 {
	scale := math.Pow10(c.most)
	if r := math.Round(c.number*scale) / scale; !math.IsInf(r, 0) {
		return r
	}
	return c.number
}

// format is a number's code: "0", "0.00", "0.0##"; text is "@".
func (c Cell) format() string {
	switch {
	case !c.numeric:
		return "@"
	case c.most == 0:
		return "0"
	}
	return "0." + strings.Repeat("0", c.least) + strings.Repeat("#", c.most-c.least)
}

func (b *workbook) style(l look) (int, error) {
	if id, ok := b.styles[l]; ok {
		return id, nil
	}
	id, err := b.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: l.bold}, CustomNumFmt: &l.format})
	b.styles[l] = id
	return id, err
}

// The narrowest and the widest column, in widths of a figure.
const (
	narrowest = 6
	widest    = 60
)

// widen makes each column as wide as what stands in it; notes run on.
func (b *workbook) widen(t Table) error {
	for k := range t.Columns {
		width := utf8.RuneCountInString(t.Columns[k])
		for _, rows := range [][][]Cell{t.Rows, t.Totals} {
			for _, row := range rows {
				if k < len(row) {
					width = max(width, utf8.RuneCountInString(row[k].shown()))
				}
			}
		}
		name, err := excelize.ColumnNumberToName(k + 1)
		if err != nil {
			return err
		}
		if err := b.SetColWidth(t.Name, name, name, float64(min(max(width+2, narrowest), widest))); err != nil {
			return err
		}
	}
	return nil
}

func (c Cell) shown() string {
	if c.numeric {
		return strconv.FormatFloat(c.number, 'f', c.most, 64)
	}
	return c.text
}

// lay holds the header still and fits the columns on paper.
func (b *workbook) lay(t Table) error {
	if err := b.SetPanes(t.Name, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	landscape, wide, high := "landscape", 1, 0
	if err := b.SetPageLayout(t.Name, &excelize.PageLayoutOptions{Orientation: &landscape, FitToWidth: &wide, FitToHeight: &high}); err != nil {
		return err
	}
	fit := true
	if err := b.SetSheetProps(t.Name, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	quoted := "'" + strings.ReplaceAll(t.Name, "'", "''") + "'"
	return b.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", RefersTo: quoted + "!$1:$1", Scope: t.Name})
}
