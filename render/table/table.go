// Package table writes lists as files for spreadsheets: CSV and XLSX. Numbers
// are numbers there, and no text ever becomes a formula.
package table

import (
	"math"
	"strings"
	"unicode/utf8"
)

// Table is one list. Each row has a cell for every column.
type Table struct {
	Name    string // of its sheet: at most 31 letters, none of : \ / ? * [ ]
	Columns []string
	Rows    [][]Cell
	Totals  [][]Cell
	Notes   []string // below, a line each
}

// Cell is a text or a number. The zero Cell is empty.
type Cell struct {
	text        string
	number      float64
	least, most int // decimals shown
	numeric     bool
}

// Text is a cell of text. What files cannot hold of it becomes U+FFFD, and every
// end of line a line feed. XLSX holds the first 32 767 letters of it.
func Text(s string) Cell { return Cell{text: plain(s)} }

// Number is a cell of a number that shows at least and at most so many decimals;
// what is none leaves it empty.
func Number(v float64, least, most int) Cell {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Cell{}
	}
	return Cell{number: v, least: least, most: most, numeric: true}
}

// Whole is a cell of a count.
func Whole(n int64) Cell { return Number(float64(n), 0, 0) }

// lines brings the ends of lines to line feeds.
var lines = strings.NewReplacer("\r\n", "\n", "\r", "\n")

// plain keeps what XML 1.0, section 2.2, calls characters.
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' && r != '\t' && r != '\n' || r == 0xFFFE || r == 0xFFFF {
			return utf8.RuneError
		}
		return r
	}, lines.Replace(s))
}
