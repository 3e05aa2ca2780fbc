package making

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets"
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Source: the demo project's table, "computed by hand from the arithmetic", and
// its decisions. Both papers.
func TestDemoSizesInTheTexts(t *testing.T) {
	white, oat := made(t), made(t, "paper", "Marramstone Oat 180")
	for _, c := range []struct{ id, white, oat string }{
		{"lost-edges", "3 mm on every edge", "3 mm on every edge"},
		{"cut-folios", "24 of 300 × 210 mm", "24 of 300 × 210 mm"},
		{"cut-liner", "410.6 × 210 mm", "411.5 × 210 mm"},
		{"fold-folios", "150 × 210 mm", "150 × 210 mm"},
		{"gather", "4 to a section: 6 in all", "4 to a section: 6 in all"},
		{"try-seam", "stitch 4.5 mm, thread 0.28 mm", "stitch 4.5 mm, thread 0.28 mm"},
		{"sew-machine", "start 20 mm, stop 190 mm", "start 20 mm, stop 190 mm"}, // 170 mm of seam
		{"cut-boards", "2 of 149 × 216 mm, 2.5 mm thick", "2 of 149 × 216 mm, 2.5 mm thick"},
		{"cut-spine", "16 × 216 mm", "17 × 216 mm"},
		{"cut-covering", "368 × 252 mm", "369 × 252 mm"},
		{"lay-out", "joints 9 mm, turn-ins 18 mm", "joints 9 mm, turn-ins 18 mm"},
		{"glue-case", "9 mm spacers", "9 mm spacers"},
		{"turn-in", "18 mm all round", "18 mm all round"},
		{"try-case", "3 mm fore edge, 3 mm head, 3 mm tail", "3 mm head, 3 mm tail"},
	} {
		for b, want := range map[*book.Book]string{&white: c.white, &oat: c.oat} {
			if got := stepOf(t, *b, c.id).Short(styles[0]); !strings.Contains(got, want) {
				t.Errorf("%s: %q lacks %q", c.id, got, want)
			}
		}
	}
	for _, c := range []struct{ id, white, oat string }{
		{"cut-folios", "gives 8:", "gives 3:"}, // folios a sheet
		{"gather", "1.76 mm", "1.92 mm"},
		{"measure", "Spine: 13.4 mm expected. Fore edge: 10.9 mm", "Spine: 14.3 mm expected. Fore edge: 11.8 mm"},
		{"lay-out", "34 mm lies between the boards", "35 mm lies between the boards"}, // 16 or 17 and two joints of 9
	} {
		for b, want := range map[*book.Book]string{&white: c.white, &oat: c.oat} {
			if got := stepOf(t, *b, c.id).How(styles[0]); !strings.Contains(got, want) {
				t.Errorf("%s: %q lacks %q", c.id, got, want)
			}
		}
	}
}

// Source: the design's `gw plan` example of the demo's white book (valleys,
// ridge, casing-in, corner to cut, seam).
func TestDemoPlanInTheTexts(t *testing.T) {
	b := made(t)
	for id, want := range map[string]string{
		"mark-pleats": "valleys at 150.88 mm and ridges at 161.76 mm; both repeat every 21.76 mm",
		"mark-casing": "4.043 mm from the fore edge, 3 mm from the head",
		"cut-corners": "at 45°, 4 mm outside",
		"try-case":    "squares 3.006 mm fore edge",
	} {
		if got := stepOf(t, b, id).Short(measure.Style{Decimals: 3}); !strings.Contains(got, want) {
			t.Errorf("%s: %q lacks %q", id, got, want)
		}
	}
}

func TestEveryTextIsFilled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		style := rapid.SampledFrom(styles).Draw(t, "style")
		filled := func(what, text string) {
			if text == "" || strings.ContainsAny(text, "{}") || strings.Contains(text, "making.") || strings.Contains(text, "  ") || strings.Contains(text, "%!") || strings.Contains(text, "about ≈") {
				t.Errorf("%s: %q", what, text)
			}
		}
		for _, s := range Steps(b) {
			filled(s.ID, s.Short(style))
			filled(s.ID, s.How(style))
			filled(s.ID, s.Stage.Name())
			if s.Wait.Hours > 0 {
				filled(s.ID, s.Wait.Text())
			}
			for _, c := range s.Cautions {
				filled(s.ID, c.Text())
			}
		}
		for _, tool := range Kit(b) {
			filled(tool.ID, tool.Text(style))
		}
		for _, supply := range Supplies(b) {
			filled(supply.ID, supply.Text(style))
		}
	})
}

// quiet is the corpus of ordinary, well-made books.
func quiet(t *testing.T) map[string]book.Book {
	t.Helper()
	names, err := filepath.Glob("../../testdata/quiet/*.json")
	if err != nil || len(names) == 0 {
		t.Fatalf("no books: %v", err)
	}
	books := map[string]book.Book{}
	for _, name := range names {
		var q struct {
			System measure.System    `json:"system"`
			Set    map[string]string `json:"set"`
		}
		data, err := os.ReadFile(name)
		if err == nil {
			err = json.Unmarshal(data, &q)
		}
		if err != nil {
			t.Fatal(err)
		}
		d := book.Defaults(q.System)
		for _, p := range book.Params() {
			if value, given := q.Set[p.Key]; given {
				set(t, &d, p.Key, value, q.System)
			}
		}
		books[filepath.Base(name)] = book.Compute(book.Resolve(d, stock.Default()))
	}
	return books
}

// manyBooks are the quiet and the rich ones.
func manyBooks(t *testing.T) map[string]book.Book {
	all := quiet(t)
	for i, b := range rich(t) {
		all["rich "+strconv.Itoa(i)] = b
	}
	return all
}

// Short texts are printed large: 110 letters, a little more in inches.
func TestShortTextsAreShort(t *testing.T) {
	for name, b := range manyBooks(t) {
		for _, s := range Steps(b) {
			for i, most := range []int{110, 125, 125} {
				if text := s.Short(styles[i]); len([]rune(text)) > most {
					t.Errorf("%s, %s: %d letters: %s", name, s.ID, len([]rune(text)), text)
				}
			}
		}
	}
}

// Nothing in the words' file speaks of a step, tool or caution that is none.
func TestWordsHaveTheirSteps(t *testing.T) {
	data, err := assets.Files.ReadFile("lang/en/making.json")
	if err != nil {
		t.Fatal(err)
	}
	var texts map[string]string
	if err := json.Unmarshal(data, &texts); err != nil {
		t.Fatal(err)
	}
	steps := presence(made(t))
	for key, text := range texts {
		kind, rest, _ := strings.Cut(strings.TrimPrefix(key, "making."), ".")
		id, _, _ := strings.Cut(rest, ".")
		if _, known := steps[id]; (kind == "step" || kind == "how") && !known {
			t.Errorf("%s speaks of no step", key)
		}
		if kind == "caution" && !slices.Contains(Cautions(), Caution(id)) {
			t.Errorf("%s speaks of no caution", key)
		}
		if strings.Contains(text, "  ") || text == "" {
			t.Errorf("%s: %q", key, text)
		}
		if _, has := words.Lookup(key); !has {
			t.Errorf("%s is not found", key)
		}
	}
}
