package check

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// quietBook is one ordinary, well-made book: what differs from a new one, as
// text, and the findings it has all the same, by id.
type quietBook struct {
	About    string            `json:"about"`
	System   measure.System    `json:"system"`
	Set      map[string]string `json:"set"`
	Findings []string          `json:"findings"`
}

func quietBooks(t *testing.T) map[string]quietBook {
	names, err := filepath.Glob("../../testdata/quiet/*.json")
	if err != nil {
		t.Fatal(err)
	}
	books := map[string]quietBook{}
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var q quietBook
		if err := json.Unmarshal(data, &q); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		books[filepath.Base(name)] = q
	}
	return books
}

// A tool that cries wolf is switched off: well-made books raise no stop and at
// most two checks, and just the findings that their files foretell.
func TestQuietCorpus(t *testing.T) {
	books := quietBooks(t)
	if len(books) != 14 {
		t.Errorf("%d books, want 14", len(books))
	}
	for name, q := range books {
		var settings []string
		for _, p := range book.Params() { // in the order of the table: some keys set others with them
			if value, given := q.Set[p.Key]; given {
				settings = append(settings, p.Key, value)
			}
		}
		if len(settings) != 2*len(q.Set) {
			t.Errorf("%s sets a key that is none", name)
		}
		d := with(t, q.System, settings...)
		mustMend(t, d)
		found, checks := []string{}, 0
		for _, f := range All(reckon(d)) {
			found = append(found, f.ID)
			switch f.Level {
			case Stop:
				t.Errorf("%s: stop: %s", name, f.Text(measure.Style{Decimals: 2}))
			case Check:
				checks++
			}
		}
		if checks > 2 {
			t.Errorf("%s: %d checks", name, checks)
		}
		if !slices.Equal(found, q.Findings) {
			t.Errorf("%s: found %q, its file foretells %q", name, found, q.Findings)
		}
	}
}
