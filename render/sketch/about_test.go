package sketch

import (
	"encoding/json"
	"io/fs"
	"strings"
	"testing"

	"grainwise/assets"
	"grainwise/model/book"
)

// rules are the ids of all rules: each has a text of its own.
func rules(t *testing.T) []string {
	names, err := fs.Glob(assets.Files, "lang/en/*.json")
	if err != nil {
		t.Fatal(err)
	}
	var ids []string
	for _, name := range names {
		data, err := assets.Files.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var texts map[string]string
		if err := json.Unmarshal(data, &texts); err != nil {
			t.Fatal(name, err)
		}
		for key := range texts {
			id, is := strings.CutPrefix(key, "finding.")
			if id, whole := strings.CutSuffix(id, ".text"); is && whole && !strings.Contains(id, ".") {
				ids = append(ids, id)
			}
		}
	}
	if len(ids) < 30 {
		t.Fatalf("%d rules were found", len(ids))
	}
	return ids
}

// Whoever adds a parameter or a rule gives it a picture.
func TestEveryParameterAndRuleHasAPicture(t *testing.T) {
	for _, p := range book.Params() {
		if _, ok := OfParam(p.Key); !ok {
			t.Errorf("the parameter %s has no picture: name one of table.go, or a new one, for it in ofParam (about.go)", p.Key)
		}
	}
	for _, id := range rules(t) {
		if _, ok := OfRule(id); !ok {
			t.Errorf("the rule %s has no picture: name one of table.go, or a new one, for it in ofRule (about.go)", id)
		}
	}
}
