package project

import (
	"errors"
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Sets are the project's books by what is cut alike; see [batch.Sets].
func (p Project) Sets() []batch.Set { return batch.Sets(p.Decisions, p.Shelf, p.Batch) }

// Of is the project of one set alone: its design with its measures and copies,
// for whatever draws, checks or prints a single book. Its name says which it is.
func (p Project) Of(s batch.Set) Project {
	p = p.Clone()
	p.Decisions, p.Batch = s.Decisions, batch.Batch{}
	if s.Variant != "" {
		p.Name = strings.TrimPrefix(p.Name+", "+s.Variant, ", ")
	}
	return p
}

// Variant is the project of one variant alone: of several sets, the one with the
// most books; of a variant that nobody ordered, its design with the base's copies.
func (p Project) Variant(name string) (Project, error) {
	sets, err := p.SetsOf(name, "")
	if err != nil {
		return p, err
	}
	most := slices.MaxFunc(sets, func(a, b batch.Set) int { return a.Copies() - b.Copies() })
	return p.Of(most), nil
}

// SetsOf are the sets of a variant and of a spine group; an empty name is any.
func (p Project) SetsOf(variant, group string) ([]batch.Set, error) {
	if _, there := p.Batch.FindVariant(variant); !there {
		return nil, errors.New(words.Say("batch.want.variant", words.With{"found": variant, "names": p.variantNames()}))
	}
	sets := p.Sets()
	if variant != "" {
		sets = slices.DeleteFunc(sets, func(s batch.Set) bool { return s.Variant != variant })
	}
	if len(sets) == 0 {
		d, _ := p.Batch.Of(p.Decisions, p.Shelf, variant)
		sets = []batch.Set{{Variant: variant, Decisions: d, Book: book.Compute(book.Resolve(d, p.Shelf))}}
	}
	if group == "" {
		return sets, nil
	}
	var names []string
	for _, g := range batch.Groups(sets) {
		if g.Is(group) {
			return g.Sets, nil
		}
		names = append(names, g.Name)
	}
	return nil, errors.New(words.Say("batch.want.group", words.With{"found": group, "names": strings.Join(names, ", ")}))
}

func (p Project) variantNames() string {
	var names []string
	for _, v := range p.Batch.Variants {
		names = append(names, v.Name)
	}
	if len(names) == 0 {
		return words.Say("project.nothing")
	}
	return strings.Join(names, "; ")
}

// SetName is what papers of one set are called, among others of its project: its
// variant, and its spine's width.
func SetName(s batch.Set, style measure.Style) string {
	return strings.TrimSpace(words.Say("batch.setName", words.With{"variant": s.Variant, "width": style.WithUnit(s.Width())}))
}
