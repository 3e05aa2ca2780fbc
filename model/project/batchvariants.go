package project

import (
	"encoding/json"
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// longestVariant is how long a variant's name may be, and mostVariants how many
// there may be; they keep damage out, no more.
const (
	longestVariant = 80
	mostVariants   = 500
)

func patchable() []book.Param { return paramsWhere(batch.Patchable) }

func variantsEntry() batchEntry {
	return batchEntry{name: "variants", read: source.variants, text: variantsText, schema: variantsSchema}
}

func variantsText(p Project) (string, error) {
	if len(p.Batch.Variants) == 0 {
		return "", nil
	}
	var lines []string
	for _, v := range p.Batch.Variants {
		asked := ""
		if v.Asked != (measure.Money{}) {
			asked = `"asked": ` + jsonText(v.Asked.String()) + ", "
		}
		var settings []string
		for _, s := range v.Patch {
			param, _ := book.Lookup(s.Key)
			settings = append(settings, entryLine(s.Key, param, s.Value))
		}
		lines = append(lines, `{"name": `+jsonText(v.Name)+", "+asked+`"settings": {`+strings.Join(settings, ", ")+"}}")
	}
	return block("[]", lines), nil
}

func (s source) variants(f field, p *Project) *Problem {
	all, problem := s.readArray(f)
	if problem == nil && len(all) > mostVariants {
		problem = s.damaged(f.at, "variants", words.Say("batch.want.fewer", words.With{"most": mostVariants}))
	}
	for _, one := range all {
		if problem != nil {
			return problem
		}
		problem = s.variant(one, p)
	}
	return problem
}

func (s source) variant(in field, p *Project) *Problem {
	entries, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(entries, "name", "asked", "settings")
	}
	var v batch.Variant
	if problem == nil {
		v.Name, problem = s.someText(in, entries, "name", longestVariant, false)
	}
	if problem != nil {
		return problem
	}
	if _, again := p.Batch.FindVariant(v.Name); again {
		return s.unlike(in, entries, "name", words.Say("batch.want.once"))
	}
	if problem = s.asked(in, entries, &v); problem != nil {
		return problem
	}
	if settings, there := entries.find("settings"); there {
		if v.Patch, problem = s.patch(settings, p); problem != nil {
			return problem
		}
	}
	p.Batch.Variants = append(p.Batch.Variants, v)
	return nil
}

func (s source) asked(in field, entries object, v *batch.Variant) *Problem {
	f, there := entries.find("asked")
	if !there {
		return nil
	}
	var text string
	if json.Unmarshal(f.raw, &text) == nil {
		if m, err := measure.ParseMoney(text); err == nil && m.Minor >= 0 {
			v.Asked = m
			return nil
		}
	}
	return s.unlike(in, entries, "asked", words.Say("batch.want.price"))
}

// patch reads settings as a design's own; a material must be on the shelf.
func (s source) patch(in field, p *Project) (patch batch.Patch, problem *Problem) {
	entries, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(entries, keysOf(patchable())...)
	}
	if problem != nil {
		return nil, problem
	}
	for _, param := range patchable() {
		f, there := entries.find(param.Key)
		if !there {
			continue
		}
		v, err := readEntry(param, f.raw)
		if err == nil {
			err = onShelf(param, v, p.Shelf)
		}
		if err != nil {
			return nil, s.refused(f, err)
		}
		patch = append(patch, batch.Setting{Key: param.Key, Value: v})
	}
	return patch, nil
}

func variantsSchema() members {
	item := members{
		{"type", "object"}, {"required", []string{"name"}}, {"additionalProperties", false},
		{"properties", members{
			{"name", members{{"type", "string"}, {"minLength", 1}, {"maxLength", longestVariant}}},
			{"asked", moneySchema()},
			{"settings", entriesSchema(patchable(), "")},
		}},
	}
	return members{{"type", "array"}, {"maxItems", mostVariants}, {"items", item}}
}

func ordersEntry() batchEntry {
	e := listEntry("orders", func(b *batch.Batch) *[]batch.Order { return &b.Orders }, nil, orderSchema)
	e.read = func(s source, f field, p *Project) *Problem {
		all, problem := readList(s, f, &p.Batch.Orders, nil)
		if problem != nil {
			return problem
		}
		if at, err := p.Batch.Check(); err != nil {
			return s.faulty(all[at], err)
		}
		return nil
	}
	return e
}

// PatchFrom is the patch that settings of KEY=VALUE text make, for the shelf's
// materials; an error is a [*book.ValueError].
func (p Project) PatchFrom(settings map[string]string, shown measure.System) (batch.Patch, error) {
	var patch batch.Patch
	for key := range settings {
		if !slices.Contains(keysOf(patchable()), key) {
			return nil, unknownKey(key, keysOf(patchable()))
		}
	}
	for _, param := range patchable() {
		text, set := settings[param.Key]
		if !set {
			continue
		}
		v, err := param.Parse(text, shown)
		if err == nil {
			err = onShelf(param, v, p.Shelf)
		}
		if err != nil {
			return nil, err
		}
		patch = append(patch, batch.Setting{Key: param.Key, Value: v})
	}
	return patch, nil
}
