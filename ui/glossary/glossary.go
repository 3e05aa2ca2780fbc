// Package glossary is the trade's words as this program uses them: what each
// means, its picture, and the parameters it concerns. It knows no window.
package glossary

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/sketch"
)

// Term is one word of the trade.
type Term struct {
	ID      string
	Word    string
	Also    string // other words for it, with commas between; may be empty
	Text    string
	Picture sketch.Name
	See     []string // ids of terms that belong to it
	Keys    []string // the parameters it concerns, in the order of making
}

// All lists the terms in the order of the alphabet.
func All() []Term {
	var terms []Term
	for _, r := range table() {
		terms = append(terms, r.term())
	}
	return terms
}

func (r row) term() Term {
	t := Term{ID: r.id, Word: words.Say("glossary." + r.id + ".term"), Text: words.Say("glossary." + r.id + ".text"),
		Picture: sketch.Name(r.picture), See: r.see}
	t.Also, _ = words.Lookup("glossary." + r.id + ".also")
	for _, p := range book.Params() {
		if slices.ContainsFunc(r.keys, func(key string) bool { return concerns(key, p.Key) }) {
			t.Keys = append(t.Keys, p.Key)
		}
	}
	return t
}

// concerns says whether a key of the table means a parameter: its own, or the
// beginning of it, which ends with a dot.
func concerns(key, param string) bool {
	return key == param || strings.HasSuffix(key, ".") && strings.HasPrefix(param, key)
}

// Find is the term of an id.
func Find(id string) (Term, bool) {
	for _, r := range table() {
		if r.id == id {
			return r.term(), true
		}
	}
	return Term{}, false
}

// Of lists the terms that concern a parameter.
func Of(key string) []Term {
	var terms []Term
	for _, t := range All() {
		if slices.Contains(t.Keys, key) {
			terms = append(terms, t)
		}
	}
	return terms
}

// Search lists the terms that a text leads to: first those whose word begins
// with it, then those that hold it in word, other words or meaning.
func Search(text string) []Term {
	text = strings.ToLower(strings.TrimSpace(text))
	var first, second, third []Term
	for _, t := range All() {
		word := strings.ToLower(t.Word)
		switch {
		case strings.HasPrefix(word, text):
			first = append(first, t)
		case strings.Contains(word+", "+strings.ToLower(t.Also), text):
			second = append(second, t)
		case strings.Contains(strings.ToLower(t.Text), text):
			third = append(third, t)
		}
	}
	return slices.Concat(first, second, third)
}
