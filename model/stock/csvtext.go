package stock

import (
	"bytes"
	"encoding/csv"
)

// OpenCSV opens a table as [DecodeCSV] reads one: UTF-8 with or without a mark,
// commas, semicolons or tabs between the cells. An error is a [*Fault].
func OpenCSV(data []byte) (*csv.Reader, error) {
	data, err := utf8Text(data)
	if err != nil {
		return nil, err
	}
	r := csv.NewReader(bytes.NewReader(data))
	r.Comma = separator(data)
	return r, nil
}

// CSVPlace names a table's line, and in it a column by its head and number; without
// a head the line alone, without a number no place in the line.
func CSVPlace(line, number int, head string) string { return csvPlace(line, number, head) }

// CSVForm says what is wrong with the form of a table whose header has so many
// columns: [*Fault] for what the reader refuses.
func CSVForm(err error, columns int) error {
	return (&csvTable{columns: make([]csvColumn, columns)}).form(err)
}

// Bared takes away the apostrophes that keep a cell from starting a formula.
func Bared(text string) string { return bared(text) }
