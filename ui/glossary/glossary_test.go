package glossary

import (
	"slices"
	"strings"
	"testing"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/sketch"
)

func TestEveryTermIsWhole(t *testing.T) {
	for i, term := range All() {
		if strings.HasPrefix(term.Word, "glossary.") || strings.HasPrefix(term.Text, "glossary.") {
			t.Errorf("%s has no words", term.ID)
		}
		if n := len(term.Text); n < 20 || n > 260 {
			t.Errorf("%s: a text of %d letters", term.ID, n)
		}
		if sketch.Scene(term.Picture, sketch.Look{}) == nil {
			t.Errorf("%s: no picture %q", term.ID, term.Picture)
		}
		for _, id := range term.See {
			if _, ok := Find(id); !ok || id == term.ID {
				t.Errorf("%s leads to %q", term.ID, id)
			}
		}
		if i > 0 && strings.ToLower(All()[i-1].Word) >= strings.ToLower(term.Word) {
			t.Errorf("%s is out of order", term.Word)
		}
	}
	if n := len(All()); n < 60 {
		t.Errorf("%d terms", n)
	}
}

// names is everything a term is called, in small letters.
func names(term Term) []string {
	all := []string{strings.ToLower(term.Word)}
	for _, also := range strings.Split(term.Also, ",") {
		if also = strings.ToLower(strings.TrimSpace(also)); also != "" {
			all = append(all, also)
		}
	}
	return all
}

// The words that stand in drawings and on rows are explained: the name of
// every part, and in every parameter's label one word of the trade.
func TestWordsOfDrawingsAndRowsAreExplained(t *testing.T) {
	var known []string
	for _, term := range All() {
		known = append(known, names(term)...)
	}
	for _, p := range book.Params() {
		part, ok := words.Lookup("part." + string(p.Part))
		if ok && p.Part != book.PartBook && !slices.Contains(known, strings.ToLower(part)) {
			t.Errorf("the part %q is no term of the glossary: add it to the table and to glossary.json", part)
		}
		terms := Of(p.Key)
		if !slices.ContainsFunc(terms, func(term Term) bool {
			return slices.ContainsFunc(names(term), func(name string) bool {
				return strings.Contains(strings.ToLower(p.Label()+", "+p.Short()), name)
			})
		}) {
			t.Errorf("no term explains %q (%s): give one of the table this key, and in glossary.json the word of the label", p.Label(), p.Key)
		}
	}
}

// Every key of the table is a parameter's, or begins the keys of some: one
// written wrong would leave its row without the word, and say nothing.
func TestEveryKeyOfATermIsKnown(t *testing.T) {
	for _, r := range table() {
		for _, key := range r.keys {
			if !slices.ContainsFunc(book.Params(), func(p book.Param) bool { return concerns(key, p.Key) }) {
				t.Errorf("%s: no parameter is called %q", r.id, key)
			}
		}
	}
}

func TestSearchFindsByWordOtherWordAndMeaning(t *testing.T) {
	for text, want := range map[string]string{"swe": "swell", "hinge": "joint", "chain stitch": "link-stitch", "stamp": "stitch-length", " GRAIN ": "grain"} {
		if found := Search(text); len(found) == 0 || found[0].ID != want {
			t.Errorf("%q leads to %v", text, found)
		}
	}
	if len(Search("zzz")) != 0 || len(Search("")) != len(All()) {
		t.Error("nothing finds nothing, and an empty text everything")
	}
}
