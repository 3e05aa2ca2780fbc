package stock

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"
	"sync"

	"grainwise/assets"
	"grainwise/assets/words"
)

// Default returns the shelf that ships with the program, a fresh copy each time.
func Default() Shelf { return builtIn().Clone() }

var builtIn = sync.OnceValue(func() Shelf {
	const file = "stock.json"
	data, err := assets.Files.ReadFile(file)
	if err != nil {
		panic(err) // embedded: it was there when we compiled
	}
	shelf, err := Decode(data, file)
	if err != nil {
		panic(err)
	}
	return shelf
})

// Decode reads a shelf from JSON, strictly: unknown fields, damaged text and
// impossible materials are refused with a [*Fault] that names file and place.
func Decode(data []byte, file string) (Shelf, error) {
	var raw struct {
		Materials []json.RawMessage `json:"materials"`
	}
	if err := strict(data, &raw); err != nil {
		return Shelf{}, within(file, jsonFault(data, err))
	}
	shelf := Shelf{Materials: make([]Material, len(raw.Materials))}
	for i, part := range raw.Materials {
		m := &shelf.Materials[i]
		if err := strict(part, m); err != nil {
			return Shelf{}, within(file, within(place(i, m.Name), jsonFault(part, err)))
		}
	}
	if err := shelf.Validate(); err != nil {
		return Shelf{}, within(file, err)
	}
	return shelf, nil
}

// Encode writes a shelf as [Decode] reads it, indented for people.
func (s Shelf) Encode() ([]byte, error) {
	data, err := json.MarshalIndent(s, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(data, '\n'), nil
}

// strict decodes exactly one JSON value without unknown fields.
func strict(data []byte, into any) error {
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(into); err != nil {
		return err
	}
	if _, err := decoder.Token(); err != io.EOF {
		return errors.New(words.Say("stock.want.end"))
	}
	return nil
}

// jsonFault puts the words of encoding/json into ours. It names the field, or
// else the line.
func jsonFault(data []byte, err error) error {
	var badType *json.UnmarshalTypeError
	var badText *json.SyntaxError
	switch {
	case errors.As(err, &badType):
		return fault(orWhole(badType.Field), "stock.want.type", badType.Value)
	case errors.As(err, &badText):
		line := 1 + bytes.Count(data[:min(int(badText.Offset), len(data))], []byte("\n"))
		return fault(fmt.Sprintf("line %d", line), "stock.want.json", badText.Error())
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF):
		return fault(orWhole(""), "stock.want.json", words.Say("stock.cutShort"))
	}
	if name, ok := strings.CutPrefix(err.Error(), "json: unknown field "); ok {
		return fault(strings.Trim(name, `"`), "stock.want.knownField", nil)
	}
	return err
}

func orWhole(field string) string {
	if field == "" {
		return words.Say("stock.whole")
	}
	return field
}
