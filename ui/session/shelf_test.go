package session

import (
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/model/stock/stocktest"
)

func wrack() stock.Material {
	m, _ := stock.Default().Find(stock.Covering, "Kelp")
	m.Name, m.Thickness, m.Grammage = "Wrack", measure.MM(0.6), 300
	return m
}

// A material chosen from the maker's shelf goes along with the project, in one
// step; deleted from the shelf, the project has it still.
func TestTheProjectCarriesWhatItUses(t *testing.T) {
	s, _ := begin()
	s.SetOwn(stock.Shelf{Materials: []stock.Material{wrack()}})
	if _, offered := s.Offered().Find(stock.Covering, "Wrack"); !offered {
		t.Fatal("the own shelf is not offered")
	}
	before := s.Book()
	set(t, s, "covering", book.WordValue("Wrack"))
	if got := s.Book().Resolved.Stock.Covering; got.Thickness != measure.MM(0.6) || len(s.Book().Resolved.Unknown) > 0 {
		t.Fatalf("covered with %+v", got)
	}
	s.ChangeOwn("gone", stock.Shelf{})
	data, err := s.Project().Encode()
	if err != nil {
		t.Fatal(err)
	}
	again, err := project.Decode(data, "again")
	if err != nil || again.Book().Resolved.Stock.Covering.Thickness != measure.MM(0.6) {
		t.Errorf("without the shelf: %v", err)
	}
	s.Undo()
	s.Undo()
	if s.Unsaved() || s.Book().Resolved.Stock.Covering.Name != before.Resolved.Stock.Covering.Name {
		t.Error("the way back leads elsewhere")
	}
	if _, carried := s.Shelf().Find(stock.Covering, "Wrack"); carried || len(s.Own().Materials) != 1 {
		t.Error("the project carries what it does not use")
	}
}

// Newer facts of a material in use come in by Use alone.
func TestUseTakesNewFacts(t *testing.T) {
	s, _ := begin()
	kelp, _ := s.Shelf().Find(stock.Covering, "Kelp")
	kelp.Thickness = measure.MM(0.7)
	s.SetOwn(stock.Shelf{Materials: []stock.Material{kelp}})
	if s.Book().Resolved.Stock.Covering.Thickness == measure.MM(0.7) {
		t.Fatal("the shelf changes a book unasked")
	}
	s.Use("newer", s.Decisions(), kelp)
	if s.Book().Resolved.Stock.Covering.Thickness != measure.MM(0.7) || steps(s) != "newer" {
		t.Error("the new facts are not taken")
	}
	s.Use("again", s.Decisions(), kelp)
	if steps(s) != "newer" {
		t.Error("nothing new is a step")
	}
}

// Whatever is done to shelf and design: all the way back is where both began, but
// for what another window has put on the shelf, which stays.
func TestTheShelfCanBeUndone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, _ := begin()
		own := stocktest.Shelf().Draw(t, "own")
		s.SetOwn(own)
		foreign := stock.Material{Kind: stock.Thread, Name: "of another window", Thickness: measure.MM(0.3)}
		for range rapid.IntRange(1, 8).Draw(t, "acts") {
			switch rapid.IntRange(0, 4).Draw(t, "act") {
			case 0:
				s.SetOwn(s.Own().With(foreign))
			case 1:
				s.Undo()
			case 2:
				s.Redo()
			case 3:
				s.Use("use", s.Decisions(), stocktest.Material().Draw(t, "used"))
			default:
				s.ChangeOwn("change", s.Own().Merge(stock.Shelf{}, stocktest.Shelf().Draw(t, "more")))
			}
			if err := s.Own().Validate(); err != nil {
				t.Fatal(err)
			}
		}
		_, seen := s.Own().Find(foreign.Kind, foreign.Name)
		for s.Undo() {
		}
		if s.Unsaved() {
			t.Fatal("the project is another one")
		}
		if _, kept := s.Own().Find(foreign.Kind, foreign.Name); seen && !kept {
			t.Fatal("what another window put there is lost")
		}
		for _, m := range own.Materials {
			if got, has := s.Own().Find(m.Kind, m.Name); !has || !got.Equal(m) {
				t.Fatalf("%s is not as it was", m.Name)
			}
		}
		if extra := len(s.Own().Without(foreign.Kind, foreign.Name).Materials) - len(own.Materials); extra != 0 {
			t.Fatalf("%d more than at the beginning", extra)
		}
	})
}

// What is deleted from the shelf and used by nothing is not offered any more, and
// what is changed there is offered as it is now; the way back brings both again.
func TestTheOfferFollowsTheShelf(t *testing.T) {
	s, _ := begin()
	s.SetOwn(s.Shelf())
	other, _ := s.Offered().Find(stock.Covering, "Slackwater") // that neither the design nor a variant names
	s.ChangeOwn("gone", s.Own().Without(stock.Covering, other.Name))
	if _, offered := s.Offered().Find(stock.Covering, other.Name); offered {
		t.Errorf("%s is still offered", other.Name)
	}
	if _, offered := s.Offered().Find(stock.Covering, "Kelp"); !offered {
		t.Error("Kelp is gone with it")
	}
	s.Undo()
	if s.Unsaved() {
		t.Error("the way back leads elsewhere")
	}
	other.Thickness = measure.MM(0.9)
	s.ChangeOwn("thicker", s.Own().With(other))
	set(t, s, "covering", book.WordValue(other.Name))
	if got := s.Book().Resolved.Stock.Covering.Thickness; got != measure.MM(0.9) {
		t.Errorf("taken as it was, %v", got)
	}
	s.ChangeOwn("gone", s.Own().Without(stock.Covering, other.Name))
	if _, offered := s.Offered().Find(stock.Covering, other.Name); !offered {
		t.Error("what is in use is not offered")
	}
}

// What a variant of the batch takes is in use as well: the project keeps it, and
// opens again.
func TestVariantsCarryTheirMaterials(t *testing.T) {
	s, _ := begin()
	s.SetOwn(s.Shelf().With(wrack()))
	b := s.Batch().Clone()
	v := batch.Variant{Name: "in wrack", Patch: batch.Patch{{Key: "covering", Value: book.WordValue("Wrack")}}}
	b.Variants = append(b.Variants, v)
	s.SetBatch(b, "", "variant")
	s.ChangeOwn("all gone", stock.Shelf{})
	if _, carried := s.Shelf().Find(stock.Covering, "Wrack"); !carried {
		t.Fatal("the variant's cloth is not carried")
	}
	data, err := s.Project().Encode()
	if err != nil {
		t.Fatal(err)
	}
	again, err := project.Decode(data, "again")
	if err != nil || len(again.Batch.Variants) != len(b.Variants) {
		t.Errorf("it does not open again: %v", err)
	}
}
