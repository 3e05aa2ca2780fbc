package project

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"

	"grainwise/model/book"
)

// The file's own name and version. A later version reads earlier ones by one
// migration each.
const (
	fileFormat  = "grainwise-project"
	fileVersion = 1
)

// measuredPrefix is left out of the keys under "measured".
const measuredPrefix = "measured."

// Encode writes the project as its file holds it: indented, one key a line, in
// the order of the parameter table, one material a line.
func (p Project) Encode() ([]byte, error) {
	shelf, err := shelfLines(p)
	if err != nil {
		return nil, err
	}
	made, err := batchText(p)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n  \"format\": %s,\n  \"version\": %d,\n", jsonText(fileFormat), fileVersion)
	fmt.Fprintf(&b, "  \"name\": %s,\n", jsonText(p.Name))
	fmt.Fprintf(&b, "  \"design\": %s,\n", block("{}", designLines(p.Decisions)))
	fmt.Fprintf(&b, "  \"measured\": %s,\n", block("{}", measuredLines(p.Decisions)))
	fmt.Fprintf(&b, "  \"shelf\": %s,\n", block("[]", shelf))
	if len(p.Accepted) > 0 {
		fmt.Fprintf(&b, "  \"accepted\": %s,\n", block("[]", acceptedLines(p.Accepted)))
	}
	b.WriteString(made)
	fmt.Fprintf(&b, "  \"notes\": %s\n}\n", jsonText(p.Notes))
	return b.Bytes(), nil
}

// block puts lines between brackets, one below the other.
func block(brackets string, lines []string) string {
	if len(lines) == 0 {
		return brackets
	}
	return brackets[:1] + "\n    " + strings.Join(lines, ",\n    ") + "\n  " + brackets[1:]
}

func designLines(d book.Decisions) []string {
	var lines []string
	for _, p := range book.Params() {
		if !p.Measure {
			lines = append(lines, entryLine(p.Key, p, p.Get(d)))
		}
	}
	return lines
}

// measuredLines are the measures that were taken, and no other.
func measuredLines(d book.Decisions) []string {
	var lines []string
	for _, p := range book.Params() {
		if v := p.Get(d); p.Measure && !v.Auto {
			lines = append(lines, entryLine(strings.TrimPrefix(p.Key, measuredPrefix), p, v))
		}
	}
	return lines
}

func entryLine(name string, p book.Param, v book.Value) string {
	return jsonText(name) + ": " + entryText(p, v)
}

func shelfLines(p Project) ([]string, error) {
	var lines []string
	for _, m := range p.Shelf.Materials {
		var b bytes.Buffer
		encoder := json.NewEncoder(&b)
		encoder.SetEscapeHTML(false)
		if err := encoder.Encode(m); err != nil {
			return nil, err
		}
		lines = append(lines, strings.TrimSuffix(b.String(), "\n"))
	}
	return lines, nil
}
