package project

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
)

// batchEntry is one entry of a project's file that belongs to its batch, or to what
// a customer is told of it: how it is read, written, and described. What was not entered is left out.
type batchEntry struct {
	name   string
	read   func(s source, f field, p *Project) *Problem
	text   func(p Project) (string, error) // empty to leave it out
	schema func() members
}

// batchEntries are all of them, in the order of reading and writing: orders name
// variants, so those come first.
func batchEntries() []batchEntry {
	return []batchEntry{
		variantsEntry(),
		ordersEntry(),
		listEntry("blocks", func(b *batch.Batch) *[]batch.Block { return &b.Blocks }, blockKey, blockSchema),
		listEntry("stock", func(b *batch.Batch) *[]batch.Holding { return &b.Stock }, holdingKey, holdingSchema),
		listEntry("cut", func(b *batch.Batch) *[]batch.Cut { return &b.Cut }, nil, cutSchema),
		objectEntry("buying", func(b *batch.Batch) *batch.Buying { return &b.Buying }, buyingSchema),
		objectEntry("working", func(b *batch.Batch) *batch.Working { return &b.Working }, workingSchema),
		objectEntry("post", func(b *batch.Batch) *batch.Post { return &b.Post }, postSchema),
		objectEntry("pricing", func(b *batch.Batch) *batch.Pricing { return &b.Pricing }, pricingSchema),
		offerEntry(),
		listEntry("records", func(b *batch.Batch) *[]batch.Record { return &b.Records }, nil, recordSchema),
	}
}

func batchNames() []string {
	var names []string
	for _, e := range batchEntries() {
		names = append(names, e.name)
	}
	return names
}

// batch reads what a file says of the batch.
func (s source) batch(entries object, p *Project) *Problem {
	for _, e := range batchEntries() {
		if f, there := entries.find(e.name); there {
			if problem := e.read(s, f, p); problem != nil {
				return problem
			}
		}
	}
	return nil
}

// batchText writes what there is of the batch, an entry and a comma each.
func batchText(p Project) (string, error) {
	var b strings.Builder
	for _, e := range batchEntries() {
		text, err := e.text(p)
		if err != nil {
			return "", err
		}
		if text != "" {
			b.WriteString("  " + jsonText(e.name) + ": " + text + ",\n")
		}
	}
	return b.String(), nil
}

type valid interface{ Validate() error }

// listEntry is a list of values that say themselves what is wrong with them, one
// a line. No two may have the same key, where there is one.
func listEntry[T valid](name string, at func(*batch.Batch) *[]T, key func(T) string, item func() members) batchEntry {
	return batchEntry{
		name: name,
		read: func(s source, f field, p *Project) *Problem {
			_, problem := readList(s, f, at(&p.Batch), key)
			return problem
		},
		text:   func(p Project) (string, error) { return listText(*at(&p.Batch)) },
		schema: func() members { return members{{"type", "array"}, {"items", item()}} },
	}
}

func listText[T any](all []T) (string, error) {
	if len(all) == 0 {
		return "", nil
	}
	lines := make([]string, len(all))
	for i, one := range all {
		text, err := lineText(one)
		if err != nil {
			return "", err
		}
		lines[i] = text
	}
	return block("[]", lines), nil
}

// objectEntry is one value; one that is all nothing is left out.
func objectEntry[T valid](name string, at func(*batch.Batch) *T, schema func() members) batchEntry {
	return batchEntry{
		name: name,
		read: func(s source, f field, p *Project) *Problem { return readStrict(s, f, at(&p.Batch)) },
		text: func(p Project) (string, error) {
			text, err := lineText(*at(&p.Batch))
			if text == "{}" {
				return "", err
			}
			return text, err
		},
		schema: schema,
	}
}

// lineText is a value as JSON in one line.
func lineText(v any) (string, error) {
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	err := encoder.Encode(v)
	return strings.TrimSuffix(b.String(), "\n"), err
}

// readList reads a list's values, and where they stand.
func readList[T valid](s source, f field, into *[]T, key func(T) string) ([]field, *Problem) {
	all, problem := s.readArray(f)
	if problem != nil {
		return nil, problem
	}
	seen := map[string]bool{}
	for _, one := range all {
		var v T
		if problem := readStrict(s, one, &v); problem != nil {
			return nil, problem
		}
		if key != nil {
			if seen[key(v)] {
				return nil, s.damaged(one.at, f.name, words.Say("batch.want.once"))
			}
			seen[key(v)] = true
		}
		*into = append(*into, v)
	}
	return all, nil
}

// readStrict reads one value whose entries are all known, and has it say what is
// wrong with it.
func readStrict[T valid](s source, f field, into *T) *Problem {
	if len(f.raw) == 0 || f.raw[0] != '{' {
		return s.damaged(f.at, f.name, words.Say("project.want.object"))
	}
	decoder := json.NewDecoder(bytes.NewReader(f.raw))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(into); err != nil && err != io.EOF {
		return s.undecoded(f, err)
	}
	if err := (*into).Validate(); err != nil {
		return s.faulty(f, err)
	}
	return nil
}

// undecoded puts the words of encoding/json into ours.
func (s source) undecoded(f field, err error) *Problem {
	var badType *json.UnmarshalTypeError
	if errors.As(err, &badType) {
		return s.damaged(f.at+int(badType.Offset), badType.Field, words.Say("batch.want.type", words.With{"found": clipped(badType.Value)}))
	}
	if name, ok := strings.CutPrefix(err.Error(), "json: unknown field "); ok {
		return s.damaged(f.at, strings.Trim(name, `"`), words.Say("batch.want.known"))
	}
	return s.damaged(f.at, f.name, err.Error())
}

// faulty puts a fault of a part of the batch at its place in the file.
func (s source) faulty(f field, err error) *Problem {
	var fault *batch.Fault
	if !errors.As(err, &fault) {
		return s.damaged(f.at, f.name, err.Error())
	}
	if entries, problem := s.readObject(f); problem == nil {
		if at, there := entries.find(fault.Place); there {
			return s.damaged(at.at, fault.Place, clipped(string(at.raw))+": "+fault.Text)
		}
	}
	return s.damaged(f.at, fault.Place, fault.Text)
}

func blockKey(b batch.Block) string { return lined(b.Order, b.Copy) }

func holdingKey(h batch.Holding) string { return lined(h.Kind, h.Material) }

func lined(all ...any) string {
	text, _ := lineText(all)
	return text
}
