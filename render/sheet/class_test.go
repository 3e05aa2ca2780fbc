package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book/booktest"
	"grainwise/model/making"
	"grainwise/model/project"
)

// Source: the demo's table by hand, for six students and two more sets: 24 folios,
// a liner, two boards, a spine piece and a covering a book, eight times; folios eight
// from a sheet, so 24 sheets; its only known times are 195 minutes of set-up and 84 a
// book, so 168 for who takes twice as long.
func TestClassPackOfTheDemo(t *testing.T) {
	in := demoSet(t)
	in.Students = 6
	said := textsOf(classPack(in))
	for _, want := range []string{
		"6 students, 8 sets", "one to spare", "192\n", "16\n", "24 sheets\n", "195 min\n", "84 min\n", "168 min\n", "At each of 7 places", "Local rules for rooms",
		"Folded section\n", "Pleated liner\n", "Sewn block\n", "Case\n", "Book cased in\n", "3 meetings",
	} {
		if !strings.Contains(said, want) {
			t.Errorf("the class pack lacks %q", want)
		}
	}
}

// The pack is offered to a class alone.
func TestClassPackIsForAClass(t *testing.T) {
	in := demoSet(t)
	has := func(k Kind) bool { return k.ID == "class-pack" }
	if slices.ContainsFunc(For(in), has) {
		t.Error("it is offered without students")
	}
	in.Students = 1
	if !slices.ContainsFunc(For(in), has) {
		t.Error("it is not offered to one student")
	}
}

// Every tool stands at the places or in the room, every care that the book asks for
// stands there in full, and the cut list has every part for all sets.
func TestClassPackOfEveryBook(t *testing.T) {
	tools := map[string]bool{}
	rapid.Check(t, func(t *rapid.T) {
		in := Input{Book: booktest.Books().Draw(t, "book"), Students: rapid.IntRange(1, 30).Draw(t, "students")}
		said := strings.Join(strings.Fields(textsOf(classPack(in))), " ")
		for _, tool := range making.Kit(in.Book) {
			tools[tool.ID] = true
			if n := strings.Count(said, strings.Join(strings.Fields(tool.Text(in.style())), " ")); n == 0 {
				t.Errorf("%s is missing", tool.ID)
			}
		}
		for _, s := range making.Steps(in.Book) {
			for _, c := range s.Cautions {
				if !strings.Contains(said, c.Text()) {
					t.Errorf("the care of %s is missing", c)
				}
			}
		}
		for _, p := range in.Book.Parts {
			if p.Count > 0 && !strings.Contains(said, fmt.Sprintf(" %d %d ", p.Count, p.Count*(in.Students+2))) {
				t.Errorf("%s is not to be cut %d times", p.ID, p.Count*(in.Students+2))
			}
		}
	})
	for _, id := range roomTools() {
		if !tools[id] {
			t.Errorf("no book has the tool %s", id)
		}
	}
}

// A material that no plan was found for is named, and how to have it.
func TestClassPackWithoutAPlan(t *testing.T) {
	in := demoSet(t)
	in.Students = 6
	class := in.ofClass()
	class.Cuttings = nil
	f := newFlow(in.Printer.format())
	f.add(class.classBuying(f.width())...)
	said := strings.Join(strings.Fields(textsOf(f.document(in, ""))), " ")
	want := words.Say("class.buy.noPlan", words.With{"sets": 8, "names": "Ebbwhite Drawing 170, Saltgrass 120, Groynes 2.5, Withy card 0.4, Kelp"})
	if !strings.Contains(said, want) {
		t.Errorf("it says %q", said)
	}
}

// Guide and class pack together are to be made within 200 ms.
func BenchmarkGuideAndClassPack(b *testing.B) {
	p := project.Demo()
	in := Input{Book: p.Book(), Name: p.Name, Students: 6}
	for b.Loop() {
		guide(in)
		classPack(in)
	}
}
