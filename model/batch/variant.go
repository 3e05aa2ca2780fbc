package batch

import (
	"slices"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// Variant is a patch of the base design: another paper, covering, or something
// besides.
type Variant struct {
	Name  string
	Patch Patch
	Asked measure.Money // the price asked for it; nothing where it is not set
}

// Clone returns a copy that shares nothing with v.
func (v Variant) Clone() Variant {
	v.Patch = slices.Clone(v.Patch)
	return v
}

// Equal reports whether two variants are the same.
func (v Variant) Equal(w Variant) bool {
	return v.Name == w.Name && v.Asked == w.Asked && slices.Equal(v.Patch, w.Patch)
}

// Setting is one decision that a variant takes otherwise.
type Setting struct {
	Key   string
	Value book.Value
}

// Patch is the settings of a variant, each key once, in the order of the
// parameter table: some keys set others with them.
type Patch []Setting

// Apply takes the patch; what a changed base refuses is left out and named.
func (p Patch) Apply(d book.Decisions) (patched book.Decisions, refused []string) {
	for _, s := range p.ordered() {
		param, known := book.Lookup(s.Key)
		if !known || param.Set(&d, s.Value) != nil {
			refused = append(refused, s.Key)
		}
	}
	return d, refused
}

func (p Patch) ordered() Patch {
	byKey := map[string]book.Value{}
	for _, s := range p {
		byKey[s.Key] = s.Value
	}
	var ordered Patch
	for _, param := range book.Params() {
		if v, set := byKey[param.Key]; set {
			ordered = append(ordered, Setting{param.Key, v})
			delete(byKey, param.Key)
		}
	}
	for _, s := range p {
		if _, unknown := byKey[s.Key]; unknown {
			ordered = append(ordered, s)
		}
	}
	return ordered
}

// Between is the patch that turns one design into another; measures are no part
// of it, and neither is the number of copies, which the orders say. A setting may
// change others with it, which are then set again.
func Between(from, to book.Decisions) Patch {
	var p Patch
	for _, param := range book.Params() {
		v := param.Get(to)
		if !Patchable(param) || v == param.Get(from) {
			continue
		}
		p = append(p, Setting{param.Key, v})
		_ = param.Set(&from, v) // refused where another must go first: then the patch cannot be
	}
	return p
}

// Patchable says whether a variant may set a parameter: a decision about the book
// that is no measure, no number of copies, and not the unit that all are cut in.
func Patchable(p book.Param) bool {
	return !p.Measure && p.Key != "copies" && p.Key != "rounding.system"
}

// FindVariant finds a variant by its name; the base design has none.
func (b Batch) FindVariant(name string) (Variant, bool) {
	i := slices.IndexFunc(b.Variants, func(v Variant) bool { return v.Name == name })
	if i < 0 {
		return Variant{}, name == ""
	}
	return b.Variants[i], true
}
