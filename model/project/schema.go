package project

import (
	"bytes"
	"encoding/json"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// member and members are a JSON object that keeps its order.
type member struct {
	name  string
	value any
}

type members []member

// MarshalJSON writes the members in their order.
func (m members) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	for i, one := range m {
		if i > 0 {
			b.WriteByte(',')
		}
		value, err := json.Marshal(one.value)
		if err != nil {
			return nil, err
		}
		b.WriteString(jsonText(one.name) + ":")
		b.Write(value)
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// Schema is the JSON Schema (draft 2020-12) of a project file, made from the
// parameter table. What it cannot say is held by Open: that a design's
// materials are on the file's shelf, and that no two materials share a name.
func Schema() ([]byte, error) {
	return schemaText(members{
		{"$schema", draft2020},
		{"title", words.Say("schema.project")},
		{"type", "object"},
		{"required", []string{"format", "version", "design"}},
		{"additionalProperties", false},
		{"properties", members{
			{"format", members{{"const", fileFormat}}},
			{"version", members{{"const", fileVersion}}},
			{"name", members{{"type", "string"}, {"maxLength", longestName}}},
			{"design", entriesSchema(chosen(), "")},
			{"measured", entriesSchema(taken(), measuredPrefix)},
			{"shelf", members{{"type", "array"}, {"items", materialSchema()}}},
			{"accepted", members{{"type", "array"}, {"items", acceptedSchema()}}},
		}.with(batchEntries()).with([]batchEntry{{name: "notes", schema: notesSchema}})},
	})
}

func notesSchema() members { return members{{"type", "string"}, {"maxLength", longestNotes}} }

// with adds what entries of a batch may be.
func (m members) with(entries []batchEntry) members {
	for _, e := range entries {
		m = append(m, member{e.name, e.schema()})
	}
	return m
}

// FormatsSchema is the JSON Schema of a file of formats.
func FormatsSchema() ([]byte, error) {
	format := members{
		{"type", "object"},
		{"required", []string{"name", "settings"}},
		{"additionalProperties", false},
		{"properties", members{
			{"name", members{{"type", "string"}, {"minLength", 1}, {"maxLength", longestFormatName}}},
			{"settings", entriesSchema(formatParams(), "")},
		}},
	}
	return schemaText(members{
		{"$schema", draft2020},
		{"title", words.Say("schema.formats")},
		{"type", "object"},
		{"required", []string{"format", "version", "formats"}},
		{"additionalProperties", false},
		{"properties", members{
			{"format", members{{"const", formatsFormat}}},
			{"version", members{{"const", formatsVersion}}},
			{"formats", members{{"type", "array"}, {"items", format}}},
		}},
	})
}

const draft2020 = "https://json-schema.org/draft/2020-12/schema"

func schemaText(schema members) ([]byte, error) {
	compact, err := schema.MarshalJSON()
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if err := json.Indent(&b, compact, "", "  "); err != nil {
		return nil, err
	}
	b.WriteByte('\n')
	return b.Bytes(), nil
}

// entriesSchema is an object with the keys of some parameters, none required.
func entriesSchema(params []book.Param, prefix string) members {
	var entries members
	for _, p := range params {
		entries = append(entries, member{strings.TrimPrefix(p.Key, prefix), entrySchema(p)})
	}
	return members{{"type", "object"}, {"additionalProperties", false}, {"properties", entries}}
}

func entrySchema(p book.Param) members {
	title := p.Label()
	if unit := p.Unit(measure.Metric); unit != "" {
		title += " (" + unit + ")"
	}
	schema := append(members{{"title", title}, {"description", p.Meaning()}}, valueSchema(p)...)
	if !p.Measure {
		schema = append(schema, member{"default", json.RawMessage(entryText(p, p.Default(measure.Metric)))})
	}
	return schema
}

// valueSchema is what entryText writes.
func valueSchema(p book.Param) members {
	plain := plainSchema(p)
	if !p.Derivable || p.Measure {
		return plain
	}
	return members{{"anyOf", []members{{{"const", autoWord}}, plain}}}
}

func plainSchema(p book.Param) members {
	switch p.Kind {
	case book.KindMaterial:
		return members{{"type", "string"}, {"minLength", 1}}
	case book.KindSwitch:
		return members{{"type", "boolean"}}
	case book.KindEdges:
		return members{{"type", "string"}, {"pattern", "^(none|(head|tail|left|right)( *, *(head|tail|left|right))*)$"}}
	case book.KindWord:
		return members{{"type", "string"}, {"enum", p.Words}}
	case book.KindCount:
		return members{{"type", "integer"}, {"minimum", p.Min}, {"maximum", p.Max}}
	}
	return members{{"type", "number"}, {"minimum", p.Min}, {"maximum", p.Max}}
}
