package stock

import (
	"reflect"
	"slices"
)

// Equal says whether two shelves hold the same in the same order.
func (s Shelf) Equal(o Shelf) bool {
	return slices.EqualFunc(s.Materials, o.Materials, Material.Equal)
}

// Equal says whether two materials have the same facts.
func (m Material) Equal(o Material) bool { return reflect.DeepEqual(m, o) }

// With is the shelf with a material: in the place of the one of its kind and
// name, else at its end.
func (s Shelf) With(m Material) Shelf {
	s = s.Clone()
	if i := s.at(m); i >= 0 {
		s.Materials[i] = m.Clone()
	} else {
		s.Materials = append(s.Materials, m.Clone())
	}
	return s
}

// Replaced is the shelf with a material in the place of another one.
func (s Shelf) Replaced(was Material, m Material) Shelf {
	i := s.at(was)
	if i < 0 {
		return s.With(m)
	}
	s = s.Clone()
	s.Materials[i] = m.Clone()
	return s
}

// Without is the shelf without the material of a kind and name.
func (s Shelf) Without(kind Kind, name string) Shelf {
	s = s.Clone()
	s.Materials = slices.DeleteFunc(s.Materials, func(m Material) bool { return m.Kind == kind && m.Name == name })
	return s
}

// at is where the material of the same kind and name stands, -1 for none.
func (s Shelf) at(m Material) int {
	return slices.IndexFunc(s.Materials, func(o Material) bool { return o.Kind == m.Kind && o.Name == m.Name })
}

// Merge is the shelf with what was changed between two others: what went goes,
// and what is new or other comes. So nothing is lost of what somebody else has
// put on it meanwhile.
func (s Shelf) Merge(from, to Shelf) Shelf {
	if s.Equal(from) {
		return to.Clone()
	}
	merged := s.Clone()
	for _, m := range from.Materials {
		if to.at(m) < 0 {
			merged = merged.Without(m.Kind, m.Name)
		}
	}
	for _, m := range to.Materials {
		if i := from.at(m); i < 0 || !from.Materials[i].Equal(m) {
			merged = merged.With(m)
		}
	}
	return merged
}

// Beside is the shelf with what only the other one has behind it.
func (s Shelf) Beside(o Shelf) Shelf {
	all := s.Clone()
	for _, m := range o.Materials {
		if s.at(m) < 0 {
			all.Materials = append(all.Materials, m.Clone())
		}
	}
	return all
}

// FreeName is a name that no material of a kind has: the name itself, or with a
// number behind it.
func (s Shelf) FreeName(kind Kind, name func(n int) string) string {
	for n := 1; ; n++ {
		if _, taken := s.Find(kind, name(n)); !taken {
			return name(n)
		}
	}
}
