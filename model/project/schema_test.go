package project

import (
	"bytes"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

func TestSchemaIsWhatTheTableGives(t *testing.T) {
	for name, make := range map[string]func() ([]byte, error){
		"schema/project.schema.json": Schema, "schema/formats.schema.json": FormatsSchema,
	} {
		made, err := make()
		if err != nil {
			t.Fatal(err)
		}
		golden(t, name, made)
	}
}

// compiled is a validator made by an independent implementation of JSON Schema.
func compiled(t testing.TB, make func() ([]byte, error)) *jsonschema.Schema {
	t.Helper()
	text, err := make()
	if err != nil {
		t.Fatal(err)
	}
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("file:///schema.json", document); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("file:///schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func validate(t testing.TB, schema *jsonschema.Schema, text []byte) error {
	t.Helper()
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatalf("%v in:\n%.300s", err, text)
	}
	return schema.Validate(document)
}

func encoded(t testing.TB, p Project) []byte {
	t.Helper()
	data, err := p.Encode()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func TestDemoAndFormatsFitTheSchema(t *testing.T) {
	schema := compiled(t, Schema)
	if err := validate(t, schema, encoded(t, Demo())); err != nil {
		t.Error(err)
	}
	for _, f := range BuiltIn() {
		p := New(f.System())
		var err error
		if p.Decisions.Design, err = f.Apply(p.Decisions.Design); err != nil {
			t.Fatal(err)
		}
		if err := validate(t, schema, encoded(t, p)); err != nil {
			t.Errorf("%s: %v", f.Name, err)
		}
	}
	if err := validate(t, compiled(t, FormatsSchema), encodeFormats(BuiltIn())); err != nil {
		t.Error(err)
	}
}

func TestAnyDesignFitsTheSchema(t *testing.T) {
	schema := compiled(t, Schema)
	rapid.Check(t, func(r *rapid.T) {
		p := New(measure.Metric)
		p.Decisions = booktest.Decisions().Draw(r, "decisions")
		data, err := p.Encode()
		if err != nil {
			r.Fatal(err)
		}
		if err := validate(t, schema, data); err != nil {
			r.Fatal(err)
		}
	})
}

// The schema must be able to refuse: one wrong entry each.
func TestSchemaRefuses(t *testing.T) {
	schema := compiled(t, Schema)
	good := string(encoded(t, Demo()))
	for _, c := range []struct{ from, to string }{
		{`"page.width": 150`, `"page.width": 9000`},
		{`"page.width": 150`, `"page.width": "150"`},
		{`"page.width": 150`, `"page.with": 150`},
		{`"paper.turned": false`, `"paper.turned": "no"`},
		{`"sections.count": 6`, `"sections.count": 6.5`},
		{`"spine.kind": "card"`, `"spine.kind": "cord"`},
		{`"board.width": "auto"`, `"board.width": "automatic"`},
		{`"liner.tornEdges": "none"`, `"liner.tornEdges": "top"`},
		{`"version": 1`, `"version": 2`},
		{`"measured": {}`, `"measured": {"spineThickness": 0}`},
		{`"grain":"long"`, `"grain":"along"`},
	} {
		bad := strings.Replace(good, c.from, c.to, 1)
		if bad == good {
			t.Fatalf("%s is not in the demo", c.from)
		}
		if validate(t, schema, []byte(bad)) == nil {
			t.Errorf("%s is accepted", c.to)
		}
		if _, err := Decode([]byte(bad), "bad.json"); err == nil {
			t.Errorf("%s opens", c.to)
		}
	}
}

// A material's entries in the schema are those of its Go type, in their order.
func TestMaterialSchemaKnowsEveryEntry(t *testing.T) {
	for _, c := range []struct {
		schema members
		of     reflect.Type
	}{
		{materialSchema(), reflect.TypeFor[stock.Material]()},
		{priceSchema(), reflect.TypeFor[stock.Price]()},
		{adhesiveSchema(), reflect.TypeFor[stock.AdhesiveFacts]()},
	} {
		var inSchema, inType []string
		for _, m := range c.schema {
			if properties, ok := m.value.(members); ok && m.name == "properties" {
				for _, p := range properties {
					inSchema = append(inSchema, p.name)
				}
			}
		}
		for i := range c.of.NumField() {
			name, _, _ := strings.Cut(c.of.Field(i).Tag.Get("json"), ",")
			inType = append(inType, name)
		}
		if !slices.Equal(inSchema, inType) {
			t.Errorf("%s has %q, the schema %q", c.of, inType, inSchema)
		}
	}
}

func TestEveryKeyIsInTheSchema(t *testing.T) {
	text, err := Schema()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range book.Params() {
		if !strings.Contains(string(text), jsonText(strings.TrimPrefix(p.Key, measuredPrefix))+": {") {
			t.Errorf("%s is not in the schema", p.Key)
		}
	}
}
