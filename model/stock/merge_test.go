package stock_test

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/stock/stocktest"
)

// Whatever is changed: on the shelf it was changed from, merging gives exactly
// what was meant; on another it keeps what only the other has, and the way back
// leads back.
func TestMergingShelves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from, to, other := stocktest.Shelf().Draw(t, "from"), stocktest.Shelf().Draw(t, "to"), stocktest.Shelf().Draw(t, "other")
		if got := from.Merge(from, to); !got.Equal(to) {
			t.Fatalf("%v, want %v", got, to)
		}
		if got := other.Merge(from, from); !got.Equal(other) {
			t.Fatal("no change changes something")
		}
		got := other.Merge(from, to)
		if err := got.Validate(); err != nil {
			t.Fatal(err)
		}
		for _, m := range other.Materials {
			if _, touched := from.Find(m.Kind, m.Name); touched {
				continue
			}
			if _, touched := to.Find(m.Kind, m.Name); touched {
				continue
			}
			if kept, ok := got.Find(m.Kind, m.Name); !ok || !kept.Equal(m) {
				t.Fatalf("%s is lost", m.Name)
			}
		}
		if again := got.Merge(to, from).Merge(from, to); again.Validate() != nil {
			t.Fatal("back and forth is no shelf")
		}
	})
}

func TestWithAndWithout(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, m := stocktest.Shelf().Draw(t, "shelf"), stocktest.Material().Draw(t, "material")
		with := s.With(m)
		if found, ok := with.Find(m.Kind, m.Name); !ok || !found.Equal(m) || with.Validate() != nil {
			t.Fatalf("%v", with)
		}
		gone := with.Without(m.Kind, m.Name)
		if _, there := gone.Find(m.Kind, m.Name); there {
			t.Fatal("it is there still")
		}
		if _, had := s.Find(m.Kind, m.Name); !had && !gone.Equal(s) {
			t.Fatal("the others changed")
		}
		free := with.FreeName(m.Kind, func(n int) string { return m.Name[:min(len(m.Name), n-1)] + "x" })
		if _, taken := with.Find(m.Kind, free); taken {
			t.Fatalf("%q is taken", free)
		}
	})
}
